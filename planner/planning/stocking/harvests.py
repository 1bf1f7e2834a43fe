"""One planned harvest of fish, all at once or in parts: how deep and long the feed falls each way.

Must know nothing of screens; the farm is not changed.
"""

from __future__ import annotations

import dataclasses
from dataclasses import dataclass
from datetime import date, timedelta
from typing import Final

import numpy as np

from planner.farm.changes import Change, ChangeSet, applied
from planner.farm.farm import DAYS_PER_WEEK, Farm, by_id
from planner.farm.faults import FarmFaultError, Fault, FaultKind
from planner.farm.fields import Id
from planner.farm.fish import FishEvent, FishEventKind, FishGroup
from planner.farm.ids import id_from
from planner.farm.mark import plan_mark
from planner.forecast.engine import Forecaster
from planner.forecast.values import Forecast, LoopForecast
from planner.forecast.verdicts import supply_ratios
from planner.planning.stocking.falls import falls_of
from planner.planning.stocking.options import HarvestHole
from planner.planning.stocking.steady import Hole
from planner.planning.stocking.wish import WHOLE, takes_of

_ADVICE: Final = "coefficient/advice/"


@dataclass(frozen=True, slots=True, kw_only=True)
class HarvestOption:
    """A harvest taken by a share at a time, and what comes of it.

    `hole` is the deepest fall at any take, and the longest; its day is that of the first.
    `lowest_feed_g_per_day` is the lowest week of feed in the weeks watched from the first take on, in the
    week that begins on `lowest_on`; `lowest_ratio` is the lowest supply over demand of any element then.
    `peak_kg_per_m3` is of the group's tank from the first take on.
    """

    share: float
    takes: tuple[tuple[date, int | None], ...]
    hole: HarvestHole
    lowest_on: date
    lowest_feed_g_per_day: float
    lowest_ratio: float | None
    peak_kg_per_m3: float
    change_set: ChangeSet


def harvest_options(
    farm: Farm, forecaster: Forecaster, event: Id, *, shares: tuple[float, ...]
) -> tuple[HarvestOption, ...]:
    """Return what comes of a planned harvest for each share of the fish taken at a time, 1 for all at once.

    Parts are taken from the planned day on, as many weeks apart as part harvests are. Raises
    `FarmFaultError` for what is no harvest of a whole group within the plan, and for a share that is none.
    """
    planned = _planned(farm, event)
    before = forecaster.forecast(farm)
    day = before.ruler.day_of(planned.on)
    if not 0 <= day < before.ruler.days:
        raise FarmFaultError((_fault("on", planned.on.isoformat(), "the harvest is not within the plan."),))
    for share in shares:
        if not 0.0 < share <= WHOLE:
            raise FarmFaultError((_fault("share", f"{share:g}", "a share lies above 0 and is at most 1."),))
    task = _Task(farm, forecaster, planned, fish=_fish_there(before, planned.group, day))
    found = tuple(task.option(share) for share in shares)
    forecaster.preview(farm)  # so that questions about the last forecast are about the farm again
    return found


def whole_harvest_of(farm: Farm, group: str) -> FishEvent:
    """Return the first harvest of all fish of a group by its name; raises `FarmFaultError` without one."""
    known: dict[str, Id] = {one.name: one.id for one in farm.fish_groups}
    if group not in known:
        names = ", ".join(known) or "none"
        raise FarmFaultError((_fault("group", group, f"is no group of the farm. Groups are: {names}."),))
    harvests = [e for e in farm.fish_events if e.group == known[group] and _is_whole(e)]
    if not harvests:
        raise FarmFaultError((_fault("group", group, "no harvest of all its fish is planned."),))
    return min(harvests, key=_on)


def _planned(farm: Farm, event: Id) -> FishEvent:
    found: FishEvent | None = by_id(farm.fish_events).get(event)
    if found is None or not _is_whole(found):
        raise FarmFaultError((_fault("event", event, "is no planned harvest of all fish of a group."),))
    return found


def _is_whole(event: FishEvent) -> bool:
    return event.kind is FishEventKind.HARVEST and event.count is None


def _on(event: FishEvent) -> date:
    return event.on


def _fish_there(forecast: Forecast, group: Id, day: int) -> float:
    found = next(one for loop in forecast.loops for one in loop.groups if one.group == group)
    return float(found.harvest_count[day])


class _Task:
    """What the options of one harvest share."""

    def __init__(self, farm: Farm, forecaster: Forecaster, planned: FishEvent, *, fish: float) -> None:
        self._farm, self._forecaster, self._planned, self._fish = farm, forecaster, planned, fish
        self._group: FishGroup = by_id(farm.fish_groups)[planned.group]

    def _advice(self, name: str) -> int:
        return round(self._forecaster.catalogue.figure(_ADVICE + name).value)

    def option(self, share: float) -> HarvestOption:
        """Return what comes of one way."""
        change_set, takes = self._changes(share)
        forecast = self._forecaster.forecast(applied(self._farm, change_set))
        loop = next(
            one for one in forecast.loops if any(group.group == self._group.id for group in one.groups)
        )
        first = forecast.ruler.day_of(self._planned.on)
        watched = slice(
            first, min(first + self._advice("remedy_watch_weeks") * DAYS_PER_WEEK, loop.feed_g.size)
        )
        lowest_day, lowest_feed = _lowest_week(loop, watched)
        return HarvestOption(
            share=share,
            takes=takes,
            hole=self._hole(loop, {forecast.ruler.day_of(on) for on, _ in takes}, first),
            lowest_on=forecast.ruler.date_of(lowest_day),
            lowest_feed_g_per_day=lowest_feed,
            lowest_ratio=_lowest_ratio(forecast, loop, watched),
            peak_kg_per_m3=self._peak(loop, first),
            change_set=change_set,
        )

    def _changes(self, share: float) -> tuple[ChangeSet, tuple[tuple[date, int | None], ...]]:
        """Return the changes, and each day with the fish taken, None for all that are left."""
        many = takes_of(share)
        part = max(round(self._fish * share), 1)
        apart = timedelta(weeks=self._advice("part_harvest_apart_weeks"))
        days = [self._planned.on + apart * number for number in range(many)]
        counts: list[int | None] = [*([part] * (many - 1)), None]
        if many == 1:
            return ChangeSet(title=f"Harvest all of {self._group.name}", changes=()), ((days[0], None),)
        mark = plan_mark(self._farm)
        first = dataclasses.replace(self._planned, count=part)
        later = [
            FishEvent(
                id=id_from("harvest in parts", mark, self._planned.id, f"{share:g}", str(number)),
                group=self._group.id,
                on=on,
                kind=FishEventKind.HARVEST,
                count=count,
            )
            for number, (on, count) in enumerate(zip(days[1:], counts[1:], strict=True))
        ]
        changes = (Change(before=self._planned, after=first), *(Change(after=event) for event in later))
        title = f"Harvest {self._group.name} in {many} parts"
        return ChangeSet(title=title, changes=changes), tuple(zip(days, counts, strict=True))

    def _hole(self, loop: LoopForecast, days: set[int], first: int) -> HarvestHole:
        """Return the deepest fall at any of the takes, and the longest."""
        fish = self._forecaster.catalogue.fish
        entered = by_id(self._farm.fish_groups)
        falls = falls_of(
            loop,
            purge_days={one.group: round(fish[entered[one.group].species].purge_days) for one in loop.groups},
            days_before=self._advice("hole_weeks_before") * DAYS_PER_WEEK,
            first_day=first,
        )
        mine = [one for one in falls if one.day in days]
        lengths = [one.weeks for one in mine]
        known = [weeks for weeks in lengths if weeks is not None]
        deepest = max(mine, key=_depth)
        return HarvestHole(
            on=self._planned.on,
            depth_share=deepest.depth_share,
            weeks=max(known) if len(known) == len(lengths) else None,
            usual_g_per_day=deepest.usual_g,
            lowest_g_per_day=deepest.lowest_g,
        )

    def _peak(self, loop: LoopForecast, first: int) -> float:
        inside = [group.biomass_g[first:] for group in loop.groups if group.tank == self._group.tank]
        volume: float = by_id(self._farm.tanks)[self._group.tank].volume_l
        return float(np.sum(inside, axis=0).max()) / volume


def _depth(hole: Hole) -> float:
    return hole.depth_share


def _lowest_week(loop: LoopForecast, days: slice) -> tuple[int, float]:
    """Return the first day and the mean of the lowest week of feed that begins in a span [g/d]."""
    weeks = [
        (float(loop.feed_g[day : day + DAYS_PER_WEEK].mean()), day) for day in range(days.start, days.stop)
    ]
    feed, day = min(weeks)
    return day, feed


def _lowest_ratio(forecast: Forecast, loop: LoopForecast, days: slice) -> float | None:
    ruler = forecast.ruler
    ratios = supply_ratios(ruler.weekly_sum(loop.supply_g), ruler.weekly_sum(loop.demand_g))
    watched = ratios[:, days.start // DAYS_PER_WEEK : -(-days.stop // DAYS_PER_WEEK)]
    known = watched[~np.isnan(watched)]
    return float(known.min()) if known.size else None


def _fault(field: str, value: str, words: str) -> Fault:
    return Fault(
        kind=FaultKind.OUT_OF_LIMITS,
        where="harvest",
        field=field,
        value=value,
        message=f"{field} {value}: {words}",
    )
