"""Writes on bars: the letter of each stage that has room, and once the batch's name.

Gathers texts by typeface and ink and sets them in few calls. Under every text the bar's fill is laid
plain, so that a hatch never runs through a letter. Must know nothing of rows or storage.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass, field
from typing import Final, NamedTuple

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QPainter, QPen, QStaticText

from planner.desk.lanes.kit import STAGES, Face, Kit, Look
from planner.desk.lanes.scene import Bar

_PAD: Final = 4.0
_GAP: Final = 7.0
_PLATE_PAD: Final = 3.0
_LEAST_LETTER_PX: Final = 14.0
_LEAST_TITLE_PX: Final = 22.0
_LOCK_PX: Final = 8.0
_LOCK_ROOM: Final = 44.0


class Seen(NamedTuple):
    """The part of a bar that is seen; `cells` are the look and the left and right of its stages."""

    bar: Bar
    x0: float
    x1: float
    y: float
    height: float
    cells: list[tuple[int, float, float]]


@dataclass(slots=True)
class _Sheet:
    """Plates by look, texts by face and look, and locks, as they are gathered."""

    kit: Kit
    plates: dict[int, list[QRectF]] = field(default_factory=dict)
    texts: dict[tuple[int, int], list[tuple[float, float, QStaticText]]] = field(default_factory=dict)
    locks: list[Seen] = field(default_factory=list)


def write_bars(painter: QPainter, bars: Iterable[Seen], kit: Kit) -> None:
    """Write letters and names on all bars that have room for them."""
    sheet = _Sheet(kit)
    for seen in bars:
        _gather(sheet, seen)
    painter.setPen(Qt.PenStyle.NoPen)
    for key, plates in sheet.plates.items():
        painter.setBrush(kit.stage_look(key).ink.fill)
        painter.drawRects(plates)
    for (face, key), texts in sheet.texts.items():
        painter.setFont(kit.font(face))
        painter.setPen(kit.stage_look(key).ink.text)
        for x, y, text in texts:
            painter.drawStaticText(QPointF(x, y), text)
    for seen in sheet.locks:
        _paint_lock(painter, seen, kit)


def _gather(sheet: _Sheet, seen: Seen) -> None:
    bar, kit = seen.bar, sheet.kit
    face = Face.PLAIN if seen.height >= kit.text_px else Face.SMALL
    if seen.height < kit.heights[face] - 3 or not seen.cells:
        return
    end = seen.x1
    if bar.locked and seen.x1 - seen.x0 >= _LOCK_ROOM:
        end -= _LOCK_PX + _PAD
        sheet.locks.append(seen)
    named, widest = 0, 0.0
    for key, x0, x1 in seen.cells:
        if x1 - x0 > widest:
            named, widest = key, x1 - x0
    for key, x0, x1 in seen.cells:
        width = (x1 if x1 < end else end) - x0
        if width > _LEAST_LETTER_PX:
            _gather_cell(sheet, seen, (key, x0, width), face if key == named else None)


def _gather_cell(sheet: _Sheet, seen: Seen, cell: tuple[int, float, float], face: int | None) -> None:
    """Gather the letter of one stage, and the name after it where a face is given."""
    kit = sheet.kit
    key, x0, width = cell
    look: Look = kit.stage_look(key)
    letter, letter_px = kit.static(look.letter, Face.SMALL_BOLD)
    room = width - 2 * _PAD - 1
    if room < letter_px:
        return
    x, middle = x0 + _PAD + 1, seen.y + seen.height / 2
    small = kit.heights[Face.SMALL_BOLD]
    sheet.texts.setdefault((Face.SMALL_BOLD, key), []).append((x, middle - small / 2, letter))
    written, high = letter_px, small
    title_room = room - letter_px - _GAP
    if face is not None and title_room >= _LEAST_TITLE_PX:
        found = kit.title(seen.bar, face, int(title_room))
        if found is not None:
            title, title_px, face = found
            high = kit.heights[face]
            at = (x + letter_px + _GAP, middle - high / 2, title)
            sheet.texts.setdefault((face, key), []).append(at)
            written += _GAP + title_px
    high = min(high, seen.height - 2)
    plate = QRectF(x - _PLATE_PAD, middle - high / 2, written + 2 * _PLATE_PAD, high)
    sheet.plates.setdefault(key, []).append(plate)


def _paint_lock(painter: QPainter, seen: Seen, kit: Kit) -> None:
    ink = kit.stage_look(seen.bar.colour * STAGES + seen.bar.segments[-1].order).ink
    size = min(_LOCK_PX, seen.height - 4)
    x, y = seen.x1 - size - _PAD, seen.y + seen.height / 2 - size / 4
    painter.fillRect(QRectF(x - 2, seen.y + 1, size + 4, seen.height - 2), ink.fill)
    painter.setBrush(Qt.BrushStyle.NoBrush)
    painter.setPen(QPen(ink.text, 1.2))
    painter.drawArc(QRectF(x + size / 4, y - size / 2, size / 2, size), 0, 180 * 16)
    painter.fillRect(QRectF(x, y, size, size * 0.75), ink.text)
