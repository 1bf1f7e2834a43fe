"""What the store tells of the acts it keeps."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime
from enum import Enum
from typing import Final

KEPT_ACTS: Final = 1000
"""How many acts can be undone; older ones are forgotten, so that a file does not grow for ever."""


class ActState(Enum):
    """Whether an act stands, or was undone and can be redone."""

    DONE = "done"
    UNDONE = "undone"


class ActKind(Enum):
    """What a change set is: a new act, one taken back, or one done once more."""

    DO = "do"
    UNDO = "undo"
    REDO = "redo"


@dataclass(frozen=True, slots=True, kw_only=True)
class By:
    """Who acts, and when; `shared` when several people work on the farm at a time."""

    at: datetime
    who: str = ""
    shared: bool = False


@dataclass(frozen=True, slots=True, kw_only=True)
class ActEntry:
    """One act of the history; its changes are fetched by `seq` only when they are wanted.

    `who` is the name of the person at the desk, empty where none was known.
    """

    seq: int
    title: str
    at: datetime
    state: ActState
    who: str = ""
