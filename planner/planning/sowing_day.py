"""Chooses a sowing day so that sowing and moving fall on days of work, no later than they should.

Sowing is shifted to an earlier day of work. A move that would fall on a day without work is made earlier
too, by days taken off the nursery and added to the bed; where that cannot be, an earlier sowing is tried.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from typing import Final

from planner.farm.crops import Batch
from planner.farm.farm import DAYS_PER_WEEK
from planner.farm.fields import Id
from planner.planning.grounds import Ground
from planner.planning.rhythm import WorkDays
from planner.planning.timing import Course, Timer

_MOST_SHIFTED: Final = 3 * DAYS_PER_WEEK
_MOST_CUT: Final = (3, 2 * DAYS_PER_WEEK)
"""Days by which moves may come earlier: few at first, then, where no sowing day does, many."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Choice:
    """A batch with a sowing day and its course; how many days sowing and moves are early for work's sake."""

    batch: Batch
    course: Course
    sow_day: int
    sown_early_days: int
    moved_early_days: int


@dataclass(frozen=True, slots=True, kw_only=True)
class Need:
    """So many plants, ready by a day of the ruler (None: sown on a given day), how and where to grow them.

    Where the plants are what is `missing` over what one gives, `per_plant` says that, both as fit for sale.
    `asked_plants` are those there was no room for, 0 where there was for all.
    """

    choice: Choice
    ground: Ground
    plants: int
    wanted_day: int | None
    asked_plants: int = 0
    missing: float = 0.0
    per_plant: float = 0.0


class DayChooser:
    """Chooses among days for batches like one, raised in a nursery."""

    def __init__(self, timer: Timer, work: WorkDays, batch: Batch, *, nursery: Id, from_day: int) -> None:
        """Take a batch to go by; nothing is sown before `from_day`."""
        self._timer = timer
        self._work = work
        self._like = batch
        self._nursery = nursery
        self._from_day = from_day
        self.course = timer.course(batch, nursery=nursery)

    def is_open(self, day: int) -> bool:
        """Tell whether there is work on a day of the ruler."""
        return self._work.is_open(self._timer.ruler.date_of(day))

    def by(self, wanted_day: int) -> Choice | None:
        """Return the last choice whose first pick falls on or before a day; None when there is none."""
        latest = self.course.latest_for(wanted_day)
        return None if latest is None else self.sown_by(latest, wanted_day=wanted_day)

    def sown_by(self, day: int, *, wanted_day: int | None = None) -> Choice | None:
        """Return the last choice that is sown on or before a day; None when there is none in three weeks."""
        for most_cut in _MOST_CUT:
            for sow_day in range(day, max(day - _MOST_SHIFTED, self._from_day - 1), -1):
                found = self.on(sow_day, wanted_day=wanted_day, ideal_day=day, most_cut=most_cut)
                if found is not None:
                    return found
        return None

    def on(
        self, sow_day: int, *, wanted_day: int | None, ideal_day: int, most_cut: int = _MOST_CUT[-1]
    ) -> Choice | None:
        """Return the choice for one sowing day, None when it or its moves cannot fall on days of work."""
        if sow_day < self._from_day or sow_day > self.course.last_day or not self.is_open(sow_day):
            return None
        for cut, batch in self._ways(most_cut):
            course = self._timer.course(batch, nursery=self._nursery)
            steps = course.steps(sow_day)
            late = wanted_day is not None and course.first_pick(sow_day) > wanted_day
            if not late and all(step == sow_day or self.is_open(step) for step in steps):
                return Choice(
                    batch=self._timer.sown_on(batch, sow_day),
                    course=course,
                    sow_day=sow_day,
                    sown_early_days=ideal_day - sow_day,
                    moved_early_days=cut,
                )
        return None

    def _ways(self, most_cut: int) -> Iterator[tuple[int, Batch]]:
        """Yield the batch as it is, then with moves made earlier, those with the least change first."""
        yield 0, self._like
        has_spacing = bool(self.course.profile.stage_days[2])
        for cut in range(1, most_cut + 1):
            for of_spacing in range(cut + 1) if has_spacing else (cut,):
                of_nursery = cut - of_spacing if has_spacing else cut
                way = self._timer.moved_earlier(self._like, nursery_days=of_nursery, spacing_days=of_spacing)
                if way is not None:
                    yield cut, way
