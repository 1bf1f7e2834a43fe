"""Puts swings together to low, likely and high, and sorts them by what they matter.

Figures are taken as independent of each other, so their swings are added in quadrature, upward and
downward each for itself; those of a ratio as factors. Figures that go together are moved as one swing.
The bands are those of the figures; they say nothing of luck, which `planner.forecast.chances` does.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import replace
from typing import Final

import numpy as np

from planner.farm.farm import Farm
from planner.farm.fields import Id
from planner.forecast.engine import Forecaster
from planner.forecast.ranges.swings import Swinger, crop_runs, fish_runs, outcome_of
from planner.forecast.ranges.values import LoopRanges, Outcome, Range, Ranges, Sensitivity, Swing
from planner.forecast.values import Floats, Forecast

_NOTHING_G: Final = 1e-9
LEAST_SHOWN: Final = 8


def ranges_of(farm: Farm, forecast: Forecast, forecaster: Forecaster) -> Ranges:
    """Return the ranges of a forecast that `forecaster` made of `farm`."""
    catalogue = forecaster.catalogue_for(farm)
    of_crops = replace(farm, fish_groups=(), fish_events=(), doses=())
    of_fish = replace(farm, batches=(), placements=())
    crops = forecast.crops
    swings = (
        *Swinger(of_crops, catalogue, crops=crops).swings(crop_runs(catalogue, crops)),
        *Swinger(of_fish, catalogue, crops=crops).swings(fish_runs(catalogue, farm)),
    )
    return ranges_from(swings, forecast)


def ranges_from(swings: Sequence[Swing], forecast: Forecast) -> Ranges:
    """Return the ranges that swings give around a forecast."""
    likely = outcome_of(forecast, crops=forecast.crops)
    bands = {name: band_of(swings, name, getattr(likely, name)) for name in Outcome.__slots__}
    ratio = _ratio_band(swings, likely)
    return Ranges(
        ruler=forecast.ruler,
        crops=forecast.crops,
        loops=tuple(
            LoopRanges(
                loop=loop.loop,
                name=loop.name,
                supply_g=_row(bands["supply_g"], number),
                demand_g=_row(bands["demand_g"], number),
                ratio=_row(ratio, number),
                feed_g_per_day=_row(bands["feed_g_per_day"], number),
            )
            for number, loop in enumerate(forecast.loops)
        ),
        harvest_plants=bands["harvest_plants"],
        harvest_g=bands["harvest_g"],
        likely=likely,
        swings=tuple(swings),
    )


def _row(band: Range, number: int) -> Range:
    return Range(low=band.low[number], likely=band.likely[number], high=band.high[number])


def band_of(swings: Sequence[Swing], name: str, likely: Floats) -> Range:
    """Return the band of one array of an outcome; nothing foreseen is below nothing."""
    return _in_quadrature(swings, lambda changed: getattr(changed, name), likely)


def _in_quadrature(swings: Sequence[Swing], change_of: Callable[[Outcome], Floats], likely: Floats) -> Range:
    up, down = _added(swings, change_of, likely)
    return Range(low=np.maximum(likely - down, 0.0), likely=likely, high=likely + up)


def _added(
    swings: Sequence[Swing], change_of: Callable[[Outcome], Floats], likely: Floats
) -> tuple[Floats, Floats]:
    """Return how far all swings together lift and lower something, each added in quadrature."""
    up, down = np.zeros_like(likely), np.zeros_like(likely)
    for swing in swings:
        low, high = change_of(swing.at_low), change_of(swing.at_high)
        up += np.maximum(np.maximum(low, high), 0.0) ** 2
        down += np.minimum(np.minimum(low, high), 0.0) ** 2
    return np.sqrt(up), np.sqrt(down)


def _ratio_band(swings: Sequence[Swing], likely: Outcome) -> Range:
    """Return the band of the ratio; a quotient swings by factors, so their logarithms are added.

    A ratio of nothing stays nothing; one that a single figure can bring to nothing has a low of nothing.
    """
    ratio = ratio_of(likely.supply_g, likely.demand_g)

    def change(changed: Outcome) -> Floats:
        moved = ratio_of(likely.supply_g + changed.supply_g, likely.demand_g + changed.demand_g)
        is_known = np.isfinite(moved) & (ratio > 0)
        factor = np.where(is_known, moved, 1.0) / np.where(is_known, ratio, 1.0)
        return np.log(np.maximum(factor, _LEAST_FACTOR))

    up, down = _added(swings, change, ratio)
    low = np.where(down < -np.log(_LEAST_FACTOR), ratio * np.exp(-down), 0.0)
    return Range(low=np.where(np.isnan(ratio), np.nan, low), likely=ratio, high=ratio * np.exp(up))


_LEAST_FACTOR: Final = 1e-6
"""A factor below this is taken as nothing."""


def ratio_of(supply_g: Floats, demand_g: Floats) -> Floats:
    """Return supply over demand, not-a-number where nothing is wanted."""
    wanted = demand_g > _NOTHING_G
    return np.where(wanted, supply_g / np.where(wanted, demand_g, 1.0), np.nan)


def sensitivities(
    ranges: Ranges, *, loop: Id, element: int, week: int | None = None, most: int = LEAST_SHOWN
) -> tuple[Sensitivity, ...]:
    """Return the figures that matter most for the ratio of an element, the widest swing first.

    In one week, or without a week for all supply of the plan over all demand. At most `most`, fewer when
    fewer have a range or where nothing is wanted; equal swings stand by path.
    """
    number = next(n for n, one in enumerate(ranges.loops) if one.loop == loop)
    supply, demand = (
        _total(getattr(ranges.likely, name), number, element, week) for name in ("supply_g", "demand_g")
    )
    if demand <= _NOTHING_G:
        return ()

    def ratio_with(changed: Outcome) -> float:
        wanted = demand + _total(changed.demand_g, number, element, week)
        given = supply + _total(changed.supply_g, number, element, week)
        return given / wanted if wanted > _NOTHING_G else supply / demand

    found = [_sensitivity(swing, ratio_with, supply / demand) for swing in ranges.swings]
    return tuple(sorted(found, key=_by_width)[:most])


def _total(by_week: Floats, loop: int, element: int, week: int | None) -> float:
    chosen = by_week[loop, element]
    return float(chosen.sum() if week is None else chosen[week])


def _sensitivity(swing: Swing, ratio_with: Callable[[Outcome], float], likely: float) -> Sensitivity:
    return Sensitivity(
        paths=swing.paths,
        unit=swing.unit,
        low=swing.low,
        likely=swing.likely,
        high=swing.high,
        ratio_at_low=ratio_with(swing.at_low),
        ratio_likely=likely,
        ratio_at_high=ratio_with(swing.at_high),
    )


def _by_width(one: Sensitivity) -> tuple[float, tuple[str, ...]]:
    return -one.width, one.paths
