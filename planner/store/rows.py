"""Farm values straight from the rows of a farm file, with the driver alone.

How a value lies in its column follows from the field it is: the mappings say the same to their library, and a
test compares the two on farms of every kind. Reading like this needs no library, so that a farm can be shown
before that is read in.
"""

from __future__ import annotations

import sqlite3
import typing
from collections.abc import Callable
from datetime import UTC, date, datetime
from enum import Enum
from functools import cache, partial
from typing import Any, Final

from planner.farm.farm import SETTINGS_KIND, Farm, kind_named
from planner.farm.fields import NO_ID, FieldKind, Id, specs_of
from planner.farm.holds import Hold
from planner.store.acts import ActEntry, ActState
from planner.store.plain import farm_of, field_names, numbers_from, things_from

Reader = Callable[[Any], Any]
_OWN_VALUES: Final = "SELECT entry, name, number, text, yes_no FROM own_value ORDER BY entry, position"
_HOLDS: Final = (
    "SELECT id, batch, bed, unit, first, first + count - 1, held_from, held_until FROM placement "
    "WHERE held_from IS NOT NULL"
)
_ACTS: Final = "SELECT seq, title, at, state, who FROM act ORDER BY seq"


def farm_in(connection: sqlite3.Connection, where: str) -> Farm:
    """Return the farm in a file; raises `DamagedFarmError` for rows that are no values."""
    return farm_of(partial(_things_in, connection), where)


def _things_in(connection: sqlite3.Connection, word: str) -> tuple[Any, ...]:
    order = "" if word == SETTINGS_KIND.word else " ORDER BY position, id"
    # Names of tables and columns come from the farm's own classes, never from a file.
    columns = ", ".join(f'"{name}"' for name in field_names(word))
    query = f'SELECT {columns} FROM "{word.replace(" ", "_")}"{order}'  # noqa: S608
    rows = connection.execute(query).fetchall()
    if not rows:
        return ()
    values = [
        column if read is None else map(read, column)
        for read, column in zip(_readers(word), zip(*rows, strict=True), strict=True)
    ]
    return things_from(word, zip(*values, strict=True), partial(_own_values_in, connection))


def _own_values_in(connection: sqlite3.Connection) -> dict[Id, list[tuple[str, Any]]]:
    """Return the figures of all own entries: the column that is not empty holds the value."""
    found: dict[Id, list[tuple[str, Any]]] = {}
    for entry, name, number, text, yes_no in connection.execute(_OWN_VALUES):
        value = next((each for each in (number, text) if each is not None), bool(yes_no))
        found.setdefault(entry, []).append((name, value))
    return found


@cache
def _readers(word: str) -> tuple[Reader | None, ...]:
    """Return how each column of a kind becomes a value; None where it is one already."""
    owner = kind_named(word).owner
    specs, hints = specs_of(owner), typing.get_type_hints(owner)
    return tuple(_reader(specs[name].kind, hints[name]) for name in field_names(word))


def _reader(kind: FieldKind, hint: Any) -> Reader | None:
    if kind is FieldKind.CHOICE:
        return _choice(hint)
    return _BY_KIND.get(kind)


def _choice(hint: Any) -> Reader:
    parts = typing.get_args(hint) or (hint,)
    choices: dict[Any, Enum | None] = {each.value: each for each in next(iter(parts))}
    if len(parts) > 1:
        choices[None] = None
    return choices.__getitem__


def _reference(value: Any) -> Any:
    return NO_ID if value is None else value


def _day(value: Any) -> date | None:
    return None if value is None else date.fromisoformat(value)


_BY_KIND: Final[dict[FieldKind, Reader]] = {
    FieldKind.REFERENCE: _reference,
    FieldKind.DAY: _day,
    FieldKind.YES_NO: bool,
    FieldKind.SERIES: numbers_from,
}


def holds_in(connection: sqlite3.Connection) -> tuple[Hold, ...]:
    """Return the days that placements are held, as they are kept."""
    return tuple(
        Hold(
            placement=placement,
            batch=batch,
            bed=bed,
            unit=unit,
            first=first,
            last=last,
            from_on=date.fromisoformat(from_on),
            until_on=date.fromisoformat(until_on),
        )
        for placement, batch, bed, unit, first, last, from_on, until_on in connection.execute(_HOLDS)
    )


def acts_in(connection: sqlite3.Connection) -> tuple[ActEntry, ...]:
    """Return all acts kept, oldest first."""
    return tuple(
        ActEntry(
            seq=seq,
            title=title,
            at=datetime.fromisoformat(at).replace(tzinfo=UTC),
            state=ActState(state),
            who=who,
        )
        for seq, title, at, state, who in connection.execute(_ACTS)
    )


def revision_in(connection: sqlite3.Connection) -> int:
    """Return how many acts have been kept in all."""
    (revision,) = connection.execute("SELECT revision FROM meta").fetchone()
    return int(revision)
