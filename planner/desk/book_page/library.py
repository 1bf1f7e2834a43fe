"""Writes the grower's own entries to a text and takes some in, by dialogs for files.

Says what would move before entries are taken in. Must know nothing of how a text is read.
"""

from __future__ import annotations

from pathlib import Path

from PySide6.QtCore import QObject, Qt, Signal
from PySide6.QtWidgets import QFileDialog, QWidget

from planner.actions.own_entries import taken_in
from planner.desk.behind import Behind
from planner.desk.book_page.own_values import what_moves
from planner.desk.messages import Question
from planner.desk.places.place import PlaceNeeds
from planner.desk.say import tr
from planner.desk.words import faults_words
from planner.farm.changes import ChangeSet
from planner.farm.faults import FarmFaultError


class LibraryFiles(QObject):
    """Own entries out to a file and in from one; `wished` carries the act once the user has agreed to it."""

    told = Signal(str)
    troubled = Signal(str)
    wished = Signal(object)

    def __init__(self, needs: PlaceNeeds, page: QWidget) -> None:
        super().__init__(page)
        self._needs, self._page = needs, page
        self._behind: Behind | None = None
        self._waiting: ChangeSet | None = None

    def show(self, behind: Behind) -> None:
        """Work on another farm from now on."""
        self._behind = behind

    def ask_write(self) -> None:
        """Ask for the file that entries are written to."""
        if self._behind is None or not self._behind.outlook.farm.own_entries:
            self.told.emit(tr("There are no entries of your own to write yet."))
            return
        dialog = self._dialog(tr("Write my entries as text"))
        dialog.setAcceptMode(QFileDialog.AcceptMode.AcceptSave)
        dialog.setDefaultSuffix("toml")
        dialog.fileSelected.connect(self.write)
        dialog.open()

    def ask_read(self) -> None:
        """Ask for the file that entries are taken in from."""
        dialog = self._dialog(tr("Take in entries"))
        dialog.setFileMode(QFileDialog.FileMode.ExistingFile)
        dialog.fileSelected.connect(self.read)
        dialog.open()

    def _dialog(self, title: str) -> QFileDialog:
        kinds = tr("Entries as text (*.toml)")
        dialog = QFileDialog(self._page, title, str(self._needs.home), kinds)
        dialog.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        return dialog

    def write(self, name: str) -> None:
        """Write all own entries of the farm to a file."""
        if self._needs.library is None or self._behind is None:
            return
        try:
            self._needs.library.write(Path(name), self._behind.outlook.farm.own_entries)
        except OSError as trouble:
            self.troubled.emit(tr("{name} could not be written: {why}", name=name, why=trouble.strerror))
            return
        self.told.emit(tr("Your entries were written to {name}.", name=name))

    def read(self, name: str) -> None:
        """Read entries of a file, tell what would move, and ask whether they are to be taken in."""
        behind, library = self._behind, self._needs.library
        if library is None or behind is None:
            return
        outlook = behind.outlook
        title = tr("Take in entries of {name}", name=Path(name).name)
        try:
            done = taken_in(outlook.farm, library.read(Path(name)), title=title)
            moves = what_moves(outlook.farm, outlook.forecast, done, self._needs.forecaster)
        except FarmFaultError as refused:
            self.troubled.emit(faults_words(refused.faults))
            return
        except OSError as trouble:
            self.troubled.emit(tr("{name} could not be read: {why}", name=name, why=trouble.strerror))
            return
        if not done.changes:
            self.told.emit(tr("All of these entries are there already."))
            return
        self._waiting = done
        words = "\n".join((_counted(done), *moves))
        question = Question(title=title, text=words, go_on=tr("Take them in"))
        self._needs.ask(question, self._on_answered, self._page)

    def _on_answered(self, go_on: bool) -> None:
        done, self._waiting = self._waiting, None
        if go_on and done is not None:
            self.wished.emit(done)


def _counted(done: ChangeSet) -> str:
    replaced = sum(change.before is not None for change in done.changes)
    return tr("{new} new, {replaced} replaced.", new=len(done.changes) - replaced, replaced=replaced)
