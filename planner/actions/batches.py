"""What a grower does with batches: sow, change, move, place, split, copy, lock, remove.

Places are looked for by `Places` of the planning room, which the caller makes for the farm as it is.
"""

from __future__ import annotations

import dataclasses
from collections.abc import Iterable, Iterator, Sequence
from datetime import date, timedelta
from typing import Final

from planner.actions.changing import addition, alteration, altered, found, removal
from planner.actions.rooms import NoRoomError, Rooms, refusal_fault
from planner.farm.changes import Change, ChangeSet
from planner.farm.checks import checked
from planner.farm.codes import codes_of
from planner.farm.crops import Batch, Phase, Placement
from planner.farm.farm import Farm
from planner.farm.fields import Id
from planner.farm.ids import new_id
from planner.farm.site import Bed
from planner.farm.species import BedKind
from planner.planning.placement import Refusal

_WORD: Final = "batch"


def free_code(farm: Farm, *, crop_code: str, sow_on: date) -> str:
    """Return a code no batch has yet: crop, year and ISO week of sowing, and letters that count up."""
    return codes_of(farm).give(crop_code, sow_on)


def sow_batch(batch: Batch, placements: Iterable[Placement] = ()) -> ChangeSet:
    """Add a batch with the places it takes."""
    return addition(f"Sow {batch.code}", batch, *placements)


def change_batch(farm: Farm, batch: Batch) -> ChangeSet:
    """Put the changed batch in place of the one with its id."""
    return alteration(farm, batch, title=f"Change {batch.code}")


def lock_batch(farm: Farm, batch_id: Id, *, locked: bool) -> ChangeSet:
    """Say whether a plan may move a batch."""
    batch: Batch = found(farm, _WORD, batch_id)
    title = f"Lock {batch.code}" if locked else f"Unlock {batch.code}"
    return alteration(farm, dataclasses.replace(batch, locked=locked), title=title)


def lock_batches(farm: Farm, batches: Iterable[Batch], *, locked: bool) -> ChangeSet:
    """Say of several batches at once whether a plan may move them; where it is so, nothing changes."""
    parts = [lock_batch(farm, batch.id, locked=locked) for batch in batches if batch.locked != locked]
    if len(parts) == 1:
        return parts[0]
    title = f"Lock {len(parts)} batches" if locked else f"Unlock {len(parts)} batches"
    return ChangeSet(title=title, changes=tuple(change for part in parts for change in part.changes))


def remove_batch(farm: Farm, batch_id: Id) -> ChangeSet:
    """Remove a batch and let its places go."""
    batch: Batch = found(farm, _WORD, batch_id)
    return removal(farm, batch, title=f"Remove {batch.code}", with_dependants=True)


def copy_batch(farm: Farm, batch_id: Id, *, code: str, by_days: int = 0) -> ChangeSet:
    """Sow the same once more, so many days later, without places of its own yet."""
    batch: Batch = found(farm, _WORD, batch_id)
    sow_on = shifted(batch, by_days).sow_on
    twin = dataclasses.replace(batch, id=new_id(), code=code, sow_on=sow_on, locked=False)
    return addition(f"Copy {batch.code} as {code}", twin)


def move_batch(
    farm: Farm,
    places: Rooms,
    batch_id: Id,
    *,
    by_days: int = 0,
    bed: Id | None = None,
    unit: int | None = None,
) -> ChangeSet:
    """Move a batch in time, to another bed or raft, or both at once.

    In time alone it keeps its places. To another bed go the places of the phase that can stand
    there: nursery trays take the nursery phase, other beds the final places.

    Raises `NoRoomError` when there is no room, with the refusal of the planning room.
    """
    batch: Batch = found(farm, _WORD, batch_id)
    moved = shifted(batch, by_days)
    if bed is None and unit is None:
        return ChangeSet(title=_title(batch, by_days, None, None), changes=altered(farm, moved))
    target: Bed = found(farm, "bed", bed if bed is not None else _bed_of(farm, batch))
    phase = Phase.NURSERY if target.kind is BedKind.NURSERY else Phase.BED
    if phase is Phase.BED:
        moved = dataclasses.replace(moved, bed=target.id)
    standing = placements_of(farm, batch_id, phase)
    count = sum(placement.count for placement in standing) or batch.plants
    new = _fitted(farm, places, batch, phase=phase, bed=target.id, count=count, unit=unit, by_days=by_days)
    title = _title(batch, by_days, target, unit)
    return ChangeSet(title=title, changes=(*altered(farm, moved), *_replaced(standing, new)))


def shifted(batch: Batch, by_days: int) -> Batch:
    """Return a batch sown so many days later; raises `FarmFaultError` beyond the dates a farm can hold."""
    try:
        sow_on = batch.sow_on + timedelta(days=by_days)
    except OverflowError:
        sow_on = date.max if by_days > 0 else date.min
    moved: Batch = checked(batch, sow_on=sow_on)
    return moved


def _bed_of(farm: Farm, batch: Batch) -> Id:
    standing = placements_of(farm, batch.id, Phase.BED)
    return standing[0].bed if standing else batch.bed


def _title(batch: Batch, by_days: int, bed: Bed | None, unit: int | None) -> str:
    title = f"Move {batch.code}"
    if bed is not None:
        title += f" to {bed.name}" + (f" {unit}" if unit is not None else "")
    if by_days:
        days = abs(by_days)
        title += f" {days} day{'' if days == 1 else 's'} {'later' if by_days > 0 else 'earlier'}"
    return title


def place_batch(
    farm: Farm,
    places: Rooms,
    batch_id: Id,
    *,
    phase: Phase,
    bed: Id,
    unit: int | None = None,
    count: int | None = None,
) -> ChangeSet:
    """Give a batch places for a phase, in place of those it has for it; as many as it has plants.

    Raises `NoRoomError` when there is no room, with the refusal of the planning room.
    """
    batch: Batch = found(farm, _WORD, batch_id)
    target: Bed = found(farm, "bed", bed)
    wanted = batch.plants if count is None else count
    new = _fitted(farm, places, batch, phase=phase, bed=bed, count=wanted, unit=unit)
    title = f"Place {batch.code} in {target.name}" + (f" {unit}" if unit is not None else "")
    return ChangeSet(title=title, changes=tuple(_replaced(placements_of(farm, batch_id, phase), new)))


def put_in_places(farm: Farm, batch_id: Id, placements: Sequence[Placement], *, phase: Phase) -> ChangeSet:
    """Give a batch exactly the places that were chosen by hand for a phase."""
    batch: Batch = found(farm, _WORD, batch_id)
    standing = placements_of(farm, batch_id, phase)
    return ChangeSet(title=f"Place {batch.code}", changes=tuple(_replaced(standing, placements)))


def unplace_batch(farm: Farm, batch_id: Id, *, phase: Phase | None = None) -> ChangeSet:
    """Let the places of a batch go, those of one phase or all of them."""
    batch: Batch = found(farm, _WORD, batch_id)
    gone = placements_of(farm, batch_id, phase)
    changes = tuple(Change(before=placement) for placement in reversed(gone))
    return ChangeSet(title=f"Take {batch.code} out of its places", changes=changes)


def split_batch(farm: Farm, batch_id: Id, *, plants: int, code: str) -> ChangeSet:
    """Make so many plants of a batch a batch of their own, with their share of its places.

    The new batch takes the last places. Raises `FarmFaultError` unless both keep a plant.
    """
    batch: Batch = found(farm, _WORD, batch_id)
    rest: Batch = checked(batch, plants=batch.plants - plants)
    part: Batch = checked(batch, id=new_id(), code=code, plants=plants)
    changes = [Change(before=batch, after=rest), Change(after=part)]
    for phase in Phase:
        standing = placements_of(farm, batch_id, phase)
        held = sum(placement.count for placement in standing)
        changes.extend(_handed_over(standing, held * plants // batch.plants, part.id))
    return ChangeSet(title=f"Split {code} from {batch.code}", changes=tuple(changes))


def _handed_over(standing: Sequence[Placement], count: int, to_batch: Id) -> Iterator[Change]:
    """Yield the changes that give the last `count` places to another batch."""
    for placement in reversed(standing):
        if count <= 0:
            return
        taken = min(count, placement.count)
        count -= taken
        if taken == placement.count:
            yield Change(before=placement, after=dataclasses.replace(placement, batch=to_batch))
            continue
        kept = placement.count - taken
        yield Change(before=placement, after=dataclasses.replace(placement, count=kept))
        first = placement.first + kept
        yield Change(
            after=dataclasses.replace(placement, id=new_id(), batch=to_batch, first=first, count=taken)
        )


def placements_of(farm: Farm, batch_id: Id, phase: Phase | None = None) -> tuple[Placement, ...]:
    """Return the runs of places of a batch, in order; of one phase, or all."""
    return tuple(p for p in farm.placements if p.batch == batch_id and phase in (None, p.phase))


def _fitted(
    farm: Farm,
    places: Rooms,
    batch: Batch,
    *,
    phase: Phase,
    bed: Id,
    count: int,
    unit: int | None,
    by_days: int = 0,
) -> tuple[Placement, ...]:
    answer = places.fit(batch.id, phase, bed, count=count, unit=unit, by_days=by_days)
    if isinstance(answer, Refusal):
        raise NoRoomError(refusal_fault(farm, answer), answer)
    return answer


def _replaced(standing: Sequence[Placement], new: Sequence[Placement]) -> Iterator[Change]:
    """Yield the changes from some runs to others, keeping the ids of as many as there are of both."""
    for before, after in zip(standing, new, strict=False):
        kept = dataclasses.replace(after, id=before.id)
        if kept != before:
            yield Change(before=before, after=kept)
    for before in reversed(standing[len(new) :]):
        yield Change(before=before)
    for after in new[len(standing) :]:
        yield Change(after=after)
