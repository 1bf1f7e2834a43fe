"""Degree-days: five published ways to sum warmth above a base, which do not agree.

Daily minimum and maximum come in as numbers or arrays. A result must carry the name of its way:
the two readings of the common formula differ by up to four fifths in cool weather.
"""

from __future__ import annotations

import numpy as np

from planner.science.limits import FloatArray, T, Values, require_at_least, shaped_like

_HALF, _QUARTER = 0.5, 0.25


def degree_days_mean(maximum_c: T, *, minimum_c: Values, base_c: float) -> T:
    """Degree-days of the daily mean above a base, 0 when the mean is below (first reading) [degC d].

    maximum_c >= minimum_c [degC]. Source: mcmasterwilhelm1997.

    >>> degree_days_mean(20.0, minimum_c=4.0, base_c=10.0)
    2.0
    """
    high, low = _pair(maximum_c, minimum_c)
    return shaped_like(maximum_c, np.maximum((high + low) * _HALF - base_c, 0.0))


def degree_days_clipped(maximum_c: T, *, minimum_c: Values, base_c: float, cap_c: float = np.inf) -> T:
    """Degree-days with the extremes lifted to the base, and cut to a cap, first (second reading) [degC d].

    maximum_c >= minimum_c [degC]; cap_c above base_c [degC]. Source: mcmasterwilhelm1997.

    >>> degree_days_clipped(20.0, minimum_c=4.0, base_c=10.0)
    5.0
    >>> degree_days_clipped(35.0, minimum_c=20.0, base_c=10.0, cap_c=30.0)
    15.0
    """
    high, low = _pair(maximum_c, minimum_c)
    require_at_least("cap", cap_c, low=base_c, unit="degC")
    return shaped_like(
        maximum_c, (np.clip(high, base_c, cap_c) + np.clip(low, base_c, cap_c)) * _HALF - base_c
    )


def degree_days_sine(maximum_c: T, *, minimum_c: Values, base_c: float) -> T:
    """Degree-days under one sine wave through the day's extremes [degC d].

    maximum_c >= minimum_c [degC]. Source: osu-em9305 (method), Baskerville and Emin.

    >>> round(degree_days_sine(20.0, minimum_c=4.0, base_c=10.0), 3)
    3.626
    """
    high, low = _pair(maximum_c, minimum_c)
    mean, swing = (high + low) * _HALF, (high - low) * _HALF
    # the arc sine of offset / swing, written so that a flat day divides by nothing
    offset = np.clip(base_c - mean, -swing, swing)
    angle = np.arctan2(offset, np.sqrt(np.maximum(swing**2 - offset**2, 0.0)))
    wave = ((mean - base_c) * (np.pi * _HALF - angle) + swing * np.cos(angle)) / np.pi
    summed = np.where(low >= base_c, mean - base_c, np.where(high <= base_c, 0.0, wave))
    return shaped_like(maximum_c, summed)


def degree_days_four_cases(maximum_c: T, *, minimum_c: Values, base_c: float) -> T:
    """Degree-days by the four cases of a weather service [degC d].

    maximum_c >= minimum_c [degC]. Source: meteireann.

    >>> degree_days_four_cases(15.0, minimum_c=5.0, base_c=10.0)
    1.25
    """
    high, low = _pair(maximum_c, minimum_c)
    mean = (high + low) * _HALF
    crossing = np.where(
        mean >= base_c, _HALF * (high - base_c) - _QUARTER * (base_c - low), _QUARTER * (high - base_c)
    )
    summed = np.where(low >= base_c, mean - base_c, np.where(high <= base_c, 0.0, crossing))
    return shaped_like(maximum_c, summed)


def heat_units_of_maximum(maximum: T, *, base: float, ceiling: float) -> T:
    """Heat units of the daily maximum above a base, the maximum folded back above a ceiling.

    Any one temperature scale throughout; ceiling above base. Source: perrywehner1990 (60 and 90 degF).

    >>> [heat_units_of_maximum(high, base=60.0, ceiling=90.0) for high in (55.0, 90.0, 100.0)]
    [0.0, 30.0, 20.0]
    """
    require_at_least("ceiling", ceiling, low=base)
    folded = np.minimum(maximum, 2.0 * ceiling - np.asarray(maximum, dtype=np.float64))
    return shaped_like(maximum, np.maximum(folded - base, 0.0))


def _pair(maximum_c: Values, minimum_c: Values) -> tuple[FloatArray, FloatArray]:
    high, low = np.asarray(maximum_c, dtype=np.float64), np.asarray(minimum_c, dtype=np.float64)
    require_at_least("daily maximum less minimum", high - low, low=0.0, unit="degC")
    return high, low
