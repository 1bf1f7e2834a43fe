"""Tasks whose day is past and that nobody logged: carried over, with what is short if they are done today.

Silence says nothing before the first entry about work in the beds. Of a batch only the first task that was
not done is late: those after it wait for it. Pure: today comes in.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, replace
from datetime import date
from typing import Final

from planner.farm.checks import checked
from planner.farm.crops import Batch
from planner.farm.farm import Farm, by_id
from planner.farm.faults import FarmFaultError
from planner.farm.fields import NO_ID, Id
from planner.farm.ids import id_from
from planner.farm.log import Happening, LogEntry, standing
from planner.forecast.engine import Forecaster
from planner.forecast.values import Forecast
from planner.planning.anchoring import anchored
from planner.planning.dating import Dater
from planner.planning.moved import Difference, WeekShift, difference

_SPACING, _BED = 2, 3
_ORDER: Final = (Happening.SOWN, Happening.MOVED, Happening.PICKED)
_DONE_BY: Final = {
    Happening.SOWN: frozenset(set(Happening) - {Happening.NOT_DONE, Happening.NOTE, Happening.MAINTAINED}),
    Happening.MOVED: frozenset({Happening.MOVED, Happening.PICKED, Happening.CLEARED}),
    Happening.PICKED: frozenset({Happening.PICKED, Happening.CLEARED}),
}
"""Entries that tell that a task was done: itself, and whatever can only come after it."""

_OF_WORK: Final = frozenset({Happening.NOTE, Happening.NOT_DONE, Happening.PEST, Happening.MAINTAINED})

MOST_TOLD: Final = 40
"""So many late tasks have their effect worked out; a farm that has more has other worries."""


@dataclass(frozen=True, slots=True, kw_only=True)
class LateTask:
    """A task of a batch that was due on a day that is past."""

    batch: Id
    what: Happening
    due_on: date
    late_days: int


@dataclass(frozen=True, slots=True, kw_only=True)
class CarriedOver:
    """A late task and what it moves if it is done today."""

    batch: Id
    what: Happening
    due_on: date
    late_days: int
    effect: Difference

    @property
    def short(self) -> tuple[WeekShift, ...]:
        """The weeks that then have less than the plan, in order."""
        return tuple(sorted((one for one in self.effect.weeks if one.plants < 0), key=_week))


def _week(shift: WeekShift) -> tuple[int, str]:
    return shift.week, shift.crop


def late_tasks(farm: Farm, forecast: Forecast, today: date) -> tuple[LateTask, ...]:
    """Return the first undone task of every batch that is late, the longest late first."""
    since = min((entry.on for entry in farm.log_entries if _is_of_work(entry)), default=today)
    done: dict[Id, set[Happening]] = {}
    for entry in standing(farm.log_entries):
        done.setdefault(entry.batch, set()).add(entry.what)
    found = (
        _late_of(batch, forecast, done.get(batch.id, set()), since, today)
        for batch in farm.batches
        if batch.sow_on < today
    )
    return tuple(sorted((one for one in found if one is not None), key=_lateness))


def _is_of_work(entry: LogEntry) -> bool:
    """Tell whether an entry shows that work in the beds is logged; a water test by itself does not."""
    return entry.batch != NO_ID or entry.what in _OF_WORK


def _lateness(task: LateTask) -> tuple[date, Id]:
    return task.due_on, task.batch


def _late_of(
    batch: Batch, forecast: Forecast, done: set[Happening], since: date, today: date
) -> LateTask | None:
    for what, due_on in zip(_ORDER, _due_days(batch, forecast), strict=True):
        if due_on >= today:
            return None
        if due_on >= since and not done & _DONE_BY[what]:
            days = (today - due_on).days
            return LateTask(batch=batch.id, what=what, due_on=due_on, late_days=days)
    return None


def _due_days(batch: Batch, forecast: Forecast) -> Iterator[date]:
    """Yield the days of sowing, of moving to the bed, and of the first pick."""
    ends = forecast.batches.ends[forecast.batches.row_of[batch.id]]
    yield batch.sow_on
    yield forecast.ruler.date_of(int(ends[_SPACING]))
    yield forecast.ruler.date_of(int(ends[_BED]))


def carried_over(farm: Farm, forecaster: Forecaster, today: date) -> tuple[CarriedOver, ...]:
    """Return late tasks, each with its effect on the harvest if it is done today."""
    return tuple(one_by_one(farm, forecaster, today))


def one_by_one(farm: Farm, forecaster: Forecaster, today: date) -> Iterator[CarriedOver]:
    """Yield late tasks with their effects, so that a window can go on in between."""
    if not farm.log_entries:
        return
    before = forecaster.preview(farm)
    batches, dater = by_id(farm.batches), Dater(forecaster, farm)
    for task in late_tasks(farm, before, today)[:MOST_TOLD]:
        later = done_on(batches[task.batch], task.what, farm, dater, today)
        yield CarriedOver(
            batch=task.batch,
            what=task.what,
            due_on=task.due_on,
            late_days=task.late_days,
            effect=difference(before, forecaster.preview(_with(farm, later))),
        )


def done_on(batch: Batch, what: Happening, farm: Farm, dater: Dater, day: date) -> Batch:
    """Return a batch as it would be if a task of it were done on a day; unchanged where that cannot be."""
    if what is Happening.SOWN:
        later: Batch = checked(batch, sow_on=day)
        return later
    code = "done today"
    entry = LogEntry(id=id_from("log entry", code, batch.id), code=code, what=what, on=day, batch=batch.id)
    try:
        return anchored(batch, (*farm.log_entries, entry), dater.lengths)
    except FarmFaultError:
        return batch


def _with(farm: Farm, changed: Batch) -> Farm:
    return replace(
        farm, batches=tuple(changed if batch.id == changed.id else batch for batch in farm.batches)
    )


def effect_data(one: CarriedOver, forecast: Forecast, *, code: str) -> dict[str, object]:
    """Return a late task as plain data: batch, task, its day, and the weeks that are short if done today."""
    return {
        "batch": code,
        "what": one.what.value,
        "due_on": one.due_on.isoformat(),
        "late_days": one.late_days,
        "short": [
            {"week": forecast.ruler.week_name(shift.week), "crop": shift.crop, "plants": -shift.plants}
            for shift in one.short
            if shift.week < forecast.ruler.weeks
        ],
    }
