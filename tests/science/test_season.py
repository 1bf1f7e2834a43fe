"""Monthly means become smooth days that keep them; stages end when their summed rate is reached."""

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from planner.science import season

YEAR = (31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31)
LEAP_YEAR = (31, 29, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31)
MATRICES = {lengths: season.smoothing_matrix(lengths) for lengths in (YEAR, LEAP_YEAR)}
MEANS = st.lists(st.floats(-30.0, 45.0), min_size=12, max_size=12).map(np.array)


def _months(daily: np.ndarray, lengths: tuple[int, ...]) -> np.ndarray:
    return np.array([part.mean() for part in np.split(daily, np.cumsum(lengths)[:-1])])


@given(means=MEANS, lengths=st.sampled_from([YEAR, LEAP_YEAR]))
def test_that_every_monthly_mean_is_kept(means: np.ndarray, lengths: tuple[int, ...]) -> None:
    daily = season.daily_from_monthly(means, matrix=MATRICES[lengths], month_lengths=lengths)
    assert daily.size == sum(lengths)
    assert _months(daily, lengths) == pytest.approx(means, abs=1e-8)


@given(means=st.lists(st.floats(0.0, 30.0), min_size=12, max_size=12).map(np.array))
def test_that_a_floor_holds_and_the_means_with_it(means: np.ndarray) -> None:
    daily = season.daily_from_monthly(means, matrix=MATRICES[YEAR], month_lengths=YEAR, floor=0.0)
    assert np.all(daily >= 0.0)
    assert _months(daily, YEAR) == pytest.approx(means, abs=1e-8)


def test_that_a_steady_year_stays_steady() -> None:
    daily = season.daily_from_monthly(np.full(12, 21.5), matrix=MATRICES[YEAR], month_lengths=YEAR)
    assert daily == pytest.approx(np.full(365, 21.5))


def test_that_months_join_without_a_step_new_year_included() -> None:
    means = np.array([4.0, 5, 8, 12, 17, 21, 24, 23, 19, 13, 8, 5])
    daily = season.daily_from_monthly(means, matrix=MATRICES[YEAR], month_lengths=YEAR)
    around = np.append(daily, daily[0])
    steps = np.abs(np.diff(around))
    assert steps.max() < np.abs(np.diff(means)).max() / 20.0
    assert np.abs(np.diff(around, n=2)).max() < 0.02


def test_that_means_that_are_missing_or_too_few_are_refused() -> None:
    with pytest.raises(ValueError, match=r"monthly means: 11 given; there must be 12"):
        season.daily_from_monthly(np.ones(11), matrix=MATRICES[YEAR], month_lengths=YEAR)
    with pytest.raises(ValueError, match=r"one is missing"):
        season.daily_from_monthly(np.full(12, np.nan), matrix=MATRICES[YEAR], month_lengths=YEAR)
    with pytest.raises(ValueError, match=r"monthly mean is -1; it must be at least 0"):
        season.daily_from_monthly(np.full(12, -1.0), matrix=MATRICES[YEAR], month_lengths=YEAR, floor=0.0)
    with pytest.raises(ValueError, match=r"month length is 27 d"):
        season.smoothing_matrix((27, *YEAR[1:]))


@given(
    rates=st.lists(st.floats(0.0, 1.5), min_size=1, max_size=80),
    start=st.integers(0, 80),
    duration=st.floats(0.0, 60.0),
)
def test_that_a_stage_ends_on_the_first_day_its_sum_is_reached(
    rates: list[float], start: int, duration: float
) -> None:
    start = min(start, len(rates))
    cumulative = season.cumulative_progress(np.array(rates))
    end = season.stage_end_day(cumulative, start_day=start, duration=duration)
    slack = 1e-6
    if end == season.NOT_REACHED:
        assert cumulative[-1] - cumulative[start] < duration + slack
        return
    assert end >= start
    assert cumulative[end] - cumulative[start] >= duration - slack
    if end > start:
        assert cumulative[end - 1] - cumulative[start] < duration + slack


def test_that_a_cool_spell_makes_the_stage_longer_and_noise_does_not() -> None:
    even = season.cumulative_progress(np.full(60, 0.1))
    assert season.stage_end_day(even, start_day=0, duration=3.0) == 30
    cool = np.ones(60)
    cool[5:15] = 0.5
    assert season.stage_end_day(season.cumulative_progress(cool), start_day=0, duration=28.0) == 33


def test_that_a_later_start_never_ends_earlier() -> None:
    draw = np.random.default_rng(2)
    cumulative = season.cumulative_progress(draw.uniform(0.2, 1.2, 365))
    starts = np.arange(300)
    ends = season.stage_end_days(cumulative, start_days=starts, durations=np.array([20.0]))
    assert np.all(np.diff(ends) >= 0)


def test_that_progress_is_one_exactly_when_the_stage_is_over() -> None:
    cumulative = season.cumulative_progress(np.full(50, 0.1))
    progress = season.stage_progress(cumulative, start_day=10, duration=2.0)
    assert progress[10] == 0.0
    assert progress[30] == 1.0
    assert progress[29] < 1.0
    assert progress[:10].tolist() == [0.0] * 10


def test_that_a_negative_rate_is_refused() -> None:
    with pytest.raises(ValueError, match=r"rate of development is -0.1 1/d"):
        season.cumulative_progress(np.array([1.0, -0.1]))


def test_that_readings_are_met_and_then_fade_back_to_the_climate() -> None:
    daily = np.linspace(10.0, 20.0, 40)
    drawn = season.reading_overrides(
        daily, reading_days=np.array([5, 9]), readings=np.array([15.0, 8.0]), fade_days=5.0
    )
    assert (drawn[5], drawn[9]) == (pytest.approx(15.0), pytest.approx(8.0))
    assert drawn[:5].tolist() == daily[:5].tolist()
    misses = np.abs(drawn - daily)[9:]
    assert np.all(np.diff(misses) < 0.0)
    assert misses[-1] < 0.02
    none = season.reading_overrides(
        daily, reading_days=np.array([], dtype=np.int64), readings=np.array([]), fade_days=5.0
    )
    assert none.tolist() == daily.tolist()
