"""Starting a loop: fruiting crops wait until the feed carries them at their published band."""

from __future__ import annotations

import dataclasses
from datetime import timedelta

import pytest

from planner.farm.changes import applied
from planner.farm.crops import Phase
from planner.farm.species import CropGroup
from planner.forecast.engine import Forecaster
from planner.planning.stocking.startup import start_up
from tests.farms import LOOP, MONDAY, RAFT, batch_of, farm_of, group_of

FRUITING_LOW, LEAFY_LOW, REFERENCE_PROTEIN = 50.0, 40.0, 0.32


def young_farm(**parts):
    """Small fish, lettuce every fortnight and two sowings of tomato, all meant for the first weeks."""
    lettuce = tuple(
        batch_of(f"LTB-{n}", sow_on=MONDAY + timedelta(weeks=2 * n), bed=RAFT.id) for n in range(3)
    )
    tomato = tuple(
        batch_of(f"TOM-{n}", crop="tomato", plants=4, bed_days=70.0, sow_on=MONDAY + timedelta(weeks=n))
        for n in range(2)
    )
    settings = dataclasses.replace(farm_of().settings, plan_weeks=40)
    fish = group_of(count=60, mean_weight_g=20.0)
    given = {"batches": (*lettuce, *tomato), "fish_groups": (fish,), "settings": settings}
    return farm_of(**(given | parts))


@pytest.fixture(scope="module")
def found(means):
    return start_up(young_farm(), means.forecaster, LOOP.id)


def test_that_leafy_crops_come_first(found):
    leafy = [one.may_on for one in found.batches if one.group is CropGroup.LEAFY]
    fruiting = [one.may_on for one in found.batches if one.group is CropGroup.FRUITING]
    assert min(leafy) < min(fruiting)
    assert found.first_on_by_crop["lettuce-butterhead"] == min(leafy)
    assert found.first_on_by_crop["tomato"] == min(fruiting)


def test_that_fruiting_crops_wait_as_long_as_the_manual_says_and_leafy_ones_until_nitrate_shows(found):
    """FAO 589: plants when nitrate is seen, better after 3 to 4 weeks; fruiting after 2 to 3 months."""
    assert found.first_fish_on == MONDAY
    for one in found.batches:
        days = (one.may_on - found.first_fish_on).days
        assert days >= (60 if one.group is CropGroup.FRUITING else 21)


def test_that_on_the_day_a_fruiting_crop_moves_the_feed_meets_the_low_end_of_the_bands(means, found):
    changed = applied(young_farm(), found.change_set)
    forecast = Forecaster(means.catalogue).forecast(changed)
    loop, _ruler, table = forecast.loops[0], forecast.ruler, forecast.batches
    for row, batch in enumerate(changed.batches):
        if batch.crop != "tomato":
            continue
        start = table.phase_days(row, Phase.BED)[0]
        week = slice(start, start + 7)
        area = dict.fromkeys(CropGroup, 0.0)
        for other, one in enumerate(changed.batches):
            first, end = table.phase_days(other, Phase.BED)
            if first <= start < end:
                area[means.catalogue.crops[one.crop].group] += float(table.area_m2[other])
        asked = LEAFY_LOW * area[CropGroup.LEAFY] + FRUITING_LOW * area[CropGroup.FRUITING]
        protein = float(loop.protein_share[start])
        assert loop.feed_g[week].mean() >= asked * REFERENCE_PROTEIN / protein * 0.999


def test_that_holding_back_can_be_undone(found):
    farm = young_farm()
    changed = applied(farm, found.change_set)
    assert changed != farm
    assert applied(changed, found.change_set.turned()) == farm


def test_that_a_crop_the_fish_never_carry_has_no_date_and_is_left_as_it_is(means):
    farm = young_farm(fish_groups=(group_of(count=1, mean_weight_g=10.0),))
    found = start_up(farm, means.forecaster, LOOP.id)
    assert found.first_on_by_crop["tomato"] is None
    moved = found.change_set.ids("batch")
    assert not moved & {batch.id for batch in farm.batches if batch.crop == "tomato"}


def test_that_locked_batches_stay(means):
    farm = young_farm()
    locked = tuple(dataclasses.replace(batch, locked=True) for batch in farm.batches)
    found = start_up(dataclasses.replace(farm, batches=locked), means.forecaster, LOOP.id)
    assert found.change_set.changes == ()


def test_that_heavier_fish_carry_fruiting_crops_no_later(means):
    def wait(count):
        farm = young_farm(fish_groups=(group_of(count=count, mean_weight_g=20.0),))
        return [
            one.may_on
            for one in start_up(farm, means.forecaster, LOOP.id).batches
            if one.group is CropGroup.FRUITING and one.may_on
        ]

    few, many = wait(40), wait(160)
    assert len(many) >= len(few)
    assert all(early <= late for early, late in zip(many, few, strict=False))
