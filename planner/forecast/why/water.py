"""Why the fish of a loop ask so much of filter and air in a week: ammonia, biofilm surface, oxygen."""

from __future__ import annotations

from planner.farm.farm import by_id
from planner.forecast.values import LoopForecast
from planner.forecast.water.filters import filter_figures
from planner.forecast.water.load import LoadForecast, WeekLoad, load_forecast, week_loads
from planner.forecast.why.fish import why_feed_mean
from planner.forecast.why.formulas import Formula
from planner.forecast.why.ground import Ground, week_days, worked
from planner.forecast.why.values import Explanation, Note, NoteKind
from planner.forecast.why.water_behind import why_need_by_day, why_protein

_NITRIFICATION = "coefficient/nitrification/"


def why_ammonia(ground: Ground, loop: LoopForecast, week: int) -> Explanation:
    """Return why the fish give off so much ammonia nitrogen a day in a week."""
    days = week_days(week)
    fed = float(loop.feed_g[days].sum())
    protein = float((loop.feed_g * loop.protein_share)[days].sum()) / fed if fed else 0.0
    feed = why_feed_mean(ground, loop, week)
    return Explanation(
        title="ammonia nitrogen a day",
        about=loop.name,
        value=load_of_week(ground, loop, week).tan_g_per_day.likely,
        unit="g/d",
        formula=Formula.AMMONIA,
        inputs=(
            worked("feed_g_per_day", feed.value or 0.0, "g/d"),
            worked("protein_share", protein, "g/g"),
            ground.figure("ammonia_per_protein", "coefficient/feed_split/tan_share_of_feed_protein"),
        ),
        children=(feed, why_protein(ground, loop, week)) if fed else (feed,),
        on=ground.forecast.ruler.week_start(week),
    )


def why_filter_need(ground: Ground, loop: LoopForecast, week: int) -> Explanation:
    """Return why so much biofilm surface is needed in a week; the rate is that at the week's water."""
    need, ammonia = load_of_week(ground, loop, week).need_m2.likely, why_ammonia(ground, loop, week)
    tan = ammonia.value or 0.0
    printed = ground.figure("printed_rate", f"{_NITRIFICATION}biofilm_rate_n_g_per_m2_day")
    by_day = why_need_by_day(ground, loop, load_of(ground, loop), week)
    return Explanation(
        title="biofilm surface needed",
        about=loop.name,
        value=need,
        unit="m²",
        formula=Formula.FILTER_NEED,
        inputs=(
            worked("ammonia_g_per_day", tan, "g/d"),
            worked("rate_g_per_m2_day", tan / need if need else printed.value, "g/m²/d"),
            printed,
            ground.figure("printed_rate_at_c", "coefficient/water_care/biofilter_design_c"),
            ground.figure("change_per_c", f"{_NITRIFICATION}biofilm_change_per_c_ammonia_limited"),
        ),
        children=(ammonia, *by_day),
        notes=(Note(kind=NoteKind.MEAN_BY_DAY),),
        on=ground.forecast.ruler.week_start(week),
    )


def why_oxygen(ground: Ground, loop: LoopForecast, week: int) -> Explanation:
    """Return why fish and nitrifiers take so much oxygen an hour in a week."""
    ammonia = why_ammonia(ground, loop, week)
    feed = ammonia.input("feed_g_per_day")
    return Explanation(
        title="oxygen taken an hour",
        about=loop.name,
        value=load_of_week(ground, loop, week).hourly_oxygen_g.likely,
        unit="g/h",
        formula=Formula.OXYGEN,
        inputs=(
            feed,
            ground.figure("oxygen_per_feed", "coefficient/water/oxygen_per_feed"),
            worked("ammonia_g_per_day", ammonia.value or 0.0, "g/d"),
            ground.figure("oxygen_per_nitrogen", f"{_NITRIFICATION}oxygen_per_nitrogen_nitrified"),
        ),
        children=(why_feed_mean(ground, loop, week), ammonia),
        on=ground.forecast.ruler.week_start(week),
    )


def load_of_week(ground: Ground, loop: LoopForecast, week: int) -> WeekLoad:
    """Return what the fish of a loop ask of filter and air in a week, as the page of the week has it."""
    return loads_of(ground, loop)[week]


def loads_of(ground: Ground, loop: LoopForecast) -> tuple[WeekLoad, ...]:
    """Return what the fish of a loop ask of filter and air, week by week."""
    figures, load = filter_figures(ground.catalogue), load_of(ground, loop)
    return week_loads(load, ruler=ground.forecast.ruler, figures=figures)


def load_of(ground: Ground, loop: LoopForecast) -> LoadForecast:
    """Return what the fish of a loop ask of filter and air, day by day."""
    entry = ground.loops[loop.loop]
    return load_forecast(
        loop,
        loop=entry,
        altitude_m=by_id(ground.farm.sites)[entry.site].altitude_m,
        filters=ground.farm.filters,
        beds=ground.farm.beds,
        ruler=ground.forecast.ruler,
        catalogue=ground.catalogue,
    )
