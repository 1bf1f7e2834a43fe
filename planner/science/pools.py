"""One dissolved pool per element: what comes in, what plants take, what leaves, day by day.

Arrays run over elements on the last axis; scenarios may stand before them. A crop cannot take what is
not there: the shortfall is counted, and no pool falls below zero. Must not know which element is which.
"""

from __future__ import annotations

import math
from collections.abc import Mapping
from dataclasses import dataclass
from typing import Final

import numpy as np

from planner.science.limits import FloatArray, Values, require_at_least, require_between


@dataclass(frozen=True, slots=True, kw_only=True)
class PoolDay:
    """One day of a pool [g]; start + supply = taken + lost as gas + left with water + end."""

    taken_g: FloatArray
    unmet_g: FloatArray
    gas_g: FloatArray
    leaving_g: FloatArray
    end_g: FloatArray


def pool_day(
    start_g: FloatArray,
    *,
    supply_g: Values,
    demand_g: Values,
    leaving_share: Values,
    gas_share: Values,
    out_of_reach_g: Values = 0.0,
) -> PoolDay:
    """Step a pool by one day [g].

    start_g, supply_g, demand_g, out_of_reach_g [g] >= 0; leaving_share [share of water/d] and gas_share
    [share of pool/d] 0..1; all broadcast. Order of the day: supply joins the stock; plants take their
    demand down to what is out of their reach (the amount at the level below which roots take nothing);
    then gas and leaving water take their shares of what is left.

    >>> day = pool_day(np.array([10.0]), supply_g=2.0, demand_g=3.0, leaving_share=0.1, gas_share=0.0)
    >>> float(day.taken_g[0]), float(day.leaving_g[0].round(3)), float(day.end_g[0].round(3))
    (3.0, 0.9, 8.1)
    """
    _check(start_g, supply_g=supply_g, demand_g=demand_g, leaving_share=leaving_share, gas_share=gas_share)
    require_at_least("amount out of reach", out_of_reach_g, low=0.0, unit="g")
    taken, gas, leaving, end = _step(start_g, supply_g, demand_g, leaving_share, gas_share, out_of_reach_g)
    return PoolDay(taken_g=taken, unmet_g=demand_g - taken, gas_g=gas, leaving_g=leaving, end_g=end)


@dataclass(frozen=True, slots=True, kw_only=True)
class PoolRun:
    """A pool over days [g]; every array has shape (day, ...) as the supply, ``end_g`` at the end of days."""

    taken_g: FloatArray
    unmet_g: FloatArray
    gas_g: FloatArray
    leaving_g: FloatArray
    end_g: FloatArray


def run_pools(
    start_g: FloatArray,
    *,
    supply_g: FloatArray,
    demand_g: FloatArray,
    leaving_share: FloatArray,
    gas_share: FloatArray,
    out_of_reach_g: Values = 0.0,
) -> PoolRun:
    """Step pools through all days of a plan [g].

    start_g [g], shape (...); supply_g and demand_g [g/d], shape (day, ...); leaving_share [1/d], shape
    (day,) or (day, ...); gas_share [1/d], shape (...) or (day, ...); ranges and order of the day as in
    ``pool_day``.

    >>> ones = np.ones((3, 2))
    >>> run = run_pools(
    ...     np.array([1.0, 0.0]),
    ...     supply_g=ones,
    ...     demand_g=1.5 * ones,
    ...     leaving_share=np.zeros(3),
    ...     gas_share=np.zeros(2),
    ... )
    >>> run.unmet_g.tolist()
    [[0.0, 0.5], [0.0, 0.5], [0.5, 0.5]]
    """
    _check(start_g, supply_g=supply_g, demand_g=demand_g, leaving_share=leaving_share, gas_share=gas_share)
    require_at_least("amount out of reach", out_of_reach_g, low=0.0, unit="g")
    shape = np.broadcast_shapes(supply_g.shape, demand_g.shape)
    by_day = (shape[0],) + (1,) * (len(shape) - 1)
    leaving_by_day = leaving_share.reshape(by_day) if leaving_share.ndim == 1 else leaving_share
    leaving_by_day, gas_by_day = np.broadcast_to(leaving_by_day, shape), np.broadcast_to(gas_share, shape)
    supply, demand = np.broadcast_to(supply_g, shape), np.broadcast_to(demand_g, shape)
    taken, left = np.empty(shape), np.empty(shape)
    kept = (1.0 - gas_by_day) * (1.0 - leaving_by_day)
    stock: FloatArray = np.array(np.broadcast_to(start_g, shape[1:]), dtype=np.float64)
    for day in range(shape[0]):
        # only what one day hands to the next is worked day by day; the rest follows at once below
        there = stock + supply[day]
        np.minimum(demand[day], np.maximum(there - out_of_reach_g, 0.0), out=taken[day])
        np.subtract(there, taken[day], out=left[day])
        stock = left[day] * kept[day]
    gas = left * gas_by_day
    leaving = (left - gas) * leaving_by_day
    return PoolRun(taken_g=taken, unmet_g=demand - taken, gas_g=gas, leaving_g=leaving, end_g=left * kept)


@dataclass(frozen=True, slots=True, kw_only=True)
class SteadyRun:
    """A pool over days [g]; arrays have shape (pool, day), ``start_g`` at the start, ``end_g`` at the end.

    On days on which a pool is set, it starts with that and not with what the day before left.
    """

    start_g: FloatArray
    taken_g: FloatArray
    unmet_g: FloatArray
    leaving_g: FloatArray
    end_g: FloatArray


def run_steady_pools(
    start_g: FloatArray,
    *,
    supply_g: FloatArray,
    demand_g: FloatArray,
    leaving_share: Values,
    set_g: Mapping[int, FloatArray] | None = None,
) -> SteadyRun:
    """``run_pools`` for the same share leaving on all days and no gas, without going day by day.

    start_g [g], shape (pool,); supply_g and demand_g [g/d], shape (pool, day); leaving_share [1/d] 0..1,
    one for all or shape (pool,); set_g [g]: for some days what pools start with, shape (pool,), not a
    number where one goes on.

    A pool that cannot fall under nothing is the sum that could, lifted by the lowest that sum has come to;
    weighed by what leaving water does to a gram until the last day, that holds for a leaking pool too.

    >>> run = run_steady_pools(
    ...     np.array([1.0]), supply_g=np.ones((1, 3)), demand_g=1.5 * np.ones((1, 3)), leaving_share=0.0
    ... )
    >>> run.unmet_g[0].tolist(), run.end_g[0].tolist()
    ([0.0, 0.0, 0.5], [0.5, 0.0, 0.0])
    """
    _check(start_g, supply_g=supply_g, demand_g=demand_g, leaving_share=leaving_share, gas_share=0.0)
    set_on = set_g or {}
    if set_on:
        given = np.concatenate(list(set_on.values()))
        require_at_least("dissolved stock", given[~np.isnan(given)], low=0.0, unit="g")
    leaving_by_pool = np.broadcast_to(leaving_share, supply_g.shape[:1])
    starts = _starts(start_g, supply_g - demand_g, 1.0 - leaving_by_pool, set_on)
    there = starts + supply_g
    taken = np.minimum(demand_g, there)
    left = there - taken
    leaving = left * leaving_by_pool[:, np.newaxis]
    return SteadyRun(
        start_g=starts, taken_g=taken, unmet_g=demand_g - taken, leaving_g=leaving, end_g=left - leaving
    )


_WEIGHT_SPAN: Final = 200.0
"""Weights in one sum may differ by e to this power: far from the largest number a float holds."""


def _starts(
    start_g: FloatArray, net_g: FloatArray, kept: FloatArray, set_on: Mapping[int, FloatArray]
) -> FloatArray:
    """Stock at the start of every day, shape (pool, day); `kept` is the share left after a day, (pool,)."""
    days = net_g.shape[1]
    at_once = _days_at_once(float(kept.min(initial=1.0)), days)
    weights = np.power(kept[:, np.newaxis], np.arange(at_once + 1, dtype=np.float64))
    starts = np.empty_like(net_g)
    stock: FloatArray = np.asarray(start_g, dtype=np.float64)
    firsts = sorted({*range(0, days, at_once), *set_on})
    for first, until in zip(firsts, [*firsts[1:], days], strict=True):
        given = set_on.get(first)
        if given is not None:
            stock = np.where(np.isnan(given), stock, given)
        many = until - first
        free = np.cumsum(net_g[:, first:until] / weights[:, :many], axis=1)
        free += stock[:, np.newaxis]
        free -= np.minimum(np.minimum.accumulate(free, axis=1), 0.0)
        free *= weights[:, 1 : many + 1]
        starts[:, first] = stock
        starts[:, first + 1 : until] = free[:, :-1]
        stock = free[:, -1]
    return starts


def _days_at_once(kept: float, days: int) -> int:
    if kept >= 1.0:
        return max(days, 1)
    if kept <= 0.0:
        return 1
    return max(min(days, int(_WEIGHT_SPAN / -math.log(kept))), 1)


def _step(
    start: FloatArray, supply: Values, demand: Values, leaving: Values, gas: Values, out_of_reach: Values
) -> tuple[FloatArray, FloatArray, FloatArray, FloatArray]:
    there = start + supply
    taken = np.minimum(demand, np.maximum(there - out_of_reach, 0.0))
    left = there - taken
    lost = left * gas
    left = left - lost
    gone = left * leaving
    return taken, lost, gone, left - gone


def _check(
    start_g: FloatArray, *, supply_g: Values, demand_g: Values, leaving_share: Values, gas_share: Values
) -> None:
    require_at_least("dissolved stock", start_g, low=0.0, unit="g")
    require_at_least("supply", supply_g, low=0.0, unit="g/d")
    require_at_least("demand", demand_g, low=0.0, unit="g/d")
    require_between("share of water leaving", leaving_share, low=0.0, high=1.0, unit="1/d")
    require_between("gaseous loss", gas_share, low=0.0, high=1.0, unit="1/d")
