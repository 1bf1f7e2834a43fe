"""What is due on which day: sowing, moving, picking, clearing, fish to harvest, doses to give."""

from __future__ import annotations

from collections.abc import Collection, Iterator
from dataclasses import dataclass
from datetime import date
from enum import Enum
from typing import Any, Final

from planner.farm.crops import Batch, Phase, Placement
from planner.farm.farm import DAYS_PER_WEEK, Farm, by_id
from planner.farm.fields import NO_ID, Id
from planner.farm.fish import FishEventKind
from planner.farm.species import HarvestKind
from planner.farm.withdrawal import treatment_barring
from planner.forecast.profiles import picks_by_day
from planner.forecast.supply import dose_days
from planner.forecast.values import STAGES, Forecast

_DIGITS: Final = 2


class DueKind(Enum):
    """What is to be done."""

    SOW = "sow"
    SPACE = "space"
    MOVE = "move"
    PICK = "pick"
    CLEAR = "clear"
    STOCK_FISH = "stock fish"
    HARVEST_FISH = "harvest fish"
    FEED = "feed"
    DOSE = "dose"
    SIPHON = "siphon"
    FILL_MINERALISER = "fill mineraliser"
    RETURN_LIQUOR = "return liquor"


class DueUnit(Enum):
    """What `DueTask.many` counts."""

    SEEDS = "seeds"
    PLANTS = "plants"
    FISH = "fish"
    G_PER_DAY = "g/d"
    G = "g"
    DAYS = "d"


@dataclass(frozen=True, slots=True, kw_only=True)
class DueWhere:
    """A run of places, by the bed's name."""

    bed: str
    unit: int
    first: int
    last: int


@dataclass(frozen=True, slots=True, kw_only=True)
class DueTask:
    """One thing to do: when, what, to what, how many, where.

    `about` is the id of the batch, group, dose, loop or solids batch; `what` its code or name; `crop` the
    crop's key. Of solids `many` is days: between siphonings, gathered in a batch, rotted until it goes back.
    """

    on: date
    kind: DueKind
    about: Id
    what: str
    crop: str = ""
    many: float = 0.0
    unit: DueUnit
    where: tuple[DueWhere, ...] = ()


def due_in_week(farm: Farm, forecast: Forecast, week: int) -> tuple[DueTask, ...]:
    """Return what is due in one week of the ruler, solids too, by date, then by kind of task."""
    first = week * DAYS_PER_WEEK
    days = {"first_day": first, "last_day": first + DAYS_PER_WEEK}
    return _in_order((*due_between(farm, forecast, **days), *solids_due(farm, forecast, **days)))


def due_between(farm: Farm, forecast: Forecast, *, first_day: int, last_day: int) -> tuple[DueTask, ...]:
    """Return what is due from `first_day` up to the day before `last_day`, but for solids."""
    tasks = (
        *_batch_tasks(farm, forecast, first_day, last_day),
        *_fish_tasks(farm, forecast, first_day, last_day),
        *_dose_tasks(farm, forecast, first_day, last_day),
    )
    return _in_order(tasks)


def _in_order(tasks: tuple[DueTask, ...]) -> tuple[DueTask, ...]:
    order = {kind: number for number, kind in enumerate(DueKind)}
    return tuple(sorted(tasks, key=lambda task: (task.on, order[task.kind], task.what)))


def _batch_tasks(farm: Farm, forecast: Forecast, first: int, last: int) -> Iterator[DueTask]:
    table = forecast.batches
    near = (table.sow_day < last) & (table.ends[:, -1] >= first)
    rows = near.nonzero()[0]
    places = _Places(farm, {table.ids[row] for row in rows})
    for row in rows:
        for task, day in _tasks_of_batch(farm.batches[row], forecast, int(row), places):
            if first <= day < last:
                yield task


def _tasks_of_batch(
    batch: Batch, forecast: Forecast, row: int, places: _Places
) -> Iterator[tuple[DueTask, int]]:
    table, ruler = forecast.batches, forecast.ruler
    profile = forecast.profiles[table.profile[row]]
    ends = dict(zip(STAGES, (int(day) for day in table.ends[row]), strict=True))
    _, nursery, spacing, bed, picking, clearing = ends.values()

    def task(kind: DueKind, day: int, many: float, phase: Phase, unit: DueUnit = DueUnit.PLANTS) -> DueTask:
        return DueTask(
            on=ruler.date_of(day),
            kind=kind,
            about=batch.id,
            what=batch.code,
            crop=batch.crop,
            many=many,
            unit=unit,
            where=places.of(batch, phase),
        )

    sow_day = int(table.sow_day[row])
    yield task(DueKind.SOW, sow_day, float(table.seeds[row]), Phase.NURSERY, DueUnit.SEEDS), sow_day
    if spacing > nursery:
        yield task(DueKind.SPACE, nursery, batch.plants, Phase.SPACING), nursery
    if spacing > sow_day:
        yield task(DueKind.MOVE, spacing, batch.plants, Phase.BED), spacing
    standing = round(batch.plants * profile.bed_survival_share)
    shares = picks_by_day(profile)
    once = profile.crop.harvest is HarvestKind.SINGLE
    for offset in shares.nonzero()[0] if table.ripe[row] > 0.0 else ():
        many = standing * shares[offset] if once else standing
        yield task(DueKind.PICK, bed + int(offset), float(many), Phase.BED), bed + int(offset)
    if clearing > picking:
        yield task(DueKind.CLEAR, picking, batch.plants, Phase.BED), picking


class _Places:
    """Where some batches stand in each phase, in the words of their beds."""

    def __init__(self, farm: Farm, batches: Collection[Id]) -> None:
        self._beds = by_id(farm.beds)
        self._held: dict[tuple[Id, Phase], list[Placement]] = {}
        for placement in [run for run in farm.placements if run.batch in batches]:
            self._held.setdefault((placement.batch, placement.phase), []).append(placement)

    def of(self, batch: Batch, phase: Phase) -> tuple[DueWhere, ...]:
        """Return the runs a batch holds; its wished bed without places when none are given."""
        held = self._held.get((batch.id, phase), ())
        if not held and phase is Phase.BED and batch.bed != NO_ID:
            return (DueWhere(bed=self._beds[batch.bed].name, unit=0, first=0, last=0),)
        return tuple(
            DueWhere(bed=self._beds[run.bed].name, unit=run.unit, first=run.first, last=run.last)
            for run in held
        )


def _fish_tasks(farm: Farm, forecast: Forecast, first: int, last: int) -> Iterator[DueTask]:
    ruler = forecast.ruler
    for group in farm.fish_groups:
        if first <= ruler.day_of(group.stocked_on) < last:
            yield DueTask(
                on=group.stocked_on,
                kind=DueKind.STOCK_FISH,
                about=group.id,
                what=group.name,
                many=group.count,
                unit=DueUnit.FISH,
            )
    harvests = {e.group for e in farm.fish_events if e.kind is FishEventKind.HARVEST}
    for loop in forecast.loops:
        for found in loop.groups:
            days = found.harvest_count[first:last].nonzero()[0] if found.group in harvests else ()
            for day in days:
                on = ruler.date_of(first + int(day))
                if treatment_barring(found.group, on, farm.fish_events) is not None:
                    continue
                yield DueTask(
                    on=on,
                    kind=DueKind.HARVEST_FISH,
                    about=found.group,
                    what=found.name,
                    many=float(found.harvest_count[first + day]),
                    unit=DueUnit.FISH,
                )
            feed = found.feed_g[first:last]
            if feed.size and feed.any():
                yield DueTask(
                    on=ruler.date_of(first),
                    kind=DueKind.FEED,
                    about=found.group,
                    what=found.name,
                    many=float(feed.mean()),
                    unit=DueUnit.G_PER_DAY,
                )


def _dose_tasks(farm: Farm, forecast: Forecast, first: int, last: int) -> Iterator[DueTask]:
    for dose in farm.doses:
        for day in dose_days(dose, forecast.ruler):
            if first <= day < last:
                yield DueTask(
                    on=forecast.ruler.date_of(day),
                    kind=DueKind.DOSE,
                    about=dose.id,
                    what=dose.supplement,
                    many=dose.grams,
                    unit=DueUnit.G,
                )


def solids_due(farm: Farm, forecast: Forecast, *, first_day: int, last_day: int) -> Iterator[DueTask]:
    """Yield siphonings, and mineralisers to fill and to give back, from one day to the day before another.

    Siphonings are counted from the first day of the plan, as in the forecast.
    """
    date_of, day_of = forecast.ruler.date_of, forecast.ruler.day_of
    for loop in farm.loops:
        every = loop.solids_settled_siphoned_every_days
        for day in range(every, forecast.ruler.days, every) if every else ():
            if first_day <= day < last_day:
                yield _of_solids(DueKind.SIPHON, date_of(day), loop.id, loop.name, every or 0)
    for batch in farm.solids_batches:
        if first_day <= day_of(batch.siphoned_on) < last_day:
            yield _of_solids(DueKind.FILL_MINERALISER, batch.siphoned_on, batch.id, batch.code, batch.days)
        back = batch.returned_on
        if back is not None and first_day <= day_of(back) < last_day:
            rotted = (back - batch.siphoned_on).days
            yield _of_solids(DueKind.RETURN_LIQUOR, back, batch.id, batch.code, rotted)


def _of_solids(kind: DueKind, on: date, about: Id, what: str, days: int) -> DueTask:
    return DueTask(on=on, kind=kind, about=about, what=what, many=float(days), unit=DueUnit.DAYS)


SOLIDS_CAUTION: Final = "solids-as-manure"
"""The caution of the catalogue that stands beside every one of `OF_SOLIDS`."""

OF_SOLIDS: Final = frozenset({DueKind.SIPHON, DueKind.FILL_MINERALISER, DueKind.RETURN_LIQUOR})


def task_data(task: DueTask) -> dict[str, Any]:
    """Return a task as plain data."""
    return {
        "on": task.on.isoformat(),
        "do": task.kind.value,
        "what": task.what,
        "crop": task.crop or None,
        "many": round(task.many, _DIGITS),
        "unit": task.unit.value,
        "where": [
            {"bed": run.bed, "unit": run.unit, "first": run.first, "last": run.last} for run in task.where
        ],
    }
