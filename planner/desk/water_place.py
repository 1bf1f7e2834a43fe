"""Holds the place of the water tab until it is first seen, for the window must not wait for what it needs."""

from __future__ import annotations

from functools import cached_property
from typing import TYPE_CHECKING

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QVBoxLayout, QWidget

from planner.desk.theme import Theme

if TYPE_CHECKING:
    from planner.desk.water.tab import WaterTab


class WaterPlace(QWidget):
    """An empty page until `tab` is asked for; passes on what the tab tells."""

    opened = Signal(str)
    new_wanted = Signal(str, str)
    why_wanted = Signal(object, int)

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme = theme
        column = self._column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)

    @cached_property
    def tab(self) -> WaterTab:
        """The tab itself, made when first asked for."""
        from planner.desk.water.tab import WaterTab

        tab = WaterTab(self._theme, self)
        tab.opened.connect(self.opened)
        tab.new_wanted.connect(self.new_wanted)
        tab.why_wanted.connect(self.why_wanted)
        self._column.addWidget(tab)
        return tab

    def wear(self, theme: Theme) -> None:
        """Wear the colours of a theme."""
        self._theme = theme
        if "tab" in self.__dict__:
            self.tab.wear(theme)
