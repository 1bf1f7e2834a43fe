"""Own entries of the catalogue between the page that shows them and files of text."""

from __future__ import annotations

from collections.abc import Sequence
from pathlib import Path
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from planner.farm.farm import OwnEntry


def write_entries(path: Path, entries: Sequence[OwnEntry]) -> None:
    """Write entries as text; raises `OSError`."""
    from planner.store.text import write_own_entries

    path.write_text(write_own_entries(entries), encoding="utf-8")


def read_entries(path: Path) -> tuple[OwnEntry, ...]:
    """Return the entries of a text; raises `FarmFaultError` and `OSError`."""
    from planner.store.text import read_own_entries_file

    return read_own_entries_file(path)
