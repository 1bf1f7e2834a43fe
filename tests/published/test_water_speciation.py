"""The largest dose of base against a speciation program with its own constants."""

from __future__ import annotations

import phreeqpython
import pytest

from planner.catalogue.loading import shipped_catalogue
from planner.forecast.water.bases import carbon_dioxide_used
from planner.forecast.water.chemistry import chemistry_of, dose_for_ph_step_eq_per_l
from planner.forecast.water.spans import span_of


@pytest.fixture(scope="module")
def book():
    return shipped_catalogue()


@pytest.mark.parametrize("key", ["potassium-hydroxide", "potassium-carbonate", "potassium-bicarbonate"])
@pytest.mark.parametrize(("alkalinity", "ph"), [(50.0, 6.5), (80.0, 6.8), (30.0, 6.2)])
def test_that_the_largest_dose_moves_ph_as_a_speciation_program_says(book, key, alkalinity, ph):
    """PHREEQC (USGS) at 25 °C: a dose for a step of 0.25 moves pH by 0.25; 0.02, ions shield each other."""
    program = phreeqpython.PhreeqPython()
    chemistry, supplement = chemistry_of(book), book.supplements[key]
    step = span_of(book.figure("loop/ph_step_per_day")).likely
    per_l = alkalinity / 1000.0 / chemistry.caco3_g_per_eq
    dose = dose_for_ph_step_eq_per_l(
        per_l, ph=ph, step=step, pk1=chemistry.pk1, carbon_dioxide_used=carbon_dioxide_used(supplement)
    )
    water = program.add_solution(
        {"units": "mmol/l", "Alkalinity": 1000.0 * per_l, "Na": 1000.0 * per_l, "pH": ph, "temp": 25.0}
    )
    per_mol = 2.0 if supplement.formula == "K2CO3" else 1.0
    water.add(supplement.formula, 1000.0 * dose / per_mol)
    assert water.pH == pytest.approx(ph + step, abs=0.02)
