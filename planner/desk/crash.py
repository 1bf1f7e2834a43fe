"""Shows a fault of the program itself: what happened, a report to copy, and that nothing was lost.

Every act is kept the moment it is done, so the farm on disk is whole whatever happens here. Must know
nothing of farms.
"""

from __future__ import annotations

import platform
import sys
import traceback
from types import TracebackType

from PySide6.QtCore import QObject, QSize, Qt, Signal, qVersion
from PySide6.QtGui import QGuiApplication
from PySide6.QtWidgets import (
    QDialog,
    QDialogButtonBox,
    QLabel,
    QPlainTextEdit,
    QPushButton,
    QVBoxLayout,
    QWidget,
)

from planner.desk.fitting import open_sized
from planner.desk.say import tr
from planner.desk.theme import Theme


def report_text(
    kind: type[BaseException], error: BaseException, trace: TracebackType | None, version: str
) -> str:
    """Return what a programmer needs to know, without anything of the farm."""
    lines = [
        f"Raftweek {version}",
        f"Python {platform.python_version()}, Qt {qVersion()}, {platform.system()} {platform.release()}",
        "",
        *traceback.format_exception(kind, error, trace),
    ]
    return "\n".join(line.rstrip("\n") for line in lines)


class CrashDialog(QDialog):
    """The report, with a button that copies it."""

    def __init__(self, report: str, theme: Theme, parent: QWidget | None) -> None:
        super().__init__(parent)
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self.setWindowTitle(tr("Something went wrong in the program"))
        self._report = report
        words = QLabel(
            tr(
                "This is a fault of the program, not of your farm. Every act was kept when you did it, so "
                "nothing is lost. You can go on; if it comes again, close the window and open it anew. "
                "Please send the report below to whoever looks after the program."
            ),
            self,
        )
        words.setWordWrap(True)
        box = QPlainTextEdit(report, self)
        box.setReadOnly(True)
        box.setTabChangesFocus(True)
        box.setAccessibleName(tr("Report"))
        column = QVBoxLayout(self)
        column.setContentsMargins(*(theme.metrics.wide,) * 4)
        column.setSpacing(theme.metrics.margin)
        column.addWidget(words)
        column.addWidget(box, 1)
        column.addWidget(self._buttons())
        open_sized(self, QSize(theme.metrics.due_width * 2, theme.metrics.side_width))

    def _buttons(self) -> QDialogButtonBox:
        box = QDialogButtonBox(self)
        self.copy = QPushButton(tr("Copy the report"), box)
        self.close_button = QPushButton(tr("Go on"), box)
        for button in (self.copy, self.close_button):
            button.setAccessibleName(button.text())
        box.addButton(self.copy, QDialogButtonBox.ButtonRole.ActionRole)
        box.addButton(self.close_button, QDialogButtonBox.ButtonRole.AcceptRole)
        self.copy.clicked.connect(self._on_copy)
        box.accepted.connect(self.accept)
        return box

    def _on_copy(self, _checked: bool) -> None:
        QGuiApplication.clipboard().setText(self._report)


class CrashWatch(QObject):
    """Takes the place of `sys.excepthook` while the window stands; one report at a time is shown."""

    caught = Signal(str)

    def __init__(self, theme: Theme, version: str, window: QWidget) -> None:
        super().__init__(window)
        self._theme, self._version, self._window = theme, version, window
        self._before = sys.excepthook
        self._shown: CrashDialog | None = None
        self.caught.connect(self._show, Qt.ConnectionType.QueuedConnection)

    def begin(self) -> None:
        """Catch what nobody else catches, from now on."""
        self._before = sys.excepthook
        sys.excepthook = self._on_error

    def end(self) -> None:
        """Give the hook back."""
        if sys.excepthook == self._on_error:
            sys.excepthook = self._before

    def _on_error(self, kind: type[BaseException], error: BaseException, trace: TracebackType | None) -> None:
        self._before(kind, error, trace)
        if issubclass(kind, Exception):
            self.caught.emit(report_text(kind, error, trace, self._version))

    def _show(self, report: str) -> None:
        if self._shown is None:
            self._shown = CrashDialog(report, self._theme, self._window)
            self._shown.destroyed.connect(self._on_gone)
            self._shown.open()

    def _on_gone(self) -> None:
        self._shown = None
