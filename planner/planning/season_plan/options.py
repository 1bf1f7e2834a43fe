"""What is asked of a season plan, and what it weighs against what. Must know no farm and no solver."""

from __future__ import annotations

from dataclasses import dataclass, field
from datetime import date
from typing import Final

from planner.catalogue.catalogue import Catalogue
from planner.farm.farm import DAYS_PER_WEEK
from planner.farm.faults import FarmFaultError, Fault, FaultKind
from planner.planning.rhythm import WorkDays

_WHERE: Final = "season plan"
_LONGEST_WEEKS: Final = 520
_LARGEST_LOT: Final = 100_000


@dataclass(frozen=True, slots=True, kw_only=True)
class PlanOptions:
    """What is asked for.

    The plan sows from `from_on` (None: the plan's first day) for `weeks` weeks (None: to the plan's end),
    on day `sow_weekday` of the farm's week, counted from 0, or the nearest day of the week on which there is
    `work`; nothing is moved on another day either. Plants come in whole multiples of `lot_plants`,
    or of what `lots` says for a crop. `labour_min_per_week` limits the work of all sowing, moving and picking
    [min]. The search takes at most `seconds`, or `rounds` of its steps; `exact` lets the exact solver
    go on from there for `exact_seconds`.
    """

    from_on: date | None = None
    weeks: int | None = None
    sow_weekday: int = 0
    work: WorkDays = field(default_factory=WorkDays)
    lot_plants: int = 1
    lots: tuple[tuple[str, int], ...] = ()
    labour_min_per_week: float | None = None
    seconds: float = 2.0
    rounds: int | None = None
    seed: int = 0
    exact: bool = False
    exact_seconds: float = 30.0

    def __post_init__(self) -> None:
        """Refuse what no plan can be made for, naming field, value and limit."""
        _need("weeks", self.weeks, low=1, high=_LONGEST_WEEKS)
        _need("sow_weekday", self.sow_weekday, low=0, high=DAYS_PER_WEEK - 1)
        for lot in (self.lot_plants, *(lot for _, lot in self.lots)):
            _need("lot_plants", lot, low=1, high=_LARGEST_LOT)
        _need("labour_min_per_week", self.labour_min_per_week, low=0)
        _need("seconds", self.seconds, low=0)
        _need("rounds", self.rounds, low=0)
        _need("exact_seconds", self.exact_seconds, low=0)

    def lot_of(self, crop: str) -> int:
        """Return of how many plants the sowings of a crop are multiples."""
        return dict(self.lots).get(crop, self.lot_plants)


def _need(field: str, value: float | None, *, low: float, high: float | None = None) -> None:
    if value is None or (value >= low and (high is None or value <= high)):
        return
    limit = f"at least {low:g}" if high is None else f"{low:g} to {high:g}"
    fault = Fault(
        kind=FaultKind.OUT_OF_LIMITS,
        where=_WHERE,
        field=field,
        value=f"{value:g}",
        limit=limit,
        message=f"{field} is {value:g}, but must be {limit}.",
    )
    raise FarmFaultError((fault,))


@dataclass(frozen=True, slots=True, kw_only=True)
class Weights:
    """What is weighed against what, with one week's usual target of a crop missed as the measure.

    The minutes are those that work on one plant takes [min].
    """

    missed: float
    wasted: float
    short_element: float
    idle_element: float
    supply_over_demand_least: float
    supply_over_demand_most: float
    sowing_min: float
    moving_min: float
    picking_min: float


def weights_of(catalogue: Catalogue) -> Weights:
    """Return the weights as the catalogue has them; the band of supply is that of the verdicts."""

    def value(name: str) -> float:
        return catalogue.figure(f"coefficient/season_plan/{name}").value

    return Weights(
        missed=value("missed_weight"),
        wasted=value("wasted_weight"),
        short_element=value("short_element_weight"),
        idle_element=value("idle_element_weight"),
        supply_over_demand_least=catalogue.figure("coefficient/verdict/thin_below").value,
        supply_over_demand_most=catalogue.figure("coefficient/verdict/ample_above").value,
        sowing_min=value("sowing_min_per_plant"),
        moving_min=value("moving_min_per_plant"),
        picking_min=value("picking_min_per_plant"),
    )
