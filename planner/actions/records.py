"""What a grower does with the log: note what happened, correct it, withdraw it.

The thing in the plan that an entry speaks of (a batch's days, fish, a dose) is written in the same
act, so that one undo takes both back. Nothing is ever taken out of the log.
What really stands in a place is not argued with: a batch that was to follow there loses the place and must
be given another.
"""

from __future__ import annotations

import dataclasses
from collections.abc import Iterator
from typing import Any, Final

from planner.actions.changing import altered, found
from planner.actions.effects import effect_of
from planner.farm.changes import Change, ChangeSet, applied
from planner.farm.crops import Batch, Phase, Placement
from planner.farm.farm import Farm, label_of, things
from planner.farm.faults import FarmFaultError, Fault, FaultKind
from planner.farm.fields import NO_ID, Id
from planner.farm.ids import id_from, new_id
from planner.farm.log import ABOUT, Happening, LogEntry
from planner.farm.log_checks import missing_of
from planner.planning.anchoring import anchored
from planner.planning.dating import Dating

_WORD: Final = "log entry"
_CODE_DIGITS: Final = 6


def new_entry(**given: Any) -> LogEntry:
    """Return an entry with an id and a code of its own: the day and six digits that nobody else has."""
    drawn = new_id()
    given.setdefault("code", f"{given['on'].isoformat()}-{drawn[:_CODE_DIGITS]}")
    return LogEntry(id=id_from(_WORD, given["code"]), **given)


def log(farm: Farm, entry: LogEntry, dating: Dating) -> ChangeSet:
    """Note what happened, with what it changes in the plan.

    Raises `FarmFaultError` when it is not said what the entry is about.
    """
    _refuse_open(entry)
    after = dataclasses.replace(farm, log_entries=(*farm.log_entries, entry))
    changes = (Change(after=entry), *_effects(after, entry, dating))
    return ChangeSet(title=f"Log: {_title(farm, entry)}", changes=changes)


def correct(farm: Farm, entry_id: Id, right: LogEntry, dating: Dating) -> ChangeSet:
    """Put a right entry in the place of a wrong one, which stays in the log."""
    wrong: LogEntry = found(farm, _WORD, entry_id)
    right = dataclasses.replace(right, corrects=wrong.id)
    _refuse_open(right)
    after = dataclasses.replace(farm, log_entries=(*farm.log_entries, right))
    effects = [*_effects(after, right, dating)]
    if wrong.batch not in (NO_ID, right.batch):
        effects.extend(_batch_effects(after, wrong, dating))
    title = f"Correct {wrong.code}: {_title(farm, right)}"
    return ChangeSet(title=title, changes=(Change(after=right), *effects))


def withdraw(farm: Farm, entry_id: Id, gone: LogEntry, dating: Dating) -> ChangeSet:
    """Say that what an entry tells never happened; `gone` says when that was noticed, and by whom."""
    wrong: LogEntry = found(farm, _WORD, entry_id)
    about = {field: getattr(wrong, field) for field in ABOUT}
    gone = dataclasses.replace(gone, what=Happening.WITHDRAWN, **about)
    return correct(farm, entry_id, gone, dating)


def _refuse_open(entry: LogEntry) -> None:
    missing = missing_of(entry)
    if missing:
        raise FarmFaultError(
            tuple(
                Fault(
                    kind=FaultKind.MISSING,
                    where=_WORD,
                    field=field,
                    message=f'{field} is missing: what = "{entry.what.value}" needs it.',
                )
                for field in missing
            )
        )


def _title(farm: Farm, entry: LogEntry) -> str:
    names = [
        label_of(thing)
        for field, word in ABOUT.items()
        for thing in things(farm, word)
        if thing.id == getattr(entry, field)
    ]
    amount = "" if entry.amount is None else f" {entry.amount:g} {entry.unit.value}".rstrip()
    return ", ".join((f"{entry.what.value}{amount}", *names, entry.on.isoformat()))


def _effects(farm: Farm, entry: LogEntry, dating: Dating) -> Iterator[Change]:
    yield from effect_of(farm, entry)
    yield from _batch_effects(farm, entry, dating)


def _batch_effects(farm: Farm, entry: LogEntry, dating: Dating) -> Iterator[Change]:
    if entry.batch == NO_ID:
        return
    batch: Batch = found(farm, "batch", entry.batch)
    after = anchored(batch, farm.log_entries, dating.lengths)
    fewer = tuple(_let_go(farm, batch, after.plants))
    mine = ChangeSet(title="", changes=(*fewer, *altered(farm, after)))
    yield from mine.changes
    if mine.changes:
        # What stands there stands there: who was to follow has to be given other places.
        yield from (Change(before=one) for one in dating.in_the_way(applied(farm, mine), batch.id))


def _let_go(farm: Farm, batch: Batch, plants: int) -> Iterator[Change]:
    """Yield the changes that free the last places in beds that fewer plants do not need."""
    standing = [one for one in farm.placements if one.batch == batch.id and one.phase is Phase.BED]
    spare = sum(one.count for one in standing) - plants
    for one in reversed(standing):
        if spare <= 0:
            return
        yield _smaller(one, spare)
        spare -= one.count


def _smaller(one: Placement, spare: int) -> Change:
    if spare >= one.count:
        return Change(before=one)
    return Change(before=one, after=dataclasses.replace(one, count=one.count - spare))
