"""A figure of the book over which an own value lies answers with the value, and what it was before."""

import pytest
from PySide6.QtCore import Qt

from planner.desk.book import value_words
from planner.desk.why.dialog import WhyDialog

WHY = (Qt.Key.Key_I, Qt.KeyboardModifier.ControlModifier)
VALUE = 1


@pytest.fixture
def page(qtbot, window):
    window.activateWindow()
    qtbot.waitUntil(window.isActiveWindow)
    window.menus.actions["view.book"].trigger()
    return window.workspace.shelf.place("book")


def asked(qtbot, window, page):
    """Ask why of the chosen figure by the keys, and return the answer in words."""
    page.figures.setCurrentIndex(page.figures.model().index(page.figures.currentIndex().row(), VALUE))
    page.figures.setFocus()
    qtbot.keyClick(page.figures, *WHY)
    (dialog,) = [each for each in window.findChildren(WhyDialog) if each.isVisible()]
    answer = dialog.answer
    dialog.reject()
    return answer


def test_that_an_own_value_answers_with_what_the_book_says_and_who_says_it(qtbot, window, page, farm, means):
    crop = farm.batches[0].crop
    before = means.catalogue.figure(f"crop/{crop}/bed_days")
    own = before.value - 2
    page.entries.choose(crop)
    page.figures.choose("bed_days")
    plain = asked(qtbot, window, page)
    assert not any("before your own value" in note for note in plain.notes)
    page.value.setFocus()
    page.value.selectAll()
    qtbot.keyClicks(page.value, f"{own:g}")
    for _ in range(2):  # first it is told which days move
        qtbot.mouseClick(page.keep, Qt.MouseButton.LeftButton)
    page.figures.choose("bed_days")
    answer = asked(qtbot, window, page)
    assert answer.value.startswith(f"{own:g}")
    (note,) = [note for note in answer.notes if "before your own value" in note]
    assert value_words(before) in note
    assert "your own value" in answer.formula
    window.conduct.undo()
    page.figures.choose("bed_days")
    assert asked(qtbot, window, page) == plain
