"""Sheets of paper ready to be looked at, printed or written: one report, one paper, the same marks.

The thin end of the paper room on the desk. Must know nothing of widgets.
"""

from __future__ import annotations

from dataclasses import dataclass
from pathlib import Path
from typing import Final

from PySide6.QtGui import QImage, QPagedPaintDevice

from planner.paper.bilingual import in_two_languages
from planner.paper.documents.ask import MOST_WEEKS, Ask
from planner.paper.errors import PaperError
from planner.paper.labels import LabelKind, labels_of, rows_asked
from planner.paper.labels_grid import CUT_EDGE_MM, CUT_GAP_MM, fitted_grid
from planner.paper.labels_sheet import USUAL_SIZE_MM, SheetWish, label_sheets
from planner.paper.marks import Page
from planner.paper.qt_writer import QtFontMetrics, laid_out, page_image, paint_pages, write_pages
from planner.paper.registry import Document
from planner.paper.report import Report
from planner.paper.sheet_files import second_language
from planner.paper.style import ALL_PAPERS, STYLE, Paper, PaperStyle

CHOICES: Final = ALL_PAPERS
LONGEST_WEEKS: Final = MOST_WEEKS
LABEL_TITLES: Final = {LabelKind.TRAY: "Tray and pot labels", LabelKind.RAFT: "Raft tags"}
NOTHING_TO_LABEL: Final = {
    LabelKind.TRAY: "Nothing is sown in these weeks, so there is no label to print.",
    LabelKind.RAFT: "Nothing is moved to a bed in these weeks, so there is no tag to print.",
}


@dataclass(frozen=True, slots=True, kw_only=True)
class Sheets:
    """Pages on their paper: screen, printer and file get these and no others."""

    title: str
    author: str
    paper: Paper
    pages: tuple[Page, ...]

    @property
    def count(self) -> int:
        """How many pages there are."""
        return len(self.pages)

    def pictures(self, *, dpi: float, most: int) -> tuple[QImage, ...]:
        """Return pictures of the first pages, at most so many."""
        return tuple(page_image(page, dpi=dpi) for page in self.pages[:most])

    def paint(self, device: QPagedPaintDevice) -> int:
        """Draw all pages on a printer; return how many. Raises `PaperError`."""
        return paint_pages(self.pages, device, self.paper)

    def write_pdf(self, path: Path) -> int:
        """Write all pages as PDF; return how many. Raises `PaperError`."""
        return write_pages(self.pages, path, self.paper, title=self.title, author=self.author)


def paper_named(name: str) -> Paper | None:
    """Return a paper by its name, None when there is none of that name."""
    return next((paper for paper in ALL_PAPERS if paper.name == name), None)


def document_sheets(
    document: Document, ask: Ask, paper: Paper, *, style: PaperStyle = STYLE, second: str = ""
) -> Sheets:
    """Return a document laid out on a paper, perhaps with headings in a second language.

    Raises `PaperError` when the words that come with the program cannot be read.
    """
    report = document.make(ask)
    if second:
        report = in_two_languages(report, second_language(second))
    return report_sheets(report, document.lies_on(paper), style=style)


def report_sheets(report: Report, paper: Paper, *, style: PaperStyle = STYLE) -> Sheets:
    """Return a finished report laid out on a paper as it lies."""
    return Sheets(
        title=" – ".join(part for part in (report.title, report.subtitle) if part),
        author=report.farm_name,
        paper=paper,
        pages=laid_out(report, paper, style=style),
    )


def label_pages(kind: LabelKind, ask: Ask, paper: Paper) -> Sheets:
    """Return the labels of what is sown, or moved to beds, in the weeks asked for, on paper to be cut.

    Raises `PaperError` when there is nothing to label, and `GridError` or `NoRoomOnLabelError` as labels do.
    """
    rows = rows_asked(kind, ask.farm, ask.forecast, first_day=ask.first_day, last_day=ask.end_day)
    labels = labels_of(kind, ask.farm, ask.forecast, rows=rows)
    if not labels:
        raise PaperError(NOTHING_TO_LABEL[kind])
    width, height = USUAL_SIZE_MM[kind]
    grid = fitted_grid(paper, width_mm=width, height_mm=height, edge_mm=CUT_EDGE_MM, gap_mm=CUT_GAP_MM)
    wish = SheetWish(grid=grid, paper=paper, outlined=True)
    pages = label_sheets(labels, wish, QtFontMetrics()).pages
    return Sheets(title=LABEL_TITLES[kind], author=ask.farm.settings.name, paper=paper, pages=pages)
