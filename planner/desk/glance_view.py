"""Shows a glance of a farm where the workspace will stand, until the farm itself is read in.

The lanes lie where those of the workspace will lie, so that nothing moves when it takes their place;
nothing in here answers to hands. Must know nothing of files.
"""

from __future__ import annotations

from datetime import date

from PySide6.QtCore import QByteArray, Qt
from PySide6.QtWidgets import QSplitter, QTabWidget, QVBoxLayout, QWidget

from planner.desk.frame import arrange, dressed_tabs
from planner.desk.glance import Glance
from planner.desk.lanes.interaction import Preview
from planner.desk.lanes.lanes_view import LanesView
from planner.desk.places.listed import LISTED
from planner.desk.theme import Theme
from planner.farm.fields import Id


class StillMover:
    """A mover for lanes in which nothing can be moved."""

    def begin(self, batch_id: Id) -> None:
        """Take nothing up."""

    def preview(self, batch_id: Id, run: Id, days: int, bed: Id, unit: int) -> Preview:  # noqa: ARG002
        """Allow nothing."""
        return Preview(allowed=False)

    def commit(self) -> None:
        """Carry nothing out."""

    def cancel(self) -> None:
        """Forget nothing."""


class GlanceView(QWidget):
    """The lanes of a glance between two empty panes."""

    def __init__(
        self, glance: Glance, theme: Theme, *, today: date, arrangement: QByteArray, parent: QWidget
    ) -> None:
        super().__init__(parent)
        self.name = glance.name
        self.setAttribute(Qt.WidgetAttribute.WA_TransparentForMouseEvents)
        self.lanes = LanesView(theme, StillMover(), self)
        self.lanes.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self.tabs: QTabWidget = dressed_tabs((self.lanes, *(QWidget(self) for _ in LISTED[1:])), self)
        self.tabs.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self.split = QSplitter(Qt.Orientation.Horizontal, self)
        arrange(self.split, (QWidget(self), self.tabs, QWidget(self)), theme)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(self.split)
        if not arrangement.isEmpty():
            self.split.restoreState(arrangement)
        self.lanes.set_today(today)
        self.lanes.set_scene(glance.scene)
        self.lanes.go_to(today)
