"""Version 5: whose feed-rate ratio a loop goes by, and the rain of a site by month.

The statements stand in the SQL file of the same name, with a blank line between them.
"""

from __future__ import annotations

import sqlite3
from typing import TYPE_CHECKING, Final

from planner.store.migrations.written import statements_in

if TYPE_CHECKING:
    from sqlalchemy import Connection

VERSION: Final = 5
TITLE: Final = "Feed-rate ratio of a loop, rain"


def migrate(connection: sqlite3.Connection) -> None:
    """Make the tables with the new columns in a file; what was in the old ones goes along."""
    for statement in statements_in("m0005_rule.sql"):
        connection.execute(statement)


def migrate_on_server(connection: Connection) -> None:
    """Add the new columns on a database server."""
    for statement in statements_in("m0005_rule_server.sql"):
        connection.exec_driver_sql(statement)
