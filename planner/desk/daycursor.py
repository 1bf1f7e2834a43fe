"""A cursor that steps through the days of a chart by keys, and what every chart has that can be walked so.

Must know nothing of what is drawn.
"""

from __future__ import annotations

from bisect import bisect_left
from collections.abc import Sequence
from typing import Final

from PySide6.QtCore import QPoint, Qt
from PySide6.QtGui import QFocusEvent, QKeyEvent, QMouseEvent
from PySide6.QtWidgets import QWidget

from planner.desk.pages import Fact
from planner.desk.why.drawn import DrawnAsking

_PAGE: Final = 10
"""So many steps are a page."""


def stepped(key: int, at: int, *, last: int, page: int) -> int | None:
    """Return the place from 0 to `last` that a key leads to; None where it leads nowhere."""
    goals = {
        Qt.Key.Key_Left: at - 1,
        Qt.Key.Key_Right: at + 1,
        Qt.Key.Key_PageUp: at - page,
        Qt.Key.Key_PageDown: at + page,
        Qt.Key.Key_Home: 0,
        Qt.Key.Key_End: last,
    }
    goal = goals.get(Qt.Key(key))
    return None if goal is None or last < 0 else min(max(goal, 0), last)


class DayCursor:
    """Stands on one of some days, given as ordinals in order; nowhere when there are none."""

    def __init__(self) -> None:
        self._days: tuple[int, ...] = ()
        self._at = 0
        self._fresh = True

    @property
    def day(self) -> int | None:
        """The day it stands on."""
        return self._days[self._at] if self._days else None

    def show_days(self, days: Sequence[int], *, today: int | None) -> None:
        """Step through other days; it stays where it was as nearly as may be, and begins at today."""
        stood = self.day
        self._days = tuple(days)
        wished = today if self._fresh or stood is None else stood
        if self._days:
            self._fresh = False
            self.go_to(self._days[0] if wished is None else wished)

    def go_to(self, day: int) -> None:
        """Stand on the day nearest to one."""
        if not self._days:
            return
        at = bisect_left(self._days, day)
        near = [each for each in (at - 1, at) if 0 <= each < len(self._days)]
        self._at = min(near, key=lambda each: abs(self._days[each] - day))

    def step(self, key: int) -> bool:
        """Step as a key says; tells whether it is a key that steps."""
        goal = stepped(key, self._at, last=len(self._days) - 1, page=_PAGE)
        if goal is None:
            return False
        self._at = goal
        return True


class WalkedChart(QWidget):
    """A chart whose days are walked by keys or a click, and asked why of what is drawn on them."""

    def __init__(self, parent: QWidget | None) -> None:
        super().__init__(parent)
        self.cursor_day = DayCursor()
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        DrawnAsking(self)

    @property
    def day_stood_on(self) -> int | None:
        """The day to be drawn as the one stood on; none while the keys are elsewhere."""
        return self.cursor_day.day if self.hasFocus() else None

    def facts_at(self, point: QPoint | None) -> tuple[Fact, ...]:
        """Return what can be asked at a point; with None, where the cursor stands."""
        raise NotImplementedError

    def day_at(self, x: float) -> int | None:
        """Return the day that is drawn at a distance from the left, None when there is none."""
        raise NotImplementedError

    def speak(self) -> None:
        """Say what is shown, and what is on the day stood on."""
        raise NotImplementedError

    def go_to(self, x: float) -> None:
        """Stand on the day nearest to a distance from the left."""
        day = self.day_at(x)
        if day is not None:
            self.cursor_day.go_to(day)
            self.speak()
            self.update()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if not self.cursor_day.step(event.key()):
            super().keyPressEvent(event)
            return
        self.speak()
        self.update()

    def mousePressEvent(self, event: QMouseEvent) -> None:
        self.go_to(event.position().x())
        super().mousePressEvent(event)

    def focusInEvent(self, event: QFocusEvent) -> None:
        super().focusInEvent(event)
        self.update()

    def focusOutEvent(self, event: QFocusEvent) -> None:
        super().focusOutEvent(event)
        self.update()
