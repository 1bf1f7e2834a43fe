"""A short mark that tells two versions of a plan apart on paper."""

from __future__ import annotations

from collections.abc import Iterator
from functools import cache
from hashlib import blake2b
from typing import Any, Final

from planner.farm.farm import KINDS, SETTINGS_KIND, Farm, Thing, kind_named, things
from planner.farm.fields import FieldKind, specs_of

_BYTES: Final = 4


def plan_mark(farm: Farm) -> str:
    """Return eight hexadecimal digits that change whenever anything in the farm changes.

    Equal farms give the same mark on every machine, however their numbers were typed.
    """
    text = "\n".join(_lines(farm))
    digits = blake2b(text.encode(), digest_size=_BYTES).hexdigest().upper()
    return f"{digits[:4]}-{digits[4:]}"


def _lines(farm: Farm) -> Iterator[str]:
    for kind in (SETTINGS_KIND, *KINDS):
        yield kind.word
        fields = _fields(kind.word)
        for thing in things(farm, kind.word):
            yield repr([_plain(thing, name, is_number=is_number) for name, is_number in fields])


@cache
def _fields(word: str) -> tuple[tuple[str, bool], ...]:
    """Return the name of each field of a kind of thing, and whether it holds a number with a fraction."""
    specs = specs_of(kind_named(word).owner)
    return tuple((name, spec.kind is FieldKind.NUMBER) for name, spec in specs.items())


def _plain(thing: Thing, name: str, *, is_number: bool) -> Any:
    value = getattr(thing, name)
    return float(value) if is_number and value is not None else value
