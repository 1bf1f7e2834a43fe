"""The guard in the database itself: no place is held by two batches on one day, whoever writes.

SQLite gets two triggers, PostgreSQL an exclusion constraint. Both compare runs of places on one unit
of a bed and the days they are held; a run without dates holds nothing.
"""

from __future__ import annotations

import sqlite3
from typing import Any, Final

from sqlalchemy import DDL, Connection, MetaData, create_engine, event, insert
from sqlalchemy.pool import StaticPool

from planner.store.base import Base
from planner.store.errors import HELD_PLACE
from planner.store.migrations.runner import CURRENT_VERSION
from planner.store.records import MetaRecord, PlacementRecord
from planner.store.schema import Schema, schema_of

_GUARDED_COLUMNS: Final = "id, bed, unit, first, count, held_from, held_until"

# The words of the refusal are told apart from every other by their beginning, `HELD_PLACE`.
_TRIGGER: Final = """CREATE TRIGGER placement_guard_{name} BEFORE {event} ON placement
WHEN NEW.held_from IS NOT NULL
BEGIN
  SELECT RAISE(ABORT, '{refusal}: two batches would stand there on one day')
  WHERE EXISTS (
    SELECT 1 FROM placement AS other
    WHERE other.bed = NEW.bed AND other.unit = NEW.unit AND other.id <> {itself}
      AND other.first < NEW.first + NEW.count AND NEW.first < other.first + other.count
      AND other.held_from < NEW.held_until AND NEW.held_from < other.held_until
  );
END"""

_EXCLUSION: Final = (
    "ALTER TABLE placement ADD CONSTRAINT ex_placement_held EXCLUDE USING gist ("
    "bed WITH =, unit WITH =, int4range(first, first + count) WITH &&, "
    "daterange(held_from, held_until) WITH &&) WHERE (held_from IS NOT NULL)"
)


def sqlite_guard() -> tuple[str, ...]:
    """Return the statements that set up the guard in SQLite."""
    return (
        _TRIGGER.format(name="insert", event="INSERT", refusal=HELD_PLACE, itself="NEW.id"),
        _TRIGGER.format(
            name="update", event=f"UPDATE OF {_GUARDED_COLUMNS}", refusal=HELD_PLACE, itself="OLD.id"
        ),
    )


def postgresql_guard() -> tuple[str, ...]:
    """Return the statements that set up the guard in PostgreSQL."""
    return (
        "CREATE EXTENSION IF NOT EXISTS btree_gist",
        _EXCLUSION,
    )


def _guarded(tables: MetaData) -> MetaData:
    """Let the guard be made along with the tables, each on its own kind of database."""
    for dialect, statements in (("sqlite", sqlite_guard()), ("postgresql", postgresql_guard())):
        for statement in statements:
            make: Any = DDL
            ddl = make(statement.replace("%", "%%")).execute_if(dialect=dialect)
            event.listen(PlacementRecord.__table__, "after_create", ddl)
    return tables


GUARDED_TABLES: Final = _guarded(Base.metadata)
"""All tables, with the guard."""


def make_server_tables(connection: Connection) -> None:
    """Make the tables of the current version, with their guard, on a database server."""
    GUARDED_TABLES.create_all(connection)
    connection.execute(insert(MetaRecord).values(id=1, schema_version=CURRENT_VERSION, revision=0))


def schema_of_records() -> Schema:
    """Return what the mappings ask for."""
    engine = create_engine("sqlite://", poolclass=StaticPool)
    GUARDED_TABLES.create_all(engine)
    connection = engine.raw_connection()
    try:
        assert isinstance(connection.driver_connection, sqlite3.Connection)
        return schema_of(connection.driver_connection)
    finally:
        connection.close()
        engine.dispose()
