"""Paints the bed map: every hole in the shade, hatch and letters of what it holds, holes of one batch framed.

A plain function of its values. Must know nothing of hands or storage.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass, field
from typing import Final

from PySide6.QtCore import QLineF, QRectF, Qt
from PySide6.QtGui import QColor, QPainter, QPen

from planner.desk.beds.layout import LABEL_SHARE, MapLayout, Plot
from planner.desk.beds.stays import Span, Stay, Stays
from planner.desk.beds.words import MapShow, batch_of
from planner.desk.lanes.kit import STAGES, Face, Kit
from planner.desk.lanes.scene import ORDER_OF_STAGE
from planner.desk.lanes.words import stage_letter
from planner.desk.places_words import row_words_of
from planner.desk.say import tr
from planner.desk.theme import mixed
from planner.desk.words import number_words
from planner.farm.species import BedKind

_HOLE: Final = 0.84
_LEAST_ROUND_PX: Final = 7.0
_LEAST_HATCH_PX: Final = 9.0
_LEAST_LETTER_PX: Final = 13.0
_LETTER_PAD: Final = 3.0
_FRAME: Final = 1.4
_PLATE: Final = 0.72
_AREA_DIGITS: Final = 2


@dataclass(frozen=True, slots=True, kw_only=True)
class MapLook:
    """What is painted: the day of the ruler, the way to look at it, and a colour number for each crop."""

    stays: Stays
    day: int
    show: MapShow
    colours: Mapping[str, int]


@dataclass(slots=True)
class _Holes:
    """Squares around holes gathered by look; letters with their look and line."""

    filled: dict[int, list[QRectF]] = field(default_factory=dict)
    free: list[QRectF] = field(default_factory=list)
    letters: list[tuple[QRectF, str, int | None]] = field(default_factory=list)
    frames: list[list[QLineF]] = field(default_factory=list)


def paint_map(painter: QPainter, part: QRectF, layout: MapLayout, look: MapLook, kit: Kit) -> int:
    """Paint what lies in `part` of the map; return how many holes that were."""
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    painter.fillRect(part, kit.theme.ground)
    _paint_headings(painter, part, layout, kit)
    painted = 0
    for plot in layout.between(part.top() - kit.line_px * LABEL_SHARE, part.bottom()):
        painted += _paint_plot(painter, plot, look, kit)
    return painted


def _paint_headings(painter: QPainter, part: QRectF, layout: MapLayout, kit: Kit) -> None:
    for heading in layout.headings:
        box = QRectF(heading.x, heading.y, heading.width, kit.line_px)
        if not box.intersects(part):
            continue
        bed = heading.bed
        painter.setPen(kit.theme.text)
        written = kit.write(painter, box, bed.name, face=Face.BOLD)
        detail = tr(
            "{area} m², {places} places",
            area=number_words(round(bed.area_m2, _AREA_DIGITS)),
            places=number_words(bed.places, digits=0),
        )
        painter.setPen(kit.theme.muted)
        kit.write(painter, box.adjusted(written + kit.text_px / 2, 0, 0, 0), detail, face=Face.SMALL)


def _paint_plot(painter: QPainter, plot: Plot, look: MapLook, kit: Kit) -> int:
    theme, bed = kit.theme, plot.bed
    ground = QRectF(plot.x, plot.y, plot.width, plot.height)
    if bed.units > 1:
        painter.setPen(theme.muted)
        height = kit.line_px * LABEL_SHARE
        label = QRectF(plot.x, plot.y - height, plot.width + kit.text_px, height)
        kit.write(painter, label, row_words_of(bed, plot.unit), face=Face.SMALL)
    painter.setPen(QPen(theme.line, 1))
    painter.setBrush(theme.field)
    painter.drawRect(ground.adjusted(-2.5, -2.5, 2.5, 2.5))
    holes = _Holes()
    for span in look.stays.spans(bed, plot.unit, look.day):
        _gather(holes, plot, span, look, kit)
    _paint_holes(painter, plot, holes, kit)
    return bed.places_per_unit


def _gather(holes: _Holes, plot: Plot, span: Span, look: MapLook, kit: Kit) -> None:
    key, lines = _shown(span, look)
    boxes = list(_boxes(plot, span))
    if key is None:
        holes.free.extend(boxes)
    else:
        holes.filled.setdefault(key, []).extend(boxes)
        holes.frames.append(_outline(plot, span))
    text = _text_in(lines, plot.pitch, kit)
    if text:
        holes.letters.extend((box, text, key) for box in boxes)


def _boxes(plot: Plot, span: Span) -> Iterator[QRectF]:
    """Yield the square around each place; whole rows at once where holes are too small to tell apart."""
    if plot.pitch >= _LEAST_ROUND_PX:
        for place in range(span.first, span.last + 1):
            x, y = plot.corner(place)
            yield QRectF(x, y, plot.pitch, plot.pitch)
        return
    for first, last in _rows(plot, span):
        x, y = plot.corner(first)
        yield QRectF(x, y, (last - first + 1) * plot.pitch, plot.pitch)


def _rows(plot: Plot, span: Span) -> Iterator[tuple[int, int]]:
    """Yield first and last place of a span in each row it touches."""
    columns, first = plot.bed.columns, span.first
    while first <= span.last:
        last = min(span.last, -(-first // columns) * columns)
        yield first, last
        first = last + 1


def _shown(span: Span, look: MapLook) -> tuple[int | None, tuple[str, ...]]:
    """Return the look of a span, None for a free hole, and the lines that may be written in each hole."""
    stays = look.stays
    if look.show is MapShow.STANDS and span.now is not None:
        along = stays.along(span.now, look.day)
        order, letter = ORDER_OF_STAGE[along.stage], stage_letter(along.stage)
        return _key(span.now, look, order), (_code(span.now, look), f"{letter}{along.day}")
    if look.show is MapShow.NEXT and span.next is not None:
        along = stays.along(span.next, span.next.start)
        wait = number_words(span.next.start - look.day, digits=0)
        key = _key(span.next, look, ORDER_OF_STAGE[along.stage])
        return key, (_code(span.next, look), f"+{wait}")
    if look.show is MapShow.FREE and span.now is None and span.free_since is not None:
        return None, (number_words(look.day - span.free_since + 1, digits=0),)
    if look.show is MapShow.FREE and span.now is not None:
        return _key(span.now, look, ORDER_OF_STAGE[stays.along(span.now, look.day).stage]), ()
    return None, ()


def _key(stay: Stay, look: MapLook, order: int) -> int:
    crop = batch_of(look.stays, stay).crop
    return look.colours.get(crop, len(look.colours)) * STAGES + order


def _code(stay: Stay, look: MapLook) -> str:
    key = batch_of(look.stays, stay).crop
    crop = look.stays.outlook.catalogue.crops.get(key)
    return crop.code if crop else key[:3].upper()


def _text_in(lines: tuple[str, ...], pitch: float, kit: Kit) -> str:
    """Return what of the lines fits into a hole: all of them, else the last, else its first letter."""
    if not lines or pitch < _LEAST_LETTER_PX:
        return ""
    room = pitch * _HOLE - _LETTER_PAD
    widest = max(kit.width(line, Face.SMALL_BOLD) for line in lines)
    if widest <= room and len(lines) * kit.small_px * _PLATE <= room:
        return "\n".join(lines)
    last = lines[-1]
    if kit.width(last, Face.SMALL_BOLD) <= room:
        return last
    return last[:1] if last[:1].isalpha() else ""


def _outline(plot: Plot, span: Span) -> list[QLineF]:
    """Return the lines around the holes of a span."""
    held = range(span.first, span.last + 1)
    columns, pitch = plot.bed.columns, plot.pitch
    found = []
    for first, last in _rows(plot, span):
        x0, y0 = plot.corner(first)
        x1, y1 = x0 + (last - first + 1) * pitch, y0 + pitch
        found += [QLineF(x0, y0, x0, y1), QLineF(x1, y0, x1, y1)]
        found += _open_edges(range(first, last + 1), -columns, held, (x0, y0, pitch))
        found += _open_edges(range(first, last + 1), columns, held, (x0, y1, pitch))
    return found


def _open_edges(row: range, step: int, held: range, where: tuple[float, float, float]) -> Iterator[QLineF]:
    """Yield the edges of a row towards its neighbours a step away that are not of the span, joined."""
    x, y, pitch = where
    begun: int | None = None
    for at, place in enumerate([*row, None]):
        is_open = place is not None and place + step not in held
        if is_open and begun is None:
            begun = at
        elif not is_open and begun is not None:
            yield QLineF(x + begun * pitch, y, x + at * pitch, y)
            begun = None


def _paint_holes(painter: QPainter, plot: Plot, holes: _Holes, kit: Kit) -> None:
    theme, pitch = kit.theme, plot.pitch
    small = pitch < _LEAST_ROUND_PX
    inset = 0.0 if small else pitch * (1 - _HOLE) / 2
    rounded = plot.bed.kind is BedKind.RAFT and not small
    radius = pitch if rounded else pitch * 0.12
    painter.setPen(QPen(theme.line, 1) if not small else Qt.PenStyle.NoPen)
    painter.setBrush(theme.ground if not small else Qt.BrushStyle.NoBrush)
    _draw(painter, holes.free, inset, 0 if small else radius)
    for key, boxes in holes.filled.items():
        shade = kit.stage_look(key)
        edge = mixed(kit.crop_colour(key // STAGES), theme.text, 0.62)
        painter.setPen(Qt.PenStyle.NoPen if small else QPen(edge, 1))
        painter.setBrush(shade.ink.fill)
        _draw(painter, boxes, inset, 0 if small else radius)
        if shade.hatch is not None and pitch >= _LEAST_HATCH_PX:
            painter.setBrush(shade.hatch)
            painter.setPen(Qt.PenStyle.NoPen)
            _draw(painter, boxes, inset, radius)
    painter.setPen(QPen(mixed(theme.text, theme.field, 0.7), _FRAME))
    for lines in holes.frames:
        painter.drawLines(lines)
    _write(painter, holes, kit)


def _draw(painter: QPainter, boxes: list[QRectF], inset: float, radius: float) -> None:
    if not radius:
        painter.drawRects(boxes)
        return
    for box in boxes:
        inner = box.adjusted(inset, inset, -inset, -inset)
        painter.drawRoundedRect(inner, min(radius, inner.width() / 2), min(radius, inner.height() / 2))


def _write(painter: QPainter, holes: _Holes, kit: Kit) -> None:
    height = kit.small_px
    for box, text, key in holes.letters:
        lines = text.split("\n")
        ink: QColor = kit.theme.muted
        if key is not None:
            shade = kit.stage_look(key).ink
            ink = shade.text
            _plate(painter, box, lines, shade.fill, kit)
        painter.setPen(ink)
        step = height * (0.86 if len(lines) > 1 else 1.0)
        top = box.center().y() - step * len(lines) / 2
        for at, line in enumerate(lines):
            where = QRectF(box.x(), top + at * step, box.width(), step)
            kit.write(painter, where, line, face=Face.SMALL_BOLD, centred=True)


def _plate(painter: QPainter, box: QRectF, lines: list[str], fill: QColor, kit: Kit) -> None:
    """Lay plain ground under letters, so that hatches do not run through them."""
    width = max(kit.width(line, Face.SMALL_BOLD) for line in lines) + 2
    height = kit.small_px * _PLATE * len(lines)
    painter.fillRect(QRectF(box.center().x() - width / 2, box.center().y() - height / 2, width, height), fill)
