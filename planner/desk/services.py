"""What the desk needs from outside, handed in as values and callables.

The desk never opens a file, a database or a clock itself: whoever wires the program gives it the means.
Nothing here may import numpy, the store, the catalogue or the forecast when the program runs, for the
window is painted before they are read.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from datetime import date
from pathlib import Path
from typing import TYPE_CHECKING, Protocol

from PySide6.QtCore import QSettings
from PySide6.QtGui import QPagedPaintDevice
from PySide6.QtWidgets import QWidget

from planner.desk.conduct import Conduct
from planner.desk.messages import Ask
from planner.desk.session import Session
from planner.desk.theme import Theme
from planner.farm.farm import Farm

if TYPE_CHECKING:
    from planner.desk.newfarm.answers import Answers
    from planner.desk.workspace import Workspace
    from planner.forecast.values import Forecast


class ForecasterLike(Protocol):
    """Foresees a farm, fast when little has changed."""

    def forecast(self, farm: Farm) -> Forecast:
        """Return the forecast of a farm."""


@dataclass(frozen=True, slots=True, kw_only=True)
class CalendarWish:
    """Which seeding calendar is wanted: paper, first day and number of weeks."""

    paper: str
    landscape: bool
    from_on: date
    weeks: int


class Sheets(Protocol):
    """A report that is ready for paper: the same for screen, printer and file."""

    def paint(self, device: QPagedPaintDevice) -> int:
        """Paint all pages on a device set up by `set_up`, and return how many there are."""

    def write_pdf(self, path: Path) -> None:
        """Write the pages into a PDF file."""


@dataclass(frozen=True, slots=True, kw_only=True)
class WorkspaceNeeds:
    """What the workspace is built from."""

    theme: Theme
    conduct: Conduct
    today: date
    ask: Ask
    parent: QWidget


@dataclass(frozen=True, slots=True, kw_only=True)
class Rooms:
    """What is read in after the first paint: the callables behind the menus, and the workspace.

    `troubles` are the errors of disk and database that are to be expected; the text of one is a sentence
    for the user. Every callable here may raise them, and an act on a session too.
    """

    open_farm: Callable[[Path], Session]
    new_farm: Callable[[Path, Answers], Session]
    first_farm: Callable[[], Session]
    save_copy: Callable[[Session, Path], None]
    export_text: Callable[[Session, Path], None]
    calendar: Callable[[Session, CalendarWish], Sheets]
    close: Callable[[Session], None]
    where: Callable[[Session], Path | None]
    troubles: tuple[type[Exception], ...]
    make_workspace: Callable[[WorkspaceNeeds], Workspace]


@dataclass(frozen=True, slots=True, kw_only=True)
class DeskServices:
    """All that the window is given before anything heavy is there."""

    load: Callable[[], Rooms]
    settings: QSettings
    today: Callable[[], date]
    ask: Ask
    home: Path
    version: str = ""
    start_with: Path | None = None
