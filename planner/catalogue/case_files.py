"""Reads the tables of published cases that `verify` works through; what they mean is read elsewhere."""

from __future__ import annotations

from collections.abc import Mapping
from pathlib import Path
from typing import Final

from planner.catalogue.errors import CatalogueError
from planner.catalogue.reading import Table, read_tables
from planner.shipped import shipped_path

_FOLDER: Final = "verify"
_SYSTEMS: Final = "systems"
_SUFFIX: Final = ".toml"


def shipped_case_tables() -> Mapping[str, Table]:
    """Return the parsed files of cases that ship with the program, by area."""
    return case_tables(shipped_path("resources", _FOLDER))


def shipped_system_path(name: str) -> Path:
    """Return where the farm text of a whole-system case lies."""
    return shipped_path("resources", _FOLDER, _SYSTEMS, f"{name}{_SUFFIX}")


def case_tables(folder: Path) -> Mapping[str, Table]:
    """Return the parsed files of a folder by area, which is the name of the file.

    Raises:
        CatalogueError: there are none, or one cannot be parsed.
    """
    paths = sorted(folder.glob(f"*{_SUFFIX}"))
    if not paths:
        raise CatalogueError("has no cases", file=folder.name)
    return {path.stem: read_tables(path, file=f"{_FOLDER}/{path.name}") for path in paths}
