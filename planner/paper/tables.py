"""Sets a table into strips: headings, bands and rows, none of which is broken over two pages.

When the paper is too narrow for every column side by side, each row is folded into several lines.
Must not know pages or toolkits.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, replace
from typing import Final

from planner.paper.cells import FACES, CellSetter, Filled, Slot, Slots, size_of, slots_of
from planner.paper.marks import Fill, Frame, Mark, Placed, Rule, Strip
from planner.paper.measure import Face, width_mm
from planner.paper.report import Align, Box, Cell, Column, RowGroup, Table, Tone
from planner.paper.setting import SetLine, Setter

CONTINUED: Final = "(continued)"


@dataclass(frozen=True, slots=True, kw_only=True)
class TableSetter:
    """Sets one table into strips as wide as `width_mm` and at most `room_high_mm` high."""

    setter: Setter
    table: Table
    width_mm: float
    room_high_mm: float

    @property
    def _cells(self) -> CellSetter:
        return CellSetter(setter=self.setter, room_high_mm=self.room_high_mm)

    def strips(self) -> Iterator[Strip]:
        """Yield the headings, then each band with its rows, then the row that fills the page."""
        slots = slots_of(self._columns(), width_mm=self.width_mm)
        head = self._headings(slots)
        yield head
        for group in self.table.groups:
            yield from self._group(group, slots, head)
        if self.table.fill:
            for strip in self._row(self.table.fill, slots, (head,), self.room_high_mm - head.height_mm):
                yield replace(strip, fills=True)

    def _columns(self) -> tuple[Column, ...]:
        """Return the columns with room for the widest word of those that keep their words whole."""
        scale = self.setter.style.type_scale
        return tuple(
            replace(column, least_mm=max(column.least_mm, self._widest_word(number)))
            if column.firm
            else replace(column, least_mm=column.least_mm * scale)
            for number, column in enumerate(self.table.columns)
        )

    def _widest_word(self, number: int) -> float:
        """Return the room for the widest word of a column, a number with its unit being one word.

        In two languages or large type headings count, too.
        """
        column, style, types = self.table.columns[number], self.setter.style, self.setter.types
        least = {tone: self.setter.scaled(size_of(column, tone)).least_pt for tone in Tone}
        words = {
            (word, FACES[line.tone], least[line.tone])
            for row in self.table.rows
            for line in row[number].lines
            for word in line.text.split(" " if column.align is Align.RIGHT else None)
        }
        if style.type_scale != 1.0 or column.second:
            words |= {
                (word, Face.NARROW_BOLD, types.column_heading_least_pt)
                for text in (column.heading, column.second, column.unit, column.band)
                for word in text.split(" ")
            }
        found = (width_mm(self.setter.metrics, word, face=face, pt=pt) for word, face, pt in words)
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
        lines = [[self._cells.heading(slot) for slot in line] for line in slots]
        if not any(cell.lines or cell.picture.marks for line in lines for cell in line):
            return Strip(height_mm=0.0, marks=(self._edge(0.0),), keep=True)
        marks, y = self._lines(slots, lines, shaded=True)
        marks.extend(self._edge(at) for at in (0.0, y))
        return Strip(height_mm=y, marks=tuple(marks), keep=True)

    def _edge(self, y_mm: float) -> Rule:
        pt = self.setter.style.heavy_rule_pt
        return Rule(x_mm=0.0, y_mm=y_mm, x2_mm=self.width_mm, y2_mm=y_mm, pt=pt)

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
        cells = self._cells
        lines = [[cells.filled(row[slot.index], slot) for slot in line] for line in slots]
        if sum(map(cells.height, lines)) <= room:
            yield self._row_strip(slots, lines, again)
            return
        for line, filled in zip(slots, lines, strict=True):
            yield from self._broken_row(line, filled, again, room)

    def _broken_row(
        self, line: tuple[Slot, ...], cells: list[Filled], again: tuple[Strip, ...], room: float
    ) -> Iterator[Strip]:
        """Yield a row that is higher than a page in pieces, the only case in which a row is broken."""
        tallest = max(self.setter.height(text) for cell in cells for text in cell.lines)
        count = max(int((room - 2 * self.setter.style.cell_pad_y_mm) / tallest) - 1, 1)
        longest = max(len(cell.lines) for cell in cells)
        for start in range(0, longest, count):
            piece = [
                self._cells.with_lines(
                    cell if start == 0 else replace(cell, box=Box.NONE, picture=Strip(height_mm=0.0)),
                    cell.lines[start : start + count],
                )
                for cell in cells
            ]
            yield self._row_strip((line,), [piece], again)

    def _row_strip(self, slots: Slots, lines: list[list[Filled]], again: tuple[Strip, ...]) -> Strip:
        marks, y = self._lines(slots, lines, shaded=False)
        if len(slots) > 1:
            edge = self.setter.style.heavy_rule_pt
            marks.append(Rule(x_mm=0.0, y_mm=y, x2_mm=self.width_mm, y2_mm=y, pt=edge))
        return Strip(height_mm=y, marks=tuple(marks), again=again)

    def _lines(self, slots: Slots, lines: list[list[Filled]], *, shaded: bool) -> tuple[list[Placed], float]:
        """Return the marks of cells, one line below the other, and how far down they reach."""
        cells, marks, y = self._cells, list[Placed](), 0.0
        for line, filled in zip(slots, lines, strict=True):
            height, first = cells.height(filled), cells.first(filled)
            marks.extend(self._shaded(y, height) if shaded else ())
            for slot, cell in zip(line, filled, strict=True):
                marks.extend(cells.marks(slot, cell, y_mm=y, first_mm=first))
                marks.extend(cells.box(slot, cell.box, y_mm=y, height_mm=height))
            marks.extend(cells.rules(line, y_mm=y, height_mm=height, width_mm=self.width_mm))
            y += height
        return marks, y

    def _shaded(self, y_mm: float, height_mm: float) -> Iterator[Mark]:
        shade = self.setter.style.shade
        if shade is not None:
            yield Fill(x_mm=0.0, y_mm=y_mm, width_mm=self.width_mm, height_mm=height_mm, grey=shade)
