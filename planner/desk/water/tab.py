"""The water tab: courses over time, all readings and doses of a loop, and what the water asks for.

Filled only when it is seen. Must know nothing of how the water side is worked out.
"""

from __future__ import annotations

from collections.abc import Sequence
from typing import Final

from PySide6.QtCore import QModelIndex, QSortFilterProxyModel, Qt, QUrl, Signal
from PySide6.QtWidgets import (
    QAbstractItemView,
    QComboBox,
    QFrame,
    QHBoxLayout,
    QLabel,
    QPushButton,
    QSplitter,
    QTableView,
    QTextBrowser,
    QVBoxLayout,
    QWidget,
)

from planner.desk.behind import Behind
from planner.desk.cell_ring import CellRing
from planner.desk.pages import Page, Section
from planner.desk.plan.kit import show_headings
from planner.desk.rows import ID_ROLE, SORT_ROLE, Row, RowsModel
from planner.desk.say import tr
from planner.desk.side import number_of, page_html
from planner.desk.theme import Theme
from planner.desk.water.charts import CHARTED, WaterCharts
from planner.desk.water.dosing import DosePanel
from planner.desk.water.rows import (
    reading_book,
    reading_columns,
    reading_rows,
    solids_sections,
    together,
    whole_course,
)
from planner.desk.water_facts import advice_sections, tests_section
from planner.desk.week_facts import over_sections
from planner.desk.why.cells import CellAsking
from planner.desk.words import day_words
from planner.farm.fields import NO_ID, Id
from planner.forecast.values import LoopForecast

_SHARES: Final = (4, 5, 4)
"""How the width goes to readings, doses and advice at first."""
_NEWS: Final = (
    ("reading", "Add a reading…"),
    ("solids batch", "Solids batch…"),
    ("meter", "Add a meter…"),
)
_IN_A_LOOP: Final = frozenset({"reading", "dose", "solids batch"})


class WaterTab(QWidget):
    """Readings, their courses and the advice for one loop at a time."""

    opened = Signal(str)
    new_wanted = Signal(str, str)
    why_wanted = Signal(object, int)
    wished = Signal(object)
    sure_wanted = Signal()

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme = theme
        self._behind: Behind | None = None
        self._page: Page | None = None
        self.loop = QComboBox(self)
        self.loop.setAccessibleName(tr("Loop of water"))
        self.count = QLabel(self)
        self.courses = WaterCharts(theme, self)
        self.charts = self.courses.charts
        self.doses = DosePanel(theme, self)
        self.sure = QPushButton(tr("How sure?"), self)
        self.sure.setToolTip(tr("Work out low and high of what is foreseen"))
        self.model = RowsModel(reading_columns(), self)
        self.sorted = QSortFilterProxyModel(self)
        self.sorted.setSourceModel(self.model)
        self.sorted.setSortRole(SORT_ROLE)
        self.view = QTableView(self)
        self.text = QTextBrowser(self)
        self.buttons = {word: QPushButton(tr(said), self) for word, said in _NEWS}
        self.buttons["dose"] = self.doses.add
        self._make_table()
        self._make_text()
        self._lay_out()
        self.loop.currentIndexChanged.connect(self._on_loop)
        self.text.anchorClicked.connect(self._on_anchor)
        self.view.activated.connect(self._on_activated)
        self.sure.clicked.connect(self._on_sure)
        self.doses.wished.connect(self.wished)
        self.doses.why_wanted.connect(self.why_wanted)
        self.doses.opened.connect(self.opened)
        for button in self.buttons.values():
            button.clicked.connect(self._on_new)

    def _make_table(self) -> None:
        view = self.view
        view.setModel(self.sorted)
        view.setAccessibleName(tr("Readings"))
        view.setSortingEnabled(True)
        view.sortByColumn(0, Qt.SortOrder.DescendingOrder)
        view.setSelectionBehavior(QAbstractItemView.SelectionBehavior.SelectRows)
        view.setSelectionMode(QAbstractItemView.SelectionMode.SingleSelection)
        view.setAlternatingRowColors(True)
        view.setShowGrid(False)
        view.setTabKeyNavigation(False)
        view.setFrameShape(QFrame.Shape.NoFrame)
        view.verticalHeader().hide()
        view.verticalHeader().setDefaultSectionSize(self._theme.metrics.row)
        view.horizontalHeader().setStretchLastSection(True)
        view.setItemDelegate(CellRing(view))
        CellAsking(view)

    def _make_text(self) -> None:
        self.text.setAccessibleName(tr("What the water asks for"))
        self.text.setFrameShape(QFrame.Shape.NoFrame)
        self.text.setOpenLinks(False)
        self.text.setTabChangesFocus(True)
        self.text.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.text.document().setDocumentMargin(self._theme.metrics.margin)

    def _lay_out(self) -> None:
        metrics = self._theme.metrics
        head = QHBoxLayout()
        head.setContentsMargins(metrics.gap, metrics.gap, metrics.gap, metrics.gap)
        head.setSpacing(metrics.gap)
        head.addWidget(self.loop)
        head.addWidget(self.count)
        head.addStretch(1)
        for button in (self.sure, *(self.buttons[word] for word, _ in _NEWS)):
            button.setAccessibleName(button.text())
            head.addWidget(button)
        self.split = QSplitter(Qt.Orientation.Horizontal, self)
        self.split.setChildrenCollapsible(False)
        self.split.setHandleWidth(metrics.hair)
        for at, (part, share) in enumerate(zip((self.view, self.doses, self.text), _SHARES, strict=True)):
            part.setMinimumWidth(metrics.field_width)
            self.split.addWidget(part)
            self.split.setStretchFactor(at, share)
        self.split.setSizes([metrics.side_width * share for share in _SHARES])
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(0)
        column.addLayout(head)
        column.addWidget(self.courses)
        column.addWidget(self.split, 1)

    def show_behind(self, behind: Behind) -> None:
        """Show the water of a farm; the loop that was chosen stays so."""
        self._behind = behind
        chosen = self.loop_id
        loops = behind.outlook.forecast.loops
        blocked = self.loop.blockSignals(True)
        self.loop.clear()
        for loop in loops:
            self.loop.addItem(loop.name, loop.loop)
        self.loop.setCurrentIndex(max(self.loop.findData(chosen), 0))
        self.loop.blockSignals(blocked)
        self.loop.setVisible(len(loops) > 1)
        self._show_loop(loops)

    @property
    def loop_id(self) -> Id:
        """The loop shown; empty when the farm has none."""
        return Id(self.loop.currentData() or NO_ID)

    def _on_loop(self, _at: int) -> None:
        if self._behind is not None:
            self._show_loop(self._behind.outlook.forecast.loops)

    def _show_loop(self, loops: Sequence[LoopForecast]) -> None:
        found = next((loop for loop in loops if loop.loop == self.loop_id), None)
        if found is None or self._behind is None:
            self.model.set_rows(())
            self.doses.show_water(None, None)
            self._show_page(Page(title=tr("Water"), subtitle=tr("No loop of water yet"), sections=()))
            return
        outlook = self._behind.outlook
        book = reading_book(outlook.farm, found.loop, outlook.catalogue)
        self._show_rows(reading_rows(book, self._theme))
        courses = [whole_course(book, quantity, self._behind, found) for quantity in CHARTED]
        self.courses.show_courses(together(courses))
        advise = not self._behind.is_over
        self.doses.show_water(outlook, self._behind.water(found), advise=advise)
        self._show_page(
            Page(
                title=found.name,
                subtitle=tr("on {day}", day=day_words(self._behind.water_on)),
                sections=self._sections(found),
            )
        )

    def _sections(self, loop: LoopForecast) -> tuple[Section, ...]:
        assert self._behind is not None
        outlook = self._behind.outlook
        water = self._behind.water(loop)
        advice = () if self._behind.is_over else advice_sections(water, outlook.catalogue)
        return (
            *over_sections(self._behind),
            *advice,
            tests_section(water),
            *solids_sections(outlook, loop),
        )

    def _show_rows(self, rows: Sequence[Row]) -> None:
        first = not self.model.rows
        self.model.set_rows(rows)
        if first:
            self.view.resizeColumnsToContents()
            widest = self._theme.metrics.field_width * 2 // 3
            for at in range(1, len(reading_columns())):
                self.view.setColumnWidth(at, min(self.view.columnWidth(at), widest))
            show_headings(self.view)
        self.count.setText(tr("1 reading") if len(rows) == 1 else tr("{count} readings", count=len(rows)))

    def _show_page(self, page: Page) -> None:
        if page != self._page:
            at = self.text.verticalScrollBar().value() if self._page and self._page.title == page.title else 0
            self._page = page
            self.text.setHtml(page_html(page, self._theme))
            self.text.verticalScrollBar().setValue(at)

    def wear(self, theme: Theme) -> None:
        """Wear the colours of a theme."""
        self._theme = theme
        self.courses.wear(theme)
        self.doses.wear(theme)
        if self._page is not None:
            self.text.setHtml(page_html(self._page, theme))
        self._on_loop(0)

    def _on_activated(self, index: QModelIndex) -> None:
        found = index.data(ID_ROLE)
        if found:
            self.opened.emit(found)

    def _on_anchor(self, link: QUrl) -> None:
        number = number_of(link.toString())
        if number >= 0 and self._page is not None:
            self.why_wanted.emit(self._page.askable, number)

    def _on_sure(self, _checked: bool) -> None:
        self.sure_wanted.emit()

    def show_working(self, *, working: bool) -> None:
        """Tell whether low and high are being worked out."""
        self.sure.setEnabled(not working)
        self.sure.setText(tr("Working…") if working else tr("How sure?"))

    def show_more(self) -> None:
        """Show again what is known now that was not before."""
        self._on_loop(0)

    def _on_new(self, _checked: bool) -> None:
        for word, button in self.buttons.items():
            if button is self.sender():
                self.new_wanted.emit(word, self.loop_id if word in _IN_A_LOOP else "")
