"""Draws a report with Qt: onto the screen, into a PDF, to a printer; the same marks for all three.

The only module here that knows the toolkit. Needs a QGuiApplication and neither screen nor printer.
"""

from __future__ import annotations

import math
import unicodedata
from collections.abc import Callable, Generator, Iterable, Sequence
from functools import lru_cache
from pathlib import Path
from typing import Final

from PySide6.QtCore import QLine, QMarginsF, QPointF, QRect, QSizeF, Qt
from PySide6.QtGui import (
    QBrush,
    QColor,
    QFont,
    QFontDatabase,
    QFontMetricsF,
    QImage,
    QPagedPaintDevice,
    QPageLayout,
    QPageSize,
    QPainter,
    QPdfWriter,
    QPen,
    QPolygonF,
    QRawFont,
    QTransform,
)

from planner.paper.beside import beside
from planner.paper.errors import PaperError
from planner.paper.layout import pages_of
from planner.paper.marks import Fill, Frame, Group, Oval, Page, Pattern, Placed, Rule, Stroke, Tint, Words
from planner.paper.measure import Face, Watched
from planner.paper.report import Report
from planner.paper.shapes import Hatch
from planner.paper.style import MM_PER_PT, STYLE, Paper, PaperStyle
from planner.shipped import shipped_path

MM_PER_INCH: Final = 25.4
_UNITS_PER_MM: Final = 100
"""Drawing is in whole hundredths of a millimetre, so that type has the same size on every device."""
_MEASURED_PX: Final = 1000
_BRUSH_PX: Final = 8
"""Edge of the toolkit's own pattern pictures."""
_PDF_DPI: Final = 2540
"""Dots of a hundredth of a millimetre, the units of drawing, so that nothing is scaled in the file."""
_PDF_END: Final = b"%%EOF"
CREATOR: Final = "Raftweek"
_LIGATURES: Final = ("liga", "clig", "dlig", "hlig")
_FILES: Final = {
    Face.REGULAR: "DejaVuSans.ttf",
    Face.BOLD: "DejaVuSans-Bold.ttf",
    Face.NARROW: "DejaVuSansCondensed.ttf",
    Face.NARROW_BOLD: "DejaVuSansCondensed-Bold.ttf",
}
_BRUSHES: Final = {
    Hatch.SOLID: Qt.BrushStyle.SolidPattern,
    Hatch.SLANT: Qt.BrushStyle.BDiagPattern,
    Hatch.BACK_SLANT: Qt.BrushStyle.FDiagPattern,
    Hatch.CROSS: Qt.BrushStyle.DiagCrossPattern,
    Hatch.DOTS: Qt.BrushStyle.Dense6Pattern,
    Hatch.UPRIGHT: Qt.BrushStyle.VerPattern,
    Hatch.LEVEL: Qt.BrushStyle.HorPattern,
}


class QtFontMetrics:
    """Measures the shipped typeface; loads it when first made."""

    def __init__(self) -> None:
        self._fonts = {face: _font(face, _MEASURED_PX) for face in Face}
        self._metrics = {face: QFontMetricsF(font) for face, font in self._fonts.items()}
        self._ascents = {face: found.ascent() / _MEASURED_PX for face, found in self._metrics.items()}
        self._descents = {face: found.descent() / _MEASURED_PX for face, found in self._metrics.items()}
        if len(_WIDTHS) > _MOST_WIDTHS:
            _WIDTHS.clear()

    def width_em(self, text: str, face: Face) -> float:
        """Return the width of one line of text over the size of its type."""
        known = _WIDTHS.get((text, face))
        if known is None:
            known = self._metrics[face].horizontalAdvance(text) / _MEASURED_PX
            _WIDTHS[text, face] = known
        return known

    def shows(self, letter: str) -> bool:
        """Tell whether a letter can be drawn."""
        return _shows(letter)

    def ascent_em(self, face: Face) -> float:
        """Return the height of type above its line, over its size."""
        return self._ascents[face]

    def descent_em(self, face: Face) -> float:
        """Return the depth of type below its line, over its size."""
        return self._descents[face]


@lru_cache(maxsize=10_000)
def _shows(letter: str) -> bool:
    """Tell whether the shipped typeface has a letter, or any other that is no coloured picture."""
    font = _font(Face.REGULAR, _MEASURED_PX)
    if QRawFont.fromFont(font).supportsCharacter(ord(letter)):
        return True
    is_letter = unicodedata.category(letter)[0] in "LMNP"
    return is_letter and QFontMetricsF(font).inFontUcs4(ord(letter))


_MOST_WIDTHS: Final = 100_000
_WIDTHS: Final[dict[tuple[str, Face], float]] = {}
"""Widths that were measured already: the typeface is always the shipped one, so they hold for every sheet."""


@lru_cache(maxsize=256)
def _font(face: Face, pixels: int) -> QFont:
    """Return the shipped typeface at a size, never joining letters, so that text can be searched."""
    font = QFont(_loaded_family(face))
    font.setBold(face in (Face.BOLD, Face.NARROW_BOLD))
    font.setPixelSize(pixels)
    font.setHintingPreference(QFont.HintingPreference.PreferNoHinting)
    for name in _LIGATURES:
        font.setFeature(QFont.Tag(name), 0)
    return font


@lru_cache(maxsize=len(Face))
def _loaded_family(face: Face) -> str:
    """Return the family of a cut of the typeface, making its file known to the toolkit."""
    path = shipped_path("resources", "fonts", _FILES[face])
    number = QFontDatabase.addApplicationFont(str(path))
    families = QFontDatabase.applicationFontFamilies(number) if number >= 0 else []
    if not families:
        raise PaperError(f"The typeface {path.name} that comes with the program could not be read.")
    return max(families, key=len)


class _Pen:
    """Puts marks down with one painter, whose units are hundredths of a millimetre."""

    def __init__(self, painter: QPainter) -> None:
        self._painter = painter
        self._pens: dict[float, QPen] = {}

    def put_all(self, placed: Iterable[Placed], x_mm: float, y_mm: float) -> None:
        """Draw marks counted from a corner; rules one after the other in one go."""
        rules: list[Rule] = []
        for one in placed:
            if rules and not (isinstance(one, Rule) and one.pt == rules[0].pt):
                self._rules(rules, x_mm, y_mm)
                rules = []
            if isinstance(one, Rule):
                rules.append(one)
            elif isinstance(one, Words):
                self._words(one, x_mm, y_mm)
            elif isinstance(one, Group):
                self.put_all(one.marks, x_mm + one.x_mm, y_mm + one.y_mm)
            else:
                self._shape(one, x_mm, y_mm)
        if rules:
            self._rules(rules, x_mm, y_mm)

    def _shape(self, mark: _Rectangle | Stroke, x_mm: float, y_mm: float) -> None:
        painter = self._painter
        if isinstance(mark, Stroke):
            self._stroke(mark, x_mm, y_mm)
        elif isinstance(mark, Fill):
            painter.fillRect(_rect(mark, x_mm, y_mm), QColor.fromRgbF(mark.grey, mark.grey, mark.grey))
        elif isinstance(mark, Tint):
            painter.fillRect(_rect(mark, x_mm, y_mm), QColor(mark.colour))
        elif isinstance(mark, Pattern):
            painter.fillRect(_rect(mark, x_mm, y_mm), _hatched(mark.hatch))
        else:
            painter.setPen(self._pen(mark.pt))
            black = isinstance(mark, Oval) and mark.solid
            painter.setBrush(QColor(Qt.GlobalColor.black) if black else Qt.BrushStyle.NoBrush)
            (painter.drawEllipse if isinstance(mark, Oval) else painter.drawRect)(_rect(mark, x_mm, y_mm))

    def _stroke(self, mark: Stroke, x_mm: float, y_mm: float) -> None:
        pen = _line(mark.pt)
        if mark.dashed:
            pen.setStyle(Qt.PenStyle.DashLine)
        self._painter.setPen(pen)
        self._painter.setBrush(QColor(Qt.GlobalColor.black) if mark.solid else Qt.BrushStyle.NoBrush)
        left, top = x_mm + mark.x_mm, y_mm + mark.y_mm
        line = QPolygonF(
            [QPointF((left + x) * _UNITS_PER_MM, (top + y) * _UNITS_PER_MM) for x, y in mark.points_mm]
        )
        (self._painter.drawPolygon if mark.closed else self._painter.drawPolyline)(line)

    def _rules(self, rules: Sequence[Rule], x_mm: float, y_mm: float) -> None:
        self._painter.setPen(self._pen(rules[0].pt))
        self._painter.drawLines(
            [
                QLine(
                    round((rule.x_mm + x_mm) * _UNITS_PER_MM),
                    round((rule.y_mm + y_mm) * _UNITS_PER_MM),
                    round((rule.x2_mm + x_mm) * _UNITS_PER_MM),
                    round((rule.y2_mm + y_mm) * _UNITS_PER_MM),
                )
                for rule in rules
            ]
        )

    def _words(self, words: Words, x_mm: float, y_mm: float) -> None:
        self._painter.setFont(_font(words.face, round(words.pt * MM_PER_PT * _UNITS_PER_MM)))
        self._painter.setPen(self._pen(STYLE.rule_pt))
        left, base = round((words.x_mm + x_mm) * _UNITS_PER_MM), round((words.y_mm + y_mm) * _UNITS_PER_MM)
        self._painter.drawText(left, base, words.text)

    def _pen(self, pt: float) -> QPen:
        pen = self._pens.get(pt)
        if pen is None:
            pen = self._pens[pt] = _line(pt)
        return pen


_Rectangle = Frame | Fill | Pattern | Tint | Oval


@lru_cache(maxsize=len(Hatch))
def _hatched(hatch: Hatch) -> QBrush:
    """Return a pattern whose lines have the same distance on every device."""
    brush = QBrush(QColor(Qt.GlobalColor.black), _BRUSHES[hatch])
    if hatch is not Hatch.SOLID:
        scale = STYLE.hatch_step_mm * _UNITS_PER_MM / _BRUSH_PX
        brush.setTransform(QTransform.fromScale(scale, scale))
    return brush


def _rect(mark: _Rectangle, x_mm: float, y_mm: float) -> QRect:
    """Return a rectangle whose edges are rounded by themselves, so that neighbours still meet."""
    left, top = x_mm + mark.x_mm, y_mm + mark.y_mm
    x, y = round(left * _UNITS_PER_MM), round(top * _UNITS_PER_MM)
    right, low = round((left + mark.width_mm) * _UNITS_PER_MM), round((top + mark.height_mm) * _UNITS_PER_MM)
    return QRect(x, y, right - x, low - y)


def _line(pt: float) -> QPen:
    pen = QPen(QColor(Qt.GlobalColor.black), pt * MM_PER_PT * _UNITS_PER_MM)
    pen.setCapStyle(Qt.PenCapStyle.SquareCap)
    pen.setJoinStyle(Qt.PenJoinStyle.MiterJoin)
    return pen


def laid_out(
    report: Report, paper: Paper, *, style: PaperStyle = STYLE, stopped: Callable[[], bool] | None = None
) -> tuple[Page, ...]:
    """Return the pages of a report, measured with the typeface that they are drawn with.

    Raises `GivenUpError` once `stopped` tells that they are wanted no longer.
    """
    metrics = QtFontMetrics()
    return pages_of(report, paper, metrics if stopped is None else Watched(metrics, stopped), style=style)


def paint_page(painter: QPainter, page: Page, *, dots_per_mm: float) -> None:
    """Draw one page with its upper left corner at the painter's origin."""
    painter.save()
    painter.scale(dots_per_mm / _UNITS_PER_MM, dots_per_mm / _UNITS_PER_MM)
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    _Pen(painter).put_all(page.placed, 0.0, 0.0)
    painter.restore()


def page_layout(paper: Paper) -> QPageLayout:
    """Return how a device is to take the paper: whole sheet, no margins but our own."""
    standing = paper.turned(landscape=False)
    size = QPageSize(
        QSizeF(standing.width_mm, standing.height_mm),
        QPageSize.Unit.Millimeter,
        paper.name,
        QPageSize.SizeMatchPolicy.FuzzyMatch,
    )
    turn = QPageLayout.Orientation.Landscape if paper.landscape else QPageLayout.Orientation.Portrait
    layout = QPageLayout(size, turn, QMarginsF())
    layout.setMode(QPageLayout.Mode.FullPageMode)
    return layout


def paint_report(
    report: Report,
    device: QPagedPaintDevice,
    paper: Paper,
    *,
    style: PaperStyle = STYLE,
    only: Sequence[int] | None = None,
) -> int:
    """Draw a report on a device with pages (a PDF, a printer, a print preview); return the pages drawn.

    `only` are the page numbers wanted, all when None.

    Raises:
        PaperError: the device could not be opened or took no further page.
    """
    pages = [page for page in laid_out(report, paper, style=style) if only is None or page.number in only]
    return paint_pages(pages, device, paper)


def paint_pages(pages: Sequence[Page], device: QPagedPaintDevice, paper: Paper) -> int:
    """Draw finished pages on a device with pages; return how many.

    Raises:
        PaperError: the device could not be opened or took no further page.
    """
    return sum(1 for _ in painting_steps(pages, device, paper))


def painting_steps(pages: Sequence[Page], device: QPagedPaintDevice, paper: Paper) -> Generator[int]:
    """Draw finished pages one by one, and yield the number drawn after each; raises as `paint_pages` does."""
    device.setPageLayout(page_layout(paper))
    painter = QPainter()
    if not painter.begin(device):
        raise PaperError("The sheet could not be opened for printing.")
    try:
        for number, page in enumerate(pages):
            if number and not device.newPage():
                raise PaperError(f"Page {page.number} of {page.count} was not taken by the printer.")
            paint_page(painter, page, dots_per_mm=device.logicalDpiX() / MM_PER_INCH)
            yield number + 1
    finally:
        painter.end()


def write_pdf(report: Report, path: Path, paper: Paper, *, style: PaperStyle = STYLE) -> int:
    """Write a report as PDF and return the number of its pages; a file that is there is replaced.

    It is written beside its place first, so that nothing is ever left half written.

    Raises:
        PaperError: the path cannot be written.
    """
    title = " – ".join(part for part in (report.title, report.subtitle) if part)
    pages = laid_out(report, paper, style=style)
    return write_pages(pages, path, paper, title=title, author=report.farm_name)


def write_pages(pages: Sequence[Page], path: Path, paper: Paper, *, title: str, author: str) -> int:
    """Write finished pages as PDF as `write_pdf` does, and return how many.

    Raises:
        PaperError: the path cannot be written.
    """
    return sum(1 for _ in writing_steps(pages, path, paper, title=title, author=author))


def writing_steps(
    pages: Sequence[Page], path: Path, paper: Paper, *, title: str, author: str
) -> Generator[int]:
    """Write finished pages one by one, and yield the number written after each; raises as `write_pages` does.

    The file is there when the steps have come to their end; whoever closes them before leaves nothing.
    """
    with beside(path, ends_with=_PDF_END) as part:
        yield from painting_steps(pages, _pdf_writer(part, title=title, author=author), paper)


def _pdf_writer(path: Path, *, title: str, author: str) -> QPdfWriter:
    writer = QPdfWriter(str(path))
    writer.setResolution(_PDF_DPI)
    writer.setTitle(title)
    writer.setAuthor(author)
    writer.setCreator(CREATOR)
    return writer


def page_image(page: Page, *, dpi: float) -> QImage:
    """Return a picture of one page on white."""
    dots = dpi / MM_PER_INCH
    image = QImage(
        math.ceil(page.paper.width_mm * dots),
        math.ceil(page.paper.height_mm * dots),
        QImage.Format.Format_RGB32,
    )
    image.fill(Qt.GlobalColor.white)
    painter = QPainter(image)
    try:
        paint_page(painter, page, dots_per_mm=dots)
    finally:
        painter.end()
    return image


def page_images(report: Report, paper: Paper, *, dpi: float, style: PaperStyle = STYLE) -> tuple[QImage, ...]:
    """Return pictures of all pages, drawn by the same marks as the paper."""
    return tuple(page_image(page, dpi=dpi) for page in laid_out(report, paper, style=style))
