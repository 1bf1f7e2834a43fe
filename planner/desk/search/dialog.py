"""The line to type in and what is found: arrows choose, Enter goes there, Escape leaves.

Must know nothing of how anything is found.
"""

from __future__ import annotations

from typing import Final

from PySide6.QtCore import QSize, Qt, Signal
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import (
    QAbstractItemView,
    QDialog,
    QFrame,
    QLabel,
    QLineEdit,
    QTableView,
    QVBoxLayout,
    QWidget,
)

from planner.desk.fitting import open_sized
from planner.desk.rows import Column, Row, RowsModel
from planner.desk.say import tr
from planner.desk.search.index import Find, Index
from planner.desk.theme import Theme

_STEPS: Final = {Qt.Key.Key_Down: 1, Qt.Key.Key_Up: -1, Qt.Key.Key_PageDown: 10, Qt.Key.Key_PageUp: -10}


class SearchLine(QLineEdit):
    """A line that hands arrows on, so that the hand need not leave it."""

    stepped = Signal(int)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        step = _STEPS.get(Qt.Key(event.key()))
        if step is None:
            super().keyPressEvent(event)
        else:
            self.stepped.emit(step)


class SearchDialog(QDialog):
    """Searches an index while words are typed; `picked` tells the find that was chosen."""

    picked = Signal(object)

    def __init__(self, index: Index, theme: Theme, parent: QWidget) -> None:
        super().__init__(parent)
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self.setWindowTitle(tr("Search everything"))
        self._index = index
        self.line = SearchLine(self)
        self.line.setPlaceholderText(tr("A batch, bed, fish, crop, week, page or word"))
        self.line.setAccessibleName(tr("Search everything"))
        self.line.setClearButtonEnabled(True)
        self.model = RowsModel((Column(title=tr("Found")), Column(title=tr("What it is"))), self)
        self.view = self._table(theme)
        self.count = QLabel(tr("Type a few letters; arrows choose, Enter goes there."), self)
        self.count.setWordWrap(True)
        column = QVBoxLayout(self)
        column.setContentsMargins(*(theme.metrics.margin,) * 4)
        column.setSpacing(theme.metrics.gap)
        for part in (self.line, self.view, self.count):
            column.addWidget(part)
        self.line.textChanged.connect(self._on_typed)
        self.line.stepped.connect(self._on_stepped)
        self.line.returnPressed.connect(self._pick)
        self.view.activated.connect(self._pick)
        open_sized(self, QSize(theme.metrics.side_width * 2, theme.metrics.row * 14))
        self.line.setFocus()

    def _table(self, theme: Theme) -> QTableView:
        table = QTableView(self)
        table.setModel(self.model)
        table.setAccessibleName(tr("What was found"))
        table.setSelectionBehavior(QAbstractItemView.SelectionBehavior.SelectRows)
        table.setSelectionMode(QAbstractItemView.SelectionMode.SingleSelection)
        table.setShowGrid(False)
        table.setTabKeyNavigation(False)
        table.setWordWrap(False)
        table.setFrameShape(QFrame.Shape.NoFrame)
        table.verticalHeader().hide()
        table.verticalHeader().setDefaultSectionSize(theme.metrics.row)
        table.horizontalHeader().hide()
        table.horizontalHeader().setStretchLastSection(True)
        table.setColumnWidth(0, theme.metrics.side_width)
        return table

    def _on_typed(self, text: str) -> None:
        found = self._index.search(text)
        self.model.set_rows(tuple(_row(find) for find in found))
        if found:
            self.view.selectRow(0)
            self.count.setText(
                tr("1 found") if len(found) == 1 else tr("{count} found, the best first", count=len(found))
            )
        elif text.strip():
            self.count.setText(tr("Nothing here is called “{typed}”. Try fewer letters.", typed=text.strip()))
        else:
            self.count.setText(tr("Type a few letters; arrows choose, Enter goes there."))

    def _on_stepped(self, step: int) -> None:
        last = len(self.model.rows) - 1
        if last >= 0:
            self.view.selectRow(min(max(self.view.currentIndex().row() + step, 0), last))

    def _pick(self) -> None:
        at = self.view.currentIndex().row()
        if 0 <= at < len(self.model.rows):
            find: Find = self.model.rows[at].payload
            self.accept()
            self.picked.emit(find)


def _row(find: Find) -> Row:
    return Row(
        id=f"{find.target.value} {find.key}",
        texts=(find.name, find.note),
        sort=(find.name, find.note),
        spoken=f"{find.name}, {find.note}",
        payload=find,
    )
