"""A small chart of weeks: bars, lines and steps on one scale, told apart by form as well as by colour.

The arrow keys walk its weeks; what is drawn in the week stood on, or under the pointer, can be asked why.
Must know nothing of farms.
"""

from __future__ import annotations

from dataclasses import dataclass
from enum import Enum
from typing import Final

from PySide6.QtCore import QEvent, QPoint, QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QBrush, QColor, QFont, QHelpEvent, QPainter, QPaintEvent, QPen, QPolygonF
from PySide6.QtWidgets import QSizePolicy, QToolTip, QWidget

from planner.desk.daycursor import WalkedChart
from planner.desk.pages import Ask, Fact
from planner.desk.say import tr
from planner.desk.theme import Theme, mixed
from planner.desk.words import number_words

_SMALL: Final = 0.85
_BAR_SHARE: Final = 0.72
_FILL_SHARE: Final = 0.55
_SAMPLE: Final = 22
_HEADROOM: Final = 1.08
_FIGURES: Final = 3


class Form(Enum):
    """How a row of values is drawn."""

    BARS = "bars"
    LINE = "line"
    DASHED = "dashed"
    STEPS = "steps"
    DOTTED = "dotted"


_STYLES: Final = {Form.DASHED: Qt.PenStyle.DashLine, Form.DOTTED: Qt.PenStyle.DotLine}


@dataclass(frozen=True, slots=True, kw_only=True)
class Strand:
    """One row of values by week, what it is called, and how it is drawn in which data colour.

    `asks` has for each week what "why?" is asked about there, None where nothing; empty when nothing at all.
    """

    label: str
    values: tuple[float, ...]
    form: Form
    colour: int
    asks: tuple[Ask | None, ...] = ()


@dataclass(frozen=True, slots=True, kw_only=True)
class Chart:
    """What a chart shows; `weeks` are the names of the weeks."""

    title: str
    unit: str
    weeks: tuple[str, ...]
    strands: tuple[Strand, ...]

    @property
    def highest(self) -> float:
        """The highest value of all."""
        return max((value for strand in self.strands for value in strand.values), default=0.0)


EMPTY: Final = Chart(title="", unit="", weeks=(), strands=())


def chart_words(chart: Chart) -> str:
    """Return a chart in a sentence, for reading aloud."""
    said = [
        tr(
            "{label} from {low} to {high}",
            label=strand.label,
            low=_figure(min(strand.values)),
            high=_figure(max(strand.values)),
        )
        for strand in chart.strands
        if strand.values
    ]
    if not said:
        return tr("{title}: nothing to show", title=chart.title)
    return tr("{title} [{unit}]: {said}", title=chart.title, unit=chart.unit, said="; ".join(said))


def _figure(value: float) -> str:
    return number_words(float(f"{value:.{_FIGURES}g}"))


def week_tip(chart: Chart, week: int) -> str:
    """Return the values of one week, a line each."""
    lines = [f"{strand.label}: {_figure(strand.values[week])} {chart.unit}" for strand in chart.strands]
    return "\n".join([chart.weeks[week], *lines])


def week_facts(chart: Chart, week: int) -> tuple[Fact, ...]:
    """Return what each row of values says of a week, with what it can be asked."""
    return tuple(
        Fact(
            label=f"{chart.weeks[week]}, {strand.label}",
            value=f"{_figure(strand.values[week])} {chart.unit}",
            ask=strand.asks[week] if strand.asks else None,
        )
        for strand in chart.strands
        if week < len(strand.values)
    )


class WeekChart(WalkedChart):
    """Shows a chart; a tip tells the values of the week under the pointer."""

    def __init__(self, theme: Theme, parent: QWidget) -> None:
        super().__init__(parent)
        self.theme = theme
        self.chart = EMPTY
        self._plot = QRectF()
        self.setAccessibleName(tr("nothing to show"))
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Preferred)
        self.setMinimumSize(theme.metrics.row * 6, theme.metrics.row * 5)

    def sizeHint(self) -> QSize:
        metrics = self.theme.metrics
        return QSize(metrics.side_width, metrics.row * 6)

    def show_chart(self, chart: Chart) -> None:
        """Show other values."""
        if chart != self.chart:
            self.chart = chart
            self.cursor_day.show_days(range(len(chart.weeks)), today=None)
            self.setAccessibleName(chart_words(chart))
            self.speak()
            self.update()

    def speak(self) -> None:
        """Say what is drawn in the week stood on."""
        self.setAccessibleDescription(
            "; ".join(f"{fact.label}: {fact.value}" for fact in self.facts_at(None))
        )

    def facts_at(self, point: QPoint | None) -> tuple[Fact, ...]:
        """Return what can be asked of the week under a point; with None, of the week stood on."""
        week = self.cursor_day.day if point is None else self.day_at(point.x())
        return () if week is None else week_facts(self.chart, week)

    def day_at(self, x: float) -> int | None:
        """Return the week under a distance from the left, None outside."""
        week = self.week_at(x)
        return week if week >= 0 else None

    def wear(self, theme: Theme) -> None:
        """Wear the colours of a theme."""
        self.theme = theme
        self.update()

    def paintEvent(self, _event: QPaintEvent) -> None:
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.fillRect(self.rect(), self.theme.panel)
        drawing = _Drawing(painter, self.chart, self.theme, QRectF(self.rect()))
        drawing.draw(self.day_stood_on)
        self._plot = drawing.plot
        painter.end()

    def week_at(self, x: float) -> int:
        """Return the week under a place of the widget, -1 outside."""
        count = len(self.chart.weeks)
        if not count or not self._plot.left() <= x < self._plot.right():
            return -1
        return min(int((x - self._plot.left()) / self._plot.width() * count), count - 1)

    def event(self, event: QEvent) -> bool:
        if isinstance(event, QHelpEvent) and event.type() is QEvent.Type.ToolTip:
            week = self.week_at(event.pos().x())
            if week >= 0:
                QToolTip.showText(event.globalPos(), week_tip(self.chart, week), self)
            return True
        return super().event(event)


class _Drawing:
    """One painting of a chart in a rectangle."""

    def __init__(self, painter: QPainter, chart: Chart, theme: Theme, whole: QRectF) -> None:
        self._painter, self._chart, self._theme = painter, chart, theme
        small = QFont(painter.font())
        small.setPointSizeF(small.pointSizeF() * _SMALL)
        painter.setFont(small)
        self._small = small
        self._line = painter.fontMetrics().height()
        self._top = chart.highest * _HEADROOM or 1.0
        metrics = theme.metrics
        left = (
            painter.fontMetrics().horizontalAdvance(_figure(chart.highest)) + metrics.margin + metrics.tight
        )
        self._whole = whole
        self.plot = whole.adjusted(
            left,
            metrics.gap + self._line * 2 + metrics.gap,
            -metrics.margin,
            -metrics.gap - self._line,
        )

    def draw(self, stood_on: int | None) -> None:
        """Draw title, legend, axes and strands, and a frame around the week that the keys stand on."""
        self._draw_head()
        if self.plot.height() <= 0 or self.plot.width() <= 0:
            return
        self._painter.fillRect(self.plot, self._theme.field)
        if not self._chart.weeks:
            self._painter.setPen(self._theme.muted)
            self._painter.drawText(self.plot, Qt.AlignmentFlag.AlignCenter, tr("nothing to show"))
        for strand in self._chart.strands:
            self._draw_strand(strand)
        self._draw_axes()
        if stood_on is not None and stood_on < len(self._chart.weeks):
            self._painter.setPen(QPen(self._theme.text, 2 * self._theme.metrics.hair))
            left, right = self._x(stood_on), self._x(stood_on + 1)
            self._painter.drawRect(QRectF(left, self.plot.top(), right - left, self.plot.height()))

    def _draw_head(self) -> None:
        painter, metrics = self._painter, self._theme.metrics
        bold = QFont(self._small)
        bold.setBold(True)
        painter.setFont(bold)
        painter.setPen(self._theme.text)
        title = self._chart.title + (f" [{self._chart.unit}]" if self._chart.unit else "")
        painter.drawText(QPointF(metrics.margin, metrics.gap + self._line * 0.8), title)
        painter.setFont(self._small)
        x, y = float(metrics.margin), metrics.gap + self._line * 1.5
        for strand in self._chart.strands:
            x = self._draw_sample(strand, x, y)

    def _draw_sample(self, strand: Strand, x: float, middle: float) -> float:
        """Draw a sample of a strand with its label; return where the next may begin."""
        painter, metrics = self._painter, self._theme.metrics
        colour = self._colour(strand)
        if strand.form is Form.BARS:
            box = QRectF(x, middle - self._line / 4, _SAMPLE, self._line / 2)
            painter.fillRect(box, self._fill(colour))
        else:
            painter.setPen(self._pen(strand.form, colour))
            painter.drawLine(QPointF(x, middle), QPointF(x + _SAMPLE, middle))
        painter.setPen(self._theme.text)
        x += _SAMPLE + metrics.tight
        painter.drawText(QPointF(x, middle + self._line * 0.3), strand.label)
        return x + painter.fontMetrics().horizontalAdvance(strand.label) + metrics.margin

    def _draw_axes(self) -> None:
        painter, theme, plot = self._painter, self._theme, self.plot
        painter.setPen(QPen(theme.line, theme.metrics.hair))
        painter.setBrush(Qt.BrushStyle.NoBrush)
        painter.drawRect(plot)
        if not self._chart.weeks:
            return
        painter.setPen(theme.muted)
        right = Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter
        for value in (0.0, self._chart.highest):
            box = QRectF(0, self._y(value) - self._line / 2, plot.left() - theme.metrics.tight, self._line)
            painter.drawText(box, right, _figure(value))
        foot = QRectF(plot.left(), plot.bottom() + theme.metrics.tight, plot.width(), self._line)
        painter.drawText(foot, Qt.AlignmentFlag.AlignLeft, self._chart.weeks[0])
        painter.drawText(foot, Qt.AlignmentFlag.AlignRight, self._chart.weeks[-1])

    def _y(self, value: float) -> float:
        return self.plot.bottom() - value / self._top * self.plot.height()

    def _x(self, week: float) -> float:
        return self.plot.left() + week / max(len(self._chart.weeks), 1) * self.plot.width()

    def _colour(self, strand: Strand) -> QColor:
        colour = self._theme.data_colour(strand.colour)
        return mixed(colour, self._theme.text, 0.6) if self._theme.dark else colour

    def _fill(self, colour: QColor) -> QBrush:
        return QBrush(mixed(colour, self._theme.field, _FILL_SHARE))

    def _pen(self, form: Form, colour: QColor) -> QPen:
        pen = QPen(colour if form is not Form.STEPS else self._theme.text, 2 * self._theme.metrics.hair)
        pen.setStyle(_STYLES.get(form, Qt.PenStyle.SolidLine))
        if form is Form.STEPS:
            pen.setWidthF(1.5 * self._theme.metrics.hair)
        return pen

    def _draw_strand(self, strand: Strand) -> None:
        colour = self._colour(strand)
        if strand.form is Form.BARS:
            room = (1 - _BAR_SHARE) / 2
            for week, value in enumerate(strand.values):
                left, right = self._x(week + room), self._x(week + 1 - room)
                box = QRectF(QPointF(left, self._y(value)), QPointF(right, self.plot.bottom()))
                self._painter.fillRect(box, self._fill(colour))
            return
        self._painter.setPen(self._pen(strand.form, colour))
        self._painter.setBrush(Qt.BrushStyle.NoBrush)
        points = [
            QPointF(self._x(week + step), self._y(value))
            for week, value in enumerate(strand.values)
            for step in ((0.0, 1.0) if strand.form is Form.STEPS else (0.5,))
        ]
        self._painter.drawPolyline(QPolygonF(points))
