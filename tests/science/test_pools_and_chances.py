"""Pools never fall below zero, lose nothing unseen, and count what plants could not get."""

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from hypothesis.extra import numpy as hnp
from scipy import stats

from planner.science import chances, pools

GRAMS = st.floats(0.0, 1e4)
SHARE = st.floats(0.0, 1.0)


@given(start=GRAMS, supply=GRAMS, demand=GRAMS, leaving=SHARE, gas=SHARE, reach=GRAMS)
def test_that_a_day_closes_and_no_pool_is_negative(
    start: float, supply: float, demand: float, leaving: float, gas: float, reach: float
) -> None:
    day = pools.pool_day(
        np.array([start]),
        supply_g=supply,
        demand_g=demand,
        leaving_share=leaving,
        gas_share=gas,
        out_of_reach_g=reach,
    )
    after = day.taken_g + day.gas_g + day.leaving_g + day.end_g
    assert after[0] == pytest.approx(start + supply, abs=1e-9 * max(start + supply, 1.0))
    assert day.taken_g[0] + day.unmet_g[0] == pytest.approx(demand)
    for part in (day.taken_g, day.unmet_g, day.gas_g, day.leaving_g, day.end_g):
        assert part[0] >= 0.0


@given(data=st.data(), days=st.integers(1, 20), kinds=st.integers(1, 4))
def test_that_more_supply_never_meets_less_demand(data: st.DataObject, days: int, kinds: int) -> None:
    grid = hnp.arrays(np.float64, (days, kinds), elements=GRAMS)
    supply, more, demand = (data.draw(grid) for _ in range(3))
    shares = data.draw(hnp.arrays(np.float64, days, elements=SHARE))
    runs = [
        pools.run_pools(
            np.zeros(kinds), supply_g=given, demand_g=demand, leaving_share=shares, gas_share=np.zeros(kinds)
        )
        for given in (supply, supply + more)
    ]
    room = 1e-9 * (1.0 + float(supply.sum() + more.sum()))
    assert np.all(np.cumsum(runs[1].taken_g, axis=0) >= np.cumsum(runs[0].taken_g, axis=0) - room)
    assert np.all(runs[0].end_g >= 0.0)


def test_that_a_run_is_its_days_one_after_another() -> None:
    draw = np.random.default_rng(3)
    supply, demand = draw.uniform(0, 5, (9, 2, 3)), draw.uniform(0, 6, (9, 2, 3))
    leaving, gas = draw.uniform(0, 0.2, 9), draw.uniform(0, 0.1, 3)
    run = pools.run_pools(
        np.ones((2, 3)), supply_g=supply, demand_g=demand, leaving_share=leaving, gas_share=gas
    )
    stock = np.ones((2, 3))
    for day in range(9):
        step = pools.pool_day(
            stock,
            supply_g=supply[day],
            demand_g=demand[day],
            leaving_share=float(leaving[day]),
            gas_share=gas,
        )
        assert run.taken_g[day] == pytest.approx(step.taken_g)
        assert run.gas_g[day] == pytest.approx(step.gas_g)
        stock = step.end_g
    assert run.end_g[-1] == pytest.approx(stock)


def test_that_plants_leave_what_is_out_of_their_reach() -> None:
    day = pools.pool_day(
        np.array([5.0]), supply_g=0.0, demand_g=9.0, leaving_share=0.0, gas_share=0.0, out_of_reach_g=2.0
    )
    assert (day.taken_g[0], day.unmet_g[0], day.end_g[0]) == (3.0, 6.0, 2.0)


def test_that_a_share_above_one_is_refused_by_name() -> None:
    with pytest.raises(ValueError, match=r"share of water leaving is 1.5 1/d"):
        pools.pool_day(np.array([5.0]), supply_g=0.0, demand_g=1.0, leaving_share=1.5, gas_share=0.0)


def test_that_the_same_seed_draws_the_same() -> None:
    triangle = {"count": 500, "low": 1.0, "likely": 2.0, "high": 5.0}
    first = chances.draws_between(seed=7, **triangle)
    assert first.tolist() == chances.draws_between(seed=7, **triangle).tolist()
    assert first.tolist() != chances.draws_between(seed=8, **triangle).tolist()
    assert first.min() >= 1.0
    assert first.max() <= 5.0


def test_that_draws_have_the_spread_of_their_law() -> None:
    """Triangle quartiles and binomial chances by scipy; four standard errors of 20,000 draws."""
    drawn = chances.draws_between(seed=11, count=20_000, low=1.0, likely=2.0, high=5.0)
    other = stats.triang.ppf([0.25, 0.5, 0.75], 0.25, loc=1.0, scale=4.0)
    assert chances.percentiles(drawn, levels_percent=(25, 50, 75)) == pytest.approx(other, abs=0.04)
    up = chances.draws_of_stand(seed=11, count=20_000, seeds=72, germination=0.9)
    expected = stats.binom.sf(61, 72, 0.9)
    assert float(chances.chance_of_reaching(up.astype(float), target=62.0)) == pytest.approx(
        expected, abs=0.01
    )


def test_that_seeds_for_a_chance_are_those_of_the_binomial() -> None:
    found = chances.seeds_for_chance(100, germination=0.8, chance=0.95, seed=3, count=20_000, most_seeds=300)
    exact = next(n for n in range(100, 300) if stats.binom.sf(99, n, 0.8) >= 0.95)
    assert abs(found - exact) <= 1


def test_that_a_chance_beyond_the_seeds_allowed_is_refused() -> None:
    with pytest.raises(ValueError, match=r"100 plants with chance 0.95 need more than 110 seeds"):
        chances.seeds_for_chance(100, germination=0.5, chance=0.95, seed=3, count=100, most_seeds=110)
