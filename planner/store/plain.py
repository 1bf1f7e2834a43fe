"""What the ways of reading rows share: which fields are columns, and what damage is called.

Must know nothing of drivers and libraries.
"""

from __future__ import annotations

import gc
import json
import math
from collections.abc import Callable, Iterable, Iterator, Mapping, Sequence
from contextlib import contextmanager
from functools import cache
from typing import Any, Final

from planner.farm.farm import KINDS, SETTINGS_KIND, Farm, OwnEntry, kind_named
from planner.farm.fields import Id, specs_of
from planner.store.errors import DamagedFarmError

VALUES: Final = "values"
"""The one field that lies in a table of its own."""


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


@contextmanager
def damage_told(where: str) -> Iterator[None]:
    """Turn the failure to make a value from a row into a `DamagedFarmError`."""
    try:
        yield
    except (ValueError, TypeError, LookupError) as error:
        raise DamagedFarmError(f"{where} is damaged: {error}. Open the latest backup instead.") from error


def farm_of(things_of: Callable[[str], tuple[Any, ...]], where: str) -> Farm:
    """Return the farm of all things by the words of their kinds; raises `DamagedFarmError` for no values."""
    with gc_paused(), damage_told(where):
        settings = things_of(SETTINGS_KIND.word)
        if len(settings) != 1:
            raise DamagedFarmError(f"{where} is damaged: it says {len(settings)} times what the farm is.")
        many: dict[str, Any] = {kind.place: things_of(kind.word) for kind in KINDS}
        return Farm(settings=settings[0], **many)


def things_from(
    word: str, rows: Iterable[Sequence[Any]], own_values: Callable[[], Mapping[Id, list[tuple[str, Any]]]]
) -> tuple[Any, ...]:
    """Return the things of a kind from rows of values; `own_values` gives the figures of own entries."""
    owner, names = kind_named(word).owner, field_names(word)
    if owner is OwnEntry:
        values = own_values()
        return tuple(
            OwnEntry(**dict(zip(names, row, strict=True)), values=tuple(values.get(row[0], ())))
            for row in rows
        )
    return tuple([owner(**dict(zip(names, row, strict=True))) for row in rows])


def numbers_from(text: Any) -> tuple[float, ...]:
    """Return the numbers of a JSON list; raises `ValueError` when the text is no list of numbers."""
    numbers = json.loads(text)
    if not isinstance(numbers, list) or not all(_is_number(number) for number in numbers):
        raise ValueError(f"{text!r} is not a list of numbers")
    return tuple(float(number) for number in numbers)


def _is_number(value: Any) -> bool:
    return isinstance(value, int | float) and not isinstance(value, bool) and math.isfinite(value)
