"""The water tab: two courses over time, all readings of a loop, and what the water asks for.

Filled only when it is seen. Must know nothing of how the water side is worked out.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
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
from planner.desk.pages import Page, Section
from planner.desk.rows import ID_ROLE, SORT_ROLE, Row, RowsModel
from planner.desk.say import tr
from planner.desk.side import number_of, page_html
from planner.desk.theme import Theme
from planner.desk.water.chart import WaterChart
from planner.desk.water.rows import (
    course_of,
    foreseen_course,
    reading_book,
    reading_columns,
    reading_rows,
    solids_sections,
)
from planner.desk.water_facts import advice_sections, tests_section
from planner.desk.words import day_words
from planner.farm.fields import NO_ID, Id
from planner.farm.water import Quantity
from planner.forecast.values import LoopForecast

_CHARTED: Final = (Quantity.PH, Quantity.NITRATE_N_MG_PER_L)
_TABLE_SHARE, _TEXT_SHARE = 3, 2
_NEWS: Final = (
    ("reading", "Add a reading…"),
    ("dose", "Add a dose…"),
    ("solids batch", "Solids batch…"),
    ("meter", "Add a meter…"),
)
_IN_A_LOOP: Final = frozenset({"reading", "dose", "solids batch"})


class WaterTab(QWidget):
    """Readings, their courses and the advice for one loop at a time."""

    opened = Signal(str)
    new_wanted = Signal(str, str)
    why_wanted = Signal(object, int)

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme = theme
        self._behind: Behind | None = None
        self._page: Page | None = None
        self.loop = QComboBox(self)
        self.loop.setAccessibleName(tr("Loop of water"))
        self.count = QLabel(self)
        self.charts = tuple(WaterChart(quantity, theme, self) for quantity in _CHARTED)
        self.model = RowsModel(reading_columns(), self)
        self.sorted = QSortFilterProxyModel(self)
        self.sorted.setSourceModel(self.model)
        self.sorted.setSortRole(SORT_ROLE)
        self.view = QTableView(self)
        self.text = QTextBrowser(self)
        self.buttons = {word: QPushButton(tr(said), self) for word, said in _NEWS}
        self._make_table()
        self._make_text()
        self._lay_out()
        self.loop.currentIndexChanged.connect(self._on_loop)
        self.text.anchorClicked.connect(self._on_anchor)
        self.view.activated.connect(self._on_activated)
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
        for button in self.buttons.values():
            button.setAccessibleName(button.text())
            head.addWidget(button)
        courses = QHBoxLayout()
        courses.setSpacing(metrics.hair)
        for chart in self.charts:
            courses.addWidget(chart)
        self.split = QSplitter(Qt.Orientation.Horizontal, self)
        self.split.setChildrenCollapsible(False)
        self.split.setHandleWidth(metrics.hair)
        for part in (self.view, self.text):
            part.setMinimumWidth(metrics.field_width)
            self.split.addWidget(part)
        self.split.setStretchFactor(0, _TABLE_SHARE)
        self.split.setStretchFactor(1, _TEXT_SHARE)
        self.split.setSizes([metrics.side_width * _TABLE_SHARE, metrics.side_width * _TEXT_SHARE])
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(0)
        column.addLayout(head)
        column.addLayout(courses)
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
            self._show_page(Page(title=tr("Water"), subtitle=tr("No loop of water yet"), sections=()))
            return
        outlook = self._behind.outlook
        book = reading_book(outlook.farm, found.loop, outlook.catalogue)
        self._show_rows(reading_rows(book, self._theme))
        for chart in self.charts:
            quantity = chart.course.quantity
            foreseen = foreseen_course(outlook, found, quantity, self._behind.today)
            chart.show_course(replace(course_of(book, quantity), foreseen=foreseen))
        self._show_page(
            Page(
                title=found.name,
                subtitle=tr("on {day}", day=day_words(self._behind.today)),
                sections=self._sections(found),
            )
        )

    def _sections(self, loop: LoopForecast) -> tuple[Section, ...]:
        assert self._behind is not None
        outlook = self._behind.outlook
        water = self._behind.water(loop)
        return (
            *advice_sections(water, outlook.catalogue),
            tests_section(water),
            *solids_sections(outlook, loop),
        )

    def _show_rows(self, rows: Sequence[Row]) -> None:
        first = not self.model.rows
        self.model.set_rows(rows)
        if first:
            self.view.resizeColumnsToContents()
            widest = self._theme.metrics.field_width * 2 // 3
            for at in range(len(reading_columns())):
                self.view.setColumnWidth(at, min(self.view.columnWidth(at), widest))
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
        for chart in self.charts:
            chart.wear(theme)
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

    def _on_new(self, _checked: bool) -> None:
        for word, button in self.buttons.items():
            if button is self.sender():
                self.new_wanted.emit(word, self.loop_id if word in _IN_A_LOOP else "")
