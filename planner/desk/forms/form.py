"""A dialog that is made from the declared fields of one kind of thing.

It checks what was typed, says what is wrong beside the field, and offers the finished value; whoever
opened it decides what becomes of it, and hands back faults it could not know. Nothing typed is ever lost.
"""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date
from typing import Any

from PySide6.QtCore import QSize, Qt, Signal
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import (
    QDialog,
    QDialogButtonBox,
    QFrame,
    QGridLayout,
    QHBoxLayout,
    QLabel,
    QPushButton,
    QScrollArea,
    QVBoxLayout,
    QWidget,
)

from planner.desk.fitting import stand
from planner.desk.forms.editors import (
    Choice,
    EditorNeeds,
    FieldEditor,
    ListEditor,
    StillWheel,
    editor_for,
)
from planner.desk.forms.reading import UnreadError
from planner.desk.say import tr
from planner.desk.terms import meaning_of
from planner.desk.theme import Theme
from planner.desk.words import fault_words, field_words, limit_words, unit_words
from planner.farm.checks import thing_faults
from planner.farm.faults import Fault
from planner.farm.fields import FieldKind, FieldSpec, specs_of


@dataclass(frozen=True, slots=True, kw_only=True)
class FormPlan:
    """What a form shows: its title, the class it makes, and the fields in two groups."""

    title: str
    button: str
    owner: type[Any]
    main: tuple[str, ...]
    more: tuple[str, ...] = ()
    more_title: str = ""
    cautions: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True, kw_only=True)
class FormStart:
    """What a form begins with: values by field, choices by field, and the day it is opened on."""

    values: dict[str, Any]
    choices: dict[str, tuple[Choice, ...]]
    today: date


class FieldRow(QWidget):
    """One field: its label with the unit, the editor, and below it the limits or what is wrong."""

    def __init__(self, editor: FieldEditor, spec: FieldSpec, theme: Theme, parent: QWidget) -> None:
        super().__init__(parent)
        self.editor = editor
        self._theme = theme
        self._spec = spec
        self._label = QLabel(self)
        self._hint = QLabel(self)
        self._hint.setWordWrap(True)
        box = QVBoxLayout(self)
        box.setContentsMargins(0, 0, 0, 0)
        box.setSpacing(theme.metrics.tight // 2)
        for part in (self._label, editor, self._hint):
            box.addWidget(part)
        editor.setParent(self)
        self._name()
        editor.touched.connect(self.show_hint)

    def _name(self) -> None:
        words = field_words(self.editor.needs.field)
        unit = unit_words(self._spec.unit)
        full = f"{words} [{unit}]" if unit and unit not in words.lower().split() else words
        self._label.setText(full)
        self._label.setToolTip(meaning_of(full))
        focus = self.editor.focusProxy()
        assert focus is not None
        self._label.setBuddy(focus)
        focus.setAccessibleName(full)
        if self._spec.meaning:
            focus.setToolTip(tr(self._spec.meaning))

    def show_hint(self) -> None:
        """Show the limits, or what is known about the value, in place of any error."""
        kind = self._spec.kind
        meaning = tr(self._spec.meaning) if self._spec.meaning and kind is not FieldKind.YES_NO else ""
        told = " · ".join(part for part in (limit_words(self._spec), meaning) if part)
        self._say(self.editor.note() or told, wrong=False)

    def show_fault(self, words: str) -> None:
        """Show what is wrong with the field."""
        self._say(words, wrong=True)

    def wear(self, theme: Theme) -> None:
        """Wear the colours of a theme; what stands below the field goes back to the hint."""
        self._theme = theme
        self.editor.wear(theme)
        self.show_hint()

    @property
    def words(self) -> str:
        """What stands below the field at present."""
        return self._hint.text()

    def _say(self, words: str, *, wrong: bool) -> None:
        palette = self._hint.palette()
        palette.setColor(self._hint.foregroundRole(), self._theme.wrong if wrong else self._theme.muted)
        self._hint.setPalette(palette)
        self._hint.setText(f"⚠ {words}" if wrong else words)
        self._hint.setVisible(bool(words))
        focus = self.editor.focusProxy()
        if focus is not None:
            focus.setAccessibleDescription(words)


class FormDialog(QDialog):
    """Lets a user fill in one thing; `offered` carries it once it is free of faults."""

    offered = Signal(object)

    def __init__(self, plan: FormPlan, start: FormStart, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self.setWindowTitle(plan.title)
        self._plan, self._start, self._theme = plan, start, theme
        self._wheel = StillWheel(self)
        self.rows: dict[str, FieldRow] = {}
        self.code_is_own = False
        self._summary = QLabel(self)
        self._summary.setWordWrap(True)
        self._summary.hide()
        self._build()
        if "code" in self.rows:
            self.rows["code"].editor.touched.connect(self._on_code)

    def _on_code(self) -> None:
        self.code_is_own = True

    def inside_hint(self) -> QSize:
        """Return the size at which nothing of the form needs to be scrolled."""
        area = self._area
        inside = self._inside.sizeHint()
        foot = self.sizeHint().height() - area.sizeHint().height()
        bar = area.verticalScrollBar().sizeHint().width()
        return QSize(inside.width() + bar, inside.height() + foot + bar)

    def _build(self) -> None:
        metrics = self._theme.metrics
        box = QVBoxLayout(self)
        box.setContentsMargins(0, 0, 0, metrics.margin)
        box.setSpacing(0)
        box.addWidget(self._scrolled(self._columns()), 1)
        foot = QVBoxLayout()
        foot.setContentsMargins(metrics.wide, metrics.gap, metrics.wide, 0)
        foot.addWidget(self._summary)
        foot.addWidget(self._buttons())
        box.addLayout(foot)

    def _scrolled(self, inside: QWidget) -> QScrollArea:
        area = QScrollArea(self)
        area.setWidgetResizable(True)
        area.setFrameShape(QFrame.Shape.NoFrame)
        area.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        area.setWidget(inside)
        self._area, self._inside = area, inside
        return area

    def _columns(self) -> QWidget:
        metrics = self._theme.metrics
        inside = QWidget(self)
        across = self._across = QHBoxLayout(inside)
        across.setContentsMargins(metrics.wide, metrics.wide, metrics.wide, metrics.gap)
        across.setSpacing(metrics.wide * 2)
        across.addLayout(self._group("", self._plan.main, inside), 1)
        if self._plan.more:
            across.addLayout(self._group(self._plan.more_title, self._plan.more, inside), 1)
        self._care = self._cautions(inside)
        across.addLayout(self._care, 1)
        return inside

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Put the columns one above the other where there is no room for them side by side.

        The cautions then stand before the fields that are seldom filled in, where they are met in passing.
        """
        super().resizeEvent(event)
        across, before = self._across, self._across.direction()
        beside = stand(across, self.width() - self._area.verticalScrollBar().sizeHint().width())
        if across.direction() is not before:
            across.removeItem(self._care)
            across.insertLayout(across.count() if beside else 1, self._care, 1)

    def _group(self, title: str, fields: tuple[str, ...], parent: QWidget) -> QGridLayout:
        metrics = self._theme.metrics
        grid = QGridLayout()
        grid.setVerticalSpacing(metrics.gap)
        if title:
            heading = QLabel(title, parent)
            heading.setWordWrap(True)
            grid.addWidget(heading, 0, 0)
        for at, field in enumerate(fields, start=1):
            grid.addWidget(self._row(field, parent), at, 0)
        grid.setRowStretch(len(fields) + 1, 1)
        grid.setColumnMinimumWidth(0, metrics.field_width)
        return grid

    def _row(self, field: str, parent: QWidget) -> FieldRow:
        spec = specs_of(self._plan.owner)[field]
        needs = EditorNeeds(
            field=field,
            spec=spec,
            theme=self._theme,
            today=self._start.today,
            choices=self._start.choices.get(field, ()),
        )
        editor = editor_for(needs, parent)
        if isinstance(editor, ListEditor):
            editor.box.installEventFilter(self._wheel)
        editor.show_value(self._start.values.get(field))
        row = FieldRow(editor, spec, self._theme, parent)
        row.show_hint()
        self.rows[field] = row
        return row

    def _cautions(self, parent: QWidget) -> QVBoxLayout:
        column = QVBoxLayout()
        column.setSpacing(self._theme.metrics.gap)
        for words in self._plan.cautions:
            label = QLabel(words, parent)
            label.setWordWrap(True)
            label.setMinimumWidth(self._theme.metrics.field_width)
            label.setAutoFillBackground(True)
            palette = label.palette()
            palette.setColor(label.backgroundRole(), self._theme.notice_ground)
            palette.setColor(label.foregroundRole(), self._theme.notice)
            label.setPalette(palette)
            label.setMargin(self._theme.metrics.gap)
            column.addWidget(label)
        column.addStretch(1)
        return column

    def _buttons(self) -> QDialogButtonBox:
        box = QDialogButtonBox(self)
        self.ok = QPushButton(self._plan.button, box)
        self.ok.setDefault(True)
        self.stop = QPushButton(tr("Cancel"), box)
        box.addButton(self.ok, QDialogButtonBox.ButtonRole.AcceptRole)
        box.addButton(self.stop, QDialogButtonBox.ButtonRole.RejectRole)
        for button in (self.ok, self.stop):
            button.setAccessibleName(button.text())
        box.accepted.connect(self._offer)
        box.rejected.connect(self.reject)
        return box

    def _offer(self) -> None:
        values, faults = self._read()
        if not faults:
            thing = self._plan.owner(**{**self._start.values, **values})
            faults = tuple(thing_faults(thing))
            if not faults:
                self._summary.hide()
                self.offered.emit(thing)
                return
        self.show_faults(faults)

    def _read(self) -> tuple[dict[str, Any], tuple[Fault, ...]]:
        values: dict[str, Any] = {}
        faults: list[Fault] = []
        for field, row in self.rows.items():
            row.show_hint()
            try:
                values[field] = row.editor.read()
            except UnreadError as refused:
                faults.append(refused.fault)
        return values, tuple(faults)

    def show_faults(self, faults: tuple[Fault, ...]) -> None:
        """Show every fault beside its field, and those of no field here above the buttons."""
        elsewhere = []
        first: FieldRow | None = None
        for fault in faults:
            row = self.rows.get(fault.field.partition("[")[0])
            if row is None:
                elsewhere.append(fault_words(fault))
                continue
            row.show_fault(fault_words(fault) if fault.where else fault.message)
            first = first or row
        if first is not None:
            first.editor.setFocus()
        self.show_trouble("\n".join(elsewhere))

    def show_trouble(self, words: str) -> None:
        """Show a sentence above the buttons; empty hides it."""
        palette = self._summary.palette()
        palette.setColor(self._summary.foregroundRole(), self._theme.wrong)
        self._summary.setPalette(palette)
        self._summary.setText(f"⚠ {words}" if words else "")
        self._summary.setVisible(bool(words))
