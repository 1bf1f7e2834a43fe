"""Shows what the words of a label mean: on hover, and by a key for whatever has the keyboard.

Hovering reaches the window only where no part in it has a tip of its own. Must know nothing of pages.
"""

from __future__ import annotations

from PySide6.QtCore import QEvent, QObject, QPoint
from PySide6.QtGui import QAccessible, QAccessibleAnnouncementEvent, QHelpEvent
from PySide6.QtWidgets import (
    QAbstractButton,
    QApplication,
    QComboBox,
    QGroupBox,
    QLabel,
    QTabBar,
    QTableView,
    QTextBrowser,
    QToolTip,
    QWidget,
)

from planner.desk.say import tr
from planner.desk.terms import meaning_of


class TermTips(QObject):
    """Watches one window for hovering over words of the trade."""

    def __init__(self, window: QWidget) -> None:
        super().__init__(window)
        self._window = window
        window.installEventFilter(self)

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """Show a tip where nothing below has one of its own."""
        if event.type() is not QEvent.Type.ToolTip or not isinstance(event, QHelpEvent):
            return False
        words = meaning_of(text_at(event.globalPos()))
        if not words:
            return False
        QToolTip.showText(event.globalPos(), words, self._window)
        return watched is self._window

    def tell(self) -> str:
        """Show, speak and return what the words of the part with the keyboard mean."""
        part = QApplication.focusWidget()
        owner = part if part is not None else self._window
        words = meaning_of(text_of(part)) if part is not None else ""
        words = words or tr("No word here is in the list of words.")
        at = owner.mapToGlobal(QPoint(0, owner.height() if owner is not self._window else 0))
        if isinstance(part, QTableView):
            at = part.viewport().mapToGlobal(part.visualRect(part.currentIndex()).bottomLeft())
        QToolTip.showText(at, words, owner)
        QAccessible.updateAccessibility(QAccessibleAnnouncementEvent(owner, words))
        return words


def text_at(point: QPoint) -> str:
    """Return the text of the part under a point of the screen."""
    part = QApplication.widgetAt(point)
    if part is None:
        return ""
    page = part.parent()
    if isinstance(page, QTextBrowser):
        cursor = page.cursorForPosition(part.mapFromGlobal(point))
        return cursor.block().text()
    return shown_text(part)


def shown_text(part: QWidget) -> str:
    """Return the text that a part shows; empty for one that shows none of its own."""
    if isinstance(part, (QLabel, QAbstractButton)):
        return part.text().replace("&", "")
    if isinstance(part, QGroupBox):
        return part.title()
    return part.accessibleName()


def text_of(part: QWidget) -> str:
    """Return what is said of a part: its name, and of a table the heading and the row it stands on."""
    said = [part.accessibleName(), shown_text(part), part.accessibleDescription()]
    if isinstance(part, QComboBox):
        said.append(part.currentText())
    if isinstance(part, QTabBar):
        said.append(part.tabText(part.currentIndex()))
    if isinstance(part, QTableView):
        index = part.currentIndex()
        model = part.model()
        if index.isValid():
            columns = [index.siblingAtColumn(at).data() for at in range(model.columnCount())]
            said += [str(each) for each in columns if each]
    return ". ".join(dict.fromkeys(each for each in said if each))
