"""Takes values out of a parsed table, refusing what is missing, unknown or of the wrong type.

Every refusal names file, key and field. Must not know what the values are for.
"""

from __future__ import annotations

from collections.abc import Collection
from dataclasses import dataclass
from math import isfinite
from typing import Any, TypeVar

from planner.catalogue.errors import CatalogueError, known_words
from planner.catalogue.reading import Table

T = TypeVar("T")

_CALLED: dict[type[Any], str] = {str: "text", bool: "true or false", int: "a whole number"}


@dataclass(frozen=True, slots=True, kw_only=True)
class Spot:
    """Where in the files a table stands."""

    file: str
    key: str = ""

    def wrong(self, field: str, message: str) -> CatalogueError:
        """Return the error for a field here; the caller raises it."""
        return CatalogueError(message, file=self.file, key=self.key, field=field)

    def at(self, key: str) -> Spot:
        """Return the spot of another key of the same file."""
        return Spot(file=self.file, key=key)


def refuse_others(table: Table, allowed: Collection[str], spot: Spot) -> None:
    """Refuse a key that is not allowed in a table."""
    for key in table:
        if key not in allowed:
            raise spot.wrong(key, f"is not known here. {known_words(key, allowed)}")


def taken(table: Table, field: str, kind: type[T], spot: Spot) -> T:
    """Return a value of exactly the type asked for; a whole number is no yes or no."""
    if field not in table:
        raise spot.wrong(field, "is missing")
    value = table[field]
    if type(value) is not kind:
        raise spot.wrong(field, f"is {value!r}, but must be {_CALLED.get(kind, kind.__name__)}")
    return value


def number_taken(table: Table, field: str, spot: Spot) -> float:
    """Return a number as a float."""
    if field not in table:
        raise spot.wrong(field, "is missing")
    return as_number(table[field], field, spot)


def as_number(value: Any, field: str, spot: Spot) -> float:
    """Return a whole or broken number as a float; refuse anything else, infinite ones too."""
    if isinstance(value, bool) or not isinstance(value, (int, float)):
        raise spot.wrong(field, f"is {value!r}, but must be a number")
    if not isfinite(value):
        raise spot.wrong(field, f"is {value}, but must be a finite number")
    return float(value)


def texts_taken(table: Table, field: str, spot: Spot) -> tuple[str, ...]:
    """Return a list of texts as a tuple."""
    entries = taken(table, field, list, spot)
    for entry in entries:
        if not isinstance(entry, str):
            raise spot.wrong(field, f"holds {entry!r}, but must be a list of texts")
    return tuple(entries)


def numbers_taken(table: Table, field: str, spot: Spot) -> tuple[float, ...]:
    """Return a list of numbers as a tuple of floats."""
    return tuple(as_number(entry, field, spot) for entry in taken(table, field, list, spot))


def rows_taken(table: Table, field: str, spot: Spot) -> tuple[tuple[float, ...], ...]:
    """Return a list of lists of numbers as a tuple of tuples."""
    rows = taken(table, field, list, spot)
    for row in rows:
        if not isinstance(row, list):
            raise spot.wrong(field, f"holds {row!r}, but must be a list of lists of numbers")
    return tuple(tuple(as_number(entry, field, spot) for entry in row) for row in rows)


def tables_taken(table: Table, field: str, spot: Spot) -> list[Table]:
    """Return a list of tables, at least one."""
    entries = taken(table, field, list, spot)
    if not entries or not all(isinstance(entry, dict) for entry in entries):
        raise spot.wrong(field, "must be one or more tables")
    return entries
