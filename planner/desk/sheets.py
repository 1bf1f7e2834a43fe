"""Sheets of paper ready to be looked at, printed or written: one report, one paper, the same marks.

The thin end of the paper room on the desk. Must know nothing of widgets.
"""

from __future__ import annotations

from collections.abc import Callable, Generator
from dataclasses import dataclass
from pathlib import Path
from typing import Final

from PySide6.QtGui import QImage, QPagedPaintDevice

from planner.paper.bilingual import in_two_languages
from planner.paper.documents.ask import MOST_WEEKS, Ask
from planner.paper.marks import Page
from planner.paper.qt_writer import QtFontMetrics, laid_out, page_image, painting_steps, writing_steps
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

    def painting(self, device: QPagedPaintDevice) -> Generator[int]:
        """Draw all pages on a printer; yield how many are drawn. Raises `PaperError`."""
        return painting_steps(self.pages, device, self.paper)

    def writing(self, path: Path) -> Generator[int]:
        """Write all pages as PDF; yield how many are written. Raises `PaperError`."""
        return writing_steps(self.pages, path, self.paper, title=self.title, author=self.author)


def load_type() -> None:
    """Read in the type of the paper; to be called in the window's thread, before sheets are set beside it."""
    QtFontMetrics()


def paper_named(name: str) -> Paper | None:
    """Return a paper by its name, None when there is none of that name."""
    return next((paper for paper in ALL_PAPERS if paper.name == name), None)


def document_sheets(
    document: Document,
    ask: Ask,
    paper: Paper,
    *,
    style: PaperStyle = STYLE,
    second: str = "",
    stopped: Callable[[], bool] | None = None,
) -> Sheets:
    """Return a document laid out on a paper, perhaps with headings in a second language.

    Raises `PaperError` when the words that come with the program cannot be read, `GivenUpError` once
    `stopped` tells that it is wanted no longer.
    """
    report = document.make(ask)
    if second:
        report = in_two_languages(report, second_language(second))
    return report_sheets(report, document.lies_on(paper), style=style, stopped=stopped)


def report_sheets(
    report: Report, paper: Paper, *, style: PaperStyle = STYLE, stopped: Callable[[], bool] | None = None
) -> Sheets:
    """Return a finished report laid out on a paper as it lies; raises as `document_sheets` does."""
    return Sheets(
        title=" – ".join(part for part in (report.title, report.subtitle) if part),
        author=report.farm_name,
        paper=paper,
        pages=laid_out(report, paper, style=style, stopped=stopped),
    )
