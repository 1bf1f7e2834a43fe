"""What is painted over the bed map: the chosen batch, plants in the hand, where they stood, the cursor."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from typing import Final

from PySide6.QtCore import QRectF, Qt
from PySide6.QtGui import QPainter, QPen

from planner.desk.beds.holding import Held
from planner.desk.beds.layout import MapLayout, row_boxes
from planner.desk.beds.stays import Stays
from planner.desk.beds.walking import Spot
from planner.desk.theme import Theme
from planner.farm.fields import Id

_MARK: Final = 2.4


@dataclass(frozen=True, slots=True, kw_only=True)
class Marks:
    """What is marked on a day of the ruler."""

    picked: Id
    held: Held | None
    spot: Spot | None
    focused: bool
    day: int


def paint_marks(
    painter: QPainter, part: QRectF, layout: MapLayout, stays: Stays, marks: Marks, theme: Theme
) -> None:
    """Paint the marks that lie in `part` of the map."""
    painter.setBrush(Qt.BrushStyle.NoBrush)
    if marks.held is not None:
        _paint_held(painter, part, layout, stays, marks, theme)
    elif marks.picked:
        painter.setPen(QPen(theme.accent, _MARK))
        for box in _boxes_of(marks.picked, part, layout, stays, marks.day):
            painter.drawRect(box)
    if marks.spot is not None:
        _paint_cursor(painter, layout, marks.spot, theme, focused=marks.focused)


def _boxes_of(batch: Id, part: QRectF, layout: MapLayout, stays: Stays, day: int) -> Iterator[QRectF]:
    for plot in layout.between(part.top(), part.bottom()):
        for span in stays.spans(plot.bed, plot.unit, day):
            if span.now is not None and span.now.run.batch == batch:
                for box in row_boxes(plot, span.first, span.last):
                    yield QRectF(*box)


def _paint_held(
    painter: QPainter, part: QRectF, layout: MapLayout, stays: Stays, marks: Marks, theme: Theme
) -> None:
    held = marks.held
    assert held is not None
    painter.setPen(QPen(theme.muted, _MARK, Qt.PenStyle.DotLine))
    for old in _boxes_of(held.run.batch, part, layout, stays, marks.day):
        painter.drawRect(old)
    style = Qt.PenStyle.SolidLine if held.allowed else Qt.PenStyle.DashLine
    painter.setPen(QPen(theme.accent if held.allowed else theme.wrong, _MARK + 1, style))
    for run in held.would:
        plot = layout.plot(run.bed, run.unit)
        for box in row_boxes(plot, run.first, run.last) if plot is not None else ():
            painter.drawRect(QRectF(*box))


def _paint_cursor(painter: QPainter, layout: MapLayout, spot: Spot, theme: Theme, *, focused: bool) -> None:
    plot = layout.plot(spot.bed, spot.unit)
    if plot is None:
        return
    x, y = plot.corner(spot.place)
    box = QRectF(x, y, plot.pitch, plot.pitch)
    painter.setPen(QPen(theme.field, _MARK * 2))
    painter.drawRect(box)
    painter.setPen(QPen(theme.text if focused else theme.muted, _MARK))
    painter.drawRect(box)
