"""Turns codes, dates and numbers into the words a grower reads, all through one translation context.

The only place where the desk makes sentences out of faults, refusals and states. Must know nothing of
widgets.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from datetime import date, datetime, timedelta
from enum import Enum
from typing import Any, Final

from PySide6.QtCore import QCoreApplication, QDate, QDateTime, QLocale

from planner.desk.field_words import CHOICE_WORDS, FIELD_LABELS, KIND_WORDS
from planner.desk.say import CONTEXT, tr
from planner.farm.farm import DAYS_PER_WEEK, Farm, kind_named
from planner.farm.faults import Fault, FaultKind
from planner.farm.fields import FieldKind, FieldSpec, specs_of

NONE: Final = "–"
_SIGNIFICANT: Final = 6
_TEN: Final = 10.0
_MOST_NAMED: Final = 4


def day_words(on: date) -> str:
    """Return a date that cannot be misread, such as "Tue 12 Jan 2027"."""
    return QLocale().toString(QDate(on.year, on.month, on.day), "ddd d MMM yyyy")


def ended_words(farm: Farm) -> str:
    """Return when the plan of a farm ended, and how it is taken further."""
    return tr(
        "The plan ended on {day}: nothing is foreseen after it, and no feed or dose of it holds any more. "
        "Give it more weeks, or a later day to begin on, in Set-up, Plan and name.",
        day=day_words(farm.plan_until - timedelta(days=1)),
    )


def short_day_words(on: date) -> str:
    """Return a date without its year, such as "Tue 12 Jan"."""
    return QLocale().toString(QDate(on.year, on.month, on.day), "ddd d MMM")


def time_words(at: datetime) -> str:
    """Return a moment in the user's own time, such as "Wed 10 Mar 2027 09:00"."""
    moment = QDateTime.fromSecsSinceEpoch(int(at.timestamp()))
    return QLocale().toString(moment, "ddd d MMM yyyy HH:mm")


def week_words(on: date) -> str:
    """Return the ISO week of a date, such as "W02 2027"."""
    year, week, _ = on.isocalendar()
    return f"W{week:02d} {year}"


def middle_of_week(start: date) -> date:
    """Return the middle day of a week, whose ISO week names it whether it begins on Sunday or Monday."""
    return start + timedelta(days=DAYS_PER_WEEK // 2)


def week_span_words(start: date) -> str:
    """Return a week as its number and its days, such as "W02 · Mon 11 Jan – Sun 17 Jan 2027"."""
    last = start + timedelta(days=DAYS_PER_WEEK - 1)
    week = middle_of_week(start).isocalendar().week
    return f"W{week:02d} · {short_day_words(start)} – {day_words(last)}"


def number_words(value: float, *, digits: int | None = None) -> str:
    """Return a number as the locale writes it: with so many decimals, or to six figures, never 1e6."""
    locale = QLocale()
    if digits is not None:
        return locale.toString(float(value), "f", digits)
    shortest = QLocale.FloatingPointPrecisionOption.FloatingPointShortest.value
    return locale.toString(float(f"{value:.{_SIGNIFICANT}g}"), "f", shortest)


def gram_words(value: float) -> str:
    """Return a mass or a level with as many figures as mean something."""
    return number_words(value, digits=0 if value >= _TEN else 2)


def unit_words(unit: str) -> str:
    """Return a unit for showing; pure numbers have none."""
    return "" if unit in {"1", ""} else tr(unit)


def with_unit(value: float, unit: str, *, digits: int | None = None) -> str:
    """Return a number and its unit."""
    return f"{number_words(value, digits=digits)} {unit_words(unit)}".rstrip()


def field_words(field: str) -> str:
    """Return what a field is called on the screen."""
    known = FIELD_LABELS.get(field)
    return tr(known) if known else field.replace("_", " ").capitalize()


def kind_words(word: str) -> str:
    """Return what a kind of thing is called on the screen."""
    return tr(KIND_WORDS.get(word, word))


def choice_words(member: Enum) -> str:
    """Return what a member of an enum is called on the screen."""
    known = CHOICE_WORDS.get((type(member).__name__, member.name))
    return tr(known or str(member.value))


def limit_words(spec: FieldSpec) -> str:
    """Return the limits of a field, such as "1 to 400 d", or an empty text when it has none."""
    if spec.kind in {FieldKind.NUMBER, FieldKind.WHOLE, FieldKind.SERIES} and spec.low is not None:
        low, high = _limit(spec.low), _limit(spec.high)
        return tr("{low} to {high} {unit}", low=low, high=high, unit=unit_words(spec.unit)).rstrip()
    return ""


def _limit(value: float | date | None) -> str:
    if isinstance(value, date):
        return day_words(value)
    return NONE if value is None else number_words(value)


def fault_words(fault: Fault) -> str:
    """Return a fault for showing beside its field: the field, the value and the limit by name."""
    label = field_words(fault.field.partition("[")[0]) if fault.field else fault.where
    if fault.kind is FaultKind.OUT_OF_LIMITS and fault.limit:
        return tr(
            "{label} is {value}; it must lie within {limit}.",
            label=label,
            value=fault.value,
            limit=_shown_limit(fault),
        )
    if fault.kind is FaultKind.MISSING:
        return tr("{label} is empty; it must be given.", label=label)
    if fault.kind is FaultKind.DUPLICATE:
        return tr("{label} “{value}” is taken; give another one.", label=label, value=fault.value)
    if fault.kind is FaultKind.TOO_LARGE and fault.limit:
        return tr("{label} has {value}; at most {limit}.", label=label, value=fault.value, limit=fault.limit)
    return fault.sentence()


def _shown_limit(fault: Fault) -> str:
    kind = fault.where.partition(' "')[0]
    try:
        spec = specs_of(kind_named(kind).owner).get(fault.field)
    except KeyError:
        return fault.limit
    return (limit_words(spec) if spec else "") or fault.limit


def faults_words(faults: tuple[Fault, ...]) -> str:
    """Return several faults, one a line."""
    return "\n".join(fault_words(fault) for fault in faults)


_REFUSALS: Final[Mapping[str, str]] = {
    "no free places": "No room for {batch} in {bed} from {from_on} to {until_on}: {needed} places needed, "
    "{free} free. Standing there: {blocking}.",
    "wrong bed": "{batch} cannot stand in {bed}: that is no bed for this crop, or not for this stage.",
    "no such unit": "{bed} has no number {unit}.",
    "locked": "{batch} is locked. Unlock it first, then move it.",
    "nothing to place": "All of {batch} has its places already.",
    "needed next": "{batch} cannot be picked that long: {blocking} is due in its places in {bed} "
    "on {from_on}.",
    "picked once": "{batch} is of a crop that is cut once: it has no window of picking to stretch.",
    "no such window": "{batch} cannot be picked for {needed} days: 0 to {free} days can be planned.",
}


class _Gaps(dict[str, Any]):
    """Fills what a refusal does not say with a dash."""

    def __missing__(self, key: str) -> str:
        return NONE


def refusal_words(code: str, values: Mapping[str, Any]) -> str:
    """Return why something cannot be done, from a refusal's code and its values."""
    shown = _Gaps({name: _shown(value) for name, value in values.items()})
    known = _REFUSALS.get(code)
    if known is None:
        return tr("That cannot be done here ({code}).", code=code)
    return QCoreApplication.translate(CONTEXT, known).format_map(shown)


def listed(many: Sequence[Any]) -> str:
    """Return the first few of many, and how many more there are."""
    named = ", ".join(str(each) for each in many[:_MOST_NAMED])
    rest = len(many) - _MOST_NAMED
    return tr("{named} and {rest} more", named=named, rest=rest) if rest > 0 else named or NONE


def _shown(value: Any) -> str:
    if isinstance(value, date):
        return day_words(value)
    if isinstance(value, (list, tuple)):
        return listed(value)
    if isinstance(value, float):
        return number_words(value)
    return NONE if value is None or value == "" else str(value)
