"""Works out ways of stocking, of taking a harvest and of starting up, each with the feed it comes to.

Must know nothing of words or widgets.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from datetime import timedelta
from threading import Event
from typing import Final

from planner.desk.plan.asks import NeedBasis, StockAsk
from planner.farm.changes import ChangeSet, applied
from planner.farm.farm import Farm, by_id
from planner.farm.fields import Id
from planner.forecast.engine import Forecaster
from planner.forecast.values import Forecast
from planner.planning.answering import Whys
from planner.planning.stocking.harvests import HarvestOption, harvest_options
from planner.planning.stocking.need import (
    FeedNeed,
    brought_per_feed,
    need_by_area,
    need_by_demand,
    need_by_ratio,
)
from planner.planning.stocking.options import Search, StockingTable
from planner.planning.stocking.propose import stocking_table
from planner.planning.stocking.startup import StartUp, start_up
from planner.planning.stocking.wish import StockingWish, dates_every
from planner.planning.why_farms import ground_of
from planner.planning.why_startup import start_whys
from planner.planning.why_stocking import harvest_whys, stocking_whys

SHARES: Final = (1.0, 0.5, 0.3)
_TEN_YEARS: Final = timedelta(weeks=520)
Weekly = tuple[float, ...]


@dataclass(frozen=True, slots=True, kw_only=True, eq=False)
class WaysFound:
    """Ways of stocking, with feed by week [g/d] of each within the plan, of today's fish, and the band."""

    table: StockingTable
    loop: Id
    feeds: tuple[Weekly, ...]
    today: Weekly
    low: Weekly
    high: Weekly
    whys: Whys


@dataclass(frozen=True, slots=True, kw_only=True, eq=False)
class HarvestsFound:
    """Ways of taking one harvest, with the feed by week [g/d] of each."""

    options: tuple[HarvestOption, ...]
    feeds: tuple[Weekly, ...]
    whys: Whys


@dataclass(frozen=True, slots=True, kw_only=True, eq=False)
class StartFound:
    """When the crops of a new loop may begin, and why."""

    start: StartUp
    whys: Whys


def wish_of(ask: StockAsk) -> StockingWish:
    """Return what is asked of the engine."""
    return StockingWish(
        loop=ask.loop,
        species=ask.species,
        feed=ask.feed,
        fingerling_g=ask.fingerling_g,
        dates=dates_every(ask.every_weeks, first_on=ask.from_on, until_on=ask.from_on + _TEN_YEARS),
        harvest_g=ask.harvest_g,
        density_limit_kg_per_m3=ask.density_limit_kg_per_m3,
        shares=SHARES,
    )


def ways_steps(ask: StockAsk, farm: Farm, forecaster: Forecaster, stopped: Event) -> Iterator[WaysFound]:
    """Yield the ways of stocking; nothing once `stopped` is set."""

    def goes_on() -> bool:
        return not stopped.is_set()

    before = forecaster.preview(farm)
    need = _need(ask, before, forecaster)
    table = stocking_table(farm, forecaster, wish_of(ask), need=need, search=Search(keep_going=goes_on))
    yield WaysFound(
        table=table,
        feeds=tuple(_feed(farm, one.change_set, forecaster, ask.loop) for one in table.options),
        loop=ask.loop,
        today=_weekly(before, ask.loop),
        low=tuple(float(value) for value in need.low),
        high=tuple(float(value) for value in need.high),
        whys=stocking_whys(table, ground_of(farm, forecaster)),
    )


def _need(ask: StockAsk, before: Forecast, forecaster: Forecaster) -> FeedNeed:
    loop = next(one for one in before.loops if one.loop == ask.loop)
    if ask.basis is NeedBasis.STEADY and ask.area_m2 is not None:
        band, _ = forecaster.bands.of_rule(loop.area_rule)
        return need_by_ratio(ask.area_m2, band=band, weeks=before.ruler.weeks)
    if ask.basis is NeedBasis.DEMAND:
        brought = brought_per_feed(loop)
        return need_by_demand(loop, before.ruler, forecaster.bands, brought_g_per_g=brought)
    return need_by_area(loop, before.ruler, forecaster.bands)


def _feed(farm: Farm, change_set: ChangeSet, forecaster: Forecaster, loop: Id) -> Weekly:
    return _weekly(forecaster.preview(applied(farm, change_set)), loop)


def _weekly(forecast: Forecast, loop: Id) -> Weekly:
    found = next(one for one in forecast.loops if one.loop == loop)
    return tuple(float(value) for value in forecast.ruler.weekly_mean(found.feed_g))


def harvest_steps(
    event: Id, loop: Id, farm: Farm, forecaster: Forecaster, _stopped: Event
) -> Iterator[HarvestsFound]:
    """Yield the ways of taking a planned harvest; the forecaster stops it."""
    options = harvest_options(farm, forecaster, event, shares=SHARES)
    feeds = tuple(_feed(farm, one.change_set, forecaster, loop) for one in options)
    group = by_id(farm.fish_events)[event].group
    yield HarvestsFound(options=options, feeds=feeds, whys=harvest_whys(options, group, farm, forecaster))


def start_up_steps(loop: Id, farm: Farm, forecaster: Forecaster, _stopped: Event) -> Iterator[StartFound]:
    """Yield when the crops of a loop may begin; the forecaster stops it."""
    found = start_up(farm, forecaster, loop)
    yield StartFound(start=found, whys=start_whys(found, loop, ground_of(farm, forecaster)))
