"""What is wanted of the season: targets by week, and the band that demand for each element should keep."""

from __future__ import annotations

from typing import Final

import numpy as np

from planner.farm.crops import Target, TargetUnit
from planner.farm.farm import DAYS_PER_WEEK
from planner.farm.species import ELEMENTS
from planner.forecast.profiles import contents
from planner.planning.season_plan.frame import Frame
from planner.planning.season_plan.values import Elements, Floats, Line

_G_PER_KG: Final = 1000.0
_NOTHING_G: Final = 1e-9


def lines_of(frame: Frame) -> tuple[Line, ...]:
    """Return a line for every crop and unit that some week of the plan has a target for."""
    pairs = dict.fromkeys(
        (target.crop, target.unit) for target in frame.farm.targets if target.crop in frame.crops
    )
    lines = (_line(frame, crop, unit) for crop, unit in pairs)
    return tuple(line for line in lines if line.wanted.any())


def _line(frame: Frame, key: str, unit: TargetUnit) -> Line:
    crop = frame.forecaster.catalogue.crops[key]
    wanted = sum(
        (
            wanted_by_week(frame, target)
            for target in frame.farm.targets
            if (target.crop, target.unit) == (key, unit)
        ),
        start=np.zeros(frame.span.count),
    )
    fixed, number = (
        np.zeros(frame.span.count),
        frame.fixed.crops.index(key) if key in frame.fixed.crops else -1,
    )
    per_plant = crop.marketable_share
    if unit is TargetUnit.KG:
        per_plant *= crop.yield_g_per_plant / _G_PER_KG
    if number >= 0:
        by_day = frame.fixed.harvest_plants if unit is TargetUnit.HEADS else frame.fixed.harvest_g / _G_PER_KG
        fixed = frame.span.clipped(by_day[number]) * crop.marketable_share
    asked = wanted > 0
    return Line(
        crop=frame.crops.index(key),
        unit=unit,
        per_plant=per_plant,
        wanted=wanted,
        fixed=fixed,
        usual=float(np.median(wanted[asked])) if asked.any() else 1.0,
    )


def wanted_by_week(frame: Frame, target: Target) -> Floats:
    """Return what a target asks for in each week; a week it holds in part asks for its part."""
    days = np.zeros(frame.ruler.days)
    first = max(frame.ruler.day_of(target.from_on), 0)
    last = frame.ruler.days if target.until_on is None else frame.ruler.day_of(target.until_on) + 1
    days[first : max(last, first)] = target.amount_per_week / DAYS_PER_WEEK
    return frame.span.clipped(days)


def elements_of(frame: Frame) -> Elements:
    """Return demand that stands, and the least and most that supply is good for, loop by loop."""
    shape = (len(frame.farm.loops), len(ELEMENTS), frame.span.count)
    supply = _weekly(frame, [loop.supply_g for loop in frame.fixed.loops]).reshape(shape)
    usual = supply.mean(axis=2)
    crops = frame.forecaster.catalogue.crops
    return Elements(
        content=np.asarray([contents(crops[key]) for key in frame.crops]).reshape(
            len(frame.crops), len(ELEMENTS)
        ),
        fixed=_weekly(frame, [loop.demand_g for loop in frame.fixed.loops]).reshape(shape),
        supply=supply,
        low=supply / frame.weights.supply_over_demand_most,
        high=supply / frame.weights.supply_over_demand_least,
        usual=np.where(usual > _NOTHING_G, usual, 0.0),
    )


def _weekly(frame: Frame, loops: list[Floats]) -> Floats:
    return np.asarray([[frame.span.clipped(row) for row in loop] for loop in loops])
