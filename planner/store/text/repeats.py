"""Writes out sowings and stockings that one table stands for, and makes codes for batches without one."""

from __future__ import annotations

import string
from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from datetime import date, timedelta
from typing import Any, Final

_LETTERS_OF_CROP: Final = 3
_YEARS_OF_CENTURY: Final = 100


@dataclass(frozen=True, slots=True, kw_only=True)
class Repeat:
    """How often, and how many days apart."""

    every_days: int = 0
    times: int = 1

    def days(self) -> tuple[int, ...]:
        """Return how many days after the first each one is."""
        return tuple(number * self.every_days for number in range(self.times))


def repeat_of(aids: Mapping[str, Any]) -> Repeat:
    """Return what a table says about repeats; once when it says nothing."""
    every, times = aids.get("repeat_every_days"), aids.get("repeat_times")
    return Repeat() if every is None or times is None else Repeat(every_days=every, times=times)


def later(day: date, days: int) -> date:
    """Return a day so many days later, or the last day there is."""
    return day + timedelta(days=min(days, (date.max - day).days))


class Codes:
    """Makes batch codes: crop code, year and week of sowing, and the first letter that is free."""

    def __init__(self, *, taken: Iterable[str], crop_codes: Mapping[str, str]) -> None:
        """Begin with the codes that growers have given."""
        self._taken = set(taken)
        self._crop_codes = crop_codes
        self._next: dict[str, int] = {}

    def make(self, crop: str, sow_on: date) -> str:
        """Return a code that no batch has yet.

        >>> Codes(taken=["LET-26W14-A"], crop_codes={}).make("lettuce", date(2026, 3, 30))
        'LET-26W14-B'
        """
        week = sow_on.isocalendar()
        stem = f"{self._crop_code(crop)}-{week.year % _YEARS_OF_CENTURY:02d}W{week.week:02d}"
        number = self._next.get(stem, 0)
        while (code := f"{stem}-{letters(number)}") in self._taken:
            number += 1
        self._next[stem] = number + 1
        self._taken.add(code)
        return code

    def _crop_code(self, crop: str) -> str:
        return self._crop_codes.get(crop, "") or crop[:_LETTERS_OF_CROP].upper()


def letters(number: int) -> str:
    """Return A, B, ... Z, AA, AB, ... for 0, 1, ...

    >>> letters(0), letters(25), letters(26)
    ('A', 'Z', 'AA')
    """
    many = len(string.ascii_uppercase)
    head, last = divmod(number, many)
    return (letters(head - 1) if head else "") + string.ascii_uppercase[last]
