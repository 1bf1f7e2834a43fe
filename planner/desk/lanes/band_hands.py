"""A band drawn over one beds canvas: where its corners lie, what it touches, and its picture.

Must know nothing of what being chosen leads to.
"""

from __future__ import annotations

from PySide6.QtCore import QPointF

from planner.desk.lanes.banding import Band, BandState, Corner, in_sight
from planner.desk.lanes.canvases import BedsCanvas
from planner.farm.fields import Id


class BandHands:
    """Draws one band after the other."""

    def __init__(self, canvas: BedsCanvas) -> None:
        self._canvas = canvas
        self._band = Band()

    @property
    def pressed(self) -> bool:
        """Tell whether empty ground is pressed, moved over or not."""
        return self._band.state is not BandState.IDLE

    @property
    def active(self) -> bool:
        """Tell whether a band is being drawn."""
        return self._band.active

    @property
    def before(self) -> frozenset[Id]:
        """What was chosen before the band."""
        return self._band.before

    @property
    def adding(self) -> bool:
        """Tell whether the band adds to what was chosen before it."""
        return self._band.adding

    def _corner_at(self, at: QPointF) -> Corner:
        day = self._canvas.frame_state.scale.day_at(at.x())
        return Corner(day=day, y=at.y() + self._canvas.down_px)

    def press(self, at: QPointF, chosen: frozenset[Id], *, adding: bool) -> None:
        """Begin at a point; a band is drawn once the pointer has gone far enough."""
        self._band.press(self._corner_at(at), x=at.x(), y=at.y(), chosen=chosen, adding=adding)

    def follow(self, at: QPointF) -> frozenset[Id] | None:
        """Follow the pointer; return what is chosen, None while there is no band yet."""
        if not self._band.move(self._corner_at(at), x=at.x(), y=at.y()):
            return None
        self._canvas.set_band(self._band.area)
        return self._band.chosen(self._canvas.layout_now)

    def end(self) -> BandState:
        """Take the band away; return where it stood."""
        self._canvas.set_band(None)
        return self._band.end()

    def in_sight(self) -> frozenset[Id]:
        """Return every batch that is at least partly seen."""
        canvas, scale, rect = self._canvas, self._canvas.frame_state.scale, self._canvas.rect_f()
        days = scale.span(rect.width() - scale.left)
        return in_sight(canvas.layout_now, days, top=canvas.down_px, height=rect.height())
