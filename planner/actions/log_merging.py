"""Takes the log of another copy of a farm into this one: what both have once, what is new with its effects.

Entries are told apart by their codes. What the entry is about is found by name, for a copy may have come by
way of a text. Where both copies say different things under one code, or both corrected one entry, nobody
decides behind the grower's back: it is told, and theirs is left out.
"""

from __future__ import annotations

import dataclasses
from collections.abc import Callable
from enum import Enum
from typing import Final

from planner.actions import records
from planner.actions.catching_up import together
from planner.farm.changes import Change, ChangeSet, applied
from planner.farm.farm import Farm, label_of, things
from planner.farm.faults import FarmFaultError, Fault
from planner.farm.fields import NO_ID, Id
from planner.farm.ids import id_from
from planner.farm.log import POINTS_AT, LogEntry
from planner.planning.dating import Dating

_THEIRS: Final = " (theirs)"


class LeftOut(Enum):
    """Why an entry of the other copy was not taken in."""

    DIFFERS = "differs from ours"
    CORRECTED_TWICE = "corrects what ours corrected already"
    UNKNOWN = "is about something that is not on this farm"
    REFUSED = "cannot be"


@dataclasses.dataclass(frozen=True, slots=True, kw_only=True)
class NotTaken:
    """An entry that was left out: why, our entry that stands against it, and what is wrong with it."""

    entry: LogEntry
    why: LeftOut
    ours: LogEntry | None = None
    faults: tuple[Fault, ...] = ()


@dataclasses.dataclass(frozen=True, slots=True, kw_only=True)
class Merged:
    """What comes of merging: the act, the entries taken in, how many both had, and what was left out."""

    act: ChangeSet
    taken: tuple[LogEntry, ...]
    common: int
    left_out: tuple[NotTaken, ...]


def merge_log(
    farm: Farm, other: Farm, dating_of: Callable[[Farm], Dating], *, theirs_stand: bool = False
) -> Merged:
    """Return what the log of `other` brings into `farm`, as one act.

    With `theirs_stand` an entry that differs from ours comes in as its correction, and both stay.
    """
    changes: list[Change] = []
    taken: list[LogEntry] = []
    left: list[NotTaken] = []
    common = 0
    for theirs in other.log_entries:
        mine = next((one for one in farm.log_entries if one.code == theirs.code), None)
        entry = _translated(theirs, other, farm)
        if mine is not None and entry is not None and _same(mine, entry):
            common += 1
            continue
        if mine is not None and entry is not None and theirs_stand:
            entry, mine = _as_correction(entry, mine), None
        found = _tried(farm, theirs, entry, mine, dating_of)
        if isinstance(found, NotTaken):
            left.append(found)
            continue
        assert entry is not None
        changes.extend(found.changes)
        taken.append(entry)
        farm = applied(farm, found)
    title = f"Take in {len(taken)} entries of another log"
    act = ChangeSet(title=title, changes=together(changes))
    return Merged(act=act, taken=tuple(taken), common=common, left_out=tuple(left))


def _as_correction(entry: LogEntry, mine: LogEntry) -> LogEntry:
    """Return their entry under a code of its own, in the place of ours."""
    code = f"{entry.code}{_THEIRS}"
    return dataclasses.replace(entry, id=id_from("log entry", code), code=code, corrects=mine.id)


def _same(mine: LogEntry, theirs: LogEntry) -> bool:
    return dataclasses.replace(theirs, id=mine.id) == mine


def _tried(
    farm: Farm,
    theirs: LogEntry,
    entry: LogEntry | None,
    mine: LogEntry | None,
    dating_of: Callable[[Farm], Dating],
) -> ChangeSet | NotTaken:
    """Return the changes that an entry makes, or why it is left out."""
    if mine is not None:
        return NotTaken(entry=theirs, why=LeftOut.DIFFERS, ours=mine)
    if entry is None:
        return NotTaken(entry=theirs, why=LeftOut.UNKNOWN)
    corrected = next((one for one in farm.log_entries if one.corrects == entry.corrects), None)
    if entry.corrects != NO_ID and corrected is not None:
        return NotTaken(entry=theirs, why=LeftOut.CORRECTED_TWICE, ours=corrected)
    try:
        dating = dating_of(farm)
        if entry.corrects != NO_ID:
            return records.correct(farm, entry.corrects, entry, dating)
        return records.log(farm, entry, dating)
    except FarmFaultError as refused:
        return NotTaken(entry=theirs, why=LeftOut.REFUSED, faults=refused.faults)


def _translated(entry: LogEntry, other: Farm, farm: Farm) -> LogEntry | None:
    """Return an entry about our own things, found by name; None when one of them is not here."""
    given: dict[str, Id] = {}
    for field, word in POINTS_AT.items():
        there = getattr(entry, field)
        if there == NO_ID:
            continue
        name = next((label_of(thing) for thing in things(other, word) if thing.id == there), None)
        here = next((thing.id for thing in things(farm, word) if label_of(thing) == name), None)
        if here is None:
            return None
        given[field] = here
    return dataclasses.replace(entry, **given)  # type: ignore[arg-type]
