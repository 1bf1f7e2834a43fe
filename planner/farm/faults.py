"""What is wrong with a farm, as values: where, which field, which value, which limit, what to do.

A fault is for the grower to read; it never carries a traceback and is never translated here.
"""

from __future__ import annotations

from dataclasses import dataclass
from enum import Enum

from planner.farm.plain_text import in_sight


class FaultKind(Enum):
    """What sort of fault it is; screens and tests go by this, never by the words."""

    SYNTAX = "syntax"
    UNKNOWN_KEY = "unknown key"
    MISSING = "missing"
    WRONG_TYPE = "wrong type"
    OUT_OF_LIMITS = "out of limits"
    UNKNOWN_NAME = "unknown name"
    DUPLICATE = "duplicate"
    WRONG_ORDER = "wrong order"
    HELD_PLACE = "held place"
    NO_SUCH_PLACE = "no such place"
    NOT_SUITED = "not suited"
    NO_ROOM = "no room"
    IN_USE = "in use"
    TOO_LARGE = "too large"
    CHANGED_MEANWHILE = "changed meanwhile"


@dataclass(frozen=True, slots=True, kw_only=True)
class Fault:
    """One thing that is wrong.

    `where` is a path such as `batch "LET-26W14-A"`, `field` the field's own name, `value` what was
    found, `limit` what is allowed, `remedy` what to do about it. `line` counts from 1; 0 is unknown.
    """

    kind: FaultKind
    where: str
    message: str
    field: str = ""
    value: str = ""
    limit: str = ""
    remedy: str = ""
    file: str = ""
    line: int = 0

    def sentence(self) -> str:
        """Return the fault in one line: place, what is wrong, what to do."""
        spot = ":".join(part for part in (self.file, str(self.line) if self.line else "") if part)
        place = " ".join(part for part in (f"{spot}:" if spot else "", self.where) if part)
        body = f"{place}: {self.message}" if place else self.message
        return in_sight(f"{body} {self.remedy}".rstrip())


class FarmFaultError(ValueError):
    """Raised when a farm, or a change to one, cannot be taken; holds every fault found."""

    def __init__(self, faults: tuple[Fault, ...]) -> None:
        """Keep the faults; the text of the error is their sentences, one a line."""
        super().__init__("\n".join(fault.sentence() for fault in faults))
        self.faults = faults
