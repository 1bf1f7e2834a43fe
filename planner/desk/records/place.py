"""The page of records: a line to log with, what was logged, planned against actual, what was learned.

Must know nothing of how days are learned or batches dated.
"""

from __future__ import annotations

from dataclasses import replace
from datetime import date
from typing import Any

from PySide6.QtCore import QDate
from PySide6.QtWidgets import (
    QComboBox,
    QDateEdit,
    QDoubleSpinBox,
    QHBoxLayout,
    QLineEdit,
    QTabWidget,
    QVBoxLayout,
    QWidget,
)

from planner.actions import records
from planner.actions.learning import adopt
from planner.desk.behind import Behind
from planner.desk.places.place import Place, PlaceNeeds
from planner.desk.plan.kit import Table, Words, button
from planner.desk.records.rows import (
    entry_columns,
    entry_rows,
    late_sentences,
    lesson_columns,
    lesson_rows,
    outcome_columns,
    outcome_rows,
)
from planner.desk.say import tr
from planner.desk.theme import Theme
from planner.desk.words import choice_words, faults_words
from planner.farm.changes import ChangeSet
from planner.farm.farm import label_of, things
from planner.farm.faults import FarmFaultError
from planner.farm.fields import NO_ID, Id
from planner.farm.log import Happening, LogEntry, Reason, Unit
from planner.farm.log_checks import NEEDED_OF, UNITS_OF
from planner.planning.dating import Dater
from planner.planning.late import carried_over
from planner.planning.learning import learned, outcomes

_ABOUT = (("batch", "batch"), ("group", "fish group"), ("bed", "bed"), ("loop", "loop"))
_MOST = 10_000_000


class RecordsPlace(Place):
    """Logging by keyboard alone, and everything the log leads to."""

    def __init__(self, needs: PlaceNeeds, parent: QWidget) -> None:
        super().__init__(needs, parent)
        self._behind: Behind | None = None
        self._correcting = NO_ID
        self.what, self.about, self.unit = QComboBox(self), QComboBox(self), QComboBox(self)
        self.supplement, self.reason = QComboBox(self), QComboBox(self)
        self.on = QDateEdit(self)
        self.amount = QDoubleSpinBox(self)
        self.who, self.notes = QLineEdit(self), QLineEdit(self)
        self.save = button(tr("&Log it"), self)
        self.again = button(tr("&Repeat the last"), self)
        self.correct = button(tr("&Correct the chosen…"), self)
        self.withdraw = button(tr("It &never happened"), self)
        self.accept = button(tr("&Take up what was learned"), self)
        self.late = Words("", self.theme, self, ink="notice")
        self.entries = Table(entry_columns(), tr("What happened"), self.theme, self)
        self.outcomes = Table(outcome_columns(), tr("Planned against actual"), self.theme, self)
        self.lessons = Table(lesson_columns(), tr("What was learned"), self.theme, self)
        self._fill()
        self._lay_out()
        self._connect()

    def _fill(self) -> None:
        for what in Happening:
            if what is not Happening.WITHDRAWN:
                self.what.addItem(choice_words(what), what)
        for reason in Reason:
            self.reason.addItem(choice_words(reason) if reason.value else tr("no reason"), reason)
        self.on.setCalendarPopup(True)
        self.amount.setRange(-1, _MOST)
        self.amount.setSpecialValueText(tr("no amount"))
        self.amount.setValue(-1)
        self.who.setPlaceholderText(tr("Who"))
        self.notes.setPlaceholderText(tr("Note"))
        names = (tr("What happened"), tr("About"), tr("Unit"), tr("Supplement"), tr("Reason"), tr("Day"))
        parts = (self.what, self.about, self.unit, self.supplement, self.reason, self.on)
        named = (*zip(parts, names, strict=True), (self.amount, tr("Amount")))
        for part, name in (*named, (self.who, tr("Who")), (self.notes, tr("Note"))):
            part.setAccessibleName(name)
            part.setToolTip(name)

    def _lay_out(self) -> None:
        column = QVBoxLayout(self)
        for line in (
            (self.on, self.what, self.about, self.supplement, self.amount, self.unit),
            (self.reason, self.who, self.notes, self.save, self.again),
        ):
            row = QHBoxLayout()
            for part in line:
                row.addWidget(part, 1 if part in (self.about, self.notes) else 0)
            column.addLayout(row)
        column.addWidget(self.late)
        tabs = QTabWidget(self)
        for table, title, buttons in (
            (self.entries, tr("What happened"), (self.correct, self.withdraw)),
            (self.outcomes, tr("Planned against actual"), ()),
            (self.lessons, tr("Learned"), (self.accept,)),
        ):
            tabs.addTab(_with_buttons(table, buttons, self), title)
        column.addWidget(tabs, 1)

    def _connect(self) -> None:
        self.what.currentIndexChanged.connect(self._on_what)
        self.save.clicked.connect(self._on_save)
        self.notes.returnPressed.connect(self._on_save)
        self.again.clicked.connect(self._on_again)
        self.correct.clicked.connect(self._on_correct)
        self.withdraw.clicked.connect(self._on_withdraw)
        self.accept.clicked.connect(self._on_accept)

    def show_behind(self, behind: Behind) -> None:
        """Show the log of a farm; what is being typed stays."""
        first = self._behind is None
        self._behind = behind
        if first:
            self.on.setDate(QDate(behind.today.year, behind.today.month, behind.today.day))
        self._on_what()
        farm, outlook = behind.outlook.farm, behind.outlook
        found = outcomes(farm, Dater(self.needs.forecaster, farm).lengths, behind.today)
        self.entries.show_rows(entry_rows(outlook))
        self.outcomes.show_rows(outcome_rows(outlook, found))
        self.lessons.show_rows(lesson_rows(outlook, learned(farm, found, outlook.catalogue)))
        self.late.say(late_sentences(outlook, carried_over(farm, self.needs.forecaster, behind.today)))

    def take_focus(self) -> None:
        """Give the keyboard to the line that is logged with."""
        self.what.setFocus()

    def wear(self, theme: Theme) -> None:
        """Wear the colours of a theme."""
        super().wear(theme)
        self.late.wear(theme)

    def _on_what(self) -> None:
        """Offer what an entry of this kind can be about, and its units."""
        if self._behind is None:
            return
        what, farm, kept = self.what.currentData(), self._behind.outlook.farm, self.about.currentData()
        needed = [field for field in NEEDED_OF.get(what, ()) if field in dict(_ABOUT)]
        self.about.clear()
        if not needed:
            self.about.addItem(tr("the farm as a whole"), ("", NO_ID))
        for field, word in _ABOUT:
            if not needed or field in needed:
                for thing in things(farm, word):
                    self.about.addItem(label_of(thing), (field, thing.id))
        self._choose(self.about, kept)
        self.unit.clear()
        for unit in UNITS_OF.get(what, tuple(Unit)):
            self.unit.addItem(unit.value or tr("no unit"), unit)
        self.supplement.setVisible("supplement" in NEEDED_OF.get(what, ()))
        if not self.supplement.count():
            for key, entry in self._behind.outlook.catalogue.supplements.items():
                self.supplement.addItem(entry.name, key)

    def _choose(self, box: QComboBox, data: Any) -> None:
        for at in range(box.count()):
            if box.itemData(at) == data:
                box.setCurrentIndex(at)

    def _typed(self) -> LogEntry:
        field, thing = self.about.currentData() or ("", NO_ID)
        what: Happening = self.what.currentData()
        given: dict[str, Any] = {field: thing} if field else {}
        if "supplement" in NEEDED_OF.get(what, ()):
            given["supplement"] = self.supplement.currentData() or ""
        if self.amount.value() >= 0:
            given |= {"amount": self.amount.value(), "unit": self.unit.currentData()}
        day = self.on.date()
        return records.new_entry(
            what=what,
            on=date(day.year(), day.month(), day.day()),
            reason=self.reason.currentData(),
            who=self.who.text().strip(),
            notes=self.notes.text(),
            **given,
        )

    def _on_save(self) -> None:
        if self._behind is None:
            return
        farm = self._behind.outlook.farm
        dater = Dater(self.needs.forecaster, farm)
        try:
            entry = self._typed()
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
            self._correcting = NO_ID
            self.save.setText(tr("&Log it"))
            self.amount.setValue(-1)
            self.notes.clear()
            self.what.setFocus()

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

    def _show_entry(self, entry: LogEntry) -> None:
        self._choose(self.what, entry.what)
        for field, _word in _ABOUT:
            if getattr(entry, field) != NO_ID:
                self._choose(self.about, (field, getattr(entry, field)))
        self._choose(self.unit, entry.unit)
        self._choose(self.supplement, entry.supplement)
        self._choose(self.reason, entry.reason)
        self.amount.setValue(-1 if entry.amount is None else entry.amount)
        self.who.setText(entry.who)
        self.notes.setText(entry.notes)

    def _on_again(self) -> None:
        """Fill the line with the last entry, to be logged for the day that is set."""
        entries = self._behind.outlook.farm.log_entries if self._behind else ()
        if entries:
            self._show_entry(entries[-1])
            self.amount.setFocus()

    def _on_correct(self) -> None:
        entry = self._chosen()
        if entry is not None:
            self._show_entry(entry)
            self.on.setDate(QDate(entry.on.year, entry.on.month, entry.on.day))
            self._correcting = entry.id
            self.save.setText(tr("&Correct {code}", code=entry.code))
            self.amount.setFocus()

    def _on_withdraw(self) -> None:
        entry = self._chosen()
        if entry is None or self._behind is None:
            return
        farm = self._behind.outlook.farm
        gone = replace(records.new_entry(what=Happening.WITHDRAWN, on=entry.on), who=self.who.text().strip())
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
        done = adopt(self._behind.outlook.farm, row.payload, self._behind.today)
        if not done.changes:
            self.troubled.emit(tr("No batch is still to be sown that this is for."))
            return
        self.needs.conduct.act(done)


def _with_buttons(table: Table, buttons: tuple[QWidget, ...], parent: QWidget) -> QWidget:
    page = QWidget(parent)
    column = QVBoxLayout(page)
    column.addWidget(table, 1)
    row = QHBoxLayout()
    for each in buttons:
        row.addWidget(each)
    row.addStretch(1)
    column.addLayout(row)
    return page
