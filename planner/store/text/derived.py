"""Ids that need not be written: worked out from what a thing is called, or from what it is.

Reader and writer count alike, so reading a text twice gives the same farm.
"""

from __future__ import annotations

from planner.farm.crops import Placement, Target
from planner.farm.farm import Settings, Thing, kind_of, label_of
from planner.farm.fields import Id
from planner.farm.fish import FishEvent
from planner.farm.ids import id_from
from planner.farm.water import Dose, Reading


def id_of_named(word: str, label: str) -> Id:
    """Return the id of a thing that has a name, code or key."""
    return id_from(word, label)


class Numbering:
    """Works out ids while things are gone through in the order of the text."""

    def __init__(self) -> None:
        """Begin with nothing counted."""
        self._counts: dict[tuple[str, ...], int] = {}

    def id_of(self, thing: Thing) -> Id:
        """Return the id of a thing without one of its own, counting it among its like."""
        parts = (kind_of(thing).word, *_parts(thing))
        if isinstance(thing, Settings) or kind_of(thing).label:
            return id_from(*parts)
        number = self._counts.get(parts, 0) + 1
        self._counts[parts] = number
        return id_from(*parts, str(number))


def _parts(thing: Thing) -> tuple[str, ...]:
    if isinstance(thing, Placement):
        return (thing.batch, thing.phase.value)
    if isinstance(thing, FishEvent):
        return (thing.group, thing.on.isoformat(), thing.kind.value)
    if isinstance(thing, Target):
        return (thing.crop, thing.from_on.isoformat())
    if isinstance(thing, Dose):
        return (thing.loop, thing.supplement, thing.on.isoformat())
    if isinstance(thing, Reading):
        return (thing.loop, thing.quantity.value, thing.on.isoformat())
    return (label_of(thing),)
