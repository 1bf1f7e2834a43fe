"""Draws how many plants of each batch live, when they are picked, what they weigh and what they take up.

The first row of every array of draws is what is likely: results are told as the forecast plus what a
draw differs from that row, so that without spread the forecast comes out to the last digit.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Final

import numpy as np

from planner.farm.farm import DAYS_PER_WEEK
from planner.farm.species import ELEMENTS
from planner.forecast.chances.spreads import Spreads
from planner.forecast.engine import Forecaster
from planner.forecast.formed import formed_per_plant, regrown_by_offset, rows_alive
from planner.forecast.profiles import contents, picks_by_day
from planner.forecast.values import Floats, Forecast, Ints

_ENOUGH: Final = 1.0 + 1e-9
"""Seeds are counted so that just enough live; a hair must not be missing for the last digit's sake."""
_FIRST_PICK: Final = 3
_WIDEST_SHARE: Final = 0.5
"""The spread of a share is held to this part of the widest there can be at all."""


@dataclass(frozen=True, slots=True, kw_only=True, eq=False)
class PlantDraws:
    """Draws of batches, each of shape (1 + draw, batch): what is likely, then the draws.

    `moved` plants reach their final place, `living` are left to pick, `later_days` is how much later the
    first pick is, `size` what a plant weighs against what is likely.
    """

    moved: Floats
    living: Floats
    later_days: Ints
    size: Floats


def draw_plants(
    forecast: Forecast,
    forecaster: Forecaster,
    *,
    spreads: Spreads,
    random: np.random.Generator,
    draws: int,
) -> PlantDraws:
    """Return draws of all batches; no more plants move than are wanted."""
    table = forecast.batches
    profiles = [forecast.profiles[number] for number in table.profile]
    germination = np.asarray([one.germination_share for one in profiles]) * forecaster.paces.stand(
        table.pace, table.sow_day
    )
    nursery = np.asarray([one.survival_share for one in profiles])
    bed = np.asarray([one.bed_survival_share for one in profiles])
    seeds = np.repeat(table.seeds[None, :].astype(np.float64), 1 + draws, axis=0)
    living = _Living(random, counted=spreads.counted)
    up = living.of(seeds, share=germination, deviation=spreads.germination_sd)
    raised = living.of(up, share=nursery, deviation=spreads.nursery_sd)
    moved = np.minimum(raised * _ENOUGH if not spreads.counted else raised, table.plants)
    moved[0] = table.plants
    days = table.ends[:, _FIRST_PICK] - table.sow_day
    bell = _Bell(random, crop=table.crop, shared=spreads.shared_variance_share, draws=draws)
    later = np.rint(bell.draw() * spreads.days_sd).astype(np.int64)
    return PlantDraws(
        moved=moved,
        living=living.of(moved, share=bed, deviation=spreads.bed_sd),
        later_days=np.maximum(later, 1 - days),
        size=np.maximum(1.0 + bell.draw() * spreads.yield_cv, 0.0),
    )


class _Living:
    """Draws how many of a number live; the first row is the likely share of them."""

    def __init__(self, random: np.random.Generator, *, counted: bool) -> None:
        self._random = random
        self._counted = counted

    def of(self, many: Floats, *, share: Floats, deviation: Floats) -> Floats:
        """Return how many live, shape of `many`; the share differs from batch to batch."""
        shares = self._shares(share, deviation, rows=many.shape[0] - 1)
        if self._counted:
            whole = np.rint(many[1:]).astype(np.int64)
            drawn = self._random.binomial(whole, shares).astype(np.float64)
        else:
            drawn = many[1:] * shares
        return np.concatenate([many[:1] * share, drawn])

    def _shares(self, share: Floats, deviation: Floats, *, rows: int) -> Floats:
        """Return shares from a beta around the likely one, the very same where there is no spread."""
        widest = share * (1.0 - share)
        variance = np.minimum(deviation**2, _WIDEST_SHARE * widest)
        found = np.repeat(share[None, :], rows, axis=0)
        varied = variance > 0
        if varied.any():
            sharpness = widest[varied] / variance[varied] - 1.0
            a, b = share[varied] * sharpness, (1.0 - share[varied]) * sharpness
            found[:, varied] = self._random.beta(a, b, size=(rows, int(varied.sum())))
        return found


class _Bell:
    """Draws bells of mean 0 and deviation 1 that the batches of a crop have partly in common."""

    def __init__(self, random: np.random.Generator, *, crop: Ints, shared: float, draws: int) -> None:
        self._random = random
        self._crop = crop
        self._shared = shared
        self._draws = draws

    def draw(self) -> Floats:
        """Return draws of shape (1 + draw, batch), nothing in the first row."""
        crops = int(self._crop.max()) + 1 if self._crop.size else 0
        common = self._random.standard_normal((self._draws, crops))[:, self._crop]
        own = self._random.standard_normal((self._draws, self._crop.size))
        both = np.sqrt(self._shared) * common + np.sqrt(1.0 - self._shared) * own
        return np.concatenate([np.zeros((1, self._crop.size)), both])


def harvest_draws(forecast: Forecast, forecaster: Forecaster, drawn: PlantDraws) -> tuple[Floats, Floats]:
    """Return plants and grams harvested, each by (crop, draw, week)."""
    ruler, table = forecast.ruler, forecast.batches
    rows = drawn.moved.shape[0]
    plants = np.zeros((len(forecast.crops), rows * ruler.weeks))
    grams = np.zeros_like(plants)
    for number in np.unique(table.profile):
        batches = (table.profile == number).nonzero()[0]
        profile, crop = forecast.profiles[number], int(table.crop[batches[0]])
        first = table.ends[batches, _FIRST_PICK] + drawn.later_days[:, batches]
        living = drawn.living[:, batches]
        weight = living * drawn.size[:, batches] * table.ripe[batches] * profile.yield_g_per_plant
        picks = picks_by_day(profile)
        again = np.asarray([regrown_by_offset(forecast, forecaster.paces, row) for row in batches])
        for offset in picks.nonzero()[0]:
            share = float(picks[offset])
            plants[crop] += share * _by_week(first + offset, living, ruler.weeks)
            grams[crop] += share * _by_week(first + offset, weight * again[:, offset], ruler.weeks)
    shape = (len(forecast.crops), rows, ruler.weeks)
    return (
        _around(plants.reshape(shape), ruler.weekly_sum(forecast.harvest_plants)),
        _around(grams.reshape(shape), ruler.weekly_sum(forecast.harvest_g)),
    )


def _by_week(day: Ints, amount: Floats, weeks: int) -> Floats:
    """Return amounts summed into (draw, week), laid flat; what falls outside the plan is left out."""
    week = day // DAYS_PER_WEEK
    inside = (week >= 0) & (week < weeks)
    cell = np.arange(day.shape[0])[:, None] * weeks + week
    found = np.bincount(cell[inside], weights=amount[inside], minlength=day.shape[0] * weeks)
    return found.astype(np.float64)


def _around(raw: Floats, likely: Floats) -> Floats:
    """Return draws told around the forecast; nothing is below nothing."""
    return np.maximum(likely[:, None] + (raw[:, 1:] - raw[:, :1]), 0.0)


def demand_draws(forecast: Forecast, forecaster: Forecaster, drawn: PlantDraws, *, loop: int) -> Floats:
    """Return what the plants of a loop take up [g] by (element, draw, week).

    A batch that is picked later has its whole curve of growth later by the same days.
    """
    ruler, table = forecast.ruler, forecast.batches
    alive = rows_alive(table, first_day=0, last_day=ruler.days)
    rows = [row for row in alive if table.loop[row] == loop]
    formed = formed_per_plant(table, forecaster.paces, ruler, rows)
    dry = np.zeros((len(forecast.crops), drawn.moved.shape[0], ruler.weeks))
    for row, by_day in zip(rows, formed, strict=True):
        share = drawn.moved[:, row] * drawn.size[:, row]
        span, taken = _later(by_day, drawn.later_days[:, row])
        dry[table.crop[row]][:, span] += share[:, None] * taken
    by_crop = _contents(forecast)
    raw = np.tensordot(by_crop, dry, axes=(0, 0))
    likely = ruler.weekly_sum(forecast.loops[loop].demand_g)
    return _around(raw, likely)


def _later(by_day: Floats, later_days: Ints) -> tuple[slice, Floats]:
    """Return the weeks a plant grows in, and what it forms in each, moved by days, by (draw, week)."""
    days = by_day.nonzero()[0]
    if not days.size:
        return slice(0, 0), np.zeros((later_days.size, 0))
    weeks = by_day.size // DAYS_PER_WEEK
    first = max((int(days[0]) + int(later_days.min())) // DAYS_PER_WEEK, 0)
    last = min((int(days[-1]) + int(later_days.max())) // DAYS_PER_WEEK + 1, weeks)
    total = np.concatenate([[0.0], np.cumsum(by_day)])
    bound = np.arange(first, max(last, first) + 1) * DAYS_PER_WEEK
    index = np.clip(bound - later_days[:, None], 0, by_day.size)
    return slice(first, max(last, first)), np.diff(total[index], axis=1)


def _contents(forecast: Forecast) -> Floats:
    """Return contents by (crop, element)."""
    of_crop = {profile.crop.key: contents(profile.crop) for profile in forecast.profiles}
    found = np.asarray([of_crop[crop] for crop in forecast.crops], dtype=np.float64)
    return found.reshape(len(forecast.crops), len(ELEMENTS))
