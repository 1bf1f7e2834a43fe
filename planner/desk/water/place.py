"""The page of the water: the tab of readings and advice, as a page of the middle pane."""

from __future__ import annotations

from PySide6.QtWidgets import QVBoxLayout, QWidget

from planner.desk.behind import Behind
from planner.desk.places.place import Place, PlaceNeeds
from planner.desk.theme import Theme
from planner.desk.water.tab import WaterTab


class WaterPlace(Place):
    """Holds the water tab and passes on what it tells."""

    def __init__(self, needs: PlaceNeeds, parent: QWidget) -> None:
        super().__init__(needs, parent)
        self.tab = WaterTab(needs.theme, self)
        self.tab.opened.connect(self.opened)
        self.tab.new_wanted.connect(self.new_wanted)
        self.tab.why_wanted.connect(self.why_wanted)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(self.tab)

    def show_behind(self, behind: Behind) -> None:
        """Show the water of a farm."""
        self.tab.show_behind(behind)

    def take_focus(self) -> None:
        """Give the keyboard to the readings."""
        self.tab.view.setFocus()

    def wear(self, theme: Theme) -> None:
        """Wear the colours of a theme."""
        super().wear(theme)
        self.tab.wear(theme)
