"""Gives places to many batches at once: all sowings of a season in the time of a few questions.

Batches are taken by the day they need their place, so what is free then is free for as long as nothing
fixed comes. What does not fit is told with its week, what is missing, and what would make room.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, field
from itertools import pairwise
from operator import attrgetter
from typing import Final, NamedTuple

import numpy as np

from planner.farm.crops import Batch, Phase, Placement
from planner.farm.farm import Farm, by_id
from planner.farm.fields import NO_ID, Id
from planner.farm.ids import ManyIds
from planner.farm.site import Bed
from planner.farm.species import BedKind, Crop
from planner.forecast.values import Forecast, Ints
from planner.planning.packing import BedFilling, FixedHold, Piece, Spread
from planner.planning.placement import KINDS_OF_PHASE, IdMaker, Refusal, RefusalKind
from planner.planning.shortage import Standing, full_refusal

PHASES: Final = (Phase.NURSERY, Phase.SPACING, Phase.BED)
_NURSERY_END, _SPACING_END, _CLEARING_END = 1, 2, 5
_PLACED_WITHOUT_ASKING: Final = (Phase.NURSERY, Phase.BED)


class Lot(NamedTuple):
    """What of a batch needs places in a phase, from `start` to the day before `end`, and in which beds."""

    batch: Batch
    phase: Phase
    start: int
    end: int
    places: int
    beds: tuple[Id, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class PlacedMany:
    """Places that were found, in the order they are needed, and why there were none for the rest."""

    placements: tuple[Placement, ...]
    refusals: tuple[Refusal, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class Rules:
    """How batches may be placed.

    Without `split_allowed` a batch never lies on more rafts than it needs; `keep_together` opens another
    raft rather than lay the rest of a batch into several gaps; else as few rafts as can be are in use.
    Plants that have an intermediate distance go to the beds `between` of their loop first.
    """

    split_allowed: bool = True
    keep_together: bool = False
    phases: tuple[Phase, ...] = _PLACED_WITHOUT_ASKING
    crops: Mapping[str, Crop] = field(default_factory=dict)
    between: frozenset[Id] = frozenset()

    @property
    def spread(self) -> Spread:
        """The spread over the rafts of a bed that these rules lead to."""
        if not self.split_allowed:
            return Spread.NEVER_SPLIT
        return Spread.TOGETHER if self.keep_together else Spread.FEWEST_UNITS


ANYHOW: Final = Rules()


def place_many(
    batches: Sequence[Batch],
    farm: Farm,
    forecast: Forecast,
    *,
    rules: Rules = ANYHOW,
    beds: Mapping[Id, Sequence[Id]] | None = None,
    make_id: IdMaker | None = None,
) -> PlacedMany:
    """Return places for batches in the phases they have none for yet.

    `beds` says in which beds a batch may stand, best first; else it is the one it has in mind. Beds for
    one batch should share a loop of water and light, for a batch may be laid across them. Seedlings go to
    the nurseries of that loop, one cell a seed. With `crops` a bed of a kind the crop does not grow in is
    refused. All placements of the farm stay as they are. The forecast must know the batches.
    """
    lots = sorted(_lots(batches, farm, forecast, rules, beds or {}), key=attrgetter("start"))
    return _Packing(farm, forecast, rules=rules, make_id=make_id or ManyIds()).packed(lots)


def _lots(
    batches: Sequence[Batch],
    farm: Farm,
    forecast: Forecast,
    rules: Rules,
    beds: Mapping[Id, Sequence[Id]],
) -> Iterator[Lot]:
    """Yield what needs places, by batch and phase."""
    has = {(placement.batch, placement.phase) for placement in farm.placements}
    table = forecast.batches
    homes = _Homes(farm, rules)
    rows = [table.row_of[batch.id] for batch in batches]
    days = np.stack((table.sow_day, *table.ends.T[[_NURSERY_END, _SPACING_END, _CLEARING_END]]), axis=1)
    for batch, edges, seeds in zip(batches, days[rows].tolist(), table.seeds[rows].tolist(), strict=True):
        wished = tuple(beds.get(batch.id, ())) or ((batch.bed,) if batch.bed != NO_ID else ())
        if not wished:
            continue
        for phase, (start, end) in zip(PHASES, pairwise(edges), strict=True):
            if end <= start or phase not in rules.phases or (batch.id, phase) in has:
                continue
            home = homes.of(batch, phase, wished)
            if home is None:
                continue
            count = seeds if phase is Phase.NURSERY else batch.plants
            yield Lot(batch, phase, start, end, count, home)


class _Homes:
    """Which beds of a farm a batch may stand in."""

    def __init__(self, farm: Farm, rules: Rules) -> None:
        self._beds: dict[Id, Bed] = by_id(farm.beds)
        self._crops = rules.crops
        self._between = tuple(bed for bed in farm.beds if bed.id in rules.between)
        self._nurseries: dict[Id, tuple[Id, ...]] = {}
        self._found: dict[tuple[str, Phase, tuple[Id, ...]], tuple[Id, ...] | None] = {}
        for bed in farm.beds:
            if bed.kind is BedKind.NURSERY:
                self._nurseries[bed.loop] = (*self._nurseries.get(bed.loop, ()), bed.id)

    def of(self, batch: Batch, phase: Phase, wished: tuple[Id, ...]) -> tuple[Id, ...] | None:
        """Return beds that suit, best first, none when no bed does; None where no place is asked for."""
        key = batch.crop, phase, wished
        if key not in self._found:
            self._found[key] = self._suited(*key)
        return self._found[key]

    def _suited(self, key: str, phase: Phase, wished: tuple[Id, ...]) -> tuple[Id, ...] | None:
        if phase is Phase.NURSERY:
            return self._nurseries.get(self._beds[wished[0]].loop)
        kinds = KINDS_OF_PHASE[phase]
        crop = self._crops.get(key)
        if crop is not None:
            kinds = tuple(kind for kind in kinds if kind in crop.beds)
        suited = tuple(bed for bed in wished if self._beds[bed].kind in kinds)
        found = suited if suited or crop is not None else wished
        return (*self._first_between(phase, wished), *found)

    def _first_between(self, phase: Phase, wished: tuple[Id, ...]) -> tuple[Id, ...]:
        loop = self._beds[wished[0]].loop
        if phase is not Phase.SPACING:
            return ()
        return tuple(bed.id for bed in self._between if bed.loop == loop and bed.id not in wished)


class _Packing:
    """One pass through the days: every bed is filled as its lots come."""

    def __init__(self, farm: Farm, forecast: Forecast, *, rules: Rules, make_id: IdMaker) -> None:
        self._forecast = forecast
        self._rules = rules
        self._make_id = make_id
        self._beds: dict[Id, Bed] = by_id(farm.beds)
        self._standing = Standing(farm, forecast)
        self._fixed: dict[Id, list[FixedHold]] = {}
        table = forecast.batches
        for run in farm.placements:
            start, end = table.phase_days(table.row_of[run.batch], run.phase)
            hold = FixedHold(start, max(end, start + 1), run.unit, run.first, run.last)
            self._fixed.setdefault(run.bed, []).append(hold)
            self._standing.add(run.batch, run.bed, run.count, days=(hold.start, hold.end), fixed=True)
        self._filling: dict[Id, BedFilling] = {}

    def packed(self, lots: Sequence[Lot]) -> PlacedMany:
        placements: list[Placement] = []
        refused: list[tuple[Lot, int]] = []
        for lot in lots:
            found = self._placed(lot)
            if found:
                placements.extend(found)
            else:
                refused.append((lot, sum(self._at(bed, lot.start).free(lot.end) for bed in lot.beds)))
        return PlacedMany(
            placements=tuple(placements),
            refusals=tuple(self._refusal(lot, free) for lot, free in refused),
        )

    def _at(self, bed: Id, day: int) -> BedFilling:
        """Return the filling of a bed, come as far as a day."""
        filling = self._filling.get(bed)
        if filling is None:
            where = self._beds[bed]
            filling = self._filling[bed] = BedFilling(
                units=where.units,
                places_per_unit=where.places_per_unit,
                fixed=self._fixed.get(bed, ()),
                spread=self._rules.spread,
            )
        filling.advance(day)
        return filling

    def _placed(self, lot: Lot) -> list[Placement]:
        for bed in lot.beds:
            pieces = self._at(bed, lot.start).take(lot.places, lot.end)
            if pieces:
                return self._held(lot, bed, pieces)
        if len(lot.beds) < 2 or not self._rules.split_allowed:
            return []
        free = {bed: self._at(bed, lot.start).free(lot.end) for bed in lot.beds}
        if sum(free.values()) < lot.places:
            return []
        found: list[Placement] = []
        left = lot.places
        for bed, room in free.items():
            part = min(left, room)
            if part:
                found.extend(self._held(lot, bed, self._at(bed, lot.start).take(part, lot.end)))
            left -= part
        return found

    def _held(self, lot: Lot, bed: Id, pieces: Sequence[Piece]) -> list[Placement]:
        batch, phase, make_id = lot.batch.id, lot.phase, self._make_id
        size = sum([piece.size for piece in pieces])
        self._standing.add(batch, bed, size, days=(lot.start, lot.end), fixed=False)
        return [
            Placement(
                id=make_id(),
                batch=batch,
                phase=phase,
                bed=bed,
                unit=piece.unit,
                first=piece.first,
                count=piece.size,
            )
            for piece in pieces
        ]

    def _refusal(self, lot: Lot, free: int) -> Refusal:
        if not lot.beds:
            bed = self._beds[lot.batch.bed].name if lot.batch.bed != NO_ID else ""
            return Refusal(kind=RefusalKind.WRONG_BED, batch=lot.batch.id, bed=bed, needed=lot.places)
        return full_refusal(
            self._standing,
            batch=lot.batch.id,
            beds=tuple(self._beds[bed] for bed in lot.beds),
            days=(lot.start, lot.end),
            needed=lot.places,
            free=free,
        )


def peak_places(start: Ints, end: Ints, count: Ints) -> int:
    """Return the most places held at once by lots, each from `start` to the day before `end`.

    Arrays of shape (lot,); no packing can do with fewer.

    >>> peak_places(np.array([0, 3, 5]), np.array([5, 8, 9]), np.array([10, 20, 30]))
    50
    """
    if not start.size:
        return 0
    days = np.concatenate((end, start))
    change = np.concatenate((-count, count))
    # Stable: what leaves on a day makes room for what comes on it.
    order = np.argsort(days, kind="stable")
    return int(np.cumsum(change[order]).max())
