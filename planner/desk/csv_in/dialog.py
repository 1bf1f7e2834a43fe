"""The dialog that brings a table in: what each column is on the left, what would come in on the right.

Nothing changes before the button is pressed; then it is one step that can be undone. Must know nothing of
files or of how rows are read.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator
from functools import partial
from threading import Event
from typing import Final

from PySide6.QtCore import QLocale, QSize, Qt
from PySide6.QtWidgets import (
    QAbstractItemView,
    QApplication,
    QCheckBox,
    QComboBox,
    QDialog,
    QDialogButtonBox,
    QFormLayout,
    QHBoxLayout,
    QLabel,
    QLineEdit,
    QPushButton,
    QScrollArea,
    QTableView,
    QVBoxLayout,
    QWidget,
)

from planner.desk.csv_in.values import BATCHES, READINGS, TableLike, TableLook, TableWish
from planner.desk.jobs import Job
from planner.desk.plan.kit import Beside, Scrolling, Working, show_headings
from planner.desk.rows import Column, Row, RowsModel
from planner.desk.say import tr
from planner.desk.theme import Theme
from planner.farm.changes import ChangeSet

_NOTHING: Final = ""
_SHARE_OF_SCREEN: Final = 0.9
_AT_ONCE_MS: Final = 250
"""What is looked at within so many milliseconds is shown without a word of waiting."""
_HEADING_LETTERS: Final = 22
_TIP_LETTERS: Final = 300
_SHARES: Final = (2, 4)


ROLE_WORDS: Final = {
    "ph": "pH",
    "water_c": "water temperature",
    "air_c": "air temperature",
    "ec": "conductivity (EC)",
    "tds": "dissolved solids (TDS)",
    "tan": "ammonia (TAN)",
    "alkalinity": "alkalinity (KH)",
    "oxygen": "dissolved oxygen",
    "p": "phosphorus",
    "k": "potassium",
    "ca": "calcium",
    "mg": "magnesium",
    "fe": "iron",
    "top_up": "water topped up",
    "meter_factor": "factor of the meter",
    "quantity": "what was read",
    "value": "the value read",
}
"""Words for what a column of readings may be, where the short word of a mapping says too little."""


class ColumnChoice(QWidget):
    """What one column is, and in which unit."""

    def __init__(self, heading: str, changed: Callable[[], None], parent: QWidget) -> None:
        super().__init__(parent)
        self.heading = heading
        self.role = QComboBox(self)
        self.role.setAccessibleName(tr("What {heading} is", heading=heading))
        self.unit = QComboBox(self)
        self.unit.setAccessibleName(tr("Unit of {heading}", heading=heading))
        row = QHBoxLayout(self)
        row.setContentsMargins(0, 0, 0, 0)
        row.addWidget(self.role, 1)
        row.addWidget(self.unit)
        self.role.currentIndexChanged.connect(changed)
        self.unit.currentIndexChanged.connect(changed)

    def offer_roles(self, roles: tuple[str, ...], chosen: str) -> None:
        """Offer what the column may be, with one of them chosen."""
        self.role.blockSignals(True)
        self.role.clear()
        self.role.addItem(tr("leave out"), _NOTHING)
        for role in roles:
            if role != "ignore":
                self.role.addItem(tr(ROLE_WORDS.get(role, role.replace("_", " "))), role)
        self.role.setCurrentIndex(max(self.role.findData(chosen), 0))
        self.role.blockSignals(False)

    def offer_units(self, units: tuple[str, ...], said: str) -> None:
        """Offer units; what was chosen stays, else what the heading says, else nothing is taken on trust."""
        known = tuple(self.unit.itemData(at) for at in range(self.unit.count()) if self.unit.itemData(at))
        if units and known == units:
            return
        self.unit.blockSignals(True)
        self.unit.clear()
        if len(units) > 1:
            self.unit.addItem(tr("unit?"), _NOTHING)
        for unit in units:
            self.unit.addItem(unit, unit)
        self.unit.setCurrentIndex(max(self.unit.findData(said), 0))
        self.unit.blockSignals(False)
        self.unit.setVisible(bool(units))


class TableDialog(QDialog):
    """Columns on the left, faults on the right, and one button that brings the rows in."""

    def __init__(
        self, table: TableLike, act: Callable[[ChangeSet], bool], theme: Theme, parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self.setWindowTitle(tr("Bring in a table"))
        self._table, self._act, self._theme = table, act, theme
        self.found = TableLook()
        self._job: Job | None = None
        self._make_wishes()
        self._make_faults()
        self._on_what()
        self._lay_out()

    def _make_wishes(self) -> None:
        self.what = QComboBox(self)
        self.what.addItem(tr("Readings of the water"), READINGS)
        self.what.addItem(tr("Batches"), BATCHES)
        readings, batches = (len(self._table.guessed(what)) for what in (READINGS, BATCHES))
        self.what.setCurrentIndex(int(batches > readings))
        self.loop = QComboBox(self)
        self.loop.setSizeAdjustPolicy(QComboBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon)
        for name in self._table.loops:
            self.loop.addItem(name, name)
        self.factor = QLineEdit(self)
        self.factor.setPlaceholderText(tr("ppm per µS/cm, 0.3 to 1"))
        self.decimal = self._choice(
            (tr("as the table shows"), _NOTHING), (tr("7.2"), "point"), (tr("7,2"), "comma")
        )
        self.order = self._choice(
            (tr("as the table shows"), _NOTHING),
            (tr("day first"), "day-first"),
            (tr("month first"), "month-first"),
        )
        self.columns = tuple(ColumnChoice(heading, self._look, self) for heading in self._table.headings)
        self.go = QPushButton(tr("Bring in"), self)
        self.go.setDefault(True)
        self.what.currentIndexChanged.connect(self._on_what)
        self.factor.textChanged.connect(self._look)
        for box in (self.loop, self.decimal, self.order):
            box.currentIndexChanged.connect(self._look)

    def _choice(self, *entries: tuple[str, str]) -> QComboBox:
        box = QComboBox(self)
        for words, value in entries:
            box.addItem(words, value)
        return box

    def _make_faults(self) -> None:
        self.said = QLabel(self)
        self.said.setWordWrap(True)
        self.said.setTextFormat(Qt.TextFormat.PlainText)
        headings = (tr("Line"), tr("Column"), tr("Why it cannot be taken"))
        columns = tuple(Column(title=title, numeric=at == 0) for at, title in enumerate(headings))
        self.model = RowsModel(columns, self)
        view = self.faults = QTableView(self)
        view.setModel(self.model)
        view.setAccessibleName(tr("Rows that cannot be taken"))
        view.setSelectionBehavior(QAbstractItemView.SelectionBehavior.SelectRows)
        view.setAlternatingRowColors(True)
        view.setShowGrid(False)
        view.setTabKeyNavigation(False)
        view.setWordWrap(True)
        view.verticalHeader().hide()
        view.verticalHeader().setDefaultSectionSize(self._theme.metrics.row)
        view.horizontalHeader().setStretchLastSection(True)
        self.working = Working(self._theme, self)
        self.working.stopped.connect(self._give_up)
        self.finished.connect(self._give_up)
        self.only_good = QCheckBox(tr("Bring in the good rows and leave these out"), self)
        self.only_good.toggled.connect(self._show_found)

    def _lay_out(self) -> None:
        metrics = self._theme.metrics
        form = QFormLayout()
        form.addRow(tr("The rows are"), self.what)
        form.addRow(tr("Of the loop"), self.loop)
        form.addRow(tr("Meter's factor"), self.factor)
        form.addRow(tr("Numbers"), self.decimal)
        form.addRow(tr("Dates"), self.order)
        for column in self.columns:
            name = QLabel(_shortened(column.heading), self)
            name.setToolTip(_shortened(column.heading, _TIP_LETTERS))
            name.setTextFormat(Qt.TextFormat.PlainText)
            name.setBuddy(column.role)
            form.addRow(name, column)
        inside = QWidget(self)
        inside.setLayout(form)
        left = QScrollArea(self)
        left.setWidgetResizable(True)
        left.setWidget(inside)
        left.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        left.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        left.setMinimumWidth(inside.sizeHint().width() + metrics.wide * 2)
        pane = QWidget(self)
        right = QVBoxLayout(pane)
        right.setContentsMargins(metrics.gap, 0, 0, 0)
        right.addWidget(self.said)
        right.addWidget(self.working)
        right.addWidget(self.faults, 1)
        right.addWidget(self.only_good)
        both = Beside(self._theme, self)
        both.addWidget(left)
        both.addWidget(pane)
        both.setStretchFactor(1, 1)
        whole = QVBoxLayout(self)
        whole.setContentsMargins(*(metrics.margin,) * 4)
        whole.addWidget(Scrolling(both, self._theme, self), 1)
        whole.addWidget(self._buttons())
        wanted = QSize(metrics.side_width * 3 + metrics.field_width, metrics.row * 18)
        self.resize(wanted.boundedTo(self.screen().availableGeometry().size() * _SHARE_OF_SCREEN))
        for at, share in enumerate(_SHARES):
            self.faults.setColumnWidth(at, metrics.row * share)
        show_headings(self.faults)

    def _buttons(self) -> QDialogButtonBox:
        box = QDialogButtonBox(self)
        box.addButton(self.go, QDialogButtonBox.ButtonRole.AcceptRole)
        box.addButton(QPushButton(tr("Cancel"), box), QDialogButtonBox.ButtonRole.RejectRole)
        box.accepted.connect(self._on_go)
        box.rejected.connect(self.reject)
        return box

    @property
    def wish(self) -> TableWish:
        """What is chosen."""
        number, is_number = QLocale().toDouble(self.factor.text())
        return TableWish(
            what=str(self.what.currentData()),
            roles={c.heading: str(c.role.currentData()) for c in self.columns if c.role.currentData()},
            units={c.heading: str(c.unit.currentData()) for c in self.columns if c.unit.currentData()},
            loop=str(self.loop.currentData() or _NOTHING),
            meter_factor=number if is_number else None,
            decimal=str(self.decimal.currentData()),
            day_order=str(self.order.currentData()),
        )

    def _on_what(self, _at: int = 0) -> None:
        what = str(self.what.currentData())
        guessed = self._table.guessed(what)
        for column in self.columns:
            column.offer_roles(self._table.choices(what), guessed.get(column.heading, _NOTHING))
        for box in (self.loop, self.factor):
            box.setEnabled(what == READINGS)
        self._look()

    def _look(self, _change: object = None) -> None:
        """Look at the table again with what is chosen now."""
        for column in self.columns:
            role = str(column.role.currentData() or _NOTHING)
            is_reading = self.what.currentData() == READINGS
            units = self._table.units_of(role) if is_reading else ()
            column.offer_units(units, self._table.unit_said(column.heading, role) if units else _NOTHING)
        self._give_up()
        self.found = TableLook()
        self.go.setEnabled(False)
        job = self._job = Job(partial(_looked, self._table, self.wish), "table", self)
        job.told.connect(self._on_step)
        job.settle(_AT_ONCE_MS)
        if self._job is job:
            self.model.set_rows(())
            self.only_good.hide()
            self.said.clear()
            self._show_step(0)

    def _show_step(self, rows: int) -> None:
        self.working.show_step(tr("Looking at the rows…"), done=rows, total=self._table.rows)

    def _on_step(self, step: int | TableLook) -> None:
        if isinstance(step, int):
            self._show_step(step)
        else:
            self._end_job()
            self._take(step)

    def _end_job(self) -> None:
        job, self._job = self._job, None
        self.working.hide()
        if job is not None:
            job.deleteLater()

    def _give_up(self, *_anything: object) -> None:
        """Give up looking at the rows."""
        if self._job is not None:
            self._job.stop()
            self._job = None
            self.working.hide()
            self.said.setText(
                tr("The rows were not looked at to the end. Change what a column is, or cancel.")
            )

    def _take(self, found: TableLook) -> None:
        """Show what would come in."""
        self.found = found
        self.model.set_rows(
            tuple(
                Row(id=str(at), texts=(str(line), column, reason), sort=(line, column, reason))
                for at, (line, column, _, reason) in enumerate(self.found.faults)
            )
        )
        self._show_found()

    def _show_found(self, _on: bool = False) -> None:
        found = self.found
        self.only_good.setVisible(bool(found.faults))
        self.said.setText(_words(found, self._table.rows))
        free = not found.faults or self.only_good.isChecked()
        self.go.setEnabled(not found.trouble and found.count > 0 and free)

    def _on_go(self) -> None:
        if self.found.change_set is None:
            return
        self.said.setText(tr("Bringing in {count}…", count=self.found.count))
        self.said.repaint()
        QApplication.setOverrideCursor(Qt.CursorShape.WaitCursor)
        try:
            taken = self._act(self.found.change_set)
        finally:
            QApplication.restoreOverrideCursor()
        self._show_found()
        if taken:
            self.accept()


def _looked(table: TableLike, wish: TableWish, stopped: Event) -> Iterator[int | TableLook]:
    """Yield how many rows are looked at, and at the end what would come in."""
    for step in table.look_steps(wish):
        if stopped.is_set():
            return
        yield step


def _shortened(heading: str, letters: int = _HEADING_LETTERS) -> str:
    """Return a heading short enough to stand beside its boxes."""
    line = " ".join(heading.split())
    return line if len(line) <= letters else f"{line[: letters - 1].rstrip()}…"


def _words(found: TableLook, rows: int) -> str:
    """Return in words what would come in."""
    if found.trouble:
        return found.trouble
    lines = [tr("{rows} rows read, {count} would come in.", rows=rows, count=found.count)]
    if found.known:
        lines.append(tr("{known} are on the farm already and are passed over.", known=found.known))
    if found.faults:
        lines.append(tr("{faults} faults: nothing comes in until they are mended.", faults=len(found.faults)))
    return "\n".join((*lines, *found.notes))
