"""A band drawn over empty ground to choose every batch it touches, as a small machine: press, move, let go.

Works on days and on heights of the content, so that a band stays where it is while the lane is scrolled.
Must know nothing of Qt.
"""

from __future__ import annotations

from dataclasses import dataclass
from enum import Enum

from planner.desk.lanes.interaction import DRAG_PX
from planner.desk.lanes.rows_layout import RowsLayout
from planner.desk.lanes.time_scale import Span
from planner.farm.fields import Id


@dataclass(frozen=True, slots=True, kw_only=True)
class Corner:
    """A point of the lane: a day with parts of a day, and a height of the content [px]."""

    day: float
    y: float


@dataclass(frozen=True, slots=True, kw_only=True)
class Area:
    """What lies between two corners."""

    start: float
    end: float
    top: float
    bottom: float


class BandState(Enum):
    """Where a band stands."""

    IDLE = "idle"
    PRESSED = "pressed"
    DRAWN = "drawn"


class Band:
    """One band after the other; remembers what was chosen before it, to add to it or to go back."""

    def __init__(self) -> None:
        self.state = BandState.IDLE
        self.before: frozenset[Id] = frozenset()
        self.adding = False
        self._from = self._to = Corner(day=0.0, y=0.0)
        self._pressed_at = (0.0, 0.0)

    @property
    def active(self) -> bool:
        """Tell whether a band is being drawn."""
        return self.state is BandState.DRAWN

    @property
    def area(self) -> Area:
        """What the band lies over."""
        days, heights = sorted((self._from.day, self._to.day)), sorted((self._from.y, self._to.y))
        return Area(start=days[0], end=days[1], top=heights[0], bottom=heights[1])

    def press(self, corner: Corner, *, x: float, y: float, chosen: frozenset[Id], adding: bool) -> None:
        """Begin at a corner, `x` and `y` being its point on the screen."""
        self.state, self.before, self.adding = BandState.PRESSED, chosen, adding
        self._from = self._to = corner
        self._pressed_at = (x, y)

    def move(self, corner: Corner, *, x: float, y: float) -> bool:
        """Follow the pointer; tell whether there is a band by now."""
        if self.state is BandState.PRESSED:
            far = abs(x - self._pressed_at[0]) + abs(y - self._pressed_at[1])
            if far >= DRAG_PX:
                self.state = BandState.DRAWN
        self._to = corner
        return self.active

    def chosen(self, layout: RowsLayout) -> frozenset[Id]:
        """Return what is chosen while the band is where it is."""
        found = touched(layout, self.area)
        return self.before | found if self.adding else found

    def end(self) -> BandState:
        """Forget the band; return where it stood."""
        was, self.state = self.state, BandState.IDLE
        return was


def touched(layout: RowsLayout, area: Area) -> frozenset[Id]:
    """Return the batches of all bars that lie at least partly in an area."""
    found = set()
    for strip in layout.between(area.top, area.bottom):
        for bar in strip.row.seen(int(area.start // 1), int(area.end // 1) + 1) if strip.row else ():
            top, height = layout.bar_y(strip, bar)
            over = bar.start <= area.end and bar.end > area.start
            if over and top < area.bottom and top + height > area.top:
                found.add(bar.batch)
    return frozenset(found)


def in_sight(layout: RowsLayout, days: Span, *, top: float, height: float) -> frozenset[Id]:
    """Return the batches of all bars that are at least partly seen."""
    return touched(layout, Area(start=days.start, end=days.end, top=top, bottom=top + height))
