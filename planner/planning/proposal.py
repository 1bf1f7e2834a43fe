"""What a planning of successions proposes; nothing of it is in the farm until it is adopted."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date
from enum import Enum

from planner.farm.crops import Batch, Placement, TargetUnit
from planner.farm.fields import Id
from planner.planning.placement import Refusal
from planner.planning.seeding import Seeding


@dataclass(frozen=True, slots=True, kw_only=True)
class Sowing:
    """One proposed batch with its dates as the forecast has them, its seeds, and what it was shifted by.

    `space_on` is None without an intermediate distance, `move_on` without a nursery. `..._early_days` are
    days by which sowing and moving come before the last day that would do, for days without work. What is
    ready by `wanted_on` (None: sown on a given day) is `wanted_plants`; where these are what is `missing`
    over what one gives, `per_plant` says that, as fit for sale.
    """

    batch: Batch
    sow_on: date
    space_on: date | None
    move_on: date | None
    first_pick_on: date
    last_pick_on: date
    harvest_week: str
    seeding: Seeding
    sown_early_days: int
    moved_early_days: int
    wanted_on: date | None = None
    wanted_plants: int = 0
    missing: float = 0.0
    per_plant: float = 0.0


@dataclass(frozen=True, slots=True, kw_only=True)
class WeekSupply:
    """What is wanted of a crop in a week and what is foreseen of it, both as fit for sale."""

    crop: str
    unit: TargetUnit
    week: int
    wanted: float
    foreseen: float


class NoteKind(Enum):
    """What the grower should know of a proposal."""

    TOO_SOON = "too soon"
    NO_BED = "no bed"
    EARLY = "early"
    TOO_SLOW = "too slow"
    NO_WORK_DAY = "no work day"
    LESS = "less"
    POOR_STAND = "poor stand"


@dataclass(frozen=True, slots=True, kw_only=True)
class Note:
    """One thing to know: about which crop, in which week, with its figures; words are made elsewhere."""

    kind: NoteKind
    crop: str = ""
    week: str = ""
    on: date | None = None
    values: tuple[tuple[str, float | str], ...] = ()


@dataclass(frozen=True, slots=True, kw_only=True)
class NurseryWeek:
    """Nursery cells in all, held with the proposal, and free, in a week on its fullest day."""

    week: int
    cells: int
    held: int

    @property
    def free(self) -> int:
        """Cells that are free on the fullest day."""
        return self.cells - self.held


@dataclass(frozen=True, slots=True, kw_only=True)
class Proposal:
    """What would be sown, where it would stand, what goes for it, what does not fit, and what comes of it.

    `removed` are batches that the new ones stand in for: not locked, not sown before `from_on`, of a crop
    that is planned here. `refused` are sowings without room for all of their plants; they are not in
    `batches`, though a smaller one may stand in for them. A week is even whose supply lies within the share
    `even_share` of what is wanted.
    """

    from_on: date
    even_share: float
    batches: tuple[Batch, ...]
    placements: tuple[Placement, ...]
    removed: tuple[Id, ...]
    sowings: tuple[Sowing, ...]
    refused: tuple[tuple[Batch, Refusal], ...]
    weeks: tuple[WeekSupply, ...]
    nursery: tuple[NurseryWeek, ...]
    notes: tuple[Note, ...]


def steady_share(weeks: tuple[WeekSupply, ...], *, within: float) -> float:
    """Return the share of weeks whose supply lies within so large a part of what is wanted, 1 without weeks.

    within [0..1], such as 0.2 for a fifth above or below.
    """
    wanted = [week for week in weeks if week.wanted > 0]
    if not wanted:
        return 1.0
    even = sum(abs(week.foreseen - week.wanted) <= within * week.wanted for week in wanted)
    return even / len(wanted)
