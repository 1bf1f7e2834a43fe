"""The status bar: what farm is open, whether it is saved, what the last act moved, and the mark of the plan.

Always of one height, so that nothing above it moves with what it says. Must know nothing of farms.
"""

from __future__ import annotations

from PySide6.QtWidgets import QLabel, QStatusBar, QWidget

from planner.desk.say import tr
from planner.desk.short_label import ShortLabel

_MOVES_AT = 2
"""Where what the last act moved stands among the parts."""


class Foot(QStatusBar):
    """Name, saved or not, what moved, and the mark, from left to right."""

    def __init__(self, gap: int, parent: QWidget) -> None:
        super().__init__(parent)
        self.name, self.saved, self.mark = QLabel(self), ShortLabel(self), QLabel(self)
        self._moves: QWidget | None = None
        self._chosen = ""
        for label in (self.name, self.saved, self.mark):
            label.setContentsMargins(gap, 0, gap, 0)
        self.addWidget(self.name)
        self.addWidget(self.saved, 1)
        self.addPermanentWidget(self.mark)

    def hold(self, moves: QWidget) -> None:
        """Hold what says what the last act moved, in the place of what was held till now."""
        if self._moves is not None:
            self._moves.deleteLater()
        self._moves = moves
        self.insertWidget(_MOVES_AT, moves, 2)
        moves.hide()

    def show_farm(self, name: str, where: str, mark: str) -> None:
        """Show what farm is open, where it is kept, and the mark of its plan."""
        self.name.setText(name)
        self.name.setToolTip(where)
        self.saved.setText(tr("All saved"))
        self.mark.setText(mark)
        self.mark.setToolTip(tr("Changes whenever anything in the farm changes; printed on every sheet."))

    def show_chosen(self, many: int) -> None:
        """Say how many batches are chosen while they are several; what was said of them before goes again."""
        if many > 1:
            self._chosen = tr("{many} batches chosen", many=many)
            self.saved.setText(self._chosen)
        elif self._chosen and self.saved.text() == self._chosen:
            self.saved.setText(tr("All saved"))
