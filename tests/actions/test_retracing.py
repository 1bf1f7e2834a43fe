"""The journal leads back to the farm before and after any act, whatever was done or taken back since."""

import dataclasses

import pytest

from planner.actions.retracing import Trail
from planner.farm.changes import Change
from planner.store.late import LateStore
from planner.store.store import FarmStore
from tests.actions.desk_of import in_file, in_memory, session_over
from tests.store.sample import FIRST, FIRST_PLACES, SECOND, altered, change_set

ACTS = (
    altered(FIRST, notes="one"),
    Change(before=FIRST_PLACES),
    altered(SECOND, notes="two"),
    altered(dataclasses.replace(FIRST, notes="one"), notes="three"),
)


def acted(session):
    """Do all acts; return the farm before the first of them and after each."""
    farms = [session.farm]
    for act in ACTS:
        session.act(change_set(act))
        farms.append(session.farm)
    return farms


def see_all(session, farms):
    """See that every act of the history leads to the farm before and after it."""
    for at in range(len(ACTS)):
        past = session.trail(at).walk()
        number = len(ACTS) - at
        assert (past.before, past.after) == (farms[number - 1], farms[number])


@pytest.mark.parametrize("taken_back", range(len(ACTS) + 1))
def test_that_every_act_is_found_whichever_of_them_are_taken_back(taken_back):
    session = in_memory()
    farms = acted(session)
    for _ in range(taken_back):
        session.undo()
    see_all(session, farms)


def test_that_acts_of_an_earlier_sitting_are_found_in_a_file(tmp_path):
    path = tmp_path / "kept.raftweek"
    earlier = in_file(path)
    farms = acted(earlier)
    earlier.undo()
    earlier._store.close()
    for store in (FarmStore.open(path), LateStore.open(path)):
        see_all(session_over(store), farms)
        store.close()


def test_that_an_act_is_told_apart_from_what_another_desk_did_since(tmp_path):
    path = tmp_path / "both.raftweek"
    one = in_file(path)
    with FarmStore.open(path) as store:
        other = session_over(store)
        one.act(change_set(altered(FIRST, notes="from one")))
        other.act(change_set(altered(SECOND, notes="from other")))
        trail = dataclasses.replace(other.trail(1), shared=True)
        past = trail.walk()
        assert {each.notes for each in past.after.batches} >= {"from one"}
        assert "from other" not in {each.notes for each in past.after.batches}
        assert "from one" not in {each.notes for each in past.before.batches}
    one._store.close()


@pytest.mark.parametrize("shared", [False, True])
def test_that_what_leads_nowhere_is_told_by_nothing(shared):
    session = in_memory()
    foreign = change_set(altered(dataclasses.replace(FIRST, notes="never so"), notes="other"))
    trail = Trail(farm=session.farm, steps=(foreign,), act=foreign, stands=True, shared=shared)
    assert trail.walk() is None


def test_that_the_last_act_that_gave_a_field_its_value_is_found():
    session = in_memory()
    acted(session)
    found = session.last_change(FIRST.id, "notes")
    assert found == session.history[0]
    session.undo()
    assert session.last_change(FIRST.id, "notes") == session.history[3]
    assert session.last_change(SECOND.id, "notes") == session.history[1]


def test_that_a_field_that_no_act_changed_has_no_last_change():
    session = in_memory()
    acted(session)
    assert session.last_change(FIRST.id, "plants") is None
    assert session.last_change(FIRST_PLACES.id, "count") is None


def test_that_a_thing_that_an_act_made_was_changed_by_it():
    session = in_memory()
    acted(session)
    session.undo()
    session.undo()
    session.act(change_set(Change(after=FIRST_PLACES)))
    assert session.last_change(FIRST_PLACES.id, "count") == session.history[0]
