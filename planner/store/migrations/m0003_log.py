"""Version 3: the log of what really happened.

The statements stand in the SQL file of the same name, with a blank line between them.
"""

from __future__ import annotations

import sqlite3
from typing import TYPE_CHECKING, Final

from planner.store.migrations.written import statements_in

if TYPE_CHECKING:
    from sqlalchemy import Connection

VERSION: Final = 3
TITLE: Final = "Log of what happened"


def migrate(connection: sqlite3.Connection) -> None:
    """Make the table and its indexes in a file."""
    for statement in statements_in("m0003_log.sql"):
        connection.execute(statement)


def migrate_on_server(connection: Connection) -> None:
    """Make the table and its indexes on a database server."""
    for statement in statements_in("m0003_log_server.sql"):
        connection.exec_driver_sql(statement)
