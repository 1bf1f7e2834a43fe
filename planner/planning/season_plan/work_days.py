"""Shifts possible sowings within their week so that sowing and moving fall on days of work.

Where no day of the week does with the book's days, moves are made some days earlier, as for successions.
"""

from __future__ import annotations

import dataclasses
from collections.abc import Iterator, Sequence
from datetime import date
from typing import Final

from planner.farm.crops import Batch
from planner.farm.farm import DAYS_PER_WEEK
from planner.farm.fields import NO_ID, Id
from planner.planning.season_plan.frame import Frame
from planner.planning.season_plan.probes import Trial
from planner.planning.season_plan.values import OwnDays
from planner.planning.sowing_day import Choice, DayChooser
from planner.planning.timing import Timer

_CUTS: Final = (0, 3, 2 * DAYS_PER_WEEK)
"""Days by which moves may come earlier: none at first, then few, then, where no day does, many."""


def on_days_of_work(frame: Frame, trials: Sequence[Trial]) -> tuple[Trial, ...]:
    """Return the trials on days of work, those that have none in their week left out."""
    shifting = _Shifting(frame)
    return tuple(found for trial in trials if (found := shifting.shifted(trial)) is not None)


class _Shifting:
    def __init__(self, frame: Frame) -> None:
        self._frame = frame
        self._timer = Timer(frame.farm, frame.forecaster)
        self._choosers: dict[tuple[str, int], DayChooser] = {}

    def shifted(self, trial: Trial) -> Trial | None:
        """Return a trial on the day of its week that changes it least, None when there is none."""
        chooser = self._chooser(trial)
        ideal = self._frame.ruler.day_of(trial.sow_on)
        days = list(self._days_of_week(ideal))
        for most_cut in _CUTS:
            for day in days:
                found = chooser.on(day, wanted_day=None, ideal_day=ideal, most_cut=most_cut)
                if found is not None:
                    return dataclasses.replace(trial, sow_on=found.batch.sow_on, own=_own_days(found))
        return None

    def _days_of_week(self, ideal: int) -> Iterator[int]:
        """Yield the days of a week that may be sown on, those nearest to the one asked for first."""
        first = ideal - ideal % DAYS_PER_WEEK
        week = range(first, first + DAYS_PER_WEEK)
        yield from sorted(week, key=lambda day: (abs(day - ideal), day))

    def _chooser(self, trial: Trial) -> DayChooser:
        key = trial.crop, trial.ground
        if key not in self._choosers:
            ground = self._frame.grounds[trial.ground]
            like = Batch(
                id=NO_ID, code="-", crop=trial.crop, sow_on=trial.sow_on, plants=1, bed=ground.beds[0]
            )
            self._choosers[key] = DayChooser(
                self._timer,
                self._frame.options.work,
                like,
                nursery=self._nursery(ground.loop),
                from_day=self._day(self._frame.from_on),
            )
        return self._choosers[key]

    def _nursery(self, loop: int) -> Id:
        return next((pool.beds[0] for pool in self._frame.nurseries if pool.loop == loop), NO_ID)

    def _day(self, on: date) -> int:
        return self._frame.ruler.day_of(on)


def _own_days(choice: Choice) -> OwnDays:
    batch = choice.batch
    return OwnDays(nursery=batch.nursery_days, spacing=batch.spacing_days, bed=batch.bed_days)
