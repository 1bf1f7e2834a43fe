"""A plan becomes batches in one step that can be taken back, beside what was planned before."""

from __future__ import annotations

import dataclasses
from datetime import date

import pytest

from planner.farm.changes import applied, with_places
from planner.planning.season_plan.job import solve
from planner.planning.season_plan.options import PlanOptions
from planner.planning.season_plan.plan import PlanStatus
from planner.planning.season_plan.proposal import DifferenceKind, proposal
from tests.planning.season_plan.conftest import target_of


@pytest.fixture(scope="module")
def proposed(plan, season, means):
    return proposal(plan, season, means.forecaster)


def test_that_every_sowing_becomes_a_batch(plan, proposed):
    said = sorted((sowing.crop, sowing.sow_on, sowing.plants) for sowing in plan.sowings)
    assert sorted((batch.crop, batch.sow_on, batch.plants) for batch in proposed.batches) == said
    assert len({batch.code for batch in proposed.batches}) == len(proposed.batches)


def test_that_adopting_can_be_taken_back_whole(season, proposed):
    changes = dataclasses.replace(
        proposed.change_set, changes=with_places(season, proposed.change_set.changes)
    )
    after = applied(season, changes)
    assert after != season
    assert applied(after, changes.turned()) == season


def test_that_the_differences_are_those_of_the_farms(season, proposed):
    after = applied(season, proposed.change_set)
    before_by, after_by = ({batch.id: batch for batch in farm.batches} for farm in (season, after))
    kinds = {kind: [d for d in proposed.differences if d.kind is kind] for kind in DifferenceKind}
    assert {d.after.id for d in kinds[DifferenceKind.ADDED]} == after_by.keys() - before_by.keys()
    assert {d.before.id for d in kinds[DifferenceKind.REMOVED]} == before_by.keys() - after_by.keys()
    changed = {id_ for id_ in before_by.keys() & after_by.keys() if before_by[id_] != after_by[id_]}
    assert {d.after.id for d in kinds[DifferenceKind.CHANGED]} == changed
    assert len(kinds[DifferenceKind.ADDED]) + len(changed) + proposed.unchanged == len(proposed.batches)


def test_that_no_plant_is_without_its_places(season, proposed):
    held = {}
    for placement in proposed.placements:
        if placement.phase.value == "bed":
            held[placement.batch] = held.get(placement.batch, 0) + placement.count
    assert held == {batch.id: batch.plants for batch in proposed.batches}


def test_that_the_same_plan_on_the_adopted_farm_changes_nothing(season, means, proposed):
    after = applied(season, proposed.change_set)
    plan = solve(after, means.forecaster, PlanOptions(rounds=300))
    again = proposal(plan, after, means.forecaster)
    assert again.differences == ()
    assert again.change_set.changes == ()
    assert again.unchanged == len(proposed.batches)


def test_that_where_nothing_can_be_planned_todays_batches_stay(season, means):
    late = dataclasses.replace(season.batches[2], sow_on=date(2027, 6, 22))
    farm = dataclasses.replace(season, batches=(*season.batches[:2], late))
    plan = solve(farm, means.forecaster, PlanOptions(from_on=date(2027, 6, 21), rounds=5))
    assert plan.status is PlanStatus.NOTHING_GROWS
    assert proposal(plan, farm, means.forecaster).change_set.changes == ()


def test_that_a_crop_wanted_only_at_another_time_is_left_alone(season, means):
    targets = (target_of("pak-choi", 7.0), target_of("lettuce-butterhead", 9.0, from_week=30))
    farm = dataclasses.replace(season, targets=targets)
    plan = solve(farm, means.forecaster, PlanOptions(rounds=5))
    changed = proposal(plan, farm, means.forecaster)
    assert plan.sowings
    assert {each.crop for each in changed.differences} == {"pak-choi"}
    assert season.batches[2] in applied(farm, changed.change_set).batches
