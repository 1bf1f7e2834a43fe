"""Makes the draws of a farm: plants, fish, and how supply then stands to demand."""

from __future__ import annotations

from typing import Final

import numpy as np

from planner.farm.farm import Farm, by_id
from planner.farm.fish import FishEvent
from planner.forecast.chances.plants import PlantDraws, demand_draws, draw_plants, harvest_draws
from planner.forecast.chances.shoals import draw_luck, feed_draws
from planner.forecast.chances.spreads import Spreads, spreads_of
from planner.forecast.chances.values import Chances, LoopChances
from planner.forecast.engine import Forecaster
from planner.forecast.values import Floats, Forecast, LoopForecast

DRAWS: Final = 1000
"""Enough for percentiles of a week within about one percent."""
SEED: Final = 1
_NOTHING_G: Final = 1e-9


def chances_of(
    farm: Farm,
    forecast: Forecast,
    forecaster: Forecaster,
    *,
    seed: int = SEED,
    draws: int = DRAWS,
    spreads: Spreads | None = None,
) -> Chances:
    """Return draws around a forecast that `forecaster` made of `farm`.

    The same seed gives the same draws on every machine. `spreads` are those of the figures unless given.
    """
    catalogue = forecaster.catalogue_for(farm)
    spread = spreads_of(farm, forecast, catalogue) if spreads is None else spreads
    random = np.random.default_rng(seed)
    drawn = draw_plants(forecast, forecaster, spreads=spread, random=random, draws=draws)
    plants, grams = harvest_draws(forecast, forecaster, drawn)
    feeds = [
        _loop_feed(farm, forecast, forecaster, loop, spread=spread, random=random, draws=draws)
        for loop in forecast.loops
    ]
    loops = tuple(
        LoopChances(
            loop=loop.loop,
            name=loop.name,
            feed_g_per_day=feed,
            ratio=_ratio(forecast, forecaster, number, drawn=drawn, feed=feed),
        )
        for number, (loop, feed) in enumerate(zip(forecast.loops, feeds, strict=True))
    )
    return Chances(
        seed=seed,
        draws=draws,
        ruler=forecast.ruler,
        crops=forecast.crops,
        harvest_plants=plants,
        harvest_g=grams,
        loops=loops,
    )


def _loop_feed(
    farm: Farm,
    forecast: Forecast,
    forecaster: Forecaster,
    loop: LoopForecast,
    *,
    spread: Spreads,
    random: np.random.Generator,
    draws: int,
) -> Floats:
    """Return the feed of a loop [g/d] by (draw, week)."""
    ruler, entries = forecast.ruler, by_id(farm.fish_groups)
    likely = ruler.weekly_mean(loop.feed_g)
    total = np.zeros((draws, ruler.weeks))
    for group in loop.groups:
        entry = entries[group.group]
        species = forecaster.catalogue.fish[entry.species]
        own = entry.daily_death_share
        fed = feed_draws(
            entry,
            group,
            _events(farm, entry.id),
            death_share=species.daily_death_share if own is None else own,
            luck=draw_luck(random, spread, draws=draws),
            ruler=ruler,
        )
        total += ruler.weekly_mean(fed) - ruler.weekly_mean(group.feed_g)
    return np.maximum(likely + total, 0.0)


def _events(farm: Farm, group: str) -> list[FishEvent]:
    return sorted((event for event in farm.fish_events if event.group == group), key=_on)


def _on(event: FishEvent) -> int:
    return event.on.toordinal()


def _ratio(
    forecast: Forecast, forecaster: Forecaster, number: int, *, drawn: PlantDraws, feed: Floats
) -> Floats:
    """Return supply over demand by (draw, element, week); what comes of the feed goes with the feed."""
    ruler, loop = forecast.ruler, forecast.loops[number]
    supply = ruler.weekly_sum(loop.supply_g)
    of_feed = supply - ruler.weekly_sum(loop.top_up_g) - ruler.weekly_sum(loop.dose_g)
    likely = ruler.weekly_mean(loop.feed_g)
    fed = likely > _NOTHING_G
    more = np.where(fed, feed / np.where(fed, likely, 1.0) - 1.0, 0.0)
    given = np.maximum(supply + of_feed * more[:, None, :], 0.0)
    wanted = np.moveaxis(demand_draws(forecast, forecaster, drawn, loop=number), 1, 0)
    is_wanted = wanted > _NOTHING_G
    return np.where(is_wanted, given / np.where(is_wanted, wanted, 1.0), np.nan)
