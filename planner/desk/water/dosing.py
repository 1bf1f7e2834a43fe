"""The doses of a loop in a table, with the caution of the chosen one beside the button that plans it.

Must know nothing of how doses are worked out.
"""

from __future__ import annotations

from PySide6.QtCore import QModelIndex, Signal
from PySide6.QtWidgets import QVBoxLayout, QWidget

from planner.desk.flow import Flow
from planner.desk.outlook import Outlook
from planner.desk.pages import Fact
from planner.desk.plan.kit import Table, Words, button, heading
from planner.desk.rows import Row
from planner.desk.say import tr
from planner.desk.theme import Theme
from planner.desk.water.doses import Advised, dose_cautions, dose_columns, dose_rows, taken_up
from planner.farm.changes import ChangeSet
from planner.farm.water import Dose
from planner.forecast.water.side import LoopWater


class DosePanel(QWidget):
    """Doses past, due and asked for; `wished` carries the act that plans one, `opened` the id of a dose.

    What `add` does is left to whoever holds the panel.
    """

    wished = Signal(object)
    why_wanted = Signal(object, int)
    opened = Signal(str)

    def __init__(self, theme: Theme, parent: QWidget) -> None:
        super().__init__(parent)
        self._theme = theme
        self._outlook: Outlook | None = None
        self._water: LoopWater | None = None
        self.title = heading(tr("Doses"), theme, self)
        self.table = Table(dose_columns(), tr("Doses"), theme, self)
        self.table.say_when_empty(
            tr("No dose yet. Add one of what you have; how much of it is asked for is told from then on.")
        )
        self.before = Words("", theme, self, ink="wrong")
        self.caution = Words("", theme, self, ink="notice").on_ground("notice_ground", theme)
        self.take = button(
            tr("Plan this dose"), self, tip=tr("Puts one dose into the plan; Undo takes it out")
        )
        self.why = button(tr("Why?"), self, tip=tr("How the grams come about, and who says so"))
        self.add = button(tr("Add a dose…"), self, tip=tr("Any supplement, any amount, once or repeated"))
        row = Flow(theme.metrics.gap)
        row.add(self.take, self.why, self.add)
        column = QVBoxLayout(self)
        column.setContentsMargins(
            theme.metrics.gap, theme.metrics.tight, theme.metrics.gap, theme.metrics.gap
        )
        column.setSpacing(theme.metrics.tight)
        column.addWidget(self.title)
        column.addWidget(self.table, 1)
        column.addWidget(self.before)
        column.addWidget(self.caution)
        column.addLayout(row)
        self.table.selectionModel().currentRowChanged.connect(self._on_row)
        self.table.activated.connect(self._on_activated)
        self.take.clicked.connect(self._on_take)
        self.why.clicked.connect(self._on_why)
        self._show_chosen()

    def show_water(self, outlook: Outlook | None, water: LoopWater | None, *, advise: bool = True) -> None:
        """Show the doses of a loop; none without one, and only those planned unless it is to `advise`."""
        self._outlook, self._water = outlook, water
        chosen = self.table.current()
        there = outlook is not None and water is not None
        rows = dose_rows(outlook, water) if outlook is not None and water is not None else ()
        self.table.show_rows([row for row in rows if advise or not isinstance(row.payload, Advised)])
        self.add.setEnabled(there)
        if chosen is None or not self.table.choose(chosen.id):
            self.table.selectRow(0)
        self._show_chosen()

    def _asked(self) -> Advised | None:
        row: Row | None = self.table.current()
        return row.payload if row is not None and isinstance(row.payload, Advised) else None

    def _show_chosen(self) -> None:
        row, asked = self.table.current(), self._asked()
        self.why.setEnabled(asked is not None and asked.ask is not None)
        self.take.setEnabled(asked is not None and not asked.barred)
        self.before.say("\n".join(asked.before) if asked is not None else "")
        cautions: tuple[str, ...] = ()
        if row is not None and self._outlook is not None:
            cautions = dose_cautions(row.payload, self._outlook.catalogue)
        self.caution.say("\n".join(f"⚠ {each}" for each in cautions))

    def _on_row(self, _now: QModelIndex, _before: QModelIndex) -> None:
        self._show_chosen()

    def _on_activated(self, _index: QModelIndex) -> None:
        row = self.table.current()
        if row is not None and isinstance(row.payload, Dose):
            self.opened.emit(row.id)
        else:
            self._on_take(_checked=True)

    def _on_why(self, _checked: bool) -> None:
        row, asked = self.table.current(), self._asked()
        if row is not None and asked is not None and asked.ask is not None:
            fact = Fact(label=row.texts[0], value=row.texts[1], ask=asked.ask)
            self.why_wanted.emit((fact,), 0)

    def _on_take(self, _checked: bool) -> None:
        asked = self._asked()
        if asked is None or asked.barred or self._outlook is None or self._water is None:
            return
        act: ChangeSet = taken_up(asked, self._outlook, self._water)
        self.wished.emit(act)

    def wear(self, theme: Theme) -> None:
        """Wear the colours of a theme."""
        for words in (self.title, self.before, self.caution):
            words.wear(theme)
