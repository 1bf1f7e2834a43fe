"""What the desk needs from outside besides what is given at the start, handed in as values and callables.

The desk never opens a file, a database or a clock itself: whoever wires the program gives it the means.
Nothing here may import numpy, the store, the catalogue or the forecast when the program runs.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass
from datetime import datetime
from pathlib import Path
from typing import TYPE_CHECKING, Any

if TYPE_CHECKING:
    from PySide6.QtWidgets import QWidget

    from planner.desk.conduct import Conduct
    from planner.desk.csv_in.values import TableLike
    from planner.desk.keeping.backup_dialog import BackupLine
    from planner.desk.messages import Ask
    from planner.desk.session import Session
    from planner.desk.settings import Memory
    from planner.desk.theme import Theme
    from planner.desk.workspace import Workspace
    from planner.farm.farm import OwnEntry
    from planner.forecast.verify.run import CaseResult, LackingResult
    from planner.planning.answers import Answers


@dataclass(frozen=True, slots=True, kw_only=True)
class Library:
    """Own entries of the catalogue as text.

    Both may raise `OSError`, and `FarmFaultError` for what is wrong with an entry.
    """

    write: Callable[[Path, Sequence[OwnEntry]], None]
    read: Callable[[Path], tuple[OwnEntry, ...]]


@dataclass(frozen=True, slots=True, kw_only=True)
class WorkspaceNeeds:
    """What the workspace is built from."""

    theme: Theme
    conduct: Conduct
    now: Callable[[], datetime]
    ask: Ask
    memory: Memory
    home: Path
    parent: QWidget
    library: Library | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class CheckStep:
    """A few published cases worked out: their area by key and title, and how many cases there are in all.

    `lacking` is what of the area cannot be worked out; it comes with the first step of the area.
    """

    area: str
    title: str
    cases: int
    results: tuple[CaseResult, ...]
    lacking: tuple[LackingResult, ...] = ()


@dataclass(frozen=True, slots=True, kw_only=True)
class Rooms:
    """What is read in after the first paint: the callables behind the menus, and the workspace.

    `troubles` are the errors of disk and database that are to be expected; the text of one is a sentence
    for the user. Every callable here may raise them, and an act on a session too. What takes a session
    takes one that came from here. `check` works published cases out, a few at each step; `warm` reads in,
    step by step, what the first act needs.
    """

    open_farm: Callable[[Path], Session]
    new_farm: Callable[[Path, Answers], Session]
    first_farm: Callable[[], Session]
    save_copy: Callable[[Any, Path], None]
    export_text: Callable[[Any, Path], None]
    close: Callable[[Any], None]
    where: Callable[[Any], Path | None]
    troubles: tuple[type[Exception], ...]
    make_workspace: Callable[[WorkspaceNeeds], Workspace]
    check: Callable[[], Iterator[CheckStep]]
    read_table: Callable[[Any, Path], TableLike] | None = None
    library: Library | None = None
    backups: Callable[[Path], Sequence[BackupLine]]
    put_back: Callable[[Path, Path], None]
    warm: Callable[[], Iterator[object]] | None = None
