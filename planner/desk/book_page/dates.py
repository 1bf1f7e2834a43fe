"""The batches that an own value would move, in a table whose dates the plan that was tried answers."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QWidget

from planner.desk.book_page.own_values import Shift
from planner.desk.book_page.rows import shift_columns, shift_rows
from planner.desk.book_page.shift_answers import with_tried
from planner.desk.pages import Fact
from planner.desk.plan.kit import Table
from planner.desk.say import tr
from planner.desk.theme import Theme
from planner.farm.farm import Farm
from planner.forecast.engine import Forecaster

_ROWS_SHOWN = 6


class DatesTable(Table):
    """`why_wanted` is what a cell is asked, `asked` the same with the answer of the tried plan."""

    why_wanted = Signal(object, int)
    asked = Signal(object, int)

    def __init__(self, theme: Theme, parent: QWidget) -> None:
        super().__init__(shift_columns(), tr("Batches that would move"), theme, parent)
        self._farms: tuple[Farm, Farm, Forecaster] | None = None
        self.setMaximumHeight(theme.metrics.row * _ROWS_SHOWN)
        self.hide()
        self.why_wanted.connect(self._on_why)

    def show_shifts(self, found: Sequence[Shift], now: Farm, tried: Farm, forecaster: Forecaster) -> None:
        """Show what moves from the farm as it is to the one that was tried; nothing hides the table."""
        self._farms = (now, tried, forecaster)
        self.show_rows(shift_rows(found, now))
        self.setVisible(bool(found))

    def _on_why(self, facts: tuple[Fact, ...], number: int) -> None:
        if self._farms is not None:
            asked = with_tried(facts[number], *self._farms)
            facts = (*facts[:number], asked, *facts[number + 1 :])
        self.asked.emit(facts, number)
