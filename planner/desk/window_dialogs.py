"""Opens the dialogs that belong to the window as a whole: new farm, table, print, help, words, about, check.

Each is read in when it is asked for, so that the window need not wait for any. Must know nothing of what
they show.
"""

from __future__ import annotations

from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject

if TYPE_CHECKING:
    from planner.desk.window import MainWindow


class WindowDialogs(QObject):
    """The dialogs of one window, by what opens them."""

    def __init__(self, window: MainWindow, *, home: Path, version: str) -> None:
        super().__init__(window)
        self._window, self._home, self._version = window, home, version

    def new_farm(self) -> None:
        """Ask what a new farm begins with."""
        window = self._window
        if window.workspace is not None and window.files is not None:
            window.workspace.asking.ask_new_farm(window.files.ask_begin)

    def table_in(self) -> None:
        """Let the user choose a table to bring in."""
        window = self._window
        if window.rooms is not None and window.rooms.read_table is not None:
            from planner.desk.csv_in.opening import TableOpening

            opening = TableOpening(window.rooms.read_table, window.conduct, window.theme, window)
            opening.troubled.connect(window.trouble)
            opening.ask(self._home)

    def print_sheets(self) -> None:
        """Show the seeding calendar as it will be printed."""
        if self._window.workspace is not None:
            self._window.workspace.ask_print()

    def page_help(self) -> None:
        """Show the help to the page in front; the words alone while no farm is open."""
        window = self._window
        if window.workspace is None:
            self.glossary()
            return
        from planner.desk.page_help import PageHelpDialog

        PageHelpDialog(window.workspace.shelf.listed, window.theme, window).open()

    def glossary(self) -> None:
        """Show what the words mean."""
        from planner.desk.help import GlossaryDialog

        GlossaryDialog(self._window.theme, self._window).open()

    def about(self) -> None:
        """Show what the program is, and its cautions."""
        from planner.desk.help import AboutDialog

        window = self._window
        cautions = window.workspace.cautions() if window.workspace else ()
        AboutDialog(self._version, cautions, window.theme, window).open()

    def check(self) -> None:
        """Work the published cases again and show how they come out."""
        if self._window.rooms is not None:
            from planner.desk.checking.dialog import CheckDialog

            desk = self._window.workspace
            book = desk.book if desk is not None else None
            dialog = CheckDialog(self._window.rooms.check, self._window.theme, self._window, book=book)
            if desk is not None:
                dialog.why_wanted.connect(desk.asking.ask_why)
            dialog.open()
