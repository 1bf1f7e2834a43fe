"""Rows of the tables to farm values and back.

Bulk reading goes from column selects straight into the dataclasses: mapped objects would take ten
times as long for a plan of twenty thousand batches.
"""

from __future__ import annotations

import gc
from collections.abc import Iterator, Mapping, Sequence
from contextlib import contextmanager
from functools import cache
from typing import Any

from sqlalchemy import Connection, select

from planner.farm.farm import KINDS, SETTINGS_KIND, Farm, OwnEntry, Thing, kind_named, kind_of
from planner.farm.fields import Id, specs_of
from planner.farm.holds import Hold
from planner.store.base import table
from planner.store.errors import DamagedFarmError
from planner.store.records import OwnValueRecord, PlacementRecord, table_of

VALUES = "values"
"""The one field that lies in a table of its own."""

Row = dict[str, Any]


@contextmanager
def gc_paused() -> Iterator[None]:
    """Keep the cyclic collector from looking through thousands of new values that hold no cycles."""
    was_on = gc.isenabled()
    gc.disable()
    try:
        yield
    finally:
        if was_on:
            gc.enable()


@cache
def field_names(word: str) -> tuple[str, ...]:
    """Return the fields of a kind that are columns of its table."""
    return tuple(field for field in specs_of(kind_named(word).owner) if field != VALUES)


def read_farm(connection: Connection, where: str) -> Farm:
    """Return the farm in the database; raises `DamagedFarmError` for rows that are no values."""
    with gc_paused(), damage_told(where):
        settings = read_things(connection, SETTINGS_KIND.word)
        if len(settings) != 1:
            raise DamagedFarmError(f"{where} is damaged: it says {len(settings)} times what the farm is.")
        many: dict[str, Any] = {kind.place: read_things(connection, kind.word) for kind in KINDS}
        return Farm(settings=settings[0], **many)


@contextmanager
def damage_told(where: str) -> Iterator[None]:
    """Turn the failure to make a value from a row into a `DamagedFarmError`."""
    try:
        yield
    except (ValueError, TypeError, LookupError) as error:
        raise DamagedFarmError(f"{where} is damaged: {error}. Open the latest backup instead.") from error


def read_things(connection: Connection, word: str) -> tuple[Any, ...]:
    """Return all things of one kind, in order, by one query."""
    owner, has, names = kind_named(word).owner, table_of(word).c, field_names(word)
    query = select(*(has[name] for name in names))
    if "position" in has:
        query = query.order_by(has.position, has.id)
    rows = connection.execute(query).all()
    if owner is OwnEntry:
        values = _read_values(connection)
        return tuple(
            OwnEntry(**dict(zip(names, row, strict=True)), values=tuple(values.get(row[0], ())))
            for row in rows
        )
    return tuple([owner(**dict(zip(names, row, strict=True))) for row in rows])


def _read_values(connection: Connection) -> Mapping[Id, list[tuple[str, Any]]]:
    """Return the figures of all own entries: the column that is not empty holds the value."""
    has = table(OwnValueRecord).c
    found: dict[Id, list[tuple[str, Any]]] = {}
    query = select(has.entry, has.name, has.number, has.text, has.yes_no)
    for entry, name, *kinds in connection.execute(query.order_by(has.entry, has.position)):
        value = next((kind for kind in kinds if kind is not None), "")
        found.setdefault(entry, []).append((name, value))
    return found


def read_holds(connection: Connection) -> tuple[Hold, ...]:
    """Return the days that placements are held, as they are kept."""
    has = table(PlacementRecord).c
    columns = (has.id, has.batch, has.bed, has.unit, has.first, has.count, has.held_from, has.held_until)
    query = select(*columns).where(has.held_from.is_not(None))
    return tuple(
        Hold(
            placement=row[0],
            batch=row[1],
            bed=row[2],
            unit=row[3],
            first=row[4],
            last=row[4] + row[5] - 1,
            from_on=row[6],
            until_on=row[7],
        )
        for row in connection.execute(query).all()
    )


def row_of(thing: Thing) -> Row:
    """Return the columns of a thing, without its position and what is held."""
    return {name: getattr(thing, name) for name in field_names(kind_of(thing).word)}


def value_rows(entries: Sequence[OwnEntry]) -> list[Row]:
    """Return the rows of the figures of own entries."""
    return [
        {"entry": entry.id, "position": position, "name": name, **_value_columns(value)}
        for entry in entries
        for position, (name, value) in enumerate(entry.values)
    ]


def _value_columns(value: float | str | bool) -> Row:
    columns: Row = {"number": None, "text": None, "yes_no": None}
    if isinstance(value, bool):
        columns["yes_no"] = value
    elif isinstance(value, str):
        columns["text"] = value
    else:
        columns["number"] = float(value)
    return columns
