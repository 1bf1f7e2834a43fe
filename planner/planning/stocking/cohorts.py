"""One cohort of a given stocking day: when it is harvested, and what each of its fish eats and weighs by day.

Feed and live mass grow in step with the number of fish, so one walk through a cohort's life serves every
size of it. Must know nothing of tanks and of what beds need.
"""

from __future__ import annotations

import dataclasses
import math
from collections.abc import Callable
from dataclasses import dataclass
from datetime import date, timedelta
from typing import Final

from planner.catalogue.catalogue import Catalogue
from planner.farm.farm import DAYS_PER_WEEK
from planner.farm.fields import NO_ID, Id
from planner.farm.fish import FishEvent, FishEventKind
from planner.farm.ids import id_from
from planner.forecast.fish import Ration, appetite_of, forecast_group
from planner.forecast.ration import table_ration
from planner.forecast.values import Floats, GroupForecast, Ruler
from planner.planning.stocking.wish import StockingWish, group_like, harvest_weight, takes_of

_MANY: Final = 1_000_000
"""Fish in the trial cohort: so many that whole fish are as good as shares of them."""

_LOOKED_AT_WEEKS: Final = (104, 520)
"""Weeks in which fish should get to their harvest weight; most do in the first span."""

WaterOf = Callable[[date, int], Floats | None]
"""Water temperatures of so many days from a date on [°C], None when not known."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Take:
    """A harvest of a cohort: the share of the fish stocked, None for all that are left."""

    on: date
    share: float | None


@dataclass(frozen=True, slots=True, kw_only=True, eq=False)
class CohortCurve:
    """A cohort by day of the ruler, for one fish stocked; `ends_on` None when it never gets ready."""

    stocked_on: date
    takes: tuple[Take, ...]
    feed_g: Floats
    biomass_g: Floats

    @property
    def ends_on(self) -> date | None:
        """Day of the last harvest, on which the tank is free again."""
        return self.takes[-1].on if self.takes else None


class Cohorts:
    """Works cohorts out for one wish, and keeps them."""

    def __init__(self, wish: StockingWish, *, catalogue: Catalogue, water_of: WaterOf, ruler: Ruler) -> None:
        """Take what all cohorts share."""
        self._wish, self._ruler, self._water_of = wish, ruler, water_of
        self._species = catalogue.fish[wish.species]
        self._harvest_g = harvest_weight(wish, catalogue)
        self._ration: Ration | None = (
            table_ration(catalogue.feeding_tables[wish.feeding_table]) if wish.feeding_table else None
        )
        self._appetite = appetite_of(catalogue)
        self._ready: dict[date, int | None] = {}
        self._curves: dict[tuple[date, float, int], CohortCurve] = {}

    @property
    def purge_days(self) -> int:
        """Days without feed before all of a group are harvested."""
        return round(self._species.purge_days)

    def ready_days(self, stocked_on: date) -> int | None:
        """Return the days from stocking until fish have their harvest weight, None within ten years."""
        if stocked_on not in self._ready:
            spans = (self._ready_within(stocked_on, weeks) for weeks in _LOOKED_AT_WEEKS)
            self._ready[stocked_on] = next((days for days in spans if days is not None), None)
        return self._ready[stocked_on]

    def _ready_within(self, stocked_on: date, weeks: int) -> int | None:
        walk = self._walk(stocked_on, (), ruler=Ruler(start_on=stocked_on, weeks=weeks))
        heavy = (walk.weight_g >= self._harvest_g).nonzero()[0]
        return int(heavy[0]) if heavy.size else None

    def life_weeks(self, stocked_on: date, *, share: float, apart_weeks: int) -> int | None:
        """Return the whole weeks from stocking to the last harvest."""
        days = self.ready_days(stocked_on)
        if days is None:
            return None
        takes = takes_of(share)
        if takes == 1:
            return math.ceil((days + self.purge_days) / DAYS_PER_WEEK)
        return math.ceil(days / DAYS_PER_WEEK) + (takes - 1) * apart_weeks

    def curve(self, stocked_on: date, *, share: float, apart_weeks: int) -> CohortCurve:
        """Return a cohort's life, taken by a share of the fish every so many weeks."""
        key = (stocked_on, share, apart_weeks)
        if key not in self._curves:
            takes = self._takes(stocked_on, share=share, apart_weeks=apart_weeks)
            walk = self._walk(stocked_on, takes, ruler=self._ruler)
            self._curves[key] = CohortCurve(
                stocked_on=stocked_on,
                takes=takes,
                feed_g=walk.feed_g / _MANY,
                biomass_g=walk.biomass_g / _MANY,
            )
        return self._curves[key]

    def _takes(self, stocked_on: date, *, share: float, apart_weeks: int) -> tuple[Take, ...]:
        life = self.life_weeks(stocked_on, share=share, apart_weeks=apart_weeks)
        if life is None:
            return ()
        last = stocked_on + timedelta(weeks=life)
        parts = takes_of(share) - 1
        before = [last - timedelta(weeks=apart_weeks * back) for back in range(parts, 0, -1)]
        return (*(Take(on=on, share=share) for on in before), Take(on=last, share=None))

    def _walk(self, stocked_on: date, takes: tuple[Take, ...], *, ruler: Ruler) -> GroupForecast:
        days = max((ruler.date_of(ruler.days) - stocked_on).days, 0)
        group = group_like(
            self._wish, key=id_from("trial"), name="trial", tank=NO_ID, on=stocked_on, count=_MANY
        )
        return forecast_group(
            group,
            events_of(group.id, takes, count=_MANY, keys=lambda number: id_from("trial", str(number))),
            species=self._species,
            water_c=self._water_of(stocked_on, days),
            ration=self._ration,
            appetite=self._appetite,
            ruler=ruler,
        )


def events_of(
    group: Id, takes: tuple[Take, ...], *, count: int, keys: Callable[[int], Id]
) -> tuple[FishEvent, ...]:
    """Return the harvests of a group of so many fish; `keys` makes the id of each by its number."""
    events = []
    for number, take in enumerate(takes):
        event = FishEvent(id=keys(number), group=group, on=take.on, kind=FishEventKind.HARVEST)
        if take.share is not None:
            event = dataclasses.replace(event, count=max(round(count * take.share), 1))
        events.append(event)
    return tuple(events)
