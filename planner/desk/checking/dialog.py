"""Works the published cases again before the user's eyes: counts on top, subjects, a table, details.

The work is done in small steps between paints, so the window never stands still. Must know nothing of
how a case is worked out.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator
from pathlib import Path
from typing import Final

from PySide6.QtCore import QModelIndex, QPoint, QSize, Qt, QTimer, QUrl, Signal
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import (
    QAbstractItemView,
    QComboBox,
    QDialog,
    QFileDialog,
    QHBoxLayout,
    QLabel,
    QLineEdit,
    QListWidget,
    QListWidgetItem,
    QProgressBar,
    QPushButton,
    QSplitter,
    QTableView,
    QTextBrowser,
    QVBoxLayout,
    QWidget,
)

from planner.catalogue.catalogue import Catalogue
from planner.catalogue.errors import CatalogueError
from planner.desk.checking.answers import subject_answer, summary_facts
from planner.desk.checking.rows import (
    Payload,
    Standing,
    case_columns,
    case_page,
    case_rows,
    counts_words,
    proof_words,
    standing_meaning,
    standing_of,
    standing_words,
)
from planner.desk.checking.sieve import ALL, CaseSieve
from planner.desk.help import close_box
from planner.desk.pages import Fact, Page
from planner.desk.rows import ID_ROLE, Row, RowsModel
from planner.desk.say import tr
from planner.desk.services import CheckStep
from planner.desk.side import number_of, page_html
from planner.desk.theme import Theme
from planner.desk.why.cells import CellAsking
from planner.desk.why.drawn import DrawnAsking
from planner.desk.words import number_words
from planner.forecast.verify.run import CaseResult, LackingResult
from planner.forecast.verify.table import verify_csv

_SHARE_OF_SCREEN: Final = 0.94
_SUBJECTS_SHARE: Final = 0.22
_VERDICT, _TITLE = 0, 1
_ROOM: Final = ("– not computed__", "", "12.3 to 456 g/m²/d__", "123.45 g/m²/d_", "+123.4 %__", "± 12.345__")
"""The longest text a column holds as a rule, with some air: the widths go by the type in use."""
_LEAST_TITLE: Final = 30
"""Letters of a title that are shown whatever the room is; what is left is scrolled to."""
_FILE_NAME: Final = "published-cases.csv"


class CaseTable(QTableView):
    """The table of cases: figures as wide as they need, and all the rest for what the case is."""

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        metrics, head = self.fontMetrics(), self.horizontalHeader()
        wide = [
            max(metrics.horizontalAdvance(text), head.sectionSizeFromContents(at).width())
            for at, text in enumerate(_ROOM)
        ]
        wide[_TITLE] = 0
        least = metrics.averageCharWidth() * _LEAST_TITLE
        wide[_TITLE] = max(self.viewport().width() - sum(wide), least)
        for at, width in enumerate(wide):
            self.setColumnWidth(at, width)


class SubjectList(QListWidget):
    """The subjects; `asked` has by its id what each can be asked."""

    def __init__(self, parent: QWidget) -> None:
        super().__init__(parent)
        self.asked: dict[str, Fact] = {}
        DrawnAsking(self)

    def facts_at(self, point: QPoint | None) -> tuple[Fact, ...]:
        """Return what can be asked of the subject at a point, or of the current one."""
        item = self.currentItem() if point is None else self.itemAt(point)
        fact = self.asked.get(str(item.data(ID_ROLE))) if item is not None else None
        return () if fact is None else (fact,)


class CountsLabel(QLabel):
    """A sentence of counts; once there are any, it takes the keys, and each can be asked."""

    def __init__(self, text: str, parent: QWidget) -> None:
        super().__init__(text, parent)
        self.asked: tuple[Fact, ...] = ()
        self.setWordWrap(True)
        DrawnAsking(self)

    def tell(self, text: str, facts: tuple[Fact, ...]) -> None:
        """Show a sentence, and what can be asked of it."""
        self.asked = facts
        self.setText(text)
        self.setAccessibleName(text)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)

    def facts_at(self, _point: QPoint | None) -> tuple[Fact, ...]:
        """Return what can be asked: all counts of the sentence, wherever the pointer is."""
        return self.asked


class CheckDialog(QDialog):
    """Counts at the top, the table of cases by subject, and all about the chosen one.

    `why_wanted` carries facts and the number of the one asked about.
    """

    why_wanted = Signal(object, int)

    def __init__(
        self,
        check: Callable[[], Iterator[CheckStep]],
        theme: Theme,
        parent: QWidget | None = None,
        *,
        book: Catalogue | None = None,
    ) -> None:
        """Work the cases of `check`; `book` has the figures of the program that went in."""
        super().__init__(parent)
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self.setWindowTitle(tr("The arithmetic, checked against print"))
        self._theme, self._book = theme, book
        self._steps = check()
        self._titles: dict[str, str] = {}
        self._results: list[CaseResult] = []
        self._page: Page | None = None
        self._lacking: list[LackingResult] = []
        self._make_summary()
        self.model = RowsModel(case_columns(), self)
        self.shown = CaseSieve(self)
        self.shown.setSourceModel(self.model)
        self._make_head()
        self._make_subjects()
        self._make_table()
        self._make_details()
        self._make_foot()
        self._lay_out()
        self._timer = QTimer(self)
        self._timer.timeout.connect(self._step)
        self._timer.start()

    def _make_summary(self) -> None:
        self.counts = CountsLabel(tr("Reading the cases…"), self)
        bold = self.counts.font()
        bold.setBold(True)
        self.counts.setFont(bold)
        self.proof = CountsLabel("", self)
        self.progress = QProgressBar(self)
        self.progress.setAccessibleName(tr("Cases worked out"))
        self.progress.setTextVisible(False)
        self.progress.setFixedHeight(self._theme.metrics.tight)

    def _make_head(self) -> None:
        self.search = QLineEdit(self)
        self.search.setPlaceholderText(tr("Search cases: words, source, inputs…"))
        self.search.setAccessibleName(tr("Search cases"))
        self.search.setClearButtonEnabled(True)
        self.search.textChanged.connect(self._on_search)
        self.verdict = QComboBox(self)
        self.verdict.setAccessibleName(tr("Which verdicts are shown"))
        self.verdict.addItem(tr("All"), ALL)
        for each in Standing:
            self.verdict.addItem(standing_words(each), each.value)
            at = self.verdict.count() - 1
            self.verdict.setItemData(at, standing_meaning(each), Qt.ItemDataRole.ToolTipRole)
        self.verdict.currentIndexChanged.connect(self._on_verdict)
        self.how_many = QLabel(self)

    def _make_subjects(self) -> None:
        self.subjects = SubjectList(self)
        self.subjects.setAccessibleName(tr("Subjects"))
        self.subjects.setSpacing(self._theme.metrics.hair)
        self.subjects.setMinimumWidth(self._theme.metrics.row)
        self.subjects.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.subjects.currentItemChanged.connect(self._on_subject)

    def _make_table(self) -> None:
        view = self.table = CaseTable(self)
        view.setModel(self.shown)
        view.setAccessibleName(tr("Published cases"))
        view.setSortingEnabled(True)
        view.sortByColumn(_VERDICT, Qt.SortOrder.AscendingOrder)
        view.setSelectionBehavior(QAbstractItemView.SelectionBehavior.SelectRows)
        view.setSelectionMode(QAbstractItemView.SelectionMode.SingleSelection)
        view.setAlternatingRowColors(True)
        view.setShowGrid(False)
        view.setTabKeyNavigation(False)
        view.setWordWrap(False)
        view.verticalHeader().hide()
        view.verticalHeader().setDefaultSectionSize(self._theme.metrics.row)
        view.selectionModel().currentRowChanged.connect(self._on_current)
        CellAsking(view)

    def _make_details(self) -> None:
        self.details = QTextBrowser(self)
        self.details.setAccessibleName(tr("About the chosen case"))
        self.details.setOpenLinks(False)
        self.details.anchorClicked.connect(self._on_anchor)
        self.details.setTabChangesFocus(True)
        self.details.setPlaceholderText(tr("Choose a case to see its inputs, figures and source."))

    def _make_foot(self) -> None:
        self.save = QPushButton(tr("&Save as a table…"), self)
        self.save.setToolTip(tr("Save the cases that are shown as a table (CSV) for a spreadsheet"))
        self.save.setAccessibleName(tr("Save as a table"))
        self.save.setEnabled(False)
        self.save.clicked.connect(self._on_save)
        self.told = QLabel(self)
        self.told.setWordWrap(True)

    def _lay_out(self) -> None:
        metrics = self._theme.metrics
        head = QHBoxLayout()
        head.addWidget(self.search, 1)
        head.addWidget(self.verdict)
        head.addWidget(self.how_many)
        foot = QHBoxLayout()
        foot.addWidget(self.save)
        foot.addWidget(self.told, 1)
        foot.addWidget(close_box(self))
        column = QVBoxLayout(self)
        column.setContentsMargins(*(metrics.margin,) * 4)
        for each in (self.counts, self.proof, self.progress):
            column.addWidget(each)
        column.addLayout(head)
        self.split = self._split()
        column.addWidget(self.split, 1)
        column.addLayout(foot)
        wanted = QSize(metrics.side_width * 5, metrics.row * 26)
        self.resize(wanted.boundedTo(self.screen().availableGeometry().size() * _SHARE_OF_SCREEN))

    def _split(self) -> QSplitter:
        right = QSplitter(Qt.Orientation.Vertical, self)
        right.addWidget(self.table)
        right.addWidget(self.details)
        right.setStretchFactor(0, 3)
        right.setStretchFactor(1, 2)
        split = QSplitter(Qt.Orientation.Horizontal, self)
        split.addWidget(self.subjects)
        split.addWidget(right)
        split.setStretchFactor(1, 1)
        for each in (right, split):
            each.setChildrenCollapsible(False)
        split.setSizes([int(self.width() * _SUBJECTS_SHARE), self.width()])
        return split

    def _step(self) -> None:
        """Work out a few more cases; with the last of a subject its rows are shown."""
        try:
            step = next(self._steps, None)
        except CatalogueError as error:
            self._end()
            self.counts.setText(str(error))
            return
        if step is None:
            self._finish()
            return
        if self._titles and step.area not in self._titles:
            self._show_rows()
        self._titles[step.area] = step.title
        self._results.extend(step.results)
        self._lacking.extend(step.lacking)
        self.progress.setRange(0, step.cases)
        self.progress.setValue(len(self._results))
        done, cases = number_words(len(self._results)), number_words(step.cases)
        self.counts.setText(tr("{area}: {done} of {cases}…", area=step.title, done=done, cases=cases))

    def _end(self) -> None:
        self._timer.stop()
        self.progress.hide()

    def _finish(self) -> None:
        """Show everything, and the first row with why it is what it is: what is outside stands first."""
        self._end()
        self._show_rows()
        self._show_subjects()
        came_out, *proof = summary_facts(self._results, self._lacking)
        self.counts.tell(counts_words(self._results), (came_out,))
        self.proof.tell(proof_words(self._results, self._lacking), tuple(proof))
        self.save.setEnabled(bool(self._results))
        if not self.table.currentIndex().isValid() and self.shown.rowCount():
            self.table.setCurrentIndex(self.shown.index(0, 0))

    @property
    def is_done(self) -> bool:
        """Whether every case has been worked out."""
        return not self._timer.isActive()

    def _show_rows(self) -> None:
        chosen = str(self.table.currentIndex().data(ID_ROLE) or "")
        self.model.set_rows(case_rows((*self._results, *self._lacking), self._theme, self._book))
        at = self.model.row_of(chosen)
        if at >= 0:
            self.table.setCurrentIndex(self.shown.mapFromSource(self.model.index(at, 0)))
        self._count_shown()

    def _show_subjects(self) -> None:
        """List the subjects with how many cases each has, and how many of these are outside."""
        payloads: tuple[Payload, ...] = (*self._results, *self._lacking)
        self.subjects.clear()
        asked: dict[str, Fact] = {}
        for area, title in ((ALL, tr("All subjects")), *self._titles.items()):
            own = [each for each in payloads if area in (ALL, each.area)]
            outside = sum(standing_of(each) is Standing.OUTSIDE for each in own)
            words = tr("{title} ({count})", title=title, count=number_words(len(own)))
            if outside:
                words = tr("{subject}, {outside} outside", subject=words, outside=number_words(outside))
            item = QListWidgetItem(words, self.subjects)
            item.setData(ID_ROLE, area)
            item.setToolTip(words)
            asked[area] = Fact(label=title, value=number_words(len(own)), ask=subject_answer(title, own))
            if outside:
                item.setForeground(self._theme.wrong)
        self.subjects.asked = asked
        self.subjects.setCurrentRow(0)
        wanted = self.subjects.sizeHintForColumn(0) + self._theme.metrics.wide
        width = min(wanted, int(self.width() * _SUBJECTS_SHARE))
        self.split.setSizes([width, self.width() - width])

    def _count_shown(self) -> None:
        self.how_many.setText(tr("{count} shown", count=number_words(self.shown.rowCount())))

    def _on_search(self, text: str) -> None:
        self.shown.seek(text)
        self._count_shown()

    def _on_verdict(self, _at: int) -> None:
        self.shown.keep_standing(str(self.verdict.currentData()))
        self._count_shown()

    def _on_subject(self, item: QListWidgetItem | None, _before: QListWidgetItem | None) -> None:
        if item is not None:
            self.shown.keep_area(str(item.data(ID_ROLE)))
            self._count_shown()

    def _on_current(self, index: QModelIndex, _before: QModelIndex) -> None:
        if not index.isValid():
            return
        row: Row = self.model.rows[self.shown.mapToSource(index).row()]
        area = self._titles.get(row.payload.area, row.payload.area)
        page = case_page(row.payload, area, self._book)
        self._page = page
        self.details.setHtml(page_html(page, self._theme))

    def _on_anchor(self, link: QUrl) -> None:
        number = number_of(link.toString())
        if number >= 0 and self._page is not None:
            self.why_wanted.emit(self._page.askable, number)

    def _on_save(self, _checked: bool) -> None:
        dialog = QFileDialog(self, tr("Save as a table"), str(Path.home() / _FILE_NAME), tr("Tables (*.csv)"))
        dialog.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        dialog.setAcceptMode(QFileDialog.AcceptMode.AcceptSave)
        dialog.setDefaultSuffix("csv")
        dialog.fileSelected.connect(self.save_to)
        dialog.open()

    def save_to(self, name: str) -> None:
        """Write what is shown as a table; says below how it went."""
        payloads = self.shown.payloads()
        results = [each for each in payloads if isinstance(each, CaseResult)]
        lacking = [each for each in payloads if isinstance(each, LackingResult)]
        try:
            # Marked as UTF-8, for spreadsheets that would take it for the code page of the machine.
            Path(name).write_text(verify_csv(results, lacking), encoding="utf-8-sig", newline="")
        except OSError as error:
            self.told.setText(tr("Not saved: {why}", why=f"{error.strerror}: {name}"))
            return
        self.told.setText(
            tr("{count} rows saved in {file}", count=number_words(len(payloads)), file=Path(name).name)
        )
