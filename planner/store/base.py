"""What all tables share: one catalogue of them, in which every constraint has a name."""

from __future__ import annotations

from typing import Any, ClassVar, Final

from sqlalchemy import MetaData, Table
from sqlalchemy.orm import DeclarativeBase

_NAMING: Final = {
    "pk": "pk_%(table_name)s",
    "fk": "fk_%(table_name)s_%(column_0_name)s",
    "ix": "ix_%(table_name)s_%(column_0_name)s",
    "uq": "uq_%(table_name)s_%(column_0_name)s",
    "ck": "ck_%(table_name)s_%(constraint_name)s",
}


class Base(DeclarativeBase):
    """What all records share: one catalogue of tables, in which every constraint has a name."""

    metadata = MetaData(naming_convention=_NAMING)
    owner: ClassVar[type[Any] | None] = None
    """Class of the farm value that a row of the table is."""


def table(record: type[Base]) -> Table:
    """Return the table of a mapping."""
    found = record.__table__
    assert isinstance(found, Table)
    return found
