"""Says in words where a batch stands: which bed, which rafts, which holes.

Must not know reports or layout.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from typing import Final

from planner.farm.crops import Batch, Phase, Placement
from planner.farm.farm import Farm, by_id
from planner.farm.fields import NO_ID, Id
from planner.farm.site import Bed
from planner.farm.species import BedKind
from planner.paper.words import NO_BREAK, count_words, range_words

NOT_CHOSEN: Final = "places not chosen"

UNIT_WORDS: Final = {
    BedKind.NURSERY: ("tray", "trays"),
    BedKind.RAFT: ("raft", "rafts"),
    BedKind.MEDIA: ("block", "blocks"),
}
PLACE_WORDS: Final = {
    BedKind.NURSERY: ("cell", "cells"),
    BedKind.RAFT: ("hole", "holes"),
    BedKind.MEDIA: ("place", "places"),
}


@dataclass(frozen=True, slots=True, kw_only=True)
class Run:
    """Units that are held whole, or places on one unit."""

    first_unit: int
    last_unit: int
    first: int
    last: int
    whole: bool


class PlaceBook:
    """Looks up where batches of one farm stand."""

    def __init__(self, farm: Farm) -> None:
        self._beds: dict[Id, Bed] = by_id(farm.beds)
        self._held: dict[tuple[Id, Phase], list[Placement]] = {}
        for placement in farm.placements:
            self._held.setdefault((placement.batch, placement.phase), []).append(placement)
        self._nurseries = tuple(bed for bed in farm.beds if bed.kind is BedKind.NURSERY)

    def held(self, batch: Batch, phase: Phase) -> tuple[Placement, ...]:
        """Return the runs of places a batch holds in a phase."""
        return tuple(self._held.get((batch.id, phase), ()))

    def where(self, batch: Batch, phase: Phase) -> tuple[str, ...]:
        """Return where a batch stands in a phase, one text for each bed.

        A batch without places is told by the bed it is meant for, or that none is chosen.
        """
        by_bed: dict[Id, list[Placement]] = {}
        for placement in self.held(batch, phase):
            by_bed.setdefault(placement.bed, []).append(placement)
        if by_bed:
            return tuple(bed_words(self._beds[bed], many) for bed, many in by_bed.items())
        if phase is Phase.BED and batch.bed != NO_ID:
            return (f"{self._beds[batch.bed].name}, {NOT_CHOSEN}",)
        return (NOT_CHOSEN,)

    def nursery_words(self, batch: Batch) -> tuple[str, ...]:
        """Return where the seedlings stand; a nursery that is the only one needs no name."""
        texts = self.where(batch, Phase.NURSERY)
        if len(self._nurseries) > 1:
            return texts
        return tuple(text.removeprefix(f"{self._nurseries[0].name}: ") for text in texts)

    def cells_per_tray(self) -> int | None:
        """Return the cells of a nursery tray when all trays of the farm have as many, else None."""
        sizes = {bed.places_per_unit for bed in self._nurseries}
        return sizes.pop() if len(sizes) == 1 else None


def bed_words(bed: Bed, held: Iterable[Placement]) -> str:
    """Return the places held in one bed, whole units drawn together."""
    one, many = UNIT_WORDS[bed.kind]
    texts = []
    for run in runs_of(bed, held):
        word = one if run.first_unit == run.last_unit else many
        unit = f"{word}{NO_BREAK}{range_words(run.first_unit, run.last_unit)}"
        texts.append(f"{unit} (all)" if run.whole else f"{unit} {_places(bed, run)}")
    return f"{bed.name}: {', '.join(texts)}"


def _places(bed: Bed, run: Run) -> str:
    one, many = PLACE_WORDS[bed.kind]
    return f"{one if run.first == run.last else many}{NO_BREAK}{range_words(run.first, run.last)}"


def runs_of(bed: Bed, held: Iterable[Placement]) -> tuple[Run, ...]:
    """Return runs of places in order, touching ones joined, whole units side by side joined."""
    joined: list[Run] = []
    for run in _by_unit(bed, held):
        before = joined[-1] if joined else None
        if before and before.whole and run.whole and before.last_unit + 1 == run.first_unit:
            joined[-1] = Run(
                first_unit=before.first_unit,
                last_unit=run.last_unit,
                first=before.first,
                last=run.last,
                whole=True,
            )
        else:
            joined.append(run)
    return tuple(joined)


def _by_unit(bed: Bed, held: Iterable[Placement]) -> Iterator[Run]:
    open_run: tuple[int, int, int] | None = None
    for placement in sorted(held, key=_position):
        if open_run and open_run[0] == placement.unit and placement.first <= open_run[2] + 1:
            open_run = (open_run[0], open_run[1], max(open_run[2], placement.last))
            continue
        if open_run:
            yield _run(bed, open_run)
        open_run = (placement.unit, placement.first, placement.last)
    if open_run:
        yield _run(bed, open_run)


def _position(placement: Placement) -> tuple[int, int]:
    return placement.unit, placement.first


def _run(bed: Bed, found: tuple[int, int, int]) -> Run:
    unit, first, last = found
    whole = first == 1 and last == bed.places_per_unit
    return Run(first_unit=unit, last_unit=unit, first=first, last=last, whole=whole)


def tray_words(book: PlaceBook, batch: Batch, seeds: int) -> tuple[str, ...]:
    """Return how many trays and cells to fill: from the places held, else from the seeds."""
    held = book.held(batch, Phase.NURSERY)
    if held:
        trays = {(placement.bed, placement.unit) for placement in held}
        return (count_words(len(trays), "tray", "trays"), *book.nursery_words(batch))
    per_tray = book.cells_per_tray()
    if per_tray is None:
        return (count_words(seeds, "pot", "pots"), "one seed each")
    trays_needed = -(-seeds // per_tray)
    return (count_words(trays_needed, "tray", "trays"), f"of {per_tray}", count_words(seeds, "cell", "cells"))
