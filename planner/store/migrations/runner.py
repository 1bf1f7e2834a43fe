"""Brings a farm file up to date: copies it first, then takes every step in one transaction."""

from __future__ import annotations

import shutil
import sqlite3
from collections.abc import Callable, Sequence
from contextlib import closing
from dataclasses import dataclass
from pathlib import Path
from typing import TYPE_CHECKING, Final

from planner.store.copying import fold_in
from planner.store.errors import DamagedFarmError, NewerFarmError, NotAFarmError
from planner.store.migrations import m0001_first, m0002_who, m0003_log, m0004_meters, m0005_rule
from planner.store.sqlite_file import APPLICATION_ID

if TYPE_CHECKING:
    from sqlalchemy import Connection


@dataclass(frozen=True, slots=True, kw_only=True)
class Migration:
    """One step: the version it leads to, and what it does in a file and on a database server."""

    version: int
    title: str
    migrate: Callable[[sqlite3.Connection], None]
    migrate_on_server: Callable[[Connection], None] | None = None


MIGRATIONS: Final = (
    Migration(version=m0001_first.VERSION, title=m0001_first.TITLE, migrate=m0001_first.migrate),
    Migration(
        version=m0002_who.VERSION,
        title=m0002_who.TITLE,
        migrate=m0002_who.migrate,
        migrate_on_server=m0002_who.migrate_on_server,
    ),
    Migration(
        version=m0003_log.VERSION,
        title=m0003_log.TITLE,
        migrate=m0003_log.migrate,
        migrate_on_server=m0003_log.migrate_on_server,
    ),
    Migration(
        version=m0004_meters.VERSION,
        title=m0004_meters.TITLE,
        migrate=m0004_meters.migrate,
        migrate_on_server=m0004_meters.migrate_on_server,
    ),
    Migration(
        version=m0005_rule.VERSION,
        title=m0005_rule.TITLE,
        migrate=m0005_rule.migrate,
        migrate_on_server=m0005_rule.migrate_on_server,
    ),
)
"""Every step, oldest first."""

CURRENT_VERSION: Final = MIGRATIONS[-1].version


def version_of(connection: sqlite3.Connection, where: str) -> int:
    """Return the version of the tables in a file; raises `NotAFarmError` when it is no farm."""
    (mark,) = connection.execute("PRAGMA application_id").fetchone()
    if mark != APPLICATION_ID:
        raise NotAFarmError(f"{where} is not a farm file.")
    (version,) = connection.execute("PRAGMA user_version").fetchone()
    return int(version)


def bring_up_to_date(path: Path, *, steps: Sequence[Migration] = MIGRATIONS) -> Path | None:
    """Take all steps a farm file still lacks; return where the copy of the old file is, if any was made.

    Raises `NewerFarmError` when the file is ahead of this program; it is then left as it is.
    """
    with closing(sqlite3.connect(path, timeout=0, isolation_level=None)) as connection:
        version = version_of(connection, path.name)
        newest = steps[-1].version
        if version > newest:
            raise NewerFarmError(
                f"{path.name} was saved by a newer version of this program (file version {version}; this "
                f"program reads up to {newest}). Open it with the newer program; the file was not changed."
            )
        if version == newest:
            return None
        kept = _copy_beside(connection, path, version)
        take_steps(connection, [step for step in steps if step.version > version], where=path.name)
    return kept


def take_steps(connection: sqlite3.Connection, steps: Sequence[Migration], *, where: str) -> None:
    """Take steps in one transaction: either all of them stand afterwards, or none."""
    connection.execute("PRAGMA foreign_keys = OFF")
    connection.execute("BEGIN IMMEDIATE")
    try:
        for step in steps:
            step.migrate(connection)
            connection.execute(f"PRAGMA user_version = {step.version:d}")
            connection.execute("UPDATE meta SET schema_version = ?", (step.version,))
        _check_references(connection, where)
        connection.execute("COMMIT")
    except BaseException:
        connection.execute("ROLLBACK")
        raise
    connection.execute("PRAGMA foreign_keys = ON")


def take_steps_on_server(connection: Connection, version: int) -> None:
    """Take all steps that the tables on a database server still lack, in the transaction that is open."""
    for step in MIGRATIONS:
        if step.version > version and step.migrate_on_server is not None:
            step.migrate_on_server(connection)
            connection.exec_driver_sql("UPDATE meta SET schema_version = %s", (step.version,))


def _check_references(connection: sqlite3.Connection, where: str) -> None:
    if connection.execute("PRAGMA foreign_key_check").fetchone() is not None:
        raise DamagedFarmError(
            f"{where} could not be brought up to date: things in it refer to others that are not there. "
            "The file was not changed."
        )


def _copy_beside(connection: sqlite3.Connection, path: Path, version: int) -> Path:
    """Keep the file as it was, under a name that is still free."""
    fold_in(connection, path, purpose="brought up to date")
    number, kept = 1, path.with_name(f"{path.stem}.version-{version}{path.suffix}")
    while kept.exists():
        number += 1
        kept = path.with_name(f"{path.stem}.version-{version}-{number}{path.suffix}")
    shutil.copy2(path, kept)
    return kept
