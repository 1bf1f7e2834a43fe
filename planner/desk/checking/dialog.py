"""Works the published cases again before the user's eyes: progress by area, then a table and details.

The work is done in small steps between paints, so the window never stands still. Must know nothing of
how a case is worked out.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator
from typing import Final

from PySide6.QtCore import QModelIndex, QPersistentModelIndex, QSize, QSortFilterProxyModel, Qt, QTimer
from PySide6.QtWidgets import (
    QAbstractItemView,
    QComboBox,
    QDialog,
    QHBoxLayout,
    QLabel,
    QLineEdit,
    QProgressBar,
    QSplitter,
    QTableView,
    QTextBrowser,
    QVBoxLayout,
    QWidget,
)

from planner.catalogue.errors import CatalogueError
from planner.desk.checking.rows import case_columns, case_page, case_rows, counts_words, verdict_words
from planner.desk.help import close_box
from planner.desk.rows import ID_ROLE, SORT_ROLE, Row, RowsModel
from planner.desk.say import tr
from planner.desk.services import CheckStep
from planner.desk.side import page_html
from planner.desk.theme import Theme
from planner.forecast.verify.run import CaseResult, Verdict

_ALL: Final = "all"
_SHARE_OF_SCREEN: Final = 0.92
_SHARES: Final = (7, 3, 10, 4, 3, 5, 3, 4)
"""How the width of the table is shared out over its columns."""


class CaseFilter(QSortFilterProxyModel):
    """Keeps the rows of one verdict that hold what is searched for."""

    def __init__(self, parent: QWidget) -> None:
        super().__init__(parent)
        self._verdict = _ALL
        self.setSortRole(SORT_ROLE)
        self.setFilterKeyColumn(-1)
        self.setFilterCaseSensitivity(Qt.CaseSensitivity.CaseInsensitive)

    def keep(self, verdict: str) -> None:
        """Keep the rows of a verdict, or all."""
        self.beginFilterChange()
        self._verdict = verdict
        self.endFilterChange()

    def filterAcceptsRow(self, row: int, parent: QModelIndex | QPersistentModelIndex) -> bool:
        model = self.sourceModel()
        assert isinstance(model, RowsModel)
        result: CaseResult = model.rows[row].payload
        if self._verdict not in (_ALL, result.verdict.value):
            return False
        return super().filterAcceptsRow(row, parent)


class CheckDialog(QDialog):
    """Counts at the top, the table of cases, and all about the chosen one."""

    def __init__(
        self, check: Callable[[], Iterator[CheckStep]], theme: Theme, parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self.setWindowTitle(tr("The arithmetic, checked against print"))
        self._theme = theme
        self._steps = check()
        self._titles: dict[str, str] = {}
        self._results: list[CaseResult] = []
        self.counts = QLabel(tr("Reading the cases…"), self)
        self.counts.setWordWrap(True)
        self.progress = QProgressBar(self)
        self.progress.setAccessibleName(tr("Cases worked out"))
        self.progress.setTextVisible(False)
        self.progress.setFixedHeight(theme.metrics.tight)
        self.model = RowsModel(case_columns(), self)
        self.shown = CaseFilter(self)
        self.shown.setSourceModel(self.model)
        self._make_head()
        self._make_table()
        self._make_details()
        self._lay_out()
        self._timer = QTimer(self)
        self._timer.timeout.connect(self._step)
        self._timer.start()

    def _make_head(self) -> None:
        self.search = QLineEdit(self)
        self.search.setPlaceholderText(tr("Search cases: area, source, words…"))
        self.search.setAccessibleName(tr("Search cases"))
        self.search.setClearButtonEnabled(True)
        self.search.textChanged.connect(self.shown.setFilterFixedString)
        self.verdict = QComboBox(self)
        self.verdict.setAccessibleName(tr("Which verdicts are shown"))
        self.verdict.addItem(tr("All"), _ALL)
        for each in (Verdict.OUTSIDE, Verdict.SHOWN, Verdict.WITHIN):
            self.verdict.addItem(verdict_words(each), each.value)
        self.verdict.currentIndexChanged.connect(self._on_verdict)

    def _make_table(self) -> None:
        view = self.table = QTableView(self)
        view.setModel(self.shown)
        view.setAccessibleName(tr("Published cases"))
        view.setSortingEnabled(True)
        view.sortByColumn(0, Qt.SortOrder.AscendingOrder)
        view.setSelectionBehavior(QAbstractItemView.SelectionBehavior.SelectRows)
        view.setSelectionMode(QAbstractItemView.SelectionMode.SingleSelection)
        view.setAlternatingRowColors(True)
        view.setShowGrid(False)
        view.setTabKeyNavigation(False)
        view.setWordWrap(False)
        view.verticalHeader().hide()
        view.verticalHeader().setDefaultSectionSize(self._theme.metrics.row)
        view.horizontalHeader().setStretchLastSection(True)
        view.selectionModel().currentRowChanged.connect(self._on_current)

    def _make_details(self) -> None:
        self.details = QTextBrowser(self)
        self.details.setAccessibleName(tr("About the chosen case"))
        self.details.setOpenLinks(False)
        self.details.setTabChangesFocus(True)
        self.details.setPlaceholderText(tr("Choose a case to see its inputs, figures and source."))

    def _lay_out(self) -> None:
        metrics = self._theme.metrics
        head = QHBoxLayout()
        head.addWidget(self.search, 1)
        head.addWidget(self.verdict)
        split = QSplitter(Qt.Orientation.Vertical, self)
        split.setChildrenCollapsible(False)
        split.addWidget(self.table)
        split.addWidget(self.details)
        split.setStretchFactor(0, 3)
        split.setStretchFactor(1, 2)
        column = QVBoxLayout(self)
        column.setContentsMargins(*(metrics.margin,) * 4)
        column.addWidget(self.counts)
        column.addWidget(self.progress)
        column.addLayout(head)
        column.addWidget(split, 1)
        column.addWidget(close_box(self))
        wanted = QSize(metrics.side_width * 4, metrics.row * 24)
        self.resize(wanted.boundedTo(self.screen().availableGeometry().size() * _SHARE_OF_SCREEN))
        unit = (self.width() - metrics.wide * 2) / sum(_SHARES)
        for at, share in enumerate(_SHARES):
            self.table.setColumnWidth(at, int(unit * share))

    def _step(self) -> None:
        """Work out a few more cases; with the last of an area its rows are shown."""
        try:
            step = next(self._steps, None)
        except CatalogueError as error:
            self._end()
            self.counts.setText(str(error))
            return
        if step is None:
            self._end()
            self._show_rows()
            self.counts.setText(counts_words(self._results))
            return
        if self._titles and step.area not in self._titles:
            self._show_rows()
        self._titles[step.area] = step.title
        self._results.extend(step.results)
        self.progress.setRange(0, step.cases)
        self.progress.setValue(len(self._results))
        self.counts.setText(
            tr("{area}: {done} of {cases}…", area=step.title, done=len(self._results), cases=step.cases)
        )

    def _end(self) -> None:
        self._timer.stop()
        self.progress.hide()

    @property
    def is_done(self) -> bool:
        """Whether every case has been worked out."""
        return not self._timer.isActive()

    def _show_rows(self) -> None:
        chosen = str(self.table.currentIndex().data(ID_ROLE) or "")
        self.model.set_rows(case_rows(self._results, self._titles, self._theme))
        at = self.model.row_of(chosen)
        if at >= 0:
            self.table.setCurrentIndex(self.shown.mapFromSource(self.model.index(at, 0)))

    def _on_verdict(self, _at: int) -> None:
        self.shown.keep(str(self.verdict.currentData()))

    def _on_current(self, index: QModelIndex, _before: QModelIndex) -> None:
        if not index.isValid():
            return
        row: Row = self.model.rows[self.shown.mapToSource(index).row()]
        result: CaseResult = row.payload
        page = case_page(result, self._titles.get(result.area, result.area))
        self.details.setHtml(page_html(page, self._theme))
