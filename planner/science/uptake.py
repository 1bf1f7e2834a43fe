"""What crops draw from the water: nutrients by dry mass and tissue, water by dry mass or yield.

Arrays may run over days and elements. Must not know crops or beds.
"""

from __future__ import annotations

import numpy as np

from planner.science.limits import T, Values, require_above, require_at_least, require_between, shaped_like

_G_PER_KG = 1000.0
_MG_PER_G = 1000.0


def dry_mass_g(fresh_g: T, *, dry_share: Values) -> T:
    """Dry mass of a fresh mass [g]. fresh_g [g] >= 0; dry_share [g/g] 0..1.

    >>> dry_mass_g(150.0, dry_share=0.04)
    6.0
    """
    require_at_least("fresh mass", fresh_g, low=0.0, unit="g")
    require_between("dry share", dry_share, low=0.0, high=1.0, unit="g/g")
    return shaped_like(fresh_g, np.asarray(fresh_g) * dry_share)


def whole_plant_dry_mass_g(picked_dry_g: T, *, picked_share: Values) -> T:
    """Dry mass of whole plants, roots and leavings included, behind what is picked [g].

    picked_dry_g [g] >= 0; picked_share [g picked/g whole plant] above 0, at most 1.

    >>> whole_plant_dry_mass_g(8.8, picked_share=0.88)
    10.0
    """
    require_at_least("picked dry mass", picked_dry_g, low=0.0, unit="g")
    require_above("picked share", picked_share, low=0.0)
    require_between("picked share", picked_share, low=0.0, high=1.0)
    return shaped_like(picked_dry_g, np.asarray(picked_dry_g) / picked_share)


def element_uptake_g(dry_gain_g: T, *, tissue_g_per_g: Values) -> T:
    """Element that a gain of dry mass takes up [g]. dry_gain_g [g] >= 0; tissue_g_per_g [g/g dry] 0..1.

    Source: langenfeld2022 (mass balance).

    >>> round(element_uptake_g(6.0, tissue_g_per_g=0.045), 3)
    0.27
    """
    require_at_least("gain of dry mass", dry_gain_g, low=0.0, unit="g")
    require_between("tissue content", tissue_g_per_g, low=0.0, high=1.0, unit="g/g")
    return shaped_like(dry_gain_g, np.asarray(dry_gain_g) * tissue_g_per_g)


def dry_mass_behind_uptake_g(uptake_g: T, *, tissue_g_per_g: Values) -> T:
    """Dry mass that holds an amount of an element [g]. tissue_g_per_g [g/g dry] above 0.

    >>> round(dry_mass_behind_uptake_g(0.5811, tissue_g_per_g=0.0448), 2)
    12.97
    """
    require_at_least("uptake", uptake_g, low=0.0, unit="g")
    require_above("tissue content", tissue_g_per_g, low=0.0, unit="g/g")
    return shaped_like(uptake_g, np.asarray(uptake_g) / tissue_g_per_g)


def water_for_dry_mass_l(dry_gain_g: T, *, water_use_g_per_l: Values) -> T:
    """Water that a gain of dry mass transpires [L].

    water_use_g_per_l [g dry/L] above 0: 3 in dry, 6 in humid air rich in carbon dioxide.

    Source: langenfeld2022.

    >>> water_for_dry_mass_l(6.0, water_use_g_per_l=3.0)
    2.0
    """
    require_at_least("gain of dry mass", dry_gain_g, low=0.0, unit="g")
    require_above("water use", water_use_g_per_l, low=0.0, unit="g/L")
    return shaped_like(dry_gain_g, np.asarray(dry_gain_g) / water_use_g_per_l)


def balanced_concentration_mg_per_l(tissue_g_per_g: T, *, water_use_g_per_l: Values) -> T:
    """Concentration at which an element comes in with the water as it is built in [mg/L].

    tissue_g_per_g [g/g dry] 0..1; water_use_g_per_l [g dry/L] above 0. Source: langenfeld2022.

    >>> round(balanced_concentration_mg_per_l(0.04, water_use_g_per_l=3.0), 6)
    120.0
    """
    require_between("tissue content", tissue_g_per_g, low=0.0, high=1.0, unit="g/g")
    require_above("water use", water_use_g_per_l, low=0.0, unit="g/L")
    return shaped_like(tissue_g_per_g, np.asarray(tissue_g_per_g) * water_use_g_per_l * _MG_PER_G)


def water_for_yield_l(yield_g: T, *, water_l_per_kg: Values) -> T:
    """Water that a fresh yield draws [L]. yield_g [g] >= 0; water_l_per_kg [L/kg] >= 0. Source: barbosa2015.

    >>> water_for_yield_l(150.0, water_l_per_kg=20.0)
    3.0
    """
    require_at_least("yield", yield_g, low=0.0, unit="g")
    require_at_least("water per yield", water_l_per_kg, low=0.0, unit="L/kg")
    return shaped_like(yield_g, np.asarray(yield_g) / _G_PER_KG * water_l_per_kg)


def removal_g(area_m2: T, *, rate_g_per_m2_day: Values, days: Values) -> T:
    """Element that a planted area removes over days at a steady rate [g]. All >= 0. Source: graberjunge2009.

    >>> removal_g(100.0, rate_g_per_m2_day=0.43, days=100.0)
    4300.0
    """
    require_at_least("growing area", area_m2, low=0.0, unit="m2")
    require_at_least("removal rate", rate_g_per_m2_day, low=0.0, unit="g/m2/d")
    require_at_least("days", days, low=0.0, unit="d")
    return shaped_like(area_m2, np.asarray(area_m2) * rate_g_per_m2_day * days)
