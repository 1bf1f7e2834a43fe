"""Plants at an intermediate distance take places too: in beds set so close, else in the bed they end in."""

from __future__ import annotations

import dataclasses

import numpy as np
import pytest

from planner.farm.changes import applied
from planner.farm.crops import Phase
from planner.farm.farm import OwnEntry, Shelf
from planner.farm.ids import id_from
from planner.planning.season_plan.job import solve
from planner.planning.season_plan.options import PlanOptions
from planner.planning.season_plan.proposal import proposal
from planner.planning.succession_wish import SuccessionWish
from planner.planning.successions import propose
from planner.planning.wanted import Steady
from tests.farms import NURSERY, RAFT, farm_of, group_of
from tests.planning.season_plan.conftest import CLIMATE, target_of

SPACED = OwnEntry(
    id=id_from("spaced"),
    shelf=Shelf.CROP,
    key="spaced-lettuce",
    like="lettuce-butterhead",
    name="Spaced lettuce",
    values=(("spacing_days", 10.0), ("bed_days", 18.0)),
)
CLOSE = dataclasses.replace(
    RAFT, id=id_from("close"), name="Close raft", units=2, rows=4, columns=10, area_m2=1.0
)
"""Eighty places a m2, as close as the catalogue's intermediate distance of lettuce."""


def season_of(*beds, wanted):
    return farm_of(
        sites=(CLIMATE,),
        beds=(RAFT, *beds, NURSERY),
        fish_groups=(group_of(),),
        own_entries=(SPACED,),
        targets=(target_of("spaced-lettuce", wanted),),
        settings=dataclasses.replace(farm_of().settings, plan_weeks=26),
    )


def held_by_day(farm, table, phases, beds):
    """Count placements day by day, from the forecast's days alone."""
    held = np.zeros(int(table.ends.max()) + 1, dtype=int)
    for run in farm.placements:
        if run.bed in beds and run.phase in phases:
            start, end = table.phase_days(table.row_of[run.batch], run.phase)
            held[max(start, 0) : max(end, 0)] += run.count
    return held


@pytest.fixture(scope="module", params=[(), (CLOSE,)], ids=["one bed", "a close bed besides"])
def made(request, means):
    farm = season_of(*request.param, wanted=30.0)
    plan = solve(farm, means.forecaster, PlanOptions(rounds=200))
    proposed = proposal(plan, farm, means.forecaster)
    return farm, plan, proposed, applied(farm, proposed.change_set)


def test_that_every_plant_has_its_place_at_both_distances(made, means):
    _, plan, proposed, adopted = made
    assert plan.sowings
    assert proposed.refusals == ()
    assert means.faults(adopted) == ()
    for phase in (Phase.SPACING, Phase.BED):
        placed = sum(run.count for run in adopted.placements if run.phase is phase)
        assert placed == sum(batch.plants for batch in adopted.batches)


def test_that_no_day_has_more_plants_than_places_at_either_distance(made, means):
    farm, _, _, adopted = made
    table = means.forecaster.preview(adopted).batches
    both = (Phase.SPACING, Phase.BED)
    assert 0 < held_by_day(adopted, table, both, {RAFT.id}).max() <= RAFT.places
    if CLOSE in farm.beds:
        assert held_by_day(adopted, table, (Phase.BED,), {CLOSE.id}).max() == 0
        assert 0 < held_by_day(adopted, table, (Phase.SPACING,), {CLOSE.id}).max() <= CLOSE.places


def test_that_a_close_bed_carries_more_than_one_bed_alone(means):
    """Ten of twenty-eight days leave the raft, so more of what is wanted can be had."""
    options = PlanOptions(rounds=200)
    alone = solve(season_of(wanted=40.0), means.forecaster, options)
    besides = solve(season_of(CLOSE, wanted=40.0), means.forecaster, options)
    assert besides.objective > alone.bound


def test_that_the_close_bed_is_a_limit_of_its_own(means):
    tiny = dataclasses.replace(CLOSE, columns=2, area_m2=0.2)
    plan = solve(season_of(tiny, wanted=30.0), means.forecaster, PlanOptions(rounds=200))
    assert max(week.pools[0].taken for week in plan.weeks) == tiny.places
    assert max(week.grounds[0].taken for week in plan.weeks) < RAFT.places // 2


def test_that_successions_stand_close_first_and_wide_at_last(means):
    farm = season_of(CLOSE, wanted=20.0)
    want = Steady(crop="spaced-lettuce", amount_per_week=15.0, from_on=farm.targets[0].from_on)
    found = propose(farm, means.forecaster, [want], wish=SuccessionWish())
    beds = {(run.phase, run.bed) for run in found.placements}
    assert beds == {(Phase.NURSERY, NURSERY.id), (Phase.SPACING, CLOSE.id), (Phase.BED, RAFT.id)}
