"""How alkalinity and what is dissolved go on from today, week by week, as ranges.

Alkalinity starts from its last reading and falls by the acid that is planned for, less the base of the
plan's doses and of make-up water. Without a reading that still counts nothing is foretold. Must not know
what is on the shelf.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date, timedelta
from typing import Final

import numpy as np

from planner.catalogue.catalogue import Catalogue
from planner.farm.farm import DAYS_PER_WEEK
from planner.farm.water import Quantity, Reading
from planner.forecast.ranges.values import LoopRanges
from planner.forecast.values import Floats, LoopForecast, Ruler
from planner.forecast.water.acid import AcidForecast
from planner.forecast.water.readings import latest
from planner.forecast.water.spans import Span, exactly

_MG_PER_G: Final = 1000.0


@dataclass(frozen=True, slots=True, kw_only=True)
class Ahead:
    """What a level [mg/L] will be on a day."""

    on: date
    span: Span


def alkalinity_ahead(
    acid: AcidForecast,
    *,
    readings: Sequence[Reading],
    base_eq: Floats,
    today: date,
    ruler: Ruler,
    catalogue: Catalogue,
    weeks: int,
) -> tuple[Ahead, ...]:
    """Return alkalinity [mg CaCO3/L] a value a week, from its last reading until some weeks after today.

    base_eq [eq/d] is base given, shape (day,); it is taken to dissolve on its day. Low is with the most
    acid. No alkalinity is below 0. Empty when there is no reading, or the last is too old to count.
    """
    start = latest(readings, Quantity.ALKALINITY_MG_PER_L, loop=acid.loop, until_on=today)
    counts = catalogue.figure("coefficient/water_care/limit_reading_days").value
    if start is None or (today - start.on).days > counts:
        return ()
    lift = base_eq * acid.caco3_g_per_eq * _MG_PER_G / acid.water_l
    fall = acid.fall_mg_per_l_per_day
    first = ruler.day_of(start.on)
    last = min(ruler.day_of(today) + weeks * DAYS_PER_WEEK, ruler.days)
    low, likely, high = (
        _levels(start.value, change_by_day(lift, taken, first=first, last=last))
        for taken in (fall.high, fall.likely, fall.low)
    )
    return tuple(
        Ahead(on=start.on + timedelta(days=day), span=Span(low=low[day], likely=likely[day], high=high[day]))
        for day in range(0, len(likely), DAYS_PER_WEEK)
    )


def change_by_day(lift: Floats, fall: Floats, *, first: int, last: int) -> Floats:
    """Return by how much a level changes each day; days before the plan go as its first day does."""
    lead = np.full(max(-first, 0), -fall[0])
    return np.concatenate((lead, (lift - fall)[max(first, 0) : max(last, 0)]))


def _levels(start: float, change: Floats) -> list[float]:
    """Return a level on each day, the start first; it never goes below 0.

    >>> _levels(10.0, np.array([-4.0, -8.0, 5.0]))
    [10.0, 6.0, 0.0, 5.0]
    """
    levels = [start]
    for step in change:
        levels.append(max(levels[-1] + float(step), 0.0))
    return levels


def dissolved_ahead(
    loop: LoopForecast, *, row: int, ranges: LoopRanges | None, today: date, ruler: Ruler, weeks: int
) -> tuple[Ahead, ...]:
    """Return what is dissolved of an element [mg/L] a value a week, from today on.

    `row` is that of the element. Low and high are there once ranges are: what may be supplied less and
    wanted more, week on week, and the other way round; nothing below 0.
    """
    first = max(ruler.day_of(today), 0)
    days = range(first, min(first + weeks * DAYS_PER_WEEK + 1, ruler.days), DAYS_PER_WEEK)
    levels = loop.pool_mg_per_l[row]
    if ranges is None:
        return tuple(Ahead(on=ruler.date_of(day), span=exactly(float(levels[day]))) for day in days)
    spread = _spread(ranges, row) * _MG_PER_G / loop.water_l
    since = ruler.week_of(today) if ruler.day_of(today) > 0 else 0
    return tuple(_dissolved(ruler, day, levels, spread[:, since : since + at]) for at, day in enumerate(days))


def _spread(ranges: LoopRanges, row: int) -> Floats:
    """Return by how much each week may leave less and more than is likely [g], shape (2, week)."""
    supply, demand = ranges.supply_g, ranges.demand_g
    less = (supply.likely[row] - supply.low[row]) + (demand.high[row] - demand.likely[row])
    more = (supply.high[row] - supply.likely[row]) + (demand.likely[row] - demand.low[row])
    spread: Floats = np.nan_to_num(np.stack((less, more)))
    return spread


def _dissolved(ruler: Ruler, day: int, levels: Floats, until: Floats) -> Ahead:
    likely = float(levels[day])
    less, more = (float(each) for each in until.sum(axis=1))
    span = Span(low=max(likely - less, 0.0), likely=likely, high=likely + more)
    return Ahead(on=ruler.date_of(day), span=span)
