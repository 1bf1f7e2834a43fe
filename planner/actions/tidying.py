"""Brings the numbers of a change into the one form they are kept in, so that memory and file agree."""

from __future__ import annotations

import dataclasses
from typing import Any

from planner.farm.changes import ChangeSet
from planner.farm.farm import Thing
from planner.farm.fields import FieldKind, specs_of


def tidied(change_set: ChangeSet) -> ChangeSet:
    """Return the set with every number a float, and without changes that change nothing."""
    changes = tuple(
        dataclasses.replace(change, after=_tidied_thing(change.after)) for change in change_set.changes
    )
    return dataclasses.replace(change_set, changes=tuple(c for c in changes if c.before != c.after))


def _tidied_thing(thing: Thing | None) -> Any:
    if thing is None:
        return None
    tidy: dict[str, Any] = {}
    for field, spec in specs_of(type(thing)).items():
        value = getattr(thing, field)
        if spec.kind is FieldKind.NUMBER:
            tidy[field] = _number(value)
        elif spec.kind is FieldKind.SERIES:
            tidy[field] = tuple(_number(entry) for entry in value)
        elif spec.kind is FieldKind.PAIRS:
            tidy[field] = tuple((name, _number(entry)) for name, entry in value)
    return dataclasses.replace(thing, **tidy)


def _number(value: Any) -> Any:
    """Return a number as a float without the sign of zero; anything else as it is."""
    if isinstance(value, bool) or not isinstance(value, int | float):
        return value
    return float(value) + 0.0
