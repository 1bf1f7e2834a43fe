"""What a page of the middle pane is given, and what it tells.

A page shows one outlook with what stands behind it, and passes every wish on; it keeps no farm of its own.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from datetime import datetime
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QWidget

from planner.desk.behind import Behind
from planner.desk.conduct import Conduct
from planner.desk.settings import Memory
from planner.desk.theme import Theme
from planner.farm.fields import Id

if TYPE_CHECKING:
    from planner.desk.messages import Ask
    from planner.desk.services import Library, WorkspaceNeeds
    from planner.forecast.engine import Forecaster


@dataclass(frozen=True, slots=True, kw_only=True)
class PlaceNeeds:
    """What a page is built from; acts go through `conduct`, questions to the user through `ask`."""

    theme: Theme
    conduct: Conduct
    ask: Ask
    now: Callable[[], datetime]
    memory: Memory
    home: Path
    forecaster: Forecaster
    library: Library | None = None


def place_needs(needs: WorkspaceNeeds, forecaster: Forecaster) -> PlaceNeeds:
    """Return what a page is built from, out of what the workspace is built from."""
    return PlaceNeeds(
        theme=needs.theme,
        conduct=needs.conduct,
        ask=needs.ask,
        now=needs.now,
        memory=needs.memory,
        home=needs.home,
        forecaster=forecaster,
        library=needs.library,
    )


class Place(QWidget):
    """A page: `show_behind` is called when it is seen and something has changed, never while hidden.

    `chosen` names a thing to choose, `opened` one whose form is to open, `new_wanted` the kind of a new
    thing and the id it belongs to, `why_wanted` facts and the number of the one asked about, `run_wanted`
    the key of a menu entry.
    """

    chosen = Signal(str)
    opened = Signal(str)
    new_wanted = Signal(str, str)
    why_wanted = Signal(object, int)
    run_wanted = Signal(str)
    told = Signal(str)
    troubled = Signal(str)

    def __init__(self, needs: PlaceNeeds, parent: QWidget) -> None:
        super().__init__(parent)
        self.needs = needs
        self.theme = needs.theme

    def show_behind(self, behind: Behind) -> None:
        """Show a farm as it stands; what was chosen stays so where it still is."""
        raise NotImplementedError

    def show_chosen(self, thing_id: Id) -> None:
        """Show what is chosen elsewhere; empty when nothing is."""

    def take_focus(self) -> None:
        """Give the keyboard to what is worked with most."""
        self.setFocus()

    def leave(self) -> None:
        """Give up what runs beside the window; called when the farm is closed or another is opened."""

    def wear(self, theme: Theme) -> None:
        """Wear the colours of a theme."""
        self.theme = theme
