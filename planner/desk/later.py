"""Does in spare moments what will be wanted soon, step by step, so that no click waits for more than one.

The farm is shown before any of it.
"""

from __future__ import annotations

from collections.abc import Iterator
from typing import TYPE_CHECKING, Final

from PySide6.QtCore import QObject, QTimer

if TYPE_CHECKING:
    from planner.desk.window import MainWindow

_FIRST_MS: Final = 300
"""Room for the window to paint what has just come, before the first step."""

_BETWEEN_MS: Final = 40
"""Room for the window between two steps."""


class Later(QObject):
    """Takes the steps of an iterator one by one beside everything else, once begun, then goes."""

    def __init__(self, steps: Iterator[object], parent: QObject) -> None:
        super().__init__(parent)
        self._steps = steps
        self._timer = QTimer(self)
        self._timer.timeout.connect(self._step)

    def begin(self) -> None:
        """Take the first step a moment from now."""
        self._timer.start(_FIRST_MS)

    def _step(self) -> None:
        self._timer.setInterval(_BETWEEN_MS)
        if next(self._steps, self) is self:
            self._timer.stop()
            self.deleteLater()


def spare_steps(window: MainWindow) -> Iterator[object]:
    """Do step by step what a window can show a farm without."""
    yield window.tips  # from now on, words are explained where the mouse rests on them
    window.menus.sharpen()
    yield window.menus
    if window.rooms is not None and window.rooms.warm is not None:
        yield from window.rooms.warm()
