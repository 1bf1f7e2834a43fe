"""Why supply stands to demand as it does, which element is least, and what area the feed carries."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from planner.farm.species import ELEMENTS
from planner.forecast.values import AreaRule, LoopForecast, WeekVerdict
from planner.forecast.verdicts import symbol_of
from planner.forecast.why.area import why_group_area
from planner.forecast.why.arithmetic import figured
from planner.forecast.why.fish import why_feed_mean
from planner.forecast.why.formulas import Formula
from planner.forecast.why.ground import Ground, worked
from planner.forecast.why.plants import why_demand
from planner.forecast.why.supply import why_supply
from planner.forecast.why.values import Explanation, Input, Note, NoteKind
from planner.forecast.why.water_behind import why_protein_by_day

_LEAFY, _FRUITING = 0, 1


def why_ratio(ground: Ground, number: int, week: int, element: int) -> Explanation:
    """Return why supply of an element is that many times the demand."""
    loop = ground.forecast.loops[number]
    verdict = ground.verdict(loop, week)
    supply = replace(why_supply(ground, loop, week, element), value=verdict.supply_g[element])
    demand = replace(why_demand(ground, number, week, element), value=verdict.demand_g[element])
    nothing = () if verdict.ratio[element] is not None else (Note(kind=NoteKind.NOTHING_WANTED),)
    band = Note(kind=NoteKind.BAND, values=(("band", verdict.band[element].value),))
    return Explanation(
        title="ratio",
        about=symbol_of(element),
        value=verdict.ratio[element],
        unit="g/g",
        formula=Formula.RATIO,
        inputs=(
            worked("supply_g", verdict.supply_g[element], "g"),
            worked("demand_g", verdict.demand_g[element], "g"),
            ground.figure("short_below", "coefficient/verdict/short_below"),
            ground.figure("thin_below", "coefficient/verdict/thin_below"),
        ),
        children=(supply, demand),
        notes=(*nothing, band),
        on=ground.forecast.ruler.week_start(week),
    )


def why_band(ground: Ground, number: int, week: int, element: int) -> Explanation:
    """Return why supply of an element counts as short, thin, met or ample in a week."""
    ratio = why_ratio(ground, number, week, element)
    inputs = () if ratio.value is None else (worked("ratio", ratio.value, "g/g"),)
    names = ("short_below", "thin_below", "ample_above")
    return Explanation(
        title="how supply counts",
        about=symbol_of(element),
        value=ratio.value,
        unit="g/g",
        formula=Formula.BAND,
        inputs=(*inputs, *(ground.figure(name, f"coefficient/verdict/{name}") for name in names)),
        children=(ratio,),
        notes=ratio.notes,
        on=ratio.on,
    )


def why_limiting(ground: Ground, number: int, week: int) -> Explanation:
    """Return which element has the least supply for its demand; `about` names it, empty without demand."""
    verdict = ground.verdict(ground.forecast.loops[number], week)
    least = verdict.limiting
    ratios = tuple(why_ratio(ground, number, week, element) for element in range(len(ELEMENTS)))
    return Explanation(
        title="limiting element",
        about="" if least is None else symbol_of(least),
        value=None if least is None else verdict.ratio[least],
        unit="g/g",
        formula=Formula.LEAST,
        children=tuple(ratio for ratio in ratios if ratio.value is not None),
        notes=() if least is not None else (Note(kind=NoteKind.NOTHING_WANTED),),
        on=ground.forecast.ruler.week_start(week),
    )


def why_feed_ratio(ground: Ground, loop: LoopForecast, week: int) -> Explanation:
    """Return why so much is fed for each planted square metre, with the published bands beside it."""
    verdict = ground.verdict(loop, week)
    value = verdict.feed_ratio_g_per_m2_d
    return Explanation(
        title="feed-rate ratio",
        about=loop.name,
        value=value,
        unit="g/m²/d",
        formula=Formula.FEED_RATIO,
        inputs=(
            worked("feed_g_per_day", verdict.feed_g_per_day, "g/d"),
            worked("planted_m2", verdict.planted_m2, "m²"),
            ground.figure("uvi_raft", "feed_rate/uvi_raft"),
        ),
        children=(
            why_feed_mean(ground, loop, week),
            why_planted(ground, loop, week),
            *_bands(ground, loop, week, verdict),
        ),
        notes=() if value is not None else (Note(kind=NoteKind.NOTHING_PLANTED),),
        on=ground.forecast.ruler.week_start(week),
    )


def why_planted(ground: Ground, loop: LoopForecast, week: int) -> Explanation:
    """Return why so much is planted in a week: leafy and fruiting crops in their final places."""
    leafy, fruiting = _areas(ground, loop, week)
    return Explanation(
        title="planted area",
        about=loop.name,
        value=leafy + fruiting,
        unit="m²",
        formula=Formula.PLANTED_AREA,
        inputs=(worked("leafy_m2", leafy, "m²"), worked("fruiting_m2", fruiting, "m²")),
        children=tuple(_planted_parts(ground, loop, week, leafy=leafy, fruiting=fruiting)),
        on=ground.forecast.ruler.week_start(week),
    )


def _planted_parts(
    ground: Ground, loop: LoopForecast, week: int, *, leafy: float, fruiting: float
) -> Iterator[Explanation]:
    number, _ = ground.loop_forecast(loop.loop)
    if leafy:
        yield why_group_area(ground, number, week, fruiting=False)
    if fruiting:
        yield why_group_area(ground, number, week, fruiting=True)


def _areas(ground: Ground, loop: LoopForecast, week: int) -> tuple[float, float]:
    planted = ground.forecast.ruler.weekly_mean(loop.planted_m2)
    return float(planted[_LEAFY, week]), float(planted[_FRUITING, week])


def _bands(ground: Ground, loop: LoopForecast, week: int, verdict: WeekVerdict) -> tuple[Explanation, ...]:
    """Return both ends of the published band, mixed by planted area; none where nothing is planted."""
    if verdict.fao_band is None:
        return ()
    ends = zip(("low", "high"), verdict.fao_band, strict=True)
    return tuple(_band(ground, loop, week, end=end, value=value) for end, value in ends)


def _band(ground: Ground, loop: LoopForecast, week: int, *, end: str, value: float) -> Explanation:
    leafy, fruiting = _areas(ground, loop, week)
    protein = float(ground.forecast.ruler.weekly_mean(loop.protein_share)[week])
    return Explanation(
        title=f"{end} end of the band",
        about=loop.name,
        value=value,
        unit="g/m²/d",
        formula=Formula.MIXED_BAND,
        inputs=(
            worked("leafy_share", leafy / (leafy + fruiting) if leafy + fruiting else 1.0, "1"),
            band_end(ground, "leafy", "feed_rate/fao_leafy", end),
            band_end(ground, "fruiting", "feed_rate/fao_fruiting", end),
            ground.figure("reference_protein", "coefficient/sizing/ratio_reference_protein_share"),
            worked("protein_share", protein, "g/g"),
        ),
        children=tuple(_behind_band(ground, loop, week, leafy=leafy, fruiting=fruiting)),
    )


def _behind_band(
    ground: Ground, loop: LoopForecast, week: int, *, leafy: float, fruiting: float
) -> Iterator[Explanation]:
    """Yield how much of the planted area is leafy, and what is fed of protein a day."""
    if leafy + fruiting:
        yield Explanation(
            title="leafy share of the planted area",
            about=loop.name,
            value=leafy / (leafy + fruiting),
            unit="1",
            formula=Formula.LEAFY_SHARE,
            inputs=(worked("leafy_m2", leafy, "m²"), worked("fruiting_m2", fruiting, "m²")),
            children=tuple(_planted_parts(ground, loop, week, leafy=leafy, fruiting=fruiting)),
        )
    yield why_protein_by_day(ground, loop, week)


def band_end(ground: Ground, name: str, path: str, end: str) -> Input:
    """Return one end of a published band; it is the end that the formula takes, not the middle."""
    found = ground.figure(name, path)
    value = found.low if end == "low" else found.high
    return replace(found, value=found.value if value is None else value)


def why_area_fed(ground: Ground, loop: LoopForecast, week: int, part: str = "") -> Explanation:
    """Return why the feed carries so much planted area: the least of it, and the most as a child.

    `part` is "uvi" for the ratio of raft systems in place of that by kind of crop.
    """
    verdict = ground.verdict(loop, week)
    if part == AreaRule.UVI.value:
        return _area_by_rafts(
            ground, loop, week, most=False, children=(_area_by_rafts(ground, loop, week, most=True),)
        )
    return _area(
        ground, loop, week, most=False, children=(_area(ground, loop, week, most=True),), verdict=verdict
    )


def _area_by_rafts(
    ground: Ground, loop: LoopForecast, week: int, *, most: bool, children: tuple[Explanation, ...] = ()
) -> Explanation:
    verdict = ground.verdict(loop, week)
    end = "low" if most else "high"
    return Explanation(
        title="most area fed" if most else "area fed",
        about=loop.name,
        value=verdict.area_fed_by(AreaRule.UVI)[int(most)],
        unit="m²",
        formula=Formula.AREA_FED,
        inputs=(
            worked("feed_g_per_day", verdict.feed_g_per_day, "g/d"),
            band_end(ground, "ratio_g_per_m2_d", "feed_rate/uvi_raft", end),
        ),
        children=(*(() if most else (why_feed_mean(ground, loop, week),)), *children),
        on=ground.forecast.ruler.week_start(week),
    )


def _area(
    ground: Ground,
    loop: LoopForecast,
    week: int,
    *,
    most: bool,
    verdict: WeekVerdict | None = None,
    children: tuple[Explanation, ...] = (),
) -> Explanation:
    found = verdict or ground.verdict(loop, week)
    value = found.area_fed_m2[int(most)]
    feed = why_feed_mean(ground, loop, week)
    end = "low" if most else "high"
    bound = _bound(ground, loop, week, end=end)
    return Explanation(
        title="most area fed" if most else "area fed",
        about=loop.name,
        value=value,
        unit="m²",
        formula=Formula.AREA_FED,
        inputs=(
            worked("feed_g_per_day", found.feed_g_per_day, "g/d"),
            worked("ratio_g_per_m2_d", bound.value or 0.0, "g/m²/d"),
        ),
        children=(bound, *((feed,) if not most else ()), *children),
        on=ground.forecast.ruler.week_start(week),
    )


def _bound(ground: Ground, loop: LoopForecast, week: int, *, end: str) -> Explanation:
    bare = _band(ground, loop, week, end=end, value=0.0)
    return figured(bare)
