"""What a grower does with the plan as a whole: name, span, targets, own entries, seed lots, proposals."""

from __future__ import annotations

import dataclasses
from collections.abc import Iterator
from datetime import date
from typing import Any, Final

from planner.actions.changing import addition, alteration, found, in_use, removal, users_of
from planner.farm.changes import Change, ChangeSet
from planner.farm.crops import SeedLot, Target
from planner.farm.farm import KINDS, Farm, OwnEntry, Thing, things
from planner.farm.faults import FarmFaultError, Fault, FaultKind
from planner.farm.fields import NO_ID, FieldKind, Id, specs_of
from planner.planning.proposal import Proposal

_TARGET: Final = "target"
_OWN: Final = "own entry"
_LOT: Final = "seed lot"


def rename_farm(farm: Farm, name: str) -> ChangeSet:
    """Give the farm another name."""
    return alteration(farm, dataclasses.replace(farm.settings, name=name), title=f"Rename the farm to {name}")


def change_notes(farm: Farm, notes: str) -> ChangeSet:
    """Change the notes on the farm as a whole."""
    return alteration(farm, dataclasses.replace(farm.settings, notes=notes), title="Change the farm's notes")


def change_span(farm: Farm, *, plan_from: date, plan_weeks: int) -> ChangeSet:
    """Plan from another day, or for another number of weeks."""
    after = dataclasses.replace(farm.settings, plan_from=plan_from, plan_weeks=plan_weeks)
    return alteration(farm, after, title=f"Plan {plan_weeks} weeks from {plan_from.isoformat()}")


def add_target(target: Target) -> ChangeSet:
    """Want so much of a crop each week."""
    return addition(f"Add target for {target.crop}", target)


def change_target(farm: Farm, target: Target) -> ChangeSet:
    """Put the changed target in place of the one with its id."""
    return alteration(farm, target, title=f"Change target for {target.crop}")


def remove_target(farm: Farm, target_id: Id) -> ChangeSet:
    """Remove a target."""
    target: Target = found(farm, _TARGET, target_id)
    return removal(farm, target, title=f"Remove target for {target.crop}")


def add_own_entry(entry: OwnEntry) -> ChangeSet:
    """Add an own crop, fish, feed or supplement."""
    return addition(f"Add {entry.name} to the catalogue", entry)


def change_own_entry(farm: Farm, entry: OwnEntry) -> ChangeSet:
    """Put the changed entry in place of the one with its id.

    Raises `FarmFaultError` when its key or shelf changes while something is named by it.
    """
    before: OwnEntry = found(farm, _OWN, entry.id)
    if (before.key, before.shelf) != (entry.key, entry.shelf):
        _refuse_if_used(farm, before)
    return alteration(farm, entry, title=f"Change {entry.name} in the catalogue")


def remove_own_entry(farm: Farm, entry_id: Id) -> ChangeSet:
    """Remove an own entry; raises `FarmFaultError` naming what is named by it."""
    entry: OwnEntry = found(farm, _OWN, entry_id)
    _refuse_if_used(farm, entry)
    return removal(farm, entry, title=f"Remove {entry.name} from the catalogue")


def _refuse_if_used(farm: Farm, entry: OwnEntry) -> None:
    users = tuple(_named_by(farm, entry))
    if users:
        raise FarmFaultError((in_use(entry, users),))


def _named_by(farm: Farm, entry: OwnEntry) -> Iterator[Thing]:
    """Yield everything whose crop, fish, feed or supplement is an own entry, and what is like it."""
    yield from (own for own in farm.own_entries if (own.shelf, own.like) == (entry.shelf, entry.key))
    for kind in KINDS:
        fields = [
            field
            for field, spec in specs_of(kind.owner).items()
            if spec.kind is FieldKind.KEY and spec.catalogue == entry.shelf.value
        ]
        for thing in things(farm, kind.word) if fields else ():
            if any(getattr(thing, field) == entry.key for field in fields):
                yield thing


def add_seed_lot(lot: SeedLot) -> ChangeSet:
    """Add a packet or delivery of seed."""
    return addition(f"Add seed lot {lot.code}", lot)


def change_seed_lot(farm: Farm, lot: SeedLot) -> ChangeSet:
    """Put the changed lot in place of the one with its id."""
    return alteration(farm, lot, title=f"Change seed lot {lot.code}")


def remove_seed_lot(farm: Farm, lot_id: Id, *, with_dependants: bool = False) -> ChangeSet:
    """Remove a seed lot; raises `FarmFaultError` naming the batches sown from it, unless they may let it go.

    Batches themselves stay.
    """
    lot: SeedLot = found(farm, _LOT, lot_id)
    return removal(farm, lot, title=f"Remove seed lot {lot.code}", with_dependants=with_dependants)


def adopt(farm: Farm, proposal: Proposal) -> ChangeSet:
    """Take up a proposal of successions as one act: what it replaces goes, its sowings and places come.

    Raises `FarmFaultError` when a batch it replaces is not on the farm any more, or has been locked since.
    """
    gone = frozenset(proposal.removed)
    batches = tuple(batch for batch in farm.batches if batch.id in gone)
    if len(batches) < len(gone) or any(batch.locked for batch in batches):
        raise FarmFaultError((_STALE,))
    hanging = tuple(users_of(farm, "batch", gone))
    count = len(proposal.batches)
    return ChangeSet(
        title=f"Adopt a plan of {count} sowing{'' if count == 1 else 's'}",
        changes=(
            *(_let_go(thing, field) for thing, field in reversed(hanging)),
            *(Change(before=batch) for batch in reversed(batches)),
            *(Change(after=batch) for batch in proposal.batches),
            *(Change(after=placement) for placement in proposal.placements),
        ),
    )


def _let_go(thing: Thing, field: str) -> Change:
    """Return the change of what refers to a batch that goes: it goes too, or lets go of it."""
    if specs_of(type(thing))[field].needed:
        return Change(before=thing)
    cleared: dict[str, Any] = {field: NO_ID}
    return Change(before=thing, after=dataclasses.replace(thing, **cleared))


_STALE: Final = Fault(
    kind=FaultKind.UNKNOWN_NAME,
    where="plan",
    message="the farm has changed since this plan was made: a batch that it replaces is gone or locked.",
    remedy="Make the plan again.",
)
