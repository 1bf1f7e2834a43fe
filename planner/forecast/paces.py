"""Numbers the paces that batches go by, and makes each when it is first met."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import timedelta
from typing import Final

import numpy as np

from planner.catalogue.catalogue import Catalogue
from planner.farm.site import Site
from planner.forecast.distinct import distinct
from planner.forecast.pace import BookPace, Pace, SeasonPace
from planner.forecast.profiles import Profile
from planner.forecast.season import (
    LightFigures,
    Rates,
    Sky,
    Surroundings,
    emergence_of,
    light_figures,
    rates_of,
    sky_over,
    stand_factor,
)
from planner.forecast.values import Floats, Ints, Ruler
from planner.forecast.warmth import DayValues

BEFORE_DAYS: Final = 1000
"""Days before the ruler for which a sky is made, so that what was sown long ago is dated too."""
AFTER_DAYS: Final = 1500
"""Days after the ruler for which a sky is made, so that what is sown last can be dated to its end."""


@dataclass(frozen=True, slots=True, kw_only=True)
class _Frame:
    """What all paces hang on."""

    sites: tuple[Site, ...]
    ruler: Ruler
    air_read: tuple[DayValues, ...]


class PaceBook:
    """Paces by number, one for each profile in each surroundings, within one frame of sites and weeks."""

    def __init__(self, catalogue: Catalogue, profiles: list[Profile]) -> None:
        """Keep the catalogue, and the list of profiles that grows as they are met."""
        self._catalogue = catalogue
        self._profiles = profiles
        self._figures: LightFigures = light_figures(catalogue)
        self._longest = catalogue.figure("coefficient/season/longest_stretch").value
        self._least_stand = catalogue.figure("coefficient/season/least_stand_share").value
        self._frame: _Frame | None = None
        self.version = 0
        self.numbering = 0
        self._clear()

    def _clear(self) -> None:
        self.numbering += 1
        self._number: dict[tuple[int, Surroundings | None], int] = {}
        self._keys: list[tuple[int, Surroundings | None]] = []
        self._forget()

    def _forget(self) -> None:
        """Forget what the paces are, and keep their numbers."""
        self.version += 1
        self._paces: list[Pace | None] = [None] * len(self._keys)
        self._stands: list[Floats | None] = [None] * len(self._keys)
        self._skies: dict[Surroundings, Sky] = {}

    def set_frame(
        self, sites: tuple[Site, ...], ruler: Ruler, *, air_read: tuple[DayValues, ...] = ()
    ) -> None:
        """Say which sites, weeks and readings of the air (by site) hold from now on.

        All paces are made anew when any has changed; `version` then rises. Their numbers hold as long as the
        sites are the same ones, however they are; else `numbering` rises too.
        """
        frame, had = _Frame(sites=sites, ruler=ruler, air_read=air_read), self._frame
        if had == frame:
            return
        self._frame = frame
        if had is not None and [site.id for site in had.sites] == [site.id for site in sites]:
            self._forget()
        else:
            self._clear()

    def number(self, profile: int, around: Surroundings | None) -> int:
        """Return the number of a profile's pace in some surroundings."""
        key = (profile, around)
        found = self._number.get(key)
        if found is None:
            found = self._number[key] = len(self._paces)
            self._keys.append(key)
            self._paces.append(None)
            self._stands.append(None)
        return found

    def profile_of(self, number: int) -> int:
        """Return the number of the profile a pace belongs to."""
        return self._keys[number][0]

    def pace(self, number: int) -> Pace:
        """Return a pace by its number; it is made when it is first asked for."""
        found = self._paces[number]
        return self._made(number) if found is None else found

    def sky_of(self, number: int) -> Sky | None:
        """Return the sky a pace goes by, None for book durations."""
        around = self._keys[number][1]
        return None if around is None else self._sky(around)

    def _made(self, number: int) -> Pace:
        assert self._frame is not None
        days, (of, around) = self._frame.ruler.days, self._keys[number]
        profile = self._profiles[of]
        sky = None if around is None else self._sky(around)
        pace: Pace
        if sky is None or not sky.is_known:
            pace = self._paces[number] = BookPace(profile, days)
            return pace
        table = emergence_of(self._catalogue, profile.crop.key)
        rates = rates_of(profile.crop, sky, self._figures, emergence=table)
        pace = self._paces[number] = self._season_pace(profile, sky, rates, days=days)
        self._stands[number] = stand_factor(profile.crop, table, sky.nursery_c)
        return pace

    def _sky(self, around: Surroundings) -> Sky:
        found = self._skies.get(around)
        if found is None:
            assert self._frame is not None
            ruler, read = self._frame.ruler, self._frame.air_read
            found = self._skies[around] = sky_over(
                self._frame.sites[around.site],
                around,
                start_on=ruler.start_on - timedelta(days=BEFORE_DAYS),
                first_day=-BEFORE_DAYS,
                days=BEFORE_DAYS + ruler.days + AFTER_DAYS,
                figures=self._figures,
                air_read=read[around.site] if read else (),
            )
        return found

    def ends(self, pace: Ints, sow_day: Ints) -> Ints:
        """Return stage ends of many batches, shape (batch, stage); `pace` holds their numbers."""
        found = np.zeros((pace.size, _STAGES), dtype=np.int64)
        for number in distinct(pace):
            rows = pace == number
            found[rows] = self.pace(number).ends(sow_day[rows])
        return found

    def ripe(self, pace: Ints, sow_day: Ints) -> Floats:
        """Return how much of their size many batches reach, 1 unless they are given up as too slow."""
        found = np.ones(pace.size)
        for number in distinct(pace):
            rows = pace == number
            found[rows] = self.pace(number).ripe(sow_day[rows])
        return found

    def stand(self, pace: Ints, sow_day: Ints) -> Floats:
        """Return the share of tested germination that comes up for many batches, by their sowing day."""
        found = np.ones(pace.size)
        for number in distinct(pace):
            self.pace(number)
            factor = self._stands[number]
            if factor is not None:
                rows = pace == number
                index = np.clip(sow_day[rows] + BEFORE_DAYS, 0, factor.size - 1)
                found[rows] = np.maximum(factor[index], self._least_stand)
        return found

    def late(self, number: int, sow_day: int, *, by_warmth: bool, by_light: bool) -> int:
        """Return the day of the first pick if only some causes slowed the crop."""
        return int(self.ends_by(number, sow_day, by_warmth=by_warmth, by_light=by_light)[_BED])

    def ends_by(self, number: int, sow_day: int, *, by_warmth: bool, by_light: bool) -> Ints:
        """Return the day after the last one of each stage if only some causes slowed the crop."""
        profile, around = self._keys[number]
        sky = None if around is None else self._sky(around)
        known = self._profiles[profile]
        assert self._frame is not None
        days = np.asarray([sow_day], dtype=np.int64)
        if sky is None or not sky.is_known:
            by_book: Ints = BookPace(known, 1).ends(days)[0]
            return by_book
        rates = rates_of(
            known.crop,
            sky,
            self._figures,
            emergence=emergence_of(self._catalogue, known.crop.key),
            by_warmth=by_warmth,
            by_light=by_light,
        )
        found: Ints = self._season_pace(known, sky, rates, days=1).ends(days)[0]
        return found

    def _season_pace(self, profile: Profile, sky: Sky, rates: Rates, *, days: int) -> SeasonPace:
        table = emergence_of(self._catalogue, profile.crop.key)
        printed = max((days for _, days in table.days), default=0.0) if table is not None else 0.0
        return SeasonPace(
            profile,
            sky,
            rates,
            days=days,
            longest_stretch=self._longest,
            longest_emergence_days=printed,
        )

    def mean_bed_c(self, number: int, from_day: int, until_day: int) -> float:
        """Return the mean air temperature at the bed over some days [°C]; the crop's best if not known."""
        sky = self.sky_of(number)
        if sky is None or sky.bed_c is None:
            return self.best_c(number)
        days = slice(from_day - sky.first_day, max(until_day, from_day + 1) - sky.first_day)
        return float(sky.bed_c[days].mean())

    def best_c(self, number: int) -> float:
        """Return the best temperature of the crop that a pace belongs to [°C]."""
        return self._profiles[self._keys[number][0]].crop.optimum_c


_STAGES: Final = 6
_BED: Final = 3
