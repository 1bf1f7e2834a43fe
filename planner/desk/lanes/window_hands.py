"""What hands do with the window in which a batch is picked: take it by the right edge of its bar, or by keys.

Turns mouse and keys into a `Stretch` and signals; must know nothing of painting or storage.
"""

from __future__ import annotations

from PySide6.QtCore import QObject, QPointF, Signal

from planner.desk.lanes import many_words, words
from planner.desk.lanes.canvases import BedsCanvas, Held
from planner.desk.lanes.interaction import Mover, Step
from planner.desk.lanes.scene import Bar
from planner.desk.lanes.scene_index import SceneIndex, Spot
from planner.desk.lanes.stretching import Stretch, on_handle, stretchable, stretched_by


class WindowHands(QObject):
    """Stretches windows of picking over one beds canvas."""

    balance_previewed = Signal(object)
    label_wanted = Signal(str, QPointF, bool)

    def __init__(self, canvas: BedsCanvas, mover: Mover, parent: QObject) -> None:
        super().__init__(parent)
        self._canvas, self._mover = canvas, mover
        self._stretch = Stretch(mover)

    @property
    def pressed(self) -> bool:
        """Tell whether a window is in the hand."""
        return self._stretch.pressed

    @property
    def active(self) -> bool:
        """Tell whether a window is being stretched."""
        return self._stretch.active

    def over_handle(self, spot: Spot | None, at: QPointF) -> bool:
        """Tell whether a point would take a bar by its window."""
        box = self._canvas.rect_of(spot) if spot is not None else None
        if spot is None or box is None:
            return False
        return not spot.bar.locked and on_handle(spot.bar, at.x(), box.left(), box.right())

    def press(self, spot: Spot, at: QPointF) -> None:
        """Take the window of a bar by its edge."""
        self._stretch.press(spot.bar, x=at.x(), day=self._day_at(at))

    def _day_at(self, at: QPointF) -> float:
        return self._canvas.frame_state.scale.day_at(at.x())

    def follow(self, at: QPointF, index: SceneIndex) -> None:
        """Follow the pointer with the edge."""
        bar = self._stretch.bar
        if bar is None:
            return
        changed, preview = self._stretch.move(x=at.x(), day=self._day_at(at)), self._stretch.preview
        if preview is None:
            return
        if changed:
            held = Held(
                ghosts=tuple(spot for spot in index.spots(bar.batch) if spot.bar.phase is bar.phase),
                bars=tuple(each for each in preview.bars if each.phase is bar.phase) or (bar,),
                allowed=preview.allowed,
            )
            self._canvas.set_held(held)
            self.balance_previewed.emit(preview.balance if preview.allowed else None)
        reason = preview.reason or words.cannot_go()
        said = self._said(bar, preview.bars) if preview.allowed else reason
        self.label_wanted.emit(said, at, preview.allowed)

    def _said(self, bar: Bar, bars: tuple[Bar, ...]) -> str:
        now = next((each for each in bars if each.run == bar.run), bar)
        return many_words.picked_until(now, self._stretch.days)

    def release(self) -> bool:
        """Let go; return whether the window was changed."""
        return self._stretch.release()

    def cancel(self) -> bool:
        """Leave the window as it was; return whether it was being stretched."""
        return self._stretch.cancel()

    def stretch_by(self, bars: tuple[Bar, ...], days: int) -> Step:
        """Pick a batch so many days longer, if one of its bars has a window and it may be."""
        bar = next((each for each in bars if stretchable(each)), None)
        if bar is None:
            return Step(moved=False, reason=many_words.no_window(bars[0]))
        return stretched_by(self._mover, bar, days)
