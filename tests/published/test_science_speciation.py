"""Ammonia, carbon dioxide and bases against a speciation program with its own constants."""

from collections.abc import Callable
from typing import Any

import phreeqpython
import pytest

from planner.science import compounds, nitrification, water
from tests.science.figures import ammonia, atomic_masses, figure

MILLIMOL = 0.001


@pytest.fixture
def solution() -> Callable[[dict[str, Any]], Any]:
    """Make a dilute solution in a fresh run of the program, millimoles a litre."""
    return phreeqpython.PhreeqPython().add_solution


@pytest.mark.parametrize(("ph", "warmth"), [(6.5, 15.0), (7.0, 20.0), (7.5, 25.0), (8.0, 28.0), (9.0, 25.0)])
def test_that_free_ammonia_agrees_with_the_speciation_program(
    solution: Callable[[dict[str, Any]], Any], ph: float, warmth: float
) -> None:
    """PHREEQC (USGS) with its own constant, log K 9.252 at 25 degC; 3 % in dilute water."""
    species = solution({"N(-3)": 0.07, "pH": ph, "temp": warmth}).species
    other = species["NH3"] / (species["NH3"] + species["NH4+"])
    ours = water.unionised_ammonia_share(ph, temperature_c=warmth, **ammonia())
    assert ours == pytest.approx(other, rel=0.03)


@pytest.mark.parametrize(("alkalinity", "ph"), [(50.0, 6.5), (100.0, 7.0), (100.0, 7.5)])
def test_that_carbon_dioxide_agrees_with_the_speciation_program(
    solution: Callable[[dict[str, Any]], Any], alkalinity: float, ph: float
) -> None:
    """PHREEQC (USGS): free CO2 of water of a known alkalinity at 25 degC; 6 %, ions shield each other."""
    caco3_g_per_eq = compounds.molar_mass("CaCO3", atomic_mass=atomic_masses()) / 2.0
    mixed = solution(
        {
            "units": "mmol/l",
            "Alkalinity": alkalinity / caco3_g_per_eq,
            "Na": alkalinity / caco3_g_per_eq,
            "pH": ph,
            "temp": 25.0,
        }
    )
    co2 = compounds.molar_mass("CO2", atomic_mass=atomic_masses())
    other = mixed.species["CO2"] / MILLIMOL * co2
    ours = water.carbon_dioxide(
        alkalinity, ph=ph, pk1=figure("carbonic_pk1"), co2_g_per_mol=co2, caco3_g_per_eq=caco3_g_per_eq
    )
    assert ours == pytest.approx(other, rel=0.06)


@pytest.mark.parametrize(
    ("formula", "equivalents"),
    [("KOH", 1), ("Ca(OH)2", 2), ("K2CO3", 2), ("KHCO3", 1), ("NaHCO3", 1), ("CaO", 2)],
)
def test_that_a_dose_of_base_raises_alkalinity_as_the_program_says(
    solution: Callable[[dict[str, Any]], Any], formula: str, equivalents: int
) -> None:
    """PHREEQC (USGS): the dose that should give 20 mg/L as CaCO3 in a litre of pure water gives it; 1 %."""
    masses = atomic_masses()
    caco3_g_per_eq = compounds.molar_mass("CaCO3", atomic_mass=masses) / 2.0
    molar = compounds.molar_mass(formula, atomic_mass=masses)
    per_eq = nitrification.base_per_equivalent_g(molar, equivalents_per_mol=equivalents)
    rise = nitrification.alkalinity_to_raise_g(20.0, volume_m3=MILLIMOL)
    grams = nitrification.base_for_alkalinity_g(rise, base_g_per_eq=per_eq, caco3_g_per_eq=caco3_g_per_eq)
    dosed = solution({}).add(formula, grams / molar / MILLIMOL)
    assert _alkalinity_eq(dosed) * caco3_g_per_eq / MILLIMOL == pytest.approx(20.0, rel=0.01)


def _alkalinity_eq(dosed: Any) -> float:
    """Alkalinity [eq/L] from the species of water without other weak acids."""
    charges = {"OH-": 1, "HCO3-": 1, "CO3-2": 2, "H+": -1, "CaOH+": 1, "CaHCO3+": 1, "CaCO3": 2}
    charges |= {"NaHCO3": 1, "NaCO3-": 2, "NaOH": 1, "KOH": 1}
    return float(sum(charges.get(name, 0) * amount for name, amount in dosed.species.items()))
