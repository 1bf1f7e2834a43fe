"""A quiet strip below the pages: says in a line what the last act moved, and leads to the whole list.

Takes no focus of its own accord and is in nobody's way. Must know nothing of how it is worked out.
"""

from __future__ import annotations

from PySide6.QtCore import Signal
from PySide6.QtGui import QAccessible, QAccessibleEvent
from PySide6.QtWidgets import QFrame, QHBoxLayout, QLabel, QPushButton, QSizePolicy, QToolButton, QWidget

from planner.desk.say import tr
from planner.desk.theme import Theme


class MovesStrip(QFrame):
    """One line with a button to the list and one to put it away; hidden while there is nothing to say."""

    list_wanted = Signal()

    def __init__(self, theme: Theme, parent: QWidget) -> None:
        super().__init__(parent)
        self.setObjectName("moves")
        self.setAutoFillBackground(True)
        self.words = QLabel(self)
        self.words.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Preferred)
        self.words.setWordWrap(True)
        self.list = QPushButton(tr("What moved, and why"), self)
        self.list.setAccessibleName(self.list.text())
        self.close_button = QToolButton(self)
        self.close_button.setText("✕")
        self.close_button.setAutoRaise(True)
        self.close_button.setToolTip(tr("Put this away"))
        self.close_button.setAccessibleName(tr("Put this away"))
        row = QHBoxLayout(self)
        metrics = theme.metrics
        row.setContentsMargins(metrics.margin, metrics.gap // 2, metrics.gap, metrics.gap // 2)
        row.addWidget(self.words, 1)
        row.addWidget(self.list)
        row.addWidget(self.close_button)
        self.list.clicked.connect(self._on_list)
        self.close_button.clicked.connect(self.hide)
        self.wear(theme)
        self.hide()

    def say(self, words: str) -> None:
        """Say what moved; nothing puts the strip away."""
        self.words.setText(words)
        self.words.setAccessibleName(words)
        self.setVisible(bool(words))
        if words:
            QAccessible.updateAccessibility(QAccessibleEvent(self.words, QAccessible.Event.Alert))

    def wear(self, theme: Theme) -> None:
        """Wear the colours of a theme."""
        palette = self.palette()
        palette.setColor(self.backgroundRole(), theme.panel)
        palette.setColor(self.foregroundRole(), theme.text)
        self.setPalette(palette)

    def _on_list(self, _checked: bool) -> None:
        self.list_wanted.emit()
