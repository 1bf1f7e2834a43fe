"""The page of the beds: the map of every hole, a slider of days, the same as a table, and what is chosen."""

from __future__ import annotations

from datetime import date
from typing import Final

from PySide6.QtCore import QModelIndex, Qt
from PySide6.QtWidgets import (
    QComboBox,
    QHBoxLayout,
    QLabel,
    QPushButton,
    QStackedWidget,
    QVBoxLayout,
    QWidget,
)

from planner.desk.bars_of import crop_colours
from planner.desk.beds.day_strip import DayStrip
from planner.desk.beds.rows import map_columns, map_rows
from planner.desk.beds.scale_bar import ScaleBar
from planner.desk.beds.stays import Stays
from planner.desk.beds.view import MapView
from planner.desk.beds.words import MapShow, layer_words, show_words
from planner.desk.behind import Behind
from planner.desk.lanes.kit import Kit
from planner.desk.lanes.lane_bar import LaneBar, stage_key
from planner.desk.mover import DeskMover
from planner.desk.places.place import Place, PlaceNeeds
from planner.desk.plan.kit import Table, Words
from planner.desk.say import tr
from planner.desk.theme import Theme
from planner.desk.words import day_words
from planner.farm.crops import Batch
from planner.farm.fields import NO_ID, Id
from planner.farm.site import Bed

_PRINT: Final = "bed-map"
"""Key of the document."""


class BedsPlace(Place):
    """Every hole of every bed on a day that can be chosen."""

    def __init__(self, needs: PlaceNeeds, parent: QWidget) -> None:
        super().__init__(needs, parent)
        self._behind: Behind | None = None
        self._stays: Stays | None = None
        self._on: date | None = None
        self.mover = DeskMover(needs.conduct)
        self.map = MapView(self.theme, self.mover, self)
        self.table = Table(map_columns(), tr("Places of the beds"), self.theme, self)
        self.strip = DayStrip(self.theme, self)
        self._make_bar()
        self.said = Words("", self.theme, self)
        self.said.setMinimumHeight(round(self.fontMetrics().height() * 2.2))
        self.said.setAlignment(Qt.AlignmentFlag.AlignTop)
        self.scale = ScaleBar(self.theme, self)
        self.pages = QStackedWidget(self)
        self.pages.addWidget(self.map)
        self.pages.addWidget(self.table)
        self._lay_out()
        self._connect()

    def _make_bar(self) -> None:
        self.day = QLabel(self)
        font = self.day.font()
        font.setBold(True)
        self.day.setFont(font)
        self.layer, self.looks = QComboBox(self), QComboBox(self)
        self.layer.setAccessibleName(tr("Layer of beds"))
        self.looks.setAccessibleName(tr("What the holes show"))
        for show in MapShow:
            self.looks.addItem(show_words(show), show)
        self.today = self._button(tr("Today"), tr("Show the beds as they are today"))
        self.out = self._button("−", tr("Draw smaller"))
        self.into = self._button("+", tr("Draw larger"))
        self.fit = self._button(tr("Fit"), tr("Draw so that holes can be read and all fits"))
        self.as_table = self._button(tr("Table"), tr("The same as a table"))
        self.as_table.setCheckable(True)
        self.print = self._button(tr("Print…"), tr("Print a map of the beds"))

    def _button(self, words: str, tip: str) -> QPushButton:
        found = QPushButton(words, self)
        found.setToolTip(tip)
        found.setAccessibleName(tip)
        if len(words) == 1:
            found.setFixedWidth(round(found.fontMetrics().height() * 2))
        return found

    def _lay_out(self) -> None:
        metrics = self.theme.metrics
        bar = QHBoxLayout()
        bar.setContentsMargins(metrics.gap, metrics.gap, metrics.gap, 0)
        bar.setSpacing(metrics.gap)
        for part in (self.looks, self.layer, self.out, self.into, self.fit, self.as_table):
            bar.addWidget(part)
        bar.addStretch(1)
        bar.addWidget(self.print)
        days = QHBoxLayout()
        days.setContentsMargins(metrics.gap, 0, metrics.gap, 0)
        days.setSpacing(metrics.gap)
        days.addWidget(self.day)
        days.addWidget(self.strip, 1)
        days.addWidget(self.today)
        foot = QHBoxLayout()
        foot.setContentsMargins(metrics.gap, 0, metrics.gap, metrics.tight)
        foot.addWidget(self.said, 1)
        foot.addWidget(self.scale, 0, Qt.AlignmentFlag.AlignTop)
        kit = Kit(self.theme, self.font())
        self.key = LaneBar(tr("Stages"), kit, self)
        self.key.set_key(kit, stage_key(kit))
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(metrics.tight)
        column.addLayout(bar)
        column.addLayout(days)
        column.addWidget(self.pages, 1)
        column.addWidget(self.key)
        column.addLayout(foot)

    def _connect(self) -> None:
        self.strip.valueChanged.connect(self._on_day)
        self.layer.currentIndexChanged.connect(self._on_layer)
        self.looks.currentIndexChanged.connect(self._on_look)
        self.today.clicked.connect(self._on_today)
        self.out.clicked.connect(self._on_out)
        self.into.clicked.connect(self._on_in)
        self.fit.clicked.connect(self._on_fit)
        self.as_table.toggled.connect(self._on_table)
        self.print.clicked.connect(self._on_print)
        self.map.chosen.connect(self.chosen)
        self.map.opened.connect(self.opened)
        self.map.cursor_moved.connect(self.said.setText)
        self.map.day_wanted.connect(self._on_days)
        self.map.scaled.connect(self.scale.show_scale)
        self.table.selectionModel().currentRowChanged.connect(self._on_row)
        self.table.activated.connect(self._on_activated)

    # ---- the farm

    def show_behind(self, behind: Behind) -> None:
        """Show the beds of a farm; the day that was looked at stays."""
        self._behind = behind
        outlook = behind.outlook
        ruler = outlook.forecast.ruler
        self.mover.show(outlook, self.needs.forecaster)
        self._stays = Stays(outlook)
        on = self._on or behind.today
        day = min(max(ruler.day_of(on), 0), max(ruler.days - 1, 0))
        self._fill_layers(outlook.farm.beds)
        beds = self._beds()
        blocked = self.strip.blockSignals(True)
        self.strip.show_days(ruler.start_on, ruler.days, behind.today, self._stays.held_by_week(beds))
        self.strip.setValue(day)
        self.strip.blockSignals(blocked)
        self.today.setEnabled(outlook.covers(behind.today))
        self._show_beds()

    def _fill_layers(self, beds: tuple[Bed, ...]) -> None:
        layers = sorted({bed.layer for bed in beds})
        chosen = self.layer.currentData()
        blocked = self.layer.blockSignals(True)
        self.layer.clear()
        for layer in (None, *layers):
            self.layer.addItem(layer_words(layer), layer)
        self.layer.setCurrentIndex(max(self.layer.findData(chosen), 0) if chosen is not None else 0)
        self.layer.blockSignals(blocked)
        self.layer.setVisible(len(layers) > 1)

    def _beds(self) -> tuple[Bed, ...]:
        if self._behind is None:
            return ()
        layer = self.layer.currentData()
        beds = self._behind.outlook.farm.beds
        return tuple(bed for bed in beds if layer is None or bed.layer == layer)

    def _show_beds(self) -> None:
        if self._behind is None or self._stays is None:
            return
        colours = crop_colours(self._behind.outlook.farm)
        self.map.show_day(self.strip.value())
        self.map.show_stays(self._stays, self._beds(), colours)
        self._show_day()

    def _show_day(self) -> None:
        if self._stays is None:
            return
        self._on = self._stays.date_of(self.strip.value())
        self.day.setText(day_words(self._on))
        self.day.setMinimumWidth(self.day.fontMetrics().horizontalAdvance(day_words(_WIDE_DAY)))
        self.map.show_day(self.strip.value())
        if self.as_table.isChecked():
            self.table.show_rows(map_rows(self._stays, self._beds(), self.strip.value()))

    def show_chosen(self, thing_id: Id) -> None:
        """Mark the holes of the chosen batch."""
        thing = self._behind.outlook.found.get(thing_id) if self._behind is not None else None
        self.map.set_picked(thing.id if isinstance(thing, Batch) else NO_ID)

    def take_focus(self) -> None:
        """Give the keyboard to the map, or the table where that is shown."""
        (self.table if self.as_table.isChecked() else self.map).setFocus()

    def leave(self) -> None:
        """Forget the day looked at, for another farm has other days."""
        self.map.cancel()
        self._on = None

    def wear(self, theme: Theme) -> None:
        """Wear the colours of a theme."""
        super().wear(theme)
        self.map.wear(theme)
        self.strip.wear(theme)
        self.said.wear(theme)
        self.scale.wear(theme)
        kit = Kit(theme, self.font())
        self.key.set_key(kit, stage_key(kit))

    # ---- hands

    def _on_day(self, _day: int) -> None:
        self._show_day()

    def _on_days(self, days: int) -> None:
        self.strip.setValue(self.strip.value() + days)

    def _on_layer(self, _at: int) -> None:
        self._show_beds()

    def _on_look(self, _at: int) -> None:
        self.map.show_as(self.looks.currentData())

    def _on_today(self, _checked: bool) -> None:
        if self._behind is not None:
            self.strip.setValue(self._behind.outlook.forecast.ruler.day_of(self._behind.today))

    def _on_out(self, _checked: bool) -> None:
        self.map.zoom_out()

    def _on_in(self, _checked: bool) -> None:
        self.map.zoom_in()

    def _on_fit(self, _checked: bool) -> None:
        self.map.fit()

    def _on_table(self, shown: bool) -> None:
        self.pages.setCurrentWidget(self.table if shown else self.map)
        for part in (self.out, self.into, self.fit, self.looks, self.scale):
            part.setEnabled(not shown)
        self._show_day()

    def _on_print(self, _checked: bool) -> None:
        if self._behind is None or self._on is None:
            return
        from planner.desk.print_asking import PrintAsking

        asking = PrintAsking(self.needs, self._behind.outlook, self)
        asking.told.connect(self.told)
        asking.open(self._on, _PRINT)

    def _on_row(self, _index: QModelIndex, _before: QModelIndex) -> None:
        row = self.table.current()
        if row is not None:
            self.chosen.emit(row.payload)

    def _on_activated(self, _index: QModelIndex) -> None:
        row = self.table.current()
        if row is not None:
            self.opened.emit(row.payload)


_WIDE_DAY: Final = date(2027, 9, 22)
