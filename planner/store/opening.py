"""Sees to a farm file before anything in it is read: that it is one, of this version, whole and only ours."""

from __future__ import annotations

import sqlite3
from contextlib import closing
from pathlib import Path

from planner.store.errors import DamagedFarmError
from planner.store.migrations.runner import bring_up_to_date
from planner.store.schema import check_schema
from planner.store.sqlite_file import see_that_it_is_a_farm


def see_to_file(path: Path) -> None:
    """Bring an older file up to date, after copying it beside itself, and see that all in it is in order.

    Raises:
        StoreError: it is not there, no farm, newer, or damaged.
    """
    see_that_it_is_a_farm(path)
    bring_up_to_date(path)
    _check_inside(path)


def _check_inside(path: Path) -> None:
    """See that the file is whole and has our tables and triggers and no others."""
    with closing(sqlite3.connect(path)) as connection:
        (said,) = connection.execute("PRAGMA quick_check(1)").fetchone()
        if said != "ok":
            # SQLite tells it over several lines; a sentence of ours is one.
            what = " ".join(said.split())
            raise DamagedFarmError(f"{path.name} is damaged ({what}). Open the latest backup instead.")
        check_schema(connection, path.name)
        if connection.execute("PRAGMA foreign_key_check").fetchone() is not None:
            raise DamagedFarmError(f"{path.name} is damaged: things in it are missing. Open a backup.")
