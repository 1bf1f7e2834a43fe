"""Pools: mass closes on every day, nothing falls under nothing, tests re-anchor, what lacks is counted."""

from __future__ import annotations

import dataclasses
from datetime import timedelta

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from planner.catalogue.loading import shipped_catalogue
from planner.farm.fish import Feeding
from planner.farm.ids import id_from
from planner.farm.species import ELEMENTS
from planner.farm.water import Dose, Quantity, Reading
from planner.forecast.engine import Forecaster
from planner.forecast.pools import PoolSetup, loop_pools, pool_figures
from planner.forecast.verdicts import week_verdicts
from planner.science.pools import run_pools, run_steady_pools
from tests.farms import LOOP, MONDAY, batch_of, farm_of, group_of, weekly_batches

CATALOGUE = shipped_catalogue()
NITROGEN, PHOSPHORUS, POTASSIUM, IRON = (ELEMENTS.index(symbol) for symbol in ("n", "p", "k", "fe"))
MG_PER_G = 1000.0


def reading(quantity, value, day):
    return Reading(
        id=id_from("reading", quantity.value, str(day), str(value)),
        loop=LOOP.id,
        on=MONDAY + timedelta(days=day),
        quantity=quantity,
        value=value,
    )


def nitrate(value, day):
    return reading(Quantity.NITRATE_N_MG_PER_L, value, day)


def loop_forecast(forecaster, **parts):
    given_ = {"fish_groups": (group_of(feeding=Feeding.FIXED, feed_g_per_day=60.0),)} | parts
    return forecaster.forecast(farm_of(**given_)).loops[0]


grams = st.one_of(st.just(0.0), st.floats(1e-6, 500))


@st.composite
def runs(draw):
    days, pools = draw(st.integers(1, 400)), draw(st.integers(1, 6))
    noise = np.random.default_rng(draw(st.integers(0, 10_000)))
    scale, one_each = draw(st.floats(0.1, 100)), draw(st.booleans())
    return {
        "start_g": noise.uniform(0, draw(grams) + 1e-9, pools),
        "supply_g": noise.uniform(0, scale, (pools, days)) * (noise.random((pools, days)) < 0.7),
        "demand_g": noise.uniform(0, scale * draw(st.floats(0.1, 3)), (pools, days)),
        "leaving": noise.choice((0.0, 0.001, 0.005, 0.05, 0.4, 0.9, 0.999, 1.0), pools if one_each else 1),
    }


@given(runs())
@settings(max_examples=150)
def test_that_pools_worked_at_once_are_those_worked_day_by_day(run):
    pools, days = run["supply_g"].shape
    leaving = run.pop("leaving")
    at_once = run_steady_pools(**run, leaving_share=leaving)
    by_day = run_pools(
        run["start_g"],
        supply_g=run["supply_g"].T,
        demand_g=run["demand_g"].T,
        leaving_share=np.tile(leaving, (days, 1)),
        gas_share=np.zeros(pools),
    )
    size = 1.0 + run["start_g"].max() + run["supply_g"].sum()
    for name in ("taken_g", "unmet_g", "leaving_g", "end_g"):
        assert getattr(at_once, name) == pytest.approx(getattr(by_day, name).T, rel=1e-9, abs=1e-11 * size)


@given(runs(), st.lists(st.tuples(st.integers(0, 399), st.integers(0, 5), st.floats(0, 300)), max_size=12))
@settings(max_examples=80)
def test_that_mass_closes_on_every_day_but_those_of_a_test(run, tests):
    pools, days = run["supply_g"].shape
    tested = {day: np.full(pools, np.nan) for day, _, _ in tests if day < days}
    for day, number, value in tests:
        if day < days:
            tested[day][number % pools] = value
    setup = PoolSetup(
        water_l=4000.0,
        start_mg_per_l=run["start_g"] / 4.0,
        start_assumed=np.ones(pools, dtype=np.bool_),
        tested_mg_per_l=tested,
        leaving_share=run["leaving"],
    )
    supply, demand = run["supply_g"], run["demand_g"]
    found = loop_pools(setup, supply_g=supply, demand_g=demand)
    taken = demand - found.unmet_g
    after = found.pool_g + supply - taken - found.leaving_g
    expected = after[:, :-1].copy()
    for miss in found.misses:
        if miss.day:
            assert miss.expected_mg_per_l == pytest.approx(expected[miss.element, miss.day - 1] / 4.0)
            expected[miss.element, miss.day - 1] = miss.read_mg_per_l * 4.0
    size = 1.0 + run["start_g"].max() + run["supply_g"].sum()
    assert found.pool_g[:, 1:] == pytest.approx(expected, rel=1e-9, abs=1e-11 * size)
    assert len(found.misses) == sum(np.count_nonzero(~np.isnan(values)) for values in tested.values())
    for part in (found.pool_g, found.unmet_g, found.leaving_g, taken):
        assert part.min() >= -1e-11 * size


def test_that_a_pool_begins_with_an_assumed_level_and_says_so(forecaster):
    loop = loop_forecast(forecaster)
    floor = CATALOGUE.figure("solution/leafy/n").value
    assert loop.pool_mg_per_l[NITROGEN, 0] == pytest.approx(floor)
    assert loop.pool_assumed.all()
    assert loop.pool_misses == ()


def test_that_a_pool_begins_with_the_last_test_before_the_plan(forecaster):
    loop = loop_forecast(forecaster, readings=(nitrate(80.0, -20), nitrate(55.0, -3)))
    assert loop.pool_mg_per_l[NITROGEN, 0] == pytest.approx(55.0)
    assert not loop.pool_assumed[NITROGEN].any()
    assert loop.pool_assumed[POTASSIUM].all()


def test_that_a_test_too_old_does_not_tell_what_the_water_holds(forecaster):
    holds = round(pool_figures(CATALOGUE).reading_holds_days)
    assert loop_forecast(forecaster, readings=(nitrate(55.0, -holds - 1),)).pool_assumed[NITROGEN].all()
    assert not loop_forecast(forecaster, readings=(nitrate(55.0, -holds),)).pool_assumed[NITROGEN].any()


def test_that_a_test_within_the_plan_re_anchors_the_pool_and_the_miss_is_kept(forecaster):
    loop = loop_forecast(forecaster, readings=(nitrate(90.0, 21),))
    before = loop_forecast(forecaster)
    (miss,) = loop.pool_misses
    assert loop.pool_mg_per_l[NITROGEN, 21] == pytest.approx(90.0)
    assert miss.read_mg_per_l == 90.0
    assert miss.expected_mg_per_l == pytest.approx(before.pool_mg_per_l[NITROGEN, 21])
    assert miss.assumed
    assert loop.pool_g[NITROGEN, :21] == pytest.approx(before.pool_g[NITROGEN, :21])
    assert loop.pool_assumed[NITROGEN, :21].all()
    assert not loop.pool_assumed[NITROGEN, 21:].any()


def test_that_readings_of_acidity_or_another_loop_do_not_touch_the_pools(forecaster):
    other = dataclasses.replace(LOOP, id=id_from("other"), name="Other")
    elsewhere = dataclasses.replace(nitrate(300.0, 3), loop=other.id)
    acid = reading(Quantity.PH, 6.4, 3)
    loop = loop_forecast(forecaster, loops=(LOOP, other), readings=(elsewhere, acid))
    assert loop.pool_misses == ()
    assert loop.pool_assumed.all()


def test_that_what_is_not_there_is_not_taken_and_is_counted(forecaster):
    loop = loop_forecast(forecaster, fish_groups=(), batches=weekly_batches(15, plants=100))
    assert loop.unmet_g[POTASSIUM].sum() > 0
    assert loop.pool_g.min() >= 0
    day = int(loop.unmet_g[POTASSIUM].argmax())
    assert loop.pool_g[POTASSIUM, day + 1] == pytest.approx(0.0, abs=1e-9)


def test_that_more_make_up_water_washes_more_out(forecaster):
    dry, wet = (
        loop_forecast(forecaster, loops=(dataclasses.replace(LOOP, top_up_l_per_day=litres),))
        for litres in (0.0, 400.0)
    )
    stays = [row for row in range(len(ELEMENTS)) if row not in (IRON, PHOSPHORUS)]
    assert not dry.leaving_g[stays].any()
    assert wet.leaving_g[NITROGEN].sum() > 0
    assert wet.pool_g[NITROGEN, -1] < dry.pool_g[NITROGEN, -1]


@pytest.mark.parametrize(
    ("name", "row", "quantity"),
    [("iron", IRON, Quantity.FE_MG_PER_L), ("phosphorus", PHOSPHORUS, Quantity.P_MG_PER_L)],
)
def test_that_iron_and_phosphorus_fall_out_of_the_water_by_half_in_their_half_life(
    forecaster, name, row, quantity
):
    half_life_days = round(CATALOGUE.figure(f"coefficient/pools/{name}_half_life_days").value)
    still = dataclasses.replace(LOOP, top_up_l_per_day=0.0)
    loop = loop_forecast(
        forecaster, fish_groups=(), batches=(), loops=(still,), readings=(reading(quantity, 2.0, 0),)
    )
    assert loop.pool_mg_per_l[row, 0] == pytest.approx(2.0)
    assert loop.pool_mg_per_l[row, half_life_days] == pytest.approx(1.0)


def test_that_phosphorus_does_not_pile_up_for_years(forecaster):
    """Fed alike for ever, no more stands than what falls in within a mean life, and what it began with."""
    still = dataclasses.replace(LOOP, top_up_l_per_day=0.0)
    loop = loop_forecast(forecaster, batches=(), loops=(still,))
    half_life_days = CATALOGUE.figure("coefficient/pools/phosphorus_half_life_days").value
    began = loop.pool_g[PHOSPHORUS, 0]
    most = loop.supply_g[PHOSPHORUS].max() / (1.0 - 0.5 ** (1.0 / half_life_days))
    assert loop.leaving_g[PHOSPHORUS].sum() > 0
    assert loop.pool_g[PHOSPHORUS].max() <= most + began


def test_that_iron_given_for_years_does_not_pile_up(forecaster):
    """Of equal doses at equal intervals never more stands than the sum of all that is left of them."""
    iron, every_days, given_mg_per_l = "iron-dtpa-11", 21, 2.0
    share = CATALOGUE.supplements[iron].fe_share
    dose = Dose(
        id=id_from("dose", iron),
        loop=LOOP.id,
        supplement=iron,
        grams=given_mg_per_l * LOOP.water_l / MG_PER_G / share,
        on=MONDAY,
        every_days=every_days,
    )
    loop = loop_forecast(forecaster, fish_groups=(), doses=(dose,))
    half_life_days = CATALOGUE.figure("coefficient/pools/iron_half_life_days").value
    began = loop.pool_mg_per_l[IRON, 0]
    most = given_mg_per_l / (1.0 - 0.5 ** (every_days / half_life_days))
    assert loop.dose_g[IRON].sum() > 5 * given_mg_per_l * LOOP.water_l / MG_PER_G
    assert loop.pool_mg_per_l[IRON].max() <= most + began


def test_that_emptying_half_the_beds_for_two_weeks_stores_what_is_not_wanted(forecaster):
    """What is stored rises by supply less demand, less what leaves with water: nitrogen on account."""
    full, half = (
        loop_forecast(forecaster, batches=tuple(batch_of(f"L-{n}", plants=25) for n in range(many)))
        for many in (4, 2)
    )
    days = slice(30, 44)
    for loop in (full, half):
        assert not loop.unmet_g[NITROGEN, days].any()
        rise = loop.pool_g[NITROGEN, 44] - loop.pool_g[NITROGEN, 30]
        net = (loop.supply_g - loop.demand_g - loop.leaving_g)[NITROGEN, days].sum()
        assert rise == pytest.approx(net, rel=1e-9)
    assert half.pool_g[NITROGEN, 44] > full.pool_g[NITROGEN, 44]
    stored = half.pool_g[NITROGEN, 44] - full.pool_g[NITROGEN, 44]
    saved = (full.demand_g - half.demand_g)[NITROGEN, :44].sum()
    washed = (half.leaving_g - full.leaving_g)[NITROGEN, :44].sum()
    assert stored == pytest.approx(saved - washed, rel=1e-9)


@given(feed=st.floats(1, 2000), more=st.floats(0, 500))
@settings(max_examples=20)
def test_that_more_feed_never_leaves_less_in_the_water_or_more_unmet(feed, more):
    forecaster = Forecaster(CATALOGUE)
    less, greater = (
        forecaster.preview(
            farm_of(
                fish_groups=(group_of(feeding=Feeding.FIXED, feed_g_per_day=given_),),
                batches=weekly_batches(10),
            )
        ).loops[0]
        for given_ in (feed, feed + more)
    )
    assert (less.pool_g <= greater.pool_g + 1e-9).all()
    assert (less.unmet_g >= greater.unmet_g - 1e-9).all()


def test_that_a_weeks_verdict_counts_what_is_dissolved_when_it_begins(forecaster):
    farm = farm_of(
        fish_groups=(group_of(feeding=Feeding.FIXED, feed_g_per_day=60.0),),
        batches=weekly_batches(12),
        readings=(nitrate(40.0, 17),),
    )
    forecast = forecaster.forecast(farm)
    loop = forecast.loops[0]
    for verdict in week_verdicts(loop, forecast.ruler, forecaster.bands):
        first = 7 * verdict.week
        assert verdict.stock_g == pytest.approx(loop.pool_g[:, first])
        assert verdict.stock_mg_per_l == pytest.approx(loop.pool_g[:, first] * MG_PER_G / LOOP.water_l)
        assert verdict.unmet_g == pytest.approx(loop.unmet_g[:, first : first + 7].sum(axis=1))
        assert verdict.stock_assumed[NITROGEN] == (first < 17)
        for element, covered in enumerate(verdict.covered_ratio):
            ratio = verdict.ratio[element]
            if ratio is None:
                assert covered is None
                continue
            with_stock = verdict.supply_g[element] + verdict.stock_g[element]
            assert covered == pytest.approx(with_stock / verdict.demand_g[element])
            assert covered >= ratio


def test_that_what_a_week_covers_with_its_stock_is_only_unmet_if_it_leaves(forecaster):
    farm = farm_of(batches=weekly_batches(15, plants=100))
    forecast = forecaster.forecast(farm)
    verdicts = week_verdicts(forecast.loops[0], forecast.ruler, forecaster.bands)
    short = [
        (verdict.covered_ratio[n], verdict.unmet_g[n])
        for verdict in verdicts
        for n in range(len(ELEMENTS))
        if verdict.covered_ratio[n] is not None
    ]
    assert any(unmet > 0 for _, unmet in short)
    assert all(unmet > 0 for covered, unmet in short if covered < 1)
