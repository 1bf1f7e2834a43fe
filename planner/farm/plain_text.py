"""Which characters may not stand in one line of text, and how a message shows them all the same.

A mark that is not seen makes two names look alike, and one that turns the order of reading makes a line
say what is not there. The joiners U+200C and U+200D are let pass: several scripts spell with them.
Notes may hold anything: what is in them is never mistaken for another thing.
"""

from __future__ import annotations

import unicodedata
from typing import Final, NamedTuple

_CONTROL: Final = "Cc"
_LINE_BREAKS: Final = frozenset("\n\r\v\f\x85\u2028\u2029")


def _span(first: int, last: int) -> frozenset[str]:
    return frozenset(map(chr, range(first, last + 1)))


_TURNING: Final = _span(0x202A, 0x202E) | _span(0x2066, 0x2069)
_UNSEEN: Final = (
    frozenset("\u00ad\u061c\u180e\u200b\u200e\u200f\ufeff")
    | _span(0x2060, 0x2065)
    | _span(0x206A, 0x206F)
    | _span(0xFFF9, 0xFFFB)
    | _span(0xE0000, 0xE007F)
)
_REFUSED: Final = _LINE_BREAKS | _TURNING | _UNSEEN


class Mark(NamedTuple):
    """A character that may not stand where it does, and its place in the text, counted from 1."""

    character: str
    place: int

    @property
    def code(self) -> str:
        """Its number, as U+202E."""
        return code_of(self.character)

    @property
    def words(self) -> str:
        """What it is, in words."""
        if self.character in _LINE_BREAKS:
            return "a line break"
        if self.character in _TURNING:
            return "a mark that turns the order of reading"
        return "a mark that is not seen" if self.character in _UNSEEN else "a control character"


def code_of(character: str) -> str:
    r"""Return how a character is named by number.

    >>> code_of("\u202e"), code_of("\n")
    ('U+202E', 'U+000A')
    """
    return f"U+{ord(character):04X}"


def first_mark(text: str) -> Mark | None:
    r"""Return the first character that one line may not hold.

    >>> first_mark("Tank\u202e1")
    Mark(character='\u202e', place=5)
    """
    if text.isprintable():
        return None
    for place, character in enumerate(text, start=1):
        if _is_refused(character):
            return Mark(character, place)
    return None


def _is_refused(character: str) -> bool:
    return character in _REFUSED or unicodedata.category(character) == _CONTROL


def in_sight(text: str) -> str:
    r"""Return a message with every mark that is not seen shown by its number.

    >>> in_sight('tank "Tan\u202ek"')
    'tank "Tan<U+202E>k"'
    """
    if text.isprintable():
        return text
    return "".join(f"<{code_of(c)}>" if _is_refused(c) else c for c in text)
