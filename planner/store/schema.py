"""Whether a farm file has the tables it should have, and how a new one gets them."""

from __future__ import annotations

import re
import sqlite3
from contextlib import closing
from hashlib import sha256
from typing import Final

from planner.store.errors import DamagedFarmError
from planner.store.migrations.runner import CURRENT_VERSION, MIGRATIONS, take_steps
from planner.store.sqlite_file import APPLICATION_ID

Schema = frozenset[tuple[str, str, str]]
"""Type, name and normalised statement of every table, index, trigger and view."""

CURRENT_MARK: Final = "b94e87ea40be3ed9a8b19205971a80e29d7f27dd35222898323f64c4b95dbb41"
"""Fingerprint of what the migrations lead to, so that an opening need not take them; a test compares."""

_SPACE: Final = re.compile(r"\s+")
_SELECT: Final = (
    "SELECT type, name, sql FROM sqlite_master WHERE sql IS NOT NULL AND name NOT LIKE 'sqlite_%'"
)


def make_file_tables(connection: sqlite3.Connection, where: str) -> None:
    """Make the tables of the current version in an empty SQLite file and mark it as a farm."""
    connection.execute(f"PRAGMA application_id = {APPLICATION_ID:d}")
    take_steps(connection, MIGRATIONS, where=where)


def schema_of(connection: sqlite3.Connection) -> Schema:
    """Return what tables, indexes, triggers and views a SQLite file has."""
    rows = connection.execute(_SELECT)
    return frozenset((kind, name, _SPACE.sub(" ", sql.replace('"', "")).strip()) for kind, name, sql in rows)


def schema_of_steps() -> Schema:
    """Return what the migrations lead to."""
    with closing(sqlite3.connect(":memory:", isolation_level=None)) as connection:
        take_steps(connection, MIGRATIONS, where="")
        return schema_of(connection)


def mark_of(schema: Schema) -> str:
    """Return a fingerprint of a schema."""
    return sha256(repr(sorted(schema)).encode()).hexdigest()


def check_schema(connection: sqlite3.Connection, where: str) -> None:
    """Raise `DamagedFarmError` unless a file has exactly our tables, with the guard and nothing that runs."""
    found = schema_of(connection)
    if mark_of(found) == CURRENT_MARK:
        return
    wanted = schema_of_steps()
    if found == wanted:
        return
    names = sorted({name for _, name, _ in found ^ wanted})
    raise DamagedFarmError(
        f"{where} does not have the tables of a farm file of version {CURRENT_VERSION} "
        f"(different: {', '.join(names)}). Open a backup instead."
    )
