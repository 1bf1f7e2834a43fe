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
    """Prints seconds of the system's clock at the first paint and at the first paint of a farm."""

    def __init__(self, window: MainWindow) -> None:
        super().__init__(window)
        self._window = window
        self._seen: set[str] = set()
        window.conduct.opened.connect(self._on_opened)
        self._open = False

    def _on_opened(self, _session: object) -> None:
        self._open = True

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:  # noqa: N802 - Qt's own name
        """Look at paint events and let all pass."""
        if event.type() is QEvent.Type.Paint and isinstance(watched, QWidget):
            if watched is self._window:
                QTimer.singleShot(0, self, self._on_first)
            elif self._is_glance(watched):
                QTimer.singleShot(0, self, self._on_glance)
            elif self._open and self._window.isAncestorOf(watched):
                QTimer.singleShot(0, self, self._on_farm)
        return False

    def _on_first(self) -> None:
        self._say(FIRST_PAINT)

    def _is_glance(self, watched: QWidget) -> bool:
        view = self._window.glance_view
        return not self._open and view is not None and view.isAncestorOf(watched)

    def _on_glance(self) -> None:
        self._say(GLANCE_PAINTED)

    def _on_farm(self) -> None:
        self._say(FARM_PAINTED)
        self._window.close()

    def _say(self, what: str) -> None:
        if what not in self._seen:
            self._seen.add(what)
            print(f"{what} {time.time():.6f}", file=sys.stderr, flush=True)
