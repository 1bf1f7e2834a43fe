"""How the room of a plant tells in its size: light is caught by ground, and neighbours share it.

A canopy of mass X on the ground catches the share 1 - e^(-cX) of the light. Growth that goes by the light
caught, dX/dt = P (1 - e^(-cX)), is the expolinear curve X = ln(1 + u) / c with u growing as e^(cPt): it
starts in step with the number of plants and ends in step with the ground. So plants of one age at two
distances are told from one another by the figures of either, and nothing else is needed. Must not know crops.
"""

from __future__ import annotations

import numpy as np

from planner.science.limits import T, Values, require_above, require_at_least, shaped_like


def size_by_room(density: T, *, own_density: Values, own_mass_kg: Values, closure_m2_per_kg: Values) -> T:
    """Mass of a plant at a distance, against that of one of the same age at its own distance [1].

    density and own_density [plants/m2] above 0; own_mass_kg [kg dry] >= 0 of one plant at its own density;
    closure_m2_per_kg [m2/kg] >= 0, light caught against dry mass on the ground. 1 at its own density and as
    long as canopies are open; falls as plants stand closer, always by less than their number rises.
    Source: vanhenten2003 (light caught), goudriaanmonteith1990 (the curve); both joined by us.

    >>> closed = dict(own_density=25.0, own_mass_kg=0.009, closure_m2_per_kg=18.0)
    >>> [round(size_by_room(density, **closed), 2) for density in (12.5, 25.0, 50.0)]
    [1.67, 1.0, 0.58]
    >>> round(size_by_room(50.0, own_density=25.0, own_mass_kg=1e-6, closure_m2_per_kg=18.0), 3)
    1.0
    """
    ratio, covered = _ratio_and_cover(density, own_density, own_mass_kg, closure_m2_per_kg)
    against = ratio * np.maximum(covered, _BARE)
    return shaped_like(density, np.logaddexp(0.0, np.log(ratio) + _log_expm1(covered)) / against)


def gain_by_room(density: T, *, own_density: Values, own_mass_kg: Values, closure_m2_per_kg: Values) -> T:
    """Daily gain of a plant at a distance, against that at its own distance, at the age of `own_mass_kg` [1].

    As `size_by_room`; it is the gain from that age on while leaves make up for what is picked, so that what
    is picked over a window goes with it. The same as the reciprocal law of yield by density, 1 / (a + b d).

    >>> closed = dict(own_density=4.0, own_mass_kg=0.12, closure_m2_per_kg=18.0)
    >>> [round(gain_by_room(density, **closed), 2) for density in (2.0, 4.0, 8.0)]
    [2.0, 1.0, 0.5]
    """
    ratio, covered = _ratio_and_cover(density, own_density, own_mass_kg, closure_m2_per_kg)
    return shaped_like(density, np.exp(covered - np.logaddexp(0.0, np.log(ratio) + _log_expm1(covered))))


_BARE = 1e-9
"""A cover so thin that plants do not know of each other."""


def _ratio_and_cover(
    density: Values, own_density: Values, own_mass_kg: Values, closure_m2_per_kg: Values
) -> tuple[np.ndarray, np.ndarray]:
    """Return density against the plant's own, and the cover at its own density [1]."""
    require_above("density", density, low=0.0, unit="plants/m2")
    require_above("own density", own_density, low=0.0, unit="plants/m2")
    require_at_least("mass of a plant", own_mass_kg, low=0.0, unit="kg")
    require_at_least("closure of a canopy", closure_m2_per_kg, low=0.0, unit="m2/kg")
    covered = np.asarray(closure_m2_per_kg) * np.asarray(own_density) * np.asarray(own_mass_kg)
    return np.asarray(density) / np.asarray(own_density), np.maximum(covered, _BARE)


def _log_expm1(value: np.ndarray) -> np.ndarray:
    """ln(e^x - 1) without running over for a large x."""
    found: np.ndarray = value + np.log(-np.expm1(-value))
    return found
