"""Formulas against a second way to the same number: public libraries, integrals, definitions of units.

What is checked is that a formula says what it claims to over its whole range, not at one example only.
"""

from __future__ import annotations

import math
from datetime import date, timedelta

import fao56.chap2 as equations
import fao56.chap3 as chapter
import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy import constants, stats
from scipy.integrate import quad, solve_ivp
from scipy.optimize import brentq, minimize_scalar

from planner.forecast.values import Ruler
from planner.science import daylight, degree_days, fish, germination, growth, labour, stock, water
from tests.science.figures import figure

RADIANS_A_HOUR = math.pi / 12.0
MINUTES_A_RADIAN = 24.0 * 60.0 / (2.0 * math.pi)


def sun() -> dict[str, float]:
    return {
        "amplitude_rad": figure("sun_declination_amplitude_rad"),
        "phase_rad": figure("sun_declination_phase_rad"),
    }


# --- sun and evaporation ------------------------------------------------------------------------------------


def height_of_sun(angle: float, *, latitude: float, declination: float) -> float:
    """Return the sine of the sun's height at an hour angle [rad] from noon."""
    return math.sin(latitude) * math.sin(declination) + math.cos(latitude) * math.cos(declination) * math.cos(
        angle
    )


@pytest.mark.parametrize("latitude_deg", [-60.0, -35.0, -14.6, 0.0, 14.6, 36.8, 52.0, 60.0])
@pytest.mark.parametrize("day", [15, 80, 172, 246, 300, 355])
def test_that_radiation_is_the_sum_of_the_suns_height_over_the_day(latitude_deg: float, day: int) -> None:
    """Geometry: the solar constant times the sine of the sun's height, summed by scipy; 1e-6."""
    latitude = math.radians(latitude_deg)
    declination = float(daylight.solar_declination_rad(float(day), **sun()))
    nearness = 1.0 + figure("sun_distance_swing") * math.cos(2.0 * math.pi * day / 365.0)

    def above(angle: float) -> float:
        return max(height_of_sun(angle, latitude=latitude, declination=declination), 0.0)

    area, _ = quad(above, -math.pi, math.pi, limit=400, epsabs=1e-11)
    theirs = figure("solar_constant_mj_per_m2_min") * nearness * MINUTES_A_RADIAN * area
    ours = daylight.extraterrestrial_radiation(
        float(day),
        latitude_deg=latitude_deg,
        distance_swing=figure("sun_distance_swing"),
        solar_constant_mj_per_m2_min=figure("solar_constant_mj_per_m2_min"),
        **sun(),
    )
    assert ours == pytest.approx(theirs, rel=1e-6)


@pytest.mark.parametrize("latitude_deg", [-50.0, -14.6, 14.6, 36.8, 60.0])
@pytest.mark.parametrize("day", [15, 172, 246, 355])
def test_that_the_day_is_as_long_as_the_sun_is_up(latitude_deg: float, day: int) -> None:
    """Geometry: twice the hour angle at which the sun's height is nought, found by scipy; 1e-6."""
    latitude = math.radians(latitude_deg)
    declination = float(daylight.solar_declination_rad(float(day), **sun()))
    rise = brentq(
        lambda angle: height_of_sun(angle, latitude=latitude, declination=declination), 0.0, math.pi
    )
    ours = daylight.daylength_h(float(day), latitude_deg=latitude_deg, **sun())
    assert ours == pytest.approx(2.0 * rise / RADIANS_A_HOUR, rel=1e-6)


@given(
    net=st.floats(0, 25),
    warmth=st.floats(-5, 45),
    wind=st.floats(0, 10),
    actual=st.floats(0.2, 3),
    deficit=st.floats(0, 4),
    slope=st.floats(0.02, 0.5),
)
def test_that_reference_evaporation_is_that_of_the_library(
    net: float, warmth: float, wind: float, actual: float, deficit: float, slope: float
) -> None:
    """Allen, Pereira, Raes, Smith 1998, equation 6, by a public library: the same formula, so to rounding."""
    psychrometric = chapter.eq8(chapter.eq7(0.0))
    theirs = equations.eq6(net, 0.0, warmth, wind, actual + deficit, actual, slope, psychrometric)
    ours = daylight.reference_evaporation(
        net,
        soil_heat_mj=0.0,
        temperature_c=warmth,
        wind_m_per_s=wind,
        vapour_deficit_kpa=deficit,
        slope_kpa_per_c=slope,
        psychrometric_kpa_per_c=psychrometric,
        factors=np.array(
            [figure(f"evaporation_{name}") for name in ("energy_mm_per_mj", "air_factor", "wind_factor")]
        ),
    )
    assert ours == pytest.approx(theirs, rel=1e-9, abs=1e-9)


# --- air and water ------------------------------------------------------------------------------------------


@pytest.mark.parametrize("metres", [0.0, 500.0, 1000.0, 1500.0, 2000.0, 3000.0, 4000.0])
def test_that_pressure_falls_as_in_the_standard_atmosphere(metres: float) -> None:
    """ISO 2533: 288.15 K, 6.5 K/km, 28.9644 g/mol, by the gas law; 0.01 %.

    The two coefficients of the program are held from memory; here they follow from the definition.
    """
    kelvin, lapse, molar = 288.15, 0.0065, 0.0289644
    exponent = constants.g * molar / (constants.R * lapse)
    theirs = constants.atm / constants.torr * (1.0 - lapse * metres / kelvin) ** exponent
    ours = water.pressure_at_altitude(
        metres,
        lapse_per_m=figure("pressure_lapse_per_m"),
        exponent=figure("pressure_exponent"),
        sea_level_mmhg=figure("sea_level_pressure_mmhg"),
    )
    assert ours == pytest.approx(theirs, rel=1e-4)


@pytest.mark.parametrize("warmth", [1.0, 5.0, 10.0, 15.0, 20.0, 25.0, 30.0, 35.0])
def test_that_vapour_pressure_is_that_of_the_irrigation_paper(warmth: float) -> None:
    """Allen, Pereira, Raes, Smith 1998, equation 11, another fit to the same steam tables; 0.5 %."""
    ours = water.vapour_pressure_mmhg(
        warmth,
        constant=figure("vapour_pressure_constant"),
        slope_c=figure("vapour_pressure_slope_c"),
        offset_c=figure("vapour_pressure_offset_c"),
    )
    theirs = chapter.eq11(warmth) * constants.kilo / constants.torr
    assert ours == pytest.approx(theirs, rel=0.005)


def test_that_oxygen_gas_weighs_what_the_gas_law_says() -> None:
    """Ideal gas at 0 °C and one atmosphere, 31.998 g/mol; a real gas is a thousandth denser: 0.2 %."""
    ideal = 31.998 * constants.atm / (constants.R * constants.zero_Celsius) / constants.kilo
    assert figure("oxygen_gas_density_mg_per_ml") == pytest.approx(ideal, rel=0.002)


# --- units --------------------------------------------------------------------------------------------------


def test_that_units_are_those_of_their_definitions() -> None:
    """CODATA and the international yard and pound, by scipy; exact."""
    assert figure("us_gallon_l") == pytest.approx(constants.gallon / constants.liter, rel=1e-12)
    assert figure("fahrenheit_zero") == pytest.approx(
        constants.convert_temperature(0.0, "Celsius", "Fahrenheit"), rel=1e-12
    )
    assert 1.0 / figure("fahrenheit_per_celsius") == pytest.approx(constants.degree_Fahrenheit, rel=1e-12)
    assert figure("sea_level_pressure_mmhg") == pytest.approx(constants.atm / constants.torr, rel=1e-6)


def test_that_american_measures_are_turned_by_their_definitions() -> None:
    """International pound, ounce and inch, US gallon, by scipy; to rounding."""
    assert stock.density_from_pounds_per_gallon(1.0) == pytest.approx(
        constants.lb / constants.gallon, rel=1e-5
    )
    assert labour.seeds_per_gram(8100.0) == pytest.approx(8100.0 * constants.gram / constants.oz, rel=1e-6)
    inches = fish.weight_from_length_table(
        4.0 * constants.inch / constants.centi,
        table_inches=np.array([3.0, 4.0]),
        table_g=np.array([1.0, 2.0]),
    )
    assert inches == pytest.approx(2.0)


def test_that_light_in_moles_is_micromoles_times_seconds() -> None:
    """Prefixes of the SI and seconds in an hour, by scipy; exact."""
    ours = daylight.daily_light_of_lamps(250.0, hours=16.0)
    assert ours == pytest.approx(250.0 * constants.micro * 16.0 * constants.hour, rel=1e-12)


# --- weeks --------------------------------------------------------------------------------------------------


def test_that_weeks_are_named_by_the_international_rule() -> None:
    """ISO 8601: the week that holds the year's first Thursday is week 1; by the C library, for 120 years."""
    ruler = Ruler(start_on=date(1980, 1, 7), weeks=52 * 120)
    for week in range(ruler.weeks):
        start = ruler.week_start(week)
        assert start.weekday() == 0
        assert ruler.week_name(week) == start.strftime("%G-W%V")
        thursday = start + timedelta(days=3)
        first = date(thursday.year, 1, 1)
        assert int(ruler.week_name(week)[-2:]) == (thursday - first).days // 7 + 1


# --- warmth and growth --------------------------------------------------------------------------------------


@given(high=st.floats(-5, 45), fall=st.floats(0, 25), base=st.floats(-2, 16))
def test_that_every_way_to_count_degree_days_lies_between_its_bounds(
    high: float, fall: float, base: float
) -> None:
    """Jensen: a day's area above a base is at least its mean above it and at most its maximum above it."""
    low = high - fall
    day = {"minimum_c": low, "base_c": base}
    least = float(degree_days.degree_days_mean(high, **day))
    sine = float(degree_days.degree_days_sine(high, **day))
    assert least - 1e-9 <= sine <= max(high - base, 0.0) + 1e-9
    clipped = float(degree_days.degree_days_clipped(high, **day))
    assert least - 1e-9 <= clipped
    if low >= base:
        assert sine == pytest.approx(least, abs=1e-9)


@pytest.mark.parametrize("base_c", [1.6, 7.5, 10.4])
def test_that_germination_under_a_wave_is_the_integral_of_its_rate(base_c: float) -> None:
    """Thermal time over a day that swings as a sine, by scipy, against the degree-days of the same day."""
    high, low, thermal = 26.0, 6.0, 100.0
    mean, swing = (high + low) / 2.0, (high - low) / 2.0

    def rate(t: float) -> float:
        warmth = mean + swing * math.sin(2.0 * math.pi * t)
        return float(germination.germination_rate(warmth, base_c=base_c, thermal_time_c_days=thermal))

    area, _ = quad(rate, 0.0, 1.0, limit=400, epsabs=1e-10)
    sine = degree_days.degree_days_sine(high, minimum_c=low, base_c=base_c)
    assert area == pytest.approx(sine / thermal, rel=1e-6)


def test_that_the_logistic_curve_solves_its_equation() -> None:
    """dW/dt = kW(1 - W/A), stepped by scipy from the curve's own start; 1e-6. Its peak is Ak/4."""
    final, rate, middle = 250.0, 0.2, 30.0
    curve = {"final": final, "rate_per_day": rate, "midpoint_day": middle}
    start = float(growth.logistic_mass(0.0, **curve))
    days = np.linspace(0.0, 60.0, 13)
    run = solve_ivp(
        lambda _, mass: rate * mass * (1.0 - mass / final),
        (0.0, 60.0),
        [start],
        t_eval=days,
        rtol=1e-10,
        atol=1e-10,
    )
    assert growth.logistic_mass(days, **curve) == pytest.approx(run.y[0], rel=1e-6)
    step = 1e-4
    steepest = minimize_scalar(
        lambda day: -(growth.logistic_mass(day + step, **curve) - growth.logistic_mass(day, **curve)) / step,
        bounds=(0.0, 60.0),
        method="bounded",
    )
    assert growth.logistic_peak_rate(final=final, rate_per_day=rate) == pytest.approx(-steepest.fun, rel=1e-5)


def test_that_the_expolinear_curve_solves_its_equation() -> None:
    """Goudriaan and Monteith 1990: dW/dt = Cm (1 - e^(-Rm W / Cm)), stepped by scipy; 1e-6."""
    linear, relative, lost = 12.0, 0.25, 20.0
    curve = {"linear_rate": linear, "relative_rate_per_day": relative, "lost_time_days": lost}
    start = float(growth.expolinear_mass(0.0, **curve))
    days = np.linspace(0.0, 60.0, 13)
    run = solve_ivp(
        lambda _, mass: linear * (1.0 - np.exp(-relative * mass / linear)),
        (0.0, 60.0),
        [start],
        t_eval=days,
        rtol=1e-10,
        atol=1e-12,
    )
    assert growth.expolinear_mass(days, **curve) == pytest.approx(run.y[0], rel=1e-6)


def test_that_fish_grow_as_the_root_of_their_weight_grows_evenly() -> None:
    """Iwama and Tautz 1981: d(W^(1/3))/dt = coefficient times warmth, stepped by scipy; 1e-6."""
    coefficient, warmth = 1.0, 11.0
    run = solve_ivp(
        lambda _, weight: 3.0 * weight ** (2.0 / 3.0) * coefficient / 1000.0 * warmth,
        (0.0, 200.0),
        [10.0],
        rtol=1e-10,
        atol=1e-10,
    )
    ours = fish.weight_by_tgc(
        10.0, tgc=coefficient, degree_days=warmth * 200.0, exponent=figure("tgc_exponent")
    )
    assert ours == pytest.approx(run.y[0][-1], rel=1e-6)


# --- samples ------------------------------------------------------------------------------------------------


@given(weights=st.lists(st.floats(1, 2000), min_size=3, max_size=40))
def test_that_a_samples_statistics_are_those_of_a_statistics_library(weights: list[float]) -> None:
    """Mean, standard deviation and half width of the mean at 95 %, by scipy; to rounding."""
    found = stock.sample_statistics(weights)
    assert found.mean == pytest.approx(np.mean(weights))
    assert found.standard_deviation == pytest.approx(np.std(weights, ddof=1), abs=1e-6)
    if found.standard_deviation > 1e-3:
        quantile = float(stats.t.ppf(0.975, len(weights) - 1))
        low, high = stats.t.interval(0.95, len(weights) - 1, loc=np.mean(weights), scale=stats.sem(weights))
        ours = stock.half_width_of_mean(found, t_quantile=quantile)
        assert ours == pytest.approx((high - low) / 2.0, rel=1e-6)


def test_that_the_quantile_of_many_fish_is_the_normal_one() -> None:
    """1.96 is the 97.5 % quantile of the normal distribution, by scipy; to its digits."""
    assert figure("sample_z_quantile") == pytest.approx(stats.norm.ppf(0.975), abs=0.005)
