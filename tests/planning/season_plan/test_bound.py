"""The bound holds for every plan, whatever the solver said."""

from __future__ import annotations

import numpy as np
import pytest
from scipy.optimize import linprog
from scipy.sparse import csr_array

from planner.planning.season_plan.bound import proven_cost
from planner.planning.season_plan.model import build_model
from planner.planning.season_plan.options import PlanOptions
from planner.planning.season_plan.program import program_of
from planner.planning.season_plan.solver import solve_relaxed
from planner.planning.season_plan.tally import Tally


@pytest.fixture(scope="module")
def model(season, means):
    return build_model(season, means.forecaster, PlanOptions())


@pytest.fixture(scope="module")
def program(model):
    return program_of(model)


@pytest.fixture(scope="module")
def relaxed(program):
    return solve_relaxed(program)


def random_plan(model, random):
    """Sow here and there whatever fits."""
    tally = Tally(model)
    for column in random.permutation(model.columns.count)[: random.integers(1, 60)].tolist():
        tally.change(column, int(random.integers(0, tally.room_for(column) + 1)))
    return tally


def test_that_the_bound_comes_out_again_from_the_program_written_out_in_full(program, relaxed):
    matrix = csr_array((program.value, program.index, program.start))
    equal = program.row_lower == program.row_upper
    above, below = ~equal & np.isfinite(program.row_upper), ~equal & np.isfinite(program.row_lower)
    found = linprog(
        program.cost,
        A_ub=np.vstack((matrix[above].toarray(), -matrix[below].toarray())),
        b_ub=np.concatenate((program.row_upper[above], -program.row_lower[below])),
        A_eq=matrix[equal].toarray(),
        b_eq=program.row_lower[equal],
        bounds=np.column_stack((program.lower, program.upper)),
        method="highs-ds",
    )
    assert relaxed.cost == pytest.approx(found.fun, rel=1e-7)
    assert proven_cost(program, relaxed.prices) == pytest.approx(found.fun, rel=1e-6)


def test_that_no_plan_costs_less_than_the_bound(model, program, relaxed):
    least = proven_cost(program, relaxed.prices)
    random = np.random.default_rng(1)
    for _ in range(100):
        assert random_plan(model, random).parts().cost >= least


def test_that_any_prices_give_a_bound_that_holds(model, program, relaxed):
    random = np.random.default_rng(2)
    for _ in range(20):
        prices = relaxed.prices * random.uniform(0.0, 2.0, size=relaxed.prices.size)
        assert proven_cost(program, prices) <= relaxed.cost + 1e-6


def test_that_the_program_prices_a_whole_plan_as_the_tally_does(model, program):
    """With lots held at those of a plan, the cheapest way to settle all else costs what the tally says."""
    random = np.random.default_rng(3)
    matrix = csr_array((program.value, program.index, program.start)).toarray()
    equal = program.row_lower == program.row_upper
    ranged = ~equal
    tally = random_plan(model, random)
    bounds = np.column_stack((program.lower, program.upper))
    bounds[: program.sowings] = tally.lots[:, None]
    found = linprog(
        program.cost,
        A_ub=np.vstack((matrix[ranged], -matrix[ranged])),
        b_ub=np.concatenate((program.row_upper[ranged], -program.row_lower[ranged])),
        A_eq=matrix[equal],
        b_eq=program.row_lower[equal],
        bounds=bounds,
        method="highs-ds",
    )
    assert tally.parts().cost == pytest.approx(found.fun, rel=1e-6)
