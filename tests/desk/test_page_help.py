"""F1 opens the help to the page in front, and the glossary lies in the same window."""

import pytest
from PySide6.QtCore import Qt

from planner.desk.page_help import PAGES, PageHelpDialog
from planner.desk.places.listed import LISTED
from planner.desk.plan.help_pages import help_of
from tests.desk.helpers import nameless_controls, put_away


@pytest.mark.parametrize("listed", LISTED, ids=lambda listed: listed.key)
def test_that_f1_helps_with_the_page_in_front(qtbot, window, listed):
    window.menus.actions[f"view.{listed.key}"].trigger()
    qtbot.keyClick(window, Qt.Key.Key_F1)
    (dialog,) = window.findChildren(PageHelpDialog)
    said = " ".join(dialog.text.toPlainText().split())
    for heading, paragraphs in (*help_of(listed.key, PAGES), *help_of("every", PAGES)):
        assert heading in said
        assert all(words in said for words in paragraphs)
    assert nameless_controls(dialog) == []
    dialog.reject()
    put_away(dialog)


def test_that_the_words_lie_in_the_same_window(qtbot, window):
    qtbot.keyClick(window, Qt.Key.Key_F1)
    (dialog,) = window.findChildren(PageHelpDialog)
    qtbot.keyClick(dialog.tabs.tabBar(), Qt.Key.Key_Right)
    assert dialog.tabs.currentWidget() is dialog.words
    qtbot.keyClicks(dialog.words.search, "raft")
    assert 0 < dialog.words.table.model().rowCount() < dialog.words.model.rowCount()
    dialog.reject()
    put_away(dialog)
