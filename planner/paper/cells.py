"""Sets the cells of a table: where columns stand, what is in a cell, how high a line of cells is.

Must not know groups, pages or toolkits.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from typing import Final

from planner.paper.drawn import drawing_strip
from planner.paper.marks import Frame, Group, Mark, Placed, Rule, Strip
from planner.paper.measure import Face
from planner.paper.report import Box, Cell, Column, Drawing, Size, Tone
from planner.paper.setting import SetLine, Setter

_NO_PICTURE: Final = Strip(height_mm=0.0)
FACES: Final = {Tone.MAIN: Face.BOLD, Tone.STRONG: Face.NARROW_BOLD, Tone.DETAIL: Face.NARROW}


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


def size_of(column: Column, tone: Tone) -> Size:
    """Return the type size of a line in a column."""
    return column.main if tone is Tone.MAIN else column.detail


@dataclass(frozen=True, slots=True, kw_only=True)
class Filled:
    """A cell as it is set: its lines, the picture under them, what a hand does in it."""

    lines: tuple[SetLine, ...] = ()
    picture: Strip = _NO_PICTURE
    across: bool = False
    """Whether the picture reaches from rule to rule."""
    box: Box = Box.NONE
    least_high_mm: float = 0.0
    above_mm: float = 0.0
    """How far the first line reaches up; 0 without lines."""
    text_high_mm: float = 0.0


@dataclass(frozen=True, slots=True, kw_only=True)
class CellSetter:
    """Sets cells into marks; nothing it sets is higher than `room_high_mm` unless its text is."""

    setter: Setter
    room_high_mm: float

    def room(self, slot: Slot) -> float:
        """Return the width between the paddings of a column."""
        return slot.width_mm - 2 * self.setter.style.cell_pad_x_mm

    def heading(self, slot: Slot) -> Filled:
        """Return the heading of a column: its words, a second language, unit, band, picture."""
        types, column = self.setter.types, slot.column
        scale = self.setter.style.type_scale
        size = Size(best_pt=types.column_heading_pt / scale, least_pt=types.column_heading_least_pt / scale)
        lines = tuple(
            line
            for text, face in (
                (column.heading, Face.NARROW_BOLD),
                (column.second, Face.NARROW),
                (column.unit, Face.NARROW),
                (column.band, Face.NARROW_BOLD),
            )
            for line in self.setter.fitted(
                text, face=face, size=size, room_mm=self.room(slot), wrap=column.wrap
            )
        )
        return self._with_picture(slot, lines, column.picture, Cell())

    def filled(self, cell: Cell, slot: Slot) -> Filled:
        """Return a cell set to the width of its column."""
        lines = tuple(
            set_line
            for line in cell.lines
            for set_line in self.setter.fitted(
                line.text,
                face=FACES[line.tone],
                size=size_of(slot.column, line.tone),
                room_mm=self.room(slot),
                wrap=slot.column.wrap,
            )
        )
        return self._with_picture(slot, lines, cell.picture, cell)

    def _with_picture(
        self, slot: Slot, lines: tuple[SetLine, ...], picture: Drawing | None, cell: Cell
    ) -> Filled:
        strip, across = _NO_PICTURE, False
        if picture is not None:
            across = picture.wide
            room = slot.width_mm if across else self.room(slot)
            strip = drawing_strip(self.setter, picture, room_mm=room, room_high_mm=self.room_high_mm)
        filled = Filled(picture=strip, across=across, box=cell.box, least_high_mm=cell.least_high_mm)
        return self.with_lines(filled, lines) if lines else filled

    def with_lines(self, cell: Filled, lines: tuple[SetLine, ...]) -> Filled:
        """Return a cell with other lines."""
        return Filled(
            lines=lines,
            picture=cell.picture,
            across=cell.across,
            box=cell.box,
            least_high_mm=cell.least_high_mm,
            above_mm=self.setter.ascent(lines[0]) if lines else 0.0,
            text_high_mm=sum(map(self.setter.height, lines)),
        )

    def height(self, cells: Sequence[Filled]) -> float:
        """Return the height of a line of cells whose first lines stand on one line."""
        style = self.setter.style
        least = max((cell.least_high_mm for cell in cells), default=0.0)
        if any(cell.box is Box.TICK for cell in cells):
            least = max(least, style.box_height_mm + 2 * style.cell_pad_y_mm)
        if any(cell.box is Box.WRITE for cell in cells):
            least = max(least, style.box_height_mm)
        first = self.first(cells)
        below = max(
            (
                cell.text_high_mm + cell.picture.height_mm - (cell.above_mm if cell.lines else first)
                for cell in cells
            ),
            default=0.0,
        )
        return max(first + max(below, 0.0) + 2 * style.cell_pad_y_mm, least)

    def first(self, cells: Sequence[Filled]) -> float:
        """Return how far below the top, without padding, the line stands on which all first lines stand."""
        return max((cell.above_mm for cell in cells), default=0.0)

    def marks(self, slot: Slot, cell: Filled, *, y_mm: float, first_mm: float) -> Iterator[Placed]:
        """Yield the lines and the picture of a cell; its first line stands `first_mm` below the padding."""
        style = self.setter.style
        x, y = slot.x_mm + style.cell_pad_x_mm, y_mm + style.cell_pad_y_mm
        bottom = y
        if cell.lines:
            bottom, words = self.setter.stacked(
                cell.lines,
                x_mm=x,
                y_mm=y + first_mm - cell.above_mm,
                room_mm=self.room(slot),
                align=slot.column.align,
            )
            yield from words
        left = slot.x_mm if cell.across else x
        if cell.picture.marks:
            yield Group(x_mm=left, y_mm=bottom, marks=cell.picture.marks)

    def box(self, slot: Slot, box: Box, *, y_mm: float, height_mm: float) -> Iterator[Mark]:
        """Yield the box to tick, if there is one."""
        style = self.setter.style
        if box is Box.TICK:
            yield Frame(
                x_mm=slot.x_mm + (slot.width_mm - style.box_width_mm) / 2,
                y_mm=y_mm + (height_mm - style.box_height_mm) / 2,
                width_mm=style.box_width_mm,
                height_mm=style.box_height_mm,
                pt=style.box_rule_pt,
            )

    def rules(
        self, line: Sequence[Slot], *, y_mm: float, height_mm: float, width_mm: float
    ) -> Iterator[Mark]:
        """Yield the rules between the cells of a line and below it."""
        pt = self.setter.style.rule_pt
        bottom = y_mm + height_mm
        for x in (*(slot.x_mm for slot in line), width_mm):
            yield Rule(x_mm=x, y_mm=y_mm, x2_mm=x, y2_mm=bottom, pt=pt)
        yield Rule(x_mm=0.0, y_mm=bottom, x2_mm=width_mm, y2_mm=bottom, pt=pt)
