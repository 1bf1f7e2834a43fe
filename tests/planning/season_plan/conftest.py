"""A small farm with targets, fish and a dark wet season, and a forecaster for it."""

from __future__ import annotations

import dataclasses
from datetime import date, timedelta

import pytest

from planner.bootstrap import Means
from planner.farm.crops import Target, TargetUnit
from planner.farm.ids import id_from
from planner.farm.site import Bed
from planner.farm.species import BedKind
from planner.planning.season_plan.job import solve
from planner.planning.season_plan.options import PlanOptions
from tests.farms import LOOP, MONDAY, NURSERY, RAFT, SITE, batch_of, farm_of, group_of, places_of

CLIMATE = dataclasses.replace(
    SITE,
    air_c=(14.0, 15.0, 17.0, 20.0, 23.0, 25.0, 26.0, 26.0, 24.0, 21.0, 18.0, 15.0),
    radiation_mj_per_m2_d=(8.0, 10.0, 13.0, 16.0, 18.0, 9.0, 8.0, 17.0, 15.0, 12.0, 9.0, 7.0),
    roof_transmission=0.7,
)
GRAVEL = Bed(
    id=id_from("gravel"),
    name="Gravel",
    loop=LOOP.id,
    kind=BedKind.MEDIA,
    units=2,
    rows=4,
    columns=5,
    area_m2=3.0,
)


def target_of(crop, amount, *, unit=TargetUnit.HEADS, from_week=9, weeks=None):
    start = MONDAY + timedelta(weeks=from_week)
    until_on = None if weeks is None else start + timedelta(days=7 * weeks - 1)
    return Target(
        id=id_from("target", crop, unit.value),
        crop=crop,
        amount_per_week=amount,
        unit=unit,
        from_on=start,
        until_on=until_on,
    )


@pytest.fixture(scope="session")
def means():
    return Means()


@pytest.fixture
def forecaster(means):
    return means.forecaster


@pytest.fixture(scope="session")
def season():
    """A farm of two kinds of bed, three crops, fish, and two batches that are not for the plan to change."""
    locked = batch_of("LTB-LOCKED", sow_on=date(2027, 2, 1), plants=20, bed=RAFT.id, locked=True)
    early = batch_of("LTB-EARLY", sow_on=date(2026, 12, 14), plants=20, bed=RAFT.id)
    return farm_of(
        sites=(CLIMATE,),
        beds=(RAFT, GRAVEL, NURSERY),
        batches=(locked, early, batch_of("LTB-OPEN", sow_on=date(2027, 1, 18), plants=17, bed=RAFT.id)),
        placements=(places_of(locked, unit=1), places_of(early, unit=2)),
        fish_groups=(group_of(),),
        targets=(
            target_of("lettuce-butterhead", 12.0),
            target_of("pak-choi", 7.0),
            target_of("basil", 0.3, unit=TargetUnit.KG, from_week=10),
        ),
        settings=dataclasses.replace(farm_of().settings, plan_weeks=26),
    )


@pytest.fixture(scope="session")
def plan(season, means):
    return solve(season, means.forecaster, PlanOptions(rounds=300))
