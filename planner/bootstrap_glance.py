"""Keeps glances of farms in the folder of things that may be thrown away, and finds the one that still holds.

A glance belongs to one file in one state: path, size and time of its last change, and the same of the
journal beside it. It is plain text of numbers and words, and anything odd about it means that there is none.
"""

from __future__ import annotations

import json
import os
from contextlib import suppress
from datetime import date
from hashlib import sha256
from pathlib import Path
from typing import TYPE_CHECKING, Final

if TYPE_CHECKING:
    from planner.desk.glance import Glance

_FORMAT: Final = 1
_SUFFIX: Final = ".glance"
_MOST_BYTES: Final = 8_000_000
_MOST_KEPT: Final = 8
_NAME_LETTERS: Final = 32


class GlanceShelf:
    """The glances in one folder, written by one version of the program."""

    def __init__(self, folder: Path, version: str) -> None:
        """Keep where they lie; nothing is read yet."""
        self._folder, self._version = folder, version

    def find(self, farm: Path, today: date) -> Glance | None:
        """Return the glance of a farm file as it is now, None when there is none that still holds."""
        from planner.desk.glance import GOOD_FOR_DAYS, GlanceError, from_plain  # noqa: PLC0415 - after the first paint

        state = self._state(farm)
        plain = self._read(self._place(farm))
        if state is None or not isinstance(plain, list) or len(plain) != 2 or plain[0] != state:
            return None
        try:
            glance = from_plain(plain[1])
        except GlanceError:
            return None
        return glance if 0 <= (today - glance.taken_on).days <= GOOD_FOR_DAYS else None

    def keep(self, farm: Path, glance: Glance) -> None:
        """Keep a glance of a farm file as it is now; does nothing when the disk will not have it."""
        from planner.desk.glance import to_plain  # noqa: PLC0415 - after the first paint

        state = self._state(farm)
        if state is None:
            return
        place = self._place(farm)
        text = json.dumps([state, to_plain(glance)], separators=(",", ":"), allow_nan=False)
        if len(text) > _MOST_BYTES:
            return
        with suppress(OSError):
            self._folder.mkdir(parents=True, exist_ok=True)
            draft = place.with_suffix(f".{os.getpid()}")
            draft.write_text(text, encoding="utf-8")
            draft.replace(place)
            self._thin_out()

    def _thin_out(self) -> None:
        """Leave only the latest glances."""
        kept = sorted(self._folder.glob(f"*{_SUFFIX}"), key=lambda each: each.stat().st_mtime_ns)
        for each in kept[:-_MOST_KEPT]:
            each.unlink(missing_ok=True)

    def _place(self, farm: Path) -> Path:
        name = sha256(str(farm.absolute()).encode("utf-8", "surrogateescape")).hexdigest()
        return self._folder / f"{name[:_NAME_LETTERS]}{_SUFFIX}"

    def _state(self, farm: Path) -> list[object] | None:
        """Return what a glance must have been taken of to hold; None for a file that is not there."""
        try:
            one = farm.stat()
        except OSError:
            return None
        journal = farm.with_name(f"{farm.name}-wal")
        found: list[object] = [_FORMAT, self._version, str(farm.absolute()), one.st_size, one.st_mtime_ns]
        with suppress(OSError):
            beside = journal.stat()
            if beside.st_size:
                found += [beside.st_size, beside.st_mtime_ns]
        return found

    @staticmethod
    def _read(place: Path) -> object:
        try:
            if place.stat().st_size > _MOST_BYTES:
                return None
            return json.loads(place.read_text(encoding="utf-8"))
        except (OSError, ValueError, RecursionError):
            return None
