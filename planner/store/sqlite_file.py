"""What a farm file in SQLite is: its mark, how it is connected to, and the checks before it is read.

Works with the driver alone, so that a farm can be shown before the library of the mappings is read in.
"""

from __future__ import annotations

import sqlite3
from contextlib import closing
from pathlib import Path
from typing import Final

from planner.store.errors import NoSuchFarmError, NotAFarmError

APPLICATION_ID: Final = 0x52414654
"""Marks a SQLite file as a farm of ours; "RAFT" in ASCII."""

_HEADER: Final = b"SQLite format 3\x00"
_BUSY_MS: Final = 5000
_PRAGMAS: Final = (
    "PRAGMA foreign_keys = ON",
    f"PRAGMA busy_timeout = {_BUSY_MS}",
    "PRAGMA journal_mode = WAL",
    "PRAGMA synchronous = NORMAL",
    "PRAGMA trusted_schema = OFF",
    "PRAGMA cell_size_check = ON",
)


def prepare(connection: sqlite3.Connection) -> None:
    """Leave transactions to us, and switch on what keeps the file whole."""
    connection.isolation_level = None
    for pragma in _PRAGMAS:
        connection.execute(pragma)


def is_farm_file(path: Path) -> bool:
    """Tell whether a file is a farm of ours, without opening it as a database when it is none."""
    with path.open("rb") as file:
        if file.read(len(_HEADER)) != _HEADER:
            return False
    with closing(sqlite3.connect(path, timeout=0)) as connection:
        (mark,) = connection.execute("PRAGMA application_id").fetchone()
    return bool(mark == APPLICATION_ID)


def see_that_it_is_a_farm(path: Path) -> None:
    """Raise `NoSuchFarmError` or `NotAFarmError` for a path that leads to no farm file."""
    if not path.exists():
        raise NoSuchFarmError(f"{path.name} is not there. Look for it in another folder, or open a backup.")
    if path.is_dir() or not is_farm_file(path):
        raise NotAFarmError(f"{path.name} is not a farm file.")


def file_number(path: Path) -> tuple[int, int] | None:
    """Return what tells a file from every other one, whatever it is called; None when there is none."""
    try:
        found = path.stat()
    except OSError:
        return None
    return found.st_dev, found.st_ino


def write_copy(connection: sqlite3.Connection, part: Path) -> None:
    """Write all that a connection sees to a new file."""
    connection.execute("VACUUM INTO ?", (str(part),))
