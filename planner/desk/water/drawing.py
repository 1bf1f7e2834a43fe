"""Paints one quantity of the water over time: its band, what was read, and what is foreseen."""

from __future__ import annotations

from datetime import date
from itertools import pairwise
from typing import Final

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QBrush, QColor, QFont, QFontMetrics, QPainter, QPen, QPolygonF

from planner.desk.say import tr
from planner.desk.theme import Theme, mixed
from planner.desk.water.rows import Course, Point
from planner.desk.water_words import quantity_unit, quantity_words
from planner.desk.words import number_words, short_day_words
from planner.farm.water import Quantity

_SAFE_SHARE: Final = 0.2
_WATCH_SHARE: Final = 0.09
_ROOM_SHARE: Final = 0.12
_DOT: Final = 3.0
_SMALL: Final = 0.85
_HEAD: Final = 1.25
"""Lines above the plot: the title, and room for the upper half of the topmost number beside it."""
_SPREAD_SHARE: Final = 0.3
_COLOURS: Final = {
    Quantity.PH: 5,
    Quantity.NITRATE_N_MG_PER_L: 0,
    Quantity.ALKALINITY_MG_PER_L: 3,
    Quantity.FE_MG_PER_L: 6,
}
"""Places in the row of data colours."""


class Frame:
    """Where days and values of a course lie in a rectangle [px]."""

    def __init__(self, course: Course, theme: Theme, whole: QRectF, font: QFont) -> None:
        metrics = theme.metrics
        self.small = QFont(font)
        self.small.setPointSizeF(self.small.pointSizeF() * _SMALL)
        measured = QFontMetrics(self.small)
        self.line = measured.height()
        self.low, self.high = _bounds(course)
        left = max(measured.horizontalAdvance(number(each)) for each in (self.low, self.high))
        self.plot = whole.adjusted(
            metrics.margin + left + metrics.tight,
            metrics.gap + self.line * _HEAD + metrics.tight,
            -metrics.margin,
            -metrics.gap - self.line,
        )
        own = list(course.own_days)
        self.days = own if not own or course.days is None else [*course.days]

    def x(self, day: int) -> float:
        """Return where a day lies, as an ordinal; there must be days."""
        first, last = self.days[0].toordinal(), self.days[-1].toordinal()
        if first == last:
            return self.plot.center().x()
        inner = self.plot.width() - 4 * _DOT
        return self.plot.left() + 2 * _DOT + inner * (day - first) / (last - first)

    def day_at(self, x: float) -> int | None:
        """Return the day at a distance from the left, kept within those drawn; None when there is none."""
        if not self.days:
            return None
        first, last = self.days[0].toordinal(), self.days[-1].toordinal()
        inner = max(self.plot.width() - 4 * _DOT, 1.0)
        share = min(max((x - self.plot.left() - 2 * _DOT) / inner, 0.0), 1.0)
        return first + round(share * (last - first))

    def y(self, value: float) -> float:
        """Return where a value lies."""
        share = (value - self.low) / (self.high - self.low)
        return self.plot.bottom() - share * self.plot.height()


def number(value: float) -> str:
    """Return a value of an axis to three figures."""
    return number_words(float(f"{value:.3g}"))


class Drawing:
    """One painting of a course in a rectangle."""

    def __init__(self, painter: QPainter, course: Course, theme: Theme, frame: Frame) -> None:
        self._painter, self._course, self._theme, self._frame = painter, course, theme, frame
        self._line, self._plot, self._small = frame.line, frame.plot, frame.small
        self._low, self._high = frame.low, frame.high
        painter.setFont(frame.small)

    def _ends(self) -> tuple[float, float]:
        return self._low, self._high

    def draw(self, stood: int | None = None) -> None:
        """Draw title, band, axes and readings, and the day that the cursor stands on."""
        self._draw_title()
        if self._plot.height() <= 0 or self._plot.width() <= 0:
            return
        self._draw_band()
        self._draw_today()
        self._draw_axes()
        self._draw_points()
        if stood is not None and self._frame.days:
            self._draw_cursor(stood)

    def _draw_cursor(self, day: int) -> None:
        """Draw where the keys stand, and what is there."""
        x, theme = self._frame.x(day), self._theme
        self._painter.setPen(QPen(theme.text, theme.metrics.hair))
        self._painter.drawLine(QPointF(x, self._plot.top()), QPointF(x, self._plot.bottom()))
        facts = self._course.facts_on(date.fromordinal(day))
        said = ", ".join((short_day_words(date.fromordinal(day)), *(fact.value for fact in facts)))
        room = self._painter.fontMetrics().horizontalAdvance(said) + 2 * theme.metrics.tight
        left = x + 1 if x + room < self._plot.right() else max(x - room - 1, self._plot.left())
        ground = QRectF(left, self._plot.bottom() - self._line - 1, room, self._line)
        self._painter.fillRect(ground, theme.panel)
        self._painter.setPen(theme.text)
        self._painter.drawText(ground, Qt.AlignmentFlag.AlignCenter, said)

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

    def _stripe(self, low: float, high: float, colour: QColor, share: float) -> None:
        top, bottom = self._frame.y(min(high, self._high)), self._frame.y(max(low, self._low))
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
            box = QRectF(
                0, self._frame.y(value) - self._line / 2, plot.left() - theme.metrics.tight, self._line
            )
            painter.drawText(box, right, number(value))
        days = self._frame.days
        foot = QRectF(plot.left(), plot.bottom() + theme.metrics.tight, plot.width(), self._line)
        if not days:
            painter.drawText(plot, Qt.AlignmentFlag.AlignCenter, tr("no reading yet"))
            return
        painter.drawText(foot, Qt.AlignmentFlag.AlignLeft, short_day_words(days[0]))
        if days[-1] != days[0]:
            painter.drawText(foot, Qt.AlignmentFlag.AlignRight, short_day_words(days[-1]))

    def _draw_points(self) -> None:
        points = self._course.points
        if not self._frame.days:
            return
        self._draw_foreseen()
        places = [
            QPointF(self._frame.x(point.on.toordinal()), self._frame.y(point.value)) for point in points
        ]
        colour = self._ink()
        self._painter.setPen(QPen(colour, 2 * self._theme.metrics.hair))
        straight = [pair for pair in zip(places, points, strict=True) if not pair[1].odd]
        for (one, before), (other, after) in pairwise(straight):
            if not any(before.on < day <= after.on for day in self._course.calibrated):
                self._painter.drawLine(one, other)
        self._draw_calibrations()
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

    def _draw_calibrations(self) -> None:
        """Draw a dotted line where a meter was set right: readings before and after are no one trend."""
        self._painter.setPen(QPen(self._theme.muted, 2 * self._theme.metrics.hair, Qt.PenStyle.DotLine))
        for day in self._course.calibrated:
            x = self._frame.x(day.toordinal())
            self._painter.drawLine(QPointF(x, self._plot.top()), QPointF(x, self._plot.bottom()))
            at = QPointF(x + self._theme.metrics.tight, self._plot.top() + self._line)
            self._painter.drawText(at, tr("calibrated"))

    def _draw_today(self) -> None:
        """Draw where today is, as on the ruler of weeks."""
        days, today = self._frame.days, self._course.today
        if today is None or not days or not days[0] <= today <= days[-1]:
            return
        x = self._frame.x(today.toordinal())
        self._painter.setPen(QPen(self._theme.today, 2 * self._theme.metrics.hair))
        self._painter.drawLine(QPointF(x, self._plot.top()), QPointF(x, self._plot.bottom()))

    def _draw_spread(self) -> None:
        """Shade from the low to the high of what is foreseen, as far as the chart reaches."""
        frame = self._frame
        days = [frame.x(on.toordinal()) for on, _ in self._course.foreseen]
        ends = tuple(zip(days, self._course.spread, strict=True))
        top = [QPointF(x, frame.y(min(high, self._high))) for x, (_, high) in ends]
        foot = [QPointF(x, frame.y(max(low, self._low))) for x, (low, _) in ends]
        colour = QColor(self._ink())
        colour.setAlphaF(_SPREAD_SHARE)
        self._painter.setPen(Qt.PenStyle.NoPen)
        self._painter.setBrush(colour)
        self._painter.drawPolygon(QPolygonF([*top, *reversed(foot)]))
        self._painter.setBrush(Qt.BrushStyle.NoBrush)

    def _draw_foreseen(self) -> None:
        """Draw what the forecast says, dashed: it was not measured."""
        if self._course.spread:
            self._draw_spread()
        pen = QPen(self._ink(), 2 * self._theme.metrics.hair, Qt.PenStyle.DashLine)
        self._painter.setPen(pen)
        places = [
            QPointF(self._frame.x(on.toordinal()), self._frame.y(value))
            for on, value in self._course.foreseen
        ]
        for one, other in pairwise(places):
            self._painter.drawLine(one, other)

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
