"""Own entries of the catalogue: made anew, and taken in from another farm's library in one act."""

from __future__ import annotations

import dataclasses
from collections.abc import Sequence

from planner.farm.changes import Change, ChangeSet
from planner.farm.farm import Farm, OwnEntry
from planner.farm.ids import new_id


def taken_in(farm: Farm, entries: Sequence[OwnEntry], *, title: str) -> ChangeSet:
    """Return the act that brings entries in; one of the same shelf and key takes the place of the farm's.

    Those that are there already, word for word, change nothing. Ids are the farm's own.
    """
    there = {(own.shelf, own.key): own for own in farm.own_entries}
    changes = []
    for entry in entries:
        before = there.get((entry.shelf, entry.key))
        after = dataclasses.replace(entry, id=new_id() if before is None else before.id)
        if before != after:
            changes.append(Change(before=before, after=after))
    return ChangeSet(title=title, changes=tuple(changes))
