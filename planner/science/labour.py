"""Hours of work behind counts of trays, heads and plugs. Must not know tasks or people."""

from __future__ import annotations

from planner.science.limits import require_above, require_at_least

_MIN_PER_H = 60.0
_G_PER_OUNCE = 28.349_523_125


def units_per_person_hour(units: float, *, people: float, hours: float) -> float:
    """Pace of work [units/person-hour]. people and hours [h] above 0. Source: bartok2017.

    >>> units_per_person_hour(1200.0, people=4, hours=8.0)
    37.5
    """
    require_at_least("units", units, low=0.0)
    require_above("people", people, low=0.0)
    require_above("hours", hours, low=0.0, unit="h")
    return units / (people * hours)


def minutes_for(units: float, *, units_per_hour: float) -> float:
    """Minutes one person needs for a count [min]. units_per_hour [1/h] above 0.

    >>> minutes_for(1.0, units_per_hour=37.5)
    1.6
    """
    require_at_least("units", units, low=0.0)
    require_above("pace of work", units_per_hour, low=0.0, unit="1/h")
    return units / units_per_hour * _MIN_PER_H


def cost_per_unit(wage_per_hour: float, *, units_per_hour: float) -> float:
    """Wages in one unit [currency]. units_per_hour [1/h] above 0.

    >>> round(cost_per_unit(10.0, units_per_hour=37.5), 3)
    0.267
    """
    require_at_least("wage", wage_per_hour, low=0.0)
    require_above("pace of work", units_per_hour, low=0.0, unit="1/h")
    return wage_per_hour / units_per_hour


def seeds_per_gram(seeds_per_ounce: float) -> float:
    """Seeds in a gram from the count in an ounce that seed lists give [1/g].

    >>> round(seeds_per_gram(8100.0), 1)
    285.7
    """
    require_at_least("seeds per ounce", seeds_per_ounce, low=0.0)
    return seeds_per_ounce / _G_PER_OUNCE
