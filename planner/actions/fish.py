"""What a grower does with fish: stock a group, change it, note what happens to it, remove it."""

from __future__ import annotations

from typing import Final

from planner.actions.changing import addition, alteration, found, removal
from planner.farm.changes import ChangeSet
from planner.farm.farm import Farm
from planner.farm.fields import Id
from planner.farm.fish import FishEvent, FishEventKind, FishGroup

_GROUP: Final = "fish group"
_EVENT: Final = "fish event"
_TITLES: Final = {
    FishEventKind.HARVEST: "Harvest of {name}",
    FishEventKind.DEATHS: "Deaths in {name}",
    FishEventKind.ADDED: "Fish added to {name}",
    FishEventKind.SAMPLE: "Weighed sample of {name}",
    FishEventKind.OFF_FEED: "{name} off feed",
    FishEventKind.FEED_GIVEN: "Feed given to {name}",
    FishEventKind.TREATED: "Treatment of {name}",
}


def stock_group(group: FishGroup) -> ChangeSet:
    """Stock a group of fish."""
    return addition(f"Stock {group.name}", group)


def change_group(farm: Farm, group: FishGroup) -> ChangeSet:
    """Put the changed group in place of the one with its id."""
    return alteration(farm, group, title=f"Change {group.name}")


def remove_group(farm: Farm, group_id: Id) -> ChangeSet:
    """Remove a group with all that was noted of it."""
    group: FishGroup = found(farm, _GROUP, group_id)
    return removal(farm, group, title=f"Remove {group.name}", with_dependants=True)


def add_event(farm: Farm, event: FishEvent) -> ChangeSet:
    """Note or plan something that happens to a group."""
    return addition(_title(farm, event), event)


def change_event(farm: Farm, event: FishEvent) -> ChangeSet:
    """Put the changed event in place of the one with its id."""
    return alteration(farm, event, title=f"Change: {_title(farm, event)}")


def remove_event(farm: Farm, event_id: Id) -> ChangeSet:
    """Remove one event."""
    event: FishEvent = found(farm, _EVENT, event_id)
    return removal(farm, event, title=f"Remove: {_title(farm, event)}")


def _title(farm: Farm, event: FishEvent) -> str:
    group: FishGroup = found(farm, _GROUP, event.group)
    return f"{_TITLES[event.kind].format(name=group.name)}, {event.on.isoformat()}"
