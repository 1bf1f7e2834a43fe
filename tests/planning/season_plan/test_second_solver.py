"""The same season written down anew, day by day, and given to solvers of another make: OR-tools.

Nothing of the program of the plan is used here: places are counted by day instead of by spans, uptake by
element instead of by mass. What is read is the season's columns, which other tests hold against the forecast.
"""

from __future__ import annotations

import dataclasses

import numpy as np
import pytest
from ortools.linear_solver import pywraplp

from planner.farm.crops import Phase, Placement
from planner.farm.ids import id_from
from planner.planning.season_plan.job import solve
from planner.planning.season_plan.model import build_model
from planner.planning.season_plan.options import PlanOptions
from planner.planning.season_plan.plan import PlanStatus
from tests.farms import batch_of
from tests.planning.season_plan.conftest import target_of

LOT = 5
SHORT_WEEKS = 14
STAYING = ("LTB-LOCKED", "LTB-EARLY")
BOOK = ("germination_days", "nursery_days", "bed_days", "clearing_days", "bed_survival_share")
SOLVER_GAP = 1e-6
"""What both solvers call solved; costs are crop-weeks, of the order of ten."""


@pytest.fixture(scope="module")
def short(season):
    """The same farm over few weeks and with large lots, so that it can be solved to the end."""
    return dataclasses.replace(
        season,
        settings=dataclasses.replace(season.settings, plan_weeks=SHORT_WEEKS),
        targets=(target_of("lettuce-butterhead", 12.0), target_of("pak-choi", 17.0, from_week=7)),
    )


def trials_of(model):
    """Return a batch of one plant for every column of the season, each with a cell in the nursery."""
    batches, cells = [], []
    nursery = model.nurseries[0].beds[0]
    for column in range(model.columns.count):
        batch = batch_of(
            f"trial {column}",
            crop=model.crops[model.columns.crop[column]],
            sow_on=model.ruler.date_of(int(model.columns.sow_day[column])),
            plants=1,
            bed=model.grounds[model.columns.ground[column]].beds[0],
            **dict.fromkeys(BOOK),
        )
        batches.append(batch)
        cells.append(
            Placement(
                id=id_from("cell", str(column)),
                batch=batch.id,
                phase=Phase.NURSERY,
                bed=nursery,
                unit=1,
                first=1,
                count=1,
            )
        )
    return tuple(batches), tuple(cells)


def rooms_of(farm, forecaster, model):
    """Return by (phase, number of ground or nursery) what is free by day, and the days of every column."""
    stays = tuple(batch for batch in farm.batches if batch.code in STAYING)
    batches, cells = trials_of(model)
    probe = dataclasses.replace(farm, batches=(*stays, *batches), placements=cells)
    table = forecaster.preview(probe).batches
    days = int(table.ends.max()) + 1
    found = {}
    for phase, rooms in ((Phase.BED, model.grounds), (Phase.NURSERY, model.nurseries)):
        for number, room in enumerate(rooms):
            free = np.full(days, room.places if phase is Phase.BED else room.cells)
            for row, batch in enumerate(stays):
                start, end = table.phase_days(row, phase)
                if phase is Phase.NURSERY or batch.bed in room.beds:
                    free[max(start, 0) : max(end, 0)] -= (
                        batch.plants if phase is Phase.BED else table.seeds[row]
                    )
            held = {
                column: table.phase_days(len(stays) + column, phase)
                for column in range(len(batches))
                if phase is Phase.NURSERY or model.columns.ground[column] == number
            }
            found[phase, number] = free, held
    return found


class Written:
    """A season as rows of another solver, by day."""

    def __init__(self, model, stays, *, whole):
        self.solver = pywraplp.Solver.CreateSolver("SCIP" if whole else "GLOP")
        make = self.solver.IntVar if whole else self.solver.NumVar
        count = model.columns.count
        self.lots = [make(0.0, self.solver.infinity(), f"lots {column}") for column in range(count)]
        self.cost = []
        self.rooms(model, stays)
        self.harvests(model)
        self.uptake(model)
        self.solver.Minimize(self.solver.Sum(self.cost))

    def some(self, price):
        """Return a variable of at least nothing that costs so much a unit."""
        made = self.solver.NumVar(0.0, self.solver.infinity(), "")
        self.cost.append(price * made)
        return made

    def rooms(self, model, stays):
        for (kind, group), (free, held) in stays.items():
            per_lot = model.columns.lot * (model.columns.seeds if kind is Phase.NURSERY else 1.0)
            for day, most in enumerate(free.tolist()):
                there = [column for column, (start, end) in held.items() if start <= day < end]
                if there:
                    taken = self.solver.Sum([float(per_lot[j]) * self.lots[j] for j in there])
                    self.solver.Add(taken <= most, f"{kind.value} {group} {day}")

    def harvests(self, model):
        columns = model.columns
        for line in model.lines:
            for week in range(model.weeks):
                given = []
                for column in np.flatnonzero(columns.crop == line.crop).tolist():
                    weeks, shares = columns.picks.of(column)
                    share = float(shares[weeks == week].sum()) * line.per_plant * int(columns.lot[column])
                    if share:
                        given.append(share * self.lots[column])
                missed = self.some(model.weights.missed / line.usual)
                wasted = self.some(model.weights.wasted / line.usual)
                lacking = float(line.wanted[week] - line.fixed[week])
                self.solver.Add(self.solver.Sum(given) + missed - wasted == lacking)

    def uptake(self, model):
        elements, columns = model.elements, model.columns
        for loop, element in np.argwhere(elements.usual > 0).tolist():
            usual = float(elements.usual[loop, element])
            for week in range(model.weeks):
                taken = []
                for column in np.flatnonzero(columns.loop == loop).tolist():
                    weeks, grams = columns.formed.of(column)
                    content = float(elements.content[columns.crop[column], element])
                    grown = float(grams[weeks == week].sum()) * content * int(columns.lot[column])
                    if grown:
                        taken.append(grown * self.lots[column])
                short = self.some(model.weights.short_element / usual)
                idle = self.some(model.weights.idle_element / usual)
                demand = self.solver.Sum(taken) + float(elements.fixed[loop, element, week])
                self.solver.Add(demand - short <= float(elements.high[loop, element, week]))
                self.solver.Add(demand + idle >= float(elements.low[loop, element, week]))

    def least(self):
        """Return the least cost, proven."""
        assert self.solver.Solve() == pywraplp.Solver.OPTIMAL
        return self.solver.Objective().Value()


def test_that_another_linear_solver_finds_the_same_bound(season, means, plan):
    """Weak duality gives a bound that holds; that it is the best there is says the other solver."""
    model = build_model(season, means.forecaster, PlanOptions())
    rooms = rooms_of(season, means.forecaster, model)
    least = Written(model, rooms, whole=False).least()
    first = solve(season, means.forecaster, PlanOptions(rounds=0))
    assert first.model.worth - first.bound == pytest.approx(least, abs=SOLVER_GAP * first.model.worth)
    assert plan.parts.cost >= least - SOLVER_GAP


def test_that_another_exact_solver_finds_no_better_plan(short, means):
    options = PlanOptions(lot_plants=LOT, rounds=200, exact=True, exact_seconds=60.0)
    plan = solve(short, means.forecaster, options)
    rooms = rooms_of(short, means.forecaster, plan.model)
    least = Written(plan.model, rooms, whole=True).least()
    assert plan.status is PlanStatus.BEST
    assert plan.sowings
    assert plan.parts.cost == pytest.approx(least, abs=1e-4 * plan.model.worth)
