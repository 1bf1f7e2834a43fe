"""Why crops want so much of an element beyond supply in the weeks ahead: what salts and bases are to fill."""

from __future__ import annotations

from planner.farm.species import ELEMENTS
from planner.forecast.values import LoopForecast
from planner.forecast.water.supplements import gaps_by_element
from planner.forecast.why.formulas import Formula
from planner.forecast.why.ground import Ground, worked
from planner.forecast.why.plants import why_demand
from planner.forecast.why.supply import why_supply
from planner.forecast.why.values import Explanation

_AHEAD = "coefficient/water_care/gap_weeks"


def why_beyond(ground: Ground, loop: LoopForecast, week: int, element: int) -> Explanation:
    """Return why so much is wanted beyond supply, a mean week of those ahead [g]."""
    ruler, number = ground.forecast.ruler, ground.loop_forecast(loop.loop)[0]
    ahead = int(ground.catalogue.figure(_AHEAD).value)
    weeks = range(week, min(week + ahead, ruler.weeks))
    wanted = _mean(
        ground, loop, week, "wanted a week", tuple(why_demand(ground, number, at, element) for at in weeks)
    )
    supplied = _mean(
        ground, loop, week, "supplied a week", tuple(why_supply(ground, loop, at, element) for at in weeks)
    )
    gaps = gaps_by_element(loop, ruler, first_week=week, weeks=ahead)
    return Explanation(
        title="wanted beyond supply",
        about=f"{ELEMENTS[element].capitalize()}, {loop.name}",
        value=gaps[ELEMENTS[element]],
        unit="g",
        formula=Formula.BEYOND_SUPPLY,
        inputs=(
            worked("wanted_g", wanted.value or 0.0, "g"),
            worked("supplied_g", supplied.value or 0.0, "g"),
        ),
        children=(wanted, supplied),
        on=ruler.week_start(week),
    )


def _mean(
    ground: Ground, loop: LoopForecast, week: int, title: str, parts: tuple[Explanation, ...]
) -> Explanation:
    return Explanation(
        title=title,
        about=loop.name,
        value=sum(part.value or 0.0 for part in parts) / len(parts),
        unit="g",
        formula=Formula.MEAN,
        children=parts,
        on=ground.forecast.ruler.week_start(week),
    )
