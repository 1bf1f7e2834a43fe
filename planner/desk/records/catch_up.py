"""Typing in what was written on paper: the head of a sheet, its lines as a grid, and one act for all of it.

Must know nothing of what a line means.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable
from datetime import date, timedelta
from functools import partial
from typing import Any, Final

from PySide6.QtCore import QDate, Qt, Signal
from PySide6.QtGui import QKeySequence, QShortcut
from PySide6.QtWidgets import (
    QCheckBox,
    QComboBox,
    QDateEdit,
    QDoubleSpinBox,
    QLabel,
    QLineEdit,
    QSizePolicy,
    QSpinBox,
    QVBoxLayout,
    QWidget,
)

from planner.actions.catching_up import EntryRefusedError, log_all
from planner.desk import settings
from planner.desk.behind import Behind
from planner.desk.flow import Flow
from planner.desk.places.place import PlaceNeeds
from planner.desk.plan.kit import Words, button
from planner.desk.records.doubts import doubts_of
from planner.desk.records.grid import SheetGrid
from planner.desk.records.line import DAY_FORMAT
from planner.desk.records.noting import noted_at
from planner.desk.records.prefill import lines_of, nitrogen_shares
from planner.desk.records.sheets import (
    PREFILLED,
    TESTS,
    CellError,
    Sheet,
    SheetHead,
    columns_of,
    entries_of,
)
from planner.desk.say import tr
from planner.desk.theme import Theme
from planner.desk.words import faults_words
from planner.farm.changes import ChangeSet
from planner.farm.checks import thing_faults
from planner.farm.fields import NO_ID, Id
from planner.farm.log import LogEntry
from planner.farm.meters import READ_BY
from planner.farm.water import Quantity
from planner.planning.dating import Dater

_SHEET_WORDS: Final = {
    Sheet.WATER: "Water-test log",
    Sheet.FEED: "Daily feed sheet",
    Sheet.HARVEST: "Harvest record",
    Sheet.TASKS: "Weekly task sheet",
}
_METERS: Final = (
    (Quantity.PH, "pH meter"),
    (Quantity.EC_MS_PER_CM, "EC meter"),
    (Quantity.TDS_MG_PER_L, "ppm meter"),
    (Quantity.OXYGEN_MG_PER_L, "Oxygen meter"),
)
_PRODUCTS: Final = (("k", "K base", "k_share"), ("ca", "Ca base", "ca_share"), ("fe", "Iron", "fe_share"))
_BY_DAYS: Final = (Sheet.WATER, Sheet.FEED)
_MONTH_DAYS: Final = 30
_MOST_SCOOP_G: Final = 10_000.0
_TALL_ROWS: Final = 20
"""A window of fewer rows begins with meters and products folded away, so that the lines are in sight."""
_EVERY: Final = "coefficient/water_care/test_every_days_ph"


class CatchUp(QWidget):
    """A sheet at a time. `told` says what was kept; what stands in the way is said above the lines."""

    told = Signal(str)

    def __init__(self, needs: PlaceNeeds, theme: Theme, parent: QWidget) -> None:
        super().__init__(parent)
        self.needs, self.theme = needs, theme
        self._behind: Behind | None = None
        self._asked: frozenset[tuple[int, str]] = frozenset()
        self.sheet, self.about = QComboBox(self), QComboBox(self)
        self.first, self.last = QDateEdit(self), QDateEdit(self)
        self.who = QLineEdit(self)
        self.meters = {quantity: QComboBox(self) for quantity, _words in _METERS}
        self.products = {key: QComboBox(self) for key, _words, _share in _PRODUCTS}
        self.more = button(tr("&Meters and products"), self, tip=tr("With what was read and dosed"))
        self.more.setCheckable(True)
        self.ions = QCheckBox(tr("NO₂ and NO₃ were read as the ion"), self)
        self.scoop = QDoubleSpinBox(self)
        self.every = QSpinBox(self)
        self.begin = button(tr("&New lines"), self, tip=tr("Begin the sheet anew for these days"))
        self.keep = button(tr("&Keep all lines"), self, tip=tr("Log every line in one act (Ctrl+S)"))
        self.asks = Words("", theme, self, ink="notice")
        self.grid = SheetGrid(theme, self)
        self._labels: dict[QWidget, QWidget] = {}
        self._fill()
        self._lay_out()
        self._connect()

    def _fill(self) -> None:
        for sheet, words in _SHEET_WORDS.items():
            self.sheet.addItem(tr(words), sheet)
        self.who.setPlaceholderText(tr("AB"))
        self.who.setSizePolicy(QSizePolicy.Policy.Fixed, QSizePolicy.Policy.Fixed)
        self.every.setRange(1, _MONTH_DAYS)
        self.every.setSuffix(tr(" d"))
        self.scoop.setRange(0.0, _MOST_SCOOP_G)
        self.scoop.setSuffix(tr(" g a scoop"))
        self.scoop.setValue(self.needs.memory.get(settings.SCOOP_G))
        self.who.setText(self.needs.memory.get(settings.INITIALS))
        for edit in (self.first, self.last):
            edit.setCalendarPopup(True)
            edit.setDisplayFormat(DAY_FORMAT)
        self.who.setFixedWidth(self.who.sizeHint().width() // 2)
        self.grid.setAccessibleName(tr("Lines of the sheet"))

    def _lay_out(self) -> None:
        column = QVBoxLayout(self)
        column.setContentsMargins(0, self.theme.metrics.gap, 0, 0)
        head = Flow(self.theme.metrics.gap)
        for part, words in self._named():
            head.add(self._labelled(part, words))
        head.add(self.ions, self.more, self.begin, self.keep)
        column.addLayout(head)
        column.addWidget(self.asks)
        column.addWidget(self.grid, 1)

    def _named(self) -> Iterable[tuple[QWidget, str]]:
        yield self.sheet, tr("Sheet")
        yield self.about, tr("About")
        yield self.first, tr("From")
        yield self.last, tr("To")
        yield self.every, tr("A line every")
        yield self.who, tr("Initials")
        for quantity, words in _METERS:
            yield self.meters[quantity], tr(words)
        for key, words, _share in _PRODUCTS:
            yield self.products[key], tr(words)
        yield self.scoop, tr("Scoop")

    def _labelled(self, part: QWidget, words: str) -> QWidget:
        """Return a control with its name above it."""
        holder = QWidget(self)
        column = QVBoxLayout(holder)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(0)
        label = QLabel(words, holder)
        label.setBuddy(part)
        column.addWidget(label)
        column.addWidget(part)
        part.setAccessibleName(words)
        self._labels[part] = holder
        return holder

    def _connect(self) -> None:
        self.sheet.currentIndexChanged.connect(self._on_sheet)
        self.more.toggled.connect(self._on_sheet_parts)
        self.begin.clicked.connect(self._on_begin)
        self.keep.clicked.connect(self._on_keep)
        self.grid.changed.connect(self._on_changed)
        self.who.editingFinished.connect(self._on_who)
        save = QShortcut(QKeySequence.StandardKey.Save, self)
        save.setContext(Qt.ShortcutContext.WidgetWithChildrenShortcut)
        save.activated.connect(self._on_keep)

    def show_behind(self, behind: Behind) -> None:
        """Follow the farm; what is being typed stays."""
        first = self._behind is None
        self._behind = behind
        if first:
            self.last.setDate(_q(behind.today))
            self.first.setDate(_q(behind.today - timedelta(days=_MONTH_DAYS)))
            self.more.setChecked(self.window().height() >= self.theme.metrics.row * _TALL_ROWS)
            self._on_sheet()
        else:
            self._offer()

    def wear(self, theme: Theme) -> None:
        """Wear the colours of a theme."""
        self.theme = self.grid.theme = theme
        self.asks.wear(theme)

    # The head.

    def _on_sheet(self, *_at: int) -> None:
        self._offer()
        if self._behind is not None:
            figure = self._behind.outlook.catalogue.figure(_EVERY)
            self.every.setValue(int(figure.value) if self.sheet.currentData() is Sheet.WATER else 1)
        self._begin()

    def _offer(self) -> None:
        """Offer what a sheet can be about, meters and products; what was chosen stays."""
        if self._behind is None:
            return
        farm, sheet = self._behind.outlook.farm, self.sheet.currentData()
        about: tuple[Any, ...] = farm.loops if sheet is Sheet.WATER else ()
        about = farm.fish_groups if sheet is Sheet.FEED else about
        _choices(self.about, [(thing.name, thing.id) for thing in about])
        for quantity, box in self.meters.items():
            suited = [(m.name, m.id) for m in farm.meters if quantity in READ_BY[m.kind]]
            _choices(box, [(tr("none"), NO_ID), *suited], chosen=suited[0][1] if len(suited) == 1 else None)
        catalogue = self._behind.outlook.catalogue
        for key, _words, share in _PRODUCTS:
            products = [
                (each.name, each.key)
                for each in catalogue.supplements.values()
                if getattr(each, share) > 0 and (key == "fe" or each.base_eq_per_kg > 0)
            ]
            used = {dose.supplement for dose in farm.doses}
            chosen = next((product for _name, product in products if product in used), None)
            _choices(self.products[key], [(tr("none"), ""), *products], chosen=chosen)
        self._show_for(sheet)

    def _show_for(self, sheet: Sheet) -> None:
        water = sheet is Sheet.WATER
        for part in (*self.meters.values(), *self.products.values()):
            self._labels[part].setVisible(water and self.more.isChecked())
        self.more.setVisible(water)
        self.ions.setVisible(water)
        self._labels[self.scoop].setVisible(sheet is Sheet.FEED)
        self._labels[self.every].setVisible(sheet in _BY_DAYS)
        self._labels[self.about].setVisible(self.about.count() > 1)

    def _on_sheet_parts(self, _shown: bool) -> None:
        self._show_for(self.sheet.currentData())

    def _on_begin(self, *_checked: bool) -> None:
        self._begin()
        self.grid.setFocus()

    def _begin(self) -> None:
        if self._behind is None:
            return
        sheet, outlook = self.sheet.currentData(), self._behind.outlook
        self.grid.set_sheet(columns_of(sheet), prefilled=PREFILLED[sheet])
        self.grid.set_lines(
            lines_of(
                sheet, outlook, _d(self.first.date()), _d(self.last.date()), every_days=self.every.value()
            )
        )
        self._asked = frozenset()
        self.asks.say("")

    def _on_who(self) -> None:
        self.needs.memory.put(settings.INITIALS, self.who.text().strip())

    def head(self) -> SheetHead:
        """Return the head as it stands."""
        assert self._behind is not None
        about = Id(self.about.currentData() or NO_ID)
        water = self.sheet.currentData() is Sheet.WATER
        return SheetHead(
            loop=about if water else NO_ID,
            group=NO_ID if water else about,
            who=self.who.text().strip(),
            noted_at=noted_at(self.needs.now()),
            meters={quantity: Id(box.currentData() or NO_ID) for quantity, box in self.meters.items()},
            ions=self.ions.isChecked(),
            nitrogen_share=nitrogen_shares(self._behind.outlook.catalogue),
            products={key: box.currentData() or "" for key, box in self.products.items()},
            scoop_g=self.scoop.value(),
            today=self._behind.today,
        )

    # Keeping.

    def _on_changed(self) -> None:
        self.grid.unmark()

    def _on_keep(self, *_checked: bool) -> None:
        if self._behind is None:
            return
        self.grid.unmark()
        found = self._read()
        if found is None:
            return
        if not found:
            self.asks.say(tr("Nothing was typed yet."))
            return
        entries = [entry for _row, entry in found]
        doubts = tuple(doubts_of(self._behind.outlook.farm, entries, self._behind.outlook.catalogue))
        asked = frozenset((found[number][0], words) for number, words in doubts)
        if asked - self._asked:
            self._ask(found, doubts)
            self._asked |= asked
            return
        self._act(found)

    def _read(self) -> list[tuple[int, LogEntry]] | None:
        """Return (line, entry) of all lines; None when one cannot be read, which is then marked."""
        assert self._behind is not None
        sheet, head, farm = self.sheet.currentData(), self.head(), self._behind.outlook.farm
        found: list[tuple[int, LogEntry]] = []
        for row, line in enumerate(self.grid.lines()):
            try:
                found.extend((row, checked_entry(entry)) for entry in entries_of(sheet, line, head, farm))
            except CellError as refused:
                self._refuse(row, refused.key, str(refused))
                return None
        return found

    def _refuse(self, row: int, key: str, words: str) -> None:
        self.grid.mark(row, key, words, wrong=True)
        said = tr("Line {line}: {words}", line=row + 1, words=words)
        self.asks.say(f"{said} {tr('Nothing was kept yet, and nothing typed is lost.')}")
        self.grid.setFocus()

    def _ask(self, found: list[tuple[int, LogEntry]], doubts: tuple[tuple[int, str], ...]) -> None:
        for number, words in doubts:
            row, entry = found[number]
            key = _box_of(entry)
            self.grid.mark(row, key, words, wrong=False)
        many = "\n".join(words for _number, words in doubts[:_MOST_ASKED])
        again = tr("Mend it, or keep all lines once more to say that it is right.")
        self.asks.say(f"{many}\n{again}")

    def _act(self, found: list[tuple[int, LogEntry]]) -> None:
        assert self._behind is not None
        entries = [entry for _row, entry in found]
        farm, sheet = self._behind.outlook.farm, self.sheet.currentText()
        title = tr("Catch up: {sheet}, {count} entries", sheet=sheet, count=len(entries))
        dating: Callable[[Any], Dater] = partial(Dater, self.needs.forecaster)
        try:
            done: ChangeSet = log_all(farm, entries, dating, title=title)
        except EntryRefusedError as refused:
            self._refuse(found[refused.number][0], "", faults_words(refused.faults))
            return
        if self.needs.conduct.act(done):
            self.told.emit(
                tr("{count} entries were logged. One undo takes all of them back.", count=len(entries))
            )
            self._begin()


_MOST_ASKED: Final = 4
_BOX_OF: Final = {quantity: key for key, quantity in TESTS.items()}


def _box_of(entry: LogEntry) -> str:
    """Return the box that an entry was typed into."""
    return "picked" if entry.quantity is None else _BOX_OF.get(entry.quantity, "")


def checked_entry(entry: LogEntry) -> LogEntry:
    """Return an entry that is free of faults; raises `CellError` for a value that there cannot be."""
    faults = tuple(thing_faults(entry))
    if faults:
        raise CellError(_box_of(entry), "; ".join(fault.message for fault in faults))
    return entry


def _choices(box: QComboBox, choices: list[tuple[str, Any]], *, chosen: Any = None) -> None:
    """Offer other choices; what was chosen stays, else `chosen`, else the first."""
    kept = box.currentData() if box.count() else None
    blocked = box.blockSignals(True)
    box.clear()
    for words, data in choices:
        box.addItem(words, data)
    for wanted in (kept, chosen):
        at = box.findData(wanted)
        if wanted not in (None, "") and at >= 0:
            box.setCurrentIndex(at)
            break
    box.blockSignals(blocked)


def _q(day: date) -> QDate:
    return QDate(day.year, day.month, day.day)


def _d(day: QDate) -> date:
    return date(day.year(), day.month(), day.day())
