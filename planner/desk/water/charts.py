"""Puts the charts of the water beside each other, in as many rows as the width asks for."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Final

from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QGridLayout, QWidget

from planner.desk.theme import Theme
from planner.desk.water.chart import WaterChart
from planner.desk.water.rows import Course
from planner.farm.water import Quantity

CHARTED: Final = (
    Quantity.PH,
    Quantity.ALKALINITY_MG_PER_L,
    Quantity.NITRATE_N_MG_PER_L,
    Quantity.FE_MG_PER_L,
)
_LEAST_ROWS: Final = 7.5
"""Width below which a chart would rather have another row, in heights of a table's row."""


class WaterCharts(QWidget):
    """One chart for each quantity that is followed."""

    def __init__(self, theme: Theme, parent: QWidget) -> None:
        super().__init__(parent)
        self._theme = theme
        self.charts = tuple(WaterChart(quantity, theme, self) for quantity in CHARTED)
        self._across = 0
        grid = self._grid = QGridLayout(self)
        grid.setContentsMargins(0, 0, 0, 0)
        grid.setSpacing(theme.metrics.hair)
        self._arrange(len(self.charts))

    def _arrange(self, across: int) -> None:
        if across == self._across:
            return
        self._across = across
        for at, chart in enumerate(self.charts):
            self._grid.addWidget(chart, at // across, at % across)

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        fitting = round(self.width() // (self._theme.metrics.row * _LEAST_ROWS))
        self._arrange(len(self.charts) if fitting >= len(self.charts) else len(self.charts) // 2)

    def show_courses(self, courses: Sequence[Course]) -> None:
        """Show the courses of the quantities charted, in their order."""
        for chart, course in zip(self.charts, courses, strict=True):
            chart.show_course(course)

    def wear(self, theme: Theme) -> None:
        """Wear the colours of a theme."""
        for chart in self.charts:
            chart.wear(theme)
