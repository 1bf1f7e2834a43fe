"""What a change moved: first pick of each batch and harvest of each week, before and after; and late tasks.

Pure: compares two forecasts of one plan. Whoever shows it puts it into words.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, replace
from datetime import date

import numpy as np

from planner.farm.checks import checked
from planner.farm.crops import Batch
from planner.farm.farm import Farm
from planner.farm.fields import Id
from planner.farm.log import Happening, standing
from planner.forecast.engine import Forecaster
from planner.forecast.values import Floats, Forecast

_BED = 3


@dataclass(frozen=True, slots=True, kw_only=True)
class WeekShift:
    """Plants of a crop harvested more (or fewer, negative) in one week than before."""

    crop: str
    week: int
    plants: float


@dataclass(frozen=True, slots=True, kw_only=True)
class Moved:
    """A batch whose first pick is on another day than before; None where it was or is not there."""

    batch: Id
    old_on: date | None
    new_on: date | None


@dataclass(frozen=True, slots=True, kw_only=True)
class Difference:
    """All that a change moved."""

    batches: tuple[Moved, ...]
    weeks: tuple[WeekShift, ...]


def difference(before: Forecast, after: Forecast) -> Difference:
    """Return what moved between two forecasts that begin on the same day."""
    old, new = _picks(before), _picks(after)
    moved = tuple(
        Moved(batch=each, old_on=old.get(each), new_on=new.get(each))
        for each in {**old, **new}
        if old.get(each) != new.get(each)
    )
    return Difference(batches=moved, weeks=tuple(_shifts(before, after)))


def _picks(forecast: Forecast) -> dict[Id, date]:
    table = forecast.batches
    return {
        each: forecast.ruler.date_of(int(day))
        for each, day in zip(table.ids, table.ends[:, _BED], strict=True)
    }


def _shifts(before: Forecast, after: Forecast) -> Iterator[WeekShift]:
    old, new = _weekly(before), _weekly(after)
    for crop in sorted({*old, *new}):
        nothing = np.zeros_like(old[crop] if crop in old else new[crop])
        change = new.get(crop, nothing) - old.get(crop, nothing)
        for week in np.flatnonzero(np.rint(change)).tolist():
            yield WeekShift(crop=crop, week=week, plants=float(np.rint(change[week])))


def _weekly(forecast: Forecast) -> dict[str, Floats]:
    return {
        crop: forecast.ruler.weekly_sum(forecast.harvest_plants[row])
        for row, crop in enumerate(forecast.crops)
    }


@dataclass(frozen=True, slots=True, kw_only=True)
class CarriedOver:
    """A task whose day is past and that the log does not know of: what it would move if done today."""

    batch: Id
    what: Happening
    due_on: date
    late_days: int
    effect: Difference


def carried_over(farm: Farm, forecaster: Forecaster, today: date) -> tuple[CarriedOver, ...]:
    """Return sowings that are overdue, each with its effect on the harvest if done today.

    Only from the day of the first entry on: before it, nothing was logged, and silence says nothing.
    """
    if not farm.log_entries:
        return ()
    since = min(entry.on for entry in farm.log_entries)
    known = {entry.batch for entry in standing(farm.log_entries) if entry.what is not Happening.NOT_DONE}
    before = forecaster.preview(farm)
    late = [b for b in farm.batches if since <= b.sow_on < today and b.id not in known]
    return tuple(_carried(farm, batch, before, forecaster, today) for batch in late)


def _carried(farm: Farm, batch: Batch, before: Forecast, forecaster: Forecaster, today: date) -> CarriedOver:
    later = checked(batch, sow_on=today)
    moved = replace(farm, batches=tuple(later if one is batch else one for one in farm.batches))
    return CarriedOver(
        batch=batch.id,
        what=Happening.SOWN,
        due_on=batch.sow_on,
        late_days=(today - batch.sow_on).days,
        effect=difference(before, forecaster.preview(moved)),
    )
