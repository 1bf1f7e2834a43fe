"""Where the keyboard is can be seen on lists and texts without a frame, too."""

from PySide6.QtCore import Qt
from PySide6.QtGui import QColor
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QFrame, QLineEdit, QTextBrowser, QVBoxLayout, QWidget

from planner.desk.focus_ring import FocusRing, FocusRings
from tests.desk.helpers import put_away


def test_that_a_ring_goes_with_the_keyboard_and_follows_the_size(qtbot):
    owner = QWidget()
    column = QVBoxLayout(owner)
    text, line = QTextBrowser(owner), QLineEdit(owner)
    text.setFrameShape(QFrame.Shape.NoFrame)
    text.setTabChangesFocus(True)
    for part in (line, text):
        column.addWidget(part)
    rings = FocusRings(owner)
    owner.show()
    owner.activateWindow()
    qtbot.waitUntil(owner.isActiveWindow)
    line.setFocus()
    assert rings.ring is None
    QTest.keyClick(line, Qt.Key.Key_Tab)
    assert rings.ring.parentWidget() is text
    owner.resize(500, 400)
    QApplication.processEvents()
    assert rings.ring.geometry() == text.rect()
    colour = QColor(text.grab().toImage().pixel(1, text.height() // 2))
    assert colour == text.palette().highlight().color()
    QTest.keyClick(text, Qt.Key.Key_Tab, Qt.KeyboardModifier.ShiftModifier)
    assert rings.ring is None
    put_away(owner)


def test_that_what_shows_the_keyboard_by_its_frame_gets_no_ring(qtbot):
    owner = QTextBrowser()
    rings = FocusRings(owner)
    owner.show()
    owner.setFocus()
    QApplication.processEvents()
    assert rings.ring is None
    put_away(owner)


def test_that_a_ring_goes_with_what_it_is_around(qtbot, window):
    rings = window.focus_rings
    window.activateWindow()
    qtbot.waitUntil(window.isActiveWindow)
    window.workspace.side.text.setFocus()
    assert isinstance(rings.ring, FocusRing)
    window.menus.actions["view.batches"].trigger()
    assert rings.ring.parentWidget() is window.workspace.table.view
