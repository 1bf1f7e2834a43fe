"""Rows of the tables to farm values and back.

Bulk reading goes from column selects straight into the dataclasses: mapped objects would take ten
times as long for a plan of twenty thousand batches.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from functools import partial
from typing import Any

from sqlalchemy import Connection, select

from planner.farm.farm import Farm, OwnEntry, Thing, kind_of
from planner.farm.fields import Id
from planner.farm.holds import Hold
from planner.store.base import table
from planner.store.plain import farm_of, field_names, things_from
from planner.store.records import OwnValueRecord, PlacementRecord, table_of

Row = dict[str, Any]


def read_farm(connection: Connection, where: str) -> Farm:
    """Return the farm in the database; raises `DamagedFarmError` for rows that are no values."""
    return farm_of(partial(read_things, connection), where)


def read_things(connection: Connection, word: str) -> tuple[Any, ...]:
    """Return all things of one kind, in order, by one query."""
    has = table_of(word).c
    query = select(*(has[name] for name in field_names(word)))
    if "position" in has:
        query = query.order_by(has.position, has.id)
    return things_from(word, connection.execute(query).all(), partial(_read_values, connection))


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
