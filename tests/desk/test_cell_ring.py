"""The cell that has the keyboard has a line around it, and no veil over its text."""

import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtGui import QImage, QPalette
from PySide6.QtWidgets import QAbstractItemView

from planner.desk.plan.kit import Table
from planner.desk.rows import Column, Row
from planner.desk.theme import DARK, LIGHT
from tests.desk.helpers import put_away

ROWS = tuple(Row(id=str(at), texts=(f"row {at}", "12"), sort=(at, 12)) for at in range(3))


@pytest.fixture(params=[LIGHT, DARK], ids=["light", "dark"])
def table(request, qtbot):
    table = Table((Column(title="Name"), Column(title="Number")), "Numbers", request.param, None)
    table.model_of_rows.set_rows(ROWS)
    table.resize(400, 300)
    table.show()
    qtbot.waitExposed(table)
    yield table
    put_away(table)


def picture_of(table: QAbstractItemView, row: int, column: int) -> QImage:
    rect = table.visualRect(table.model().index(row, column))
    return table.viewport().grab(rect).toImage()


def test_that_the_cell_with_the_keyboard_has_a_line_of_its_own_around_it(qtbot, table):
    table.activateWindow()
    table.setFocus()
    qtbot.waitUntil(table.hasFocus)
    qtbot.keyClick(table, Qt.Key.Key_Down)
    qtbot.keyClick(table, Qt.Key.Key_Right)
    index = table.currentIndex()
    line = table.palette().color(QPalette.ColorRole.HighlightedText)
    held = picture_of(table, index.row(), index.column())
    beside = picture_of(table, index.row(), 1 - index.column())
    for at in (QPoint(1, 1), QPoint(held.width() - 2, held.height() - 2)):
        assert held.pixelColor(at) == line
        assert beside.pixelColor(QPoint(1, 1)) != line


def test_that_the_text_under_the_line_is_as_clear_as_without_the_keyboard(qtbot, table):
    table.activateWindow()
    table.setFocus()
    qtbot.waitUntil(table.hasFocus)
    qtbot.keyClick(table, Qt.Key.Key_Down)
    index = table.currentIndex()
    inside = table.visualRect(index).adjusted(2, 2, -2, -2)
    held = table.viewport().grab(inside).toImage()
    table.setCurrentIndex(index.siblingAtColumn(1 - index.column()))
    assert table.viewport().grab(inside).toImage() == held
