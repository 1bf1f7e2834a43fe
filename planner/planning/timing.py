"""From a wanted day back to a sowing day: the stages of a crop for every day on which it could be sown.

In a season the same days from sowing to the first pick do not hold all year. So the ends of every stage
are worked out for all sowing days at once, as the forecast works them out, and the table is searched: the
last sowing day whose first pick falls on or before the wanted day. A steady target then leads to uneven
intervals between sowings. Must know nothing of work days, places or what is wanted.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from datetime import timedelta
from typing import Final

import numpy as np

from planner.farm.crops import Batch
from planner.farm.farm import DAYS_PER_WEEK, Farm
from planner.farm.fields import NO_ID, Id
from planner.forecast.batches import ProfileBook
from planner.forecast.engine import Forecaster, ruler_of
from planner.forecast.paces import PaceBook
from planner.forecast.profiles import Profile, picks_by_day
from planner.forecast.season import Surroundings
from planner.forecast.seed_lots import lot_shares, share_for
from planner.forecast.standing import Standing
from planner.forecast.values import Floats, Ints
from planner.forecast.warmth import warmth_read

_NURSERY, _SPACING, _BED = 1, 2, 3
EARLIEST: Final = 400
"""Days before the ruler from which sowings are looked at."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Course:
    """A batch as it would go for every sowing day: row r is sown on day `first_day + r` of the ruler.

    `ends` has shape (sowing day, stage), `ripe` and `stand` shape (sowing day,). `again` is what is picked
    again on each day of the ruler against a full pick, None where it is always one.
    """

    profile: Profile
    first_day: int
    ends: Ints
    ripe: Floats
    stand: Floats
    again: Floats | None = None

    @property
    def last_day(self) -> int:
        """The last sowing day that is known."""
        return self.first_day + int(self.ends.shape[0]) - 1

    def first_pick(self, sow_day: int) -> int:
        """Return the day of the first pick of what is sown on a day."""
        return int(self.ends[sow_day - self.first_day, _BED])

    def steps(self, sow_day: int) -> tuple[int, int]:
        """Return the days of moving to the intermediate distance and to the last place.

        They are the same where there is no intermediate distance, and the sowing day without a nursery.
        """
        row = self.ends[sow_day - self.first_day]
        return int(row[_NURSERY]), int(row[_SPACING])

    def latest_for(self, wanted_day: int) -> int | None:
        """Return the last sowing day whose first pick falls on or before a day, None when there is none."""
        found = (self.ends[:, _BED] <= wanted_day).nonzero()[0]
        return self.first_day + int(found[-1]) if found.size else None

    def sowings_for(self, first_day: int, last_day: int) -> Ints:
        """Return the sowing days whose first pick falls between two days, both included."""
        picks = self.ends[:, _BED]
        found: Ints = ((picks >= first_day) & (picks <= last_day)).nonzero()[0] + self.first_day
        return found

    def picked_by_week(self, sow_day: int, weeks: int, *, weighed: bool = False) -> Floats:
        """Return the share of a life's harvest that falls into each week of the ruler, shape (week,).

        By number of picks, or `weighed` by what has grown since the last one.
        """
        picks = picks_by_day(self.profile)
        days = self.first_pick(sow_day) + np.arange(picks.size)
        if weighed and self.again is not None:
            size = self.again[np.clip(days, 0, self.again.size - 1)]
            picks = np.concatenate((picks[:1], picks[1:] * size[1:]))
        inside = (days >= 0) & (days < weeks * DAYS_PER_WEEK)
        found = np.bincount(days[inside] // DAYS_PER_WEEK, weights=picks[inside], minlength=weeks)
        return found.astype(np.float64)

    def ripe_share(self, sow_day: int) -> float:
        """Return how much of its size a plant reaches, 1 unless it is given up as too slow."""
        return float(self.ripe[sow_day - self.first_day])

    def stand_share(self, sow_day: int) -> float:
        """Return the share of tested germination that comes up when sown on a day."""
        return float(self.stand[sow_day - self.first_day])


class Timer:
    """Works out courses for one farm, as the forecast of that farm would."""

    def __init__(self, farm: Farm, forecaster: Forecaster) -> None:
        """Take sites, weeks, readings and own entries of the farm."""
        self.catalogue = forecaster.catalogue_for(farm)
        self.ruler = ruler_of(farm)
        self._book = ProfileBook(self.catalogue)
        self._paces = PaceBook(self.catalogue, self._book.profiles)
        self._paces.set_frame(farm.sites, self.ruler, air_read=warmth_read(farm).air)
        self._standing = Standing(farm)
        self._has_loop = bool(farm.loops)
        self._lots = lot_shares(farm, self.catalogue)
        self._kept: dict[tuple[int, Surroundings | None], Course] = {}

    def around(self, bed: Id, nursery: Id) -> Surroundings | None:
        """Return what surrounds a batch in a bed that is raised in a nursery."""
        return self._standing.surroundings(bed, nursery) if self._has_loop else None

    def course(self, batch: Batch, *, nursery: Id = NO_ID) -> Course:
        """Return the course of batches like one, raised in a nursery; its sowing date does not matter."""
        area_m2 = batch.plants * self._standing.place_m2(batch.bed)
        number = self._book.number(batch, share_for(self._lots, batch), area_m2=area_m2)
        key = number, self.around(batch.bed, nursery)
        if key not in self._kept:
            self._kept[key] = self._course(*key)
        return self._kept[key]

    def _course(self, number: int, around: Surroundings | None) -> Course:
        days = np.arange(-EARLIEST, self.ruler.days, dtype=np.int64)
        pace = np.full(days.size, self._paces.number(number, around), dtype=np.int64)
        return Course(
            profile=self._book.profiles[number],
            first_day=-EARLIEST,
            ends=self._paces.ends(pace, days),
            ripe=self._paces.ripe(pace, days),
            stand=self._paces.stand(pace, days),
            again=self._paces.pace(self._paces.number(number, around)).regrown(np.arange(self.ruler.days)),
        )

    def moved_earlier(self, batch: Batch, *, nursery_days: int, spacing_days: int) -> Batch | None:
        """Return a batch that leaves nursery and intermediate distance so many days sooner.

        What is cut off is spent in the stage after it, so a plant has as many days of growth as before.
        None when nothing would be left of a stage.
        """
        crop = self.catalogue.crops[batch.crop]
        nursery = _own(batch.nursery_days, crop.nursery_days) - nursery_days
        had_spacing = _own(batch.spacing_days, crop.spacing_days)
        spacing = had_spacing + nursery_days - spacing_days
        bed = _own(batch.bed_days, crop.bed_days) + spacing_days
        if nursery < 1 or spacing < min(had_spacing, 1):
            return None
        changed = replace(batch, nursery_days=nursery, bed_days=bed)
        return replace(changed, spacing_days=spacing) if crop.spacing_days or batch.spacing_days else changed

    def sown_on(self, batch: Batch, day: int) -> Batch:
        """Return a batch sown on a day of the ruler."""
        return replace(batch, sow_on=self.ruler.start_on + timedelta(days=day))


def _own(own: float | None, book: float) -> float:
    return float(round(book if own is None else own))
