"""Computations on whole farms: figures of a year read off the forecast."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from typing import Final

from planner.farm.farm import DAYS_PER_WEEK
from planner.farm.species import ELEMENTS
from planner.forecast.values import Floats, Forecast, LoopForecast
from planner.forecast.verify.ledger import Inputs

SystemComputation = Callable[[Inputs, Forecast], float]

_PERCENT: Final = 100.0
_G_PER_KG: Final = 1000.0
_G_PER_T: Final = 1_000_000.0


def _span(inputs: Inputs) -> slice:
    """Return the days of the weeks asked for, the first week of the plan being week 1."""
    first = (inputs.whole("from_week") - 1) * DAYS_PER_WEEK
    return slice(first, first + inputs.whole("weeks") * DAYS_PER_WEEK)


def _feed_g(forecast: Forecast) -> Floats:
    total: Floats = sum((loop.feed_g for loop in forecast.loops), forecast.loops[0].feed_g * 0.0)
    return total


def system_fish(inputs: Inputs, forecast: Forecast) -> float:
    """Fish harvested in the weeks [t]."""
    days = _span(inputs)
    groups = (group for loop in forecast.loops for group in loop.groups)
    return float(sum(group.harvest_g[days].sum() for group in groups)) / _G_PER_T


def system_feed(inputs: Inputs, forecast: Forecast) -> float:
    """Mean feed a day in the weeks [kg/d]."""
    return float(_feed_g(forecast)[_span(inputs)].mean()) / _G_PER_KG


def system_ratio(inputs: Inputs, forecast: Forecast) -> float:
    """Mean feed over the area of all beds in the weeks [g/m²/d]."""
    area = sum(loop.bed_m2 for loop in forecast.loops)
    return float(_feed_g(forecast)[_span(inputs)].mean()) / area


def system_conversion(inputs: Inputs, forecast: Forecast) -> float:
    """Feed over gain in the weeks."""
    days = _span(inputs)
    groups = [group for loop in forecast.loops for group in loop.groups]
    fed, gained = (
        sum(float(series[days].sum()) for series in serieses)
        for serieses in ([g.feed_g for g in groups], [g.gain_g for g in groups])
    )
    return fed / gained


def system_harvest_weight(inputs: Inputs, forecast: Forecast) -> float:
    """Mean weight of the fish harvested in the weeks [g]."""
    days = _span(inputs)
    groups = [group for loop in forecast.loops for group in loop.groups]
    grams = sum(float(group.harvest_g[days].sum()) for group in groups)
    return grams / sum(float(group.harvest_count[days].sum()) for group in groups)


def system_crop(inputs: Inputs, forecast: Forecast) -> float:
    """Fresh mass of a crop harvested in the weeks [t]."""
    row = forecast.crops.index(inputs.text("crop"))
    return float(forecast.harvest_g[row, _span(inputs)].sum()) / _G_PER_T


def system_heads(inputs: Inputs, forecast: Forecast) -> float:
    """Plants of a crop harvested a week, as a mean over the weeks."""
    row = forecast.crops.index(inputs.text("crop"))
    return float(forecast.harvest_plants[row, _span(inputs)].sum()) / inputs.number("weeks")


def system_planted(inputs: Inputs, forecast: Forecast) -> float:
    """Mean area under plants in the weeks [m²]."""
    days = _span(inputs)
    return float(sum(loop.planted_m2[:, days].sum(axis=0).mean() for loop in forecast.loops))


_PARTS: Final[Mapping[str, Callable[[LoopForecast], Floats]]] = {
    "fish": lambda loop: loop.fish_g,
    "plants": lambda loop: loop.demand_g,
    "gas": lambda loop: loop.gas_g,
    "whole": lambda loop: loop.fish_g + loop.solids_g + loop.gas_g + loop.dissolved_g,
}


def system_share(inputs: Inputs, forecast: Forecast) -> float:
    """Part of an element of the feed that fish keep, plants want, or gas takes, or all of it [%]."""
    row, days = ELEMENTS.index(inputs.text("element")), _span(inputs)
    part = _PARTS[inputs.text("part")]
    found = sum(float(part(loop)[row, days].sum()) for loop in forecast.loops)
    return _PERCENT * found / sum(float(loop.content_g[row, days].sum()) for loop in forecast.loops)


SYSTEMS: Final[dict[str, SystemComputation]] = {
    each.__name__: each
    for each in (
        system_fish,
        system_feed,
        system_ratio,
        system_conversion,
        system_harvest_weight,
        system_crop,
        system_heads,
        system_planted,
        system_share,
    )
}
