"""What is wished for on paper: which document, paper, weeks, language and look; read and checked.

Must know nothing of reports or pages.
"""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date
from typing import Any, Final

from PySide6.QtCore import Qt
from PySide6.QtWidgets import (
    QCheckBox,
    QComboBox,
    QLabel,
    QListWidget,
    QListWidgetItem,
    QVBoxLayout,
    QWidget,
)

from planner.desk.forms.editors import DayEditor, EditorNeeds, LineEditor
from planner.desk.forms.form import FieldRow
from planner.desk.forms.reading import UnreadError
from planner.desk.say import tr
from planner.desk.theme import Theme
from planner.desk.wish_form import WishForm
from planner.farm.fields import FieldKind, FieldSpec

_LEAST_ROWS: Final = 3
_FIELDS: Final = ("from_on", "calendar_weeks")


@dataclass(frozen=True, slots=True, kw_only=True)
class PrintWish:
    """A document by its key, a paper by its name, first day, weeks, second language, and the look."""

    document: str
    paper: str
    from_on: date
    weeks: int
    second: str = ""
    large_type: bool = False
    black_and_white: bool = False
    ink_saving: bool = False


@dataclass(frozen=True, slots=True, kw_only=True)
class DocumentChoice:
    """A document to choose: its key, its words, and what it begins with when nobody says."""

    key: str
    title: str
    says: str
    paper: str
    from_on: date
    weeks: int


@dataclass(frozen=True, slots=True, kw_only=True)
class FormNeeds:
    """What there is to choose from; `languages` are (key, words)."""

    documents: tuple[DocumentChoice, ...]
    papers: tuple[str, ...]
    languages: tuple[tuple[str, str], ...]
    wish: PrintWish
    most_weeks: int
    today: date


class PrintForm(WishForm):
    """The documents in a list, and below it how the chosen one is wanted."""

    def __init__(self, needs: FormNeeds, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._needs, self._theme = needs, theme
        self.documents = self._list()
        self.says = QLabel(self)
        self.says.setWordWrap(True)
        self.paper = self._combo(tr("Paper"), [(name, name) for name in needs.papers])
        self.from_on = self._row("from_on", _from_spec(), needs.wish.from_on)
        self.weeks = self._row("calendar_weeks", _weeks_spec(needs.most_weeks), needs.wish.weeks)
        self.second = self._combo(tr("Second language"), [("", tr("none")), *needs.languages])
        self.large_type = QCheckBox(tr("&Larger type"), self)
        self.black_and_white = QCheckBox(tr("&Black and white"), self)
        self.ink_saving = QCheckBox(tr("Sa&ve ink"), self)
        self._lay()
        self._show_wish(needs.wish)
        self._connect()

    def _list(self) -> QListWidget:
        found = QListWidget(self)
        found.setAccessibleName(tr("Document"))
        found.setMinimumHeight(self._theme.metrics.row * _LEAST_ROWS)
        found.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        for choice in self._needs.documents:
            item = QListWidgetItem(tr(choice.title), found)
            item.setData(Qt.ItemDataRole.UserRole, choice.key)
            item.setToolTip(tr(choice.says))
        return found

    def _combo(self, words: str, choices: list[tuple[str, str]]) -> QComboBox:
        combo = QComboBox(self)
        combo.setAccessibleName(words)
        for key, text in choices:
            combo.addItem(text, key)
        return combo

    def _row(self, field: str, spec: FieldSpec, value: Any) -> FieldRow:
        needs = EditorNeeds(field=field, spec=spec, theme=self._theme, today=self._needs.today)
        editor = (DayEditor if spec.kind is FieldKind.DAY else LineEditor)(needs, self)
        editor.show_value(value)
        row = FieldRow(editor, spec, self._theme, self)
        row.show_hint()
        return row

    def _lay(self) -> None:
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(self._theme.metrics.tight)
        column.addWidget(self.documents, 1)
        column.addWidget(self.says)
        self._labelled(column, tr("&Paper"), self.paper)
        column.addWidget(self.from_on)
        column.addWidget(self.weeks)
        self._labelled(column, tr("Second lan&guage"), self.second)
        for box in (self.large_type, self.black_and_white, self.ink_saving):
            box.setAccessibleName(box.text().replace("&", ""))
            column.addWidget(box)

    def _labelled(self, column: QVBoxLayout, words: str, widget: QWidget) -> None:
        label = QLabel(words, self)
        label.setBuddy(widget)
        column.addWidget(label)
        column.addWidget(widget)

    def _show_wish(self, wish: PrintWish) -> None:
        keys = [choice.key for choice in self._needs.documents]
        self.documents.setCurrentRow(keys.index(wish.document) if wish.document in keys else 0)
        self.says.setText(tr(self.choice().says))
        self.paper.setCurrentText(wish.paper)
        self.second.setCurrentIndex(max(self.second.findData(wish.second), 0))

    def _connect(self) -> None:
        self.documents.currentRowChanged.connect(self._on_document)
        self.paper.activated.connect(self._tell)
        self.second.activated.connect(self._tell)
        self.from_on.editor.touched.connect(self._tell)
        self.weeks.editor.touched.connect(self._tell)
        for box in (self.large_type, self.black_and_white, self.ink_saving):
            box.toggled.connect(self._tell)

    def choice(self) -> DocumentChoice:
        """Return the document that is chosen."""
        return self._needs.documents[max(self.documents.currentRow(), 0)]

    def _on_document(self, _row: int) -> None:
        """Begin with what the document usually has; look and language stay."""
        choice = self.choice()
        self.says.setText(tr(choice.says))
        self.paper.setCurrentText(choice.paper)
        self.from_on.editor.show_value(choice.from_on)
        self.weeks.editor.show_value(choice.weeks)
        self._tell()

    def _tell(self, *_anything: Any) -> None:
        self.changed.emit()

    def wish(self) -> PrintWish | None:
        """Return what is wished, None while a field cannot be read; it is said beside the field."""
        values = dict(zip(_FIELDS, (self._read(self.from_on), self._read(self.weeks)), strict=True))
        if any(value is None for value in values.values()):
            return None
        return PrintWish(
            document=self.choice().key,
            paper=self.paper.currentText(),
            from_on=values["from_on"],
            weeks=values["calendar_weeks"],
            second=self.second.currentData(),
            large_type=self.large_type.isChecked(),
            black_and_white=self.black_and_white.isChecked(),
            ink_saving=self.ink_saving.isChecked(),
        )

    def _read(self, row: FieldRow) -> Any:
        spec = row.editor.needs.spec
        try:
            value = row.editor.read()
        except UnreadError as refused:
            row.show_fault(refused.fault.message)
            return None
        if spec.low is not None and spec.high is not None and not spec.low <= value <= spec.high:
            words = tr(
                "Weeks are {value}; they must lie within {low} to {high}.",
                value=value,
                low=spec.low,
                high=spec.high,
            )
            row.show_fault(words)
            return None
        row.show_hint()
        return value


def _from_spec() -> FieldSpec:
    return FieldSpec(kind=FieldKind.DAY, meaning=tr("the week that holds this day comes first"))


def _weeks_spec(most: int) -> FieldSpec:
    return FieldSpec(kind=FieldKind.WHOLE, low=1, high=most, unit="weeks")
