"""How a farm stands in flagged weeks: the figures a remedy is judged by, taken from its forecast."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Final

import numpy as np

from planner.farm.farm import DAYS_PER_WEEK, Farm, by_id
from planner.farm.fields import Id
from planner.forecast.engine import Forecaster
from planner.forecast.values import Flag, FlagKind, Floats, Forecast, LoopForecast
from planner.forecast.verdicts import supply_ratios
from planner.planning.remedies.values import Effect

_ADVICE: Final = "coefficient/advice/"
_NOTHING_M2: Final = 1e-6
_REPAIRED: Final = 1e-9


@dataclass(frozen=True, slots=True, kw_only=True)
class Span:
    """The weeks that are looked at, first and the one after the last, of one loop."""

    loop: Id
    first: int
    last: int

    @property
    def days(self) -> slice:
        """The days of the weeks."""
        return slice(self.first * DAYS_PER_WEEK, self.last * DAYS_PER_WEEK)


def loop_of_flag(farm: Farm, flag: Flag) -> Id:
    """Return the loop that a flag is about; raises `KeyError` when its thing is not on the farm."""
    tanks, beds = by_id(farm.tanks), by_id(farm.beds)
    if flag.about in by_id(farm.loops):
        return flag.about
    if flag.about in tanks:
        return Id(tanks[flag.about].loop)
    groups = by_id(farm.fish_groups)
    if flag.about in groups:
        return Id(tanks[groups[flag.about].tank].loop)
    batch = by_id(farm.batches)[flag.about]
    held = [placement.bed for placement in farm.placements if placement.batch == batch.id]
    bed = held[0] if held else batch.bed
    return Id(beds[bed].loop) if bed in beds else farm.loops[0].id


def span_of_flag(farm: Farm, flag: Flag, forecast: Forecast, *, watch_weeks: int) -> Span:
    """Return the weeks a flag is about; after a harvest of fish as many as are watched."""
    ruler = forecast.ruler
    on = flag.on or ruler.start_on
    first = min(max(ruler.week_of(on), 0), ruler.weeks - 1)
    last = first + 1 if flag.until_on is None else ruler.week_of(flag.until_on) + 1
    if flag.kind is FlagKind.FEED_FALLS:
        last = first + watch_weeks
    elif flag.kind in (FlagKind.UNPLACED, FlagKind.SHORT_PLACES):
        last = _batch_end(flag, forecast)
    loop = loop_of_flag(farm, flag)
    return Span(loop=loop, first=first, last=min(max(last, first + 1), ruler.weeks))


def _batch_end(flag: Flag, forecast: Forecast) -> int:
    row = forecast.batches.row_of[flag.about]
    return int(forecast.batches.ends[row, -1]) // DAYS_PER_WEEK + 1


def effect_of(farm: Farm, forecast: Forecast, span: Span, forecaster: Forecaster) -> Effect:
    """Return how a farm stands; `forecast` is its own, flags included."""
    loop = _loop(forecast, span.loop)
    short_below = forecaster.bands.short_below
    ratios = _ratios(loop, forecast)
    short = np.nanmin(np.where(np.isnan(ratios), np.inf, ratios), axis=0) < short_below
    weeks = slice(span.first, span.last)
    return Effect(
        lowest_ratio=tuple(_lowest(row[weeks]) for row in ratios),
        weeks_short=int(short[weeks].sum()),
        plan_weeks_short=int(short.sum()),
        feed_ratio_g_per_m2_d=_feed_ratio(loop, forecast, weeks),
        fall_share=_fall(loop, span, weeks_before=_before(forecaster)),
        peak_kg_per_m3=max(
            (float(_density(farm, loop, tank.id)[span.days].max()) for tank in farm.tanks), default=0.0
        ),
        unplaced_plants=round(sum(_value(flag, "plants") for flag in _flags(forecast, FlagKind.UNPLACED))),
        slow_batches=len(_flags(forecast, FlagKind.GIVEN_UP)),
        harvest_g=tuple((key, float(forecast.harvest_g[n].sum())) for n, key in _crops(farm, forecast)),
        fish_g=float(sum(group.harvest_g.sum() for one in forecast.loops for group in one.groups)),
        feed_g=float(sum(one.feed_g.sum() for one in forecast.loops)),
    )


def severity(farm: Farm, forecast: Forecast, flag: Flag, span: Span, forecaster: Forecaster) -> float:
    """Return how bad what is flagged is, in its own unit; 0 when there is nothing to flag.

    Short supply: how far below the bound the ratios of flagged weeks are, summed. A fall of the feed: the
    share, and what is short in the weeks after. Density: kg/m³ above the limit. Places: plants without
    one. Slowness: 1 while the batch is slow.
    """
    loop = _loop(forecast, span.loop)
    if flag.kind in (FlagKind.SHORT_SUPPLY, FlagKind.FEED_FALLS):
        short = lack(loop, forecast, span, short_below=forecaster.bands.short_below)
        falls = flag.kind is FlagKind.FEED_FALLS
        return short + (_above(_fall(loop, span, weeks_before=_before(forecaster))) if falls else 0.0)
    if flag.kind is FlagKind.DENSITY:
        return _above(float(_density(farm, loop, flag.about)[span.days].max()) - _value(flag, "limit"))
    if flag.kind is FlagKind.GIVEN_UP:
        return float(sum(one.about == flag.about for one in _flags(forecast, FlagKind.GIVEN_UP)))
    mine = [one for one in _flags(forecast, FlagKind.UNPLACED) if one.about == flag.about]
    return sum(_value(one, "plants") for one in mine)


def lack(loop: LoopForecast, forecast: Forecast, span: Span, *, short_below: float) -> float:
    """Return how far below the bound the ratios are, summed over elements and the weeks of a span."""
    ratios = _ratios(loop, forecast)[:, span.first : span.last]
    return _above(float(np.nansum(np.maximum(short_below - ratios, 0.0))))


def _crops(farm: Farm, forecast: Forecast) -> list[tuple[int, str]]:
    """Return row and key of the crops that the farm grows; the forecast may know of others from before."""
    grown = {batch.crop for batch in farm.batches}
    return [(number, key) for number, key in enumerate(forecast.crops) if key in grown]


def _above(value: float) -> float:
    return value if value > _REPAIRED else 0.0


def _before(forecaster: Forecaster) -> int:
    return round(forecaster.catalogue.figure(f"{_ADVICE}hole_weeks_before").value)


def _flags(forecast: Forecast, kind: FlagKind) -> list[Flag]:
    return [flag for flag in forecast.flags if flag.kind is kind]


def _value(flag: Flag, name: str) -> float:
    return float(dict(flag.values)[name])


def _loop(forecast: Forecast, key: Id) -> LoopForecast:
    return next(loop for loop in forecast.loops if loop.loop == key)


def _ratios(loop: LoopForecast, forecast: Forecast) -> Floats:
    """Return supply over demand by (element, week), not a number without demand."""
    ruler = forecast.ruler
    supply, demand = ruler.weekly_sum(loop.supply_g), ruler.weekly_sum(loop.demand_g)
    return supply_ratios(supply, demand)


def _lowest(ratios: Floats) -> float | None:
    known = ratios[~np.isnan(ratios)]
    return float(known.min()) if known.size else None


def _feed_ratio(loop: LoopForecast, forecast: Forecast, weeks: slice) -> float | None:
    feed = forecast.ruler.weekly_mean(loop.feed_g)[weeks]
    area = forecast.ruler.weekly_mean(loop.planted_m2).sum(axis=0)[weeks]
    planted = area > _NOTHING_M2
    return float((feed[planted] / area[planted]).min()) if planted.any() else None


def _fall(loop: LoopForecast, span: Span, *, weeks_before: int) -> float:
    """Return the lowest week of feed in a span against the mean of the weeks before it."""
    start = span.days.start
    before = loop.feed_g[max(start - weeks_before * DAYS_PER_WEEK, 0) : start]
    usual = float(before.mean()) if before.size else 0.0
    if usual <= 0.0:
        return 0.0
    lowest = float(loop.feed_g[span.days].reshape(-1, DAYS_PER_WEEK).mean(axis=1).min())
    return max(1.0 - lowest / usual, 0.0)


def _density(farm: Farm, loop: LoopForecast, tank: Id) -> Floats:
    """Return live mass over water of a tank by day [kg/m³]; a gram a litre is as much."""
    inside = [group.biomass_g for group in loop.groups if group.tank == tank]
    mass: Floats = sum(inside, start=np.zeros_like(loop.feed_g))
    return mass / float(by_id(farm.tanks)[tank].volume_l)
