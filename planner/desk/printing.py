"""Shows a document as it will be printed, and sends it to a printer or into a PDF file.

Preview, printer and file draw the same marks. What the sheets hold is made elsewhere and handed in.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from pathlib import Path
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
from planner.desk.plan.kit import Filled, scrolled
from planner.desk.print_form import FormNeeds, PrintForm, PrintWish
from planner.desk.say import tr
from planner.desk.theme import Theme
from planner.desk.wish_form import WishForm, WishLike

PREVIEW_DPI: Final = 60.0
"""Fine enough to read the large type on a screen, coarse enough to be there at once."""
MOST_SHOWN: Final = 24
"""Pages that are shown; more of them would keep the hand waiting."""

_WIDTH, _HEIGHT = 1100, 660


class SheetsLike(Protocol):
    """Sheets that can be looked at, printed and written."""

    @property
    def count(self) -> int:
        """How many pages there are."""

    def pictures(self, *, dpi: float, most: int) -> tuple[QImage, ...]:
        """Return pictures of the first pages, at most so many."""

    def paint(self, device: QPagedPaintDevice) -> int:
        """Draw all pages on a printer."""

    def write_pdf(self, path: Path) -> int:
        """Write all pages as PDF."""


@dataclass(frozen=True, slots=True, kw_only=True)
class PreviewNeeds:
    """What a preview is made from; `make` returns the sheets of a wish, `troubles` are what it may raise."""

    title: str
    make: Callable[[Any], SheetsLike]
    troubles: tuple[type[Exception], ...]
    folder: Path


@dataclass(frozen=True, slots=True, kw_only=True)
class PrintNeeds:
    """What the print dialog is made from; `make` returns the sheets, `troubles` are what it may raise."""

    make: Callable[[PrintWish], SheetsLike]
    form: FormNeeds
    troubles: tuple[type[Exception], ...]
    folder: Path


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
        column.addWidget(scrolled(Filled(self.wishes, parent), parent), 1)
        column.addWidget(self.count)
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

    def show_pages(self, *_anything: Any) -> None:
        """Show the pages for the wishes as they stand; wrong ones are said beside their field."""
        wish = self.wishes.wish()
        for button in (self.pdf, self.print):
            button.setEnabled(wish is not None)
        if wish is None:
            return
        try:
            self._sheets = self._needs.make(wish)
            pictures = self._sheets.pictures(dpi=PREVIEW_DPI * self.devicePixelRatioF(), most=MOST_SHOWN)
        except self._needs.troubles as trouble:
            self.count.setText(f"⚠ {trouble}")
            for button in (self.pdf, self.print):
                button.setEnabled(False)
            return
        if self._wish is None or wish.document != self._wish.document:
            self.area.verticalScrollBar().setValue(0)
        self._wish = wish
        self._show(pictures, self._sheets.count, wish.paper)

    def _show(self, pictures: tuple[QImage, ...], count: int, paper: str) -> None:
        for page in self.pages:
            self._column.removeWidget(page)
            page.deleteLater()
        self.pages = tuple(self._page(picture, at, count) for at, picture in enumerate(pictures, 1))
        one, many = tr("1 page on {paper}", paper=paper), tr("{n} pages on {paper}", n=count, paper=paper)
        words = one if count == 1 else many
        if count > len(pictures):
            words += tr("; the first {shown} are shown", shown=len(pictures))
        self.count.setText(words)

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
        """Write the pages that are shown into a file."""
        if self._sheets is None:
            return
        try:
            count = self._sheets.write_pdf(Path(name))
        except self._needs.troubles as trouble:
            self.count.setText(tr("⚠ {why} Choose another folder.", why=trouble))
            return
        self.printed.emit(self._wish, tr("{count} pages were written to {name}.", count=count, name=name))
        self.accept()

    def _on_print(self, _checked: bool) -> None:
        self._printer = QPrinter(QPrinter.PrinterMode.HighResolution)
        dialog = QPrintDialog(self._printer, self)
        dialog.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        dialog.setWindowModality(Qt.WindowModality.WindowModal)
        dialog.accepted.connect(self.print_pages)
        dialog.show()

    def print_pages(self) -> None:
        """Send the pages that are shown to the printer that was chosen."""
        if self._sheets is None or self._printer is None:
            return
        try:
            count = self._sheets.paint(self._printer)
        except self._needs.troubles as trouble:
            words = tr("⚠ {why} See that the printer is on and has paper, or save as PDF.", why=trouble)
            self.count.setText(words)
            return
        self.printed.emit(self._wish, tr("{count} pages were sent to the printer.", count=count))
        self.accept()


class PrintDialog(PreviewDialog):
    """All documents, with how the chosen one is wanted."""

    def __init__(self, needs: PrintNeeds, theme: Theme, parent: QWidget | None = None) -> None:
        self.form = PrintForm(needs.form, theme)
        preview = PreviewNeeds(
            title=tr("Print"), make=needs.make, troubles=needs.troubles, folder=needs.folder
        )
        super().__init__(preview, self.form, theme, parent)
