"""The year as a smooth run of days, and when a stage ends in it.

Climate is known as twelve monthly means. They become daily values that keep each mean exactly and join
without a step, so that a sowing on 31 January and one on 1 February differ by a day, not by a month.
"""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np

from planner.science.limits import (
    FLOAT_NOISE,
    FloatArray,
    IntArray,
    require_at_least,
    require_between,
    require_rising,
)

MONTHS = 12
NOT_REACHED = -1
"""Given for a stage that does not end within the days known."""
_FEWEST_DAYS, _MOST_DAYS = 28, 31
_SHIFT_STEPS = 80
"""Halvings of the shift that restores a mean after a floor: far below rounding."""


def smoothing_matrix(month_lengths: Sequence[int]) -> FloatArray:
    """Matrix that turns twelve monthly means into daily values, shape (day of year, 12).

    month_lengths [d], twelve of 28..31. Of all yearly runs with those means it gives the one with the
    least sum of squared second differences, 31 December joined to 1 January. Make it once; it depends
    on the lengths alone.
    """
    if len(month_lengths) != MONTHS:
        raise ValueError(f"month lengths: {len(month_lengths)} given; there must be {MONTHS}")
    lengths = np.asarray(month_lengths)
    require_between("month length", lengths.astype(np.float64), low=_FEWEST_DAYS, high=_MOST_DAYS, unit="d")
    month_of_day = np.repeat(np.arange(MONTHS), lengths)
    averaging = (month_of_day == np.arange(MONTHS)[:, np.newaxis]) / lengths[:, np.newaxis]
    smooth = _smoothed_around_the_year(averaging.T)
    # daily = smooth @ weights + level, where the weights sum to zero and every monthly mean is met
    system = np.zeros((MONTHS + 1, MONTHS + 1))
    system[:MONTHS, :MONTHS] = averaging @ smooth
    system[:MONTHS, MONTHS] = system[MONTHS, :MONTHS] = 1.0
    solved = np.linalg.solve(system, np.eye(MONTHS + 1, MONTHS))
    return np.ascontiguousarray(smooth @ solved[:MONTHS] + solved[MONTHS])


def daily_from_monthly(
    monthly_means: FloatArray, *, matrix: FloatArray, month_lengths: Sequence[int], floor: float = -np.inf
) -> FloatArray:
    """Daily values with the given monthly means, smooth through the year [unit of the means].

    monthly_means, shape (12,), none below ``floor``; matrix from ``smoothing_matrix`` for the same lengths.
    With a floor, a month that would dip under it is cut there and shifted up elsewhere until its mean holds.
    Returns shape (day of year,).

    >>> lengths = (31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31)
    >>> means = np.array([5.0, 6, 9, 12, 16, 20, 23, 23, 19, 14, 9, 6])
    >>> daily = daily_from_monthly(means, matrix=smoothing_matrix(lengths), month_lengths=lengths)
    >>> daily.size, round(float(daily[:31].mean()), 9)
    (365, 5.0)
    """
    if monthly_means.shape != (MONTHS,):
        raise ValueError(f"monthly means: {monthly_means.size} given; there must be {MONTHS}")
    if not np.all(np.isfinite(monthly_means)):
        raise ValueError("monthly means must be numbers; one is missing or infinite")
    require_at_least("monthly mean", monthly_means, low=floor)
    daily = matrix @ monthly_means
    if np.isinf(floor):
        return daily
    ends = np.cumsum(month_lengths)
    for month, (end, length) in enumerate(zip(ends, month_lengths, strict=True)):
        span = slice(int(end - length), int(end))
        if np.min(daily[span]) < floor:
            daily[span] = _lifted(daily[span], mean=float(monthly_means[month]), floor=floor)
    return daily


def cumulative_progress(daily_rate: FloatArray) -> FloatArray:
    """Summed rate at the start of day 0 and at the end of every day, shape (..., day + 1) [reference days].

    daily_rate [reference days per day] >= 0, shape (..., day): 1 on a day at reference conditions.

    >>> cumulative_progress(np.array([1.0, 0.5, 0.5])).tolist()
    [0.0, 1.0, 1.5, 2.0]
    """
    require_at_least("rate of development", daily_rate, low=0.0, unit="1/d")
    zero = np.zeros((*daily_rate.shape[:-1], 1))
    return np.concatenate((zero, np.cumsum(daily_rate, axis=-1)), axis=-1)


def stage_end_days(cumulative: FloatArray, *, start_days: IntArray, durations: FloatArray) -> IntArray:
    """Days at whose start a stage is over: summed rate since its start has reached its duration.

    cumulative from ``cumulative_progress``, shape (day + 1,); start_days, any shape, 0..day; durations
    [reference days] >= 0, broadcasting. ``NOT_REACHED`` where the days known do not suffice. A stage of
    duration 0 ends on the day it starts.

    >>> slow = cumulative_progress(np.full(60, 0.5))
    >>> stage_end_days(slow, start_days=np.array([0, 50]), durations=np.array([14.0])).tolist()
    [28, -1]
    """
    last = cumulative.size - 1
    require_between("start day", start_days.astype(np.float64), low=0, high=last, unit="d")
    require_at_least("stage duration", durations, low=0.0, unit="d")
    wanted = cumulative[start_days] + durations
    # the sum of many rates carries noise: half a billionth of it must not cost a whole day
    reached = np.searchsorted(cumulative, wanted - FLOAT_NOISE * np.maximum(wanted, 1.0), side="left")
    ends = np.maximum(reached, start_days)
    return np.where(reached > last, NOT_REACHED, ends).astype(np.int64)


def stage_end_day(cumulative: FloatArray, *, start_day: int, duration: float) -> int:
    """``stage_end_days`` for one stage.

    >>> stage_end_day(cumulative_progress(np.ones(40)), start_day=3, duration=28.0)
    31
    """
    found = stage_end_days(
        cumulative, start_days=np.array([start_day], dtype=np.int64), durations=np.array([duration])
    )
    return int(found[0])


def stage_progress(cumulative: FloatArray, *, start_day: int, duration: float) -> FloatArray:
    """Progress of a stage at the start of day 0 and the end of every day, 0..1, shape (day + 1,).

    0 up to the start, 1 once the duration (above 0) is reached. A stage that has ended is at 1 exactly.

    >>> stage_progress(cumulative_progress(np.ones(4)), start_day=1, duration=2.0).tolist()
    [0.0, 0.0, 0.5, 1.0, 1.0]
    """
    require_between("start day", float(start_day), low=0, high=cumulative.size - 1, unit="d")
    if not duration > 0.0:
        raise ValueError(f"stage duration is {duration:.6g} d; it must be above 0 d")
    share = (cumulative - cumulative[start_day]) / duration
    return np.where(share >= 1.0 - FLOAT_NOISE, 1.0, np.clip(share, 0.0, 1.0))


def reading_overrides(
    daily: FloatArray, *, reading_days: IntArray, readings: FloatArray, fade_days: float
) -> FloatArray:
    """Daily values drawn towards logged readings, fading back to the climate after the last one.

    daily, shape (day,); reading_days, rising, 0..day - 1, and readings of equal shape; fade_days [d]
    above 0. Between readings the miss is carried in a straight line; before the first it is not applied;
    after the last it dies away with exp(-days / fade).

    >>> warmed = reading_overrides(
    ...     np.full(5, 20.0), reading_days=np.array([1, 3]), readings=np.array([22.0, 24.0]), fade_days=1.0
    ... )
    >>> warmed.round(2).tolist()
    [20.0, 22.0, 23.0, 24.0, 21.47]
    """
    if reading_days.size == 0:
        return daily.copy()
    require_rising("reading days", reading_days.astype(np.float64), unit="d")
    require_between("reading day", reading_days.astype(np.float64), low=0, high=daily.size - 1, unit="d")
    if not fade_days > 0.0:
        raise ValueError(f"fade of readings is {fade_days:.6g} d; it must be above 0 d")
    days = np.arange(daily.size)
    miss = np.interp(days, reading_days, readings - daily[reading_days], left=0.0)
    fade = np.exp(-np.maximum(days - reading_days[-1], 0) / fade_days)
    drawn: FloatArray = daily + miss * fade
    return drawn


def _smoothed_around_the_year(columns: FloatArray) -> FloatArray:
    """Columns, their means left out, divided by the squared second difference of a closed year.

    The squared second difference is the same on every day, so it is a plain factor on each wave of the year.
    """
    days = columns.shape[0]
    waves = np.fft.rfft(columns, axis=0)
    bend = (2.0 - 2.0 * np.cos(2.0 * np.pi * np.arange(waves.shape[0]) / days)) ** 2
    waves[0] = 0.0
    waves[1:] /= bend[1:, np.newaxis]
    smoothed: FloatArray = np.fft.irfft(waves, n=days, axis=0)
    return smoothed


def _lifted(values: FloatArray, *, mean: float, floor: float) -> FloatArray:
    """Values cut at a floor and shifted so that their mean is as given; the shift is found by halving."""
    low, high = mean - float(np.max(values)), mean - float(np.min(values))
    for _ in range(_SHIFT_STEPS):
        middle = (low + high) / 2.0
        if float(np.mean(np.maximum(values + middle, floor))) < mean:
            low = middle
        else:
            high = middle
    return np.maximum(values + high, floor)
