"""The feed-rate band that a loop goes by, FAO's by kind of crop or UVI's, and the feed that it asks for."""

from __future__ import annotations

from datetime import date
from typing import Final

from planner.farm.site import AreaRule
from planner.forecast.values import LoopForecast
from planner.forecast.why.arithmetic import figured
from planner.forecast.why.balance import band_end
from planner.forecast.why.formulas import Formula
from planner.forecast.why.ground import Ground, worked
from planner.forecast.why.values import Explanation, Input

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


def feed_asked(
    ground: Ground,
    loop: LoopForecast,
    areas_m2: tuple[float, float],
    *,
    about: str,
    protein_share: float,
    more: tuple[Input, ...] = (),
    on: date | None = None,
) -> Explanation:
    """Return the feed that leafy and fruiting area ask for at the low end of the bands [g/d]."""
    leafy_m2, fruiting_m2 = areas_m2
    bare = Explanation(
        title="feed that is asked for",
        about=about,
        value=0.0,
        unit="g/d",
        formula=Formula.FEED_ASKED,
        inputs=(
            worked("leafy_m2", leafy_m2, "m²"),
            worked("fruiting_m2", fruiting_m2, "m²"),
            *band_inputs(ground, loop, "low"),
            reference_input(ground, loop, protein_share),
            worked("protein_share", protein_share, "g/g"),
            *more,
        ),
        on=on,
    )
    return figured(bare)
