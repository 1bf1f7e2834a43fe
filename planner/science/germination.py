"""Germination: how long seeds take and how many come up, by temperature.

Two ways: a base and a thermal time, or a printed table read by straight lines. A count of days says
nothing of the stand: warm lettuce comes up in three days, but only one seed in eight.
"""

from __future__ import annotations

import numpy as np

from planner.science.limits import (
    FloatArray,
    T,
    require_above,
    require_at_least,
    require_between,
    require_rising,
    shaped_like,
)


def germination_days(temperature_c: T, *, base_c: float, thermal_time_c_days: float) -> T:
    """Days to emergence at a steady temperature: thermal time / (temperature - base) [d].

    temperature_c [degC], any shape, up to the optimum; infinite at or below the base;
    thermal_time_c_days [degC d] above 0. Source: brewster, harrington1954 (fitted).

    >>> germination_days(22.5, base_c=2.5, thermal_time_c_days=80.0)
    4.0
    """
    require_above("thermal time", thermal_time_c_days, low=0.0, unit="degC d")
    warmth = np.asarray(temperature_c, dtype=np.float64) - base_c
    with np.errstate(divide="ignore"):
        days = np.where(warmth > 0.0, thermal_time_c_days / np.where(warmth > 0.0, warmth, 1.0), np.inf)
    return shaped_like(temperature_c, days)


def germination_rate(temperature_c: T, *, base_c: float, thermal_time_c_days: float) -> T:
    """Share of the way to emergence made in a day at a temperature [1/d]; 0 below the base.

    Rates of days at different temperatures add up. Source: brewster.

    >>> germination_rate(7.5, base_c=2.5, thermal_time_c_days=80.0)
    0.0625
    """
    require_above("thermal time", thermal_time_c_days, low=0.0, unit="degC d")
    warmth = np.maximum(np.asarray(temperature_c, dtype=np.float64) - base_c, 0.0)
    return shaped_like(temperature_c, warmth / thermal_time_c_days)


def emergence_days_from_table(temperature_c: T, *, table_c: FloatArray, table_days: FloatArray) -> T:
    """Days to emergence by straight lines between the rates (1/days) of a table [d].

    temperature_c [degC] within the table; table_c [degC], shape (row,), rising; table_days [d], above 0,
    rows without germination left out. Rates, not days, are interpolated: they are near a straight line.
    Source: harrington1954.

    >>> table = dict(table_c=np.array([15.0, 20.0, 25.0]), table_days=np.array([14.0, 8.0, 6.0]))
    >>> emergence_days_from_table(20.0, **table)
    8.0
    """
    require_rising("table temperatures", table_c, unit="degC")
    require_above("days in table", table_days, low=0.0, unit="d")
    require_between(
        "soil temperature", temperature_c, low=float(table_c[0]), high=float(table_c[-1]), unit="degC"
    )
    return shaped_like(temperature_c, 1.0 / np.interp(temperature_c, table_c, 1.0 / table_days))


def stand_share_from_table(temperature_c: T, *, table_c: FloatArray, table_share: FloatArray) -> T:
    """Share of seeds that give a normal seedling, by straight lines in a table [0..1].

    temperature_c [degC] within the table; table_c [degC], shape (row,), rising; table_share [0..1].
    Source: harrington1954.

    >>> table = dict(table_c=np.array([25.0, 30.0, 35.0]), table_share=np.array([0.99, 0.12, 0.0]))
    >>> stand_share_from_table(30.0, **table)
    0.12
    """
    require_rising("table temperatures", table_c, unit="degC")
    require_between("share in table", table_share, low=0.0, high=1.0)
    require_between(
        "soil temperature", temperature_c, low=float(table_c[0]), high=float(table_c[-1]), unit="degC"
    )
    return shaped_like(temperature_c, np.interp(temperature_c, table_c, table_share))


def lot_germination(tested_share: float, *, temperature_share: float, best_share: float) -> float:
    """Germination to expect of a seed lot at a temperature, from its test at the best one [0..1].

    tested_share [0..1] of the lot; temperature_share and best_share [0..1] of the crop's table, best above 0.

    >>> round(lot_germination(0.90, temperature_share=0.12, best_share=0.99), 3)
    0.109
    """
    require_between("tested germination", tested_share, low=0.0, high=1.0)
    require_above("best share in table", best_share, low=0.0)
    require_at_least("share at temperature", temperature_share, low=0.0)
    return tested_share * min(temperature_share / best_share, 1.0)


def share_after_counts(
    prior_share: float, *, prior_seeds: float, came_up: float, seeds: float
) -> tuple[float, float]:
    """Mean and standard deviation of a share after counting: the beta distribution brought up to date [0..1].

    prior_share [0..1] counts as prior_seeds, above 0; came_up of seeds that were counted, each at least 0.

    >>> mean, deviation = share_after_counts(0.9, prior_seeds=50.0, came_up=30.0, seeds=50.0)
    >>> round(mean, 2), round(deviation, 3)
    (0.75, 0.043)
    """
    require_between("prior share", prior_share, low=0.0, high=1.0)
    require_above("prior seeds", prior_seeds, low=0.0, unit="seeds")
    require_between("seeds that came up", came_up, low=0.0, high=seeds, unit="seeds")
    counted = prior_seeds + seeds
    mean = (prior_share * prior_seeds + came_up) / counted
    return mean, float(np.sqrt(mean * (1.0 - mean) / (counted + 1.0)))


def fit_thermal_time(temperature_c: FloatArray, *, days: FloatArray) -> tuple[float, float]:
    """Base and thermal time that fit emergence days by least squares on rates [degC], [degC d].

    temperature_c [degC] and days [d], shape (row,), at least two, below the optimum. Source: brewster.

    >>> warmth, days = np.array([5.0, 10.0, 15.0, 20.0]), np.array([15.0, 7.0, 4.0, 3.0])
    >>> base, thermal = fit_thermal_time(warmth, days=days)
    >>> round(base, 1), round(thermal)
    (1.6, 55)
    """
    require_at_least("rows to fit", temperature_c.size, low=2)
    require_above("days", days, low=0.0, unit="d")
    slope, intercept = np.polyfit(temperature_c, 1.0 / days, 1)
    require_above("rise of the rate with temperature", float(slope), low=0.0, unit="1/degC/d")
    return float(-intercept / slope), float(1.0 / slope)
