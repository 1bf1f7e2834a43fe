"""Draws one quantity of the water over time, with the band it should lie in shaded behind it."""

from __future__ import annotations

from datetime import date
from itertools import pairwise
from typing import Final

from PySide6.QtCore import QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QBrush, QColor, QFont, QPainter, QPaintEvent, QPen, QPolygonF
from PySide6.QtWidgets import QSizePolicy, QWidget

from planner.desk.say import tr
from planner.desk.theme import Theme, mixed
from planner.desk.water.rows import Course, Point, course_words
from planner.desk.water_words import quantity_unit, quantity_words
from planner.desk.words import number_words, short_day_words
from planner.farm.water import Quantity

_SAFE_SHARE: Final = 0.2
_WATCH_SHARE: Final = 0.09
_ROOM_SHARE: Final = 0.12
_DOT: Final = 3.0
_SMALL: Final = 0.85
_SPREAD_SHARE: Final = 0.3
_COLOURS: Final = {
    Quantity.PH: 5,
    Quantity.NITRATE_N_MG_PER_L: 0,
    Quantity.ALKALINITY_MG_PER_L: 3,
    Quantity.FE_MG_PER_L: 6,
}
"""Places in the row of data colours."""


class WaterChart(QWidget):
    """A line with dots; a reading that stands alone is drawn hollow."""

    def __init__(self, quantity: Quantity, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.theme = theme
        self.course = Course(quantity=quantity, points=(), low=None, high=None)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Preferred)
        self.setMinimumSize(theme.metrics.row * 5, theme.metrics.row * 4)
        self._speak()

    def sizeHint(self) -> QSize:
        metrics = self.theme.metrics
        return QSize(metrics.side_width, metrics.row * 5)

    def show_course(self, course: Course) -> None:
        """Show other readings; the same again change nothing."""
        if course != self.course:
            self.course = course
            self._speak()
            self.update()

    def wear(self, theme: Theme) -> None:
        """Wear the colours of a theme."""
        self.theme = theme
        self.update()

    def _speak(self) -> None:
        self.setAccessibleName(course_words(self.course))
        self.setToolTip(course_words(self.course))

    def paintEvent(self, _event: QPaintEvent) -> None:
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.fillRect(self.rect(), self.theme.panel)
        _Drawing(painter, self.course, self.theme, QRectF(self.rect())).draw()
        painter.end()


class _Drawing:
    """One painting of a course in a rectangle."""

    def __init__(self, painter: QPainter, course: Course, theme: Theme, whole: QRectF) -> None:
        self._painter, self._course, self._theme = painter, course, theme
        metrics = theme.metrics
        self._small = QFont(painter.font())
        self._small.setPointSizeF(self._small.pointSizeF() * _SMALL)
        painter.setFont(self._small)
        self._line = painter.fontMetrics().height()
        self._low, self._high = _bounds(course)
        left = max(painter.fontMetrics().horizontalAdvance(self._number(each)) for each in self._ends())
        self._plot = whole.adjusted(
            metrics.margin + left + metrics.tight,
            metrics.gap + self._line + metrics.tight,
            -metrics.margin,
            -metrics.gap - self._line,
        )

    def _ends(self) -> tuple[float, float]:
        return self._low, self._high

    def _number(self, value: float) -> str:
        return number_words(float(f"{value:.3g}"))

    def draw(self) -> None:
        """Draw title, band, axes and readings."""
        self._draw_title()
        if self._plot.height() <= 0 or self._plot.width() <= 0:
            return
        self._draw_band()
        self._draw_today()
        self._draw_axes()
        self._draw_points()

    def _draw_title(self) -> None:
        metrics = self._theme.metrics
        unit = quantity_unit(self._course.quantity)
        title = quantity_words(self._course.quantity) + (f" [{unit}]" if unit else "")
        bold = QFont(self._small)
        bold.setBold(True)
        self._painter.setFont(bold)
        self._painter.setPen(self._theme.text)
        self._painter.drawText(QPointF(metrics.margin, metrics.gap + self._line * 0.8), title)
        self._painter.setFont(self._small)

    def _y(self, value: float) -> float:
        share = (value - self._low) / (self._high - self._low)
        return self._plot.bottom() - share * self._plot.height()

    def _stripe(self, low: float, high: float, colour: QColor, share: float) -> None:
        top, bottom = self._y(min(high, self._high)), self._y(max(low, self._low))
        if bottom > top:
            ground = mixed(colour, self._theme.field, share)
            self._painter.fillRect(QRectF(self._plot.left(), top, self._plot.width(), bottom - top), ground)

    def _draw_band(self) -> None:
        self._painter.fillRect(self._plot, self._theme.field)
        good = self._theme.good
        low, high = self._course.low, self._course.high
        if low is None and high is None:
            return
        watch = (low[0] if low else self._low, high[1] if high else self._high)
        safe = (low[1] if low else self._low, high[0] if high else self._high)
        self._stripe(*watch, good, _WATCH_SHARE)
        self._stripe(*safe, good, _SAFE_SHARE)

    def _draw_axes(self) -> None:
        painter, theme, plot = self._painter, self._theme, self._plot
        painter.setPen(QPen(theme.line, theme.metrics.hair))
        painter.drawRect(plot)
        painter.setPen(theme.muted)
        right = Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter
        for value in self._ends():
            box = QRectF(0, self._y(value) - self._line / 2, plot.left() - theme.metrics.tight, self._line)
            painter.drawText(box, right, self._number(value))
        days = self._days()
        foot = QRectF(plot.left(), plot.bottom() + theme.metrics.tight, plot.width(), self._line)
        if not days:
            painter.drawText(plot, Qt.AlignmentFlag.AlignCenter, tr("no reading yet"))
            return
        painter.drawText(foot, Qt.AlignmentFlag.AlignLeft, short_day_words(days[0]))
        if days[-1] != days[0]:
            painter.drawText(foot, Qt.AlignmentFlag.AlignRight, short_day_words(days[-1]))

    def _draw_points(self) -> None:
        points = self._course.points
        if not self._days():
            return
        first, last = self._days()[0].toordinal(), self._days()[-1].toordinal()
        self._draw_foreseen(first, last)
        places = [
            QPointF(self._x(point.on.toordinal(), first, last), self._y(point.value)) for point in points
        ]
        colour = self._ink()
        self._painter.setPen(QPen(colour, 2 * self._theme.metrics.hair))
        straight = [pair for pair in zip(places, points, strict=True) if not pair[1].odd]
        for (one, before), (other, after) in pairwise(straight):
            if not any(before.on < day <= after.on for day in self._course.calibrated):
                self._painter.drawLine(one, other)
        self._draw_calibrations(first, last)
        self._painter.setPen(QPen(colour, 2 * self._theme.metrics.hair))
        for place, point in zip(places, points, strict=True):
            self._draw_point(place, point, colour)

    def _draw_point(self, place: QPointF, point: Point, colour: QColor) -> None:
        """Draw a reading: hollow when it stands alone, hatched when its meter was overdue."""
        self._painter.setBrush(self._theme.field if point.odd or point.doubtful else colour)
        size = 2 * _DOT if point.doubtful else _DOT
        self._painter.drawEllipse(place, size, size)
        if point.doubtful:
            self._painter.setBrush(QBrush(colour, Qt.BrushStyle.BDiagPattern))
            self._painter.drawEllipse(place, size, size)

    def _draw_calibrations(self, first: int, last: int) -> None:
        """Draw a dotted line where a meter was set right: readings before and after are no one trend."""
        self._painter.setPen(QPen(self._theme.muted, 2 * self._theme.metrics.hair, Qt.PenStyle.DotLine))
        for day in self._course.calibrated:
            x = self._x(day.toordinal(), first, last)
            self._painter.drawLine(QPointF(x, self._plot.top()), QPointF(x, self._plot.bottom()))
            at = QPointF(x + self._theme.metrics.tight, self._plot.top() + self._line)
            self._painter.drawText(at, tr("calibrated"))

    def _draw_today(self) -> None:
        """Draw where today is, as on the ruler of weeks."""
        days, today = self._days(), self._course.today
        if today is None or not days or not days[0] <= today <= days[-1]:
            return
        x = self._x(today.toordinal(), days[0].toordinal(), days[-1].toordinal())
        self._painter.setPen(QPen(self._theme.today, 2 * self._theme.metrics.hair))
        self._painter.drawLine(QPointF(x, self._plot.top()), QPointF(x, self._plot.bottom()))

    def _draw_spread(self, first: int, last: int) -> None:
        """Shade from the low to the high of what is foreseen, as far as the chart reaches."""
        days = [self._x(on.toordinal(), first, last) for on, _ in self._course.foreseen]
        spread = self._course.spread
        top = [QPointF(x, self._y(min(high, self._high))) for x, (_, high) in zip(days, spread, strict=True)]
        foot = [QPointF(x, self._y(max(low, self._low))) for x, (low, _) in zip(days, spread, strict=True)]
        colour = QColor(self._ink())
        colour.setAlphaF(_SPREAD_SHARE)
        self._painter.setPen(Qt.PenStyle.NoPen)
        self._painter.setBrush(colour)
        self._painter.drawPolygon(QPolygonF([*top, *reversed(foot)]))
        self._painter.setBrush(Qt.BrushStyle.NoBrush)

    def _draw_foreseen(self, first: int, last: int) -> None:
        """Draw what the forecast says, dashed: it was not measured."""
        if self._course.spread:
            self._draw_spread(first, last)
        pen = QPen(self._ink(), 2 * self._theme.metrics.hair, Qt.PenStyle.DashLine)
        self._painter.setPen(pen)
        places = [
            QPointF(self._x(on.toordinal(), first, last), self._y(value))
            for on, value in self._course.foreseen
        ]
        for one, other in pairwise(places):
            self._painter.drawLine(one, other)

    def _days(self) -> list[date]:
        """Return the days drawn, in order; none when nothing is known."""
        own = list(self._course.own_days)
        return own if not own or self._course.days is None else [*self._course.days]

    def _x(self, day: int, first: int, last: int) -> float:
        if first == last:
            return self._plot.center().x()
        inner = self._plot.width() - 4 * _DOT
        return self._plot.left() + 2 * _DOT + inner * (day - first) / (last - first)

    def _ink(self) -> QColor:
        colour = self._theme.data_colour(_COLOURS.get(self._course.quantity, 0))
        return mixed(colour, self._theme.text, 1.0 if not self._theme.dark else 0.6)


def _bounds(course: Course) -> tuple[float, float]:
    """Return the least and the most the chart shows: all readings, and the band as far as it is near."""
    values = [point.value for point in course.points] + [value for _, value in course.foreseen]
    values += [end for ends in course.spread for end in ends]
    inner = [bound for bound in (course.low and course.low[1], course.high and course.high[0]) if bound]
    every = [*values, *inner]
    if not every:
        return 0.0, 1.0
    low, high = min(every), max(every)
    room = (high - low) * _ROOM_SHARE or max(abs(high) * _ROOM_SHARE, 1.0)
    return (max(low - room, 0.0) if low >= 0 else low - room), high + room
