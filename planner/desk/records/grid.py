"""A grid of boxes as on a printed sheet: type, Enter, type. The mouse is never needed.

Enter and Tab go to the next box, from the last of a line to the first of the next that is not filled in
beforehand; arrows go wherever they point. Must know nothing of what the boxes mean.
"""

from __future__ import annotations

from collections.abc import Sequence
from typing import Final, cast

from PySide6.QtCore import QEvent, QObject, Qt, Signal
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import (
    QAbstractItemDelegate,
    QAbstractItemView,
    QHeaderView,
    QTableWidget,
    QTableWidgetItem,
    QWidget,
)

from planner.desk.cell_ring import CellRing
from planner.desk.records.sheets import SheetColumn, SheetLine, TaskOfLine
from planner.desk.theme import Theme

_ON: Final = (Qt.Key.Key_Return, Qt.Key.Key_Enter)
_FEWEST_LINES: Final = 8
"""As many are always seen; a page that is too low for them scrolls."""
_NEXT: Final = QAbstractItemDelegate.EndEditHint.EditNextItem


class _Boxes(CellRing):
    """Takes Enter in a box for "this is it, go on", at once, so that it does not reach the grid as well."""

    def eventFilter(self, box: QObject, event: QEvent) -> bool:
        pressed = isinstance(event, QKeyEvent) and event.type() == QEvent.Type.KeyPress
        if pressed and isinstance(box, QWidget) and cast("QKeyEvent", event).key() in _ON:
            self.commitData.emit(box)
            self.closeEditor.emit(box, _NEXT)
            return True
        return super().eventFilter(box, event)


class SheetGrid(QTableWidget):
    """Lines of boxes; `changed` tells that something was typed."""

    changed = Signal()

    def __init__(self, theme: Theme, parent: QWidget) -> None:
        super().__init__(parent)
        self.theme = theme
        self._columns: tuple[SheetColumn, ...] = ()
        self._tasks: list[TaskOfLine | None] = []
        self._first_typed = 0
        self.setItemDelegate(_Boxes(self))
        self.setTabKeyNavigation(False)
        self.setSelectionMode(QAbstractItemView.SelectionMode.SingleSelection)
        self.setEditTriggers(
            QAbstractItemView.EditTrigger.AnyKeyPressed
            | QAbstractItemView.EditTrigger.EditKeyPressed
            | QAbstractItemView.EditTrigger.DoubleClicked
        )
        self.verticalHeader().setDefaultSectionSize(theme.metrics.row)
        self.setMinimumHeight(_FEWEST_LINES * theme.metrics.row)
        self.itemChanged.connect(self._on_changed)

    def set_sheet(self, columns: tuple[SheetColumn, ...], *, prefilled: Sequence[str]) -> None:
        """Show other columns and no lines; `prefilled` are passed over when a line is begun."""
        self.blockSignals(True)
        self.clear()
        self.setRowCount(0)
        self._columns, self._tasks = columns, []
        self.setColumnCount(len(columns))
        self.setHorizontalHeaderLabels([_head(column) for column in columns])
        keys = [column.key for column in columns]
        self._first_typed = next(at for at, key in enumerate(keys) if key not in prefilled)
        letter = self.fontMetrics().averageCharWidth()
        for at, column in enumerate(columns):
            words = max(self.fontMetrics().horizontalAdvance(line) for line in _head(column).split("\n"))
            wide = max(column.letters * letter, words) + 2 * self.theme.metrics.gap
            self.setColumnWidth(at, wide)
            mode = (
                QHeaderView.ResizeMode.Stretch if column.key == "note" else QHeaderView.ResizeMode.Interactive
            )
            self.horizontalHeader().setSectionResizeMode(at, mode)
        self.blockSignals(False)

    def set_lines(self, lines: Sequence[SheetLine]) -> None:
        """Put lines in; what was typed is gone."""
        self.blockSignals(True)
        self.setRowCount(len(lines))
        self._tasks = [line.task for line in lines]
        for row, line in enumerate(lines):
            for at, column in enumerate(self._columns):
                self.setItem(row, at, QTableWidgetItem(line.text(column.key)))
        self.blockSignals(False)
        if lines:
            self.setCurrentCell(0, self._first_typed)

    def lines(self) -> tuple[SheetLine, ...]:
        """Return every line as it stands."""
        return tuple(
            SheetLine(
                texts={column.key: self._text(row, at) for at, column in enumerate(self._columns)},
                task=self._tasks[row] if row < len(self._tasks) else None,
            )
            for row in range(self.rowCount())
        )

    def _text(self, row: int, at: int) -> str:
        item = self.item(row, at)
        return item.text() if item is not None else ""

    def mark(self, row: int, key: str, words: str, *, wrong: bool) -> None:
        """Mark a box that is wrong or asked about, with the reason as its tip."""
        at = next((at for at, column in enumerate(self._columns) if column.key == key), 0)
        item = self.item(row, at)
        if item is None:
            return
        self.blockSignals(True)
        item.setBackground(self.theme.wrong_ground if wrong else self.theme.notice_ground)
        item.setForeground(self.theme.wrong if wrong else self.theme.notice)
        item.setToolTip(words)
        item.setData(Qt.ItemDataRole.AccessibleDescriptionRole, words)
        self.blockSignals(False)
        if wrong:
            self.setCurrentCell(row, at)

    def unmark(self) -> None:
        """Take all marks away."""
        self.blockSignals(True)
        for row in range(self.rowCount()):
            for at in range(self.columnCount()):
                item = self.item(row, at)
                if item is not None and item.toolTip():
                    self.setItem(row, at, QTableWidgetItem(item.text()))
        self.blockSignals(False)

    def closeEditor(self, editor: QWidget, hint: QAbstractItemDelegate.EndEditHint) -> None:
        """Go to the next box once something was typed and confirmed."""
        super().closeEditor(editor, QAbstractItemDelegate.EndEditHint.NoHint)
        if hint is _NEXT:
            self.go_on()
        elif hint is QAbstractItemDelegate.EndEditHint.EditPreviousItem:
            self.go_back()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if event.key() in _ON and event.modifiers() == Qt.KeyboardModifier.ControlModifier:
            self._go_to(self.currentRow() + 1, self._first_typed)
        elif event.key() in _ON:
            self.go_on()
        elif event.key() == Qt.Key.Key_Delete and self.currentItem() is not None:
            self.currentItem().setText("")
        else:
            super().keyPressEvent(event)

    def focusNextPrevChild(self, forward: bool) -> bool:
        """Let Tab go from box to box; behind the last and before the first it leaves the grid."""
        before = self.currentRow(), self.currentColumn()
        if forward:
            self.go_on()
        else:
            self.go_back()
        moved = before != (self.currentRow(), self.currentColumn())
        return moved or super().focusNextPrevChild(forward)

    def go_on(self) -> None:
        """Go to the next box; behind the last, stay."""
        if self.currentColumn() + 1 < self.columnCount():
            self._go_to(self.currentRow(), self.currentColumn() + 1)
        else:
            self._go_to(self.currentRow() + 1, self._first_typed)

    def go_back(self) -> None:
        """Go to the box before."""
        if self.currentColumn() > 0:
            self._go_to(self.currentRow(), self.currentColumn() - 1)
        else:
            self._go_to(self.currentRow() - 1, self.columnCount() - 1)

    def _go_to(self, row: int, column: int) -> None:
        if 0 <= row < self.rowCount():
            self.setCurrentCell(row, column)

    def _on_changed(self, _item: QTableWidgetItem) -> None:
        self.changed.emit()


def _head(column: SheetColumn) -> str:
    return f"{column.heading}\n{column.unit}" if column.unit else column.heading
