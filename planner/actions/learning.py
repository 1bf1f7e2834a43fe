"""Taking up what the log taught: one act, for the batches still to be sown that keep their places with it.

A lesson is only an estimate, so it takes nobody's place: a batch that would stand in the way of another, or
come before a place is free, stays as it is and is named. It can take the lesson up once there is room.
"""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date

from planner.actions.holding import HoldBook, HoldsOf, book_of, new_clashes, next_book
from planner.farm.changes import Change, ChangeSet, applied
from planner.farm.crops import Batch
from planner.farm.farm import Farm
from planner.farm.fields import Id
from planner.farm.holds import Hold
from planner.planning.learning import Learned, adopted


@dataclass(frozen=True, slots=True, kw_only=True)
class Adoption:
    """What comes of taking up a lesson: the act, and the batches that have no room for it in the beds."""

    act: ChangeSet
    left_out: tuple[Batch, ...]


def adopt(farm: Farm, lesson: Learned, today: date, *, holds_of: HoldsOf) -> Adoption:
    """Give the learned value to every batch it is for and that fits with it; no changes when there is none.

    `holds_of` tells how long places are held on a farm.
    """
    wanted = {before.id: Change(before=before, after=after) for before, after in adopted(farm, lesson, today)}
    title = f"Take up {lesson.field} of {lesson.crop} from the log"
    standing, left = book_of(holds_of(farm)), dict[Id, Batch]()
    while True:
        act = ChangeSet(title=title, changes=tuple(wanted.values()))
        for each in _without_room(standing, holds_of(applied(farm, act)), wanted):
            change = wanted.pop(each)
            assert isinstance(change.before, Batch)
            left[each] = change.before
        if len(act.changes) == len(wanted):
            return Adoption(act=act, left_out=tuple(one for one in farm.batches if one.id in left))


def _without_room(standing: HoldBook, held: tuple[Hold, ...], wanted: dict[Id, Change]) -> set[Id]:
    """Return batches whose change makes two plants share a place: of two the one that is there first."""
    pairs = new_clashes(standing, next_book(standing, held))
    return {first.batch if first.batch in wanted else second.batch for first, second in pairs} & set(wanted)
