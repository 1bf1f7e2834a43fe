"""Opens, begins, copies and writes out farms for the window: asks for names, calls, tells.

What really happens to a file is in the callables of `Rooms`; this only carries wishes and troubles.
"""

from __future__ import annotations

from collections.abc import Callable
from datetime import datetime
from pathlib import Path
from typing import Any

from PySide6.QtCore import QObject, Qt, Signal
from PySide6.QtWidgets import QFileDialog, QWidget

from planner.desk.conduct import Conduct
from planner.desk.keeping.copies import Copies
from planner.desk.messages import Ask, Question
from planner.desk.say import tr
from planner.desk.services import Rooms
from planner.desk.session import Session
from planner.desk.settings import Memory
from planner.desk.theme import theme_of
from planner.desk.together import Together
from planner.farm.faults import FarmFaultError

FARM_SUFFIX = "raftweek"
TEXT_SUFFIX = "toml"


class Files(QObject):
    """Everything of the menu Farm that has to do with files."""

    told = Signal(str)
    troubled = Signal(str)
    recent_changed = Signal()
    sample_shown = Signal()
    begun = Signal()
    not_begun = Signal()

    def __init__(
        self,
        *,
        rooms: Rooms,
        conduct: Conduct,
        memory: Memory,
        ask: Ask,
        home: Path,
        now: Callable[[], datetime],
        trouble_with: Callable[[Session], str],
        window: QWidget,
    ) -> None:
        super().__init__(window)
        self._rooms, self._conduct, self._memory, self._ask = rooms, conduct, memory, ask
        self._window, self._trouble_with, self._now = window, trouble_with, now
        self._folder = home
        self._expected: tuple[type[Exception], ...] = (OSError, *rooms.troubles)
        self._answers: Any = None
        self._last_trouble = ""
        self.copies = Copies(conduct, memory, rooms.where, self)
        self.together = Together(conduct, ask, self.told.emit, self.troubled.emit, window)

    def open_first(self, path: Path | None) -> None:
        """Open the farm that was asked for, else the latest one, else a copy of the sample farm."""
        wanted = path or self._memory.latest
        if wanted is not None and self.open(wanted):
            return
        why = self._last_trouble
        if self._guarded(self._rooms.first_farm):
            if wanted is None:
                self.sample_shown.emit()
            else:
                self._complain(tr("{why} The sample farm is shown instead.", why=why))

    def open(self, path: Path) -> bool:
        """Open a farm file; returns whether it could be."""
        opened = self._guarded(lambda: self._rooms.open_farm(path))
        if not opened:
            self._memory.forget(path)
            self.recent_changed.emit()
        return opened

    def begin(self, path: Path, answers: Any) -> bool:
        """Make a new farm from answers and open it."""
        return self._guarded(lambda: self._rooms.new_farm(path, answers))

    def _guarded(self, make: Callable[[], Session]) -> bool:
        try:
            session = make()
        except FarmFaultError as refused:
            self._complain(self._conduct.said(refused.faults))
            return False
        except self._expected as error:
            self._complain(str(error))
            return False
        trouble = self._trouble_with(session)
        if trouble:
            self._rooms.close(session)
            self._complain(trouble)
            return False
        self._take(session)
        return True

    def _complain(self, words: str) -> None:
        self._last_trouble = words
        self.troubled.emit(words)

    def _take(self, session: Session) -> None:
        before = self._conduct.let_go()
        if before is not None:
            self._rooms.close(before)
        self._conduct.take(session)
        path = self._rooms.where(session)
        if path is not None:
            self._memory.remember(path)
            self._folder = path.parent
        self.recent_changed.emit()
        differing = self.copies.warning(session)
        if differing:
            self.troubled.emit(differing)

    def ask_open(self) -> None:
        """Let the user choose a farm to open."""
        dialog = self._dialog(tr("Open a farm"), self._kinds_to_open())
        dialog.setFileMode(QFileDialog.FileMode.ExistingFile)
        dialog.fileSelected.connect(self._on_open)
        dialog.open()

    @staticmethod
    def _kinds_to_open() -> str:
        farms = tr("Farms (*.{suffix})", suffix=FARM_SUFFIX)
        return f"{farms};;" + tr("Farms as text (*.{suffix})", suffix=TEXT_SUFFIX)

    def _on_open(self, name: str) -> None:
        self.open(Path(name))

    def ask_copy(self) -> None:
        """Let the user choose where to save a copy."""
        dialog = self._saving(tr("Save a copy"), tr("Farms (*.{suffix})", suffix=FARM_SUFFIX), FARM_SUFFIX)
        dialog.fileSelected.connect(self._on_copy)
        dialog.open()

    def _on_copy(self, name: str) -> None:
        self._written(Path(name), self._rooms.save_copy, tr("A copy was saved as {name}.", name=name))

    def ask_text(self) -> None:
        """Let the user choose where to write the farm as text."""
        dialog = self._saving(tr("Export as text"), tr("Text (*.{suffix})", suffix=TEXT_SUFFIX), TEXT_SUFFIX)
        dialog.fileSelected.connect(self._on_text)
        dialog.open()

    def _on_text(self, name: str) -> None:
        self._written(Path(name), self._rooms.export_text, tr("The farm was written to {name}.", name=name))

    def _written(self, path: Path, write: Callable[[Session, Path], None], said: str) -> None:
        session = self._conduct.session
        if session is None:
            return
        try:
            write(session, path)
        except self._expected as trouble:
            words = tr(
                "{name} could not be written: {why} Choose another folder.", name=path.name, why=trouble
            )
            self._complain(words)
        else:
            self.told.emit(said)

    def ask_backup(self) -> None:
        """Let the user choose a backup to go back to."""
        session = self._conduct.session
        path = None if session is None else self._rooms.where(session)
        lines = () if path is None else self._rooms.backups(path)
        if not lines:
            self.told.emit(tr("There is no backup yet; one is made when the farm is opened or closed."))
            return
        from planner.desk.keeping.backup_dialog import BackupDialog

        dialog = BackupDialog(lines, self._now(), theme_of(self._memory.shade), self._window)
        dialog.wanted.connect(self._on_backup)
        dialog.open()

    def _on_backup(self, backup: Path) -> None:
        session = self._conduct.let_go()
        path = None if session is None else self._rooms.where(session)
        if session is None or path is None:
            return
        self._rooms.close(session)
        try:
            self._rooms.put_back(backup, path)
        except self._expected as trouble:
            self._complain(str(trouble))
        if self.open(path):
            self.told.emit(tr("The farm is as it was in {name}.", name=backup.name))

    def ask_begin(self, answers: Any) -> None:
        """Let the user choose where a new farm is kept."""
        self._answers = answers
        dialog = self._saving(
            tr("Keep the new farm as"), tr("Farms (*.{suffix})", suffix=FARM_SUFFIX), FARM_SUFFIX
        )
        dialog.selectFile(f"{answers.name}.{FARM_SUFFIX}")
        dialog.fileSelected.connect(self._on_begin)
        dialog.rejected.connect(self.not_begun)
        dialog.open()

    def _on_begin(self, name: str) -> None:
        if self.begin(Path(name), self._answers):
            self.begun.emit()

    def open_sample(self) -> None:
        """Open the copy of the sample farm."""
        if self._guarded(self._rooms.first_farm):
            self.sample_shown.emit()

    def ask_forget(self) -> None:
        """Ask before the list of recent farms is emptied."""
        question = Question(
            title=tr("Recent farms"),
            text=tr("Empty the list of recent farms? The farms themselves stay."),
            go_on=tr("Empty the list"),
        )
        self._ask(question, self._on_forget, self._window)

    def _on_forget(self, go_on: bool) -> None:
        if go_on:
            for path in self._memory.recent:
                self._memory.forget(path)
            self.recent_changed.emit()

    def _dialog(self, title: str, kinds: str) -> QFileDialog:
        dialog = QFileDialog(self._window, title, str(self._folder), kinds)
        dialog.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        return dialog

    def _saving(self, title: str, kinds: str, suffix: str) -> QFileDialog:
        dialog = self._dialog(title, kinds)
        dialog.setAcceptMode(QFileDialog.AcceptMode.AcceptSave)
        dialog.setDefaultSuffix(suffix)
        return dialog
