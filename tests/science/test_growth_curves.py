"""Shares of a life run from nothing to all of it, and never fall."""

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from planner.science import growth

SHAPES = {"midpoint": st.floats(0.0, 1.0), "steepness": st.floats(0.01, 60.0)}


@given(**SHAPES)
def test_that_a_share_of_life_rises_from_exactly_zero_to_exactly_one(
    midpoint: float, steepness: float
) -> None:
    progress = np.linspace(-0.5, 1.5, 101)
    share = growth.logistic_share(progress, midpoint=midpoint, steepness=steepness)
    assert share[0] == 0.0
    assert share[-1] == 1.0
    assert growth.logistic_share(0.0, midpoint=midpoint, steepness=steepness) == 0.0
    assert growth.logistic_share(1.0, midpoint=midpoint, steepness=steepness) == 1.0
    assert np.all(np.diff(share) >= 0.0)


@given(
    first=st.integers(1, 120),
    window=st.integers(1, 200),
    share=st.floats(0.0, 1.0),
    **SHAPES,
)
def test_that_daily_growth_of_a_picked_crop_sums_to_one(
    first: int, window: int, share: float, midpoint: float, steepness: float
) -> None:
    days = np.arange(first + window + 1, dtype=np.float64)
    formed = growth.picked_share(
        days,
        first_pick_day=float(first),
        last_pick_day=float(first + window),
        first_pick_share=share,
        midpoint=midpoint,
        steepness=steepness,
    )
    daily = growth.daily_increments(formed)
    assert np.all(daily >= -1e-12)
    assert daily.sum() == pytest.approx(1.0, abs=1e-12)
    assert formed[first] == pytest.approx(share, abs=1e-9) or window == 0


def test_that_a_picked_crop_grows_steadily_through_its_window() -> None:
    days = np.arange(111, dtype=np.float64)
    formed = growth.picked_share(
        days, first_pick_day=50.0, last_pick_day=110.0, first_pick_share=0.4, midpoint=0.7, steepness=6.0
    )
    through = growth.daily_increments(formed)[50:]
    assert through == pytest.approx(np.full(60, 0.6 / 60.0))


@given(
    gaps=st.lists(st.integers(1, 60), min_size=1, max_size=8),
    weights=st.data(),
    **SHAPES,
)
def test_that_regrowths_add_up_to_the_whole_life(
    gaps: list[int], weights: st.DataObject, midpoint: float, steepness: float
) -> None:
    cut_days = np.cumsum(np.array(gaps, dtype=np.float64))
    drawn = weights.draw(st.lists(st.floats(0.1, 1.0), min_size=len(gaps), max_size=len(gaps)))
    shares = np.array(drawn) / sum(drawn)
    days = np.arange(int(cut_days[-1]) + 3, dtype=np.float64)
    formed = growth.regrown_share(
        days, cut_days=cut_days, cut_shares=shares, midpoint=midpoint, steepness=steepness
    )
    assert formed[0] == 0.0
    assert formed[-1] == 1.0
    assert np.all(np.diff(formed) >= -1e-12)
    assert formed[cut_days.astype(int)] == pytest.approx(np.cumsum(shares), abs=1e-6)


def test_that_cuts_that_do_not_make_a_whole_are_refused() -> None:
    with pytest.raises(ValueError, match=r"shares of all cuts sum to 0.9"):
        growth.regrown_share(
            3.0, cut_days=np.array([28.0, 42.0]), cut_shares=np.array([0.5, 0.4]), midpoint=0.6, steepness=6.0
        )


def test_that_a_window_that_closes_before_it_opens_is_refused() -> None:
    with pytest.raises(ValueError, match=r"last pick day is 40 d; it must be above 50 d"):
        growth.picked_share(
            3.0, first_pick_day=50.0, last_pick_day=40.0, first_pick_share=0.4, midpoint=0.6, steepness=6.0
        )


def test_that_huge_exponents_do_not_overflow() -> None:
    found = growth.logistic_mass(np.array([-1e6, 1e6]), final=2.0, rate_per_day=5.0, midpoint_day=0.0)
    assert found.tolist() == [0.0, 2.0]
    assert growth.expolinear_mass(
        1e6, linear_rate=1.0, relative_rate_per_day=1.0, lost_time_days=0.0
    ) == pytest.approx(1e6)
