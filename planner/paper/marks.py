"""What is put on a page, in millimetres from its upper left corner: the result of layout.

Whoever draws only has to put these down one after the other. Must not know reports or toolkits.
"""

from __future__ import annotations

import dataclasses
from collections.abc import Iterable, Iterator
from dataclasses import dataclass

from planner.paper.measure import Face
from planner.paper.shapes import Hatch
from planner.paper.style import Paper


@dataclass(frozen=True, slots=True, kw_only=True)
class Words:
    """One line of text standing on `y_mm`, and the room it was measured for."""

    x_mm: float
    y_mm: float
    text: str
    face: Face
    pt: float
    room_mm: float


@dataclass(frozen=True, slots=True, kw_only=True)
class Rule:
    """A straight black line."""

    x_mm: float
    y_mm: float
    x2_mm: float
    y2_mm: float
    pt: float


@dataclass(frozen=True, slots=True, kw_only=True)
class Frame:
    """An empty rectangle with a black edge: a box to tick, a warning, a place."""

    x_mm: float
    y_mm: float
    width_mm: float
    height_mm: float
    pt: float


@dataclass(frozen=True, slots=True, kw_only=True)
class Fill:
    """A rectangle of one grey, from 0 (black) to 1 (white)."""

    x_mm: float
    y_mm: float
    width_mm: float
    height_mm: float
    grey: float


@dataclass(frozen=True, slots=True, kw_only=True)
class Pattern:
    """A rectangle filled with a pattern of black lines."""

    x_mm: float
    y_mm: float
    width_mm: float
    height_mm: float
    hatch: Hatch


@dataclass(frozen=True, slots=True, kw_only=True)
class Tint:
    """A rectangle of one colour, #RRGGBB."""

    x_mm: float
    y_mm: float
    width_mm: float
    height_mm: float
    colour: str


@dataclass(frozen=True, slots=True, kw_only=True)
class Stroke:
    """A black line through points that are counted from (`x_mm`, `y_mm`); perhaps closed and filled."""

    x_mm: float
    y_mm: float
    points_mm: tuple[tuple[float, float], ...]
    pt: float
    closed: bool = False
    solid: bool = False
    dashed: bool = False


@dataclass(frozen=True, slots=True, kw_only=True)
class Oval:
    """A black oval that just fits a rectangle, perhaps filled."""

    x_mm: float
    y_mm: float
    width_mm: float
    height_mm: float
    pt: float
    solid: bool = False


Mark = Words | Rule | Frame | Fill | Pattern | Tint | Stroke | Oval


@dataclass(frozen=True, slots=True, kw_only=True)
class Group:
    """Marks counted from (`x_mm`, `y_mm`): a strip on its page, a picture in its cell.

    A page has thousands of marks; moving them together spares making each of them anew.
    """

    x_mm: float
    y_mm: float
    marks: tuple[Mark | Group, ...]


Placed = Mark | Group
"""What is put down: one mark, or marks together."""


def flat(placed: Iterable[Placed], *, x_mm: float = 0.0, y_mm: float = 0.0) -> Iterator[Mark]:
    """Yield single marks in order, counted from where (`x_mm`, `y_mm`) is counted from."""
    for one in placed:
        if isinstance(one, Group):
            yield from flat(one.marks, x_mm=x_mm + one.x_mm, y_mm=y_mm + one.y_mm)
        else:
            yield moved(one, by_x_mm=x_mm, by_y_mm=y_mm)


def moved(mark: Mark, *, by_x_mm: float, by_y_mm: float) -> Mark:
    """Return a mark moved to the right and down."""
    x, y = mark.x_mm + by_x_mm, mark.y_mm + by_y_mm
    if isinstance(mark, Rule):
        return Rule(x_mm=x, y_mm=y, x2_mm=mark.x2_mm + by_x_mm, y2_mm=mark.y2_mm + by_y_mm, pt=mark.pt)
    return dataclasses.replace(mark, x_mm=x, y_mm=y)


@dataclass(frozen=True, slots=True, kw_only=True)
class Strip:
    """A stretch of the page that is never broken, as wide as its column and `height_mm` high.

    `keep` holds it on one page with the strip after it; `again` are strips to be repeated above it
    when it comes first on a page. `turn` begins a new page with it; `fills` repeats it down to the foot.
    """

    height_mm: float
    marks: tuple[Placed, ...] = ()
    keep: bool = False
    again: tuple[Strip, ...] = ()
    turn: bool = False
    fills: bool = False


@dataclass(frozen=True, slots=True, kw_only=True)
class ColumnFlow:
    """Strips that run down several columns side by side, under what `lead` puts above them."""

    lead: tuple[Strip, ...]
    strips: tuple[Strip, ...]
    columns: int
    pitch_mm: float
    """From the left edge of one column to that of the next."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Page:
    """One page ready to be drawn."""

    number: int
    count: int
    paper: Paper
    placed: tuple[Placed, ...]

    @property
    def marks(self) -> tuple[Mark, ...]:
        """Every single mark, counted from the corner of the page."""
        return tuple(flat(self.placed))
