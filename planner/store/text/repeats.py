"""Writes out sowings and stockings that one table stands for, and makes codes for batches without one."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from datetime import date, timedelta
from typing import Any, Final

from planner.farm.codes import Codes

_LETTERS_OF_CROP: Final = 3


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


class BatchCodes:
    """Makes codes for batches without one, from the keys of their crops."""

    def __init__(self, *, taken: Iterable[str], crop_codes: Mapping[str, str]) -> None:
        """Begin with the codes that growers have given."""
        self._codes = Codes(taken)
        self._crop_codes = crop_codes

    def make(self, crop: str, sow_on: date) -> str:
        """Return a code that no batch has yet.

        >>> BatchCodes(taken=["LET-26W14-A"], crop_codes={}).make("lettuce", date(2026, 3, 30))
        'LET-26W14-B'
        """
        return self._codes.give(self._crop_code(crop), sow_on)

    def _crop_code(self, crop: str) -> str:
        return self._crop_codes.get(crop, "") or crop[:_LETTERS_OF_CROP].upper()
