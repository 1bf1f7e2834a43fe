"""A table in which prices are typed; what is not typed stays unknown, and what is no price is said."""

from __future__ import annotations

import json
from collections.abc import Iterator
from typing import Final

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QAbstractItemView, QHeaderView, QTableWidget, QTableWidgetItem, QWidget

from planner.catalogue.catalogue import Catalogue
from planner.desk.forms.reading import UnreadError, number_text, read_number
from planner.desk.say import tr
from planner.desk.settings import Setting
from planner.desk.theme import Theme
from planner.farm.farm import Farm
from planner.farm.fields import FieldKind, FieldSpec
from planner.planning.scenarios.compare import Prices

_SPEC: Final = FieldSpec(kind=FieldKind.NUMBER, low=0.0, high=1_000_000.0, may_be_none=True)
PRICES: Final = Setting(key="plan/prices", kind=str, default="")
"""Prices are those of the grower's market, so they are remembered on the computer, not in a farm."""
_NAME, _PRICE = 0, 1
_KEY: Final = Qt.ItemDataRole.UserRole
Priced = tuple[str, str]
"""What a price is for: the part of `Prices` it belongs to, and the key in it."""

_PARTS: Final = ("crop_per_kg", "fish_per_kg", "feed_per_kg", "supplement_per_kg", "seed_per_thousand")


def priced_of(farm: Farm, catalogue: Catalogue) -> Iterator[tuple[Priced, str]]:
    """Yield everything of a farm that has a price, with its words."""
    crops = dict.fromkeys(batch.crop for batch in farm.batches)
    for key in crops:
        yield ("crop_per_kg", key), tr("{name}, a kg", name=catalogue.crops[key].name)
    for key in dict.fromkeys(group.species for group in farm.fish_groups):
        yield ("fish_per_kg", key), tr("{name}, a kg", name=catalogue.fish[key].name)
    for key in dict.fromkeys(group.feed for group in farm.fish_groups):
        yield ("feed_per_kg", key), tr("{name}, a kg", name=catalogue.feeds[key].name)
    for key in dict.fromkeys(dose.supplement for dose in farm.doses):
        yield ("supplement_per_kg", key), tr("{name}, a kg", name=catalogue.supplements[key].name)
    for key in crops:
        yield ("seed_per_thousand", key), tr("Seed of {name}, a thousand", name=catalogue.crops[key].name)


def prices_text(values: dict[Priced, float]) -> str:
    """Return prices as text to be remembered."""
    return json.dumps([[part, key, value] for (part, key), value in sorted(values.items())])


def prices_read(text: str) -> dict[Priced, float]:
    """Return remembered prices; what is not of that form is left out."""
    try:
        entries = json.loads(text) if text else []
        return {(str(part), str(key)): float(value) for part, key, value in entries if part in _PARTS}
    except (ValueError, TypeError):
        return {}


def prices_of(values: dict[Priced, float]) -> Prices:
    """Return prices as the engine takes them."""
    parts: dict[str, dict[str, float]] = {part: {} for part in _PARTS}
    for (part, key), value in values.items():
        parts[part][key] = value
    return Prices(**parts)


class PriceTable(QTableWidget):
    """A line for everything that has a price; `priced` is told once every price can be read."""

    priced = Signal()
    wrong = Signal(str)

    def __init__(self, theme: Theme, parent: QWidget) -> None:
        super().__init__(0, 2, parent)
        self.values: dict[Priced, float] = {}
        self._theme = theme
        self.setHorizontalHeaderLabels([tr("For"), tr("Price")])
        self.setAccessibleName(tr("Prices"))
        self.setTabKeyNavigation(False)
        self.setShowGrid(False)
        self.setAlternatingRowColors(True)
        self.verticalHeader().hide()
        self.verticalHeader().setDefaultSectionSize(theme.metrics.row)
        self.horizontalHeader().setSectionResizeMode(_NAME, QHeaderView.ResizeMode.Stretch)
        self.setColumnWidth(_PRICE, theme.metrics.row * 3)
        self.setSelectionMode(QAbstractItemView.SelectionMode.SingleSelection)
        self.setMinimumHeight(theme.metrics.row * 6)
        self.itemChanged.connect(self._on_changed)

    def show_farm(self, farm: Farm, catalogue: Catalogue) -> None:
        """Show a line for everything on a farm that has a price; what was typed stays."""
        lines = list(priced_of(farm, catalogue))
        shown = [self._entry(row).data(_KEY) for row in range(self.rowCount())]
        if shown == [list(priced) for priced, _ in lines]:
            return
        blocked = self.blockSignals(True)
        self.setRowCount(len(lines))
        for row, (priced, words) in enumerate(lines):
            name = QTableWidgetItem(words)
            name.setFlags(Qt.ItemFlag.ItemIsEnabled | Qt.ItemFlag.ItemIsSelectable)
            price = QTableWidgetItem(number_text(self.values.get(priced)))
            price.setData(_KEY, list(priced))
            price.setData(Qt.ItemDataRole.AccessibleTextRole, tr("Price of {what}", what=words))
            price.setTextAlignment(Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter)
            self.setItem(row, _NAME, name)
            self.setItem(row, _PRICE, price)
        self.blockSignals(blocked)

    def _entry(self, row: int, at: int = _PRICE) -> QTableWidgetItem:
        found = self.item(row, at)
        assert found is not None
        return found

    def _on_changed(self, item: QTableWidgetItem) -> None:
        if item.column() != _PRICE:
            return
        part, key = item.data(_KEY)
        what = self._entry(item.row(), _NAME).text()
        try:
            value = read_number(item.text(), field="price", spec=_SPEC)
        except UnreadError:
            self._refuse(item, what)
            return
        if value is not None and not 0.0 <= value <= 1_000_000.0:
            self._refuse(item, what)
            return
        self._colour(item, wrong=False)
        self.values.pop((part, key), None)
        if value is not None:
            self.values[part, key] = float(value)
        self.wrong.emit("")
        self.priced.emit()

    def _refuse(self, item: QTableWidgetItem, what: str) -> None:
        self._colour(item, wrong=True)
        self.wrong.emit(
            tr(
                "{what}: “{given}” is no price; give a number from 0 to 1000000.",
                what=what,
                given=item.text(),
            )
        )

    def _colour(self, item: QTableWidgetItem, *, wrong: bool) -> None:
        blocked = self.blockSignals(True)
        item.setForeground(self._theme.wrong if wrong else self._theme.text)
        self.blockSignals(blocked)

    def wear(self, theme: Theme) -> None:
        """Wear the colours of a theme."""
        self._theme = theme
        for row in range(self.rowCount()):
            self._colour(self._entry(row), wrong=False)
