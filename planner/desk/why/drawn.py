"""Lets what is drawn, and is no table, be asked why: by the key at the cursor, by the right button anywhere.

The owner tells what can be asked by a method `facts_at`; the wish goes where that of a table goes. Must know
nothing of farms, nor of how an answer is found.
"""

from __future__ import annotations

from typing import Protocol, cast

from PySide6.QtCore import QEvent, QObject, QPoint, Qt
from PySide6.QtGui import QAction, QContextMenuEvent, QKeyEvent
from PySide6.QtWidgets import QAbstractScrollArea, QMenu, QWidget

from planner.desk.pages import Fact
from planner.desk.say import tr
from planner.desk.why.cells import asks_why, show_keys, wish


class Drawn(Protocol):
    """A widget that draws numbers."""

    def facts_at(self, point: QPoint | None) -> tuple[Fact, ...]:
        """Return what can be asked at a point of what is drawn; with None, where the cursor stands."""


class DrawnAsking(QObject):
    """Watches one widget and lives as long as it; points of an area that is scrolled are its viewport's."""

    def __init__(self, owner: QWidget) -> None:
        super().__init__(owner)
        owner.installEventFilter(self)
        if isinstance(owner, QAbstractScrollArea):
            owner.viewport().installEventFilter(self)

    @property
    def _owner(self) -> QWidget:
        owner = self.parent()
        assert isinstance(owner, QWidget)
        return owner

    def _facts(self, point: QPoint | None) -> tuple[Fact, ...]:
        return tuple(fact for fact in cast(Drawn, self._owner).facts_at(point) if fact.ask is not None)

    def eventFilter(self, _watched: QObject, event: QEvent) -> bool:
        """Take the key before the window does where something can be asked, and show the menu."""
        kind = event.type()
        if kind in (QEvent.Type.ShortcutOverride, QEvent.Type.KeyPress) and isinstance(event, QKeyEvent):
            return self._on_key(event)
        if kind is QEvent.Type.ContextMenu and isinstance(event, QContextMenuEvent):
            return self._on_menu(event)
        return False

    def _on_key(self, event: QKeyEvent) -> bool:
        facts = self._facts(None) if asks_why(event) else ()
        if not facts:
            return False
        event.accept()
        if event.type() is QEvent.Type.KeyPress:
            wish(self._owner, facts, 0)
        return True

    def _on_menu(self, event: QContextMenuEvent) -> bool:
        by_keys = event.reason() is QContextMenuEvent.Reason.Keyboard
        facts = self._facts(None if by_keys else event.pos())
        if not facts:
            return False
        menu = WhyMenu(self._owner, facts)
        show_keys(menu.actions()[0])
        menu.popup(event.globalPos())
        return True


class WhyMenu(QMenu):
    """A menu that offers numbers to be asked, each in an entry of its own."""

    def __init__(self, owner: QWidget, facts: tuple[Fact, ...]) -> None:
        super().__init__(owner)
        self._owner, self._facts = owner, facts
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        for at, fact in enumerate(facts):
            said = f"{fact.label}: {fact.value}" if fact.label else fact.value
            action = self.addAction(tr("Why {value}?", value=said.replace("\n", " ").replace("&", "&&")))
            action.setData(at)
        self.triggered.connect(self._on_chosen)

    def _on_chosen(self, action: QAction) -> None:
        wish(self._owner, self._facts, action.data())
