"""The parts that change sets are put together from: find, add, alter, remove, with all that hangs on it."""

from __future__ import annotations

import dataclasses
from collections.abc import Iterable, Iterator
from typing import Any

from planner.farm.changes import Change, ChangeSet
from planner.farm.checks import where_of
from planner.farm.farm import KINDS, Farm, Thing, kind_named, kind_of, things
from planner.farm.faults import FarmFaultError, Fault, FaultKind
from planner.farm.fields import NO_ID, FieldKind, Id, specs_of

_NAMED_AT_MOST = 8


def found(farm: Farm, word: str, thing_id: Id) -> Any:
    """Return one thing of a farm; raises `FarmFaultError` when it is not there."""
    for thing in things(farm, word):
        if thing.id == thing_id:
            return thing
    raise FarmFaultError(
        (Fault(kind=FaultKind.UNKNOWN_NAME, where=word, message=f"this {word} is not on the farm any more."),)
    )


def addition(title: str, *many: Thing) -> ChangeSet:
    """Return the set that adds things, owners first."""
    return ChangeSet(title=title, changes=tuple(Change(after=thing) for thing in many))


def alteration(farm: Farm, after: Thing, *, title: str) -> ChangeSet:
    """Return the set that puts a thing in the place of the one with its id."""
    return ChangeSet(title=title, changes=altered(farm, after))


def altered(farm: Farm, after: Thing) -> tuple[Change, ...]:
    """Return the change to a thing, or none when it stays as it is."""
    before = found(farm, kind_of(after).word, after.id)
    return () if before == after else (Change(before=before, after=after),)


def removal(farm: Farm, thing: Thing, *, title: str, with_dependants: bool = False) -> ChangeSet:
    """Return the set that removes a thing.

    What stands on it is removed along with it when `with_dependants`; references that may be left
    open are cleared. Otherwise `FarmFaultError` names what is in the way.
    """
    gone, cleared = _hanging_on(farm, thing)
    if (gone or cleared) and not with_dependants:
        raise FarmFaultError((in_use(thing, (*gone, *(before for before, _ in cleared))),))
    changes = [Change(before=before, after=after) for before, after in cleared]
    changes += [Change(before=dependant) for dependant in reversed(gone)]
    return ChangeSet(title=title, changes=(*changes, Change(before=thing)))


def in_use(thing: Thing, users: Iterable[Thing]) -> Fault:
    """Return the fault that a thing cannot go because others need it, naming them."""
    names = list(dict.fromkeys(where_of(user) for user in users))
    more = len(names) - _NAMED_AT_MOST
    listed = ", ".join(names[:_NAMED_AT_MOST]) + (f" and {more} more" if more > 0 else "")
    return Fault(
        kind=FaultKind.IN_USE,
        where=where_of(thing),
        value=listed,
        message=f"it is used by {listed}.",
        remedy="Remove or move these first, or remove all of them together.",
    )


def _hanging_on(farm: Farm, thing: Thing) -> tuple[list[Thing], list[tuple[Thing, Thing]]]:
    """Return what has to go when a thing goes, owners first, and what only lets go of it."""
    gone: dict[str, set[Id]] = {kind_of(thing).word: {thing.id}}
    dependants: list[Thing] = []
    cleared: list[tuple[Thing, Thing]] = []
    for kind in KINDS:
        refers = _references(kind.owner, gone)
        for other in things(farm, kind.word) if refers else ():
            pointing = [field for field, needed, ids in refers if getattr(other, field) in ids]
            if any(needed for field, needed, _ in refers if field in pointing):
                gone.setdefault(kind.word, set()).add(other.id)
                dependants.append(other)
            elif pointing:
                let_go: dict[str, Any] = dict.fromkeys(pointing, NO_ID)
                cleared.append((other, dataclasses.replace(other, **let_go)))
    return dependants, cleared


def _references(owner: type[Any], gone: dict[str, set[Id]]) -> list[tuple[str, bool, set[Id]]]:
    """Return the fields of a kind that may point at what goes: name, needed, ids that go."""
    return [
        (field, spec.needed, gone[spec.refers_to])
        for field, spec in specs_of(owner).items()
        if spec.kind is FieldKind.REFERENCE and spec.refers_to in gone
    ]


def users_of(farm: Farm, word: str, ids: frozenset[Id]) -> Iterator[tuple[Thing, str]]:
    """Yield everything that refers to one of the things of a kind, with the field that does."""
    for kind in KINDS:
        for field, _, wanted in _references(kind.owner, {kind_named(word).word: set(ids)}):
            for other in things(farm, kind.word):
                if getattr(other, field) in wanted:
                    yield other, field
