"""Ranges as plain data of a stable shape; described in docs/forecast-json.md."""

from __future__ import annotations

import math
from typing import Any, Final

from planner.farm.species import ELEMENTS
from planner.forecast.plain import WeekSpan
from planner.forecast.ranges.bands import sensitivities
from planner.forecast.ranges.values import LoopRanges, Range, Ranges, Sensitivity
from planner.forecast.verdicts import symbol_of

_DIGITS: Final = 6
_G_PER_KG: Final = 1000.0
Data = dict[str, Any]


def ranges_data(ranges: Ranges, *, span: WeekSpan) -> Data:
    """Return the ranges of some weeks; every list holds low, likely and high."""
    return {
        "harvest": [_harvest(ranges, week) for week in span],
        "loops": [_loop(ranges, loop, span) for loop in ranges.loops],
    }


def _three(band: Range, *at: int, per: float = 1.0) -> list[float] | None:
    """Return low, likely and high at a place of a range, None where there is no figure."""
    found = [float(end[at]) / per for end in (band.low, band.likely, band.high)]
    return None if math.isnan(found[1]) else [round(value, _DIGITS) for value in found]


def _week(ranges: Ranges, week: int) -> Data:
    return {"week": ranges.ruler.week_name(week), "start": ranges.ruler.week_start(week).isoformat()}


def _harvest(ranges: Ranges, week: int) -> Data:
    crops = [
        {
            "crop": crop,
            "plants": _three(ranges.harvest_plants, number, week),
            "kg": _three(ranges.harvest_g, number, week, per=_G_PER_KG),
        }
        for number, crop in enumerate(ranges.crops)
        if ranges.harvest_plants.high[number, week] > 0
    ]
    return {**_week(ranges, week), "crops": crops}


def _loop(ranges: Ranges, loop: LoopRanges, span: WeekSpan) -> Data:
    weeks = [
        {
            **_week(ranges, week),
            "feed_g_per_day": _three(loop.feed_g_per_day, week),
            "elements": {symbol_of(n): _element(loop, n, week) for n in range(len(ELEMENTS))},
        }
        for week in span
    ]
    most = {
        symbol_of(n): [_sensitivity(one) for one in sensitivities(ranges, loop=loop.loop, element=n)]
        for n in range(len(ELEMENTS))
    }
    return {"loop": loop.name, "weeks": weeks, "matters_most": most}


def _element(loop: LoopRanges, number: int, week: int) -> Data:
    return {
        "supply_g": _three(loop.supply_g, number, week),
        "demand_g": _three(loop.demand_g, number, week),
        "ratio": _three(loop.ratio, number, week),
    }


def _sensitivity(one: Sensitivity) -> Data:
    """Return what one figure does to the ratio of the whole plan."""
    ratios = (one.ratio_at_low, one.ratio_likely, one.ratio_at_high)
    return {
        "figures": list(one.paths),
        "unit": one.unit,
        "values": [one.low, one.likely, one.high],
        "ratios": [round(value, _DIGITS) for value in ratios],
    }
