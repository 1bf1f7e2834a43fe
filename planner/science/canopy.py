"""A mechanistic lettuce canopy, as an independent check on the growth curves.

Two processes only: photosynthesis driven by radiation, temperature and carbon dioxide, and
maintenance respiration. The forecast does not run on it; it shows what light and warmth do to dry mass.
"""

from __future__ import annotations

import math
from collections.abc import Callable
from dataclasses import dataclass

import numpy as np

from planner.science.limits import FloatArray, Values, require_at_least, require_between

_LOWEST_C, _HIGHEST_C = 0.0, 40.0
"""Air temperatures [degC] over which the carbon dioxide conductance polynomial is used."""
_HALF = 0.5
_RK4_WEIGHT_TOTAL = 6.0


@dataclass(frozen=True, slots=True, kw_only=True)
class LettuceCanopy:
    """Coefficients of the dry-matter equation (source: vanhenten2003)."""

    yield_factor: float
    """Dry mass kept per mass of carbon dioxide fixed [kg/kg]."""
    respiration_per_s: float
    """Maintenance loss at the reference temperature [1/s]."""
    respiration_doubling_per_c: float
    """Exponent of 2 per degree [1/degC]."""
    respiration_offset: float
    """Exponent of 2 at 0 degC, with its sign turned [1]."""
    leaf_closure_m2_per_kg: float
    """How fast the canopy closes with dry mass [m2/kg]."""
    light_use_kg_per_j: float
    """Carbon dioxide fixed per radiation at low light [kg/J]."""
    conductance_quadratic: float
    """[m/s/degC2], taken with a minus sign."""
    conductance_linear: float
    """[m/s/degC]."""
    conductance_constant: float
    """[m/s], taken with a minus sign."""
    co2_compensation_kg_per_m3: float
    """Carbon dioxide at which nothing is fixed [kg/m3]."""


def canopy_photosynthesis(
    dry_mass_kg_per_m2: float,
    *,
    radiation_w_per_m2: float,
    temperature_c: float,
    co2_kg_per_m3: float,
    canopy: LettuceCanopy,
) -> float:
    """Carbon dioxide fixed by the canopy [kg/m2/s].

    dry_mass_kg_per_m2 [kg/m2] >= 0; radiation_w_per_m2 [W/m2] >= 0 outside; temperature_c 0..40 [degC];
    co2_kg_per_m3 [kg/m3] at or above the compensation point. Source: vanhenten2003.
    """
    _check(dry_mass_kg_per_m2, radiation_w_per_m2, temperature_c, co2_kg_per_m3, canopy)
    return _fixed(dry_mass_kg_per_m2, radiation_w_per_m2, temperature_c, co2_kg_per_m3, canopy)


def canopy_growth(
    dry_mass_kg_per_m2: float,
    *,
    radiation_w_per_m2: float,
    temperature_c: float,
    co2_kg_per_m3: float,
    canopy: LettuceCanopy,
) -> float:
    """Change of canopy dry mass [kg/m2/s]: fixed and kept, less respired.

    Arguments and range as in ``canopy_photosynthesis``. Source: vanhenten2003.
    """
    _check(dry_mass_kg_per_m2, radiation_w_per_m2, temperature_c, co2_kg_per_m3, canopy)
    return _gain(dry_mass_kg_per_m2, radiation_w_per_m2, temperature_c, co2_kg_per_m3, canopy)


def runge_kutta_step(slope: Callable[[float], float], value: float, step: float) -> float:
    """One classical fourth-order step for a slope that is steady over the step.

    slope [unit/s] as a function of the value; step [s]. Returns the value at the end of the step.

    >>> round(runge_kutta_step(lambda x: x, 1.0, 0.1), 6)
    1.105171
    """
    first = slope(value)
    second = slope(value + _HALF * step * first)
    third = slope(value + _HALF * step * second)
    fourth = slope(value + step * third)
    return value + step * (first + 2.0 * second + 2.0 * third + fourth) / _RK4_WEIGHT_TOTAL


def canopy_series(
    start_kg_per_m2: float,
    *,
    radiation_w_per_m2: FloatArray,
    temperature_c: FloatArray,
    co2_kg_per_m3: float,
    step_s: float,
    canopy: LettuceCanopy,
) -> FloatArray:
    """Canopy dry mass over equal steps of steady weather [kg/m2].

    radiation_w_per_m2 and temperature_c of shape (step,); step_s [s], at most a few minutes.
    Returns shape (step + 1,), the start included. Source: vanhenten2003.
    """
    _check(start_kg_per_m2, radiation_w_per_m2, temperature_c, co2_kg_per_m3, canopy)
    mass = np.empty(radiation_w_per_m2.size + 1)
    mass[0] = start_kg_per_m2
    for index, (radiation, warmth) in enumerate(zip(radiation_w_per_m2, temperature_c, strict=True)):
        slope = _Slope(float(radiation), float(warmth), co2_kg_per_m3, canopy)
        mass[index + 1] = max(runge_kutta_step(slope, float(mass[index]), step_s), 0.0)
    return mass


@dataclass(frozen=True, slots=True)
class _Slope:
    """Growth as a function of the mass alone, under one step's steady weather."""

    radiation: float
    warmth: float
    co2: float
    canopy: LettuceCanopy

    def __call__(self, dry_mass: float) -> float:
        return _gain(dry_mass, self.radiation, self.warmth, self.co2, self.canopy)


def _check(
    dry_mass: float, radiation: Values, temperature: Values, co2: float, canopy: LettuceCanopy
) -> None:
    require_at_least("dry mass", dry_mass, low=0.0, unit="kg/m2")
    require_at_least("radiation", radiation, low=0.0, unit="W/m2")
    require_between("air temperature", temperature, low=_LOWEST_C, high=_HIGHEST_C, unit="degC")
    require_at_least("carbon dioxide", co2, low=canopy.co2_compensation_kg_per_m3, unit="kg/m3")


def _fixed(dry_mass: float, radiation: float, temperature: float, co2: float, canopy: LettuceCanopy) -> float:
    conductance = (
        -canopy.conductance_quadratic * temperature**2
        + canopy.conductance_linear * temperature
        - canopy.conductance_constant
    )
    by_light = canopy.light_use_kg_per_j * radiation
    by_co2 = max(conductance, 0.0) * (co2 - canopy.co2_compensation_kg_per_m3)
    if by_light + by_co2 <= 0.0:
        return 0.0
    closed = -math.expm1(-canopy.leaf_closure_m2_per_kg * dry_mass)
    return closed * by_light * by_co2 / (by_light + by_co2)


def _gain(dry_mass: float, radiation: float, temperature: float, co2: float, canopy: LettuceCanopy) -> float:
    fixed = _fixed(dry_mass, radiation, temperature, co2, canopy)
    warmth = math.exp2(canopy.respiration_doubling_per_c * temperature - canopy.respiration_offset)
    return canopy.yield_factor * fixed - canopy.respiration_per_s * dry_mass * warmth
