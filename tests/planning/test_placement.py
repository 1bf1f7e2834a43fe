"""Where batches fit, and what is said when they do not."""

from __future__ import annotations

import dataclasses
from datetime import timedelta

import pytest
from hypothesis import given
from hypothesis import strategies as st

from planner.catalogue.loading import shipped_catalogue
from planner.farm.crops import Phase, Placement
from planner.farm.ids import id_from
from planner.forecast.engine import Forecaster
from planner.forecast.occupancy import clashes, holds
from planner.planning.placement import Places, Refusal, RefusalKind
from tests.farms import MONDAY, NURSERY, RAFT, batch_of, farm_of, places_of

FORECASTER = Forecaster(shipped_catalogue())
PLACES_ON_A_RAFT = RAFT.places_per_unit
FIRST_BED_DAY, FIRST_FREE_DAY = 21, 49
"""A batch of `batch_of` sown on day 0 stands in the bed from day 21 up to the day before day 49."""


def places_for(*batches, placements=()):
    farm = farm_of(batches=batches, placements=placements)
    return Places(farm, FORECASTER.preview(farm))


def taken_by(placements):
    return {(p.unit, place) for p in placements for place in range(p.first, p.last + 1)}


def test_that_an_empty_raft_is_free_from_the_first_to_the_last_place():
    assert places_for().free_runs(RAFT.id, 2, start_day=0, end_day=7) == ((1, PLACES_ON_A_RAFT),)


def test_that_a_held_run_splits_what_is_free():
    batch = batch_of(plants=5)
    places = places_for(batch, placements=(places_of(batch, first=11),))
    held = {"start_day": FIRST_BED_DAY, "end_day": FIRST_BED_DAY + 1}
    assert places.free_runs(RAFT.id, 1, **held) == ((1, 10), (16, 10))
    assert places.free_count(RAFT.id, 1, **held) == 20
    assert places.free_count(RAFT.id, 2, **held) == PLACES_ON_A_RAFT


@pytest.mark.parametrize(
    ("start", "end", "free"),
    [
        (0, FIRST_BED_DAY, PLACES_ON_A_RAFT),
        (0, FIRST_BED_DAY + 1, 0),
        (FIRST_FREE_DAY - 1, FIRST_FREE_DAY, 0),
        (FIRST_FREE_DAY, FIRST_FREE_DAY + 30, PLACES_ON_A_RAFT),
        (FIRST_BED_DAY - 5, FIRST_FREE_DAY + 5, 0),
    ],
)
def test_that_places_are_held_from_the_move_to_the_day_before_they_are_clear(start, end, free):
    batch = batch_of()
    places = places_for(batch, placements=(places_of(batch),))
    assert places.free_count(RAFT.id, 1, start_day=start, end_day=end) == free


def test_that_a_long_batch_is_seen_behind_many_short_ones():
    long = batch_of("OLD-1", bed_days=300.0, plants=1)
    short = [
        batch_of(f"NEW-{n}", sow_on=MONDAY + timedelta(days=10 + n), bed_days=1.0, plants=1)
        for n in range(20)
    ]
    held = [places_of(long, first=25), *(places_of(b, first=1 + n) for n, b in enumerate(short))]
    places = places_for(long, *short, placements=held)
    assert places.free_runs(RAFT.id, 1, start_day=200, end_day=201) == ((1, 24),)


def test_that_a_batch_may_keep_its_own_places():
    batch = batch_of()
    places = places_for(batch, placements=(places_of(batch),))
    found = places.fit(batch.id, Phase.BED, RAFT.id, count=25, unit=1, by_days=3)
    assert not isinstance(found, Refusal)
    assert taken_by(found) == {(1, place) for place in range(1, 26)}


def test_that_the_raft_that_is_just_large_enough_is_taken():
    one, other, new = batch_of("A", plants=10), batch_of("B", plants=18), batch_of("C", plants=7)
    places = places_for(one, other, new, placements=(places_of(one, unit=2), places_of(other, unit=3)))
    found = places.fit(new.id, Phase.BED, RAFT.id, count=7)
    assert [(p.unit, p.first, p.count) for p in found] == [(3, 19, 7)]


def test_that_a_large_batch_takes_as_few_rafts_as_go():
    new = batch_of(plants=60)
    found = places_for(new).fit(new.id, Phase.BED, RAFT.id, count=60)
    assert [(p.unit, p.count) for p in found] == [(1, 25), (2, 25), (3, 10)]


def test_that_a_full_bed_says_how_many_are_free_when_and_who_stands_there():
    standing = [batch_of(f"OLD-{unit}") for unit in (1, 2, 3, 4)]
    held = [places_of(batch, unit=unit, count=20) for unit, batch in enumerate(standing, start=1)]
    new = batch_of("NEW", sow_on=MONDAY + timedelta(days=7))
    found = places_for(*standing, new, placements=held).fit(new.id, Phase.BED, RAFT.id, count=25)
    assert isinstance(found, Refusal)
    assert found.kind is RefusalKind.NO_FREE_PLACES
    assert (found.needed, found.free, found.bed, found.unit) == (25, 20, "Raft", 0)
    assert found.from_on == MONDAY + timedelta(days=28)
    assert found.until_on == MONDAY + timedelta(days=55)
    assert found.blocking == ("OLD-1", "OLD-2", "OLD-3", "OLD-4")


def test_that_a_full_raft_names_only_who_stands_on_it():
    standing = [batch_of(f"OLD-{unit}") for unit in (1, 2)]
    held = [places_of(batch, unit=unit) for unit, batch in enumerate(standing, start=1)]
    new = batch_of("NEW")
    found = places_for(*standing, new, placements=held).fit(new.id, Phase.BED, RAFT.id, count=1, unit=2)
    assert isinstance(found, Refusal)
    assert (found.unit, found.free, found.blocking) == (2, 0, ("OLD-2",))


@pytest.mark.parametrize(
    ("phase", "bed", "unit", "count", "kind"),
    [
        (Phase.BED, NURSERY.id, None, 5, RefusalKind.WRONG_BED),
        (Phase.NURSERY, RAFT.id, None, 5, RefusalKind.WRONG_BED),
        (Phase.BED, RAFT.id, 5, 5, RefusalKind.NO_SUCH_UNIT),
        (Phase.BED, RAFT.id, 0, 5, RefusalKind.NO_SUCH_UNIT),
        (Phase.BED, RAFT.id, None, 0, RefusalKind.NOTHING_TO_PLACE),
    ],
)
def test_that_what_makes_no_sense_is_refused_by_its_kind(phase, bed, unit, count, kind):
    batch = batch_of()
    found = places_for(batch).fit(batch.id, phase, bed, count=count, unit=unit)
    assert isinstance(found, Refusal)
    assert found.kind is kind


def test_that_a_stage_of_no_days_still_holds_its_place_for_one():
    batch = batch_of(germination_days=0.0, nursery_days=0.0)
    tray = Placement(
        id=id_from("tray"), batch=batch.id, phase=Phase.NURSERY, bed=NURSERY.id, unit=1, first=1, count=72
    )
    places = places_for(batch, placements=(tray,))
    assert not places.lasts(batch.id, Phase.NURSERY)
    assert places.free_count(NURSERY.id, 1, start_day=0, end_day=1) == 0
    assert places.free_count(NURSERY.id, 1, start_day=1, end_day=2) == NURSERY.places_per_unit


WISHES = st.lists(
    st.tuples(
        st.integers(0, 60),
        st.integers(1, 60),
        st.integers(1, 70),
        st.sampled_from([None, None, 1, 2, 3, 4]),
        st.integers(-10, 10),
    ),
    min_size=1,
    max_size=14,
)


@given(wishes=WISHES)
def test_that_nothing_is_booked_twice_and_nothing_refused_that_would_fit(wishes):
    """Against the plainest book there is: a set of (raft, place, day)."""
    batches = [
        batch_of(f"B-{n}", sow_on=MONDAY + timedelta(days=sow), bed_days=float(days), plants=plants)
        for n, (sow, days, plants, _, _) in enumerate(wishes)
    ]
    places = places_for(*batches)
    booked: set[tuple[int, int, int]] = set()
    for batch, (sow, days, plants, unit, shift) in zip(batches, wishes, strict=True):
        start = sow + FIRST_BED_DAY + shift
        span = range(start, start + days)
        units = range(1, RAFT.units + 1) if unit is None else (unit,)
        free = {
            (number, place)
            for number in units
            for place in range(1, PLACES_ON_A_RAFT + 1)
            if not any((number, place, day) in booked for day in span)
        }
        found = places.fit(batch.id, Phase.BED, RAFT.id, count=plants, unit=unit, by_days=shift)
        if isinstance(found, Refusal):
            assert len(free) < plants
            assert (found.free, found.needed) == (len(free), plants)
            continue
        assert sum(placement.count for placement in found) == plants
        taken = taken_by(found)
        assert len(taken) == plants
        assert taken <= free
        booked |= {(number, place, day) for number, place in taken for day in span}
        for placement in found:
            places.hold(placement, by_days=shift)


@given(wishes=WISHES)
def test_that_places_found_clash_with_nothing_in_the_forecast(wishes):
    batches = tuple(
        batch_of(f"B-{n}", sow_on=MONDAY + timedelta(days=sow), bed_days=float(days), plants=plants)
        for n, (sow, days, plants, _, _) in enumerate(wishes)
    )
    places, given_places = places_for(*batches), []
    for batch in batches:
        found = places.fit(batch.id, Phase.BED, RAFT.id, count=batch.plants)
        if not isinstance(found, Refusal):
            given_places.extend(found)
            for placement in found:
                places.hold(placement)
    farm = dataclasses.replace(farm_of(batches=batches), placements=tuple(given_places))
    assert list(clashes(holds(farm, FORECASTER.preview(farm)))) == []
