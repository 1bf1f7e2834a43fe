"""Every computation that a case may name."""

from __future__ import annotations

from collections.abc import Mapping
from types import MappingProxyType
from typing import Final

from planner.forecast.verify.ledger import Computation
from planner.forecast.verify.on_crops import CROPS
from planner.forecast.verify.on_feed import FEED
from planner.forecast.verify.on_filters import FILTERS
from planner.forecast.verify.on_fish import FISH
from planner.forecast.verify.on_sizing import SIZING
from planner.forecast.verify.on_sun import SUN
from planner.forecast.verify.on_systems import SYSTEMS, SystemComputation
from planner.forecast.verify.on_water import WATER

COMPUTATIONS: Final[Mapping[str, Computation]] = MappingProxyType(
    {**WATER, **FILTERS, **FEED, **CROPS, **SUN, **FISH, **SIZING}
)
SYSTEM_COMPUTATIONS: Final[Mapping[str, SystemComputation]] = MappingProxyType(SYSTEMS)
