"""Leads from the farm as it stands back to an act of the past: what the farm was just before it and after it.

The journal keeps what every act changed, so nothing more need be kept to tell what an act did, in whatever
sitting it was. Must know nothing of what is foreseen for a farm.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from typing import Final

from planner.farm.changes import Change, ChangeSet, applied
from planner.farm.farm import Farm
from planner.farm.faults import FarmFaultError
from planner.farm.fields import Id
from planner.farm.merging import rebased
from planner.store.acts import ActEntry, ActState


@dataclass(frozen=True, slots=True, kw_only=True)
class Past:
    """An act with the farm before it and after it."""

    before: Farm
    after: Farm
    change_set: ChangeSet


@dataclass(frozen=True, slots=True, kw_only=True)
class Trail:
    """The way from a farm to an act: `steps` lead beside it, to after it when it stands, else to before it.

    A value: it can be walked beside the window. `shared` when others' acts may lie between.
    """

    farm: Farm
    steps: tuple[ChangeSet, ...]
    act: ChangeSet
    stands: bool
    shared: bool = False

    def walk(self) -> Past | None:
        """Return the act with the farm on both sides of it; None when what others did hides it."""
        try:
            beside = self.farm
            for step in self.steps:
                beside = self._after(beside, step)
            other = self._after(beside, self.act.turned() if self.stands else self.act)
        except (KeyError, FarmFaultError):
            return None
        before, after = (other, beside) if self.stands else (beside, other)
        return Past(before=before, after=after, change_set=self.act)

    def _after(self, farm: Farm, step: ChangeSet) -> Farm:
        return applied(farm, rebased(farm, step) if self.shared else step)


def trail_to(
    farm: Farm,
    acts: Sequence[ActEntry],
    at: int,
    *,
    change_set: Callable[[int], ChangeSet],
    shared: bool = False,
) -> Trail:
    """Return the way to the act at a place among `acts`, oldest first.

    `change_set` gives what an act changed by its number.
    """
    goal = acts[at]
    stands = goal.state is ActState.DONE
    if stands:
        later = [each for each in acts[at + 1 :] if each.state is ActState.DONE]
        steps = tuple(change_set(each.seq).turned() for each in reversed(later))
    else:
        undone = [each for each in acts[:at] if each.state is ActState.UNDONE and each.who == goal.who]
        steps = tuple(change_set(each.seq) for each in undone)
    return Trail(farm=farm, steps=steps, act=change_set(goal.seq), stands=stands, shared=shared)


MOST_LOOKED_AT: Final = 500
"""So many acts are looked through for the last change of a field; what is older is not told."""


def last_change(
    acts: Sequence[ActEntry], about: Id, field: str, *, change_set: Callable[[int], ChangeSet]
) -> ActEntry | None:
    """Return the last act that stands and gave a field of a thing its value; None when none is found.

    `acts` come oldest first; `change_set` gives what an act changed by its number.
    """
    standing = [entry for entry in acts if entry.state is ActState.DONE]
    for entry in reversed(standing[-MOST_LOOKED_AT:]):
        if any(_gave(change, about, field) for change in change_set(entry.seq).changes):
            return entry
    return None


def _gave(change: Change, about: Id, field: str) -> bool:
    if change.after is None or change.after.id != about:
        return False
    return change.before is None or getattr(change.before, field) != getattr(change.after, field)
