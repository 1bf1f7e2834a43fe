"""What the keys do in the lanes: go from bar to bar, move them, scroll, zoom, fold.

The keyboard twin of everything the mouse can do; must know nothing of painting or storage.
"""

from __future__ import annotations

from collections.abc import Callable
from typing import Final

from PySide6.QtCore import QObject, QPoint, Qt, Signal
from PySide6.QtGui import QKeyEvent

from planner.desk.lanes.bed_hands import BedHands
from planner.desk.lanes.canvases import BedsCanvas
from planner.desk.lanes.scene_index import Way
from planner.desk.lanes.time_control import TimeControl
from planner.desk.lanes.time_scale import DAYS_PER_WEEK

_SHIFT: Final = Qt.KeyboardModifier.ShiftModifier
_CONTROL: Final = Qt.KeyboardModifier.ControlModifier
_ALT: Final = Qt.KeyboardModifier.AltModifier
_WAYS: Final = {
    Qt.Key.Key_Left: Way.EARLIER,
    Qt.Key.Key_Right: Way.LATER,
    Qt.Key.Key_Up: Way.UP,
    Qt.Key.Key_Down: Way.DOWN,
}
_LONGER: Final = {Qt.Key.Key_Plus: 1, Qt.Key.Key_Equal: 1, Qt.Key.Key_Minus: -1}
_BY_WEEKS: Final = {Qt.Key.Key_PageUp: -1, Qt.Key.Key_PageDown: 1}
"""Besides Shift and arrows, which some systems keep to themselves for changing from desktop to desktop."""
_FORWARD: Final = (Way.LATER, Way.DOWN)
_SIDEWAYS: Final = (Way.EARLIER, Way.LATER)


class LaneKeys(QObject):
    """Turns keys into moves of the cursor, the batch, and the days that are shown."""

    menu_wanted = Signal(QPoint)

    def __init__(self, beds: BedsCanvas, hands: BedHands, time: TimeControl, parent: QObject) -> None:
        super().__init__(parent)
        self._beds = beds
        self._hands = hands
        self._time = time

    def press(self, event: QKeyEvent) -> bool:
        """Do what a key stands for; return whether it stands for anything."""
        key, held = Qt.Key(event.key()), event.modifiers()
        if key == Qt.Key.Key_Escape:
            return self._hands.cancel()
        if self._hands.dragging:
            return True
        if key in _WAYS:
            self._arrow(_WAYS[key], held)
            return True
        if key == Qt.Key.Key_A and held & _CONTROL:
            self._hands.choose_in_sight()
            return True
        if held & _ALT and self._with_alt(key, by_days=bool(held & _CONTROL)):
            return True
        act = self._act_of(key)
        if act is not None:
            act()
        return act is not None

    def _with_alt(self, key: Qt.Key, *, by_days: bool) -> bool:
        """Move the current batch by a week, or pick it longer or shorter; tell if the key does."""
        if key in _BY_WEEKS:
            self._hands.move_by_days(_BY_WEEKS[key] * DAYS_PER_WEEK)
            self.show_current()
        elif key in _LONGER:
            self._stretch(_LONGER[key], by_days=by_days)
        return key in _BY_WEEKS or key in _LONGER

    def _act_of(self, key: Qt.Key) -> Callable[[], None] | None:
        """Return what a key does; looked up anew, since a kept table of own methods would hold itself."""
        acts: dict[Qt.Key, Callable[[], None]] = {
            Qt.Key.Key_Plus: self.zoom_in,
            Qt.Key.Key_Equal: self.zoom_in,
            Qt.Key.Key_Minus: self.zoom_out,
            Qt.Key.Key_0: self._time.fit,
            Qt.Key.Key_Home: self._time.to_start,
            Qt.Key.Key_End: self._time.to_end,
            Qt.Key.Key_PageUp: self._page_up,
            Qt.Key.Key_PageDown: self._page_down,
            Qt.Key.Key_Return: self._hands.open_current,
            Qt.Key.Key_Enter: self._hands.open_current,
            Qt.Key.Key_Menu: self._ask_menu,
        }
        return acts.get(key)

    def _arrow(self, way: Way, held: Qt.KeyboardModifier) -> None:
        step = 1 if way in _FORWARD else -1
        if held & _ALT:
            self._move(way, step, by_weeks=bool(held & _SHIFT))
        elif held & _CONTROL:
            self._scroll_or_fold(way, step)
            return
        else:
            shown = self._time.span
            self._hands.go(way, (shown.start + shown.end) // 2, adding=bool(held & _SHIFT))
        self.show_current()

    def _move(self, way: Way, step: int, *, by_weeks: bool) -> None:
        if way not in _SIDEWAYS:
            self._hands.move_by_units(step)
        else:
            self._hands.move_by_days(step * DAYS_PER_WEEK if by_weeks else step)

    def _stretch(self, step: int, *, by_days: bool) -> None:
        """Pick the current batch longer or shorter, by a week, or by a day."""
        self._hands.stretch_by_days(step if by_days else step * DAYS_PER_WEEK)
        self.show_current()

    def _scroll_or_fold(self, way: Way, step: int) -> None:
        if way in _SIDEWAYS:
            self._time.page(step / 2)
        elif self._hands.cursor is not None:
            self._hands.fold(self._hands.cursor.row.bed, folded=way is Way.UP)

    def show_current(self) -> None:
        """Scroll no further than needed to see the current bar."""
        spot = self._hands.cursor
        if spot is None:
            return
        self._time.show_days(spot.bar.start, spot.bar.end)
        strip = self._beds.layout_now.strip_of(spot.row)
        if strip is not None:
            bar = self._beds.verticalScrollBar()
            low, high = round(strip.bottom) - self._beds.viewport().height(), round(strip.top)
            bar.setValue(min(max(bar.value(), low), high))

    def zoom_in(self) -> None:
        """Make days wider, around the current bar if it is in sight."""
        self._time.zoom(closer=True, around_x=self._zoom_x())

    def zoom_out(self) -> None:
        """Make days narrower, around the current bar if it is in sight."""
        self._time.zoom(closer=False, around_x=self._zoom_x())

    def _zoom_x(self) -> float | None:
        spot = self._hands.cursor
        box = self._beds.rect_of(spot) if spot is not None else None
        left = self._beds.frame_state.scale.left
        if box is None or not self._beds.rect_f().adjusted(left, 0, 0, 0).intersects(box):
            return None
        return max(box.left(), left)

    def _page_up(self) -> None:
        bar = self._beds.verticalScrollBar()
        bar.setValue(bar.value() - bar.pageStep())

    def _page_down(self) -> None:
        bar = self._beds.verticalScrollBar()
        bar.setValue(bar.value() + bar.pageStep())

    def _ask_menu(self) -> None:
        spot = self._hands.cursor
        box = self._beds.rect_of(spot) if spot is not None else None
        at = box.bottomLeft().toPoint() if box is not None else QPoint(0, 0)
        self.menu_wanted.emit(self._beds.viewport().mapToGlobal(at))
