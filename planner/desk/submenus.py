"""Fills the submenus of recent farms and of set-up when they open, and passes on what is chosen there."""

from __future__ import annotations

from pathlib import Path
from typing import TYPE_CHECKING, Final

from PySide6.QtCore import QObject

from planner.desk.say import tr

if TYPE_CHECKING:
    from PySide6.QtGui import QAction

    from planner.desk.window import MainWindow

_LISTED: Final = 25
"""How many things of a kind a submenu lists, the latest ones."""


class Submenus(QObject):
    """The submenus of one window."""

    def __init__(self, window: MainWindow) -> None:
        super().__init__(window)
        self._window = window
        self._menus = window.menus.submenus
        for submenu in self._menus.values():
            submenu.aboutToShow.connect(self._on_submenu)
            submenu.triggered.connect(self._on_entry)

    def _on_submenu(self) -> None:
        for key, submenu in self._menus.items():
            if submenu is not self.sender():
                continue
            submenu.clear()
            if key == "farm.recent":
                self._fill_recent()
            else:
                self._fill_things(key.partition(".")[2])

    def _fill_recent(self) -> None:
        submenu = self._menus["farm.recent"]
        for path in self._window.memory.recent:
            submenu.addAction(path.name).setData(path)
            submenu.actions()[-1].setToolTip(str(path))
        submenu.addSeparator()
        submenu.addAction(tr("Empty this list…")).setData("forget")

    def _fill_things(self, word: str) -> None:
        submenu, workspace = self._menus[f"setup.{word}"], self._window.workspace
        if workspace is None:
            return
        for thing in workspace.things(word)[-_LISTED:]:
            submenu.addAction(tr("{name}…", name=workspace.name_of(thing))).setData(thing)
        submenu.addSeparator()
        submenu.addAction(tr("New…")).setData(f"new.{word}")

    def _on_entry(self, action: QAction) -> None:
        wish = action.data()
        files, workspace = self._window.files, self._window.workspace
        if isinstance(wish, Path) and files is not None:
            files.open(wish)
        elif wish == "forget" and files is not None:
            files.ask_forget()
        elif isinstance(wish, str) and wish.startswith("new.") and workspace is not None:
            workspace.run(wish)
        elif wish is not None and workspace is not None and hasattr(wish, "id"):
            workspace.wishes.alter(wish)
