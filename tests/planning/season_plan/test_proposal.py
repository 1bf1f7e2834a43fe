"""A plan becomes batches in one step that can be taken back, beside what was planned before."""

from __future__ import annotations

import dataclasses
from datetime import date, timedelta

import pytest

from planner.farm.changes import applied, with_places
from planner.farm.farm import OwnEntry, Shelf
from planner.farm.ids import id_from
from planner.planning.rhythm import WorkDays
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


@pytest.mark.parametrize("spaced", [False, True], ids=["one move", "two moves"])
def test_that_nothing_is_sown_or_moved_on_a_day_without_work(season, means, spaced):
    """Work is on Tuesdays, but not on one of them; the forecast says when things happen."""
    own = OwnEntry(
        id=id_from("own"),
        shelf=Shelf.CROP,
        key="spaced-lettuce",
        like="lettuce-butterhead",
        name="Spaced lettuce",
        values=(("bed_days", 18.0), ("spacing_days", 10.0)),
    )
    farm = season
    if spaced:
        targets = (target_of("spaced-lettuce", 9.0),)
        farm = dataclasses.replace(season, own_entries=(own,), targets=targets)
    work = WorkDays(closed_weekdays=frozenset({0, 2, 3, 4, 5, 6}), closed_on=frozenset({date(2027, 2, 2)}))
    options = PlanOptions(rounds=100, sow_weekday=5, work=work)
    plan = solve(farm, means.forecaster, options)
    proposed = proposal(plan, farm, means.forecaster)
    adopted = applied(farm, proposed.change_set)
    seen = means.forecaster.preview(adopted)
    made = {batch.id for batch in proposed.batches}
    assert len(made) > 10
    for batch in adopted.batches:
        if batch.id in made:
            row = seen.batches.row_of[batch.id]
            nursery, spacing = seen.batches.ends[row, 1:3].tolist()
            for on in (batch.sow_on, seen.ruler.date_of(nursery), seen.ruler.date_of(spacing)):
                assert work.is_open(on), (batch.code, on)
    assert any(batch.nursery_days is not None for batch in proposed.batches)
    row = seen.crops.index(plan.model.crops[0])
    market = means.forecaster.catalogue.crops[plan.model.crops[0]].marketable_share
    weekly = seen.ruler.weekly_sum(seen.harvest_plants[row]) * market
    assert weekly == pytest.approx([week.lines[0].harvest for week in plan.weeks], abs=1e-9)


def test_that_a_week_without_a_day_of_work_has_no_sowing(season, means):
    week = [date(2027, 1, 25) + timedelta(days=day) for day in range(7)]
    options = PlanOptions(rounds=50, work=WorkDays(closed_on=frozenset(week)))
    plan = solve(season, means.forecaster, options)
    assert plan.sowings
    assert not {sowing.sow_on for sowing in plan.sowings} & set(week)
