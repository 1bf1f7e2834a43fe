"""A farm that is kept nowhere yet: the same as a store, but gone when the program ends."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from contextlib import AbstractContextManager, nullcontext
from dataclasses import replace
from datetime import datetime
from pathlib import Path
from typing import Protocol

from planner.farm.changes import ChangeSet, applied
from planner.farm.farm import Farm
from planner.farm.fields import Id
from planner.farm.holds import Hold
from planner.store.acts import ActEntry, ActKind, ActState


class Keeper(Protocol):
    """What a session asks of the place a farm is kept in."""

    @property
    def path(self) -> Path | None:
        """Where the farm's file is, if it has one."""

    @property
    def shared(self) -> bool:
        """Whether several people may work on the farm at a time."""

    def is_stale(self) -> bool:
        """Tell whether somebody else changed the farm since it was loaded."""

    def alone(self) -> AbstractContextManager[None]:
        """Let nobody else act meanwhile."""

    def load(self) -> Farm:
        """Return the farm as it is kept."""

    def held(self) -> tuple[Hold, ...]:
        """Return the days that places are held, as they are kept."""

    def acts(self) -> tuple[ActEntry, ...]:
        """Return all acts, oldest first."""

    def change_set(self, seq: int) -> ChangeSet:
        """Return what an act changed."""

    def apply(
        self,
        change_set: ChangeSet,
        holds: Sequence[Hold],
        *,
        kind: ActKind,
        at: datetime,
        freed: Iterable[Id] = (),
        who: str = "",
        seq: int | None = None,
    ) -> None:
        """Carry out an act, wholly or not at all; `seq` names the act to take back or to do once more."""


class MemoryKeeper:
    """Keeps a farm and its acts in memory, for a farm that has not been saved."""

    def __init__(self, farm: Farm) -> None:
        """Begin with a farm and no acts."""
        self._farm = farm
        self._holds: dict[Id, Hold] = {}
        self._acts: list[ActEntry] = []
        self._change_sets: dict[int, ChangeSet] = {}

    @property
    def path(self) -> Path | None:
        """There is no file."""
        return None

    @property
    def shared(self) -> bool:
        """Nobody else can see it."""
        return False

    def is_stale(self) -> bool:
        """Nobody else can change it."""
        return False

    def alone(self) -> AbstractContextManager[None]:
        """There is nobody else."""
        return nullcontext()

    def load(self) -> Farm:
        """Return the farm."""
        return self._farm

    def held(self) -> tuple[Hold, ...]:
        """Return the days that places are held."""
        return tuple(self._holds.values())

    def acts(self) -> tuple[ActEntry, ...]:
        """Return all acts, oldest first."""
        return tuple(self._acts)

    def change_set(self, seq: int) -> ChangeSet:
        """Return what an act changed."""
        return self._change_sets[seq]

    def apply(
        self,
        change_set: ChangeSet,
        holds: Sequence[Hold],
        *,
        kind: ActKind,
        at: datetime,
        freed: Iterable[Id] = (),
        who: str = "",
        seq: int | None = None,  # noqa: ARG002 - nobody else acts on a farm in memory: it is always the last
    ) -> None:
        """Carry out an act."""
        self._farm = applied(self._farm, change_set)
        self._holds.update({hold.placement: hold for hold in holds})
        for placement in freed:
            self._holds.pop(placement, None)
        done = [entry for entry in self._acts if entry.state is ActState.DONE]
        undone = self._acts[len(done) :]
        if kind is ActKind.DO:
            new = done[-1].seq + 1 if done else 1
            self._change_sets[new] = change_set
            entry = ActEntry(seq=new, title=change_set.title, at=at, state=ActState.DONE, who=who)
            self._acts = [*done, entry]
        elif kind is ActKind.UNDO:
            self._acts = [*done[:-1], replace(done[-1], state=ActState.UNDONE), *undone]
        else:
            self._acts = [*done, replace(undone[0], state=ActState.DONE), *undone[1:]]
