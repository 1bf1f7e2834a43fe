"""What the desk remembers between two runs on this computer, each declared once with its type.

Nothing about a farm is kept here. Must know nothing of widgets.
"""

from __future__ import annotations

from pathlib import Path
from typing import Any, Final, NamedTuple

from PySide6.QtCore import QByteArray, QSettings

from planner.desk.shade import ShadeChoice

MOST_RECENT: Final = 8


class Setting(NamedTuple):
    """One remembered value: its key in the file, its type, and what holds before it is set."""

    key: str
    kind: type[Any]
    default: Any


SHADE: Final = Setting(key="look/shade", kind=str, default=ShadeChoice.SYSTEM.value)
RECENT: Final = Setting(key="files/recent", kind=list, default=[])
LANGUAGE: Final = Setting(key="look/language", kind=str, default="")
COPIES: Final = Setting(key="files/copies", kind=str, default="")
GEOMETRY: Final = Setting(key="window/geometry", kind=QByteArray, default=QByteArray())
ARRANGEMENT: Final = Setting(key="window/arrangement", kind=QByteArray, default=QByteArray())
PAPER: Final = Setting(key="print/paper", kind=str, default="A4")
CALENDAR_WEEKS: Final = Setting(key="print/weeks", kind=int, default=8)
LABEL_PAPER: Final = Setting(key="labels/paper", kind=str, default="A4")
LABEL_SHIFT: Final = Setting(key="labels/shift", kind=str, default="0x0")
TRAY_SHEET: Final = Setting(key="labels/tray_sheet", kind=str, default="")
RAFT_SHEET: Final = Setting(key="labels/raft_sheet", kind=str, default="")
"""Sheets of labels used last: count, size, margins and gaps in mm; empty is plain paper."""
MEALS: Final = Setting(key="fish/meals", kind=int, default=0)
SCOOP_G: Final = Setting(key="fish/scoop_g", kind=float, default=0.0)
INITIALS: Final = Setting(key="records/initials", kind=str, default="")
AREA_RULES: Final = ("fao", "uvi")
AREA_RULE: Final = Setting(key="balance/area_rule", kind=str, default="fao")
"""Whose feed-rate ratio a loop went by that was asked last; what a farm that is begun goes by."""
OPEN: Final = Setting(key="files/open", kind=list, default=[])
"""Farms that are open; one that is still named at a start was not closed properly."""

ALL: Final = (
    SHADE,
    LANGUAGE,
    RECENT,
    COPIES,
    GEOMETRY,
    ARRANGEMENT,
    PAPER,
    CALENDAR_WEEKS,
    LABEL_PAPER,
    LABEL_SHIFT,
    TRAY_SHEET,
    RAFT_SHEET,
    MEALS,
    SCOOP_G,
    INITIALS,
    AREA_RULE,
    OPEN,
)


def settings_file(path: Path) -> QSettings:
    """Return the settings kept in one INI file."""
    return QSettings(str(path), QSettings.Format.IniFormat)


class Memory:
    """Reads and writes the declared settings."""

    def __init__(self, store: QSettings) -> None:
        self._store = store

    def get(self, setting: Setting) -> Any:
        """Return a setting, or its default when the file has none or something of another kind."""
        found = self._store.value(setting.key, setting.default, type=setting.kind)
        return found if isinstance(found, setting.kind) else setting.default

    def put(self, setting: Setting, value: Any) -> None:
        """Keep a setting."""
        self._store.setValue(setting.key, value)

    def save(self) -> None:
        """Write everything to the file now."""
        self._store.sync()

    @property
    def shade(self) -> ShadeChoice:
        """The look the user asked for; the system's when the file holds nonsense."""
        try:
            return ShadeChoice(self.get(SHADE))
        except ValueError:
            return ShadeChoice.SYSTEM

    @property
    def area_rule(self) -> str:
        """Whose ratio tells what area the feed carries; FAO's when the file holds nonsense."""
        found = self.get(AREA_RULE)
        return found if found in AREA_RULES else str(AREA_RULE.default)

    @property
    def recent(self) -> tuple[Path, ...]:
        """Farms opened lately, the latest first."""
        return tuple(Path(text) for text in self.get(RECENT) if isinstance(text, str) and text)

    @property
    def latest(self) -> Path | None:
        """The farm opened last of those that are still there."""
        return next((each for each in self.recent if each.is_file()), None)

    def remember(self, path: Path) -> None:
        """Put a farm first among the recent ones."""
        others = [each for each in self.recent if each != path]
        self.put(RECENT, [str(each) for each in (path, *others)][:MOST_RECENT])

    def forget(self, path: Path) -> None:
        """Take a farm out of the recent ones."""
        self.put(RECENT, [str(each) for each in self.recent if each != path])
