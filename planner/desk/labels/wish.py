"""What is wished for labels: which, of what, and how they lie on their sheet.

The way from a wish to pages, and a sheet of labels as the short text that is remembered. Must know nothing
of widgets.
"""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date
from typing import Final

from planner.desk.sheets import Sheets, paper_named
from planner.paper.documents.ask import Ask
from planner.paper.errors import PaperError
from planner.paper.labels import LabelKind, label_caution, labels_of, rows_asked
from planner.paper.labels_grid import (
    GridError,
    LabelGrid,
    checked_on,
    fitted_grid,
    pair_of,
    whole_pair_of,
)
from planner.paper.labels_sheet import USUAL_SIZE_MM, SheetWish, calibration_pages, label_sheets
from planner.paper.qt_writer import QtFontMetrics
from planner.paper.style import A4, Paper

LABEL_TITLES: Final = {LabelKind.TRAY: "Tray and pot labels", LabelKind.RAFT: "Raft tags"}
NOTHING_TO_LABEL: Final = {
    LabelKind.TRAY: "Nothing is sown in these weeks, so there is no label to print.",
    LabelKind.RAFT: "Nothing is moved to a bed in these weeks, so there is no tag to print.",
}
_PARTS: Final = 4


@dataclass(frozen=True, slots=True, kw_only=True)
class LabelWish:
    """Which labels, of which batches, and how they lie; without a `grid` it is plain paper to be cut.

    `codes` are the batches wanted; none of them stands for all of the weeks. All lengths in millimetres.
    """

    kind: LabelKind
    paper: str
    from_on: date
    weeks: int
    codes: tuple[str, ...] = ()
    grid: LabelGrid | None = None
    start: int = 1
    shift_mm: tuple[float, float] = (0.0, 0.0)
    coded: bool = True
    outlined: bool = True
    backs: bool = False
    calibration: bool = False

    @property
    def document(self) -> str:
        """What a file of it is called."""
        return "calibration" if self.calibration else f"{self.kind.value}-labels"


def label_wish_pages(wish: LabelWish, ask: Ask) -> Sheets:
    """Return the sheets of a wish.

    Raises `GridError` for labels that do not lie on the paper, `NoRoomOnLabelError` for text that must not
    be cut and has no room, `PaperError` when there is nothing to label.
    """
    paper = paper_named(wish.paper) or A4
    lie = _lie(wish, ask, paper)
    if wish.calibration:
        return Sheets(
            title="Calibration",
            author=ask.farm.settings.name,
            paper=paper,
            pages=calibration_pages(lie, QtFontMetrics()),
        )
    labels = labels_of(wish.kind, ask.farm, ask.forecast, rows=_rows(wish, ask))
    if not labels:
        raise PaperError(NOTHING_TO_LABEL[wish.kind])
    return Sheets(
        title=LABEL_TITLES[wish.kind],
        author=ask.farm.settings.name,
        paper=paper,
        pages=label_sheets(labels, lie, QtFontMetrics()).pages,
    )


def _rows(wish: LabelWish, ask: Ask) -> tuple[int, ...]:
    if wish.codes:
        wanted = set(wish.codes)
        return tuple(row for row, batch in enumerate(ask.farm.batches) if batch.code in wanted)
    return rows_asked(wish.kind, ask.farm, ask.forecast, first_day=ask.first_day, last_day=ask.end_day)


def _lie(wish: LabelWish, ask: Ask, paper: Paper) -> SheetWish:
    grid = wish.grid or plain_grid(wish.kind, paper)
    return SheetWish(
        grid=checked_on(grid, paper),
        paper=paper,
        start=wish.start,
        shift_mm=wish.shift_mm,
        outlined=wish.outlined,
        coded=wish.coded,
        caution=label_caution(ask.catalogue) if wish.backs else None,
    )


def plain_grid(kind: LabelKind, paper: Paper) -> LabelGrid:
    """Return as many labels of the usual size as plain paper holds."""
    width, height = USUAL_SIZE_MM[kind]
    return fitted_grid(paper, width_mm=width, height_mm=height)


def grid_words(grid: LabelGrid) -> str:
    """Return a sheet of labels as text: count, size, margins, gaps.

    >>> grid_words(LabelGrid(columns=3, rows=8, width_mm=60, height_mm=30, left_mm=15, top_mm=28.5))
    '3x8 60x30 15x28.5 0x0'
    """
    pairs = (
        (grid.columns, grid.rows),
        (grid.width_mm, grid.height_mm),
        (grid.left_mm, grid.top_mm),
        (grid.gap_x_mm, grid.gap_y_mm),
    )
    return " ".join(f"{first:g}x{second:g}" for first, second in pairs)


def grid_of(words: str) -> LabelGrid | None:
    """Return the sheet of labels that a text tells, None for another text."""
    parts = words.split()
    if len(parts) != _PARTS:
        return None
    try:
        columns, rows = whole_pair_of(parts[0], field="grid")
        (width, height), (left, top), (across, down) = (pair_of(part, field="grid") for part in parts[1:])
        return LabelGrid(
            columns=columns,
            rows=rows,
            width_mm=width,
            height_mm=height,
            left_mm=left,
            top_mm=top,
            gap_x_mm=across,
            gap_y_mm=down,
        )
    except GridError:
        return None
