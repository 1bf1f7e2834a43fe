"""Chances as plain data of a stable shape; described in docs/forecast-json.md."""

from __future__ import annotations

import math
from collections.abc import Iterator
from datetime import timedelta
from typing import Any, Final

import numpy as np

from planner.farm.crops import Target, TargetUnit
from planner.farm.farm import DAYS_PER_WEEK, Farm
from planner.farm.species import ELEMENTS
from planner.forecast.chances.values import LEVELS_PERCENT, Chances, LoopChances
from planner.forecast.plain import WeekSpan
from planner.forecast.values import Floats
from planner.forecast.verdicts import symbol_of
from planner.science.chances import percentiles

_DIGITS: Final = 6
Data = dict[str, Any]


def chances_data(farm: Farm, chances: Chances, *, span: WeekSpan) -> Data:
    """Return the chances of some weeks as dicts, lists, texts and numbers."""
    plants = {crop: chances.harvest_percentiles(crop) for crop in chances.crops}
    kilos = {crop: chances.harvest_percentiles(crop, TargetUnit.KG) for crop in chances.crops}
    return {
        "seed": chances.seed,
        "draws": chances.draws,
        "percentiles": list(LEVELS_PERCENT),
        "harvest": [_harvest(chances, week, plants, kilos) for week in span],
        "loops": [_loop(chances, loop, span) for loop in chances.loops],
        "targets": [_target(chances, target, span) for target in farm.targets],
    }


def _plain(values: Floats) -> list[float]:
    return [round(float(value), _DIGITS) for value in values]


def _week(chances: Chances, week: int) -> Data:
    ruler = chances.ruler
    return {"week": ruler.week_name(week), "start": ruler.week_start(week).isoformat()}


def _harvest(chances: Chances, week: int, plants: dict[str, Floats], kilos: dict[str, Floats]) -> Data:
    crops = [
        {"crop": crop, "plants": _plain(plants[crop][:, week]), "kg": _plain(kilos[crop][:, week])}
        for crop in chances.crops
        if plants[crop][-1, week] > 0
    ]
    return {**_week(chances, week), "crops": crops}


def _loop(chances: Chances, loop: LoopChances, span: WeekSpan) -> Data:
    feed = percentiles(loop.feed_g_per_day, levels_percent=LEVELS_PERCENT)
    weeks = [
        {
            **_week(chances, week),
            "feed_g_per_day": _plain(feed[:, week]),
            "ratio": {symbol_of(n): _ratio(loop.ratio[:, n, week]) for n in range(len(ELEMENTS))},
        }
        for week in span
    ]
    return {"loop": loop.name, "weeks": weeks}


def _ratio(drawn: Floats) -> list[float] | None:
    """Return percentiles of a ratio, of the draws in which something is wanted; None where none is."""
    known = drawn[~np.isnan(drawn)]
    if known.size * 2 <= drawn.size:
        return None
    return _plain(percentiles(known, levels_percent=LEVELS_PERCENT))


def _target(chances: Chances, target: Target, span: WeekSpan) -> Data:
    weeks = [
        {**_week(chances, week), "chance": round(chance, _DIGITS)}
        for week, chance in target_chances(chances, target)
        if span.first <= week < span.last
    ]
    return {
        "crop": target.crop,
        "amount_per_week": target.amount_per_week,
        "unit": target.unit.value,
        "weeks": weeks,
    }


def target_chances(chances: Chances, target: Target) -> Iterator[tuple[int, float]]:
    """Yield the weeks that lie wholly within a target's time, and the chance that each gives enough."""
    ruler = chances.ruler
    # Heads are whole: a hair below the number that rounding leaves is the number.
    amount = math.nextafter(target.amount_per_week, 0.0)
    for week in range(ruler.weeks):
        start = ruler.week_start(week)
        end = start + timedelta(days=DAYS_PER_WEEK - 1)
        if start >= target.from_on and (target.until_on is None or end <= target.until_on):
            yield week, chances.chance_at_least(target.crop, week, amount=amount, unit=target.unit)
