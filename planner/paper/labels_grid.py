"""Where the labels of a sheet lie: count, size, margins and gaps, all lengths in millimetres.

Must not know what labels say or how they are drawn.
"""

from __future__ import annotations

import re
from dataclasses import dataclass
from typing import Final

from planner.paper.style import Paper

MOST_ACROSS: Final = 50
LEAST_LABEL_MM: Final = 8.0
MOST_LABEL_MM: Final = 432.0
MOST_MARGIN_MM: Final = 200.0
MOST_SHIFT_MM: Final = 20.0
CUT_EDGE_MM: Final = 10.0
CUT_GAP_MM: Final = 2.0
"""Edge and gap of plain paper that is cut along the drawn lines."""

_SLACK_MM: Final = 0.2
"""How far a sheet of labels may be said to reach beyond its paper: sizes on packets are rounded."""

_PAIR: Final = re.compile(
    r"\s*([+-]?\d{1,4}(?:\.\d{1,3})?)\s*[xX×]\s*([+-]?\d{1,4}(?:\.\d{1,3})?)\s*", re.ASCII
)


class GridError(ValueError):
    """A grid of labels that cannot be: the text names field, value and limit."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Spot:
    """Upper left corner of one label on its sheet [mm]."""

    x_mm: float
    y_mm: float


@dataclass(frozen=True, slots=True, kw_only=True)
class LabelGrid:
    """A sheet of labels, all of one size, the first in the upper left corner.

    Margins are from the edge of the paper to the first label; gaps lie between labels.
    """

    columns: int
    rows: int
    width_mm: float
    height_mm: float
    left_mm: float
    top_mm: float
    gap_x_mm: float = 0.0
    gap_y_mm: float = 0.0

    def __post_init__(self) -> None:
        """Refuse what no sheet can be."""
        for name, count in (("columns", self.columns), ("rows", self.rows)):
            if not 1 <= count <= MOST_ACROSS:
                raise GridError(f"{name}: {count} must lie within 1 to {MOST_ACROSS}")
        for name, length, low, high in (
            ("width of a label", self.width_mm, LEAST_LABEL_MM, MOST_LABEL_MM),
            ("height of a label", self.height_mm, LEAST_LABEL_MM, MOST_LABEL_MM),
            ("left margin", self.left_mm, 0.0, MOST_MARGIN_MM),
            ("top margin", self.top_mm, 0.0, MOST_MARGIN_MM),
            ("gap between columns", self.gap_x_mm, 0.0, MOST_MARGIN_MM),
            ("gap between rows", self.gap_y_mm, 0.0, MOST_MARGIN_MM),
        ):
            if not low <= length <= high:
                raise GridError(f"{name}: {length:g} mm must lie within {low:g} to {high:g} mm")

    @property
    def count(self) -> int:
        """Labels on one sheet."""
        return self.columns * self.rows

    @property
    def reach_mm(self) -> tuple[float, float]:
        """How far right and down the last label reaches on its sheet."""
        return (
            self.left_mm + self.columns * self.width_mm + (self.columns - 1) * self.gap_x_mm,
            self.top_mm + self.rows * self.height_mm + (self.rows - 1) * self.gap_y_mm,
        )

    def spot(self, number: int) -> Spot:
        """Return where label `number` lies, counted from 1 along the rows.

        >>> LabelGrid(columns=3, rows=8, width_mm=63, height_mm=34, left_mm=7, top_mm=13, gap_x_mm=2).spot(5)
        Spot(x_mm=72, y_mm=47.0)
        """
        row, column = divmod(number - 1, self.columns)
        return Spot(
            x_mm=self.left_mm + column * (self.width_mm + self.gap_x_mm),
            y_mm=self.top_mm + row * (self.height_mm + self.gap_y_mm),
        )

    def mirrored_spot(self, number: int, paper: Paper) -> Spot:
        """Return where the back of a label lies once the sheet is turned over its long edge."""
        front = self.spot(number)
        return Spot(x_mm=paper.width_mm - front.x_mm - self.width_mm, y_mm=front.y_mm)


def checked_on(grid: LabelGrid, paper: Paper) -> LabelGrid:
    """Return the grid; raises `GridError` when its labels do not lie on the paper."""
    right, low = grid.reach_mm
    for name, reach, edge in (("columns", right, paper.width_mm), ("rows", low, paper.height_mm)):
        if reach > edge + _SLACK_MM:
            raise GridError(
                f"{name}: the labels reach to {reach:g} mm, but {paper.name} ends at {edge:g} mm. "
                "Look at the count, the size, the margins and the gaps."
            )
    return grid


def fitted_grid(
    paper: Paper,
    *,
    width_mm: float,
    height_mm: float,
    edge_mm: float = CUT_EDGE_MM,
    gap_mm: float = CUT_GAP_MM,
) -> LabelGrid:
    """Return as many labels as a plain sheet has room for inside its edge, in the middle of it."""
    columns = _that_fit(paper.width_mm - 2 * edge_mm, width_mm, gap_mm)
    rows = _that_fit(paper.height_mm - 2 * edge_mm, height_mm, gap_mm)
    grid = centred_grid(
        paper, columns=columns, rows=rows, size_mm=(width_mm, height_mm), gap_mm=(gap_mm, gap_mm)
    )
    return checked_on(grid, paper)


def centred_grid(
    paper: Paper,
    *,
    columns: int,
    rows: int,
    size_mm: tuple[float, float],
    gap_mm: tuple[float, float] = (0.0, 0.0),
) -> LabelGrid:
    """Return a grid in the middle of its paper; one that is too large for it begins at the edge."""
    across, down = (
        count * side + (count - 1) * gap
        for count, side, gap in zip((columns, rows), size_mm, gap_mm, strict=True)
    )
    return LabelGrid(
        columns=columns,
        rows=rows,
        width_mm=size_mm[0],
        height_mm=size_mm[1],
        left_mm=max((paper.width_mm - across) / 2, 0.0),
        top_mm=max((paper.height_mm - down) / 2, 0.0),
        gap_x_mm=gap_mm[0],
        gap_y_mm=gap_mm[1],
    )


def _that_fit(room_mm: float, side_mm: float, gap_mm: float) -> int:
    return min(max(int((room_mm + gap_mm) // (side_mm + gap_mm)), 1), MOST_ACROSS)


def pair_of(text: str, *, field: str) -> tuple[float, float]:
    """Return the two numbers of a text such as "63.5 x 33.9"; raises `GridError` for another one.

    >>> pair_of("63.5x33.9", field="size")
    (63.5, 33.9)
    """
    found = _PAIR.fullmatch(text)
    if found is None:
        raise GridError(f'{field}: "{text[:40]}" is not two numbers with an x between, such as 60x30')
    return float(found[1]), float(found[2])


def whole_pair_of(text: str, *, field: str) -> tuple[int, int]:
    """Return the two whole numbers of a text such as "3x8"; raises `GridError` for another one."""
    first, second = pair_of(text, field=field)
    if first != int(first) or second != int(second):
        raise GridError(f'{field}: "{text[:40]}" is not two whole numbers with an x between, such as 3x8')
    return int(first), int(second)
