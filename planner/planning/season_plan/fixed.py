"""What stands already and is not for the plan to change: which batches, and the places they hold by day."""

from __future__ import annotations

import dataclasses
from collections.abc import Iterator, Sequence
from datetime import date

import numpy as np

from planner.farm.crops import Batch, Phase
from planner.farm.farm import Farm
from planner.farm.fields import NO_ID, Id
from planner.forecast.values import Forecast
from planner.planning.season_plan.values import Ground, Ints, Nursery, Pool


def wanted_crops(farm: Farm, *, from_on: date, until_on: date) -> tuple[str, ...]:
    """Return the crops that a target asks for between a day and the day before another, each once."""
    asking = (
        target.crop
        for target in farm.targets
        if target.from_on < until_on and (target.until_on is None or target.until_on >= from_on)
    )
    return tuple(dict.fromkeys(asking))


def is_open(batch: Batch, *, crops: frozenset[str], from_on: date, until_on: date) -> bool:
    """Tell whether a plan may take a batch's place: of a wanted crop, not locked, sown in its weeks."""
    return batch.crop in crops and not batch.locked and from_on <= batch.sow_on < until_on


def fixed_part(farm: Farm, *, from_on: date, until_on: date) -> Farm:
    """Return the farm without the batches whose place the plan may take.

    What is locked, sown earlier or later, or of a crop that no target asks for in that time stays.
    """
    crops = frozenset(wanted_crops(farm, from_on=from_on, until_on=until_on))
    stays = tuple(
        batch for batch in farm.batches if not is_open(batch, crops=crops, from_on=from_on, until_on=until_on)
    )
    ids = {batch.id for batch in stays}
    placements = tuple(placement for placement in farm.placements if placement.batch in ids)
    return dataclasses.replace(farm, batches=stays, placements=placements)


def bed_holds(farm: Farm, forecast: Forecast, beds: Sequence[Ground | Pool], *, days: int) -> Ints:
    """Return places held in each ground or pool by day, at either distance, shape (ground, day).

    What has no places yet counts where it is meant to stand.
    """
    number = {bed: index for index, some in enumerate(beds) for bed in some.beds}
    return _held(
        (
            _Hold(number[bed], row, phase, count)
            for phase in (Phase.SPACING, Phase.BED)
            for bed, row, count in _in_beds(farm, forecast, phase)
            if bed in number
        ),
        forecast,
        shape=(len(beds), days),
    )


def nursery_holds(farm: Farm, forecast: Forecast, nurseries: Sequence[Nursery], *, days: int) -> Ints:
    """Return cells held in the nurseries of each loop by day, shape (nursery, day)."""
    number = {bed: index for index, nursery in enumerate(nurseries) for bed in nursery.beds}
    of_loop = {nursery.loop: index for index, nursery in enumerate(nurseries)}
    loops = {loop.id: index for index, loop in enumerate(farm.loops)}
    meant = {bed.id: of_loop.get(loops[bed.loop], -1) for bed in farm.beds}
    return _held(
        (
            _Hold(pool, row, Phase.NURSERY, count)
            for pool, row, count in _in_nurseries(farm, forecast, number=number, meant=meant)
        ),
        forecast,
        shape=(len(nurseries), days),
    )


@dataclasses.dataclass(frozen=True, slots=True)
class _Hold:
    """Places of a group that a batch holds in a phase."""

    group: int
    row: int
    phase: Phase
    count: int


def _in_beds(farm: Farm, forecast: Forecast, phase: Phase) -> Iterator[tuple[Id, int, int]]:
    placed = dict.fromkeys(forecast.batches.ids, 0)
    row_of = forecast.batches.row_of
    for placement in farm.placements:
        if placement.phase is phase:
            placed[placement.batch] += placement.count
            yield placement.bed, row_of[placement.batch], placement.count
    for batch in farm.batches:
        missing = batch.plants - placed[batch.id]
        start, end = forecast.batches.phase_days(row_of[batch.id], phase)
        if missing > 0 and batch.bed != NO_ID and (end > start or phase is Phase.BED):
            yield batch.bed, row_of[batch.id], missing


def _in_nurseries(
    farm: Farm, forecast: Forecast, *, number: dict[Id, int], meant: dict[Id, int]
) -> Iterator[tuple[int, int, int]]:
    table = forecast.batches
    placed = set()
    for placement in farm.placements:
        if placement.phase is Phase.NURSERY and placement.bed in number:
            placed.add(placement.batch)
            yield number[placement.bed], table.row_of[placement.batch], placement.count
    for row, batch in enumerate(farm.batches):
        pool = meant.get(batch.bed, -1)
        if batch.id not in placed and pool >= 0:
            yield pool, row, int(table.seeds[row])


def _held(holds: Iterator[_Hold], forecast: Forecast, *, shape: tuple[int, int]) -> Ints:
    groups, days = shape
    change = np.zeros((groups, days + 1), dtype=np.int64)
    for hold in holds:
        start, end = forecast.batches.phase_days(hold.row, hold.phase)
        change[hold.group, min(max(start, 0), days)] += hold.count
        change[hold.group, min(max(end, start + 1, 0), days)] -= hold.count
    held: Ints = np.cumsum(change, axis=1)[:, :days]
    return held
