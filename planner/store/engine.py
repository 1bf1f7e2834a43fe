"""Connections to the database: how each is opened, and what is switched on for its safety."""

from __future__ import annotations

import sqlite3
from pathlib import Path
from typing import Any, Final

from sqlalchemy import URL, Engine, create_engine, event
from sqlalchemy.engine import make_url
from sqlalchemy.exc import ArgumentError

from planner.store.errors import NoSuchFarmError

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


def is_url(where: str | Path) -> bool:
    """Tell whether a farm is named by the URL of a database rather than by a path."""
    return isinstance(where, str) and "://" in where


def file_engine(path: Path) -> Engine:
    """Return an engine with one connection to the farm file at `path`."""
    url = URL.create("sqlite", database=str(path))
    engine = create_engine(url, pool_size=1, max_overflow=0, connect_args={"check_same_thread": False})
    event.listen(engine, "connect", _prepare)
    event.listen(engine, "begin", _begin)
    return engine


def server_engine(url: str) -> Engine:
    """Return an engine for a farm on a database server; raises `StoreError` when none can be reached so."""
    try:
        return create_engine(make_url(url), pool_size=1, max_overflow=0, pool_pre_ping=True)
    except ArgumentError as error:
        raise NoSuchFarmError("The address of the database is not one that can be read.") from error
    except ModuleNotFoundError as error:
        raise NoSuchFarmError(
            f"Farms on a database server need {error.name}, which is not installed here."
        ) from error


def _prepare(connection: sqlite3.Connection, _record: Any) -> None:
    """Leave transactions to us, and switch on what keeps the file whole."""
    connection.isolation_level = None
    for pragma in _PRAGMAS:
        connection.execute(pragma)


def _begin(connection: Any) -> None:
    connection.exec_driver_sql("BEGIN")
