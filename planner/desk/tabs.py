"""Tabs with room for their words: the style cuts the foot of g, p and y in all but the one in front.

Must know nothing of what is on the pages.
"""

from __future__ import annotations

from typing import Final

from PySide6.QtCore import QSize
from PySide6.QtWidgets import QTabBar, QTabWidget, QWidget

_BELOW: Final = 2
"""Pixels by which the style draws the words of a tab in the background lower, without room for it."""


class Tabs(QTabWidget):
    """A tab widget with tabs that are high enough for their words."""

    def __init__(self, parent: QWidget) -> None:
        super().__init__(parent)
        self.setTabBar(_Bar(self))


class _Bar(QTabBar):
    """Tabs a little higher than the style makes them."""

    def tabSizeHint(self, index: int) -> QSize:
        return super().tabSizeHint(index) + QSize(0, _BELOW)
