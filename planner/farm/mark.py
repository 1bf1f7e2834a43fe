"""A short mark that tells two versions of a plan apart on paper."""

from __future__ import annotations

from collections.abc import Iterator
from functools import cache
from hashlib import blake2b
from operator import attrgetter
from typing import Final

from planner.farm.farm import KINDS, SETTINGS_KIND, Farm, kind_named, things
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
        names, numbers = _fields(kind.word)
        values = attrgetter(*names)
        for thing in things(farm, kind.word):
            row = list(values(thing))
            for at in numbers:
                row[at] = None if row[at] is None else float(row[at])
            yield repr(row)


@cache
def _fields(word: str) -> tuple[tuple[str, ...], tuple[int, ...]]:
    """Return the names of the fields of a kind of thing, and which of them hold numbers with a fraction."""
    specs = specs_of(kind_named(word).owner)
    numbers = tuple(at for at, spec in enumerate(specs.values()) if spec.kind is FieldKind.NUMBER)
    return tuple(specs), numbers
