"""Germination, degree-days, light and evaporation against published tables and examples."""

import math

import numpy as np
import pytest

from planner.science import daylight, degree_days, germination, schedule
from tests.science.figures import figure, published_table

FITTED = {
    "lettuce": ((5, 10, 15, 20), 1.6, 55.0),
    "spinach": ((5, 10, 15, 20), -0.2, 117.0),
    "cabbage": ((10, 15, 20, 25), 2.6, 110.0),
    "celery": ((5, 10, 15, 20), 2.1, 133.0),
    "onion": ((5, 10, 15, 20, 25), 2.4, 90.0),
    "parsley": ((10, 15, 20), 0.1, 271.0),
    "tomato": ((10, 15, 20, 25), 7.5, 103.0),
    "pepper": ((15, 20, 25), 10.5, 118.0),
    "cucumber": ((15, 20, 25, 30), 10.4, 59.0),
    "eggplant": ((20, 25, 30), 14.1, 81.0),
    "okra": ((15, 20, 25, 30), 10.7, 149.0),
    "bean_snap": ((15, 20, 25, 30), 6.4, 144.0),
}


def _row(table: str, crop: str) -> dict[float, float]:
    row = next(row for row in published_table(table) if row["crop"] == crop)
    return {
        float(name[1:-1]): float(text)
        for name, text in row.items()
        if name != "crop" and text not in {"NG", "-"}
    }


def _emergence(crop: str, warmth: float) -> float:
    days = _row("emergence_days.csv", crop)
    return germination.emergence_days_from_table(
        warmth, table_c=np.array(list(days)), table_days=np.array(list(days.values()))
    )


def _stand(crop: str, warmth: float) -> float:
    percent = _row("normal_seedlings_percent.csv", crop)
    return germination.stand_share_from_table(
        warmth, table_c=np.array(list(percent)), table_share=np.array(list(percent.values())) / 100.0
    )


def test_that_lettuce_emerges_as_the_thermal_time_says() -> None:
    """Harrington and Minges 1954, fitted: 10 degC gives 6.5 d (0.1), the table 7 (1 d)."""
    found = germination.germination_days(10.0, base_c=1.6, thermal_time_c_days=55.0)
    assert found == pytest.approx(6.5, abs=0.1)
    assert found == pytest.approx(_emergence("lettuce", 10.0), abs=1.0)


def test_that_onion_rates_add_up_over_warm_and_cool_days() -> None:
    """Brewster, equations 4.6 and 4.7: 4 d at 22.5, 16 d at 7.5; two warm days then cool: 10 d; exact."""
    line = {"base_c": 2.5, "thermal_time_c_days": 80.0}
    assert germination.germination_days(22.5, **line) == pytest.approx(4.0)
    assert germination.germination_days(7.5, **line) == pytest.approx(16.0)
    rates = germination.germination_rate(np.array([22.5, 22.5, *[7.5] * 8]), **line)
    assert float(rates.sum()) == pytest.approx(1.0)
    assert float(rates[:-1].sum()) < 1.0


def test_that_the_tables_are_read_at_their_nodes() -> None:
    """Harrington and Minges 1954: tomato at 20 degC, 8 days and 98 %; exact."""
    assert _emergence("tomato", 20.0) == pytest.approx(8.0)
    assert _stand("tomato", 20.0) == pytest.approx(0.98)


def test_that_hot_lettuce_needs_many_seeds() -> None:
    """Harrington and Minges 1954: at 30 degC 3 days but 12 %: 834 seeds for 100 plants; exact."""
    assert _emergence("lettuce", 30.0) == pytest.approx(3.0)
    assert schedule.seeds_to_sow(100, germination=_stand("lettuce", 30.0)) == 834


@pytest.mark.parametrize("crop", sorted(FITTED))
def test_that_fits_of_the_emergence_table_come_out(crop: str) -> None:
    """Harrington and Minges 1954: least squares on rates give base (0.1) and thermal time (1.5 %)."""
    temperatures, base, thermal = FITTED[crop]
    days = _row("emergence_days.csv", crop)
    found = germination.fit_thermal_time(
        np.array(temperatures, dtype=float), days=np.array([days[t] for t in temperatures])
    )
    assert found[0] == pytest.approx(base, abs=0.1)
    assert found[1] == pytest.approx(thermal, rel=0.015)


def test_that_thermal_times_foretell_emergence_within_a_day() -> None:
    """Harrington and Minges 1954: mean miss over all crops from 10 to 25 degC at most 1 day."""
    misses = []
    for crop, (temperatures, base, thermal) in FITTED.items():
        days = _row("emergence_days.csv", crop)
        for warmth in temperatures:
            if 10 <= warmth <= 25:
                found = germination.germination_days(float(warmth), base_c=base, thermal_time_c_days=thermal)
                misses.append(abs(found - days[warmth]))
    assert len(misses) > 30
    assert float(np.mean(misses)) <= 1.0


@pytest.mark.parametrize(
    ("high", "low", "base", "mean", "clipped", "sine", "four"),
    [
        (20, 10, 10, 5, 5, 5, 5),
        (20, 4, 10, 2, 5, 3.626, 3.5),
        (14, 2, 10, 0, 2, 1.017, 1),
        (15, 5, 10, 0, 2.5, 1.592, 1.25),
        (9, 1, 10, 0, 0, 0, 0),
        (12, -4, 0, 4, 6, 4.872, 5.0),
    ],
)
def test_that_ways_to_count_degree_days_differ_as_published(
    high: float, low: float, base: float, mean: float, clipped: float, sine: float, four: float
) -> None:
    """McMaster and Wilhelm 1997 (two readings), OSU EM 9305 (sine), Met Eireann (four cases); 0.001."""
    day = {"minimum_c": float(low), "base_c": float(base)}
    found = [
        degree_days.degree_days_mean(float(high), **day),
        degree_days.degree_days_clipped(float(high), **day),
        degree_days.degree_days_sine(float(high), **day),
        degree_days.degree_days_four_cases(float(high), **day),
    ]
    assert found == pytest.approx([mean, clipped, sine, four], abs=0.001)


def test_that_the_sine_is_the_area_under_the_curve() -> None:
    """Second opinion: the wave of the single-sine way summed by scipy; rounding only."""
    from scipy.integrate import quad

    for high, low, base in ((20.0, 4.0, 10.0), (33.0, 9.0, 10.0), (11.0, -3.0, 7.5)):
        mean, swing = (high + low) / 2.0, (high - low) / 2.0

        def above(t: float, mean: float = mean, swing: float = swing, base: float = base) -> float:
            return max(mean + swing * math.sin(2.0 * math.pi * t) - base, 0.0)

        area, _ = quad(above, 0.0, 1.0, limit=400, epsabs=1e-9)
        assert degree_days.degree_days_sine(high, minimum_c=low, base_c=base) == pytest.approx(area, abs=1e-6)


def test_that_a_cap_cuts_the_extremes() -> None:
    """McMaster and Wilhelm 1997 with an upper limit: base 10, cap 30, 35/20 gives 15; exact."""
    found = degree_days.degree_days_clipped(35.0, minimum_c=20.0, base_c=10.0, cap_c=30.0)
    assert found == pytest.approx(15.0)


def test_that_cucumber_heat_units_fold_back() -> None:
    """Perry and Wehner 1990, degF: 55, 85, 90, 95, 100 give 0, 25, 30, 25, 20; exact."""
    found = degree_days.heat_units_of_maximum(
        np.array([55.0, 85.0, 90.0, 95.0, 100.0]), base=60.0, ceiling=90.0
    )
    assert found.tolist() == [0.0, 25.0, 30.0, 25.0, 20.0]


@pytest.mark.parametrize(
    ("latitude", "day", "radiation", "hours"),
    [
        (-20.0, 246, 32.2, 11.7),
        (0.0, 80, 37.82, 12.00),
        (14.6, 172, 38.22, 12.86),
        (14.6, 355, 28.57, 11.14),
        (36.8, 172, 41.74, 14.52),
        (36.8, 355, 15.50, 9.48),
        (52.0, 15, 7.70, 8.03),
    ],
)
def test_that_sun_and_day_length_are_those_of_the_paper(
    latitude: float, day: int, radiation: float, hours: float
) -> None:
    """FAO irrigation paper 56, example 8 and equations 21 to 34; 0.05 MJ, 0.02 h (0.05 as printed)."""
    sun = {
        "amplitude_rad": figure("sun_declination_amplitude_rad"),
        "phase_rad": figure("sun_declination_phase_rad"),
    }
    top = daylight.extraterrestrial_radiation(
        float(day),
        latitude_deg=latitude,
        distance_swing=figure("sun_distance_swing"),
        solar_constant_mj_per_m2_min=figure("solar_constant_mj_per_m2_min"),
        **sun,
    )
    assert top == pytest.approx(radiation, abs=0.05)
    printed_to_a_tenth = day == 246
    length = daylight.daylength_h(float(day), latitude_deg=latitude, **sun)
    assert length == pytest.approx(hours, abs=0.05 if printed_to_a_tenth else 0.02)


def test_that_evaporation_meets_the_examples_of_the_paper() -> None:
    """FAO irrigation paper 56, examples 17 (5.72), 18 (3.9) and equation 52 (6.1 mm/d); 0.05."""
    factors = np.array(
        [figure(f"evaporation_{name}") for name in ("energy_mm_per_mj", "air_factor", "wind_factor")]
    )
    bangkok = daylight.reference_evaporation(
        14.33,
        soil_heat_mj=0.14,
        temperature_c=30.2,
        wind_m_per_s=2.0,
        vapour_deficit_kpa=4.42 - 2.85,
        slope_kpa_per_c=0.246,
        psychrometric_kpa_per_c=0.0674,
        factors=factors,
    )
    uccle = daylight.reference_evaporation(
        13.28,
        soil_heat_mj=0.0,
        temperature_c=16.9,
        wind_m_per_s=2.078,
        vapour_deficit_kpa=1.997 - 1.409,
        slope_kpa_per_c=0.122,
        psychrometric_kpa_per_c=0.0666,
        factors=factors,
    )
    by_warmth = daylight.evaporation_from_temperature(
        38.937,
        mean_c=35.0,
        maximum_c=38.0,
        minimum_c=28.0,
        coefficient=figure("evaporation_temperature_coefficient"),
        offset_c=figure("evaporation_temperature_offset_c"),
        mm_per_mj=figure("evaporation_energy_mm_per_mj"),
    )
    assert [bangkok, uccle, by_warmth] == pytest.approx([5.72, 3.88, 6.1], abs=0.05)


def test_that_radiation_follows_from_the_swing_of_temperature() -> None:
    """FAO irrigation paper 56, example 15: 40.6 MJ, 14.8 to 26.6 degC, 0.16: 22.3 MJ; 0.05."""
    found = daylight.radiation_from_temperature(
        40.6, maximum_c=26.6, minimum_c=14.8, coefficient=figure("radiation_temperature_coefficient")
    )
    assert found == pytest.approx(22.3, abs=0.05)


def test_that_lamps_and_light_sums_agree() -> None:
    """HortScience 53(4) 496: 250 and 295 umol for 16 h; 17 mol in 14 h wants 337.3; 0.01 and 0.1."""
    assert daylight.daily_light_of_lamps(250.0, hours=16.0) == pytest.approx(14.40, abs=0.01)
    assert daylight.daily_light_of_lamps(295.0, hours=16.0) == pytest.approx(16.99, abs=0.01)
    assert daylight.lamp_light_for(17.0, hours=14.0) == pytest.approx(337.3, abs=0.1)
