"""Wires documents to paper: which sheet, in which style and languages, and a PDF without a screen."""

from __future__ import annotations

import os
from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date
from functools import cache
from pathlib import Path
from typing import TYPE_CHECKING

from planner.bootstrap import local_now

if TYPE_CHECKING:
    from PySide6.QtGui import QGuiApplication

    from planner.catalogue.catalogue import Catalogue
    from planner.farm.farm import Farm
    from planner.forecast.values import Forecast
    from planner.paper.marks import Page
    from planner.paper.measure import FontMetrics
    from planner.paper.registry import Document
    from planner.paper.report import Report
    from planner.paper.style import Paper, PaperStyle


@dataclass(frozen=True, slots=True, kw_only=True)
class Looked:
    """A farm, what is foreseen for it, and the catalogue with its own entries laid over it."""

    farm: Farm
    forecast: Forecast
    catalogue: Catalogue


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


def document_report(
    document: Document, looked: Looked, *, from_on: date, weeks: int, paper: Paper, second: str = ""
) -> Report:
    """Return a document, set for the paper it goes on; `second` is a language beside English.

    Raises `PaperError` when the words that come with the program cannot be read.
    """
    from planner.catalogue.names import CODE_OF_LANGUAGE, named_beside
    from planner.paper.bilingual import in_two_languages
    from planner.paper.documents.ask import Ask
    from planner.paper.sheet_files import second_language

    ask = Ask(
        farm=looked.farm,
        forecast=looked.forecast,
        catalogue=named_beside(looked.catalogue, CODE_OF_LANGUAGE.get(second, "")),
        from_on=from_on,
        weeks=weeks,
        printed_on=local_now(),
        large=document.is_large_on(paper),
    )
    report = document.make(ask)
    return in_two_languages(report, second_language(second)) if second else report


def write_report(report: Report, path: Path, paper: Paper, *, style: PaperStyle | None = None) -> int:
    """Write a report as PDF where there is no screen, and return how many pages it has.

    Raises `PaperError` when the path cannot be written.
    """
    _ready_to_paint()
    from planner.paper.qt_writer import write_pdf
    from planner.paper.style import STYLE

    return write_pdf(report, path, paper, style=style or STYLE)


def page_metrics() -> FontMetrics:
    """Return what measures the shipped typeface, where there is no screen either."""
    _ready_to_paint()
    from planner.paper.qt_writer import QtFontMetrics

    return QtFontMetrics()


def write_page_file(pages: Sequence[Page], path: Path, paper: Paper, *, title: str, author: str) -> int:
    """Write finished pages as PDF where there is no screen, and return how many they are.

    Raises `PaperError` when the path cannot be written.
    """
    _ready_to_paint()
    from planner.paper.qt_writer import write_pages

    return write_pages(pages, path, paper, title=title, author=author)


def _ready_to_paint() -> None:
    """Start the toolkit where nothing has."""
    os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")
    from PySide6.QtGui import QGuiApplication

    if QGuiApplication.instance() is None:
        _own_application()


@cache
def _own_application() -> QGuiApplication:
    """Return the toolkit's one application, which must outlive whatever is measured or drawn."""
    from PySide6.QtGui import QGuiApplication

    return QGuiApplication(["raftweek"])
