"""Draws how fish groups grow and die, and what they are fed by it.

The walk through the days is that of `planner.forecast.fish`, for all draws at once: what warmth, feed
conversion and rations a day had is taken from the forecast, and only what differs is drawn. It begins at
the first day of the plan; a weighed sample brings all draws together again.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date
from typing import Final

import numpy as np

from planner.farm.fish import Feeding, FishEvent, FishEventKind, FishGroup
from planner.forecast.chances.spreads import Spreads
from planner.forecast.values import Bools, Floats, GroupForecast, Ruler


@dataclass(frozen=True, slots=True, kw_only=True, eq=False)
class Luck:
    """How a group fares against what is likely, by draw: growth and deaths, 1 in the first row."""

    growth: Floats
    deaths: Floats


def draw_luck(random: np.random.Generator, spreads: Spreads, *, draws: int) -> Luck:
    """Return the luck of one group."""
    growth, deaths = np.ones(1 + draws), np.ones(1 + draws)
    if spreads.fish_growth_cv > 0:
        growth[1:] = np.maximum(1.0 + spreads.fish_growth_cv * random.standard_normal(draws), 0.0)
    if spreads.fish_death_cv > 0:
        variance = spreads.fish_death_cv**2
        deaths[1:] = random.gamma(1.0 / variance, variance, size=draws)
    return Luck(growth=growth, deaths=deaths)


def feed_draws(
    group: FishGroup,
    likely: GroupForecast,
    events: Sequence[FishEvent],
    *,
    death_share: float,
    luck: Luck,
    ruler: Ruler,
) -> Floats:
    """Return the feed of a group [g/d] by (draw, day), told around the forecast."""
    given = _is_given(events, ruler)
    walk = _Walk(group, likely, death_share=death_share, luck=luck, given=given)
    by_day: dict[int, list[FishEvent]] = {}
    for event in events:
        by_day.setdefault(ruler.day_of(event.on), []).append(event)
    raw = np.zeros((luck.growth.size, ruler.days))
    for day in range(walk.first_day, ruler.days):
        raw[:, day] = walk.day(day, by_day.get(day, ()))
    return np.maximum(likely.feed_g + (raw[1:] - raw[:1]), 0.0)


def _is_given(events: Sequence[FishEvent], ruler: Ruler) -> Bools:
    """Tell the days on which the feed is what was really given; a later entry ends an earlier one."""
    given = np.zeros(ruler.days, dtype=np.bool_)
    entries = [event for event in events if event.kind is FishEventKind.FEED_GIVEN]
    for event in sorted(entries, key=_on):
        first = ruler.day_of(event.on)
        given[max(first, 0) :] = False
        given[max(first, 0) : max(first + (event.days or 0), 0)] = True
    return given


def _on(event: FishEvent) -> date:
    return event.on


class _Walk:
    """All draws of one group on the day the walk has come to."""

    def __init__(
        self, group: FishGroup, likely: GroupForecast, *, death_share: float, luck: Luck, given: Bools
    ) -> None:
        swimming = likely.count.nonzero()[0]
        self.first_day = int(swimming[0]) if swimming.size else likely.count.size
        self._likely = likely
        self._luck = luck
        self._fixed = given | (group.feeding is Feeding.FIXED)
        self._by_growth = group.feeding is Feeding.GROWTH
        self._lives = np.clip(1.0 - death_share * luck.deaths, 0.0, 1.0)
        start = min(self.first_day, likely.count.size - 1)
        self._count = np.full(luck.growth.size, likely.count[start])
        self._weight_g = np.full(luck.growth.size, likely.weight_g[start])

    def day(self, day: int, events: Sequence[FishEvent]) -> Floats:
        """Go through one day; return what is fed."""
        if day > self.first_day:
            for event in events:
                self._meet(event)
        feed, gain_each = self._fed(day)
        self._weight_g = self._weight_g + gain_each
        self._count = self._count * self._lives
        return feed

    def _meet(self, event: FishEvent) -> None:
        """Let an event happen to every draw; feed and fasting are seen in the forecast."""
        many = float(event.count or 0)
        match event.kind:
            case FishEventKind.HARVEST if event.count is None:
                self._count = np.zeros_like(self._count)
            case FishEventKind.HARVEST | FishEventKind.DEATHS:
                self._count = np.maximum(self._count - many, 0.0)
            case FishEventKind.ADDED:
                mass_g = self._count * self._weight_g + many * (event.mean_weight_g or 0.0)
                self._count = self._count + many
                self._weight_g = mass_g / self._count
            case FishEventKind.SAMPLE:
                known = event.mean_weight_g
                self._weight_g = self._weight_g if known is None else np.full_like(self._weight_g, known)

    def _fed(self, day: int) -> tuple[Floats, Floats]:
        """Return feed of the whole group and gain of one fish, by draw."""
        likely, count, weight = self._likely, self._count, self._weight_g
        feed_g, gain_g = float(likely.feed_g[day]), float(likely.gain_g[day])
        if feed_g <= 0 or gain_g <= 0:
            return np.zeros_like(count), np.zeros_like(count)
        conversion, before = feed_g / gain_g, float(likely.weight_g[day])
        if self._fixed[day]:
            feed = np.where(count > 0, feed_g, 0.0)
            each = feed / conversion * self._luck.growth / np.maximum(count, _ONE_FISH)
        elif self._by_growth:
            after = before + gain_g / float(likely.count[day])
            step = (np.cbrt(after) - np.cbrt(before)) * self._luck.growth
            each = np.maximum((np.cbrt(weight) + step) ** 3 - weight, 0.0)
            feed = each * count * conversion
        else:
            ration = feed_g / (float(likely.count[day]) * before)
            feed = ration * count * weight
            each = ration * weight / conversion * self._luck.growth
        return feed, each


_ONE_FISH: Final = 1.0
"""Where less than a fish is left, what is fed does not make a giant of it."""
