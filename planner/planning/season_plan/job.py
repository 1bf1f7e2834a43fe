"""Makes a season plan step by step, so that a window can show how far it is, and stop it at any step."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import dataclass
from enum import Enum
from typing import Final

import numpy as np

from planner.farm.farm import Farm
from planner.forecast.engine import Forecaster
from planner.planning.season_plan.baseline import rhythm
from planner.planning.season_plan.bound import proven_cost
from planner.planning.season_plan.exact import search_exactly
from planner.planning.season_plan.gathering import gather
from planner.planning.season_plan.local_search import improve
from planner.planning.season_plan.model import build_model
from planner.planning.season_plan.options import PlanOptions
from planner.planning.season_plan.plan import PlanStatus, SeasonPlan, gap_between, plan_of
from planner.planning.season_plan.program import Program, program_of
from planner.planning.season_plan.rounding import make_fit, round_into
from planner.planning.season_plan.solver import solve_relaxed
from planner.planning.season_plan.tally import Tally
from planner.planning.season_plan.values import Floats, Ints, SeasonModel

Clock = Callable[[], float]
"""Seconds that only ever rise; whoever asks for a plan brings them."""

_TOTAL: Final = 100
_READ, _BOUNDED, _SEARCHED = 10, 30, 90
_ROUNDS_WITHOUT_CLOCK: Final = 2000
_STEPS_A_LOOK: Final = 10
_KEPT_BACK: Final = 0.05
_PROVEN: Final = 1e-6
"""Gap below which a plan counts as the best: what the solver itself can tell apart."""


class PlanStep(Enum):
    """What is being done."""

    READING = "reading the season"
    BOUNDING = "proving a bound"
    SEARCHING = "searching"
    EXACT = "searching exactly"
    DONE = "done"


@dataclass(frozen=True, slots=True, kw_only=True)
class PlanProgress:
    """How far it is: `done` of `total`, at what, and the gap to the bound so far (None: none yet)."""

    done: int
    total: int
    label: PlanStep
    gap: float | None


class PlanJob:
    """One making of a plan. Go through `steps`; `plan` is the best so far at any time."""

    def __init__(
        self, farm: Farm, forecaster: Forecaster, options: PlanOptions, *, clock: Clock | None = None
    ) -> None:
        """Take what is asked for; without a clock the search takes `options.rounds`, or a set number."""
        self._farm = farm
        self._forecaster = forecaster
        self._options = options
        self._clock = clock
        self._model: SeasonModel | None = None
        self._best: Ints | None = None
        self._cost = np.inf
        self._least_cost = 0.0
        self._by_hand = 0.0
        self._status = PlanStatus.STOPPED

    @property
    def plan(self) -> SeasonPlan | None:
        """The best plan so far, None before there is any."""
        if self._model is None or self._best is None:
            return None
        return plan_of(
            self._model,
            self._best,
            status=self._status,
            bound=self._model.worth - self._least_cost,
            by_hand=self._by_hand,
        )

    def steps(self) -> Iterator[PlanProgress]:
        """Make the plan; may be left off after any step.

        Raises `FarmFaultError` when the plan does not hold the weeks asked for.
        """
        start = self._now()
        yield self._progress(0, PlanStep.READING)
        model = self._model = build_model(self._farm, self._forecaster, self._options)
        tally = Tally(model)
        empty = _nothing_to_plan(model)
        if empty is not None:
            self._offer(tally)
            self._status, self._least_cost = empty, self._cost
            yield self._progress(_TOTAL, PlanStep.DONE)
            return
        yield self._progress(_READ, PlanStep.BOUNDING)
        program = program_of(model)
        relaxed = solve_relaxed(program)
        self._least_cost = proven_cost(program, relaxed.prices)
        self._begin(tally, relaxed.variables[: program.sowings])
        yield self._progress(_BOUNDED, PlanStep.SEARCHING)
        yield from self._search(tally, start)
        if self._options.exact:
            yield from self._exactly(program)
        self._status = PlanStatus.BEST if self._gap() <= _PROVEN else PlanStatus.GOOD
        yield self._progress(_TOTAL, PlanStep.DONE)

    def _begin(self, tally: Tally, shares: Floats) -> None:
        """Begin with the better of the rounded plan and the rhythm by hand."""
        by_hand = Tally(tally.model)
        by_hand.put(rhythm(tally.model))
        self._by_hand = tally.model.worth - by_hand.parts().cost
        round_into(tally, shares)
        if by_hand.parts().cost < tally.parts().cost:
            tally.put(by_hand.lots)
        self._offer(tally)

    def _search(self, tally: Tally, start: float) -> Iterator[PlanProgress]:
        options = self._options
        most = options.rounds
        if most is None and self._clock is None:
            most = _ROUNDS_WITHOUT_CLOCK
        for step, _ in enumerate(improve(tally, seed=options.seed)):
            if step % _STEPS_A_LOOK == 0:
                gone = self._gone(start)
                share = gone if most is None else step / max(most, 1)
                self._offer(tally)
                if share >= 1.0 or self._gap() <= _PROVEN:
                    break
                span = _SEARCHED - _BOUNDED
                yield self._progress(_BOUNDED + int(share * span), PlanStep.SEARCHING)
        self._offer(tally)
        self._gather()

    def _gone(self, start: float) -> float:
        """Return the share of the time that is gone; a little is kept back to finish in."""
        allowed = self._options.seconds * (1.0 - _KEPT_BACK)
        return max((self._now() - start) / allowed, 0.0) if allowed else 1.0

    def _exactly(self, program: Program) -> Iterator[PlanProgress]:
        assert self._model is not None
        assert self._best is not None
        seconds = self._options.exact_seconds
        for found in search_exactly(program, start=self._best, seconds=seconds):
            if np.isfinite(found.bound):
                self._least_cost = max(self._least_cost, min(found.bound, self._cost))
            if found.lots is not None:
                tally = Tally(self._model)
                tally.put(np.asarray(found.lots, dtype=np.int64))
                make_fit(tally)
                self._offer(tally)
            yield self._progress(_SEARCHED, PlanStep.EXACT)
        self._gather()

    def _gather(self) -> None:
        """Tidy the best plan up."""
        assert self._model is not None
        assert self._best is not None
        tally = Tally(self._model)
        tally.put(self._best)
        gather(tally)
        self._cost, self._best = tally.parts().cost, tally.lots.copy()

    def _offer(self, tally: Tally) -> None:
        """Keep a plan if it is the best so far."""
        cost = tally.parts().cost
        if cost < self._cost:
            self._cost, self._best = cost, tally.lots.copy()

    def _gap(self) -> float:
        assert self._model is not None
        return gap_between(self._model.worth - self._cost, self._model.worth - self._least_cost)

    def _progress(self, done: int, label: PlanStep) -> PlanProgress:
        known = label in {PlanStep.SEARCHING, PlanStep.EXACT, PlanStep.DONE}
        return PlanProgress(done=done, total=_TOTAL, label=label, gap=self._gap() if known else None)

    def _now(self) -> float:
        return 0.0 if self._clock is None else self._clock()


def _nothing_to_plan(model: SeasonModel) -> PlanStatus | None:
    if not model.lines:
        return PlanStatus.NO_TARGETS
    if not model.grounds:
        return PlanStatus.NO_BEDS
    return None if model.columns.count else PlanStatus.NOTHING_GROWS


def solve(
    farm: Farm, forecaster: Forecaster, options: PlanOptions, *, clock: Clock | None = None
) -> SeasonPlan:
    """Return the plan of a farm's season, made in one go; see `PlanJob`."""
    job = PlanJob(farm, forecaster, options, clock=clock)
    for _ in job.steps():
        pass
    plan = job.plan
    assert plan is not None
    return plan
