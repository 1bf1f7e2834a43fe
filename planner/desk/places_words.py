"""Says where batches stand, in the words of their beds. Must know nothing of widgets or forecasts."""

from __future__ import annotations

from collections.abc import Iterable

from planner.desk.say import tr
from planner.farm.crops import Phase, Placement
from planner.farm.farm import Farm, by_id
from planner.farm.fields import Id
from planner.farm.site import Bed
from planner.farm.species import BedKind


def row_words_of(bed: Bed, unit: int) -> str:
    """Return what one raft, block or tray is called beneath the name of its bed."""
    if bed.units == 1:
        return bed.name
    words = {BedKind.RAFT: "Raft {unit}", BedKind.MEDIA: "Block {unit}", BedKind.NURSERY: "Tray {unit}"}
    return tr(words[bed.kind], unit=unit)


def unit_words_of(bed: Bed, unit: int) -> str:
    """Return what one raft, block or tray of a bed is called."""
    if bed.units == 1:
        return bed.name
    word = {BedKind.RAFT: tr("raft"), BedKind.MEDIA: tr("block"), BedKind.NURSERY: tr("tray")}[bed.kind]
    return f"{bed.name}, {word} {unit}"


def run_words(placement: Placement, bed: Bed) -> str:
    """Return a run of places, such as "North raft, raft 2, places 1–12"."""
    return _on_unit(placement, unit_words_of(bed, placement.unit))


def _on_unit(placement: Placement, where: str) -> str:
    if placement.count == 1:
        return tr("{where}, place {first}", where=where, first=placement.first)
    return tr("{where}, places {first}–{last}", where=where, first=placement.first, last=placement.last)


def beds_by_batch(farm: Farm) -> dict[Id, str]:
    """Return where every batch stands in its final places."""
    grown = (placement for placement in farm.placements if placement.phase is Phase.BED)
    return {batch: words for (batch, _), words in _places(farm, grown).items()}


def places_of(farm: Farm, batch: Id) -> dict[Phase, str]:
    """Return where one batch stands in every phase that it holds places in; quick on a big farm."""
    own = [placement for placement in farm.placements if placement.batch == batch]
    return {phase: words for (_, phase), words in _places(farm, own).items()}


def _places(farm: Farm, placements: Iterable[Placement]) -> dict[tuple[Id, Phase], str]:
    beds: dict[Id, Bed] = by_id(farm.beds)
    units: dict[tuple[Id, int], str] = {}  # there are far fewer than placements
    found: dict[tuple[Id, Phase], list[str]] = {}
    for placement in placements:
        unit = placement.bed, placement.unit
        where = units.get(unit)
        if where is None:
            where = units[unit] = unit_words_of(beds[placement.bed], placement.unit)
        found.setdefault((placement.batch, placement.phase), []).append(_on_unit(placement, where))
    return {key: "; ".join(words) for key, words in found.items()}
