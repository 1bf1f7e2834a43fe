"""Gives places to batches that only say which bed they are meant for."""

from __future__ import annotations

import dataclasses
from dataclasses import dataclass

from planner.farm.crops import Batch
from planner.farm.farm import Farm
from planner.farm.fields import Id
from planner.farm.ids import id_from
from planner.farm.species import BedKind
from planner.forecast.values import Forecast
from planner.planning.many import Rules, place_many
from planner.planning.placement import Refusal


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
    found = place_many(farm.batches, farm, forecast, rules=Rules(keep_together=True), make_id=_Numbered())
    placed = dataclasses.replace(farm, placements=(*farm.placements, *found.placements))
    return Placed(farm=placed, refusals=found.refusals)


def nurseries_of(farm: Farm, batch: Batch) -> tuple[Id, ...]:
    """Return the nurseries on the loop of the bed a batch is meant for."""
    loops = {bed.id: bed.loop for bed in farm.beds}
    loop = loops[batch.bed]
    return tuple(bed.id for bed in farm.beds if bed.kind is BedKind.NURSERY and bed.loop == loop)
