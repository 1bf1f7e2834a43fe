"""Which beds a crop may stand in, grouped by what surrounds them: in one group a batch grows alike."""

from __future__ import annotations

import math
from collections.abc import Iterable, Sequence
from dataclasses import dataclass

from planner.farm.farm import Farm
from planner.farm.fields import NO_ID, Id
from planner.farm.site import Bed
from planner.farm.species import BedKind, Crop


@dataclass(frozen=True, slots=True, kw_only=True)
class Ground:
    """Beds on one loop with the same light, and the nursery that seedlings for them are raised in."""

    beds: tuple[Id, ...]
    nursery: Id


def grounds_for(
    crop: Crop, farm: Farm, *, only: Sequence[Id] = (), between: frozenset[Id] = frozenset()
) -> tuple[Ground, ...]:
    """Return the grounds of a crop: its likeliest kind of bed first, then in the farm's order.

    With `only` no other beds are used; else those in `between` are left out, where plants stand at an
    intermediate distance.
    """
    groups: dict[tuple[BedKind, Id, float, float], list[Id]] = {}
    for kind in crop.beds:
        for bed in farm.beds:
            if bed.kind is kind and (bed.id in only if only else bed.id not in between):
                groups.setdefault(_alike(bed), []).append(bed.id)
    return tuple(Ground(beds=tuple(beds), nursery=_nursery(farm, key[1])) for key, beds in groups.items())


def beds_between(farm: Farm, crops: Iterable[Crop]) -> frozenset[Id]:
    """Return the beds in which crops stand at an intermediate distance, none for crops without one.

    A bed is one when its places lie nearer to the intermediate than to the final distance of every crop
    that has both: closer than halfway, as distances are halved and doubled. A loop whose beds are all as
    close has none, for something must stand in them to the end.
    """
    spaced = [crop for crop in crops if crop.spacing_days > 0]
    if not spaced:
        return frozenset()
    least = max(math.sqrt(crop.spacing_density_per_m2 * crop.bed_density_per_m2) for crop in spaced)
    growing = [bed for bed in farm.beds if bed.kind is not BedKind.NURSERY]
    close = {bed.id for bed in growing if bed.places > least * bed.area_m2}
    wide = {bed.loop for bed in growing if bed.id not in close}
    return frozenset(bed.id for bed in growing if bed.id in close and bed.loop in wide)


def _alike(bed: Bed) -> tuple[BedKind, Id, float, float]:
    return bed.kind, bed.loop, bed.light_share, bed.lamp_mol_per_m2_d


def _nursery(farm: Farm, loop: Id) -> Id:
    nurseries = (bed.id for bed in farm.beds if bed.kind is BedKind.NURSERY and bed.loop == loop)
    return next(nurseries, NO_ID)
