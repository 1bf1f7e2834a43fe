"""Readings: the latest, the odd one out, trends, bands, free ammonia, salts, what is due."""

from __future__ import annotations

from dataclasses import replace

import pytest
from hypothesis import given
from hypothesis import strategies as st

from planner.farm.ids import id_from
from planner.farm.water import Quantity
from planner.forecast.water.chemistry import chemistry_of
from planner.forecast.water.readings import (
    Direction,
    due_tests,
    latest,
    nearest,
    odd_readings,
    overdue_tests,
    reading_figures,
    series,
    trend,
)
from planner.forecast.water.targets import (
    Level,
    NotKnown,
    WaterByDay,
    ammonia_limit,
    free_ammonia,
    salt_reading,
    target_bands,
)
from tests.farms import LOOP
from tests.forecast.water.loops import on_day, read, weekly

TILAPIA = ("nile-tilapia",)


@pytest.fixture
def figures(catalogue):
    return reading_figures(catalogue)


def ammonia_of(catalogue, *readings, day=40, species=TILAPIA, months=(), drawn=None):
    return free_ammonia(
        readings,
        loop=LOOP.id,
        species=species,
        today=on_day(day),
        catalogue=catalogue,
        water=WaterByDay(start_on=on_day(0), by_day=drawn, monthly=months),
    )


def test_that_a_series_is_of_one_loop_and_one_quantity_by_date():
    other = replace(read(Quantity.PH, 6.0, 1), loop=id_from("elsewhere"))
    mixed = (read(Quantity.PH, 7.0, 9), read(Quantity.PH, 6.8, 2), read(Quantity.WATER_C, 20.0, 5), other)
    found = series(mixed, Quantity.PH, loop=LOOP.id)
    assert [reading.value for reading in found] == [6.8, 7.0]
    assert latest(mixed, Quantity.PH, loop=LOOP.id, until_on=on_day(8)).value == 6.8
    assert latest(mixed, Quantity.TAN_MG_PER_L, loop=LOOP.id) is None


def test_that_the_nearest_reading_may_lie_on_either_side_but_not_too_far():
    found = (read(Quantity.PH, 7.0, 0), read(Quantity.PH, 6.5, 10))
    assert nearest(found, on=on_day(4), within_days=7).value == 7.0
    assert nearest(found, on=on_day(6), within_days=7).value == 6.5
    assert nearest(found, on=on_day(5), within_days=7).value == 6.5
    assert nearest(found, on=on_day(30), within_days=7) is None


def test_that_a_single_reading_apart_asks_for_the_test_again(figures):
    found = weekly(Quantity.PH, 7.0, 6.9, 7.0, 6.9, 5.8)
    assert [reading.value for reading in odd_readings(found, figures)] == [5.8]


def test_that_a_reading_the_next_one_agrees_with_is_no_outlier(figures):
    found = weekly(Quantity.PH, 7.0, 6.9, 7.0, 6.9, 5.8, 5.8)
    assert odd_readings(found, figures) == ()


def test_that_a_spike_in_the_middle_is_odd_and_a_steady_rise_is_not(figures):
    spike = weekly(Quantity.NITRATE_N_MG_PER_L, 40, 42, 160, 45, 44)
    assert [reading.value for reading in odd_readings(spike, figures)] == [160]
    assert odd_readings(weekly(Quantity.NITRATE_N_MG_PER_L, 10, 20, 30, 40, 50), figures) == ()


def test_that_two_readings_are_too_few_to_call_one_odd(figures):
    assert odd_readings(weekly(Quantity.PH, 7.0, 5.0), figures) == ()


@given(st.lists(st.floats(6.9, 7.1), min_size=1, max_size=12))
def test_that_readings_within_the_noise_are_never_odd(catalogue, values):
    assert odd_readings(weekly(Quantity.PH, *values), reading_figures(catalogue)) == ()


def test_that_a_trend_is_the_fall_per_week_whatever_one_reading_says(figures):
    clean = weekly(Quantity.PH, 7.2, 7.1, 7.0, 6.9, 6.8, 6.7)
    spoilt = weekly(Quantity.PH, 7.2, 7.1, 8.5, 6.9, 6.8, 6.7)
    for found in (clean, spoilt):
        seen = trend(found, until_on=on_day(35), figures=figures)
        assert seen.per_week.likely == pytest.approx(-0.1, abs=0.01)
        assert seen.direction is Direction.FALLING
        assert seen.per_week.low <= seen.per_week.likely <= seen.per_week.high


def test_that_a_change_within_the_noise_is_steady(figures):
    seen = trend(weekly(Quantity.PH, 7.0, 7.05, 7.0, 6.95, 7.0), until_on=on_day(28), figures=figures)
    assert seen.direction is Direction.STEADY


def test_that_few_or_old_readings_make_no_trend(figures):
    found = weekly(Quantity.PH, 7.0, 6.9, 6.8)
    assert trend(found, until_on=on_day(14), figures=figures) is None
    assert trend(weekly(Quantity.PH, 7, 7, 7, 7, 7), until_on=on_day(200), figures=figures) is None
    same_day = tuple(read(Quantity.PH, value, 3) for value in (6.8, 6.9, 7.0, 7.1))
    assert trend(same_day, until_on=on_day(3), figures=figures) is None


@given(st.lists(st.floats(0, 400), min_size=4, max_size=7), st.floats(-50, 50))
def test_that_a_trend_moves_with_a_steady_change_added(catalogue, values, slope):
    figures = reading_figures(catalogue)
    plain = trend(weekly(Quantity.K_MG_PER_L, *values), until_on=on_day(42), figures=figures)
    tilted = [value + slope * week for week, value in enumerate(values)]
    moved = trend(weekly(Quantity.K_MG_PER_L, *tilted), until_on=on_day(42), figures=figures)
    assert moved.per_week.likely == pytest.approx(plain.per_week.likely + slope, abs=1e-6)


@pytest.mark.parametrize(
    ("quantity", "value", "level"),
    [
        (Quantity.PH, 6.5, Level.SAFE),
        (Quantity.PH, 5.7, Level.WATCH),
        (Quantity.PH, 5.2, Level.ACT),
        (Quantity.PH, 7.3, Level.WATCH),
        (Quantity.PH, 7.8, Level.ACT),
        (Quantity.TAN_MG_PER_L, 1.0, Level.SAFE),
        (Quantity.TAN_MG_PER_L, 2.0, Level.WATCH),
        (Quantity.TAN_MG_PER_L, 4.0, Level.ACT),
        (Quantity.OXYGEN_MG_PER_L, 4.5, Level.WATCH),
        (Quantity.OXYGEN_MG_PER_L, 3.0, Level.ACT),
        (Quantity.NITRITE_N_MG_PER_L, 1.1, Level.ACT),
        (Quantity.P_MG_PER_L, 8.0, Level.SAFE),
        (Quantity.K_MG_PER_L, 35.0, Level.WATCH),
        (Quantity.CA_MG_PER_L, 5.0, Level.ACT),
        (Quantity.MG_MG_PER_L, 400.0, Level.SAFE),
    ],
)
def test_that_a_value_is_held_against_the_bounds_and_their_spread(catalogue, quantity, value, level):
    assert target_bands(catalogue)[quantity].level(value) is level


def test_that_free_ammonia_takes_ph_and_temperature_of_about_the_same_day(catalogue):
    found = ammonia_of(
        catalogue,
        read(Quantity.TAN_MG_PER_L, 1.0, 30),
        read(Quantity.PH, 8.0, 28),
        read(Quantity.PH, 6.0, 10),
        read(Quantity.WATER_C, 24.0, 33),
    )
    assert found.not_known is None
    assert (found.ph, found.water_c) == (8.0, 24.0)
    assert found.nh3_n_mg_per_l == pytest.approx(0.0502, abs=0.0001)
    assert found.level is Level.WATCH
    assert "emerson1975" in {figure.source for figure in found.basis}


def test_that_free_ammonia_says_what_is_missing(catalogue):
    tan, warmth = read(Quantity.TAN_MG_PER_L, 1.0, 30), read(Quantity.WATER_C, 24.0, 30)
    old_ph, new_ph = read(Quantity.PH, 7.0, 22), read(Quantity.PH, 7.0, 24)
    assert ammonia_of(catalogue, warmth).not_known is NotKnown.NO_AMMONIA
    missing = ammonia_of(catalogue, tan, warmth, old_ph)
    assert (missing.not_known, missing.within_days) == (NotKnown.NO_PH, 7)
    assert missing.nh3_n_mg_per_l is None
    assert ammonia_of(catalogue, tan, new_ph).not_known is NotKnown.NO_TEMPERATURE


def test_that_monthly_temperatures_stand_in_and_say_so(catalogue):
    found = ammonia_of(
        catalogue,
        read(Quantity.TAN_MG_PER_L, 1.0, 30),
        read(Quantity.PH, 7.0, 30),
        months=(25.0,) * 12,
    )
    assert found.water_c == pytest.approx(25.0)
    assert found.water_c_on is None


def test_that_the_most_delicate_fish_sets_the_limit_and_no_fish_none(catalogue):
    mixed = ammonia_limit(("nile-tilapia", "rainbow-trout"), catalogue)
    assert mixed.path == "fish/rainbow-trout/nh3_n_limit_mg_per_l"
    readings = (
        read(Quantity.TAN_MG_PER_L, 1.0, 30),
        read(Quantity.PH, 8.0, 30),
        read(Quantity.WATER_C, 20.0, 30),
    )
    assert ammonia_of(catalogue, *readings, species=()).level is None
    assert ammonia_of(catalogue, *readings, species=("rainbow-trout",)).level is Level.ACT


@given(
    ph=st.floats(5.5, 9.0),
    warmth=st.floats(2.0, 35.0),
    by=st.floats(0.01, 1.0),
    tan=st.floats(0.01, 50.0),
)
def test_that_free_ammonia_rises_with_ph_and_with_warmth(catalogue, ph, warmth, by, tan):
    chemistry = chemistry_of(catalogue)
    here = chemistry.free_ammonia_n(tan, ph=ph, water_c=warmth)
    assert chemistry.free_ammonia_n(tan, ph=ph + by, water_c=warmth) > here
    assert chemistry.free_ammonia_n(tan, ph=ph, water_c=warmth + by) > here
    assert here < tan


def test_that_a_meter_factor_is_kept_and_a_missing_one_is_said_to_be_assumed(catalogue):
    own = salt_reading(read(Quantity.TDS_MG_PER_L, 420.0, 1, factor=0.7), catalogue)
    assert own.ec_ms_per_cm.likely == pytest.approx(0.6)
    assert not own.factor_assumed
    assumed = salt_reading(read(Quantity.TDS_MG_PER_L, 320.0, 1), catalogue)
    assert assumed.factor_assumed
    assert assumed.ec_ms_per_cm.low < assumed.ec_ms_per_cm.likely < assumed.ec_ms_per_cm.high
    assert [figure.path for figure in assumed.basis] == ["loop/tds_per_ec"]


@given(st.floats(0.01, 20.0), st.floats(0.4, 1.0))
def test_that_salts_come_back_the_same_with_the_meters_factor(catalogue, ec, factor):
    there = salt_reading(read(Quantity.EC_MS_PER_CM, ec, 1, factor=factor), catalogue)
    back = salt_reading(read(Quantity.TDS_MG_PER_L, there.tds_mg_per_l.likely, 1, factor=factor), catalogue)
    assert back.ec_ms_per_cm.likely == pytest.approx(ec)


def test_that_a_factor_no_meter_has_is_taken_as_not_given(catalogue):
    assert salt_reading(read(Quantity.TDS_MG_PER_L, 320.0, 1, factor=0.3), catalogue).factor_assumed


def test_that_salts_are_not_read_from_other_quantities(catalogue):
    with pytest.raises(ValueError, match="reading of ph is none of conductivity"):
        salt_reading(read(Quantity.PH, 7.0, 1), catalogue)


def test_that_tests_are_due_after_their_days_and_never_made_ones_at_once(figures):
    readings = (read(Quantity.PH, 7.0, 10), read(Quantity.TDS_MG_PER_L, 300.0, 20))
    dues = {due.quantity: due for due in due_tests(readings, loop=LOOP.id, today=on_day(20), figures=figures)}
    assert dues[Quantity.PH].due_on == on_day(17)
    assert dues[Quantity.PH].days_late == 3
    assert dues[Quantity.EC_MS_PER_CM].last_on == on_day(20)
    assert dues[Quantity.TAN_MG_PER_L].last_on is None
    late = {due.quantity for due in overdue_tests(readings, loop=LOOP.id, today=on_day(20), figures=figures)}
    assert Quantity.PH in late
    assert Quantity.TAN_MG_PER_L in late
    assert Quantity.EC_MS_PER_CM not in late
