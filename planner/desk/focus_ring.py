"""Shows where the keyboard is on lists, tables and texts that have no frame of their own to show it by.

Buttons and fields show it themselves; WCAG 2.2, success criterion 2.4.7, asks for it everywhere. Must
know nothing of what stands in it.
"""

from __future__ import annotations

from typing import Final

from PySide6.QtCore import QEvent, QObject, Qt
from PySide6.QtGui import QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import QAbstractItemView, QApplication, QFrame, QScrollArea, QTextEdit, QWidget

_WIDE_PX: Final = 2
_FRAMELESS: Final = (QAbstractItemView, QTextEdit, QScrollArea)


class FocusRing(QWidget):
    """A line around a widget, in the colour that things chosen have; the mouse goes through it."""

    def __init__(self, around: QWidget) -> None:
        super().__init__(around)
        self._around = around
        self.setAttribute(Qt.WidgetAttribute.WA_TransparentForMouseEvents)
        self.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self.setGeometry(around.rect())
        around.installEventFilter(self)
        self.raise_()
        self.show()

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        if event.type() is QEvent.Type.Resize and watched is self._around:
            self.setGeometry(self._around.rect())
        return False

    def paintEvent(self, event: QPaintEvent) -> None:  # noqa: ARG002
        painter = QPainter(self)
        pen = QPen(self.palette().highlight().color(), _WIDE_PX)
        pen.setJoinStyle(Qt.PenJoinStyle.MiterJoin)
        painter.setPen(pen)
        half = _WIDE_PX // 2
        painter.drawRect(self.rect().adjusted(half, half, -half, -half))
        painter.end()


class FocusRings(QObject):
    """Puts the ring around whatever needs one, as the keyboard goes about."""

    def __init__(self, parent: QObject) -> None:
        super().__init__(parent)
        self.ring: FocusRing | None = None
        application = QApplication.instance()
        assert isinstance(application, QApplication)
        application.focusChanged.connect(self._on_focus)

    def _on_focus(self, _before: QWidget | None, now: QWidget | None) -> None:
        if self.ring is not None:
            self.ring.destroyed.disconnect(self._on_gone)
            self.ring.hide()
            self.ring.deleteLater()
            self.ring = None
        if isinstance(now, _FRAMELESS) and now.frameShape() is QFrame.Shape.NoFrame:
            self.ring = FocusRing(now)
            self.ring.destroyed.connect(self._on_gone)

    def _on_gone(self) -> None:
        """Forget the ring, which went with what it was around."""
        self.ring = None
