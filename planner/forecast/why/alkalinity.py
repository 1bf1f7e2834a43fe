"""Why alkalinity is foreseen so high on a day, falls so much in a week, and what acid the log shows."""

from __future__ import annotations

from datetime import date
from typing import Final

import numpy as np

from planner.farm.farm import DAYS_PER_WEEK
from planner.farm.water import Quantity, Reading
from planner.forecast.values import LoopForecast
from planner.forecast.water.acid import AcidForecast, base_eq_by_day, top_up_eq_per_day
from planner.forecast.water.courses import Ahead, change_by_day
from planner.forecast.water.readings import latest
from planner.forecast.water.side import LoopWater, alkalinity_of
from planner.forecast.why.formulas import Formula
from planner.forecast.why.ground import Ground, NoSuchFigureError, entered, worked
from planner.forecast.why.trends import why_trend
from planner.forecast.why.values import Explanation, Note, NoteKind
from planner.forecast.why.water_day import water_on, why_acid

_PER_THOUSAND: Final = 1000.0
_NOTHING: Final = 1e-9
_UNIT: Final = "mg/L CaCO₃"


def why_alkalinity(ground: Ground, loop: LoopForecast, on: date, day: int) -> Explanation:
    """Return why alkalinity is foreseen so high on a day of the ruler, as it looks on the day `on`.

    Raises `NoSuchFigureError` where nothing is foreseen for the day: no reading that still counts.
    """
    water = water_on(ground, loop, on)
    point, start = _point(ground, water, day), _last_reading(ground, water)
    lifted, fallen = _moved(ground, water.acid, first=ground.forecast.ruler.day_of(start.on), last=day)
    level = point.span.likely
    spread = (("low", point.span.low), ("high", point.span.high))
    return Explanation(
        title="alkalinity foreseen",
        about=loop.name,
        value=level,
        unit=_UNIT,
        formula=Formula.ALKALINITY_AHEAD,
        inputs=(
            entered("reading_mg_per_l", start.value, "mg/L", loop.name),
            worked("lifted_by_base_mg_per_l", lifted, "mg/L"),
            worked("fallen_by_acid_mg_per_l", fallen, "mg/L"),
            worked("kept_above_0_mg_per_l", _kept(level - (start.value + lifted - fallen)), "mg/L"),
        ),
        children=(why_fall(ground, loop, _week(ground, day)),),
        notes=(
            Note(kind=NoteKind.READ_ON, values=(("day", start.on.isoformat()),)),
            Note(kind=NoteKind.SPREAD, values=spread),
        ),
        on=point.on,
    )


def _kept(rest: float) -> float:
    """Return what the level was kept from falling below 0; sums of many days leave some noise."""
    return rest if rest > _NOTHING else 0.0


def _week(ground: Ground, day: int) -> int:
    return min(max(day // DAYS_PER_WEEK, 0), ground.forecast.ruler.weeks - 1)


def _point(ground: Ground, water: LoopWater, day: int) -> Ahead:
    ruler = ground.forecast.ruler
    ahead = alkalinity_of(
        ground.farm,
        water.acid,
        ruler=ruler,
        catalogue=ground.catalogue,
        today=water.today,
        weeks=ruler.weeks,
    )
    on = ruler.date_of(day)
    found = next((each for each in ahead if each.on == on), None)
    if found is None:
        raise NoSuchFigureError(f"no alkalinity is foreseen for {on.isoformat()}.")
    return found


def _last_reading(ground: Ground, water: LoopWater) -> Reading:
    found = latest(ground.farm.readings, Quantity.ALKALINITY_MG_PER_L, loop=water.loop, until_on=water.today)
    assert found is not None, "a level is only foreseen from a reading"
    return found


def _moved(ground: Ground, acid: AcidForecast, *, first: int, last: int) -> tuple[float, float]:
    """Return by how much base lifts and acid lowers alkalinity between two days [mg CaCO3/L]."""
    ruler, entry = ground.forecast.ruler, ground.loops[acid.loop]
    per_eq = acid.caco3_g_per_eq * _PER_THOUSAND / acid.water_l
    doses = base_eq_by_day(
        ground.farm.doses, loop=acid.loop, supplements=ground.catalogue.supplements, ruler=ruler
    )
    top_up = top_up_eq_per_day(entry, caco3_g_per_eq=acid.caco3_g_per_eq, catalogue=ground.catalogue)
    nothing = np.zeros(ruler.days)
    lift = change_by_day((doses + top_up) * per_eq, nothing, first=first, last=last)
    fall = change_by_day(nothing, acid.fall_mg_per_l_per_day.likely, first=first, last=last)
    return float(lift.sum()), -float(fall.sum())


def why_fall(ground: Ground, loop: LoopForecast, week: int) -> Explanation:
    """Return why alkalinity falls so much in a week with no base given [mg CaCO3/L]."""
    monday = ground.forecast.ruler.week_start(week)
    water, acid = water_on(ground, loop, monday), why_acid(ground, loop, week)
    fall = water.week_acids[week].drift_mg_per_l.times(-1.0)
    return Explanation(
        title="fall of alkalinity in a week",
        about=loop.name,
        value=fall.likely,
        unit=_UNIT,
        formula=Formula.FALL_OF_ACID,
        inputs=(
            worked("acid_eq", acid.value or 0.0, "eq"),
            worked("caco3_g_per_eq", water.acid.caco3_g_per_eq, "g/eq"),
            entered("water_l", loop.water_l, "L", loop.name),
        ),
        children=(acid,),
        notes=(Note(kind=NoteKind.SPREAD, values=(("low", fall.low), ("high", fall.high))),),
        on=monday,
    )


def why_observed_acid(ground: Ground, loop: LoopForecast, on: date) -> Explanation:
    """Return how much acid a day the log shows: what alkalinity fell by, and the base given meanwhile.

    Raises `NoSuchFigureError` where too few readings of alkalinity tell nothing.
    """
    water = water_on(ground, loop, on)
    seen = water.observed
    if seen is None:
        raise NoSuchFigureError("too few readings of alkalinity tell what acid there was.")
    trend = why_trend(ground, loop, on, Quantity.ALKALINITY_MG_PER_L.value)
    days = (("first", seen.from_on.isoformat()), ("last", seen.until_on.isoformat()))
    return Explanation(
        title="acid by the log",
        about=loop.name,
        value=seen.eq_per_day.likely,
        unit="eq/d",
        formula=Formula.ACID_SEEN,
        inputs=(
            worked("change_per_week", trend.value or 0.0, "mg/L"),
            worked("caco3_g_per_eq", water.acid.caco3_g_per_eq, "g/eq"),
            entered("water_l", loop.water_l, "L", loop.name),
            worked("base_eq_per_day", seen.base_eq_per_day, "eq/d"),
        ),
        children=(trend,),
        notes=(Note(kind=NoteKind.SEEN_BETWEEN, values=days),),
        on=seen.until_on,
    )
