"""Asks for the file of a table and opens the dialog that brings it in."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path
from typing import Any

from PySide6.QtCore import QObject, Qt, Signal
from PySide6.QtWidgets import QFileDialog, QWidget

from planner.desk.conduct import Conduct
from planner.desk.csv_in.dialog import TableDialog
from planner.desk.csv_in.values import TableLike
from planner.desk.say import tr
from planner.desk.theme import Theme

ReadTable = Callable[[Any, Path], TableLike]
"""Returns the table in a file, for a session; its expected errors are `ValueError` and `OSError`."""


class TableOpening(QObject):
    """Chooses a file, reads it, and shows what would come in."""

    troubled = Signal(str)

    def __init__(self, read: ReadTable, conduct: Conduct, theme: Theme, window: QWidget) -> None:
        super().__init__(window)
        self._read, self._conduct, self._theme, self._window = read, conduct, theme, window

    def ask(self, folder: Path) -> None:
        """Let the user choose a table."""
        kinds = f"{tr('Tables (*.csv *.txt *.tsv)')};;{tr('All files (*)')}"
        dialog = QFileDialog(self._window, tr("Bring in a table"), str(folder), kinds)
        dialog.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        dialog.setFileMode(QFileDialog.FileMode.ExistingFile)
        dialog.fileSelected.connect(self.open)
        dialog.open()

    def open(self, name: str) -> None:
        """Read a table and show what would come in."""
        session = self._conduct.session
        if session is None:
            return
        path = Path(name)
        try:
            table = self._read(session, path)
        except (ValueError, OSError) as error:
            why = error.strerror if isinstance(error, OSError) and error.strerror else str(error)
            self.troubled.emit(tr("{name} could not be brought in: {why}", name=path.name, why=why))
            return
        TableDialog(table, self._conduct.act, self._theme, self._window).open()
