"""Proposes stockings: for each number of groups and way of harvest the best found, as a whole farm."""

from __future__ import annotations

import dataclasses
from collections.abc import Sequence
from datetime import date, timedelta
from typing import Final

import numpy as np

from planner.farm.changes import Change, ChangeSet, applied
from planner.farm.farm import DAYS_PER_WEEK, Farm, by_id
from planner.farm.faults import FarmFaultError, Fault, FaultKind
from planner.farm.fields import Id
from planner.forecast.engine import Forecaster, ruler_of
from planner.forecast.values import Floats, LoopForecast, Ruler
from planner.planning.stocking.cohorts import Cohorts
from planner.planning.stocking.falls import falls_of
from planner.planning.stocking.model import Model, Setting, best_trial, score_of
from planner.planning.stocking.naming import Names, never_harvested, stocked_of
from planner.planning.stocking.need import FeedNeed, need_by_area
from planner.planning.stocking.options import (
    HarvestHole,
    Judged,
    NoStocking,
    Search,
    Stocked,
    StockingOption,
    StockingTable,
)
from planner.planning.stocking.rhythm import Chains, Rhythm, rhythm_of
from planner.planning.stocking.steady import variation
from planner.planning.stocking.wish import StockingWish, check_wish, density_limit, tanks_of

_ADVICE: Final = "coefficient/advice/"
_LONGEST_WEEKS: Final = 520
_PROBES: Final = 4
_YEAR_WEEKS: Final = 52
_CYCLES: Final = 3
"""Lives of the slowest group that are forecast: to get going, to be judged, to see the holes end."""
_G_PER_KG: Final = 1000.0
_L_PER_M3: Final = 1000.0


def stocking_table(
    farm: Farm,
    forecaster: Forecaster,
    wish: StockingWish,
    *,
    need: FeedNeed | None = None,
    search: Search | None = None,
) -> StockingTable:
    """Return every way asked for, bettered as long as the search allows, with what each would do.

    Without a `need` the feed is that which the planted area asks for. All ways are judged over the same
    weeks: from the time when every group of the slowest has been harvested once, for as long again. Fish
    that the plan never harvests are taken out at its end, so that weeks beyond it tell of the new fish.
    Raises `FarmFaultError` for a wish that makes no sense or a farm that asks for no feed.
    """
    check_wish(farm, wish, forecaster.catalogue_for(farm))
    task = _Task(farm, forecaster, wish, need)
    options: list[StockingOption] = []
    impossible: list[tuple[int, float]] = []
    for groups in wish.groups:
        for share in wish.shares:
            try:
                options.append(task.option(task.rhythm(groups, share), search or Search()))
            except NoStocking:
                impossible.append((groups, share))
    forecaster.preview(farm)  # so that questions about the last forecast are about the farm again
    first, last = task.judged
    return StockingTable(
        options=tuple(options),
        impossible=tuple(impossible),
        judged_from_on=task.ruler.week_start(first),
        judged_until_on=task.ruler.week_start(last) - timedelta(days=1),
    )


class _Task:
    """What the ways of one wish share: the longer farm they are tried on, its need, and the weeks judged."""

    def __init__(self, farm: Farm, forecaster: Forecaster, wish: StockingWish, need: FeedNeed | None) -> None:
        self._farm, self._forecaster, self._wish = farm, forecaster, wish
        self._catalogue = forecaster.catalogue_for(farm)
        base = forecaster.preview(farm)
        if need is None:
            need = need_by_area(_loop(base.loops, wish.loop), base.ruler, forecaster.bands)
        if not need.high.any():
            raise FarmFaultError((_nothing_asked(),))
        self._start_on = max(wish.dates[0], ruler_of(farm).start_on)
        longest = self._longest_weeks()
        self.ruler, self._longer = self._longer_farm(longest)
        begin = self.ruler.week_of(self._start_on)
        self.judged = (begin + longest, min(begin + 2 * longest, self.ruler.weeks))
        self._need = need.over(self.ruler.weeks)
        self._cohorts = self._cohorts_over(self.ruler)
        self._chains = Chains(self._cohorts, _yearly(wish.dates, self.ruler), self.ruler)
        self._setting = self._setting_of(forecaster.preview(self._longer).loops)

    def _advice(self, name: str) -> float:
        return self._catalogue.figure(_ADVICE + name).value

    def _cohorts_over(self, ruler: Ruler) -> Cohorts:
        loop = by_id(self._farm.loops)[self._wish.loop]

        def water_of(start_on: date, days: int) -> Floats | None:
            return self._forecaster.water_c(loop, start_on=start_on, days=days)

        return Cohorts(self._wish, catalogue=self._catalogue, water_of=water_of, ruler=ruler)

    def _longest_weeks(self) -> int:
        """Return the longest life of a group among some days of the first year."""
        cohorts, lives = self._cohorts_over(ruler_of(self._farm)), []
        for on in self._probes():
            for groups in self._wish.groups:
                for share in self._wish.shares:
                    rhythm = self._rhythm_on(cohorts, on, groups, share)
                    life = cohorts.life_weeks(on, share=share, apart_weeks=rhythm.take_apart_weeks)
                    lives.append(life or 0)
        return max(lives)

    def _probes(self) -> Sequence[date]:
        first = [on for on in self._wish.dates if (on - self._start_on).days < _YEAR_WEEKS * DAYS_PER_WEEK]
        return (first or self._wish.dates)[:: max(len(first) // _PROBES, 1)]

    def _rhythm_on(self, cohorts: Cohorts, on: date, groups: int, share: float) -> Rhythm:
        grow = cohorts.life_weeks(on, share=1.0, apart_weeks=0)
        if grow is None:
            raise FarmFaultError((_never_ready(),))
        most = int(self._advice("part_harvest_apart_weeks"))
        return rhythm_of(groups, share, grow_weeks=grow, most_apart_weeks=most)

    def rhythm(self, groups: int, share: float) -> Rhythm:
        """Return the rhythm of a way, by the growth of the group stocked first."""
        first_on = self._chains.on_or_after(self._start_on) or self._wish.dates[0]
        return self._rhythm_on(self._cohorts, first_on, groups, share)

    def _longer_farm(self, longest: int) -> tuple[Ruler, Farm]:
        start = ruler_of(self._farm)
        wanted = start.week_of(self._start_on) + _CYCLES * longest
        weeks = min(max(wanted, self._farm.settings.plan_weeks), _LONGEST_WEEKS)
        settings = dataclasses.replace(self._farm.settings, plan_weeks=weeks)
        longer = dataclasses.replace(
            self._farm,
            settings=settings,
            fish_events=(*self._farm.fish_events, *never_harvested(self._farm, loop=self._wish.loop)),
        )
        return ruler_of(longer), longer

    def _setting_of(self, loops: Sequence[LoopForecast]) -> Setting:
        loop = _loop(loops, self._wish.loop)
        tanks = tanks_of(self._farm, self._wish)
        limits = {tank.id: density_limit(tank, self._wish, self._catalogue) * tank.volume_l for tank in tanks}
        return Setting(
            start_on=self._start_on,
            tanks=tanks,
            need=self._need,
            feed_g_by_week=self.ruler.weekly_mean(loop.feed_g),
            mass_g={tank.id: _mass_g(loop, tank.id, self.ruler.days) for tank in tanks},
            limit_g=limits,
            weeks=slice(*self.judged),
            lightest_share=self._advice("stocking_lightest_share"),
            step_share=self._advice("stocking_step_share"),
        )

    def option(self, rhythm: Rhythm, search: Search) -> StockingOption:
        """Return one way, bettered and forecast; raises `NoStocking`."""
        model = Model(self._setting, self._chains, rhythm)
        trial = best_trial(model, self._setting, search)
        stocked = stocked_of(model, trial)
        return self._judge(rhythm, stocked)

    def _judge(self, rhythm: Rhythm, stocked: tuple[Stocked, ...]) -> StockingOption:
        whole = self._changes(rhythm, stocked, longer=True)
        found = self._forecaster.preview(applied(self._farm, whole))
        loop = _loop(found.loops, self._wish.loop)
        feed = found.ruler.weekly_mean(loop.feed_g)
        score, inside = score_of(feed, self._need, slice(*self.judged))
        first, last = self.judged
        judged = feed[first:last]
        peak, limit, fullest = self._fullest(loop)
        return StockingOption(
            groups=rhythm.groups,
            share=rhythm.share,
            apart_weeks=rhythm.apart_weeks,
            take_apart_weeks=rhythm.take_apart_weeks,
            grow_weeks=rhythm.grow_weeks,
            stocked=stocked,
            holes=self._holes(loop),
            variation=variation(judged),
            inside_share=inside,
            mean_feed_g_per_day=float(judged.mean()),
            peak_density_kg_per_m3=peak,
            density_limit_kg_per_m3=limit,
            score=score,
            judged=self._judged(judged, fullest),
            change_set=self._changes(
                rhythm, tuple(one for one in stocked if one.on < self._farm.plan_until), longer=False
            ),
            whole=whole,
        )

    def _judged(self, feed: Floats, fullest: tuple[Id, int, float]) -> Judged:
        weeks = slice(*self.judged)
        tank, day, mass_g = fullest
        return Judged(
            feed_g=tuple(feed.tolist()),
            low_g=tuple(self._need.low[weeks].tolist()),
            high_g=tuple(self._need.high[weeks].tolist()),
            fullest_tank=tank,
            fullest_on=self.ruler.date_of(day),
            fullest_mass_g=mass_g,
        )

    def _fullest(self, loop: LoopForecast) -> tuple[float, float, tuple[Id, int, float]]:
        """Return peak density and limit of the tank that comes nearest to its limit [kg/m³], which, when."""
        nearest = []
        for tank in self._setting.tanks:
            limit = density_limit(tank, self._wish, self._catalogue)
            mass = _mass_g(loop, tank.id, self.ruler.days)
            peak = float(mass.max()) / _G_PER_KG / (tank.volume_l / _L_PER_M3)
            nearest.append((peak / limit, peak, limit, (tank.id, int(mass.argmax()), float(mass.max()))))
        _, peak, limit, fullest = max(nearest)
        return peak, limit, fullest

    def _holes(self, loop: LoopForecast) -> tuple[HarvestHole, ...]:
        first, last = (week * DAYS_PER_WEEK for week in self.judged)
        found = falls_of(
            loop,
            purge_days={group.group: self._cohorts.purge_days for group in loop.groups},
            days_before=int(self._advice("hole_weeks_before")) * DAYS_PER_WEEK,
            first_day=first,
        )
        return tuple(
            HarvestHole(
                on=self.ruler.date_of(one.day),
                depth_share=one.depth_share,
                weeks=one.weeks,
                usual_g_per_day=one.usual_g,
                lowest_g_per_day=one.lowest_g,
            )
            for one in found
            if one.day < last
        )

    def _changes(self, rhythm: Rhythm, stocked: tuple[Stocked, ...], *, longer: bool) -> ChangeSet:
        changes: list[Change] = []
        if longer and self._longer.settings != self._farm.settings:
            changes.append(Change(before=self._farm.settings, after=self._longer.settings))
            added = self._longer.fish_events[len(self._farm.fish_events) :]
            changes += [Change(after=event) for event in added]
        names = Names(self._farm, way=f"{rhythm.groups}/{rhythm.share:g}")
        groups = [names.group(self._wish, one) for one in stocked]
        changes += [Change(after=group) for group in groups]
        for group, one in zip(groups, stocked, strict=True):
            changes += [Change(after=event) for event in names.events(group, one)]
        many = "group" if rhythm.groups == 1 else "groups"
        return ChangeSet(title=f"Stock {rhythm.groups} {many} of fish in turn", changes=tuple(changes))


def _yearly(dates: Sequence[date], ruler: Ruler) -> tuple[date, ...]:
    """Return the days with fingerlings, and the same of later years until the ruler ends."""
    until_on, found, year = ruler.date_of(ruler.days), set(dates), timedelta(weeks=_YEAR_WEEKS)
    for on in dates:
        while (on := on + year) < until_on:
            found.add(on)
    return tuple(sorted(found))


def _mass_g(loop: LoopForecast, tank: Id, days: int) -> Floats:
    return sum((group.biomass_g for group in loop.groups if group.tank == tank), start=np.zeros(days))


def _loop(loops: Sequence[LoopForecast], key: Id) -> LoopForecast:
    return next(loop for loop in loops if loop.loop == key)


def _nothing_asked() -> Fault:
    return Fault(
        kind=FaultKind.MISSING,
        where="stocking",
        message="nothing is planted in this loop, so no feed is asked for.",
        remedy="Plant something first, or say the area that is to be fed.",
    )


def _never_ready() -> Fault:
    return Fault(
        kind=FaultKind.NOT_SUITED,
        where="stocking",
        message="the fish do not get to their harvest weight in this water within ten years.",
        remedy="Choose a lower harvest weight, heavier fingerlings, or another species.",
    )
