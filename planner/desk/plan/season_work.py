"""Works a season plan out beside the window, and sets what it brings beside what today's plan brings.

Both are read off forecasts, so that they can be compared. Must know nothing of words or widgets.
"""

from __future__ import annotations

import time
from collections.abc import Iterator
from dataclasses import dataclass
from threading import Event

from planner.farm.changes import applied
from planner.farm.crops import TargetUnit
from planner.farm.farm import Farm
from planner.farm.fields import Id
from planner.forecast.engine import Forecaster
from planner.forecast.values import Floats, Forecast
from planner.planning.answering import Whys
from planner.planning.outcome import supply_by_week
from planner.planning.season_plan.job import PlanJob, PlanProgress
from planner.planning.season_plan.options import PlanOptions
from planner.planning.season_plan.plan import SeasonPlan
from planner.planning.season_plan.proposal import PlanProposal, proposal
from planner.planning.why_farms import ground_of
from planner.planning.why_season import season_whys

Weekly = tuple[float, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class CropCourse:
    """What is wanted of a crop by week, and what today's plan and the proposal bring of it, fit for sale."""

    crop: str
    unit: TargetUnit
    wanted: Weekly
    today: Weekly
    proposed: Weekly


@dataclass(frozen=True, slots=True, kw_only=True)
class LoopCourse:
    """Supply of a loop by (element, week) [g], and demand as it is and as proposed."""

    loop: Id
    name: str
    supply: tuple[Weekly, ...]
    today: tuple[Weekly, ...]
    proposed: tuple[Weekly, ...]


@dataclass(frozen=True, slots=True, kw_only=True, eq=False)
class SeasonFound:
    """A plan, what adopting it changes, and the weeks it is for beside today's; `whys` tell why."""

    plan: SeasonPlan
    proposed: PlanProposal
    crops: tuple[CropCourse, ...]
    loops: tuple[LoopCourse, ...]
    whys: Whys


def season_steps(
    options: PlanOptions, enough: Event, farm: Farm, forecaster: Forecaster, stopped: Event
) -> Iterator[PlanProgress | SeasonFound]:
    """Yield how far it is, then what was found; `enough` keeps the best so far, `stopped` nothing."""
    job = PlanJob(farm, forecaster, options, clock=time.perf_counter)
    for step in job.steps():
        if stopped.is_set():
            return
        yield step
        if enough.is_set():
            break
    if job.plan is not None:
        yield season_found(job.plan, farm, forecaster)


def season_found(plan: SeasonPlan, farm: Farm, forecaster: Forecaster) -> SeasonFound:
    """Return a plan beside what there is today."""
    proposed = proposal(plan, farm, forecaster)
    today = forecaster.preview(farm)
    after = forecaster.preview(applied(farm, proposed.change_set))
    return SeasonFound(
        plan=plan,
        proposed=proposed,
        crops=tuple(_crop_courses(plan, today, after, forecaster)),
        loops=tuple(_loop_courses(plan, today, after)),
        whys=season_whys(plan, ground_of(farm, forecaster)),
    )


def _crop_courses(
    plan: SeasonPlan, today: Forecast, after: Forecast, forecaster: Forecaster
) -> Iterator[CropCourse]:
    model, crops = plan.model, forecaster.catalogue.crops
    for line in model.lines:
        key = model.crops[line.crop]
        share = crops[key].marketable_share
        was, comes = (supply_by_week(one, key, line.unit, share) for one in (today, after))
        yield CropCourse(
            crop=key,
            unit=line.unit,
            wanted=_weekly(line.wanted),
            today=_in_span(was, plan),
            proposed=_in_span(comes, plan),
        )


def _loop_courses(plan: SeasonPlan, today: Forecast, after: Forecast) -> Iterator[LoopCourse]:
    ruler = today.ruler
    for was, comes in zip(today.loops, after.loops, strict=True):
        yield LoopCourse(
            loop=was.loop,
            name=was.name,
            supply=tuple(_in_span(row, plan) for row in ruler.weekly_sum(comes.supply_g)),
            today=tuple(_in_span(row, plan) for row in ruler.weekly_sum(was.demand_g)),
            proposed=tuple(_in_span(row, plan) for row in ruler.weekly_sum(comes.demand_g)),
        )


def _in_span(values: Floats, plan: SeasonPlan) -> Weekly:
    first = plan.model.first_week
    return _weekly(values[first : first + plan.model.weeks])


def _weekly(values: Floats) -> Weekly:
    return tuple(float(value) for value in values)
