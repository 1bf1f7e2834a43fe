"""Chemistry of the water: ammonia, oxygen, carbon dioxide, conductivity, make-up.

Concentrations are mg/L. Must not know tanks, species or readings.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from enum import Enum

import numpy as np

from planner.science.limits import (
    T,
    Values,
    require_above,
    require_at_least,
    require_between,
    shaped_like,
)

KELVIN_AT_0_C = 273.15
_LOWEST_WATER_C, _HIGHEST_AMMONIA_C, _HIGHEST_OXYGEN_C = 0.0, 50.0, 40.0
_HIGHEST_PH = 14.0
_LOWEST_BICARBONATE_PH, _HIGHEST_BICARBONATE_PH = 4.5, 9.0
_LOWEST_METER_FACTOR = 0.4
_HIGHEST_SALINITY = 40.0
_HIGHEST_ALTITUDE_M = 5000.0
_MIN_PER_H = 60.0
_G_PER_KG = 1000.0
_L_PER_M3 = 1000.0


def ammonia_pka(temperature_c: T, *, intercept: float, slope_k: float) -> T:
    """Acidity constant (pKa) of ammonium in fresh water: intercept + slope / kelvin [1].

    temperature_c 0..50 [degC]; intercept [1]; slope_k [K]. Source: emerson1975.

    >>> round(ammonia_pka(25.0, intercept=0.09018, slope_k=2729.92), 4)
    9.2464
    """
    require_between(
        "water temperature", temperature_c, low=_LOWEST_WATER_C, high=_HIGHEST_AMMONIA_C, unit="degC"
    )
    return shaped_like(temperature_c, intercept + slope_k / (np.asarray(temperature_c) + KELVIN_AT_0_C))


def unionised_ammonia_share(ph: T, *, temperature_c: Values, intercept: float, slope_k: float) -> T:
    """Share of total ammonia that is un-ionised [0..1]; rises with pH and temperature.

    ph 0..14; temperature_c 0..50 [degC], fresh water. Source: emerson1975.

    >>> round(100 * unionised_ammonia_share(8.0, temperature_c=20.0, intercept=0.09018, slope_k=2729.92), 2)
    3.81
    """
    require_between("pH", ph, low=0.0, high=_HIGHEST_PH)
    pka = np.asarray(
        ammonia_pka(np.asarray(temperature_c, dtype=np.float64), intercept=intercept, slope_k=slope_k)
    )
    return shaped_like(ph, 1.0 / (1.0 + np.power(10.0, pka - ph)))


def unionised_ammonia_n(
    total_ammonia_n_mg_per_l: T, *, ph: Values, temperature_c: Values, intercept: float, slope_k: float
) -> T:
    """Un-ionised ammonia as nitrogen [mg NH3-N/L]. total_ammonia_n_mg_per_l [mg N/L] >= 0.

    Source: emerson1975.

    >>> level = dict(ph=8.0, temperature_c=24.0, intercept=0.09018, slope_k=2729.92)
    >>> round(unionised_ammonia_n(1.0, **level), 4)
    0.0502
    """
    require_at_least("total ammonia", total_ammonia_n_mg_per_l, low=0.0, unit="mg/L")
    share = unionised_ammonia_share(
        np.asarray(ph, dtype=np.float64), temperature_c=temperature_c, intercept=intercept, slope_k=slope_k
    )
    return shaped_like(total_ammonia_n_mg_per_l, np.asarray(total_ammonia_n_mg_per_l) * share)


@dataclass(frozen=True, slots=True, kw_only=True)
class OxygenCoefficients:
    """Coefficients of oxygen saturation in powers of 1 / kelvin (source: bensonkrause1984)."""

    temperature_terms: Sequence[float]
    """From the constant to the fourth power [ln mg/L, times K to the power]."""
    salinity_terms: Sequence[float]
    """From the constant to the second power, per unit of salinity; subtracted."""


def oxygen_saturation(
    temperature_c: T,
    *,
    salinity_g_per_kg: Values,
    coefficients: OxygenCoefficients,
) -> T:
    """Dissolved oxygen in water in balance with moist air at one atmosphere [mg/L].

    temperature_c 0..40 [degC]; salinity_g_per_kg 0..40 [g/kg]. Source: bensonkrause1984 (APHA form).

    >>> fresh = OxygenCoefficients(
    ...     temperature_terms=(-139.34411, 1.575701e5, -6.642308e7, 1.2438e10, -8.621949e11),
    ...     salinity_terms=(0.017674, -10.754, 2140.7),
    ... )
    >>> round(oxygen_saturation(25.0, salinity_g_per_kg=0.0, coefficients=fresh), 3)
    8.263
    """
    require_between(
        "water temperature", temperature_c, low=_LOWEST_WATER_C, high=_HIGHEST_OXYGEN_C, unit="degC"
    )
    require_between("salinity", salinity_g_per_kg, low=0.0, high=_HIGHEST_SALINITY, unit="g/kg")
    inverse = 1.0 / (np.asarray(temperature_c, dtype=np.float64) + KELVIN_AT_0_C)
    fresh = np.polynomial.polynomial.polyval(inverse, np.asarray(coefficients.temperature_terms))
    salt = np.polynomial.polynomial.polyval(inverse, np.asarray(coefficients.salinity_terms))
    return shaped_like(temperature_c, np.exp(fresh - np.asarray(salinity_g_per_kg) * salt))


def pressure_at_altitude(altitude_m: T, *, lapse_per_m: float, exponent: float, sea_level_mmhg: float) -> T:
    """Air pressure of the standard atmosphere [mmHg].

    altitude_m 0..5000 [m]; lapse_per_m [1/m]; exponent [1]; sea_level_mmhg [mmHg].

    >>> air = dict(lapse_per_m=2.25577e-5, exponent=5.25588, sea_level_mmhg=760.0)
    >>> round(pressure_at_altitude(1000.0, **air), 1)
    674.1
    """
    require_between("altitude", altitude_m, low=0.0, high=_HIGHEST_ALTITUDE_M, unit="m")
    return shaped_like(
        altitude_m, sea_level_mmhg * np.power(1.0 - lapse_per_m * np.asarray(altitude_m), exponent)
    )


def vapour_pressure_mmhg(temperature_c: T, *, constant: float, slope_c: float, offset_c: float) -> T:
    """Vapour pressure over water: 10^(constant - slope / (offset + temperature)) [mmHg].

    temperature_c 0..50 [degC]. Source: usgs-owq.

    >>> round(vapour_pressure_mmhg(20.0, constant=8.10765, slope_c=1750.286, offset_c=235.0), 2)
    17.53
    """
    require_between(
        "water temperature", temperature_c, low=_LOWEST_WATER_C, high=_HIGHEST_AMMONIA_C, unit="degC"
    )
    return shaped_like(
        temperature_c, np.power(10.0, constant - slope_c / (offset_c + np.asarray(temperature_c)))
    )


def oxygen_at_pressure(
    saturation_mg_per_l: T, *, pressure_mmhg: Values, vapour_mmhg: Values, sea_level_mmhg: float
) -> T:
    """Oxygen saturation carried from one atmosphere to another pressure [mg/L].

    pressure_mmhg above vapour_mmhg [mmHg]. Source: usgs-owq.

    >>> pressure = dict(pressure_mmhg=674.1, vapour_mmhg=17.53, sea_level_mmhg=760.0)
    >>> round(oxygen_at_pressure(9.092, **pressure), 2)
    8.04
    """
    require_at_least("oxygen saturation", saturation_mg_per_l, low=0.0, unit="mg/L")
    require_above("air pressure", np.asarray(pressure_mmhg) - vapour_mmhg, low=0.0, unit="mmHg over vapour")
    dry = (np.asarray(pressure_mmhg) - vapour_mmhg) / (sea_level_mmhg - np.asarray(vapour_mmhg))
    return shaped_like(saturation_mg_per_l, np.asarray(saturation_mg_per_l) * dry)


def oxygen_mass_from_volume(volume_ml: T, *, density_mg_per_ml: float) -> T:
    """Mass of oxygen gas from its volume at 0 degC and one atmosphere [mg]. Source: usgs-owq.

    >>> round(oxygen_mass_from_volume(0.415, density_mg_per_ml=1.42905), 3)
    0.593
    """
    require_at_least("oxygen volume", volume_ml, low=0.0, unit="mL")
    return shaped_like(volume_ml, np.asarray(volume_ml) * density_mg_per_ml)


def minutes_to_critical_oxygen(
    oxygen_mg_per_l: T,
    *,
    critical_mg_per_l: Values,
    density_kg_per_m3: Values,
    uptake_mg_per_kg_h: Values,
    other_uptake_mg_per_l_h: Values = 0.0,
) -> T:
    """Minutes until oxygen falls to a critical level with no air at all [min].

    A straight-line bound for ranking risk, not a survival time: show ``oxygen_reserve`` instead.
    Levels [mg/L] >= 0; density [kg/m3] and uptakes >= 0, not all zero. Infinite when nothing breathes.

    >>> still = dict(critical_mg_per_l=2.0, density_kg_per_m3=20.0, uptake_mg_per_kg_h=200.0)
    >>> round(minutes_to_critical_oxygen(6.5, **still), 1)
    67.5
    """
    for name, level in (("oxygen", oxygen_mg_per_l), ("critical oxygen", critical_mg_per_l)):
        require_at_least(name, level, low=0.0, unit="mg/L")
    require_at_least("stocking density", density_kg_per_m3, low=0.0, unit="kg/m3")
    require_at_least("oxygen uptake", uptake_mg_per_kg_h, low=0.0, unit="mg/kg/h")
    fall = np.asarray(density_kg_per_m3) * uptake_mg_per_kg_h / _L_PER_M3 + other_uptake_mg_per_l_h
    reserve = np.maximum(np.asarray(oxygen_mg_per_l) - critical_mg_per_l, 0.0)
    with np.errstate(divide="ignore", invalid="ignore"):
        minutes = np.where(reserve == 0.0, 0.0, _MIN_PER_H * reserve / fall)
    return shaped_like(oxygen_mg_per_l, minutes)


class OxygenReserve(Enum):
    """How much time a loss of air leaves, as a class."""

    MINUTES = "minutes"
    UNDER_AN_HOUR = "under an hour"
    HOURS = "hours"


def oxygen_reserve(minutes: float, *, alarm_min: float, hour_min: float) -> OxygenReserve:
    """Class of a loss-of-air time, the only form of it to show.

    alarm_min and hour_min [min], rising: below the first only an automatic back-up helps.

    >>> oxygen_reserve(15.0, alarm_min=20.0, hour_min=60.0).value
    'minutes'
    """
    require_at_least("time to critical oxygen", minutes, low=0.0, unit="min")
    require_above("hour limit", hour_min, low=alarm_min, unit="min")
    if minutes < alarm_min:
        return OxygenReserve.MINUTES
    return OxygenReserve.UNDER_AN_HOUR if minutes < hour_min else OxygenReserve.HOURS


def carbon_dioxide(
    alkalinity_mg_per_l: T, *, ph: Values, pk1: float, co2_g_per_mol: float, caco3_g_per_eq: float
) -> T:
    """Free carbon dioxide from alkalinity and pH, all alkalinity taken as bicarbonate [mg CO2/L].

    alkalinity_mg_per_l [mg CaCO3/L] >= 0; ph 4.5..9, where the simplification holds.

    >>> round(carbon_dioxide(100.0, ph=7.0, pk1=6.352, co2_g_per_mol=44.01, caco3_g_per_eq=50.04), 1)
    19.8
    """
    require_at_least("alkalinity", alkalinity_mg_per_l, low=0.0, unit="mg/L")
    require_between("pH", ph, low=_LOWEST_BICARBONATE_PH, high=_HIGHEST_BICARBONATE_PH)
    bicarbonate = np.asarray(alkalinity_mg_per_l) / caco3_g_per_eq
    return shaped_like(
        alkalinity_mg_per_l, bicarbonate * np.power(10.0, pk1 - np.asarray(ph)) * co2_g_per_mol
    )


def dissolved_solids(conductivity_us_per_cm: T, *, meter_factor: float) -> T:
    """Total dissolved solids that a meter shows [mg/L].

    conductivity_us_per_cm [uS/cm at 25 degC] >= 0; meter_factor 0.4..1 [mg/L per uS/cm], the meter's
    scale. Source: instrument-manual.

    >>> dissolved_solids(600.0, meter_factor=0.64)
    384.0
    """
    require_at_least("conductivity", conductivity_us_per_cm, low=0.0, unit="uS/cm")
    require_between("meter factor", meter_factor, low=_LOWEST_METER_FACTOR, high=1.0)
    return shaped_like(conductivity_us_per_cm, np.asarray(conductivity_us_per_cm) * meter_factor)


def conductivity(dissolved_solids_mg_per_l: T, *, meter_factor: float) -> T:
    """Conductivity behind a dissolved-solids reading [uS/cm at 25 degC]. Source: instrument-manual.

    >>> conductivity(384.0, meter_factor=0.64)
    600.0
    """
    require_at_least("dissolved solids", dissolved_solids_mg_per_l, low=0.0, unit="mg/L")
    require_between("meter factor", meter_factor, low=_LOWEST_METER_FACTOR, high=1.0)
    return shaped_like(dissolved_solids_mg_per_l, np.asarray(dissolved_solids_mg_per_l) / meter_factor)


def dose_for_level_g(target_mg_per_l: T, *, present_mg_per_l: Values, volume_m3: float, share: float) -> T:
    """Product that lifts a level to a target, e.g. iron by a chelate [g]; 0 if it is there already.

    target and present [mg/L] >= 0; volume_m3 [m3] above 0; share [g element/g product] above 0, at most 1.
    Source: uvi-ph-note for iron.

    >>> round(dose_for_level_g(2.0, present_mg_per_l=0.0, volume_m3=110.0, share=0.10), 6)
    2200.0
    """
    require_at_least("target level", target_mg_per_l, low=0.0, unit="mg/L")
    require_at_least("present level", present_mg_per_l, low=0.0, unit="mg/L")
    require_above("water volume", volume_m3, low=0.0, unit="m3")
    require_above("share in product", share, low=0.0, unit="g/g")
    require_between("share in product", share, low=0.0, high=1.0, unit="g/g")
    missing = np.maximum(np.asarray(target_mg_per_l) - present_mg_per_l, 0.0)
    return shaped_like(target_mg_per_l, missing * volume_m3 / share)


def make_up_elements_g(make_up_l: T, *, concentration_mg_per_l: Values) -> T:
    """Elements that make-up water brings [g]. make_up_l [L] >= 0; concentration [mg/L] >= 0.

    >>> make_up_elements_g(100.0, concentration_mg_per_l=59.5)
    5.95
    """
    require_at_least("make-up water", make_up_l, low=0.0, unit="L")
    require_at_least("concentration in make-up water", concentration_mg_per_l, low=0.0, unit="mg/L")
    return shaped_like(make_up_l, np.asarray(make_up_l) * concentration_mg_per_l / _G_PER_KG)


def share_replaced_per_day(make_up_l_per_day: T, *, volume_m3: float) -> T:
    """Make-up water as a share of the volume [1/d]. volume_m3 [m3] above 0.

    >>> share_replaced_per_day(15.0, volume_m3=1.0)
    0.015
    """
    require_at_least("make-up water", make_up_l_per_day, low=0.0, unit="L/d")
    require_above("water volume", volume_m3, low=0.0, unit="m3")
    return shaped_like(make_up_l_per_day, np.asarray(make_up_l_per_day) / _L_PER_M3 / volume_m3)


def concentration_mg_per_l(amount_g: T, *, volume_m3: float) -> T:
    """Concentration of a dissolved amount [mg/L]. amount_g [g] >= 0; volume_m3 [m3] above 0.

    >>> concentration_mg_per_l(220.0, volume_m3=110.0)
    2.0
    """
    require_at_least("dissolved amount", amount_g, low=0.0, unit="g")
    require_above("water volume", volume_m3, low=0.0, unit="m3")
    return shaped_like(amount_g, np.asarray(amount_g) / volume_m3)


def hydraulic_retention_min(volume_l: T, *, flow_l_per_min: Values) -> T:
    """Time in which a flow passes a volume once [min]. flow_l_per_min [L/min] above 0.

    >>> hydraulic_retention_min(7800.0, flow_l_per_min=100.0)
    78.0
    """
    require_at_least("volume", volume_l, low=0.0, unit="L")
    require_above("flow", flow_l_per_min, low=0.0, unit="L/min")
    return shaped_like(volume_l, np.asarray(volume_l) / flow_l_per_min)
