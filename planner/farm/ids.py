"""Keys for things: random for what a user makes, worked out from names for what is read from text."""

from __future__ import annotations

import secrets
import uuid
from typing import Final

from planner.farm.fields import Id

_NAMES: Final = uuid.uuid5(uuid.NAMESPACE_URL, "urn:raftweek:farm-text")
_VARIANT: Final = "89ab"
_BYTES: Final = 16
_DRAWN_AT_ONCE: Final = 256


def new_id() -> Id:
    """Return a fresh random id: a UUID of version 4, written straight from its digits.

    >>> is_id(new_id())
    True
    """
    return _written(secrets.token_hex(_BYTES))


class ManyIds:
    """Gives fresh random ids out of one draw of randomness after another, for thousands at a time."""

    def __init__(self) -> None:
        """Begin without anything drawn."""
        self._digits = ""
        self._at = 0

    def __call__(self) -> Id:
        """Return a fresh random id.

        >>> give = ManyIds()
        >>> is_id(give()) and give() != give()
        True
        """
        if self._at == len(self._digits):
            self._digits, self._at = secrets.token_hex(_BYTES * _DRAWN_AT_ONCE), 0
        start = self._at
        self._at = start + 2 * _BYTES
        return _written(self._digits[start : self._at])


def _written(digits: str) -> Id:
    """Return random digits as a UUID of version 4 is written; quicker than by way of a UUID object."""
    variant = _VARIANT[int(digits[16], base=16) & 3]
    return Id(f"{digits[:8]}-{digits[8:12]}-4{digits[13:16]}-{variant}{digits[17:20]}-{digits[20:]}")


def id_from(*parts: str) -> Id:
    """Return the id that the given parts always lead to.

    >>> id_from("batch", "LET-26W14-A") == id_from("batch", "LET-26W14-A")
    True
    """
    return Id(str(uuid.uuid5(_NAMES, "\x1f".join(parts))))


def is_id(text: str) -> bool:
    """Tell whether a text is an id in its usual spelling."""
    try:
        return str(uuid.UUID(text)) == text
    except ValueError:
        return False
