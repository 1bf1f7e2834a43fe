"""Dated backups beside a farm file: made when it is opened or closed and something is new, thinned with age.

They lie in a folder of their own next to the farm, each a farm file that can be opened by itself. Nothing is
ever restored over a farm without keeping that one as a backup first. Must know nothing of windows.
"""

from __future__ import annotations

import re
import shutil
import sqlite3
from collections.abc import Callable, Iterable, Iterator
from contextlib import closing
from dataclasses import dataclass
from datetime import datetime, timedelta
from pathlib import Path
from typing import Final

from planner.store.copying import put_in_place, release_old
from planner.store.errors import NoSuchFarmError, NotAFarmError, told

SUFFIX: Final = ".raftweek"
STAMP: Final = "%Y-%m-%d %H%M%S"
_FIXED_DAY: Final = datetime(2000, 1, 3)  # noqa: DTZ001 - a Monday on the clock on the wall
_STAMPED: Final = re.compile(r"(\d{4})-(\d{2})-(\d{2}) (\d{2})(\d{2})(\d{2})$", re.ASCII)


@dataclass(frozen=True, slots=True)
class Span:
    """Up to this age, one backup is kept for each stretch of this length, the latest one in it."""

    until: timedelta
    every: timedelta


SPANS: Final = (
    Span(until=timedelta(days=1), every=timedelta(hours=1)),
    Span(until=timedelta(days=14), every=timedelta(days=1)),
    Span(until=timedelta(days=92), every=timedelta(days=7)),
    Span(until=timedelta(days=3 * 366), every=timedelta(days=30)),
)
"""An hour, a day, a week, a month apart; older than three years none is kept but the last."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Backup:
    """One backup: the file, and the moment on the wall clock that is in its name."""

    path: Path
    at: datetime


def folder_of(farm: Path) -> Path:
    """Return the folder the backups of a farm file lie in."""
    return farm.with_name(f"{farm.stem} backups")


def backups_of(farm: Path) -> tuple[Backup, ...]:
    """Return the backups of a farm file, the latest first; files of other names are none of ours."""
    return tuple(sorted(_found(farm), key=lambda each: (each.at, each.path.name), reverse=True))


def _found(farm: Path) -> Iterator[Backup]:
    folder = folder_of(farm)
    for path in folder.glob(f"*{SUFFIX}") if folder.is_dir() else ():
        stamped = _STAMPED.search(path.stem)
        if stamped is None:
            continue
        try:
            # What parses any form of a date is slow to read in.
            year, month, day, hour, minute, second = map(int, stamped.groups())
            at = datetime(year, month, day, hour, minute, second)  # noqa: DTZ001 - the clock on the wall
        except ValueError:
            continue
        yield Backup(path=path, at=at)


def back_up(farm: Path, copy: Callable[[Path], None], now: datetime) -> Path | None:
    """Make a backup by `copy` unless there is one of the very same state; return where it is.

    Raises `StoreError` when it cannot be written; the farm itself is not touched either way.
    """
    with told(farm.name):
        state = _state(farm)
        if state is not None and any(_state(each.path) == state for each in backups_of(farm)):
            return None
        folder = folder_of(farm)
        folder.mkdir(exist_ok=True)
        path = _free_name(folder, farm.stem, now)
        copy(path)
        thin(farm, now)
        return path


def _free_name(folder: Path, stem: str, now: datetime) -> Path:
    while (path := folder / f"{stem} {now.strftime(STAMP)}{SUFFIX}").exists():
        now += timedelta(seconds=1)
    return path


def _state(path: Path) -> tuple[object, ...] | None:
    """Return what is another after every act: revision and last act; None for a file that cannot be read."""
    try:
        with closing(sqlite3.connect(f"{path.absolute().as_uri()}?mode=ro", uri=True)) as connection:
            (revision,) = connection.execute("SELECT revision FROM meta").fetchone()
            last = connection.execute("SELECT seq, at, title, state FROM act ORDER BY seq DESC").fetchone()
    except (sqlite3.Error, TypeError):
        return None
    return revision, last


def thin(farm: Path, now: datetime) -> None:
    """Remove the backups that age makes too many; the latest one always stays."""
    kept = kept_of(backups_of(farm), now.replace(tzinfo=None))
    for backup in backups_of(farm):
        if backup not in kept:
            backup.path.unlink(missing_ok=True)


def kept_of(backups: Iterable[Backup], now: datetime) -> frozenset[Backup]:
    """Return what to keep: the latest, what is ahead of the clock, and one for each stretch of a span."""
    kept: dict[object, Backup] = {}
    latest_first = sorted(backups, key=lambda each: (each.at, each.path.name), reverse=True)
    for number, backup in enumerate(latest_first):
        age = now - backup.at
        span = next((each for each in SPANS if age <= each.until), None)
        if number == 0 or age < timedelta(0):
            kept[backup.path] = backup
        elif span is not None:
            # Stretches are counted from a fixed day, so that a backup stays in its stretch as it ages.
            kept.setdefault((span.every, (backup.at - _FIXED_DAY) // span.every), backup)
    return frozenset(kept.values())


def restore(backup: Path, farm: Path, now: datetime) -> Path | None:
    """Put a backup in the place of a farm file that nobody has open; return where that one was kept.

    Raises `StoreError` when a program has the farm open, or when either cannot be written.
    """
    with told(farm.name):
        if not backup.is_file():
            raise NoSuchFarmError(f"{backup.name} is not there any more. Choose another backup.")
        aside = None
        if farm.exists():
            folder_of(farm).mkdir(exist_ok=True)
            aside = _free_name(folder_of(farm), farm.stem, now)
            put_in_place(aside, lambda part: _copied(farm, part))
            _make_way(farm)
        put_in_place(farm, lambda part: _copied(backup, part))
        return aside


def _make_way(farm: Path) -> None:
    """Take a damaged file away, for it cannot be replaced as a sound one is; it has been kept by now."""
    try:
        release_old(farm)
    except (sqlite3.DatabaseError, NotAFarmError):
        for ending in ("", "-wal", "-shm"):
            farm.with_name(farm.name + ending).unlink(missing_ok=True)


def _copied(source: Path, part: Path) -> None:
    """Copy a farm file whole, with what is still in its journal, even when it is damaged."""
    try:
        with closing(sqlite3.connect(source)) as connection, closing(sqlite3.connect(part)) as target:
            connection.backup(target)
    except sqlite3.DatabaseError:
        # A damaged file is kept as it is: somebody may still get something out of it.
        part.unlink(missing_ok=True)
        shutil.copyfile(source, part)
