"""What is known of the germination of a seed lot: what packet or book says, moved by tests and counts.

Old and primed seed is reckoned with more carefully, by the lower end of what is likely. No age is turned
into a share: what is old has to be tested. Must not know how seeds are counted or shown.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from datetime import date
from enum import Enum
from typing import Final

from planner.catalogue.catalogue import Catalogue
from planner.farm.crops import Batch, SeedLot
from planner.farm.farm import Farm
from planner.farm.fields import NO_ID, Id, specs_of
from planner.farm.log import Happening, LogEntry, standing
from planner.science.germination import share_after_counts

RULES: Final = ("lot_prior_seeds", "lot_test_again_days", "lot_caution_spreads")
"""Coefficients of learning that lots are reckoned by."""

PATH: Final = "coefficient/learning/"


class Caution(Enum):
    """Why a lot is reckoned with carefully."""

    OLD = "old lot: test it"
    PRIMED = "primed seed keeps less long: test it"


@dataclass(frozen=True, slots=True, kw_only=True)
class LotShare:
    """The germination of one lot [1]: `mean` and `sd` after `came_up` of `seeds` in tests and batches.

    `prior_share` is the packet's, or the book's when the packet says nothing (`by_packet` tells). `dated`
    are the days that the lot is known to have been packed, bought or tested on, in order.
    """

    lot: Id
    prior_share: float
    by_packet: bool
    prior_seeds: float
    came_up: int
    seeds: int
    tests: int
    batches: int
    mean: float
    sd: float
    primed: bool
    dated: tuple[date, ...]
    test_again_days: float
    caution_spreads: float

    @property
    def is_own(self) -> bool:
        """Whether more than the book is known."""
        return self.by_packet or self.seeds > 0

    def cautions(self, on: date) -> tuple[Caution, ...]:
        """Return why seed sown on a day is reckoned with carefully; nothing for a lot without any date."""
        known = [day for day in self.dated if day <= on]
        old = bool(known) and (on - known[-1]).days > self.test_again_days
        found = ((Caution.OLD, old), (Caution.PRIMED, self.primed))
        return tuple(caution for caution, holds in found if holds)

    def share(self, on: date) -> float | None:
        """Return the share that seed sown on a day is reckoned with; None where the book's own holds."""
        if self.cautions(on):
            return max(self.mean - self.caution_spreads * self.sd, _LEAST)
        return max(self.mean, _LEAST) if self.is_own else None


def _least() -> float:
    low = specs_of(Batch)["germination_share"].low
    assert isinstance(low, float)
    return low


_LEAST: Final = _least()
"""No batch is given less."""

LotShares = Mapping[Id, LotShare]


def share_for(lots: LotShares, batch: Batch) -> float | None:
    """Return the share that the seed lot of a batch gives it; None where the book's holds."""
    found = lots.get(batch.seed_lot)
    return None if found is None else found.share(batch.sow_on)


def lot_shares(farm: Farm, catalogue: Catalogue) -> dict[Id, LotShare]:
    """Return what is known of every lot of a farm, by its id."""
    if not farm.seed_lots:
        return {}
    rules = {name: catalogue.figure(PATH + name).value for name in RULES}
    counts = _Counts()
    for lot, seeds, came_up in _batch_counts(farm):
        counts.add(lot, seeds, came_up, on=None)
    for entry in standing(farm.log_entries):
        if entry.what is Happening.SEED_TESTED and entry.out_of:
            counts.add(entry.seed_lot, entry.out_of, int(entry.amount or 0), on=entry.on)
    return {lot.id: _share_of(lot, counts, catalogue, rules) for lot in farm.seed_lots}


class _Counts:
    """Seeds counted by lot, and the days of tests."""

    def __init__(self) -> None:
        self.seeds: dict[Id, int] = {}
        self.came_up: dict[Id, int] = {}
        self.batches: dict[Id, int] = {}
        self.tested: dict[Id, list[date]] = {}

    def add(self, lot: Id, seeds: int, came_up: int, *, on: date | None) -> None:
        self.seeds[lot] = self.seeds.get(lot, 0) + seeds
        self.came_up[lot] = self.came_up.get(lot, 0) + came_up
        if on is None:
            self.batches[lot] = self.batches.get(lot, 0) + 1
        else:
            self.tested.setdefault(lot, []).append(on)


def _batch_counts(farm: Farm) -> Iterator[tuple[Id, int, int]]:
    """Yield lot, seeds sown and seedlings counted of every batch of which both are logged."""
    up = {entry.batch for entry in farm.log_entries if entry.what is Happening.GERMINATED}
    lot_of = {batch.id: batch.seed_lot for batch in farm.batches if batch.id in up}
    sown: dict[Id, int] = {}
    came: dict[Id, int] = {}
    for entry in standing(farm.log_entries):
        if lot_of.get(entry.batch, NO_ID) != NO_ID and entry.amount is not None:
            _count(entry, sown, came)
    for batch, seeds in sown.items():
        if batch in came and seeds:
            yield lot_of[batch], seeds, min(came[batch], seeds)


def _count(entry: LogEntry, sown: dict[Id, int], came: dict[Id, int]) -> None:
    """Add up what was sown; of several counts of seedlings the highest holds."""
    many = int(entry.amount or 0)
    if entry.what is Happening.SOWN:
        sown[entry.batch] = sown.get(entry.batch, 0) + many
    elif entry.what is Happening.GERMINATED:
        came[entry.batch] = max(came.get(entry.batch, 0), many)


def _share_of(lot: SeedLot, counts: _Counts, catalogue: Catalogue, rules: Mapping[str, float]) -> LotShare:
    by_packet = lot.germination_share is not None
    prior = lot.germination_share or catalogue.crops[lot.crop].germination_share
    seeds, came_up = counts.seeds.get(lot.id, 0), counts.came_up.get(lot.id, 0)
    mean, deviation = share_after_counts(
        prior, prior_seeds=rules["lot_prior_seeds"], came_up=came_up, seeds=seeds
    )
    packed = lot.packed_on or lot.bought_on
    tested = counts.tested.get(lot.id, [])
    return LotShare(
        lot=lot.id,
        prior_share=prior,
        by_packet=by_packet,
        prior_seeds=rules["lot_prior_seeds"],
        came_up=came_up,
        seeds=seeds,
        tests=len(tested),
        batches=counts.batches.get(lot.id, 0),
        mean=mean if seeds else prior,
        sd=deviation,
        primed=lot.primed,
        dated=tuple(sorted([*tested, *([packed] if packed else [])])),
        test_again_days=rules["lot_test_again_days"],
        caution_spreads=rules["lot_caution_spreads"],
    )
