"""The formulas that explanations state as arithmetic, so that it can be done again.

A formula without arithmetic goes through days or looks up a table; what it says is then checked elsewhere.
"""

from __future__ import annotations

import math
from collections.abc import Callable, Mapping
from dataclasses import replace
from typing import Final

from planner.farm.farm import DAYS_PER_WEEK
from planner.forecast.why.arithmetic_figures import FIGURES
from planner.forecast.why.arithmetic_plan import PLANNED, of_parts
from planner.forecast.why.arithmetic_records import RECORDED
from planner.forecast.why.arithmetic_water import WATERED
from planner.forecast.why.formulas import Formula
from planner.forecast.why.values import Explanation
from planner.science.fish import effective_temperature
from planner.science.water import KELVIN_AT_0_C

_CUBE_ROOT: Final = 1.0 / 3.0
_PER_THOUSAND: Final = 1000.0
_PER_MILLION: Final = 1_000_000.0
_PERCENT: Final = 100.0
_FLOAT_NOISE: Final = 1e-9
_HOURS_PER_DAY: Final = 24.0
_TEN: Final = 10.0


_Values = Mapping[str, float]


def _seeds(of: _Values) -> float:
    seeds = of["plants"] / (of["germination_share"] * of["stand_share"] * of["nursery_survival_share"])
    return float(max(math.ceil(seeds - _FLOAT_NOISE * max(1.0, seeds)), 0))


def _lot_share(of: _Values) -> float:
    return (of["prior_share"] * of["prior_seeds"] + of["came_up"]) / (of["prior_seeds"] + of["seeds_counted"])


def _lot_share_careful(of: _Values) -> float:
    counted = of["prior_seeds"] + of["seeds_counted"] + 1.0
    return of["mean"] - of["caution_spreads"] * math.sqrt(of["mean"] * (1.0 - of["mean"]) / counted)


def _stand(of: _Values) -> float:
    share = (of["ceiling_c"] - of["temperature_c"]) / (of["ceiling_c"] - of["optimum_c"])
    return max(of["least_share"], min(1.0, max(0.0, share)))


def _weight_after(of: _Values) -> float:
    by_g = max(of["weight_g"], of["fry_g"])
    root = by_g**_CUBE_ROOT + of["tgc"] / _PER_THOUSAND * of["effective_c"]
    return of["weight_g"] * max(1.0, float(root**3) / by_g)


def _effective(of: _Values) -> float:
    return float(
        effective_temperature(
            of["water_c"], base_c=of["base_c"], optimum_c=of["optimum_c"], ceiling_c=of["ceiling_c"]
        )
    )


def _band(of: _Values) -> float:
    mixed = of["leafy_share"] * of["leafy"] + (1.0 - of["leafy_share"]) * of["fruiting"]
    return mixed * of["reference_protein"] / of["protein_share"]


def _liquor(of: _Values) -> float:
    released = of["gathered_g"] * of["limit"] * -math.expm1(-of["rate_per_day"] * of["days"])
    return released * (1.0 - of["lost_share"]) * of["returned_share"]


def _iron_grams(of: _Values) -> float:
    lacking = max(0.0, of["target_mg_per_l"] - of["present_mg_per_l"])
    return lacking * of["water_l"] / _PER_THOUSAND / of["iron_share"]


def _free_ammonia(of: _Values) -> float:
    pka = of["pka_intercept"] + of["pka_slope_k"] / (KELVIN_AT_0_C + of["water_c"])
    return float(of["ammonia_mg_per_l"] / (1.0 + _TEN ** (pka - of["ph"])))


def _limit_by_trend(of: _Values) -> float:
    spare = max(0.0, of["reading"] - of["limit"])
    return float(math.ceil(spare / of["fall_per_week"] * DAYS_PER_WEEK)) if spare else 0.0


def _limit_by_balance(of: _Values) -> float:
    """All days before the sum reaches what is to spare, and the day on which it does."""
    left = of["spare_mg_per_l"] - of["fallen_before_mg_per_l"]
    return of["days_before"] + float(math.ceil(left / of["fall_that_day_mg_per_l"])) if left > 0.0 else 0.0


def _batch_plants(of: _Values) -> float:
    return of["plants"] * of["bed_survival_share"] * of["pick_share"]


def _batch_sold(of: _Values) -> float:
    standing = of["plants"] * of["bed_survival_share"]
    return standing * of["yield_g_per_plant"] * of["size_share"] * of["marketable_share"] / _PER_THOUSAND


_ARITHMETIC: Final[Mapping[Formula, Callable[[_Values], float]]] = {
    Formula.AS_ENTERED: lambda of: of["value"],
    Formula.LOT_SHARE: _lot_share,
    Formula.LOT_SHARE_CAREFUL: _lot_share_careful,
    Formula.AMMONIA: lambda of: of["feed_g_per_day"] * of["protein_share"] * of["ammonia_per_protein"],
    Formula.FILTER_NEED: lambda of: of["ammonia_g_per_day"] / of["rate_g_per_m2_day"],
    Formula.OXYGEN: lambda of: (
        (of["feed_g_per_day"] * of["oxygen_per_feed"] + of["ammonia_g_per_day"] * of["oxygen_per_nitrogen"])
        / _HOURS_PER_DAY
    ),
    Formula.ACID: lambda of: of["feed_g_per_day"] * of["days"] / _PER_THOUSAND * of["acid_eq_per_kg_feed"],
    Formula.BASE_WANTED: lambda of: of["acid_eq"],
    Formula.BASE_GRAMS: lambda of: of["base_eq"] * of["share_of_base"] / of["base_eq_per_kg"] * _PER_THOUSAND,
    Formula.SALT_GRAMS: lambda of: of["gap_g"] / of["element_share"],
    Formula.GAP_LEFT: lambda of: of["wanted_beyond_supply_g"] - of["brought_by_others_g"],
    Formula.IRON_DUE: lambda of: of["interval_days"] - of["days_since_last_dose"],
    Formula.IRON_GRAMS: _iron_grams,
    Formula.SALTS_OF_SOLIDS: lambda of: of["dissolved_solids_mg_per_l"] / of["meter_factor"] / _PER_THOUSAND,
    Formula.SOLIDS_OF_SALTS: lambda of: of["conductivity_ms_per_cm"] * _PER_THOUSAND * of["meter_factor"],
    Formula.FREE_AMMONIA: _free_ammonia,
    Formula.LIMIT_BY_TREND: _limit_by_trend,
    Formula.LIMIT_BY_BALANCE: _limit_by_balance,
    Formula.FALL_OF_DAYS: lambda of: of["days"] * of["fall_a_day_mg_per_l"],
    Formula.SPARE_ALKALINITY: lambda of: of["alkalinity_mg_per_l"] - of["limit"],
    Formula.SPARE_TO_PH: lambda of: float(
        of["alkalinity_mg_per_l"] * (1.0 - _TEN ** (of["limit"] - of["ph"]))
    ),
    Formula.NOTHING: lambda of: 0.0 * len(of),
    Formula.COUNT: lambda of: float(sum(of.values())),
    Formula.SEEDS: _seeds,
    Formula.STAND_LINE: _stand,
    Formula.STAGE_DAYS: lambda of: round(of["days"]) + of["later_days"],
    Formula.PICKING_DAYS: lambda of: float(round(of["days"] + 1.0)),
    Formula.LAST_DAY: lambda of: of["days_before"] + of["days_of_it"] - 1.0,
    Formula.DAY_OF: lambda of: of["days_since_sowing"] - of["days_before"] + 1.0,
    Formula.PICKED: lambda of: round(of["plants"] * of["bed_survival_share"]) * of["share_of_the_day"],
    Formula.PLACES: lambda of: of["units"] * of["rows"] * of["columns"],
    Formula.DAYS_FREE: lambda of: of["days_to_the_day"] - of["days_to_the_first"] + 1.0,
    Formula.BATCH_PLANTS: _batch_plants,
    Formula.BATCH_GRAMS: lambda of: _batch_plants(of) * of["yield_g_per_plant"] * of["size_share"],
    Formula.BATCH_SOLD: _batch_sold,
    Formula.BATCH_DEMAND: lambda of: of["plants"] * of["dry_mass_g"] * of["content"] / _PER_THOUSAND,
    Formula.BATCH_DEMAND_IRON: lambda of: of["plants"] * of["dry_mass_g"] * of["content"] / _PER_MILLION,
    Formula.DRY_MASS_IN_WEEK: lambda of: of["whole_dry_mass_g"] * of["growth_share"],
    Formula.WHOLE_DRY_MASS: lambda of: (
        of["yield_g_per_plant"] * of["dry_matter_share"] / of["harvest_share"] * of["picking_factor"]
    ),
    Formula.WINDOW_YIELD: lambda of: of["book_yield_g_per_plant"] * of["picks_factor"] * of["room_share"],
    Formula.RATIO: lambda of: of["supply_g"] / of["demand_g"],
    Formula.DISSOLVED: lambda of: (
        of["in_feed_g"] - of["in_solids_g"] - of["kept_in_fish_g"] - of["lost_as_gas_g"]
    ),
    Formula.IN_FEED_NITROGEN: lambda of: of["feed_g"] * of["protein_share"] / of["protein_per_nitrogen"],
    Formula.IN_FEED: lambda of: of["feed_g"] * of["content"] / _PER_THOUSAND,
    Formula.IN_FEED_IRON: lambda of: of["feed_g"] * of["content"] / _PER_MILLION,
    Formula.IN_SOLIDS: lambda of: of["in_feed_g"] * of["solids_share"],
    Formula.KEPT_IN_FISH: lambda of: of["gain_g"] * of["body_content"] / _PER_THOUSAND - of["capped_g"],
    Formula.KEPT_IN_FISH_IRON: lambda of: of["gain_g"] * of["body_content"] / _PER_MILLION - of["capped_g"],
    Formula.LOST_AS_GAS: lambda of: (
        (of["in_feed_g"] - of["in_solids_g"] - of["kept_in_fish_g"])
        * of["gas_loss_share"]
        / of["dissolving_share"]
        - of["capped_g"]
    ),
    Formula.TOP_UP: lambda of: of["litres_per_day"] * of["mg_per_l"] * of["days"] / _PER_THOUSAND,
    Formula.TOP_UP_LITRES: lambda of: of["water_l"] * of["top_up_share_per_day"],
    Formula.DOSE: lambda of: of["grams"] * of["element_share"] * of["doses_in_week"],
    Formula.LAID_DOWN: lambda of: of["solids_g"] * (1.0 - of["captured_share"]),
    Formula.LIQUOR: _liquor,
    Formula.FEED_BY_GAIN: lambda of: of["gain_g"] * of["fcr"],
    Formula.GAIN: lambda of: of["count"] * (of["weight_after_g"] - of["weight_g"]),
    Formula.WEIGHT_AFTER: _weight_after,
    Formula.EFFECTIVE_TEMPERATURE: _effective,
    Formula.FEED_BY_PERCENT: lambda of: of["count"] * of["weight_g"] * of["percent"] / _PERCENT,
    Formula.FEED_BY_TABLE: lambda of: (
        of["count"] * of["weight_g"] * of["percent"] / _PERCENT * of["appetite_share"]
    ),
    Formula.FEED_RATIO: lambda of: of["feed_g_per_day"] / of["planted_m2"],
    Formula.PLANTED_AREA: lambda of: of["leafy_m2"] + of["fruiting_m2"],
    Formula.AREA_FED: lambda of: of["feed_g_per_day"] / of["ratio_g_per_m2_d"],
    Formula.MIXED_BAND: _band,
    Formula.DENSITY: lambda of: of["mass_kg"] / (of["volume_l"] / _PER_THOUSAND),
    Formula.GROUP_MASS: lambda of: of["count"] * of["weight_g"] / _PER_THOUSAND,
}

_EVERY: Final[Mapping[Formula, Callable[[_Values], float]]] = {
    **_ARITHMETIC,
    **FIGURES,
    **PLANNED,
    **WATERED,
    **RECORDED,
}


def recomputed(explanation: Explanation) -> float | None:
    """Return the value that the stated formula gives for the stated inputs.

    None where the formula is no arithmetic, or where the figure itself is None.
    """
    if explanation.value is None:
        return None
    parts = [child.value for child in explanation.children if child.value is not None]
    match explanation.formula:
        case Formula.SUM:
            return sum(parts) + sum(one.value for one in explanation.inputs)
        case Formula.MEAN:
            return sum(parts) / len(parts)
        case Formula.LEAST:
            return min(parts)
    values = {one.name: one.value for one in explanation.inputs}
    done = _EVERY.get(explanation.formula)
    return of_parts(explanation.formula, values, parts) if done is None else done(values)


def figured(bare: Explanation) -> Explanation:
    """Return an explanation with the value that its formula gives; the one it has only holds the place."""
    return replace(bare, value=recomputed(bare))
