"""The mover answers what a drag would do, and carries it out as one act or not at all."""

import dataclasses

import pytest

from planner.desk.conduct import Conduct
from planner.desk.mover import DeskMover, refusal_sentence
from planner.desk.outlook import look_out
from planner.desk.scene_of import scene_of
from planner.farm.crops import Phase
from planner.farm.fields import NO_ID
from planner.farm.ids import id_from
from planner.farm.species import HarvestKind
from planner.planning.placement import Refusal, RefusalKind


@pytest.fixture
def conduct(qtbot, session):
    conduct = Conduct()
    conduct.take(session)
    return conduct


@pytest.fixture
def mover(conduct, session, means):
    mover = DeskMover(conduct)
    mover.show(look_out(session.farm, means.forecaster), means.forecaster)
    return mover


def test_that_a_preview_shows_bars_and_balance_and_changes_nothing(mover, session, farm):
    batch = farm.batches[-1]
    mover.begin(batch.id)
    found = mover.preview(batch.id, NO_ID, 7, NO_ID, 0)
    assert found.allowed
    assert {bar.batch for bar in found.bars} == {batch.id}
    assert found.balance is not None
    assert session.farm == farm


def test_that_bars_of_a_preview_lie_later_by_the_days_moved(mover, farm, means):
    batch = farm.batches[-1]
    before = {
        bar.run: bar.start
        for bar in scene_of(look_out(farm, means.forecaster)).bars()
        if bar.batch == batch.id
    }
    mover.begin(batch.id)
    found = mover.preview(batch.id, NO_ID, 5, NO_ID, 0)
    assert {bar.run: bar.start - 5 for bar in found.bars} == before


def test_that_the_balance_of_a_preview_is_that_of_the_farm_after_the_move(mover, session, farm, means):
    batch = farm.batches[-1]
    mover.begin(batch.id)
    found = mover.preview(batch.id, NO_ID, 7, NO_ID, 0)
    mover.commit()
    after = scene_of(look_out(session.farm, means.forecaster)).balance_of(found.balance.loop)
    for seen, kept in zip(found.balance.elements, after.elements, strict=True):
        assert list(seen.demand.values) == pytest.approx(list(kept.demand.values))


def test_that_a_commit_is_one_act_with_a_title_and_undo_takes_all_of_it_back(mover, session, conduct, farm):
    batch = farm.batches[-1]
    mover.begin(batch.id)
    mover.preview(batch.id, NO_ID, 3, NO_ID, 0)
    mover.preview(batch.id, NO_ID, 7, NO_ID, 0)
    mover.commit()
    assert session.undo_title == f"Move {batch.code} 7 days later"
    assert len(session.history) == 1
    conduct.undo()
    assert session.farm == farm


def test_that_cancelling_forgets_the_move(mover, session, farm):
    batch = farm.batches[-1]
    mover.begin(batch.id)
    mover.preview(batch.id, NO_ID, 7, NO_ID, 0)
    mover.cancel()
    mover.commit()
    assert session.farm == farm
    assert session.history == ()


def test_that_want_of_room_on_one_raft_names_that_raft_and_not_the_whole_bed():
    refusal = Refusal(
        kind=RefusalKind.NO_FREE_PLACES, batch=id_from("b"), bed="Bench", unit=3, needed=19, free=3
    )
    assert "in Bench 3 from" in refusal_sentence(refusal, {id_from("b"): "LET-1"})
    whole = dataclasses.replace(refusal, unit=0)
    assert "in Bench from" in refusal_sentence(whole, {id_from("b"): "LET-1"})


def test_that_a_refusal_is_said_in_words_and_not_carried_out(mover, session, farm):
    batch = farm.batches[0]
    run = next(run for run in farm.placements if run.batch == batch.id and run.phase is Phase.BED)
    nursery = next(bed for bed in farm.beds if bed.kind.value == "nursery")
    mover.begin(batch.id)
    found = mover.preview(batch.id, run.id, 0, nursery.id, 1)
    assert not found.allowed
    assert batch.code in found.reason
    assert nursery.name in found.reason
    mover.commit()
    assert session.farm == farm


def test_that_a_stretched_window_of_picking_is_one_act_with_a_balance(mover, session, means, farm):
    crops = means.catalogue.crops
    batch = next(each for each in farm.batches if crops[each.crop].harvest is not HarvestKind.SINGLE)
    mover.begin(batch.id)
    found = mover.stretch(batch.id, -3)
    assert found.allowed
    assert found.balance is not None
    mover.commit()
    (after,) = (each for each in session.farm.batches if each.id == batch.id)
    assert after.picking_days == round(crops[batch.crop].picking_days) - 3
    assert session.undo_title == f"Pick {batch.code} 3 days shorter"
    session.undo()
    assert session.farm == farm
