"""Nitrification: oxygen and alkalinity it takes, the surface it needs, the base that makes it good.

Must not know filters, bases on the shelf or readings.
"""

from __future__ import annotations

import numpy as np

from planner.science.limits import (
    T,
    Values,
    require_above,
    require_at_least,
    require_between,
    shaped_like,
)

_L_PER_M3 = 1000.0
_LOWEST_RATE_C, _HIGHEST_RATE_C = 5.0, 35.0


def oxygen_for_nitrification(nitrogen: T, *, oxygen_per_nitrogen: float) -> T:
    """Oxygen taken by nitrifying ammonia nitrogen [unit of nitrogen].

    nitrogen >= 0 [g or g/d]; oxygen_per_nitrogen [g/g]: 4.57 without and 4.18 with cell growth; never mix the
    two sets. Source: ebeling2006.

    >>> round(oxygen_for_nitrification(29.44, oxygen_per_nitrogen=4.57), 1)
    134.5
    """
    require_at_least("ammonia nitrogen", nitrogen, low=0.0, unit="g")
    require_above("oxygen per nitrogen", oxygen_per_nitrogen, low=0.0, unit="g/g")
    return shaped_like(nitrogen, np.asarray(nitrogen) * oxygen_per_nitrogen)


def alkalinity_for_nitrification(nitrogen: T, *, alkalinity_per_nitrogen: float) -> T:
    """Alkalinity taken by nitrifying ammonia nitrogen [unit of nitrogen, as CaCO3].

    nitrogen >= 0 [g or g/d]; alkalinity_per_nitrogen [g CaCO3/g]: 7.14 without, 7.05 with cell growth.
    An upper bound: plants and denitrifiers give part back. Source: ebeling2006.

    >>> round(alkalinity_for_nitrification(6.25, alkalinity_per_nitrogen=7.14), 1)
    44.6
    """
    require_at_least("ammonia nitrogen", nitrogen, low=0.0, unit="g")
    require_above("alkalinity per nitrogen", alkalinity_per_nitrogen, low=0.0, unit="g/g")
    return shaped_like(nitrogen, np.asarray(nitrogen) * alkalinity_per_nitrogen)


def net_acid_eq(feed_kg: T, *, acid_eq_per_kg_feed: Values) -> T:
    """Acid a planted loop makes net of what plants and denitrifiers give back [eq].

    feed_kg [kg] >= 0; acid_eq_per_kg_feed [eq/kg] >= 0, a range to be calibrated from the user's own pH log.
    Source: srac454 (practice), tellbuscher2024 (upper end without plants).

    >>> net_acid_eq(2.0, acid_eq_per_kg_feed=0.75)
    1.5
    """
    require_at_least("feed", feed_kg, low=0.0, unit="kg")
    require_at_least("acid per feed", acid_eq_per_kg_feed, low=0.0, unit="eq/kg")
    return shaped_like(feed_kg, np.asarray(feed_kg) * acid_eq_per_kg_feed)


def alkalinity_to_raise_g(rise_mg_per_l: T, *, volume_m3: float) -> T:
    """Alkalinity that lifts a volume by a rise [g CaCO3]. rise >= 0 [mg CaCO3/L]; volume_m3 [m3] above 0.

    >>> alkalinity_to_raise_g(20.0, volume_m3=110.0)
    2200.0
    """
    require_at_least("alkalinity rise", rise_mg_per_l, low=0.0, unit="mg/L")
    require_above("water volume", volume_m3, low=0.0, unit="m3")
    return shaped_like(rise_mg_per_l, np.asarray(rise_mg_per_l) * volume_m3)


def base_per_equivalent_g(molar_mass_g: float, *, equivalents_per_mol: int) -> float:
    """Mass of a base per equivalent of acid it takes up [g/eq]. equivalents_per_mol [1] at least 1.

    >>> round(base_per_equivalent_g(74.092, equivalents_per_mol=2), 2)
    37.05
    """
    require_above("molar mass", molar_mass_g, low=0.0, unit="g/mol")
    require_at_least("equivalents", equivalents_per_mol, low=1, unit="eq/mol")
    return molar_mass_g / equivalents_per_mol


def base_for_alkalinity_g(
    alkalinity_g: T, *, base_g_per_eq: float, caco3_g_per_eq: float, purity: float = 1.0
) -> T:
    """Base that gives an amount of alkalinity [g].

    alkalinity_g [g CaCO3] >= 0; base_g_per_eq and caco3_g_per_eq [g/eq] above 0; purity [g/g] above 0,
    at most 1. Source: iupac-masses.

    >>> round(base_for_alkalinity_g(100.0, base_g_per_eq=56.105, caco3_g_per_eq=50.0435), 1)
    112.1
    """
    require_at_least("alkalinity", alkalinity_g, low=0.0, unit="g")
    for name, value in (("base equivalent", base_g_per_eq), ("calcium carbonate equivalent", caco3_g_per_eq)):
        require_above(name, value, low=0.0, unit="g/eq")
    require_above("purity", purity, low=0.0)
    require_between("purity", purity, low=0.0, high=1.0)
    return shaped_like(alkalinity_g, np.asarray(alkalinity_g) / caco3_g_per_eq * base_g_per_eq / purity)


def base_for_acid_g(acid_eq: T, *, base_g_per_eq: float, purity: float = 1.0) -> T:
    """Base that takes up an amount of acid [g]. acid_eq [eq] >= 0; base_g_per_eq [g/eq] above 0.

    >>> round(base_for_acid_g(1.5, base_g_per_eq=37.05), 1)
    55.6
    """
    require_at_least("acid", acid_eq, low=0.0, unit="eq")
    require_above("base equivalent", base_g_per_eq, low=0.0, unit="g/eq")
    require_above("purity", purity, low=0.0)
    require_between("purity", purity, low=0.0, high=1.0)
    return shaped_like(acid_eq, np.asarray(acid_eq) * base_g_per_eq / purity)


def biofilter_area_m2(load_g_per_day: T, *, areal_rate_g_per_m2_day: Values) -> T:
    """Biofilm surface that removes an ammonia load [m2].

    load_g_per_day [g/d] >= 0 and areal_rate [g/m2/d] above 0, both as NH3 or both as N. Source: fao589.

    >>> round(biofilter_area_m2(7.5, areal_rate_g_per_m2_day=0.57), 1)
    13.2
    """
    require_at_least("ammonia load", load_g_per_day, low=0.0, unit="g/d")
    require_above("removal rate", areal_rate_g_per_m2_day, low=0.0, unit="g/m2/d")
    return shaped_like(load_g_per_day, np.asarray(load_g_per_day) / areal_rate_g_per_m2_day)


def biofilter_capacity_g_per_day(
    volume_l: T, *, surface_m2_per_m3: Values, areal_rate_g_per_m2_day: Values
) -> T:
    """Ammonia that a volume of media removes [g/d]. volume_l [L] >= 0. Source: fao589.

    >>> round(biofilter_capacity_g_per_day(44.0, surface_m2_per_m3=300.0, areal_rate_g_per_m2_day=0.57), 1)
    7.5
    """
    require_at_least("media volume", volume_l, low=0.0, unit="L")
    require_above("surface of media", surface_m2_per_m3, low=0.0, unit="m2/m3")
    require_above("removal rate", areal_rate_g_per_m2_day, low=0.0, unit="g/m2/d")
    area = np.asarray(volume_l) / _L_PER_M3 * surface_m2_per_m3
    return shaped_like(volume_l, area * areal_rate_g_per_m2_day)


def media_volume_l(area_m2: T, *, surface_m2_per_m3: Values) -> T:
    """Media volume that carries a biofilm surface [L]. surface_m2_per_m3 [m2/m3] above 0. Source: fao589.

    >>> round(media_volume_l(13.16, surface_m2_per_m3=300.0), 1)
    43.9
    """
    require_at_least("biofilm area", area_m2, low=0.0, unit="m2")
    require_above("surface of media", surface_m2_per_m3, low=0.0, unit="m2/m3")
    return shaped_like(area_m2, np.asarray(area_m2) / surface_m2_per_m3 * _L_PER_M3)


def biofilm_rate(
    ammonia_n_mg_per_l: T, *, greatest_mg_per_m2_day: float, threshold_mg_per_l: float, half_mg_per_l: float
) -> T:
    """Ammonia removal of a biofilm against the level in the water [mg N/m2/d].

    greatest x (S - threshold) / (S + half), 0 below the threshold. ammonia_n_mg_per_l >= 0 [mg N/L].
    Source: zhuchen1999 (27.2 degC).

    >>> film = dict(greatest_mg_per_m2_day=1859.0, threshold_mg_per_l=0.07, half_mg_per_l=1.93)
    >>> round(biofilm_rate(1.0, **film))
    590
    """
    require_at_least("ammonia nitrogen", ammonia_n_mg_per_l, low=0.0, unit="mg/L")
    require_above("half-rate level", half_mg_per_l, low=0.0, unit="mg/L")
    level = np.asarray(ammonia_n_mg_per_l, dtype=np.float64)
    above = np.maximum(level - threshold_mg_per_l, 0.0)
    return shaped_like(ammonia_n_mg_per_l, greatest_mg_per_m2_day * above / (level + half_mg_per_l))


def rate_at_temperature(rate: T, *, temperature_c: Values, reference_c: float, change_per_c: float) -> T:
    """A removal rate carried from one temperature to another, in a straight line [unit of rate].

    temperature_c 5..35 [degC]; change_per_c [1/degC]: 0.011 when oxygen limits, 0.043 when ammonia limits, at
    20 degC. Never below 0. Source: zhuchen2002.

    >>> round(rate_at_temperature(0.5, temperature_c=25.0, reference_c=20.0, change_per_c=0.04275), 3)
    0.607
    """
    require_at_least("removal rate", rate, low=0.0, unit="g/m2/d")
    require_between("water temperature", temperature_c, low=_LOWEST_RATE_C, high=_HIGHEST_RATE_C, unit="degC")
    change = 1.0 + change_per_c * (np.asarray(temperature_c) - reference_c)
    return shaped_like(rate, np.asarray(rate) * np.maximum(change, 0.0))
