"""Reads numbers and days as people and meters write them; what may mean two things is never guessed."""

from __future__ import annotations

import re
from collections.abc import Iterable
from datetime import date
from enum import Enum
from typing import Final

_ISO: Final = re.compile(r"(\d{4})[-/.](\d{1,2})[-/.](\d{1,2})(?:[T ].*)?", re.ASCII)
_DOTTED: Final = re.compile(r"(\d{1,2})\.\s?(\d{1,2})\.\s?(\d{4})(?: .*)?", re.ASCII)
_SLASHED: Final = re.compile(r"(\d{1,2})[/-](\d{1,2})[/-](\d{4})(?:,? .*)?", re.ASCII)
_WORDED: Final = re.compile(r"(?:[A-Za-z]{3,9},? )?(\d{1,2}) ([A-Za-z]{3})[a-z]* (\d{4})(?:,? .*)?", re.ASCII)
_MONTHS: Final = ("jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec")
_PLAIN: Final = re.compile(r"[+-]?\d{1,15}", re.ASCII)
_MONTHS_IN_YEAR: Final = 12


class CellError(ValueError):
    """A cell that cannot be read; the text goes on from the name of its column."""


class Decimal(Enum):
    """Which mark stands before the fraction of a number."""

    POINT = "point"
    COMMA = "comma"


class DayOrder(Enum):
    """What comes first in a date such as 03/04/2027."""

    DAY_FIRST = "day-first"
    MONTH_FIRST = "month-first"


def shown(text: str) -> str:
    """Return so much of a cell as is shown in a message."""
    return f'"{text[:40]}{"…" if len(text) > 40 else ""}"'


def decimal_of(cells: Iterable[str]) -> Decimal | None:
    """Return the mark that the numbers of a table show beyond doubt, None when none of them does."""
    for cell in cells:
        if re.fullmatch(r"[+-]?\d+,(\d{1,2}|\d{4,})|[+-]?\d{1,3}(\.\d{3})+,\d+|[+-]?0,\d+", cell, re.ASCII):
            return Decimal.COMMA
        if re.fullmatch(r"[+-]?\d+\.(\d{1,2}|\d{4,})|[+-]?\d{1,3}(,\d{3})+\.\d+|[+-]?0\.\d+", cell, re.ASCII):
            return Decimal.POINT
    return None


def day_order_of(cells: Iterable[str]) -> DayOrder | None:
    """Return which way round the dates of a table are beyond doubt, None when no date shows it."""
    for cell in cells:
        found = _SLASHED.fullmatch(cell)
        if found and int(found[1]) > _MONTHS_IN_YEAR >= int(found[2]):
            return DayOrder.DAY_FIRST
        if found and int(found[2]) > _MONTHS_IN_YEAR >= int(found[1]):
            return DayOrder.MONTH_FIRST
    return None


def number_of(text: str, decimal: Decimal | None) -> float:
    """Return the number in a cell.

    Raises `CellError` when it is none, or when it may be two and `decimal` does not tell which.

    >>> number_of("7,25", Decimal.COMMA), number_of("1,250.5", Decimal.POINT), number_of("42", None)
    (7.25, 1250.5, 42.0)
    """
    bare = text.replace("\u00a0", "").replace(" ", "").replace("\u2212", "-")
    if _PLAIN.fullmatch(bare):
        return float(bare)
    marks = [mark for mark in bare if mark in ".,"]
    if decimal is None and len(marks) == 1 and re.fullmatch(r"[+-]?\d{1,3}[.,]\d{3}", bare, re.ASCII):
        raise CellError(f"{shown(text)} may have thousands or a fraction. Say which mark is the decimal one.")
    point = "," if decimal is Decimal.COMMA or (decimal is None and marks[:1] == [","]) else "."
    other = "." if point == "," else ","
    parted = rf"[+-]?(\d{{1,15}}|\d{{1,3}}({re.escape(other)}\d{{3}})+)({re.escape(point)}\d{{1,15}})?"
    if not re.fullmatch(parted, bare, re.ASCII):
        raise CellError(f"{shown(text)} is no number.")
    return float(bare.replace(other, "").replace(point, "."))


def whole_of(text: str, decimal: Decimal | None) -> int:
    """Return the whole number in a cell; raises `CellError` when it is none."""
    found = number_of(text, decimal)
    if found != int(found):
        raise CellError(f"{shown(text)} is no whole number.")
    return int(found)


def day_of(text: str, order: DayOrder | None) -> date:
    """Return the day in a cell; a time of day after it is left out.

    Raises `CellError` when it is none, or when it may be two and `order` does not tell which.

    >>> day_of("2027-04-05 08:30", None), day_of("5.4.2027", None), day_of("Mon 5 Apr 2027", None)
    (datetime.date(2027, 4, 5), datetime.date(2027, 4, 5), datetime.date(2027, 4, 5))
    """
    year, month, day = _parts(text, order)
    try:
        return date(year, month, day)
    except ValueError:
        raise CellError(f"{shown(text)} is no day of the calendar.") from None


def _parts(text: str, order: DayOrder | None) -> tuple[int, int, int]:
    if found := _ISO.fullmatch(text):
        return int(found[1]), int(found[2]), int(found[3])
    if found := _DOTTED.fullmatch(text):
        return int(found[3]), int(found[2]), int(found[1])
    if (found := _WORDED.fullmatch(text)) and found[2].lower() in _MONTHS:
        return int(found[3]), _MONTHS.index(found[2].lower()) + 1, int(found[1])
    if found := _SLASHED.fullmatch(text):
        first, second, year = int(found[1]), int(found[2]), int(found[3])
        if order is None and first != second:
            raise CellError(f"{shown(text)} may be two days. Say whether the day or the month comes first.")
        return (year, first, second) if order is DayOrder.MONTH_FIRST else (year, second, first)
    raise CellError(f"{shown(text)} is no date such as 2027-04-05.")
