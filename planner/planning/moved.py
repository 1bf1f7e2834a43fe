"""What a change moved, and why: first pick of each batch and harvest of each week, before and after.

Pure: compares two forecasts of one plan. Whoever shows it puts it into words.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, field, fields
from datetime import date
from enum import Enum

import numpy as np

from planner.farm.changes import Change, ChangeSet
from planner.farm.crops import Batch, Placement
from planner.farm.farm import OwnEntry
from planner.farm.fields import Id
from planner.farm.log import LogEntry
from planner.farm.site import Bed, Loop, Site
from planner.farm.water import Reading
from planner.forecast.values import Days, Floats, Forecast, Ints

_BED = 3
_CLEARED = 5

Dated = Days | Forecast
"""What tells the days of every batch: a whole forecast, or its first part alone."""


@dataclass(frozen=True, slots=True, kw_only=True)
class WeekShift:
    """Plants of a crop harvested more (or fewer, negative) in one week than before.

    `plants` are whole ones, `exact` is what they were rounded from.
    """

    crop: str
    week: int
    plants: float
    exact: float = field(default=0.0, compare=False)


class Milestone(Enum):
    """What of a batch is on another day: its first pick or, where that stays, when its places are free."""

    FIRST_PICK = "first pick"
    CLEARED = "cleared"


_STAGE = {Milestone.FIRST_PICK: _BED, Milestone.CLEARED: _CLEARED}


@dataclass(frozen=True, slots=True, kw_only=True)
class Moved:
    """A batch that is on another day than before; None where it was or is not there."""

    batch: Id
    old_on: date | None
    new_on: date | None
    milestone: Milestone = Milestone.FIRST_PICK


@dataclass(frozen=True, slots=True, kw_only=True)
class Difference:
    """All that a change moved."""

    batches: tuple[Moved, ...]
    weeks: tuple[WeekShift, ...]


def difference(before: Forecast, after: Forecast) -> Difference:
    """Return what moved between two forecasts that begin on the same day."""
    moved = tuple(_moved(before, after, in_both(before, after)))
    return Difference(batches=moved, weeks=tuple(_shifts(before, after)))


@dataclass(frozen=True, slots=True, kw_only=True, eq=False)
class InBoth:
    """The batches that two forecasts have in common.

    `old` and `new` are their rows, shape (batch,), in the order of the new forecast; `later_days`, shape
    (batch, stage), is by how many days each stage of theirs ends later.
    """

    old: Ints
    new: Ints
    later_days: Ints


def in_both(before: Dated, after: Dated) -> InBoth:
    """Return the batches that are in both of two forecasts, and how far they moved."""
    old, new = before.batches, after.batches
    then = now = np.arange(len(new.ids))
    if old.ids != new.ids:
        rows = [(old.row_of[each], row) for row, each in enumerate(new.ids) if each in old.row_of]
        then, now = np.asarray(rows, dtype=np.int64).reshape(-1, 2).T
    shift = (after.ruler.start_on - before.ruler.start_on).days
    return InBoth(old=then, new=now, later_days=new.ends[now] + shift - old.ends[then])


def _moved(before: Dated, after: Dated, both: InBoth) -> Iterator[Moved]:
    """Yield the batches whose first pick is on another day, then those that went, then those that came."""
    yield from _moved_to(both, both.later_days[:, _BED] != 0, Milestone.FIRST_PICK, before, after)
    for row in _others(before, both.old):
        yield Moved(batch=before.batches.ids[row], old_on=_day(before, row, _BED), new_on=None)
    for row in _others(after, both.new):
        yield Moved(batch=after.batches.ids[row], old_on=None, new_on=_day(after, row, _BED))


def _moved_to(
    both: InBoth, which: np.ndarray, milestone: Milestone, before: Dated, after: Dated
) -> Iterator[Moved]:
    stage = _STAGE[milestone]
    for then, now in zip(both.old[which].tolist(), both.new[which].tolist(), strict=True):
        yield Moved(
            batch=after.batches.ids[now],
            old_on=_day(before, then, stage),
            new_on=_day(after, now, stage),
            milestone=milestone,
        )


def _others(forecast: Dated, rows: Ints) -> list[int]:
    """Return the rows of a forecast that are not among some."""
    lone = np.ones(len(forecast.batches.ids), dtype=bool)
    lone[rows] = False
    return lone.nonzero()[0].tolist()


def _day(forecast: Dated, row: int, stage: int) -> date:
    return forecast.ruler.date_of(int(forecast.batches.ends[row, stage]))


def _shifts(before: Forecast, after: Forecast) -> Iterator[WeekShift]:
    old, new = _weekly(before), _weekly(after)
    for crop in sorted({*old, *new}):
        nothing = np.zeros_like(old[crop] if crop in old else new[crop])
        change = new.get(crop, nothing) - old.get(crop, nothing)
        for week in np.flatnonzero(np.rint(change)).tolist():
            exact = float(change[week])
            yield WeekShift(crop=crop, week=week, plants=float(np.rint(exact)), exact=exact)


def _weekly(forecast: Forecast) -> dict[str, Floats]:
    return {
        crop: forecast.ruler.weekly_sum(forecast.harvest_plants[row])
        for row, crop in enumerate(forecast.crops)
    }


class Cause(Enum):
    """What kind of change moved a batch."""

    ADDED = "added"
    REMOVED = "removed"
    LOGGED = "logged"
    ALTERED = "altered"
    PLACES = "places"
    WARMTH = "warmth read"
    GROUND = "site, loop or bed"
    FIGURES = "own figures"
    OTHER = "other"


@dataclass(frozen=True, slots=True, kw_only=True)
class MovedBecause:
    """A batch that an act moved, and why: fields of it that changed, or the code of an entry of the log.

    `by` names what changed: fields of the batch for `ALTERED`, codes of entries for `LOGGED`, words of
    kinds for the others.
    """

    moved: Moved
    cause: Cause
    by: tuple[str, ...]


_CAUSES: tuple[tuple[type, Cause], ...] = (
    (Placement, Cause.PLACES),
    (OwnEntry, Cause.FIGURES),
    (Reading, Cause.WARMTH),
    (Site, Cause.GROUND),
    (Loop, Cause.GROUND),
    (Bed, Cause.GROUND),
)
"""What else moves a batch, the nearest cause first."""


def moved_because(before: Dated, after: Dated, act: ChangeSet) -> tuple[MovedBecause, ...]:
    """Return every batch that an act moved, with old and new day and the cause.

    The day is that of the first pick or, where that stays, the one on which the places are free again.
    """
    both = in_both(before, after)
    found = (*_moved(before, after, both), *_cleared(before, after, both))
    return tuple(_because(one, act) for one in found)


def _cleared(before: Dated, after: Dated, both: InBoth) -> Iterator[Moved]:
    """Yield the batches whose first pick stays, and whose places are free on another day."""
    later = both.later_days
    only = (later[:, _BED] == 0) & (later[:, _CLEARED] != 0)
    return _moved_to(both, only, Milestone.CLEARED, before, after)


def _because(one: Moved, act: ChangeSet) -> MovedBecause:
    logged = tuple(
        change.after.code
        for change in act.changes
        if isinstance(change.after, LogEntry) and change.after.batch == one.batch
    )
    own = next((c for c in act.changes if isinstance(c.thing, Batch) and c.id == one.batch), None)
    if logged:
        return MovedBecause(moved=one, cause=Cause.LOGGED, by=logged)
    if own is not None:
        return _altered(one, own)
    for kind, cause in _CAUSES:
        changed = [each for each in act.changes if isinstance(each.thing, kind) and _touches(each, one)]
        if changed:
            words = tuple(dict.fromkeys(each.word for each in changed))
            return MovedBecause(moved=one, cause=cause, by=words)
    return MovedBecause(moved=one, cause=Cause.OTHER, by=tuple(sorted(act.words)))


def _touches(change: Change, one: Moved) -> bool:
    """Tell whether a change may move a batch; places only move their own."""
    return not isinstance(change.thing, Placement) or change.thing.batch == one.batch


def _altered(one: Moved, change: Change) -> MovedBecause:
    if change.before is None or change.after is None:
        cause = Cause.ADDED if change.before is None else Cause.REMOVED
        return MovedBecause(moved=one, cause=cause, by=())
    names = tuple(
        field.name
        for field in fields(change.after)
        if getattr(change.before, field.name) != getattr(change.after, field.name)
    )
    return MovedBecause(moved=one, cause=Cause.ALTERED, by=names)
