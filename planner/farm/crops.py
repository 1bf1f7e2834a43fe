"""What is grown, when and where: batches, the places they take, targets, seed lots."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date
from enum import Enum

from planner.farm import fields
from planner.farm.fields import NO_ID, Id


class Stage(Enum):
    """Stages of a batch, in the order they are passed."""

    GERMINATION = "germination"
    NURSERY = "nursery"
    SPACING = "spacing"
    BED = "bed"
    PICKING = "picking"
    CLEARING = "clearing"


class Phase(Enum):
    """Where a batch stands: the stages that share one set of places.

    Nursery holds germination and nursery; spacing the intermediate distance; bed the growing,
    picking and clearing in the final places.
    """

    NURSERY = "nursery"
    SPACING = "spacing"
    BED = "bed"


PHASE_OF_STAGE = {
    Stage.GERMINATION: Phase.NURSERY,
    Stage.NURSERY: Phase.NURSERY,
    Stage.SPACING: Phase.SPACING,
    Stage.BED: Phase.BED,
    Stage.PICKING: Phase.BED,
    Stage.CLEARING: Phase.BED,
}


class TargetUnit(Enum):
    """What a target counts."""

    HEADS = "heads"
    KG = "kg"


@dataclass(frozen=True, slots=True, kw_only=True)
class Batch:
    """Plants sown together.

    `plants` are the plants wanted in the final places; seeds are worked out from germination and
    survival. A grower's own number for any stage's days, germination or yield overrules the
    catalogue for this batch. `bed` is where the batch is meant to stand while no places are given.
    """

    id: Id = fields.own_id()
    code: str = fields.name()
    crop: str = fields.key("crop")
    variety: str = fields.text(length=120)
    sow_on: date = fields.day()
    plants: int = fields.whole(1, 1_000_000, unit="plants")
    bed: Id = fields.reference("bed", default=NO_ID)
    seed_lot: Id = fields.reference("seed lot", default=NO_ID)
    germination_days: float | None = fields.number(0, 120, "d", default=None)
    nursery_days: float | None = fields.number(0, 200, "d", default=None)
    spacing_days: float | None = fields.number(0, 200, "d", default=None)
    bed_days: float | None = fields.number(1, 400, "d", default=None)
    picking_days: float | None = fields.number(0, 400, "d", default=None)
    clearing_days: float | None = fields.number(0, 60, "d", default=None)
    germination_share: float | None = fields.number(0.05, 1, "1", default=None)
    bed_survival_share: float | None = fields.number(0.05, 1, "1", default=None)
    yield_g_per_plant: float | None = fields.number(1, 100_000, "g", default=None)
    locked: bool = fields.yes_no(default=False, meaning="not to be moved by any plan")
    notes: str = fields.text()


@dataclass(frozen=True, slots=True, kw_only=True)
class Placement:
    """A run of places that a batch holds during one phase.

    Places `first` to `first + count - 1` of raft, block or tray number `unit` of a bed; both count
    from 1. A batch may hold several runs.
    """

    id: Id = fields.own_id()
    batch: Id = fields.reference("batch")
    phase: Phase = fields.choice()
    bed: Id = fields.reference("bed")
    unit: int = fields.whole(1, 5000)
    first: int = fields.whole(1, 4_000_000)
    count: int = fields.whole(1, 4_000_000, unit="places")

    @property
    def last(self) -> int:
        """Number of the last place held."""
        return self.first + self.count - 1


@dataclass(frozen=True, slots=True, kw_only=True)
class Target:
    """So much of a crop wanted each week, from one date to another."""

    id: Id = fields.own_id()
    crop: str = fields.key("crop")
    amount_per_week: float = fields.number(0.01, 1_000_000, "heads or kg a week")
    unit: TargetUnit = fields.choice(default=TargetUnit.HEADS)
    from_on: date = fields.day()
    until_on: date | None = fields.day(default=None)
    notes: str = fields.text()


@dataclass(frozen=True, slots=True, kw_only=True)
class SeedLot:
    """One packet or delivery of seed.

    `germination_share` is what the packet says; tests and counts of one's own stand in the log.
    """

    id: Id = fields.own_id()
    code: str = fields.name()
    crop: str = fields.key("crop")
    variety: str = fields.text(length=120)
    supplier: str = fields.text(length=120)
    pelleted: bool = fields.yes_no(default=False, meaning="seeds in a coat, one to a plug")
    primed: bool = fields.yes_no(default=False, meaning="seeds made ready to sprout; they keep less long")
    packed_on: date | None = fields.day(default=None)
    bought_on: date | None = fields.day(default=None)
    germination_share: float | None = fields.number(0.01, 1, "1", default=None, meaning="as the packet says")
    seeds_left: int | None = fields.whole(0, 100_000_000, unit="seeds", default=None)
    notes: str = fields.text()
