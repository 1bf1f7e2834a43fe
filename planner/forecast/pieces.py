"""Which plugs and net pots a plan uses, batch by batch, and on which day.

A seed that is raised in a nursery takes a plug, a plant that is moved to a raft a net pot.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from enum import Enum
from typing import Final

from planner.farm.crops import Phase
from planner.farm.farm import Farm
from planner.farm.fields import NO_ID, Id
from planner.farm.species import BedKind
from planner.forecast.values import Forecast

_NURSERY_END, _SPACING_END = 1, 2


class PieceKind(Enum):
    """What is used up."""

    PLUG = "media plug"
    NET_POT = "net pot"


@dataclass(frozen=True, slots=True, kw_only=True)
class Pieces:
    """So many pieces for the batch of a row of the table, used on a day of the ruler."""

    row: int
    kind: PieceKind
    day: int
    count: int


def pieces_of(farm: Farm, forecast: Forecast) -> Iterator[Pieces]:
    """Yield what every batch uses, those outside the plan too; the day may lie before or after it."""
    table = forecast.batches
    kinds = {bed.id: bed.kind for bed in farm.beds}
    stands: dict[Id, Id] = {}
    for run in farm.placements:
        if run.phase is Phase.BED:
            stands.setdefault(run.batch, run.bed)
    for row, batch in enumerate(farm.batches):
        sown, raised, moved = (
            int(day)
            for day in (table.sow_day[row], table.ends[row, _NURSERY_END], table.ends[row, _SPACING_END])
        )
        if raised > sown:
            yield Pieces(row=row, kind=PieceKind.PLUG, day=sown, count=int(table.seeds[row]))
        if kinds.get(stands.get(batch.id, batch.bed or NO_ID)) is BedKind.RAFT:
            yield Pieces(row=row, kind=PieceKind.NET_POT, day=moved, count=batch.plants)


PIECE_KINDS: Final = {kind.value: kind for kind in PieceKind}
"""Kinds by their names."""
