"""A chart of something over dates: lines, the span they lie in, levels to keep, and marks with their words.

Painted from a value; whoever makes the value has worded everything. Must know nothing of farms.
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from datetime import date
from enum import Enum
from typing import Final

from PySide6.QtCore import QEvent, QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QColor, QFont, QHelpEvent, QPainter, QPaintEvent, QPen, QPolygonF
from PySide6.QtWidgets import QSizePolicy, QToolTip, QWidget

from planner.desk.lanes.fish_lane import nice_top
from planner.desk.say import tr
from planner.desk.theme import Theme, mixed
from planner.desk.words import number_words, short_day_words

_SMALL: Final = 0.85
_SPAN_SHARE: Final = 0.22
_MARK_PX: Final = 4.5
_NEAR_PX: Final = 12.0
_LEAST_DAYS: Final = 7
_FIGURES: Final = 3


class MarkForm(Enum):
    """How a mark is drawn, so that kinds are told apart without colour."""

    DOT = "dot"
    DOWN = "down"
    UP = "up"
    CROSS = "cross"


@dataclass(frozen=True, slots=True, kw_only=True)
class Strand:
    """Points (day as an ordinal, value) joined by a line, with the span low to high beside it, if any."""

    points: tuple[tuple[int, float], ...]
    span: tuple[tuple[int, float, float], ...] = ()
    colour: int = 0
    dashed: bool = False


@dataclass(frozen=True, slots=True, kw_only=True)
class Level:
    """A value that is to be kept or reached, drawn dashed with its words."""

    value: float
    words: str


@dataclass(frozen=True, slots=True, kw_only=True)
class Mark:
    """Something on one day at one height; its words are shown when the pointer rests on it."""

    day: int
    value: float
    words: str
    form: MarkForm = MarkForm.DOT


@dataclass(frozen=True, slots=True, kw_only=True)
class Plot:
    """What the chart shows. `spoken` is all of it in a sentence; `empty` is said where nothing is."""

    title: str
    unit: str
    spoken: str
    empty: str
    strands: tuple[Strand, ...] = ()
    levels: tuple[Level, ...] = ()
    marks: tuple[Mark, ...] = ()
    today: int | None = None

    @property
    def days(self) -> tuple[int, int] | None:
        """First and last day shown, None when there is nothing."""
        found = [day for strand in self.strands for day, _ in strand.points]
        found += [mark.day for mark in self.marks]
        return (min(found), max(*found, min(found) + _LEAST_DAYS)) if found else None

    @property
    def highest(self) -> float:
        """The highest value of all."""
        found = [value for strand in self.strands for _, value in strand.points]
        found += [high for strand in self.strands for _, _, high in strand.span]
        found += [level.value for level in self.levels] + [mark.value for mark in self.marks]
        return max(found, default=0.0)


class TimePlot(QWidget):
    """Paints a plot; the words of a mark come when the pointer rests near it."""

    def __init__(self, plot: Plot, theme: Theme, parent: QWidget | None = None, *, rows: int = 5) -> None:
        super().__init__(parent)
        self.theme = theme
        self.plot = plot
        self._rows = rows
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)
        self.setMinimumSize(theme.metrics.row * 5, theme.metrics.row * 3)
        self._speak()

    def sizeHint(self) -> QSize:
        metrics = self.theme.metrics
        return QSize(metrics.side_width, metrics.row * self._rows)

    def show_plot(self, plot: Plot) -> None:
        """Show another plot; the same again changes nothing."""
        if plot != self.plot:
            self.plot = plot
            self._speak()
            self.update()

    def wear(self, theme: Theme) -> None:
        """Wear the colours of a theme."""
        self.theme = theme
        self.update()

    def _speak(self) -> None:
        self.setAccessibleName(self.plot.title)
        self.setAccessibleDescription(self.plot.spoken)

    def paintEvent(self, _event: QPaintEvent) -> None:
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.fillRect(self.rect(), self.theme.field)
        Drawing(painter, self.plot, self.theme, QRectF(self.rect())).draw()
        painter.end()

    def event(self, event: QEvent) -> bool:
        if event.type() == QEvent.Type.ToolTip and isinstance(event, QHelpEvent):
            words = self.words_at(QPointF(event.pos()))
            QToolTip.showText(event.globalPos(), words or self.plot.spoken, self)
            return True
        return super().event(event)

    def words_at(self, at: QPointF) -> str:
        """Return the words of the mark nearest to a point, empty when none is near."""
        frame = Frame(self.plot, self.theme, QRectF(self.rect()), self.font())
        near = [
            (math.hypot(spot.x() - at.x(), spot.y() - at.y()), mark.words)
            for mark in self.plot.marks
            for spot in (frame.spot(mark.day, mark.value),)
        ]
        found = min(near, default=(math.inf, ""))
        return found[1] if found[0] <= _NEAR_PX else ""


class Frame:
    """Where days and values lie in a rectangle [px]."""

    def __init__(self, plot: Plot, theme: Theme, whole: QRectF, font: QFont) -> None:
        metrics = theme.metrics
        self.font = QFont(font)
        self.font.setPointSizeF(self.font.pointSizeF() * _SMALL)
        from PySide6.QtGui import QFontMetricsF

        measured = QFontMetricsF(self.font)
        self.line = measured.height()
        self.top = nice_top(plot.highest)
        self.first, self.last = plot.days or (0, _LEAST_DAYS)
        left = measured.horizontalAdvance(_number(self.top))
        self.box = whole.adjusted(
            metrics.margin + left + metrics.tight,
            metrics.gap + self.line + metrics.tight,
            -metrics.margin,
            -metrics.gap - self.line,
        )

    def x(self, day: float) -> float:
        """Return where a day lies."""
        return self.box.left() + self.box.width() * (day - self.first) / (self.last - self.first)

    def spot(self, day: float, value: float) -> QPointF:
        """Return where a value of a day lies."""
        return QPointF(self.x(day), self.box.bottom() - self.box.height() * value / self.top)


class Drawing:
    """One painting of a plot in a rectangle."""

    def __init__(self, painter: QPainter, plot: Plot, theme: Theme, whole: QRectF) -> None:
        self._painter, self._plot, self._theme = painter, plot, theme
        self._frame = Frame(plot, theme, whole, painter.font())
        painter.setFont(self._frame.font)

    def draw(self) -> None:
        """Draw title, axes, spans, lines, levels and marks."""
        self._title()
        box = self._frame.box
        if box.height() <= 0 or box.width() <= 0:
            return
        if self._plot.days is None:
            self._painter.setPen(self._theme.muted)
            self._painter.drawText(
                box, Qt.AlignmentFlag.AlignCenter | Qt.TextFlag.TextWordWrap, self._plot.empty
            )
            return
        self._axes()
        for strand in self._plot.strands:
            self._strand(strand)
        for level in self._plot.levels:
            self._level(level)
        self._today()
        for mark in self._plot.marks:
            self._mark(mark)

    def _title(self) -> None:
        metrics = self._theme.metrics
        bold = QFont(self._frame.font)
        bold.setBold(True)
        self._painter.setFont(bold)
        self._painter.setPen(self._theme.text)
        unit = f" [{self._plot.unit}]" if self._plot.unit else ""
        self._painter.drawText(
            QPointF(metrics.margin, metrics.gap + self._frame.line * 0.8), f"{self._plot.title}{unit}"
        )
        self._painter.setFont(self._frame.font)

    def _axes(self) -> None:
        painter, theme, frame = self._painter, self._theme, self._frame
        box = frame.box
        right = Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter
        for share in (0.0, 0.5, 1.0):
            value = frame.top * share
            y = frame.spot(frame.first, value).y()
            painter.setPen(QPen(theme.faint_line if share else theme.line, theme.metrics.hair))
            painter.drawLine(QPointF(box.left(), y), QPointF(box.right(), y))
            painter.setPen(theme.muted)
            words = QRectF(0, y - frame.line / 2, box.left() - theme.metrics.tight, frame.line)
            painter.drawText(words, right, _number(value))
        foot = QRectF(box.left(), box.bottom() + theme.metrics.tight, box.width(), frame.line)
        painter.drawText(foot, Qt.AlignmentFlag.AlignLeft, _day(frame.first))
        painter.drawText(foot, Qt.AlignmentFlag.AlignRight, _day(frame.last))

    def _strand(self, strand: Strand) -> None:
        painter, frame = self._painter, self._frame
        colour = self._ink(strand.colour)
        if strand.span:
            edge = [frame.spot(day, high) for day, _, high in strand.span]
            edge += [frame.spot(day, low) for day, low, _ in reversed(strand.span)]
            painter.setPen(Qt.PenStyle.NoPen)
            painter.setBrush(mixed(colour, self._theme.field, _SPAN_SHARE))
            painter.drawPolygon(QPolygonF(edge))
        style = Qt.PenStyle.DashLine if strand.dashed else Qt.PenStyle.SolidLine
        painter.setPen(QPen(colour, 2 * self._theme.metrics.hair, style))
        painter.setBrush(Qt.BrushStyle.NoBrush)
        painter.drawPolyline(QPolygonF([frame.spot(day, value) for day, value in strand.points]))

    def _level(self, level: Level) -> None:
        painter, frame, theme = self._painter, self._frame, self._theme
        y = frame.spot(frame.first, level.value).y()
        painter.setPen(QPen(theme.wrong, theme.metrics.hair, Qt.PenStyle.DashLine))
        painter.drawLine(QPointF(frame.box.left(), y), QPointF(frame.box.right(), y))
        painter.setPen(theme.wrong)
        above = y - frame.line - 1 if y - frame.line - 1 > frame.box.top() else y + 1
        words = QRectF(frame.box.left() + theme.metrics.tight, above, frame.box.width(), frame.line)
        painter.drawText(words, Qt.AlignmentFlag.AlignLeft, level.words)

    def _today(self) -> None:
        frame, today = self._frame, self._plot.today
        if today is None or not frame.first <= today <= frame.last:
            return
        x = frame.x(today)
        self._painter.setPen(QPen(self._theme.today, 2 * self._theme.metrics.hair))
        self._painter.drawLine(QPointF(x, frame.box.top()), QPointF(x, frame.box.bottom()))
        words, room = tr("today"), self._painter.fontMetrics().horizontalAdvance(tr("today"))
        left = x - room / 2
        box = QRectF(left, frame.box.bottom() + self._theme.metrics.tight, room + 2, frame.line)
        ends = self._painter.fontMetrics().horizontalAdvance(_day(frame.first)) + self._theme.metrics.tight
        if box.left() > frame.box.left() + ends and box.right() < frame.box.right() - ends:
            self._painter.setPen(self._theme.today)
            self._painter.drawText(box, Qt.AlignmentFlag.AlignLeft, words)

    def _mark(self, mark: Mark) -> None:
        painter, at, size = self._painter, self._frame.spot(mark.day, mark.value), _MARK_PX
        painter.setPen(QPen(self._theme.text, 1.5))
        painter.setBrush(self._theme.field)
        if mark.form is MarkForm.DOT:
            painter.drawEllipse(at, size, size)
        elif mark.form is MarkForm.CROSS:
            painter.drawLine(at + QPointF(-size, -size), at + QPointF(size, size))
            painter.drawLine(at + QPointF(-size, size), at + QPointF(size, -size))
        else:
            way = size if mark.form is MarkForm.DOWN else -size
            corners = (QPointF(-size, -way), QPointF(size, -way), QPointF(0, way))
            painter.drawPolygon(QPolygonF([at + corner for corner in corners]))

    def _ink(self, position: int) -> QColor:
        share = 0.75 if self._theme.dark else 1.0
        return mixed(self._theme.data_colour(position), self._theme.text, share)


def _number(value: float) -> str:
    return number_words(float(f"{value:.{_FIGURES}g}"))


def _day(ordinal: int) -> str:
    day = date.fromordinal(ordinal)
    return f"{short_day_words(day).partition(' ')[2]} {day.year}"
