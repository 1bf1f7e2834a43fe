"""The arithmetic of fish, sums over batches, dates and places; `arithmetic` has what they are made of."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from typing import Final

from planner.farm.farm import DAYS_PER_WEEK
from planner.forecast.why.formulas import Formula

_PER_THOUSAND: Final = 1000.0
_PERCENT: Final = 100.0
_HALF: Final = 0.5

_Values = Mapping[str, float]


def _fish_count(of: _Values) -> float:
    return of["stocked"] + of["added"] - of["counted_dead"] - of["expected_dead"] - of["harvested"]


def _gain_by_appetite(of: _Values) -> float:
    eaten = of["most_eaten_share"] * of["count"] * (of["weight_after_g"] - of["weight_g"])
    return min(of["feed_g"] / of["fcr"], eaten)


def _beyond(of: _Values) -> float:
    return of["lowest_c"] if of["lowest_c"] <= of["low_limit_c"] else of["highest_c"]


def _rate_at(of: _Values) -> float:
    at, printed_at = (
        1.0 + of["change_per_c"] * (of[name] - of["reference_c"]) for name in ("water_c", "printed_rate_at_c")
    )
    return of["printed_rate"] * max(at, 0.0) / printed_at


def _leaving_share(of: _Values) -> float:
    with_water = min(of["litres_per_day"] * of["make_up_leaving_share"] / of["water_l"], 1.0)
    return 1.0 - (1.0 - with_water) * (1.0 - of["falling_out_share"])


FIGURES: Final[Mapping[Formula, Callable[[_Values], float]]] = {
    Formula.FISH_COUNT: _fish_count,
    Formula.EXPECTED_DEATHS: lambda of: of["mean_count"] * of["daily_death_share"] * of["days"],
    Formula.ALL_LEFT: lambda of: (
        of["count_the_day_before"] * (1.0 - of["daily_death_share"]) + of["changed_that_morning"]
    ),
    Formula.GAIN_BY_FEED: lambda of: of["feed_g"] / of["fcr"],
    Formula.GAIN_BY_APPETITE: _gain_by_appetite,
    Formula.WEIGHT: lambda of: of["weight_then_g"] + of["grown_g"] + of["by_fish_added_g"],
    Formula.GROWTH_OF_DAYS: lambda of: of["days"] * of["growth_a_day_g"],
    Formula.FEED_FALL: lambda of: (1.0 - of["after_g_per_day"] / of["before_g_per_day"]) * _PERCENT,
    Formula.MEAN_OF_DAYS: lambda of: of["sum_g"] / of["days"],
    Formula.KG_OF_DAYS: lambda of: of["feed_g_per_day"] * of["days"] / _PER_THOUSAND,
    Formula.GAIN_OF_DAYS: lambda of: of["gain_g_per_day"] * of["days"] / _PER_THOUSAND,
    Formula.ONE_EACH: lambda of: of["many"],
    Formula.IN_KG: lambda of: of["grams"] / _PER_THOUSAND,
    Formula.PLACES_FREE: lambda of: of["places"] - of["held"],
    Formula.AREA_OF_DAYS: lambda of: of["area_m2"] * of["days"] / DAYS_PER_WEEK,
    Formula.BATCH_AREA: lambda of: of["placed_m2"] + of["plants_without_place"] * of["m2_a_plant"],
    Formula.AREA_OF_PLACES: lambda of: of["count"] * of["bed_m2"] / of["bed_places"],
    Formula.ROOM_OF_PLANT: lambda of: 1.0 / of["bed_density_per_m2"],
    Formula.YIELD: lambda of: of["yield_g_per_plant"] * of["size_share"],
    Formula.HEADS: lambda of: round(of["plants"] * of["bed_survival_share"]) * of["came_up"],
    Formula.FIRST_PICK_LATE: lambda of: of["days_to_first_pick"] - of["book_days_to_first_pick"],
    Formula.STAGE_LATE: lambda of: of["days"] - of["book_days"],
    Formula.BAND: lambda of: of["ratio"],
    Formula.UNPLACED: lambda of: of["plants"] - of["placed"],
    Formula.ASSUMED_BEST: lambda of: of["optimum_c"],
    Formula.BEYOND: _beyond,
    Formula.EATEN: lambda of: of["gain_g"] * of["fcr"] / of["feed_g"] * _PERCENT,
    Formula.SIZE_REACHED: lambda of: of["size_share"],
    Formula.PROTEIN_FED: lambda of: of["protein_g"] / of["feed_g"],
    Formula.PROTEIN_OF_GROUP: lambda of: of["feed_g"] * of["protein_share"],
    Formula.AS_PRINTED: lambda of: of["printed_rate"],
    Formula.RATE_AT: _rate_at,
    Formula.LEFT_WITH_WATER: lambda of: of["mean_g_after_uptake"] * of["leaving_share"] * of["days"],
    Formula.LEAVING_SHARE: _leaving_share,
    Formula.FALLING_OUT: lambda of: 1.0 - _HALF ** (1.0 / of["half_life_days"]),
    Formula.LEAFY_SHARE: lambda of: of["leafy_m2"] / (of["leafy_m2"] + of["fruiting_m2"]),
    Formula.REFERENCE: lambda of: of["value"],
    Formula.BEYOND_SUPPLY: lambda of: max(0.0, of["wanted_g"] - of["supplied_g"]),
}
"""What each formula does with its inputs by name."""
