"""Which months of a site are hot or cool, bright or dull, wet or dry, against the rest of its own year.

Words for the eye only: no date and no sum rests on them. Must know nothing of single days.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from enum import Enum
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from planner.catalogue.catalogue import Catalogue
    from planner.farm.site import Site


class Warmth(Enum):
    """How warm a month is against the year."""

    HOT = "hot"
    COOL = "cool"


class Light(Enum):
    """How light a month is against the year."""

    BRIGHT = "bright"
    DULL = "dull"


class Rain(Enum):
    """How wet a month is against the year."""

    WET = "wet"
    DRY = "dry"


@dataclass(frozen=True, slots=True, kw_only=True)
class Month:
    """What a month is called; None where it is neither, or nothing is known."""

    warmth: Warmth | None = None
    light: Light | None = None
    rain: Rain | None = None

    @property
    def plain(self) -> bool:
        """Tell whether there is nothing to say of it."""
        return self.warmth is None and self.light is None and self.rain is None


def months_of(site: Site, catalogue: Catalogue) -> tuple[Month, ...]:
    """Return what the twelve months of a site are called, January first; empty when all are plain."""
    share = _figure(catalogue, "named_month_share")
    warm = _sides(site.air_c, share, _figure(catalogue, "named_least_swing_c"))
    light = _sides(site.radiation_mj_per_m2_d, share, _figure(catalogue, "named_least_swing_mj_per_m2_d"))
    wet = _sides(site.rain_mm, share, _figure(catalogue, "named_least_swing_rain_mm"))
    found = tuple(
        Month(warmth=_WARMTH.get(one), light=_LIGHT.get(other), rain=_RAIN.get(third))
        for one, other, third in zip(warm, light, wet, strict=True)
    )
    return () if all(month.plain for month in found) else found


_MONTHS = 12
_WARMTH = {1: Warmth.HOT, -1: Warmth.COOL}
_LIGHT = {1: Light.BRIGHT, -1: Light.DULL}
_RAIN = {1: Rain.WET, -1: Rain.DRY}


def _figure(catalogue: Catalogue, name: str) -> float:
    return catalogue.figure(f"coefficient/season/{name}").value


def _sides(means: Sequence[float], share: float, least_swing: float) -> tuple[int, ...]:
    """Return 1 for a month near the top of the year's swing, -1 near the bottom, else 0."""
    if not means or max(means) - min(means) < least_swing:
        return (0,) * _MONTHS
    low, high = min(means), max(means)
    margin = (high - low) * share
    return tuple((value >= high - margin) - (value <= low + margin) for value in means)
