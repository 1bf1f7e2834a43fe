"""Judges a stocking quickly while a better one is looked for: sums of cohorts against the band of feed.

What is found is judged once more on a forecast of the whole farm; this only steers the search.
"""

from __future__ import annotations

import math
from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace
from datetime import date

import numpy as np

from planner.farm.fields import Id
from planner.farm.site import Tank
from planner.forecast.values import Floats
from planner.planning.stocking.need import FeedNeed
from planner.planning.stocking.options import NoStocking, Search
from planner.planning.stocking.rhythm import (
    Chain,
    Chains,
    Rhythm,
    shares_of_tanks,
    tanks_of_slot,
    weeks_later,
)


@dataclass(frozen=True, slots=True, kw_only=True)
class Trial:
    """A stocking that is tried: the week in which each slot begins, and the fish of each of its cohorts."""

    first_weeks: tuple[int, ...]
    counts: tuple[int, ...]


@dataclass(frozen=True, slots=True, kw_only=True, eq=False)
class Setting:
    """What every trial is held against.

    `feed_g_by_week` and `mass_g` are of the fish the farm has already; `limit_g` is the most live mass of
    each tank. `weeks` are judged.
    """

    start_on: date
    tanks: tuple[Tank, ...]
    need: FeedNeed
    feed_g_by_week: Floats
    mass_g: Mapping[Id, Floats]
    limit_g: Mapping[Id, float]
    weeks: slice
    lightest_share: float
    step_share: float


Rank = tuple[float, float]
"""What trials are ranked by: their score, then the mean distance from the middle of the band [g/d]."""


def score_of(feed_g_by_week: Floats, need: FeedNeed, weeks: slice) -> tuple[float, float]:
    """Return score and share of weeks inside the band: the share outside, plus the mean relative distance.

    Weeks that ask for no feed are not judged.
    """
    low, high, feed = need.low[weeks], need.high[weeks], feed_g_by_week[weeks]
    asks = high > 0.0
    if not asks.any():
        return 0.0, 1.0
    low, high, feed = low[asks], high[asks], feed[asks]
    distance = np.maximum(np.maximum(low - feed, feed - high), 0.0) / ((low + high) / 2.0)
    inside = float((distance <= 0.0).mean())
    return 1.0 - inside + float(distance.mean()), inside


class Model:
    """Sums cohorts for one rhythm."""

    def __init__(self, setting: Setting, chains: Chains, rhythm: Rhythm) -> None:
        """Take what is judged."""
        self._setting, self._chains, self.rhythm = setting, chains, rhythm
        self._slots = [
            tanks_of_slot(slot, groups=rhythm.groups, tanks=setting.tanks) for slot in range(rhythm.groups)
        ]

    def chain(self, first_week: int) -> Chain:
        """Return the chain of a slot that begins so many weeks after the first day."""
        return self._chains.chain(weeks_later(self._setting.start_on, first_week), self.rhythm)

    def tanks(self, slot: int) -> tuple[tuple[Tank, float], ...]:
        """Return the tanks of a slot and the share of its fish that each takes."""
        tanks = self._slots[slot]
        return tuple(zip(tanks, shares_of_tanks(tanks), strict=True))

    def score(self, trial: Trial) -> Rank:
        """Return the score of a trial and how far its feed is from the middle; infinite for a full tank."""
        chains = [self.chain(week) for week in trial.first_weeks]
        if self._fullest(chains, trial.counts) > 1.0:
            return math.inf, math.inf
        feed = self._setting.feed_g_by_week + sum(
            chain.feed_g_by_week * count for chain, count in zip(chains, trial.counts, strict=True)
        )
        need, weeks = self._setting.need, self._setting.weeks
        away = np.abs(feed[weeks] - need.middle[weeks])[need.high[weeks] > 0.0]
        return score_of(feed, need, weeks)[0], float(away.mean()) if away.size else 0.0

    def _masses(self, chains: Sequence[Chain], counts: Sequence[int]) -> dict[Id, Floats]:
        added: dict[Id, Floats] = {}
        for slot, (chain, count) in enumerate(zip(chains, counts, strict=True)):
            for tank, share in self.tanks(slot):
                mass = chain.biomass_g * (math.ceil(count * share))
                added[tank.id] = added[tank.id] + mass if tank.id in added else mass
        return added

    def _fullest(self, chains: Sequence[Chain], counts: Sequence[int]) -> float:
        setting = self._setting
        return max(
            float(np.max(mass + setting.mass_g[tank])) / setting.limit_g[tank]
            for tank, mass in self._masses(chains, counts).items()
        )

    def most_fish(self) -> int:
        """Return the most fish in every slot alike that no tank is too full of."""
        setting, probe = self._setting, 1000
        chains = [self.chain(week) for week in self.rhythm.first_weeks()]
        most = math.inf
        for tank, mass in self._masses(chains, [probe] * len(chains)).items():
            room, held = setting.limit_g[tank] - setting.mass_g[tank], mass > 0.0
            if held.any():
                most = min(most, float(np.min(room[held] / mass[held])) * probe)
        return max(math.floor(most), 0) if math.isfinite(most) else 0


def best_trial(model: Model, setting: Setting, search: Search) -> Trial:
    """Return the best trial found: equal groups of the best size, then bettered one change at a time.

    Raises `NoStocking` when the tanks have no room.
    """
    trial = _even(model, setting)
    best = model.score(trial)
    draw = np.random.default_rng(search.seed)
    for _ in range(search.rounds):
        if not search.keep_going():
            break
        tried = _neighbour(trial, draw, setting.step_share)
        score = model.score(tried)
        if score < best:
            trial, best = tried, score
    return trial


def _even(model: Model, setting: Setting) -> Trial:
    most, weeks = model.most_fish(), model.rhythm.first_weeks()
    if most < 1:
        raise NoStocking
    steps = round(1.0 / setting.lightest_share)
    sizes = sorted({max(most * step // steps, 1) for step in range(1, steps + 1)})
    trials = [Trial(first_weeks=weeks, counts=(size,) * len(weeks)) for size in sizes]
    scores = [model.score(trial) for trial in trials]
    least = min(scores)
    if not math.isfinite(least[0]):
        raise NoStocking
    return trials[scores.index(least)]


def _neighbour(trial: Trial, draw: np.random.Generator, step_share: float) -> Trial:
    """Return a trial with one thing changed: all sizes, a slot's size, or the week it begins in."""
    slot, up = int(draw.integers(len(trial.counts))), bool(draw.integers(2))
    factor = 1.0 + step_share if up else 1.0 / (1.0 + step_share)
    match int(draw.integers(len(_MOVES))):
        case 0:
            counts = tuple(max(round(count * factor), 1) for count in trial.counts)
            return replace(trial, counts=counts)
        case 1:
            return replace(trial, counts=_put(trial.counts, slot, max(round(trial.counts[slot] * factor), 1)))
        case _:
            week = max(trial.first_weeks[slot] + (1 if up else -1), 0)
            return replace(trial, first_weeks=_put(trial.first_weeks, slot, week))


_MOVES = ("all sizes", "one size", "one week")


def _put(values: tuple[int, ...], place: int, value: int) -> tuple[int, ...]:
    return (*values[:place], value, *values[place + 1 :])
