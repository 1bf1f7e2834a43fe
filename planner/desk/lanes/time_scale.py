"""Turns days into distances and back, and chooses which days a ruler names.

Days are counted as in `datetime.date.toordinal`, so a scene and its ruler need no common start. Must know
nothing of Qt, farms or words: ticks carry dates, whoever paints them finds the words.
"""

from __future__ import annotations

import math
from bisect import bisect_left
from collections.abc import Iterator
from dataclasses import dataclass, replace
from datetime import date
from enum import Enum
from functools import lru_cache
from typing import Final

DAYS_PER_WEEK: Final = 7
MONTHS_PER_YEAR: Final = 12
_MONTHS_PER_QUARTER: Final = 3
_THURSDAY: Final = 4
"""ISO weekday whose date decides which week of the year a week is (ISO 8601)."""

ZOOM_STEPS: Final = (
    0.45,
    0.65,
    0.9,
    1.25,
    1.75,
    2.5,
    3.5,
    5.0,
    7.0,
    10.0,
    14.0,
    20.0,
    28.0,
    40.0,
    56.0,
)
"""Widths of a day [px], from five years across a window to single days."""

FIRST_DAY: Final = date(1990, 1, 1).toordinal()
LAST_DAY: Final = date(2199, 12, 31).toordinal()
"""Days that a farm may name at all."""

_SAME: Final = 1e-9


class Unit(Enum):
    """What one step of a ruler row stands for."""

    DAY = "day"
    WEEK = "week"
    MONTH = "month"
    QUARTER = "quarter"
    YEAR = "year"


@dataclass(frozen=True, slots=True, kw_only=True)
class Span:
    """Days from `start` until the day before `end`."""

    start: int
    end: int

    @property
    def days(self) -> int:
        """Length in days."""
        return self.end - self.start


@dataclass(frozen=True, slots=True, kw_only=True)
class TimeScale:
    """Where each day lies: day `origin` (with parts of a day) is at `left`, a day is so many pixels wide.

    >>> scale = TimeScale(origin=date(2026, 1, 5).toordinal(), px_per_day=10.0, left=200.0)
    >>> scale.x_of(date(2026, 1, 12).toordinal())
    270.0
    >>> scale.date_at(275.0)
    datetime.date(2026, 1, 12)
    """

    origin: float
    px_per_day: float
    left: float = 0.0

    def x_of(self, day: float) -> float:
        """Return the x of the beginning of a day [px]."""
        return self.left + (day - self.origin) * self.px_per_day

    def day_at(self, x: float) -> float:
        """Return the day at an x, with parts of a day."""
        return self.origin + (x - self.left) / self.px_per_day

    def whole_day_at(self, x: float) -> int:
        """Return the day that an x lies in."""
        return math.floor(self.day_at(x) + _SAME)

    def date_at(self, x: float) -> date:
        """Return the date that an x lies in, kept within the dates a farm may name."""
        return date.fromordinal(min(max(self.whole_day_at(x), FIRST_DAY), LAST_DAY))

    def span(self, width: float) -> Span:
        """Return the days that are at least partly seen when `width` pixels are shown."""
        return Span(start=self.whole_day_at(self.left), end=math.ceil(self.day_at(self.left + width) - _SAME))

    def scrolled(self, pixels: float) -> TimeScale:
        """Return the scale moved so that what was `pixels` to the right is now at the left."""
        return replace(self, origin=self.origin + pixels / self.px_per_day)

    def zoomed(self, px_per_day: float, *, around_x: float) -> TimeScale:
        """Return the scale with another width of a day, keeping the day at `around_x` where it is."""
        kept = self.day_at(around_x)
        return replace(self, origin=kept - (around_x - self.left) / px_per_day, px_per_day=px_per_day)

    def with_left(self, left: float) -> TimeScale:
        """Return the scale with its origin drawn at another x."""
        return replace(self, left=left)


def wider(px_per_day: float) -> float:
    """Return the next zoom step with wider days; the widest step is the last."""
    return next((step for step in ZOOM_STEPS if step > px_per_day + _SAME), ZOOM_STEPS[-1])


def narrower(px_per_day: float) -> float:
    """Return the next zoom step with narrower days; the narrowest step is the last."""
    return next((step for step in reversed(ZOOM_STEPS) if step < px_per_day - _SAME), ZOOM_STEPS[0])


def fitting(days: int, width: float) -> float:
    """Return the width of a day at which `days` just fill `width` pixels, within the zoom steps."""
    wanted = width / max(days, 1)
    return min(max(wanted, ZOOM_STEPS[0]), ZOOM_STEPS[-1])


def week_start_of(day: int, *, from_sunday: bool = False) -> int:
    """Return the first day of the week that a day lies in.

    >>> date.fromordinal(week_start_of(date(2026, 4, 1).toordinal())).isoformat()
    '2026-03-30'
    """
    weekday = date.fromordinal(day).weekday()
    back = (weekday + 1) % DAYS_PER_WEEK if from_sunday else weekday
    return day - back


def week_number(start: int, *, from_sunday: bool = False) -> int:
    """Return the number of the week that begins on `start`: the ISO 8601 week of its Thursday.

    >>> week_number(date(2026, 12, 28).toordinal())
    53
    """
    thursday = start + (_THURSDAY if from_sunday else _THURSDAY - 1)
    return date.fromordinal(thursday).isocalendar().week


def first_of(unit: Unit, day: int, *, from_sunday: bool = False) -> int:
    """Return the first day of the unit that a day lies in."""
    on = date.fromordinal(day)
    if unit is Unit.DAY:
        return day
    if unit is Unit.WEEK:
        return week_start_of(day, from_sunday=from_sunday)
    if unit is Unit.MONTH:
        return on.replace(day=1).toordinal()
    if unit is Unit.QUARTER:
        return on.replace(month=on.month - (on.month - 1) % _MONTHS_PER_QUARTER, day=1).toordinal()
    return on.replace(month=1, day=1).toordinal()


_MONTHS: Final = {Unit.MONTH: 1, Unit.QUARTER: _MONTHS_PER_QUARTER, Unit.YEAR: MONTHS_PER_YEAR}


def next_of(unit: Unit, start: int) -> int:
    """Return the first day of the unit after the one that begins on `start`."""
    if unit is Unit.DAY:
        return start + 1
    if unit is Unit.WEEK:
        return start + DAYS_PER_WEEK
    on = date.fromordinal(start)
    months = on.year * MONTHS_PER_YEAR + on.month - 1 + _MONTHS[unit]
    return date(months // MONTHS_PER_YEAR, months % MONTHS_PER_YEAR + 1, 1).toordinal()


def units_in(unit: Unit, span: Span, *, from_sunday: bool = False) -> Iterator[Span]:
    """Yield every day, week, month, quarter or year that touches a span, in order."""
    low, high = max(span.start, FIRST_DAY), min(span.end, LAST_DAY)
    if low >= high:
        return
    first = first_of(unit, low, from_sunday=from_sunday)
    for year in range(date.fromordinal(first).year, date.fromordinal(high - 1).year + 1):
        units = _units_of_year(unit, year, from_sunday)
        for at in range(bisect_left(units, first, key=_start), len(units)):
            if units[at].start >= high:
                return
            yield units[at]


def _start(span: Span) -> int:
    return span.start


@lru_cache(maxsize=512)
def _units_of_year(unit: Unit, year: int, from_sunday: bool) -> tuple[Span, ...]:
    """Return what begins in a year; kept, for every frame of every lane asks for the same again."""
    start, end = date(year, 1, 1).toordinal(), date(year + 1, 1, 1).toordinal()
    at = first_of(unit, start, from_sunday=from_sunday)
    if at < start:
        at = next_of(unit, at)
    found = []
    while at < end:
        following = next_of(unit, at)
        found.append(Span(start=at, end=following))
        at = following
    return tuple(found)


@dataclass(frozen=True, slots=True, kw_only=True)
class Rows:
    """What the three rows of a ruler count, top to bottom, and the finest lines drawn down the lanes.

    Where middle and lower are both weeks, the middle row carries their numbers, the lower their dates.
    """

    upper: Unit
    middle: Unit
    lower: Unit
    grid: Unit


_LEAST_DAY_PX: Final = 19.0
_LEAST_WEEK_PX: Final = 30.0
_LEAST_GRID_WEEK_PX: Final = 12.0


def rows_for(px_per_day: float) -> Rows:
    """Return what a ruler counts at a width of a day [px]."""
    week_px = px_per_day * DAYS_PER_WEEK
    if px_per_day >= _LEAST_DAY_PX:
        return Rows(upper=Unit.MONTH, middle=Unit.WEEK, lower=Unit.DAY, grid=Unit.DAY)
    if week_px >= _LEAST_WEEK_PX:
        return Rows(upper=Unit.MONTH, middle=Unit.WEEK, lower=Unit.WEEK, grid=Unit.WEEK)
    if week_px >= _LEAST_GRID_WEEK_PX:
        return Rows(upper=Unit.YEAR, middle=Unit.MONTH, lower=Unit.WEEK, grid=Unit.WEEK)
    return Rows(upper=Unit.YEAR, middle=Unit.QUARTER, lower=Unit.MONTH, grid=Unit.MONTH)
