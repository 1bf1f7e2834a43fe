"""Acid made and given back, the fall of alkalinity, and the days on which limits are reached."""

from __future__ import annotations

from datetime import date

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from planner.farm.ids import id_from
from planner.farm.water import Dose, Quantity
from planner.forecast.water.acid import Agreement, acid_forecast, base_eq_by_day, week_acids
from planner.forecast.water.limits import LimitWay, day_spent, limit_days, observed_acid
from planner.forecast.water.spans import DaySpan, Span, exactly
from planner.forecast.water.targets import NotKnown
from tests.farms import LOOP
from tests.forecast.water.loops import RULER, loop_of, on_day, read, weekly

WATER_L = 4000.0


def acid_of(catalogue, found=None, **given):
    return acid_forecast(found or loop_of(), water_l=WATER_L, catalogue=catalogue, **given)


def limits_of(catalogue, acid, *readings, day=30, base_eq=None):
    found = limit_days(
        acid, readings=readings, today=on_day(day), ruler=RULER, catalogue=catalogue, base_eq=base_eq
    )
    return {limit.way: limit for limit in found}


def spans_of(acid):
    return [value for name in acid.__slots__ if isinstance(value := getattr(acid, name), DaySpan)]


@given(
    feed=st.floats(0, 5000),
    protein=st.floats(0.1, 0.6),
    plants=st.floats(0, 100),
    gas=st.floats(0.0, 0.5),
)
def test_that_acid_ranges_are_in_order_and_never_below_nothing(catalogue, feed, protein, plants, gas):
    acid = acid_of(catalogue, loop_of(feed, protein=protein, plants_n_g=plants, gas_share=gas))
    assert len(spans_of(acid)) == 7
    for span in spans_of(acid):
        assert np.all(span.low >= 0.0)
        assert np.all(span.low <= span.likely * (1 + 1e-9))
        assert np.all(span.likely <= span.high * (1 + 1e-9))


@given(feed=st.floats(1, 5000), more=st.floats(1.0, 4.0), plants=st.floats(0, 50))
def test_that_more_feed_never_makes_less_acid(catalogue, feed, more, plants):
    less = acid_of(catalogue, loop_of(feed), plant_n_g=np.full(RULER.days, plants))
    fed = acid_of(catalogue, loop_of(feed * more), plant_n_g=np.full(RULER.days, plants))
    for smaller, larger in ((less.net_eq, fed.net_eq), (less.planned_eq, fed.planned_eq)):
        for name in ("low", "likely", "high"):
            assert np.all(getattr(larger, name) >= getattr(smaller, name) - 1e-9)


@given(plants=st.floats(0, 20), more=st.floats(0.1, 20))
def test_that_plants_that_take_more_leave_less_acid(catalogue, plants, more):
    few = acid_of(catalogue, plant_n_g=np.full(RULER.days, plants))
    many = acid_of(catalogue, plant_n_g=np.full(RULER.days, plants + more))
    assert np.all(many.net_eq.high <= few.net_eq.high)
    assert np.all(many.net_eq.likely <= few.net_eq.likely)


def test_that_what_is_made_less_what_is_given_back_is_what_is_left(catalogue):
    acid = acid_of(catalogue, loop_of(1000.0, gas_share=0.25))
    left = (
        acid.nitrification_eq.likely - acid.excretion_eq.likely - acid.plants_eq.likely - acid.gas_eq.likely
    )
    assert np.all(left > 0.0)
    assert acid.net_eq.likely == pytest.approx(left)


def test_that_base_is_planned_for_as_published_and_its_range_holds_the_balance_too(catalogue):
    acid = acid_of(catalogue)
    assert acid.planned_eq.likely == pytest.approx(acid.published_eq.likely)
    assert np.all(acid.planned_eq.low <= np.minimum(acid.net_eq.low, acid.published_eq.low))
    assert np.all(acid.planned_eq.high >= np.maximum(acid.net_eq.high, acid.published_eq.high))


def test_that_the_loops_own_figure_replaces_the_published_one(catalogue):
    acid = acid_of(catalogue, own_eq_per_kg_feed=Span(low=0.2, likely=0.3, high=0.4))
    assert acid.own
    assert acid.planned_eq.at(0).likely == pytest.approx(0.3 * 0.2)
    assert acid.planned_eq.at(0).high == pytest.approx(0.4 * 0.2)


def test_that_a_balance_beside_the_published_range_says_so(catalogue):
    little = week_acids(acid_of(catalogue, plant_n_g=np.full(RULER.days, 50.0)), RULER)[0]
    much = week_acids(acid_of(catalogue, loop_of(gas_share=0.0)), RULER)[0]
    assert little.agreement is Agreement.BELOW
    assert much.agreement is Agreement.ABOVE


def test_that_alkalinity_drifts_by_the_acid_of_the_week(catalogue):
    week = week_acids(acid_of(catalogue), RULER)[0]
    # an equivalent is 50.04 g CaCO3, spread over 4 m³
    assert week.drift_mg_per_l.likely == pytest.approx(-week.planned_eq.likely * 50.0435 / 4.0, rel=1e-4)
    assert week.drift_mg_per_l.low <= week.drift_mg_per_l.likely <= week.drift_mg_per_l.high <= 0.0


def test_that_without_readings_no_day_is_foretold(catalogue):
    found = limits_of(catalogue, acid_of(catalogue))
    assert {limit.not_known for limit in found.values()} == {NotKnown.NO_ALKALINITY, NotKnown.NO_TREND}
    assert all(limit.earliest_on is None and limit.latest_on is None for limit in found.values())


def test_that_an_old_reading_is_no_ground_for_a_day(catalogue):
    found = limits_of(catalogue, acid_of(catalogue), read(Quantity.ALKALINITY_MG_PER_L, 90.0, 0), day=60)
    assert found[LimitWay.ALKALINITY_BALANCE].not_known is NotKnown.TOO_OLD


def test_that_alkalinity_reaches_its_limit_between_two_days(catalogue):
    acid = acid_of(catalogue, own_eq_per_kg_feed=Span(low=0.5, likely=1.0, high=1.5))
    found = limits_of(catalogue, acid, read(Quantity.ALKALINITY_MG_PER_L, 90.0, 28))
    limit = found[LimitWay.ALKALINITY_BALANCE]
    # 0.2 kg a day is 0.3 and 0.1 eq/d at most and least: 3.753 and 1.251 mg/L a day of 30 to spare
    assert limit.earliest_on == on_day(28 + 8)
    assert limit.latest_on == on_day(28 + 24)
    assert found[LimitWay.PH_BALANCE].not_known is NotKnown.NO_PH


def test_that_ph_follows_alkalinity_with_the_gas_unchanged(catalogue):
    acid = acid_of(catalogue, own_eq_per_kg_feed=exactly(1.0))
    found = limits_of(
        catalogue, acid, read(Quantity.ALKALINITY_MG_PER_L, 80.0, 28), read(Quantity.PH, 6.7, 28)
    )
    limit = found[LimitWay.PH_BALANCE]
    # from 6.7 to 6.4 halves alkalinity (10^-0.3 = 0.501): 39.9 mg/L at 2.502 mg/L a day
    assert limit.limit == 6.4
    assert limit.earliest_on == limit.latest_on == on_day(28 + 16)


def test_that_a_limit_already_passed_is_said(catalogue):
    found = limits_of(catalogue, acid_of(catalogue), read(Quantity.ALKALINITY_MG_PER_L, 20.0, 28))
    limit = found[LimitWay.ALKALINITY_BALANCE]
    assert limit.already
    assert limit.earliest_on == limit.latest_on == on_day(28)


def test_that_base_given_puts_the_day_off(catalogue):
    acid = acid_of(catalogue, own_eq_per_kg_feed=exactly(1.0))
    reading = read(Quantity.ALKALINITY_MG_PER_L, 90.0, 7)
    bare = limits_of(catalogue, acid, reading)[LimitWay.ALKALINITY_BALANCE]
    dosed = limits_of(catalogue, acid, reading, base_eq=np.full(RULER.days, 0.1))
    kept = limits_of(catalogue, acid, reading, base_eq=np.full(RULER.days, 0.2))
    assert dosed[LimitWay.ALKALINITY_BALANCE].earliest_on > bare.earliest_on
    assert kept[LimitWay.ALKALINITY_BALANCE].earliest_on is None


def test_that_ph_by_trend_goes_on_as_it_went(catalogue):
    readings = weekly(Quantity.PH, 7.2, 7.1, 7.0, 6.9, 6.8)
    limit = limits_of(catalogue, acid_of(catalogue), *readings)[LimitWay.PH_TREND]
    # 0.4 at 0.1 a week
    assert limit.not_known is None
    assert abs((limit.earliest_on - on_day(28 + 28)).days) <= 1
    assert limit.latest_on >= limit.earliest_on


def test_that_a_steady_ph_foretells_nothing(catalogue):
    readings = weekly(Quantity.PH, 7.0, 7.0, 7.0, 7.0, 7.0)
    limit = limits_of(catalogue, acid_of(catalogue), *readings)[LimitWay.PH_TREND]
    assert limit.not_known is NotKnown.NOT_FALLING


@given(spare=st.floats(0.1, 200), fall=st.floats(0.1, 20), first=st.integers(-30, 100))
def test_that_a_faster_fall_is_never_later(spare, fall, first):
    slow = day_spent(spare, fall=np.full(140, fall), first=first)
    fast = day_spent(spare, fall=np.full(140, 2 * fall), first=first)
    assert fast is None or fast > first
    if slow is not None:
        assert fast <= slow


def test_that_doses_bring_base_on_their_days(catalogue):
    dose = Dose(
        id=id_from("dose"),
        loop=LOOP.id,
        supplement="potassium-bicarbonate",
        grams=100.0,
        on=on_day(1),
        every_days=2,
        until_on=on_day(5),
    )
    given_eq = base_eq_by_day((dose,), loop=LOOP.id, supplements=catalogue.supplements, ruler=RULER)
    assert np.flatnonzero(given_eq).tolist() == [1, 3, 5]
    assert given_eq[1] == pytest.approx(100.0 / 100.114, rel=1e-3)


def test_that_the_log_shows_the_loops_own_acid(catalogue):
    acid = acid_of(catalogue)
    readings = weekly(Quantity.ALKALINITY_MG_PER_L, 100.0, 90.0, 80.0, 70.0)
    seen = observed_acid(
        acid,
        readings=readings,
        base_eq=np.full(RULER.days, 0.05),
        today=on_day(21),
        ruler=RULER,
        catalogue=catalogue,
    )
    # 10 mg/L a week of 4 m³ is 40 g CaCO3 or 0.7993 eq a week
    assert seen.eq_per_day.likely == pytest.approx(0.7993 / 7 + 0.05, rel=1e-3)
    assert seen.eq_per_kg_feed.likely == pytest.approx(seen.eq_per_day.likely / 0.2)


def test_that_few_readings_show_no_acid(catalogue):
    readings = weekly(Quantity.ALKALINITY_MG_PER_L, 100.0, 90.0)
    nothing = np.zeros(RULER.days)
    seen = observed_acid(
        acid_of(catalogue),
        readings=readings,
        base_eq=nothing,
        today=date(2027, 2, 1),
        ruler=RULER,
        catalogue=catalogue,
    )
    assert seen is None
