"""Two desks on one farm: what the other does is shown, and a clash is settled by asking."""

import dataclasses

import pytest

from planner.actions.batches import change_batch
from planner.desk.forms.form import FormDialog
from planner.store.errors import StoreError
from planner.store.store import FarmStore


@pytest.fixture
def shared(means, farm, tmp_path):
    """A session of somebody else on a farm in a file, and a way to open it once more."""
    path = tmp_path / "shared.raftweek"
    FarmStore.create(path, farm, means.holds(farm)).close()
    stores = [FarmStore.open(path), FarmStore.open(path)]
    yield [means.session(store) for store in stores]
    for store in stores:
        store.close()


@pytest.fixture
def here(window, shared):
    """The window, on the farm that somebody else has open too."""
    window.conduct.take(shared[0])
    return window


@pytest.fixture
def other(shared):
    return shared[1]


def noted(session, notes):
    return change_batch(session.farm, dataclasses.replace(session.farm.batches[0], notes=notes))


def look(window):
    window.files.together.look()


def test_that_what_others_did_is_shown_and_told(here, other):
    other.act(noted(other, "from afar"))
    look(here)
    assert here.conduct.session.farm.batches[0].notes == "from afar"
    assert here.workspace.outlook.farm.batches[0].notes == "from afar"
    assert other.history[0].title in here.messages.words


def test_that_a_clash_asks_and_puts_the_later_value_in_when_wanted(here, other, ask):
    late = noted(here.conduct.session, "mine")
    other.act(noted(other, "theirs"))
    ask.go_on = True
    here.conduct.act(late)
    (question,) = ask.asked
    assert "mine" in question.text
    assert "theirs" in question.text
    assert here.conduct.session.farm.batches[0].notes == "mine"


def test_that_a_clash_leaves_theirs_when_not_wanted(here, other, ask):
    late = noted(here.conduct.session, "mine")
    other.act(noted(other, "theirs"))
    ask.go_on = False
    here.conduct.act(late)
    assert here.conduct.session.farm.batches[0].notes == "theirs"


def test_that_an_open_form_never_takes_back_what_others_did(here, other):
    batch = here.workspace.outlook.farm.batches[0]
    here.workspace.wishes.alter(batch)
    (form,) = here.findChildren(FormDialog)
    other.act(noted(other, "theirs"))
    look(here)
    form.rows["locked"].editor.show_value(not batch.locked)
    form.ok.click()
    now = here.conduct.session.farm.batches[0]
    assert (now.notes, now.locked) == ("theirs", not batch.locked)


def test_that_a_form_says_both_values_once_and_then_keeps_what_was_typed(here, other):
    batch = here.workspace.outlook.farm.batches[0]
    here.workspace.wishes.alter(batch)
    (form,) = here.findChildren(FormDialog)
    other.act(noted(other, "theirs"))
    look(here)
    form.rows["notes"].editor.show_value("mine")
    form.ok.click()
    assert here.conduct.session.farm.batches[0].notes == "theirs"
    form.ok.click()
    assert here.conduct.session.farm.batches[0].notes == "mine"


def test_that_a_lost_connection_is_told_once_and_so_is_its_return(here, monkeypatch):
    together, session = here.files.together, here.conduct.session
    here.conduct.expect((StoreError,), here.conduct.said)

    def broken():
        raise StoreError("The farm could not be reached.")

    with monkeypatch.context() as patch:
        patch.setattr(session, "catch_up", broken)
        together.look()
        assert "could not be reached" in here.messages.words
        here.messages.clear()
        together.look()
        assert here.messages.words == ""
    together.look()
    assert "can be reached again" in here.messages.words


def test_that_undoing_what_others_changed_since_is_refused_in_words(here, other):
    here.conduct.act(noted(here.conduct.session, "mine"))
    other.catch_up()
    other.act(noted(other, "theirs"))
    here.conduct.expect((StoreError,), here.conduct.said)
    here.conduct.undo()
    assert "somebody else" in here.messages.words
