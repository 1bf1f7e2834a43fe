"""A dialog for an entry of the grower's own beside the book: a crop or variety, a fish, a feed, a supplement.

It is like an entry that is there, but for what is filled in, or like nothing, with every figure given. What
is wrong is told beside its field, and nothing typed is lost. Must know nothing of how entries are kept.
"""

from __future__ import annotations

from typing import Any

from PySide6.QtCore import QSize, Qt, Signal
from PySide6.QtWidgets import (
    QComboBox,
    QDialog,
    QDialogButtonBox,
    QFormLayout,
    QLabel,
    QLineEdit,
    QVBoxLayout,
    QWidget,
)

from planner.desk.book_page.new_values import NOTHING, NewField, missing_faults, new_fields, new_own_entry
from planner.desk.book_page.rows import entries_of
from planner.desk.fitting import open_sized
from planner.desk.forms.reading import UnreadError, read_number
from planner.desk.outlook import Outlook
from planner.desk.plan.kit import Words, button, column, heading, scrolled
from planner.desk.say import tr
from planner.desk.theme import Theme
from planner.desk.words import limit_words
from planner.farm.farm import Shelf
from planner.farm.faults import Fault
from planner.farm.fields import FieldKind

_WIDTH, _HEIGHT = 640, 680


class NewFieldRow(QWidget):
    """One field with its limits below it, or what is wrong with it."""

    def __init__(self, field: NewField, theme: Theme, parent: QWidget) -> None:
        super().__init__(parent)
        self.field = field
        self.box: QComboBox | None = None
        self.line: QLineEdit | None = None
        self.editor: QWidget = self._box() if field.choices else self._line()
        self.editor.setAccessibleName(field.label)
        self.trouble = Words("", theme, self, ink="wrong")
        self.trouble.hide()
        lines = QVBoxLayout(self)
        lines.setContentsMargins(0, 0, 0, 0)
        lines.setSpacing(0)
        lines.addWidget(self.editor)
        lines.addWidget(self.trouble)

    def _box(self) -> QComboBox:
        box = self.box = QComboBox(self)
        for choice in self.field.choices:
            box.addItem(choice.words)
        if self.field.like:
            box.setItemText(0, tr("as what it is like: {value}", value=self.field.like))
        return box

    def _line(self) -> QLineEdit:
        line = self.line = QLineEdit(self)
        line.setPlaceholderText(self.field.like)
        line.setToolTip(limit_words(self.field.spec))
        line.setAccessibleDescription(limit_words(self.field.spec))
        return line

    def read(self) -> Any:
        """Return what was filled in, None for nothing; raises `UnreadError`."""
        if self.box is not None:
            return self.field.choices[max(self.box.currentIndex(), 0)].value
        assert self.line is not None
        text = self.line.text().strip()
        if self.field.spec.kind is FieldKind.NUMBER:
            return read_number(text, field=self.field.name, spec=self.field.spec)
        return text or None

    def say(self, words: str) -> None:
        """Tell what is wrong; nothing takes it away."""
        self.trouble.say(f"⚠ {words}" if words else "")


class NewEntryDialog(QDialog):
    """Fields of a new entry; `offered` carries it once each field can be read."""

    offered = Signal(object)

    def __init__(self, outlook: Outlook, shelf: Shelf, like: str, theme: Theme, parent: QWidget) -> None:
        super().__init__(parent)
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self.setWindowTitle(tr("New entry of your own"))
        self._outlook, self._shelf, self._theme = outlook, shelf, theme
        self.rows: dict[str, NewFieldRow] = {}
        self.name, self.notes = QLineEdit(self), QLineEdit(self)
        self.name.setAccessibleName(tr("Name"))
        self.notes.setAccessibleName(tr("Notes"))
        self.like = QComboBox(self)
        self.like.setAccessibleName(tr("Most like"))
        self.like.addItem(tr("nothing: I give every figure"), NOTHING)
        for key, entry in sorted(entries_of(outlook.catalogue, shelf).items(), key=_by_name):
            self.like.addItem(entry.name, key)
        self.like.setCurrentIndex(max(self.like.findData(like), 0))
        self.trouble = Words("", theme, self, ink="wrong")
        self._fields = QFormLayout()
        self._lay_out()
        self._show_fields()
        self.like.currentIndexChanged.connect(self._on_like)
        open_sized(self, QSize(_WIDTH, _HEIGHT))

    def _lay_out(self) -> None:
        theme = self._theme
        head = QFormLayout()
        head.addRow(tr("Name"), self.name)
        head.addRow(tr("Most like"), self.like)
        head.addRow(tr("Notes"), self.notes)
        inside = QWidget(self)
        lines = column(inside, theme)
        lines.addLayout(self._fields)
        lines.addStretch(1)
        about = tr("Fill in what you know. A figure left empty is as in the entry it is most like.")
        box = QDialogButtonBox(self)
        self.ok = button(tr("Add it"), self)
        self.ok.setDefault(True)
        box.addButton(self.ok, QDialogButtonBox.ButtonRole.AcceptRole)
        box.addButton(button(tr("Cancel"), self), QDialogButtonBox.ButtonRole.RejectRole)
        box.accepted.connect(self._offer)
        box.rejected.connect(self.reject)
        whole = column(self, theme)
        whole.addWidget(heading(tr("New entry of your own"), theme, self, large=True))
        whole.addWidget(Words(about, theme, self, ink="muted"))
        whole.addLayout(head)
        whole.addWidget(scrolled(inside, self), 1)
        whole.addWidget(self.trouble)
        whole.addWidget(box)
        self.trouble.hide()

    def _on_like(self, _at: int) -> None:
        self._show_fields()

    def _show_fields(self) -> None:
        """Show the fields of what the entry is like; what was typed into one that stays is kept."""
        typed = {name: row.line.text() for name, row in self.rows.items() if row.line is not None}
        while self._fields.rowCount():
            self._fields.removeRow(0)
        self.rows = {}
        for field in new_fields(self._outlook.catalogue, self._shelf, self.like.currentData()):
            row = NewFieldRow(field, self._theme, self)
            if row.line is not None:
                row.line.setText(typed.get(field.name, ""))
            label = QLabel(field.label, self)
            label.setBuddy(row.editor)
            self._fields.addRow(label, row)
            self.rows[field.name] = row

    def _offer(self) -> None:
        values: dict[str, Any] = {}
        faults: list[Fault] = []
        for name, row in self.rows.items():
            try:
                values[name] = row.read()
            except UnreadError as refused:
                faults.append(refused.fault)
        like = self.like.currentData()
        unread = {fault.field for fault in faults}
        fields = tuple(row.field for row in self.rows.values() if row.field.name not in unread)
        faults += missing_faults(fields, values, like=like)
        if not self.name.text().strip():
            self.show_faults(tuple(faults), tr("Name is empty; it must be given."))
            self.name.setFocus()
            return
        if faults:
            self.show_faults(tuple(faults))
            return
        self.show_faults(())
        catalogue, name = self._outlook.catalogue, self.name.text().strip()
        notes = self.notes.text().strip()
        self.offered.emit(
            new_own_entry(catalogue, self._shelf, name=name, like=like, values=values, notes=notes)
        )

    def show_faults(self, faults: tuple[Fault, ...], more: str = "") -> None:
        """Tell each fault beside its field, and those of no field here above the buttons."""
        for row in self.rows.values():
            row.say("")
        elsewhere = [more] if more else []
        first: NewFieldRow | None = None
        for fault in faults:
            row_of = self.rows.get(fault.field)
            if row_of is None:
                elsewhere.append(fault.message)
                continue
            row_of.say(_said(fault, row_of.field.label))
            first = first or row_of
        if first is not None:
            first.editor.setFocus()
        self.trouble.say("\n".join(elsewhere))


def _said(fault: Fault, label: str) -> str:
    """Return a fault with the field as it is called on the screen, the value and the limit."""
    if not (fault.value and fault.limit):
        return fault.message
    return tr("{label} is {value}; it must be {limit}.", label=label, value=fault.value, limit=fault.limit)


def _by_name(pair: tuple[str, Any]) -> str:
    return str(pair[1].name).casefold()
