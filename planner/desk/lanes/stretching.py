"""Stretching the window in which a batch is picked, by its right edge: press, move, let go, or by keys.

Knows bars and a `Mover` that tries a window and carries it out; must know nothing of Qt or storage.
"""

from __future__ import annotations

from typing import Final

from planner.desk.lanes.interaction import DRAG_PX, Mover, Preview, Step
from planner.desk.lanes.scene import Bar
from planner.farm.crops import Stage

HANDLE_PX: Final = 7.0
"""So far inside its right edge a bar is taken by its window, not as a whole."""

LEAST_PX: Final = 28.0
"""Bars narrower than this are always taken as a whole."""


def stretchable(bar: Bar) -> bool:
    """Tell whether a bar has a window of picking, which may be stretched."""
    return any(segment.stage is Stage.PICKING for segment in bar.segments)


def on_handle(bar: Bar, x: float, left: float, right: float) -> bool:
    """Tell whether an x takes a bar, that is seen from `left` to `right`, by its window of picking."""
    return stretchable(bar) and right - left >= LEAST_PX and right - HANDLE_PX <= x <= right


class Stretch:
    """One stretch after the other of the window of a bar."""

    def __init__(self, mover: Mover) -> None:
        self._mover = mover
        self.bar: Bar | None = None
        self.days = 0
        self.preview: Preview | None = None
        self._from = (0.0, 0.0)

    @property
    def pressed(self) -> bool:
        """Tell whether a window is in the hand, moved or not."""
        return self.bar is not None

    @property
    def active(self) -> bool:
        """Tell whether a window is being stretched."""
        return self.preview is not None

    def press(self, bar: Bar, *, x: float, day: float) -> None:
        """Take the window of a bar by its edge."""
        self.cancel()
        self.bar, self._from = bar, (x, day)

    def move(self, *, x: float, day: float) -> bool:
        """Follow the pointer; return whether anything that is shown has changed."""
        if self.bar is None or not (self.active or abs(x - self._from[0]) >= DRAG_PX):
            return False
        days = round(day - self._from[1])
        if self.active and days == self.days:
            return False
        if not self.active:
            self._mover.begin(self.bar.batch)
        self.days = days
        self.preview = self._mover.stretch(self.bar.batch, days)
        return True

    def release(self) -> bool:
        """Let go; return whether the window was changed."""
        if self.preview is None or not self.preview.allowed or not self.days:
            self.cancel()
            return False
        self._forget()
        self._mover.commit()
        return True

    def cancel(self) -> bool:
        """Leave the window as it was; return whether it was being stretched."""
        was = self.active
        self._forget()
        if was:
            self._mover.cancel()
        return was

    def _forget(self) -> None:
        self.bar = self.preview = None
        self.days = 0


def stretched_by(mover: Mover, bar: Bar, days: int) -> Step:
    """Pick the batch of a bar so many days longer, if it may be."""
    mover.begin(bar.batch)
    found = mover.stretch(bar.batch, days)
    if found.allowed:
        mover.commit()
        return Step(moved=True)
    mover.cancel()
    return Step(moved=False, reason=found.reason)
