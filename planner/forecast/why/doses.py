"""Why a dose brings so much, why base is left over, and why an element is still wanting in a week."""

from __future__ import annotations

from dataclasses import replace
from datetime import date
from typing import Final

from planner.farm.farm import by_id
from planner.farm.fields import Id
from planner.farm.species import ELEMENTS
from planner.farm.water import Dose
from planner.forecast.values import LoopForecast
from planner.forecast.why.arithmetic import figured
from planner.forecast.why.formulas import Formula
from planner.forecast.why.gaps import why_beyond
from planner.forecast.why.ground import Ground, NoSuchFigureError, entered, worked
from planner.forecast.why.values import Explanation, Input, Note, NoteKind
from planner.forecast.why.water_day import (
    water_on,
    why_base,
    why_base_grams,
    why_iron_grams,
    why_salt_grams,
)

_CARE: Final = "coefficient/water_care/"


def why_dose_brings(ground: Ground, about: Id) -> Explanation:
    """Return what a dose of the plan brings: each element in grams and in the loop's water, and base."""
    dose: Dose | None = by_id(ground.farm.doses).get(about)
    if dose is None:
        raise NoSuchFigureError(f"there is no dose {about}.")
    _, loop = ground.loop_forecast(dose.loop)
    name = ground.catalogue.supplements[dose.supplement].name
    return _brings(ground, loop, dose.supplement, entered("value", dose.grams, "g", name), ())


def why_advised_brings(ground: Ground, loop: LoopForecast, on: date, product: str) -> Explanation:
    """Return what the grams advised of a product for the week of a day would bring."""
    advised = _advised(ground, loop, on, product)
    grams = worked("value", advised.value or 0.0, "g")
    return _brings(ground, loop, product, grams, (advised,))


def _advised(ground: Ground, loop: LoopForecast, on: date, product: str) -> Explanation:
    advice = water_on(ground, loop, on).advice
    if any(one.supplement == product for one in advice.base.bases):
        return why_base_grams(ground, loop, on, product)
    if any(one.supplement == product for one in advice.iron.products):
        return why_iron_grams(ground, loop, on, product)
    return why_salt_grams(ground, loop, on, product)


def _brings(
    ground: Ground, loop: LoopForecast, product: str, grams: Input, behind: tuple[Explanation, ...]
) -> Explanation:
    """The figure is the grams themselves; what they bring stands below."""
    entry = ground.catalogue.supplements[product]
    held = [at for at, element in enumerate(ELEMENTS) if getattr(entry, f"{element}_share") > 0]
    base = () if entry.base_eq_per_kg <= 0 else (_base_of(ground, product, grams),)
    return Explanation(
        title="what a dose brings",
        about=entry.name,
        value=grams.value,
        unit="g",
        formula=Formula.AS_ENTERED,
        inputs=(grams,),
        children=(*behind, *(_level_of(ground, loop, product, grams, at) for at in held), *base),
    )


def _level_of(ground: Ground, loop: LoopForecast, product: str, grams: Input, element: int) -> Explanation:
    symbol = ELEMENTS[element]
    inputs = (
        replace(grams, name="grams"),
        ground.figure("element_share", f"supplement/{product}/{symbol}_share"),
    )
    held = Explanation(
        title="element in a dose",
        about=symbol.capitalize(),
        value=0.0,
        unit="g",
        formula=Formula.ELEMENT_IN_DOSE,
        inputs=inputs,
    )
    held = figured(held)
    level = Explanation(
        title="rise of an element by a dose",
        about=symbol.capitalize(),
        value=0.0,
        unit="mg/L",
        formula=Formula.LEVEL_OF_GRAMS,
        inputs=(
            worked("held_g", held.value or 0.0, "g"),
            entered("water_l", loop.water_l, "L", loop.name),
        ),
        children=(held,),
    )
    return figured(level)


def _base_of(ground: Ground, product: str, grams: Input) -> Explanation:
    bare = Explanation(
        title="base in a dose",
        about=ground.catalogue.supplements[product].name,
        value=0.0,
        unit="eq",
        formula=Formula.BASE_IN_DOSE,
        inputs=(
            replace(grams, name="grams"),
            ground.figure("base_eq_per_kg", f"supplement/{product}/base_eq_per_kg"),
        ),
    )
    return figured(bare)


def why_base_left(ground: Ground, loop: LoopForecast, on: date) -> Explanation:
    """Return why base is left over that does not fit into the doses of a week."""
    advice = water_on(ground, loop, on).advice
    whole = why_base(ground, loop, advice.week)
    fitting = advice.base.need_eq.likely - advice.base.left_over_eq
    return Explanation(
        title="base that does not fit",
        about=loop.name,
        value=advice.base.left_over_eq,
        unit="eq",
        formula=Formula.BASE_LEFT,
        inputs=(
            worked("base_eq", advice.base.need_eq.likely, "eq"),
            worked("fits_eq", fitting, "eq"),
            ground.figure("doses_a_week", f"{_CARE}base_doses_per_week"),
            ground.figure("ph_step", "loop/ph_step_per_day"),
        ),
        children=(whole,),
        on=on,
    )


def why_wanting(ground: Ground, loop: LoopForecast, on: date, element: int) -> Explanation:
    """Return why an element is still wanting a week, beyond supply and what is at hand."""
    advice = water_on(ground, loop, on).advice
    left, gap = advice.salts.unfilled_g[element], advice.gaps_g[ELEMENTS[element]]
    ahead = ground.figure("weeks", f"{_CARE}gap_weeks")
    return Explanation(
        title="element still wanting in a week",
        about=f"{ELEMENTS[element].capitalize()}, {loop.name}",
        value=left,
        unit="g",
        formula=Formula.GAP_LEFT,
        inputs=(
            worked("wanted_beyond_supply_g", gap, "g"),
            worked("brought_by_others_g", gap - left, "g"),
            ahead,
        ),
        children=(why_beyond(ground, loop, advice.week, element),),
        notes=(Note(kind=NoteKind.GAP_MEAN, values=(("weeks", ahead.value),)),),
        on=on,
    )
