"""Lets what is drawn, and is no table, be asked why: by the key at the cursor, by the right button anywhere.

The owner tells what can be asked by a method `facts_at`; the wish goes where that of a table goes. Must know
nothing of farms, nor of how an answer is found.
"""

from __future__ import annotations

from typing import Protocol, cast

from PySide6.QtCore import QPoint, Qt
from PySide6.QtGui import QAction, QContextMenuEvent
from PySide6.QtWidgets import QMenu, QWidget

from planner.desk.pages import Fact
from planner.desk.say import tr
from planner.desk.why.cells import WhyAsking, show_keys, wish


class Drawn(Protocol):
    """A widget that draws numbers."""

    def facts_at(self, point: QPoint | None) -> tuple[Fact, ...]:
        """Return what can be asked at a point of what is drawn; with None, where the cursor stands."""


class DrawnAsking(WhyAsking):
    """Watches one widget that draws numbers."""

    def _facts(self, point: QPoint | None) -> tuple[Fact, ...]:
        return tuple(fact for fact in cast(Drawn, self.owner).facts_at(point) if fact.ask is not None)

    def at_cursor(self) -> tuple[tuple[Fact, ...], int]:
        """Return what can be asked where the cursor stands; the first is meant."""
        return self._facts(None), 0

    def on_menu(self, event: QContextMenuEvent) -> bool:
        """Show a menu of what can be asked at a point; tells whether there is anything."""
        by_keys = event.reason() is QContextMenuEvent.Reason.Keyboard
        facts = self._facts(None if by_keys else event.pos())
        if not facts:
            return False
        menu = WhyMenu(self.owner, facts)
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
