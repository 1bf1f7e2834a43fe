"""Whether a batch is sown from seed of its own crop.

An own crop that is like another may be sown from that one's seed: it is the same plant, with the grower's
figures.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping

from planner.farm.crops import Batch, SeedLot
from planner.farm.farm import OwnEntry, Shelf
from planner.farm.faults import Fault, FaultKind
from planner.farm.fields import Id


def seed_lot_faults(
    batches: Iterable[Batch], lots: Mapping[Id, SeedLot], own_entries: Iterable[OwnEntry]
) -> Iterator[Fault]:
    """Yield a fault for every batch whose seed lot is of another crop, or of another variety."""
    like = {entry.key: entry.like for entry in own_entries if entry.shelf is Shelf.CROP}
    for batch in batches:
        lot = lots.get(batch.seed_lot)
        if lot is None:
            continue
        if _root(lot.crop, like) != _root(batch.crop, like):
            yield _fault(batch, lot, "crop", batch.crop, lot.crop)
        elif batch.variety and lot.variety and not _same(batch.variety, lot.variety):
            yield _fault(batch, lot, "variety", batch.variety, lot.variety)


def _root(crop: str, like: Mapping[str, str]) -> str:
    """Return the crop that an own one comes from in the end; one that is like itself is that of the book."""
    seen = {crop}
    while like.get(crop, crop) not in seen:
        crop = like[crop]
        seen.add(crop)
    return crop


def _same(one: str, other: str) -> bool:
    return " ".join(one.casefold().split()) == " ".join(other.casefold().split())


def _fault(batch: Batch, lot: SeedLot, field: str, wanted: str, found: str) -> Fault:
    kinds = f'{field} "{found}", but the batch is of {field} "{wanted}"'
    return Fault(
        kind=FaultKind.NOT_SUITED,
        where=f'batch "{batch.code}"',
        field="seed_lot",
        value=lot.code,
        limit=f"seed of {field} {wanted}",
        message=f'seed_lot "{lot.code}" is seed of {kinds}.',
        remedy=f"Choose a lot of the same {field}, or leave seed_lot out.",
    )
