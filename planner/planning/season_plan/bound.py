"""Proves how good any plan can be at most, from the prices that the linear program ends with.

The proof is worked out here and does not hang on the solver being right: whatever the prices are, no
plan that keeps to the rows costs less than the bound made from them.
"""

from __future__ import annotations

import numpy as np

from planner.planning.season_plan.program import Program
from planner.planning.season_plan.values import Floats


def proven_cost(program: Program, prices: Floats) -> float:
    """Return a cost that no plan of a program goes below, from a price for each row.

    Each row is paid for at its price, and each variable then chosen as cheaply as its limits allow
    (weak duality). A price of the wrong sign for a row without that limit is taken as 0.
    """
    payable = np.where(np.isfinite(program.row_lower), prices, np.minimum(prices, 0.0))
    payable = np.where(np.isfinite(program.row_upper), payable, np.maximum(payable, 0.0))
    limits = np.where(payable > 0, program.row_lower, program.row_upper)
    from_rows = float((payable * np.where(payable == 0, 0.0, limits)).sum())
    rows = np.repeat(np.arange(program.row_lower.size), np.diff(program.start))
    paid = np.bincount(program.index, weights=program.value * payable[rows], minlength=program.cost.size)
    reduced = program.cost - paid
    return from_rows + float(np.where(reduced > 0, reduced * program.lower, reduced * program.upper).sum())
