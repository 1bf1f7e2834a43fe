"""Puts a whole file in its place at once: written beside it, made safe on disk, then renamed."""

from __future__ import annotations

import os
import sqlite3
from collections.abc import Callable
from contextlib import closing
from pathlib import Path

from planner.store.errors import PRIMARY_CODE, FarmInUseError, NotAFarmError
from planner.store.sqlite_file import is_farm_file


def put_in_place(path: Path, make: Callable[[Path], None]) -> None:
    """Let `make` write a new file, then put it at `path` in one step.

    Whatever happens in between, `path` is either as it was or complete. A farm that is there already
    is replaced, unless a program has it open; any other file is left alone.
    """
    release_old(path)
    part = path.with_name(f".{path.name}.part")
    _clear(part)
    try:
        make(part)
        _sync(part)
        part.replace(path)
        _sync(path.parent)
    finally:
        _clear(part)


def _clear(part: Path) -> None:
    """Remove an unfinished file with the journals that a killed program may have left beside it."""
    for ending in ("", "-wal", "-shm", "-journal"):
        part.with_name(part.name + ending).unlink(missing_ok=True)


def release_old(path: Path) -> None:
    """See that a file may be replaced, and fold its journal in, so that none is left over.

    Raises `FarmInUseError` when a program has it open, `NotAFarmError` when it is something else.
    """
    if not path.exists():
        return
    if not is_farm_file(path):
        raise NotAFarmError(f"{path.name} is there already and is not a farm file. Choose another name.")
    with closing(sqlite3.connect(path, timeout=0, isolation_level=None)) as connection:
        fold_in(connection, path, purpose="replaced")


def fold_in(connection: sqlite3.Connection, path: Path, *, purpose: str) -> None:
    """Fold the journal of a file into it, so that the file alone is the farm.

    Only works for the sole program that has it open; raises `FarmInUseError` when there is another.
    """
    try:
        connection.execute("PRAGMA journal_mode = DELETE")
    except sqlite3.OperationalError as error:
        if error.sqlite_errorcode & PRIMARY_CODE not in (sqlite3.SQLITE_BUSY, sqlite3.SQLITE_LOCKED):
            raise
        raise FarmInUseError(
            f"{path.name} is open in a program and cannot be {purpose}. Close it there first."
        ) from error


def _sync(path: Path) -> None:
    """Wait until the disk has what was written; folders cannot be waited for everywhere."""
    if path.is_dir() and os.name == "nt":
        return
    handle = os.open(path, os.O_RDONLY)
    try:
        os.fsync(handle)
    finally:
        os.close(handle)
