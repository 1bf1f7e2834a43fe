"""Responses peak at one and vanish outside the range of life; light saturates; counts round safely."""

import math

import numpy as np
import pytest
from hypothesis import assume, given
from hypothesis import strategies as st

from planner.science import daylight, degree_days, germination, response, schedule

LOW, SPAN = st.floats(-5.0, 20.0), st.floats(1.0, 30.0)


@given(base=LOW, up=SPAN, down=SPAN, warmth=st.floats(-40.0, 80.0))
def test_that_a_response_is_a_share_with_its_peak_at_the_optimum(
    base: float, up: float, down: float, warmth: float
) -> None:
    shape = {"base_c": base, "optimum_c": base + up, "ceiling_c": base + up + down}
    found = response.cardinal_response(warmth, **shape)
    assert 0.0 <= found <= 1.0
    assert response.cardinal_response(base + up, **shape) == pytest.approx(1.0)
    if warmth <= base or warmth >= base + up + down:
        assert found == 0.0


@given(base=LOW, up=SPAN, down=SPAN)
def test_that_a_response_rises_to_the_optimum_and_falls_after_it(base: float, up: float, down: float) -> None:
    shape = {"base_c": base, "optimum_c": base + up, "ceiling_c": base + up + down}
    rising = response.cardinal_response(np.linspace(base, base + up, 50), **shape)
    falling = response.cardinal_response(np.linspace(base + up, base + up + down, 50), **shape)
    assert np.all(np.diff(rising) >= -1e-9)
    assert np.all(np.diff(falling) <= 1e-9)


@given(base=LOW, short=SPAN, more=st.floats(0.0, 20.0))
def test_that_the_longer_side_leaves_nothing_in_a_straight_line(
    base: float, short: float, more: float
) -> None:
    """Next to its end the share grows as the degrees do, by the slope that the form gives there."""
    long = short + more
    slope = (1.0 + long / short) ** (short / long) / long
    near = 1e-4 * short
    cool = {"base_c": base, "optimum_c": base + long, "ceiling_c": base + long + short}
    hot = {"base_c": base, "optimum_c": base + short, "ceiling_c": base + short + long}
    for degrees in (near, 2.0 * near):
        wanted = pytest.approx(slope * degrees, rel=1e-3)
        assert response.cardinal_response(base + degrees, **cool) == wanted
        assert response.cardinal_response(base + short + long - degrees, **hot) == wanted


def test_that_cardinal_temperatures_out_of_order_are_refused() -> None:
    with pytest.raises(ValueError, match=r"ceiling temperature is 20 degC; it must be above 25 degC"):
        response.cardinal_response(20.0, base_c=5.0, optimum_c=25.0, ceiling_c=20.0)


@given(
    light=st.floats(0.0, 60.0),
    more=st.floats(0.0, 30.0),
    half=st.floats(0.5, 20.0),
    reference=st.floats(1.0, 30.0),
)
def test_that_more_light_never_slows_growth_and_is_turned_back(
    light: float, more: float, half: float, reference: float
) -> None:
    curve = {"half_light_mol": half, "reference_light_mol": reference}
    share = response.saturating_light(light, **curve)
    assert response.saturating_light(light + more, **curve) >= share
    assert response.saturating_light(0.0, **curve) == 0.0
    assert response.light_needed(share, **curve) == pytest.approx(light, rel=1e-6, abs=1e-9)


def test_that_light_beyond_the_limit_of_the_curve_is_refused() -> None:
    with pytest.raises(ValueError, match=r"no light lifts it"):
        response.light_needed(2.0, half_light_mol=8.0, reference_light_mol=17.0)


@given(plants=st.integers(0, 5000), germination=st.floats(0.01, 1.0), survival=st.floats(0.01, 1.0))
def test_that_seeds_sown_give_the_plants_wanted_with_none_to_spare(
    plants: int, germination: float, survival: float
) -> None:
    seeds = schedule.seeds_to_sow(plants, germination=germination, survival=survival)
    assert schedule.stand(seeds, germination=germination, survival=survival) >= plants * (1.0 - 1e-8)
    assert (
        schedule.stand(seeds - 1, germination=germination, survival=survival) < plants
        if seeds
        else plants == 0
    )


@given(count=st.integers(0, 100_000), share=st.integers(1, 100))
def test_that_rounding_up_adds_no_unit_for_float_noise(count: int, share: int) -> None:
    assert schedule.whole_up(count * (share / 100.0) / (share / 100.0)) == count


@given(count=st.integers(0, 5000), per_unit=st.integers(1, 300))
def test_that_filled_trays_hold_the_count_and_less_than_a_tray_more(count: int, per_unit: int) -> None:
    filled = schedule.filled_up(count, per_unit=per_unit)
    assert filled % per_unit == 0
    assert count <= filled < count + per_unit


def test_that_no_germination_is_refused_and_not_divided_by() -> None:
    with pytest.raises(ValueError, match=r"germination is 0; it must be above 0"):
        schedule.seeds_to_sow(10, germination=0.0)
    with pytest.raises(ValueError, match=r"survival is 1.2; it must be at most 1"):
        schedule.seeds_to_sow(10, germination=0.9, survival=1.2)


@given(planted=st.lists(st.integers(0, 50), min_size=1, max_size=30), stay=st.integers(1, 10))
def test_that_plants_present_are_those_of_the_last_plantings(planted: list[int], stay: int) -> None:
    found = schedule.plants_present(np.array(planted, dtype=float), periods_in_place=stay)
    for period, value in enumerate(found):
        assert value == sum(planted[max(0, period - stay + 1) : period + 1])


def test_that_stages_of_no_length_can_be_scheduled_back() -> None:
    assert schedule.stage_start_days(10, stage_days=(4, 0, 3)).tolist() == [3, 7, 7]
    with pytest.raises(ValueError, match=r"stage length is -1 d"):
        schedule.stage_start_days(10, stage_days=(4, -1))


@given(high=st.floats(-20.0, 50.0), fall=st.floats(0.0, 30.0), base=st.floats(-5.0, 20.0))
def test_that_degree_days_never_fall_below_zero_and_keep_their_order(
    high: float, fall: float, base: float
) -> None:
    day = {"minimum_c": high - fall, "base_c": base}
    mean = degree_days.degree_days_mean(high, **day)
    sine = degree_days.degree_days_sine(high, **day)
    clipped = degree_days.degree_days_clipped(high, **day)
    assert 0.0 <= mean <= sine + 1e-9
    assert sine <= clipped + 1e-9
    assert degree_days.degree_days_four_cases(high, **day) >= 0.0


def test_that_seeds_do_not_germinate_below_their_base() -> None:
    line = {"base_c": 7.5, "thermal_time_c_days": 103.0}
    assert math.isinf(germination.germination_days(7.5, **line))
    assert germination.germination_rate(5.0, **line) == 0.0


def test_that_a_lot_germinates_no_better_than_its_test() -> None:
    assert germination.lot_germination(0.8, temperature_share=1.0, best_share=0.98) == pytest.approx(0.8)
    assert germination.lot_germination(0.8, temperature_share=0.49, best_share=0.98) == pytest.approx(0.4)


def test_that_a_soil_outside_the_table_is_refused() -> None:
    table = {"table_c": np.array([15.0, 20.0]), "table_days": np.array([14.0, 8.0])}
    with pytest.raises(ValueError, match=r"soil temperature is 10 degC; it must be at least 15 degC"):
        germination.emergence_days_from_table(10.0, **table)


@given(latitude=st.floats(-90.0, 90.0), day=st.integers(1, 365))
def test_that_day_and_night_make_twenty_four_hours_across_the_equator(latitude: float, day: int) -> None:
    assume(abs(latitude) > 0.01)
    sun = {"amplitude_rad": 0.409, "phase_rad": 1.39}
    here = daylight.daylength_h(float(day), latitude_deg=latitude, **sun)
    there = daylight.daylength_h(float(day), latitude_deg=-latitude, **sun)
    assert 0.0 <= here <= 24.0
    assert here + there == pytest.approx(24.0)


def test_that_the_polar_night_has_no_radiation() -> None:
    sun = {"amplitude_rad": 0.409, "phase_rad": 1.39, "distance_swing": 0.033}
    found = daylight.extraterrestrial_radiation(
        np.array([355.0, 172.0]), latitude_deg=80.0, solar_constant_mj_per_m2_min=0.082, **sun
    )
    assert found[0] == 0.0
    assert found[1] > 30.0


def test_that_shade_and_roof_take_their_shares() -> None:
    full = daylight.daily_light_under_roof(10.0, mol_per_mj=2.0, transmission=1.0)
    half = daylight.daily_light_under_roof(10.0, mol_per_mj=2.0, transmission=0.8, shade=0.375)
    assert (full, half) == (pytest.approx(20.0), pytest.approx(10.0))
