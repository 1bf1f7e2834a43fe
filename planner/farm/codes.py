"""Codes for new batches: crop, year and ISO week of sowing, and the first letters that are free."""

from __future__ import annotations

from collections.abc import Iterable
from datetime import date
from string import ascii_uppercase
from typing import Final

_YEARS_WRITTEN: Final = 100


class Codes:
    """Gives out codes that nobody has yet."""

    def __init__(self, taken: Iterable[str]) -> None:
        """Begin with the codes that are taken."""
        self._taken = set(taken)
        self._next: dict[str, int] = {}

    def give(self, crop_code: str, sow_on: date) -> str:
        """Return a free code for a sowing, taken from now on.

        >>> codes = Codes({"LTB-27W09-A"})
        >>> codes.give("LTB", date(2027, 3, 4)), codes.give("LTB", date(2027, 3, 4))
        ('LTB-27W09-B', 'LTB-27W09-C')
        """
        year, week, _ = sow_on.isocalendar()
        stem = f"{crop_code}-{year % _YEARS_WRITTEN:02d}W{week:02d}"
        number = self._next.get(stem, 0)
        while f"{stem}-{_letters(number)}" in self._taken:
            number += 1
        self._next[stem] = number + 1
        code = f"{stem}-{_letters(number)}"
        self._taken.add(code)
        return code


def _letters(number: int) -> str:
    """Return A to Z, then AA, AB, and so on."""
    letters = ascii_uppercase[number % len(ascii_uppercase)]
    rest = number // len(ascii_uppercase)
    return _letters(rest - 1) + letters if rest else letters
