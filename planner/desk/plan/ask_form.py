"""The fields of what is asked for, read into one value; what is wrong is said beside its field.

Fields come from a class that declares them, as the forms of things do. Must know nothing of what is asked.
"""

from __future__ import annotations

import dataclasses
from collections.abc import Mapping, Sequence
from datetime import date
from typing import Any

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QVBoxLayout, QWidget

from planner.desk.forms.editors import Choice, EditorNeeds, FieldEditor, ListEditor, StillWheel, editor_for
from planner.desk.forms.form import FieldRow
from planner.desk.forms.reading import UnreadError
from planner.desk.plan.kit import Words
from planner.desk.theme import Theme
from planner.desk.words import fault_words, field_words, limit_words
from planner.farm.checks import value_faults
from planner.farm.faults import Fault
from planner.farm.fields import FieldSpec, specs_of


class AskForm(QWidget):
    """A column of fields; `read` gives the value, or None after saying what is wrong."""

    touched = Signal()

    def __init__(
        self,
        owner: type[Any],
        theme: Theme,
        today: date,
        parent: QWidget,
        *,
        fields: Sequence[str] = (),
        choices: Mapping[str, tuple[Choice, ...]] | None = None,
    ) -> None:
        super().__init__(parent)
        self._owner, self._theme = owner, theme
        self._wheel = StillWheel(self)
        self.rows: dict[str, FieldRow] = {}
        self.trouble = Words("", theme, self, ink="wrong")
        self.trouble.hide()
        lines = self._lines = QVBoxLayout(self)
        lines.setContentsMargins(0, 0, 0, 0)
        lines.setSpacing(theme.metrics.gap)
        for field, spec in specs_of(owner).items():
            if not fields or field in fields:
                needs = EditorNeeds(
                    field=field, spec=spec, theme=theme, today=today, choices=(choices or {}).get(field, ())
                )
                lines.addWidget(self._row(needs, spec))
        lines.addWidget(self.trouble)
        self._show_defaults()

    def _row(self, needs: EditorNeeds, spec: FieldSpec) -> FieldRow:
        editor = editor_for(needs, self)
        if isinstance(editor, ListEditor):
            editor.box.installEventFilter(self._wheel)
        editor.touched.connect(self.touched)
        row = FieldRow(editor, spec, self._theme, self)
        self.rows[needs.field] = row
        return row

    def _show_defaults(self) -> None:
        for field in dataclasses.fields(self._owner):
            if field.name in self.rows:
                value = None if field.default is dataclasses.MISSING else field.default
                self.show_value(field.name, value)

    def room_after(self, field: str) -> QVBoxLayout:
        """Return a column right below a field, for what has to be said there."""
        room = QVBoxLayout()
        self._lines.insertLayout(self._lines.indexOf(self.rows[field]) + 1, room)
        return room

    def editor(self, field: str) -> FieldEditor:
        """Return the editor of a field."""
        return self.rows[field].editor

    def show_value(self, field: str, value: Any) -> None:
        """Show a value in a field."""
        self.editor(field).show_value(value)
        self.rows[field].show_hint()

    def show_choices(self, field: str, choices: tuple[Choice, ...]) -> None:
        """Offer other choices in a field; what was chosen stays so where it still can be."""
        editor = self.editor(field)
        assert isinstance(editor, ListEditor)
        if editor.needs.choices == choices:
            return
        chosen = editor.read()
        editor.needs = dataclasses.replace(editor.needs, choices=choices)
        editor.box.clear()
        editor.box.addItems([choice.words for choice in choices])
        self.show_value(field, chosen)

    def show_field(self, field: str, *, shown: bool) -> None:
        """Show a field, or leave it out of sight and of what is read."""
        self.rows[field].setVisible(shown)

    def wear(self, theme: Theme) -> None:
        """Wear the colours of a theme."""
        for row in self.rows.values():
            row.wear(theme)

    def read(self) -> Any:
        """Return what is asked for; None when something is wrong, which is then said beside its field."""
        values: dict[str, Any] = {}
        faults: list[Fault] = []
        for field, row in self.rows.items():
            row.show_hint()
            if row.isHidden():
                continue
            try:
                values[field] = row.editor.read()
            except UnreadError as refused:
                faults.append(refused.fault)
                continue
            spec = row.editor.needs.spec
            faults += [
                dataclasses.replace(fault, limit=limit_words(spec) or fault.limit)
                for fault in value_faults(where="", field=field, value=values[field], spec=spec)
            ]
        self.show_faults(tuple(faults))
        return None if faults else self._owner(**values)

    def show_faults(self, faults: tuple[Fault, ...]) -> None:
        """Say every fault beside its field, those of no field that is shown below them all."""
        elsewhere = []
        first: FieldRow | None = None
        for fault in faults:
            row = self.rows.get(fault.field.partition("[")[0])
            words = _said(fault)
            if row is None or row.isHidden():
                elsewhere.append(words)
                continue
            row.show_fault(words)
            first = first or row
        if first is not None:
            first.editor.setFocus()
        self.trouble.say("\n".join(f"⚠ {words}" for words in elsewhere))


def _said(fault: Fault) -> str:
    """Return a fault in words, with the name the field has on the screen."""
    if not fault.message or (fault.limit and not fault.where):
        return fault_words(fault)
    rest = fault.message.removeprefix(fault.field)
    return fault.message if rest == fault.message or not fault.field else field_words(fault.field) + rest
