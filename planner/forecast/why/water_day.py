"""Why this much acid, base, salt and iron: the figures of a loop's water on a day, and what to give.

The day comes with the question. Must know nothing of how an answer is shown.
"""

from __future__ import annotations

from datetime import date
from typing import Final

from planner.farm.farm import DAYS_PER_WEEK
from planner.farm.species import ELEMENTS
from planner.forecast.values import LoopForecast
from planner.forecast.water.side import LoopWater, loop_water
from planner.forecast.why.fish import why_feed_mean
from planner.forecast.why.formulas import Formula
from planner.forecast.why.gaps import why_beyond
from planner.forecast.why.ground import Ground, NoSuchFigureError, entered, worked
from planner.forecast.why.values import Explanation, Input, Note, NoteKind

_CARE: Final = "coefficient/water_care/"


def water_on(ground: Ground, loop: LoopForecast, on: date) -> LoopWater:
    """Return the water side of a loop on a day, as the water page has it."""
    return loop_water(ground.farm, loop, ruler=ground.forecast.ruler, catalogue=ground.catalogue, today=on)


def why_acid(ground: Ground, loop: LoopForecast, week: int) -> Explanation:
    """Return why so much acid is counted on in a week."""
    acid = water_on(ground, loop, ground.forecast.ruler.week_start(week)).week_acids[week]
    feed = why_feed_mean(ground, loop, week)
    spread = (
        ("low", acid.planned_eq.low),
        ("high", acid.planned_eq.high),
        ("balance", acid.net_eq.likely),
    )
    return Explanation(
        title="acid made in a week",
        about=loop.name,
        value=acid.planned_eq.likely,
        unit="eq",
        formula=Formula.ACID,
        inputs=(
            worked("feed_g_per_day", feed.value or 0.0, "g/d"),
            worked("days", float(DAYS_PER_WEEK), "d"),
            ground.figure("acid_eq_per_kg_feed", "coefficient/nitrification/net_acid_eq_per_kg_feed"),
        ),
        children=(feed,),
        notes=(Note(kind=NoteKind.ACID_SPREAD, values=spread),),
        on=ground.forecast.ruler.week_start(week),
    )


def why_base(ground: Ground, loop: LoopForecast, week: int) -> Explanation:
    """Return why so much base is wanted in a week: as much as acid is made."""
    acid = why_acid(ground, loop, week)
    return Explanation(
        title="base wanted in a week",
        about=loop.name,
        value=acid.value,
        unit="eq",
        formula=Formula.BASE_WANTED,
        inputs=(worked("acid_eq", acid.value or 0.0, "eq"),),
        children=(acid,),
        on=acid.on,
    )


def why_base_grams(ground: Ground, loop: LoopForecast, on: date, product: str) -> Explanation:
    """Return why so many grams of a base are advised for the week of a day."""
    advice = water_on(ground, loop, on).advice
    share = next((one for one in advice.base.bases if one.supplement == product), None)
    if share is None:
        raise _not_advised(product, on, [one.supplement for one in advice.base.bases])
    whole = why_base(ground, loop, advice.week)
    need = advice.base.need_eq.likely
    step = ground.figure("ph_step", "loop/ph_step_per_day")
    cap = Note(kind=NoteKind.DOSE_CAP, values=(("cap_g", share.cap_g), ("step", step.value)))
    return Explanation(
        title="grams of a base for a week",
        about=_name(ground, product),
        value=share.grams_per_week.likely,
        unit="g",
        formula=Formula.BASE_GRAMS,
        inputs=(
            worked("base_eq", need, "eq"),
            worked("share_of_base", share.eq_per_week.likely / need if need else 0.0, "1"),
            ground.figure("base_eq_per_kg", f"supplement/{product}/base_eq_per_kg"),
        ),
        children=(whole,),
        notes=(Note(kind=NoteKind.SHARED_BASE), cap),
        on=on,
    )


def why_salt_grams(ground: Ground, loop: LoopForecast, on: date, product: str) -> Explanation:
    """Return why so many grams of a salt are advised for the week of a day."""
    advice = water_on(ground, loop, on).advice
    fill = next((one for one in advice.salts.fills if one.supplement == product), None)
    if fill is None:
        raise _not_advised(product, on, [one.supplement for one in advice.salts.fills])
    share = ground.figure("element_share", f"supplement/{product}/{fill.element}_share")
    gap = fill.brings_g[ELEMENTS.index(fill.element)]
    beyond = advice.gaps_g[fill.element]
    return Explanation(
        title="grams of a salt for a week",
        about=_name(ground, product),
        value=fill.grams.likely,
        unit="g",
        formula=Formula.SALT_GRAMS,
        inputs=(worked("gap_g", gap, "g"), share),
        children=(_gap(ground, loop, advice.week, fill.element, gap=gap, beyond=beyond),),
        on=on,
    )


def _gap(
    ground: Ground, loop: LoopForecast, week: int, element: str, *, gap: float, beyond: float
) -> Explanation:
    ahead = ground.figure("weeks", f"{_CARE}gap_weeks")
    return Explanation(
        title="gap of an element",
        about=element.capitalize(),
        value=gap,
        unit="g",
        formula=Formula.GAP_LEFT,
        inputs=(
            worked("wanted_beyond_supply_g", beyond, "g"),
            worked("brought_by_others_g", beyond - gap, "g"),
            ahead,
        ),
        children=(why_beyond(ground, loop, week, ELEMENTS.index(element)),),
        notes=(Note(kind=NoteKind.GAP_MEAN, values=(("weeks", ahead.value),)),),
    )


def why_iron_due(ground: Ground, loop: LoopForecast, on: date) -> Explanation:
    """Return why iron is due on its day; the value is days from the day asked about, below 0 when late."""
    iron = water_on(ground, loop, on).advice.iron
    interval = ground.figure("interval_days", "coefficient/water/iron_interval_days")
    if iron.last_on is None:
        formula = Formula.NOTHING
        since: tuple[Input, ...] = ()
        notes: tuple[Note, ...] = (Note(kind=NoteKind.IRON_NEVER),)
    else:
        days = float((on - iron.last_on).days)
        formula, notes = Formula.IRON_DUE, ()
        since = (entered("days_since_last_dose", days, "d", loop.name),)
    return Explanation(
        title="next dose of iron",
        about=loop.name,
        value=float(-iron.days_late),
        unit="d",
        formula=formula,
        inputs=(interval, *since),
        notes=notes,
        on=iron.due_on,
    )


def why_iron_grams(ground: Ground, loop: LoopForecast, on: date, product: str) -> Explanation:
    """Return why so many grams of an iron product are a dose."""
    iron = water_on(ground, loop, on).advice.iron
    found = next((one for one in iron.products if one.supplement == product), None)
    if found is None:
        raise _not_advised(product, on, [one.supplement for one in iron.products])
    present, notes = _iron_present(iron.present_mg_per_l, loop)
    entry = ground.loops[loop.loop]
    return Explanation(
        title="grams of iron product",
        about=_name(ground, product),
        value=found.grams.likely,
        unit="g",
        formula=Formula.IRON_GRAMS,
        inputs=(
            ground.figure("target_mg_per_l", "coefficient/water/iron_target_mg_per_l"),
            present,
            entered("water_l", entry.water_l, "L", entry.name),
            ground.figure("iron_share", f"supplement/{product}/fe_share"),
        ),
        children=(why_iron_due(ground, loop, on),),
        notes=notes,
        on=on,
    )


def _iron_present(present: float | None, loop: LoopForecast) -> tuple[Input, tuple[Note, ...]]:
    if present is None:
        return worked("present_mg_per_l", 0.0, "mg/L"), (Note(kind=NoteKind.IRON_NOT_TESTED),)
    return entered("present_mg_per_l", present, "mg/L", loop.name), ()


def _name(ground: Ground, product: str) -> str:
    return ground.catalogue.supplements[product].name


def _not_advised(product: str, on: date, advised: list[str]) -> NoSuchFigureError:
    there = f"there are {', '.join(advised)}" if advised else "none is"
    return NoSuchFigureError(f'"{product}" is not advised in the week of {on.isoformat()}; {there}.')
