"""The arithmetic of fish, sums over batches, dates and places; `arithmetic` has what they are made of."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from typing import Final

from planner.forecast.why.formulas import Formula

_PER_THOUSAND: Final = 1000.0
_PERCENT: Final = 100.0

_Values = Mapping[str, float]


def _fish_count(of: _Values) -> float:
    return of["stocked"] + of["added"] - of["counted_dead"] - of["expected_dead"] - of["harvested"]


def _gain_by_appetite(of: _Values) -> float:
    eaten = of["most_eaten_share"] * of["count"] * (of["weight_after_g"] - of["weight_g"])
    return min(of["feed_g"] / of["fcr"], eaten)


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
}
"""What each formula does with its inputs by name."""
