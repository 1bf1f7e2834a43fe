"""A session with the real book, forecast and text of a farm: acts, places and the way back."""

import dataclasses

import pytest

from planner.actions import batches, plan
from planner.actions.session import Session
from planner.bootstrap import Means, utc_now
from planner.catalogue.own import laid_over
from planner.farm.crops import Phase
from planner.farm.farm import OwnEntry, Shelf
from planner.farm.faults import FarmFaultError, FaultKind
from planner.farm.ids import new_id
from planner.planning.placement import Places
from planner.store.store import FarmStore


@pytest.fixture
def means():
    return Means()


@pytest.fixture
def session(means, root, tmp_path):
    farm = means.read(root / "sample_data" / "backyard.toml").farm
    with FarmStore.create(tmp_path / "backyard.raftweek", farm, means.holds(farm)) as store:
        yield Session(
            store,
            means.catalogue,
            holds_of=means.holds,
            faults_of=means.faults,
            now=utc_now,
            laid_over=laid_over,
        )


def placed_batch(farm):
    """Return the batch that holds the first run of places in a bed."""
    run = next(run for run in farm.placements if run.phase is Phase.BED)
    return next(batch for batch in farm.batches if batch.id == run.batch), run


def test_that_the_days_kept_are_those_of_the_forecast(session, means):
    assert session.faults == ()
    assert set(session._store.held()) == set(means.holds(session.farm))


def test_that_a_batch_moves_with_its_days_and_comes_back(session, means):
    start = session.farm
    batch, _ = placed_batch(start)
    session.act(batches.unplace_batch(session.farm, batch.id))
    session.act(batches.move_batch(session.farm, None, batch.id, by_days=3))
    assert set(session._store.held()) == set(means.holds(session.farm))
    assert session._store.load() == session.farm
    while session.undo():
        assert set(session._store.held()) == set(means.holds(session.farm))
    assert session.farm == start


def test_that_places_of_the_planning_room_are_taken_and_two_batches_never_share_them(session, means):
    batch, run = placed_batch(session.farm)
    twin = dataclasses.replace(batch, id=new_id(), code="TWIN", locked=False)
    session.act(batches.sow_batch(twin))
    onto = dataclasses.replace(run, id=new_id(), batch=twin.id)
    with pytest.raises(FarmFaultError) as caught:
        session.act(batches.put_in_places(session.farm, twin.id, [onto], phase=Phase.BED))
    assert {fault.kind for fault in caught.value.faults} <= {FaultKind.HELD_PLACE, FaultKind.OUT_OF_LIMITS}
    places = Places(session.farm, means.forecaster.preview(session.farm))
    room = places.fit(twin.id, Phase.BED, run.bed, count=1)
    if isinstance(room, tuple):
        session.act(batches.put_in_places(session.farm, twin.id, room, phase=Phase.BED))
        assert session.faults == ()


def test_that_an_own_entry_that_cannot_be_laid_over_the_book_is_refused(session):
    crop = session.farm.batches[0].crop
    own = OwnEntry(
        id=new_id(), shelf=Shelf.CROP, key="own-crop", like=crop, name="Own", values=(("bed_days", -5.0),)
    )
    with pytest.raises(FarmFaultError, match="bed_days"):
        session.act(plan.add_own_entry(own))
    session.act(plan.add_own_entry(dataclasses.replace(own, values=(("bed_days", 40.0),))))
    assert session.catalogue.crops["own-crop"].bed_days == 40.0
