"""Reads what was typed into values, and writes values as a person would type them.

Plain functions on text; must know nothing of widgets. Every refusal is a `Fault` that holds the text as
typed, so that a form can show it beside the field and lose nothing.
"""

from __future__ import annotations

import re
from datetime import date
from typing import Any, Final

from PySide6.QtCore import QDate, QLocale

from planner.desk.say import tr
from planner.desk.words import day_words, field_words, limit_words
from planner.farm.faults import Fault, FaultKind
from planner.farm.fields import FieldKind, FieldSpec

_WEEK: Final = re.compile(
    r"^(?:(?P<before>\d{4})[-\s]?)?W(?P<week>\d{1,2})(?:\s+(?P<after>\d{4}))?$", re.IGNORECASE
)
_DAY_FORMATS: Final = ("ddd d MMM yyyy", "d MMM yyyy", "d MMMM yyyy", "yyyy-MM-dd")
_MONDAY: Final = 1


class UnreadError(ValueError):
    """Raised when a text cannot be taken for a value; holds the fault."""

    def __init__(self, fault: Fault) -> None:
        super().__init__(fault.message)
        self.fault = fault


def read_number(text: str, *, field: str, spec: FieldSpec) -> float | int | None:
    """Return the number that was typed, or None for an empty field that may be empty.

    Raises `UnreadError` when the text is no number, or is empty where a value is needed.
    """
    stripped = text.strip()
    if not stripped:
        _allow_nothing(field, spec)
        return None
    number = _number(stripped)
    if number is None:
        raise UnreadError(_no_number(stripped, field, spec))
    if spec.kind is FieldKind.WHOLE:
        if number != int(number):
            raise UnreadError(_no_number(stripped, field, spec))
        return int(number)
    return number


def _allow_nothing(field: str, spec: FieldSpec) -> None:
    if not spec.may_be_none:
        message = tr("{label} is empty; it must be given.", label=field_words(field))
        raise UnreadError(Fault(kind=FaultKind.MISSING, where="", field=field, message=message))


def _number(text: str) -> float | None:
    for locale in (QLocale(), QLocale.c()):
        locale.setNumberOptions(QLocale.NumberOption.RejectGroupSeparator)
        number, understood = locale.toDouble(text)
        if understood and abs(number) != float("inf"):
            return number
    return None


def _no_number(text: str, field: str, spec: FieldSpec) -> Fault:
    whole = spec.kind is FieldKind.WHOLE
    limit = limit_words(spec)
    if whole:
        message = tr(
            "{label}: “{value}” is no whole number; give {limit}.",
            label=field_words(field),
            value=text,
            limit=limit,
        )
    else:
        message = tr(
            "{label}: “{value}” is no number; give {limit}.",
            label=field_words(field),
            value=text,
            limit=limit,
        )
    return Fault(kind=FaultKind.WRONG_TYPE, where="", field=field, value=text, limit=limit, message=message)


def number_text(value: float | None) -> str:
    """Return a number as it would be typed; empty for None."""
    if value is None:
        return ""
    locale = QLocale()
    locale.setNumberOptions(QLocale.NumberOption.OmitGroupSeparator)
    shortest = QLocale.FloatingPointPrecisionOption.FloatingPointShortest.value
    return locale.toString(value) if isinstance(value, int) else locale.toString(value, "g", shortest)


def read_day(text: str, *, field: str, spec: FieldSpec, today: date) -> date | None:
    """Return the date that was typed: "Tue 12 Jan 2027", "2027-01-12", or a week such as "W02 2027".

    A week stands for its Monday; without a year it is the year of `today`. The weekday need not be
    right, the rest must. Raises `UnreadError` when it is no date.
    """
    stripped = " ".join(text.split())
    if not stripped:
        _allow_nothing(field, spec)
        return None
    found = _week(stripped, today) or _day(stripped)
    if found is None:
        message = tr(
            "{label}: “{value}” is no date; write it as {example}, or a week as W02 2027.",
            label=field_words(field),
            value=stripped,
            example=day_words(today),
        )
        fault = Fault(kind=FaultKind.WRONG_TYPE, where="", field=field, value=stripped, message=message)
        raise UnreadError(fault)
    return found


def _week(text: str, today: date) -> date | None:
    match = _WEEK.match(text)
    if match is None:
        return None
    year = int(match["before"] or match["after"] or today.isocalendar().year)
    try:
        return date.fromisocalendar(year, int(match["week"]), _MONDAY)
    except ValueError:
        return None


def _day(text: str) -> date | None:
    locale = QLocale()
    without_weekday = text.partition(" ")[2]
    for candidate in (text, without_weekday):
        for form in _DAY_FORMATS:
            found = locale.toDate(candidate, form)
            if found.isValid():
                return _plain(found)
    return None


def _plain(found: QDate) -> date:
    return date(found.year(), found.month(), found.day())


def read_series(text: str, *, field: str, spec: FieldSpec) -> tuple[float, ...]:
    """Return the numbers that were typed, parted by spaces or semicolons; how many is checked later."""
    return tuple(_entry(part, field, spec) for part in re.split(r"[;\s]+", text.strip()) if part)


def _entry(text: str, field: str, spec: FieldSpec) -> float:
    number = _number(text)
    if number is None:
        raise UnreadError(_no_number(text, field, spec))
    return number


def value_text(value: Any) -> str:
    """Return any value as it would be typed."""
    if isinstance(value, date):
        return day_words(value)
    if isinstance(value, tuple):
        return " ".join(number_text(each) for each in value)
    if isinstance(value, (int, float)) and not isinstance(value, bool):
        return number_text(value)
    return "" if value is None else str(value)
