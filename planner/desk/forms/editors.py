"""One editor for each kind of field: a line, a box to tick, a list to choose from, a day.

Each shows a value, reads it back or refuses with a fault, and says when it was touched. Must know nothing
of whole forms.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date
from enum import Enum
from typing import Any, Final

from PySide6.QtCore import QDate, QEvent, QObject, QPoint, Qt, Signal
from PySide6.QtWidgets import (
    QCalendarWidget,
    QCheckBox,
    QComboBox,
    QHBoxLayout,
    QLineEdit,
    QPlainTextEdit,
    QToolButton,
    QWidget,
)

from planner.desk.forms.reading import (
    UnreadError,
    read_day,
    read_number,
    read_series,
    value_text,
)
from planner.desk.say import tr
from planner.desk.theme import Theme, icon
from planner.desk.words import choice_words, week_words
from planner.farm.fields import NO_ID, FieldKind, FieldSpec

_NOTE_LINES: Final = 3
_LEAST_LETTERS: Final = 16


@dataclass(frozen=True, slots=True, kw_only=True)
class Choice:
    """One entry of a list: the value it stands for, its words, and what is known about it."""

    value: Any
    words: str
    note: str = ""


@dataclass(frozen=True, slots=True, kw_only=True)
class EditorNeeds:
    """What an editor is made from."""

    field: str
    spec: FieldSpec
    theme: Theme
    today: date
    choices: tuple[Choice, ...] = ()


class FieldEditor(QWidget):
    """What all editors share; `focus` is the widget that takes the keyboard."""

    touched = Signal()

    def __init__(self, needs: EditorNeeds, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.needs = needs
        self.row = QHBoxLayout(self)
        self.row.setContentsMargins(0, 0, 0, 0)
        self.row.setSpacing(needs.theme.metrics.tight)

    def take(self, focus: QWidget) -> None:
        """Make `focus` the part that takes the keyboard."""
        self.row.addWidget(focus, 1)
        self.setFocusProxy(focus)
        focus.setObjectName(self.needs.field)

    def show_value(self, value: Any) -> None:
        """Show a value."""
        raise NotImplementedError

    def read(self) -> Any:
        """Return the value as it stands, or raise `UnreadError`."""
        raise NotImplementedError

    def note(self) -> str:
        """Return what is worth knowing about the present value; empty when nothing is."""
        return ""

    def wear(self, theme: Theme) -> None:
        """Wear the pictures of a theme."""


class LineEditor(FieldEditor):
    """A line of text: names, keys, short texts, numbers and rows of numbers."""

    def __init__(self, needs: EditorNeeds, parent: QWidget | None = None) -> None:
        super().__init__(needs, parent)
        self.line = QLineEdit(self)
        if needs.spec.kind in {FieldKind.NUMBER, FieldKind.WHOLE}:
            self.line.setAlignment(Qt.AlignmentFlag.AlignRight)
        if needs.spec.may_be_none:
            self.line.setPlaceholderText(tr("not given"))
        self.take(self.line)
        self.line.textEdited.connect(self._on_edited)

    def _on_edited(self, _text: str) -> None:
        self.touched.emit()

    def show_value(self, value: Any) -> None:
        self.line.setText(value_text(value))
        self.line.setCursorPosition(0)

    def read(self) -> Any:
        text, field, spec = self.line.text(), self.needs.field, self.needs.spec
        if spec.kind in {FieldKind.NUMBER, FieldKind.WHOLE}:
            return read_number(text, field=field, spec=spec)
        if spec.kind is FieldKind.SERIES:
            return read_series(text, field=field, spec=spec)
        return text.strip()


class NoteEditor(FieldEditor):
    """Several lines of free text."""

    def __init__(self, needs: EditorNeeds, parent: QWidget | None = None) -> None:
        super().__init__(needs, parent)
        self.box = QPlainTextEdit(self)
        self.box.setTabChangesFocus(True)
        self.box.setFixedHeight(self.fontMetrics().lineSpacing() * _NOTE_LINES + needs.theme.metrics.margin)
        self.take(self.box)
        self.box.textChanged.connect(self.touched)

    def show_value(self, value: Any) -> None:
        self.box.setPlainText(str(value or ""))

    def read(self) -> str:
        return self.box.toPlainText()


class TickEditor(FieldEditor):
    """Yes or no."""

    def __init__(self, needs: EditorNeeds, parent: QWidget | None = None) -> None:
        super().__init__(needs, parent)
        self.box = QCheckBox(tr("Yes"), self)
        self.take(self.box)
        self.box.clicked.connect(self._on_clicked)

    def _on_clicked(self, _checked: bool) -> None:
        self.touched.emit()

    def show_value(self, value: Any) -> None:
        self.box.setChecked(bool(value))

    def read(self) -> bool:
        return self.box.isChecked()


class ListEditor(FieldEditor):
    """One of several: members of an enum, things of the farm, entries of the catalogue."""

    def __init__(self, needs: EditorNeeds, parent: QWidget | None = None) -> None:
        super().__init__(needs, parent)
        self.box = QComboBox(self)
        self.box.setMinimumContentsLength(_LEAST_LETTERS)
        self.box.setSizeAdjustPolicy(QComboBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon)
        for choice in needs.choices:
            self.box.addItem(choice.words)
        self.take(self.box)
        self.box.activated.connect(self._on_activated)

    def _on_activated(self, _at: int) -> None:
        self.touched.emit()

    def show_value(self, value: Any) -> None:
        found = [at for at, choice in enumerate(self.needs.choices) if choice.value == value]
        self.box.setCurrentIndex(found[0] if found else (0 if self.needs.choices else -1))

    def read(self) -> Any:
        at = self.box.currentIndex()
        return self.needs.choices[at].value if at >= 0 else NO_ID

    def note(self) -> str:
        at = self.box.currentIndex()
        return self.needs.choices[at].note if at >= 0 else ""


class DayEditor(FieldEditor):
    """A date, typed or chosen from a month; the ISO week stands below it."""

    def __init__(self, needs: EditorNeeds, parent: QWidget | None = None) -> None:
        super().__init__(needs, parent)
        self.line = QLineEdit(self)
        self.line.setPlaceholderText(tr("not given") if needs.spec.may_be_none else "")
        self.take(self.line)
        self.button = QToolButton(self)
        self.button.setIcon(icon("calendar", needs.theme))
        self.button.setToolTip(tr("Choose from a month"))
        self.button.setAccessibleName(tr("Choose from a month"))
        self.row.addWidget(self.button)
        self.months = Months(self)
        self.line.textEdited.connect(self._on_edited)
        self.line.editingFinished.connect(self._tidy)
        self.button.clicked.connect(self._on_button)
        self.months.chosen.connect(self._on_chosen)

    def _on_edited(self, _text: str) -> None:
        self.touched.emit()

    def _on_button(self, _checked: bool) -> None:
        try:
            day = self.read() or self.needs.today
        except UnreadError:
            day = self.needs.today
        self.months.open_at(day, self.mapToGlobal(QPoint(0, self.height())))

    def _on_chosen(self, day: date) -> None:
        self.show_value(day)
        self.line.setFocus()
        self.touched.emit()

    def _tidy(self) -> None:
        try:
            day = self.read()
        except UnreadError:
            return
        self.show_value(day)

    def show_value(self, value: Any) -> None:
        self.line.setText(value_text(value))
        self.line.setCursorPosition(0)

    def read(self) -> date | None:
        return read_day(
            self.line.text(), field=self.needs.field, spec=self.needs.spec, today=self.needs.today
        )

    def wear(self, theme: Theme) -> None:
        self.button.setIcon(icon("calendar", theme))

    def note(self) -> str:
        try:
            day = self.read()
        except UnreadError:
            return ""
        return week_words(day) if day else ""


class Months(QCalendarWidget):
    """A month that pops up under its field and goes away once a day is chosen."""

    chosen = Signal(date)

    def __init__(self, parent: QWidget) -> None:
        super().__init__(parent)
        self.setWindowFlag(Qt.WindowType.Popup)
        self.setFirstDayOfWeek(Qt.DayOfWeek.Monday)
        self.setVerticalHeaderFormat(QCalendarWidget.VerticalHeaderFormat.ISOWeekNumbers)
        self.setAccessibleName(tr("Month"))
        self.activated.connect(self._on_day)
        self.clicked.connect(self._on_day)

    def open_at(self, day: date, corner: QPoint) -> None:
        """Show the month of a day with its upper left corner at a point of the screen."""
        self.setSelectedDate(QDate(day.year, day.month, day.day))
        self.move(corner)
        self.show()
        self.setFocus()

    def _on_day(self, day: QDate) -> None:
        if self.isVisible():
            self.hide()
            self.chosen.emit(date(day.year(), day.month(), day.day()))


class StillWheel(QObject):
    """Keeps the wheel from changing a list that is only being scrolled past."""

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        if event.type() is QEvent.Type.Wheel and isinstance(watched, QWidget) and not watched.hasFocus():
            event.ignore()
            return True
        return super().eventFilter(watched, event)


def enum_choices(owner: type[Enum]) -> tuple[Choice, ...]:
    """Return the members of an enum as choices."""
    return tuple(Choice(value=member, words=choice_words(member)) for member in owner)


def thing_choices(many: Sequence[Any], label: str, *, none: bool) -> tuple[Choice, ...]:
    """Return things of a farm as choices by id, with "none" first where that is allowed."""
    first = (Choice(value=NO_ID, words=tr("none")),) if none else ()
    return first + tuple(Choice(value=thing.id, words=str(getattr(thing, label))) for thing in many)


def editor_for(needs: EditorNeeds, parent: QWidget) -> FieldEditor:
    """Return the editor that suits a field."""
    kind = needs.spec.kind
    if needs.choices or kind in {FieldKind.REFERENCE, FieldKind.CHOICE}:
        return ListEditor(needs, parent)
    if kind is FieldKind.DAY:
        return DayEditor(needs, parent)
    if kind is FieldKind.YES_NO:
        return TickEditor(needs, parent)
    if kind is FieldKind.TEXT and needs.field == "notes":
        return NoteEditor(needs, parent)
    return LineEditor(needs, parent)
