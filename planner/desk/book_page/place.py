"""The page of the catalogue: choose an entry and a figure, type an own value, see what moves, keep it.

Must know nothing of how own entries are laid over the book.
"""

from __future__ import annotations

from PySide6.QtCore import QLocale, QModelIndex
from PySide6.QtWidgets import QComboBox, QHBoxLayout, QLabel, QLineEdit, QVBoxLayout, QWidget

from planner.actions.changing import addition
from planner.desk.behind import Behind
from planner.desk.book_page.dates import DatesTable
from planner.desk.book_page.library import LibraryFiles
from planner.desk.book_page.new_entry import NewEntryDialog
from planner.desk.book_page.new_values import entry_faults
from planner.desk.book_page.own_values import Place as FigurePlace
from planner.desk.book_page.own_values import has_own_value, laid, moved_words, shifts, taken_off
from planner.desk.book_page.rows import (
    SHELVES,
    entries_of,
    entry_columns,
    entry_rows,
    field_label,
    figure_columns,
    figure_rows,
)
from planner.desk.flow import Flow
from planner.desk.places.place import Place, PlaceNeeds
from planner.desk.plan.kit import Beside, Table, Words, button, heading, stack
from planner.desk.say import careful, tr
from planner.desk.theme import Theme
from planner.desk.words import faults_words, limit_words, number_words
from planner.farm.changes import ChangeSet, applied
from planner.farm.farm import OwnEntry, Shelf
from planner.farm.faults import FarmFaultError


class BookPlace(Place):
    """Shelves, entries and figures, with a line to lay an own value over the book's."""

    def __init__(self, needs: PlaceNeeds, parent: QWidget) -> None:
        super().__init__(needs, parent)
        self._behind: Behind | None = None
        theme = self.theme
        self.shelf = QComboBox(self)
        self.shelf.setAccessibleName(tr("Shelf of the catalogue"))
        for shelf, words, _ in SHELVES:
            self.shelf.addItem(tr(words), shelf.value)
        self._make_buttons()
        self.library = LibraryFiles(needs, self)
        self.dialog: NewEntryDialog | None = None
        self._seen: tuple[object, ...] = ()
        self.entries = Table(entry_columns(), tr("Entries"), theme, self)
        self.figures = Table(figure_columns(), tr("Figures"), theme, self)
        self.title = heading("", theme, self, large=True)
        self.about = Words("", theme, self, ink="muted")
        self.name = QLabel(self)
        self.value = QLineEdit(self)
        self.value.setAccessibleName(tr("Your own value"))
        self.limits = Words("", theme, self, ink="muted")
        self.trouble = Words("", theme, self, ink="wrong")
        self.moves = Words("", theme, self)
        self.dates = DatesTable(theme, self)
        self.ask = button(
            tr("What would move?"), self, tip=tr("Works the plan out with your value, keeps nothing")
        )
        self.keep = button(tr("Keep my value"), self)
        self.back = button(tr("Back to the book's value"), self)
        self._lay_out()
        self._connect()

    def _make_buttons(self) -> None:
        self.lots = button(tr("Seed lot…"), self, tip=tr("Add a packet or delivery of seed"))
        about = tr("A crop or variety, a fish, a feed or a supplement of your own")
        self.new = button(tr("New entry…"), self, tip=about)
        self.out = button(tr("Write…"), self, tip=tr("Write all entries of your own as text"))
        about = tr("Take in entries from a text, telling first what moves")
        self.take = button(tr("Take in…"), self, tip=about)

    def _connect(self) -> None:
        self.shelf.currentIndexChanged.connect(self._on_shelf)
        self.entries.selectionModel().currentRowChanged.connect(self._on_entry)
        self.figures.selectionModel().currentRowChanged.connect(self._on_figure)
        self.figures.activated.connect(self._on_activated)
        self.dates.asked.connect(self.why_wanted)
        self.value.textEdited.connect(self._on_typed)
        self.value.returnPressed.connect(self._on_ask)
        self.ask.clicked.connect(self._on_ask)
        self.keep.clicked.connect(self._on_keep)
        self.back.clicked.connect(self._on_back)
        self.lots.clicked.connect(self._on_lot)
        self.new.clicked.connect(self._on_new)
        self.out.clicked.connect(self._on_out)
        self.take.clicked.connect(self._on_take)
        self.library.told.connect(self.told)
        self.library.troubled.connect(self.troubled)
        self.library.wished.connect(self._act)

    def _lay_out(self) -> None:
        metrics = self.theme.metrics
        split = Beside(self.theme, self)
        left, right = QWidget(self), QWidget(self)
        lines = self._column(left)
        lines.addWidget(self.shelf)
        lines.addWidget(self.entries, 1)
        for pair in ((self.new, self.lots), (self.out, self.take)):
            foot = QHBoxLayout()
            for control in pair:
                foot.addWidget(control, 1)
            lines.addLayout(foot)
        lines = self._column(right)
        for part in (self.title, self.about):
            lines.addWidget(part)
        row = Flow(metrics.gap)
        self.name.setBuddy(self.value)
        self.value.setMaximumWidth(metrics.field_width)
        row.add(self.name, self.value, self.ask, self.keep, self.back)
        lines.addLayout(row)
        lines.addWidget(self.limits)
        # what is answered comes below the table, so that no button moves under the pointer
        lines.addWidget(self.figures, 1)
        stack(lines, self.trouble, self.moves, self.dates)
        split.addWidget(left)
        split.addWidget(right)
        split.setStretchFactor(1, 1)
        split.setSizes([metrics.side_width, metrics.side_width * 3])
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(split)

    def _column(self, part: QWidget) -> QVBoxLayout:
        column = QVBoxLayout(part)
        column.setContentsMargins(*(self.theme.metrics.gap,) * 4)
        column.setSpacing(self.theme.metrics.tight)
        return column

    # What is shown.

    @property
    def shelf_shown(self) -> Shelf:
        """The shelf that is shown."""
        return Shelf(self.shelf.currentData())

    def show_behind(self, behind: Behind) -> None:
        """Show the catalogue as it stands; entry and figure that were chosen stay so."""
        self._behind = behind
        self.library.show(behind)
        self._show_entries()

    def take_focus(self) -> None:
        """Give the keyboard to the entries."""
        self.entries.setFocus()

    def _show_entries(self) -> None:
        if self._behind is None:
            return
        outlook = self._behind.outlook
        chosen = self.entries.current()
        rows = entry_rows(outlook.farm, outlook.catalogue, self.shelf_shown)
        self.entries.show_rows(rows)
        if rows and not (chosen is not None and self.entries.choose(chosen.id)):
            self.entries.choose(rows[0].id)
        self._show_figures()

    def _show_figures(self) -> None:
        row = self.entries.current()
        if self._behind is None or row is None:
            return
        catalogue = self._behind.outlook.catalogue
        chosen = self.figures.current()
        entry = entries_of(catalogue, self.shelf_shown)[row.id]
        self.title.say(entry.name)
        more = (getattr(entry, "botanical", "") or getattr(entry, "formula", ""), careful(entry.notes))
        self.about.say(". ".join(each for each in more if each))
        book = self.needs.forecaster.book
        self.figures.show_rows(figure_rows(catalogue, self.shelf_shown, row.id, self.theme, book=book))
        if chosen is None or not self.figures.choose(chosen.id):
            self.figures.selectRow(0)
        self._show_figure()

    def _show_figure(self) -> None:
        row = self.figures.current()
        place = self._place()
        there = row is not None and place is not None
        for part in (self.value, self.ask, self.keep, self.back):
            part.setEnabled(there)
        self._forget_moves()
        if row is None or place is None or self._behind is None:
            self.name.clear()
            self.value.clear()
            self.limits.say("")
            return
        figure, spec = row.payload
        self.name.setText(tr("{figure}, your value:", figure=row.texts[0]))
        self.value.setText(number_words(figure.value))
        self.value.setAccessibleDescription(row.texts[0])
        self.limits.say(tr("{limits}; the range the program takes", limits=limit_words(spec)))
        self.back.setEnabled(has_own_value(self._behind.outlook.farm, place))

    def _place(self) -> FigurePlace | None:
        entry, figure = self.entries.current(), self.figures.current()
        if entry is None or figure is None:
            return None
        return FigurePlace(shelf=self.shelf_shown, key=entry.id, name=entry.texts[0], field=figure.id)

    def wear(self, theme: Theme) -> None:
        """Wear the colours of a theme."""
        super().wear(theme)
        for words in (self.title, self.about, self.limits, self.trouble, self.moves):
            words.wear(theme)
        self._show_figures()

    # What is wished.

    def _on_shelf(self, _at: int) -> None:
        self._show_entries()

    def _on_entry(self, _now: QModelIndex, _before: QModelIndex) -> None:
        self._show_figures()

    def _on_figure(self, _now: QModelIndex, _before: QModelIndex) -> None:
        self._show_figure()

    def _on_activated(self, _index: QModelIndex) -> None:
        self.value.setFocus()
        self.value.selectAll()

    def _on_typed(self, _text: str) -> None:
        self._forget_moves()

    def _forget_moves(self) -> None:
        self.trouble.say("")
        self.moves.say("")
        self.dates.hide()
        self._seen = ()

    def _wanted(self) -> ChangeSet | None:
        """Return the act that is asked for by what is typed; None, with the reason said, without one."""
        place = self._place()
        if place is None or self._behind is None:
            return None
        value, is_number = QLocale().toDouble(self.value.text().strip())
        label = field_label(place.field)
        if not is_number:
            typed = self.value.text().strip()
            self.trouble.say(tr("{label} is “{typed}”; it must be a number.", label=label, typed=typed))
            return None
        return laid(self._behind.outlook.farm, place, value, label)

    def _on_ask(self, *_anything: object) -> None:
        wanted = self._wanted()
        if wanted is not None:
            self._tell_moves(wanted)

    def _tell_moves(self, wanted: ChangeSet) -> bool:
        assert self._behind is not None
        outlook = self._behind.outlook
        try:
            tried = applied(outlook.farm, wanted)
            then = self.needs.forecaster.preview(tried)
        except FarmFaultError as refused:
            self.trouble.say(faults_words(refused.faults))
            return False
        self.trouble.say("")
        found = shifts(outlook.farm, outlook.forecast, then)
        self.moves.say("\n".join(moved_words(outlook.forecast, then)))
        self.dates.show_shifts(found, outlook.farm, tried, self.needs.forecaster)
        return True

    def _on_keep(self, _checked: bool) -> None:
        wanted = self._wanted()
        if wanted is not None:
            self._act_when_seen(wanted, ("keep", self._place(), self.value.text()))

    def _on_back(self, _checked: bool) -> None:
        place = self._place()
        if place is not None and self._behind is not None:
            wanted = taken_off(self._behind.outlook.farm, place, field_label(place.field))
            self._act_when_seen(wanted, ("back", place))

    def _act_when_seen(self, wanted: ChangeSet, what: tuple[object, ...]) -> None:
        """Act at once when no batch moves; else show first which do, and act when asked again."""
        if self._seen == what:
            self._act(wanted)
        elif self._tell_moves(wanted):
            self._seen = what
            if not self.dates.isVisibleTo(self):
                self._act(wanted)
            else:
                self.moves.say("\n".join((self.moves.text(), tr("Press the same button again to accept."))))

    def _act(self, wanted: ChangeSet) -> None:
        if not self.needs.conduct.act(wanted, quietly=True) and self.needs.conduct.faults:
            self.trouble.say(
                tr(
                    "Not kept, for the plan as it stands does not allow it. Move or shorten what is named, "
                    "then keep the value.\n{faults}",
                    faults=faults_words(self.needs.conduct.faults),
                )
            )

    def _on_new(self, _checked: bool) -> None:
        row = self.entries.current()
        if self._behind is None:
            return
        like = row.id if row is not None else ""
        self.dialog = NewEntryDialog(self._behind.outlook, self.shelf_shown, like, self.theme, self)
        self.dialog.offered.connect(self._on_offered)
        self.dialog.finished.connect(self._on_dialog_gone)
        self.dialog.open()

    def _on_dialog_gone(self, _result: int) -> None:
        self.dialog = None

    def _on_offered(self, entry: OwnEntry) -> None:
        """Add an entry that is free of faults, and show it; else hand the faults back."""
        dialog, behind = self.dialog, self._behind
        if dialog is None or behind is None:
            return
        faults = entry_faults(self.needs.forecaster.catalogue, behind.outlook.farm, entry)
        done = addition(tr("Own entry: {name}", name=entry.name), entry)
        if not faults and not self.needs.conduct.act(done, quietly=True):
            faults = self.needs.conduct.faults
        if faults:
            dialog.show_faults(faults)
            return
        dialog.accept()
        self.entries.choose(entry.key)

    def _on_out(self, _checked: bool) -> None:
        self.library.ask_write()

    def _on_take(self, _checked: bool) -> None:
        self.library.ask_read()

    def _on_lot(self, _checked: bool) -> None:
        self.run_wanted.emit("new.seed lot")
