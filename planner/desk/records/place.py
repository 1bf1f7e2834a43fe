"""The page of records: a line to log with, sheets to catch up from, and everything the log leads to.

Must know nothing of how days are learned or batches dated.
"""

from __future__ import annotations

from dataclasses import replace

from PySide6.QtCore import QModelIndex, Signal
from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget

from planner.actions import records
from planner.actions.learning import adopt
from planner.desk.behind import Behind
from planner.desk.pages import Fact
from planner.desk.places.place import Place, PlaceNeeds
from planner.desk.plan.kit import Table, Words, button
from planner.desk.records.answers import with_act
from planner.desk.records.catch_up import CatchUp
from planner.desk.records.line import EntryLine
from planner.desk.records.noting import noted_at
from planner.desk.records.rows import (
    entry_columns,
    entry_rows,
    late_columns,
    late_rows,
    late_sentence,
    left_out_words,
    lesson_columns,
    lesson_rows,
    nothing_taken_up_words,
    outcome_columns,
    outcome_rows,
    totals_words,
)
from planner.desk.records.stock_rows import lot_columns, lot_rows, meter_columns, meter_rows
from planner.desk.rows import ID_ROLE
from planner.desk.say import tr
from planner.desk.tabs import Tabs
from planner.desk.theme import Theme
from planner.desk.words import faults_words
from planner.farm.changes import ChangeSet
from planner.farm.faults import FarmFaultError
from planner.farm.fields import NO_ID, Id
from planner.farm.log import Happening, LogEntry
from planner.planning.dating import Dater
from planner.planning.late import carried_over
from planner.planning.learning import learned, observed, outcomes, reason_totals


class RecordsPlace(Place):
    """Logging by keyboard alone, and everything the log leads to."""

    def __init__(self, needs: PlaceNeeds, parent: QWidget) -> None:
        super().__init__(needs, parent)
        self._behind: Behind | None = None
        self._correcting = NO_ID
        self.line = EntryLine(self.theme, self)
        self.correct = button(tr("C&orrect the chosen…"), self)
        self.withdraw = button(tr("It &never happened"), self)
        self.leave_it = button(tr("Leave it &uncorrected"), self)
        self.leave_it.hide()
        self.accept = button(tr("&Take up what was learned"), self)
        self.new_lot = button(tr("Add a seed &lot…"), self)
        self.new_meter = button(tr("Add a &meter…"), self)
        self.late = Words("", self.theme, self, ink="notice")
        self.late_tasks = Table(late_columns(), tr("Late"), self.theme, self)
        self.totals = Words("", self.theme, self)
        self.entries = Table(entry_columns(), tr("What happened"), self.theme, self)
        self.outcomes = Table(outcome_columns(), tr("Planned against actual"), self.theme, self)
        self.lessons = Table(lesson_columns(), tr("What was learned"), self.theme, self)
        self.lots = Table(lot_columns(), tr("Seed lots"), self.theme, self)
        self.meters = Table(meter_columns(), tr("Meters"), self.theme, self)
        self._say_when_empty()
        self.catch_up = CatchUp(needs, self.theme, self)
        self.tabs = Tabs(self)
        self.tabs.setAccessibleName(tr("Records"))
        self.tabs.tabBar().setAccessibleName(tr("Records"))
        self._lay_out()
        self._connect()

    def _say_when_empty(self) -> None:
        """Let every list say what it is for as long as it is empty."""
        for table, words in (
            (
                self.entries,
                tr(
                    "Nothing is logged yet. "
                    "Say above what happened, to what and how much, then press “Log it”."
                ),
            ),
            (
                self.late_tasks,
                tr("Nothing is late. What was due and is not logged stands here, once there is a log."),
            ),
            (self.outcomes, tr("Nothing to compare yet: log when batches are sown, moved and picked.")),
            (self.lessons, tr("Nothing was learned yet: it comes from the logged stages of batches.")),
            (self.lots, tr("No seed lot yet. Add one, and its germination tests are reckoned with.")),
            (self.meters, tr("No meter yet. Add one, and you are told when it must be calibrated.")),
        ):
            table.say_when_empty(words)

    def _lay_out(self) -> None:
        column = QVBoxLayout(self)
        column.addWidget(self.line)
        column.addWidget(self.late)
        log = _page(self.entries, (self.correct, self.withdraw, self.leave_it), self)
        log.why_wanted.connect(self._on_entry_why)
        self.tabs.addTab(log, tr("What happened"))
        self.tabs.addTab(self.catch_up, tr("From paper"))
        for table, below, title in self._pages():
            page = _page(table, below, self)
            page.why_wanted.connect(self.why_wanted)
            self.tabs.addTab(page, title)
        self.tabs.currentChanged.connect(self._on_turned)
        column.addWidget(self.tabs, 1)

    def _pages(self) -> tuple[tuple[Table, tuple[QWidget, ...], str], ...]:
        """Return the lists behind the tabs, what stands below each, and its title."""
        return (
            (self.late_tasks, (), tr("Late")),
            (self.outcomes, (self.totals,), tr("Planned against actual")),
            (self.lessons, (self.accept,), tr("Learned")),
            (self.lots, (self.new_lot,), tr("Seed lots")),
            (self.meters, (self.new_meter,), tr("Meters")),
        )

    def _connect(self) -> None:
        self.line.save.clicked.connect(self._on_save)
        self.line.notes.returnPressed.connect(self._on_save)
        self.line.again.clicked.connect(self._on_again)
        self.correct.clicked.connect(self._on_correct)
        self.withdraw.clicked.connect(self._on_withdraw)
        self.leave_it.clicked.connect(self._begin_anew)
        self.accept.clicked.connect(self._on_accept)
        self.new_lot.clicked.connect(self._on_new_lot)
        self.new_meter.clicked.connect(self._on_new_meter)
        self.late_tasks.activated.connect(self._on_chosen)
        self.lots.activated.connect(self._on_opened)
        self.meters.activated.connect(self._on_opened)
        self.catch_up.told.connect(self.told)

    def show_behind(self, behind: Behind) -> None:
        """Show the log of a farm; what is being typed stays."""
        self._behind = behind
        self.line.show_behind(behind)
        self.catch_up.show_behind(behind)
        farm, outlook = behind.outlook.farm, behind.outlook
        found = outcomes(farm, Dater(self.needs.forecaster, farm).lengths, behind.today)
        self.entries.show_rows(entry_rows(outlook))
        self.outcomes.show_rows(outcome_rows(outlook, found, behind.today))
        self.totals.say(totals_words(reason_totals(found)))
        seen = observed(farm, found, outlook.catalogue)
        self.lessons.show_rows(lesson_rows(outlook, learned(farm, found, outlook.catalogue), seen))
        self.lots.show_rows(lot_rows(outlook, behind.today))
        self.meters.show_rows(meter_rows(outlook, behind.today))
        late = carried_over(farm, self.needs.forecaster, behind.today)
        self.late.say(late_sentence(outlook, late))
        self.late_tasks.show_rows(late_rows(outlook, late))
        self._on_tab()

    def take_focus(self) -> None:
        """Give the keyboard to the line that is logged with."""
        self.line.what.setFocus()

    def wear(self, theme: Theme) -> None:
        """Wear the colours of a theme."""
        super().wear(theme)
        for part in (self.late, self.totals, self.catch_up, self.line.care):
            part.wear(theme)

    def _on_turned(self, _at: int) -> None:
        """Go straight to the boxes of a sheet; who walks along the tabs by keyboard stays on them."""
        self._on_tab()
        if self.tabs.currentWidget() is self.catch_up and not self.tabs.tabBar().hasFocus():
            self.catch_up.grid.setFocus()

    def _on_tab(self) -> None:
        """Leave the room to the sheet while it is typed from: it has a head of its own."""
        alone = self.tabs.currentWidget() is self.catch_up
        self.line.setVisible(not alone)
        self.late.setVisible(not alone and bool(self.late.text()))

    def _on_save(self) -> None:
        if self._behind is None:
            return
        farm = self._behind.outlook.farm
        dater = Dater(self.needs.forecaster, farm)
        try:
            entry = self.line.entry(noted_at(self.needs.now()))
            if self._correcting != NO_ID:
                done = records.correct(farm, self._correcting, entry, dater)
            else:
                done = records.log(farm, entry, dater)
        except FarmFaultError as refused:
            self.troubled.emit(faults_words(refused.faults))
            return
        self._act(done)

    def _act(self, change_set: ChangeSet) -> None:
        """Do an act; what was typed is only cleared once it is kept."""
        if self.needs.conduct.act(change_set):
            self._begin_anew()

    def _begin_anew(self) -> None:
        """Go on to a new entry: what is logged next corrects nothing."""
        self._correcting = NO_ID
        self.leave_it.hide()
        self.line.save.setText(tr("&Log it"))
        self.line.clear_amount()

    def _chosen(self) -> LogEntry | None:
        row = self.entries.current()
        if row is None or self._behind is None:
            self.troubled.emit(tr("Choose an entry of the log first."))
            return None
        if not row.payload:
            self.troubled.emit(tr("This entry was replaced already; correct the one that replaced it."))
            return None
        found = self._behind.outlook.found[Id(row.id)]
        assert isinstance(found, LogEntry)
        return found

    def _on_entry_why(self, facts: tuple[Fact, ...], number: int) -> None:
        """Pass on what is asked of an entry, with the act that kept it."""
        if self._behind is not None:
            entries = self._behind.outlook.farm.log_entries
            asked = with_act(facts[number], entries, self.needs.conduct.session)
            facts = (*facts[:number], asked, *facts[number + 1 :])
        self.why_wanted.emit(facts, number)

    def _on_again(self) -> None:
        """Fill the line with the last entry, to be logged for the day that is set."""
        entries = self._behind.outlook.farm.log_entries if self._behind else ()
        if not entries:
            self.troubled.emit(tr("Nothing is logged yet, so there is nothing to repeat."))
            return
        self.line.show_entry(entries[-1])
        self.line.amount.setFocus()

    def _on_correct(self) -> None:
        entry = self._chosen()
        if entry is not None:
            self.line.show_entry(entry)
            self.line.show_day(entry.on)
            self._correcting = entry.id
            self.leave_it.show()
            self.line.save.setText(tr("C&orrect {code}", code=entry.code))
            self.line.amount.setFocus()

    def _on_withdraw(self) -> None:
        entry = self._chosen()
        if entry is None or self._behind is None:
            return
        farm, who = self._behind.outlook.farm, self.line.who.text().strip()
        noted = noted_at(self.needs.now())
        gone = replace(records.new_entry(what=Happening.WITHDRAWN, on=entry.on), who=who, noted_at=noted)
        try:
            done = records.withdraw(farm, entry.id, gone, Dater(self.needs.forecaster, farm))
        except FarmFaultError as refused:
            self.troubled.emit(faults_words(refused.faults))
            return
        self._act(done)

    def _on_accept(self) -> None:
        row = self.lessons.current()
        if row is None or self._behind is None:
            self.troubled.emit(tr("Choose what is to be taken up first."))
            return
        farm = self._behind.outlook.farm
        dater = Dater(self.needs.forecaster, farm)
        done = adopt(farm, row.payload, self._behind.today, holds_of=dater.holds)
        if not done.act.changes:
            self.troubled.emit(nothing_taken_up_words(done))
        elif self.needs.conduct.act(done.act) and done.left_out:
            self.told.emit(left_out_words(done))

    def _on_new_lot(self) -> None:
        self.new_wanted.emit("seed lot", "")

    def _on_new_meter(self) -> None:
        self.new_wanted.emit("meter", "")

    def _on_chosen(self, index: QModelIndex) -> None:
        self.chosen.emit(index.data(ID_ROLE))

    def _on_opened(self, index: QModelIndex) -> None:
        self.opened.emit(index.data(ID_ROLE))


class _Page(QWidget):
    """A table with what stands below it; `why_wanted` carries facts and the number of the one asked about."""

    why_wanted = Signal(object, int)


def _page(table: Table, below: tuple[QWidget, ...], parent: QWidget) -> _Page:
    """Return a table with what stands below it."""
    page = _Page(parent)
    column = QVBoxLayout(page)
    column.addWidget(table, 1)
    row = QHBoxLayout()
    for each in below:
        row.addWidget(each, 1 if isinstance(each, Words) else 0)
    row.addStretch(0 if any(isinstance(each, Words) for each in below) else 1)
    column.addLayout(row)
    return page
