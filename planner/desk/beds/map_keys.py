"""What the keys do on the bed map: go from hole to hole, hold plants and put them down, zoom, change the day.

The keyboard twin of everything the mouse can do; must know nothing of painting or storage.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

from PySide6.QtCore import Qt
from PySide6.QtGui import QKeyEvent

from planner.desk.beds.walking import Way, beside, first_spot
from planner.farm.farm import DAYS_PER_WEEK

if TYPE_CHECKING:
    from planner.desk.beds.view import MapView

_STEPS: Final[dict[int, Way]] = {
    Qt.Key.Key_Left: Way(-1, 0),
    Qt.Key.Key_Right: Way(1, 0),
    Qt.Key.Key_Up: Way(0, -1),
    Qt.Key.Key_Down: Way(0, 1),
}


def press_key(view: MapView, event: QKeyEvent) -> bool:
    """Do what a key stands for; return whether it stands for anything."""
    key, held = event.key(), event.modifiers()
    alt = bool(held & Qt.KeyboardModifier.AltModifier)
    if key in {Qt.Key.Key_PageUp, Qt.Key.Key_PageDown}:
        view.day_wanted.emit(DAYS_PER_WEEK if key == Qt.Key.Key_PageDown else -DAYS_PER_WEEK)
    elif key in {Qt.Key.Key_Left, Qt.Key.Key_Right} and alt:
        view.day_wanted.emit(1 if key == Qt.Key.Key_Right else -1)
    elif key in _STEPS:
        _step(view, _STEPS[key])
    else:
        return _act(view, key)
    return True


def _act(view: MapView, key: int) -> bool:
    if key == Qt.Key.Key_Escape:
        return view.cancel()
    if key in {Qt.Key.Key_Plus, Qt.Key.Key_Equal}:
        view.zoom_in()
    elif key == Qt.Key.Key_Minus:
        view.zoom_out()
    elif key == Qt.Key.Key_0:
        view.fit()
    elif key in {Qt.Key.Key_Space, Qt.Key.Key_Return, Qt.Key.Key_Enter}:
        _space(view, opens=key != Qt.Key.Key_Space)
    else:
        return False
    return True


def _space(view: MapView, *, opens: bool) -> None:
    if view.holding is not None:
        view.put_down()
    elif view.spot is not None and opens:
        span = view.span_of(view.spot)
        if span is not None and span.now is not None:
            view.opened.emit(span.now.run.batch)
    elif view.spot is not None and view.take_up():
        view.carry(view.spot, view.point_of(view.spot))


def _step(view: MapView, way: Way) -> None:
    spot = first_spot(view.layout_now)
    if view.spot is not None:
        spot = beside(view.layout_now, view.spot, way)
    if spot is None:
        return
    if view.holding is None:
        view.choose(spot)
        return
    view.go(spot)
    view.carry(spot, view.point_of(spot))
