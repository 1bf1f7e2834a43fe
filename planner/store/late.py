"""A farm file that can be shown at once: read with the driver alone, written by the store that comes later.

Reading in the library of the mappings takes longer than all of the farm. So a file is opened and loaded
without it; the first act, or whoever has a moment to spare before it, brings the store, which goes on from
the very revision that was loaded. Keeps all promises of `FarmStore` for a file.
"""

from __future__ import annotations

import sqlite3
from collections.abc import Iterable, Sequence
from contextlib import AbstractContextManager, nullcontext
from datetime import datetime
from pathlib import Path
from typing import TYPE_CHECKING, Self

from planner.farm.changes import ChangeSet
from planner.farm.farm import Farm
from planner.farm.fields import Id
from planner.farm.holds import Hold
from planner.store.acts import ActEntry, ActKind
from planner.store.copying import put_in_place
from planner.store.errors import FarmInUseError, told
from planner.store.opening import see_to_file
from planner.store.plain import damage_told
from planner.store.rows import acts_in, farm_in, holds_in, revision_in
from planner.store.sqlite_file import file_number, prepare, write_copy

if TYPE_CHECKING:
    from planner.store.store import FarmStore


class LateStore:
    """One farm file, open for reading; for acts too, through the store behind it."""

    def __init__(self, path: Path, connection: sqlite3.Connection) -> None:
        """Take over a connection to a file that has been seen to."""
        self._path, self._name = path, path.name
        self._connection = connection
        self._file = file_number(path)
        self._store: FarmStore | None = None
        with told(self._name):
            self._revision = revision_in(connection)

    @classmethod
    def open(cls, path: Path) -> Self:
        """Open a farm file, bringing an older one up to date after copying it beside itself.

        Raises:
            StoreError: it is not there, no farm, newer, damaged, locked or not to be written.
        """
        with told(path.name):
            see_to_file(path)
            connection = sqlite3.connect(path, check_same_thread=False)
            try:
                prepare(connection)
                return cls(path, connection)
            except BaseException:
                connection.close()
                raise

    @property
    def path(self) -> Path:
        """Where the file is."""
        return self._path

    @property
    def name(self) -> str:
        """What a person calls the place: the file's name."""
        return self._name

    @property
    def shared(self) -> bool:
        """Whether several people may work on the farm at a time: not in a file."""
        return False

    @property
    def store(self) -> FarmStore:
        """The store behind, read in when it is first asked for; it knows of nothing since the last load."""
        if self._store is None:
            from planner.store.store import FarmStore  # noqa: PLC0415 - late, for that is what this is for

            self._store = FarmStore.taken_over(self._path, self._revision, self._file)
        return self._store

    def is_stale(self) -> bool:
        """Tell whether somebody else changed the farm since it was loaded here."""
        if self._store is not None:
            return self._store.is_stale()
        with told(self._name):
            return revision_in(self._connection) != self._revision

    def alone(self) -> AbstractContextManager[None]:
        """Let nobody else act meanwhile; in a file there is nobody."""
        return nullcontext()

    def load(self) -> Farm:
        """Return the farm as it is kept now, and go on from that."""
        if self._store is not None:
            return self._store.load()
        with told(self._name):
            self._connection.execute("BEGIN")
            try:
                self._revision = revision_in(self._connection)
                return farm_in(self._connection, self._name)
            finally:
                self._connection.execute("COMMIT")

    def held(self) -> tuple[Hold, ...]:
        """Return the days that places are held, as they are kept."""
        with told(self._name), damage_told(self._name):
            return holds_in(self._connection)

    def acts(self) -> tuple[ActEntry, ...]:
        """Return every act that is kept, oldest first."""
        with told(self._name), damage_told(self._name):
            return acts_in(self._connection)

    def change_set(self, seq: int) -> ChangeSet:
        """Return what one act changed; raises `ChangedElsewhereError` when the history is another by now."""
        return self.store.change_set(seq)

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
        """Carry out one act in one transaction; what it takes and raises stands at `FarmStore.apply`."""
        self.store.apply(change_set, holds, kind=kind, at=at, freed=freed, who=who, seq=seq)

    def copy_to(self, path: str | Path) -> None:
        """Write a copy of the farm with its history to another file, complete or not at all.

        Raises `FarmInUseError` when the target is a farm that is open, here or elsewhere.
        """
        target = Path(path)
        if self._file is not None and file_number(target) == self._file:
            raise FarmInUseError(f"{target.name} is the open farm itself. Choose another name for the copy.")
        with told(target.name):
            put_in_place(target, self._write_copy)

    def _write_copy(self, part: Path) -> None:
        write_copy(self._connection, part)

    def close(self) -> None:
        """Let go of the farm; the journal is folded into the file."""
        if self._store is not None:
            self._store.close()
        self._connection.close()
