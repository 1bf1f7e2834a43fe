"""Where the rows of the beds lane lie above each other, folded or not, and which one is at a height.

Pure arithmetic on a scene; must know nothing of Qt.
"""

from __future__ import annotations

from array import array
from bisect import bisect_right
from collections.abc import Iterator
from dataclasses import dataclass, field
from typing import Final

from planner.desk.lanes.scene import Bar, Row, RowGroup, RowKey
from planner.farm.fields import Id

ROW_PAD: Final = 3.0
"""Free space above and below the bars of a row [px]."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Strip:
    """One heading (`row` is None) or one row, at its height in the lane [px]."""

    group: RowGroup
    row: Row | None
    top: float
    height: float

    @property
    def bottom(self) -> float:
        """Lower edge [px]."""
        return self.top + self.height


@dataclass(frozen=True, slots=True, kw_only=True)
class RowsLayout:
    """All strips from top to bottom."""

    line_px: float
    head_px: float
    strips: tuple[Strip, ...]
    tops: array[float] = field(repr=False)
    position_of: dict[RowKey, int] = field(repr=False)

    @property
    def height(self) -> float:
        """Height of everything [px]."""
        return self.strips[-1].bottom if self.strips else 0.0

    def position_at(self, y: float) -> int | None:
        """Return the position of the strip at a height, None outside."""
        position = bisect_right(self.tops, y) - 1
        return position if position >= 0 and y < self.height else None

    def strip_at(self, y: float) -> Strip | None:
        """Return the strip at a height, None outside."""
        position = self.position_at(y)
        return None if position is None else self.strips[position]

    def between(self, top: float, bottom: float) -> Iterator[Strip]:
        """Yield the strips that are at least partly between two heights."""
        position = max(bisect_right(self.tops, top) - 1, 0)
        while position < len(self.strips) and self.strips[position].top < bottom:
            yield self.strips[position]
            position += 1

    def strip_of(self, key: RowKey) -> Strip | None:
        """Return the strip of a row, None when it is folded away or unknown."""
        position = self.position_of.get(key)
        return None if position is None else self.strips[position]

    def bar_y(self, strip: Strip, bar: Bar) -> tuple[float, float]:
        """Return top and height of a bar in the lane [px]."""
        return strip.top + ROW_PAD + bar.top * self.line_px, bar.lines * self.line_px


def laid_out(
    groups: tuple[RowGroup, ...], *, folded: frozenset[Id], line_px: float, head_px: float
) -> RowsLayout:
    """Return the layout of the groups; of a folded one only the heading is left."""
    strips: list[Strip] = []
    at = 0.0
    for group in groups:
        strips.append(Strip(group=group, row=None, top=at, height=head_px))
        at += head_px
        for row in group.rows if group.bed not in folded else ():
            height = row.lines * line_px + 2 * ROW_PAD
            strips.append(Strip(group=group, row=row, top=at, height=height))
            at += height
    return RowsLayout(
        line_px=line_px,
        head_px=head_px,
        strips=tuple(strips),
        tops=array("d", (strip.top for strip in strips)),
        position_of={strip.row.key: at for at, strip in enumerate(strips) if strip.row is not None},
    )
