"""When alkalinity or pH will reach its lower limit, as a range of days, and the acid the log shows.

Without readings nothing is foretold. Must not know what is on the shelf.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date, timedelta
from enum import Enum
from typing import Final

import numpy as np

from planner.catalogue.catalogue import Catalogue
from planner.catalogue.figure import Figure
from planner.farm.farm import DAYS_PER_WEEK
from planner.farm.fields import Id
from planner.farm.water import Quantity, Reading
from planner.forecast.values import Floats, Ruler
from planner.forecast.water.acid import AcidForecast
from planner.forecast.water.readings import (
    Direction,
    latest,
    nearest,
    reading_figures,
    series,
    trend,
)
from planner.forecast.water.spans import DaySpan, Span
from planner.forecast.water.targets import NotKnown

_CARE: Final = "coefficient/water_care/"
_G_PER_KG: Final = 1000.0
_MG_PER_G: Final = 1000.0
_TEN: Final = 10.0


class LimitWay(Enum):
    """How a day was foretold."""

    ALKALINITY_BALANCE = "alkalinity by balance"
    PH_BALANCE = "pH by balance"
    PH_TREND = "pH by trend"


@dataclass(frozen=True, slots=True, kw_only=True)
class LimitDay:
    """When a lower limit is reached: between `earliest_on` and `latest_on`, or why that is not known.

    `earliest_on` None: not within the plan. `latest_on` None: perhaps not within the plan. `already`: the
    reading itself is at or below the limit. `value` and `on` are the reading it starts from. By balance,
    `spent_mg_per_l` are the quickest falls of alkalinity, a day each from `spent_from` on, up to the earliest
    day or the end of the plan.
    """

    way: LimitWay
    limit: float
    not_known: NotKnown | None
    value: float | None = None
    on: date | None = None
    already: bool = False
    earliest_on: date | None = None
    latest_on: date | None = None
    spent_from: date | None = None
    spent_mg_per_l: tuple[float, ...] = ()
    basis: tuple[Figure, ...] = ()


def limit_days(
    acid: AcidForecast,
    *,
    readings: Sequence[Reading],
    today: date,
    ruler: Ruler,
    catalogue: Catalogue,
    base_eq: Floats | None = None,
) -> tuple[LimitDay, ...]:
    """Return when alkalinity and pH reach their lower limits, in three ways.

    By balance, alkalinity falls by the planned acid of each day from its last reading on; pH follows it
    with free carbon dioxide unchanged. By trend, pH goes on as it went. base_eq [eq/d] is base given
    (`acid.base_eq_by_day`); without it the days are those of a loop that gets none.
    """
    start = _Start(acid, readings=readings, today=today, ruler=ruler, catalogue=catalogue, base_eq=base_eq)
    return (
        start.alkalinity_day(),
        start.ph_day(),
        ph_trend_day(readings, loop=acid.loop, today=today, catalogue=catalogue),
    )


class _Start:
    """The last alkalinity reading and the fall of alkalinity from it on."""

    def __init__(
        self,
        acid: AcidForecast,
        *,
        readings: Sequence[Reading],
        today: date,
        ruler: Ruler,
        catalogue: Catalogue,
        base_eq: Floats | None,
    ) -> None:
        self._ruler = ruler
        self._alkalinity_low = catalogue.figure(f"{_CARE}alkalinity_low_mg_per_l")
        self._ph_target = catalogue.figure("loop/ph_target")
        self._basis = (*acid.basis, catalogue.figure(f"{_CARE}limit_reading_days"))
        days = catalogue.figure(f"{_CARE}limit_reading_days").value
        within = catalogue.figure(f"{_CARE}nearest_reading_days").value
        self._reading = latest(readings, Quantity.ALKALINITY_MG_PER_L, loop=acid.loop, until_on=today)
        self._missing = _missing(self._reading, today=today, days=days)
        self._ph = None
        if self._reading is not None:
            tests = series(readings, Quantity.PH, loop=acid.loop, until_on=today)
            self._ph = nearest(tests, on=self._reading.on, within_days=within)
        self._fall = _fall(acid, base_eq)

    def alkalinity_day(self) -> LimitDay:
        """Return when alkalinity reaches its limit."""
        limit = self._alkalinity_low.value
        basis = (*self._basis, self._alkalinity_low)
        if self._reading is None or self._missing is not None:
            return LimitDay(way=LimitWay.ALKALINITY_BALANCE, limit=limit, not_known=self._missing)
        return self._day(
            self._reading, LimitWay.ALKALINITY_BALANCE, limit, spare=self._reading.value - limit, basis=basis
        )

    def ph_day(self) -> LimitDay:
        """Return when pH reaches the lower end of its target, carbon dioxide unchanged."""
        way, limit = LimitWay.PH_BALANCE, self._ph_target.low
        if self._reading is None or self._missing is not None:
            return LimitDay(way=way, limit=limit, not_known=self._missing)
        if self._ph is None:
            return LimitDay(way=way, limit=limit, not_known=NotKnown.NO_PH)
        left = self._reading.value * math.pow(_TEN, limit - self._ph.value)
        return self._day(
            self._ph, way, limit, spare=self._reading.value - left, basis=(*self._basis, self._ph_target)
        )

    def _day(
        self, shown: Reading, way: LimitWay, limit: float, *, spare: float, basis: tuple[Figure, ...]
    ) -> LimitDay:
        assert self._reading is not None
        first = self._ruler.day_of(self._reading.on)
        falls = falls_from(self._fall.high, first=first)
        soonest = day_spent(spare, fall=self._fall.high, first=first)
        earliest, last = (
            None if day is None else self._ruler.date_of(day)
            for day in (soonest, day_spent(spare, fall=self._fall.low, first=first))
        )
        return LimitDay(
            way=way,
            limit=limit,
            not_known=None,
            value=shown.value,
            on=shown.on,
            already=spare <= 0.0,
            earliest_on=earliest,
            latest_on=last,
            spent_from=self._reading.on,
            spent_mg_per_l=tuple(falls[: None if soonest is None else soonest - first].tolist()),
            basis=basis,
        )


def _missing(reading: Reading | None, *, today: date, days: float) -> NotKnown | None:
    if reading is None:
        return NotKnown.NO_ALKALINITY
    return NotKnown.TOO_OLD if (today - reading.on).days > days else None


def _fall(acid: AcidForecast, base_eq: Floats | None) -> DaySpan:
    """Return the fall of alkalinity by day [mg/L], less what base brings; below 0 it rises."""
    fall = acid.fall_mg_per_l_per_day
    if base_eq is None:
        return fall
    lift = base_eq * acid.caco3_g_per_eq * _MG_PER_G / acid.water_l
    return DaySpan(low=fall.low - lift, likely=fall.likely - lift, high=fall.high - lift)


def day_spent(spare: float, *, fall: Floats, first: int) -> int | None:
    """Return the day on which the summed fall from day `first` on reaches what there is to spare.

    Days before the plan fall as its first day does. None when it is not reached within the days.

    >>> day_spent(10.0, fall=np.full(30, 2.0), first=3), day_spent(0.0, fall=np.full(30, 2.0), first=3)
    (8, 3)
    """
    if spare <= 0.0:
        return first
    summed = np.cumsum(falls_from(fall, first=first))
    reached = np.nonzero(summed >= spare)[0]
    return first + int(reached[0]) + 1 if reached.size else None


def falls_from(fall: Floats, *, first: int) -> Floats:
    """Return the falls by day from day `first` on; days before the plan fall as its first day does.

    >>> [falls_from(np.array([2.0, 3.0]), first=first).tolist() for first in (-1, 1)]
    [[2.0, 2.0, 3.0], [3.0]]
    """
    lead = np.full(max(-first, 0), fall[0])
    return np.concatenate((lead, fall[max(first, 0) :]))


def ph_trend_day(readings: Sequence[Reading], *, loop: Id, today: date, catalogue: Catalogue) -> LimitDay:
    """Return when pH reaches the lower end of its target if it goes on as in the last weeks."""
    figures = reading_figures(catalogue)
    target = catalogue.figure("loop/ph_target")
    found = series(readings, Quantity.PH, loop=loop, until_on=today)
    seen = trend(found, until_on=today, figures=figures)
    way, limit = LimitWay.PH_TREND, target.low
    if not found or seen is None:
        return LimitDay(way=way, limit=limit, not_known=NotKnown.NO_TREND)
    last = found[-1]
    if seen.direction is not Direction.FALLING:
        return LimitDay(way=way, limit=limit, not_known=NotKnown.NOT_FALLING, value=last.value, on=last.on)
    spare = last.value - limit
    return LimitDay(
        way=way,
        limit=limit,
        not_known=None,
        value=last.value,
        on=last.on,
        already=spare <= 0.0,
        earliest_on=_on_trend(last.on, spare, seen.per_week.low),
        latest_on=_on_trend(last.on, spare, seen.per_week.high),
        basis=(target, figures.rules["trend_window_days"], figures.rules["trend_fewest"]),
    )


def _on_trend(on: date, spare: float, per_week: float) -> date | None:
    if spare <= 0.0:
        return on
    if per_week >= 0.0:
        return None
    days = spare / -per_week * DAYS_PER_WEEK
    return on + timedelta(days=math.ceil(days)) if days < (date.max - on).days else None


@dataclass(frozen=True, slots=True, kw_only=True)
class ObservedAcid:
    """Net acid that the loop's own log shows: fall of alkalinity plus base given [eq/d].

    `eq_per_kg_feed` is None when nothing was fed in those days. Alkalinity of make-up water, which is not
    recorded, is counted as if the loop had made less acid.
    """

    from_on: date
    until_on: date
    fall_mg_per_l_per_week: Span
    base_eq_per_day: float
    eq_per_day: Span
    eq_per_kg_feed: Span | None


def observed_acid(
    acid: AcidForecast,
    *,
    readings: Sequence[Reading],
    base_eq: Floats,
    today: date,
    ruler: Ruler,
    catalogue: Catalogue,
) -> ObservedAcid | None:
    """Return the acid seen in the log; None with too few alkalinity readings, or before the plan began."""
    found = series(readings, Quantity.ALKALINITY_MG_PER_L, loop=acid.loop, until_on=today)
    seen = trend(found, until_on=today, figures=reading_figures(catalogue))
    if seen is None:
        return None
    first, last = ruler.day_of(seen.from_on), min(ruler.day_of(seen.until_on), ruler.days)
    if first < 0 or last <= first:
        return None
    fall = seen.per_week.times(-1.0)
    given = float(base_eq[first:last].mean())
    per_mg = acid.water_l / _MG_PER_G / acid.caco3_g_per_eq
    made = fall.times(per_mg / DAYS_PER_WEEK)
    a_day = Span(low=made.low + given, likely=made.likely + given, high=made.high + given)
    feed_kg = float(acid.feed_g[first:last].mean()) / _G_PER_KG
    return ObservedAcid(
        from_on=seen.from_on,
        until_on=seen.until_on,
        fall_mg_per_l_per_week=fall,
        base_eq_per_day=given,
        eq_per_day=a_day,
        eq_per_kg_feed=a_day.times(1.0 / feed_kg) if feed_kg > 0.0 else None,
    )
