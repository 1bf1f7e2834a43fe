"""Says on stderr when the window and the farm in it were first painted, for measuring."""

from __future__ import annotations

import sys
import time
from typing import TYPE_CHECKING, Final

from PySide6.QtCore import QEvent, QObject, QTimer
from PySide6.QtWidgets import QApplication, QWidget

if TYPE_CHECKING:
    from planner.desk.window import MainWindow

FIRST_PAINT: Final = "first-paint"
GLANCE_PAINTED: Final = "glance-painted"
FARM_PAINTED: Final = "farm-painted"


def watch(application: QApplication, window: MainWindow) -> None:
    """Watch the paint events of a window, then quit."""
    application.installEventFilter(_Watch(window))


class _Watch(QObject):
    """Prints seconds of the clock and of the processor at the first paint and at the first of a farm."""

    def __init__(self, window: MainWindow) -> None:
        super().__init__(window)
        self._window = window
        self._seen: set[str] = set()
        self._covered = False

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:  # noqa: N802 - Qt's own name
        """Look at paint events and let all pass."""
        if event.type() is QEvent.Type.Paint and isinstance(watched, QWidget):
            if watched is self._window:
                QTimer.singleShot(0, self, self._on_first)
            elif watched is self._window.cover:
                self._covered = self._window.cover.fits
            elif self._is_open() and self._window.isAncestorOf(watched):
                QTimer.singleShot(0, self, self._on_farm)
        return False

    def _is_open(self) -> bool:
        return self._window.rooms is not None and self._window.conduct.session is not None

    def _on_first(self) -> None:
        # Both are on the screen by now: a window and what lies over it are painted in one go.
        self._say(FIRST_PAINT)
        if self._covered:
            self._say(GLANCE_PAINTED)

    def _on_farm(self) -> None:
        self._say(FARM_PAINTED)
        self._window.close()

    def _say(self, what: str) -> None:
        if what not in self._seen:
            self._seen.add(what)
            print(f"{what} {time.time():.6f} {time.process_time():.6f}", file=sys.stderr, flush=True)
