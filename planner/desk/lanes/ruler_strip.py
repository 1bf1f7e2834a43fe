"""The ruler on the screen: shows which days the lanes show, and scrolls them when it is dragged.

Must know nothing of what the lanes show.
"""

from __future__ import annotations

from PySide6.QtCore import QRectF, QSize, Qt, Signal
from PySide6.QtGui import QMouseEvent, QPainter, QPaintEvent, QWheelEvent
from PySide6.QtWidgets import QSizePolicy, QWidget

from planner.desk.lanes import words
from planner.desk.lanes.canvas import Frame
from planner.desk.lanes.hand import turn_of
from planner.desk.lanes.ruler import paint_ruler, ruler_height
from planner.desk.lanes.season_band import seasons_words


class RulerStrip(QWidget):
    """The ruler on the screen; dragging it scrolls."""

    dragged = Signal(int)
    wheeled = Signal(object)

    def __init__(self, frame: Frame, parent: QWidget) -> None:
        super().__init__(parent)
        self._frame = frame
        self._x: int | None = None
        self.setAccessibleName(words.ruler_name())
        self.setSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Fixed)
        self.setCursor(Qt.CursorShape.SizeHorCursor)
        # It paints all it covers, so nothing of the window below need be painted with it.
        self.setAttribute(Qt.WidgetAttribute.WA_OpaquePaintEvent)

    def set_frame(self, frame: Frame) -> None:
        """Show other days."""
        before, self._frame = self._frame, frame
        if before.kit is not frame.kit or before.calendar.months != frame.calendar.months:
            self.updateGeometry()
            said = seasons_words(frame.calendar.months)
            self.setAccessibleDescription(said)
            self.setToolTip(said)
        if before != frame:
            self.update()

    def sizeHint(self) -> QSize:
        return QSize(
            round(self._frame.kit.names_px * 2), round(ruler_height(self._frame.kit, self._frame.calendar))
        )

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        x = event.position().toPoint().x()
        if self._x is not None and event.buttons() & Qt.MouseButton.LeftButton:
            self.dragged.emit(self._x - x)
            self._x = x

    def paintEvent(self, event: QPaintEvent) -> None:  # noqa: ARG002
        painter = QPainter(self)
        painter.setFont(self.font())
        kit = self._frame.kit
        painter.fillRect(self.rect(), kit.theme.ground)
        times = QRectF(self.rect()).adjusted(kit.names_px, 0, 0, 0)
        paint_ruler(painter, times, self._frame.scale, kit, self._frame.calendar)
        painter.end()

    def mousePressEvent(self, event: QMouseEvent) -> None:
        self._x = event.position().toPoint().x()

    def wheelEvent(self, event: QWheelEvent) -> None:
        self.wheeled.emit(turn_of(event))
        event.accept()
