"""The line that one thing is logged with: what, about what, how much, when and by whom. Keyboard only.

Must know nothing of what an entry changes in the plan.
"""

from __future__ import annotations

from datetime import date
from itertools import pairwise
from typing import Any, Final

from PySide6.QtCore import QDate, QTime
from PySide6.QtWidgets import (
    QComboBox,
    QDateEdit,
    QDoubleSpinBox,
    QLineEdit,
    QSizePolicy,
    QSpinBox,
    QVBoxLayout,
    QWidget,
)

from planner.actions import records
from planner.desk.behind import Behind
from planner.desk.flow import Flow
from planner.desk.plan.kit import Words, button
from planner.desk.records.choice import Choice
from planner.desk.say import tr
from planner.desk.theme import Theme
from planner.desk.water_words import caution_texts
from planner.desk.words import choice_words, unit_words
from planner.farm.farm import label_of, things
from planner.farm.fields import NO_ID
from planner.farm.log import ABOUT, Happening, LogEntry, Reason, Unit
from planner.farm.log_checks import NEEDED_OF, UNITS_OF
from planner.farm.meters import READ_BY
from planner.farm.water import Quantity

DAY_FORMAT: Final = "ddd d MMM yyyy"
"""As dates are written everywhere: no day can be taken for a month."""
_CARE: Final = {
    Happening.TREATED: ("fish-medicine",),
    Happening.RELEASED: ("fish-medicine",),
    Happening.FISH_TAKEN: ("fish-as-food",),
    Happening.PICKED: ("water-on-leaves",),
    Happening.SIPHONED: ("solids-as-manure",),
    Happening.RETURNED: ("solids-as-manure",),
    Happening.PEST: ("pesticides",),
}
"""Cautions of the catalogue that belong to what is logged; those of a dose are those of its product."""

_MOST = 10_000_000
_MOST_SEEDS = 1_000_000
_NOTHING = -51.0
"""Below the coldest air there is: stands for no amount."""


class EntryLine(QWidget):
    """The boxes of one entry."""

    def __init__(self, theme: Theme, parent: QWidget) -> None:
        super().__init__(parent)
        self._behind: Behind | None = None
        self.what, self.about, self.unit = Choice(self), Choice(self), Choice(self)
        self.supplement, self.reason = Choice(self), Choice(self)
        self.quantity, self.meter = Choice(self), Choice(self)
        self.on, self.at = QDateEdit(self), QLineEdit(self)
        self.amount, self.out_of = QDoubleSpinBox(self), QSpinBox(self)
        self.who, self.notes = QLineEdit(self), QLineEdit(self)
        self.save = button(tr("&Log it"), self)
        self.again = button(tr("&Repeat the last"), self)
        self.care = Words("", theme, self, ink="notice")
        self._fill()
        self._lay_out(theme.metrics.gap)
        self.what.currentIndexChanged.connect(self.follow)
        self.quantity.currentIndexChanged.connect(self._offer_meters)
        self.supplement.currentIndexChanged.connect(self._show_care)
        self.follow()

    def _fill(self) -> None:
        for what in Happening:
            if what is not Happening.WITHDRAWN:
                self.what.addItem(choice_words(what), what)
        for reason in Reason:
            self.reason.addItem(choice_words(reason) if reason.value else tr("no reason"), reason)
        for quantity in Quantity:
            if quantity is not Quantity.TOP_UP_L:
                self.quantity.addItem(choice_words(quantity), quantity)
        self.on.setCalendarPopup(True)
        self.at.setPlaceholderText(tr("07:30"))
        self.at.setMaxLength(5)
        for box, sample in ((self.at, self.at.placeholderText()), (self.who, "MMMMMM")):
            box.setFixedWidth(_room(box, sample))
            box.setSizePolicy(QSizePolicy.Policy.Fixed, QSizePolicy.Policy.Fixed)
        self.on.setDisplayFormat(DAY_FORMAT)
        self.amount.setRange(_NOTHING, _MOST)
        self.amount.setSpecialValueText(tr("no amount"))
        self.amount.setValue(_NOTHING)
        self.out_of.setRange(0, _MOST_SEEDS)
        self.out_of.setPrefix(tr("of "))
        self.who.setPlaceholderText(tr("Who"))
        self.notes.setPlaceholderText(tr("Note"))
        for part, name in self._named():
            part.setAccessibleName(name)
            part.setToolTip(name)

    def _named(self) -> tuple[tuple[QWidget, str], ...]:
        return (
            (self.on, tr("Day")),
            (self.at, tr("Time of day")),
            (self.what, tr("What happened")),
            (self.about, tr("About")),
            (self.supplement, tr("Supplement")),
            (self.quantity, tr("What was read")),
            (self.meter, tr("Meter")),
            (self.amount, tr("Amount")),
            (self.out_of, tr("Of how many seeds")),
            (self.unit, tr("Unit")),
            (self.reason, tr("Reason")),
            (self.who, tr("Who")),
            (self.notes, tr("Note")),
        )

    def _lay_out(self, gap: int) -> None:
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        flow = Flow(gap)
        flow.add(*(part for part, _name in self._named()), self.save, self.again)
        column.addLayout(flow)
        column.addWidget(self.care)
        self._order()

    def _order(self) -> None:
        """Let the keyboard go through the boxes as they stand, not as they were made."""
        parts = (*(part for part, _name in self._named()), self.save, self.again)
        for before, after in pairwise(parts):
            QWidget.setTabOrder(before, after)

    def show_behind(self, behind: Behind) -> None:
        """Follow the farm; what is being typed stays."""
        if self._behind is None:
            self.on.setDate(QDate(behind.today.year, behind.today.month, behind.today.day))
        self._behind = behind
        self.follow()

    def follow(self, *_at: int) -> None:
        """Offer what an entry of this kind can be about, its units, and the boxes it needs."""
        what = self.what.currentData()
        needed = NEEDED_OF.get(what, ())
        self.supplement.setVisible("supplement" in needed)
        self.out_of.setVisible("out_of" in needed)
        self.quantity.setVisible("quantity" in needed)
        self.meter.setVisible("quantity" in needed)
        self.unit.setVisible(what is not Happening.MEASURED)
        if self._behind is None:
            return
        farm, kept = self._behind.outlook.farm, self.about.currentData()
        wanted = [field for field in needed if field in ABOUT]
        self.about.clear()
        if not wanted:
            self.about.addItem(tr("the farm as a whole"), ("", NO_ID))
        for field, word in ABOUT.items():
            if not wanted or field in wanted:
                for thing in things(farm, word):
                    self.about.addItem(label_of(thing), (field, thing.id))
        choose(self.about, kept)
        self.unit.clear()
        for unit in UNITS_OF.get(what, tuple(Unit)):
            self.unit.addItem(unit_words(unit.value) or tr("no unit"), unit)
        if not self.supplement.count():
            for key, entry in self._behind.outlook.catalogue.supplements.items():
                self.supplement.addItem(entry.name, key)
        self._offer_meters()
        self._show_care()

    def _show_care(self, *_at: int) -> None:
        """Show the caution that belongs to what is logged, where it is logged."""
        if self._behind is None:
            return
        what, catalogue = self.what.currentData(), self._behind.outlook.catalogue
        keys: tuple[str, ...] = _CARE.get(what, ())
        if what is Happening.DOSED:
            product = catalogue.supplements.get(self.supplement.currentData() or "")
            keys = product.cautions if product is not None else ()
        self.care.say("\n".join(caution_texts(keys, catalogue)))

    def _offer_meters(self, *_at: int) -> None:
        if self._behind is None:
            return
        kept, quantity = self.meter.currentData(), self.quantity.currentData()
        self.meter.clear()
        self.meter.addItem(tr("no meter"), NO_ID)
        for meter in self._behind.outlook.farm.meters:
            if quantity in READ_BY[meter.kind]:
                self.meter.addItem(meter.name, meter.id)
        choose(self.meter, kept)

    def entry(self, noted_at: str) -> LogEntry:
        """Return the entry as it stands."""
        field, thing = self.about.currentData() or ("", NO_ID)
        what: Happening = self.what.currentData()
        needed = NEEDED_OF.get(what, ())
        given: dict[str, Any] = {field: thing} if field else {}
        if "supplement" in needed:
            given["supplement"] = self.supplement.currentData() or ""
        if "out_of" in needed:
            given["out_of"] = self.out_of.value() or None
        if "quantity" in needed:
            given |= {"quantity": self.quantity.currentData(), "meter": self.meter.currentData() or NO_ID}
        if self.amount.value() > _NOTHING:
            given |= {"amount": self.amount.value(), "unit": self.unit.currentData()}
        day = self.on.date()
        return records.new_entry(
            what=what,
            on=date(day.year(), day.month(), day.day()),
            at=_clock(self.at.text()),
            reason=self.reason.currentData(),
            who=self.who.text().strip(),
            noted_at=noted_at,
            notes=self.notes.text(),
            **given,
        )

    def show_entry(self, entry: LogEntry) -> None:
        """Show an entry, but for its day."""
        choose(self.what, entry.what)
        for field in ABOUT:
            if getattr(entry, field) != NO_ID:
                choose(self.about, (field, getattr(entry, field)))
        for box, data in (
            (self.unit, entry.unit),
            (self.supplement, entry.supplement),
            (self.quantity, entry.quantity),
            (self.meter, entry.meter),
            (self.reason, entry.reason),
        ):
            choose(box, data)
        self.amount.setValue(_NOTHING if entry.amount is None else entry.amount)
        self.out_of.setValue(entry.out_of or 0)
        self.at.setText(entry.at)
        self.who.setText(entry.who)
        self.notes.setText(entry.notes)

    def show_day(self, on: date) -> None:
        """Set the day."""
        self.on.setDate(QDate(on.year, on.month, on.day))

    def clear_amount(self) -> None:
        """Make room for the next entry; day, kind and person stay.

        A reason goes too: what is counted by reason must not hold one that nobody gave.
        """
        self.amount.setValue(_NOTHING)
        choose(self.reason, Reason.NONE)
        self.notes.clear()
        self.at.clear()
        self.what.setFocus()


def _room(box: QLineEdit, sample: str) -> int:
    """Return the width of a box that holds a sample and its frame."""
    return box.fontMetrics().horizontalAdvance(sample) + 2 * box.fontMetrics().height()


def choose(box: QComboBox, data: Any) -> None:
    """Choose what carries some data, if it is there."""
    for at in range(box.count()):
        if box.itemData(at) == data:
            box.setCurrentIndex(at)


def _clock(typed: str) -> str:
    """Return a time of day with two digits for the hour; what is no time stays as typed, to be refused."""
    found = QTime.fromString(typed.strip(), "H:mm")
    return found.toString("HH:mm") if found.isValid() else typed.strip()
