"""Dates single batches as the forecast would, and tells who stands in the way of a batch that is late."""

from __future__ import annotations

from typing import Protocol

from planner.farm.crops import Batch, Placement
from planner.farm.farm import Farm, by_id
from planner.farm.fields import Id
from planner.farm.holds import Hold
from planner.forecast.engine import Forecaster
from planner.forecast.occupancy import clashes, holds
from planner.planning.anchoring import Lengths, alone


class Dating(Protocol):
    """What the log must be able to ask."""

    def lengths(self, batch: Batch) -> Lengths:
        """Return days from sowing to the end of each stage."""

    def in_the_way(self, farm: Farm, batch: Id) -> tuple[Placement, ...]:
        """Return places of other batches that a batch still stands in when they are due there."""


class Dater:
    """Asks a forecaster about one farm."""

    def __init__(self, forecaster: Forecaster, farm: Farm) -> None:
        """Keep who is asked, and what surrounds the batches."""
        self._forecaster = forecaster
        self._farm = farm

    def lengths(self, batch: Batch) -> Lengths:
        """Return days from sowing to the end of each stage, in the order of `Stage`."""
        table = self._forecaster.preview(alone(self._farm, batch)).batches
        sown = int(table.sow_day[0])
        return tuple(int(end) - sown for end in table.ends[0])

    def holds(self, farm: Farm) -> tuple[Hold, ...]:
        """Return how long every placement of a farm is held."""
        return holds(farm, self._forecaster.days(farm))

    def in_the_way(self, farm: Farm, batch: Id) -> tuple[Placement, ...]:
        """Return places of other batches that a batch still stands in when they are due there."""
        held = self.holds(farm)
        known: dict[Id, Placement] = by_id(farm.placements)
        found: dict[Id, None] = {}
        for clash in clashes(held):
            pair = (clash.one, clash.other)
            if any(hold.batch == batch for hold in pair):
                found.update((hold.placement, None) for hold in pair if hold.batch != batch)
        return tuple(known[each] for each in found)
