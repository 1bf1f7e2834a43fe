"""Keys for things: random for what a user makes, worked out from names for what is read from text."""

from __future__ import annotations

import uuid
from typing import Final

from planner.farm.fields import Id

_NAMES: Final = uuid.uuid5(uuid.NAMESPACE_URL, "urn:raftweek:farm-text")


def new_id() -> Id:
    """Return a fresh random id."""
    return Id(str(uuid.uuid4()))


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
