"""A session over the small farm, with a plain book of keys and a clock that is set by hand."""

from dataclasses import dataclass, field
from datetime import timedelta

from planner.actions.memory import MemoryKeeper
from planner.actions.session import Session
from planner.farm.checks import farm_faults
from planner.store.store import FarmStore
from tests.store.sample import NOON, holds_of, sample_farm


@dataclass(frozen=True)
class Book:
    """Only the keys: all that a session asks of a catalogue."""

    crops: dict = field(default_factory=lambda: {"basil": 1, "okra": 1})
    fish: dict = field(default_factory=lambda: {"tilapia": 1})
    feeds: dict = field(default_factory=lambda: {"feed-32": 1})
    supplements: dict = field(default_factory=lambda: {"KOH": 1})
    feeding_tables: dict = field(default_factory=dict)


class Clock:
    """Goes on by a minute each time it is asked."""

    def __init__(self):
        self.moment = NOON

    def __call__(self):
        self.moment += timedelta(minutes=1)
        return self.moment


def some_zones():
    """Return the time zones that are known here."""
    return frozenset({"UTC", "Asia/Manila"})


def session_over(store, *, holds=holds_of, who=""):
    """Return a session over a store or a keeper."""
    return Session(
        store, Book(), holds_of=holds, faults_of=farm_faults, now=Clock(), who=who, zones_of=some_zones
    )


def in_memory(farm=None):
    """Return a session over a farm that is kept nowhere."""
    return session_over(MemoryKeeper(farm or sample_farm()))


def in_file(path, farm=None):
    """Return a session over a farm in a new file."""
    farm = farm or sample_farm()
    return session_over(FarmStore.create(path, farm, holds_of(farm)))
