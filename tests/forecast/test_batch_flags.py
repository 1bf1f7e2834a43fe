"""What the forecast says of places that are lacking or do not suit, and that it does not grow stale."""

from __future__ import annotations

import dataclasses
from datetime import timedelta

import pytest

from planner.farm.fish import FishEvent, FishEventKind
from planner.farm.ids import id_from
from planner.farm.species import BedKind
from planner.forecast.engine import Forecaster
from planner.forecast.values import FlagKind
from tests.farms import MONDAY, RAFT, batch_of, farm_of, group_of, places_of, weekly_batches


def flags_of(forecast, kind):
    return [flag for flag in forecast.flags if flag.kind is kind]


def test_that_a_batch_with_too_few_places_says_how_many_are_lacking(forecaster):
    placed, lacking, none = batch_of("A"), batch_of("B", bed=RAFT.id), batch_of("C")
    farm = farm_of(
        batches=(placed, lacking, none),
        placements=(places_of(placed), places_of(lacking, unit=2, count=7)),
    )
    found = flags_of(forecaster.forecast(farm), FlagKind.UNPLACED)
    assert [(flag.about, dict(flag.values)) for flag in found] == [
        (lacking.id, {"plants": 18.0, "bed": "Raft"}),
        (none.id, {"plants": 25.0, "bed": ""}),
    ]


def test_that_a_crop_on_a_bed_that_does_not_suit_it_is_told_once(catalogue):
    crop = dataclasses.replace(catalogue.crops["tomato"], beds=(BedKind.MEDIA,))
    crops = {**catalogue.crops, "tomato": crop}
    batch = batch_of(crop="tomato", plants=10)
    runs = (places_of(batch, count=5), places_of(batch, first=6, count=5))
    farm = farm_of(batches=(batch,), placements=runs)
    found = flags_of(
        Forecaster(dataclasses.replace(catalogue, crops=crops)).forecast(farm), FlagKind.NOT_SUITED
    )
    assert [dict(flag.values) for flag in found] == [{"crop": "tomato", "bed": "Raft", "bed kind": "raft"}]


@pytest.mark.parametrize("what", ["date", "plants", "place", "bed kind", "crop", "gone"])
def test_that_flags_after_a_change_are_those_of_a_fresh_start(forecaster, catalogue, what):
    batches = weekly_batches(4)
    places = tuple(places_of(batch, unit=unit) for unit, batch in enumerate(batches, start=1))
    farm = farm_of(batches=batches, placements=places)
    forecaster.forecast(farm)
    first = batches[0]
    changed = {
        "date": {"batches": (dataclasses.replace(first, sow_on=MONDAY + timedelta(days=3)), *batches[1:])},
        "plants": {"batches": (dataclasses.replace(first, plants=30), *batches[1:])},
        "place": {"placements": (dataclasses.replace(places[0], count=3), *places[1:])},
        "bed kind": {"beds": (dataclasses.replace(RAFT, kind=BedKind.MEDIA), *farm.beds[1:])},
        "crop": {"batches": (dataclasses.replace(first, crop="tomato"), *batches[1:])},
        "gone": {"batches": batches[1:], "placements": places[1:]},
    }[what]
    after = dataclasses.replace(farm, **changed)
    assert forecaster.forecast(after).flags == Forecaster(catalogue).forecast(after).flags
    assert forecaster.forecast(farm).flags == Forecaster(catalogue).forecast(farm).flags


def test_that_fish_added_after_all_were_taken_grow_again(forecaster):
    group = group_of(daily_death_share=0.0)
    events = (
        FishEvent(
            id=id_from("out"), group=group.id, on=MONDAY + timedelta(days=30), kind=FishEventKind.HARVEST
        ),
        FishEvent(
            id=id_from("in"),
            group=group.id,
            on=MONDAY + timedelta(days=60),
            kind=FishEventKind.ADDED,
            count=40,
            mean_weight_g=50.0,
        ),
    )
    found = forecaster.forecast(farm_of(fish_groups=(group,), fish_events=events)).loops[0].groups[0]
    assert not found.count[30:60].any()
    assert found.count[60:].tolist() == [40.0] * 80
    assert found.weight_g[60] == pytest.approx(50.0)
    assert found.feed_g[61] > 0


def test_that_an_emptied_group_keeps_its_last_weight_and_takes_no_feed(forecaster):
    group = group_of()
    event = FishEvent(
        id=id_from("out"), group=group.id, on=MONDAY + timedelta(days=30), kind=FishEventKind.HARVEST
    )
    found = forecaster.forecast(farm_of(fish_groups=(group,), fish_events=(event,))).loops[0].groups[0]
    assert found.weight_g[30:].tolist() == [found.weight_g[30]] * 110
    assert not found.feed_g[30:].any()
    assert not found.biomass_g[30:].any()
