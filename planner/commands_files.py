"""Files that commands write: whole or not at all, and never over what somebody else made."""

from __future__ import annotations

import os
import tempfile
from collections.abc import Mapping
from pathlib import Path

from planner.cli_shared import WrongUsageError


def write_whole(path: Path, content: bytes) -> None:
    """Write a file beside its place and move it there, so that nothing is ever left half written."""
    handle, name = tempfile.mkstemp(dir=path.parent, prefix=f".{path.name[:40]}.", suffix=".part")
    beside = Path(name)
    try:
        with os.fdopen(handle, "wb") as file:
            file.write(content)
        mask = os.umask(0)
        os.umask(mask)
        beside.chmod(path.stat().st_mode if path.exists() else 0o666 & ~mask)
        beside.replace(path)
    finally:
        beside.unlink(missing_ok=True)


def write_new(contents: Mapping[Path, bytes]) -> None:
    """Write new files, all of them; raises `WrongUsageError` before the first when one is there already."""
    for path in contents:
        if path.exists():
            raise WrongUsageError(f"{path} is there already. Choose another name, or move it away first.")
    for path, content in contents.items():
        write_whole(path, content)
