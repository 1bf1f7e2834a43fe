"""Places for many batches at once, and what is told of those that found none."""

from __future__ import annotations

import dataclasses
from datetime import timedelta

from hypothesis import given
from hypothesis import strategies as st

from planner.catalogue.loading import shipped_catalogue
from planner.farm.crops import Phase
from planner.farm.ids import id_from
from planner.farm.species import BedKind
from planner.forecast.engine import Forecaster
from planner.forecast.occupancy import clashes, holds
from planner.planning.many import Rules, place_many
from planner.planning.placement import Freeing, RefusalKind
from tests.farms import LOOP, MONDAY, NURSERY, RAFT, batch_of, farm_of, places_of, weekly_batches

FORECASTER = Forecaster(shipped_catalogue())
BED_ONLY = Rules(phases=(Phase.BED,))
SECOND = dataclasses.replace(RAFT, id=id_from("second raft"), name="Second", units=1)


def placed(farm, batches=None, **choice):
    return place_many(
        farm.batches if batches is None else batches,
        farm,
        FORECASTER.preview(farm),
        **{"rules": BED_ONLY, **choice},
    )


def test_that_each_phase_asked_for_gets_its_places():
    batch = batch_of(bed=RAFT.id, spacing_days=7.0)
    found = placed(farm_of(batches=(batch,)), rules=Rules(phases=tuple(Phase)))
    assert {run.phase for run in found.placements} == set(Phase)
    assert {run.bed for run in found.placements if run.phase is Phase.NURSERY} == {NURSERY.id}


def test_that_places_given_before_stay_and_are_not_asked_for_again():
    batch = batch_of(bed=RAFT.id, locked=True)
    farm = farm_of(batches=(batch,), placements=(places_of(batch, unit=3),))
    assert placed(farm).placements == ()


def test_that_cleaning_days_are_held_as_well():
    first, second = batch_of("A", bed=RAFT.id, plants=100, clearing_days=2.0), batch_of("B", bed=RAFT.id)
    for days, fits in ((29, False), (30, True)):
        later = dataclasses.replace(second, sow_on=MONDAY + timedelta(days=days))
        found = placed(farm_of(batches=(first, later)))
        assert (found.refusals == ()) is fits


def test_that_a_bed_of_a_kind_the_crop_does_not_grow_in_is_refused():
    gravel = dataclasses.replace(RAFT, id=id_from("gravel"), name="Gravel", kind=BedKind.MEDIA)
    batch = batch_of(bed=gravel.id)
    crop = dataclasses.replace(FORECASTER.catalogue.crops[batch.crop], beds=(BedKind.RAFT,))
    rules = Rules(phases=(Phase.BED,), crops={batch.crop: crop})
    farm = farm_of(beds=(gravel, RAFT, NURSERY), batches=(batch,))
    assert [refusal.kind for refusal in placed(farm, rules=rules).refusals] == [RefusalKind.WRONG_BED]
    found = placed(farm, rules=rules, beds={batch.id: (gravel.id, RAFT.id)})
    assert {run.bed for run in found.placements} == {RAFT.id}


def test_that_a_batch_is_laid_across_beds_when_neither_alone_has_room():
    batch = batch_of(bed=SECOND.id, plants=30)
    small = dataclasses.replace(RAFT, units=1)
    farm = farm_of(beds=(small, SECOND, NURSERY), batches=(batch,))
    beds = {batch.id: (SECOND.id, small.id)}
    found = placed(farm, beds=beds)
    assert {run.bed: run.count for run in found.placements} == {SECOND.id: 25, small.id: 5}
    unsplit = placed(farm, rules=dataclasses.replace(BED_ONLY, split_allowed=False), beds=beds)
    assert [refusal.free for refusal in unsplit.refusals] == [50]


def test_that_a_refusal_says_the_week_what_is_missing_and_what_would_make_room():
    standing = tuple(
        batch_of(f"OLD-{n}", bed=RAFT.id, plants=40, bed_days=28.0 + 7 * n, locked=n == 1) for n in range(2)
    )
    new = batch_of("NEW", sow_on=MONDAY + timedelta(days=3), bed=RAFT.id, plants=50)
    farm = farm_of(batches=(*standing, new))
    refusal = placed(farm).refusals[0]
    assert (refusal.batch, refusal.needed, refusal.free, refusal.short) == (new.id, 50, 20, 30)
    assert refusal.tight_on == refusal.from_on == MONDAY + timedelta(days=24)
    assert refusal.blocking == ("OLD-0", "OLD-1")
    assert refusal.freeing == (Freeing(code="OLD-0", places=40, until_on=MONDAY + timedelta(days=49)),)


def test_that_a_hold_to_come_is_told_as_the_tightest_day():
    coming = batch_of("COMING", sow_on=MONDAY + timedelta(days=14), bed=RAFT.id, plants=25)
    new = batch_of("NEW", bed=RAFT.id, plants=90)
    later = tuple(places_of(coming, unit=1, first=1, count=25) for _ in range(1))
    refusal = placed(farm_of(batches=(coming, new), placements=later)).refusals[0]
    assert (refusal.needed, refusal.free) == (90, 75)
    assert refusal.tight_on == MONDAY + timedelta(days=35)
    assert refusal.freeing[0].code == "COMING"


@given(
    count=st.integers(1, 14),
    plants=st.integers(1, 60),
    bed_days=st.integers(1, 60),
    split=st.booleans(),
    together=st.booleans(),
    locked=st.integers(0, 3),
)
def test_that_nothing_clashes_and_what_stood_before_stands_on(
    count, plants, bed_days, split, together, locked
):
    batches = weekly_batches(count, plants=plants, bed=RAFT.id, bed_days=float(bed_days))
    stands = tuple(
        batch_of(f"L-{n}", sow_on=MONDAY + timedelta(days=30 * n), plants=20, locked=True)
        for n in range(locked)
    )
    held = tuple(places_of(batch, unit=1 + n) for n, batch in enumerate(stands))
    farm = farm_of(batches=(*batches, *stands), placements=held)
    found = placed(farm, batches, rules=Rules(split_allowed=split, keep_together=together))
    after = dataclasses.replace(farm, placements=(*held, *found.placements))
    assert list(clashes(holds(after, FORECASTER.preview(after)))) == []
    in_beds = {(run.batch, run.phase) for run in found.placements}
    assert len(in_beds) + len(found.refusals) == 2 * count
    assert LOOP.id == RAFT.loop


def test_that_what_would_make_room_names_each_batch_once():
    """One batch lies in two runs; its places are told together."""
    standing = batch_of("LTB-OLD", plants=50)
    new = batch_of("LTB-NEW", plants=80, bed=RAFT.id)
    runs = (places_of(standing, unit=1, count=25), places_of(standing, unit=2, count=25))
    farm = farm_of(batches=(standing, new), placements=runs)
    found = place_many((new,), farm, FORECASTER.preview(farm), rules=Rules(phases=(Phase.BED,)))
    (refusal,) = found.refusals
    assert refusal.short == 30
    assert [(one.code, one.places) for one in refusal.freeing] == [("LTB-OLD", 50)]
