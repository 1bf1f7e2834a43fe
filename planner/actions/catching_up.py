"""Many entries of the log in one act, as when a month of paper is typed: one undo takes all of it back."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Sequence

from planner.actions.records import log
from planner.farm.changes import Change, ChangeSet, applied
from planner.farm.farm import Farm
from planner.farm.faults import FarmFaultError, Fault
from planner.farm.fields import Id
from planner.farm.log import LogEntry
from planner.planning.dating import Dating


class EntryRefusedError(FarmFaultError):
    """Raised when one of many entries cannot be: `number` counts from 0 which, and nothing is done."""

    def __init__(self, number: int, faults: tuple[Fault, ...]) -> None:
        """Keep which entry it is, and why."""
        super().__init__(faults)
        self.number = number


def log_all(
    farm: Farm, entries: Sequence[LogEntry], dating_of: Callable[[Farm], Dating], *, title: str
) -> ChangeSet:
    """Note entries one after the other, with all they change, in one act.

    Raises `EntryRefusedError` for the first that cannot be.
    """
    changes: list[Change] = []
    for number, entry in enumerate(entries):
        try:
            one = log(farm, entry, dating_of(farm))
        except FarmFaultError as refused:
            raise EntryRefusedError(number, refused.faults) from refused
        changes.extend(one.changes)
        farm = applied(farm, one)
    return ChangeSet(title=title, changes=together(changes))


def together(changes: Iterable[Change]) -> tuple[Change, ...]:
    """Return changes with those of one thing as one: from how it was first to how it is last."""
    first: dict[Id, Change] = {}
    last: dict[Id, Change] = {}
    for change in changes:
        first.setdefault(change.id, change)
        last[change.id] = change
    pairs = ((first[each].before, last[each].after) for each in first)
    return tuple(
        Change(before=before, after=after)
        for before, after in pairs
        if before != after and not (before is None and after is None)
    )
