"""What thermometers said: air by site, water by loop, one value a day.

Where the year is told by monthly means, readings pull it to what was really met; where it is not told,
a few readings do not make a year, and they are left alone.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass, field
from datetime import date, timedelta

import numpy as np

from planner.farm.farm import Farm
from planner.farm.fields import Id
from planner.farm.water import Quantity, Reading
from planner.forecast.climate import daily_series
from planner.forecast.values import Floats
from planner.science.season import reading_overrides

DayValues = tuple[tuple[date, float], ...]
"""Readings by date, one a date, rising."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Warmth:
    """Temperatures read [°C]: of the air by the site's number, of the water by loop."""

    air: tuple[DayValues, ...] = ()
    water: dict[Id, DayValues] = field(default_factory=dict)


def by_day(readings: Iterable[Reading]) -> DayValues:
    """Return readings of one quantity by date; those of one day count with their mean."""
    found: dict[date, list[float]] = {}
    for reading in readings:
        found.setdefault(reading.on, []).append(reading.value)
    return tuple((on, float(np.mean(found[on]))) for on in sorted(found))


def warmth_read(farm: Farm) -> Warmth:
    """Return the temperatures read on a farm; the air at any loop of a site is the site's."""
    site_of = {loop.id: loop.site for loop in farm.loops}
    air: dict[Id, list[Reading]] = {}
    water: dict[Id, list[Reading]] = {}
    for reading in farm.readings:
        if reading.quantity is Quantity.AIR_C:
            air.setdefault(site_of[reading.loop], []).append(reading)
        elif reading.quantity is Quantity.WATER_C:
            water.setdefault(reading.loop, []).append(reading)
    return Warmth(
        air=tuple(by_day(air.get(site.id, ())) for site in farm.sites),
        water={loop: by_day(many) for loop, many in water.items()},
    )


def drawn_series(
    monthly: tuple[float, ...],
    read: DayValues,
    *,
    start_on: date,
    days: int,
    fade_days: float,
    floor: float = -np.inf,
) -> Floats | None:
    """Return a value for each of `days` days from `start_on`, drawn to what was read; None without means.

    A day has the same value whatever span is asked for. After the last reading the climate comes back
    within some `fade_days` [d].
    """
    if not monthly or not read:
        return daily_series(monthly, start_on=start_on, days=days, floor=floor)
    first_on = min(start_on, read[0][0])
    until_on = max(start_on + timedelta(days=days), read[-1][0] + timedelta(days=1))
    whole = daily_series(monthly, start_on=first_on, days=(until_on - first_on).days, floor=floor)
    assert whole is not None
    drawn = reading_overrides(
        whole,
        reading_days=np.asarray([(on - first_on).days for on, _ in read], dtype=np.int64),
        readings=np.asarray([value for _, value in read]),
        fade_days=fade_days,
    )
    start = (start_on - first_on).days
    return np.maximum(drawn[start : start + days], floor)
