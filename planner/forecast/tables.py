"""Keeps the table of batches, and brings it up to date where a farm differs from the one before it.

Batches sown, moved or taken away cost their own rows, not those of all others. Another climate dates all rows
anew, and leaves alone where they stand. What every row hangs on, such as beds and loops, costs the whole
table. Must not know what the rows are made of.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from typing import Final

import numpy as np

from planner.catalogue.catalogue import Catalogue
from planner.farm.crops import Batch, Placement
from planner.farm.farm import Farm
from planner.farm.fields import Id
from planner.forecast.batches import Books, build_table, redated
from planner.forecast.seed_lots import LotShares, lot_shares
from planner.forecast.standing import Standing
from planner.forecast.values import BatchTable, Ints, Ruler

_COLUMNS: Final = ("profile", "pace", "crop", "loop", "sow_day", "ends", "plants", "ripe", "seeds", "area_m2")

_BLOCK: Final = 512
"""So many things are compared at a time."""

_ANEW: Final = -1
"""Stands for the old row of a batch that must be worked out anew."""


@dataclass(frozen=True, slots=True)
class _Kept:
    """The farm that a table was made for, by the parts that matter."""

    farm: Farm
    standing: Standing
    lots: LotShares
    ruler: Ruler
    paces_version: int
    paces_numbering: int
    table: BatchTable


class TableKeeper:
    """Keeps the last table and brings it up to date for a farm that differs in few batches."""

    def __init__(self, books: Books, catalogue: Catalogue) -> None:
        """Keep the books that rows point into, and the catalogue that they are made from."""
        self._books, self._catalogue = books, catalogue
        self._kept: _Kept | None = None

    def table_for(self, farm: Farm, ruler: Ruler) -> BatchTable:
        """Return the table of a farm."""
        # Nothing is kept while at work: what is broken off halfway must not be gone on from.
        kept, self._kept = self._kept, None
        standing = _standing_for(farm, kept)
        lots = lot_shares(farm, self._catalogue)
        if kept is not None and self._rows_hold(kept, farm, ruler) and kept.lots == lots:
            table = self._brought_up(kept, farm, ruler)
            if kept.paces_version != self._books.paces.version:
                table = redated(table, self._books)
        else:
            table = build_table(farm, self._books, ruler, standing=standing, lots=lots)
        self._kept = _Kept(
            farm=farm,
            standing=standing,
            lots=lots,
            ruler=ruler,
            paces_version=self._books.paces.version,
            paces_numbering=self._books.paces.numbering,
            table=table,
        )
        return table

    def table_alone(self, farm: Farm, ruler: Ruler) -> BatchTable:
        """Return the table of a farm with a few batches, and keep nothing of it."""
        lots = lot_shares(farm, self._catalogue)
        return build_table(farm, self._books, ruler, standing=Standing(farm), lots=lots)

    def _rows_hold(self, kept: _Kept, farm: Farm, ruler: Ruler) -> bool:
        """Tell whether what every row hangs on is as it was."""
        if kept.ruler != ruler or kept.paces_numbering != self._books.paces.numbering or not kept.table.ids:
            return False
        return _same_ground(kept.farm, farm)

    def _brought_up(self, kept: _Kept, farm: Farm, ruler: Ruler) -> BatchTable:
        """Return the kept table with the rows worked out anew that may have changed."""
        source = _old_rows(kept.farm.batches, farm.batches)
        table = _renamed(kept.table, farm.batches, source)
        moved = _batches_moved(kept.farm.placements, farm.placements)
        source[[table.row_of[batch] for batch in moved if batch in table.row_of]] = _ANEW
        anew = np.flatnonzero(source == _ANEW)
        if not anew.size and table is kept.table:
            return table
        columns = {name: getattr(kept.table, name)[source] for name in _COLUMNS}
        part = replace(farm, batches=tuple(farm.batches[row] for row in anew))
        fresh = build_table(part, self._books, ruler, standing=kept.standing, lots=kept.lots)
        for name, column in columns.items():
            column[anew] = getattr(fresh, name)
        return replace(table, **columns)


def _standing_for(farm: Farm, kept: _Kept | None) -> Standing:
    """Return where the batches of a farm stand; what is kept takes up the batches that have moved."""
    if kept is None or not _same_ground(kept.farm, farm):
        return Standing(farm)
    before, after = _changed(kept.farm.placements, farm.placements)
    if [(run.id, run.batch) for run in before] == [(run.id, run.batch) for run in after]:
        kept.standing.altered(after)
    else:
        moved = {run.batch for run in (*before, *after)}
        kept.standing.moved(moved, farm.placements)
    return kept.standing


def _same_ground(old: Farm, new: Farm) -> bool:
    """Tell whether two farms have the same beds in the same loops at the same sites."""
    return old.beds == new.beds and _loops_and_sites(old) == _loops_and_sites(new)


def _loops_and_sites(farm: Farm) -> tuple[object, ...]:
    return [(loop.id, loop.site) for loop in farm.loops], [site.id for site in farm.sites]


def _renamed(table: BatchTable, batches: Sequence[Batch], source: Ints) -> BatchTable:
    """Return a table with the ids of other batches; one and the same when they are alike."""
    anew = np.flatnonzero(source != np.arange(source.size)).tolist()
    if source.size == len(table.ids) and all(batches[row].id == table.ids[row] for row in anew):
        return table
    ids = tuple(batch.id for batch in batches)
    return replace(table, ids=ids, row_of={batch: row for row, batch in enumerate(ids)})


def _old_rows(old: Sequence[Batch], new: Sequence[Batch]) -> Ints:
    """Return the row that each new batch had among the old ones, `_ANEW` where it is another thing.

    Only what lies between the first and the last difference is looked up; of as many as before, only what
    is another thing than in its row before.
    """
    rows: Ints = np.arange(len(new), dtype=np.int64)
    ahead, behind = _alike_ends(old, new)
    rows[len(new) - behind :] += len(old) - len(new)
    were: Sequence[int] = range(ahead, len(old) - behind)
    are: Sequence[int] = range(ahead, len(new) - behind)
    if len(old) == len(new):
        are = were = tuple(row for row in were if old[row] is not new[row])
    was_at = {id(old[row]): row for row in were}
    for row in are:
        rows[row] = was_at.get(id(new[row]), _ANEW)
    return rows


def _changed(
    old: Sequence[Placement], new: Sequence[Placement]
) -> tuple[Sequence[Placement], Sequence[Placement]]:
    """Return the placements that are in only one of two runs, those of the old one first."""
    ahead, behind = _alike_ends(old, new)
    before, after = old[ahead : len(old) - behind], new[ahead : len(new) - behind]
    if len(before) == len(after):
        pairs = [(one, other) for one, other in zip(before, after, strict=True) if one is not other]
        before, after = tuple(one for one, _ in pairs), tuple(other for _, other in pairs)
    were, are = set(map(id, before)), set(map(id, after))
    return [run for run in before if id(run) not in are], [run for run in after if id(run) not in were]


def _batches_moved(old: Sequence[Placement], new: Sequence[Placement]) -> set[Id]:
    """Return the batches of placements that stand in only one of two runs."""
    before, after = _changed(old, new)
    return {placement.batch for placement in (*before, *after)}


def _alike_ends(old: Sequence[object], new: Sequence[object]) -> tuple[int, int]:
    """Return how many things at the start, and how many others at the end, are alike."""
    shorter = min(len(old), len(new))
    if old is new:
        return shorter, 0
    ahead = _alike_ahead(old, new, shorter)
    left = shorter - ahead
    tails = old[len(old) - left :][::-1], new[len(new) - left :][::-1]
    return ahead, _alike_ahead(*tails, left)


def _alike_ahead(old: Sequence[object], new: Sequence[object], most: int) -> int:
    """Return how many things at the start are alike; most are the very same, so whole blocks are compared."""
    at = 0
    while at < most and old[at : min(at + _BLOCK, most)] == new[at : min(at + _BLOCK, most)]:
        at = min(at + _BLOCK, most)
    block = range(at, min(at + _BLOCK, most))
    return next((one for one in block if old[one] is not new[one]), block.stop)
