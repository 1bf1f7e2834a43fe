"""How a rate answers to temperature and light, for plants and fish alike.

Every response is 1 at its best and falls to 0 outside the range of life, so that a duration or a
growth coefficient quoted at the best conditions keeps its meaning. Must not know species.
"""

from __future__ import annotations

import numpy as np

from planner.science.limits import T, require_above, require_at_least, shaped_like


def cardinal_response(temperature_c: T, *, base_c: float, optimum_c: float, ceiling_c: float) -> T:
    """Share of the best rate at a temperature: 0 at the base, 1 at the optimum, 0 at the ceiling.

    temperature_c [degC], any shape; base_c < optimum_c < ceiling_c [degC]. A beta function with one
    peak and no kink inside the range; 0 outside it. The shape that the form leaves free is set so that the
    longer of its two sides leaves 0 in a straight line: bases are printed as the point where a straight line
    of growth on warmth meets 0, and thermal sums rest on that line. Source: yanhunt1999 (form, from memory).

    >>> cardinal_response(25.0, base_c=5.0, optimum_c=25.0, ceiling_c=35.0)
    1.0
    >>> round(cardinal_response(15.0, base_c=5.0, optimum_c=25.0, ceiling_c=35.0), 3)
    0.707
    >>> cardinal_response(40.0, base_c=5.0, optimum_c=25.0, ceiling_c=35.0)
    0.0
    """
    require_above("optimum temperature", optimum_c, low=base_c, unit="degC")
    require_above("ceiling temperature", ceiling_c, low=optimum_c, unit="degC")
    inside = np.clip(temperature_c, base_c, ceiling_c)
    up, down = optimum_c - base_c, ceiling_c - optimum_c
    longer = max(up, down)
    falling = ((ceiling_c - inside) / down) ** (down / longer)
    rising = ((inside - base_c) / up) ** (up / longer)
    # at the optimum both terms are one; rounding next to it must not lift the share above one
    return shaped_like(temperature_c, np.minimum(falling * rising, 1.0))


def saturating_light(daily_light_mol: T, *, half_light_mol: float, reference_light_mol: float) -> T:
    """Share of the reference rate at a daily light integral, rising and levelling off.

    daily_light_mol [mol/m2/d] >= 0, any shape; half_light_mol [mol/m2/d] above 0: light at which the rate
    is half of its limit; reference_light_mol [mol/m2/d] above 0: light at which book durations hold, where
    the share is 1. Brighter days give more than 1. A rectangular hyperbola, by common practice.

    >>> saturating_light(17.0, half_light_mol=8.0, reference_light_mol=17.0)
    1.0
    >>> round(saturating_light(6.0, half_light_mol=8.0, reference_light_mol=17.0), 3)
    0.63
    """
    require_at_least("daily light", daily_light_mol, low=0.0, unit="mol/m2/d")
    require_above("half-rate light", half_light_mol, low=0.0, unit="mol/m2/d")
    require_above("reference light", reference_light_mol, low=0.0, unit="mol/m2/d")
    light = np.asarray(daily_light_mol, dtype=np.float64)
    at_reference = reference_light_mol / (reference_light_mol + half_light_mol)
    return shaped_like(daily_light_mol, light / (light + half_light_mol) / at_reference)


def light_needed(share: float, *, half_light_mol: float, reference_light_mol: float) -> float:
    """Daily light at which ``saturating_light`` gives a share [mol/m2/d].

    share [1] >= 0 and below the limit of the curve.

    >>> round(light_needed(0.63, half_light_mol=8.0, reference_light_mol=17.0), 2)
    6.0
    """
    require_at_least("share of rate", share, low=0.0)
    require_above("reference light", reference_light_mol, low=0.0, unit="mol/m2/d")
    of_limit = share * reference_light_mol / (reference_light_mol + half_light_mol)
    if of_limit >= 1.0:
        limit = (reference_light_mol + half_light_mol) / reference_light_mol
        raise ValueError(f"share of rate is {share:.6g}; no light lifts it to {limit:.6g}")
    return half_light_mol * of_limit / (1.0 - of_limit)
