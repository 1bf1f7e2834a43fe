"""A field for the place of a farm: typed freely, or picked from a list of countries and their zones.

What is picked brings latitude, longitude and time zone with it. Must know nothing of farms.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Sequence

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QComboBox, QCompleter, QWidget

from planner.catalogue.places import ZonePlace
from planner.desk.forms.editors import EditorNeeds, FieldEditor
from planner.desk.say import tr
from planner.desk.words import number_words


class PlaceEditor(FieldEditor):
    """A line with a list; `picked` carries the zone that was chosen."""

    picked = Signal(object)

    def __init__(self, needs: EditorNeeds, zones: Sequence[ZonePlace], parent: QWidget) -> None:
        super().__init__(needs, parent)
        many = Counter(zone.country_code for zone in zones)
        self._zones = {zone_words(zone, alone=many[zone.country_code] == 1): zone for zone in zones}
        self.box = QComboBox(self)
        self.box.setEditable(True)
        self.box.setInsertPolicy(QComboBox.InsertPolicy.NoInsert)
        self.box.setSizeAdjustPolicy(QComboBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon)
        self.box.addItems(list(self._zones))
        self.box.setCurrentIndex(-1)
        completer = QCompleter(list(self._zones), self)
        completer.setCaseSensitivity(Qt.CaseSensitivity.CaseInsensitive)
        completer.setFilterMode(Qt.MatchFlag.MatchContains)
        self.box.setCompleter(completer)
        line = self.box.lineEdit()
        assert line is not None
        self.line = line
        line.setPlaceholderText(tr("country, or any words"))
        self.take(self.box)
        self.box.activated.connect(self._on_picked)
        completer.activated.connect(self._on_picked)
        line.textEdited.connect(self._on_edited)

    @property
    def zone(self) -> ZonePlace | None:
        """The zone whose words stand in the line; None for words of the grower's own."""
        return self._zones.get(self.line.text().strip())

    def show_zone(self, time_zone: str) -> None:
        """Show the place of a time zone, where the list has it."""
        found = [words for words, zone in self._zones.items() if zone.time_zone == time_zone]
        if found:
            self.show_value(found[0])
            self._on_picked()

    def show_value(self, value: str | None) -> None:
        self.line.setText(value or "")
        self.line.setCursorPosition(0)

    def read(self) -> str:
        return self.line.text().strip()

    def note(self) -> str:
        zone = self.zone
        if zone is None:
            return ""
        return tr(
            "{zone}: {latitude}°, {longitude}° at {city}; mend the latitude if you live far from there",
            zone=zone.time_zone,
            latitude=number_words(zone.latitude_deg, digits=1),
            longitude=number_words(zone.longitude_deg, digits=1),
            city=zone.city,
        )

    def _on_picked(self, *_anything: object) -> None:
        self.touched.emit()
        zone = self.zone
        if zone is not None:
            self.picked.emit(zone)

    def _on_edited(self, _text: str) -> None:
        self.touched.emit()


def zone_words(zone: ZonePlace, *, alone: bool) -> str:
    """Return a zone as it stands in the list: the country, and where it has several the place."""
    if alone:
        return zone.country
    comment = f", {zone.comment}" if zone.comment else ""
    return f"{zone.country} – {zone.city}{comment}"
