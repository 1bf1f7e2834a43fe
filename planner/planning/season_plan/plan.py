"""The season plan as a value: what to sow, how good that is, and how good it could be at most."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date
from enum import Enum
from typing import Final

import numpy as np

from planner.farm.crops import TargetUnit
from planner.farm.farm import DAYS_PER_WEEK
from planner.farm.species import ELEMENTS, BedKind
from planner.planning.season_plan.tally import Parts, Tally
from planner.planning.season_plan.values import BOOK_DAYS, Ints, OwnDays, SeasonModel, TooSlow


class PlanStatus(Enum):
    """How a plan came about: proven to be the best, as good as the search got, or nothing to plan."""

    BEST = "best"
    GOOD = "good"
    STOPPED = "stopped"
    NO_TARGETS = "no targets"
    NO_BEDS = "no beds"
    NOTHING_GROWS = "nothing grows"


NOTHING_PLANNED: Final = frozenset({PlanStatus.NO_TARGETS, PlanStatus.NO_BEDS, PlanStatus.NOTHING_GROWS})
"""Where there was nothing to plan; today's batches then stay."""


@dataclass(frozen=True, slots=True, kw_only=True)
class PlannedSowing:
    """Plants of a crop to sow in a week for a ground, which `ground` numbers among those of the model.

    `own_days` are those of stages that are other than the book's, for the sake of days of work.
    """

    crop: str
    ground: int
    bed_kind: BedKind
    week: int
    week_name: str
    sow_on: date
    plants: int
    own_days: OwnDays = BOOK_DAYS


@dataclass(frozen=True, slots=True, kw_only=True)
class LineWeek:
    """What is wanted of a crop in a week and what comes, in its unit."""

    crop: str
    unit: TargetUnit
    wanted: float
    harvest: float


@dataclass(frozen=True, slots=True, kw_only=True)
class GroundWeek:
    """Places of a ground, and those taken on the fullest day, by what stands already as well."""

    loop: int
    kind: BedKind
    places: int
    taken: int


@dataclass(frozen=True, slots=True, kw_only=True)
class CellsWeek:
    """Nursery cells of a loop, and those taken on the fullest day, by what stands already as well."""

    loop: int
    cells: int
    taken: int


@dataclass(frozen=True, slots=True, kw_only=True)
class PoolWeek:
    """Places at the intermediate distance of a loop, and those taken on the fullest day."""

    loop: int
    places: int
    taken: int


@dataclass(frozen=True, slots=True, kw_only=True)
class LoopWeek:
    """Demand and supply of a loop in a week [g], by element."""

    loop: int
    demand_g: tuple[float, ...]
    supply_g: tuple[float, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class PlanWeek:
    """One week of a plan. `work_min` is what the plan's sowings take [min]."""

    week: int
    name: str
    start_on: date
    lines: tuple[LineWeek, ...]
    grounds: tuple[GroundWeek, ...]
    nurseries: tuple[CellsWeek, ...]
    pools: tuple[PoolWeek, ...]
    loops: tuple[LoopWeek, ...]
    work_min: float


@dataclass(frozen=True, slots=True, kw_only=True)
class SeasonPlan:
    """A plan with its worth and the most that any plan can be worth, both in crop-weeks.

    `objective` is the worth of the targets met, less what is wasted and what is out of balance; no plan is
    worth more than `bound`. `gap` is how far it falls short of that, as a share of it. `by_hand` is what
    the rhythm written by hand is worth. `unsupplied` are elements nothing of which comes to a loop, which
    are left out of the balance.
    """

    model: SeasonModel
    lots: tuple[int, ...]
    status: PlanStatus
    objective: float
    bound: float
    by_hand: float
    parts: Parts
    sowings: tuple[PlannedSowing, ...]
    weeks: tuple[PlanWeek, ...]
    too_slow: tuple[TooSlow, ...]
    unsupplied: tuple[tuple[int, str], ...]

    @property
    def gap(self) -> float:
        """Share by which the plan may fall short of the best possible; 0 when nothing can be had."""
        return gap_between(self.objective, self.bound)


def gap_between(objective: float, bound: float) -> float:
    """Return the share of the bound that an objective falls short by, never below 0.

    >>> gap_between(99.0, 100.0)
    0.01
    """
    return max(bound - objective, 0.0) / abs(bound) if bound else 0.0


def plan_of(
    model: SeasonModel, lots: Ints, *, status: PlanStatus, bound: float, by_hand: float
) -> SeasonPlan:
    """Return the plan that sows some lots of each column."""
    tally = Tally(model)
    tally.put(lots)
    parts = tally.parts()
    objective = model.worth - parts.cost
    return SeasonPlan(
        model=model,
        lots=tuple(lots.tolist()),
        status=status,
        objective=objective,
        bound=max(bound, objective),
        by_hand=by_hand,
        parts=parts,
        sowings=_sowings(model, tally),
        weeks=_weeks(model, tally),
        too_slow=model.too_slow,
        unsupplied=tuple(
            (loop, ELEMENTS[element]) for loop, element in np.argwhere(model.elements.usual <= 0).tolist()
        ),
    )


def _sowings(model: SeasonModel, tally: Tally) -> tuple[PlannedSowing, ...]:
    columns, plants = model.columns, tally.plants
    sown = np.flatnonzero(plants)
    order = sown[np.lexsort((columns.ground[sown], columns.crop[sown], columns.week[sown]))]
    return tuple(
        PlannedSowing(
            crop=model.crops[columns.crop[column]],
            ground=int(columns.ground[column]),
            bed_kind=model.grounds[columns.ground[column]].kind,
            week=int(columns.week[column]),
            week_name=model.ruler.week_name(model.first_week + int(columns.week[column])),
            sow_on=model.ruler.date_of(int(columns.sow_day[column])),
            plants=int(plants[column]),
            own_days=columns.own_days[column],
        )
        for column in order.tolist()
    )


def _weeks(model: SeasonModel, tally: Tally) -> tuple[PlanWeek, ...]:
    rows = model.rows
    places = np.asarray([ground.places for ground in model.grounds], dtype=np.int64)
    cells = np.asarray([nursery.cells for nursery in model.nurseries], dtype=np.int64)
    beds = _Rows(model, start=rows.bed_start, group=rows.bed_ground, most=places)
    trays = _Rows(model, start=rows.nursery_start, group=rows.nursery_pool, most=cells)
    in_beds, in_trays = beds.taken(tally.bed_left), trays.taken(tally.nursery_left)
    most = np.asarray([pool.places for pool in model.pools], dtype=np.int64)
    between = _Rows(model, start=rows.spacing_start, group=rows.spacing_pool, most=most)
    in_pools = between.taken(tally.spacing_left)
    work = np.zeros(model.weeks)
    np.add.at(
        work, model.columns.work.week, model.columns.work.value * tally.plants[model.columns.work.column]
    )
    harvest = [line.wanted - tally.missing[number] for number, line in enumerate(model.lines)]
    return tuple(
        PlanWeek(
            week=week,
            name=model.ruler.week_name(model.first_week + week),
            start_on=model.ruler.week_start(model.first_week + week),
            lines=tuple(
                LineWeek(
                    crop=model.crops[line.crop],
                    unit=line.unit,
                    wanted=float(line.wanted[week]),
                    harvest=max(float(harvest[number][week]), 0.0),
                )
                for number, line in enumerate(model.lines)
            ),
            grounds=tuple(
                GroundWeek(
                    loop=ground.loop,
                    kind=ground.kind,
                    places=ground.places,
                    taken=int(in_beds[number, week]),
                )
                for number, ground in enumerate(model.grounds)
            ),
            nurseries=tuple(
                CellsWeek(
                    loop=nursery.loop,
                    cells=nursery.cells,
                    taken=int(in_trays[number, week]),
                )
                for number, nursery in enumerate(model.nurseries)
            ),
            pools=tuple(
                PoolWeek(loop=pool.loop, places=pool.places, taken=int(in_pools[number, week]))
                for number, pool in enumerate(model.pools)
            ),
            loops=tuple(
                LoopWeek(
                    loop=loop,
                    demand_g=tuple(tally.demand[loop, :, week].tolist()),
                    supply_g=tuple(model.elements.supply[loop, :, week].tolist()),
                )
                for loop in range(model.elements.supply.shape[0])
            ),
            work_min=float(work[week]),
        )
        for week in range(model.weeks)
    )


class _Rows:
    """Rows of places or cells by the weeks they reach into; `most` is what each group has in all."""

    def __init__(self, model: SeasonModel, *, start: Ints, group: Ints, most: Ints) -> None:
        self._group = group
        self._most = most
        self._weeks = model.weeks
        self._reach = []
        last_day = (model.first_week + model.weeks) * DAYS_PER_WEEK
        for row in range(start.size):
            follows = row + 1 < start.size and group[row + 1] == group[row]
            end = max(int(start[row + 1]) if follows else last_day, int(start[row]) + 1)
            first = int(start[row]) // DAYS_PER_WEEK - model.first_week
            last = (end - 1) // DAYS_PER_WEEK - model.first_week
            self._reach.append(slice(max(first, 0), max(min(last, model.weeks - 1) + 1, 0)))

    def taken(self, left: Ints) -> Ints:
        """Return what is taken when most is, from what is left in each row, shape (group, week)."""
        found = np.zeros((self._most.size, self._weeks), dtype=np.int64)
        for row, weeks in enumerate(self._reach):
            part = found[self._group[row], weeks]
            np.maximum(part, self._most[self._group[row]] - left[row], out=part)
        return found
