"""The page of the balance: chart or table, and beside it why a week is as it is and what would help."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING, Final

from PySide6.QtCore import QModelIndex, Qt, QTimer, QUrl
from PySide6.QtWidgets import (
    QComboBox,
    QFrame,
    QHBoxLayout,
    QSplitter,
    QStackedWidget,
    QTextBrowser,
    QVBoxLayout,
    QWidget,
)

from planner.catalogue.catalogue import Catalogue
from planner.desk import settings
from planner.desk.balance.chart import BalanceChart
from planner.desk.balance.weeks import LoopWeeks, loop_weeks, week_columns, week_rows
from planner.desk.behind import Behind
from planner.desk.jobs import Job
from planner.desk.lanes.kit import Kit
from planner.desk.lanes.lane_bar import LaneBar, band_key
from planner.desk.lanes.words import element_full
from planner.desk.pages import Page
from planner.desk.places.place import Place, PlaceNeeds
from planner.desk.plan.kit import Table, button
from planner.desk.plan.remedy_list import RemedyList
from planner.desk.say import tr
from planner.desk.side import number_of, page_html
from planner.desk.theme import Theme
from planner.desk.week_facts import week_page
from planner.desk.words import number_words
from planner.farm.changes import Change, ChangeSet
from planner.farm.fields import NO_ID, Id
from planner.farm.site import AreaRule, Loop
from planner.farm.species import ELEMENTS

if TYPE_CHECKING:
    from planner.desk.sureness import Sureness, SureStep

_WAIT_MS: Final = 250
RULES: Final = ((AreaRule.FAO, "Area by FAO"), (AreaRule.UVI, "Area by UVI"))
"""Who says how much feed a square metre asks for; the figures themselves stand in the catalogue."""


def rules_words(catalogue: Catalogue) -> str:
    """Return who says what of the feed that a square metre asks for, with their figures."""
    low, high = {}, {}
    for name in ("fao_leafy", "fao_fruiting", "uvi_raft"):
        figure = catalogue.figure(f"feed_rate/{name}")
        low[name], high[name] = number_words(figure.low), number_words(figure.high)
    return tr(
        "Two sources differ. FAO, for small systems: {a} to {b} g/m²/d for leaves, {c} to {d} for fruit, "
        "mixed by what is planted. University of the Virgin Islands, for rafts in the tropics with solids "
        "removed: {e} to {f} g/m²/d.",
        a=low["fao_leafy"],
        b=high["fao_leafy"],
        c=low["fao_fruiting"],
        d=high["fao_fruiting"],
        e=low["uvi_raft"],
        f=high["uvi_raft"],
    )


class BalancePlace(Place):
    """Supply and demand of one loop at a time."""

    def __init__(self, needs: PlaceNeeds, parent: QWidget) -> None:
        super().__init__(needs, parent)
        self._behind: Behind | None = None
        self._weeks: LoopWeeks | None = None
        self._job: Job | None = None
        self._page: Page | None = None
        self._fresh = True
        self.loop, self.element = QComboBox(self), QComboBox(self)
        self.loop.setAccessibleName(tr("Loop of water"))
        self.element.setAccessibleName(tr("Element"))
        for each in ELEMENTS:
            self.element.addItem(element_full(each))
        self.sure = button(tr("How sure?"), self, tip=tr("Work out low and high of every week"))
        self.rule = QComboBox(self)
        self.rule.setAccessibleName(tr("Whose feed-rate ratio rules"))
        for rule, words in RULES:
            self.rule.addItem(tr(words), rule.value)
        self.as_table = button(tr("Table"), self, tip=tr("The weeks of one element as a table"))
        self.as_table.setCheckable(True)
        self.chart = BalanceChart(self.theme, self)
        self.table = Table(week_columns(), tr("Weeks of the balance"), self.theme, self)
        self.pages = QStackedWidget(self)
        self.key = LaneBar(tr("Bands"), Kit(self.theme, self.font()), self)
        self.text = QTextBrowser(self)
        self.remedies = RemedyList(self.theme, needs.conduct, self)
        self._later = QTimer(self)
        self._later.setSingleShot(True)
        self._later.setInterval(_WAIT_MS)
        self._lay_out()
        self._connect()

    def _lay_out(self) -> None:
        metrics = self.theme.metrics
        bar = QHBoxLayout()
        bar.setContentsMargins(metrics.gap, metrics.gap, metrics.gap, metrics.tight)
        for control in (self.loop, self.element, self.as_table, self.sure, self.rule):
            bar.addWidget(control)
        bar.addStretch(1)
        self.pages.addWidget(self.chart)
        self.pages.addWidget(self.table)
        kit = Kit(self.theme, self.font())
        self.key.set_key(kit, band_key(kit))
        left = QWidget(self)
        column = QVBoxLayout(left)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(0)
        column.addLayout(bar)
        column.addWidget(self.key)
        column.addWidget(self.pages, 1)
        self.text.setFrameShape(QFrame.Shape.NoFrame)
        self.text.setOpenLinks(False)
        self.text.setTabChangesFocus(True)
        self.text.setAccessibleName(tr("Why the week is as it is"))
        self.text.document().setDocumentMargin(metrics.margin)
        right = QSplitter(Qt.Orientation.Vertical, self)
        split = QSplitter(Qt.Orientation.Horizontal, self)
        for each, parts in ((right, (self.text, self.remedies)), (split, (left, right))):
            each.setHandleWidth(metrics.hair)
            each.setChildrenCollapsible(False)
            for part in parts:
                each.addWidget(part)
        split.setStretchFactor(0, 1)
        split.setSizes([metrics.side_width * 3, metrics.side_width])
        whole = QVBoxLayout(self)
        whole.setContentsMargins(0, 0, 0, 0)
        whole.addWidget(split)

    def _connect(self) -> None:
        self.loop.currentIndexChanged.connect(self._on_loop)
        self.element.currentIndexChanged.connect(self._on_element)
        self.chart.week_chosen.connect(self._on_week)
        self.chart.element_chosen.connect(self.element.setCurrentIndex)
        self.as_table.toggled.connect(self._on_table)
        self.sure.clicked.connect(self._on_sure)
        self.rule.activated.connect(self._on_rule)
        self.text.anchorClicked.connect(self._on_anchor)
        self.table.selectionModel().currentRowChanged.connect(self._on_row)
        self.remedies.applied.connect(self._on_applied)
        self._later.timeout.connect(self._ask_remedies)

    # ---- the farm

    def show_behind(self, behind: Behind) -> None:
        """Show the balance of a farm; loop, element and week stay where they can."""
        self._give_up()
        self._behind = behind
        self.rule.setToolTip(rules_words(behind.outlook.catalogue))
        self.rule.setAccessibleDescription(self.rule.toolTip())
        chosen = self.loop_id
        blocked = self.loop.blockSignals(True)
        self.loop.clear()
        for loop in behind.outlook.forecast.loops:
            self.loop.addItem(loop.name, loop.loop)
        self.loop.setCurrentIndex(max(self.loop.findData(chosen), 0))
        self.loop.blockSignals(blocked)
        self.loop.setVisible(self.loop.count() > 1)
        if self._fresh:
            self._fresh = False
            self.chart.week = behind.outlook.week_of(behind.today)
        self._show_loop()

    @property
    def loop_id(self) -> Id:
        """The loop shown; empty when the farm has none."""
        return Id(self.loop.currentData() or NO_ID)

    def _show_loop(self) -> None:
        if self._behind is None:
            return
        outlook = self._behind.outlook
        self._show_rule()
        self._weeks = loop_weeks(outlook, self.loop_id, self._behind.sure) if self.loop_id else None
        self.chart.show_weeks(self._weeks, outlook.forecast.ruler.start_on, self._behind.today)
        self._fill_table()
        self._show_week()

    def _fill_table(self) -> None:
        if self._behind is not None and self._weeks is not None and self.as_table.isChecked():
            self.table.show_rows(week_rows(self._weeks, self.element.currentIndex(), self._behind.outlook))
            self.table.choose(str(self.chart.week))

    def _show_week(self) -> None:
        behind = self._behind
        if behind is None:
            return
        waits, behind.waits = behind.waits, False
        page = week_page(behind, behind.outlook.forecast.ruler.week_start(self.chart.week))
        behind.waits = waits
        if page != self._page:
            self._page = page
            self.text.setHtml(page_html(page, self.theme))
            self.text.setAccessibleDescription(page.title)
        self._later.start()

    def _ask_remedies(self) -> None:
        if self._behind is not None and self._weeks is not None:
            self.remedies.ask(self._behind, self.loop_id, self.chart.week)

    # ---- hands

    def _on_loop(self, _at: int) -> None:
        self._show_loop()

    def _on_element(self, at: int) -> None:
        self.chart.go(self.chart.week, at)
        self._fill_table()

    def _on_week(self, _week: int) -> None:
        self._show_week()

    def _on_row(self, _index: QModelIndex, _before: QModelIndex) -> None:
        row = self.table.current()
        if row is not None and row.payload != self.chart.week:
            self.chart.go(row.payload)
            self._show_week()

    def _on_table(self, shown: bool) -> None:
        self.pages.setCurrentWidget(self.table if shown else self.chart)
        self._fill_table()

    def _on_rule(self, at: int) -> None:
        """Let another rule tell what area the feed of the loop carries, on every page and on paper.

        A farm that is begun later goes by the rule that was picked last.
        """
        loop = self._loop_entry()
        if loop is None or RULES[at][0] is loop.area_rule:
            return
        after = replace(loop, area_rule=RULES[at][0])
        title = tr("{loop}: area by {rule}", loop=loop.name, rule=after.area_rule.name)
        if self.needs.conduct.act(ChangeSet(title=title, changes=(Change(before=loop, after=after),))):
            self.needs.memory.put(settings.AREA_RULE, after.area_rule.value)
        else:
            self._show_rule()

    def _loop_entry(self) -> Loop | None:
        found = None if self._behind is None else self._behind.outlook.found.get(self.loop_id)
        return found if isinstance(found, Loop) else None

    def _show_rule(self) -> None:
        loop = self._loop_entry()
        self.rule.setEnabled(loop is not None)
        if loop is not None:
            self.rule.setCurrentIndex(self.rule.findData(loop.area_rule.value))
            self.chart.rule = loop.area_rule

    def _on_sure(self, _checked: bool) -> None:
        behind = self._behind
        if behind is None or self._job is not None:
            self._give_up()
            return
        from planner.desk.sure_words import stop_words
        from planner.desk.sureness import sure_job

        self._job = sure_job(behind.outlook.farm, behind.outlook.catalogue, self)
        self._job.told.connect(self._on_told)
        self._job.done.connect(self._give_up)
        self.sure.setText(stop_words())

    def _on_told(self, found: Sureness | SureStep) -> None:
        from planner.desk.sure_words import stop_words
        from planner.desk.sureness import SureStep

        if isinstance(found, SureStep):
            self.sure.setText(stop_words(found.share))
        elif self._behind is not None:
            self._behind.sure = found
            self._show_loop()

    def _give_up(self) -> None:
        job, self._job = self._job, None
        if job is not None:
            job.stop()
        self.sure.setText(tr("How sure?"))

    def _on_anchor(self, link: QUrl) -> None:
        number = number_of(link.toString())
        if number >= 0 and self._page is not None:
            self.why_wanted.emit(self._page.askable, number)

    def _on_applied(self, words: str) -> None:
        self.told.emit(tr("Done: {words}. Undo takes it back.", words=words))

    def take_focus(self) -> None:
        """Give the keyboard to the chart, or the table where that is shown."""
        (self.table if self.as_table.isChecked() else self.chart).setFocus()

    def leave(self) -> None:
        """Give up what is being worked out."""
        self._later.stop()
        self._give_up()
        self.remedies.clear()
        self._fresh = True

    def wear(self, theme: Theme) -> None:
        """Wear the colours of a theme."""
        super().wear(theme)
        self.chart.wear(theme)
        self.remedies.wear(theme)
        kit = Kit(theme, self.font())
        self.key.set_key(kit, band_key(kit))
        if self._page is not None:
            self.text.setHtml(page_html(self._page, theme))
