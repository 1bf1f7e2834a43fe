"""Draws the loop as it is typed: tank, filter, biofilter, and every bed to one scale with its holes.

Paints a value and speaks it; must know nothing of forms.
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import Final

from PySide6.QtCore import QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QColor, QPainter, QPaintEvent, QPen, QPolygonF
from PySide6.QtWidgets import QWidget

from planner.desk.say import tr
from planner.desk.theme import Theme, mixed
from planner.desk.words import number_words
from planner.farm.site import Bed
from planner.farm.species import BedKind
from planner.planning.answers import BedWish

_MOST_FISH: Final = 12
_MOST_HOLES: Final = 1200
_WATER_SHARE: Final = 0.28
_GRAVEL_SHARE: Final = 0.22
_STEP_SHARE: Final = 0.085
_TANK_SHARE: Final = 0.15
_HIGH_ROWS: Final = 5.4


@dataclass(frozen=True, slots=True, kw_only=True)
class BedSketch:
    """A bed as it would be laid out; metres are those that were typed, or come from its area."""

    name: str
    kind: BedKind
    rows: int
    columns: int
    length_m: float
    width_m: float


@dataclass(frozen=True, slots=True, kw_only=True)
class LoopSketch:
    """What is known so far; None and empty where nothing is."""

    tank_l: float | None = None
    fish: int | None = None
    beds: tuple[BedSketch, ...] = ()


def sketched(bed: Bed, wish: BedWish) -> BedSketch:
    """Return how a bed that was laid out is drawn; without metres its shape is that of its holes."""
    area = bed.area_m2 or float(bed.places)
    length = wish.length_m or math.sqrt(area * bed.columns / bed.rows)
    width = wish.width_m if wish.length_m and wish.width_m else area / length
    return BedSketch(
        name=bed.name, kind=bed.kind, rows=bed.rows, columns=bed.columns, length_m=length, width_m=width
    )


def bed_words(bed: BedSketch) -> str:
    """Return a bed's area and places."""
    area = number_words(bed.length_m * bed.width_m, digits=2)
    places = number_words(bed.rows * bed.columns, digits=0)
    return tr("{area} m² · {places} places", area=area, places=places)


def sketch_words(sketch: LoopSketch) -> str:
    """Return the drawing in a sentence."""
    beds = ", ".join(f"{bed.name}: {bed_words(bed)}" for bed in sketch.beds) or tr("no bed yet")
    return tr("{tank}, {fish}; filter; biofilter; {beds}", tank=_tank(sketch), fish=_fish(sketch), beds=beds)


def _tank(sketch: LoopSketch) -> str:
    if sketch.tank_l is None:
        return tr("Fish tank")
    return tr("Tank, {litres} L", litres=number_words(sketch.tank_l, digits=0))


def _fish(sketch: LoopSketch) -> str:
    return tr("{count} fish", count=number_words(sketch.fish or 0, digits=0))


class LoopDrawing(QWidget):
    """Shows a loop; the same again changes nothing."""

    def __init__(self, theme: Theme, parent: QWidget) -> None:
        super().__init__(parent)
        self._theme = theme
        self.sketch = LoopSketch()
        self.setAccessibleName(tr("The loop as it is typed"))
        self.setMinimumHeight(round(theme.metrics.row * _HIGH_ROWS))

    def sizeHint(self) -> QSize:
        return QSize(self._theme.metrics.side_width * 2, round(self._theme.metrics.row * _HIGH_ROWS))

    def show_sketch(self, sketch: LoopSketch) -> None:
        """Draw another loop."""
        if sketch != self.sketch:
            self.sketch = sketch
            self.setAccessibleDescription(sketch_words(sketch))
            self.update()

    def paintEvent(self, event: QPaintEvent) -> None:  # noqa: ARG002
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.fillRect(self.rect(), self._theme.field)
        _Drawing(painter, self.sketch, self._theme, QRectF(self.rect())).draw()
        painter.end()


class _Drawing:
    """One painting of a loop in a rectangle."""

    def __init__(self, painter: QPainter, sketch: LoopSketch, theme: Theme, whole: QRectF) -> None:
        self._painter, self._sketch, self._theme = painter, sketch, theme
        margin = theme.metrics.margin
        self._line = painter.fontMetrics().height()
        self._whole = whole.adjusted(margin, margin, -margin, -margin)
        foot = self._line * 2 + theme.metrics.gap * 2
        self._plot = self._whole.adjusted(0, 0, 0, -foot)
        self._water = mixed(theme.data_colour(1), theme.field, _WATER_SHARE)
        self._gravel = mixed(theme.text, theme.field, _GRAVEL_SHARE)

    def draw(self) -> None:
        """Draw the parts from left to right, and the way of the water back below them."""
        across, gap = self._whole.width(), self._theme.metrics.wide
        tank = QRectF(self._plot.left(), self._plot.top(), across * _TANK_SHARE, self._plot.height())
        self._draw_tank(tank)
        step = across * _STEP_SHARE
        high = self._plot.height() * 0.6
        top = self._plot.center().y() - high / 2
        filters = QRectF(tank.right() + gap, top, step, high)
        bio = QRectF(filters.right() + gap, top, step, high)
        self._draw_step(filters, tr("Filter"), funnel=True)
        self._draw_step(bio, tr("Biofilter"), funnel=False)
        beds = QRectF(bio.right() + gap, self._plot.top(), 0, self._plot.height())
        beds.setRight(self._whole.right())
        beds = self._draw_beds(beds)
        middle = self._plot.center().y()
        for start, end in ((tank, filters), (filters, bio), (bio, beds)):
            self._arrow(QPointF(start.right() + 3, middle), QPointF(end.left() - 3, middle))
        self._draw_return(tank, beds.right())

    def _pen(self, colour: QColor, width: float = 1.4, *, dashed: bool = False) -> None:
        style = Qt.PenStyle.DashLine if dashed else Qt.PenStyle.SolidLine
        self._painter.setPen(QPen(colour, width, style))

    def _words(self, box: QRectF, first: str, second: str = "") -> None:
        """Write up to two lines below a part, cut with dots where they are too long."""
        metrics = self._painter.fontMetrics()
        inks = (self._theme.text, self._theme.muted)
        for at, (words, ink) in enumerate(zip((first, second), inks, strict=True)):
            line = QRectF(box.left(), self._plot.bottom() + 3 + at * self._line, box.width(), self._line)
            self._painter.setPen(ink)
            said = metrics.elidedText(words, Qt.TextElideMode.ElideRight, round(box.width()))
            self._painter.drawText(line, Qt.AlignmentFlag.AlignHCenter, said)

    def _draw_tank(self, box: QRectF) -> None:
        known = self._sketch.tank_l is not None
        self._painter.setBrush(self._water if known else Qt.BrushStyle.NoBrush)
        self._pen(self._theme.text if known else self._theme.muted, dashed=not known)
        self._painter.drawRoundedRect(box, self._theme.metrics.gap, self._theme.metrics.gap)
        self._draw_fish(box)
        self._words(box, _tank(self._sketch), _fish(self._sketch))

    def _draw_fish(self, box: QRectF) -> None:
        count = min(self._sketch.fish or 0, _MOST_FISH)
        self._pen(self._theme.text, 1.0)
        self._painter.setBrush(mixed(self._theme.data_colour(2), self._theme.field, 0.8))
        length = min(box.width() / 5, box.height() / 5)
        for at in range(count):
            x = box.left() + box.width() * (0.2 + 0.3 * (at % 3))
            y = box.top() + box.height() * (0.18 + 0.21 * (at // 3))
            self._painter.drawEllipse(QPointF(x, y), length / 2, length / 4)
            tail = [QPointF(x - length * 0.45, y)]
            tail += [QPointF(x - length * 0.8, y + side * length * 0.25) for side in (-1, 1)]
            self._painter.drawPolygon(QPolygonF(tail))

    def _draw_step(self, box: QRectF, name: str, *, funnel: bool) -> None:
        """Draw a filter: not asked for yet, so in broken lines."""
        self._pen(self._theme.muted, dashed=True)
        self._painter.setBrush(mixed(self._theme.data_colour(1), self._theme.field, _WATER_SHARE / 2))
        if funnel:
            waist = box.top() + box.height() * 0.55
            corners = [box.topLeft(), box.topRight(), QPointF(box.right(), waist)]
            corners += [QPointF(box.center().x(), box.bottom()), QPointF(box.left(), waist)]
            self._painter.drawPolygon(QPolygonF(corners))
        else:
            self._painter.drawRect(box)
            for at in range(9):
                x = box.left() + box.width() * (0.25 + 0.25 * (at % 3))
                y = box.top() + box.height() * (0.3 + 0.2 * (at // 3))
                self._painter.drawEllipse(QPointF(x, y), 2.5, 2.5)
        wide = box.adjusted(-self._theme.metrics.gap, 0, self._theme.metrics.gap, 0)
        self._words(wide, name)

    def _draw_beds(self, room: QRectF) -> QRectF:
        """Draw the beds into a room; return from where to where they reach, for the pipes at both ends."""
        beds = self._sketch.beds
        if not beds:
            self._pen(self._theme.muted, dashed=True)
            self._painter.setBrush(Qt.BrushStyle.NoBrush)
            self._painter.drawRect(room)
            self._painter.drawText(room, Qt.AlignmentFlag.AlignCenter, tr("beds as you type them"))
            return room
        gap = self._theme.metrics.wide
        free = room.width() - gap * (len(beds) - 1)
        metres = sum(bed.length_m for bed in beds)
        scale = min(free / metres, room.height() / max(bed.width_m for bed in beds))
        slot = free / len(beds)
        equal = scale * metres <= free * 0.8
        x, drawn = room.left(), QRectF()
        for bed in beds:
            wide, high = bed.length_m * scale, bed.width_m * scale
            place = slot if equal else wide
            left = x + (place - wide) / 2 if equal else x
            box = QRectF(left, room.center().y() - high / 2, wide, high)
            self._draw_bed(box, bed)
            self._words(QRectF(x, 0, place, 0), bed.name, bed_words(bed))
            drawn = drawn.united(box)
            x += place + gap
        return drawn

    def _draw_bed(self, box: QRectF, bed: BedSketch) -> None:
        gravel = bed.kind is BedKind.MEDIA
        self._pen(self._theme.text)
        self._painter.setBrush(self._gravel if gravel else self._water)
        self._painter.drawRect(box)
        if bed.rows * bed.columns > _MOST_HOLES:
            return
        across, down = box.width() / bed.columns, box.height() / bed.rows
        size = max(min(across, down) * 0.28, 0.6)
        self._pen(self._theme.text, 0.8)
        self._painter.setBrush(self._theme.field)
        for row in range(bed.rows):
            for column in range(bed.columns):
                middle = QPointF(box.left() + (column + 0.5) * across, box.top() + (row + 0.5) * down)
                if gravel:
                    corner = QRectF(middle.x() - size, middle.y() - size, 2 * size, 2 * size)
                    self._painter.drawRect(corner)
                else:
                    self._painter.drawEllipse(middle, size, size)

    def _arrow(self, start: QPointF, end: QPointF) -> None:
        self._pen(self._theme.data_colour(5), 2)
        self._painter.drawLine(start, end)
        angle = math.atan2(end.y() - start.y(), end.x() - start.x())
        for side in (-1, 1):
            turn = angle + math.pi - side * 0.5
            self._painter.drawLine(end, QPointF(end.x() + 6 * math.cos(turn), end.y() + 6 * math.sin(turn)))

    def _draw_return(self, tank: QRectF, beds_end: float) -> None:
        """Draw how the water goes from the last bed back to the fish."""
        y, middle, right = self._whole.bottom() - 2, self._plot.center().y(), self._whole.right()
        self._pen(self._theme.data_colour(5), 2)
        start = QPointF(right, self._plot.bottom())
        if beds_end + 3 < right:
            start = QPointF(right, middle)
            self._painter.drawLine(QPointF(beds_end + 3, middle), start)
        self._painter.drawLine(start, QPointF(right, y))
        self._painter.drawLine(QPointF(right, y), QPointF(tank.left(), y))
        self._arrow(QPointF(tank.left(), y), QPointF(tank.left(), self._plot.bottom() + 2))
