"""Asks what a new farm begins with: a name, the tank and its fish, the beds, what is wanted each week.

Nothing else is asked; whatever is left out can be entered later. Checks every answer against the limits
that the farm's values declare. Must know nothing of files.
"""

from __future__ import annotations

import dataclasses
from collections.abc import Callable
from datetime import date, timedelta
from typing import Any, Final

from PySide6.QtCore import QLocale, QSize, Qt, Signal
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import (
    QDialog,
    QDialogButtonBox,
    QHBoxLayout,
    QLabel,
    QPushButton,
    QVBoxLayout,
    QWidget,
)

from planner.catalogue.places import ZonePlace
from planner.desk.fitting import open_sized, stand
from planner.desk.forms.editors import Choice, EditorNeeds, FieldEditor, editor_for, enum_choices
from planner.desk.forms.form import FieldRow
from planner.desk.forms.reading import UnreadError
from planner.desk.newfarm.drawing import LoopDrawing, LoopSketch, sketched
from planner.desk.newfarm.lines import Lines, read_or_none, said
from planner.desk.newfarm.places import PlaceEditor
from planner.desk.plan.kit import Scrolling, caution
from planner.desk.say import tr
from planner.desk.theme import Theme
from planner.desk.words import choice_words
from planner.farm.checks import value_faults
from planner.farm.crops import Target, TargetUnit
from planner.farm.farm import DAYS_PER_WEEK, Settings
from planner.farm.fields import FieldKind, FieldSpec, specs_of
from planner.farm.fish import FishGroup
from planner.farm.site import Bed, Site, Tank, Units, WeekStart
from planner.farm.species import BedKind
from planner.planning.answers import Answers, BedWish, CropWish
from planner.planning.climates import ClimateClass

_HOLES: Final = 4000
_LEAST_DRAWINGS: Final = 4
"""So many times as high as the drawing a window has to be before it has room for it."""
_LINES: Final = (
    ("farm_name",),
    ("place",),
    ("latitude_deg", "altitude_m"),
    ("climate",),
    ("measures", "week_start"),
    ("tank_l",),
    ("species",),
    ("fish_count", "fish_weight_g"),
)
"""The fields at the left, line by line."""
_METRES: Final = FieldSpec(kind=FieldKind.NUMBER, low=0.1, high=1000, unit="m", may_be_none=True)
_WIDEST, _HIGHEST = 1000, 760


@dataclasses.dataclass(frozen=True, slots=True, kw_only=True)
class NewFarmNeeds:
    """What can be chosen: crops and fish of the catalogue, zones and climates; and the day it is.

    `cautions` stand where the fish are chosen. `lay_out` makes a bed of a wish for the crops of some keys.
    `time_zone` is that of the machine.
    """

    crops: tuple[Choice, ...]
    fish: tuple[Choice, ...]
    theme: Theme
    today: date
    lay_out: Callable[[BedWish, tuple[str, ...]], Bed]
    climates: tuple[Choice, ...] = (Choice(value=ClimateClass.UNKNOWN, words=""),)
    zones: tuple[ZonePlace, ...] = ()
    cautions: tuple[str, ...] = ()
    time_zone: str = ""


def _specs() -> dict[str, FieldSpec]:
    count = dataclasses.replace(specs_of(FishGroup)["count"], low=0)
    return {
        "farm_name": specs_of(Settings)["name"],
        "place": specs_of(Site)["place"],
        "latitude_deg": specs_of(Site)["latitude_deg"],
        "altitude_m": specs_of(Site)["altitude_m"],
        "climate": FieldSpec(kind=FieldKind.CHOICE),
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
        across = self._across = QHBoxLayout(inside)
        across.setContentsMargins(*(metrics.wide,) * 4)
        across.setSpacing(metrics.wide * 2)
        across.addLayout(self._left(inside), 1)
        across.addLayout(self._right(inside), 2)
        area = self._area = Scrolling(inside, self._needs.theme, self)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, metrics.margin)
        column.addWidget(area, 1)
        self.drawing = LoopDrawing(self._needs.theme, self)
        column.addWidget(self.drawing)
        foot = QHBoxLayout()
        foot.setContentsMargins(metrics.wide, 0, metrics.wide, 0)
        foot.addWidget(self._buttons())
        column.addLayout(foot)
        high = inside.sizeHint().height() + metrics.row * 3 + self.drawing.sizeHint().height()
        open_sized(self, QSize(_WIDEST, min(high, _HIGHEST)))
        self.beds.changed.connect(self._draw)
        self.crops.changed.connect(self._draw)
        for field in ("tank_l", "fish_count"):
            self.rows[field].editor.touched.connect(self._draw)
        self._draw()

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Put questions one above the other in a narrow window, and leave the drawing out of a low one."""
        super().resizeEvent(event)
        self.drawing.setVisible(self.height() >= self.drawing.minimumHeight() * _LEAST_DRAWINGS)
        stand(self._across, self.width() - self._area.verticalScrollBar().sizeHint().width())

    def _draw(self) -> None:
        """Draw the loop as far as it is typed."""
        crops = tuple(line["crop"] for line in self.crops.known() if line["crop"])
        wishes = _bed_wishes([bed for bed in self.beds.known() if not _bed_troubles([bed])])
        beds = (self._needs.lay_out(wish, crops) for wish in wishes)
        self.drawing.show_sketch(
            LoopSketch(
                tank_l=read_or_none(self.rows["tank_l"].editor),
                fish=read_or_none(self.rows["fish_count"].editor),
                beds=tuple(sketched(bed, wish) for bed, wish in zip(beds, wishes, strict=True)),
            )
        )

    def _left(self, parent: QWidget) -> QVBoxLayout:
        column = QVBoxLayout()
        column.setSpacing(self._needs.theme.metrics.gap)
        specs = _specs()
        for fields in _LINES:
            if "tank_l" in fields:
                column.addWidget(_title(tr("Fish"), parent))
            line = QHBoxLayout()
            for field in fields:
                line.addWidget(self._row(field, specs[field], parent), 1, Qt.AlignmentFlag.AlignTop)
            column.addLayout(line)
            if "species" in fields:
                for words in self._needs.cautions:
                    column.addWidget(caution(words, self._needs.theme, parent))
        column.addStretch(1)
        self.rows["altitude_m"].editor.show_value(0)
        place = self.rows["place"].editor
        assert isinstance(place, PlaceEditor)
        place.picked.connect(self._on_place)
        place.show_zone(self._needs.time_zone)
        return column

    def _on_place(self, zone: ZonePlace) -> None:
        """Take latitude, week and units as they are usual where the place is."""
        self.rows["latitude_deg"].editor.show_value(zone.latitude_deg)
        habits = QLocale(QLocale.Language.AnyLanguage, QLocale.codeToTerritory(zone.country_code))
        if habits.territory() is QLocale.codeToTerritory(zone.country_code):
            sunday = habits.firstDayOfWeek() is Qt.DayOfWeek.Sunday
            us = habits.measurementSystem() is QLocale.MeasurementSystem.ImperialUSSystem
            self.rows["week_start"].editor.show_value(WeekStart.SUNDAY if sunday else WeekStart.MONDAY)
            self.rows["measures"].editor.show_value(Units.US if us else Units.METRIC)

    def _row(self, field: str, spec: FieldSpec, parent: QWidget) -> FieldRow:
        kinds = {
            "measures": enum_choices(Units),
            "week_start": enum_choices(WeekStart),
            "climate": self._needs.climates,
        }
        choices = self._needs.fish if field == "species" else kinds.get(field, ())
        needs = self._editor_needs(field, spec, choices)
        if field == "place":
            editor: FieldEditor = PlaceEditor(needs, self._needs.zones, parent)
        else:
            editor = editor_for(needs, parent)
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
                altitude_m=values["altitude_m"],
                climate=values["climate"],
                site_notes=self._climate_note(values["climate"]),
                **self._zone_values(),
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

    def _zone_values(self) -> dict[str, Any]:
        """Return longitude and time zone of the place that was picked; nothing for words of one's own."""
        place = self.rows["place"].editor
        zone = place.zone if isinstance(place, PlaceEditor) else None
        if zone is None:
            return {}
        return {"longitude_deg": zone.longitude_deg, "time_zone": zone.time_zone}

    def _climate_note(self, kind: ClimateClass) -> str:
        """Return what is kept with the site about where its months come from."""
        if kind is ClimateClass.UNKNOWN:
            return ""
        said = next(choice.words for choice in self._needs.climates if choice.value is kind)
        return tr("Air by month guessed from the class “{climate}”; put in your own.", climate=said)

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
                row.show_fault(said(fault, spec))
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
