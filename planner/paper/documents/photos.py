"""Empty frames that photos are stuck into.

Must not know single documents.
"""

from __future__ import annotations

from typing import Final

from planner.paper.report import Drawing, DrawnRect

_GAP_MM: Final = 6.0
_EDGE_MM: Final = 0.5
"""Room for half a rule around the frames."""


def photo_frames(*, wide_mm: float, high_mm: float, says: str) -> Drawing:
    """Return two frames side by side."""
    pitch = wide_mm + _GAP_MM
    frames = tuple(
        DrawnRect(x_mm=_EDGE_MM + at * pitch, y_mm=_EDGE_MM, width_mm=wide_mm, height_mm=high_mm)
        for at in range(2)
    )
    return Drawing(
        width_mm=pitch + wide_mm + 2 * _EDGE_MM, height_mm=high_mm + 4 * _EDGE_MM, shapes=frames, says=says
    )
