"""Asks what a new farm begins with: a name, the tank and its fish, the beds, what is wanted each week.

Nothing else is asked; whatever is left out can be entered later. Checks every answer against the limits
that the farm's values declare. Must know nothing of files.
"""

from __future__ import annotations

import dataclasses
from datetime import date, timedelta
from typing import Any, Final

from PySide6.QtCore import Qt, Signal
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

from planner.desk.forms.editors import Choice, EditorNeeds, FieldEditor, editor_for, enum_choices
from planner.desk.forms.form import FieldRow
from planner.desk.forms.reading import UnreadError
from planner.desk.say import tr
from planner.desk.theme import Theme
from planner.desk.words import choice_words, fault_words, field_words, limit_words, unit_words
from planner.farm.checks import value_faults
from planner.farm.crops import Target, TargetUnit
from planner.farm.farm import DAYS_PER_WEEK, Settings
from planner.farm.faults import Fault
from planner.farm.fields import FieldKind, FieldSpec, specs_of
from planner.farm.fish import FishGroup
from planner.farm.site import Bed, Site, Tank, Units, WeekStart
from planner.farm.species import BedKind
from planner.planning.answers import Answers, BedWish, CropWish

_HOLES: Final = 4000
_METRES: Final = FieldSpec(kind=FieldKind.NUMBER, low=0.1, high=1000, unit="m", may_be_none=True)
_NARROW, _BROAD = 70, 170
_WIDEST, _HIGHEST = 1000, 640


@dataclasses.dataclass(frozen=True, slots=True, kw_only=True)
class NewFarmNeeds:
    """What can be chosen: crops and fish of the catalogue; and the day it is."""

    crops: tuple[Choice, ...]
    fish: tuple[Choice, ...]
    theme: Theme
    today: date


def _specs() -> dict[str, FieldSpec]:
    count = dataclasses.replace(specs_of(FishGroup)["count"], low=0)
    return {
        "farm_name": specs_of(Settings)["name"],
        "place": specs_of(Site)["place"],
        "latitude_deg": specs_of(Site)["latitude_deg"],
        "measures": specs_of(Site)["units"],
        "week_start": specs_of(Site)["week_start"],
        "tank_l": specs_of(Tank)["volume_l"],
        "species": specs_of(FishGroup)["species"],
        "fish_count": count,
        "fish_weight_g": specs_of(FishGroup)["mean_weight_g"],
    }


def _line_specs() -> dict[str, FieldSpec]:
    return {
        "kind": specs_of(Bed)["kind"],
        "length_m": _METRES,
        "width_m": _METRES,
        "holes": dataclasses.replace(specs_of(Bed)["columns"], high=_HOLES, may_be_none=True),
        "crop": specs_of(Target)["crop"],
        "amount_per_week": specs_of(Target)["amount_per_week"],
        "unit": specs_of(Target)["unit"],
    }


class Lines(QWidget):
    """Several lines of the same fields, to which more can be added; empty lines count as none."""

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

    def _on_add(self, _checked: bool) -> None:
        self.add_line()
        self.lines[-1][self._fields[0]].setFocus()

    def add_line(self, **values: Any) -> None:
        """Add a line with some values."""
        line: dict[str, FieldEditor] = {}
        number = len(self.lines) + 1
        for at, field in enumerate(self._fields):
            editor = editor_for(self._needs[field], self)
            editor.setMinimumWidth(_BROAD if at == 0 else _NARROW)
            editor.show_value(values.get(field, _first(self._needs[field])))
            focus = editor.focusProxy()
            if focus is not None:
                focus.setAccessibleName(f"{_heading(self._needs[field])}, {number}")
            self._grid.addWidget(editor, number, at)
            line[field] = editor
        self.lines.append(line)

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
                wrong += [tr("Line {number}: {why}", number=number, why=_said(each, spec)) for each in faults]
            values.append(found)
        return values, wrong

    def show_trouble(self, words: list[str], theme: Theme) -> None:
        """Show what is wrong under the lines."""
        palette = self.trouble.palette()
        palette.setColor(self.trouble.foregroundRole(), theme.wrong)
        self.trouble.setPalette(palette)
        self.trouble.setText("\n".join(f"⚠ {each}" for each in words))
        self.trouble.setVisible(bool(words))


def _said(fault: Fault, spec: FieldSpec) -> str:
    return fault_words(dataclasses.replace(fault, limit=limit_words(spec) or fault.limit))


def _heading(needs: EditorNeeds) -> str:
    unit = "" if needs.field == "amount_per_week" else unit_words(needs.spec.unit)
    words = field_words(needs.field)
    return f"{words} [{unit}]" if unit and needs.field != "holes" else words


def _first(needs: EditorNeeds) -> Any:
    return needs.choices[0].value if needs.choices else None


class NewFarmDialog(QDialog):
    """The questions; `answered` carries the answers once none is wrong."""

    answered = Signal(object)

    def __init__(self, needs: NewFarmNeeds, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self.setWindowTitle(tr("New farm"))
        self._needs = needs
        self.rows: dict[str, FieldRow] = {}
        self._build()

    def _build(self) -> None:
        metrics = self._needs.theme.metrics
        inside = QWidget(self)
        across = QHBoxLayout(inside)
        across.setContentsMargins(*(metrics.wide,) * 4)
        across.setSpacing(metrics.wide * 2)
        across.addLayout(self._left(inside), 1)
        across.addLayout(self._right(inside), 2)
        area = QScrollArea(self)
        area.setWidgetResizable(True)
        area.setFrameShape(QFrame.Shape.NoFrame)
        area.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        area.setWidget(inside)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, metrics.margin)
        column.addWidget(area, 1)
        foot = QHBoxLayout()
        foot.setContentsMargins(metrics.wide, 0, metrics.wide, 0)
        foot.addWidget(self._buttons())
        column.addLayout(foot)
        hint = inside.sizeHint()
        self.resize(
            min(hint.width() + metrics.wide * 2, _WIDEST), min(hint.height() + metrics.row * 3, _HIGHEST)
        )

    def _left(self, parent: QWidget) -> QVBoxLayout:
        column = QVBoxLayout()
        column.setSpacing(self._needs.theme.metrics.gap)
        specs = _specs()
        for field in specs:
            if field == "tank_l":
                column.addWidget(_title(tr("Fish"), parent))
            column.addWidget(self._row(field, specs[field], parent))
        column.addStretch(1)
        return column

    def _row(self, field: str, spec: FieldSpec, parent: QWidget) -> FieldRow:
        kinds = {"measures": enum_choices(Units), "week_start": enum_choices(WeekStart)}
        choices = self._needs.fish if field == "species" else kinds.get(field, ())
        editor = editor_for(self._editor_needs(field, spec, choices), parent)
        editor.show_value(choices[0].value if choices else None)
        row = FieldRow(editor, spec, self._needs.theme, parent)
        row.show_hint()
        self.rows[field] = row
        return row

    def _editor_needs(self, field: str, spec: FieldSpec, choices: tuple[Choice, ...]) -> EditorNeeds:
        return EditorNeeds(
            field=field, spec=spec, theme=self._needs.theme, today=self._needs.today, choices=choices
        )

    def _right(self, parent: QWidget) -> QVBoxLayout:
        specs = _line_specs()
        kinds = tuple(choice for choice in enum_choices(BedKind) if choice.value is not BedKind.NURSERY)
        choices = {"kind": kinds, "crop": self._needs.crops, "unit": enum_choices(TargetUnit)}
        needs = {
            field: self._editor_needs(field, spec, choices.get(field, ())) for field, spec in specs.items()
        }
        self.beds = Lines(("kind", "length_m", "width_m", "holes"), needs, tr("Add a bed"), parent)
        self.crops = Lines(("crop", "amount_per_week", "unit"), needs, tr("Add a crop"), parent)
        column = QVBoxLayout()
        column.setSpacing(self._needs.theme.metrics.gap)
        column.addWidget(_title(tr("Beds"), parent))
        column.addWidget(
            _words(tr("Give length and width, or the number of holes."), self._needs.theme, parent)
        )
        column.addWidget(self.beds)
        column.addSpacing(self._needs.theme.metrics.wide)
        column.addWidget(_title(tr("Wanted each week"), parent))
        column.addWidget(
            _words(
                tr("A sowing is drafted for each week of a year; you can change all of it."),
                self._needs.theme,
                parent,
            )
        )
        column.addWidget(self.crops)
        column.addStretch(1)
        return column

    def _buttons(self) -> QDialogButtonBox:
        box = QDialogButtonBox(self)
        self.ok = QPushButton(tr("Make the farm…"), box)
        self.ok.setDefault(True)
        stop = QPushButton(tr("Cancel"), box)
        box.addButton(self.ok, QDialogButtonBox.ButtonRole.AcceptRole)
        box.addButton(stop, QDialogButtonBox.ButtonRole.RejectRole)
        for button in (self.ok, stop):
            button.setAccessibleName(button.text().rstrip("…"))
        box.accepted.connect(self._offer)
        box.rejected.connect(self.reject)
        return box

    def _offer(self) -> None:
        values, sound = self._read_rows()
        beds, wrong_beds = self.beds.read()
        wishes, wrong_wishes = self.crops.read()
        wrong_beds += _bed_troubles(beds)
        self.beds.show_trouble(wrong_beds, self._needs.theme)
        self.crops.show_trouble(wrong_wishes, self._needs.theme)
        if not sound or wrong_beds or wrong_wishes:
            return
        sunday = values["week_start"] is WeekStart.SUNDAY
        into_week = (self._needs.today.weekday() + (1 if sunday else 0)) % DAYS_PER_WEEK
        self.answered.emit(
            Answers(
                name=values["farm_name"],
                place=values["place"],
                latitude_deg=values["latitude_deg"],
                tank_l=values["tank_l"],
                species=values["species"],
                fish_count=values["fish_count"],
                mean_weight_g=values["fish_weight_g"],
                beds=_bed_wishes(beds),
                crops=tuple(CropWish(**wish) for wish in wishes),
                plan_from=self._needs.today - timedelta(days=into_week),
                units=values["measures"],
                week_start=values["week_start"],
            )
        )
        self.accept()

    def _read_rows(self) -> tuple[dict[str, Any], bool]:
        values: dict[str, Any] = {}
        wrong: list[FieldRow] = []
        for field, row in self.rows.items():
            spec = row.editor.needs.spec
            row.show_hint()
            try:
                values[field] = row.editor.read()
            except UnreadError as refused:
                row.show_fault(refused.fault.message)
                wrong.append(row)
                continue
            for fault in value_faults(where="", field=field, value=values[field], spec=spec):
                row.show_fault(_said(fault, spec))
                wrong.append(row)
        if wrong:
            wrong[0].editor.setFocus()
        return values, not wrong


def _bed_troubles(beds: list[dict[str, Any]]) -> list[str]:
    return [
        tr("Line {number}: give length and width, or the number of holes.", number=number)
        for number, bed in enumerate(beds, start=1)
        if not bed.get("holes") and not (bed.get("length_m") and bed.get("width_m"))
    ]


def _bed_wishes(beds: list[dict[str, Any]]) -> tuple[BedWish, ...]:
    return tuple(
        BedWish(
            name=f"{choice_words(bed['kind'])} {number}",
            kind=bed["kind"],
            length_m=bed["length_m"] or 0.0,
            width_m=bed["width_m"] or 0.0,
            holes=bed["holes"] or 0,
        )
        for number, bed in enumerate(beds, start=1)
    )


def _title(words: str, parent: QWidget) -> QLabel:
    label = QLabel(words, parent)
    font = label.font()
    font.setBold(True)
    label.setFont(font)
    return label


def _words(words: str, theme: Theme, parent: QWidget) -> QLabel:
    label = QLabel(words, parent)
    label.setWordWrap(True)
    palette = label.palette()
    palette.setColor(label.foregroundRole(), theme.muted)
    label.setPalette(palette)
    return label
