"""Keeps pictures of the window in the folder of things that may be thrown away, and finds the one that holds.

A picture is of one farm file in one state (path, size and time of its last change, and the same of the
journal beside it), by one state of the figures, on one day, in one look, by one version of the program. All
of that is in the name of its file, so that a picture of anything else is simply not found.

Pictures are kept unpacked, though they are twenty times as large so: unpacking would take a start longer than
all else that is done here. The name is reckoned by the toolkit, for Python's own library is not there yet.
"""

from __future__ import annotations

import os
from contextlib import suppress
from datetime import date
from pathlib import Path
from typing import Final

from PySide6.QtCore import QCryptographicHash
from PySide6.QtGui import QPixmap

from planner.shipped import shipped_path

_FORMAT: Final = 3
_KIND: Final = "PPM"
_SUFFIX: Final = ".ppm"
_OLDER_SUFFIXES: Final = (".glance", ".png")
_MOST_BYTES: Final = 30_000_000
"""What is larger is neither kept nor read: a window over a screen of 3840 by 2160 points takes 25 million."""
_MOST_BYTES_KEPT: Final = 100_000_000
_MOST_KEPT: Final = 16
_NAME_LETTERS: Final = 40
_SAID_BY_SYSTEM: Final = ("LC_ALL", "LC_TIME", "LC_NUMERIC", "LANGUAGE", "LANG")


class GlanceShelf:
    """The pictures in one folder, taken by one version of the program."""

    def __init__(self, folder: Path, version: str) -> None:
        """Keep where they lie; nothing is read yet."""
        self._folder, self._version = folder, version

    def find(self, farm: Path, day: date, looks: str) -> QPixmap | None:
        """Return the picture of a farm file as it is now; None when there is none that holds."""
        place = self._place(farm, day, looks)
        if place is None or not _is_small(place):
            return None
        picture = QPixmap()
        # Told the format, or Qt would try every reader of pictures on a broken file.
        # The toolkit wants the format as text, whatever its types say.
        return picture if picture.load(str(place), _KIND) else None  # type: ignore[arg-type]

    def keep(self, farm: Path, day: date, looks: str, picture: QPixmap) -> None:
        """Keep a picture of a farm file as it is now; does nothing when the disk will not have it."""
        place = self._place(farm, day, looks)
        if place is None:
            return
        with suppress(OSError):
            self._folder.mkdir(parents=True, exist_ok=True)
            draft = place.with_suffix(f".{os.getpid()}")
            if picture.save(str(draft), _KIND) and _is_small(draft):
                draft.replace(place)
            draft.unlink(missing_ok=True)
            self._thin_out()

    def _thin_out(self) -> None:
        """Leave only the latest pictures, few enough and small enough together, and none of older kinds."""
        for suffix in _OLDER_SUFFIXES:
            for each in self._folder.glob(f"*{suffix}"):
                each.unlink(missing_ok=True)
        found = [(each.stat(), each) for each in self._folder.glob(f"*{_SUFFIX}")]
        found.sort(key=lambda each: each[0].st_mtime_ns, reverse=True)
        size = 0
        for at, (facts, each) in enumerate(found):
            size += facts.st_size
            if at >= _MOST_KEPT or size > _MOST_BYTES_KEPT:
                each.unlink(missing_ok=True)

    def _place(self, farm: Path, day: date, looks: str) -> Path | None:
        """Return where the picture lies, or would; None for a farm file that is not there."""
        state = _state(farm)
        if state is None:
            return None
        figures = _latest_change(shipped_path("resources", "catalogue"))
        said = [os.environ.get(name) for name in _SAID_BY_SYSTEM]
        what = repr((_FORMAT, self._version, state, figures, day.toordinal(), looks, said))
        digest = QCryptographicHash.hash(
            what.encode("utf-8", "surrogateescape"), QCryptographicHash.Algorithm.Sha256
        )
        return self._folder / f"{digest.data().hex()[:_NAME_LETTERS]}{_SUFFIX}"


def _is_small(place: Path) -> bool:
    try:
        return place.stat().st_size <= _MOST_BYTES
    except OSError:
        return False


def _latest_change(folder: str | Path) -> int:
    """Return when anything in a folder was changed last: the figures can be mended in place."""
    latest = 0
    with suppress(OSError):
        for each in os.scandir(folder):
            changed = _latest_change(each.path) if each.is_dir() else each.stat().st_mtime_ns
            latest = max(latest, changed)
    return latest


def _state(farm: Path) -> tuple[object, ...] | None:
    """Return what a picture must have been taken of to hold; None for a file that is not there."""
    path = farm.absolute()
    try:
        one = path.stat()
    except OSError:
        return None
    found: tuple[object, ...] = (str(path), one.st_size, one.st_mtime_ns)
    with suppress(OSError):
        beside = path.with_name(f"{path.name}-wal").stat()
        if beside.st_size:
            found += (beside.st_size, beside.st_mtime_ns)
    return found
