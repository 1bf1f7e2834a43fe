"""Why so much of a crop is wanted in a week, and why so much of it is foreseen as fit for sale."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from planner.farm.crops import TargetUnit
from planner.forecast.why.formulas import Formula
from planner.forecast.why.ground import Ground, entered, worked
from planner.forecast.why.plants import why_harvest
from planner.forecast.why.values import Explanation, Note, NoteKind
from planner.planning.answering import stated, summed
from planner.planning.wanted import Due, Rhythm, Steady, Want, dues_of


def why_wanted(
    ground: Ground, wants: Sequence[Want], crop: str, unit: TargetUnit, week: int, value: float
) -> Explanation:
    """Return why so much of a crop is wanted in a week of the ruler."""
    ruler = ground.forecast.ruler
    parts = [
        _due(ground, want, due)
        for want in wants
        if want.crop == crop and want.unit is unit
        for due in dues_of(want, ruler)
        if due.week == week
    ]
    found = summed("wanted", ground.catalogue.crops[crop].name, value, unit.value, parts)
    return replace(found, on=ruler.week_start(week))


def _due(ground: Ground, want: Want, due: Due) -> Explanation:
    last_on = ground.forecast.ruler.date_of(due.last_day)
    about = ground.catalogue.crops[due.crop].name
    in_part = isinstance(want, Steady) and due.amount < want.amount_per_week
    notes = (Note(kind=NoteKind.WEEK_PART),) if in_part else ()
    of = want.rule if isinstance(want, Rhythm) else about
    given = entered("value", due.amount, due.unit.value, of)
    return replace(stated("wanted by a day", about, given, notes=notes), on=last_on)


def why_sold(
    ground: Ground, crop: str, unit: TargetUnit, week: int, value: float, *, title: str
) -> Explanation:
    """Return why so much of a crop is foreseen in a week, as fit for sale."""
    grams = unit is TargetUnit.KG
    on = ground.forecast.ruler.week_start(week)
    if crop not in ground.forecast.crops:
        return Explanation(
            title=title,
            about=ground.catalogue.crops[crop].name,
            value=0.0,
            unit=unit.value,
            formula=Formula.NOTHING,
            notes=(Note(kind=NoteKind.NOTHING_PLANTED),),
            on=on,
        )
    harvest = why_harvest(ground, crop, week, grams=grams)
    return Explanation(
        title=title,
        about=harvest.about,
        value=value,
        unit=unit.value,
        formula=Formula.SOLD_KG if grams else Formula.SOLD,
        inputs=(
            worked("harvest_g" if grams else "harvest", harvest.value or 0.0, harvest.unit),
            ground.figure("marketable_share", f"crop/{crop}/marketable_share"),
        ),
        children=(harvest,),
        on=on,
    )
