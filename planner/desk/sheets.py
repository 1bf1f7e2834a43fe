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
from planner.paper.marks import Page
from planner.paper.qt_writer import laid_out, page_image, paint_pages, write_pages
from planner.paper.registry import Document
from planner.paper.report import Report
from planner.paper.sheet_files import second_language
from planner.paper.style import ALL_PAPERS, STYLE, Paper, PaperStyle

CHOICES: Final = ALL_PAPERS
LONGEST_WEEKS: Final = MOST_WEEKS


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
