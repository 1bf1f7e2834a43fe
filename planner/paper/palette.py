"""Looks that tell things apart on paper: a tint and a pattern that always come together.

In black and white the patterns and the letters remain. Must not know what they stand for.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Final

from planner.paper.shapes import Hatch


@dataclass(frozen=True, slots=True, kw_only=True)
class Look:
    """A light colour, #RRGGBB, and a pattern on it."""

    tint: str
    hatch: Hatch


_TINTS: Final = ("#CFE8F7", "#FBE3A6", "#CDEBDD", "#F6D3DF", "#E3DBF3", "#FAD9BF", "#DDE6E9")
_HATCHES: Final = (
    Hatch.NONE,
    Hatch.SLANT,
    Hatch.DOTS,
    Hatch.BACK_SLANT,
    Hatch.UPRIGHT,
    Hatch.LEVEL,
    Hatch.CROSS,
)


def look(number: int) -> Look:
    """Return the look of a thing by its number; forty-nine are told apart before they come again.

    >>> look(0) == look(1), look(0).hatch is look(7).hatch
    (False, False)
    """
    turn = number // len(_TINTS)
    return Look(tint=_TINTS[number % len(_TINTS)], hatch=_HATCHES[(number + turn) % len(_HATCHES)])


def letters(number: int) -> str:
    """Return a short text code: A to Z, then AA, AB and so on.

    >>> letters(0), letters(25), letters(26)
    ('A', 'Z', 'AA')
    """
    code = ""
    number += 1
    while number:
        number, rest = divmod(number - 1, 26)
        code = chr(ord("A") + rest) + code
    return code
