"""Turns a stocking that was found into groups and harvests of a farm, with names and ids of their own."""

from __future__ import annotations

from datetime import date
from typing import Final

from planner.farm.farm import Farm
from planner.farm.fields import Id
from planner.farm.fish import FishEvent, FishEventKind, FishGroup
from planner.farm.ids import id_from
from planner.farm.mark import plan_mark
from planner.planning.stocking.cohorts import events_of
from planner.planning.stocking.model import Model, Trial
from planner.planning.stocking.options import Stocked
from planner.planning.stocking.wish import StockingWish, group_like

_LETTERS: Final = "ABCDEFGHIJKLMNOPQRSTUVWXYZ"


class Names:
    """Names and ids of the groups of one way: always the same for the same farm."""

    def __init__(self, farm: Farm, *, way: str) -> None:
        """Take the farm and a word for the way of stocking."""
        self._mark = plan_mark(farm)
        self._way = way
        self._taken = {group.name for group in farm.fish_groups}

    def _id(self, *parts: str) -> Id:
        return id_from("stocking", self._mark, self._way, *parts)

    def group(self, wish: StockingWish, one: Stocked) -> FishGroup:
        """Return the group that is put into a tank, under a name nobody has."""
        year, week, _ = one.on.isocalendar()
        stem = f"Fish {year}-W{week:02d} {_LETTERS[one.slot % len(_LETTERS)]}"
        name, number = stem, 1
        while name in self._taken:
            number += 1
            name = f"{stem}{number}"
        self._taken.add(name)
        return group_like(wish, key=self._id(name), name=name, tank=one.tank, on=one.on, count=one.count)

    def events(self, group: FishGroup, one: Stocked) -> tuple[FishEvent, ...]:
        """Return the harvests of a group."""
        return events_of(
            group.id, one.takes, count=one.count, keys=lambda number: self._id(group.name, str(number))
        )


def stocked_of(model: Model, trial: Trial) -> tuple[Stocked, ...]:
    """Return the fish put into each tank by a trial, by day."""
    found = [
        Stocked(
            slot=slot,
            tank=tank.id,
            on=curve.stocked_on,
            count=max(round(count * share), 1),
            takes=curve.takes,
        )
        for slot, (week, count) in enumerate(zip(trial.first_weeks, trial.counts, strict=True))
        for curve in model.chain(week).curves
        for tank, share in model.tanks(slot)
    ]
    return tuple(sorted(found, key=_by_day))


def _by_day(one: Stocked) -> tuple[date, int]:
    return one.on, one.slot


def never_harvested(farm: Farm, *, loop: Id) -> tuple[FishEvent, ...]:
    """Return a harvest at the end of the plan for every group of a loop that is never harvested whole."""
    tanks = {tank.id for tank in farm.tanks if tank.loop == loop}
    done = {
        event.group
        for event in farm.fish_events
        if event.kind is FishEventKind.HARVEST and event.count is None
    }
    return tuple(
        FishEvent(
            id=id_from("stocking", "end of plan", group.id),
            group=group.id,
            on=farm.plan_until,
            kind=FishEventKind.HARVEST,
        )
        for group in farm.fish_groups
        if group.tank in tanks and group.id not in done
    )
