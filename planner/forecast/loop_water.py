"""The part of a loop's water that the crops have no share in: solids, where pools begin, all supply.

Kept from one forecast to the next as long as nothing it hangs on has changed, so that moving a batch
costs no more than the pools themselves.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass

from planner.catalogue.catalogue import Catalogue
from planner.farm.farm import Farm
from planner.farm.fields import Id
from planner.farm.site import Loop
from planner.forecast.keeping import same
from planner.forecast.pools import PoolSetup, pool_figures, pool_setup, readings_of_pools
from planner.forecast.solids import solids_fate, solids_figures, solids_setup
from planner.forecast.values import Floats, Ruler, SolidsFate


@dataclass(frozen=True, slots=True, kw_only=True)
class LoopWater:
    """Solids of a loop, how its pools begin, and all that reaches the plants [g] by (element, day)."""

    solids: SolidsFate
    pools: PoolSetup
    supply_g: Floats


@dataclass(frozen=True, slots=True)
class _Kept:
    key: tuple[object, ...]
    arrays: Mapping[str, Floats]
    water: LoopWater


class WaterKeeper:
    """Works out the water of loops, and keeps it."""

    def __init__(self, catalogue: Catalogue) -> None:
        """Take the coefficients from the catalogue once."""
        self._solids_figures = solids_figures(catalogue)
        self._pool_figures = pool_figures(catalogue)
        self._kept: dict[Id, _Kept] = {}

    def water_of(self, farm: Farm, loop: Loop, *, arrays: Mapping[str, Floats], ruler: Ruler) -> LoopWater:
        """Return the water of a loop; `arrays` are what fish, make-up and doses bring, by name."""
        key = (loop, farm.filters, farm.beds, farm.solids_batches, farm.readings, ruler)
        kept = self._kept.get(loop.id)
        if kept is not None and kept.arrays is arrays and same(kept.key, key):
            return kept.water
        water = self._water_anew(farm, loop, arrays, ruler)
        self._kept[loop.id] = _Kept(key, arrays, water)
        return water

    def _water_anew(self, farm: Farm, loop: Loop, arrays: Mapping[str, Floats], ruler: Ruler) -> LoopWater:
        setup = solids_setup(farm, loop, self._solids_figures, ruler)
        solids = solids_fate(arrays["solids_g"], setup, self._solids_figures, ruler)
        brought = arrays["dissolved_g"] + arrays["top_up_g"] + arrays["dose_g"]
        return LoopWater(
            solids=solids,
            pools=pool_setup(loop, readings_of_pools(farm), self._pool_figures, ruler),
            supply_g=brought + solids.mineralised_g + solids.liquor_g,
        )
