"""Shows a document as it will be printed, and sends it to a printer or into a PDF file.

Preview, printer and file draw the same marks. What the sheets hold is made elsewhere and handed in.
"""

from __future__ import annotations

from collections.abc import Callable, Generator, Iterator
from dataclasses import dataclass
from functools import partial
from pathlib import Path
from threading import Event
from typing import Any, Final, Protocol

from PySide6.QtCore import QSize, Qt, Signal
from PySide6.QtGui import QImage, QPagedPaintDevice, QPixmap
from PySide6.QtPrintSupport import QPrintDialog, QPrinter
from PySide6.QtWidgets import (
    QDialog,
    QFileDialog,
    QFrame,
    QHBoxLayout,
    QLabel,
    QPushButton,
    QScrollArea,
    QStyle,
    QVBoxLayout,
    QWidget,
)

from planner.desk.fitting import open_sized
from planner.desk.jobs import Job, Slices
from planner.desk.plan.kit import Filled, Working, scrolled
from planner.desk.print_form import FormNeeds, PrintForm, PrintWish
from planner.desk.say import tr
from planner.desk.theme import Theme
from planner.desk.wish_form import WishForm, WishLike
from planner.paper.errors import GivenUpError

PREVIEW_DPI: Final = 60.0
"""Fine enough to read the large type on a screen, coarse enough to be there at once."""
MOST_SHOWN: Final = 24
"""Pages that are shown; more of them would keep the hand waiting."""

_WIDTH, _HEIGHT = 1100, 660
_AT_ONCE_MS: Final = 250
"""What is set within so many milliseconds is shown without a word of waiting."""


class SheetsLike(Protocol):
    """Sheets that can be looked at, printed and written."""

    @property
    def count(self) -> int:
        """How many pages there are."""

    def pictures(self, *, dpi: float, most: int) -> tuple[QImage, ...]:
        """Return pictures of the first pages, at most so many."""

    def painting(self, device: QPagedPaintDevice) -> Generator[int]:
        """Draw all pages on a printer; yield how many are drawn."""

    def writing(self, path: Path) -> Generator[int]:
        """Write all pages as PDF; yield how many are written."""


@dataclass(frozen=True, slots=True, kw_only=True)
class PreviewNeeds:
    """What a preview is made from.

    `make` returns the sheets of a wish and may give up by `GivenUpError` once the event is set; `troubles`
    are what it may raise.
    """

    title: str
    make: Callable[[Any, Event], SheetsLike]
    troubles: tuple[type[Exception], ...]
    folder: Path


@dataclass(frozen=True, slots=True, kw_only=True)
class PrintNeeds:
    """What the print dialog is made from; `make` returns the sheets, `troubles` are what it may raise."""

    make: Callable[[PrintWish, Event], SheetsLike]
    form: FormNeeds
    troubles: tuple[type[Exception], ...]
    folder: Path


@dataclass(frozen=True, slots=True, kw_only=True)
class _Way:
    """What is said while pages are written or printed, at the end, and when it is broken off."""

    words: str
    total: int
    done: str
    remedy: str


class PreviewDialog(QDialog):
    """Wishes on the left, pages on the right."""

    printed = Signal(object, str)

    def __init__(
        self, needs: PreviewNeeds, form: WishForm, theme: Theme, parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self.setWindowTitle(needs.title)
        self._needs, self._theme = needs, theme
        self.wishes = form
        self._sheets: SheetsLike | None = None
        self._wish: WishLike | None = None
        self._printer: QPrinter | None = None
        self._job: Job | None = None
        self._slices: Slices | None = None
        self.pages: tuple[QLabel, ...] = ()
        self._build()
        self._connect()
        self.show_pages()

    def _build(self) -> None:
        metrics = self._theme.metrics
        across = QHBoxLayout(self)
        across.setContentsMargins(0, 0, 0, 0)
        across.setSpacing(0)
        left = QWidget(self)
        bar = self.style().pixelMetric(QStyle.PixelMetric.PM_ScrollBarExtent)
        needed = self.wishes.minimumSizeHint().width() + 2 * metrics.wide + bar
        left.setFixedWidth(max(metrics.side_width, needed))
        column = QVBoxLayout(left)
        column.setContentsMargins(*(metrics.wide,) * 4)
        column.setSpacing(metrics.margin)
        self._fill(column, left)
        across.addWidget(left)
        across.addWidget(self._preview(), 1)
        open_sized(self, QSize(_WIDTH, _HEIGHT))

    def _fill(self, column: QVBoxLayout, parent: QWidget) -> None:
        self.count = QLabel(parent)
        self.count.setWordWrap(True)
        self.pdf = QPushButton(tr("Save as P&DF…"), parent)
        self.pdf.setDefault(True)
        self.print = QPushButton(tr("P&rint…"), parent)
        self.stop = QPushButton(tr("Close"), parent)
        self.working = Working(self._theme, parent)
        column.addWidget(scrolled(Filled(self.wishes, parent), parent), 1)
        column.addWidget(self.count)
        column.addWidget(self.working)
        for button in (self.pdf, self.print, self.stop):
            button.setAccessibleName(button.text().replace("&", ""))
            column.addWidget(button)

    def _preview(self) -> QScrollArea:
        self.area = QScrollArea(self)
        self.area.setWidgetResizable(True)
        self.area.setFrameShape(QFrame.Shape.NoFrame)
        self.area.setAccessibleName(tr("Pages as they will be printed"))
        inside = QWidget(self.area)
        self._column = QVBoxLayout(inside)
        self._column.setContentsMargins(*(self._theme.metrics.wide,) * 4)
        self._column.setSpacing(self._theme.metrics.wide)
        self._column.setAlignment(Qt.AlignmentFlag.AlignHCenter | Qt.AlignmentFlag.AlignTop)
        self.area.setWidget(inside)
        return self.area

    def _connect(self) -> None:
        self.wishes.changed.connect(self.show_pages)
        self.pdf.clicked.connect(self._on_pdf)
        self.print.clicked.connect(self._on_print)
        self.stop.clicked.connect(self.reject)
        self.working.stopped.connect(self.give_up)
        self.finished.connect(self.give_up)

    def show_pages(self, *_anything: Any) -> None:
        """Show the pages for the wishes as they stand; wrong ones are said beside their field."""
        self.give_up()
        wish = self.wishes.wish()
        self._allow(wish is not None)
        if wish is None:
            return
        self._sheets = None
        self.count.hide()
        job = self._job = Job(partial(_made, self._needs.make, wish), "sheets", self, self._on_not_made)
        job.told.connect(self._on_made)
        job.settle(_AT_ONCE_MS)
        if self._job is job:
            self._allow(False)
            self.working.show_step(tr("Setting the pages…"))

    def _allow(self, free: bool) -> None:
        """Let the sheets be printed, or not, and say what there is to say of them."""
        for button in (self.pdf, self.print):
            button.setEnabled(free)
        self.wishes.setEnabled(self._slices is None)
        if free or self._slices is None:
            self.working.hide()

    def give_up(self, *_anything: Any) -> None:
        """Give up what is being set, written or printed; nothing half-written is left behind."""
        job, self._job = self._job, None
        slices, self._slices = self._slices, None
        if job is not None:
            job.stop()
            self._say(tr("The pages are not set. Change what is wished, or close."))
        if slices is not None:
            if self._printer is not None:
                self._printer.abort()
            slices.stop()
            self._say(tr("Stopped: nothing was kept."))
        self._allow(self._sheets is not None)

    def _say(self, words: str) -> None:
        self.count.setText(words)
        self.count.show()

    def _end_job(self) -> None:
        job, self._job = self._job, None
        if job is not None:
            job.deleteLater()

    def _on_not_made(self, fault: Exception) -> None:
        self._end_job()
        self._allow(False)
        if not isinstance(fault, self._needs.troubles):
            raise fault
        self._say(f"⚠ {fault}")

    def _on_made(self, made: tuple[WishLike, SheetsLike]) -> None:
        """Show the pages that are set."""
        self._end_job()
        wish, self._sheets = made
        pictures = self._sheets.pictures(dpi=PREVIEW_DPI * self.devicePixelRatioF(), most=MOST_SHOWN)
        if self._wish is None or wish.document != self._wish.document:
            self.area.verticalScrollBar().setValue(0)
        self._wish = wish
        self._show(pictures, self._sheets.count, wish.paper)
        self._allow(True)

    def _show(self, pictures: tuple[QImage, ...], count: int, paper: str) -> None:
        for page in self.pages:
            self._column.removeWidget(page)
            page.deleteLater()
        self.pages = tuple(self._page(picture, at, count) for at, picture in enumerate(pictures, 1))
        one, many = tr("1 page on {paper}", paper=paper), tr("{n} pages on {paper}", n=count, paper=paper)
        words = one if count == 1 else many
        if count > len(pictures):
            words += tr("; the first {shown} are shown", shown=len(pictures))
        self._say(words)

    def _page(self, picture: QImage, at: int, count: int) -> QLabel:
        page = QLabel(self)
        page.setFrameShape(QFrame.Shape.Box)
        pixmap = QPixmap.fromImage(picture)
        pixmap.setDevicePixelRatio(self.devicePixelRatioF())
        page.setPixmap(pixmap)
        page.setAccessibleName(tr("Page {at} of {count}", at=at, count=count))
        self._column.addWidget(page)
        return page

    def _on_pdf(self, _checked: bool) -> None:
        dialog = QFileDialog(self, tr("Save as PDF"), str(self._needs.folder), tr("PDF (*.pdf)"))
        dialog.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        dialog.setAcceptMode(QFileDialog.AcceptMode.AcceptSave)
        dialog.setDefaultSuffix("pdf")
        dialog.selectFile(f"{self._wish.document if self._wish else 'sheet'}.pdf")
        dialog.fileSelected.connect(self.write_pdf)
        dialog.open()

    def write_pdf(self, name: str) -> None:
        """Write the pages that are shown into a file, a few at a time; it is there when all are in it."""
        if self._sheets is not None:
            count, self._printer = self._sheets.count, None
            self._go_through(
                self._sheets.writing(Path(name)),
                tr("Writing the file…"),
                done=tr("{count} pages were written to {name}.", count=count, name=name),
                remedy=tr("⚠ {why} Choose another folder."),
            )

    def _go_through(self, steps: Generator[int], words: str, *, done: str, remedy: str) -> None:
        assert self._sheets is not None
        self._way = _Way(words=words, total=self._sheets.count, done=done, remedy=remedy)
        self._slices = Slices(steps, self)
        self._allow(False)
        self._slices.told.connect(self._on_page)
        self._slices.done.connect(self._on_all)
        self._slices.failed.connect(self._on_broken)

    def _on_page(self, done: int) -> None:
        self.count.hide()
        self.working.show_step(self._way.words, done=done, total=self._way.total)

    def _on_all(self) -> None:
        self._slices = None
        self.printed.emit(self._wish, self._way.done)
        self.accept()

    def _on_broken(self, fault: Exception) -> None:
        self._slices = None
        self._allow(True)
        if not isinstance(fault, self._needs.troubles):
            raise fault
        self._say(self._way.remedy.format(why=fault))

    def _on_print(self, _checked: bool) -> None:
        self._printer = QPrinter(QPrinter.PrinterMode.HighResolution)
        dialog = QPrintDialog(self._printer, self)
        dialog.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        dialog.setWindowModality(Qt.WindowModality.WindowModal)
        dialog.accepted.connect(self.print_pages)
        dialog.show()

    def print_pages(self) -> None:
        """Send the pages that are shown to the printer that was chosen, a few at a time."""
        if self._sheets is not None and self._printer is not None:
            self._go_through(
                self._sheets.painting(self._printer),
                tr("Printing…"),
                done=tr("{count} pages were sent to the printer.", count=self._sheets.count),
                remedy=tr("⚠ {why} See that the printer is on and has paper, or save as PDF."),
            )


def _made(
    make: Callable[[Any, Event], SheetsLike], wish: WishLike, stopped: Event
) -> Iterator[tuple[WishLike, SheetsLike]]:
    """Yield the sheets of a wish beside it, nothing when they are wanted no longer."""
    try:
        yield wish, make(wish, stopped)
    except GivenUpError:
        return


class PrintDialog(PreviewDialog):
    """All documents, with how the chosen one is wanted."""

    def __init__(self, needs: PrintNeeds, theme: Theme, parent: QWidget | None = None) -> None:
        self.form = PrintForm(needs.form, theme)
        preview = PreviewNeeds(
            title=tr("Print"), make=needs.make, troubles=needs.troubles, folder=needs.folder
        )
        super().__init__(preview, self.form, theme, parent)
