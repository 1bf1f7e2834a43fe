"""The three things that are shown of the fish: ways of stocking, ways to take a harvest, a start-up.

Each shows what was worked out and says which of it is chosen; whoever holds them works it out and adopts.
"""

from __future__ import annotations

from typing import Any

from PySide6.QtCore import QModelIndex, Signal
from PySide6.QtWidgets import QComboBox, QHBoxLayout, QVBoxLayout, QWidget

from planner.desk.outlook import Outlook
from planner.desk.plan.chart import EMPTY, WeekChart
from planner.desk.plan.kit import Table, Words, button, column, stack
from planner.desk.plan.stocking_charts import feed_chart, harvest_chart
from planner.desk.plan.stocking_rows import (
    band_words,
    harvest_columns,
    harvest_rows,
    hole_columns,
    hole_rows,
    judged_words,
    share_words,
    start_columns,
    start_lines,
    start_rows,
    stocked_columns,
    stocked_rows,
    way_columns,
    way_id,
    way_rows,
    way_words,
)
from planner.desk.plan.stocking_work import HarvestsFound, WaysFound
from planner.desk.plan.whys import (
    asked_rows,
    harvest_names,
    hole_names,
    start_names,
    stocked_names,
    way_names,
)
from planner.desk.say import tr
from planner.desk.theme import Theme
from planner.desk.words import day_words
from planner.farm.changes import ChangeSet
from planner.farm.farm import Farm, by_id
from planner.farm.fish import FishEvent, FishEventKind
from planner.planning.answering import Whys
from planner.planning.stocking.options import StockingOption
from planner.planning.stocking.startup import StartUp


def whole_harvests(farm: Farm) -> tuple[FishEvent, ...]:
    """Return the planned harvests of whole groups within the plan, the earliest first."""
    found = [
        event
        for event in farm.fish_events
        if event.kind is FishEventKind.HARVEST
        and event.count is None
        and farm.settings.plan_from <= event.on < farm.plan_until
    ]
    return tuple(sorted(found, key=_on))


def _on(event: FishEvent) -> tuple[Any, str]:
    return event.on, event.id


class WaysTab(QWidget):
    """The table of ways, and of the chosen one its groups, its holes and its feed."""

    chosen = Signal()

    def __init__(self, theme: Theme, parent: QWidget) -> None:
        super().__init__(parent)
        self._found: WaysFound | None = None
        self._outlook: Outlook | None = None
        self.judged = Words("", theme, self, ink="muted")
        self.band = Words("", theme, self, ink="wrong")
        self.shown = QWidget(self)
        self.table = Table(way_columns(), tr("Ways of stocking"), theme, self.shown)
        self.way = Words("", theme, self.shown)
        self.adopt = button(tr("Adopt"), self.shown, tip=tr("Stock in this way; one undo takes it back"))
        self.keep = button(tr("Keep to compare"), self.shown, tip=tr("Keep this as a scenario under What if"))
        self.feed = WeekChart(theme, self.shown)
        self.stocked = Table(stocked_columns(), tr("Groups of this way"), theme, self.shown)
        self.holes = Table(hole_columns(), tr("Falls of the feed at each harvest"), theme, self.shown)
        self.care = QVBoxLayout()
        self._lay_out(theme)
        self.table.selectionModel().currentRowChanged.connect(self._on_row)
        self.show_found(None, None)

    def _lay_out(self, theme: Theme) -> None:
        chosen, beside = QHBoxLayout(), QHBoxLayout()
        chosen.addWidget(self.way, 1)
        chosen.addWidget(self.adopt)
        chosen.addWidget(self.keep)
        beside.addWidget(self.stocked, 3)
        beside.addWidget(self.holes, 2)
        shown = column(self.shown, theme, margin=0)
        shown.addWidget(self.table, 2)
        shown.addLayout(chosen)
        shown.addWidget(self.feed, 1)
        shown.addLayout(beside, 1)
        shown.addLayout(self.care)
        lines = column(self, theme)
        stack(lines, self.judged, self.band)
        lines.addWidget(self.shown, 1)
        lines.addStretch(0)

    def show_found(self, found: WaysFound | None, outlook: Outlook | None) -> None:
        """Show the ways that were found, the best of them chosen; None shows that there are none yet."""
        self._found, self._outlook = found, outlook
        self.shown.setVisible(found is not None and found.table.best is not None)
        none = tr("Compared are 1, 2, 4 and 6 groups, harvested whole or in parts.")
        self.judged.say(none if found is None else judged_words(found))
        self.band.say("" if found is None else band_words(found))
        if found is None:
            return
        rows = way_rows(found)
        self.table.show_rows(asked_rows(rows, way_names(rows, found.table), found.whys))
        best = found.table.best
        if best is not None and not self.table.choose(way_id(best)):
            self.table.selectRow(0)
        self._show_way()

    @property
    def option(self) -> StockingOption | None:
        """The way that is chosen; None when none is, or there is no room for it."""
        row = self.table.current()
        if self._found is None or row is None or row.payload < 0:
            return None
        option: StockingOption = self._found.table.options[row.payload]
        return option

    def _on_row(self, _index: QModelIndex, _before: QModelIndex) -> None:
        self._show_way()
        self.chosen.emit()

    def _show_way(self) -> None:
        option, row, outlook = self.option, self.table.current(), self._outlook
        if self._found is None or outlook is None or row is None:
            return
        if option is None:
            self.way.setText(row.spoken)
            self.feed.show_chart(EMPTY)
            self.stocked.show_rows(())
            self.holes.show_rows(())
            return
        self.way.setText(way_words(option, best=option is self._found.table.best))
        self.feed.show_chart(feed_chart(self._found, row.payload, outlook.forecast.ruler))
        whys, rows = self._found.whys, stocked_rows(option, outlook.farm)
        self.stocked.show_rows(asked_rows(rows, stocked_names(rows, option, outlook.farm), whys))
        self.holes.show_rows(asked_rows(hole_rows(option.holes), hole_names(option), whys))


class HarvestTab(QWidget):
    """The planned harvests of whole groups, and of one of them the ways to take it."""

    chosen = Signal()

    def __init__(self, theme: Theme, parent: QWidget) -> None:
        super().__init__(parent)
        self.found: HarvestsFound | None = None
        self.harvest = QComboBox(self)
        self.harvest.setAccessibleName(tr("Planned harvest"))
        self.compare = button(tr("Compare"), self, tip=tr("Compare taking it all at once and in parts"))
        self.none = Words("", theme, self, ink="muted")
        self.shown = QWidget(self)
        self.table = Table(harvest_columns(), tr("Ways to take the harvest"), theme, self.shown)
        self.feed = WeekChart(theme, self.shown)
        self.adopt = button(tr("Adopt"), self.shown, tip=tr("Harvest in the chosen way"))
        top, foot = QHBoxLayout(), QHBoxLayout()
        top.addWidget(self.harvest, 1)
        top.addWidget(self.compare)
        foot.addStretch(1)
        foot.addWidget(self.adopt)
        shown = column(self.shown, theme, margin=0)
        shown.addWidget(self.table, 1)
        shown.addLayout(foot)
        shown.addWidget(self.feed, 1)
        lines = column(self, theme)
        lines.addLayout(top)
        lines.addWidget(self.none)
        lines.addWidget(self.shown, 1)
        lines.addStretch(0)
        self.table.selectionModel().currentRowChanged.connect(self._on_row)
        self.show_found(None, None)

    def show_farm(self, farm: Farm) -> None:
        """Offer the harvests that are planned on a farm."""
        groups, before = by_id(farm.fish_groups), self.harvest.currentData()
        self.harvest.clear()
        for event in whole_harvests(farm):
            words = tr("{group}, {day}", group=groups[event.group].name, day=day_words(event.on))
            self.harvest.addItem(words, event.id)
        self.harvest.setCurrentIndex(max(self.harvest.findData(before), 0))
        some = self.harvest.count() > 0
        self.harvest.setVisible(some)
        self.compare.setVisible(some)
        self.none.setVisible(self.found is None or not some)
        self.none.setText(
            tr("Choose a planned harvest: it is compared all at once and in parts.")
            if some
            else tr("No harvest of a whole group is planned. Plan one on the page of the fish.")
        )

    def show_found(self, found: HarvestsFound | None, outlook: Outlook | None) -> None:
        """Show the ways to take a harvest; None shows that there are none yet."""
        self.found = found
        self.shown.setVisible(found is not None)
        self.none.setVisible(found is None)
        if found is not None and outlook is not None:
            rows = harvest_rows(found)
            self.table.show_rows(asked_rows(rows, harvest_names(found.options), found.whys))
            self.feed.show_chart(harvest_chart(found, outlook.forecast.ruler))
            self.table.selectRow(0)

    def changes(self) -> ChangeSet | None:
        """Return the changes of the chosen way, None when it is as planned."""
        row = self.table.current()
        if self.found is None or row is None:
            return None
        option = self.found.options[row.payload]
        title = tr("Harvest {share}", share=share_words(option.share))
        made = option.change_set.changes
        return ChangeSet(title=title, changes=made) if made else None

    def _on_row(self, _index: QModelIndex, _before: QModelIndex) -> None:
        self.chosen.emit()


class StartTab(QWidget):
    """When the crops of a new loop may go to their beds."""

    def __init__(self, theme: Theme, parent: QWidget) -> None:
        super().__init__(parent)
        self.begin_it = button(tr("Work out the start-up"), self)
        self.adopt = button(tr("Adopt"), self, tip=tr("Sow what has to wait so much later"))
        self.words = Words("", theme, self)
        self.table = Table(start_columns(), tr("Batches of a loop that starts up"), theme, self)
        top = QHBoxLayout()
        top.addWidget(self.begin_it)
        top.addStretch(1)
        top.addWidget(self.adopt)
        lines = column(self, theme)
        lines.addLayout(top)
        lines.addWidget(self.words)
        lines.addWidget(self.table, 1)
        lines.addStretch(0)
        self.show_found(None, None)

    def show_found(self, found: StartUp | None, outlook: Outlook | None, whys: Whys | None = None) -> None:
        """Show a start-up; None shows that there is none yet."""
        self.table.setVisible(found is not None and bool(found.batches))
        if found is None or outlook is None:
            self.words.say(
                tr("A new loop begins with leafy crops; fruiting ones wait until the feed carries them.")
            )
            return
        self.words.say("\n".join(start_lines(found, outlook.catalogue)))
        rows = start_rows(found, outlook.catalogue)
        self.table.show_rows(asked_rows(rows, start_names(rows), whys or {}))
