"""Fish grow and eat in step; water answers to pH, warmth, salt and height the right way round."""

import math

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from planner.science import compounds, feeding_table, fish, nitrification, stock, water
from tests.science.figures import ammonia, atomic_masses, oxygen

WEIGHT = st.floats(0.5, 3000.0)


@given(start=WEIGHT, tgc=st.floats(0.1, 3.0), degree_days=st.floats(1.0, 8000.0))
def test_that_growth_forward_and_back_agree(start: float, tgc: float, degree_days: float) -> None:
    end = fish.weight_by_tgc(start, tgc=tgc, degree_days=degree_days)
    assert end > start
    assert fish.thermal_growth_coefficient(start, end_g=end, degree_days=degree_days) == pytest.approx(tgc)
    assert fish.degree_days_to_weight(start, end_g=end, tgc=tgc) == pytest.approx(degree_days)


@given(start=st.floats(1.0, 500.0), days=st.integers(1, 120), tgc=st.floats(0.1, 2.0))
def test_that_day_by_day_growth_is_the_whole_formula_in_one_stage(
    start: float, days: int, tgc: float
) -> None:
    warmth = np.linspace(20.0, 29.0, days)
    daily = fish.weight_series(
        start, effective_temperature_c=warmth, stage_from_g=np.array([0.0]), stage_tgc=np.array([tgc])
    )
    assert daily.size == days + 1
    whole = fish.weight_by_tgc(start, tgc=tgc, degree_days=float(warmth.sum()))
    assert daily[-1] == pytest.approx(whole)
    assert np.all(np.diff(daily) > 0.0)


def test_that_a_stage_change_slows_the_fish() -> None:
    warmth = np.full(60, 28.0)
    one = fish.weight_series(
        40.0, effective_temperature_c=warmth, stage_from_g=np.array([0.0]), stage_tgc=np.array([1.5])
    )
    two = fish.weight_series(
        40.0,
        effective_temperature_c=warmth,
        stage_from_g=np.array([0.0, 60.0]),
        stage_tgc=np.array([1.5, 1.0]),
    )
    apart = int(np.argmax(two != one))
    assert one[apart - 1] >= 60.0 > one[apart - 2]
    assert two[-1] < one[-1]


def test_that_fish_stop_growing_when_too_hot_or_too_cold() -> None:
    shape = {"base_c": 14.0, "optimum_c": 29.0, "ceiling_c": 38.0}
    found = fish.effective_temperature(np.array([10.0, 14.0, 29.0, 38.0, 45.0]), **shape)
    assert found.tolist() == [0.0, 0.0, 29.0, 0.0, 0.0]


@given(
    base=st.floats(-5.0, 20.0),
    up=st.floats(6.0, 30.0),
    down=st.floats(1.0, 30.0),
    water=st.floats(-10.0, 60.0),
)
def test_that_fish_never_grow_by_more_degrees_than_the_water_has(
    base: float, up: float, down: float, water: float
) -> None:
    shape = {"base_c": base, "optimum_c": base + up, "ceiling_c": base + up + down}
    found = fish.effective_temperature(water, **shape)
    assert 0.0 <= found <= max(water, 0.0)
    assert found <= base + up
    assert fish.effective_temperature(base + up, **shape) == pytest.approx(base + up)


@given(gain=st.floats(0.0, 1e5), fcr=st.floats(0.3, 5.0))
def test_that_ration_and_gain_are_one_relation(gain: float, fcr: float) -> None:
    feed = fish.ration_for_gain(gain, feed_conversion=fcr)
    assert fish.gain_from_feed(feed, feed_conversion=fcr) == pytest.approx(gain)


def test_that_a_feed_conversion_of_nothing_is_refused() -> None:
    with pytest.raises(ValueError, match=r"feed conversion is 0 g/g; it must be above 0 g/g"):
        fish.ration_for_gain(10.0, feed_conversion=0.0)


@given(survival=st.floats(0.05, 1.0), days=st.floats(1.0, 400.0))
def test_that_deaths_a_day_add_up_to_the_survival(survival: float, days: float) -> None:
    share = stock.daily_death_share(survival=survival, days=days)
    assert stock.survivors(1000.0, death_share_per_day=share, days=days) == pytest.approx(1000.0 * survival)
    alive = stock.survivors(1000.0, death_share_per_day=share, days=np.linspace(0.0, days, 20))
    assert np.all(np.diff(alive) <= 1e-9)


def test_that_a_feeding_table_with_falling_nodes_or_a_wrong_body_is_refused() -> None:
    rising = np.array([5.0, 8.0])
    with pytest.raises(ValueError, match=r"table weights must rise"):
        feeding_table.FeedingTable(
            temperature_c=rising, weight_g=np.array([20.0, 10.0]), percent_per_day=np.ones((2, 2))
        )
    with pytest.raises(ValueError, match=r"feeding table has shape \(2, 3\); it must be \(2, 2\)"):
        feeding_table.FeedingTable(temperature_c=rising, weight_g=rising, percent_per_day=np.ones((2, 3)))


@given(weight=st.floats(1.0, 100.0), warmth=st.floats(5.0, 25.0))
def test_that_a_reading_between_nodes_lies_between_them(weight: float, warmth: float) -> None:
    body = np.array([[3.0, 2.0, 1.0], [5.0, 4.0, 2.0]])
    table = feeding_table.FeedingTable(
        temperature_c=np.array([5.0, 25.0]), weight_g=np.array([1.0, 10.0, 100.0]), percent_per_day=body
    )
    found = feeding_table.ration_interpolated(weight, temperature_c=warmth, table=table)
    assert 1.0 - 1e-9 <= found <= 5.0 + 1e-9
    warmer = feeding_table.ration_interpolated(weight, temperature_c=min(warmth + 1.0, 25.0), table=table)
    assert warmer >= found - 1e-9


def test_that_a_table_of_one_temperature_can_be_read() -> None:
    table = feeding_table.FeedingTable(
        temperature_c=np.array([28.0]),
        weight_g=np.array([10.0, 20.0]),
        percent_per_day=np.array([[4.0, 3.0]]),
    )
    assert feeding_table.ration_interpolated(15.0, temperature_c=28.0, table=table) == pytest.approx(3.5)
    with pytest.raises(ValueError, match=r"temperature is 20 degC; it must be at least 28 degC"):
        feeding_table.ration_interpolated(15.0, temperature_c=20.0, table=table)


@given(variation=st.floats(0.02, 0.6), error=st.floats(0.02, 0.3), of=st.integers(1, 5000))
def test_that_a_sample_never_passes_the_stock_nor_the_endless_count(
    variation: float, error: float, of: int
) -> None:
    sizes = {"variation": variation, "relative_error": error, "z_quantile": 1.96}
    finite = stock.sample_size(stock=of, **sizes)
    assert 0 <= finite <= of
    if (1.96 * variation / error) ** 2 >= 1.0:
        assert finite <= stock.sample_size(**sizes)


def test_that_an_empty_sample_and_an_interval_of_one_fish_are_refused() -> None:
    with pytest.raises(ValueError, match=r"a sample has 0 fish"):
        stock.sample_statistics([])
    with pytest.raises(ValueError, match=r"fish in the sample is 1; it must be at least 2"):
        stock.half_width_of_mean(stock.sample_statistics([50.0]), t_quantile=2.0)


@given(ph=st.floats(4.0, 10.0), warmth=st.floats(0.0, 49.0), rise=st.floats(0.001, 1.0))
def test_that_free_ammonia_rises_with_ph_and_with_warmth(ph: float, warmth: float, rise: float) -> None:
    here = water.unionised_ammonia_share(ph, temperature_c=warmth, **ammonia())
    assert 0.0 < here < 1.0
    assert water.unionised_ammonia_share(ph + rise, temperature_c=warmth, **ammonia()) > here
    assert water.unionised_ammonia_share(ph, temperature_c=warmth + rise, **ammonia()) > here


@given(warmth=st.floats(0.0, 39.0), salt=st.floats(0.0, 39.0), rise=st.floats(0.01, 1.0))
def test_that_oxygen_falls_with_warmth_and_with_salt(warmth: float, salt: float, rise: float) -> None:
    def level(t: float, s: float) -> float:
        return water.oxygen_saturation(t, salinity_g_per_kg=s, coefficients=oxygen())

    assert level(warmth + rise, salt) < level(warmth, salt)
    assert level(warmth, salt + rise) < level(warmth, salt)


@given(height=st.floats(0.0, 4900.0), rise=st.floats(1.0, 100.0))
def test_that_oxygen_falls_with_height(height: float, rise: float) -> None:
    air = {"lapse_per_m": 2.25577e-5, "exponent": 5.25588, "sea_level_mmhg": 760.0}

    def level(metres: float) -> float:
        pressure = water.pressure_at_altitude(metres, **air)
        return water.oxygen_at_pressure(9.0, pressure_mmhg=pressure, vapour_mmhg=17.5, sea_level_mmhg=760.0)

    assert level(0.0) == pytest.approx(9.0)
    assert level(height + rise) < level(height)


def test_that_a_tank_without_fish_has_oxygen_without_end_and_an_airless_one_none() -> None:
    calm = {"critical_mg_per_l": 2.0, "density_kg_per_m3": 0.0, "uptake_mg_per_kg_h": 200.0}
    assert math.isinf(water.minutes_to_critical_oxygen(6.5, **calm))
    assert water.minutes_to_critical_oxygen(1.5, **calm) == 0.0


def test_that_the_loss_of_air_is_told_as_a_class() -> None:
    limits = {"alarm_min": 20.0, "hour_min": 60.0}
    told = [water.oxygen_reserve(minutes, **limits) for minutes in (0.0, 19.9, 20.0, 60.0, math.inf)]
    reserve = water.OxygenReserve
    assert told == [
        reserve.MINUTES,
        reserve.MINUTES,
        reserve.UNDER_AN_HOUR,
        reserve.HOURS,
        reserve.HOURS,
    ]


@given(level=st.floats(0.0, 20.0), rise=st.floats(0.0, 5.0))
def test_that_a_biofilm_works_harder_on_more_ammonia_and_never_backwards(level: float, rise: float) -> None:
    film = {"greatest_mg_per_m2_day": 1859.0, "threshold_mg_per_l": 0.07, "half_mg_per_l": 1.93}
    assert (
        0.0 <= nitrification.biofilm_rate(level, **film) <= nitrification.biofilm_rate(level + rise, **film)
    )


def test_that_area_volume_and_capacity_of_a_filter_agree() -> None:
    area = nitrification.biofilter_area_m2(10.0, areal_rate_g_per_m2_day=0.4)
    volume = nitrification.media_volume_l(area, surface_m2_per_m3=300.0)
    back = nitrification.biofilter_capacity_g_per_day(
        volume, surface_m2_per_m3=300.0, areal_rate_g_per_m2_day=0.4
    )
    assert back == pytest.approx(10.0)


@pytest.mark.parametrize("text", ["", "Ca(OH", "CaOH)2", "ca", "Ca()2", "K+", "MgSO4.", "2(", ")2"])
def test_that_a_formula_that_cannot_be_read_is_refused(text: str) -> None:
    with pytest.raises(ValueError, match=r"compound .* cannot be read"):
        compounds.molar_mass(text, atomic_mass=atomic_masses())


def test_that_an_unknown_element_is_named() -> None:
    with pytest.raises(ValueError, match=r"compound XeO3: no atomic mass for Xe"):
        compounds.molar_mass("XeO3", atomic_mass=atomic_masses())


def test_that_a_salt_without_the_element_cannot_be_dosed_for_it() -> None:
    with pytest.raises(ValueError, match=r"Ca in KOH is 0 g/g"):
        compounds.grams_for_element(1.0, formula="KOH", element="Ca", purity=1.0, atomic_mass=atomic_masses())


@given(st.dictionaries(st.sampled_from(["K", "Ca", "N", "O"]), st.integers(1, 9), min_size=1))
def test_that_element_shares_of_a_compound_sum_to_one(atoms: dict[str, int]) -> None:
    formula = "".join(f"{symbol}{count}" for symbol, count in atoms.items())
    shares = [
        compounds.element_share(formula, element=symbol, atomic_mass=atomic_masses()) for symbol in atoms
    ]
    assert sum(shares) == pytest.approx(1.0)
