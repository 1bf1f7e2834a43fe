"""Sets a table into strips: headings, bands and rows, none of which is broken over two pages.

When the paper is too narrow for every column side by side, each row is folded into several lines.
Must not know pages or toolkits.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, replace
from typing import Final

from planner.paper.marks import Fill, Frame, Mark, Rule, Strip
from planner.paper.measure import Face, width_mm
from planner.paper.report import Align, Box, Cell, Column, Line, RowGroup, Size, Table, Tone
from planner.paper.setting import SetLine, Setter

CONTINUED: Final = "(continued)"
_FACES: Final = {Tone.MAIN: Face.BOLD, Tone.STRONG: Face.NARROW_BOLD, Tone.DETAIL: Face.NARROW}


@dataclass(frozen=True, slots=True, kw_only=True)
class Slot:
    """Where one column stands: its number, left edge and width."""

    index: int
    column: Column
    x_mm: float
    width_mm: float


Slots = tuple[tuple[Slot, ...], ...]
"""The slots of each line that a row is folded into; one line when there is room."""


def slots_of(columns: tuple[Column, ...], *, width_mm: float) -> Slots:
    """Return where columns stand in `width_mm`, folded when their least widths do not fit."""
    numbered = tuple(enumerate(columns))
    if sum(column.least_mm for column in columns) <= width_mm:
        return (_line_of_slots(numbered, width_mm),)
    folds = sorted({column.fold for column in columns})
    return tuple(
        _line_of_slots(tuple(pair for pair in numbered if pair[1].fold == fold), width_mm) for fold in folds
    )


def _line_of_slots(numbered: tuple[tuple[int, Column], ...], width_mm: float) -> tuple[Slot, ...]:
    least = sum(column.least_mm for _, column in numbered)
    squeezed = _squeezed(tuple(column for _, column in numbered), width_mm)
    spare = max(width_mm - least, 0.0) / sum(column.share for _, column in numbered)
    slots = []
    x = 0.0
    for index, column in numbered:
        width = squeezed[column.key] + column.share * spare
        slots.append(Slot(index=index, column=column, x_mm=x, width_mm=width))
        x += width
    return tuple(slots)


def _squeezed(columns: tuple[Column, ...], width_mm: float) -> dict[str, float]:
    """Return the least width of each column; too little room is taken from those that are not firm."""
    least = {column.key: column.least_mm for column in columns}
    missing = sum(least.values()) - width_mm
    soft = {column.key: column.least_mm for column in columns if not column.firm}
    if missing <= 0:
        return least
    giving = soft if sum(soft.values()) > missing else least
    part = 1 - missing / sum(giving.values())
    return {key: width * part if key in giving else width for key, width in least.items()}


def _size(column: Column, line: Line) -> Size:
    return column.main if line.tone is Tone.MAIN else column.detail


@dataclass(frozen=True, slots=True, kw_only=True)
class TableSetter:
    """Sets one table into strips as wide as `width_mm` and at most `room_high_mm` high."""

    setter: Setter
    table: Table
    width_mm: float
    room_high_mm: float

    def strips(self) -> Iterator[Strip]:
        """Yield the headings, then each band with its rows."""
        slots = slots_of(self._columns(), width_mm=self.width_mm)
        head = self._headings(slots)
        yield head
        for group in self.table.groups:
            yield from self._group(group, slots, head)

    def _columns(self) -> tuple[Column, ...]:
        """Return the columns with room for the widest word of those that keep their words whole."""
        return tuple(
            replace(column, least_mm=max(column.least_mm, self._widest_word(number)))
            if column.firm
            else column
            for number, column in enumerate(self.table.columns)
        )

    def _widest_word(self, number: int) -> float:
        column, style = self.table.columns[number], self.setter.style
        found = (
            width_mm(self.setter.metrics, word, face=_FACES[line.tone], pt=_size(column, line).least_pt)
            for row in self.table.rows
            for line in row[number].lines
            for word in line.text.split()
        )
        return max(found, default=0.0) + 2 * style.cell_pad_x_mm + 2 * style.slack_mm

    def _group(self, group: RowGroup, slots: Slots, head: Strip) -> Iterator[Strip]:
        repeated: tuple[Strip, ...] = (head,)
        if group.heading or group.empty:
            yield self._band(group, group.heading, keep=bool(group.rows), again=repeated)
            repeated = (head, self._band(group, f"{group.heading} {CONTINUED}", keep=True, again=()))
        room = self.room_high_mm - sum(strip.height_mm for strip in repeated)
        for row in group.rows:
            yield from self._row(row, slots, repeated, room)

    def _headings(self, slots: Slots) -> Strip:
        marks: list[Mark] = []
        y = 0.0
        for line in slots:
            texts = [self._heading_lines(slot) for slot in line]
            height = self._height_of(texts)
            marks.extend(self._shaded(y, height))
            for slot, lines in zip(line, texts, strict=True):
                marks.extend(self._cell_marks(slot, lines, y_mm=y))
            marks.extend(self._rules(line, y_mm=y, height_mm=height))
            y += height
        edge = self.setter.style.heavy_rule_pt
        marks.extend(Rule(x_mm=0.0, y_mm=at, x2_mm=self.width_mm, y2_mm=at, pt=edge) for at in (0.0, y))
        return Strip(height_mm=y, marks=tuple(marks), keep=True)

    def _heading_lines(self, slot: Slot) -> tuple[SetLine, ...]:
        types = self.setter.types
        size = Size(best_pt=types.column_heading_pt, least_pt=types.column_heading_least_pt)
        room = slot.width_mm - 2 * self.setter.style.cell_pad_x_mm
        heading = self.setter.fitted(
            slot.column.heading, face=Face.NARROW_BOLD, size=size, room_mm=room, wrap=slot.column.wrap
        )
        unit = self.setter.fitted(
            slot.column.unit, face=Face.NARROW, size=size, room_mm=room, wrap=slot.column.wrap
        )
        return heading + unit

    def _band(self, group: RowGroup, heading: str, *, keep: bool, again: tuple[Strip, ...]) -> Strip:
        style, types = self.setter.style, self.setter.types
        room = self.width_mm - 2 * style.cell_pad_x_mm
        head = self.setter.wrapped(heading, face=Face.BOLD, pt=types.band_pt, room_mm=room)
        rest = [text for text in (group.detail, group.empty) if text]
        detail = tuple(
            line
            for text in rest
            for line in self.setter.wrapped(text, face=Face.REGULAR, pt=types.band_detail_pt, room_mm=room)
        )
        inline = self._inline_band(head, detail, room)
        if inline is None:
            bottom, words = self.setter.stacked(
                head + detail, x_mm=style.cell_pad_x_mm, y_mm=style.cell_pad_y_mm, room_mm=room
            )
        else:
            bottom, words = inline
        height = bottom + style.cell_pad_y_mm
        frame = Frame(x_mm=0.0, y_mm=0.0, width_mm=self.width_mm, height_mm=height, pt=style.rule_pt)
        return Strip(
            height_mm=height, marks=(*self._shaded(0.0, height), *words, frame), keep=keep, again=again
        )

    def _inline_band(
        self, head: tuple[SetLine, ...], detail: tuple[SetLine, ...], room: float
    ) -> tuple[float, tuple[Mark, ...]] | None:
        """Return a band whose texts stand on one line, or None when they do not fit side by side."""
        style = self.setter.style
        lines = head + detail
        widths = [self._width(line) + style.section_gap_mm for line in lines]
        if len(head) > 1 or sum(widths) > room:
            return None
        base = style.cell_pad_y_mm + max(self.setter.ascent(line) for line in lines)
        x = style.cell_pad_x_mm
        marks: list[Mark] = []
        for line, width in zip(lines, widths, strict=True):
            marks.append(self.setter.words(line, x_mm=x, y_mm=base, room_mm=width, align=Align.LEFT))
            x += width
        bottom = style.cell_pad_y_mm + max(self.setter.height(line) for line in lines)
        return bottom, tuple(marks)

    def _width(self, line: SetLine) -> float:
        stood = self.setter.words(line, x_mm=0.0, y_mm=0.0, room_mm=0.0, align=Align.RIGHT)
        return -stood.x_mm

    def _row(
        self, row: tuple[Cell, ...], slots: Slots, again: tuple[Strip, ...], room: float
    ) -> Iterator[Strip]:
        texts = [[self._cell_lines(row[slot.index], slot) for slot in line] for line in slots]
        boxes = [[row[slot.index].box for slot in line] for line in slots]
        if sum(map(self._row_height, texts, boxes)) <= room:
            yield self._row_strip(slots, texts, boxes, again)
            return
        for line, line_texts, line_boxes in zip(slots, texts, boxes, strict=True):
            yield from self._broken_row(line, line_texts, line_boxes, again, room)

    def _broken_row(
        self,
        line: tuple[Slot, ...],
        texts: list[tuple[SetLine, ...]],
        boxes: list[Box],
        again: tuple[Strip, ...],
        room: float,
    ) -> Iterator[Strip]:
        """Yield a row that is higher than a page in pieces, the only case in which a row is broken."""
        tallest = max(self.setter.height(text) for lines in texts for text in lines)
        count = max(int((room - 2 * self.setter.style.cell_pad_y_mm) / tallest) - 1, 1)
        longest = max(len(lines) for lines in texts)
        for start in range(0, longest, count):
            piece = [lines[start : start + count] for lines in texts]
            shown = boxes if start == 0 else [Box.NONE] * len(boxes)
            yield self._row_strip((line,), [piece], [shown], again)

    def _cell_lines(self, cell: Cell, slot: Slot) -> tuple[SetLine, ...]:
        room = slot.width_mm - 2 * self.setter.style.cell_pad_x_mm
        found: list[SetLine] = []
        for line in cell.lines:
            size, face = _size(slot.column, line), _FACES[line.tone]
            found.extend(
                self.setter.fitted(line.text, face=face, size=size, room_mm=room, wrap=slot.column.wrap)
            )
        return tuple(found)

    def _row_strip(
        self,
        slots: Slots,
        texts: list[list[tuple[SetLine, ...]]],
        boxes: list[list[Box]],
        again: tuple[Strip, ...],
    ) -> Strip:
        marks: list[Mark] = []
        y = 0.0
        for line, line_texts, line_boxes in zip(slots, texts, boxes, strict=True):
            height = self._row_height(line_texts, line_boxes)
            first = max((self.setter.ascent(lines[0]) for lines in line_texts if lines), default=0.0)
            for slot, lines, box in zip(line, line_texts, line_boxes, strict=True):
                down = first - self.setter.ascent(lines[0]) if lines else 0.0
                marks.extend(self._cell_marks(slot, lines, y_mm=y + down))
                marks.extend(self._box(slot, box, y_mm=y, height_mm=height))
            marks.extend(self._rules(line, y_mm=y, height_mm=height))
            y += height
        if len(slots) > 1:
            edge = self.setter.style.heavy_rule_pt
            marks.append(Rule(x_mm=0.0, y_mm=y, x2_mm=self.width_mm, y2_mm=y, pt=edge))
        return Strip(height_mm=y, marks=tuple(marks), again=again)

    def _row_height(self, texts: list[tuple[SetLine, ...]], boxes: list[Box]) -> float:
        style = self.setter.style
        least = (
            style.box_height_mm + 2 * style.cell_pad_y_mm if any(b is not Box.NONE for b in boxes) else 0.0
        )
        return max(self._height_of(texts), least)

    def _height_of(self, texts: list[tuple[SetLine, ...]]) -> float:
        """Return the height of cells whose first lines stand on one line."""
        first = max((self.setter.ascent(lines[0]) for lines in texts if lines), default=0.0)
        below = max(
            (sum(map(self.setter.height, lines)) - self.setter.ascent(lines[0]) for lines in texts if lines),
            default=0.0,
        )
        return first + below + 2 * self.setter.style.cell_pad_y_mm

    def _cell_marks(self, slot: Slot, lines: tuple[SetLine, ...], *, y_mm: float) -> tuple[Mark, ...]:
        style = self.setter.style
        _, marks = self.setter.stacked(
            lines,
            x_mm=slot.x_mm + style.cell_pad_x_mm,
            y_mm=y_mm + style.cell_pad_y_mm,
            room_mm=slot.width_mm - 2 * style.cell_pad_x_mm,
            align=slot.column.align,
        )
        return marks

    def _box(self, slot: Slot, box: Box, *, y_mm: float, height_mm: float) -> Iterator[Mark]:
        style = self.setter.style
        if box is Box.TICK:
            yield Frame(
                x_mm=slot.x_mm + (slot.width_mm - style.box_width_mm) / 2,
                y_mm=y_mm + (height_mm - style.box_height_mm) / 2,
                width_mm=style.box_width_mm,
                height_mm=style.box_height_mm,
                pt=style.box_rule_pt,
            )

    def _rules(self, line: tuple[Slot, ...], *, y_mm: float, height_mm: float) -> Iterator[Mark]:
        pt = self.setter.style.rule_pt
        bottom = y_mm + height_mm
        for x in (*(slot.x_mm for slot in line), self.width_mm):
            yield Rule(x_mm=x, y_mm=y_mm, x2_mm=x, y2_mm=bottom, pt=pt)
        yield Rule(x_mm=0.0, y_mm=bottom, x2_mm=self.width_mm, y2_mm=bottom, pt=pt)

    def _shaded(self, y_mm: float, height_mm: float) -> Iterator[Mark]:
        shade = self.setter.style.shade
        if shade is not None:
            yield Fill(x_mm=0.0, y_mm=y_mm, width_mm=self.width_mm, height_mm=height_mm, grey=shade)
