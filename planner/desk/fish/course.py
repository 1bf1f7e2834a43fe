"""One fish group as the page sees it: its forecast, its slow and quick course, its tank, looked up once.

Pure: must know nothing of widgets or words.
"""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date
from typing import Final

import numpy as np

from planner.desk.behind import Behind
from planner.farm.farm import DAYS_PER_WEEK
from planner.farm.fields import Id
from planner.farm.fish import FishEvent, FishEventKind, FishGroup
from planner.farm.site import Tank
from planner.farm.species import Feed, FishSpecies
from planner.forecast.fish import ready_day
from planner.forecast.flags import tank_density
from planner.forecast.values import Flag, FlagKind, Floats, GroupForecast, LoopForecast, Ruler

_FEW_FISH: Final = 0.5


@dataclass(frozen=True, slots=True, kw_only=True, eq=False)
class GroupCourse:
    """A group with all that is foreseen for it; `slow` and `quick` are None where its own figure rules.

    `density` is fish in its tank by day, all groups together, and `density_limit` what it should stay
    under [kg/m³].
    """

    group: FishGroup
    events: tuple[FishEvent, ...]
    species: FishSpecies
    feed: Feed
    tank: Tank
    loop: LoopForecast
    likely: GroupForecast
    slow: GroupForecast | None
    quick: GroupForecast | None
    density: Floats
    density_limit: float
    falls: tuple[Flag, ...]
    ruler: Ruler
    today: date
    shown_on: date

    @property
    def days(self) -> tuple[int, int]:
        """First day of the plan with fish, and the day after the last; equal when there are none."""
        there = np.flatnonzero(self.likely.count > _FEW_FISH)
        return (int(there[0]), int(there[-1]) + 1) if there.size else (0, 0)

    @property
    def day(self) -> int:
        """The day that is shown, on the ruler, kept within the plan."""
        return min(max(self.ruler.day_of(self.shown_on), 0), self.ruler.days - 1)

    def weeks(self) -> range:
        """Return the weeks from today on in which there are fish."""
        first, end = self.days
        if end <= first:
            return range(0)
        begin = max(self.day, first) // DAYS_PER_WEEK
        return range(begin, max((end - 1) // DAYS_PER_WEEK + 1, begin))

    def ready_on(self, forecast: GroupForecast | None) -> date | None:
        """Return the first day with the weight of a harvest, None when it is not within the plan."""
        day = None if forecast is None else ready_day(forecast, self.species.harvest_weight_g)
        return None if day is None else self.ruler.date_of(day)


def course_of_group(behind: Behind, group_id: Id) -> GroupCourse | None:
    """Return the course of a group, None when the farm has none of that id."""
    outlook = behind.outlook
    found = outlook.group(group_id)
    group = outlook.found.get(group_id)
    if found is None or not isinstance(group, FishGroup):
        return None
    loop, likely = found
    tank = outlook.found[group.tank]
    assert isinstance(tank, Tank)
    every = [each for one in outlook.forecast.loops for each in one.groups]
    ruler = outlook.forecast.ruler
    crowding = tank_density(outlook.farm, outlook.catalogue, every, tank, ruler)
    assert crowding is not None
    span = behind.growth_span(group)
    flags = outlook.flags.get(group_id, ())
    return GroupCourse(
        group=group,
        events=tuple(sorted((e for e in outlook.farm.fish_events if e.group == group_id), key=_on)),
        species=outlook.catalogue.fish[group.species],
        feed=outlook.catalogue.feeds[group.feed],
        tank=tank,
        loop=loop,
        likely=likely,
        slow=span[0] if span else None,
        quick=span[1] if span else None,
        density=crowding[0],
        density_limit=crowding[1],
        falls=tuple(flag for flag in flags if flag.kind is FlagKind.FEED_FALLS),
        ruler=ruler,
        today=behind.today,
        shown_on=behind.shown_on,
    )


def _on(event: FishEvent) -> date:
    return event.on


def harvests(course: GroupCourse) -> tuple[FishEvent, ...]:
    """Return the harvests of a group by date."""
    return tuple(event for event in course.events if event.kind is FishEventKind.HARVEST)
