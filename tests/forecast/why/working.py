"""What tests of answers share: asking of a known farm, going through an answer, working it again."""

from __future__ import annotations

import pytest

from planner.forecast.why.arithmetic import recomputed
from planner.forecast.why.ask import why
from planner.forecast.why.formulas import Formula
from planner.forecast.why.values import Subject
from tests.forecast.sample_farms import known

NO_ARITHMETIC = {
    Formula.STAND_TABLE,
    Formula.LATER_DAYS,
    Formula.MINERALISED,
    Formula.READY,
    Formula.TREND,
    Formula.OXYGEN_HELD,
}


def walk(explanation):
    """Yield an answer and all behind it."""
    yield explanation
    for child in explanation.children:
        yield from walk(child)


def asked(name, **words):
    """Return the answer of a known farm."""
    farm, forecast, forecaster = known(name)
    return why(Subject(**words), farm, forecast, forecaster)


def works_out(found):
    """Check that every formula gives its value from its own inputs and parts.

    Some arrays of a forecast are kept as single-precision numbers.
    """
    for one in walk(found):
        again = recomputed(one)
        if again is None:
            assert one.value is None or one.formula in NO_ARITHMETIC, (one.title, one.formula)
        else:
            assert one.value == pytest.approx(again, rel=1e-7, abs=1e-9), (one.title, one.formula)
