"""The panes beside the pages: both, one, or none, as asked for and as the window has room.

In a window too narrow for both they fold away, and either comes back alone when it is asked for. Must know
nothing of what they show.
"""

from __future__ import annotations

from typing import Final

from PySide6.QtCore import QEvent, QObject, QTimer, Signal
from PySide6.QtWidgets import QSplitter, QWidget

DUE: Final = 0
SIDE: Final = 1
_NONE: Final = -1


class Panes(QObject):
    """What is seen of two panes in one row with the pages between them."""

    changed = Signal()

    def __init__(self, row: QSplitter, panes: tuple[QWidget, QWidget], *, least_middle: int) -> None:
        super().__init__(row)
        self._row, self._panes, self._least_middle = row, panes, least_middle
        self._wanted = [True, True]
        self._alone = _NONE
        self._wide = False
        row.installEventFilter(self)

    @property
    def wanted(self) -> tuple[bool, bool]:
        """Tell of both panes whether they are to be seen as the window is now, a wide page aside."""
        if self._is_narrow:
            return self._alone == DUE, self._alone == SIDE
        return self._wanted[DUE], self._wanted[SIDE]

    @property
    def _is_narrow(self) -> bool:
        both = sum(pane.minimumWidth() for pane in self._panes)
        return self._row.width() < both + self._least_middle

    def toggle(self, which: int) -> None:
        """Show a pane that is folded away, or fold away one that is shown."""
        if self._is_narrow:
            self._alone = _NONE if self._alone == which else which
        else:
            self._wanted[which] = not self._wanted[which]
        self.lay()

    def make_room(self, *, wide: bool) -> None:
        """Hide both for a wide page, and show again what is wanted for another."""
        self._wide = wide
        self.lay()

    def lay(self) -> None:
        """Show the panes as they are wanted, as far as there is room."""
        before = [not pane.isHidden() for pane in self._panes]
        shown = [wanted and not self._wide for wanted in self.wanted]
        for pane, seen in zip(self._panes, shown, strict=True):
            pane.setVisible(seen)
        # The row deals its width out after this event.
        QTimer.singleShot(0, self, self._leave_room)
        if before != shown:
            self.changed.emit()

    def _leave_room(self) -> None:
        """Make the panes narrower, down to their least, where the pages between them have too little."""
        due, middle, side = self._row.sizes()
        for at, wide in ((SIDE, side), (DUE, due)):
            pane = self._panes[at]
            taken = min(max(self._least_middle - middle, 0), max(wide - pane.minimumWidth(), 0))
            if pane.isHidden() or taken == 0:
                continue
            middle += taken
            due, side = (due - taken, side) if at == DUE else (due, side - taken)
            self._row.setSizes([due, middle, side])

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        if watched is self._row and event.type() is QEvent.Type.Resize:
            self.lay()
        return False
