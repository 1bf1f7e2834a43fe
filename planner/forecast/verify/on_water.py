"""Computations on water: ammonia, oxygen, carbon dioxide, dissolved solids, doses, flow."""

from __future__ import annotations

from typing import Final

from planner.forecast.verify.ledger import Computation, Inputs, Ledger
from planner.science import compounds, schedule, water

_TERMS: Final = 5
_SALT_TERMS: Final = 3
_CHALK: Final = "CaCO3"
_CHALK_EQUIVALENTS: Final = 2


def chalk_g_per_eq(ledger: Ledger) -> float:
    """Mass of calcium carbonate that takes up one equivalent of acid [g/eq]."""
    return compounds.molar_mass(_CHALK, atomic_mass=ledger.atomic_masses()) / _CHALK_EQUIVALENTS


def _ammonium(ledger: Ledger) -> dict[str, float]:
    return {
        "intercept": ledger.coefficient("water/ammonia_pka_intercept"),
        "slope_k": ledger.coefficient("water/ammonia_pka_slope_k"),
    }


def ammonium_pka(inputs: Inputs, ledger: Ledger) -> float:
    """Acidity constant of ammonium."""
    return water.ammonia_pka(inputs.number("temperature_c"), **_ammonium(ledger))


def unionised_share(inputs: Inputs, ledger: Ledger) -> float:
    """Un-ionised share of total ammonia."""
    return water.unionised_ammonia_share(
        inputs.number("ph"), temperature_c=inputs.number("temperature_c"), **_ammonium(ledger)
    )


def unionised_ammonia_n(inputs: Inputs, ledger: Ledger) -> float:
    """Un-ionised ammonia as nitrogen, in the unit of the total."""
    return water.unionised_ammonia_n(
        inputs.number("total_ammonia"),
        ph=inputs.number("ph"),
        temperature_c=inputs.number("temperature_c"),
        **_ammonium(ledger),
    )


def _saturation(temperature_c: float, salinity: float, ledger: Ledger) -> float:
    coefficients = water.OxygenCoefficients(
        temperature_terms=[ledger.coefficient(f"water/oxygen_temperature_{n}") for n in range(_TERMS)],
        salinity_terms=[ledger.coefficient(f"water/oxygen_salinity_{n}") for n in range(_SALT_TERMS)],
    )
    return water.oxygen_saturation(temperature_c, salinity_g_per_kg=salinity, coefficients=coefficients)


def oxygen_saturation(inputs: Inputs, ledger: Ledger) -> float:
    """Oxygen saturation at one atmosphere."""
    return _saturation(inputs.number("temperature_c"), inputs.number("salinity_g_per_kg"), ledger)


def air_pressure(inputs: Inputs, ledger: Ledger) -> float:
    """Air pressure at a height above the sea."""
    return water.pressure_at_altitude(
        inputs.number("altitude_m"),
        lapse_per_m=ledger.coefficient("water/pressure_lapse_per_m"),
        exponent=ledger.coefficient("water/pressure_exponent"),
        sea_level_mmhg=ledger.coefficient("water/sea_level_pressure_mmhg"),
    )


def _at_pressure(temperature_c: float, pressure_mmhg: float, ledger: Ledger) -> float:
    vapour = water.vapour_pressure_mmhg(
        temperature_c,
        constant=ledger.coefficient("water/vapour_pressure_constant"),
        slope_c=ledger.coefficient("water/vapour_pressure_slope_c"),
        offset_c=ledger.coefficient("water/vapour_pressure_offset_c"),
    )
    return water.oxygen_at_pressure(
        _saturation(temperature_c, 0.0, ledger),
        pressure_mmhg=pressure_mmhg,
        vapour_mmhg=vapour,
        sea_level_mmhg=ledger.coefficient("water/sea_level_pressure_mmhg"),
    )


def oxygen_at_altitude(inputs: Inputs, ledger: Ledger) -> float:
    """Oxygen saturation of fresh water at a height above the sea."""
    return _at_pressure(inputs.number("temperature_c"), air_pressure(inputs, ledger), ledger)


def oxygen_at_pressure(inputs: Inputs, ledger: Ledger) -> float:
    """Oxygen saturation of fresh water at an air pressure."""
    return _at_pressure(inputs.number("temperature_c"), inputs.number("pressure_mmhg"), ledger)


def oxygen_gas_mass(inputs: Inputs, ledger: Ledger) -> float:
    """Mass of a volume of oxygen gas."""
    density = ledger.coefficient("water/oxygen_gas_density_mg_per_ml")
    return water.oxygen_mass_from_volume(inputs.number("volume_ml"), density_mg_per_ml=density)


def carbon_dioxide(inputs: Inputs, ledger: Ledger) -> float:
    """Free carbon dioxide from alkalinity and pH."""
    return water.carbon_dioxide(
        inputs.number("alkalinity_mg_per_l"),
        ph=inputs.number("ph"),
        pk1=ledger.coefficient("water/carbonic_pk1"),
        co2_g_per_mol=compounds.molar_mass("CO2", atomic_mass=ledger.atomic_masses()),
        caco3_g_per_eq=chalk_g_per_eq(ledger),
    )


def dissolved_solids(inputs: Inputs, ledger: Ledger) -> float:
    """Dissolved solids that a meter of a scale shows."""
    return water.dissolved_solids(
        inputs.number("conductivity_us_per_cm"),
        meter_factor=ledger.coefficient(f"water/meter_factor_{inputs.text('scale')}"),
    )


def iron_dose(inputs: Inputs, ledger: Ledger) -> float:
    """Product that brings iron to its target."""
    return water.dose_for_level_g(
        ledger.coefficient("water/iron_target_mg_per_l"),
        present_mg_per_l=inputs.number("present_mg_per_l"),
        volume_m3=inputs.number("volume_m3"),
        share=inputs.number("iron_share"),
    )


def iron_doses_a_year(inputs: Inputs, ledger: Ledger) -> float:
    """Doses of iron in a year."""
    return schedule.steady_harvests_per_year(
        interval_days=ledger.coefficient("water/iron_interval_days"),
        days_per_year=inputs.number("days_per_year"),
    )


def share_replaced(inputs: Inputs, ledger: Ledger) -> float:
    """Share of the water that make-up replaces in a day."""
    del ledger
    return water.share_replaced_per_day(
        inputs.number("make_up_l_per_day"), volume_m3=inputs.number("volume_m3")
    )


def retention(inputs: Inputs, ledger: Ledger) -> float:
    """Time in which a flow passes a volume once."""
    del ledger
    return water.hydraulic_retention_min(
        inputs.number("volume_l"), flow_l_per_min=inputs.number("flow_l_per_min")
    )


WATER: Final[dict[str, Computation]] = {
    each.__name__: each
    for each in (
        ammonium_pka,
        unionised_share,
        unionised_ammonia_n,
        oxygen_saturation,
        air_pressure,
        oxygen_at_altitude,
        oxygen_at_pressure,
        oxygen_gas_mass,
        carbon_dioxide,
        dissolved_solids,
        iron_dose,
        iron_doses_a_year,
        share_replaced,
        retention,
    )
}
