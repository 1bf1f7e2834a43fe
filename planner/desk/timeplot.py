"""A chart of something over dates: lines, the span they lie in, levels to keep, and marks with their words.

Painted from a value; whoever makes the value has worded everything. Must know nothing of farms.
"""

from __future__ import annotations

import math
from datetime import date
from typing import Final

from PySide6.QtCore import QEvent, QPoint, QPointF, QRectF, QSize, Qt
from PySide6.QtGui import (
    QColor,
    QFont,
    QHelpEvent,
    QPainter,
    QPaintEvent,
    QPen,
    QPolygonF,
)
from PySide6.QtWidgets import QSizePolicy, QToolTip, QWidget

from planner.desk.daycursor import WalkedChart
from planner.desk.lanes.fish_lane import nice_top
from planner.desk.pages import Fact
from planner.desk.plotted import Level, Mark, MarkForm, Plot, Strand
from planner.desk.say import tr
from planner.desk.theme import Theme, mixed
from planner.desk.words import number_words, short_day_words, unit_words

_SMALL: Final = 0.85
_HEAD: Final = 1.25
"""Lines above the plot: the title, and room for the upper half of the topmost number beside it."""
_SPAN_SHARE: Final = 0.22
_MARK_PX: Final = 4.5
_NEAR_PX: Final = 12.0
_DOT_PX: Final = 3.0
_LEAST_DAYS: Final = 7
_FIGURES: Final = 3


class TimePlot(WalkedChart):
    """Paints a plot; the words of a mark come when the pointer rests near it.

    Keys step through its days; what is drawn on the day stood on, or under the pointer, can be asked why.
    """

    def __init__(self, plot: Plot, theme: Theme, parent: QWidget | None = None, *, rows: int = 5) -> None:
        super().__init__(parent)
        self.theme = theme
        self.plot = plot
        self._rows = rows
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)
        self.setMinimumSize(theme.metrics.row * 5, theme.metrics.row * 3)
        self.speak()

    def sizeHint(self) -> QSize:
        metrics = self.theme.metrics
        return QSize(metrics.side_width, metrics.row * self._rows)

    def show_plot(self, plot: Plot) -> None:
        """Show another plot; the same again changes nothing."""
        if plot != self.plot:
            self.plot = plot
            self.cursor_day.show_days(plot.drawn_days, today=plot.today)
            self.speak()
            self.update()

    def wear(self, theme: Theme) -> None:
        """Wear the colours of a theme."""
        self.theme = theme
        self.update()

    def speak(self) -> None:
        """Say what is drawn, and what is on the day stood on."""
        self.setAccessibleName(self.plot.title)
        stood = "; ".join(f"{fact.label}: {fact.value}" for fact in self.facts_at(None))
        self.setAccessibleDescription("\n".join(part for part in (stood, self.plot.spoken) if part))

    def facts_at(self, point: QPoint | None) -> tuple[Fact, ...]:
        """Return what can be asked at a point, a mark first; with None, where the cursor stands."""
        if point is None:
            day = self.cursor_day.day
            return () if day is None else (*self._lines_on(day), *self._marks_on(day))
        if self.plot.days is None:
            return ()
        frame = Frame(self.plot, self.theme, QRectF(self.rect()), self.font())
        near = tuple(_mark_fact(mark) for mark in self._near(QPointF(point), frame) if mark.ask is not None)
        return (*near, *self._lines_on(round(frame.day(point.x()))))

    def _lines_on(self, day: int) -> tuple[Fact, ...]:
        """Return what the lines say on the day that they have a point on, nearest to one."""
        found = []
        for strand in self.plot.strands:
            if strand.asks:
                at = min(range(len(strand.points)), key=lambda each: abs(strand.points[each][0] - day))
                on, value = strand.points[at]
                said = f"{_number(value)} {unit_words(self.plot.unit)}".rstrip()
                label = f"{self.plot.title}, {_day(on)}"
                found.append(Fact(label=label, value=said, ask=strand.asks[at]))
        return tuple(found)

    def _marks_on(self, day: int) -> tuple[Fact, ...]:
        return tuple(_mark_fact(mark) for mark in self.plot.marks if mark.day == day and mark.ask is not None)

    def day_at(self, x: float) -> int | None:
        """Return the day that is drawn at a distance from the left, None when there is none."""
        if self.plot.days is None:
            return None
        return round(Frame(self.plot, self.theme, QRectF(self.rect()), self.font()).day(x))

    def paintEvent(self, _event: QPaintEvent) -> None:
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.fillRect(self.rect(), self.theme.field)
        Drawing(painter, self.plot, self.theme, QRectF(self.rect())).draw(self.day_stood_on)
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
        return next((mark.words for mark in self._near(at, frame)), "")

    def _near(self, at: QPointF, frame: Frame) -> tuple[Mark, ...]:
        """Return the mark nearest to a point, none when none is near."""
        found: tuple[Mark, ...] = ()
        least = _NEAR_PX
        for mark in self.plot.marks:
            spot = frame.spot(mark.day, mark.value)
            away = math.hypot(spot.x() - at.x(), spot.y() - at.y())
            if away <= least:
                found, least = (mark,), away
        return found


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
            metrics.gap + self.line * _HEAD + metrics.tight,
            -metrics.margin,
            -metrics.gap - self.line,
        )

    def x(self, day: float) -> float:
        """Return where a day lies."""
        return self.box.left() + self.box.width() * (day - self.first) / (self.last - self.first)

    def day(self, x: float) -> float:
        """Return the day that lies at a distance from the left, kept within those shown."""
        share = (x - self.box.left()) / max(self.box.width(), 1.0)
        return self.first + min(max(share, 0.0), 1.0) * (self.last - self.first)

    def spot(self, day: float, value: float) -> QPointF:
        """Return where a value of a day lies."""
        return QPointF(self.x(day), self.box.bottom() - self.box.height() * value / self.top)


class Drawing:
    """One painting of a plot in a rectangle."""

    def __init__(self, painter: QPainter, plot: Plot, theme: Theme, whole: QRectF) -> None:
        self._painter, self._plot, self._theme = painter, plot, theme
        self._frame = Frame(plot, theme, whole, painter.font())
        painter.setFont(self._frame.font)

    def draw(self, stood: int | None = None) -> None:
        """Draw title, axes, spans, lines, levels and marks, and the day that the cursor stands on."""
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
        if stood is not None:
            self._cursor(stood)

    def _cursor(self, day: int) -> None:
        """Draw where the keys stand, and what the lines say there."""
        painter, frame, theme = self._painter, self._frame, self._theme
        x = frame.x(day)
        painter.setPen(QPen(theme.text, theme.metrics.hair))
        painter.drawLine(QPointF(x, frame.box.top()), QPointF(x, frame.box.bottom()))
        for strand in self._plot.strands:
            value = next((value for on, value in strand.points if on >= day), None)
            if value is not None:
                painter.setBrush(theme.text)
                painter.drawEllipse(frame.spot(day, value), _DOT_PX, _DOT_PX)
                self._cursor_words(x, f"{_day(day)}: {_number(value)} {unit_words(self._plot.unit)}".rstrip())

    def _cursor_words(self, x: float, words: str) -> None:
        """Write beside the cursor, on the side where there is room."""
        room = self._painter.fontMetrics().horizontalAdvance(words) + 2 * self._theme.metrics.tight
        box = self._frame.box
        left = x + 1 if x + room < box.right() else x - room - 1
        ground = QRectF(left, box.bottom() - self._frame.line - 1, room, self._frame.line)
        self._painter.fillRect(ground, self._theme.panel)
        self._painter.setPen(self._theme.text)
        self._painter.drawText(ground, Qt.AlignmentFlag.AlignCenter, words)

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
        first, last = self.ends()
        painter.drawText(foot, Qt.AlignmentFlag.AlignLeft, first)
        painter.drawText(foot, Qt.AlignmentFlag.AlignRight, last)

    def ends(self) -> tuple[str, str]:
        """Return the days at both ends of the axis, without their years where there is no room for both."""
        frame, measured = self._frame, self._painter.fontMetrics()
        whole = _day(frame.first), _day(frame.last)
        wide = sum(measured.horizontalAdvance(words) for words in whole) + self._theme.metrics.gap
        return whole if wide <= frame.box.width() else (_month_day(frame.first), _month_day(frame.last))

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
        ends = self._painter.fontMetrics().horizontalAdvance(self.ends()[0]) + self._theme.metrics.tight
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


def _mark_fact(mark: Mark) -> Fact:
    return Fact(label="", value=mark.words, ask=mark.ask)


def _number(value: float) -> str:
    return number_words(float(f"{value:.{_FIGURES}g}"))


def _day(ordinal: int) -> str:
    return f"{_month_day(ordinal)} {date.fromordinal(ordinal).year}"


def _month_day(ordinal: int) -> str:
    return short_day_words(date.fromordinal(ordinal)).partition(" ")[2]
