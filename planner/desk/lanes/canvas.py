"""A lane on the screen: keeps its picture, shifts it when it is scrolled, and paints only what is new.

While it is zoomed the kept picture is shown stretched, and painted sharp a moment after the last turn of the
wheel, where painting all anew takes longer than a frame.

Sends on what hands do with mouse and wheel; must know nothing of what is painted.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Final

from PySide6.QtCore import QPoint, QRect, QRectF, QSize, Qt, QTimer, Signal
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


SHARP_MS: Final = 90
"""So long after the last turn of the wheel [ms] a lane that was zoomed is painted sharp."""

_WHOLE_PX: Final = 1e-3


class Canvas(QAbstractScrollArea):
    """A lane with a kept picture; subclasses paint its content and what lies over it.

    A lane that `keeps_days` moves its picture along with the days, and stretches it while it is zoomed.
    """

    keeps_days = False

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
        self._stretched: TimeScale | None = None
        self._sharpener = QTimer(self)
        self._sharpener.setSingleShot(True)
        self._sharpener.setInterval(SHARP_MS)
        self._sharpener.timeout.connect(self.refresh)
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.viewport().setMouseTracking(True)
        self.viewport().setAttribute(Qt.WidgetAttribute.WA_OpaquePaintEvent)
        bar = self.verticalScrollBar()
        bar.setAutoFillBackground(True)  # else the whole window below is painted with every step
        bar.valueChanged.connect(self._vertically)
        self._scrolled_to = 0

    def content_height(self) -> float:
        """Return how high everything is [px]."""
        raise NotImplementedError

    def paint_content(self, painter: QPainter, rect: QRectF, part: QRectF) -> None:
        """Paint what is kept: `rect` is the whole lane, `part` what is needed of it."""
        raise NotImplementedError

    def paint_shifted(self, painter: QPainter, rect: QRectF, strip: QRectF) -> None:
        """Make a picture whose days have been moved along just as if it were painted anew.

        `strip` is what has come into sight. Only asked of a lane that `keeps_days`.
        """
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
        self._stretched = None
        self._sharpener.stop()
        self._stale = [self.viewport().rect()]
        self._measure()
        self.viewport().update()

    def sharpen(self) -> None:
        """Paint sharp what is shown stretched, without waiting."""
        if self._stretched is not None:
            self.refresh()

    def set_frame(self, frame: Frame) -> None:
        """Show other days, or the same with another theme."""
        before, self.frame_state = self.frame_state, frame
        if before == frame:
            return
        same_look = before.kit is frame.kit and before.calendar == frame.calendar
        if not same_look or not (self._shifted(before.scale) or self._stretch(before.scale)):
            self.refresh()

    def _shifted(self, before: TimeScale) -> bool:
        """Move the kept picture sideways along with its days, if it can be; tell whether it was."""
        now, area = self.frame_state.scale, self.viewport().rect()
        if not self.keeps_days or self._picture is None or self._stale or self._stretched is not None:
            return False
        if (before.px_per_day, before.left) != (now.px_per_day, now.left):
            return False
        ratio, by = self._picture.devicePixelRatio(), (before.origin - now.origin) * now.px_per_day
        across = round(by)
        whole = ratio == int(ratio) and abs(by - across) < _WHOLE_PX
        if not whole or abs(across) >= area.width() - now.left:
            return False
        times = area.adjusted(int(now.left), 0, 0, 0)
        self._picture.scroll(across * int(ratio), 0, QRect(times.topLeft() * ratio, times.size() * ratio))
        left = times.left() if across > 0 else area.width() + across
        painter = QPainter(self._picture)
        painter.setFont(self.font())
        try:
            self.paint_shifted(painter, QRectF(area), QRectF(left, 0, abs(across), area.height()))
        finally:
            painter.end()
        self.viewport().update()
        return True

    def _stretch(self, before: TimeScale) -> bool:
        """Show the kept picture stretched to other widths of days for a moment; tell whether it can be."""
        now = self.frame_state.scale
        zoomed = before.px_per_day != now.px_per_day or self._stretched is not None
        if not (self.keeps_days and zoomed) or self._picture is None or self._stale:
            return False
        if before.left != now.left:
            return False
        if self._stretched is None:
            self._stretched = before
        self._sharpener.start()
        self.viewport().update()
        return True

    def _vertically(self, value: int) -> None:
        """Move the kept picture up or down; only names and what comes into sight are painted."""
        down, self._scrolled_to = self._scrolled_to - value, value
        self.sharpen()
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
        if self._picture is not None and self._stretched is not None:
            self._paint_stretched(painter, self._picture, self._stretched)
        elif self._picture is not None:
            painter.drawPixmap(QPoint(0, 0), self._picture)
        self.paint_over(painter, QRectF(rect))
        painter.end()

    def _paint_stretched(self, painter: QPainter, picture: QPixmap, before: TimeScale) -> None:
        """Lay the names down as they are, and the days as wide as they are now."""
        now, area, ratio = self.frame_state.scale, self.rect_f(), picture.devicePixelRatio()
        times = area.adjusted(now.left, 0, 0, 0)
        painter.fillRect(times, self.frame_state.kit.theme.field)
        painter.drawPixmap(QPoint(0, 0), picture, QRect(0, 0, round(now.left * ratio), picture.height()))
        days = before.day_at(times.left()), before.day_at(times.right())
        left, right = (now.x_of(day) for day in days)
        painter.setClipRect(times)
        painter.drawPixmap(
            QRectF(left, 0, right - left, area.height()),
            picture,
            QRectF(times.left() * ratio, 0, times.width() * ratio, picture.height()),
        )
        painter.setClipping(False)

    def _bring_up_to_date(self, size: QSize) -> None:
        ratio = self.devicePixelRatioF()
        wanted = QSize(round(size.width() * ratio), round(size.height() * ratio))
        if self._picture is None or self._picture.size() != wanted:
            self._stretched = None
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
