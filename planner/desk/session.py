"""What the desk asks of an open farm; the acts room answers it. Must know nothing of how it is kept."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from typing import TYPE_CHECKING, Any, Protocol

if TYPE_CHECKING:
    from datetime import datetime

    from planner.farm.changes import ChangeSet
    from planner.farm.farm import Farm
    from planner.farm.fields import Id


class Notice(Protocol):
    """What one act changed, and who began it."""

    @property
    def change_set(self) -> ChangeSet:
        """The changes, under their title."""

    @property
    def initiator(self) -> str:
        """Who began it."""


class ActLine(Protocol):
    """One act as it is listed."""

    @property
    def title(self) -> str:
        """What was done."""

    @property
    def at(self) -> datetime:
        """When, with its time zone."""

    @property
    def done(self) -> bool:
        """Whether it stands; False when it was taken back."""

    @property
    def who(self) -> str:
        """Who did it; empty on a farm of one's own."""


class PastAct(Protocol):
    """An act of the past with the farm before it and after it."""

    @property
    def before(self) -> Farm:
        """The farm just before the act."""

    @property
    def after(self) -> Farm:
        """The farm just after it."""

    @property
    def change_set(self) -> ChangeSet:
        """What the act changed."""


class Trail(Protocol):
    """The way back to an act of the past; it may be walked beside the window."""

    @property
    def act(self) -> ChangeSet:
        """What the act changed."""

    def walk(self) -> PastAct | None:
        """Return the act with the farm on both sides of it; None when what others did hides it."""


class Session(Protocol):
    """An open farm: every act is kept at once and can be taken back."""

    @property
    def farm(self) -> Farm:
        """The farm as it stands."""

    @property
    def catalogue(self) -> Any:
        """The figures, with the grower's own entries laid over them."""

    @property
    def history(self) -> Sequence[ActLine]:
        """Every act that is kept, the latest first: each with title, moment `at`, `done` and `who`."""

    def last_change(self, about: Id, field: str) -> ActLine | None:
        """Return the last act that gave a field of a thing its value; None when none is found."""

    @property
    def undo_title(self) -> str | None:
        """Title of the act that undo would take back."""

    @property
    def redo_title(self) -> str | None:
        """Title of the act that redo would do again."""

    def trail(self, at: int) -> Trail:
        """Return the way back to an act by its place in `history`."""

    def act(self, change_set: ChangeSet) -> Any:
        """Keep a set of changes; raises `FarmFaultError` and changes nothing when it cannot be taken."""

    def catch_up(self) -> Any:
        """Bring in what somebody else did and tell it by a notice; None when nobody did anything."""

    def undo(self) -> Any:
        """Take the last act back; None when there is none."""

    def redo(self) -> Any:
        """Do the act taken back last again; None when there is none."""

    def subscribe(self, listener: Callable[[Any], None]) -> None:
        """Tell `listener` of each act by one notice."""

    def unsubscribe(self, listener: Callable[[Any], None]) -> None:
        """Tell `listener` no longer."""
