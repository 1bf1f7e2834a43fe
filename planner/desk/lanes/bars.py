"""Paints bars: shade, hatch and edge of each stage, gathered by look and drawn in few calls.

Works on plain numbers until the last moment, so that a full screen stays quick. Must know nothing of rows'
names, storage or moves; what is written on bars is in `lettering`.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass, field
from math import floor
from typing import Final, NamedTuple

from PySide6.QtCore import QRectF, Qt
from PySide6.QtGui import QColor, QPainter, QPen

from planner.desk.lanes.kit import STAGES, Kit
from planner.desk.lanes.lettering import Seen, write_bars
from planner.desk.lanes.scene import Bar
from planner.desk.lanes.time_scale import TimeScale
from planner.desk.theme import mixed

LEAST_PX: Final = 3.0
"""Bars narrower than this are drawn together as one block."""

ROUND: Final = 0.5 + 1e-6
"""Added before a place is cut to whole pixels; a trifle more than half, for what lies just between two."""

_HATCHED_PX: Final = 4.0
_SPINE_PX: Final = 3.0
_OVER_PX: Final = 2.0
_EDGE: Final = 0.62
_BLOCK: Final = 0.55


class View(NamedTuple):
    """Which part of the days is seen, and where days lie: day 0 is at `zero_x`, to be cut to whole pixels.

    Bars begin and end on whole pixels, so that a picture moved along by pixels is as if painted anew.
    """

    left: float
    right: float
    px_per_day: float
    zero_x: float


def view_of(scale: TimeScale, seen: QRectF) -> View:
    """Return the view of a rectangle in which days lie as a scale says."""
    return View(seen.left(), seen.right(), scale.px_per_day, scale.x_of(0) + ROUND)


@dataclass(slots=True)
class Shapes:
    """Rectangles gathered by look, and bars whose names are to be written."""

    fills: dict[int, list[QRectF]] = field(default_factory=dict)
    hatches: dict[int, list[QRectF]] = field(default_factory=dict)
    edges: dict[int, list[QRectF]] = field(default_factory=dict)
    spines: dict[int, list[QRectF]] = field(default_factory=dict)
    blocks: list[QRectF] = field(default_factory=list)
    named: list[Seen] = field(default_factory=list)
    bars: int = 0


def gather(shapes: Shapes, bars: Iterable[Bar], *, top: float, line_px: float, view: View) -> None:
    """Gather the shapes of the bars of one row whose first line is at `top`; only what is seen."""
    left, right, px, zero = view
    block: QRectF | None = None
    for bar in bars:
        x0, x1 = floor(zero + bar.start * px), floor(zero + bar.end * px)
        if x1 <= left or x0 >= right:
            continue
        shapes.bars += 1
        y, height = top + bar.top * line_px, bar.lines * line_px - 1
        if x1 - x0 < LEAST_PX:
            block = _blocked(shapes, block, QRectF(x0, y, x1 - x0, height))
        else:
            _gather_bar(shapes, bar, (x0, x1, y, height), view)


def _blocked(shapes: Shapes, block: QRectF | None, box: QRectF) -> QRectF:
    if block is not None and box.left() <= block.right() + 1 and box.top() == block.top():
        block.setRight(max(block.right(), box.right()))
        return block
    shapes.blocks.append(box)
    return box


def _gather_bar(shapes: Shapes, bar: Bar, box: tuple[float, float, float, float], view: View) -> None:
    bar_x0, bar_x1, y, height = box
    low, high = view.left - _OVER_PX, view.right + _OVER_PX
    px, zero = view.px_per_day, view.zero_x
    base_key = bar.colour * STAGES
    cells = []
    for each in bar.segments:
        x0, x1 = max(floor(zero + each.start * px), low), min(floor(zero + each.end * px), high)
        width = x1 - x0
        if width <= 0:
            continue
        key = base_key + each.order
        rect = QRectF(x0, y, width, height)
        shapes.fills.setdefault(key, []).append(rect)
        if width >= _HATCHED_PX:
            shapes.hatches.setdefault(key, []).append(rect)
            cells.append((key, x0, x1))
    x0, x1 = max(bar_x0, low), min(bar_x1, high)
    edge = QRectF(x0 + 0.5, y + 0.5, x1 - x0 - 1, height - 1)
    shapes.edges.setdefault(bar.colour, []).append(edge)
    if bar_x0 > low and bar_x1 - bar_x0 > 2 * _SPINE_PX:
        shapes.spines.setdefault(bar.colour, []).append(QRectF(bar_x0, y, _SPINE_PX, height))
    shapes.named.append(Seen(bar, x0, x1, y, height, cells))


def paint_shapes(painter: QPainter, shapes: Shapes, kit: Kit) -> None:
    """Paint fills, hatches and edges of everything gathered, then its names."""
    painter.setPen(Qt.PenStyle.NoPen)
    for key, rects in shapes.fills.items():
        painter.setBrush(kit.stage_look(key).ink.fill)
        painter.drawRects(rects)
    for key, rects in shapes.hatches.items():
        painter.setBrush(kit.stage_look(key).hatch or Qt.BrushStyle.NoBrush)
        painter.drawRects(rects)
    for colour, rects in shapes.spines.items():
        painter.setBrush(_edge(kit, colour))
        painter.drawRects(rects)
    if shapes.blocks:
        painter.setBrush(mixed(kit.theme.muted, kit.theme.field, _BLOCK))
        painter.drawRects(shapes.blocks)
    painter.setBrush(Qt.BrushStyle.NoBrush)
    for colour, rects in shapes.edges.items():
        painter.setPen(QPen(_edge(kit, colour), 1))
        painter.drawRects(rects)
    write_bars(painter, shapes.named, kit)


def _edge(kit: Kit, colour: int) -> QColor:
    return mixed(kit.crop_colour(colour), kit.theme.text, _EDGE)
