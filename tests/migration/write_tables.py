"""Prints the statements the mappings ask for, to write a step from: python -m tests.migration.write_tables

As long as version 1 has not been given to anybody, `m0001_first.sql` may be written anew from it (and
the sample file made anew); from then on every change to the mappings is a step of its own.
"""

from collections.abc import Iterator

from sqlalchemy.dialects import sqlite
from sqlalchemy.schema import CreateIndex, CreateTable, ExecutableDDLElement

from planner.store.base import Base
from planner.store.guard import sqlite_guard


def statements() -> Iterator[str]:
    """Yield every table with its indexes, owners first, then the guard."""
    for table in Base.metadata.sorted_tables:
        yield _text(CreateTable(table))
        for index in sorted(table.indexes, key=lambda index: str(index.name)):
            yield _text(CreateIndex(index))
    yield from sqlite_guard()


def _text(element: ExecutableDDLElement) -> str:
    """Return a statement without blank lines, which part one statement from the next."""
    lines = str(element.compile(dialect=sqlite.dialect())).replace("\t", "    ").splitlines()
    return "\n".join(line.rstrip() for line in lines if line.strip())


if __name__ == "__main__":
    print("\n\n".join(statements()))  # noqa: T201 - printing is what it is for
