"""The page of the water: the tab of readings and advice, as a page of the middle pane."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtWidgets import QVBoxLayout, QWidget

from planner.desk.behind import Behind
from planner.desk.jobs import Job
from planner.desk.places.place import Place, PlaceNeeds
from planner.desk.say import tr
from planner.desk.theme import Theme
from planner.desk.water.tab import WaterTab
from planner.farm.changes import ChangeSet

if TYPE_CHECKING:
    from planner.desk.sureness import Sureness


class WaterPlace(Place):
    """Holds the water tab, does the acts it asks for, and passes on what it tells."""

    def __init__(self, needs: PlaceNeeds, parent: QWidget) -> None:
        super().__init__(needs, parent)
        self._behind: Behind | None = None
        self._job: Job | None = None
        self.tab = WaterTab(needs.theme, self)
        self.tab.opened.connect(self.opened)
        self.tab.new_wanted.connect(self.new_wanted)
        self.tab.why_wanted.connect(self.why_wanted)
        self.tab.wished.connect(self._on_wished)
        self.tab.sure_wanted.connect(self._on_sure)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(self.tab)

    def show_behind(self, behind: Behind) -> None:
        """Show the water of a farm."""
        self._give_up()
        self._behind = behind
        self.tab.show_behind(behind)

    def _on_wished(self, act: ChangeSet) -> None:
        if self.needs.conduct.act(act):
            self.told.emit(tr("Done: {words}. Undo takes it back.", words=act.title))

    def _on_sure(self) -> None:
        """Work low and high out beside the window, once for the farm as it stands."""
        behind = self._behind
        if behind is None or self._job is not None:
            return
        from planner.desk.sureness import sure_job

        self._job = sure_job(behind.outlook.farm, behind.outlook.catalogue, self)
        self._job.told.connect(self._on_told)
        self._job.done.connect(self._give_up)
        self.tab.show_working(working=True)

    def _on_told(self, sure: Sureness) -> None:
        if self._behind is not None:
            self._behind.sure = sure
            self.tab.show_more()

    def _give_up(self) -> None:
        job, self._job = self._job, None
        if job is not None:
            job.stop()
        self.tab.show_working(working=False)

    def leave(self) -> None:
        """Give up what is being worked out."""
        self._give_up()

    def take_focus(self) -> None:
        """Give the keyboard to the readings."""
        self.tab.view.setFocus()

    def wear(self, theme: Theme) -> None:
        """Wear the colours of a theme."""
        super().wear(theme)
        self.tab.wear(theme)
