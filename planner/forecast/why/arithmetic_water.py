"""Arithmetic of the formulas that stocks, solids batches, alkalinity, readings and doses state."""

from __future__ import annotations

import math
from collections.abc import Callable, Mapping
from typing import Final

from planner.farm.farm import DAYS_PER_WEEK
from planner.forecast.why.formulas import Formula

_PER_THOUSAND: Final = 1000.0
_CM_PER_M: Final = 100.0

_Values = Mapping[str, float]


def _stock(of: _Values) -> float:
    moved_g = of["supplied_g"] - of["taken_g"] - of["left_g"]
    return of["start_mg_per_l"] + moved_g * _PER_THOUSAND / of["water_l"]


def _batch_gas(of: _Values) -> float:
    released = of["gathered_g"] * of["limit"] * -math.expm1(-of["rate_per_day"] * of["days"])
    return released * of["lost_share"]


def _ahead(of: _Values) -> float:
    moved = of["lifted_by_base_mg_per_l"] - of["fallen_by_acid_mg_per_l"]
    return of["reading_mg_per_l"] + moved + of["kept_above_0_mg_per_l"]


def _acid_seen(of: _Values) -> float:
    fall_g = -of["change_per_week"] / DAYS_PER_WEEK * of["water_l"] / _PER_THOUSAND
    return fall_g / of["caco3_g_per_eq"] + of["base_eq_per_day"]


def _gravel(of: _Values) -> float:
    return of["area_m2"] * of["depth_cm"] / _CM_PER_M * of["surface_m2_per_m3"] * of["working_share"]


WATERED: Final[Mapping[Formula, Callable[[_Values], float]]] = {
    Formula.STOCK: _stock,
    Formula.TAKEN: lambda of: of["wanted_g"] - of["lacking_g"],
    Formula.LACKING: lambda of: of["wanted_g"] - of["taken_g"],
    Formula.COVERED: lambda of: (of["supply_g"] + of["stock_g"]) / of["demand_g"],
    Formula.HELD_GRAMS: lambda of: of["level_mg_per_l"] * of["water_l"] / _PER_THOUSAND,
    Formula.GATHERED: lambda of: of["caught_in_plan_g"] + of["caught_before_g"],
    Formula.BATCH_GAS: _batch_gas,
    Formula.ALKALINITY_AHEAD: _ahead,
    Formula.FALL_OF_ACID: lambda of: of["acid_eq"] * of["caco3_g_per_eq"] * _PER_THOUSAND / of["water_l"],
    Formula.ACID_SEEN: _acid_seen,
    Formula.DAYS_LATE: lambda of: of["days_since_last"] - of["every_days"],
    Formula.GRAVEL: _gravel,
    Formula.OXYGEN_PEAK: lambda of: of["oxygen_g_per_h"] * of["peak_factor"],
    Formula.ELEMENT_IN_DOSE: lambda of: of["grams"] * of["element_share"],
    Formula.LEVEL_OF_GRAMS: lambda of: of["held_g"] * _PER_THOUSAND / of["water_l"],
    Formula.BASE_IN_DOSE: lambda of: of["grams"] * of["base_eq_per_kg"] / _PER_THOUSAND,
    Formula.BASE_LEFT: lambda of: of["base_eq"] - of["fits_eq"],
}
"""Formulas of inputs alone."""
