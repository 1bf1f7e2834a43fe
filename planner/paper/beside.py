"""Writes a file beside its place first, so that nothing is ever left half written, whoever breaks it off.

Knows no toolkit and no reports.
"""

from __future__ import annotations

import os
import stat
import tempfile
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import Final

from planner.paper.errors import PaperError

_NEW_FILE_MODE: Final = 0o666


@contextmanager
def beside(path: Path, *, ends_with: bytes) -> Iterator[Path]:
    """Give an empty file to write into; it is put in place when all went well and it ends as it must.

    Raises:
        PaperError: the path cannot be written.
    """
    if path.is_dir():
        raise PaperError(f"{path} is a folder; give the name of a file.")
    try:
        handle, name = tempfile.mkstemp(dir=path.parent, prefix=f".{path.name[:40]}.", suffix=".part")
        os.close(handle)
    except OSError as fault:
        raise PaperError(f"{path} could not be written: {fault.strerror}.") from fault
    part = Path(name)
    try:
        yield part
        if not part.read_bytes().rstrip().endswith(ends_with):
            raise PaperError(f"{path} could not be written to its end. Is there room on the disk?")
        part.chmod(_mode_of(path))
        part.replace(path)
    except OSError as fault:
        raise PaperError(f"{path} could not be written: {fault.strerror}.") from fault
    finally:
        part.unlink(missing_ok=True)


def _mode_of(path: Path) -> int:
    """Return the rights the file has, or those a new file gets from the user's mask."""
    if path.exists():
        return stat.S_IMODE(path.stat().st_mode)
    mask = os.umask(0)
    os.umask(mask)
    return _NEW_FILE_MODE & ~mask
