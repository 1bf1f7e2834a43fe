"""Lets the cells of a list or table be asked why: by a key, and by the menu of the right button.

What a cell is asked about lies in its model under `ASK_ROLE`; the wish goes to the nearest widget around
the list that has a signal `why_wanted`. Must know nothing of farms, nor of how an answer is found.
"""

from __future__ import annotations

from typing import Final

from PySide6.QtCore import QEvent, QModelIndex, QObject, QPoint, Qt
from PySide6.QtGui import QAction, QContextMenuEvent, QKeyEvent, QKeySequence
from PySide6.QtWidgets import QAbstractItemView, QAbstractScrollArea, QMenu, QTableView, QWidget

from planner.desk.pages import Fact
from planner.desk.rows import ASK_ROLE, WHY_KEYS
from planner.desk.say import tr

_MOST_CELLS: Final = 60
"""A small table offers all its numbers in the list of the answer, a larger one those of the row."""
_CELLS_LOOKED_AT: Final = 400


class WhyAsking(QObject):
    """Watches one widget and lives as long as it; points of an area that is scrolled are its viewport's."""

    def __init__(self, owner: QWidget) -> None:
        super().__init__(owner)
        owner.installEventFilter(self)
        if isinstance(owner, QAbstractScrollArea):
            owner.viewport().installEventFilter(self)

    @property
    def owner(self) -> QWidget:
        """The widget that is watched."""
        owner = self.parent()
        assert isinstance(owner, QWidget)
        return owner

    def eventFilter(self, _watched: QObject, event: QEvent) -> bool:
        """Take the key before the window does where something can be asked, and show the menu."""
        kind = event.type()
        if kind in (QEvent.Type.ShortcutOverride, QEvent.Type.KeyPress) and isinstance(event, QKeyEvent):
            return self._on_key(event)
        if kind is QEvent.Type.ContextMenu and isinstance(event, QContextMenuEvent):
            return self.on_menu(event)
        return False

    def _on_key(self, event: QKeyEvent) -> bool:
        facts, number = self.at_cursor() if asks_why(event) else ((), -1)
        if not facts:
            return False
        event.accept()
        if event.type() is QEvent.Type.KeyPress:
            wish(self.owner, facts, number)
        return True

    def at_cursor(self) -> tuple[tuple[Fact, ...], int]:
        """Return what can be asked where the keyboard is, and the number of what is meant."""
        raise NotImplementedError

    def on_menu(self, event: QContextMenuEvent) -> bool:
        """Show what can be asked where the menu is wanted; tells whether there is anything."""
        raise NotImplementedError


class CellAsking(WhyAsking):
    """Watches one list or table."""

    def __init__(self, view: QAbstractItemView) -> None:
        super().__init__(view)
        self._view = view

    def at_cursor(self) -> tuple[tuple[Fact, ...], int]:
        """Return what can be asked at the current cell, and its number."""
        return facts_at(self._view, self._view.currentIndex())

    def on_menu(self, event: QContextMenuEvent) -> bool:
        """Show the menu of a cell; tells whether there is a cell."""
        by_keys = event.reason() is QContextMenuEvent.Reason.Keyboard
        if by_keys:
            index = self._view.currentIndex()
            at = self._view.visualRect(index).center() if index.isValid() else QPoint()
        else:
            at = self._view.viewport().mapFromGlobal(event.globalPos())
            index = self._view.indexAt(at)
        if not index.isValid():
            return False
        self._show_menu(index, self._view.viewport().mapToGlobal(at) if by_keys else event.globalPos())
        return True

    def _show_menu(self, index: QModelIndex, where: QPoint) -> None:
        menu = QMenu(self._view)
        menu.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        action = menu.addAction(_menu_words(index))
        show_keys(action)
        action.setEnabled(index.data(ASK_ROLE) is not None)
        action.setData((index.row(), index.column()))
        action.triggered.connect(self._on_chosen)
        if self._view.actions():
            menu.addSeparator()
            menu.addActions(self._view.actions())
        menu.popup(where)

    def _on_chosen(self, _checked: bool) -> None:
        action = self.sender()
        if isinstance(action, QAction):
            wish(self._view, *facts_at(self._view, self._view.model().index(*action.data())))


def show_keys(action: QAction) -> None:
    """Show the keys that ask beside an entry of a menu; the entry itself does not listen to them."""
    action.setShortcut(QKeySequence(WHY_KEYS))
    action.setShortcutContext(Qt.ShortcutContext.WidgetShortcut)
    action.setShortcutVisibleInContextMenu(True)


def wish(asked: QWidget, facts: tuple[Fact, ...], number: int) -> None:
    """Hand facts and the number of the one that is asked to the nearest widget around that passes them on."""
    owner: QWidget | None = asked
    while owner is not None:
        wanted = getattr(owner, "why_wanted", None)
        if wanted is not None:
            wanted.emit(facts, number)
            return
        owner = owner.parentWidget()


def facts_at(view: QAbstractItemView, index: QModelIndex) -> tuple[tuple[Fact, ...], int]:
    """Return what can be asked at a cell, and the number of the fact that is the cell.

    The facts are those of the whole table when it is small, else of the row. A cell that cannot be asked
    stands for the first of its row that can; no facts when the row has none.
    """
    if not index.isValid():
        return (), -1
    row = _row_facts(view, index.row())
    if not row:
        return (), -1
    column = index.column() if index.column() in row else next(iter(row))
    model = view.model()
    if model.rowCount() * model.columnCount() <= _CELLS_LOOKED_AT:
        rows = {at: _row_facts(view, at) for at in range(model.rowCount())}
        if sum(len(facts) for facts in rows.values()) <= _MOST_CELLS:
            keys = [(at, each) for at, facts in rows.items() for each in facts]
            return tuple(rows[at][each] for at, each in keys), keys.index((index.row(), column))
    return tuple(row.values()), list(row).index(column)


def _row_facts(view: QAbstractItemView, row: int) -> dict[int, Fact]:
    """Return the facts of a row by column; those of hidden columns are left out."""
    model = view.model()
    found: dict[int, Fact] = {}
    for column in range(model.columnCount()):
        if isinstance(view, QTableView) and view.isColumnHidden(column):
            continue
        index = model.index(row, column)
        ask = index.data(ASK_ROLE)
        if ask is not None:
            found[column] = Fact(label=_label(index), value=str(index.data()), ask=ask)
    return found


def _label(index: QModelIndex) -> str:
    """Return what tells a number of a table from the others: its heading, and what its row is about."""
    model = index.model()
    if model.columnCount() == 1:
        return ""
    heading = str(model.headerData(index.column(), Qt.Orientation.Horizontal) or "")
    name = str(index.siblingAtColumn(0).data() or "") if index.column() else ""
    return " · ".join(part for part in (heading, name) if part)


def _menu_words(index: QModelIndex) -> str:
    text = str(index.data() or "").partition("\n")[0]
    if index.data(ASK_ROLE) is None or not text:
        return tr("Why?")
    return tr("Why {value}?", value=text.replace("&", "&&"))


def asks_why(event: QKeyEvent) -> bool:
    """Tell whether the keys pressed are those that ask why."""
    return QKeySequence(event.keyCombination()) == QKeySequence(WHY_KEYS)
