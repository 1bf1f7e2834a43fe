"""The largest dose of base that moves pH no further than a step, and a week's doses in turn.

Must not know products' contents or gaps.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass
from typing import Final

from planner.catalogue.catalogue import Catalogue
from planner.catalogue.figure import Figure
from planner.farm.farm import DAYS_PER_WEEK
from planner.forecast.water.chemistry import Chemistry, dose_for_ph_step_eq_per_l
from planner.forecast.water.spans import figures_from

_MG_PER_G: Final = 1000.0
_BUFFER_PH: Final = (5.0, 8.3)
"""Range in which bicarbonate and carbon dioxide alone buffer."""
_ROUNDING: Final = 1e-9

_PATHS: Final = {
    "ph_step_per_day": "loop/ph_step_per_day",
    "alkalinity_assumed": "coefficient/water_care/alkalinity_assumed_mg_per_l",
    "ph_assumed": "coefficient/water_care/ph_assumed",
    "doses_per_week": "coefficient/water_care/base_doses_per_week",
}


@dataclass(frozen=True, slots=True, kw_only=True)
class DoseFigures:
    """The rows that doses go by."""

    ph_step_per_day: Figure
    alkalinity_assumed: Figure
    ph_assumed: Figure
    doses_per_week: Figure


def dose_figures(catalogue: Catalogue) -> DoseFigures:
    """Return the rows as the catalogue has them."""
    return figures_from(catalogue, DoseFigures, _PATHS)


@dataclass(frozen=True, slots=True, kw_only=True)
class WaterNow:
    """The water as last tested; None where there is no reading young enough."""

    water_l: float
    ph: float | None = None
    alkalinity_mg_per_l: float | None = None
    tan_mg_per_l: float | None = None

    def assumed(self) -> tuple[str, ...]:
        """Return what has to be assumed for the largest dose."""
        missing = (("ph", self.ph), ("alkalinity", self.alkalinity_mg_per_l))
        return tuple(name for name, value in missing if value is None)


@dataclass(frozen=True, slots=True, kw_only=True)
class BaseDose:
    """One dose of one base on a day of the week, 0 the first."""

    day: int
    supplement: str
    grams: float
    eq: float


@dataclass(frozen=True, slots=True, kw_only=True)
class DosePart:
    """One product's part of a week: equivalents, grams, and the most grams in a dose (above 0)."""

    supplement: str
    eq: float
    grams: float
    cap_g: float


def dose_cap_eq(
    water: WaterNow, *, carbon_dioxide_used: float, figures: DoseFigures, chemistry: Chemistry
) -> float:
    """Return the most base for one dose [eq] that moves pH by the stated step a day.

    Alkalinity lower than the assumed one, even none, is taken as the low end of the assumption: a cap of
    nothing would help nobody.
    """
    assumed = figures.alkalinity_assumed
    alkalinity = assumed.value if water.alkalinity_mg_per_l is None else water.alkalinity_mg_per_l
    ph = figures.ph_assumed.value if water.ph is None else water.ph
    per_l = dose_for_ph_step_eq_per_l(
        max(alkalinity, assumed.low) / _MG_PER_G / chemistry.caco3_g_per_eq,
        ph=min(max(ph, _BUFFER_PH[0]), _BUFFER_PH[1]),
        step=figures.ph_step_per_day.value,
        pk1=chemistry.pk1,
        carbon_dioxide_used=carbon_dioxide_used,
    )
    return per_l * water.water_l


def dose_plan(parts: Sequence[DosePart], *, figures: DoseFigures) -> tuple[tuple[BaseDose, ...], float]:
    """Return a week's doses in turn, one base a day at most, and the equivalents that did not fit."""
    wanted = [math.ceil(part.grams / part.cap_g - _ROUNDING) for part in parts]
    counts = _fitting(wanted, int(figures.doses_per_week.value))
    order = _in_turn(counts)
    doses = tuple(
        _dose(parts[place], counts[place], day=number * DAYS_PER_WEEK // len(order))
        for number, place in enumerate(order)
    )
    given = sum(dose.eq for dose in doses)
    left_over = sum(part.eq for part in parts) - given
    return doses, left_over if left_over > _ROUNDING * max(given, 1.0) else 0.0


def _dose(part: DosePart, count: int, *, day: int) -> BaseDose:
    """Return one of so many equal doses of a product, none above its cap."""
    grams = min(part.grams / count, part.cap_g)
    return BaseDose(day=day, supplement=part.supplement, grams=grams, eq=part.eq * grams / part.grams)


def _fitting(wanted: Sequence[int], most: int) -> list[int]:
    """Return numbers of doses that fit in a week; when too many, each base loses in turn, the most first."""
    counts = [min(count, most) for count in wanted]
    while sum(counts) > most:
        counts[counts.index(max(counts))] -= 1
    return counts


def _in_turn(counts: Sequence[int]) -> list[int]:
    """Return places so that each comes as evenly through the week as its count allows."""
    spots = [
        ((turn + 1.0 / 2.0) / count, place) for place, count in enumerate(counts) for turn in range(count)
    ]
    return [place for _, place in sorted(spots)]
