"""The farm itself: one plain value that holds everything a grower has entered."""

from __future__ import annotations

import dataclasses
from collections.abc import Iterable
from dataclasses import dataclass
from datetime import date, timedelta
from enum import Enum
from typing import Any, Final

from planner.farm import fields
from planner.farm.crops import Batch, Placement, SeedLot, Target
from planner.farm.fields import Id
from planner.farm.fish import FishEvent, FishGroup
from planner.farm.log import LogEntry
from planner.farm.meters import Meter
from planner.farm.site import Bed, Filter, Loop, Site, Tank
from planner.farm.water import Dose, Reading, SolidsBatch

DAYS_PER_WEEK: Final = 7


class Shelf(Enum):
    """Shelf of the catalogue that an own entry is laid over."""

    CROP = "crop"
    FISH = "fish"
    FEED = "feed"
    SUPPLEMENT = "supplement"


@dataclass(frozen=True, slots=True, kw_only=True)
class OwnEntry:
    """The grower's own crop, fish, feed or supplement: like an entry of the book, but for `values`.

    `values` are (figure name, value) pairs sorted by name; everything else is taken from `like`.
    """

    id: Id = fields.own_id()
    shelf: Shelf = fields.choice()
    key: str = fields.key("own")
    like: str = fields.key("shelf")
    name: str = fields.name()
    values: tuple[tuple[str, float | str | bool], ...] = fields.pairs()
    notes: str = fields.text()


@dataclass(frozen=True, slots=True, kw_only=True)
class Settings:
    """What holds for the farm as a whole: its name and the span that is planned."""

    id: Id = fields.own_id()
    name: str = fields.name()
    plan_from: date = fields.day(meaning="first day of the plan")
    plan_weeks: int = fields.whole(1, 520, unit="weeks", default=52)
    notes: str = fields.text()


@dataclass(frozen=True, slots=True, kw_only=True)
class Farm:
    """Everything about a farm. Each tuple keeps the order things were entered in."""

    settings: Settings
    sites: tuple[Site, ...] = ()
    loops: tuple[Loop, ...] = ()
    tanks: tuple[Tank, ...] = ()
    filters: tuple[Filter, ...] = ()
    beds: tuple[Bed, ...] = ()
    own_entries: tuple[OwnEntry, ...] = ()
    seed_lots: tuple[SeedLot, ...] = ()
    fish_groups: tuple[FishGroup, ...] = ()
    fish_events: tuple[FishEvent, ...] = ()
    batches: tuple[Batch, ...] = ()
    placements: tuple[Placement, ...] = ()
    targets: tuple[Target, ...] = ()
    doses: tuple[Dose, ...] = ()
    meters: tuple[Meter, ...] = ()
    readings: tuple[Reading, ...] = ()
    solids_batches: tuple[SolidsBatch, ...] = ()
    log_entries: tuple[LogEntry, ...] = ()

    @property
    def plan_until(self) -> date:
        """First day after the plan."""
        return self.settings.plan_from + timedelta(days=DAYS_PER_WEEK * self.settings.plan_weeks)


Thing = (
    Settings
    | Site
    | Loop
    | Tank
    | Filter
    | Bed
    | OwnEntry
    | SeedLot
    | FishGroup
    | FishEvent
    | Batch
    | Placement
    | Target
    | Dose
    | Meter
    | Reading
    | SolidsBatch
    | LogEntry
)
"""Any one thing that a farm holds."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Kind:
    """One kind of thing: the word for it, its class, the farm's tuple of it, and its own name."""

    word: str
    owner: type[Any]
    place: str
    label: str


KINDS: Final[tuple[Kind, ...]] = (
    Kind(word="site", owner=Site, place="sites", label="name"),
    Kind(word="loop", owner=Loop, place="loops", label="name"),
    Kind(word="tank", owner=Tank, place="tanks", label="name"),
    Kind(word="filter", owner=Filter, place="filters", label="name"),
    Kind(word="bed", owner=Bed, place="beds", label="name"),
    Kind(word="own entry", owner=OwnEntry, place="own_entries", label="key"),
    Kind(word="seed lot", owner=SeedLot, place="seed_lots", label="code"),
    Kind(word="fish group", owner=FishGroup, place="fish_groups", label="name"),
    Kind(word="fish event", owner=FishEvent, place="fish_events", label=""),
    Kind(word="batch", owner=Batch, place="batches", label="code"),
    Kind(word="placement", owner=Placement, place="placements", label=""),
    Kind(word="target", owner=Target, place="targets", label=""),
    Kind(word="dose", owner=Dose, place="doses", label=""),
    Kind(word="meter", owner=Meter, place="meters", label="name"),
    Kind(word="reading", owner=Reading, place="readings", label=""),
    Kind(word="solids batch", owner=SolidsBatch, place="solids_batches", label="code"),
    Kind(word="log entry", owner=LogEntry, place="log_entries", label="code"),
)
"""Every kind a farm holds many of, parents before their dependants."""

SETTINGS_KIND: Final = Kind(word="settings", owner=Settings, place="settings", label="name")

_KIND_OF_OWNER: Final = {kind.owner: kind for kind in (SETTINGS_KIND, *KINDS)}
_KIND_OF_WORD: Final = {kind.word: kind for kind in (SETTINGS_KIND, *KINDS)}


def kind_of(thing: Thing) -> Kind:
    """Return the kind of a thing."""
    return _KIND_OF_OWNER[type(thing)]


def kind_named(word: str) -> Kind:
    """Return the kind called `word`; raises `KeyError` when there is none."""
    return _KIND_OF_WORD[word]


def things(farm: Farm, word: str) -> tuple[Any, ...]:
    """Return all things of the kind called `word`, in order."""
    kind = kind_named(word)
    found = getattr(farm, kind.place)
    return found if isinstance(found, tuple) else (found,)


def by_id(many: Iterable[Any]) -> dict[Id, Any]:
    """Return id -> thing."""
    return {thing.id: thing for thing in many}


def label_of(thing: Thing) -> str:
    """Return what a person calls a thing: its name, code or key, else the kind's word."""
    kind = kind_of(thing)
    return str(getattr(thing, kind.label)) if kind.label else kind.word


def replace_things(farm: Farm, word: str, many: tuple[Any, ...]) -> Farm:
    """Return the farm with all things of one kind replaced."""
    places: dict[str, Any] = {kind_named(word).place: many}
    return dataclasses.replace(farm, **places)
