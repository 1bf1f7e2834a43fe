"""Shows the seeding calendar as it will be printed, and sends it to a printer or into a PDF file.

Preview, printer and file draw the same marks. What the sheets hold is made elsewhere and handed in.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from datetime import date
from pathlib import Path
from typing import Any, Final, Protocol

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QImage, QPagedPaintDevice, QPixmap
from PySide6.QtPrintSupport import QPrintDialog, QPrinter
from PySide6.QtWidgets import (
    QComboBox,
    QDialog,
    QFileDialog,
    QFrame,
    QHBoxLayout,
    QLabel,
    QPushButton,
    QScrollArea,
    QVBoxLayout,
    QWidget,
)

from planner.desk.forms.editors import DayEditor, EditorNeeds, LineEditor
from planner.desk.forms.form import FieldRow
from planner.desk.forms.reading import UnreadError
from planner.desk.say import tr
from planner.desk.theme import Theme
from planner.farm.fields import FieldKind, FieldSpec

PREVIEW_DPI: Final = 60.0
"""Fine enough to read the large type on a screen, coarse enough to be there at once."""

_WIDTH, _HEIGHT = 1100, 660


class SheetsLike(Protocol):
    """Sheets that can be looked at, printed and written."""

    def pictures(self, *, dpi: float) -> tuple[QImage, ...]:
        """Return pictures of all pages."""

    def paint(self, device: QPagedPaintDevice) -> int:
        """Draw all pages on a printer."""

    def write_pdf(self, path: Path) -> int:
        """Write all pages as PDF."""


@dataclass(frozen=True, slots=True, kw_only=True)
class PrintWish:
    """Which calendar is wanted: the name of the paper, the first day, the number of weeks."""

    paper: str
    from_on: date
    weeks: int


@dataclass(frozen=True, slots=True, kw_only=True)
class PrintNeeds:
    """What the dialog is made from; `make` returns the sheets, `troubles` are what it may raise."""

    make: Callable[[PrintWish], SheetsLike]
    papers: tuple[str, ...]
    wish: PrintWish
    most_weeks: int
    troubles: tuple[type[Exception], ...]
    today: date
    folder: Path
    file_name: str


class PrintDialog(QDialog):
    """Wishes on the left, pages on the right."""

    printed = Signal(object, str)

    def __init__(self, needs: PrintNeeds, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self.setWindowTitle(tr("Print seeding calendar"))
        self._needs, self._theme = needs, theme
        self._sheets: SheetsLike | None = None
        self._wish = needs.wish
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
        left.setFixedWidth(metrics.side_width)
        column = QVBoxLayout(left)
        column.setContentsMargins(*(metrics.wide,) * 4)
        column.setSpacing(metrics.margin)
        self._fill(column, left)
        across.addWidget(left)
        across.addWidget(self._preview(), 1)
        self.resize(_WIDTH, _HEIGHT)

    def _fill(self, column: QVBoxLayout, parent: QWidget) -> None:
        self.paper = QComboBox(parent)
        self.paper.addItems(self._needs.papers)
        self.paper.setCurrentText(self._needs.wish.paper)
        self.paper.setAccessibleName(tr("Paper"))
        label = QLabel(tr("&Paper"), parent)
        label.setBuddy(self.paper)
        self.from_on = self._row("from_on", _from_spec(), self._needs.wish.from_on, parent)
        self.weeks = self._row(
            "calendar_weeks", _weeks_spec(self._needs.most_weeks), self._needs.wish.weeks, parent
        )
        self.count = QLabel(parent)
        self.count.setWordWrap(True)
        self.pdf = QPushButton(tr("Save as P&DF…"), parent)
        self.pdf.setDefault(True)
        self.print = QPushButton(tr("P&rint…"), parent)
        self.stop = QPushButton(tr("Close"), parent)
        column.addWidget(label)
        for part in (self.paper, self.from_on, self.weeks, self.count):
            column.addWidget(part)
        column.addStretch(1)
        for button in (self.pdf, self.print, self.stop):
            button.setAccessibleName(button.text().replace("&", ""))
            column.addWidget(button)

    def _row(self, field: str, spec: FieldSpec, value: Any, parent: QWidget) -> FieldRow:
        needs = EditorNeeds(field=field, spec=spec, theme=self._theme, today=self._needs.today)
        editor = (DayEditor if spec.kind is FieldKind.DAY else LineEditor)(needs, parent)
        editor.show_value(value)
        row = FieldRow(editor, spec, self._theme, parent)
        row.show_hint()
        return row

    def _preview(self) -> QScrollArea:
        area = QScrollArea(self)
        area.setWidgetResizable(True)
        area.setFrameShape(QFrame.Shape.NoFrame)
        area.setAccessibleName(tr("Pages as they will be printed"))
        inside = QWidget(area)
        self._column = QVBoxLayout(inside)
        self._column.setContentsMargins(*(self._theme.metrics.wide,) * 4)
        self._column.setSpacing(self._theme.metrics.wide)
        self._column.setAlignment(Qt.AlignmentFlag.AlignHCenter | Qt.AlignmentFlag.AlignTop)
        area.setWidget(inside)
        return area

    def _connect(self) -> None:
        self.paper.activated.connect(self.show_pages)
        self.from_on.editor.touched.connect(self.show_pages)
        self.weeks.editor.touched.connect(self.show_pages)
        self.pdf.clicked.connect(self._on_pdf)
        self.print.clicked.connect(self._on_print)
        self.stop.clicked.connect(self.reject)

    def show_pages(self, *_anything: Any) -> None:
        """Show the pages for the wishes as they stand; wrong ones are said beside their field."""
        wish = self._read()
        for button in (self.pdf, self.print):
            button.setEnabled(wish is not None)
        if wish is None:
            return
        try:
            self._sheets = self._needs.make(wish)
            pictures = self._sheets.pictures(dpi=PREVIEW_DPI * self.devicePixelRatioF())
        except self._needs.troubles as trouble:
            self.count.setText(f"⚠ {trouble}")
            return
        self._wish = wish
        self._show(pictures)

    def _read(self) -> PrintWish | None:
        values: dict[str, Any] = {}
        for row in (self.from_on, self.weeks):
            spec, field = row.editor.needs.spec, row.editor.needs.field
            try:
                value = row.editor.read()
            except UnreadError as refused:
                row.show_fault(refused.fault.message)
                continue
            if spec.low is not None and spec.high is not None and not spec.low <= value <= spec.high:
                row.show_fault(
                    tr(
                        "Weeks are {value}; they must lie within {low} to {high}.",
                        value=value,
                        low=spec.low,
                        high=spec.high,
                    )
                )
                continue
            row.show_hint()
            values[field] = value
        if len(values) < 2:
            return None
        return PrintWish(
            paper=self.paper.currentText(), from_on=values["from_on"], weeks=values["calendar_weeks"]
        )

    def _show(self, pictures: tuple[QImage, ...]) -> None:
        for page in self.pages:
            self._column.removeWidget(page)
            page.deleteLater()
        self.pages = tuple(self._page(picture, at, len(pictures)) for at, picture in enumerate(pictures, 1))
        self.count.setText(tr("{count} pages, {paper}, lying", count=len(pictures), paper=self._wish.paper))

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
        dialog.selectFile(self._needs.file_name)
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


def _from_spec() -> FieldSpec:
    return FieldSpec(kind=FieldKind.DAY, meaning=tr("the week that holds this day comes first"))


def _weeks_spec(most: int) -> FieldSpec:
    return FieldSpec(kind=FieldKind.WHOLE, low=1, high=most, unit="weeks")
