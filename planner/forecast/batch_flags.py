"""Which batches lack places, and which stand on beds that do not suit them.

What is held is tallied once for a set of placements; asking again after a batch has changed costs a few
sums over columns.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, replace
from typing import Final

import numpy as np

from planner.catalogue.catalogue import Catalogue
from planner.farm.crops import Phase, Placement
from planner.farm.farm import Farm, by_id
from planner.farm.fields import NO_ID, Id
from planner.farm.site import Bed
from planner.farm.species import BedKind
from planner.forecast.values import BatchTable, Flag, FlagKind, Ints

_KINDS: Final = {kind: number for number, kind in enumerate(BedKind)}


@dataclass(frozen=True, slots=True, kw_only=True)
class _Tally:
    """Final places held: row of the batch, number of the bed, and its kind, one entry a run.

    `batch` and `count` are of each run, `held` the places by row. The rest is what the tally was made for.
    """

    batch: tuple[Id, ...]
    bed: Ints
    kind: Ints
    count: Ints
    row: Ints
    held: Ints
    placements: tuple[Placement, ...]
    beds: tuple[Bed, ...]
    row_of: dict[Id, int]


class BatchFlags:
    """Makes the flags of batches, one farm after another with the same catalogue."""

    def __init__(self, catalogue: Catalogue) -> None:
        """Take the catalogue that says which beds suit a crop."""
        self._catalogue = catalogue
        self._kept: _Tally | None = None

    def flags(self, farm: Farm, table: BatchTable, crops: tuple[str, ...]) -> Iterator[Flag]:
        """Yield a flag for batches without places and for crops on beds that do not suit them.

        `crops` are the keys that `table.crop` counts.
        """
        tally = self._tally(farm, table)
        yield from _unplaced(farm, table, tally)
        yield from self._unsuited(farm, table, tally, crops)

    def _tally(self, farm: Farm, table: BatchTable) -> _Tally:
        kept = self._kept
        if kept is None or kept.placements is not farm.placements or kept.beds is not farm.beds:
            kept = self._kept = _tally_of(farm, table)
        elif kept.row_of is not table.row_of:
            kept = self._kept = _in_rows(kept, table)
        return kept

    def _unsuited(
        self, farm: Farm, table: BatchTable, tally: _Tally, crops: tuple[str, ...]
    ) -> Iterator[Flag]:
        if not crops:
            return
        suits = np.zeros((len(crops), len(_KINDS)), dtype=bool)
        for number, key in enumerate(crops):
            suits[number, [_KINDS[kind] for kind in (BedKind.NURSERY, *self._catalogue.crops[key].beds)]] = (
                True
            )
        wrong = (~suits[table.crop[tally.row], tally.kind]).nonzero()[0]
        found = {(farm.batches[tally.row[n]].id, farm.beds[tally.bed[n]].id): n for n in wrong}
        for _, run in sorted(found.items()):
            batch, bed = farm.batches[tally.row[run]], farm.beds[tally.bed[run]]
            yield Flag(
                kind=FlagKind.NOT_SUITED,
                about=batch.id,
                name=batch.code,
                on=batch.sow_on,
                values=(("crop", batch.crop), ("bed", bed.name), ("bed kind", bed.kind.value)),
            )


def _tally_of(farm: Farm, table: BatchTable) -> _Tally:
    number_of = {bed.id: number for number, bed in enumerate(farm.beds)}
    runs = [placement for placement in farm.placements if placement.phase is Phase.BED]
    bed = np.asarray([number_of[run.bed] for run in runs], dtype=np.int64)
    kinds = np.asarray([_KINDS[one.kind] for one in farm.beds], dtype=np.int64)
    nothing = np.zeros(0, dtype=np.int64)
    tally = _Tally(
        batch=tuple(run.batch for run in runs),
        bed=bed,
        kind=kinds[bed] if runs else bed,
        count=np.asarray([run.count for run in runs], dtype=np.int64),
        row=nothing,
        held=nothing,
        placements=farm.placements,
        beds=farm.beds,
        row_of=table.row_of,
    )
    return _in_rows(tally, table)


def _in_rows(tally: _Tally, table: BatchTable) -> _Tally:
    """Return a tally with its runs counted in the rows of a table."""
    row = np.asarray([table.row_of[batch] for batch in tally.batch], dtype=np.int64)
    held = np.bincount(row, weights=tally.count, minlength=len(table.ids)).astype(np.int64)
    return replace(tally, row=row, held=held, row_of=table.row_of)


def _unplaced(farm: Farm, table: BatchTable, tally: _Tally) -> Iterator[Flag]:
    beds = by_id(farm.beds)
    lacking = table.plants - tally.held
    for row in (lacking > 0).nonzero()[0]:
        batch = farm.batches[row]
        yield Flag(
            kind=FlagKind.UNPLACED,
            about=batch.id,
            name=batch.code,
            on=batch.sow_on,
            values=(
                ("plants", float(lacking[row])),
                ("bed", beds[batch.bed].name if batch.bed != NO_ID else ""),
            ),
        )
