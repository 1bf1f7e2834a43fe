"""Drawings on a sheet as plain values: rectangles, lines, paths, ovals and texts, in millimetres.

Must not know reports, layout or toolkits.
"""

from __future__ import annotations

from dataclasses import dataclass
from enum import Enum


class Hatch(Enum):
    """Pattern inside a drawn shape, told apart without colour."""

    NONE = "none"
    SOLID = "solid"
    SLANT = "slant"
    BACK_SLANT = "back slant"
    CROSS = "cross"
    DOTS = "dots"
    UPRIGHT = "upright"
    LEVEL = "level"


class Side(Enum):
    """Where a drawn text stands to its point."""

    LEFT = "left"
    MIDDLE = "middle"
    RIGHT = "right"


@dataclass(frozen=True, slots=True, kw_only=True)
class DrawnRect:
    """A rectangle of a drawing [mm], with a pattern, a tint, and perhaps a label in its middle.

    `tint` is a colour as #RRGGBB, left out in black and white. A label too wide for the rectangle gives way
    to `instead`. A `rule_pt` of 0 leaves the edge out.
    """

    x_mm: float
    y_mm: float
    width_mm: float
    height_mm: float
    hatch: Hatch = Hatch.NONE
    tint: str = ""
    rule_pt: float = 0.5
    label: str = ""
    instead: str = ""
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
class DrawnPath:
    """A line through points (x, y) [mm]; a closed one may be filled black."""

    points_mm: tuple[tuple[float, float], ...]
    rule_pt: float = 0.5
    closed: bool = False
    solid: bool = False
    dashed: bool = False


@dataclass(frozen=True, slots=True, kw_only=True)
class DrawnOval:
    """An oval that just fits a rectangle [mm]."""

    x_mm: float
    y_mm: float
    width_mm: float
    height_mm: float
    rule_pt: float = 0.5
    solid: bool = False


@dataclass(frozen=True, slots=True, kw_only=True)
class DrawnText:
    """A text of a drawing; `y_mm` is the line it stands on, `side` how it stands to `x_mm`."""

    x_mm: float
    y_mm: float
    text: str
    pt: float
    bold: bool = False
    side: Side = Side.LEFT


Shape = DrawnRect | DrawnLine | DrawnPath | DrawnOval | DrawnText


@dataclass(frozen=True, slots=True, kw_only=True)
class Drawing:
    """Shapes on a sheet of their own; set smaller as a whole when the paper is narrower.

    A `wide` one is drawn as wide as its room instead: lengths across stretch, heights and type stay.
    """

    width_mm: float
    height_mm: float
    shapes: tuple[Shape, ...]
    says: str
    """What the drawing shows, in words, for whoever cannot see it."""
    wide: bool = False
