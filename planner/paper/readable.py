"""Makes every letter of a text one that a reader sees: what no typeface can draw is told by its name.

A picture letter becomes its name in brackets, a letter of an unknown script its number, so that no name turns
into a row of empty boxes and two names stay apart. Must not know any toolkit.
"""

from __future__ import annotations

import unicodedata
from collections.abc import Callable
from typing import Final

from planner.paper.measure import plain_text

_PLAIN_UP_TO: Final = "\u024f"
"""Latin letters with their marks: the shipped typeface has all of them."""
_PICTURES: Final = ("So", "Sk", "Cs", "Co", "Cn")
_MOST_LETTERS: Final = 24
_UNSEEN: Final = ("\u200d", "\ufe0e", "\ufe0f", *(chr(tone) for tone in range(0x1F3FB, 0x1F400)))
"""Joiners, choosers of a look, and skin tones: without their picture they say nothing."""


def readable(text: str, shows: Callable[[str], bool]) -> str:
    """Return a text in which everything can be drawn; `shows` tells whether a letter can.

    >>> readable("Basil \U0001f33f 水", lambda letter: letter < "\u0250")
    'Basil [herb] [U+6C34]'
    """
    plain = plain_text(text)
    if plain.isascii() or all(letter <= _PLAIN_UP_TO or shows(letter) for letter in plain):
        return plain
    drawn: list[str] = []
    for letter in plain:
        after_picture = bool(drawn) and drawn[-1].endswith("]")
        if letter in _UNSEEN and (after_picture or not shows(letter)):
            continue
        drawn.append(letter if letter <= _PLAIN_UP_TO or shows(letter) else _named(letter))
    return "".join(drawn)


def _named(letter: str) -> str:
    name = unicodedata.name(letter, "").lower()
    if name and unicodedata.category(letter) in _PICTURES:
        return f"[{name[:_MOST_LETTERS].strip()}]"
    return f"[U+{ord(letter):04X}]"
