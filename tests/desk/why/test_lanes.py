"""The lanes of feed and of the balance offer the numbers of the week under the right button."""

import pytest
from PySide6.QtCore import QPoint
from PySide6.QtGui import QContextMenuEvent
from PySide6.QtWidgets import QApplication

from planner.desk.why.dialog import WhyDialog
from planner.desk.why.drawn import WhyMenu
from planner.desk.why.entered import answer_to
from planner.desk.why.lanes import balance_facts, fish_facts
from planner.desk.words import number_words


def right_click(canvas, x):
    where = QPoint(x, 20)
    event = QContextMenuEvent(QContextMenuEvent.Reason.Mouse, where, canvas.viewport().mapToGlobal(where))
    QApplication.sendEvent(canvas.viewport(), event)
    return canvas.findChild(WhyMenu)


@pytest.mark.qt_log_ignore("^This plugin does not support grabbing the (keyboard|mouse)")
@pytest.mark.parametrize("lane", ["fish", "balance"])
def test_that_the_right_button_offers_the_numbers_of_a_week(window, lane):
    canvas = getattr(window.workspace.lanes, lane)
    menu = right_click(canvas, canvas.viewport().width() - 60)
    assert len(menu.actions()) > 1
    menu.actions()[1].trigger()
    (dialog,) = window.findChildren(WhyDialog)
    assert dialog.figure.currentIndex() == 1
    dialog.reject()
    menu.close()


def test_that_names_of_a_lane_offer_nothing(window):
    assert right_click(window.workspace.lanes.balance, 5) is None


def test_that_hovering_tells_of_it(window):
    lanes = window.workspace.lanes
    for canvas in (lanes.fish, lanes.balance):
        assert "right button" in canvas.hint_at(QPoint(canvas.viewport().width() - 60, 20))
        assert canvas.hint_at(QPoint(5, 20)) == ""


def test_that_feed_of_the_week_is_answered_by_the_figure_shown(window):
    behind = window.workspace.asking.behind
    for week in (4, 12):
        for fact in fish_facts(behind, week):
            found = answer_to(behind, fact.ask)
            digits = 1 if found.unit == "kg" else 0
            assert fact.value.startswith(number_words(found.value, digits=digits))


def test_that_each_element_of_a_week_can_be_asked(window):
    behind = window.workspace.asking.behind
    facts = balance_facts(behind, behind.outlook.forecast.loops[0].loop, 4)
    assert len(facts) >= 8
    assert all(answer_to(behind, fact.ask).title for fact in facts)
