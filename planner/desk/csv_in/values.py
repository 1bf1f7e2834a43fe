"""What the dialog for tables asks for and what it is told. Must know neither files nor how rows are read."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass, field
from typing import Protocol

from planner.farm.changes import ChangeSet

READINGS = "readings"
BATCHES = "batches"


@dataclass(frozen=True, slots=True, kw_only=True)
class TableWish:
    """How a table is to be read: heading -> what it is, heading -> unit, and what the table leaves open."""

    what: str
    roles: Mapping[str, str] = field(default_factory=dict)
    units: Mapping[str, str] = field(default_factory=dict)
    loop: str = ""
    meter_factor: float | None = None
    decimal: str = ""
    day_order: str = ""


@dataclass(frozen=True, slots=True, kw_only=True)
class TableLook:
    """What would come in: the act, how many things, faults as (line, column, value, reason), and notes.

    `trouble` says why nothing can be read at all; then there is no act.
    """

    change_set: ChangeSet | None = None
    count: int = 0
    faults: tuple[tuple[int, str, str, str], ...] = ()
    known: int = 0
    notes: tuple[str, ...] = ()
    trouble: str = ""


class TableLike(Protocol):
    """A table that has been read from a file."""

    @property
    def headings(self) -> tuple[str, ...]:
        """The headings of its columns."""

    @property
    def rows(self) -> int:
        """How many rows it has."""

    @property
    def loops(self) -> tuple[str, ...]:
        """Loops that readings may be of."""

    def choices(self, what: str) -> tuple[str, ...]:
        """Return what a column may be."""

    def guessed(self, what: str) -> Mapping[str, str]:
        """Return heading -> what it is, for headings that speak for themselves."""

    def units_of(self, role: str) -> tuple[str, ...]:
        """Return the units a column of readings may be in; empty for another one."""

    def unit_said(self, heading: str, role: str) -> str:
        """Return the unit a heading says in brackets, nothing when it says none that is known."""

    def look_steps(self, wish: TableWish) -> Iterator[int | TableLook]:
        """Yield now and then how many rows are read, and at the end what would come in."""
