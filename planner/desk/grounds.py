"""The few colours, widths and the typeface that the very first paint is drawn in, and the theme after it.

Stands apart from the theme, which reads in far more of the toolkit than the first paint can wait for.
"""

from __future__ import annotations

from functools import cache
from typing import Final, NamedTuple

from planner.shipped import shipped_path

FAMILY: Final = "DejaVu Sans"
FONT_POINTS: Final = 10
FONT_FILE: Final = "DejaVuSans.ttf"
DUE_WIDTH: Final = 272
"""Width of the due list in device-independent pixels."""

SIDE_WIDTH: Final = 312
"""Width of the side panel in device-independent pixels."""


class Grounds(NamedTuple):
    """Grounds, lines and text of one look, as `#RRGGBB`."""

    ground: str
    panel: str
    field: str
    line: str
    faint_line: str
    text: str


LIGHT_GROUNDS: Final = Grounds(
    ground="#EEF2F0",
    panel="#F8FAF9",
    field="#FFFFFF",
    line="#B4C0BA",
    faint_line="#DCE4E0",
    text="#17211D",
)
DARK_GROUNDS: Final = Grounds(
    ground="#12181B",
    panel="#1A2226",
    field="#1F282D",
    line="#4B5A62",
    faint_line="#2E3A40",
    text="#E9EEEC",
)


@cache
def load_font(name: str = FONT_FILE) -> None:
    """Make a file of the shipped typeface known to Qt; one that cannot be read leaves the system's own."""
    from PySide6.QtGui import QFontDatabase

    QFontDatabase.addApplicationFont(str(shipped_path("resources", "fonts", name)))
