"""Lists the backups of the open farm, the latest first, and hands on the one to go back to.

Must know nothing of how a backup is made or put back.
"""

from __future__ import annotations

from collections.abc import Sequence
from datetime import datetime
from pathlib import Path
from typing import NamedTuple

from PySide6.QtCore import QLocale, QSize, Qt, Signal
from PySide6.QtWidgets import (
    QDialog,
    QDialogButtonBox,
    QLabel,
    QListWidget,
    QListWidgetItem,
    QPushButton,
    QVBoxLayout,
    QWidget,
)

from planner.desk.fitting import open_sized
from planner.desk.say import tr
from planner.desk.theme import Theme


class BackupLine(NamedTuple):
    """One backup: its file, its moment on the wall clock, and its size in bytes."""

    path: Path
    at: datetime
    size: int


def line_words(line: BackupLine, now: datetime) -> str:
    """Return a backup in words: moment, how long ago, size."""
    moment = line.at.strftime("%a %d %b %Y, %H:%M")
    ago = _ago((now.date() - line.at.date()).days)
    size = QLocale().formattedDataSize(line.size)
    return tr("{moment}  ({ago}, {size})", moment=moment, ago=ago, size=size)


def _ago(days: int) -> str:
    if days <= 0:
        return tr("today")
    return tr("yesterday") if days == 1 else tr("{days} days ago", days=days)


class BackupDialog(QDialog):
    """The list, and a button that goes back to what is chosen in it."""

    wanted = Signal(Path)

    def __init__(self, lines: Sequence[BackupLine], now: datetime, theme: Theme, parent: QWidget) -> None:
        super().__init__(parent)
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self.setWindowTitle(tr("Go back to a backup"))
        words = QLabel(
            tr(
                "Everything since the moment you choose is put aside, not lost: the farm as it is now "
                "becomes a backup first, and stays in this list."
            ),
            self,
        )
        words.setWordWrap(True)
        self.list = QListWidget(self)
        self.list.setAccessibleName(tr("Backups, the latest first"))
        for line in lines:
            item = QListWidgetItem(line_words(line, now))
            item.setData(Qt.ItemDataRole.UserRole, str(line.path))
            item.setToolTip(str(line.path))
            self.list.addItem(item)
        self.list.setCurrentRow(0)
        self.list.itemActivated.connect(self._go)
        column = QVBoxLayout(self)
        column.setContentsMargins(*(theme.metrics.wide,) * 4)
        column.setSpacing(theme.metrics.margin)
        column.addWidget(words)
        column.addWidget(self.list, 1)
        column.addWidget(self._buttons())
        open_sized(self, QSize(theme.metrics.due_width * 2, theme.metrics.side_width))

    def _buttons(self) -> QDialogButtonBox:
        box = QDialogButtonBox(self)
        self.go = QPushButton(tr("Go back to this one"), box)
        self.leave = QPushButton(tr("Cancel"), box)
        for button in (self.go, self.leave):
            button.setAccessibleName(button.text())
        box.addButton(self.go, QDialogButtonBox.ButtonRole.AcceptRole)
        box.addButton(self.leave, QDialogButtonBox.ButtonRole.RejectRole)
        self.go.clicked.connect(self._go)
        self.leave.clicked.connect(self.reject)
        return box

    def _go(self, *_anything: object) -> None:
        item = self.list.currentItem()
        if item is not None:
            self.wanted.emit(Path(item.data(Qt.ItemDataRole.UserRole)))
            self.accept()
