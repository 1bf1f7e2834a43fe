"""Wires reports to paper: which sheet, and a PDF without a screen."""

from __future__ import annotations

from datetime import date
from pathlib import Path
from typing import TYPE_CHECKING

from planner.bootstrap import local_now

if TYPE_CHECKING:
    from planner.catalogue.catalogue import Catalogue
    from planner.farm.farm import Farm
    from planner.forecast.values import Forecast
    from planner.paper.report import Report
    from planner.paper.style import Paper


def is_wall_paper(paper: Paper) -> bool:
    """Tell whether a paper is read from the wall, and so takes large type."""
    from planner.paper.style import A3, TABLOID

    return paper.name in (A3.name, TABLOID.name)


def calendar_report(
    farm: Farm, forecast: Forecast, catalogue: Catalogue, *, from_on: date, weeks: int, paper: Paper
) -> Report:
    """Return the seeding calendar, set for the paper it goes on."""
    from planner.paper.seeding_calendar import seeding_calendar

    return seeding_calendar(
        farm,
        forecast,
        catalogue,
        from_on=from_on,
        weeks=weeks,
        printed_on=local_now(),
        large=is_wall_paper(paper),
    )


def write_report(report: Report, path: Path, paper: Paper) -> int:
    """Write a report as PDF where there is no screen, and return how many pages it has.

    Raises `PaperError` when the path cannot be written.
    """
    import os

    os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")
    from PySide6.QtGui import QGuiApplication

    from planner.paper.qt_writer import write_pdf

    application = QGuiApplication.instance() or QGuiApplication(["raftweek"])
    assert application is not None
    return write_pdf(report, path, paper)
