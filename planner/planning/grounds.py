"""Which beds a crop may stand in, grouped by what surrounds them: in one group a batch grows alike."""

from __future__ import annotations

from collections.abc import Sequence
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


def grounds_for(crop: Crop, farm: Farm, *, only: Sequence[Id] = ()) -> tuple[Ground, ...]:
    """Return the grounds of a crop: its likeliest kind of bed first, then in the farm's order.

    With `only` no other beds are used.
    """
    groups: dict[tuple[BedKind, Id, float, float], list[Id]] = {}
    for kind in crop.beds:
        for bed in farm.beds:
            if bed.kind is kind and (not only or bed.id in only):
                groups.setdefault(_alike(bed), []).append(bed.id)
    return tuple(Ground(beds=tuple(beds), nursery=_nursery(farm, key[1])) for key, beds in groups.items())


def _alike(bed: Bed) -> tuple[BedKind, Id, float, float]:
    return bed.kind, bed.loop, bed.light_share, bed.lamp_mol_per_m2_d


def _nursery(farm: Farm, loop: Id) -> Id:
    nurseries = (bed.id for bed in farm.beds if bed.kind is BedKind.NURSERY and bed.loop == loop)
    return next(nurseries, NO_ID)
