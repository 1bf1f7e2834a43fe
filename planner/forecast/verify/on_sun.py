"""Computations on sun, day length, light and evaporation."""

from __future__ import annotations

from typing import Final

import numpy as np

from planner.forecast.verify.ledger import Computation, Inputs, Ledger
from planner.science import daylight

_FACTORS: Final = ("energy_mm_per_mj", "air_factor", "wind_factor")


def _sun(ledger: Ledger) -> dict[str, float]:
    return {
        "amplitude_rad": ledger.coefficient("season/sun_declination_amplitude_rad"),
        "phase_rad": ledger.coefficient("season/sun_declination_phase_rad"),
    }


def sun_above_the_air(inputs: Inputs, ledger: Ledger) -> float:
    """Radiation at the top of the air."""
    return daylight.extraterrestrial_radiation(
        inputs.number("day_of_year"),
        latitude_deg=inputs.number("latitude_deg"),
        distance_swing=ledger.coefficient("season/sun_distance_swing"),
        solar_constant_mj_per_m2_min=ledger.coefficient("season/solar_constant_mj_per_m2_min"),
        **_sun(ledger),
    )


def day_length(inputs: Inputs, ledger: Ledger) -> float:
    """Hours from sunrise to sunset."""
    return daylight.daylength_h(
        inputs.number("day_of_year"), latitude_deg=inputs.number("latitude_deg"), **_sun(ledger)
    )


def sun_by_swing(inputs: Inputs, ledger: Ledger) -> float:
    """Radiation outside from the swing of temperature."""
    return daylight.radiation_from_temperature(
        inputs.number("extraterrestrial_mj"),
        maximum_c=inputs.number("maximum_c"),
        minimum_c=inputs.number("minimum_c"),
        coefficient=ledger.coefficient("season/radiation_temperature_coefficient"),
    )


def reference_evaporation(inputs: Inputs, ledger: Ledger) -> float:
    """Evaporation of reference grass."""
    return daylight.reference_evaporation(
        inputs.number("net_radiation_mj"),
        soil_heat_mj=inputs.number("soil_heat_mj"),
        temperature_c=inputs.number("temperature_c"),
        wind_m_per_s=inputs.number("wind_m_per_s"),
        vapour_deficit_kpa=inputs.number("saturated_kpa") - inputs.number("actual_kpa"),
        slope_kpa_per_c=inputs.number("slope_kpa_per_c"),
        psychrometric_kpa_per_c=inputs.number("psychrometric_kpa_per_c"),
        factors=np.asarray([ledger.coefficient(f"season/evaporation_{name}") for name in _FACTORS]),
    )


def evaporation_by_temperature(inputs: Inputs, ledger: Ledger) -> float:
    """Evaporation of reference grass from temperature alone."""
    return daylight.evaporation_from_temperature(
        inputs.number("extraterrestrial_mj"),
        mean_c=inputs.number("mean_c"),
        maximum_c=inputs.number("maximum_c"),
        minimum_c=inputs.number("minimum_c"),
        coefficient=ledger.coefficient("season/evaporation_temperature_coefficient"),
        offset_c=ledger.coefficient("season/evaporation_temperature_offset_c"),
        mm_per_mj=ledger.coefficient("season/evaporation_energy_mm_per_mj"),
    )


def light_of_lamps(inputs: Inputs, ledger: Ledger) -> float:
    """Daily light of lamps."""
    del ledger
    return daylight.daily_light_of_lamps(inputs.number("ppfd_umol"), hours=inputs.number("hours"))


def lamps_for_light(inputs: Inputs, ledger: Ledger) -> float:
    """Light of lamps for a daily light."""
    del ledger
    return daylight.lamp_light_for(inputs.number("daily_light_mol"), hours=inputs.number("hours"))


SUN: Final[dict[str, Computation]] = {
    each.__name__: each
    for each in (
        sun_above_the_air,
        day_length,
        sun_by_swing,
        reference_evaporation,
        evaporation_by_temperature,
        light_of_lamps,
        lamps_for_light,
    )
}
