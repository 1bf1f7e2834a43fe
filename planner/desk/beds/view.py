"""The bed map on the screen: scrolls, zooms, knows the hole under the pointer, moves plants to other holes.

What a move does to the farm is asked of a `Mover`; must know nothing of storage.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import Final

from PySide6.QtCore import QPoint, QPointF, QRectF, QSize, Qt, Signal
from PySide6.QtGui import (
    QFocusEvent,
    QKeyEvent,
    QMouseEvent,
    QPainter,
    QPaintEvent,
    QResizeEvent,
    QWheelEvent,
)
from PySide6.QtWidgets import QAbstractScrollArea, QFrame, QWidget

from planner.desk.beds.asked import span_facts
from planner.desk.beds.holding import Held, Holding, MapMover
from planner.desk.beds.layout import MapLayout, Sizes, fitting_scale, laid_out
from planner.desk.beds.map_keys import press_key
from planner.desk.beds.marks import Marks, paint_marks
from planner.desk.beds.painting import MapLook, paint_map
from planner.desk.beds.stays import Span, Stays
from planner.desk.beds.walking import Spot, first_spot
from planner.desk.beds.words import MapShow, map_help, place_words, span_words
from planner.desk.lanes.interaction import DRAG_PX
from planner.desk.lanes.kit import Kit
from planner.desk.lanes.pointer_label import PointerLabel
from planner.desk.pages import Fact
from planner.desk.places_words import run_words
from planner.desk.say import tr
from planner.desk.theme import Theme
from planner.desk.why.drawn import DrawnAsking
from planner.farm.crops import Placement
from planner.farm.fields import NO_ID, Id
from planner.farm.site import Bed

_ZOOM: Final = 1.25
_WHEEL_CLICK: Final = 120
_MOST_PX_PER_M: Final = 600.0
_LEAST_PX_PER_M: Final = 2.0
_WIDTH_SLACK: Final = 4


class MapView(QAbstractScrollArea):
    """The map; `chosen` carries a batch or, for a free hole, its bed."""

    chosen = Signal(str)
    opened = Signal(str)
    cursor_moved = Signal(str)
    day_wanted = Signal(int)
    scaled = Signal(float)

    def __init__(self, theme: Theme, mover: MapMover, parent: QWidget) -> None:
        super().__init__(parent)
        self._theme = theme
        self._kit = Kit(theme, self.font())
        self._stays: Stays | None = None
        self._beds: tuple[Bed, ...] = ()
        self._colours: Mapping[str, int] = {}
        self.day, self.show_what = 0, MapShow.STANDS
        self._px_per_m = 0.0
        self.layout_now: MapLayout = laid_out((), Sizes(width=1, line=1, px_per_m=1))
        self.spot: Spot | None = None
        self._picked: Id = NO_ID
        self._pressed: QPointF | None = None
        self._hold = Holding(mover)
        self._own_scale = False
        self.holes_painted = 0
        self.label = PointerLabel(self)
        self.label.set_theme(theme)
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setAccessibleName(tr("Bed map"))
        self.viewport().setMouseTracking(True)
        DrawnAsking(self)

    # ---- what is shown

    def show_stays(self, stays: Stays, beds: Sequence[Bed], colours: Mapping[str, int]) -> None:
        """Show another farm, or other beds of it; a scale that was chosen stays."""
        self.cancel()
        self._stays, self._colours = stays, colours
        fresh = tuple(beds) != self._beds
        self._beds = tuple(beds)
        if fresh and not self._own_scale:
            self._px_per_m = 0.0
        self._lay_out()
        if self.spot is not None and self.layout_now.plot(self.spot.bed, self.spot.unit) is None:
            self.spot = None
        self._describe()

    def show_day(self, day: int) -> None:
        """Show another day of the ruler."""
        if day != self.day:
            self.day = day
            self.cancel()
            self._describe()
            self.viewport().update()

    def show_as(self, show: MapShow) -> None:
        """Look at the map in another way."""
        self.show_what = show
        self.viewport().update()

    def set_picked(self, batch: Id) -> None:
        """Mark the holes of a batch."""
        if batch != self._picked:
            self._picked = batch
            self.viewport().update()

    def wear(self, theme: Theme) -> None:
        """Wear the colours of a theme."""
        self._theme = theme
        self._kit = Kit(theme, self.font())
        self.label.set_theme(theme)
        self.viewport().update()

    @property
    def px_per_m(self) -> float:
        """The scale [px/m]."""
        return self._px_per_m

    def zoom(self, by: float) -> None:
        """Draw larger or smaller."""
        self._own_scale = True
        self._px_per_m = min(max(self._px_per_m * by, _LEAST_PX_PER_M), _MOST_PX_PER_M)
        self._lay_out()
        self._see_cursor()

    def zoom_in(self) -> None:
        """Draw larger."""
        self.zoom(_ZOOM)

    def zoom_out(self) -> None:
        """Draw smaller."""
        self.zoom(1 / _ZOOM)

    def fit(self) -> None:
        """Draw at the scale at which holes can be read and everything fits sideways, where both can be."""
        self._own_scale, self._px_per_m = False, 0.0
        self._lay_out()

    def _lay_out(self) -> None:
        width = self.viewport().width() - _WIDTH_SLACK
        if not self._own_scale:
            self._px_per_m = fitting_scale(self._beds, width)
        sizes = Sizes(width=width, line=self._kit.line_px, px_per_m=self._px_per_m)
        self.layout_now = laid_out(self._beds, sizes)
        for bar, whole, page in (
            (self.horizontalScrollBar(), self.layout_now.width, self.viewport().width()),
            (self.verticalScrollBar(), self.layout_now.height, self.viewport().height()),
        ):
            bar.setPageStep(page)
            bar.setSingleStep(round(self._kit.line_px))
            bar.setRange(0, max(round(whole) - page, 0))
        self.scaled.emit(self._px_per_m if self._beds else 0.0)
        self.viewport().update()

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._lay_out()

    def sizeHint(self) -> QSize:
        return QSize(self._theme.metrics.side_width * 2, self._theme.metrics.side_width)

    # ---- looking things up

    def _at(self, at: QPointF) -> Spot | None:
        found = self.layout_now.at(
            at.x() + self.horizontalScrollBar().value(), at.y() + self.verticalScrollBar().value()
        )
        return None if found is None else Spot(found[0].bed.id, found[0].unit, found[1])

    def span_of(self, spot: Spot) -> Span | None:
        """Return what holds of a place on the day shown."""
        plot = self.layout_now.plot(spot.bed, spot.unit)
        if plot is None or self._stays is None:
            return None
        return self._stays.span_at(plot.bed, spot.unit, spot.place, self.day)

    def facts_at(self, point: QPoint | None) -> tuple[Fact, ...]:
        """Return what can be asked of the hole at a point of the viewport, or of that under the cursor."""
        spot = self.spot if point is None else self._at(QPointF(point))
        span = self.span_of(spot) if spot is not None else None
        if span is None or self._stays is None:
            return ()
        return span_facts(self._stays, span, self.day)

    def words_of(self, spot: Spot) -> str:
        """Return a place and all that is known of it on the day shown."""
        span, plot = self.span_of(spot), self.layout_now.plot(spot.bed, spot.unit)
        if span is None or plot is None or self._stays is None:
            return ""
        where = place_words(plot.bed, spot.unit, spot.place)
        return f"{where} · {span_words(self._stays, span, self.day)}"

    def _describe(self) -> None:
        said = self.words_of(self.spot) if self.spot is not None else ""
        self.setAccessibleDescription(f"{said} {map_help()}".strip())
        self.cursor_moved.emit(said)

    def point_of(self, spot: Spot) -> QPointF:
        """Return the middle of a hole within the viewport."""
        plot = self.layout_now.plot(spot.bed, spot.unit)
        if plot is None:
            return QPointF()
        x, y = plot.corner(spot.place)
        half = plot.pitch / 2
        shift = QPointF(self.horizontalScrollBar().value(), self.verticalScrollBar().value())
        return QPointF(x + half, y + half) - shift

    # ---- choosing

    def go(self, spot: Spot) -> None:
        """Move the cursor to a hole and see it."""
        self.spot = spot
        self._see_cursor()
        self._describe()
        self.viewport().update()

    def choose(self, spot: Spot) -> None:
        """Move the cursor to a hole and choose what stands there, or its bed."""
        self.go(spot)
        span = self.span_of(spot)
        if span is not None:
            self.chosen.emit(span.now.run.batch if span.now is not None else spot.bed)

    def _see_cursor(self) -> None:
        plot = self.layout_now.plot(self.spot.bed, self.spot.unit) if self.spot else None
        if plot is None or self.spot is None:
            return
        x, y = plot.corner(self.spot.place)
        for bar, at, page in (
            (self.horizontalScrollBar(), x, self.viewport().width()),
            (self.verticalScrollBar(), y, self.viewport().height()),
        ):
            if at < bar.value():
                bar.setValue(round(at - plot.pitch))
            elif at + plot.pitch > bar.value() + page:
                bar.setValue(round(at + 2 * plot.pitch - page))

    # ---- moving plants

    @property
    def holding(self) -> Held | None:
        """The plants that are held, None when none are."""
        return self._hold.held

    def carry(self, spot: Spot | None, at: QPointF) -> None:
        """Hold the plants over a hole, and say beside a point what would come of it."""
        plot = self.layout_now.plot(spot.bed, spot.unit) if spot is not None else None
        if spot is None or plot is None or self._hold.held is None:
            return
        self._hold.carry(spot, plot.bed.places_per_unit)
        held = self._hold.held
        words = self._going_words(held.would) if held.allowed else held.reason
        self.label.show_at(words, self.viewport().mapTo(self, at.toPoint()), allowed=held.allowed)
        self.setAccessibleDescription(words)
        self.viewport().update()

    def _going_words(self, would: tuple[Placement, ...]) -> str:
        plots = ((run, self.layout_now.plot(run.bed, run.unit)) for run in would)
        return "; ".join(run_words(run, plot.bed) for run, plot in plots if plot is not None)

    def put_down(self) -> None:
        """Leave the plants where they are held, as one act; where they may not be, nothing happens."""
        self.label.hide()
        self._hold.put_down()
        self.viewport().update()

    def cancel(self) -> bool:
        """Leave the plants where they were; tells whether any were held."""
        self._pressed = None
        self.label.hide()
        was = self._hold.cancel()
        self.viewport().update()
        return was

    # ---- mouse

    def mousePressEvent(self, event: QMouseEvent) -> None:
        spot = self._at(event.position())
        if event.button() != Qt.MouseButton.LeftButton or spot is None:
            return
        self._pressed = event.position()
        self.choose(spot)

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        spot = self._at(event.position())
        if not event.buttons() & Qt.MouseButton.LeftButton:
            self.viewport().setToolTip(self.words_of(spot) if spot is not None else "")
            return
        if self._hold.held is None and self._pressed is not None:
            far = (event.position() - self._pressed).manhattanLength() >= DRAG_PX
            if far:
                self.take_up()
        self.carry(spot, event.position())

    def take_up(self) -> bool:
        """Take up the plants under the cursor; tell whether there are any that may be."""
        span = self.span_of(self.spot) if self.spot is not None else None
        return span is not None and self.spot is not None and self._hold.take_up(span, self.spot)

    def mouseReleaseEvent(self, event: QMouseEvent) -> None:
        if event.button() == Qt.MouseButton.LeftButton:
            self._pressed = None
            if self._hold.held is not None:
                self.put_down()

    def mouseDoubleClickEvent(self, event: QMouseEvent) -> None:
        spot = self._at(event.position())
        span = self.span_of(spot) if spot is not None else None
        if span is not None and span.now is not None:
            self.opened.emit(span.now.run.batch)

    def wheelEvent(self, event: QWheelEvent) -> None:
        if event.modifiers() & Qt.KeyboardModifier.ControlModifier:
            self.zoom(_ZOOM ** (event.angleDelta().y() / _WHEEL_CLICK))
            event.accept()
            return
        super().wheelEvent(event)

    # ---- keys

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Let a key act, or pass it on."""
        if not press_key(self, event):
            super().keyPressEvent(event)

    def focusInEvent(self, event: QFocusEvent) -> None:
        super().focusInEvent(event)
        if self.spot is None:
            spot = first_spot(self.layout_now)
            if spot is not None:
                self.go(spot)
        self.viewport().update()

    def focusOutEvent(self, event: QFocusEvent) -> None:
        super().focusOutEvent(event)
        self.viewport().update()

    # ---- painting

    def paintEvent(self, event: QPaintEvent) -> None:  # noqa: ARG002
        painter = QPainter(self.viewport())
        painter.setFont(self.font())
        part = QRectF(self.viewport().rect())
        across, down = self.horizontalScrollBar().value(), self.verticalScrollBar().value()
        painter.translate(-across, -down)
        part.translate(across, down)
        if self._stays is None or not self._beds:
            painter.fillRect(part, self._theme.ground)
            painter.setPen(self._theme.muted)
            words = tr("No beds yet. Add one in the menu Set-up, and every hole of it is drawn here.")
            painter.drawText(part, int(Qt.AlignmentFlag.AlignCenter | Qt.TextFlag.TextWordWrap), words)
        else:
            look = MapLook(stays=self._stays, day=self.day, show=self.show_what, colours=self._colours)
            self.holes_painted = paint_map(painter, part, self.layout_now, look, self._kit)
            self._paint_marks(painter, part)
        painter.end()

    def _paint_marks(self, painter: QPainter, part: QRectF) -> None:
        assert self._stays is not None
        marks = Marks(
            picked=self._picked, held=self._hold.held, spot=self.spot, focused=self.hasFocus(), day=self.day
        )
        paint_marks(painter, part, self.layout_now, self._stays, marks, self._theme)
