"""A season plan says what its worth is made of, what each sowing gives, and what a lot more would cost."""

from __future__ import annotations

import dataclasses
from datetime import timedelta

import numpy as np
import pytest

from planner.farm.crops import Target, TargetUnit
from planner.farm.ids import id_from
from planner.forecast.why.ground import Ground
from planner.planning.season_plan.job import solve
from planner.planning.season_plan.options import PlanOptions
from planner.planning.season_plan.tally import Tally
from planner.planning.why_season import line_name, season_whys, sown_name
from tests.farms import MONDAY, RAFT, farm_of, group_of
from tests.planning.why.helpers import all_made


def target_of(crop, amount, unit=TargetUnit.HEADS):
    start = MONDAY + timedelta(weeks=9)
    return Target(
        id=id_from("target", crop, unit.value), crop=crop, amount_per_week=amount, unit=unit, from_on=start
    )


@pytest.fixture(scope="module")
def planned(means):
    farm = farm_of(
        fish_groups=(group_of(),),
        targets=(target_of("lettuce-butterhead", 12.0), target_of("basil", 0.3, TargetUnit.KG)),
        settings=dataclasses.replace(farm_of().settings, plan_weeks=20),
    )
    plan = solve(farm, means.forecaster, PlanOptions(rounds=200))
    forecast = means.forecaster.preview(farm)
    ground = Ground(farm=farm, forecast=forecast, forecaster=means.forecaster)
    return plan, all_made(season_whys(plan, ground))


def test_that_gap_bound_and_worth_are_the_plans_own(planned):
    plan, found = planned
    assert found["plan gap"].value == plan.gap
    assert found["plan worth"].value == plan.objective
    assert found["plan bound"].value == plan.bound
    assert found["plan targets"].value == plan.model.worth
    assert found["plan missed"].value == plan.parts.missed
    assert found["plan wasted"].value == plan.parts.wasted
    assert found["plan short"].value == plan.parts.short.sum()
    assert found["plan idle"].value == plan.parts.idle.sum()
    assert found["plan by-hand"].value == plan.by_hand
    assert found["plan sowings"].value == len(plan.sowings) > 0


def test_that_weeks_are_made_of_their_sowings(planned):
    plan, found = planned
    for week, one in enumerate(plan.weeks):
        for number, line in enumerate(plan.model.lines):
            told = one.lines[number]
            harvest = found[line_name(plan, line, week, "harvest")]
            assert harvest.value == told.harvest
            assert found[line_name(plan, line, week, "wanted")].value == told.wanted
            if told.wanted:
                assert found[line_name(plan, line, week, "meets")].value == told.harvest / told.wanted
            assert bool(harvest.children) == (told.harvest > 1e-9)


def test_that_a_lot_more_or_fewer_costs_what_is_told(planned):
    plan, found = planned
    sowing = plan.sowings[len(plan.sowings) // 2]
    answer = found[sown_name(sowing)]
    assert answer.value == sowing.plants
    columns = plan.model.columns
    column = int(
        np.flatnonzero(
            (columns.crop == plan.model.crops.index(sowing.crop))
            & (columns.ground == sowing.ground)
            & (columns.week == sowing.week)
        )[0]
    )
    tally = Tally(plan.model)
    tally.put(np.asarray(plan.lots))
    before = tally.parts().cost
    for by, name in ((1, "one_lot_more_costs"), (-1, "one_lot_fewer_costs")):
        tally.change(column, by)
        assert answer.input(name).value == pytest.approx(tally.parts().cost - before)
        tally.change(column, -by)


def test_that_nothing_planned_has_nothing_to_ask(means):
    farm = farm_of(beds=(RAFT,))
    plan = solve(farm, means.forecaster, PlanOptions(rounds=1))
    forecast = means.forecaster.preview(farm)
    assert season_whys(plan, Ground(farm=farm, forecast=forecast, forecaster=means.forecaster)) == {}
