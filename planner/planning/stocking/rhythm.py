"""Lays cohorts out over the weeks: slots that begin one after another and are stocked again when empty.

Must know nothing of beds, and of farms only their tanks.
"""

from __future__ import annotations

from bisect import bisect_left
from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date, timedelta

import numpy as np

from planner.farm.site import Tank
from planner.forecast.values import Floats, Ruler
from planner.planning.stocking.cohorts import CohortCurve, Cohorts
from planner.planning.stocking.wish import takes_of


@dataclass(frozen=True, slots=True, kw_only=True)
class Rhythm:
    """How groups follow each other, in weeks: from one to the next, and between harvests of one.

    `grow_weeks` pass until the first harvest of a group.
    """

    groups: int
    share: float
    apart_weeks: float
    take_apart_weeks: int
    grow_weeks: int

    def first_weeks(self) -> tuple[int, ...]:
        """Return the week in which each slot is stocked first, counted from the first stocking."""
        return tuple(round(slot * self.apart_weeks) for slot in range(self.groups))


def rhythm_of(groups: int, share: float, *, grow_weeks: int, most_apart_weeks: int) -> Rhythm:
    """Return the rhythm in which harvests come as evenly as the growing time allows.

    grow_weeks is the time to the first harvest of a group. Part harvests of a group share out the time
    until the next group is ready, but wait no longer than `most_apart_weeks` for each other.

    >>> rhythm_of(4, 1.0, grow_weeks=24, most_apart_weeks=6).apart_weeks
    6.0
    """
    takes = takes_of(share)
    even = round(grow_weeks / (groups * takes - takes + 1))
    take_apart = max(min(even, most_apart_weeks), 1) if takes > 1 else 0
    life = grow_weeks + (takes - 1) * take_apart
    return Rhythm(
        groups=groups,
        share=share,
        apart_weeks=life / groups,
        take_apart_weeks=take_apart,
        grow_weeks=grow_weeks,
    )


@dataclass(frozen=True, slots=True, kw_only=True, eq=False)
class Chain:
    """The cohorts of one slot, one after another, for one fish stocked in each: feed by week, mass by day."""

    curves: tuple[CohortCurve, ...]
    feed_g_by_week: Floats
    biomass_g: Floats


class Chains:
    """Makes and keeps chains for days on which fingerlings can be had."""

    def __init__(self, cohorts: Cohorts, dates: Sequence[date], ruler: Ruler) -> None:
        """Take the days, in order."""
        self._cohorts, self._dates, self._ruler = cohorts, dates, ruler
        self._kept: dict[tuple[date, float, int], Chain] = {}

    def on_or_after(self, day: date) -> date | None:
        """Return the first day with fingerlings from a day on."""
        place = bisect_left(self._dates, day)
        return self._dates[place] if place < len(self._dates) else None

    def chain(self, first_on: date, rhythm: Rhythm) -> Chain:
        """Return the chain whose first cohort is stocked on the first day with fingerlings from a day on."""
        start = self.on_or_after(first_on)
        key = (start or first_on, rhythm.share, rhythm.take_apart_weeks)
        if key not in self._kept:
            self._kept[key] = self._made(start, rhythm)
        return self._kept[key]

    def _made(self, start: date | None, rhythm: Rhythm) -> Chain:
        curves: list[CohortCurve] = []
        until_on = self._ruler.date_of(self._ruler.days)
        while start is not None and start < until_on:
            curve = self._cohorts.curve(start, share=rhythm.share, apart_weeks=rhythm.take_apart_weeks)
            curves.append(curve)
            start = None if curve.ends_on is None else self.on_or_after(curve.ends_on)
        nothing = np.zeros(self._ruler.days)
        feed = sum((curve.feed_g for curve in curves), start=nothing)
        return Chain(
            curves=tuple(curves),
            feed_g_by_week=self._ruler.weekly_mean(feed),
            biomass_g=sum((curve.biomass_g for curve in curves), start=nothing),
        )


def tanks_of_slot(slot: int, *, groups: int, tanks: Sequence[Tank]) -> tuple[Tank, ...]:
    """Return the tanks of a slot: several where groups are fewer than tanks, else one that is shared."""
    if groups <= len(tanks):
        return tuple(tanks[slot::groups])
    return (tanks[slot % len(tanks)],)


def shares_of_tanks(tanks: Sequence[Tank]) -> tuple[float, ...]:
    """Return the share of a group that goes into each of its tanks, by their water."""
    whole = sum(tank.volume_l for tank in tanks)
    return tuple(tank.volume_l / whole for tank in tanks)


def weeks_later(day: date, weeks: int) -> date:
    """Return the day so many weeks later."""
    return day + timedelta(weeks=weeks)
