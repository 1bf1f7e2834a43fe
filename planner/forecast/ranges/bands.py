"""Puts swings together to low, likely and high, and sorts them by what they matter.

Figures are taken as independent of each other, so their swings are added in quadrature: upward what they
add, downward the factors they lower by. Figures that go together are moved as one swing. The bands are
those of the figures; they say nothing of luck, which `planner.forecast.chances` does.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from dataclasses import replace
from typing import Final

import numpy as np

from planner.farm.farm import Farm
from planner.farm.fields import Id
from planner.forecast.engine import Forecaster
from planner.forecast.ranges.swings import Swinger, crop_runs, fish_runs, outcome_of
from planner.forecast.ranges.values import LoopRanges, Outcome, Range, Ranges, Sensitivity, Swing
from planner.forecast.values import Bools, Floats, Forecast

_NOTHING_G: Final = 1e-9
LEAST_SHOWN: Final = 8


def ranges_of(farm: Farm, forecast: Forecast, forecaster: Forecaster) -> Ranges:
    """Return the ranges of a forecast that `forecaster` made of `farm`."""
    return ranges_from(tuple(swings_of(farm, forecast, forecaster)), forecast)


def swings_of(farm: Farm, forecast: Forecast, forecaster: Forecaster) -> Iterator[Swing]:
    """Yield the swings of a forecast one by one, for those who want to stop on the way."""
    catalogue = forecaster.catalogue_for(farm)
    of_crops = replace(farm, fish_groups=(), fish_events=(), doses=())
    of_fish = replace(farm, batches=(), placements=())
    crops = forecast.crops
    yield from Swinger(of_crops, catalogue, crops=crops).swings(crop_runs(catalogue, crops))
    yield from Swinger(of_fish, catalogue, crops=crops).swings(fish_runs(catalogue, farm))


def swing_count(farm: Farm, forecast: Forecast, forecaster: Forecaster) -> int:
    """Return how many swings `swings_of` will yield, without working any out."""
    catalogue = forecaster.catalogue_for(farm)
    runs = (*crop_runs(catalogue, forecast.crops), *fish_runs(catalogue, farm))
    return sum(any(one.low < one.high for one in part.figures) for run in runs for part in run)


def ranges_from(swings: Sequence[Swing], forecast: Forecast) -> Ranges:
    """Return the ranges that swings give around a forecast."""
    likely = outcome_of(forecast, crops=forecast.crops)
    bands = {name: band_of(swings, name, getattr(likely, name)) for name in Outcome.__slots__}
    ratio = _ratio_band(swings, likely, bands["supply_g"], bands["demand_g"])
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
    """Return the band of one array of an outcome; its low is nothing where one figure can bring it there."""
    factor, vanishes = _lowered(swings, name, likely)
    low = np.where(vanishes, 0.0, likely * factor)
    return Range(low=low, likely=likely, high=likely + _raised(swings, name, likely))


def _raised(swings: Sequence[Swing], name: str, likely: Floats) -> Floats:
    """Return how far all swings together lift something, added in quadrature."""
    squares = np.zeros_like(likely)
    for swing in swings:
        most = np.maximum(getattr(swing.at_low, name), getattr(swing.at_high, name))
        squares += np.maximum(most, 0.0) ** 2
    return np.sqrt(squares)


def _lowered(swings: Sequence[Swing], name: str, likely: Floats) -> tuple[Floats, Bools]:
    """Return the factor that all swings together lower something by, and where one alone leaves nothing.

    Downward it is logarithms that are added in quadrature, so that nothing sinks below nothing; swings that
    bring it to nothing are left out of the factor.
    """
    squares, vanishes = np.zeros_like(likely), np.zeros(likely.shape, dtype=np.bool_)
    there = likely > 0
    divisor = np.where(there, likely, 1.0)
    for swing in swings:
        least = np.minimum(getattr(swing.at_low, name), getattr(swing.at_high, name))
        factor = np.where(there, 1.0 + np.minimum(least, 0.0) / divisor, 1.0)
        gone = factor < _LEAST_FACTOR
        vanishes |= gone
        squares += np.log(np.where(gone, 1.0, factor)) ** 2
    return np.exp(-np.sqrt(squares)), vanishes


_LEAST_FACTOR: Final = 1e-6
"""A factor below this is taken as nothing."""


def _ratio_band(swings: Sequence[Swing], likely: Outcome, supply_g: Range, demand_g: Range) -> Range:
    """Return the band of the ratio: factors of supply and of demand are added in quadrature.

    No figure has to do with both. A week in which a figure leaves no demand has no ratio to tell then, and
    such a figure is left out.
    """
    ratio = ratio_of(likely.supply_g, likely.demand_g)
    known = ~np.isnan(ratio)
    wanted = np.where(known, likely.demand_g, 1.0)
    given = np.where(likely.supply_g > 0, likely.supply_g, 1.0)
    less_wanted, _ = _lowered(swings, "demand_g", likely.demand_g)
    less_given, _ = _lowered(swings, "supply_g", likely.supply_g)
    more_wanted = np.maximum(demand_g.high / wanted, 1.0)
    more_given = np.maximum(supply_g.high / given, 1.0)
    high = ratio * np.exp(np.hypot(np.log(more_given), np.log(less_wanted)))
    low = ratio * np.exp(-np.hypot(np.log(less_given), np.log(more_wanted)))
    # What is not supplied at all has no factor: then it is what may come over what is wanted.
    high = np.where(likely.supply_g > 0, high, supply_g.high / wanted)
    low = np.where(supply_g.low > 0, low, 0.0)
    nothing = np.full_like(ratio, np.nan)
    return Range(low=np.where(known, low, nothing), likely=ratio, high=np.where(known, high, nothing))


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
