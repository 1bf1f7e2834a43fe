"""What lies behind the sums of water: protein that is fed, what a biofilm takes, what leaves a pool."""

from __future__ import annotations

from typing import Final

import numpy as np

from planner.farm.site import Loop
from planner.farm.species import ELEMENTS
from planner.forecast.pools import FALLING_OUT
from planner.forecast.values import GroupForecast, LoopForecast
from planner.forecast.water.load import RATE_C, LoadForecast
from planner.forecast.why.formulas import Formula
from planner.forecast.why.ground import Ground, entered, week_days, worked
from planner.forecast.why.values import Explanation, Input, Note, NoteKind

_NITRIFICATION: Final = "coefficient/nitrification/"
_POOLS: Final = "coefficient/pools/"
_HALF: Final = 0.5
"""What is left after a half-life, by its meaning."""


def why_protein(ground: Ground, loop: LoopForecast, week: int) -> Explanation:
    """Return why so much of what is fed in a week is protein: each group's feed has its own share."""
    days = week_days(week)
    fed = [group for group in loop.groups if group.feed_g[days].any()]
    parts = tuple(_protein_of(ground, group, days) for group in fed)
    feed_g = float(loop.feed_g[days].sum())
    return _protein(ground, loop, parts, feed_g, days.start)


def _protein(
    ground: Ground, loop: LoopForecast, parts: tuple[Explanation, ...], feed_g: float, day: int
) -> Explanation:
    protein_g = sum(part.value or 0.0 for part in parts)
    whole = Explanation(
        title="protein fed",
        about=loop.name,
        value=protein_g,
        unit="g",
        formula=Formula.SUM,
        children=parts,
    )
    return Explanation(
        title="protein in what is fed",
        about=loop.name,
        value=protein_g / feed_g if feed_g else None,
        unit="g/g",
        formula=Formula.PROTEIN_FED,
        inputs=(worked("protein_g", protein_g, "g"), worked("feed_g", feed_g, "g")),
        children=(whole,),
        notes=() if feed_g else (Note(kind=NoteKind.NO_FISH),),
        on=ground.forecast.ruler.date_of(day),
    )


def why_protein_by_day(ground: Ground, loop: LoopForecast, week: int) -> Explanation:
    """Return the protein of what is fed, mean over the days of a week; the reference on days without feed."""
    days = week_days(week)
    parts = []
    for day in range(days.start, days.stop):
        feed_g = float(loop.feed_g[day])
        if feed_g:
            parts.append(_protein_on(ground, loop, day))
            continue
        reference = ground.figure("value", "coefficient/sizing/ratio_reference_protein_share")
        parts.append(
            Explanation(
                title="protein where nothing is fed",
                about=loop.name,
                value=reference.value,
                unit="g/g",
                formula=Formula.REFERENCE,
                inputs=(reference,),
                on=ground.forecast.ruler.date_of(day),
            )
        )
    return Explanation(
        title="protein of the feed in the week",
        about=loop.name,
        value=float(ground.forecast.ruler.weekly_mean(loop.protein_share)[week]),
        unit="g/g",
        formula=Formula.MEAN,
        children=tuple(parts),
        on=ground.forecast.ruler.week_start(week),
    )


def _protein_on(ground: Ground, loop: LoopForecast, day: int) -> Explanation:
    of_day = slice(day, day + 1)
    parts = tuple(_protein_of(ground, group, of_day) for group in loop.groups if group.feed_g[day])
    return _protein(ground, loop, parts, float(loop.feed_g[day]), day)


def _protein_of(ground: Ground, group: GroupForecast, days: slice) -> Explanation:
    feed = ground.groups[group.group].feed
    share = ground.figure("protein_share", f"feed/{feed}/protein_share")
    grams = float(group.feed_g[days].sum())
    return Explanation(
        title="protein fed to a group",
        about=group.name,
        value=grams * share.value,
        unit="g",
        formula=Formula.PROTEIN_OF_GROUP,
        inputs=(worked("feed_g", grams, "g"), share),
    )


def why_need_by_day(
    ground: Ground, loop: LoopForecast, load: LoadForecast, week: int
) -> tuple[Explanation, ...]:
    """Return the biofilm surface that each day of a week needs, at the warmth of its water."""
    days = week_days(week)
    return tuple(
        Explanation(
            title="biofilm surface needed on a day",
            about=loop.name,
            value=float(load.need_m2.likely[day]),
            unit="m²",
            formula=Formula.FILTER_NEED,
            inputs=(
                worked("ammonia_g_per_day", load.tan_g.likely[day], "g/d"),
                worked("rate_g_per_m2_day", load.rate_g_per_m2_day.likely[day], "g/m²/d"),
            ),
            children=(_ammonia_on(ground, loop, load, day), _rate(ground, loop, load, day)),
            on=ground.forecast.ruler.date_of(day),
        )
        for day in range(days.start, days.stop)
    )


def _ammonia_on(ground: Ground, loop: LoopForecast, load: LoadForecast, day: int) -> Explanation:
    return Explanation(
        title="ammonia nitrogen on a day",
        about=loop.name,
        value=float(load.tan_g.likely[day]),
        unit="g/d",
        formula=Formula.AMMONIA,
        inputs=(
            worked("feed_g_per_day", loop.feed_g[day], "g/d"),
            worked("protein_share", loop.protein_share[day], "g/g"),
            ground.figure("ammonia_per_protein", "coefficient/feed_split/tan_share_of_feed_protein"),
        ),
        on=ground.forecast.ruler.date_of(day),
    )


def _rate(ground: Ground, loop: LoopForecast, load: LoadForecast, day: int) -> Explanation:
    """Return what a square metre of biofilm takes on a day: as printed, carried to the water's warmth."""
    printed = ground.figure("printed_rate", f"{_NITRIFICATION}biofilm_rate_n_g_per_m2_day")
    value = float(load.rate_g_per_m2_day.likely[day])
    entry: Loop = ground.loops[loop.loop]
    if load.water_c is None:
        formula = Formula.AS_PRINTED
        inputs: tuple[Input, ...] = (printed,)
        notes: tuple[Note, ...] = (Note(kind=NoteKind.WATER_NOT_KNOWN),)
    else:
        held, notes = float(np.clip(load.water_c[day], *RATE_C)), ()
        formula = Formula.RATE_AT
        inputs = (
            printed,
            entered("water_c", held, "°C", entry.name),
            ground.figure("printed_rate_at_c", "coefficient/water_care/biofilter_design_c"),
            ground.figure("reference_c", f"{_NITRIFICATION}biofilm_reference_c"),
            ground.figure("change_per_c", f"{_NITRIFICATION}biofilm_change_per_c_ammonia_limited"),
        )
    return Explanation(
        title="what a biofilm takes",
        about=loop.name,
        value=value,
        unit="g/m²/d",
        formula=formula,
        inputs=inputs,
        notes=notes,
        on=ground.forecast.ruler.date_of(day),
    )


def why_left(ground: Ground, loop: LoopForecast, element: int, days: slice) -> Explanation:
    """Return why so much of an element left the water in some days: with water, or by falling out."""
    gone = float(loop.leaving_g[element, days].sum())
    share = _leaving_share(ground, loop, element)
    taken = loop.demand_g[element, days] - loop.unmet_g[element, days]
    after_uptake = loop.pool_g[element, days] + loop.supply_g[element, days] - taken
    mean = float(after_uptake.mean()) if after_uptake.size else 0.0
    return Explanation(
        title="left with water since then",
        about=loop.name,
        value=gone,
        unit="g",
        formula=Formula.LEFT_WITH_WATER,
        inputs=(
            worked("mean_g_after_uptake", mean, "g"),
            worked("leaving_share", share.value or 0.0, "1/d"),
            worked("days", float(after_uptake.size), "d"),
        ),
        children=(share,),
    )


def _leaving_share(ground: Ground, loop: LoopForecast, element: int) -> Explanation:
    entry: Loop = ground.loops[loop.loop]
    leaving = ground.figure("make_up_leaving_share", f"{_POOLS}make_up_leaving_share")
    litres, children = make_up_litres(ground, entry)
    with_water = min(litres.value * leaving.value / entry.water_l, 1.0)
    falling: tuple[Input, ...] = (worked("falling_out_share", 0.0, "1/d"),)
    parts = children
    if ELEMENTS[element] in FALLING_OUT:
        out = _falling_out(ground, ELEMENTS[element])
        falling, parts = (worked("falling_out_share", out.value or 0.0, "1/d"),), (*children, out)
    return Explanation(
        title="share that leaves in a day",
        about=loop.name,
        value=1.0 - (1.0 - with_water) * (1.0 - falling[0].value),
        unit="1/d",
        formula=Formula.LEAVING_SHARE,
        inputs=(litres, leaving, entered("water_l", entry.water_l, "L", entry.name), *falling),
        children=parts,
    )


def _falling_out(ground: Ground, element: str) -> Explanation:
    half_life = ground.figure("half_life_days", f"{_POOLS}{FALLING_OUT[element]}_half_life_days")
    return Explanation(
        title="share that falls out in a day",
        about=element.capitalize(),
        value=1.0 - _HALF ** (1.0 / half_life.value),
        unit="1/d",
        formula=Formula.FALLING_OUT,
        inputs=(half_life,),
    )


def make_up_litres(ground: Ground, entry: Loop) -> tuple[Input, tuple[Explanation, ...]]:
    """Return the make-up water of a loop a day, as entered, else the usual share of its water."""
    if entry.top_up_l_per_day is not None:
        return entered("litres_per_day", entry.top_up_l_per_day, "L/d", entry.name), ()
    share = ground.figure("top_up_share_per_day", "loop/top_up_share_per_day")
    value = entry.water_l * share.value
    child = Explanation(
        title="make-up water a day",
        about=entry.name,
        value=value,
        unit="L/d",
        formula=Formula.TOP_UP_LITRES,
        inputs=(entered("water_l", entry.water_l, "L", entry.name), share),
    )
    return worked("litres_per_day", value, "L/d"), (child,)
