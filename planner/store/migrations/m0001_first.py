"""Version 1: the first tables.

The statements stand in the SQL file of the same name, with a blank line between them. They were
written out once and are kept as they are: later changes to the mappings are steps of their own.
"""

from __future__ import annotations

import sqlite3
from importlib import resources
from typing import Final

VERSION: Final = 1
TITLE: Final = "First tables"


def migrate(connection: sqlite3.Connection) -> None:
    """Make every table, index and trigger, and the one row about the file."""
    text = resources.files(__package__).joinpath("m0001_first.sql").read_text(encoding="utf-8")
    for statement in text.strip().split("\n\n"):
        connection.execute(statement)
    connection.execute("INSERT INTO meta (id, schema_version, revision) VALUES (1, 1, 0)")
