"""What can be wrong with the catalogue's own files, and with asking it for a figure."""

from __future__ import annotations

from collections.abc import Iterable
from difflib import get_close_matches
from typing import Final

_NEAR: Final = 3
_LISTED: Final = 60


class CatalogueError(ValueError):
    """A file of the catalogue cannot be taken; the message names file, key and field."""

    def __init__(self, message: str, *, file: str, key: str = "", field: str = "") -> None:
        """Keep where it went wrong, and say it first."""
        place = ": ".join(part for part in (file, key, field) if part)
        super().__init__(f"{place}: {message}")
        self.file = file
        self.key = key
        self.field = field


class UnknownFigureError(LookupError):
    """Nobody has written the figure that was asked for."""


def near_misses(word: str, known: Iterable[str]) -> tuple[str, ...]:
    """Return the known words most like `word`, the likest first.

    >>> near_misses("bed_day", ["bed_days", "nursery_days", "notes"])[0]
    'bed_days'
    """
    return tuple(get_close_matches(word, list(known), n=_NEAR))


def known_words(word: str, known: Iterable[str]) -> str:
    """Return a sentence for someone who wrote a word that is not known: near misses, then all.

    >>> known_words("tal", ["tall", "code"])
    'Did you mean tall? Known: code, tall.'
    """
    names = sorted(known)
    near = near_misses(word, names)
    question = f"Did you mean {' or '.join(near)}? " if near else ""
    more = ", …" if len(names) > _LISTED else ""
    return f"{question}Known: {', '.join(names[:_LISTED])}{more}."
