"""Lines of the same few fields, to which more can be added: beds, and what is wanted each week.

Checks each field against its declared limits. Must know nothing of farms.
"""

from __future__ import annotations

import dataclasses
import itertools
from typing import Any

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QGridLayout, QLabel, QPushButton, QVBoxLayout, QWidget

from planner.desk.forms.editors import EditorNeeds, FieldEditor, editor_for
from planner.desk.forms.reading import UnreadError
from planner.desk.say import tr
from planner.desk.theme import Theme
from planner.desk.words import fault_words, field_words, limit_words, unit_words
from planner.farm.checks import value_faults
from planner.farm.faults import Fault
from planner.farm.fields import FieldSpec

_NARROW, _BROAD = 70, 170


class Lines(QWidget):
    """Several lines of the same fields, to which more can be added; empty lines count as none."""

    changed = Signal()

    def __init__(
        self, fields: tuple[str, ...], needs: dict[str, EditorNeeds], add: str, parent: QWidget
    ) -> None:
        super().__init__(parent)
        self._fields, self._needs = fields, needs
        self.lines: list[dict[str, FieldEditor]] = []
        self.trouble = QLabel(self)
        self.trouble.setWordWrap(True)
        self.trouble.hide()
        self._grid = QGridLayout()
        self._grid.setHorizontalSpacing(needs[fields[0]].theme.metrics.gap)
        self.add = QPushButton(add, self)
        self.add.setAccessibleName(add)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addLayout(self._grid)
        column.addWidget(self.trouble)
        column.addWidget(self.add, 0, Qt.AlignmentFlag.AlignLeft)
        for at, field in enumerate(fields):
            self._grid.addWidget(QLabel(_heading(needs[field]), self), 0, at)
        self.add.clicked.connect(self._on_add)
        self.add_line()

    def _on_touched(self) -> None:
        self.changed.emit()

    def _on_add(self, _checked: bool) -> None:
        self.add_line()
        self.changed.emit()
        self.lines[-1][self._fields[0]].setFocus()

    def add_line(self, **values: Any) -> None:
        """Add a line with some values."""
        line: dict[str, FieldEditor] = {}
        number = len(self.lines) + 1
        for at, field in enumerate(self._fields):
            editor = editor_for(self._needs[field], self)
            editor.setMinimumWidth(_BROAD if at == 0 else _NARROW)
            editor.show_value(values.get(field, _first(self._needs[field])))
            editor.touched.connect(self._on_touched)
            focus = editor.focusProxy()
            if focus is not None:
                focus.setAccessibleName(f"{_heading(self._needs[field])}, {number}")
            self._grid.addWidget(editor, number, at)
            line[field] = editor
        self._follow(line)
        self.lines.append(line)

    def _follow(self, line: dict[str, FieldEditor]) -> None:
        """Put a new line behind the last one for the key Tab, and the button behind every line."""
        before = list(self.lines[-1].values())[-1:] if self.lines else []
        editors = (*before, *line.values())
        chain = [each.focusProxy() or each for each in editors]
        for one, following in itertools.pairwise((*chain, self.add)):
            QWidget.setTabOrder(one, following)

    def read(self) -> tuple[list[dict[str, Any]], list[str]]:
        """Return the values of every line, and what is wrong with them, line by line."""
        values, wrong = [], []
        for number, line in enumerate(self.lines, start=1):
            found: dict[str, Any] = {}
            for field, editor in line.items():
                try:
                    found[field] = editor.read()
                except UnreadError as refused:
                    wrong.append(tr("Line {number}: {why}", number=number, why=refused.fault.message))
                    continue
                spec = self._needs[field].spec
                faults = value_faults(where="", field=field, value=found[field], spec=spec)
                wrong += [tr("Line {number}: {why}", number=number, why=said(each, spec)) for each in faults]
            values.append(found)
        return values, wrong

    def known(self) -> list[dict[str, Any]]:
        """Return what can be read of every line so far; what cannot is None."""
        return [{field: read_or_none(editor) for field, editor in line.items()} for line in self.lines]

    def show_trouble(self, words: list[str], theme: Theme) -> None:
        """Show what is wrong under the lines."""
        palette = self.trouble.palette()
        palette.setColor(self.trouble.foregroundRole(), theme.wrong)
        self.trouble.setPalette(palette)
        self.trouble.setText("\n".join(f"⚠ {each}" for each in words))
        self.trouble.setVisible(bool(words))


def read_or_none(editor: FieldEditor) -> Any:
    """Return what an editor holds within its limits, None as long as it is nothing of the kind."""
    try:
        found = editor.read()
    except UnreadError:
        return None
    faults = tuple(value_faults(where="", field=editor.needs.field, value=found, spec=editor.needs.spec))
    return None if faults else found


def said(fault: Fault, spec: FieldSpec) -> str:
    """Return a fault in words, with the limits of its field."""
    return fault_words(dataclasses.replace(fault, limit=limit_words(spec) or fault.limit))


def _heading(needs: EditorNeeds) -> str:
    unit = "" if needs.field == "amount_per_week" else unit_words(needs.spec.unit)
    words = field_words(needs.field)
    return f"{words} [{unit}]" if unit and needs.field != "holes" else words


def _first(needs: EditorNeeds) -> Any:
    return needs.choices[0].value if needs.choices else None
