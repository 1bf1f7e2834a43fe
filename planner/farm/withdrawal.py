"""Which harvests of fish are barred: fish treated with a medicine are not eaten until they are cleared.

The day on which they are cleared is entered by the grower: how long to wait is told by the veterinarian and
the law, never by this program.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from datetime import date

from planner.farm.faults import Fault, FaultKind
from planner.farm.fields import Id
from planner.farm.fish import FishEvent, FishEventKind, FishGroup
from planner.farm.fish_counts import where_of_event


def treatment_barring(group: Id, on: date, events: Iterable[FishEvent]) -> FishEvent | None:
    """Return the treatment for which a group may not be harvested on a day, None when it may."""
    barring = (
        event
        for event in events
        if event.kind is FishEventKind.TREATED
        and event.group == group
        and event.on <= on
        and (event.cleared_on is None or on < event.cleared_on)
    )
    return next(barring, None)


def barred_harvests(events: Iterable[FishEvent]) -> Iterator[tuple[FishEvent, FishEvent]]:
    """Yield (harvest, treatment) for every harvest of fish that are not cleared on its day."""
    every = tuple(events)
    treated = [event for event in every if event.kind is FishEventKind.TREATED]
    for event in every if treated else ():
        if event.kind is FishEventKind.HARVEST:
            treatment = treatment_barring(event.group, event.on, treated)
            if treatment is not None:
                yield event, treatment


def barred_fault(group: FishGroup, harvest: FishEvent, treatment: FishEvent) -> Fault:
    """Return the fault that fish which are not cleared are to be harvested."""
    cleared = treatment.cleared_on
    limit = "a day on which they are cleared" if cleared is None else f"not before {cleared.isoformat()}"
    until = "no day is entered on which they are cleared" if cleared is None else f"cleared on {cleared}"
    return Fault(
        kind=FaultKind.NOT_SUITED,
        where=where_of_event(group, harvest),
        field="on",
        value=harvest.on.isoformat(),
        limit=limit,
        message=f"these fish were treated with a medicine on {treatment.on.isoformat()}, and {until}: "
        "they must not be harvested for eating.",
        remedy="Ask the veterinarian how long to wait, and log the day on which they are cleared.",
    )
