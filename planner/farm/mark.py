"""A short mark that tells two versions of a plan apart on paper."""

from __future__ import annotations

from hashlib import blake2b
from typing import Final

from planner.farm.farm import Farm

_BYTES: Final = 4


def plan_mark(farm: Farm) -> str:
    """Return eight hexadecimal digits that change whenever anything in the farm changes.

    The same farm gives the same mark on every machine.
    """
    digits = blake2b(repr(farm).encode(), digest_size=_BYTES).hexdigest().upper()
    return f"{digits[:4]}-{digits[4:]}"
