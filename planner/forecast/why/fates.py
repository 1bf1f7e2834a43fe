"""Where the elements of a group's feed go, and what of them leaves as solids."""

from __future__ import annotations

from planner.farm.fish import FishGroup
from planner.farm.site import Loop
from planner.farm.species import ELEMENTS
from planner.forecast.supply import FedGroup, FeedFate, feed_fate, figures_of_loop
from planner.forecast.values import GroupForecast, LoopForecast
from planner.forecast.why.formulas import Formula
from planner.forecast.why.ground import Ground, worked
from planner.forecast.why.values import Explanation


def fate_of(ground: Ground, group: GroupForecast) -> FeedFate:
    """Return where the elements of one group's feed go."""
    known = ground.fates.get(group.group)
    if known is not None:
        return known
    entry: FishGroup = ground.groups[group.group]
    fed = FedGroup(
        group=group, species=ground.catalogue.fish[entry.species], feed=ground.catalogue.feeds[entry.feed]
    )
    figures = figures_of_loop(ground.supply_figures, loop_of(ground, group))
    found = feed_fate([fed], figures=figures, ruler=ground.forecast.ruler)
    ground.fates[group.group] = found
    return found


def loop_of(ground: Ground, group: GroupForecast) -> Loop:
    """Return the loop a group swims in."""
    found: Loop = ground.loops[ground.tanks[group.tank].loop]
    return found


def why_in_solids(
    ground: Ground, group: GroupForecast, element: int, *, content: float, value: float
) -> Explanation:
    """Return why so much of an element of a group's feed leaves as solids."""
    share = ground.figure("solids_share", f"element/{ELEMENTS[element]}/solids_share")
    return Explanation(
        title="element in solids",
        about=group.name,
        value=value,
        unit="g",
        formula=Formula.IN_SOLIDS,
        inputs=(worked("in_feed_g", content, "g"), share),
    )


def why_solids_of_fish(ground: Ground, loop: LoopForecast, element: int, days: slice) -> Explanation:
    """Return what of an element the fish of a loop leave as solids in some days, group by group."""
    parts = []
    for group in loop.groups:
        fate = fate_of(ground, group)
        content, solids = (float(one[element, days].sum()) for one in (fate.content_g, fate.solids_g))
        parts.append(why_in_solids(ground, group, element, content=content, value=solids))
    return Explanation(
        title="solids of the fish",
        about=loop.name,
        value=float(loop.solids_g[element, days].sum()),
        unit="g",
        formula=Formula.SUM,
        children=tuple(parts),
        on=ground.forecast.ruler.date_of(days.start),
    )
