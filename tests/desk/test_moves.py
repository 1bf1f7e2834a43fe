"""After every act that moves dates the window says what moved and why, and the history keeps it."""

import dataclasses
import itertools
from datetime import timedelta

import pytest
from PySide6.QtCore import QEvent, Qt
from PySide6.QtWidgets import QApplication, QWidget

from planner.actions.memory import MemoryKeeper
from planner.actions.session import Session
from planner.desk.moves import cause_words
from planner.desk.pages import Fact
from planner.farm.changes import Change, ChangeSet
from planner.farm.species import HarvestKind
from planner.planning.moved import Cause, Moved, MovedBecause
from tests.desk.helpers import NOW


def session_on(means, keeper):
    """A sitting at a farm that is kept."""
    return Session(
        keeper, means.catalogue, holds_of=means.holds, faults_of=means.faults, now=lambda: next(MOMENTS)
    )


MOMENTS = (NOW + timedelta(minutes=each) for each in itertools.count())
CTRL = Qt.KeyboardModifier.ControlModifier


@pytest.fixture
def workspace(window):
    return window.workspace


def sown_later(batch, days):
    after = dataclasses.replace(batch, sow_on=batch.sow_on + timedelta(days=days), locked=False)
    return ChangeSet(title=f"Move {batch.code}", changes=(Change(before=batch, after=after),))


def facts(workspace) -> tuple[Fact, ...]:
    return workspace.side.page.sections[0].facts


def test_that_an_act_that_moves_one_batch_says_old_and_new_day(window, workspace, farm):
    batch = farm.batches[-1]
    assert workspace.moves_strip.isHidden()
    window.conduct.act(sown_later(batch, 3))
    assert not workspace.moves_strip.isHidden()
    words = workspace.moves_strip.said
    assert batch.code in words
    assert "3 days later" in words
    assert "→" in words


def test_that_the_list_is_reached_by_keys_and_names_every_batch_with_its_cause(
    qtbot, window, workspace, farm
):
    batch = farm.batches[-1]
    window.conduct.act(sown_later(batch, 3))
    qtbot.keyClick(window, Qt.Key.Key_M, CTRL)
    page = workspace.side.page
    assert page.title == "What moved, and why"
    assert page.subtitle == f"Move {batch.code}"
    (fact,) = facts(workspace)
    assert fact.label == batch.code
    assert "→" in fact.value
    assert fact.note.startswith("3 days later · changed on it: ")
    assert workspace.side.week.isVisible()
    qtbot.mouseClick(workspace.side.week, Qt.MouseButton.LeftButton)
    assert workspace.side.page.title.startswith("Week")


def test_that_undo_says_what_it_moves_back(window, workspace, farm):
    batch = farm.batches[-1]
    window.conduct.act(sown_later(batch, 3))
    window.conduct.undo()
    assert "3 days earlier" in workspace.moves_strip.said


def test_that_an_act_that_moves_nothing_puts_the_strip_away(window, workspace, farm):
    batch = farm.batches[-1]
    window.conduct.act(sown_later(batch, 3))
    noted = next(each for each in window.conduct.session.farm.batches if each.id != batch.id)
    after = dataclasses.replace(noted, notes="dry corner")
    window.conduct.act(ChangeSet(title="Note", changes=(Change(before=noted, after=after),)))
    assert workspace.moves_strip.isHidden()
    said = []
    workspace.told.connect(said.append)
    workspace.run("change.moved")
    assert said == ["The last act moved no dates."]


def test_that_other_months_move_many_batches_and_the_season_is_named_as_the_cause(window, workspace, farm):
    site = farm.sites[0]
    bright = dataclasses.replace(site, radiation_mj_per_m2_d=(24.0,) * 12, air_c=(24.0,) * 12)
    window.conduct.act(ChangeSet(title="Change the site", changes=(Change(before=site, after=bright),)))
    assert "batches have other dates" in workspace.moves_strip.said
    workspace.moves_strip.list.click()
    listed = facts(workspace)
    assert len(listed) >= 2
    assert all("the season, water or bed" in fact.note for fact in listed)
    days = [int(fact.note.split()[0]) for fact in listed]
    assert days == sorted(days, reverse=True)


def history_of(qtbot, window):
    """The history as it is once what the chosen act moved has been worked out."""
    from planner.desk.history.dialog import HistoryDialog

    window.workspace.run("change.history")
    dialog = window.findChild(HistoryDialog)
    qtbot.waitUntil(lambda: "Working out" not in dialog.words.text())
    return dialog


def test_that_the_history_tells_of_an_act_what_it_moved_and_why(qtbot, window, workspace, farm):
    batch = farm.batches[-1]
    window.conduct.act(sown_later(batch, 3))
    dialog = history_of(qtbot, window)
    assert dialog.words.text().startswith(f"Moved: {batch.code} ")
    assert "Why: changed on it: " in dialog.words.text()
    dialog.moves.click()
    assert workspace.side.page.title == "What moved, and why"
    assert workspace.side.page.subtitle == f"Move {batch.code}"
    assert facts(workspace)[0].label == batch.code


def test_that_the_history_tells_what_acts_of_an_earlier_sitting_moved(qtbot, window, farm, means):
    first, second = farm.batches[-1], farm.batches[-2]
    keeper = MemoryKeeper(farm)
    earlier = session_on(means, keeper)
    for batch, days in ((first, 3), (second, 5)):
        earlier.act(sown_later(batch, days))
    window.conduct.take(session_on(means, keeper))
    dialog = history_of(qtbot, window)
    assert f"Moved: {second.code} " in dialog.words.text()
    dialog.table.choose("1")
    qtbot.waitUntil(lambda: f"Moved: {first.code} " in dialog.words.text())
    assert second.code not in dialog.words.text().partition("\n")[0]
    window.conduct.undo()
    dialog.table.choose("0")
    qtbot.waitUntil(lambda: f"Moved: {second.code} " in dialog.words.text())
    dialog.close()


def test_that_the_history_says_of_an_act_that_moved_nothing_that_it_did(qtbot, window, farm):
    batch = farm.batches[0]
    noted = dataclasses.replace(batch, notes="dry corner")
    window.conduct.act(ChangeSet(title="Note", changes=(Change(before=batch, after=noted),)))
    dialog = history_of(qtbot, window)
    assert dialog.words.text().startswith("It moved no dates.")
    assert not dialog.moves.isEnabled()
    dialog.close()


def test_that_a_longer_window_of_picking_says_when_the_places_are_free(window, workspace, farm, means):
    crops = means.catalogue.crops
    batch = next(each for each in farm.batches if crops[each.crop].harvest is not HarvestKind.SINGLE)
    workspace.choose(batch.id)
    workspace.run("change.shorter")
    assert window.conduct.undo_title == f"Pick {batch.code} 7 days shorter"
    words = workspace.moves_strip.said
    assert words.startswith(f"Places of {batch.code} free: ")
    assert words.endswith("7 days earlier")
    workspace.show_moves()
    (section,) = [each for each in workspace.side.page.sections if each.facts]
    assert section.title == "Places free again"


def test_that_another_farm_begins_with_nothing_moved(window, workspace, farm, session):
    window.conduct.act(sown_later(farm.batches[-1], 3))
    window.conduct.take(session)
    assert workspace.moves_strip.isHidden()
    assert workspace.moves.latest == ()


@pytest.mark.parametrize("cause", list(Cause))
def test_that_every_cause_has_words(cause, farm):
    moved = Moved(batch=farm.batches[0].id, old_on=None, new_on=None)
    assert cause_words(MovedBecause(moved=moved, cause=cause, by=("sow_on",))).strip()


def laid(workspace):
    """Where the lanes lie on the screen, and how high each of them is."""
    QApplication.processEvents()
    lanes = workspace.lanes
    parts = [each.geometry() for each in lanes.findChildren(QWidget) if each.isVisible()]
    return lanes.mapToGlobal(lanes.rect().topLeft()), lanes.size(), parts


def test_that_nothing_under_the_pointer_moves_when_it_is_said_what_moved(window, workspace, farm):
    before, high = laid(workspace), window.foot.height()
    window.conduct.act(sown_later(farm.batches[-1], 3))
    assert workspace.moves_strip.isVisible()
    assert laid(workspace) == before
    workspace.moves_strip.close_button.click()
    assert not workspace.moves_strip.isVisible()
    assert laid(workspace) == before
    assert window.foot.height() == high


def test_that_the_bars_stay_where_they_are_when_a_message_comes_and_when_an_act_clears_it(
    window, workspace, farm
):
    before = laid(workspace)
    window.trouble("The loop cannot carry that.\nNothing was changed.")
    assert laid(workspace) == before
    window.conduct.act(sown_later(farm.batches[-1], 3))
    assert window.messages.words == ""
    assert laid(workspace) == before


def test_that_a_message_has_room_below_a_page_with_fields(window, workspace):
    window.trouble("The loop cannot carry that.")
    workspace.run("view.records")
    QApplication.processEvents()
    bar = window.messages
    assert bar.room.isVisible()
    assert bar.geometry() == bar.room.geometry()
    assert workspace.geometry().bottom() < bar.geometry().top()
    workspace.run("view.weeks")
    assert not bar.room.isVisible()
    assert bar.isVisible()


def test_that_long_words_of_what_moved_are_cut_and_told_whole_on_hover_and_aloud(window, workspace):
    words = "First pick of " + "a very long code " * 30
    workspace.moves_strip.say(words)
    QApplication.processEvents()
    line = workspace.moves_strip.list
    assert line.fontMetrics().horizontalAdvance(line.text()) <= line.width()
    assert words in line.toolTip()
    assert words in line.accessibleName()


def test_that_another_workspace_brings_its_own_line(window, workspace):
    window.act_start(window._services.now())
    QApplication.sendPostedEvents(None, QEvent.Type.DeferredDelete)
    held = [each for each in window.foot.children() if each.objectName() == "moves"]
    assert held == [window.workspace.moves_strip]
