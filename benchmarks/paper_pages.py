"""Times every document at about sixteen pages: from farm and forecast to the finished PDF, part by part.

    python benchmarks/paper_pages.py [--runs N]

Beside it stand two floors, taken in turn with it: `empty`, as many pages with nothing but every letter of
the document once, so that the same type is embedded; and `bare`, the toolkit writing as many words, lines
and frames at the same places, measured and broken by nobody. Times are of the processor, so that a busy
machine blurs them less. A document that never has sixteen pages is taken at its longest. Without a screen
set `QT_QPA_PLATFORM=offscreen`.
"""

from __future__ import annotations

import argparse
import statistics
import sys
import tempfile
import time
from collections.abc import Callable, Sequence
from dataclasses import replace
from datetime import UTC, datetime
from pathlib import Path
from typing import Final

ROOT: Final = Path(__file__).resolve().parent.parent
sys.path.insert(0, str(ROOT))

from PySide6.QtCore import QPointF, QRectF  # noqa: E402
from PySide6.QtGui import QFont, QGuiApplication, QPageSize, QPainter, QPdfWriter  # noqa: E402

from planner.bootstrap import Means  # noqa: E402
from planner.paper.documents.ask import Ask  # noqa: E402
from planner.paper.marks import Page, Rule, Words  # noqa: E402
from planner.paper.measure import Face  # noqa: E402
from planner.paper.qt_writer import laid_out, write_pages  # noqa: E402
from planner.paper.registry import DOCUMENTS, document_named  # noqa: E402
from planner.paper.style import A4  # noqa: E402

_MS: Final = 1000.0
_PAGES: Final = 16
_PAPER: Final = A4
FARM: Final = ROOT / "sample_data" / "school-kitchen.toml"
_UNITS_PER_MM: Final = 1200 / 25.4
WEEKS: Final = (1, 2, 3, 4, 5, 6, 7, 8, 10, 13, 17, 21, 25, 30, 40, 52)
"""How many weeks are tried until a document has its sixteen pages."""


def ask_of(farm_text: Path, weeks: int) -> Ask:
    """Return a wish for a document of a farm, from its first week on."""
    means = Means()
    farm = means.read(farm_text).farm
    forecast = means.forecaster.forecast(farm)
    return Ask(
        farm=farm,
        forecast=forecast,
        catalogue=means.forecaster.catalogue_for(farm),
        from_on=farm.settings.plan_from,
        weeks=weeks,
        printed_on=datetime(2027, 1, 4, 9, 5, tzinfo=UTC),
    )


def floor(pages: Sequence[Page], path: Path) -> None:
    """Write the words and lines of pages with the bare toolkit."""
    writer = QPdfWriter(str(path))
    writer.setResolution(1200)
    writer.setPageSize(QPageSize(QPageSize.PageSizeId.A4))
    painter = QPainter(writer)
    font = QFont("DejaVu Sans")
    fonts = {
        pt: _sized(font, pt) for page in pages for pt in {m.pt for m in page.marks if isinstance(m, Words)}
    }
    for number, page in enumerate(pages):
        if number:
            writer.newPage()
        for mark in page.marks:
            spot = QPointF(mark.x_mm * _UNITS_PER_MM, mark.y_mm * _UNITS_PER_MM)
            if isinstance(mark, Words):
                painter.setFont(fonts[mark.pt])
                painter.drawText(spot, mark.text)
            elif isinstance(mark, Rule):
                painter.drawLine(spot, QPointF(mark.x2_mm * _UNITS_PER_MM, mark.y2_mm * _UNITS_PER_MM))
            elif hasattr(mark, "width_mm"):
                size = (mark.width_mm * _UNITS_PER_MM, mark.height_mm * _UNITS_PER_MM)
                painter.drawRect(QRectF(spot.x(), spot.y(), *size))
    painter.end()


def _sized(font: QFont, pt: float) -> QFont:
    sized = QFont(font)
    sized.setPointSizeF(pt)
    return sized


def timed(act: Callable[[], object]) -> float:
    """Return the milliseconds of the processor that an act takes."""
    begun = time.process_time()
    act()
    return (time.process_time() - begun) * _MS


def near_empty(pages: Sequence[Page]) -> tuple[Page, ...]:
    """Return as many pages, with every letter of each cut of type once on the first and nothing else."""
    seen: set[tuple[str, Face]] = set()
    kept: list[Words] = []
    for mark in (mark for page in pages for mark in page.marks if isinstance(mark, Words)):
        letters = {(letter, mark.face) for letter in mark.text}
        if not letters <= seen:
            kept.append(mark)
            seen |= letters
    return tuple(
        replace(page, placed=tuple(kept) if number == 0 else ()) for number, page in enumerate(pages)
    )


def chosen_weeks(key: str) -> int:
    """Return the weeks that give a document its sixteen pages, else the most that are tried."""
    document = document_named(key)
    for weeks in WEEKS:
        report = document.make(ask_of(FARM, weeks))
        if len(laid_out(report, document.lies_on(_PAPER))) >= _PAGES:
            return weeks
    return WEEKS[-1]


def row(key: str, runs: int, folder: Path) -> str:
    """Return the line of one document: pages, times of each part, and how they stand to the floors."""
    document, weeks = document_named(key), chosen_weeks(key)
    ask, paper = ask_of(FARM, weeks), document.lies_on(_PAPER)
    report = document.make(ask)
    pages = laid_out(report, paper)
    bare_pages = near_empty(pages)
    columns = [
        (
            timed(lambda: document.make(ask)),
            timed(lambda: laid_out(report, paper)),
            timed(lambda: write_pages(pages, folder / "a.pdf", paper, title="", author="")),
            timed(lambda: write_pages(bare_pages, folder / "b.pdf", paper, title="", author="")),
            timed(lambda: floor(pages, folder / "c.pdf")),
        )
        for _ in range(runs + 1)
    ]
    made, laid, written, empty, bare = (statistics.median(one) for one in zip(*columns[1:], strict=True))
    whole = made + laid + written
    most = whole * min(_PAGES / len(pages), 1.0)
    return (
        f"{key:<18}{weeks:>6}{len(pages):>6}{made:>8.1f}{laid:>8.1f}{written:>8.1f}{whole:>8.1f}{most:>8.1f}"
        f"{empty:>8.1f}{whole / empty:>6.1f}{bare:>8.1f}{whole / bare:>6.2f}"
    )


def main() -> None:
    """Print the table."""
    parser = argparse.ArgumentParser(
        description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter
    )
    parser.add_argument("--runs", type=int, default=15)
    runs = parser.parse_args().runs
    application = QGuiApplication(sys.argv)
    print(f"{'document':<18}{'weeks':>6}{'pages':>6}{'make':>8}{'lay':>8}{'write':>8}{'all ms':>8}", end="")
    print(f"{'of 16':>8}{'empty':>8}{'x':>6}{'bare':>8}{'x':>6}")
    with tempfile.TemporaryDirectory() as folder:
        for document in DOCUMENTS:
            print(row(document.key, runs, Path(folder)), flush=True)
    application.quit()


if __name__ == "__main__":
    main()
