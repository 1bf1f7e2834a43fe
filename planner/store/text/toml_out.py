"""Writes single values in the TOML form, so that they read back exactly."""

from __future__ import annotations

import math
import unicodedata
from collections.abc import Callable
from datetime import date
from enum import Enum
from typing import Any, Final

from planner.store.text import limits

_SHORT: Final = {"\\": "\\\\", '"': '\\"', "\n": "\\n", "\t": "\\t", "\r": "\\r", "\b": "\\b", "\f": "\\f"}
_HIDDEN_CATEGORIES: Final = frozenset({"Cc", "Zl", "Zp"})
_TURNS_TEXT_ROUND: Final = frozenset(
    "\u061c\u200e\u200f\u202a\u202b\u202c\u202d\u202e\u2066\u2067\u2068\u2069\ufeff"
)
"""Signs nobody sees that change the direction of what follows, and could hide what a text says."""

_LAST_OF_FOUR_DIGITS: Final = 0xFFFF


def toml_value(value: Any) -> str:
    """Return one value as it is written after the = sign.

    >>> toml_value(3000.0), toml_value(0.25), toml_value(True), toml_value((1.0, 2.5))
    ('3000', '0.25', 'true', '[1, 2.5]')
    """
    if isinstance(value, tuple):
        return f"[{', '.join(toml_value(entry) for entry in value)}]"
    return next((write(value) for sort, write in _WRITERS if isinstance(value, sort)), str(value))


def toml_text(text: str) -> str:
    r"""Return a text in quotes, on one line; one with line breaks over several, as it is read.

    >>> print(toml_text('a "b"'))
    "a \"b\""
    """
    if "\n" not in text:
        return f'"{"".join(_escaped(mark) for mark in text)}"'
    return '"""\n' + "".join(mark if mark == "\n" else _escaped(mark) for mark in text) + '"""'


def _escaped(mark: str) -> str:
    short = _SHORT.get(mark)
    if short is not None:
        return short
    if unicodedata.category(mark) in _HIDDEN_CATEGORIES or mark in _TURNS_TEXT_ROUND:
        code = ord(mark)
        return f"\\u{code:04X}" if code <= _LAST_OF_FOUR_DIGITS else f"\\U{code:08X}"
    return mark


def _number(value: float) -> str:
    """Return a number in its shortest form; whole ones without a point, which numbers may lack."""
    minus_nothing = value == 0 and math.copysign(1, value) < 0
    if value.is_integer() and abs(value) < 10**limits.MOST_DIGITS_OF_WHOLE and not minus_nothing:
        return str(int(value))
    return repr(value)


def _choice(value: Enum) -> str:
    return toml_text(str(value.value))


def _yes_no(value: bool) -> str:
    return "true" if value else "false"


_WRITERS: Final[tuple[tuple[type[Any], Callable[[Any], str]], ...]] = (
    (Enum, _choice),
    (bool, _yes_no),
    (str, toml_text),
    (float, _number),
    (date, date.isoformat),
)
"""In this order: true and false are whole numbers too."""
