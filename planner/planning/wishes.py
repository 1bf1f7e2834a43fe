"""Gives places to batches that only say which bed they are meant for."""

from __future__ import annotations

import dataclasses
from dataclasses import dataclass

from planner.farm.crops import Batch, Phase, Placement
from planner.farm.farm import Farm
from planner.farm.fields import NO_ID, Id
from planner.farm.ids import id_from
from planner.farm.species import BedKind
from planner.forecast.values import Forecast
from planner.planning.placement import Places, Refusal


@dataclass(frozen=True, slots=True, kw_only=True)
class Placed:
    """A farm with places given to what fitted, and why the rest did not fit."""

    farm: Farm
    refusals: tuple[Refusal, ...]


class _Numbered:
    """Makes ids that come out the same each time the same farm is read."""

    def __init__(self) -> None:
        self._count = 0

    def __call__(self) -> Id:
        """Return the next id."""
        self._count += 1
        return id_from("chosen place", str(self._count))


def place_wishes(farm: Farm, forecast: Forecast) -> Placed:
    """Return the farm with places for every batch that has a bed in mind but no places there.

    Batches are taken by the day they need the place. Seedlings get nursery cells, one a seed, where
    the loop of their bed has a nursery. What does not fit stays without places.
    """
    places = Places(farm, forecast, make_id=_Numbered())
    given: list[Placement] = []
    refusals: list[Refusal] = []
    for batch, phase in _wanting(farm, forecast):
        found = _place(batch, phase, farm=farm, forecast=forecast, places=places)
        if isinstance(found, Refusal):
            refusals.append(found)
            continue
        for placement in found:
            places.hold(placement)
        given.extend(found)
    placed = dataclasses.replace(farm, placements=(*farm.placements, *given))
    return Placed(farm=placed, refusals=tuple(refusals))


def _wanting(farm: Farm, forecast: Forecast) -> list[tuple[Batch, Phase]]:
    """Return batches and phases in want of places, by the first day they need them."""
    has = {(placement.batch, placement.phase) for placement in farm.placements}
    table = forecast.batches
    wanting = [
        (table.phase_days(row, phase)[0], row, phase)
        for row, batch in enumerate(farm.batches)
        if batch.bed != NO_ID
        for phase in (Phase.NURSERY, Phase.BED)
        if (batch.id, phase) not in has and table.phase_days(row, phase)[1] > table.phase_days(row, phase)[0]
    ]
    wanting.sort(key=_by_day)
    return [(farm.batches[row], phase) for _, row, phase in wanting]


def _by_day(entry: tuple[int, int, Phase]) -> tuple[int, int]:
    day, row, _ = entry
    return day, row


def _place(
    batch: Batch, phase: Phase, *, farm: Farm, forecast: Forecast, places: Places
) -> tuple[Placement, ...] | Refusal:
    if phase is Phase.BED:
        return places.fit(batch.id, phase, batch.bed, count=batch.plants)
    seeds = int(forecast.batches.seeds[forecast.batches.row_of[batch.id]])
    found: tuple[Placement, ...] | Refusal = ()
    for nursery in nurseries_of(farm, batch):
        found = places.fit(batch.id, phase, nursery, count=seeds)
        if not isinstance(found, Refusal):
            break
    return found


def nurseries_of(farm: Farm, batch: Batch) -> tuple[Id, ...]:
    """Return the nurseries on the loop of the bed a batch is meant for."""
    loops = {bed.id: bed.loop for bed in farm.beds}
    loop = loops[batch.bed]
    return tuple(bed.id for bed in farm.beds if bed.kind is BedKind.NURSERY and bed.loop == loop)
