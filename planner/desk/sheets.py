"""Sheets of paper ready to be looked at, printed or written: one report, one paper, the same marks.

The thin end of the paper room on the desk. Must know nothing of widgets.
"""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date, datetime
from pathlib import Path
from typing import Final

from PySide6.QtGui import QImage, QPagedPaintDevice

from planner.catalogue.catalogue import Catalogue
from planner.farm.farm import Farm
from planner.forecast.values import Forecast
from planner.paper.qt_writer import page_images, paint_report, write_pdf
from planner.paper.report import Report
from planner.paper.seeding_calendar import MOST_WEEKS, seeding_calendar
from planner.paper.style import A3, A4, LETTER, PAPERS, TABLOID, Paper

WALL_PAPERS: Final = frozenset({A3.name, TABLOID.name})
"""Papers that hang on a wall and are set in large type."""

CHOICES: Final = (A4, LETTER, A3)
LONGEST_WEEKS: Final = MOST_WEEKS


@dataclass(frozen=True, slots=True, kw_only=True)
class Sheets:
    """A report on its paper."""

    report: Report
    paper: Paper

    def pictures(self, *, dpi: float) -> tuple[QImage, ...]:
        """Return pictures of all pages."""
        return page_images(self.report, self.paper, dpi=dpi)

    def paint(self, device: QPagedPaintDevice) -> int:
        """Draw all pages on a printer; return how many. Raises `PaperError`."""
        return paint_report(self.report, device, self.paper)

    def write_pdf(self, path: Path) -> int:
        """Write all pages as PDF; return how many. Raises `PaperError`."""
        return write_pdf(self.report, path, self.paper)


def paper_named(name: str) -> Paper:
    """Return a paper by its name, A4 when there is none of that name."""
    return next((paper for paper in PAPERS if paper.name == name), A4)


def calendar_sheets(
    farm: Farm,
    forecast: Forecast,
    catalogue: Catalogue,
    *,
    paper: Paper,
    from_on: date,
    weeks: int,
    printed_on: datetime,
) -> Sheets:
    """Return the seeding calendar of some weeks, lying, in large type on a paper for the wall."""
    report = seeding_calendar(
        farm,
        forecast,
        catalogue,
        from_on=from_on,
        weeks=weeks,
        printed_on=printed_on,
        large=paper.name in WALL_PAPERS,
    )
    return Sheets(report=report, paper=paper.turned(landscape=report.landscape))
