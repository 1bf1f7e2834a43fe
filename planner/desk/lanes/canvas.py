"""A lane on the screen: keeps its picture, shifts it when it is scrolled, and paints only what is new.

Sends on what hands do with mouse and wheel; must know nothing of what is painted.
"""

from __future__ import annotations

from dataclasses import dataclass

from PySide6.QtCore import QPoint, QRect, QRectF, QSize, Qt, Signal
from PySide6.QtGui import (
    QContextMenuEvent,
    QMouseEvent,
    QPainter,
    QPaintEvent,
    QPixmap,
    QResizeEvent,
    QWheelEvent,
)
from PySide6.QtWidgets import QAbstractScrollArea, QFrame, QWidget

from planner.desk.lanes.grid import Calendar
from planner.desk.lanes.hand import ask_of, hand_of, turn_of
from planner.desk.lanes.kit import Kit
from planner.desk.lanes.time_scale import TimeScale


@dataclass(frozen=True, slots=True, kw_only=True)
class Frame:
    """What all lanes share: where days lie, what is drawn with, and the calendar."""

    scale: TimeScale
    kit: Kit
    calendar: Calendar


class Canvas(QAbstractScrollArea):
    """A lane with a kept picture; subclasses paint its content and what lies over it."""

    pressed = Signal(object)
    moved = Signal(object)
    released = Signal(object)
    double_clicked = Signal(object)
    wheeled = Signal(object)
    menu_wanted = Signal(object)
    resized = Signal()

    def __init__(self, frame: Frame, parent: QWidget) -> None:
        super().__init__(parent)
        self.frame_state = frame
        self._picture: QPixmap | None = None
        self._stale: list[QRect] = []
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.viewport().setMouseTracking(True)
        self.verticalScrollBar().valueChanged.connect(self._vertically)
        self._scrolled_to = 0

    def content_height(self) -> float:
        """Return how high everything is [px]."""
        raise NotImplementedError

    def paint_content(self, painter: QPainter, rect: QRectF, part: QRectF) -> None:
        """Paint what is kept: `rect` is the whole lane, `part` what is needed of it."""
        raise NotImplementedError

    def paint_over(self, painter: QPainter, rect: QRectF) -> None:
        """Paint what changes often, over the kept picture; nothing unless a subclass says so."""

    @property
    def down_px(self) -> int:
        """How far the lane is scrolled down [px]."""
        return self.verticalScrollBar().value()

    def rect_f(self) -> QRectF:
        """Return the whole lane as painters take it."""
        return QRectF(self.viewport().rect())

    def refresh(self) -> None:
        """Paint everything anew."""
        self._stale = [self.viewport().rect()]
        self._measure()
        self.viewport().update()

    def set_frame(self, frame: Frame) -> None:
        """Show other days, or the same with another theme.

        Moving sideways paints anew: names of bars that are cut at an edge move along it.
        """
        before, self.frame_state = self.frame_state, frame
        if before != frame:
            self.refresh()

    def _vertically(self, value: int) -> None:
        """Move the kept picture up or down; only names and what comes into sight are painted."""
        down, self._scrolled_to = self._scrolled_to - value, value
        self.viewport().update()
        if self._picture is None:
            return
        area = self.viewport().rect()
        ratio = self._picture.devicePixelRatio()
        if abs(down) >= area.height() or ratio != int(ratio) or self._stale:
            self._stale = [area]
            return
        self._picture.scroll(0, down * int(ratio), self._picture.rect())
        top = 0 if down > 0 else area.height() + down
        names = QRect(0, 0, int(self.frame_state.kit.names_px), area.height())
        self._stale = [names, QRect(0, top, area.width(), abs(down))]

    def _measure(self) -> None:
        bar = self.verticalScrollBar()
        page = self.viewport().height()
        bar.setPageStep(page)
        bar.setSingleStep(int(self.frame_state.kit.line_px))
        bar.setRange(0, max(0, round(self.content_height()) - page))

    def paintEvent(self, event: QPaintEvent) -> None:  # noqa: ARG002
        """Bring the kept picture up to date, show it, and paint over it."""
        rect = self.viewport().rect()
        self._bring_up_to_date(rect.size())
        painter = QPainter(self.viewport())
        painter.setFont(self.font())
        if self._picture is not None:
            painter.drawPixmap(QPoint(0, 0), self._picture)
        self.paint_over(painter, QRectF(rect))
        painter.end()

    def _bring_up_to_date(self, size: QSize) -> None:
        ratio = self.devicePixelRatioF()
        wanted = QSize(round(size.width() * ratio), round(size.height() * ratio))
        if self._picture is None or self._picture.size() != wanted:
            self._picture = QPixmap(wanted)
            self._picture.setDevicePixelRatio(ratio)
            self._stale = [QRect(QPoint(0, 0), size)]
        if not self._stale or wanted.isEmpty():
            return
        painter = QPainter(self._picture)
        painter.setFont(self.font())
        stale, self._stale = self._stale, []
        try:
            for part in stale:
                self.paint_content(painter, QRectF(QPoint(0, 0), size), QRectF(part))
        finally:
            painter.end()

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Measure again."""
        super().resizeEvent(event)
        self._measure()
        self.resized.emit()

    def hint_at(self, at: QPoint) -> str:  # noqa: ARG002
        """Return what is said of a point; nothing unless a subclass says so."""
        return ""

    def mousePressEvent(self, event: QMouseEvent) -> None:
        self.pressed.emit(hand_of(event))

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        if event.buttons() == Qt.MouseButton.NoButton:
            self.viewport().setToolTip(self.hint_at(event.position().toPoint()))
        self.moved.emit(hand_of(event))

    def mouseReleaseEvent(self, event: QMouseEvent) -> None:
        self.released.emit(hand_of(event))

    def mouseDoubleClickEvent(self, event: QMouseEvent) -> None:
        self.double_clicked.emit(hand_of(event))

    def wheelEvent(self, event: QWheelEvent) -> None:
        self.wheeled.emit(turn_of(event))
        event.accept()

    def contextMenuEvent(self, event: QContextMenuEvent) -> None:
        self.menu_wanted.emit(ask_of(event))
