"""How a farm's values declare themselves: kind, unit and limits of every field, said once.

Reading text, storing, checking and drawing forms all look here, so a limit is never written
twice. Knows nothing of any particular thing on a farm.
"""

from __future__ import annotations

import dataclasses
from dataclasses import dataclass
from datetime import date
from enum import Enum
from typing import Any, Final, NewType

Id = NewType("Id", str)
"""Key of one thing: a UUID in its usual spelling, made by us and never by a database."""

NO_ID: Final = Id("")
"""Stands where a reference is left open."""

SPEC: Final = "spec"
_NAME_LENGTH: Final = 120
_NOTE_LENGTH: Final = 4000
_KEY_LENGTH: Final = 60


class FieldKind(Enum):
    """What sort of value a field holds."""

    ID = "id"
    REFERENCE = "reference"
    NAME = "name"
    TEXT = "text"
    KEY = "key"
    WHOLE = "whole number"
    NUMBER = "number"
    YES_NO = "true or false"
    DAY = "date"
    CHOICE = "choice"
    SERIES = "list of numbers"
    PAIRS = "table of values"


@dataclass(frozen=True, slots=True, kw_only=True)
class FieldSpec:
    """Kind, unit and limits of one field; `None` means no limit.

    `refers_to` names the kind of thing an id points at (see `planner.farm.kinds`), `catalogue`
    the shelf of the catalogue a key is looked up in. `length` is the longest text, or the exact
    number of entries of a series that is not empty. Only `many_lines` may hold line breaks.
    """

    kind: FieldKind
    low: float | date | None = None
    high: float | date | None = None
    unit: str = ""
    length: int | None = None
    refers_to: str = ""
    catalogue: str = ""
    needed: bool = False
    may_be_none: bool = False
    many_lines: bool = False
    meaning: str = ""


def spec_of(field: dataclasses.Field[Any]) -> FieldSpec:
    """Return the declared `FieldSpec` of a dataclass field."""
    spec = field.metadata[SPEC]
    assert isinstance(spec, FieldSpec)
    return spec


def specs_of(owner: type[Any]) -> dict[str, FieldSpec]:
    """Return field name -> `FieldSpec` for a value class, in the order of declaration."""
    return {field.name: spec_of(field) for field in dataclasses.fields(owner)}


def _declare(spec: FieldSpec, default: Any) -> Any:
    if default is dataclasses.MISSING:
        return dataclasses.field(metadata={SPEC: dataclasses.replace(spec, needed=True)})
    return dataclasses.field(default=default, metadata={SPEC: spec})


def own_id() -> Any:
    """Declare the key of the thing itself."""
    return _declare(FieldSpec(kind=FieldKind.ID), dataclasses.MISSING)


def reference(refers_to: str, *, default: Any = dataclasses.MISSING, meaning: str = "") -> Any:
    """Declare a reference to another thing of the farm."""
    return _declare(FieldSpec(kind=FieldKind.REFERENCE, refers_to=refers_to, meaning=meaning), default)


def name(*, default: Any = dataclasses.MISSING, meaning: str = "") -> Any:
    """Declare a name: one line of text that is not empty."""
    return _declare(FieldSpec(kind=FieldKind.NAME, length=_NAME_LENGTH, meaning=meaning), default)


def text(*, default: Any = "", length: int = _NOTE_LENGTH, meaning: str = "") -> Any:
    """Declare free text, which may be empty; a shorter one than notes is a single line."""
    notes = length == _NOTE_LENGTH
    spec = FieldSpec(kind=FieldKind.TEXT, length=length, meaning=meaning, many_lines=notes)
    return _declare(spec, default)


def key(catalogue: str, *, default: Any = dataclasses.MISSING, meaning: str = "") -> Any:
    """Declare the key of an entry on a shelf of the catalogue."""
    spec = FieldSpec(kind=FieldKind.KEY, catalogue=catalogue, length=_KEY_LENGTH, meaning=meaning)
    return _declare(spec, default)


def whole(
    low: int, high: int, *, unit: str = "", default: Any = dataclasses.MISSING, meaning: str = ""
) -> Any:
    """Declare a whole number from `low` to `high`."""
    spec = FieldSpec(
        kind=FieldKind.WHOLE, low=low, high=high, unit=unit, meaning=meaning, may_be_none=default is None
    )
    return _declare(spec, default)


def number(
    low: float, high: float, unit: str, *, default: Any = dataclasses.MISSING, meaning: str = ""
) -> Any:
    """Declare a number from `low` to `high` in `unit`; a default of `None` means "not known"."""
    spec = FieldSpec(
        kind=FieldKind.NUMBER, low=low, high=high, unit=unit, meaning=meaning, may_be_none=default is None
    )
    return _declare(spec, default)


def yes_no(*, default: bool, meaning: str = "") -> Any:
    """Declare a true-or-false field."""
    return _declare(FieldSpec(kind=FieldKind.YES_NO, meaning=meaning), default)


def day(*, default: Any = dataclasses.MISSING, meaning: str = "") -> Any:
    """Declare a local calendar date between 1990 and 2199."""
    spec = FieldSpec(
        kind=FieldKind.DAY,
        low=date(1990, 1, 1),
        high=date(2199, 12, 31),
        meaning=meaning,
        may_be_none=default is None,
    )
    return _declare(spec, default)


def choice(*, default: Any = dataclasses.MISSING, meaning: str = "") -> Any:
    """Declare a member of the enum the field is annotated with; a default of `None` is none of them."""
    spec = FieldSpec(kind=FieldKind.CHOICE, meaning=meaning, may_be_none=default is None)
    return _declare(spec, default)


def twelve(low: float, high: float, unit: str, *, meaning: str = "") -> Any:
    """Declare twelve monthly means, January first; an empty tuple means "not known"."""
    spec = FieldSpec(kind=FieldKind.SERIES, low=low, high=high, unit=unit, length=12, meaning=meaning)
    return _declare(spec, ())


def pairs(*, meaning: str = "") -> Any:
    """Declare a sorted tuple of (field name, value) pairs laid over a catalogue entry."""
    return _declare(FieldSpec(kind=FieldKind.PAIRS, meaning=meaning), ())
