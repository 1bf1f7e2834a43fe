"""The small label beside the pointer that says what a move would do, or why it cannot be.

Must know nothing of moves; it shows words.
"""

from __future__ import annotations

from typing import Final

from PySide6.QtCore import QPoint, QRect, QRectF, QSize, Qt
from PySide6.QtGui import QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import QWidget

from planner.desk.theme import LIGHT, Theme

_PAD: Final = 9
_EMS: Final = 44
_OFFSET: Final = QPoint(16, 20)
_EDGE_BAR: Final = 4
_WRAP: Final = Qt.TextFlag.TextWordWrap | Qt.AlignmentFlag.AlignLeft


class PointerLabel(QWidget):
    """Text on its own ground, kept within its parent, never in the way of the mouse."""

    def __init__(self, parent: QWidget) -> None:
        super().__init__(parent)
        self._theme = LIGHT
        self._text = ""
        self._allowed = True
        self.setAttribute(Qt.WidgetAttribute.WA_TransparentForMouseEvents)
        self.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self.hide()

    @property
    def text(self) -> str:
        """What is said."""
        return self._text

    def set_theme(self, theme: Theme) -> None:
        """Draw in another theme."""
        self._theme = theme
        self.update()

    def show_at(self, text: str, at: QPoint, *, allowed: bool) -> None:
        """Say something beside a point of the parent."""
        self._text, self._allowed = text, allowed
        self.setAccessibleName(text)
        size = self._size()
        room = self._room()
        x = min(at.x() + _OFFSET.x(), room.right() - size.width())
        below = at.y() + _OFFSET.y()
        y = below if below + size.height() <= room.bottom() else at.y() - _OFFSET.y() - size.height()
        self.setGeometry(max(x, 0), max(y, 0), size.width(), size.height())
        self.raise_()
        self.show()
        self.update()

    def _room(self) -> QRect:
        owner = self.parentWidget()
        return owner.rect() if owner is not None else self.rect()

    def _size(self) -> QSize:
        metrics = self.fontMetrics()
        widest = min(metrics.averageCharWidth() * _EMS, self._room().width() // 2)
        box = metrics.boundingRect(0, 0, widest, 10_000, int(_WRAP), self._text)
        return QSize(box.width() + 2 * _PAD + _EDGE_BAR + 1, box.height() + 2 * _PAD - 2)

    def paintEvent(self, event: QPaintEvent) -> None:  # noqa: ARG002
        theme = self._theme
        ground, ink = (theme.panel, theme.text) if self._allowed else (theme.wrong_ground, theme.text)
        edge = theme.accent if self._allowed else theme.wrong
        painter = QPainter(self)
        painter.setFont(self.font())
        rect = QRectF(self.rect())
        painter.fillRect(rect, ground)
        painter.fillRect(QRectF(0, 0, _EDGE_BAR, rect.height()), edge)
        painter.setPen(QPen(edge, 1))
        painter.drawRect(rect.adjusted(0.5, 0.5, -0.5, -0.5))
        painter.setPen(ink)
        inner = self.rect().adjusted(_PAD + _EDGE_BAR, _PAD - 1, -_PAD + 2, 0)
        painter.drawText(inner, int(_WRAP), self._text)
        painter.end()
