"""Runs batches of one profile through their stages, and says what one plant takes up on each day.

By the book every plant of a profile lives alike, whenever it is sown. In a season the day of sowing
decides; what it leads to is worked out once for each day of sowing that is met, and kept. What is picked
again grows from one pick to the next with the warmth and light of those days: the days between picks are
the grower's, what hangs there the season's.
"""

from __future__ import annotations

from typing import Final, Protocol

import numpy as np

from planner.farm.species import HarvestKind
from planner.forecast.distinct import distinct
from planner.forecast.profiles import Profile, after_first_pick, growth_by_day
from planner.forecast.season import Rates, Sky
from planner.forecast.values import Floats, Ints
from planner.science.growth import logistic_share
from planner.science.limits import FLOAT_NOISE
from planner.science.season import NOT_REACHED, cumulative_progress, stage_end_days

_GROWING_STAGES: Final = 4
_STAGES: Final = 6
_GERMINATION: Final = 0
_PICKING: Final = 4
_IN_BED: Final = 3


class Pace(Protocol):
    """Stage ends and growth of one profile in one place."""

    @property
    def lead(self) -> int:
        """Days before the ruler from which a sowing can still matter to it."""

    def ends(self, sow_day: Ints) -> Ints:
        """Return the day after the last one of each stage, shape (batch, stage)."""

    def ripe(self, sow_day: Ints) -> Floats:
        """Return how much of a plant's size is reached at the first pick, 1 unless it is given up."""

    def regrown(self, day: Ints, /) -> Floats | None:
        """Return what is picked again on some days, against reference conditions [0..1]; None: all of it."""

    def formed(self, starts: Floats) -> Floats:
        """Return dry mass formed on each day of the ruler [g].

        `starts` are plants by day of sowing from `lead` days before the ruler to its end.
        """


class BookPace:
    """Book durations, the same all year."""

    def __init__(self, profile: Profile, days: int) -> None:
        """Keep the profile and the length of the ruler."""
        self._offsets = np.cumsum(np.asarray(profile.stage_days, dtype=np.int64))
        self._growth = growth_by_day(profile)
        self._days = days
        self.lead = profile.life_days

    def ends(self, sow_day: Ints) -> Ints:
        """Return the day after the last one of each stage, shape (batch, stage)."""
        return sow_day[:, None] + self._offsets

    def ripe(self, sow_day: Ints) -> Floats:
        """Return how much of a plant's size is reached at the first pick: all of it."""
        return np.ones(sow_day.size)

    def regrown(self, _day: Ints, /) -> Floats | None:
        """Return nothing: what is picked again is as the book says."""
        return None

    def formed(self, starts: Floats) -> Floats:
        """Return dry mass formed on each day of the ruler [g]."""
        found: Floats = np.convolve(starts, self._growth)[self.lead : self.lead + self._days]
        return found


class SeasonPace:
    """Durations that follow warmth and light.

    `_mass[day, lead - 1 - age]` is what a plant of that age forms on that day of the ruler; it was sown
    `age` days before. What a sowing day leads to is filled in when it is first asked for. Ages run
    backwards so that a row lies like the plants by sowing day that it is folded with.
    """

    def __init__(
        self,
        profile: Profile,
        sky: Sky,
        rates: Rates,
        *,
        days: int,
        longest_stretch: float,
        longest_emergence_days: float = 0.0,
    ) -> None:
        """Keep what is needed to work a day of sowing out.

        No stage is longer than `longest_stretch` times its book days, but that seed is waited for as long as
        the longest time to emergence that is printed for the crop, `longest_emergence_days`.
        """
        self._profile = profile
        self._sky = sky
        self._days = days
        self._durations = np.asarray(profile.stage_days, dtype=np.float64)
        self._longest = np.ceil(self._durations * longest_stretch).astype(np.int64)
        self._longest[_GERMINATION] = max(
            int(self._longest[_GERMINATION]), int(np.ceil(longest_emergence_days))
        )
        self._summed = [
            cumulative_progress(rate) for rate in (rates.germination, rates.nursery, rates.bed, rates.bed)
        ]
        self.lead = int(self._longest[:_GROWING_STAGES].sum() + self._durations[_PICKING]) + 1
        self._mass = np.zeros((days, self.lead), dtype=np.float32)
        self._filled = np.zeros(self.lead + days, dtype=bool)
        self._oldest = 0
        self._ended = np.zeros((sky.days, _STAGES), dtype=np.int64)
        self._is_ended = np.zeros(sky.days, dtype=bool)
        self._ripened = np.full(sky.days, np.nan)
        self._book_days = float(self._durations[:_GROWING_STAGES].sum())

    def ends(self, sow_day: Ints) -> Ints:
        """Return the day after the last one of each stage, shape (batch, stage).

        A sowing so early or late that the sky is not known for it goes by the book.
        """
        found = sow_day[:, None] + np.cumsum(self._durations.astype(np.int64))
        known = self._is_known(sow_day)
        found[known] = self._ends_in_season(sow_day[known])
        return found

    def _is_known(self, sow_day: Ints) -> np.ndarray:
        last = self._sky.first_day + self._sky.days - self.lead
        return (sow_day >= self._sky.first_day) & (sow_day < last)

    def _ends_in_season(self, sow_day: Ints) -> Ints:
        """Return stage ends of sowings the sky is known for; each day is worked out once and kept."""
        index = sow_day - self._sky.first_day
        new = distinct(index[~self._is_ended[index]])
        if new.size:
            self._ended[new] = self._ends_worked_out(new + self._sky.first_day)
            self._is_ended[new] = True
        found: Ints = self._ended[index]
        return found

    def _ends_worked_out(self, sow_day: Ints) -> Ints:
        ends = np.empty((sow_day.size, _STAGES), dtype=np.int64)
        now = sow_day
        for stage in range(_STAGES):
            if stage < _GROWING_STAGES:
                now = self._stage_end(stage, now)
            else:
                now = now + int(self._durations[stage])
            ends[:, stage] = now
        return ends

    def _stage_end(self, stage: int, start: Ints) -> Ints:
        index = start - self._sky.first_day
        end = stage_end_days(
            self._summed[stage], start_days=index, durations=np.asarray(self._durations[stage])
        )
        latest = index + self._longest[stage]
        end = np.where((end == NOT_REACHED) | (end > latest), latest, end)
        found: Ints = end + self._sky.first_day
        return found

    def ripe(self, sow_day: Ints) -> Floats:
        """Return how much of a plant's size is reached at the first pick, 1 unless it is given up."""
        found = np.ones(sow_day.size)
        known = self._is_known(sow_day)
        index = sow_day[known] - self._sky.first_day
        new = distinct(index[np.isnan(self._ripened[index])])
        if new.size:
            self._ripened[new] = self._ripe_worked_out(new + self._sky.first_day)
        found[known] = self._ripened[index]
        return found

    def _ripe_worked_out(self, sow_day: Ints) -> Floats:
        ends = self._ends_in_season(sow_day)
        gone = self._gone(sow_day, ends, np.asarray([self.lead]))[:, -1]
        progress = gone / self._book_days
        size = self._share(np.where(progress >= 1.0 - FLOAT_NOISE, 1.0, progress))
        return np.where(self._is_up(sow_day, ends), size, 0.0)

    def _is_up(self, sow_day: Ints, ends: Ints) -> np.ndarray:
        """Tell which sowings came up in the time that seed is waited for."""
        summed, first = self._summed[_GERMINATION], self._sky.first_day
        at_end = summed[np.clip(ends[:, _GERMINATION] - first, 0, self._sky.days)]
        at_start = summed[np.clip(sow_day - first, 0, self._sky.days)]
        is_book = ~self._is_known(sow_day)
        come: np.ndarray = is_book | (at_end - at_start >= self._durations[_GERMINATION] - FLOAT_NOISE)
        return come

    def regrown(self, day: Ints, /) -> Floats | None:
        """Return what is picked again on some days, against reference conditions [0..1]."""
        interval = round(self._profile.crop.pick_interval_days)
        if self._profile.crop.harvest is HarvestKind.SINGLE or not interval:
            return None
        index = np.clip(day - self._sky.first_day, interval, self._sky.days)
        summed = self._summed[_IN_BED]
        grown: Floats = (summed[index] - summed[index - interval]) / interval
        return grown

    def formed(self, starts: Floats) -> Floats:
        """Return dry mass formed on each day of the ruler [g]."""
        self._fill((starts > 0) & ~self._filled)
        by_age = np.lib.stride_tricks.sliding_window_view(starts.astype(np.float32), self.lead)[1:]
        young = slice(self.lead - self._oldest, None)
        found: Floats = np.einsum("da,da->d", self._mass[:, young], by_age[:, young]).astype(np.float64)
        return found

    def _fill(self, wanted: np.ndarray) -> None:
        position = wanted.nonzero()[0]
        if not position.size:
            return
        self._filled[position] = True
        sow_day = position - self.lead
        formed = self._growth_of(sow_day)
        age = np.arange(formed.shape[1])
        self._oldest = max(self._oldest, age.size)
        day = sow_day[:, None] + age
        inside = (day >= 0) & (day < self._days)
        ages = np.broadcast_to(age, day.shape)[inside]
        self._mass[day[inside], self.lead - 1 - ages] = formed[inside]

    def _growth_of(self, sow_day: Ints) -> Floats:
        """Return dry mass formed at each age until all are done [g/d], shape (sowing day, age).

        Growth up to the first pick follows progress through the stages, whatever the calendar says;
        after it the window of picking, day by day as warm and bright as it is. A plant that is given up
        stays small.
        """
        profile, ends = self._profile, self.ends(sow_day)
        oldest = min(int((ends[:, _PICKING] - sow_day).max()) + 1, self.lead)
        age = np.arange(oldest + 1)
        gone = self._gone(sow_day, ends, age)
        share = self._share(gone / np.maximum(gone[:, -1:], self._book_days))
        formed, first = np.diff(share, axis=1), profile.first_pick_share
        if first < 1.0:
            again = np.diff(self._picked(sow_day, ends, age), axis=1) * self._rate_in_bed(sow_day, age[:-1])
            formed = first * formed + (1.0 - first) * share[:, -1:] * again
        found: Floats = formed * profile.dry_mass_g * self._is_up(sow_day, ends)[:, None]
        return found

    def _rate_in_bed(self, sow_day: Ints, age: Ints) -> Floats:
        """Return the pace in the bed at some ages, against reference conditions [0..1]."""
        index = np.clip(sow_day[:, None] + age - self._sky.first_day, 0, self._sky.days - 1)
        summed = self._summed[_IN_BED]
        rate: Floats = summed[index + 1] - summed[index]
        return rate

    def _share(self, progress: Floats) -> Floats:
        """Return the share of a plant's size at the first pick that is reached at some progress."""
        crop = self._profile.crop
        return logistic_share(progress, midpoint=crop.growth_midpoint, steepness=crop.growth_steepness)

    def _gone(self, sow_day: Ints, ends: Ints, age: Ints) -> Floats:
        """Return reference days gone through at the start of some ages, up to the first pick."""
        boundary = np.minimum(sow_day[:, None] + age, ends[:, [_GROWING_STAGES - 1]])
        index = np.clip(boundary - self._sky.first_day, 0, self._sky.days)
        gone = np.zeros(index.shape)
        start = sow_day
        for stage in range(_GROWING_STAGES):
            summed = self._summed[stage]
            at_start = summed[np.clip(start - self._sky.first_day, 0, self._sky.days)][:, None]
            at_end = summed[np.clip(ends[:, stage] - self._sky.first_day, 0, self._sky.days)][:, None]
            gone += np.minimum(np.maximum(summed[index], at_start), at_end) - at_start
            start = ends[:, stage]
        return gone

    def _picked(self, sow_day: Ints, ends: Ints, age: Ints) -> Floats:
        """Return the share of what is formed after the first pick, at the start of some ages, 0..1."""
        boundary = sow_day[:, None] + age
        since = np.clip(boundary - ends[:, [_GROWING_STAGES - 1]], 0, self._profile.picking_window)
        found: Floats = after_first_pick(self._profile)[since]
        return found
