"""The falls of a loop's feed at its harvests of fish, whichever group they are of. Knows forecasts only."""

from __future__ import annotations

from collections.abc import Mapping

from planner.farm.fields import Id
from planner.forecast.values import LoopForecast
from planner.planning.stocking.steady import Hole, holes


def falls_of(
    loop: LoopForecast, *, purge_days: Mapping[Id, int], days_before: int, first_day: int
) -> tuple[Hole, ...]:
    """Return the hole at every day of harvest from `first_day` on, in order.

    `purge_days` by group are without feed before all of it is harvested; a part is taken without.
    """
    stops: dict[int, int] = {}
    for group in loop.groups:
        for day in (int(one) for one in group.harvest_count.nonzero()[0] if one >= first_day):
            is_last = group.count[day] <= 0.0
            stop = max(day - (purge_days[group.group] if is_last else 0), 0)
            stops[day] = min(stop, stops.get(day, stop))
    return holes(
        loop.feed_g, tuple(sorted((stop, day) for day, stop in stops.items())), days_before=days_before
    )
