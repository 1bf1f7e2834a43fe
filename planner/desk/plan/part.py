"""What every section of the page has: it is filled when seen, and works things out beside the window.

A section works on the farm as it was when it was asked; what came out of it is marked once the farm
differs. Must know nothing of what any section shows.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import replace
from datetime import date
from functools import partial
from threading import Event
from typing import Any

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QWidget

from planner.catalogue.catalogue import Catalogue
from planner.desk.behind import Behind
from planner.desk.jobs import Job
from planner.desk.places.place import PlaceNeeds
from planner.desk.plan.ask_form import AskForm
from planner.desk.plan.kit import wear_words
from planner.desk.theme import Theme
from planner.farm.changes import ChangeSet
from planner.farm.farm import Farm
from planner.forecast.engine import Forecaster
from planner.forecast.values import Forecast


class GivenUp(Exception):  # noqa: N818 - an end that was asked for, not a mistake
    """Raised inside work that nobody waits for any more."""


class OwnForecaster(Forecaster):
    """A forecaster of the work's own, for the window's is used while work goes on; stops when told to."""

    def __init__(self, catalogue: Catalogue, stopped: Event) -> None:
        super().__init__(catalogue)
        self._stopped = stopped

    def preview(self, farm: Farm) -> Forecast:
        """Return the forecast of a farm without flags; raises `GivenUp` once told to stop."""
        if self._stopped.is_set():
            raise GivenUp
        return super().preview(farm)


Work = Callable[[Farm, Forecaster, Event], Iterator[Any]]
"""Works on a farm without own entries, for the forecaster has them in its catalogue already."""


def _run(work: Work, farm: Farm, catalogue: Catalogue, stopped: Event) -> Iterator[Any]:
    forecaster = OwnForecaster(catalogue, stopped)
    try:
        yield from work(replace(farm, own_entries=()), forecaster, stopped)
    except GivenUp:
        return


class Worker(QWidget):
    """A widget that may have one piece of work going on beside the window."""

    def __init__(self, parent: QWidget) -> None:
        super().__init__(parent)
        self._job: Job | None = None

    @property
    def is_working(self) -> bool:
        """Tell whether something is being worked out."""
        return self._job is not None

    def begin(self, work: Work, behind: Behind, name: str) -> None:
        """Begin to work something out on a farm as it stands; what went on before is given up."""
        self.give_up()
        outlook = behind.outlook
        run = partial(_run, work, outlook.farm, outlook.catalogue)
        self._job = Job(run, name, self, self.on_failed)
        self._job.told.connect(self.on_told)
        self._job.done.connect(self._on_done)

    def give_up(self) -> None:
        """Give up what is being worked out."""
        job, self._job = self._job, None
        if job is not None:
            job.stop()
            self.on_ended()

    def _on_done(self) -> None:
        job, self._job = self._job, None
        if job is not None:
            job.deleteLater()
        self.on_ended()

    def on_told(self, found: Any) -> None:
        """Take a part of what was worked out."""

    def on_ended(self) -> None:
        """Show that nothing is being worked out any more."""

    def on_failed(self, fault: Exception) -> None:
        """Show why it could not be worked out; what nobody expects is raised."""
        raise fault


class Part(Worker):
    """A section of the page; `scenario_offered` carries name and changes of what is to be kept to compare."""

    told = Signal(str)
    troubled = Signal(str)
    opened = Signal(str)
    new_wanted = Signal(str, str)
    run_wanted = Signal(str)
    scenario_offered = Signal(str, object)

    def __init__(self, needs: PlaceNeeds, parent: QWidget) -> None:
        super().__init__(parent)
        self.needs = needs
        self.theme = needs.theme
        self.behind: Behind | None = None

    def show_behind(self, behind: Behind) -> None:
        """Show a farm as it stands."""
        self.behind = behind
        self.refresh()

    def refresh(self) -> None:
        """Show what there is to show of the farm."""

    def take_focus(self) -> None:
        """Give the keyboard to what is worked with first."""
        self.setFocus()

    def leave(self) -> None:
        """Give up everything that was for a farm which is closed now."""
        self.give_up()
        self.behind = None

    def wear(self, theme: Theme) -> None:
        """Wear the colours of a theme."""
        self.theme = theme
        wear_words(self, theme)
        for form in self.findChildren(AskForm):
            form.wear(theme)

    def is_of_now(self, farm: Farm | None) -> bool:
        """Tell whether something was worked out for the farm as it stands."""
        if farm is None or self.behind is None:
            return False
        now = self.behind.outlook.farm
        return farm is now or farm == now

    def act(self, change_set: ChangeSet) -> bool:
        """Carry a change out as one act."""
        return self.needs.conduct.act(change_set)


def first_day(today: date, farm: Farm) -> date:
    """Return the first day that can still be planned: today, or the plan's first when that comes later."""
    return max(today, farm.settings.plan_from)
