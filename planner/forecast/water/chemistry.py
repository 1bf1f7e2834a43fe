"""Constants of chemistry as the catalogue has them: masses, ammonia, oxygen, buffering by bicarbonate.

Must not know tanks, readings or what is on the shelf.
"""

from __future__ import annotations

import math
import re
from collections.abc import Mapping
from dataclasses import dataclass
from functools import lru_cache
from typing import Final

from planner.catalogue.catalogue import Catalogue
from planner.catalogue.figure import Figure
from planner.forecast.values import Floats
from planner.science.compounds import atoms_in, molar_mass
from planner.science.water import (
    OxygenCoefficients,
    oxygen_at_pressure,
    oxygen_saturation,
    pressure_at_altitude,
    unionised_ammonia_n,
    vapour_pressure_mmhg,
)

_WATER: Final = "coefficient/water/"
_MASSES: Final = "coefficient/atomic_masses/atomic_mass_"
_CARBONATE_EQ: Final = 2
_TEN: Final = 10.0
_SODIUM: Final = re.compile(r"Na(?![a-z])")
_FREE_WATER: Final = re.compile(r"[·*•]")


@dataclass(frozen=True, slots=True, kw_only=True, eq=False)
class Chemistry:
    """Constants of the chemistry of water; `figures` are the rows they came from."""

    atomic_mass: Mapping[str, float]
    ammonia_intercept: float
    ammonia_slope_k: float
    oxygen: OxygenCoefficients
    vapour: Mapping[str, float]
    pressure: Mapping[str, float]
    pk1: float
    figures: Mapping[str, Figure]

    @property
    def caco3_g_per_eq(self) -> float:
        """Mass of calcium carbonate per equivalent [g/eq]."""
        return molar_mass("CaCO3", atomic_mass=self.atomic_mass) / _CARBONATE_EQ

    @property
    def nitrogen_g_per_mol(self) -> float:
        """Mass of a mole of nitrogen [g/mol]."""
        return self.atomic_mass["N"]

    def of(self, *names: str) -> tuple[Figure, ...]:
        """Return the rows whose name begins with one of the words."""
        return tuple(figure for name, figure in self.figures.items() if name.startswith(names))

    def free_ammonia_n(self, tan_mg_per_l: float, *, ph: float, water_c: float) -> float:
        """Return un-ionised ammonia as nitrogen [mg/L] (source: emerson1975)."""
        return unionised_ammonia_n(
            tan_mg_per_l,
            ph=ph,
            temperature_c=water_c,
            intercept=self.ammonia_intercept,
            slope_k=self.ammonia_slope_k,
        )

    def oxygen_saturation(self, water_c: Floats, *, altitude_m: float) -> Floats:
        """Return dissolved oxygen in balance with air [mg/L], fresh water (source: bensonkrause1984).

        water_c 0..40 [degC], altitude_m 0..5000 [m].
        """
        at_sea = oxygen_saturation(water_c, salinity_g_per_kg=0.0, coefficients=self.oxygen)
        return oxygen_at_pressure(
            at_sea,
            pressure_mmhg=pressure_at_altitude(altitude_m, **self.pressure),
            vapour_mmhg=vapour_pressure_mmhg(water_c, **self.vapour),
            sea_level_mmhg=self.pressure["sea_level_mmhg"],
        )


@lru_cache(maxsize=2)
def chemistry_of(catalogue: Catalogue) -> Chemistry:
    """Return the constants as the catalogue has them."""
    rows = {
        path.removeprefix(head): figure
        for head in (_WATER, _MASSES)
        for path, figure in catalogue.figures.items()
        if path.startswith(head)
    }
    value = {name: figure.value for name, figure in rows.items()}
    return Chemistry(
        atomic_mass={name.capitalize(): mass for name, mass in value.items() if name.isalpha()},
        ammonia_intercept=value["ammonia_pka_intercept"],
        ammonia_slope_k=value["ammonia_pka_slope_k"],
        oxygen=OxygenCoefficients(
            temperature_terms=_terms(value, "oxygen_temperature_"),
            salinity_terms=_terms(value, "oxygen_salinity_"),
        ),
        vapour={name: value[f"vapour_pressure_{name}"] for name in ("constant", "slope_c", "offset_c")},
        pressure={
            "lapse_per_m": value["pressure_lapse_per_m"],
            "exponent": value["pressure_exponent"],
            "sea_level_mmhg": value["sea_level_pressure_mmhg"],
        },
        pk1=value["carbonic_pk1"],
        figures=rows,
    )


def _terms(value: Mapping[str, float], head: str) -> tuple[float, ...]:
    """Return numbered coefficients in the order of their numbers."""
    named = sorted(
        (int(name.removeprefix(head)), each) for name, each in value.items() if name.startswith(head)
    )
    return tuple(each for _, each in named)


def dose_for_ph_step_eq_per_l(
    alkalinity_eq_per_l: float, *, ph: float, step: float, pk1: float, carbon_dioxide_used: float
) -> float:
    """Base that lifts pH by a step in water buffered by bicarbonate, before any gas leaves [eq/L].

    alkalinity_eq_per_l [eq/L] >= 0, all of it bicarbonate; ph and pk1 [1]; step [pH] >= 0;
    carbon_dioxide_used [mol/eq]: 1 for a hydroxide, 1/2 for a carbonate, 0 for a bicarbonate. From the
    mass law of the first dissociation (source: textbook arithmetic); pH 5 to 8.3, where it alone counts.

    >>> dose = dict(ph=6.5, step=0.25, pk1=6.352)
    >>> round(1000 * dose_for_ph_step_eq_per_l(0.001, **dose, carbon_dioxide_used=1.0), 4)
    0.2223
    >>> round(1000 * dose_for_ph_step_eq_per_l(0.001, **dose, carbon_dioxide_used=0.0), 4)
    0.7783
    """
    carbon_dioxide = alkalinity_eq_per_l * math.pow(_TEN, pk1 - ph)
    ratio = math.pow(_TEN, step)
    shared = carbon_dioxide + carbon_dioxide_used * ratio * alkalinity_eq_per_l
    if shared <= 0.0:
        return 0.0
    return alkalinity_eq_per_l * carbon_dioxide * (ratio - 1.0) / shared


def readable_atoms(formula: str) -> dict[str, int] | None:
    """Return the atoms of a formula, None when it is no formula.

    >>> readable_atoms("CaCl2·2H2O")["Cl"], readable_atoms("Fe-DTPA")
    (2, None)
    """
    try:
        return atoms_in(_FREE_WATER.sub(".", formula))
    except ValueError:
        return None


def holds_sodium(formula: str) -> bool:
    """Tell whether a formula names sodium.

    >>> holds_sodium("NaHCO3"), holds_sodium("KHCO3")
    (True, False)
    """
    return _SODIUM.search(formula) is not None
