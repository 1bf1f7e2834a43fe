"""What to buy for the plan, month by month; to be copied into a spreadsheet, or printed."""

from __future__ import annotations

from collections.abc import Iterator
from functools import partial
from threading import Event
from typing import Any, Final

from PySide6.QtGui import QGuiApplication
from PySide6.QtWidgets import QComboBox, QHBoxLayout, QWidget

from planner.desk.outlook import Outlook
from planner.desk.places.place import PlaceNeeds
from planner.desk.plan.expansion_words import month_words
from planner.desk.plan.kit import Table, Words, Working, button, column, stack
from planner.desk.plan.orders_rows import months_of, order_columns, order_rows, rows_text
from planner.desk.plan.part import Part
from planner.desk.plan.whys import Answered, asked_rows, order_names
from planner.desk.say import tr
from planner.desk.words import number_words
from planner.farm.farm import Farm
from planner.forecast.engine import Forecaster
from planner.planning.answering import Whys
from planner.planning.orders import OrderLine, order_list
from planner.planning.why_farms import ground_of
from planner.planning.why_orders import order_whys

_AHEAD, _ALL = "ahead", "all"
_PAPER: Final = "shopping"
_JOB: Final = "orders"


def order_steps(outlook: Outlook, farm: Farm, forecaster: Forecaster, _stopped: Event) -> Iterator[Answered]:
    """Yield the order list of an outlook, then with what tells why its amounts are what they are."""
    lines = order_list(outlook.farm, outlook.forecast, outlook.catalogue)
    yield Answered(lines, {})
    ground = ground_of(farm, forecaster)
    yield Answered(lines, order_whys(ground.farm, ground.forecast, ground.forecaster, lines))


class OrdersPart(Part):
    """The order list with a choice of months."""

    def __init__(self, needs: PlaceNeeds, parent: QWidget) -> None:
        super().__init__(needs, parent)
        self._lines: tuple[OrderLine, ...] = ()
        self._whys: Whys = {}
        self.months = QComboBox(self)
        self.months.setAccessibleName(tr("Which months are shown"))
        self.count = Words("", self.theme, self, ink="muted")
        self.copy = button(
            tr("Copy as CSV"), self, tip=tr("Put the rows on the clipboard, for a spreadsheet")
        )
        self.print = button(tr("Print…"), self, tip=tr("Print the shopping list"))
        self.table = Table(order_columns(), tr("Order list"), self.theme, self)
        self.empty = Words("", self.theme, self, ink="muted")
        self.working = Working(self.theme, self)
        self.working.stopped.connect(self.give_up)
        top = QHBoxLayout()
        top.addWidget(self.months)
        top.addWidget(self.count, 1)
        top.addWidget(self.copy)
        top.addWidget(self.print)
        lines = column(self, self.theme, margin=0)
        lines.addLayout(top)
        stack(lines, self.working, self.empty)
        lines.addWidget(self.table, 1)
        lines.addStretch(0)
        for each in (self.copy, self.print):
            each.setEnabled(False)
        self.months.currentIndexChanged.connect(self._show)
        self.copy.clicked.connect(self._on_copy)
        self.print.clicked.connect(self._on_print)

    def take_focus(self) -> None:
        self.months.setFocus()

    def refresh(self) -> None:
        assert self.behind is not None
        self.begin(partial(order_steps, self.behind.outlook), self.behind, _JOB)
        if not self._lines:
            self.working.show_step(tr("Counting what the plan uses…"))

    def on_told(self, found: Any) -> None:
        self._lines, self._whys = found.found, found.whys
        self._fill_months()
        self._show()

    def on_ended(self) -> None:
        self.working.hide()

    def _fill_months(self) -> None:
        chosen = self.months.currentData() or _AHEAD
        blocked = self.months.blockSignals(True)
        self.months.clear()
        self.months.addItem(tr("From this month on"), _AHEAD)
        self.months.addItem(tr("The whole plan"), _ALL)
        for month in months_of(self._lines):
            year, number = (int(part) for part in month.split("-"))
            self.months.addItem(month_words(year, number), month)
        self.months.setCurrentIndex(max(self.months.findData(chosen), 0))
        self.months.blockSignals(blocked)

    def _shown(self) -> tuple[OrderLine, ...]:
        assert self.behind is not None
        chosen, now = self.months.currentData(), self.behind.today.strftime("%Y-%m")
        if chosen == _ALL:
            return self._lines
        if chosen == _AHEAD:
            return tuple(line for line in self._lines if line.month >= now)
        return tuple(line for line in self._lines if line.month == chosen)

    def _show(self, *_at: int) -> None:
        if self.behind is None:
            return
        shown = self._shown()
        rows = asked_rows(order_rows(shown), order_names(shown), self._whys)
        self.table.show_rows(rows)
        some = bool(rows)
        self.table.setVisible(some)
        for each in (self.copy, self.print):
            each.setEnabled(some)
        self.count.setText(
            tr("1 thing") if len(rows) == 1 else tr("{count} things", count=number_words(len(rows)))
        )
        self.empty.say(
            "" if some else tr("Nothing is needed: nothing is sown, fed or dosed in these months.")
        )

    def _on_copy(self, _checked: bool) -> None:
        model = self.table.model_of_rows
        order = self.table.ordered
        rows = [model.rows[order.mapToSource(order.index(at, 0)).row()] for at in range(order.rowCount())]
        QGuiApplication.clipboard().setText(rows_text(order_columns(), rows))
        self.told.emit(tr("{count} rows are on the clipboard as CSV.", count=number_words(len(rows))))

    def _on_print(self, _checked: bool) -> None:
        if self.behind is None:
            return
        from planner.desk.print_asking import PrintAsking

        asking = PrintAsking(self.needs, self.behind.outlook, self.window())
        asking.told.connect(self.told)
        asking.open(self.behind.shown_on, _PAPER)

    def leave(self) -> None:
        super().leave()
        self._lines, self._whys = (), {}
        self.table.show_rows(())
