"""Version 2: each act says who did it, so that several people can work on one farm."""

from __future__ import annotations

import sqlite3
from typing import TYPE_CHECKING, Final

if TYPE_CHECKING:
    from sqlalchemy import Connection

VERSION: Final = 2
TITLE: Final = "Who did each act"

# SQLite puts an added column behind the constraints, where the mappings do not have it: made anew.
_STEPS: Final = (
    "ALTER TABLE act RENAME TO older_act",
    """CREATE TABLE act (
    seq INTEGER NOT NULL,
    title TEXT NOT NULL,
    at DATETIME NOT NULL,
    state VARCHAR(40) NOT NULL,
    changes TEXT NOT NULL,
    who TEXT NOT NULL,
    CONSTRAINT pk_act PRIMARY KEY (seq),
    CONSTRAINT ck_act_state CHECK (state IN ('done', 'undone'))
)""",
    """INSERT INTO act (seq, title, at, state, changes, who)
SELECT seq, title, at, state, changes, '' FROM older_act""",
    "DROP TABLE older_act",
)
_ON_SERVER: Final = (
    "ALTER TABLE act ADD COLUMN who TEXT NOT NULL DEFAULT ''",
    "ALTER TABLE act ALTER COLUMN who DROP DEFAULT",
)


def migrate(connection: sqlite3.Connection) -> None:
    """Give every act of a file an empty name."""
    for statement in _STEPS:
        connection.execute(statement)


def migrate_on_server(connection: Connection) -> None:
    """Give every act on a database server an empty name."""
    for statement in _ON_SERVER:
        connection.exec_driver_sql(statement)
