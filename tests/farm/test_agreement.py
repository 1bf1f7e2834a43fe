"""A farm that cannot be: fish taken that are not there, seed of another crop, a time zone nobody knows."""

import dataclasses
from datetime import timedelta
from typing import Any

import pytest

from planner.farm.checks import farm_faults, thing_faults
from planner.farm.crops import Batch, SeedLot
from planner.farm.farm import Farm, OwnEntry, Shelf
from planner.farm.faults import Fault, FaultKind
from planner.farm.fields import NO_ID
from planner.farm.fish import FishEvent, FishEventKind
from planner.farm.ids import new_id
from planner.farm.site import Site
from planner.farm.water import Quantity, Reading
from planner.farm.zones import nearest_zone, zone_faults
from tests.farm.test_checks import DAY, FARM, GROUP, LOOP

ZONES = frozenset({"UTC", "Asia/Manila", "Europe/Berlin", "America/New_York", "Etc/GMT+5"})


def event(kind: FishEventKind, day: int, count: int | None = None) -> FishEvent:
    weight = 50.0 if kind is FishEventKind.ADDED else None
    on = DAY + timedelta(days=day)
    return FishEvent(id=new_id(), group=GROUP.id, on=on, kind=kind, count=count, mean_weight_g=weight)


def faults_of(*events: FishEvent) -> tuple[Fault, ...]:
    return farm_faults(dataclasses.replace(FARM, fish_events=events))


HARVEST, DEATHS, ADDED = FishEventKind.HARVEST, FishEventKind.DEATHS, FishEventKind.ADDED


@pytest.mark.parametrize(
    "events",
    [
        [event(HARVEST, 90, 100)],
        [event(HARVEST, 90, 60), event(DEATHS, 5, 40)],
        [event(HARVEST, 90, 150), event(ADDED, 30, 50)],
        [event(HARVEST, 90, 150), event(ADDED, 90, 50)],
        [event(HARVEST, 90), event(ADDED, 90, 50), event(HARVEST, 120, 50)],
        [event(HARVEST, 90), event(HARVEST, 120)],
    ],
)
def test_that_fish_that_are_there_can_be_taken(events):
    assert faults_of(*events) == ()


@pytest.mark.parametrize(
    ("events", "has"),
    [
        ([event(HARVEST, 90, 101)], 100),
        ([event(HARVEST, 90, 61), event(DEATHS, 5, 40)], 60),
        ([event(DEATHS, 91, 1), event(HARVEST, 90)], 0),
        ([event(HARVEST, 90, 120), event(ADDED, 91, 50)], 100),
        ([event(HARVEST, 90), event(ADDED, 95, 50), event(HARVEST, 120, 51)], 50),
        ([event(DEATHS, 90, 151), event(ADDED, 90, 50)], 150),
    ],
)
def test_that_more_fish_than_there_are_cannot_be_taken(events, has):
    (fault,) = faults_of(*events)
    assert (fault.kind, fault.field, fault.limit) == (FaultKind.OUT_OF_LIMITS, "count", f"{has} fish")
    (bad,) = (one for one in events if str(one.count) == fault.value)
    assert fault.where == f'{bad.kind.value} of "G" on {bad.on.isoformat()}'
    assert f"the group then has {has} at most" in fault.sentence()


def test_that_only_what_cannot_be_is_told_once_for_each_event():
    taken = event(HARVEST, 30, 120), event(DEATHS, 40, 5), event(HARVEST, 60, 10)
    found = faults_of(*taken, event(ADDED, 50, 10))
    assert [fault.value for fault in found] == ["120", "5"]


def sown(lot: SeedLot, *own: OwnEntry, **changes: Any) -> Farm:
    batch = Batch(**{"id": new_id(), "code": "B", "crop": "basil", "sow_on": DAY, "plants": 18} | changes)
    batch = dataclasses.replace(batch, seed_lot=lot.id)
    return dataclasses.replace(FARM, batches=(batch,), placements=(), seed_lots=(lot,), own_entries=own)


def test_that_a_batch_is_not_sown_from_seed_of_another_crop():
    (fault,) = farm_faults(sown(SeedLot(id=new_id(), code="LOT-7", crop="mint")))
    assert (fault.where, fault.field, fault.value) == ('batch "B"', "seed_lot", "LOT-7")
    assert '"LOT-7" is seed of crop "mint", but the batch is of crop "basil"' in fault.sentence()


@pytest.mark.parametrize(("variety", "told"), [("Sweet", 0), (" sweet ", 0), ("", 0), ("Thai", 1)])
def test_that_varieties_agree_where_both_are_said(variety, told):
    lot = SeedLot(id=new_id(), code="LOT-7", crop="basil", variety=variety)
    assert len(farm_faults(sown(lot, variety="Sweet"))) == told


def test_that_an_own_crop_is_sown_from_the_seed_of_what_it_is_like():
    own = OwnEntry(id=new_id(), shelf=Shelf.CROP, key="winter-basil", like="basil", name="Winter basil")
    lot = SeedLot(id=new_id(), code="LOT-7", crop="basil")
    assert farm_faults(sown(lot, own, crop="winter-basil")) == ()
    assert len(farm_faults(sown(dataclasses.replace(lot, crop="mint"), own, crop="winter-basil"))) == 1


def test_that_dissolved_solids_need_the_factor_of_the_meter():
    reading = Reading(id=new_id(), loop=LOOP.id, on=DAY, quantity=Quantity.TDS_MG_PER_L, value=400)
    (fault,) = thing_faults(reading)
    assert (fault.kind, fault.field) == (FaultKind.MISSING, "meter_factor")
    assert "0.3 to 1 ppm per µS/cm" in fault.sentence()
    assert list(thing_faults(dataclasses.replace(reading, meter_factor=0.5))) == []
    assert list(thing_faults(dataclasses.replace(reading, quantity=Quantity.EC_MS_PER_CM, value=0.8))) == []


def test_that_a_time_zone_is_one_of_those_known():
    site = Site(id=new_id(), name="S", time_zone="Asia/Manilla")
    (fault,) = zone_faults([site], ZONES)
    assert (fault.where, fault.field, fault.value) == ('site "S"', "time_zone", "Asia/Manilla")
    assert 'Did you mean "Asia/Manila"?' in fault.sentence()
    assert list(zone_faults([dataclasses.replace(site, time_zone="Asia/Manila")], ZONES)) == []


def test_that_nothing_is_said_of_time_zones_where_none_are_known_or_named():
    assert list(zone_faults([Site(id=NO_ID, name="S", time_zone="Nowhere")], ())) == []
    assert list(zone_faults([Site(id=NO_ID, name="S", time_zone="")], ZONES)) == []


@pytest.mark.parametrize(
    ("said", "name"),
    [
        ("Manila", "Asia/Manila"),
        ("asia/manila", "Asia/Manila"),
        ("US/New York", "America/New_York"),
        ("Berln", "Europe/Berlin"),
        ("utc", "UTC"),
        ("GMT+25", ""),
        ("???", ""),
    ],
)
def test_that_the_nearest_time_zone_is_named(said, name):
    assert nearest_zone(said, ZONES) == name
