"""A batch that is moved keeps its places where it can, finds others where it must, or is refused."""

import dataclasses
from datetime import timedelta

import pytest
from hypothesis import given
from hypothesis import strategies as st

from planner.farm.changes import ChangeSet, applied
from planner.farm.crops import Batch, Phase, Placement
from planner.farm.ids import new_id
from planner.farm.species import BedKind
from planner.forecast.checks import all_faults
from planner.planning.placement import Refusal, RefusalKind
from planner.planning.settling import Settler, Step, settle_altered, settle_new
from planner.shipped import shipped_path


@pytest.fixture(scope="session")
def settler_of(means, farm):
    def make(batch):
        return Settler(farm, means.forecaster, batch.id)

    return make


def after(farm, changes):
    return applied(farm, ChangeSet(title="try", changes=tuple(changes)))


def bed_run(farm, batch):
    return next(run for run in farm.placements if run.batch == batch.id and run.phase is Phase.BED)


def test_that_a_move_in_time_takes_the_batch_along_with_its_places(farm, means, settler_of):
    batch = farm.batches[-1]
    changes = settler_of(batch).move(Step(batch=batch.id, days=3))
    moved = after(farm, changes)
    assert moved.batches[-1].sow_on == batch.sow_on + timedelta(days=3)
    assert all_faults(moved, means.forecaster) == ()


def test_that_a_locked_batch_is_not_moved(farm, means):
    batch = dataclasses.replace(farm.batches[0], locked=True)
    locked = dataclasses.replace(farm, batches=(batch, *farm.batches[1:]))
    settler = Settler(locked, means.forecaster, batch.id)
    found = settler.move(Step(batch=batch.id, days=7))
    assert isinstance(found, Refusal)
    assert found.kind is RefusalKind.LOCKED


def test_that_a_bed_that_does_not_suit_the_phase_is_refused(farm, settler_of):
    batch = farm.batches[0]
    nursery = next(bed for bed in farm.beds if bed.kind is BedKind.NURSERY)
    run = bed_run(farm, batch)
    found = settler_of(batch).move(Step(batch=batch.id, run=run.id, bed=nursery.id, unit=1))
    assert isinstance(found, Refusal)
    assert found.kind is RefusalKind.WRONG_BED


@pytest.fixture(scope="session")
def kitchen(means):
    """A farm with a climate, where a batch sown on another day takes another time."""
    return means.read(shipped_path("sample_data", "school-kitchen.toml")).farm


@given(data=st.data())
def test_that_whatever_is_moved_wherever_no_place_is_ever_held_twice(data, kitchen, means):
    farm = kitchen
    batch = data.draw(st.sampled_from(farm.batches))
    days = data.draw(st.integers(-40, 120))
    bed = data.draw(st.sampled_from((None, *farm.beds)))
    runs = [run for run in farm.placements if run.batch == batch.id]
    step = Step(batch=batch.id, days=days)
    if bed is not None and runs:
        unit = data.draw(st.integers(1, bed.units))
        step = dataclasses.replace(step, run=data.draw(st.sampled_from(runs)).id, bed=bed.id, unit=unit)
    found = Settler(farm, means.forecaster, batch.id).move(step)
    if isinstance(found, Refusal):
        assert found.batch == batch.id
        return
    moved = after(farm, found)
    assert all_faults(moved, means.forecaster) == ()
    assert held_by_phase(moved, batch) == held_by_phase(farm, batch)


def held_by_phase(farm, batch):
    return {
        phase: sum(run.count for run in farm.placements if run.batch == batch.id and run.phase is phase)
        for phase in Phase
    }


@pytest.fixture(scope="session")
def crowded(farm):
    """Two sowings that fill the first tray one after the other; the second tray is empty."""
    nursery = next(bed for bed in farm.beds if bed.kind is BedKind.NURSERY)
    early = dataclasses.replace(farm.batches[0], crop="lettuce-leaf", sow_on=farm.settings.plan_from)
    late = dataclasses.replace(early, id=new_id(), code="LATE", sow_on=early.sow_on + timedelta(days=30))
    runs = tuple(
        Placement(
            id=new_id(),
            batch=batch.id,
            phase=Phase.NURSERY,
            bed=nursery.id,
            unit=1,
            first=1,
            count=nursery.places_per_unit,
        )
        for batch in (early, late)
    )
    return dataclasses.replace(farm, batches=(early, late), placements=runs)


def test_that_seedlings_go_to_another_tray_when_theirs_is_full_on_the_new_days(crowded, means):
    late = crowded.batches[1]
    settler = Settler(crowded, means.forecaster, late.id)
    moved = after(crowded, settler.move(Step(batch=late.id, days=-25)))
    (run,) = (run for run in moved.placements if run.batch == late.id)
    assert run.unit == 2
    assert run.id == crowded.placements[1].id
    assert all_faults(moved, means.forecaster) == ()


def test_that_seedlings_held_in_the_hand_stay_on_their_tray_or_are_refused(crowded, means):
    late, run = crowded.batches[1], crowded.placements[1]
    settler = Settler(crowded, means.forecaster, late.id)
    found = settler.move(Step(batch=late.id, run=run.id, days=-25))
    assert isinstance(found, Refusal)
    assert found.blocking == (crowded.batches[0].code,)


def new_batch(farm, **changes):
    model = farm.batches[-1]
    return dataclasses.replace(model, id=new_id(), code="NEW-1", **changes)


def test_that_a_new_batch_gets_places_in_nursery_and_bed(farm, means):
    batch = new_batch(farm, sow_on=farm.plan_until + timedelta(days=30))
    settled = settle_new(farm, batch, means.forecaster)
    phases = {change.after.phase for change in settled.changes if change.word == "placement"}
    assert phases == {Phase.NURSERY, Phase.BED}
    assert settled.refusals == ()
    assert all_faults(after(farm, settled.changes), means.forecaster) == ()


def test_that_a_batch_too_large_for_its_bed_is_sown_without_places_and_says_why(farm, means):
    batch = new_batch(farm, plants=5000)
    settled = settle_new(farm, batch, means.forecaster)
    assert {refusal.kind for refusal in settled.refusals} == {RefusalKind.NO_FREE_PLACES}
    assert any(change.after == batch for change in settled.changes)


def test_that_a_note_on_a_batch_leaves_its_places_alone(farm, means):
    batch = dataclasses.replace(farm.batches[0], notes="by the window")
    settled = settle_altered(farm, batch, means.forecaster)
    assert [change.word for change in settled.changes] == ["batch"]


def test_that_places_are_kept_when_there_is_no_room_for_more_plants(farm, means):
    batch: Batch = farm.batches[-1]
    settled = settle_altered(farm, dataclasses.replace(batch, plants=5000), means.forecaster)
    moved = after(farm, settled.changes)
    own = {run for run in farm.placements if run.batch == batch.id and run.phase is Phase.BED}
    assert own <= set(moved.placements)
    assert RefusalKind.NO_FREE_PLACES in {refusal.kind for refusal in settled.refusals}


def test_that_fewer_plants_let_the_last_places_go(farm, means):
    batch: Batch = next(batch for batch in farm.batches if batch.plants > 8)
    settled = settle_altered(farm, dataclasses.replace(batch, plants=5), means.forecaster)
    moved = after(farm, settled.changes)
    (run,) = [run for run in moved.placements if run.batch == batch.id and run.phase is Phase.BED]
    assert (run.first, run.count) == (bed_run(farm, batch).first, 5)
    assert all_faults(moved, means.forecaster) == ()


def test_that_another_bed_in_mind_moves_the_plants_there(farm, means):
    batch: Batch = next(batch for batch in farm.batches if batch.crop == "mint")
    raft = next(bed for bed in farm.beds if bed.kind is BedKind.RAFT)
    settled = settle_altered(farm, dataclasses.replace(batch, bed=raft.id), means.forecaster)
    moved = after(farm, settled.changes)
    beds = {run.bed for run in moved.placements if run.batch == batch.id and run.phase is Phase.BED}
    assert beds <= {raft.id}
    assert beds or settled.refusals
    assert all_faults(moved, means.forecaster) == ()


def test_that_more_plants_get_more_places(farm, means):
    batch: Batch = next(batch for batch in farm.batches if batch.plants > 8)
    more = dataclasses.replace(batch, plants=batch.plants + 3)
    settled = settle_altered(farm, more, means.forecaster)
    moved = after(farm, settled.changes)
    held = sum(run.count for run in moved.placements if run.batch == batch.id and run.phase is Phase.BED)
    assert held == more.plants
    assert all_faults(moved, means.forecaster) == ()
