"""Makes a backup of a farm file when it is opened or closed, and lists those there are."""

from __future__ import annotations

from pathlib import Path
from typing import TYPE_CHECKING

from planner.bootstrap import local_now

if TYPE_CHECKING:
    from planner.bootstrap import AnyStore
    from planner.desk.keeping.backup_dialog import BackupLine


def backed_up(store: AnyStore) -> str:
    """Make a backup of an open farm when something is new in it; return the trouble, empty for none.

    A farm on a database server is backed up by whoever runs the server.
    """
    from planner.store.backups import back_up
    from planner.store.errors import StoreError

    if store.path is None:
        return ""
    try:
        back_up(store.path, store.copy_to, local_now())
    except StoreError as trouble:
        return str(trouble)
    return ""


def backup_lines(farm: Path) -> tuple[BackupLine, ...]:
    """Return the backups of a farm file, the latest first."""
    from planner.desk.keeping.backup_dialog import BackupLine
    from planner.store.backups import backups_of

    return tuple(BackupLine(each.path, each.at, each.path.stat().st_size) for each in backups_of(farm))


def put_back(backup: Path, farm: Path) -> None:
    """Put a backup in the place of a farm file that is closed; raises `StoreError` when that cannot be."""
    from planner.store.backups import restore

    restore(backup, farm, local_now())
