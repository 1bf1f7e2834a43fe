"""A slider through the days of the plan: months named, the share of holes held behind them, today marked.

Left and right go by a day, Page Up and Page Down by a week, Home and End to the ends.
"""

from __future__ import annotations

from datetime import date
from typing import Final

from PySide6.QtCore import QLineF, QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QKeyEvent, QMouseEvent, QPainter, QPaintEvent, QPen, QPolygonF
from PySide6.QtWidgets import QSlider, QWidget

from planner.desk.lanes.words import month_short
from planner.desk.say import tr
from planner.desk.theme import Theme, mixed
from planner.desk.words import day_words
from planner.farm.farm import DAYS_PER_WEEK

_HIGH_LINES: Final = 2.6
_PAD: Final = 8.0
_HANDLE: Final = 5.0
_HELD: Final = 0.3
_LINE: Final = 1.6


class DayStrip(QSlider):
    """Chooses a day of the ruler."""

    def __init__(self, theme: Theme, parent: QWidget) -> None:
        super().__init__(Qt.Orientation.Horizontal, parent)
        self._theme = theme
        self._start = date(2000, 1, 1)
        self._today: int | None = None
        self._held: tuple[float, ...] = ()
        self.setSingleStep(1)
        self.setPageStep(DAYS_PER_WEEK)
        self.setAccessibleName(tr("Day shown"))
        self.setToolTip(tr("Left and right go by a day, Page Up and Page Down by a week"))
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.valueChanged.connect(self._describe)

    def show_days(self, start: date, days: int, today: date, held: tuple[float, ...]) -> None:
        """Take other days, with the share of holes held by week; the value is kept within them."""
        self._start, self._held = start, held
        at = (today - start).days
        self._today = at if 0 <= at < days else None
        self.setRange(0, max(days - 1, 0))
        self._describe()
        self.update()

    @property
    def theme(self) -> Theme:
        """The theme worn."""
        return self._theme

    def wear(self, theme: Theme) -> None:
        """Wear the colours of a theme."""
        self._theme = theme
        self.update()

    def _describe(self, *_value: int) -> None:
        self.setAccessibleDescription(day_words(date.fromordinal(self._start.toordinal() + self.value())))

    def sizeHint(self) -> QSize:
        return QSize(self._theme.metrics.side_width, round(self.fontMetrics().height() * _HIGH_LINES))

    def minimumSizeHint(self) -> QSize:
        return QSize(self._theme.metrics.field_width, self.sizeHint().height())

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if event.key() in {Qt.Key.Key_PageUp, Qt.Key.Key_PageDown}:
            step = DAYS_PER_WEEK if event.key() == Qt.Key.Key_PageDown else -DAYS_PER_WEEK
            self.setValue(self.value() + step)
            return
        super().keyPressEvent(event)

    def mousePressEvent(self, event: QMouseEvent) -> None:
        if event.button() == Qt.MouseButton.LeftButton:
            self.setValue(self._day_at(event.position().x()))

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        if event.buttons() & Qt.MouseButton.LeftButton:
            self.setValue(self._day_at(event.position().x()))

    def mouseReleaseEvent(self, event: QMouseEvent) -> None:
        event.accept()

    def _px_per_day(self) -> float:
        return (self.width() - 2 * _PAD) / max(self.maximum() + 1, 1)

    def x_of(self, day: float) -> float:
        """Return where a day begins [px]."""
        return _PAD + day * self._px_per_day()

    def _day_at(self, x: float) -> int:
        return min(max(int((x - _PAD) / self._px_per_day()), 0), self.maximum())

    def paintEvent(self, event: QPaintEvent) -> None:  # noqa: ARG002
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        theme = self._theme
        text = self.fontMetrics().height()
        box = QRectF(_PAD, text + 1, self.width() - 2 * _PAD, self.height() - text - 4)
        painter.fillRect(box, theme.field)
        self._paint_held(painter, box)
        self._paint_months(painter, box)
        painter.setPen(QPen(theme.accent if self.hasFocus() else theme.line, 2 if self.hasFocus() else 1))
        painter.setBrush(Qt.BrushStyle.NoBrush)
        painter.drawRect(box)
        if self._today is not None:
            x = self.x_of(self._today + 0.5)
            painter.setPen(QPen(theme.today, _LINE))
            painter.drawLine(QLineF(x, box.top(), x, box.bottom()))
        self._paint_handle(painter, box)
        painter.end()

    def _paint_held(self, painter: QPainter, box: QRectF) -> None:
        if not self._held:
            return
        points = [QPointF(box.left(), box.bottom())]
        for week, share in enumerate(self._held):
            y = box.bottom() - box.height() * min(share, 1.0)
            points += [
                QPointF(self.x_of(week * DAYS_PER_WEEK), y),
                QPointF(self.x_of((week + 1) * DAYS_PER_WEEK), y),
            ]
        points.append(QPointF(points[-1].x(), box.bottom()))
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(mixed(self._theme.accent, self._theme.field, _HELD))
        painter.drawPolygon(QPolygonF(points))

    def _paint_months(self, painter: QPainter, box: QRectF) -> None:
        theme, start = self._theme, self._start.toordinal()
        metrics, room_from = self.fontMetrics(), box.left()
        for at in range(self.maximum() + 1):
            on = date.fromordinal(start + at)
            if on.day != 1 and at:
                continue
            x = self.x_of(at)
            painter.setPen(QPen(theme.line, 1))
            painter.drawLine(QLineF(x, box.top(), x, box.bottom()))
            words = month_short(start + at)
            words = f"{words} {on.year}" if on.month == 1 or not at else words
            width = metrics.horizontalAdvance(words)
            if x >= room_from and x + width <= box.right():
                painter.setPen(theme.muted)
                painter.drawText(QPointF(x, metrics.ascent()), words)
                room_from = x + width + _PAD

    def _paint_handle(self, painter: QPainter, box: QRectF) -> None:
        theme, x = self._theme, self.x_of(self.value() + 0.5)
        painter.setPen(QPen(theme.accent, 2))
        painter.drawLine(QLineF(x, box.top(), x, box.bottom()))
        painter.setPen(QPen(theme.on_accent, 1))
        painter.setBrush(theme.accent)
        middle = box.center().y()
        painter.drawRoundedRect(
            QRectF(x - _HANDLE, middle - box.height() / 3, 2 * _HANDLE, box.height() / 1.5), 3, 3
        )
