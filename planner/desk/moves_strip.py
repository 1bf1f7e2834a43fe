"""A quiet line in the status bar: says what the last act moved, and leads to the whole list.

It stands where there is always room kept for it, so that nothing under the pointer moves when it comes or
goes. Takes no focus of its own accord. Must know nothing of how it is worked out.
"""

from __future__ import annotations

from PySide6.QtCore import QSize, Qt, Signal
from PySide6.QtGui import QAccessible, QAccessibleEvent, QPalette, QResizeEvent
from PySide6.QtWidgets import QHBoxLayout, QPushButton, QToolButton, QWidget

from planner.desk.say import tr
from planner.desk.theme import Theme


class _Line(QPushButton):
    """A button that is a line of words, cut with dots where it finds too little room."""

    said = ""
    _margin = 4

    def say(self, words: str) -> None:
        """Say words, whole on hover and aloud."""
        self.said = words
        leads = tr("What moved, and why")
        self.setToolTip(f"{words}\n{leads}")
        self.setAccessibleName(f"{words}. {leads}" if words else leads)
        self._fit()

    def sizeHint(self) -> QSize:
        return QSize(0, self.fontMetrics().height())

    def minimumSizeHint(self) -> QSize:
        return self.sizeHint()

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._fit()

    def _fit(self) -> None:
        metrics, leads = self.fontMetrics(), " ›"
        room = max(self.width() - metrics.horizontalAdvance(leads) - 2 * self._margin, 0)
        cut = metrics.elidedText(self.said, Qt.TextElideMode.ElideMiddle, room)
        self.setText(f"{cut}{leads}".replace("&", "&&"))


class MovesStrip(QWidget):
    """One line that leads to the list, and a button to put it away; hidden while there is nothing to say."""

    list_wanted = Signal()

    def __init__(self, theme: Theme, parent: QWidget) -> None:
        super().__init__(parent)
        self.setObjectName("moves")
        self.list = _Line(self)
        self.list.setFlat(True)
        self.list.setCursor(Qt.CursorShape.PointingHandCursor)
        self.list.say("")
        self.close_button = QToolButton(self)
        self.close_button.setText("✕")
        self.close_button.setAutoRaise(True)
        self.close_button.setToolTip(tr("Put this away"))
        self.close_button.setAccessibleName(tr("Put this away"))
        self.close_button.setFocusPolicy(Qt.FocusPolicy.TabFocus)
        row = QHBoxLayout(self)
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(theme.metrics.tight)
        row.addWidget(self.list, 1)
        row.addWidget(self.close_button)
        high = self.fontMetrics().height()
        for each in (self.list, self.close_button):
            each.setFixedHeight(high)
        self.list.clicked.connect(self._on_list)
        self.close_button.clicked.connect(self.hide)
        self.wear(theme)
        self.hide()

    @property
    def said(self) -> str:
        """What is said at present, whole."""
        return self.list.said

    def say(self, words: str) -> None:
        """Say what moved; nothing puts the line away."""
        self.list.say(words)
        self.setVisible(bool(words))
        if words:
            QAccessible.updateAccessibility(QAccessibleEvent(self.list, QAccessible.Event.Alert))

    def wear(self, theme: Theme) -> None:
        """Wear the colours of a theme."""
        palette = self.palette()
        palette.setColor(QPalette.ColorRole.ButtonText, theme.text)
        self.list.setPalette(palette)

    def _on_list(self, _checked: bool) -> None:
        self.list_wanted.emit()
