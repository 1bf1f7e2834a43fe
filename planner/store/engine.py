"""Connections to the database: how each is opened, and what is switched on for its safety."""

from __future__ import annotations

import sqlite3
from pathlib import Path
from typing import Any, Final

from sqlalchemy import URL, Engine, create_engine, event

APPLICATION_ID: Final = 0x52414654
"""Marks a SQLite file as a farm of ours; "RAFT" in ASCII."""

_BUSY_MS: Final = 5000
_PRAGMAS: Final = (
    "PRAGMA foreign_keys = ON",
    f"PRAGMA busy_timeout = {_BUSY_MS}",
    "PRAGMA journal_mode = WAL",
    "PRAGMA synchronous = NORMAL",
    "PRAGMA trusted_schema = OFF",
    "PRAGMA cell_size_check = ON",
)


def file_engine(path: Path) -> Engine:
    """Return an engine with one connection to the farm file at `path`."""
    url = URL.create("sqlite", database=str(path))
    engine = create_engine(url, pool_size=1, max_overflow=0, connect_args={"check_same_thread": False})
    event.listen(engine, "connect", _prepare)
    event.listen(engine, "begin", _begin)
    return engine


def _prepare(connection: sqlite3.Connection, _record: Any) -> None:
    """Leave transactions to us, and switch on what keeps the file whole."""
    connection.isolation_level = None
    for pragma in _PRAGMAS:
        connection.execute(pragma)


def _begin(connection: Any) -> None:
    connection.exec_driver_sql("BEGIN")
