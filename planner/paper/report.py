"""What a printed sheet says, as plain values: the same report becomes paper, pictures or CSV.

Must not know how it is measured, broken into pages or drawn.
"""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime
from enum import Enum


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


class Hatch(Enum):
    """Pattern inside a drawn shape, told apart without colour."""

    NONE = "none"
    SOLID = "solid"
    SLANT = "slant"
    BACK_SLANT = "back slant"
    CROSS = "cross"
    DOTS = "dots"


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
    """

    lines: tuple[Line, ...] = ()
    box: Box = Box.NONE
    value: str = ""

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


@dataclass(frozen=True, slots=True, kw_only=True)
class RowGroup:
    """Rows under one band; a group without rows shows `empty` instead."""

    heading: str = ""
    detail: str = ""
    rows: tuple[tuple[Cell, ...], ...] = ()
    empty: str = ""


@dataclass(frozen=True, slots=True, kw_only=True)
class Table:
    """A ruled table; its headings come again on every page."""

    name: str
    columns: tuple[Column, ...]
    groups: tuple[RowGroup, ...]

    def __post_init__(self) -> None:
        """Refuse rows that have more or fewer cells than there are columns."""
        for group in self.groups:
            for row in group.rows:
                if len(row) != len(self.columns):
                    raise ValueError(f"row: {len(row)} cells, but the table has {len(self.columns)} columns")

    @property
    def rows(self) -> tuple[tuple[Cell, ...], ...]:
        """The rows of all groups in order."""
        return tuple(row for group in self.groups for row in group.rows)


@dataclass(frozen=True, slots=True, kw_only=True)
class Paragraph:
    """Running text, perhaps as one item of a list."""

    text: str
    item: bool = False


@dataclass(frozen=True, slots=True, kw_only=True)
class Caution:
    """A warning that is framed and never broken over two pages while it fits on one."""

    title: str
    text: str


@dataclass(frozen=True, slots=True, kw_only=True)
class DrawnRect:
    """A rectangle of a drawing [mm], with a pattern and perhaps a label in its middle."""

    x_mm: float
    y_mm: float
    width_mm: float
    height_mm: float
    hatch: Hatch = Hatch.NONE
    rule_pt: float = 0.5
    label: str = ""
    label_pt: float = 11.0


@dataclass(frozen=True, slots=True, kw_only=True)
class DrawnLine:
    """A straight line of a drawing [mm]."""

    x1_mm: float
    y1_mm: float
    x2_mm: float
    y2_mm: float
    rule_pt: float = 0.5


@dataclass(frozen=True, slots=True, kw_only=True)
class DrawnText:
    """A text of a drawing; `y_mm` is the line it stands on."""

    x_mm: float
    y_mm: float
    text: str
    pt: float
    bold: bool = False


Shape = DrawnRect | DrawnLine | DrawnText


@dataclass(frozen=True, slots=True, kw_only=True)
class Drawing:
    """Shapes on a sheet of their own; set smaller as a whole when the paper is narrower."""

    width_mm: float
    height_mm: float
    shapes: tuple[Shape, ...]
    says: str
    """What the drawing shows, in words, for whoever cannot see it."""


Part = Table | Paragraph | Caution | Drawing


@dataclass(frozen=True, slots=True, kw_only=True)
class Section:
    """A headed stretch of a report; text may run in `columns`, tables take the whole width."""

    heading: str = ""
    parts: tuple[Part, ...]
    columns: int = 1


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
