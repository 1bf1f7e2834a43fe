"""Ammonia, carbon dioxide and bases against a speciation program with its own constants."""

from collections.abc import Callable
from pathlib import Path
from typing import Any

import phreeqpython
import pytest

from planner.science import compounds, nitrification, water
from tests.science.figures import ammonia, atomic_masses, figure, rows

MILLIMOL = 0.001
MASTER_COLUMNS = 5
"""Columns of a line of the program's database that tells the mass of an element in the last."""


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


@pytest.mark.parametrize("warmth", [0.0, 5.0, 10.0, 15.0, 20.0, 25.0, 30.0])
@pytest.mark.parametrize("ph", [6.0, 6.5, 7.0, 7.5, 8.0, 8.5, 9.0, 9.5])
def test_that_free_ammonia_agrees_over_the_whole_grid(
    solution: Callable[[dict[str, Any]], Any], ph: float, warmth: float
) -> None:
    """PHREEQC (USGS): log K 9.252 against 9.246 is 1.3 %, its enthalpy and dilute ions the rest; 3 %."""
    species = solution({"N(-3)": 0.07, "pH": ph, "temp": warmth}).species
    other = species["NH3"] / (species["NH3"] + species["NH4+"])
    ours = water.unionised_ammonia_share(ph, temperature_c=warmth, **ammonia())
    assert ours == pytest.approx(other, rel=0.03)


def test_that_atomic_masses_are_those_of_the_program() -> None:
    """PHREEQC (USGS), database phreeqc.dat: masses of the elements, some to three figures only; 0.1 %."""
    text = (Path(phreeqpython.__file__).parent / "database" / "phreeqc.dat").read_text(encoding="latin-1")
    block = text.split("SOLUTION_MASTER_SPECIES")[1].split("SOLUTION_SPECIES")[0]
    lines = [line.split("#")[0].split() for line in block.splitlines()]
    other = {line[0]: float(line[-1]) for line in lines if len(line) == MASTER_COLUMNS and line[0].isalpha()}
    ours = atomic_masses()
    shared = set(ours) & set(other)
    assert {"C", "Ca", "K", "Mg", "N", "Na", "P", "S", "Fe"} <= shared
    for symbol in shared:
        assert ours[symbol] == pytest.approx(other[symbol], rel=0.001), symbol


@pytest.mark.parametrize(("salt", "scale"), [("KCl", "kcl"), ("NaCl", "nacl")])
@pytest.mark.parametrize("mmol", [1.0, 5.0, 10.0, 20.0])
def test_that_a_meter_shows_the_salt_its_scale_is_for(
    solution: Callable[[dict[str, Any]], Any], salt: str, scale: str, mmol: float
) -> None:
    """PHREEQC (USGS), conductance of salt at 25 degC; one factor for all, so within the makers' spread."""
    row = rows()[f"meter_factor_{scale}"]
    spread = row["high"] / row["value"] - row["low"] / row["value"]
    molar = compounds.molar_mass(salt, atomic_mass=atomic_masses())
    metal = salt.removesuffix("Cl")
    conductance = solution({"units": "mmol/l", metal: mmol, "Cl": mmol, "temp": 25.0}).sc
    shown = water.dissolved_solids(conductance, meter_factor=figure(f"meter_factor_{scale}"))
    assert shown == pytest.approx(mmol * molar, rel=spread)
