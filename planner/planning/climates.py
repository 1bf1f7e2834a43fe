"""Twelve monthly means of air from a coarse class of climate, for a farm that is begun without its own.

Guesses, marked as such in the figures: they give way to what a grower enters or reads. Must know nothing
of widgets or files.
"""

from __future__ import annotations

import math
from enum import Enum
from typing import Final

from planner.catalogue.catalogue import Catalogue

_ROWS: Final = "coefficient/climates/"
_M_PER_KM: Final = 1000.0
_MONTHS: Final = 12
_HALF_YEAR: Final = 6


class ClimateClass(Enum):
    """How warm the months are; `UNKNOWN` leaves the days as the book has them."""

    UNKNOWN = "unknown"
    TROPICAL = "tropical"
    MILD = "mild"
    COLD = "cold"
    HEATED = "heated"


def monthly_air(
    kind: ClimateClass, *, latitude_deg: float | None, altitude_m: float, catalogue: Catalogue
) -> tuple[float, ...]:
    """Return twelve means of air [°C], January first, to a tenth; empty for an unknown climate.

    A year is a cosine between the coldest month and the warmest, half a year apart. South of the equator
    it is turned by half a year; without a latitude it is taken as north. Air is colder with height, but
    not where it is heated.
    """
    if kind is ClimateClass.UNKNOWN:
        return ()
    mean = catalogue.figure(f"{_ROWS}{kind.value}_mean_c").value
    swing = catalogue.figure(f"{_ROWS}{kind.value}_swing_c").value
    if kind is not ClimateClass.HEATED:
        mean -= catalogue.figure(f"{_ROWS}lapse_c_per_km").value * altitude_m / _M_PER_KM
    coldest = catalogue.figure(f"{_ROWS}coldest_month_north").value
    if latitude_deg is not None and latitude_deg < 0:
        coldest += _HALF_YEAR
    return tuple(
        round(mean - swing * math.cos(math.tau * (month - coldest) / _MONTHS), 1)
        for month in range(1, _MONTHS + 1)
    )
