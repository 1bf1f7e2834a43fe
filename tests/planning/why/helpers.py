"""What all tests of answers about plans ask: that every answer can be made, and its arithmetic done again."""

from __future__ import annotations

import pytest

from planner.forecast.why.arithmetic import recomputed
from planner.forecast.why.formulas import Formula
from planner.paper.reasons import FORMULA_WORDS, note_sentence
from tests.forecast.why.working import walk

NO_ARITHMETIC = {
    Formula.STAND_TABLE,
    Formula.LATER_DAYS,
    Formula.MINERALISED,
    Formula.SEARCHED,
    Formula.PLANTS_COVER,
    Formula.BOUND,
    Formula.CURVE,
    Formula.FORECAST,
    Formula.MAY_FRUITING,
    Formula.HIGH_END,
    Formula.VERDICT,
}


def all_made(whys):
    """Return every answer by name, with the arithmetic of all that lies behind it done again."""
    found = {name: make() for name, make in whys.items()}
    for name, answer in found.items():
        for one in walk(answer):
            assert one.formula in FORMULA_WORDS
            assert all(note_sentence(note) for note in one.notes)
            if one.value is None or one.formula in NO_ARITHMETIC:
                continue
            again = recomputed(one)
            assert again is not None, (name, one.title, one.formula)
            assert again == pytest.approx(one.value, rel=1e-9, abs=1e-9), (name, one.title)
    return found
