"""How quickly a crop goes through its stages on each day, by warmth and by light, under one roof.

Book durations hold at reference conditions: the crop's best temperature and its light target. A
season only ever says how much slower it goes; where warmth or light is not known it says nothing.
"""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date
from functools import lru_cache
from typing import Final

import numpy as np

from planner.catalogue.catalogue import Catalogue, Emergence
from planner.farm.site import Site
from planner.farm.species import Crop
from planner.forecast.climate import daily_series, days_of_year
from planner.forecast.values import Floats
from planner.forecast.warmth import DayValues, drawn_series
from planner.science.daylight import (
    daily_light_under_roof,
    extraterrestrial_radiation,
    radiation_by_clearness,
)
from planner.science.germination import germination_rate
from planner.science.response import cardinal_response, saturating_light

_PERCENT: Final = 100.0
_FULL_RATE: Final = 1.0


@dataclass(frozen=True, slots=True, kw_only=True)
class Surroundings:
    """Where a batch grows: its site, and what reaches its bed and its nursery of the light there.

    `..._light_share` is what a layer above lets through; `..._lamp_mol` what lamps add [mol/m²/d].
    """

    site: int
    bed_light_share: float = 1.0
    bed_lamp_mol: float = 0.0
    nursery_light_share: float = 1.0
    nursery_lamp_mol: float = 0.0


@dataclass(frozen=True, slots=True, kw_only=True)
class LightFigures:
    """Coefficients of light: what radiation holds of it, and how growth answers to it.

    `reading_fade_days` is how long after the last thermometer reading the climate takes to come back [d].
    """

    mol_per_mj: float
    half_rate_mol: float
    clearness: float
    amplitude_rad: float
    phase_rad: float
    distance_swing: float
    solar_constant_mj_per_m2_min: float
    reading_fade_days: float


def light_figures(catalogue: Catalogue) -> LightFigures:
    """Return the coefficients of light as the catalogue has them."""

    def value(name: str) -> float:
        return catalogue.figure(f"coefficient/season/{name}").value

    return LightFigures(
        mol_per_mj=value("light_mol_per_mj"),
        half_rate_mol=value("light_half_rate_mol"),
        clearness=value("clearness_unknown_sky"),
        amplitude_rad=value("sun_declination_amplitude_rad"),
        phase_rad=value("sun_declination_phase_rad"),
        distance_swing=value("sun_distance_swing"),
        solar_constant_mj_per_m2_min=value("solar_constant_mj_per_m2_min"),
        reading_fade_days=value("reading_fade_days"),
    )


@dataclass(frozen=True, slots=True, kw_only=True, eq=False)
class Sky:
    """Warmth and light of one surroundings by day, from `first_day` of the ruler on; None: not known."""

    first_day: int
    days: int
    nursery_c: Floats | None
    bed_c: Floats | None
    nursery_mol: Floats | None
    bed_mol: Floats | None

    @property
    def is_known(self) -> bool:
        """Whether anything at all is known of the climate."""
        return any(
            series is not None for series in (self.nursery_c, self.bed_c, self.nursery_mol, self.bed_mol)
        )


def sky_over(
    site: Site,
    around: Surroundings,
    *,
    start_on: date,
    first_day: int,
    days: int,
    figures: LightFigures,
    air_read: DayValues = (),
) -> Sky:
    """Return warmth and light of a place; `start_on` is the date of `first_day`.

    `air_read` are temperatures read at the beds; the nursery follows them as long as it has no means of
    its own.

    Light outside is what the site's monthly radiation says, else a usual share of what the sun sends
    to that latitude; without either it is not known. The nursery is as warm as the beds unless told.
    """
    bed_c = drawn_series(
        site.air_c, air_read, start_on=start_on, days=days, fade_days=figures.reading_fade_days
    )
    nursery_c = daily_series(site.nursery_c, start_on=start_on, days=days) if site.nursery_c else bed_c
    outside = _radiation(site, start_on=start_on, days=days, figures=figures)
    return Sky(
        first_day=first_day,
        days=days,
        nursery_c=nursery_c,
        bed_c=bed_c,
        nursery_mol=_light(outside, site, around.nursery_light_share, around.nursery_lamp_mol, figures),
        bed_mol=_light(outside, site, around.bed_light_share, around.bed_lamp_mol, figures),
    )


def _radiation(site: Site, *, start_on: date, days: int, figures: LightFigures) -> Floats | None:
    """Return radiation outside by day [MJ/m²/d], None when neither it nor the latitude is known."""
    if site.radiation_mj_per_m2_d:
        return daily_series(site.radiation_mj_per_m2_d, start_on=start_on, days=days, floor=0.0)
    if site.latitude_deg is None:
        return None
    above_the_air = extraterrestrial_radiation(
        (days_of_year(start_on, days) + 1).astype(np.float64),
        latitude_deg=site.latitude_deg,
        amplitude_rad=figures.amplitude_rad,
        phase_rad=figures.phase_rad,
        distance_swing=figures.distance_swing,
        solar_constant_mj_per_m2_min=figures.solar_constant_mj_per_m2_min,
    )
    return radiation_by_clearness(above_the_air, clearness=figures.clearness)


def _light(
    outside: Floats | None, site: Site, share: float, lamp_mol: float, figures: LightFigures
) -> Floats | None:
    if outside is None:
        return None
    sun = daily_light_under_roof(
        outside, mol_per_mj=figures.mol_per_mj, transmission=site.roof_transmission, shade=1.0 - share
    )
    return sun + lamp_mol


@dataclass(frozen=True, slots=True, kw_only=True, eq=False)
class Rates:
    """Reference days gone through on each day of a sky: while germinating, in the nursery, in the bed."""

    germination: Floats
    nursery: Floats
    bed: Floats


def rates_of(
    crop: Crop,
    sky: Sky,
    figures: LightFigures,
    *,
    emergence: Emergence | None = None,
    by_warmth: bool = True,
    by_light: bool = True,
) -> Rates:
    """Return the rates of a crop under a sky; either cause can be left out to tell them apart.

    Germination goes by `emergence_rate`. In nursery and bed a rate is never above that of reference
    conditions.
    """
    full = np.full(sky.days, _FULL_RATE)
    warm_nursery = _warmth(crop, sky.nursery_c) if by_warmth else full
    warm_bed = _warmth(crop, sky.bed_c) if by_warmth else full
    bright_nursery = _brightness(crop, sky.nursery_mol, figures) if by_light else full
    bright_bed = _brightness(crop, sky.bed_mol, figures) if by_light else full
    return Rates(
        germination=_germination(crop, emergence, sky.nursery_c) * full if by_warmth else full,
        nursery=warm_nursery * bright_nursery * full,
        bed=warm_bed * bright_bed * full,
    )


def _warmth(crop: Crop, celsius: Floats | None) -> Floats | float:
    if celsius is None:
        return _FULL_RATE
    return cardinal_response(celsius, base_c=crop.base_c, optimum_c=crop.optimum_c, ceiling_c=crop.ceiling_c)


def _brightness(crop: Crop, mol: Floats | None, figures: LightFigures) -> Floats | float:
    if mol is None:
        return _FULL_RATE
    share = saturating_light(
        mol, half_light_mol=figures.half_rate_mol, reference_light_mol=crop.light_target_mol_per_m2_d
    )
    return np.minimum(share, _FULL_RATE)


def emergence_rate(crop: Crop, table: Emergence | None, celsius: Floats) -> Floats:
    """Return the share of the way to emergence that is made in a day at each warmth [1/d].

    By the crop's table of days where there is one, straight between its nodes and down to nothing at
    the crop's base; else by thermal time up to the best temperature. Above that it is no slower for
    those that come up; fewer do (`stand_factor`).
    """
    if table is not None and table.days:
        nodes = np.asarray(table.days, dtype=np.float64)
        warmth, rates = nodes[:, 0], 1.0 / nodes[:, 1]
        if crop.germination_base_c < warmth[0]:
            warmth = np.concatenate(([crop.germination_base_c], warmth))
            rates = np.concatenate(([0.0], rates))
        found: Floats = np.interp(celsius, warmth, rates)
        return found
    return germination_rate(
        np.minimum(celsius, crop.germination_optimum_c),
        base_c=crop.germination_base_c,
        thermal_time_c_days=crop.germination_thermal_time_c_d,
    )


def _germination(crop: Crop, table: Emergence | None, celsius: Floats | None) -> Floats | float:
    """Return germination against that of the book's days, which hold at one steady temperature."""
    if celsius is None or crop.germination_days <= 0:
        return _FULL_RATE
    return emergence_rate(crop, table, celsius) * crop.germination_days


def stand_factor(crop: Crop, table: Emergence | None, celsius: Floats | None) -> Floats | None:
    """Return the share of a lot's tested germination that comes up at each day's warmth.

    By the crop's table of normal seedlings where there is one; else none is lost up to the best
    temperature, and all at the ceiling. None where the warmth is not known.
    """
    if celsius is None:
        return None
    if table is not None and table.normal_percent:
        nodes = np.asarray(table.normal_percent, dtype=np.float64)
        share = np.interp(celsius, nodes[:, 0], nodes[:, 1]) / nodes[:, 1].max()
    else:
        best, top = crop.germination_optimum_c, crop.germination_ceiling_c
        share = (top - celsius) / (top - best)
    found: Floats = np.clip(share, 0.0, 1.0)
    return found


@lru_cache(maxsize=64)
def emergence_of(catalogue: Catalogue, crop: str) -> Emergence | None:
    """Return the emergence table of a crop, None when there is none."""
    return catalogue.emergence.get(crop)
