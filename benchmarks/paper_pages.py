"""Times documents of sixteen pages: from farm and forecast to the finished PDF, part by part.

    python benchmarks/paper_pages.py [--runs N]

Beside it stands the floor: the bare toolkit writing as many pages with as many words, lines and frames at the
same places, measured and broken by nobody. The two are taken in turn. Without a screen set
`QT_QPA_PLATFORM=offscreen`.
"""

from __future__ import annotations

import argparse
import statistics
import sys
import tempfile
import time
from collections.abc import Callable, Sequence
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
from planner.paper.qt_writer import laid_out, write_pages  # noqa: E402
from planner.paper.registry import document_named  # noqa: E402
from planner.paper.style import A4  # noqa: E402

_MS: Final = 1000.0
_PAGES: Final = 16
_PAPER: Final = A4
_UNITS_PER_MM: Final = 1200 / 25.4
DOCUMENTS: Final = (("week-tasks", 8), ("bed-map", 3), ("hand-over", 30), ("season-plan", 26))
"""Documents with as many weeks as make about sixteen pages."""


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
    """Return the milliseconds an act takes."""
    begun = time.perf_counter()
    act()
    return (time.perf_counter() - begun) * _MS


def row(key: str, weeks: int, runs: int, folder: Path) -> str:
    """Return the line of one document: pages, times of each part, and how they stand to the floor."""
    ask, document = ask_of(ROOT / "sample_data" / "school-kitchen.toml", weeks), document_named(key)
    paper = document.lies_on(_PAPER)
    columns: list[tuple[float, ...]] = []
    count = 0
    for _ in range(runs + 1):
        report = document.make(ask)
        pages = laid_out(report, paper)
        count = len(pages)
        columns.append(
            (
                timed(lambda: document.make(ask)),
                timed(lambda report=report: laid_out(report, paper)),
                timed(lambda pages=pages: write_pages(pages, folder / "a.pdf", paper, title="", author="")),
                timed(lambda pages=pages: floor(pages, folder / "b.pdf")),
            )
        )
    made, laid, written, least = (statistics.median(column) for column in zip(*columns[1:], strict=True))
    whole, share = made + laid + written, _PAGES / count
    return (
        f"{key:<14}{count:>6}{made:>8.1f}{laid:>8.1f}{written:>8.1f}{whole:>8.1f}{whole * share:>10.1f}"
        f"{least:>8.1f}{whole / least:>8.2f}"
    )


def main() -> None:
    """Print the table."""
    parser = argparse.ArgumentParser(
        description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter
    )
    parser.add_argument("--runs", type=int, default=15)
    runs = parser.parse_args().runs
    application = QGuiApplication(sys.argv)
    heads = f"{'document':<14}{'pages':>6}{'make':>8}{'lay':>8}{'write':>8}{'all ms':>8}"
    print(f"{heads}{'per 16':>10}{'floor':>8}{'x':>8}")
    with tempfile.TemporaryDirectory() as folder:
        for key, weeks in DOCUMENTS:
            print(row(key, weeks, runs, Path(folder)))
    application.quit()


if __name__ == "__main__":
    main()
