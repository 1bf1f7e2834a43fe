"""A line of words that is cut with dots where it finds too little room, and told whole on hover and aloud.

For places that must never grow with what is said in them, such as the status bar.
"""

from __future__ import annotations

from PySide6.QtCore import QSize, Qt
from PySide6.QtGui import QPainter, QPaintEvent
from PySide6.QtWidgets import QLabel, QWidget


class ShortLabel(QLabel):
    """A label that asks for no width of its own; `text` is always the whole."""

    def __init__(self, parent: QWidget) -> None:
        super().__init__(parent)
        self.setTextFormat(Qt.TextFormat.PlainText)

    def sizeHint(self) -> QSize:
        return QSize(0, super().sizeHint().height())

    def minimumSizeHint(self) -> QSize:
        return QSize(0, super().minimumSizeHint().height())

    def setText(self, words: str) -> None:
        super().setText(words)
        self.setToolTip(words)

    def paintEvent(self, _event: QPaintEvent) -> None:
        room = self.contentsRect()
        said = self.fontMetrics().elidedText(self.text(), Qt.TextElideMode.ElideRight, room.width())
        painter = QPainter(self)
        aligned = Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter
        self.style().drawItemText(
            painter, room, int(aligned), self.palette(), self.isEnabled(), said, self.foregroundRole()
        )
        painter.end()
