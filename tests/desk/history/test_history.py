"""The list of acts tells where one stands, and goes back and forth to any act by steps."""

import pytest
from PySide6.QtCore import Qt

from planner.actions.changing import removal
from planner.desk.history.dialog import HistoryDialog, steps_to
from planner.desk.ways import kept_words
from tests.desk.helpers import nameless_controls


@pytest.fixture
def dialog(qtbot, window, farm):
    for batch in farm.batches[:3]:
        title = f"Remove {batch.code}"
        window.conduct.act(removal(window.conduct.session.farm, batch, title=title, with_dependants=True))
    window.menus.actions["change.history"].trigger()
    return window.findChild(HistoryDialog)


def test_that_acts_stand_newest_first_with_the_beginning_last(dialog, farm):
    texts = [row.texts for row in dialog.table.model_of_rows.rows]
    assert [text[2] for text in texts[:3]] == [f"Remove {batch.code}" for batch in farm.batches[2::-1]]
    assert texts[0][0] == "▶ you are here"
    assert texts[3][2] == "Before all of these"


def test_that_going_to_the_beginning_takes_every_act_back_and_forth_again(qtbot, window, dialog, farm):
    after = window.conduct.session.farm
    dialog.table.choose("3")
    qtbot.mouseClick(dialog.go, Qt.MouseButton.LeftButton)
    assert window.conduct.session.farm == farm
    assert dialog.table.model_of_rows.rows[3].texts[0] == "▶ you are here"
    dialog.table.choose("0")
    qtbot.keyClick(dialog.table, Qt.Key.Key_Return)
    assert window.conduct.session.farm == after


def test_that_one_step_back_takes_one_act_back(qtbot, dialog):
    qtbot.mouseClick(dialog.back, Qt.MouseButton.LeftButton)
    assert [line.done for line in dialog.lines] == [False, True, True]
    assert steps_to(dialog.lines, 0) == -1
    assert steps_to(dialog.lines, 2) == 1
    assert steps_to(dialog.lines, 3) == 2


def test_that_every_control_has_a_spoken_name(dialog):
    assert nameless_controls(dialog) == []


def test_that_what_was_kept_names_the_last_act_that_stands(window, dialog, farm):
    words = kept_words(window.conduct.session)
    assert f"Remove {farm.batches[2].code}" in words
