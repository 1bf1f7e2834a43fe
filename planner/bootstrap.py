"""Puts the rooms together: reads farms from text or file, makes sessions, opens the window.

The only place, with the command line, that knows every room. Nothing heavy is imported before it is
needed.
"""

from __future__ import annotations

import os
from collections.abc import Mapping
from datetime import UTC, date, datetime
from functools import cached_property
from pathlib import Path
from typing import TYPE_CHECKING, Final, NamedTuple, TypeAlias

if TYPE_CHECKING:
    from planner.actions.session import Session
    from planner.catalogue.catalogue import Catalogue
    from planner.farm.farm import Farm
    from planner.farm.faults import Fault
    from planner.farm.holds import Hold
    from planner.forecast.engine import Forecaster
    from planner.forecast.occupancy import HoldKeeper
    from planner.planning.placement import Refusal
    from planner.store.late import LateStore
    from planner.store.store import FarmStore

    AnyStore: TypeAlias = FarmStore | LateStore

TEXT_SUFFIX: Final = ".toml"
FARM_SUFFIX: Final = ".raftweek"
NAMED_BY: Final = "RAFTWEEK_NAME"
"""Names the person at the desk where the name of the account says too little."""


class ReadFarm(NamedTuple):
    """A farm that has been read, and what of it found no place."""

    farm: Farm
    refusals: tuple[Refusal, ...]


class Means:
    """The catalogue and the forecaster of one run of the program, made when first asked for.

    With a `language`, a code such as "fil", crops and fish go by their names in it.
    """

    def __init__(self, language: str = "") -> None:
        """Read nothing yet."""
        self._language = language

    @cached_property
    def catalogue(self) -> Catalogue:
        """The catalogue that ships with the program."""
        from planner.catalogue.loading import shipped_catalogue
        from planner.catalogue.names import named_in

        return named_in(shipped_catalogue(), self._language)

    @cached_property
    def forecaster(self) -> Forecaster:
        """The forecaster on that catalogue."""
        from planner.forecast.engine import Forecaster

        return Forecaster(self.catalogue)

    @cached_property
    def zones(self) -> frozenset[str]:
        """The time zones that this machine knows; none where it keeps no list of them."""
        from zoneinfo import available_timezones

        return frozenset(available_timezones())

    @property
    def crop_codes(self) -> Mapping[str, str]:
        """Three letters for each crop, for batch codes."""
        return {key: crop.code for key, crop in self.catalogue.crops.items()}

    def faults(self, farm: Farm) -> tuple[Fault, ...]:
        """Return every fault of a farm."""
        from planner.forecast.checks import all_faults

        return all_faults(farm, self.forecaster, zones=self.zones)

    def holds(self, farm: Farm) -> tuple[Hold, ...]:
        """Return how long each placement of a farm is held.

        Raises `FarmFaultError` for a key that the catalogue does not know: without it there are no days.
        """
        return self._hold_keeper.holds(farm, self.forecaster.days(self.known(farm)))

    @cached_property
    def _hold_keeper(self) -> HoldKeeper:
        """What works holds out; those that have not changed since the last act are the same again."""
        from planner.forecast.occupancy import HoldKeeper

        return HoldKeeper()

    def known(self, farm: Farm) -> Farm:
        """Return the farm; raises `FarmFaultError` when it names a crop, fish or feed that is nowhere."""
        from planner.farm.faults import FarmFaultError
        from planner.forecast.checks import catalogue_faults

        found = tuple(catalogue_faults(farm, self.forecaster.catalogue_for(farm)))
        if found:
            raise FarmFaultError(found)
        return farm

    def checked(self, farm: Farm) -> Farm:
        """Return the farm; raises `FarmFaultError` with every fault when it has any."""
        from planner.farm.faults import FarmFaultError

        found = self.faults(farm)
        if found:
            raise FarmFaultError(found)
        return farm

    def read(self, path: Path) -> ReadFarm:
        """Return the farm of a text or a farm file, with places given to what only names a bed.

        Raises `FarmFaultError` for a farm with faults, `StoreError` for a file that is no farm, and
        `OSError` for one that cannot be read.
        """
        from planner.planning.wishes import place_wishes

        farm = self._checked_text(path) if is_text(path) else self.checked(self._read_file(path))
        placed = place_wishes(farm, self.forecaster.preview(farm))
        return ReadFarm(farm=placed.farm, refusals=placed.refusals)

    def _checked_text(self, path: Path) -> Farm:
        from planner.store.text import read_farm_file

        return read_farm_file(path, crop_codes=self.crop_codes, more_faults=self.faults)

    def _read_file(self, path: Path) -> Farm:
        store = opened(path)
        try:
            return store.load()
        finally:
            store.close()

    def create_store(self, path: Path, farm: Farm) -> FarmStore:
        """Return a new farm file that holds a farm; raises `StoreError` when there is one already.

        A path that is the address of a database server makes its tables there.
        """
        from planner.bootstrap_server import place_of
        from planner.store.store import FarmStore

        return FarmStore.create(place_of(path), farm, self.holds(farm))

    def session(self, store: AnyStore) -> Session:
        """Return a session on an open farm file."""
        from planner.actions.session import Session
        from planner.catalogue.own import laid_over

        return Session(
            store,
            self.catalogue,
            holds_of=self.holds,
            faults_of=self.faults,
            now=utc_now,
            laid_over=laid_over,
            zones_of=self._zones_known,
            who=person(),
        )

    def _zones_known(self) -> frozenset[str]:
        return self.zones


def opened(path: Path) -> AnyStore:
    """Open a farm that is kept in a file, or on the database server that the path is an address of.

    Raises `StoreError` when it is not there, no farm, newer, damaged, locked or not to be reached.
    """
    from planner.bootstrap_server import place_of

    place = place_of(path)
    if isinstance(place, Path):
        from planner.store.late import LateStore

        return LateStore.open(place)
    from planner.store.store import FarmStore

    return FarmStore.open(place)


def person() -> str:
    """Return the name under which acts are kept: what the system calls who sits here; empty when unknown."""
    from getpass import getuser

    try:
        return os.environ.get(NAMED_BY) or getuser()
    except (OSError, KeyError, ImportError):
        # A system without a list of users, as some containers are.
        return ""


def utc_now() -> datetime:
    """Return the present moment."""
    return datetime.now(UTC)


def local_now() -> datetime:
    """Return the present moment by the clock on the wall."""
    return utc_now().astimezone()


def local_today() -> date:
    """Return today's date by the clock on the wall."""
    return local_now().date()


def is_text(path: Path) -> bool:
    """Tell whether a path names a farm as text."""
    return path.suffix.lower() == TEXT_SUFFIX
