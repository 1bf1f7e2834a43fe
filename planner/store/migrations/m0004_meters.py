"""Version 4: meters, more of seed lots, times of readings, and what the log tells of them.

The statements stand in the SQL file of the same name, with a blank line between them.
"""

from __future__ import annotations

import sqlite3
from typing import TYPE_CHECKING, Final

from planner.store.migrations.written import statements_in

if TYPE_CHECKING:
    from sqlalchemy import Connection

VERSION: Final = 4
TITLE: Final = "Meters, seed lots, treated fish"


def migrate(connection: sqlite3.Connection) -> None:
    """Make the new tables in a file; what was in the old ones goes along."""
    for statement in statements_in("m0004_meters.sql"):
        connection.execute(statement)


def migrate_on_server(connection: Connection) -> None:
    """Add the new columns and tables on a database server."""
    for statement in statements_in("m0004_meters_server.sql"):
        connection.exec_driver_sql(statement)
