"""Doses of a loop as ready rows: those of the plan, given and due, and those the water asks for.

Pure: must know nothing of widgets.
"""

from __future__ import annotations

import math
from collections.abc import Iterator
from dataclasses import dataclass, replace
from datetime import date, timedelta
from typing import Final

from planner.actions.changing import addition
from planner.catalogue.catalogue import Catalogue
from planner.desk.outlook import Outlook
from planner.desk.pages import Ask, Entered
from planner.desk.rows import Column, Row
from planner.desk.say import tr
from planner.desk.water_words import caution_texts, rough_words, span_words, supplement_words, water_words
from planner.desk.words import NONE, day_words, number_words
from planner.farm.changes import ChangeSet
from planner.farm.farm import DAYS_PER_WEEK, by_id
from planner.farm.ids import new_id
from planner.farm.species import ELEMENTS, Supplement
from planner.farm.water import Dose
from planner.forecast.water.bases import Before
from planner.forecast.water.iron import ChelateFit
from planner.forecast.water.side import LoopWater
from planner.forecast.water.spans import Span
from planner.forecast.why.values import Subject, SubjectKind

_G_PER_KG: Final = 1000.0
_MG_PER_G: Final = 1000.0
_TELLING_DIGITS: Final = 2
_ROUNDING: Final = 1e-9
_NEVER: Final = date.max
_LEAST_G: Final = 0.001
"""Least amount that a dose of a farm can have."""
_BARRED: Final = (Before.AMMONIA_HIGH, Before.PH_HIGH_ENOUGH)


@dataclass(frozen=True, slots=True, kw_only=True)
class Advised:
    """A dose the water asks for: grams as a span and as much of it as may be given at once.

    `before` is what comes first; with `barred` it is not to be given now.
    """

    supplement: str
    grams: Span
    at_once_g: float
    on: date
    ask: Subject | None = None
    before: tuple[str, ...] = ()
    barred: bool = False
    planned: bool = False


def dose_columns() -> tuple[Column, ...]:
    """Return the columns of the table of doses."""
    return (
        Column(title=tr("Product")),
        Column(title=tr("Grams"), numeric=True),
        Column(title=tr("Next due")),
        Column(title=tr("State")),
        Column(title=tr("What it gives")),
        Column(title=tr("Given last")),
    )


def given_last(dose: Dose, today: date) -> date | None:
    """Return the last day before today on which a dose of the plan was due; None when it has not begun."""
    if dose.on >= today:
        return None
    if dose.every_days == 0:
        return dose.on
    end = today - timedelta(days=1)
    end = end if dose.until_on is None else min(dose.until_on, end)
    times = max((end - dose.on).days, 0) // dose.every_days
    return dose.on + timedelta(days=times * dose.every_days)


def next_due(dose: Dose, today: date) -> date | None:
    """Return the first day from today on that a dose is due; None when it is over."""
    if dose.on >= today:
        return dose.on
    if dose.every_days == 0:
        return None
    times = -((dose.on - today).days // dose.every_days)
    due = dose.on + timedelta(days=times * dose.every_days)
    return None if dose.until_on is not None and due > dose.until_on else due


def advised_doses(outlook: Outlook, water: LoopWater) -> tuple[Advised, ...]:
    """Return what the water of a loop asks for, iron first, then bases, then salts."""
    doses = [each for each in outlook.farm.doses if each.loop == water.loop]
    asked = (each for each in _asked(water) if whole_grams(each.at_once_g) >= _LEAST_G)
    return tuple(_with_plan(each, doses, water.today) for each in asked)


def _asked(water: LoopWater) -> Iterator[Advised]:
    advice, iron = water.advice, water.advice.iron
    for product in iron.products[:1]:
        due = max(iron.due_on, water.today)
        fit = () if product.fit is ChelateFit.SUITED else (water_words(product.fit),)
        yield Advised(
            supplement=product.supplement,
            grams=product.grams,
            at_once_g=product.grams.likely,
            on=due,
            before=fit,
            ask=_of_day(water, SubjectKind.IRON_GRAMS, product.supplement),
        )
    said = tuple(water_words(each) for each in advice.base.before)
    barred = any(each in _BARRED for each in advice.base.before)
    for share in advice.base.bases:
        yield Advised(
            supplement=share.supplement,
            grams=share.grams_per_week,
            at_once_g=min(share.grams_per_week.likely, share.cap_g),
            on=water.today,
            before=said,
            barred=barred,
            ask=_of_day(water, SubjectKind.BASE_GRAMS, share.supplement),
        )
    for fill in advice.salts.fills:
        yield Advised(
            supplement=fill.supplement,
            grams=fill.grams,
            at_once_g=fill.grams.likely,
            on=water.today,
            ask=_of_day(water, SubjectKind.SALT_GRAMS, fill.supplement),
        )


def _of_day(water: LoopWater, kind: SubjectKind, part: str) -> Subject:
    return Subject(kind=kind, about=water.loop, on=water.today, part=part)


def _with_plan(asked: Advised, doses: list[Dose], today: date) -> Advised:
    """Return what is asked for, with whether the plan has a dose of it within the week from then on."""
    until = asked.on + timedelta(days=DAYS_PER_WEEK)
    dues = [next_due(each, today) for each in doses if each.supplement == asked.supplement]
    planned = any(due is not None and due < until for due in dues)
    return replace(asked, planned=planned)


def dose_rows(outlook: Outlook, water: LoopWater) -> tuple[Row, ...]:
    """Return what is asked for, then what is due by date, then what is over, the newest first.

    The payload is an `Advised` or a `Dose`.
    """
    water_l = by_id(outlook.farm.loops)[water.loop].water_l
    asked = [_advised_row(each, outlook.catalogue, water_l) for each in advised_doses(outlook, water)]
    doses = [each for each in outlook.farm.doses if each.loop == water.loop]
    planned = [_dose_row(each, outlook.catalogue, water_l, water.today) for each in doses]
    return (*asked, *sorted(planned, key=_order))


def _order(row: Row) -> tuple[int, int]:
    due, last = row.sort[2], row.sort[5]
    return due, -last


def _advised_row(asked: Advised, catalogue: Catalogue, water_l: float) -> Row:
    if asked.barred:
        state = tr("not now")
    else:
        state = tr("asked for, in the plan") if asked.planned else tr("asked for")
    return _row(
        f"asked {asked.supplement}",
        (asked.supplement, asked.grams.likely, span_words(asked.grams)),
        (asked.on, state, None),
        catalogue,
        water_l,
        asked,
    )


def _dose_row(dose: Dose, catalogue: Catalogue, water_l: float, today: date) -> Row:
    due, last = next_due(dose, today), given_last(dose, today)
    if due is None:
        state = tr("given") if dose.every_days == 0 else tr("over")
    else:
        state = tr("every {days} d", days=dose.every_days) if dose.every_days else tr("once")
    return _row(
        dose.id,
        (dose.supplement, dose.grams, number_words(dose.grams)),
        (due, state, last),
        catalogue,
        water_l,
        dose,
    )


def _row(
    key: str,
    what: tuple[str, float, str],
    when: tuple[date | None, str, date | None],
    catalogue: Catalogue,
    water_l: float,
    payload: Advised | Dose,
) -> Row:
    supplement, grams, said = what
    due, state, last = when
    name = supplement_words(supplement, catalogue)
    gives = gives_words(catalogue.supplements.get(supplement), grams, water_l)
    days = [day_words(each).partition(" ")[2] if each else NONE for each in (due, last)]
    texts = (name, said, days[0], state, gives, days[1])
    sort = (name, grams, (due or _NEVER).toordinal(), state, gives, last.toordinal() if last else 0)
    return Row(
        id=key, texts=texts, sort=sort, spoken=", ".join(texts), payload=payload, asks=_asks(payload, gives)
    )


def _asks(payload: Advised | Dose, gives: str) -> tuple[Ask | None, ...]:
    """Return what each column can be asked, in their order."""
    if isinstance(payload, Advised):
        return _advised_asks(payload.ask, gives)
    days = Entered(about=payload.id, field="on")
    every = Entered(about=payload.id, field="every_days") if payload.every_days else None
    brings = Subject(kind=SubjectKind.DOSE_BRINGS, about=payload.id)
    grams = Entered(about=payload.id, field="grams")
    return None, grams, every or days, every, brings if gives != NONE else None, days


def _advised_asks(ask: Subject | None, gives: str) -> tuple[Ask | None, ...]:
    if ask is None:
        return ()
    brings = replace(ask, kind=SubjectKind.ADVISED_BRINGS) if gives != NONE else None
    due = replace(ask, kind=SubjectKind.IRON_DUE, part="") if ask.kind is SubjectKind.IRON_GRAMS else ask
    return None, ask, due, None, brings, None


def gives_words(supplement: Supplement | None, grams: float, water_l: float) -> str:
    """Return what grams of a supplement bring: elements in grams and in the loop's water, and base."""
    if supplement is None:
        return NONE
    parts = []
    for element in ELEMENTS:
        held = float(getattr(supplement, f"{element}_share")) * grams
        if held > 0:
            level = rough_words(held * _MG_PER_G / water_l, "mg/L")
            parts.append(f"{element.capitalize()} {rough_words(held, 'g')} (+{level})")
    base = supplement.base_eq_per_kg * grams / _G_PER_KG
    if base > 0:
        parts.append(tr("base {eq}", eq=rough_words(base, "eq")))
    return ", ".join(parts) or NONE


def dose_cautions(payload: Advised | Dose, catalogue: Catalogue) -> tuple[str, ...]:
    """Return the cautions of the supplement of a row."""
    found = catalogue.supplements.get(payload.supplement)
    return caution_texts(found.cautions if found else (), catalogue)


def whole_grams(grams: float) -> float:
    """Return grams with two telling figures, never more than they were.

    >>> whole_grams(217.9), whole_grams(3.19), whole_grams(0.0)
    (210.0, 3.1, 0.0)
    """
    if grams <= 0:
        return 0.0
    digits = _TELLING_DIGITS - 1 - math.floor(math.log10(grams))
    step = 10.0**digits
    return math.floor(grams * step + _ROUNDING) / step


def taken_up(asked: Advised, outlook: Outlook, water: LoopWater) -> ChangeSet:
    """Return the act that puts one dose of what is asked for into the plan."""
    name = supplement_words(asked.supplement, outlook.catalogue)
    grams = whole_grams(asked.at_once_g)
    dose = Dose(id=new_id(), loop=water.loop, supplement=asked.supplement, grams=grams, on=asked.on)
    return addition(tr("Plan a dose: {grams} g {name}", grams=number_words(grams), name=name), dose)
