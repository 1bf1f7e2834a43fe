"""Codes for new batches: crop, year and ISO week of sowing, and the first letters that are free."""

from __future__ import annotations

from collections.abc import Iterable
from datetime import date, timedelta
from string import ascii_uppercase
from typing import Final

from planner.farm.farm import Farm
from planner.farm.site import WeekStart

_YEARS_WRITTEN: Final = 100
_SUNDAY: Final = 6


class Codes:
    """Gives out codes that nobody has yet."""

    def __init__(self, taken: Iterable[str], *, week_start: WeekStart = WeekStart.MONDAY) -> None:
        """Begin with the codes that are taken.

        A week that begins on Sunday has the number of its Monday, and so have the batches sown on it.
        """
        self._from_sunday = week_start is WeekStart.SUNDAY
        self._taken = set(taken)
        self._next: dict[str, int] = {}

    def give(self, crop_code: str, sow_on: date) -> str:
        """Return a free code for a sowing, taken from now on.

        >>> codes = Codes({"LTB-27W09-A"})
        >>> codes.give("LTB", date(2027, 3, 4)), codes.give("LTB", date(2027, 3, 4))
        ('LTB-27W09-B', 'LTB-27W09-C')
        >>> Codes((), week_start=WeekStart.SUNDAY).give("LTB", date(2027, 3, 7))
        'LTB-27W10-A'
        """
        next_week = self._from_sunday and sow_on.weekday() == _SUNDAY and sow_on < date.max
        year, week, _ = (sow_on + timedelta(days=int(next_week))).isocalendar()
        stem = f"{crop_code}-{year % _YEARS_WRITTEN:02d}W{week:02d}"
        number = self._next.get(stem, 0)
        while f"{stem}-{_letters(number)}" in self._taken:
            number += 1
        self._next[stem] = number + 1
        code = f"{stem}-{_letters(number)}"
        self._taken.add(code)
        return code


def codes_of(farm: Farm) -> Codes:
    """Return the codes that are free in a farm, by weeks as its first site counts them."""
    starts = farm.sites[0].week_start if farm.sites else WeekStart.MONDAY
    return Codes((batch.code for batch in farm.batches), week_start=starts)


def _letters(number: int) -> str:
    """Return A to Z, then AA, AB, and so on."""
    letters = ascii_uppercase[number % len(ascii_uppercase)]
    rest = number // len(ascii_uppercase)
    return _letters(rest - 1) + letters if rest else letters
