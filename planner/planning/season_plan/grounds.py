"""Groups the beds of a farm into grounds and nurseries. Must know no batches and no days."""

from __future__ import annotations

from collections.abc import Iterator

from planner.farm.farm import Farm
from planner.farm.fields import Id
from planner.farm.site import Bed
from planner.farm.species import BedKind
from planner.planning.season_plan.values import Ground, Nursery, Pool


def grounds_of(farm: Farm, *, between: frozenset[Id]) -> tuple[Ground, ...]:
    """Return beds for growing by loop, kind and light, in the order they were entered; none `between`."""
    found: dict[tuple[int, BedKind, float, float], list[Bed]] = {}
    for loop, bed in _beds(farm):
        if bed.kind is not BedKind.NURSERY and bed.id not in between:
            key = (loop, bed.kind, bed.light_share, bed.lamp_mol_per_m2_d)
            found.setdefault(key, []).append(bed)
    return tuple(
        Ground(
            loop=loop,
            kind=kind,
            beds=tuple(bed.id for bed in beds),
            places=sum(bed.places for bed in beds),
            light_share=light,
            lamp_mol_per_m2_d=lamp,
        )
        for (loop, kind, light, lamp), beds in found.items()
    )


def nurseries_by_loop(farm: Farm) -> tuple[Nursery, ...]:
    """Return the nurseries of each loop that has any."""
    found: dict[int, list[Bed]] = {}
    for loop, bed in _beds(farm):
        if bed.kind is BedKind.NURSERY:
            found.setdefault(loop, []).append(bed)
    return tuple(
        Nursery(loop=loop, beds=tuple(bed.id for bed in beds), cells=sum(bed.places for bed in beds))
        for loop, beds in found.items()
    )


def pools_of(farm: Farm, *, between: frozenset[Id]) -> tuple[Pool, ...]:
    """Return the beds of each loop in which plants stand at an intermediate distance."""
    found: dict[int, list[Bed]] = {}
    for loop, bed in _beds(farm):
        if bed.id in between:
            found.setdefault(loop, []).append(bed)
    return tuple(
        Pool(loop=loop, beds=tuple(bed.id for bed in beds), places=sum(bed.places for bed in beds))
        for loop, beds in found.items()
    )


def _beds(farm: Farm) -> Iterator[tuple[int, Bed]]:
    loops = {loop.id: number for number, loop in enumerate(farm.loops)}
    return ((loops[bed.loop], bed) for bed in farm.beds)
