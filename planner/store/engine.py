"""Connections to the database: how each is opened, and what is switched on for its safety."""

from __future__ import annotations

import sqlite3
from pathlib import Path
from typing import Any

from sqlalchemy import URL, Engine, create_engine, event

from planner.store.sqlite_file import prepare


def file_engine(path: Path) -> Engine:
    """Return an engine with one connection to the farm file at `path`."""
    url = URL.create("sqlite", database=str(path))
    engine = create_engine(url, pool_size=1, max_overflow=0, connect_args={"check_same_thread": False})
    event.listen(engine, "connect", _prepare)
    event.listen(engine, "begin", _begin)
    return engine


def _prepare(connection: sqlite3.Connection, _record: Any) -> None:
    prepare(connection)


def _begin(connection: Any) -> None:
    connection.exec_driver_sql("BEGIN")
