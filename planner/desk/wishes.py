"""Asks for what is wished of what is chosen: altered, locked, removed; for new things; and the menu of a bar.

Passes each wish on to where it is carried out. Must know nothing of how a farm changes.
"""

from __future__ import annotations

from datetime import date
from typing import TYPE_CHECKING, Any

from PySide6.QtCore import QObject, QPoint, Qt
from PySide6.QtGui import QAction
from PySide6.QtWidgets import QMenu

from planner.desk.asking import OF_BATCHES
from planner.desk.gathering import GATHERED
from planner.desk.say import tr
from planner.farm.crops import Batch
from planner.farm.farm import Thing, kind_of
from planner.farm.fields import Id
from planner.farm.species import HarvestKind

if TYPE_CHECKING:
    from planner.desk.workspace import Workspace


class Wishes(QObject):
    """What may be asked for of a workspace's things."""

    def __init__(self, workspace: Workspace, today: date) -> None:
        super().__init__(workspace)
        self._workspace, self._today = workspace, today

    def show_menu(self, ids: list[str], at: QPoint) -> None:
        """Offer beside a bar what can be done with the batches that are chosen."""
        workspace = self._workspace
        if ids:
            workspace.take_chosen(ids)
        menu = QMenu(workspace)
        menu.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        for key, words in self._offered():
            menu.addAction(words).setData(key)
        menu.triggered.connect(self._on_menu_entry)
        menu.popup(at)

    def _offered(self) -> list[tuple[str, str]]:
        thing = self._workspace.chosen_thing()
        offered = [("change.alter", tr("Alter…")), ("change.remove", tr("Remove"))] if thing else []
        why = [("view.why", tr("Why these figures…"))] if thing else []
        if isinstance(thing, Batch):
            offered.insert(1, ("change.lock", tr("Unlock") if thing.locked else tr("Lock")))
            offered[2:2] = [(key, tr(words)) for key, words in (*GATHERED.items(), *OF_BATCHES.items())]
            if self._has_window(thing):
                stretches = (
                    ("change.longer", tr("Pick a week longer")),
                    ("change.shorter", tr("Pick a week less")),
                )
                offered[2:2] = stretches
        return [*offered, *why, ("new.batch", tr("Sow a batch…"))]

    def _has_window(self, batch: Batch) -> bool:
        outlook = self._workspace.outlook
        crop = outlook.catalogue.crops.get(batch.crop) if outlook is not None else None
        return crop is not None and crop.harvest is not HarvestKind.SINGLE and not batch.locked

    def _on_menu_entry(self, action: QAction) -> None:
        self._workspace.run(action.data())

    def ask_new(self, word: str) -> None:
        """Open the form for a new thing; what is chosen fills in what it belongs to."""
        workspace = self._workspace
        thing = workspace.chosen_thing()
        given: dict[str, Any] = {}
        if word == "fish event" and thing is not None and thing in workspace.things("fish group"):
            given["group"] = thing.id
        if word == "batch" and thing is not None and thing in workspace.things("bed"):
            given["bed"] = thing.id
        workspace.editing.ask_new(word, self._today, given)

    def ask_new_within(self, word: str, owner: str) -> None:
        """Open the form for a new thing; the fields that name what it belongs to are filled in."""
        outlook = self._workspace.outlook
        thing = outlook.found.get(Id(owner)) if outlook else None
        given = {kind_of(thing).word.split()[-1]: owner} if thing is not None else {}
        self._workspace.editing.ask_new(word, self._today, given)

    def alter(self, thing: Thing) -> None:
        """Open the form of a thing, and choose it where it is on the farm."""
        outlook = self._workspace.outlook
        if outlook is not None and thing.id in outlook.found:
            self._workspace.choose(thing.id)
        self._workspace.editing.alter(thing, self._today)

    def alter_chosen(self) -> None:
        """Open the form of what is chosen."""
        thing = self._workspace.chosen_thing()
        if thing is not None:
            self._workspace.editing.alter(thing, self._today)

    def alter_farm(self) -> None:
        """Open the form of the farm's own settings."""
        if self._workspace.outlook is not None:
            self._workspace.editing.alter(self._workspace.outlook.farm.settings, self._today)

    def lock(self) -> None:
        """Lock every batch that is chosen, or unlock them when the one chosen last is locked."""
        thing = self._workspace.chosen_thing()
        if isinstance(thing, Batch):
            self._workspace.editing.lock(self._workspace.chosen_batches(), locked=not thing.locked)

    def remove(self) -> None:
        """Remove what is chosen."""
        thing = self._workspace.chosen_thing()
        if thing is not None:
            self._workspace.editing.ask_remove(thing)
