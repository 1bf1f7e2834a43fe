"""Change sets as plain data and back, by the type hints of the farm's values, exactly.

Plain data are what JSON can hold. Only the classes named in `planner.farm.farm` are ever made from
it, by their own constructors; nothing in the data chooses what is run.
"""

from __future__ import annotations

import dataclasses
import json
import types
import typing
from collections.abc import Callable
from datetime import date
from enum import Enum
from functools import cache
from typing import Any, Final

from planner.farm.changes import Change, ChangeSet
from planner.farm.farm import Thing, kind_named, kind_of

Plain = Any
"""None, bool, int, float, str, and lists and mappings of these."""

_KIND: Final = "kind"
_Decoder = Callable[[Any], Any]


class CodecError(ValueError):
    """Plain data that are not what they should be."""


def encoded(value: Any) -> Plain:
    """Return a value of the farm as plain data."""
    if value is None or isinstance(value, bool | int | float | str):
        return value
    if isinstance(value, Enum):
        return value.value
    if isinstance(value, date):
        return value.isoformat()
    if isinstance(value, tuple):
        return [encoded(entry) for entry in value]
    return {field.name: encoded(getattr(value, field.name)) for field in dataclasses.fields(value)}


def decoded(hint: Any, data: Plain) -> Any:
    """Return the value that `data` stands for under a type hint; raises `CodecError` when it is none."""
    return _decoder(hint)(data)


@cache
def _decoder(hint: Any) -> _Decoder:
    """Return the function that reads data of a type hint; worked out once for each."""
    if isinstance(hint, typing.NewType):
        return _decoder(hint.__supertype__)
    if isinstance(hint, type) and not typing.get_origin(hint):
        return _class_decoder(hint)
    origin = typing.get_origin(hint)
    if origin in (types.UnionType, typing.Union):
        return _union(tuple(_decoder(part) for part in typing.get_args(hint)))
    if origin is tuple:
        return _tuple(typing.get_args(hint))
    raise TypeError(f"values of type {hint} are not kept")


def _class_decoder(hint: type[Any]) -> _Decoder:
    if issubclass(hint, Enum):
        return _called(hint)
    if hint is date:
        return _read_date
    if dataclasses.is_dataclass(hint):
        return _mapping(hint)
    return _read_none if hint is types.NoneType else _exactly(hint)


def _exactly(hint: type[Any]) -> _Decoder:
    """Read a plain value; a whole number counts as a number, but true never does."""

    def read(data: Any) -> Any:
        if hint is float and type(data) is int:
            return float(data)
        if type(data) is not hint:
            raise CodecError(f"{data!r} is not a {hint.__name__}")
        return data

    return read


def _read_none(data: Any) -> None:
    if data is not None:
        raise CodecError(f"{data!r} is not nothing")


def _read_date(data: Any) -> date:
    try:
        return date.fromisoformat(data)
    except (TypeError, ValueError) as error:
        raise CodecError(f"{data!r} is not a date") from error


def _called(hint: type[Enum]) -> _Decoder:
    def read(data: Any) -> Any:
        try:
            return hint(data)
        except ValueError as error:
            raise CodecError(f"{data!r} is not a {hint.__name__}") from error

    return read


def _union(parts: tuple[_Decoder, ...]) -> _Decoder:
    def read(data: Any) -> Any:
        for part in parts:
            try:
                return part(data)
            except CodecError:
                continue
        raise CodecError(f"{data!r} is none of the values allowed")

    return read


def _tuple(parts: tuple[Any, ...]) -> _Decoder:
    endless = len(parts) > 1 and parts[-1] is Ellipsis
    readers = tuple(_decoder(part) for part in parts if part is not Ellipsis)

    def read(data: Any) -> Any:
        if not isinstance(data, list) or (not endless and len(data) != len(readers)):
            raise CodecError(f"{data!r} is not a list as expected")
        if endless:
            return tuple(readers[0](entry) for entry in data)
        return tuple(reader(entry) for reader, entry in zip(readers, data, strict=True))

    return read


def _mapping(owner: type[Any]) -> _Decoder:
    """Read the fields of a class; those with a default may be missing: older acts do not have them."""
    hints = typing.get_type_hints(owner)
    readers = {field.name: _decoder(hints[field.name]) for field in dataclasses.fields(owner)}
    needed = {field.name for field in dataclasses.fields(owner) if field.default is dataclasses.MISSING}

    def read(data: Any) -> Any:
        if not isinstance(data, dict) or not needed <= data.keys() <= readers.keys():
            raise CodecError(f"{data!r} does not have the fields of a {owner.__name__}")
        return owner(**{name: readers[name](value) for name, value in data.items()})

    return read


def change_set_text(change_set: ChangeSet) -> str:
    """Return the changes of a set as JSON; its title is kept beside it."""
    plain = [
        {
            _KIND: change.word,
            "before": encoded(change.before),
            "after": encoded(change.after),
            "index": change.index,
        }
        for change in change_set.changes
    ]
    return json.dumps(plain, ensure_ascii=False, allow_nan=False, separators=(",", ":"))


def change_set_from(text: str, *, title: str) -> ChangeSet:
    """Return the change set that a JSON text stands for; raises `CodecError` when it stands for none."""
    try:
        plain = json.loads(text)
    except ValueError as error:
        raise CodecError("the changes of an act are not readable") from error
    if not isinstance(plain, list):
        raise CodecError("the changes of an act are not a list")
    return ChangeSet(title=title, changes=tuple(_change_from(entry) for entry in plain))


def _change_from(entry: Any) -> Change:
    try:
        owner = kind_named(entry[_KIND]).owner
        before, after = (_thing_from(owner, entry[side]) for side in ("before", "after"))
        return Change(before=before, after=after, index=decoded(int | None, entry["index"]))
    except CodecError:
        raise
    except (KeyError, TypeError, ValueError) as error:
        raise CodecError(f"{entry!r} is not a change") from error


def _thing_from(owner: type[Any], data: Any) -> Thing | None:
    if data is None:
        return None
    thing: Thing = decoded(owner, data)
    assert kind_of(thing).owner is owner
    return thing
