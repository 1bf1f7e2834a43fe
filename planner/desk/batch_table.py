"""All batches as a table that can be sorted and searched: the lanes again, for keyboard and ear.

Rows are ready tuples made from the outlook; nothing is reckoned while painting.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass
from functools import partial
from typing import Any, Final

from PySide6.QtCore import QModelIndex, Qt, Signal
from PySide6.QtWidgets import (
    QAbstractItemView,
    QHBoxLayout,
    QHeaderView,
    QLabel,
    QLineEdit,
    QTableView,
    QVBoxLayout,
    QWidget,
)

from planner.desk.cell_ring import CellRing
from planner.desk.outlook import Outlook
from planner.desk.pages import Ask, Entered
from planner.desk.places_words import beds_by_batch
from planner.desk.rows import ID_ROLE, Column, Row, RowsModel, Sieve
from planner.desk.say import tr
from planner.desk.theme import Theme
from planner.desk.why.cells import CellAsking
from planner.desk.words import NONE, day_words, number_words
from planner.farm.crops import Batch, Phase, Stage
from planner.farm.fields import Id
from planner.forecast.values import Ruler
from planner.forecast.why.values import Subject, SubjectKind


def batch_columns() -> tuple[Column, ...]:
    """Return the columns of the table."""
    return (
        Column(title=tr("Batch")),
        Column(title=tr("Crop")),
        Column(title=tr("Sow on")),
        Column(title=tr("Move to bed")),
        Column(title=tr("First pick")),
        Column(title=tr("Last pick")),
        Column(title=tr("Plants"), numeric=True),
        Column(title=tr("Seeds"), numeric=True, tip=tr("Plants over germination and survival, rounded up")),
        Column(title=tr("Stands in")),
        Column(title=tr("Locked")),
    )


def batch_rows(outlook: Outlook) -> tuple[Row, ...]:
    """Return one row for each batch, in the order of the farm."""
    places = beds_by_batch(outlook.farm)
    words = _DayWords(outlook.forecast.ruler), _Counts()
    return tuple(
        _row(outlook, batch, row, words, places.get(batch.id, NONE))
        for row, batch in enumerate(outlook.farm.batches)
    )


class _DayWords(dict[int, str]):
    """Dates in words by day number, each worded once."""

    def __init__(self, ruler: Ruler) -> None:
        super().__init__()
        self._ruler = ruler

    def __missing__(self, day: int) -> str:
        """Word a day and keep the words."""
        words = self[day] = day_words(self._ruler.date_of(day))
        return words


class _Counts(dict[int, str]):
    """Whole numbers in words, each worded once."""

    def __missing__(self, count: int) -> str:
        """Word a number and keep the words."""
        words = self[count] = number_words(count, digits=0)
        return words


def _row(outlook: Outlook, batch: Batch, row: int, words: tuple[_DayWords, _Counts], stands: str) -> Row:
    day_of, count_of = words
    table = outlook.forecast.batches
    first, end = table.pick_days(row)
    days = (int(table.sow_day[row]), table.phase_days(row, Phase.BED)[0], first, end - 1)
    seeds = int(table.seeds[row])
    crop = outlook.crop_name(batch.crop)
    locked = tr("yes") if batch.locked else ""
    texts = (
        batch.code,
        f"{crop}, {batch.variety}" if batch.variety else crop,
        *(day_of[day] for day in days),
        count_of[batch.plants],
        count_of[seeds],
        stands,
        locked,
    )
    sort = (batch.code, crop, *days, batch.plants, seeds, stands, locked)
    return Row(id=batch.id, texts=texts, sort=sort, asks=_Asks(batch.id))


@dataclass(frozen=True, slots=True)
class _Asks(Sequence["Ask | None"]):
    """What each column of a batch can be asked; made when it is asked, for there are rows by the thousand."""

    batch: Id

    def __len__(self) -> int:
        return _COLUMNS

    def __getitem__(self, at: Any) -> Any:
        ask = _ASKED.get(range(_COLUMNS)[at])
        return None if ask is None else ask(about=self.batch)


_COLUMNS: Final = 10
_ASKED: Final[Mapping[int, Callable[..., Ask]]] = {
    2: partial(Entered, field="sow_on"),
    3: partial(Subject, kind=SubjectKind.STAGE_FIRST, stage=Stage.BED),
    4: partial(Subject, kind=SubjectKind.FIRST_PICK),
    5: partial(Subject, kind=SubjectKind.STAGE_LAST, stage=Stage.PICKING),
    6: partial(Entered, field="plants"),
    7: partial(Subject, kind=SubjectKind.SEEDS),
}
"""What is asked, by the number of the column."""


class BatchTable(QWidget):
    """A line to search with, and the table."""

    chosen = Signal(str)
    opened = Signal(str)

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.search = QLineEdit(self)
        self.search.setPlaceholderText(tr("Search batches: code, crop, bed, month…"))
        self.search.setAccessibleName(tr("Search batches"))
        self.search.setClearButtonEnabled(True)
        self.count = QLabel(self)
        self.model = RowsModel(batch_columns(), self)
        self.sorted = Sieve(self.model, self)
        self.view = QTableView(self)
        self._build(theme)
        self.search.textChanged.connect(self._on_search)
        self.view.selectionModel().currentRowChanged.connect(self._on_current)
        self.view.activated.connect(self._on_activated)

    def _build(self, theme: Theme) -> None:
        view, metrics = self.view, theme.metrics
        view.setModel(self.sorted)
        view.setAccessibleName(tr("Table of batches"))
        view.setSortingEnabled(True)
        view.sortByColumn(2, Qt.SortOrder.AscendingOrder)
        view.setSelectionBehavior(QAbstractItemView.SelectionBehavior.SelectRows)
        view.setSelectionMode(QAbstractItemView.SelectionMode.SingleSelection)
        view.setEditTriggers(QAbstractItemView.EditTrigger.NoEditTriggers)
        view.setAlternatingRowColors(True)
        view.setShowGrid(False)
        view.setTabKeyNavigation(False)
        view.setFrameShape(QTableView.Shape.NoFrame)
        view.verticalHeader().hide()
        view.verticalHeader().setDefaultSectionSize(metrics.row)
        view.horizontalHeader().setSectionResizeMode(QHeaderView.ResizeMode.Interactive)
        view.horizontalHeader().setStretchLastSection(True)
        view.horizontalHeader().setHighlightSections(False)
        view.setItemDelegate(CellRing(view))
        CellAsking(view)
        head = QHBoxLayout()
        head.setContentsMargins(metrics.gap, metrics.gap, metrics.gap, metrics.gap)
        head.setSpacing(metrics.margin)
        head.addWidget(self.search, 1)
        head.addWidget(self.count)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(0)
        column.addLayout(head)
        column.addWidget(view, 1)

    def show_outlook(self, outlook: Outlook) -> None:
        """Show the batches of an outlook; the row that was chosen stays so."""
        first = not self.model.rows
        current = self._current_id()
        self.model.set_rows(batch_rows(outlook))
        if first:
            self.view.resizeColumnsToContents()
        if current:
            self.choose(current)
        self._tell()

    def choose(self, batch: str) -> None:
        """Choose the row of a batch without telling anybody; another id clears the choice."""
        if batch == self._current_id():
            return
        at = self.model.row_of(batch)
        selection = self.view.selectionModel()
        blocked = selection.blockSignals(True)
        index = self.sorted.mapFromSource(self.model.index(at, 0)) if at >= 0 else QModelIndex()
        self.view.setCurrentIndex(index)
        if index.isValid():
            self.view.scrollTo(index)
        else:
            self.view.clearSelection()
        selection.blockSignals(blocked)
        self.view.viewport().update()

    def _current_id(self) -> str:
        return str(self.view.currentIndex().data(ID_ROLE) or "")

    def _on_search(self, text: str) -> None:
        self.sorted.show_only(text)
        self._tell()

    def _tell(self) -> None:
        shown, all_rows = self.sorted.rowCount(), len(self.model.rows)
        if shown == all_rows:
            self.count.setText(tr("{count} batches", count=all_rows))
        else:
            self.count.setText(tr("{shown} of {count} batches", shown=shown, count=all_rows))

    def _on_current(self, index: QModelIndex, _before: QModelIndex) -> None:
        found = index.data(ID_ROLE)
        if found:
            self.chosen.emit(found)

    def _on_activated(self, index: QModelIndex) -> None:
        found = index.data(ID_ROLE)
        if found:
            self.opened.emit(found)
