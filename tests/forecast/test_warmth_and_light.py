"""Readings of warmth pull the year to what was met; layers above and lamps change the light of a bed."""

from __future__ import annotations

import dataclasses
from datetime import timedelta

import numpy as np
import pytest

from planner.farm.crops import Phase, Placement
from planner.farm.farm import Settings
from planner.farm.ids import id_from
from planner.farm.water import Quantity, Reading
from planner.forecast.warmth import drawn_series
from tests.farms import LOOP, MONDAY, NURSERY, RAFT, SITE, batch_of, farm_of, group_of, places_of

CLIMATE = {"air_c": (20.0,) * 12, "radiation_mj_per_m2_d": (6.0,) * 12}
PLANTS = {"germination_days": None, "nursery_days": None, "bed_days": None}
WARM_WATER = dataclasses.replace(LOOP, water_c=(28.0,) * 12)


def reading(quantity, value, day):
    return Reading(
        id=id_from("reading", quantity.value, str(day), str(value)),
        loop=LOOP.id,
        on=MONDAY + timedelta(days=day),
        quantity=quantity,
        value=value,
    )


def farm_in_a_climate(**parts):
    plan = Settings(id=id_from("s"), name="Plan", plan_from=MONDAY, plan_weeks=30)
    given = {"sites": (dataclasses.replace(SITE, **CLIMATE),), "settings": plan} | parts
    return farm_of(**given)


def days_to_pick(forecaster, *, beds=(RAFT, NURSERY), in_nursery=False, **parts):
    batch = batch_of(**PLANTS)
    held = [places_of(batch)]
    if in_nursery:
        held.append(
            Placement(
                id=id_from("tray"),
                batch=batch.id,
                phase=Phase.NURSERY,
                bed=NURSERY.id,
                unit=1,
                first=1,
                count=30,
            )
        )
    farm = farm_in_a_climate(batches=(batch,), beds=beds, placements=tuple(held), **parts)
    return int(forecaster.forecast(farm).batches.ends[0, 3])


def test_that_a_bed_under_another_layer_takes_longer_and_lamps_make_up_for_it(forecaster):
    shaded = dataclasses.replace(RAFT, light_share=0.4)
    lit = dataclasses.replace(shaded, lamp_mol_per_m2_d=15.0)
    open_bed, under, under_lamps = (
        days_to_pick(forecaster, beds=(bed, NURSERY)) for bed in (RAFT, shaded, lit)
    )
    assert under > open_bed > under_lamps


def test_that_lamps_over_the_nursery_speed_only_those_that_stand_in_it(forecaster):
    lit = dataclasses.replace(NURSERY, lamp_mol_per_m2_d=15.0)
    assert days_to_pick(forecaster, beds=(RAFT, lit)) == days_to_pick(forecaster)
    assert days_to_pick(forecaster, beds=(RAFT, lit), in_nursery=True) < days_to_pick(
        forecaster, in_nursery=True
    )


def test_that_air_read_colder_than_the_climate_makes_a_batch_later(forecaster):
    cold = tuple(reading(Quantity.AIR_C, 11.0, day) for day in range(0, 40, 4))
    assert days_to_pick(forecaster, readings=cold) > days_to_pick(forecaster)


def test_that_a_reading_taken_back_leaves_the_forecast_as_it_was(forecaster):
    before = days_to_pick(forecaster)
    days_to_pick(forecaster, readings=(reading(Quantity.AIR_C, 11.0, 10),))
    assert days_to_pick(forecaster) == before


def test_that_cold_water_read_slows_the_fish_from_then_on(forecaster):
    group = group_of()
    farm = farm_of(loops=(WARM_WATER,), fish_groups=(group,))
    usual = forecaster.forecast(farm).loops[0].feed_g
    cold = tuple(reading(Quantity.WATER_C, 20.0, day) for day in (30, 40))
    slowed = forecaster.forecast(dataclasses.replace(farm, readings=cold)).loops[0].feed_g
    assert slowed[:30] == pytest.approx(usual[:30])
    assert (slowed[31:45] < usual[31:45]).all()


def test_that_water_read_deadly_cold_is_flagged(forecaster):
    farm = farm_of(loops=(WARM_WATER,), fish_groups=(group_of(),))
    deadly = forecaster.forecast(
        dataclasses.replace(farm, readings=(reading(Quantity.WATER_C, 5.0, 30),))
    ).flags
    usual = forecaster.forecast(farm).flags
    assert {flag.kind.value for flag in deadly} - {flag.kind.value for flag in usual} == {
        "lethal temperature",
        "no appetite",
    }


def test_that_a_day_is_as_warm_whatever_span_is_asked_for():
    read = ((MONDAY + timedelta(days=5), 25.0), (MONDAY + timedelta(days=60), 15.0))
    given = {"fade_days": 10.0}
    whole = drawn_series((20.0,) * 12, read, start_on=MONDAY, days=100, **given)
    part = drawn_series((20.0,) * 12, read, start_on=MONDAY + timedelta(days=30), days=20, **given)
    assert part == pytest.approx(whole[30:50])
    assert whole[5] == pytest.approx(25.0)
    assert whole[60] == pytest.approx(15.0)
    assert abs(whole[99] - 20.0) < abs(whole[70] - 20.0)


def test_that_a_few_readings_do_not_make_a_year():
    assert drawn_series((), ((MONDAY, 25.0),), start_on=MONDAY, days=10, fade_days=10.0) is None


def test_that_two_readings_of_a_day_count_with_their_mean(forecaster):
    group = group_of()
    farm = farm_of(loops=(WARM_WATER,), fish_groups=(group,))
    two = (reading(Quantity.WATER_C, 22.0, 9), reading(Quantity.WATER_C, 26.0, 9))
    one = (reading(Quantity.WATER_C, 24.0, 9),)
    feeds = [
        forecaster.forecast(dataclasses.replace(farm, readings=read)).loops[0].feed_g for read in (one, two)
    ]
    assert np.array_equal(*feeds)


def test_that_a_loops_water_is_told_as_it_was_read(forecaster):
    farm = farm_of(loops=(WARM_WATER,), readings=(reading(Quantity.WATER_C, 22.0, 9),))
    water_c = forecaster.forecast(farm).loops[0].water_c
    assert water_c[8] == pytest.approx(28.0)
    assert water_c[9] == pytest.approx(22.0)
    assert forecaster.forecast(farm_of()).loops[0].water_c is None
