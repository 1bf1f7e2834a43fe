"""Whether a group still has the fish that its events take out.

Counted is what is said: fish stocked and added, less those harvested and found dead. What dies without being
told is left out, so only what cannot be is refused. Knows nothing of growth.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping
from datetime import date
from itertools import groupby

from planner.farm.faults import Fault, FaultKind
from planner.farm.fields import Id
from planner.farm.fish import FishEvent, FishEventKind, FishGroup

_TAKES: Mapping[FishEventKind, str] = {FishEventKind.HARVEST: "harvested", FishEventKind.DEATHS: "dead"}


def where_of_event(group: FishGroup, event: FishEvent) -> str:
    """Return how a fault calls one event of a group: by its kind and day."""
    return f'{event.kind.value} of "{group.name}" on {event.on.isoformat()}'


def count_faults(groups: Iterable[FishGroup], events: Iterable[FishEvent]) -> Iterator[tuple[Id, Fault]]:
    """Yield (id of the event, fault) for every event that takes more fish than its group then has."""
    of_group: dict[Id, list[FishEvent]] = {}
    for event in events:
        of_group.setdefault(event.group, []).append(event)
    for group in groups:
        if group.id in of_group:
            yield from _walked(group, sorted(of_group[group.id], key=_day))


def _day(event: FishEvent) -> date:
    return event.on


def _walked(group: FishGroup, events: list[FishEvent]) -> Iterator[tuple[Id, Fault]]:
    """Go through the days; fish added on a day may be taken on it, however the events are ordered."""
    has = group.count
    for _on, many in groupby(events, key=_day):
        today = list(many)
        to_come = sum(_added(event) for event in today)
        for event in today:
            to_come -= _added(event)
            has += _added(event)
            if event.kind is FishEventKind.HARVEST and event.count is None:
                has = min(has, 0)
            elif event.kind in _TAKES:
                taken = event.count or 0
                if taken > has + to_come:
                    yield event.id, _fault(group, event, has + to_come)
                has = max(has - taken, -to_come)


def _added(event: FishEvent) -> int:
    return (event.count or 0) if event.kind is FishEventKind.ADDED else 0


def _fault(group: FishGroup, event: FishEvent, has: int) -> Fault:
    return Fault(
        kind=FaultKind.OUT_OF_LIMITS,
        where=where_of_event(group, event),
        field="count",
        value=str(event.count),
        limit=f"{has} fish",
        message=f"count is {event.count} fish {_TAKES[event.kind]}, but the group then has {has} at most.",
        remedy="Lower count, mend an earlier event, or leave count out to harvest them all."
        if event.kind is FishEventKind.HARVEST
        else "Lower count, or mend an earlier event.",
    )
