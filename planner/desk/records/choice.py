"""A box to choose from by keyboard alone. Must know nothing of what is chosen."""

from __future__ import annotations

from typing import Final

from PySide6.QtCore import QElapsedTimer, QEvent, QObject, Qt
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QApplication, QComboBox, QWidget

_TABS: Final = (Qt.Key.Key_Tab, Qt.Key.Key_Backtab)


class Choice(QComboBox):
    """Typed words choose, blanks and all; Tab in the open list takes what is marked there and goes on."""

    def __init__(self, parent: QWidget) -> None:
        super().__init__(parent)
        self._since_typed = QElapsedTimer()
        self.view().installEventFilter(self)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Take a blank soon after a letter for part of what is typed; by itself it opens the list."""
        if event.key() == Qt.Key.Key_Space and self._is_typing():
            self._since_typed.start()
            self._type(event.text())
            return
        if event.text().strip():
            self._since_typed.start()
        super().keyPressEvent(event)

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """Let Tab leave the open list as Enter does, and the box as it always does."""
        if isinstance(event, QKeyEvent) and event.type() is QEvent.Type.KeyPress and event.key() in _TABS:
            self._take(self.view().currentIndex().row())
            self.hidePopup()
            self.focusNextPrevChild(event.key() == Qt.Key.Key_Tab)
            return True
        return super().eventFilter(watched, event)

    def _is_typing(self) -> bool:
        """Tell whether a letter was typed as short ago as the toolkit goes on with a search."""
        timer, most_ms = self._since_typed, QApplication.keyboardInputInterval()
        return timer.isValid() and not timer.hasExpired(most_ms)

    def _type(self, text: str) -> None:
        view = self.view()
        view.setCurrentIndex(self.model().index(self.currentIndex(), self.modelColumn()))
        view.keyboardSearch(text)
        self._take(view.currentIndex().row())

    def _take(self, row: int) -> None:
        if row >= 0:
            self.setCurrentIndex(row)
