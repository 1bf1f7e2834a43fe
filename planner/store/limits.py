"""CHECK constraints made from the limits that the farm's values declare, so that none is written twice."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import date
from typing import Any

from sqlalchemy import CheckConstraint

from planner.farm.fields import FieldKind, FieldSpec, specs_of


def limit_checks(owner: type[Any]) -> tuple[CheckConstraint, ...]:
    """Return a named CHECK for every field of a value class that has limits."""
    return tuple(
        CheckConstraint(text, name=f"{field}_limits")
        for field, spec in specs_of(owner).items()
        for text in _rules(f'"{field}"', spec)
    )


def date_check(column: str) -> str:
    """Return the rule that a column holds a plain ISO 8601 date and nothing that merely looks like one.

    Dates are compared as text in SQLite; any other spelling would slip past the guard. What is no
    date at all makes the comparison unknown, which a CHECK by itself would let pass.
    """
    return f"{column} IS NULL OR ({column} = date({column})) IS TRUE"


def _rules(column: str, spec: FieldSpec) -> Iterator[str]:
    if spec.kind is FieldKind.DAY:
        assert isinstance(spec.low, date)
        assert isinstance(spec.high, date)
        low, high = spec.low.isoformat(), spec.high.isoformat()
        yield f"({date_check(column)}) AND {column} BETWEEN '{low}' AND '{high}'"
    elif spec.kind in (FieldKind.NUMBER, FieldKind.WHOLE):
        yield f"{column} BETWEEN {spec.low!r} AND {spec.high!r}"
    elif spec.kind is FieldKind.NAME:
        yield f"trim({column}) <> '' AND length({column}) <= {spec.length}"
    elif spec.kind in (FieldKind.TEXT, FieldKind.KEY):
        yield f"length({column}) <= {spec.length}"
