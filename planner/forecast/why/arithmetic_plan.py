"""Arithmetic of the formulas that ranges, chances and plans state, by the names of their inputs.

Those of single figures of a forecast are in `arithmetic`, which asks here for the rest.
"""

from __future__ import annotations

import math
from collections.abc import Callable, Mapping, Sequence
from typing import Final

from planner.farm.farm import DAYS_PER_WEEK
from planner.forecast.why.formulas import Formula

_FLOAT_NOISE: Final = 1e-9
_PER_THOUSAND: Final = 1000.0
_CM_PER_M: Final = 100.0

_Values = Mapping[str, float]


def _up(value: float) -> float:
    return float(math.ceil(value - _FLOAT_NOISE * max(1.0, abs(value))))


def _changed(of: _Values) -> tuple[float, float]:
    return of["change_at_low"], of["change_at_high"]


def _apart(of: _Values) -> float:
    """Return the factor that the factors of supply and of demand make together."""
    return math.exp(math.hypot(math.log(of["supply_times"]), math.log(of["demand_times"])))


def _area_carried(of: _Values) -> float:
    standing = of["leafy_m2"] * of["leafy"] + of["fruiting_m2"] * of["fruiting"]
    spare = of["feed_g_per_day"] * of["protein_share"] / of["reference_protein"] - standing
    return max(0.0, spare) / of["ratio_g_per_m2_d"]


def _gives(of: _Values) -> float:
    return of["bed_survival_share"] * of["marketable_share"] * of["pick_share"]


PLANNED: Final[Mapping[Formula, Callable[[_Values], float]]] = {
    Formula.RANGE: lambda of: of["likely"],
    Formula.RAISED: lambda of: max(0.0, *_changed(of)),
    Formula.FACTOR: lambda of: 1.0 + min(0.0, *_changed(of)) / of["likely"],
    Formula.TIMES: lambda of: max(1.0, of["high"] / of["likely"]),
    Formula.RATIO_HIGH: lambda of: of["likely"] * _apart(of),
    Formula.RATIO_LOW: lambda of: of["likely"] / _apart(of),
    Formula.CHANCE: lambda of: of["draws_that_met"] / of["draws"],
    Formula.SAMPLING_ERROR: lambda of: math.sqrt(of["chance"] * (1.0 - of["chance"]) / of["draws"]),
    Formula.DEVIATION: lambda of: (of["high"] - of["low"]) / of["range_deviations"],
    Formula.DEVIATION_ON_FARM: lambda of: (
        (of["high"] - of["low"]) / of["range_deviations"] * of["days_within_farm_share"]
    ),
    Formula.DEVIATION_SHARE: lambda of: (of["high"] - of["low"]) / of["range_deviations"] / of["likely"],
    Formula.OWN_DAYS: lambda of: of["own_days_cv"] * of["days"],
    Formula.DIFFERENCE: lambda of: of["after"] - of["before"],
    Formula.SHARE: lambda of: of["part"] / of["whole"],
    Formula.FALL: lambda of: max(0.0, 1.0 - of["lowest"] / of["before"]),
    Formula.GAP_TO_BOUND: lambda of: max(0.0, of["bound"] - of["worth"]) / abs(of["bound"]),
    Formula.PLAN_WORTH: lambda of: (
        of["worth_of_targets"] - of["missed"] - of["wasted"] - of["short"] - of["idle"]
    ),
    Formula.WEIGHED: lambda of: of["weight"] * of["amount"] / of["usual"],
    Formula.SOWN_HARVEST: lambda of: of["plants"] * of["pick_share"] * of["per_plant"],
    Formula.PLANTS_WANTED: lambda of: _up(of["missing"] / of["per_plant"]),
    Formula.GIVES_HEADS: _gives,
    Formula.GIVES_KG: lambda of: _gives(of) * of["yield_g_per_plant"] * of["size_share"] / _PER_THOUSAND,
    Formula.DAYS_AHEAD: lambda of: of["days_to_first_pick"] + of["days_ready_early"],
    Formula.SEEDS_SHARE: lambda of: max(
        0.0, _up(of["plants"] / (of["germination_share"] * of["survival_share"]))
    ),
    Formula.SEEDS_ADDED: lambda of: max(0.0, _up(of["plants"] * of["allowance"] / of["germination_share"])),
    Formula.SEEDS_IN_POTS: lambda of: of["pots"] * of["seeds_a_pot"],
    Formula.FULL_UNITS: lambda of: float(math.ceil(of["pots"] / of["cells_a_tray"])),
    Formula.VARIATION: lambda of: of["standard_deviation"] / of["mean"],
    Formula.STOCKING_SCORE: lambda of: 1.0 - of["inside_share"] + of["mean_distance"],
    Formula.APART: lambda of: (
        (of["weeks_to_grow"] + (of["harvests_of_one"] - 1.0) * of["weeks_between_harvests_of_one"])
        / of["groups"]
    ),
    Formula.IN_WEEKS: lambda of: of["days"] / DAYS_PER_WEEK,
    Formula.MAY_LEAFY: lambda of: max(of["planned_day"], of["settled_after_days"]),
    Formula.WAIT: lambda of: max(0.0, of["may_day"] - of["planned_day"]),
    Formula.FEED_ASKED: lambda of: (
        (of["leafy_m2"] * of["leafy"] + of["fruiting_m2"] * of["fruiting"])
        * of["reference_protein"]
        / of["protein_share"]
    ),
    Formula.AREA_CARRIED: _area_carried,
    Formula.FEED_OF_AREA: lambda of: (
        of["area_m2"] * of["ratio_g_per_m2_d"] * of["reference_protein"] / of["protein_share"]
    ),
    Formula.TURNOVER: lambda of: of["litres"] * of["times_an_hour"],
    Formula.WITH_RESERVE: lambda of: of["amount"] * (1.0 + of["reserve_share"]),
    Formula.HEAD: lambda of: of["head_m"] + of["friction_m"],
    Formula.FREE: lambda of: of["cells"] - of["held"],
    Formula.FEED_LACKING: lambda of: max(0.0, of["asked_g_per_day"] - of["feed_g_per_day"]),
    Formula.OVER_AREA: lambda of: of["kg_per_m2"] * of["area_m2"],
    Formula.WATER_LOAD: lambda of: of["depth_cm"] / _CM_PER_M * of["kg_per_m3"],
    Formula.TO_BUY: lambda of: max(0.0, of["amount"] - of["in_stock"]),
    Formula.PRICED: lambda of: of["amount"] * of["price"],
    Formula.LACK: lambda of: max(0.0, of["short_below"] - of["ratio"]),
    Formula.FEED_OF_DAYS: lambda of: of["days"] * of["g_per_day"] / _PER_THOUSAND,
    Formula.GIVEN: lambda of: of["grams"] * of["times"],
    Formula.LEFT: lambda of: max(0.0, of["counted"] - of["used_before"]),
    Formula.SOLD: lambda of: of["harvest"] * of["marketable_share"],
    Formula.SOLD_KG: lambda of: of["harvest_g"] * of["marketable_share"] / _PER_THOUSAND,
    Formula.ABOVE: lambda of: max(0.0, of["highest"] - of["limit"]),
}
"""Formulas of inputs alone."""


def _quadrature(values: Sequence[float]) -> float:
    return math.sqrt(sum(value**2 for value in values))


def _logs(values: Sequence[float]) -> float:
    return _quadrature([math.log(value) for value in values])


def of_parts(formula: Formula, values: _Values, parts: Sequence[float]) -> float | None:
    """Return what a formula of inputs and parts gives, None where it is no such formula.

    `others` among the inputs stands for all parts that are not shown, put together by the same rule.
    """
    rule = _OF_PARTS.get(formula)
    return None if rule is None else rule(values, parts)


def _with_others(values: _Values, parts: Sequence[float], nothing: float) -> list[float]:
    return [*parts, values.get("others", nothing)]


_OF_PARTS: Final[Mapping[Formula, Callable[[_Values, Sequence[float]], float]]] = {
    Formula.RANGE_HIGH: lambda of, parts: of["likely"] + _quadrature(_with_others(of, parts, 0.0)),
    Formula.RANGE_LOW: lambda of, parts: of["likely"] * math.exp(-_logs(_with_others(of, parts, 1.0))),
    Formula.FACTORS: lambda of, parts: math.exp(_logs(_with_others(of, parts, 1.0))),
    Formula.QUADRATURE: lambda of, parts: _quadrature(_with_others(of, parts, 0.0)),
    Formula.MOST: lambda _, parts: max(parts),
    Formula.COUNTED: lambda of, parts: len(parts) + of.get("others", 0.0),
}
