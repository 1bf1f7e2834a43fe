"""The feed-rate band that a loop goes by, as inputs of an answer: FAO's by kind of crop, or UVI's."""

from __future__ import annotations

from typing import Final

from planner.farm.site import AreaRule
from planner.forecast.values import LoopForecast
from planner.forecast.why.balance import band_end
from planner.forecast.why.ground import Ground, worked
from planner.forecast.why.values import Input

_PATHS: Final = {
    AreaRule.FAO: ("feed_rate/fao_leafy", "feed_rate/fao_fruiting"),
    AreaRule.UVI: ("feed_rate/uvi_raft", "feed_rate/uvi_raft"),
}


def band_inputs(ground: Ground, loop: LoopForecast, end: str) -> tuple[Input, Input]:
    """Return one end of the bands of leafy and of fruiting crops, "low" or "high"."""
    leafy, fruiting = _PATHS[loop.area_rule]
    return band_end(ground, "leafy", leafy, end), band_end(ground, "fruiting", fruiting, end)


def reference_input(ground: Ground, loop: LoopForecast, protein_share: float) -> Input:
    """Return the protein that the band holds for; UVI's names none, so it holds for what is fed."""
    if loop.area_rule is AreaRule.FAO:
        return ground.figure("reference_protein", "coefficient/sizing/ratio_reference_protein_share")
    return worked("reference_protein", protein_share, "g/g")
