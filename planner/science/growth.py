"""Growth curves of crops: how much of a life's dry mass is there on a day.

Works on numbers and arrays of days or stage progress. Must not know crops, dates or beds.
"""

from __future__ import annotations

import numpy as np

from planner.science.limits import (
    FloatArray,
    T,
    Values,
    require_above,
    require_at_least,
    require_between,
    require_rising,
    shaped_like,
)

_LOGISTIC_PEAK_DIVISOR = 4.0
"""The slope of a logistic curve at its midpoint is final x rate / 4."""


def logistic_mass(time_days: T, *, final: float, rate_per_day: float, midpoint_day: float) -> T:
    """Mass on a logistic curve.

    time_days [d], any shape; final [any mass unit] > 0; rate_per_day [1/d] > 0; midpoint_day [d].
    Returns the unit of ``final``. Source: graymorris1978 (form).

    >>> round(logistic_mass(20.0, final=250.0, rate_per_day=0.2, midpoint_day=30.0), 2)
    29.8
    """
    require_above("final mass", final, low=0.0)
    require_above("growth rate", rate_per_day, low=0.0, unit="1/d")
    exponent = -rate_per_day * (np.asarray(time_days) - midpoint_day)
    return shaped_like(time_days, final * np.exp(-np.logaddexp(0.0, exponent)))


def logistic_peak_rate(*, final: float, rate_per_day: float) -> float:
    """Fastest daily gain of a logistic curve, reached at its midpoint [mass/d].

    >>> logistic_peak_rate(final=250.0, rate_per_day=0.2)
    12.5
    """
    return final * rate_per_day / _LOGISTIC_PEAK_DIVISOR


def expolinear_mass(
    time_days: T, *, linear_rate: float, relative_rate_per_day: float, lost_time_days: float
) -> T:
    """Mass on an expolinear curve: exponential while leaves are apart, linear once they touch.

    time_days [d], any shape; linear_rate [mass/d] > 0; relative_rate_per_day [1/d] > 0;
    lost_time_days [d]. Source: goudriaanmonteith1990.

    >>> round(expolinear_mass(20.0, linear_rate=12.0, relative_rate_per_day=0.25, lost_time_days=20.0), 3)
    33.271
    """
    require_above("linear growth rate", linear_rate, low=0.0)
    require_above("relative growth rate", relative_rate_per_day, low=0.0, unit="1/d")
    bend = np.logaddexp(0.0, relative_rate_per_day * (np.asarray(time_days) - lost_time_days))
    return shaped_like(time_days, linear_rate / relative_rate_per_day * bend)


def logistic_share(progress: T, *, midpoint: float, steepness: float) -> T:
    """Share of a life's dry mass formed at a stage progress.

    progress [0..1, clipped], any shape; midpoint [progress] between 0 and 1; steepness [1] > 0.
    A logistic curve stretched so that share(0) = 0 and share(1) = 1 exactly; it never falls.
    Source: graymorris1978 for the form; the stretching is ours.

    >>> logistic_share(0.0, midpoint=0.7, steepness=8.0), logistic_share(1.0, midpoint=0.7, steepness=8.0)
    (0.0, 1.0)
    >>> round(logistic_share(0.7, midpoint=0.7, steepness=8.0), 4)
    0.5435
    """
    require_between("midpoint of growth", midpoint, low=0.0, high=1.0)
    require_above("steepness of growth", steepness, low=0.0)
    low, high = _sigmoid(-steepness * midpoint), _sigmoid(steepness * (1.0 - midpoint))
    inside = np.clip(progress, 0.0, 1.0)
    # exact ends: float noise in (s - low) / (high - low) must not leave a plant unfinished
    stretched = (_sigmoid(steepness * (inside - midpoint)) - low) / (high - low)
    return shaped_like(progress, np.where(inside >= 1.0, 1.0, np.clip(stretched, 0.0, 1.0)))


def picked_share(
    day: T,
    *,
    first_pick_day: float,
    last_pick_day: float,
    first_pick_share: float,
    midpoint: float,
    steepness: float,
) -> T:
    """Share of a life's dry mass formed by a crop that is picked over a window.

    day [d since growth began, clipped to the life], any shape; 0 < first_pick_day < last_pick_day [d];
    first_pick_share [0..1]: what is there at the first pick. Up to the first pick the curve is
    ``logistic_share``; from then on growth is steady, so a continuous cropper draws nutrients through
    the whole window. Returns 0..1, 1 at the last pick.

    >>> window = dict(first_pick_day=50.0, last_pick_day=110.0, first_pick_share=0.4)
    >>> curve = dict(midpoint=0.7, steepness=6.0)
    >>> [round(picked_share(float(day), **window, **curve), 3) for day in (0, 50, 80, 110)]
    [0.0, 0.4, 0.7, 1.0]
    """
    require_above("first pick day", first_pick_day, low=0.0, unit="d")
    require_above("last pick day", last_pick_day, low=first_pick_day, unit="d")
    require_between("share at first pick", first_pick_share, low=0.0, high=1.0)
    days = np.asarray(day, dtype=np.float64)
    before = first_pick_share * logistic_share(days / first_pick_day, midpoint=midpoint, steepness=steepness)
    through_window = np.clip((days - first_pick_day) / (last_pick_day - first_pick_day), 0.0, 1.0)
    growing = before + (1.0 - first_pick_share) * through_window
    return shaped_like(day, np.where(days >= last_pick_day, 1.0, growing))


def regrown_share(
    day: T, *, cut_days: FloatArray, cut_shares: FloatArray, midpoint: float, steepness: float
) -> T:
    """Share of a life's dry mass formed by a crop that is cut and grows again.

    day [d since growth began]; cut_days [d], shape (cut,), rising, above 0; cut_shares [0..1], shape
    (cut,), what each cut yields of the whole, summing to 1. Each regrowth follows ``logistic_share``
    between two cuts. Returns 0..1, 1 at the last cut.

    >>> cuts = dict(cut_days=np.array([28.0, 42.0]), cut_shares=np.array([0.6, 0.4]))
    >>> curve = dict(midpoint=0.6, steepness=6.0)
    >>> [round(regrown_share(float(day), **cuts, **curve), 3) for day in (0, 28, 42, 50)]
    [0.0, 0.6, 1.0, 1.0]
    """
    _check_cuts(cut_days, cut_shares)
    starts = np.concatenate(([0.0], cut_days[:-1]))
    days = np.asarray(day, dtype=np.float64)[..., np.newaxis]
    through = (days - starts) / (cut_days - starts)
    formed = cut_shares * logistic_share(through, midpoint=midpoint, steepness=steepness)
    total = np.where(days[..., 0] >= cut_days[-1], 1.0, np.sum(formed, axis=-1))
    return shaped_like(day, np.minimum(total, 1.0))


def daily_increments(cumulative_share: FloatArray) -> FloatArray:
    """What is formed on each day, from the cumulative share at the ends of days.

    cumulative_share [any unit], shape (day + 1,) or (..., day + 1): value at the start of day 0 and at
    the end of every day. Returns shape (..., day). The sum is the last value less the first.

    >>> [round(float(step), 6) for step in daily_increments(np.array([0.0, 0.2, 0.7, 1.0]))]
    [0.2, 0.5, 0.3]
    """
    return np.diff(cumulative_share, axis=-1)


def cut_share_is_whole(cut_shares: FloatArray, *, tolerance: float) -> bool:
    """Whether the shares of all cuts add up to one within a tolerance [1].

    >>> cut_share_is_whole(np.array([0.6, 0.4]), tolerance=1e-9)
    True
    """
    return bool(abs(float(np.sum(cut_shares)) - 1.0) <= tolerance)


def _check_cuts(cut_days: FloatArray, cut_shares: FloatArray) -> None:
    if cut_days.size == 0 or cut_days.shape != cut_shares.shape:
        raise ValueError(
            f"cuts need one share for each day; got {cut_days.size} days, {cut_shares.size} shares"
        )
    require_above("first cut day", float(cut_days[0]), low=0.0, unit="d")
    require_rising("cut days", cut_days, unit="d")
    require_at_least("cut share", cut_shares, low=0.0)
    if not cut_share_is_whole(cut_shares, tolerance=_WHOLE_TOLERANCE):
        raise ValueError(f"shares of all cuts sum to {float(np.sum(cut_shares)):.6g}; they must sum to 1")


_WHOLE_TOLERANCE = 1e-6
"""Shares typed by hand with six decimals still count as a whole."""


def _sigmoid(x: Values) -> FloatArray:
    # one exponential, for this runs over every day and age; beyond the bound it is 0 anyway
    value: FloatArray = 1.0 / (1.0 + np.exp(np.minimum(-np.asarray(x, dtype=np.float64), _FARTHEST)))
    return value


_FARTHEST = 700.0
"""Exponents beyond this run over."""
