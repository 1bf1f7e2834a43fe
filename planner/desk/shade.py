"""What the user may ask of the look. Stands alone, for it is read before the theme is."""

from __future__ import annotations

from enum import Enum


class ShadeChoice(Enum):
    """What the user asks for: one look for good, or that of the system."""

    SYSTEM = "system"
    LIGHT = "light"
    DARK = "dark"
