"""Brings an act up to a farm that somebody else has changed meanwhile, field by field.

What both left alone or only one of them changed goes together; where both changed the same field to
different values, it is a clash, and the one who comes later is told both.
"""

from __future__ import annotations

import dataclasses
from dataclasses import dataclass
from typing import Any

from planner.farm.changes import Change, ChangeSet
from planner.farm.checks import where_of
from planner.farm.farm import KINDS, SETTINGS_KIND, Farm, Thing, things
from planner.farm.faults import FarmFaultError, Fault, FaultKind
from planner.farm.fields import Id


class ClashError(FarmFaultError):
    """Two people changed the same field; `mine` is the act brought up to the farm so that it would win."""

    def __init__(self, faults: tuple[Fault, ...], mine: ChangeSet) -> None:
        """Keep the faults, each with both values, and the act that would put this side's values in."""
        super().__init__(faults)
        self.mine = mine


@dataclass(frozen=True, slots=True)
class _Merged:
    """One change brought up to the farm, None when nothing of it is left to do, and what clashed in it."""

    change: Change | None
    faults: tuple[Fault, ...] = ()


def rebased(farm: Farm, change_set: ChangeSet) -> ChangeSet:
    """Return the act as it must be to be applied to `farm`.

    Raises `ClashError` when a field that the act changes was changed to something else meanwhile.
    """
    now = {word: _by_id(farm, word) for word in change_set.words}
    changes: list[Change] = []
    faults: list[Fault] = []
    for change in change_set.changes:
        known = now[change.word]
        merged = _merged(change, known.get(change.id))
        faults.extend(merged.faults)
        if merged.change is not None:
            changes.append(merged.change)
            _follow(known, merged.change)
    rebuilt = ChangeSet(title=change_set.title, changes=tuple(changes))
    if faults:
        raise ClashError(tuple(dict.fromkeys(faults)), rebuilt)
    return rebuilt


def brought_up(opened: Thing, wanted: Thing, current: Thing) -> Thing:
    """Return what was wanted of a thing as it was opened, on top of what it is by now.

    Raises `ClashError` when a field that is altered was altered to something else meanwhile.
    """
    if current == opened:
        return wanted
    merged = _altered(opened, wanted, current)
    if merged.faults:
        mine = () if merged.change is None else (merged.change,)
        raise ClashError(merged.faults, ChangeSet(title="", changes=mine))
    return current if merged.change is None else merged.change.thing


def differences(before: Farm, after: Farm, title: str) -> ChangeSet:
    """Return what leads from one farm to another, owners first; the order within a kind is left aside."""
    changes: list[Change] = []
    if before.settings != after.settings:
        changes.append(Change(before=before.settings, after=after.settings))
    for kind in KINDS:
        was, now = _by_id(before, kind.word), _by_id(after, kind.word)
        touched = (each for each in {**was, **now} if was.get(each) != now.get(each))
        changes.extend(Change(before=was.get(each), after=now.get(each)) for each in touched)
    return ChangeSet(title=title, changes=tuple(changes))


def _by_id(farm: Farm, word: str) -> dict[Id, Thing]:
    if word == SETTINGS_KIND.word:
        return {farm.settings.id: farm.settings}
    return {thing.id: thing for thing in things(farm, word)}


def _follow(known: dict[Id, Thing], change: Change) -> None:
    if change.after is None:
        known.pop(change.id, None)
    else:
        known[change.id] = change.after


def _merged(change: Change, current: Thing | None) -> _Merged:
    if change.before is None:
        assert change.after is not None
        return _Merged(change) if current is None else _put_in_twice(change, current)
    if change.after is None:
        return _taken_out(change, current)
    if current == change.before:
        return _Merged(change)
    if current is None:
        return _Merged(Change(after=change.after), (_gone(change),))
    return _altered(change.before, change.after, current)


def _put_in_twice(change: Change, current: Thing) -> _Merged:
    """A thing that is there already under its id comes from an act done again; only differences count."""
    if current == change.after:
        return _Merged(None)
    assert change.after is not None
    return _altered(change.after, change.after, current)


def _taken_out(change: Change, current: Thing | None) -> _Merged:
    """What is gone needs no taking out; what somebody altered meanwhile is not thrown away unseen."""
    if current is None:
        return _Merged(None)
    out = Change(before=current, index=change.index if current == change.before else None)
    if current == change.before:
        return _Merged(out)
    assert change.before is not None
    faults = tuple(
        _clash(current, field, mine="removed", theirs=_said(getattr(current, field)), was=_said(value))
        for field, value in _fields(change.before)
        if getattr(current, field) != value
    )
    return _Merged(out, faults)


def _altered(before: Thing, after: Thing, current: Thing) -> _Merged:
    mine = {field: value for field, value in _fields(after) if value != getattr(before, field)}
    faults = tuple(
        _clash(
            current,
            field,
            mine=_said(value),
            theirs=_said(getattr(current, field)),
            was=_said(getattr(before, field)),
        )
        for field, value in mine.items()
        if getattr(current, field) not in (getattr(before, field), value)
    )
    anything: Any = current  # one of many classes, whose fields no checker can tell apart here
    wanted: Thing = dataclasses.replace(anything, **mine)
    if wanted == current:
        return _Merged(None, faults)
    return _Merged(Change(before=current, after=wanted), faults)


def _fields(thing: Thing) -> tuple[tuple[str, object], ...]:
    return tuple((field.name, getattr(thing, field.name)) for field in dataclasses.fields(thing))


def _clash(thing: Thing, field: str, *, mine: str, theirs: str, was: str) -> Fault:
    return Fault(
        kind=FaultKind.CHANGED_MEANWHILE,
        where=where_of(thing),
        field=field,
        value=mine,
        limit=theirs,
        message=f"{field} was {was}; somebody else made it {theirs} meanwhile, and you want {mine}.",
        remedy="Keep theirs, or put yours in its place; both stay in the history.",
    )


def _gone(change: Change) -> Fault:
    return Fault(
        kind=FaultKind.CHANGED_MEANWHILE,
        where=where_of(change.thing),
        value="altered",
        limit="removed",
        message="somebody else removed it meanwhile, and you altered it.",
        remedy="Leave it removed, or put it back as you have it.",
    )


def _said(value: object) -> str:
    said = getattr(value, "value", value)
    return f'"{said}"' if isinstance(said, str) else str(said)
