"""Ways of stocking, of taking a harvest and of starting up say why the figures of their tables are so."""

from __future__ import annotations

import dataclasses
from datetime import timedelta

import pytest

from planner.farm.fish import FishEvent, FishEventKind
from planner.farm.ids import id_from
from planner.planning.stocking.harvests import harvest_options
from planner.planning.stocking.options import Search
from planner.planning.stocking.propose import stocking_table
from planner.planning.stocking.startup import start_up
from planner.planning.stocking.wish import StockingWish, dates_every
from planner.planning.why_farms import ground_of
from planner.planning.why_startup import start_name, start_whys
from planner.planning.why_stocking import harvest_name, harvest_whys, stocked_name, stocking_whys, way_name
from tests.farms import LOOP, MONDAY, RAFT, batch_of, farm_of, group_of, weekly_batches
from tests.planning.why.helpers import all_made

START = MONDAY


@pytest.fixture(scope="module")
def grown():
    return farm_of(
        batches=weekly_batches(20, bed=RAFT.id),
        fish_groups=(group_of("Old", count=20),),
        settings=dataclasses.replace(farm_of().settings, plan_weeks=52),
    )


def test_that_every_figure_of_every_way_of_stocking_can_be_asked(means, grown):
    wish = StockingWish(
        loop=LOOP.id,
        species="nile-tilapia",
        feed="tilapia-grow-out-32",
        fingerling_g=50.0,
        harvest_g=300.0,
        dates=dates_every(2, first_on=START, until_on=START + timedelta(weeks=520)),
        shares=(1.0, 0.5),
        groups=(1, 2),
    )
    table = stocking_table(grown, means.forecaster, wish, search=Search(rounds=20))
    ground = ground_of(grown, means.forecaster)
    found = all_made(stocking_whys(table, ground))
    assert table.options
    for option in table.options:
        told = {what: found[way_name(option, what)].value for what in ("apart", "fall", "longest", "score")}
        assert told == {
            "apart": option.apart_weeks,
            "fall": option.deepest_share,
            "longest": option.longest_weeks,
            "score": option.score,
        }
        for what, value in (
            ("uneven", option.variation),
            ("in-band", option.inside_share),
            ("fullest", option.peak_density_kg_per_m3),
            ("feed", option.mean_feed_g_per_day),
        ):
            assert found[way_name(option, what)].value == value
        for one in option.stocked:
            assert found[way_name(option, stocked_name(one, ground.tanks[one.tank].name))].value == one.count
        for hole in option.holes:
            assert found[way_name(option, f"hole {hole.on.isoformat()} fall")].value == hole.depth_share
            assert found[way_name(option, f"hole {hole.on.isoformat()} back")].value == hole.weeks


def test_that_every_way_of_taking_a_harvest_can_be_asked(means, grown):
    event = FishEvent(
        id=id_from("all of it"),
        group=grown.fish_groups[0].id,
        on=START + timedelta(weeks=20),
        kind=FishEventKind.HARVEST,
    )
    farm = dataclasses.replace(grown, fish_events=(event,))
    options = harvest_options(farm, means.forecaster, event.id, shares=(1.0, 0.5, 0.3))
    found = all_made(harvest_whys(options, event.group, farm, means.forecaster))
    for one in options:
        assert found[harvest_name(one, "fall")].value == one.hole.depth_share
        assert found[harvest_name(one, "back")].value == one.hole.weeks
        lowest = found[harvest_name(one, "lowest")]
        assert lowest.value == pytest.approx(one.lowest_feed_g_per_day)
        assert lowest.on == one.lowest_on
        assert found[harvest_name(one, "fullest")].value == pytest.approx(one.peak_kg_per_m3)
        if one.lowest_ratio is not None:
            assert found[harvest_name(one, "least")].value == pytest.approx(one.lowest_ratio)


def test_that_every_batch_of_a_start_up_can_be_asked(means):
    batches = (
        *weekly_batches(6, bed=RAFT.id),
        batch_of("TOM", crop="tomato", sow_on=START, plants=2, bed=RAFT.id),
    )
    fish = (group_of("New", stocked_on=START + timedelta(weeks=1), count=60),)
    farm = farm_of(
        batches=batches, fish_groups=fish, settings=dataclasses.replace(farm_of().settings, plan_weeks=52)
    )
    found = start_up(farm, means.forecaster, LOOP.id)
    answers = all_made(start_whys(found, LOOP.id, ground_of(farm, means.forecaster)))
    waited = 0
    for one in found.batches:
        may = answers[start_name(one, "may")]
        assert may.on == one.may_on
        if one.may_on is not None:
            assert may.value == (one.may_on - found.first_fish_on).days
        if one.wait_days is not None:
            assert answers[start_name(one, "waits")].value == one.wait_days
            waited += one.wait_days > 0
        assert answers[start_name(one, "area")].value == one.area_m2
    assert waited
