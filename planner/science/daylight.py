"""Sun and light: what reaches the top of the air, the roof and the crop, and what water it draws.

Angles of the sun as in FAO paper 56; latitude in degrees, north positive. Must not know places.
"""

from __future__ import annotations

import numpy as np

from planner.science.limits import (
    FloatArray,
    T,
    Values,
    require_above,
    require_at_least,
    require_between,
    shaped_like,
)

_SECONDS_PER_HOUR = 3600.0
_MICRO = 1.0e6
_MINUTES_PER_DAY = 1440.0
_HOURS_PER_DAY = 24.0
_DAYS_PER_YEAR = 365.0
_LAST_DAY = 366
_DEGREES_POLE = 90.0
KELVIN_IN_PENMAN = 273.0
"""The reference equation is defined with 273, not 273.15."""


def solar_declination_rad(day_of_year: T, *, amplitude_rad: float, phase_rad: float) -> T:
    """Declination of the sun [rad]. day_of_year 1..366. Source: fao56 eq. 24.

    >>> round(solar_declination_rad(246.0, amplitude_rad=0.409, phase_rad=1.39), 3)
    0.12
    """
    require_between("day of year", day_of_year, low=1, high=_LAST_DAY)
    return shaped_like(
        day_of_year,
        amplitude_rad * np.sin(2.0 * np.pi / _DAYS_PER_YEAR * np.asarray(day_of_year) - phase_rad),
    )


def sunset_angle_rad(latitude_deg: float, *, declination_rad: T) -> T:
    """Hour angle of sunset [rad]; 0 in polar night, pi in polar day. Source: fao56 eq. 25.

    >>> round(sunset_angle_rad(-20.0, declination_rad=0.120), 3)
    1.527
    """
    require_between("latitude", latitude_deg, low=-_DEGREES_POLE, high=_DEGREES_POLE, unit="deg")
    latitude = np.radians(latitude_deg)
    cosine = -np.tan(latitude) * np.tan(np.asarray(declination_rad))
    return shaped_like(declination_rad, np.arccos(np.clip(cosine, -1.0, 1.0)))


def daylength_h(day_of_year: T, *, latitude_deg: float, amplitude_rad: float, phase_rad: float) -> T:
    """Hours from sunrise to sunset of the sun's middle, no refraction [h]. Source: fao56 eq. 34.

    >>> sun = dict(amplitude_rad=0.409, phase_rad=1.39)
    >>> round(daylength_h(246.0, latitude_deg=-20.0, **sun), 1)
    11.7
    """
    declination = solar_declination_rad(day_of_year, amplitude_rad=amplitude_rad, phase_rad=phase_rad)
    angle = np.asarray(sunset_angle_rad(latitude_deg, declination_rad=declination))
    return shaped_like(day_of_year, _HOURS_PER_DAY / np.pi * angle)


def extraterrestrial_radiation(
    day_of_year: T,
    *,
    latitude_deg: float,
    amplitude_rad: float,
    phase_rad: float,
    distance_swing: float,
    solar_constant_mj_per_m2_min: float,
) -> T:
    """Radiation at the top of the air on a level surface [MJ/m2/d]. day_of_year 1..366. Source: fao56 eq. 21.

    >>> sun = dict(amplitude_rad=0.409, phase_rad=1.39, distance_swing=0.033)
    >>> constant = dict(solar_constant_mj_per_m2_min=0.0820)
    >>> round(extraterrestrial_radiation(246.0, latitude_deg=-20.0, **sun, **constant), 1)
    32.2
    """
    declination = np.asarray(
        solar_declination_rad(day_of_year, amplitude_rad=amplitude_rad, phase_rad=phase_rad)
    )
    angle = np.asarray(sunset_angle_rad(latitude_deg, declination_rad=declination))
    latitude = np.radians(latitude_deg)
    nearness = 1.0 + distance_swing * np.cos(2.0 * np.pi / _DAYS_PER_YEAR * np.asarray(day_of_year))
    height = angle * np.sin(latitude) * np.sin(declination)
    height = height + np.cos(latitude) * np.cos(declination) * np.sin(angle)
    daily = _MINUTES_PER_DAY / np.pi * solar_constant_mj_per_m2_min * nearness * height
    return shaped_like(day_of_year, np.maximum(daily, 0.0))


def radiation_from_temperature(
    extraterrestrial_mj: T, *, maximum_c: Values, minimum_c: Values, coefficient: float
) -> T:
    """Radiation outside from the day's swing of temperature [MJ/m2/d].

    maximum_c >= minimum_c [degC]; coefficient [1/degC^0.5] 0.16 inland, 0.19 by the coast.

    Source: fao56 eq. 50.

    >>> round(radiation_from_temperature(40.6, maximum_c=26.6, minimum_c=14.8, coefficient=0.16), 1)
    22.3
    """
    swing = np.asarray(maximum_c, dtype=np.float64) - minimum_c
    require_at_least("swing of temperature", swing, low=0.0, unit="degC")
    require_at_least("radiation", extraterrestrial_mj, low=0.0, unit="MJ/m2/d")
    return shaped_like(extraterrestrial_mj, coefficient * np.sqrt(swing) * extraterrestrial_mj)


def radiation_by_clearness(extraterrestrial_mj: T, *, clearness: Values) -> T:
    """Radiation outside as a share of that at the top of the air [MJ/m2/d]. clearness 0..1. Source: fao56.

    >>> radiation_by_clearness(40.0, clearness=0.5)
    20.0
    """
    require_at_least("radiation", extraterrestrial_mj, low=0.0, unit="MJ/m2/d")
    require_between("clearness", clearness, low=0.0, high=1.0)
    return shaped_like(extraterrestrial_mj, np.asarray(extraterrestrial_mj) * clearness)


def daily_light_under_roof(
    radiation_mj: T, *, mol_per_mj: float, transmission: Values, shade: Values = 0.0
) -> T:
    """Daily light integral at the crop from radiation outside [mol/m2/d].

    radiation_mj [MJ/m2/d] >= 0; mol_per_mj [mol/MJ] about 2.04; transmission of the roof and shade of a
    layer above, both 0..1.

    >>> round(daily_light_under_roof(20.0, mol_per_mj=2.04, transmission=0.6, shade=0.25), 2)
    18.36
    """
    require_at_least("radiation", radiation_mj, low=0.0, unit="MJ/m2/d")
    require_between("roof transmission", transmission, low=0.0, high=1.0)
    require_between("shade", shade, low=0.0, high=1.0)
    through = np.asarray(transmission) * (1.0 - np.asarray(shade))
    return shaped_like(radiation_mj, np.asarray(radiation_mj) * mol_per_mj * through)


def daily_light_of_lamps(ppfd_umol: T, *, hours: Values) -> T:
    """Daily light integral of a steady light [mol/m2/d]. ppfd [umol/m2/s] >= 0; hours 0..24 [h].

    Source: hortscience53basil.

    >>> daily_light_of_lamps(250.0, hours=16.0)
    14.4
    """
    require_at_least("light of lamps", ppfd_umol, low=0.0, unit="umol/m2/s")
    require_between("hours of light", hours, low=0.0, high=_HOURS_PER_DAY, unit="h")
    return shaped_like(ppfd_umol, np.asarray(ppfd_umol) * hours * _SECONDS_PER_HOUR / _MICRO)


def lamp_light_for(daily_light_mol: T, *, hours: Values) -> T:
    """Steady light that gives a daily light integral in a number of hours [umol/m2/s]. hours above 0, to 24.

    >>> round(lamp_light_for(17.0, hours=14.0), 1)
    337.3
    """
    require_at_least("daily light", daily_light_mol, low=0.0, unit="mol/m2/d")
    require_above("hours of light", hours, low=0.0, unit="h")
    require_between("hours of light", hours, low=0.0, high=_HOURS_PER_DAY, unit="h")
    seconds = np.asarray(hours) * _SECONDS_PER_HOUR
    return shaped_like(daily_light_mol, np.asarray(daily_light_mol) * _MICRO / seconds)


def reference_evaporation(
    net_radiation_mj: T,
    *,
    soil_heat_mj: Values,
    temperature_c: Values,
    wind_m_per_s: Values,
    vapour_deficit_kpa: Values,
    slope_kpa_per_c: Values,
    psychrometric_kpa_per_c: Values,
    factors: FloatArray,
) -> T:
    """Evaporation of reference grass [mm/d]. Source: fao56 eq. 6.

    net_radiation_mj less soil_heat_mj [MJ/m2/d]; wind at 2 m >= 0 [m/s]; vapour_deficit_kpa [kPa] >= 0;
    slope and psychrometric constant [kPa/degC] above 0; factors, shape (3,): 0.408 mm/MJ, 900, 0.34 s/m.

    >>> air = dict(temperature_c=16.9, wind_m_per_s=2.078, vapour_deficit_kpa=1.997 - 1.409)
    >>> water = dict(slope_kpa_per_c=0.122, psychrometric_kpa_per_c=0.0666)
    >>> numbers = dict(soil_heat_mj=0.0, factors=np.array([0.408, 900.0, 0.34]))
    >>> round(reference_evaporation(13.28, **air, **water, **numbers), 1)
    3.9
    """
    require_at_least("wind", wind_m_per_s, low=0.0, unit="m/s")
    require_at_least("vapour pressure deficit", vapour_deficit_kpa, low=0.0, unit="kPa")
    require_above("slope of vapour pressure", slope_kpa_per_c, low=0.0, unit="kPa/degC")
    energy_factor, air_factor, wind_factor = (float(factor) for factor in factors)
    slope, wind = np.asarray(slope_kpa_per_c), np.asarray(wind_m_per_s)
    psychrometric = np.asarray(psychrometric_kpa_per_c)
    energy = energy_factor * slope * (np.asarray(net_radiation_mj) - soil_heat_mj)
    kelvin = np.asarray(temperature_c) + KELVIN_IN_PENMAN
    drying = psychrometric * air_factor / kelvin * wind * vapour_deficit_kpa
    return shaped_like(
        net_radiation_mj, (energy + drying) / (slope + psychrometric * (1.0 + wind_factor * wind))
    )


def evaporation_from_temperature(
    extraterrestrial_mj: T,
    *,
    mean_c: Values,
    maximum_c: Values,
    minimum_c: Values,
    coefficient: float,
    offset_c: float,
    mm_per_mj: float,
) -> T:
    """Evaporation of reference grass from temperature alone [mm/d], never below 0. Source: fao56 eq. 52.

    maximum_c >= minimum_c [degC]; coefficient 0.0023; offset_c 17.8 [degC]; mm_per_mj 0.408.

    >>> day = dict(mean_c=35.0, maximum_c=38.0, minimum_c=28.0)
    >>> rule = dict(coefficient=0.0023, offset_c=17.8, mm_per_mj=0.408)
    >>> round(evaporation_from_temperature(38.937, **day, **rule), 1)
    6.1
    """
    swing = np.asarray(maximum_c, dtype=np.float64) - minimum_c
    require_at_least("swing of temperature", swing, low=0.0, unit="degC")
    warmth = np.maximum(np.asarray(mean_c) + offset_c, 0.0)
    return shaped_like(
        extraterrestrial_mj, coefficient * warmth * np.sqrt(swing) * mm_per_mj * extraterrestrial_mj
    )


def crop_evaporation(reference_mm: T, *, crop_factor: Values) -> T:
    """Water a crop draws: reference evaporation x crop factor [mm/d = L/m2/d]. Source: fao56 table 12.

    >>> crop_evaporation(4.0, crop_factor=1.0)
    4.0
    """
    require_at_least("reference evaporation", reference_mm, low=0.0, unit="mm/d")
    require_at_least("crop factor", crop_factor, low=0.0)
    return shaped_like(reference_mm, np.asarray(reference_mm) * crop_factor)
