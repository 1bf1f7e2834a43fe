"""A farm that is kept: opened, read, changed act by act, copied, closed."""

from __future__ import annotations

import sqlite3
from collections.abc import Iterable, Iterator, Sequence
from contextlib import closing, contextmanager
from datetime import datetime
from pathlib import Path
from types import TracebackType
from typing import Final, Self

from sqlalchemy import Connection, Engine, func, select, update

from planner.farm.changes import ChangeSet
from planner.farm.farm import Farm
from planner.farm.fields import Id
from planner.farm.holds import Hold
from planner.store import history
from planner.store.acts import ActEntry, ActKind, By
from planner.store.base import table
from planner.store.convert import Row, read_farm, read_holds
from planner.store.copying import put_in_place
from planner.store.engine import file_engine
from planner.store.errors import (
    ChangedElsewhereError,
    FarmInUseError,
    FarmThereAlreadyError,
    NewerFarmError,
    NoSuchFarmError,
    told,
)
from planner.store.guard import make_server_tables
from planner.store.migrations.runner import CURRENT_VERSION, take_steps_on_server
from planner.store.opening import see_to_file
from planner.store.place import server_url
from planner.store.plain import damage_told
from planner.store.records import MetaRecord
from planner.store.schema import make_file_tables
from planner.store.server import server_engine
from planner.store.sqlite_file import APPLICATION_ID, file_number, write_copy
from planner.store.writing import write_changes, write_farm

_META = table(MetaRecord)
_TURN: Final = APPLICATION_ID
"""What whoever acts on a database server waits for; each farm has a database of its own."""


class FarmStore:
    """One farm in a file or on a database server, open for reading and for acts.

    Made by `create` and `open`. Every act is one transaction: it is kept whole or not at all.
    """

    def __init__(self, engine: Engine, *, name: str, path: Path | None) -> None:
        """Take over an engine whose tables are there and in order."""
        self._engine = engine
        self._name = name
        self._path = path
        self._file = None if path is None else file_number(path)
        self._is_alone = False
        self._revision = self._read_revision()

    @classmethod
    def create(
        cls, where: str | Path, farm: Farm, holds: Iterable[Hold] = (), *, replace: bool = False
    ) -> Self:
        """Keep a farm for the first time and return it open.

        With `replace` another farm file at the path is replaced, once it is complete; without,
        `FarmThereAlreadyError` is raised.
        """
        url = server_url(where)
        if url is not None:
            return cls._create_on_server(url, farm, holds)
        path = Path(where)
        if path.exists() and not replace:
            raise FarmThereAlreadyError(f"{path.name} is there already. Open it, or choose another name.")
        with told(path.name):
            put_in_place(path, lambda part: _write_file(part, farm, holds, name=path.name))
        return cls.open(path)

    @classmethod
    def _create_on_server(cls, url: str, farm: Farm, holds: Iterable[Hold]) -> Self:
        engine = server_engine(url)
        name = _server_name(engine)
        with told(name), _let_go_on_error(engine):
            with engine.begin() as connection:
                if engine.dialect.has_table(connection, _META.name):
                    raise FarmThereAlreadyError(f"{name} holds a farm already. Open it instead.")
                make_server_tables(connection)
                write_farm(connection, farm, holds)
            return cls(engine, name=name, path=None)

    @classmethod
    def open(cls, where: str | Path) -> Self:
        """Open a farm that is kept, bringing an older file up to date after copying it beside itself.

        Raises:
            StoreError: it is not there, no farm, newer, damaged, locked or not to be written.
        """
        url = server_url(where)
        if url is not None:
            return cls._open_on_server(url)
        path = Path(where)
        with told(path.name):
            see_to_file(path)
            engine = file_engine(path)
            with _let_go_on_error(engine):
                return cls(engine, name=path.name, path=path)

    @classmethod
    def _open_on_server(cls, url: str) -> Self:
        engine = server_engine(url)
        name = _server_name(engine)
        with told(name), _let_go_on_error(engine):
            with engine.begin() as connection:
                _check_server(engine, connection, name)
            return cls(engine, name=name, path=None)

    @classmethod
    def taken_over(cls, path: Path, revision: int, file: tuple[int, int] | None) -> Self:
        """Return the store of a file that has been seen to and loaded at a revision, and goes on from it.

        `file` tells the file that was loaded from any other; raises `StoreError` when it cannot be reached.
        """
        if file_number(path) != file:
            raise _gone(path.name)
        with told(path.name):
            engine = file_engine(path)
            with _let_go_on_error(engine):
                store = cls(engine, name=path.name, path=path)
        store._revision, store._file = revision, file
        return store

    @property
    def path(self) -> Path | None:
        """Where the file is; None when the farm is on a database server."""
        return self._path

    @property
    def name(self) -> str:
        """What a person calls the place: the file's name, or the database's."""
        return self._name

    @property
    def shared(self) -> bool:
        """Whether several people may work on the farm at a time: on a database server they may."""
        return self._path is None

    def is_stale(self) -> bool:
        """Tell whether somebody else changed the farm since it was loaded here."""
        with told(self._name), self._engine.connect() as connection:
            return bool(connection.execute(select(_META.c.revision)).scalar_one() != self._revision)

    def load(self) -> Farm:
        """Return the farm as it is kept now, and go on from that."""
        with told(self._name), self._engine.connect() as connection:
            self._revision = connection.execute(select(_META.c.revision)).scalar_one()
            return read_farm(connection, self._name)

    def held(self) -> tuple[Hold, ...]:
        """Return the days that places are held, as they are kept."""
        with told(self._name), damage_told(self._name), self._engine.connect() as connection:
            return read_holds(connection)

    def acts(self) -> tuple[ActEntry, ...]:
        """Return every act that is kept, oldest first."""
        with told(self._name), damage_told(self._name), self._engine.connect() as connection:
            return history.read_acts(connection)

    def change_set(self, seq: int) -> ChangeSet:
        """Return what one act changed; raises `ChangedElsewhereError` when the history is another by now."""
        with told(self._name), damage_told(self._name), self._engine.connect() as connection:
            if connection.execute(select(_META.c.revision)).scalar_one() != self._revision:
                raise self._changed_elsewhere()
            return history.read_change_set(connection, seq)

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
        """Carry out one act in one transaction.

        `holds` are those of every placement whose days are new, `freed` the placements that hold
        nothing any more, `at` the moment of the act, `who` the person. For undo, `change_set` is already
        turned; `seq` names the act to take back or to do once more, the last one when it is None.

        Raises:
            ChangedElsewhereError: somebody else changed the farm since it was loaded.
            HeldPlaceError: a place would be held twice on one day.
            NoSuchFarmError: the file was deleted, moved or replaced while it was open.
            StoreError: it could not be kept; then nothing of it is.
        """
        if self._path is not None and file_number(self._path) != self._file:
            # The system would let us write on into a file that has no name any more.
            raise _gone(self._name)
        with told(self._name), self._engine.begin() as connection:
            self._take_turn(connection)
            write_changes(connection, change_set, holds, freed)
            by = By(at=at, who=who, shared=self.shared)
            history.write_act(connection, change_set, kind=kind, by=by, last=seq)
        self._revision += 1

    @contextmanager
    def alone(self) -> Iterator[None]:
        """Let nobody else act on a shared farm meanwhile, for a desk that others keep overtaking."""
        if not self.shared:
            yield
            return
        with told(self._name), self._engine.connect() as connection:
            connection.execute(select(func.pg_advisory_lock(_TURN)))
            self._is_alone = True
            try:
                yield
            finally:
                self._is_alone = False
                connection.execute(select(func.pg_advisory_unlock(_TURN)))

    def _take_turn(self, connection: Connection) -> None:
        """Claim the next revision; first of all, so that two programs queue up instead of clashing."""
        if self.shared and not self._is_alone:
            connection.execute(select(func.pg_advisory_xact_lock(_TURN)))
        next_one = update(_META).where(_META.c.revision == self._revision).values(revision=self._revision + 1)
        if connection.execute(next_one).rowcount != 1:
            raise self._changed_elsewhere()

    def _changed_elsewhere(self) -> ChangedElsewhereError:
        return ChangedElsewhereError(
            f"{self._name} was changed by somebody else since it was opened here. "
            "Nothing was overwritten; open it again to see their changes, then repeat yours."
        )

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
        if self._path is None:
            with self._engine.connect() as connection:
                farm, holds = read_farm(connection, self._name), read_holds(connection)
                acts = history.read_rows(connection)
            _write_file(part, farm, holds, name=part.name, acts=acts)
            return
        raw = self._engine.raw_connection()
        try:
            assert isinstance(raw.driver_connection, sqlite3.Connection)
            write_copy(raw.driver_connection, part)
        finally:
            raw.close()

    def close(self) -> None:
        """Let go of the farm; the journal is folded into the file."""
        self._engine.dispose()

    def __enter__(self) -> Self:
        return self

    def __exit__(
        self, kind: type[BaseException] | None, error: BaseException | None, trace: TracebackType | None
    ) -> None:
        self.close()

    def _read_revision(self) -> int:
        with told(self._name), self._engine.connect() as connection:
            return int(connection.execute(select(_META.c.revision)).scalar_one())


def _gone(name: str) -> NoSuchFarmError:
    return NoSuchFarmError(
        f"{name} was deleted, moved or replaced while it was open here. Nothing was changed; "
        "save a copy of the farm, then go on there."
    )


def _server_name(engine: Engine) -> str:
    return engine.url.database or "the database"


@contextmanager
def _let_go_on_error(engine: Engine) -> Iterator[None]:
    """Close the connections of a farm that turns out not to be usable."""
    try:
        yield
    except BaseException:
        engine.dispose()
        raise


def _check_server(engine: Engine, connection: Connection, name: str) -> None:
    """See that a database holds a farm that this program knows, and bring older tables up to date."""
    if not engine.dialect.has_table(connection, _META.name):
        raise NoSuchFarmError(f"{name} holds no farm.")
    version = connection.execute(select(_META.c.schema_version)).scalar_one()
    if version > CURRENT_VERSION:
        raise NewerFarmError(f"{name} was made by a newer version of this program. Use that one.")
    if version < CURRENT_VERSION:
        take_steps_on_server(connection, version)


def _write_file(
    part: Path, farm: Farm, holds: Iterable[Hold], *, name: str, acts: Sequence[Row] = ()
) -> None:
    with closing(sqlite3.connect(part, isolation_level=None)) as connection:
        make_file_tables(connection, name)
    engine = file_engine(part)
    try:
        with engine.begin() as connection_to_fill:
            write_farm(connection_to_fill, farm, holds)
            history.write_rows(connection_to_fill, acts)
    finally:
        engine.dispose()
