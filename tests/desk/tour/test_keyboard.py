"""Every page and dialog by keys alone: whatever takes the keyboard can be reached, left, and has a name."""

import pytest
from PySide6.QtCore import QEvent, Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import (
    QAbstractButton,
    QAbstractItemView,
    QApplication,
    QComboBox,
    QDateTimeEdit,
    QDialog,
    QLineEdit,
    QPlainTextEdit,
    QTabBar,
    QTextBrowser,
    QTextEdit,
)

from tests.desk.helpers import nameless_controls
from tests.desk.tour.stops import DIALOGS, PAGES

MOST_STEPS = 400
"""More than any page has controls: whoever has not come round by then is caught."""
WITH_STEPS = (QTextBrowser, QDateTimeEdit)
"""What is walked through itself by Tab: a text from link to link, a day from part to part."""


def closed(dialog):
    dialog.close()
    QApplication.sendPostedEvents(None, QEvent.Type.DeferredDelete)


def walked(owner, key=Qt.Key.Key_Tab):
    """Press a key until the keyboard is back where it was, and return all that had it on the way."""
    start = QApplication.focusWidget()
    assert start is not None, "nothing has the keyboard"
    seen = [start]
    for _ in range(MOST_STEPS):
        QTest.keyClick(QApplication.focusWidget(), key)
        now = QApplication.focusWidget()
        assert now is not None
        assert now.window() is owner.window()
        if now is seen[-1] and isinstance(now, WITH_STEPS):
            continue
        if now is start:
            return seen
        assert now not in seen, f"caught at {type(now).__name__} {now.accessibleName()!r}"
        seen.append(now)
    raise AssertionError(f"caught at {type(seen[-1]).__name__} {seen[-1].accessibleName()!r}")


def reachable(owner):
    """Return what one expects to reach by Tab: every control that is seen, can be used and takes it."""
    kinds = (QAbstractButton, QAbstractItemView, QComboBox, QLineEdit, QPlainTextEdit, QTextEdit)
    return [
        widget
        for kind in kinds
        for widget in owner.findChildren(kind)
        if widget.isVisible()
        and widget.isEnabled()
        and widget.window() is owner.window()
        and widget.focusPolicy() & Qt.FocusPolicy.TabFocus
        and widget.focusProxy() is None
        and not _is_part(widget)
    ]


def _is_part(widget):
    """Tell of what speaks and acts for its owner, such as the line within a spin box."""
    above = widget.parentWidget()
    if widget.objectName().startswith("qt_") or isinstance(above, QTabBar | QComboBox):
        return True
    return above is not None and above.inherits("QAbstractSpinBox")


def missed(owner, seen):
    left = (each for each in reachable(owner) if each not in seen)
    return [f"{type(each).__name__} {each.accessibleName()!r}" for each in left]


@pytest.mark.parametrize("stop", PAGES, ids=lambda stop: stop.name)
def test_that_tab_goes_round_a_page_and_misses_nothing(desk_in, stop):
    window = desk_in()
    stop.go(window)
    QApplication.processEvents()
    window.activateWindow()
    assert QApplication.focusWidget() is not None
    seen = walked(window)
    assert missed(window, seen) == []
    assert set(walked(window, Qt.Key.Key_Backtab)) == set(seen)


@pytest.mark.parametrize("stop", DIALOGS, ids=lambda stop: stop.name)
def test_that_tab_goes_round_a_dialog_and_escape_leaves_it(desk_in, stop):
    window = desk_in()
    dialog = stop.go(window)
    QApplication.processEvents()
    dialog.activateWindow()
    if QApplication.focusWidget() is None or QApplication.focusWidget().window() is not dialog:
        QTest.keyClick(dialog, Qt.Key.Key_Tab)
    assert missed(dialog, walked(dialog)) == []
    assert isinstance(dialog, QDialog)
    QTest.keyClick(QApplication.focusWidget(), Qt.Key.Key_Escape)
    assert not dialog.isVisible()
    closed(dialog)


@pytest.mark.parametrize("stop", PAGES, ids=lambda stop: stop.name)
def test_that_every_control_of_a_page_has_a_spoken_name(desk_in, stop):
    assert nameless_controls(stop.go(desk_in())) == []


@pytest.mark.parametrize("stop", DIALOGS, ids=lambda stop: stop.name)
def test_that_every_control_of_a_dialog_has_a_spoken_name(desk_in, stop):
    dialog = stop.go(desk_in())
    assert nameless_controls(dialog) == []
    closed(dialog)
