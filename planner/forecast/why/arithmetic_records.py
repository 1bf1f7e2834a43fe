"""Arithmetic of the formulas that rations by hand, lessons of the log and late tasks state."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from typing import Final

from planner.forecast.why.formulas import Formula

_PERCENT: Final = 100.0

_Values = Mapping[str, float]


def _learned(of: _Values) -> float:
    drawn = (of["book_weight"] + of["weighed_ratios"]) / (of["book_weight"] + of["weights"])
    return of["book"] * drawn


RECORDED: Final[Mapping[Formula, Callable[[_Values], float]]] = {
    Formula.MEAL: lambda of: of["feed_g_per_day"] / of["meals"],
    Formula.SCOOPS: lambda of: of["meal_g"] / of["scoop_g"],
    Formula.LEARNED: _learned,
    Formula.LEARNED_SHARE: lambda of: min(1.0, _learned(of)),
    Formula.SEEN_RATIO: lambda of: of["seen"] / of["by_the_book"],
    Formula.SPREAD_SEEN: lambda of: max(of["robust_spread"], of["least_spread_share"]) * of["book"],
    Formula.FROM_PRINT: lambda of: of["ours"] - of["published"],
    Formula.FROM_PRINT_PERCENT: lambda of: (of["ours"] - of["published"]) / abs(of["published"]) * _PERCENT,
    Formula.LONGER: lambda of: of["actual_days"] - of["planned_days"],
}
"""Formulas of inputs alone."""
