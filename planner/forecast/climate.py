"""Turns twelve monthly means into a value for every day, smooth and with each month's mean kept."""

from __future__ import annotations

from datetime import date
from functools import lru_cache
from typing import Final

import numpy as np

from planner.forecast.values import Floats, Ints
from planner.science.season import daily_from_monthly, smoothing_matrix

_MONTH_DAYS: Final = (31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31)
_YEAR_DAYS: Final = sum(_MONTH_DAYS)
_FEBRUARY_END: Final = 59


@lru_cache(maxsize=1)
def _matrix() -> Floats:
    return smoothing_matrix(_MONTH_DAYS)


@lru_cache(maxsize=256)
def _year(monthly: tuple[float, ...], floor: float) -> Floats:
    """Return one year of daily values, 29 February left out."""
    means = np.asarray(monthly, dtype=np.float64)
    return daily_from_monthly(means, matrix=_matrix(), month_lengths=_MONTH_DAYS, floor=floor)


def daily_series(
    monthly: tuple[float, ...], *, start_on: date, days: int, floor: float = -np.inf
) -> Floats | None:
    """Return a value for each of `days` days from `start_on`; None when no means are known.

    29 February has the value of the 28th. `floor` is the least a value may be.
    """
    if not monthly:
        return None
    values: Floats = _year(tuple(monthly), floor)[days_of_year(start_on, days)]
    return values


@lru_cache(maxsize=256)
def days_of_year(start_on: date, days: int) -> Ints:
    """Return 0..364 for each day, as if there were no 29 February; not to be written to, for it is kept."""
    first = np.datetime64(start_on, "D")
    dates = first + np.arange(days)
    years = dates.astype("datetime64[Y]")
    day = (dates - years.astype("datetime64[D]")).astype(np.int64)
    length = ((years + 1).astype("datetime64[D]") - years.astype("datetime64[D]")).astype(np.int64)
    after_leap_day = (length > _YEAR_DAYS) & (day >= _FEBRUARY_END)
    found: Ints = day - after_leap_day
    found.flags.writeable = False
    return found
