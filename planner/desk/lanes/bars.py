"""Paints bars: shade, hatch and letter for each stage, and the batch's name where there is room.

Gathers all rectangles of one look and draws them in one call, so that a full screen stays quick. Must
know nothing of rows' names, storage or moves.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass, field
from typing import Final

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QBrush, QPainter, QPen

from planner.desk.lanes.kit import Face, Kit, look_key
from planner.desk.lanes.scene import Bar, Segment
from planner.desk.lanes.time_scale import TimeScale
from planner.desk.theme import mixed
from planner.farm.crops import Stage

LEAST_PX: Final = 3.0
"""Bars narrower than this are drawn together as one block."""

STAGES: Final = len(Stage)
_LEAST_LETTER_PX: Final = 14.0
_HATCHED_PX: Final = 4.0
_SPINE_PX: Final = 3.0
_LETTER_PAD: Final = 4.0
_GAP: Final = 7.0
_LEAST_TITLE_PX: Final = 22.0
_EDGE: Final = 0.62
_BLOCK: Final = 0.55
_LOCK_PX: Final = 8.0
_LOCK_ROOM: Final = 44.0


@dataclass(frozen=True, slots=True)
class Named:
    """The part of a bar that is seen, with the parts of its stages that are."""

    bar: Bar
    box: QRectF
    cells: tuple[tuple[Segment, QRectF], ...]


@dataclass(slots=True)
class Shapes:
    """Rectangles gathered by look, and bars whose names are to be written."""

    fills: dict[int, list[QRectF]] = field(default_factory=dict)
    hatches: dict[int, list[QRectF]] = field(default_factory=dict)
    edges: dict[int, list[QRectF]] = field(default_factory=dict)
    spines: dict[int, list[QRectF]] = field(default_factory=dict)
    blocks: list[QRectF] = field(default_factory=list)
    named: list[Named] = field(default_factory=list)
    bars: int = 0


def gather(
    shapes: Shapes, bars: Iterable[Bar], *, top: float, line_px: float, scale: TimeScale, seen: QRectF
) -> None:
    """Gather the shapes of the bars of one row whose first line is at `top`.

    Only what lies between the left and right of `seen` is gathered.
    """
    left, right = seen.left(), seen.right()
    px, base = scale.px_per_day, scale.x_of(0)
    block: QRectF | None = None
    for bar in bars:
        x0, x1 = base + bar.start * px, base + bar.end * px
        if x1 <= left or x0 >= right:
            continue
        shapes.bars += 1
        box = QRectF(x0, top + bar.top * line_px, x1 - x0, bar.lines * line_px - 1)
        if x1 - x0 < LEAST_PX:
            block = _blocked(shapes, block, box)
        else:
            _gather_bar(shapes, bar, box, (left, right, px, base))


def _blocked(shapes: Shapes, block: QRectF | None, box: QRectF) -> QRectF:
    if block is not None and box.left() <= block.right() + 1 and box.top() == block.top():
        block.setRight(max(block.right(), box.right()))
        return block
    shapes.blocks.append(box)
    return box


def _gather_bar(shapes: Shapes, bar: Bar, box: QRectF, where: tuple[float, float, float, float]) -> None:
    left, right, px, base = where
    y, height, colour = box.y(), box.height(), bar.colour
    cells = []
    base_key = colour * STAGES
    for each in bar.segments:
        x0, x1 = max(base + each.start * px, left - 2), min(base + each.end * px, right + 2)
        if x1 <= x0:
            continue
        rect = QRectF(x0, y, x1 - x0, height)
        cells.append((each, rect))
        key = base_key + each.order
        shapes.fills.setdefault(key, []).append(rect)
        if x1 - x0 >= _HATCHED_PX:
            shapes.hatches.setdefault(key, []).append(rect)
    from_x, until_x = max(box.left(), left - 2), min(box.right(), right + 2)
    shown = QRectF(from_x, y, until_x - from_x, height)
    shapes.edges.setdefault(colour, []).append(shown.adjusted(0.5, 0.5, -0.5, -0.5))
    if box.left() >= left - _SPINE_PX and box.width() > 2 * _SPINE_PX:
        shapes.spines.setdefault(colour, []).append(QRectF(box.left(), y, _SPINE_PX, height))
    shapes.named.append(Named(bar, shown, tuple(cells)))


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
        painter.setPen(QPen(_edge(kit, colour).color(), 1))
        painter.drawRects(rects)
    for named in shapes.named:
        _write_bar(painter, named, kit)


def _edge(kit: Kit, colour: int) -> QBrush:
    return QBrush(mixed(kit.crop_colour(colour), kit.theme.text, _EDGE))


def _write_bar(painter: QPainter, named: Named, kit: Kit) -> None:
    bar, box = named.bar, named.box
    face = Face.PLAIN if box.height() >= kit.text_px else Face.SMALL
    if not named.cells or box.height() < kit.height(face) - 3 or box.width() < 2 * _LETTER_PAD:
        return
    locked = bar.locked and box.width() >= _LOCK_ROOM
    widest = max(named.cells, key=_cell_width)[0]
    for segment, cell in named.cells:
        room = cell & box.adjusted(0, 0, -_LOCK_PX - _LETTER_PAD, 0) if locked else cell
        if room.width() > _LEAST_LETTER_PX:
            _write_segment(painter, bar, room, (kit, face, segment, segment is widest))
    if locked:
        _paint_lock(painter, box, kit, bar)


def _cell_width(cell: tuple[Segment, QRectF]) -> float:
    return cell[1].width()


def _write_segment(painter: QPainter, bar: Bar, cell: QRectF, what: tuple[Kit, Face, Segment, bool]) -> None:
    kit, face, segment, titled = what
    look = kit.stage_look(look_key(bar.colour, segment))
    width = kit.width(look.letter, Face.SMALL_BOLD)
    room = cell.width() - 2 * _LETTER_PAD
    if room < width:
        return
    inner = QRectF(cell.x() + _LETTER_PAD + 1, cell.y(), cell.width() - 2 * _LETTER_PAD - 1, cell.height())
    title, title_room = "", room - width - _GAP
    if titled and title_room >= _LEAST_TITLE_PX:
        title, face = _title(bar, kit, face, title_room)
    written = min(kit.width(title, face), title_room) + _GAP if title else 0.0
    height = min(cell.height() - 2, kit.height(face))
    kit.plate(painter, inner, look.ink.fill, width + written, height)
    painter.setPen(look.ink.text)
    kit.write(painter, inner, look.letter, face=Face.SMALL_BOLD)
    if title:
        box = QRectF(inner.x() + width + _GAP, inner.y(), title_room, inner.height())
        kit.write(painter, box, title, face=face)


def _title(bar: Bar, kit: Kit, face: Face, room: float) -> tuple[str, Face]:
    """Return the longest way to name a bar that fits, and its face; the last is shortened if need be."""
    ways = kit.titles(bar)
    for way in ways:
        for each in (face, Face.SMALL):
            if kit.width(way, each) <= room:
                return way, each
    return ways[-1], Face.SMALL


def _paint_lock(painter: QPainter, box: QRectF, kit: Kit, bar: Bar) -> None:
    ink = kit.stage_look(look_key(bar.colour, bar.segments[-1])).ink
    size = min(_LOCK_PX, box.height() - 4)
    at = QPointF(box.right() - size - _LETTER_PAD, box.center().y() - size / 4)
    painter.fillRect(QRectF(at.x() - 2, box.y() + 1, size + 4, box.height() - 2), ink.fill)
    painter.setPen(QPen(ink.text, 1.2))
    painter.drawArc(QRectF(at.x() + size / 4, at.y() - size / 2, size / 2, size), 0, 180 * 16)
    painter.fillRect(QRectF(at.x(), at.y(), size, size * 0.75), ink.text)
