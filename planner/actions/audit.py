"""Readings of the water that are typed, mended or taken out: each is an entry of the log, and none is erased.

A reading that no entry told of yet (it came from a table or an older file) is first logged as it stood, so
that its old value stays to be seen.
"""

from __future__ import annotations

import dataclasses

from planner.actions import records
from planner.actions.changing import found
from planner.actions.effects import effect_id
from planner.farm.changes import Change, ChangeSet, applied
from planner.farm.farm import Farm
from planner.farm.fields import Id
from planner.farm.log import Happening, LogEntry, standing
from planner.farm.water import Quantity, Reading
from planner.planning.dating import Dating


@dataclasses.dataclass(frozen=True, slots=True, kw_only=True)
class Noted:
    """Who notes something, and when (UTC)."""

    who: str = ""
    at: str = ""


def note_reading(farm: Farm, reading: Reading, noted: Noted) -> ChangeSet:
    """Note a reading, with the entry that tells of it; its id follows from the entry."""
    if reading.quantity is Quantity.TOP_UP_L:
        return ChangeSet(title=_title("Add", reading), changes=(Change(after=reading),))
    entry = _entry_of(reading, noted)
    own = effect_id(dataclasses.replace(farm, log_entries=(*farm.log_entries, entry)), entry)
    after = dataclasses.replace(reading, id=own)
    return ChangeSet(title=_title("Add", reading), changes=(Change(after=entry), Change(after=after)))


def mend_reading(farm: Farm, right: Reading, noted: Noted) -> ChangeSet:
    """Put a right reading in the place of the one with its id; the log keeps both, and who said so."""
    wrong: Reading = found(farm, "reading", right.id)
    title = _title("Correct", right)
    if wrong == right:
        return ChangeSet(title=title, changes=())
    if Quantity.TOP_UP_L in (wrong.quantity, right.quantity):
        return ChangeSet(title=title, changes=(Change(before=wrong, after=right),))
    first, last, own = _told(farm, wrong)
    entry = dataclasses.replace(_entry_of(right, noted), corrects=last.id)
    after = dataclasses.replace(right, id=own)
    if own == wrong.id:
        return ChangeSet(title=title, changes=(Change(after=entry), Change(before=wrong, after=after)))
    put = (*first, Change(after=entry), Change(before=wrong), Change(after=after))
    return ChangeSet(title=title, changes=put)


def take_out_reading(farm: Farm, reading_id: Id, noted: Noted, dating: Dating) -> ChangeSet:
    """Say that a reading was never made; the log keeps it, as withdrawn."""
    gone: Reading = found(farm, "reading", reading_id)
    title = _title("Remove", gone)
    if gone.quantity is Quantity.TOP_UP_L:
        return ChangeSet(title=title, changes=(Change(before=gone),))
    first, last, own = _told(farm, gone)
    told = applied(farm, ChangeSet(title="", changes=first))
    withdrawn = records.new_entry(what=Happening.WITHDRAWN, on=gone.on, who=noted.who, noted_at=noted.at)
    taken = records.withdraw(told, last.id, withdrawn, dating)
    bare = () if own == gone.id else (Change(before=gone),)
    return ChangeSet(title=title, changes=(*first, *bare, *taken.changes))


def _told(farm: Farm, reading: Reading) -> tuple[tuple[Change, ...], LogEntry, Id]:
    """Return the changes that first tell of a reading, the entry that stands for it, and the id it gets."""
    for entry in standing(farm.log_entries):
        if entry.what is Happening.MEASURED and effect_id(farm, entry) == reading.id:
            return (), entry, reading.id
    entry = _entry_of(reading, Noted())
    own = effect_id(dataclasses.replace(farm, log_entries=(*farm.log_entries, entry)), entry)
    return (Change(after=entry),), entry, own


def _entry_of(reading: Reading, noted: Noted) -> LogEntry:
    return records.new_entry(
        what=Happening.MEASURED,
        on=reading.on,
        at=reading.at,
        loop=reading.loop,
        meter=reading.meter,
        quantity=reading.quantity,
        amount=reading.value,
        who=noted.who,
        noted_at=noted.at,
        notes=reading.notes,
    )


def _title(what: str, reading: Reading) -> str:
    return f"{what} reading of {reading.quantity.value}, {reading.on.isoformat()}"
