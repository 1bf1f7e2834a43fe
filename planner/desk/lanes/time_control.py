"""Holds which days all lanes show, and lets a scroll bar, keys and wheel change them.

Must know nothing of what the lanes show.
"""

from __future__ import annotations

from typing import Final

from PySide6.QtCore import QObject, Signal
from PySide6.QtWidgets import QScrollBar

from planner.desk.lanes.time_scale import (
    FIRST_DAY,
    LAST_DAY,
    Span,
    TimeScale,
    fitting,
    narrower,
    wider,
)

MARGIN_DAYS: Final = 21
"""Free days shown before the first and after the last day of the plan."""

_FIRST_PX_PER_DAY: Final = 7.0
_LEAST_SEEN: Final = 0.1
_LEAD: Final = 0.25
_DAYS_A_CLICK: Final = 7


class TimeControl(QObject):
    """The days that are shown: origin, zoom and how wide the lanes are."""

    changed = Signal()

    def __init__(self, bar: QScrollBar, parent: QObject) -> None:
        super().__init__(parent)
        self._bar = bar
        self._start, self._end = FIRST_DAY, FIRST_DAY + 1
        self._width = 1.0
        self._wanted: int | None = None
        self._syncing = False
        self.scale = TimeScale(origin=float(self._start), px_per_day=_FIRST_PX_PER_DAY)
        bar.valueChanged.connect(self._bar_moved)

    @property
    def span(self) -> Span:
        """The days that are at least partly seen."""
        return self.scale.span(self._width)

    @property
    def middle_x(self) -> float:
        """The x of the middle of the lanes."""
        return self.scale.left + self._width / 2

    def set_bounds(self, start: int, end: int) -> None:
        """Say which days there is something to see on; the view stays where it is if it may."""
        self._start, self._end = start, max(end, start + 1)
        self._set(self.scale)

    def set_room(self, left: float, width: float) -> None:
        """Say where the lanes begin and how wide they are [px]."""
        self._width = max(width, 1.0)
        if self._wanted is None:
            self._set(self.scale.with_left(left))
        else:
            self.scale = self.scale.with_left(left)
            self.go_to(self._wanted)

    def scroll_px(self, pixels: int) -> None:
        """Show later days (or earlier ones, below 0)."""
        self._set(self.scale.scrolled(pixels))

    def go_to(self, day: int) -> None:
        """Show a day, a quarter from the left; it stays there while the room changes."""
        lead = self._width * _LEAD / self.scale.px_per_day
        self._set(self._at(day - lead))
        self._wanted = day

    def show_days(self, start: int, end: int) -> None:
        """Scroll no further than needed to show the days, the first of them if not all fit."""
        shown = self.span
        if end > shown.end:
            self._set(self._at(end - self._width / self.scale.px_per_day))
        if start < self.scale.day_at(self.scale.left):
            self._set(self._at(start))

    def to_start(self) -> None:
        """Show the beginning of the plan."""
        self._set(self._at(self._start - MARGIN_DAYS))

    def to_end(self) -> None:
        """Show the end of the plan."""
        self._set(self._at(self._end + MARGIN_DAYS - self._width / self.scale.px_per_day))

    def page(self, pages: float) -> None:
        """Scroll by so many widths of the lanes."""
        self.scroll_px(round(self._width * pages))

    def zoom(self, *, closer: bool, around_x: float | None = None) -> None:
        """Make days one step wider or narrower around an x, by default the middle."""
        step = wider if closer else narrower
        self.set_zoom(step(self.scale.px_per_day), around_x=around_x)

    def set_zoom(self, px_per_day: float, *, around_x: float | None = None) -> None:
        """Make days so wide [px] around an x, by default the middle."""
        around = self.middle_x if around_x is None else around_x
        self._set(self.scale.zoomed(px_per_day, around_x=around), kept=True)

    def fit(self) -> None:
        """Show the whole plan."""
        days = self._end - self._start
        zoomed = self.scale.zoomed(fitting(days, self._width), around_x=self.scale.left)
        self._set(TimeScale(origin=self._start, px_per_day=zoomed.px_per_day, left=zoomed.left))

    def _at(self, origin: float) -> TimeScale:
        """Return the scale with another day at the left, on a whole pixel from where it was."""
        pixels = round((origin - self.scale.origin) * self.scale.px_per_day)
        return self.scale.scrolled(pixels)

    def _set(self, scale: TimeScale, *, kept: bool = False) -> None:
        scale = self._within(scale)
        self._wanted = None
        if kept or scale != self.scale:
            self.scale = scale
        self._sync()
        self.changed.emit()

    def _within(self, scale: TimeScale) -> TimeScale:
        """Return the scale kept so that some of the plan stays in sight."""
        days = self._width / scale.px_per_day
        low = max(self._start - days * (1 - _LEAST_SEEN), FIRST_DAY)
        high = min(self._end - days * _LEAST_SEEN, LAST_DAY - days)
        if scale.origin < low:
            return TimeScale(origin=low, px_per_day=scale.px_per_day, left=scale.left)
        if scale.origin > max(high, low):
            return TimeScale(origin=max(high, low), px_per_day=scale.px_per_day, left=scale.left)
        return scale

    def _sync(self) -> None:
        """Set the scroll bar to what is seen; it reaches further when the view does."""
        px = self.scale.px_per_day
        value = round((self.scale.origin - self._start) * px)
        last = round((self._end - self._start + MARGIN_DAYS) * px - self._width)
        self._syncing = True
        self._bar.setPageStep(max(1, round(self._width)))
        self._bar.setSingleStep(max(1, round(px * _DAYS_A_CLICK)))
        self._bar.setRange(min(value, round(-MARGIN_DAYS * px)), max(value, last))
        self._bar.setValue(value)
        self._syncing = False

    def _bar_moved(self, value: int) -> None:
        if not self._syncing:
            self._set(self._at(self._start + value / self.scale.px_per_day))
