"""What a printed sheet says, as plain values: the same report becomes paper, pictures or CSV.

Must not know how it is measured, broken into pages or drawn.
"""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime
from enum import Enum

from planner.paper.shapes import (
    Drawing,
    DrawnLine,
    DrawnOval,
    DrawnPath,
    DrawnRect,
    DrawnText,
    Hatch,
    Shape,
)

__all__ = [
    "Align",
    "Box",
    "Caution",
    "Cell",
    "Column",
    "Drawing",
    "DrawnLine",
    "DrawnOval",
    "DrawnPath",
    "DrawnRect",
    "DrawnText",
    "Hatch",
    "Line",
    "Paragraph",
    "Part",
    "Report",
    "RowGroup",
    "Section",
    "Shape",
    "Size",
    "Table",
    "Tone",
]


class Align(Enum):
    """Where text stands in its column."""

    LEFT = "left"
    CENTRE = "centre"
    RIGHT = "right"


class Tone(Enum):
    """How loud a line is: MAIN is read from afar, DETAIL at the bench; STRONG is a bold detail."""

    MAIN = "main"
    STRONG = "strong"
    DETAIL = "detail"


class Box(Enum):
    """What a hand does in a cell: nothing, tick a drawn box, or write in the ruled cell."""

    NONE = "none"
    TICK = "tick"
    WRITE = "write"


@dataclass(frozen=True, slots=True, kw_only=True)
class Size:
    """Type size [pt]: the one wished for, and the least that may ever be used."""

    best_pt: float
    least_pt: float

    def __post_init__(self) -> None:
        """Refuse sizes that are not above 0, or a least one above the best."""
        if not 0 < self.least_pt <= self.best_pt:
            raise ValueError(f"least_pt: {self.least_pt:g} must lie above 0 and up to {self.best_pt:g} pt")


@dataclass(frozen=True, slots=True, kw_only=True)
class Line:
    """One line of text in a cell; it wraps when it is too long."""

    text: str
    tone: Tone = Tone.DETAIL


@dataclass(frozen=True, slots=True, kw_only=True)
class Cell:
    """What stands in one cell of a table: lines of text, or room for a hand.

    `value` is what a spreadsheet is given instead of the lines: a bare number, a date as YYYY-MM-DD.
    A `picture` stands under the lines. `least_high_mm` is room for a hand that needs more than a box.
    """

    lines: tuple[Line, ...] = ()
    box: Box = Box.NONE
    value: str = ""
    picture: Drawing | None = None
    least_high_mm: float = 0.0

    @property
    def text(self) -> str:
        """All lines as one text."""
        return "; ".join(line.text for line in self.lines)


@dataclass(frozen=True, slots=True, kw_only=True)
class Column:
    """One column of a table.

    `share` is its part of the width that is left once every column has its `least_mm`. `main` and
    `detail` are the type sizes of its lines. `wrap` is how many lines a text may take before it is set
    smaller. `fold` is the line the column moves to when the paper is too narrow for one line a row.
    A `firm` column is as wide as its widest word needs and never set below its `least_mm`, so that no
    number is broken and no box too small.

    `second` is the heading in a second language. `band` is what the values should keep to, in bold. A
    `picture` in the heading, such as a ruler of weeks, comes again on every page with it.
    """

    key: str
    heading: str
    unit: str = ""
    share: float
    least_mm: float
    main: Size
    detail: Size
    align: Align = Align.LEFT
    wrap: int = 2
    fold: int = 0
    firm: bool = False
    second: str = ""
    band: str = ""
    picture: Drawing | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class RowGroup:
    """Rows under one band; a group without rows shows `empty` instead."""

    heading: str = ""
    detail: str = ""
    rows: tuple[tuple[Cell, ...], ...] = ()
    empty: str = ""


@dataclass(frozen=True, slots=True, kw_only=True)
class Table:
    """A ruled table; its headings come again on every page.

    `fill` is a row for a hand that is put below the others until the page is full, at least once.
    """

    name: str
    columns: tuple[Column, ...]
    groups: tuple[RowGroup, ...] = ()
    fill: tuple[Cell, ...] = ()

    def __post_init__(self) -> None:
        """Refuse rows that have more or fewer cells than there are columns."""
        for row in (*self.rows, *((self.fill,) if self.fill else ())):
            if len(row) != len(self.columns):
                raise ValueError(f"row: {len(row)} cells, but the table has {len(self.columns)} columns")

    @property
    def rows(self) -> tuple[tuple[Cell, ...], ...]:
        """The rows of all groups in order."""
        return tuple(row for group in self.groups for row in group.rows)


@dataclass(frozen=True, slots=True, kw_only=True)
class Paragraph:
    """Running text, perhaps as one item of a list; STRONG is bold, MAIN bold and large.

    One that `leads` stays on the page of what follows it.
    """

    text: str
    item: bool = False
    tone: Tone = Tone.DETAIL
    leads: bool = False


@dataclass(frozen=True, slots=True, kw_only=True)
class Caution:
    """A warning that is framed and never broken over two pages while it fits on one.

    `second` is the text in a second language; the English stands below it.
    """

    title: str
    text: str
    second: str = ""

    @property
    def texts(self) -> tuple[str, ...]:
        """What is said, a paragraph for each language."""
        return (self.second, self.text) if self.second else (self.text,)


Part = Table | Paragraph | Caution | Drawing


@dataclass(frozen=True, slots=True, kw_only=True)
class Section:
    """A headed stretch of a report; text may run in `columns`, tables take the whole width.

    One on a `new_page` begins at the top of a page of its own. One that is told `apart` is wanted whole at
    one glance: a second language does not stand between its lines, but has a page of its own.
    """

    heading: str = ""
    parts: tuple[Part, ...]
    columns: int = 1
    new_page: bool = False
    apart: bool = False


@dataclass(frozen=True, slots=True, kw_only=True)
class Report:
    """A whole printed sheet. `printed_on` is told by whoever prints; there is no clock here."""

    title: str
    subtitle: str = ""
    header_lines: tuple[str, ...] = ()
    sections: tuple[Section, ...]
    farm_name: str
    plan_mark: str
    printed_on: datetime
    landscape: bool = False
    large: bool = False

    @property
    def tables(self) -> tuple[Table, ...]:
        """All tables in order."""
        return tuple(part for section in self.sections for part in section.parts if isinstance(part, Table))
