"""One table model for every list of the desk: rows are ready tuples, `data()` only looks up.

Whoever makes the rows has done all reckoning and wording before. Must know nothing of farms.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from typing import TYPE_CHECKING, Any, Final

from PySide6.QtCore import (
    QAbstractTableModel,
    QModelIndex,
    QObject,
    QPersistentModelIndex,
    QSortFilterProxyModel,
    Qt,
)
from PySide6.QtGui import QKeySequence

from planner.desk.say import tr
from planner.desk.terms import meaning_of

if TYPE_CHECKING:
    from planner.desk.pages import Ask

Index = QModelIndex | QPersistentModelIndex
ID_ROLE: Final = Qt.ItemDataRole.UserRole
SORT_ROLE: Final = Qt.ItemDataRole.UserRole + 1
ASK_ROLE: Final = Qt.ItemDataRole.UserRole + 3
WHY_KEYS: Final = "Ctrl+I"
"""Asks why of the number in hand, in every table and in the side panel."""
_HERE: Final = QModelIndex()


@dataclass(frozen=True, slots=True, kw_only=True)
class Column:
    """One column: its heading, the unit in the heading, and on which side its entries stand."""

    title: str
    numeric: bool = False
    tip: str = ""


@dataclass(frozen=True, slots=True, kw_only=True)
class Row:
    """One row: what it is about, the texts shown, and what each column is sorted by.

    `ink` is the colour its texts are written in, None for the usual one. `asks` holds for each column what
    "why?" is asked about there, None where there are only words; empty when nothing can be asked.
    """

    id: str
    texts: tuple[str, ...]
    sort: tuple[Any, ...]
    spoken: str = ""
    payload: Any = None
    ink: Any = None
    asks: Sequence[Ask | None] = ()


class RowsModel(QAbstractTableModel):
    """Shows ready rows under declared columns."""

    def __init__(self, columns: Sequence[Column], parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._columns = tuple(columns)
        self._tips = tuple(column.tip or meaning_of(column.title) for column in self._columns)
        self._rows: tuple[Row, ...] = ()
        self._order: tuple[int, Qt.SortOrder] | None = None
        self._hint = asking_hint()

    @property
    def rows(self) -> tuple[Row, ...]:
        """The rows in the order they were given, or that was asked for by `sort`."""
        return self._rows

    def set_rows(self, rows: Sequence[Row]) -> None:
        """Show other rows; the same rows again change nothing."""
        new = self._in_order(tuple(rows))
        if new == self._rows:
            return
        if [row.id for row in new] == [row.id for row in self._rows]:
            self._change_rows(new)
            return
        if self._order is not None and {row.id for row in new} == {row.id for row in self._rows}:
            by_id = {row.id: row for row in new}
            self._change_rows(tuple(by_id[row.id] for row in self._rows))
            self.sort(*self._order)
            return
        self.beginResetModel()
        self._rows = new
        self.endResetModel()

    def _change_rows(self, new: tuple[Row, ...]) -> None:
        old, self._rows = self._rows, new
        last = len(self._columns) - 1
        for position, (before, after) in enumerate(zip(old, new, strict=True)):
            if before != after:
                self.dataChanged.emit(self.index(position, 0), self.index(position, last))

    def sort(self, column: int, order: Qt.SortOrder = Qt.SortOrder.AscendingOrder) -> None:
        """Put the rows in order by a column, now and from now on; what is chosen stays chosen.

        Done here, for a sorting proxy asks twice for every comparison: seconds, where rows are many.
        """
        self._order = column, order
        self.layoutAboutToBeChanged.emit()
        old, chosen = self._rows, self.persistentIndexList()
        self._rows = self._in_order(old)
        if chosen:
            at = {row.id: position for position, row in enumerate(self._rows)}
            moved = [self.index(at[old[each.row()].id], each.column()) for each in chosen]
            self.changePersistentIndexList(chosen, moved)
        self.layoutChanged.emit()

    def _in_order(self, rows: tuple[Row, ...]) -> tuple[Row, ...]:
        if self._order is None:
            return rows
        column, order = self._order
        return tuple(
            sorted(rows, key=lambda row: row.sort[column], reverse=order == Qt.SortOrder.DescendingOrder)
        )

    def row_of(self, thing_id: str) -> int:
        """Return the position of the row about a thing, -1 when there is none."""
        return next((at for at, row in enumerate(self._rows) if row.id == thing_id), -1)

    def rowCount(self, parent: Index = _HERE) -> int:
        return 0 if parent.isValid() else len(self._rows)

    def columnCount(self, parent: Index = _HERE) -> int:
        return 0 if parent.isValid() else len(self._columns)

    def data(self, index: Index, role: int = Qt.ItemDataRole.DisplayRole) -> Any:
        if not index.isValid():
            return None
        look_up = _LOOK_UP.get(role)
        row, column = self._rows[index.row()], index.column()
        if role in _HINTED:
            return self._hint if _ask(row, column, self._columns[column]) is not None else None
        return look_up(row, column, self._columns[column]) if look_up else None

    def headerData(
        self, section: int, orientation: Qt.Orientation, role: int = Qt.ItemDataRole.DisplayRole
    ) -> Any:
        if orientation is not Qt.Orientation.Horizontal:
            return None
        column = self._columns[section]
        if role == Qt.ItemDataRole.DisplayRole:
            return column.title
        if role == Qt.ItemDataRole.ToolTipRole:
            return self._tips[section] or None
        if role == Qt.ItemDataRole.AccessibleDescriptionRole:
            return self._tips[section] or None
        if role == Qt.ItemDataRole.TextAlignmentRole:
            return _side(column)
        return None


class Sieve(QSortFilterProxyModel):
    """Leaves out rows that a text is not in, in any column; the rows below put themselves in order."""

    def __init__(self, model: RowsModel, parent: QObject) -> None:
        super().__init__(parent)
        self._model = model
        self._wanted = ""
        self._read: tuple[tuple[Row, ...], list[str]] = (), []
        self.setSourceModel(model)

    def show_only(self, text: str) -> None:
        """Show only rows that have a text in one of their columns, in any letter case; all for no text."""
        self.beginFilterChange()
        self._wanted = text.casefold()
        self.endFilterChange(QSortFilterProxyModel.Direction.Rows)

    def filterAcceptsRow(self, source_row: int, source_parent: Index) -> bool:  # noqa: ARG002
        return not self._wanted or self._wanted in self._texts()[source_row]

    def _texts(self) -> list[str]:
        """Return the text of each row, read once until rows change."""
        rows = self._model.rows
        if self._read[0] is not rows:
            self._read = rows, ["\n".join(row.texts).casefold() for row in rows]
        return self._read[1]

    def sort(self, column: int, order: Qt.SortOrder = Qt.SortOrder.AscendingOrder) -> None:
        """Put the rows in order by a column."""
        self._model.sort(column, order)


def asking_hint() -> str:
    """Return how a number of a table is asked why."""
    keys = QKeySequence(WHY_KEYS).toString(QKeySequence.SequenceFormat.NativeText)
    return tr("Why? {keys} or the right button tells", keys=keys)


def _text(row: Row, at: int, _: Column) -> str:
    return row.texts[at]


def _sort(row: Row, at: int, _: Column) -> Any:
    return row.sort[at]


def _id(row: Row, _: int, __: Column) -> str:
    return row.id


def _alignment(_: Row, __: int, column: Column) -> Qt.AlignmentFlag:
    return _side(column)


def _ask(row: Row, at: int, _: Column) -> Ask | None:
    return row.asks[at] if at < len(row.asks) else None


def _ink(row: Row, _: int, __: Column) -> Any:
    return row.ink


def _spoken(row: Row, at: int, column: Column) -> str:
    return row.spoken or f"{column.title}: {row.texts[at]}"


def _side(column: Column) -> Qt.AlignmentFlag:
    side = Qt.AlignmentFlag.AlignRight if column.numeric else Qt.AlignmentFlag.AlignLeft
    return side | Qt.AlignmentFlag.AlignVCenter


_HINTED: Final = frozenset({Qt.ItemDataRole.ToolTipRole, Qt.ItemDataRole.AccessibleDescriptionRole})
_LOOK_UP: Final[dict[int, Callable[[Row, int, Column], Any]]] = {
    Qt.ItemDataRole.DisplayRole: _text,
    Qt.ItemDataRole.TextAlignmentRole: _alignment,
    Qt.ItemDataRole.AccessibleTextRole: _spoken,
    Qt.ItemDataRole.ForegroundRole: _ink,
    SORT_ROLE: _sort,
    ID_ROLE: _id,
    ASK_ROLE: _ask,
}
