"""Hands a linear program to HiGHS. The only module that knows that solver; it is loaded when first used."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from typing import TYPE_CHECKING, Any, Final

import numpy as np

from planner.planning.season_plan.program import Program
from planner.planning.season_plan.values import Floats, Ints

if TYPE_CHECKING:
    from highspy import Highs

_HALF: Final = 0.5


class SolverError(RuntimeError):
    """The solver gave no answer where there must be one."""


@dataclass(frozen=True, slots=True, kw_only=True, eq=False)
class Relaxed:
    """The best plan if parts of lots could be sown: its variables, its cost, and the price of each row."""

    variables: Floats
    cost: float
    prices: Floats


@dataclass(frozen=True, slots=True, kw_only=True)
class Found:
    """What the exact search has so far: lots of the best plan (None: no new one), and a bound on the cost."""

    lots: tuple[int, ...] | None
    bound: float


def solve_relaxed(program: Program) -> Relaxed:
    """Return the best plan of a program whose sowings need not be whole lots.

    Raises `SolverError` when the solver does not end with the best one.
    """
    import highspy  # noqa: PLC0415 - heavy, and not needed to open a farm

    solver = _loaded(program, whole=False)
    # Interior points are quick on many weeks; the step to a corner keeps most sowings at none.
    solver.setOptionValue("solver", "ipm")
    solver.run()
    if solver.getModelStatus() != highspy.HighsModelStatus.kOptimal:
        raise SolverError(solver.modelStatusToString(solver.getModelStatus()))
    solution = solver.getSolution()
    return Relaxed(
        variables=np.asarray(solution.col_value, dtype=np.float64),
        cost=float(solver.getInfo().objective_function_value),
        prices=np.asarray(solution.row_dual, dtype=np.float64),
    )


def solve_whole(
    program: Program,
    *,
    start: Ints,
    seconds: float,
    tell: Callable[[Found], None],
    stopped: Callable[[], bool],
) -> Found:
    """Look for the best plan in whole lots from a first one, telling of each better plan or bound.

    Ends after `seconds`, when the best is proven, or soon after `stopped` says so; returns the last bound.
    """
    solver = _loaded(program, whole=True)
    solver.setOptionValue("time_limit", float(seconds))
    solver.setOptionValue("threads", 1)
    # Go on until it is proven; a plan that is only nearly the best is no news after the quick search.
    solver.setOptionValue("mip_rel_gap", 0.0)
    _start_from(solver, start)

    def looked(event: Any) -> None:
        if stopped():
            event.interrupt()
        else:
            tell(Found(lots=None, bound=float(event.data_out.mip_dual_bound)))

    def better(event: Any) -> None:
        lots = np.asarray(event.data_out.mip_solution[: program.sowings])
        whole = np.floor(lots + _HALF).astype(np.int64)
        tell(Found(lots=tuple(whole.tolist()), bound=float(event.data_out.mip_dual_bound)))

    solver.cbMipInterrupt += looked
    solver.cbMipImprovingSolution += better
    solver.run()
    return Found(lots=None, bound=float(solver.getInfo().mip_dual_bound))


def _start_from(solver: Highs, start: Ints) -> None:
    """Hand a first plan over; the solver works the other variables out."""
    index = np.arange(start.size, dtype=np.int32)
    solver.setSolution(start.size, index, start.astype(np.float64))


def _loaded(program: Program, *, whole: bool) -> Highs:
    """Return a quiet solver that holds a program, its sowings in whole lots or not."""
    import highspy  # noqa: PLC0415 - heavy, and not needed to open a farm

    lp = highspy.HighsLp()
    lp.num_col_, lp.num_row_ = program.cost.size, program.row_lower.size
    lp.col_cost_, lp.col_lower_, lp.col_upper_ = program.cost, program.lower, program.upper
    lp.row_lower_, lp.row_upper_ = program.row_lower, program.row_upper
    lp.a_matrix_.format_ = highspy.MatrixFormat.kRowwise
    lp.a_matrix_.start_ = program.start.astype(np.int32)
    lp.a_matrix_.index_ = program.index.astype(np.int32)
    lp.a_matrix_.value_ = program.value
    if whole:
        kinds = [highspy.HighsVarType.kInteger] * program.sowings
        lp.integrality_ = kinds + [highspy.HighsVarType.kContinuous] * (program.cost.size - program.sowings)
    solver = _quiet()
    solver.passModel(lp)
    return solver


def _quiet() -> Highs:
    """Return a solver that prints nothing, not even its name."""
    import highspy  # noqa: PLC0415 - heavy, and not needed to open a farm

    class Quiet(highspy.Highs):
        def enableCallbacks(self) -> None:  # noqa: N802 - the solver's own name
            # The first thing a new solver does is to print its name, unless it is told not to here.
            self.setOptionValue("output_flag", False)  # noqa: FBT003
            super().enableCallbacks()  # type: ignore[no-untyped-call]

    return Quiet()  # type: ignore[no-untyped-call]
