"""Reads one value of a text as the field it fills wants it; never guesses, never changes a unit."""

from __future__ import annotations

import math
import re
from collections.abc import Callable
from datetime import date, datetime, time
from enum import Enum
from typing import Any, Final

from planner.farm.checks import limit_text
from planner.farm.faults import FaultKind
from planner.farm.fields import FieldKind
from planner.farm.ids import is_id
from planner.store.text import limits
from planner.store.text.findings import UnfitError, shown
from planner.store.text.forms import Key
from planner.store.text.near import unit_in_words, unknown_choice

ALL_PLACES: Final = "all"
Runs = tuple[tuple[int, int], ...]
"""First and last number of each run."""

_RUN: Final = re.compile(r"\s*(\d{1,7})\s*(?:[-–]\s*(\d{1,7})\s*)?", re.ASCII)


def value_of(raw: Any, key: Key) -> Any:
    """Return a raw TOML value as the key's field holds it.

    Raises `UnfitError` when it is of another sort; limits are checked by whoever calls.
    """
    if key.runs:
        return runs_of(raw)
    if key.many:
        return _names(raw)
    return _READERS[key.spec.kind](raw, key)


def _wrong(raw: Any, wanted: str, remedy: str = "") -> UnfitError:
    return UnfitError(
        FaultKind.WRONG_TYPE,
        f"is {_sort_of(raw)}{shown(raw)}, but must be {wanted}.",
        value=shown(raw),
        limit=wanted,
        remedy=remedy,
    )


def _sort_of(raw: Any) -> str:
    if isinstance(raw, datetime):
        return "the date with a time "
    if isinstance(raw, str):
        return "the text "
    if isinstance(raw, date):
        return "the date "
    return ""


def _text(raw: Any, key: Key) -> str:
    if not isinstance(raw, str):
        raise _wrong(raw, "a text in quotes")
    if key.spec.kind is FieldKind.KEY and key.needed and not raw.strip():
        raise UnfitError(FaultKind.MISSING, "is empty, but must be given.")
    return raw


def _id(raw: Any, _key: Key) -> str:
    if not isinstance(raw, str) or not is_id(raw):
        raise _wrong(raw, "a UUID in small letters", "Leave id out: one is then made from the name.")
    return raw


def _number(raw: Any, key: Key) -> float:
    wanted = f"a number{_in_unit(key)}"
    if isinstance(raw, bool) or not isinstance(raw, (int, float)):
        raise _wrong(raw, wanted, "Write it without quotes or unit." if isinstance(raw, str) else "")
    if isinstance(raw, int) and abs(raw) >= 10**limits.MOST_DIGITS_OF_WHOLE:
        raise UnfitError(
            FaultKind.OUT_OF_LIMITS, _has_digits(raw), value=shown(raw), limit=limit_text(key.spec)
        )
    if not math.isfinite(raw):
        raise UnfitError(
            FaultKind.OUT_OF_LIMITS,
            f"is {shown(raw)}, but must lie within {limit_text(key.spec)}.",
            value=shown(raw),
            limit=limit_text(key.spec),
        )
    return float(raw)


def _has_digits(raw: int) -> str:
    return f"is {shown(raw)}, but numbers of at most {limits.MOST_DIGITS_OF_WHOLE} digits are read."


def _in_unit(key: Key) -> str:
    unit = key.spec.unit
    return f" in {unit_in_words(unit)}" if unit and not key.aid else ""


def _whole(raw: Any, key: Key) -> int:
    if isinstance(raw, bool) or not isinstance(raw, int):
        raise _wrong(raw, "a whole number", "Write it without quotes, point or unit.")
    if abs(raw) >= 10**limits.MOST_DIGITS_OF_WHOLE:
        raise UnfitError(
            FaultKind.OUT_OF_LIMITS, _has_digits(raw), value=shown(raw), limit=limit_text(key.spec)
        )
    return raw


def _yes_no(raw: Any, _key: Key) -> bool:
    if not isinstance(raw, bool):
        raise _wrong(raw, "true or false", "Write it in small letters, without quotes.")
    return raw


def _day(raw: Any, _key: Key) -> date:
    if isinstance(raw, str):
        raise _wrong(raw, "a date such as 2026-03-02", "Write it without quotes, year first.")
    if isinstance(raw, (datetime, time)) or not isinstance(raw, date):
        raise _wrong(raw, "a date alone, such as 2026-03-02")
    return raw


def _choice(raw: Any, key: Key) -> Enum | str:
    if not isinstance(raw, str):
        raise _wrong(raw, f"one of {', '.join(key.choices)}, in quotes")
    if raw not in key.choices:
        raise unknown_choice(raw, key.choices)
    if key.figure:
        return raw
    chosen: Enum = key.hint(raw)
    return chosen


def _series(raw: Any, key: Key) -> tuple[float, ...]:
    """Return twelve numbers; one number alone stands for every month."""
    if isinstance(raw, (int, float)) and not isinstance(raw, bool):
        return (_number(raw, key),) * (key.spec.length or 1)
    if not isinstance(raw, list):
        raise _wrong(raw, f"a list of {key.spec.length} numbers, January first, or one number for all")
    return tuple(_number(entry, key) for entry in raw)


def _names(raw: Any) -> tuple[str, ...]:
    if not isinstance(raw, list) or not raw or not all(isinstance(name, str) for name in raw):
        raise _wrong(raw, 'a list of names, such as ["Tank 1", "Tank 2"]')
    return tuple(raw)


def runs_of(raw: Any) -> Runs:
    """Return the runs of numbers in 5, "1-18" or "1-6, 9-12"; none stands for all.

    >>> runs_of("1-6, 9"), runs_of(5), runs_of("all")
    (((1, 6), (9, 9)), ((5, 5),), ())
    """
    if isinstance(raw, str) and raw.strip() == ALL_PLACES:
        return ()
    if isinstance(raw, bool) or not isinstance(raw, (int, str)):
        raise _wrong(raw, _RUNS_WANTED)
    if isinstance(raw, int) and abs(raw) >= 10**limits.MOST_DIGITS_OF_WHOLE:
        raise _wrong(raw, _RUNS_WANTED)
    return tuple(_run(part, raw) for part in str(raw).split(","))


_RUNS_WANTED: Final = 'a number from 1, a run such as "1-18", or several such as "1-6, 9-12"'


def _run(part: str, raw: Any) -> tuple[int, int]:
    found = _RUN.fullmatch(part)
    if found is None:
        raise _wrong(raw, _RUNS_WANTED)
    first = int(found.group(1))
    last = int(found.group(2) or first)
    if first < 1:
        raise _wrong(raw, _RUNS_WANTED, "Numbers count from 1.")
    if last < first:
        raise _wrong(raw, _RUNS_WANTED, f"Write the smaller number first: {last}-{first}.")
    return first, last


_READERS: Final[dict[FieldKind, Callable[[Any, Key], Any]]] = {
    FieldKind.ID: _id,
    FieldKind.REFERENCE: _text,
    FieldKind.NAME: _text,
    FieldKind.TEXT: _text,
    FieldKind.KEY: _text,
    FieldKind.WHOLE: _whole,
    FieldKind.NUMBER: _number,
    FieldKind.YES_NO: _yes_no,
    FieldKind.DAY: _day,
    FieldKind.CHOICE: _choice,
    FieldKind.SERIES: _series,
}
