"""Verdicts on more beds in the words of the desk: the answer, what limits, and the figures behind it.

Must know nothing of widgets.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Mapping
from typing import Final

from PySide6.QtCore import QDate, QLocale

from planner.catalogue.catalogue import Catalogue
from planner.desk.plan.asks import ExpandAsk
from planner.desk.rows import Column, Row
from planner.desk.say import tr
from planner.desk.words import number_words, unit_words
from planner.farm.faults import FarmFaultError, Fault, FaultKind
from planner.planning.expansion.pump import PumpCurve, pump_curve
from planner.planning.expansion.verdicts import Answer, Expansion, Limit, Matter, MonthArea, Question, Verdict

MATTER_WORDS: Final[Mapping[Matter, str]] = {
    Matter.NUTRIENTS: "Nutrients",
    Matter.FLOW: "Flow at the new head",
    Matter.FILTER_AND_OXYGEN: "Filter and oxygen",
    Matter.LIGHT_POWER_STRUCTURE: "Light, power and structure",
}
ANSWER_WORDS: Final[Mapping[Answer, str]] = {
    Answer.YES: "Yes",
    Answer.YES_WITH: "Yes, with",
    Answer.NO: "No",
    Answer.UNKNOWN: "Unknown",
}
ANSWER_SIGNS: Final[Mapping[Answer, str]] = {
    Answer.YES: "✔",
    Answer.YES_WITH: "◐",
    Answer.NO: "✘",
    Answer.UNKNOWN: "?",
}
ANSWER_INKS: Final[Mapping[Answer, str]] = {
    Answer.YES: "good",
    Answer.YES_WITH: "text",
    Answer.NO: "wrong",
    Answer.UNKNOWN: "muted",
}
LIMIT_WORDS: Final[Mapping[Limit, str]] = {
    Limit.FEED: "the fish are not fed enough for it in any month",
    Limit.FEED_IN_SOME_MONTHS: "the feed carries it in some months only",
    Limit.THIN_FEED: "the feed lies at the low end of the band then",
    Limit.NO_PUMP: "the pump's curve is not entered",
    Limit.NO_HEAD: "the height of the lift is not entered",
    Limit.NO_TANK: "the loop has no tank",
    Limit.HEAD: "the pump does not lift so high",
    Limit.FLOW: "too little flows at that head",
    Limit.NO_RESERVE: "the flow is enough, but without reserve",
    Limit.CURVE_TOO_SHORT: "the points of the pump do not reach that head",
    Limit.FILTER_SHORT: "the filter has too little surface",
    Limit.FILTER_TIGHT: "the filter's surface has no reserve",
    Limit.FILTER_HIGH: "the filter would be too small for the most that may be needed",
    Limit.NO_FILTER_AREA: "the filter's surface is not entered",
    Limit.OXYGEN: "too little oxygen is given",
    Limit.OXYGEN_HIGH: "oxygen would be short for the most that may be asked",
    Limit.NO_OXYGEN: "what the air pumps give is not entered",
    Limit.LIGHT: "too little light reaches it",
    Limit.LAMPS: "lamps for the light that is missing",
    Limit.NO_LIGHT: "the light there, or the crop that wants it, is not entered",
    Limit.POWER: "the circuit has too little to spare",
    Limit.NO_POWER: "the power wanted or to spare is not entered",
    Limit.STRUCTURE: "the load is more than the structure may carry",
    Limit.NO_STRUCTURE: "the load the structure may carry, or that of frame and rafts, is not entered",
    Limit.NO_DEPTH: "the depth of the water is not entered, or it is gravel, whose weight you must ask",
}
_UNITS: Final = frozenset({"m²", "g/d", "L/h", "m", "g/h", "mol/m²/d", "W", "kg/m²", "kg"})
_PARTED: Final = re.compile(r"[;,\s]+")
_FIGURES: Final = 3


def answer_words(verdict: Verdict) -> str:
    """Return the answer of a verdict with everything that limits it."""
    said = "; ".join(tr(LIMIT_WORDS[limit]) for limit in verdict.limits)
    sign, answer = ANSWER_SIGNS[verdict.answer], tr(ANSWER_WORDS[verdict.answer])
    if not said:
        return tr("{sign} {answer}", sign=sign, answer=answer)
    if verdict.answer is Answer.YES_WITH:
        return tr("{sign} Yes, but: {said}", sign=sign, said=said)
    return tr("{sign} {answer}: {said}", sign=sign, answer=answer, said=said)


def headline(found: Expansion, area_m2: float) -> str:
    """Return the answer for all four together, with the verdict that decides."""
    area = number_words(area_m2)
    words = {
        Answer.YES: tr("Yes: this loop can carry {area} m² more.", area=area),
        Answer.YES_WITH: tr("Yes, under conditions: {area} m² more.", area=area),
        Answer.NO: tr("No: this loop cannot carry {area} m² more.", area=area),
        Answer.UNKNOWN: tr("Unknown whether this loop can carry {area} m² more.", area=area),
    }[found.answer]
    limiting = found.limiting
    if limiting is None:
        return words
    return tr(
        "{words} What decides: {matter}.", words=words, matter=tr(MATTER_WORDS[limiting.matter]).lower()
    )


def number_lines(verdict: Verdict) -> Iterator[tuple[str, str]]:
    """Yield the figures of a verdict, label and value."""
    for name, value in verdict.numbers:
        label, _, unit = name.rpartition(" ")
        if unit not in _UNITS:
            label, unit = name, ""
        label = tr(label[:1].upper() + label[1:])
        if value is None:
            yield label, tr("not entered")
        else:
            shown = number_words(float(f"{value:.{_FIGURES}g}"))
            yield label, f"{shown} {unit_words(unit)}".rstrip()


def month_columns() -> tuple[Column, ...]:
    """Return the columns of the table of months."""
    return (
        Column(title=tr("Month")),
        Column(title=tr("With a margin"), numeric=True, tip=tr("At the high end of the feed-rate band")),
        Column(title=tr("At most"), numeric=True, tip=tr("At the low end of the feed-rate band")),
    )


def month_rows(months: tuple[MonthArea, ...]) -> tuple[Row, ...]:
    """Return a row for each month: the extra area that its feed carries."""
    return tuple(_month_row(one) for one in months)


def _month_row(one: MonthArea) -> Row:
    return Row(
        id=f"{one.year}-{one.month:02d}",
        texts=(
            month_words(one.year, one.month),
            tr("{area} m²", area=number_words(one.cautious_m2, digits=1)),
            tr("{area} m²", area=number_words(one.most_m2, digits=1)),
        ),
        sort=((one.year, one.month), one.cautious_m2, one.most_m2),
    )


def month_words(year: int, month: int) -> str:
    """Return a month with its year."""
    return QLocale().toString(QDate(year, month, 1), "MMMM yyyy")


def question_of(ask: ExpandAsk, catalogue: Catalogue) -> Question:
    """Return what is asked of the engine; raises `FarmFaultError` for a pump that is none."""
    crop = catalogue.crops.get(ask.crop)
    return Question(
        loop=ask.loop,
        area_m2=ask.area_m2,
        kind=ask.kind,
        group=ask.crop_group if crop is None else crop.group,
        depth_cm=ask.depth_cm,
        head_m=ask.head_m,
        friction_m=ask.friction_m,
        pump=_curve(ask.pump_points) if ask.pump_points.strip() else None,
        oxygen_g_per_h=ask.oxygen_g_per_h,
        light_mol_per_m2_d=ask.light_mol_per_m2_d,
        light_wanted_mol_per_m2_d=None if crop is None else crop.light_target_mol_per_m2_d,
        lamps_w=ask.lamps_w,
        pump_w=ask.pump_w,
        spare_w=ask.spare_w,
        load_allowed_kg_per_m2=ask.load_allowed_kg_per_m2,
        dry_kg_per_m2=ask.dry_kg_per_m2,
    )


def _curve(text: str) -> PumpCurve:
    points = []
    for word in (word for word in _PARTED.split(text.strip()) if word):
        head, _, flow = word.partition(":")
        try:
            points.append((float(head), float(flow)))
        except ValueError:
            words = tr("“{word}” is no point; write head and flow as 1.5:2400.", word=word)
            raise _pump_fault(words) from None
    try:
        return pump_curve(tuple(points))
    except FarmFaultError as refused:
        raise _pump_fault(refused.faults[0].message) from None


def _pump_fault(message: str) -> FarmFaultError:
    return FarmFaultError(
        (Fault(kind=FaultKind.OUT_OF_LIMITS, where="", field="pump_points", message=message),)
    )
