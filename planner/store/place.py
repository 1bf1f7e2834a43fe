"""Tells where a farm is kept: in a file, or on a database server. Looks at the name alone."""

from __future__ import annotations

import re
from pathlib import Path
from typing import Final

from planner.store.errors import NoSuchFarmError

_URL: Final = re.compile(r"^(postgres(?:ql)?(?:\+[a-z0-9_]+)?):/+(.*)$")
_DRIVER: Final = "postgresql+psycopg"


def server_url(where: str | Path) -> str | None:
    """Return the address of a farm on a database server; None for one that is named by a path.

    A path is looked at too, for that is what becomes of an address that was taken for one: slashes that
    follow each other are then one. Raises `NoSuchFarmError` for an address of another kind.
    """
    found = _URL.match(str(where).replace("\\", "/"))
    if found is None and isinstance(where, str) and "://" in where:
        raise NoSuchFarmError("The address leads to no database that is known; it begins postgresql://.")
    if found is None:
        return None
    driver = found[1] if "+" in found[1] else _DRIVER
    return f"{driver}://{found[2]}"
