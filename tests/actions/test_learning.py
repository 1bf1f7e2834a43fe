"""A lesson is taken up by the batches that keep their places with it; the others are named, nobody moves."""

import dataclasses
from datetime import date, timedelta

import pytest

from planner.actions.learning import adopt
from planner.actions.session import Session
from planner.bootstrap import Means, utc_now
from planner.farm.changes import applied
from planner.farm.crops import Phase
from planner.farm.ids import id_from
from planner.forecast.occupancy import clashes
from planner.planning.learning import Estimate, Learned
from planner.store.store import FarmStore


@pytest.fixture(scope="module")
def means():
    return Means()


@pytest.fixture
def farm(means, root):
    """A batch, one that follows it on its places the very day these are free, and one for itself."""
    yard = means.read(root / "sample_data" / "backyard.toml").farm
    first = next(one for one in yard.batches if one.crop == "lettuce-leaf")
    run = next(one for one in yard.placements if one.phase is Phase.BED and one.batch == first.id)
    first = dataclasses.replace(first, plants=1, locked=False, sow_on=date(2027, 4, 5))
    run = dataclasses.replace(run, count=1)
    for days in range(1, 200):
        follower = dataclasses.replace(
            first, id=id_from("f"), code="FOLLOWS", sow_on=first.sow_on + timedelta(days=days)
        )
        its_run = dataclasses.replace(run, id=id_from("fp"), batch=follower.id)
        full = dataclasses.replace(yard, batches=(first, follower), placements=(run, its_run), log_entries=())
        if not tuple(clashes(means.holds(full))):
            break
    alone = dataclasses.replace(first, id=id_from("a"), code="ALONE")
    its_place = dataclasses.replace(run, id=id_from("ap"), batch=alone.id, first=run.first + 1)
    return dataclasses.replace(
        full, batches=(*full.batches, alone), placements=(*full.placements, its_place), fish_events=()
    )


@pytest.fixture
def session(means, farm, tmp_path):
    with FarmStore.create(tmp_path / "full.raftweek", farm, means.holds(farm)) as store:
        yield Session(store, means.catalogue, holds_of=means.holds, faults_of=means.faults, now=utc_now)


def lesson(farm, means, field, *, longer):
    """What says that a stage lasts so many days longer than the book has it, in the quarter of the first."""
    first = farm.batches[0]
    book = float(getattr(means.catalogue.crops[first.crop], field))
    found = Estimate(value=book + longer, book=book, n=5, unfinished=0, spread=1.0)
    quarter = (first.sow_on.month - 1) // 3
    return Learned(crop=first.crop, variety=first.variety, quarter=quarter, field=field, estimate=found)


def taken_up(session, means, field, *, longer):
    today = session.farm.batches[0].sow_on - timedelta(days=1)
    return adopt(session.farm, lesson(session.farm, means, field, longer=longer), today, holds_of=means.holds)


def with_days(session, field):
    return {batch.code for batch in session.farm.batches if getattr(batch, field) is not None}


def test_that_a_longer_stage_is_taken_up_where_the_beds_have_room_and_the_others_are_named(session, means):
    before = session.farm
    first = before.batches[0]
    found = taken_up(session, means, "bed_days", longer=6)
    assert found.left_out == (first,)
    session.act(found.act)
    assert "ALONE" in with_days(session, "bed_days")
    assert first.code not in with_days(session, "bed_days")
    assert session.farm.placements == before.placements
    assert session.faults == ()
    session.undo()
    assert session.farm == before


def test_that_those_who_had_no_room_take_it_up_once_there_is(session, means):
    session.act(taken_up(session, means, "bed_days", longer=6).act)
    follower = next(batch for batch in session.farm.batches if batch.code == "FOLLOWS")
    gone = tuple(one for one in session.farm.placements if one.batch == follower.id)
    free = dataclasses.replace(
        session.farm, placements=tuple(p for p in session.farm.placements if p not in gone)
    )
    today = free.batches[0].sow_on - timedelta(days=1)
    again = adopt(free, lesson(free, means, "bed_days", longer=6), today, holds_of=means.holds)
    assert again.left_out == ()
    assert free.batches[0].id in again.act.ids("batch")


def test_that_a_batch_whose_follower_comes_as_much_later_has_room(session, means):
    """In the nursery they have no places here; each comes to the bed later by the same days."""
    found = taken_up(session, means, "nursery_days", longer=3)
    assert found.left_out == ()
    assert {change.after.code for change in found.act.changes} >= {"FOLLOWS", session.farm.batches[0].code}


@pytest.mark.parametrize("longer", [-2, -1, 1, 4, 9])
@pytest.mark.parametrize("field", ["germination_days", "nursery_days", "bed_days"])
def test_that_whatever_is_taken_up_makes_no_two_plants_share_a_place(session, means, field, longer):
    found = taken_up(session, means, field, longer=longer)
    assert len(found.act.changes) + len(found.left_out) > 0
    assert not tuple(clashes(means.holds(applied(session.farm, found.act))))
