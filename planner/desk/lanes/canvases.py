"""The three lanes on the screen: what each shows, and what is laid over it while hands are at work.

Must know nothing of what a click or a drag leads to.
"""

from __future__ import annotations

from dataclasses import dataclass, replace

from PySide6.QtCore import QPoint, QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QPainter, QPen
from PySide6.QtWidgets import QWidget

from planner.desk.lanes import words
from planner.desk.lanes.balance_lane import BalanceLook, balance_height, paint_balance
from planner.desk.lanes.banding import Area
from planner.desk.lanes.bars import Shapes, gather, paint_shapes, view_of
from planner.desk.lanes.beds_lane import (
    BedsLook,
    bar_rect,
    paint_beds,
    paint_beds_shifted,
    paint_cursor,
    paint_ghost,
    paint_outline,
    time_rect,
)
from planner.desk.lanes.canvas import Canvas, Frame
from planner.desk.lanes.fish_lane import fish_height, paint_fish
from planner.desk.lanes.grid import anchor_hatches
from planner.desk.lanes.kit import Face, Kit
from planner.desk.lanes.packing import slot_in
from planner.desk.lanes.rows_layout import ROW_PAD, RowsLayout, laid_out
from planner.desk.lanes.scene import BalanceScene, Bar, FeedScene, RowGroup
from planner.desk.lanes.scene_index import SceneIndex, Spot, spot_at
from planner.farm.fields import Id

_FOCUS_WIDTH = 2.0
_NOTICE_PAD = 16.0
_BAND_VEIL = 0.14


def paint_notice(painter: QPainter, rect: QRectF, text: str, kit: Kit) -> None:
    """Say in the middle of an empty lane what will be there."""
    room = time_rect(rect, kit).adjusted(_NOTICE_PAD, 0, -_NOTICE_PAD, 0)
    width = min(kit.width(text, Face.PLAIN), room.width())
    box = QRectF(room.center().x() - width / 2, room.center().y() - kit.text_px, width + 1, 2 * kit.text_px)
    painter.fillRect(box.adjusted(-_NOTICE_PAD, 0, _NOTICE_PAD, 0), kit.theme.field)
    painter.setPen(kit.theme.muted)
    kit.write(painter, box, text)


class FishCanvas(Canvas):
    """The lane of fish and feed."""

    def __init__(self, frame: Frame, parent: QWidget) -> None:
        self._feeds: tuple[FeedScene, ...] = ()
        super().__init__(frame, parent)

    def set_feeds(self, feeds: tuple[FeedScene, ...]) -> None:
        """Show other loops."""
        self._feeds = feeds
        self.refresh()

    def paint_over(self, painter: QPainter, rect: QRectF) -> None:
        if not self._feeds:
            paint_notice(painter, rect, words.no_fish(), self.frame_state.kit)

    def hint_at(self, at: QPoint) -> str:
        return words.why_hint() if self._feeds and at.x() >= self.frame_state.scale.left else ""

    def content_height(self) -> float:
        return fish_height(self._feeds, self.frame_state.kit)

    def paint_content(self, painter: QPainter, rect: QRectF, part: QRectF) -> None:
        state = self.frame_state
        painter.save()
        painter.setClipRect(part)
        paint_fish(painter, rect, self._feeds, state.scale, state.kit, state.calendar, scroll=self.down_px)
        painter.restore()


class BalanceCanvas(Canvas):
    """The lane of supply and demand; shows another balance while a bar is dragged."""

    def __init__(self, frame: Frame, parent: QWidget) -> None:
        self._scene: BalanceScene | None = None
        self._preview: BalanceScene | None = None
        self._element = ""
        super().__init__(frame, parent)

    @property
    def shown(self) -> BalanceScene | None:
        """The balance that is on the screen now."""
        return self._preview or self._scene

    @property
    def element(self) -> str:
        """The element shown in full; empty for all."""
        return self._element

    def set_balance(self, scene: BalanceScene | None) -> None:
        """Show another balance for good."""
        self._scene, self._preview = scene, None
        self.refresh()

    def set_preview(self, preview: BalanceScene | None) -> None:
        """Show what a move would make of the balance, or again what is."""
        if preview is not self._preview:
            self._preview = preview
            self.refresh()

    def set_element(self, element: str) -> None:
        """Show one element in full, or all with an empty word."""
        if element != self._element:
            self._element = element
            self.refresh()

    def paint_over(self, painter: QPainter, rect: QRectF) -> None:
        if self.shown is None:
            paint_notice(painter, rect, words.no_balance(), self.frame_state.kit)

    def hint_at(self, at: QPoint) -> str:
        return words.why_hint() if self.shown is not None and at.x() >= self.frame_state.scale.left else ""

    def content_height(self) -> float:
        elements = len(self.shown.elements) if self.shown else 0
        return balance_height(self.frame_state.kit, BalanceLook(element=self._element), elements)

    def paint_content(self, painter: QPainter, rect: QRectF, part: QRectF) -> None:
        state = self.frame_state
        look = BalanceLook(element=self._element, scroll=self.down_px)
        painter.save()
        painter.setClipRect(part)
        paint_balance(painter, rect, self.shown, state.scale, state.kit, state.calendar, look=look)
        painter.restore()


@dataclass(frozen=True, slots=True, kw_only=True)
class Held:
    """What is shown while a bar is dragged: where it stood, where it would stand, and if it may."""

    ghosts: tuple[Spot, ...]
    bars: tuple[Bar, ...]
    allowed: bool


class BedsCanvas(Canvas):
    """The lane of beds; knows which bar is under a point, and what is selected or dragged."""

    keeps_days = True

    def __init__(self, frame: Frame, parent: QWidget) -> None:
        self._groups: tuple[RowGroup, ...] = ()
        self._index: SceneIndex | None = None
        self._folded: frozenset[Id] = frozenset()
        self._selected: frozenset[Id] = frozenset()
        self._cursor: Spot | None = None
        self._held: Held | None = None
        self._band: Area | None = None
        self._focused = False
        self._laid: tuple[tuple[RowGroup, ...], frozenset[Id], Kit] | None = None
        self.bars_painted = 0
        self.layout_now: RowsLayout = laid_out((), folded=frozenset(), line_px=1, head_px=1)
        super().__init__(frame, parent)

    def set_groups(self, groups: tuple[RowGroup, ...], index: SceneIndex) -> None:
        """Show other rows."""
        self._groups, self._index, self._held = groups, index, None
        self.refresh()

    def set_marks(self, selected: frozenset[Id], cursor: Spot | None, *, focused: bool) -> None:
        """Mark the selected batches and the bar that the keys act on."""
        self._selected, self._cursor, self._focused = selected, cursor, focused
        self.viewport().update()

    def set_held(self, held: Held | None) -> None:
        """Show a bar that is being dragged, or none."""
        self._held = held
        self.viewport().update()

    def set_band(self, band: Area | None) -> None:
        """Show a band that is drawn to choose what it touches, or none."""
        self._band = band
        self.viewport().update()

    @property
    def folded(self) -> frozenset[Id]:
        """Beds of which only the heading is shown."""
        return self._folded

    def fold(self, bed: Id, *, folded: bool) -> None:
        """Show only the heading of a bed, or all of it."""
        wanted = self._folded | {bed} if folded else self._folded - {bed}
        if wanted != self._folded:
            self._folded = wanted
            self.refresh()

    def refresh(self) -> None:
        kit = self.frame_state.kit
        laid = (self._groups, self._folded, kit)
        if self._laid is None or any(one is not other for one, other in zip(laid, self._laid, strict=True)):
            self._laid = laid
            self.layout_now = laid_out(
                self._groups, folded=self._folded, line_px=kit.line_px, head_px=kit.head_px
            )
        super().refresh()

    def content_height(self) -> float:
        return self.layout_now.height

    def look(self) -> BedsLook:
        """Return what is seen of the rows."""
        return BedsLook(layout=self.layout_now, scroll=self.down_px, folded=self._folded)

    def spot_at(self, at: QPointF) -> Spot | None:
        """Return the bar at a point of the lane."""
        scale = self.frame_state.scale
        if at.x() < scale.left:
            return None
        return spot_at(self.layout_now, at.y() + self.down_px, scale.day_at(at.x()))

    def rect_of(self, spot: Spot) -> QRectF | None:
        """Return where a bar lies in the lane, None when its bed is folded."""
        strip = self.layout_now.strip_of(spot.row)
        if strip is None:
            return None
        return bar_rect(self.rect_f(), self.look(), self.frame_state.scale, strip, spot.bar)

    def hint_at(self, at: QPoint) -> str:
        spot = self.spot_at(QPointF(at))
        if spot is None or self._index is None:
            return ""
        found = self._index.row(spot.row)
        return words.bar_summary(spot.bar, words.row_title(found[0].name, found[1].name)) if found else ""

    def paint_content(self, painter: QPainter, rect: QRectF, part: QRectF) -> None:
        state = self.frame_state
        self.bars_painted = paint_beds(
            painter, rect, self.look(), state.scale, state.kit, state.calendar, part=part
        )

    def paint_shifted(self, painter: QPainter, rect: QRectF, strip: QRectF) -> None:
        state = self.frame_state
        paint_beds_shifted(painter, rect, self.look(), state.scale, state.kit, state.calendar, strip=strip)

    def paint_over(self, painter: QPainter, rect: QRectF) -> None:
        theme = self.frame_state.kit.theme
        painter.save()
        painter.setClipRect(time_rect(rect, self.frame_state.kit))
        if self._held is not None:
            self._paint_held(painter, rect, self._held)
        else:
            self._paint_selected(painter)
        if self._band is not None:
            self._paint_band(painter, rect, self._band)
        painter.restore()
        if not self._groups:
            paint_notice(painter, rect, words.no_beds(), self.frame_state.kit)
        if self._focused:
            painter.setBrush(Qt.BrushStyle.NoBrush)
            painter.setPen(QPen(theme.accent, _FOCUS_WIDTH))
            painter.drawRect(rect.adjusted(1, 1, -1, -1))

    def _paint_selected(self, painter: QPainter) -> None:
        """Mark what is chosen of what is in sight, however much is chosen."""
        theme, layout, scale = self.frame_state.kit.theme, self.layout_now, self.frame_state.scale
        rect, look = self.rect_f(), self.look()
        days = scale.span(rect.width() - scale.left)
        strips = layout.between(self.down_px, self.down_px + rect.height()) if self._selected else ()
        for strip in strips:
            for bar in strip.row.seen(days.start, days.end) if strip.row is not None else ():
                if bar.batch in self._selected:
                    paint_outline(painter, bar_rect(rect, look, scale, strip, bar), theme.accent, theme.field)
        if self._cursor is not None and self._focused:
            box = self.rect_of(self._cursor)
            if box is not None:
                paint_cursor(painter, box, theme)

    def _paint_band(self, painter: QPainter, rect: QRectF, band: Area) -> None:
        scale, theme = self.frame_state.scale, self.frame_state.kit.theme
        left, right = round(scale.x_of(band.start)), round(scale.x_of(band.end))
        top = round(rect.y() + band.top - self.down_px)
        box = QRectF(left, top, right - left, round(band.bottom - band.top))
        veil = QColor(theme.accent)
        veil.setAlphaF(_BAND_VEIL)
        painter.fillRect(box, veil)
        painter.setBrush(Qt.BrushStyle.NoBrush)
        painter.setPen(QPen(theme.accent, 1, Qt.PenStyle.DashLine))
        painter.drawRect(box)

    def _paint_held(self, painter: QPainter, rect: QRectF, held: Held) -> None:
        state = self.frame_state
        anchor_hatches(painter, state.scale, rect.top() - self.down_px)
        for spot in held.ghosts:
            box = self.rect_of(spot)
            if box is not None:
                paint_ghost(painter, box, state.kit.theme)
        edge = state.kit.theme.accent if held.allowed else state.kit.theme.wrong
        for bar in held.bars:
            strip = self.layout_now.strip_of(bar.row_key)
            if strip is None or strip.row is None:
                continue
            others = [each for each in strip.row.seen(bar.start, bar.end) if each.batch != bar.batch]
            top, lines = slot_in(
                others, lines=strip.row.lines, wanted=bar.lines, start=bar.start, end=bar.end
            )
            placed = replace(bar, top=top, lines=lines)
            shapes = Shapes()
            gather(
                shapes,
                (placed,),
                top=rect.y() + strip.top - self.down_px + ROW_PAD,
                line_px=self.layout_now.line_px,
                view=view_of(state.scale, time_rect(rect, state.kit)),
            )
            paint_shapes(painter, shapes, state.kit)
            paint_outline(
                painter, bar_rect(rect, self.look(), state.scale, strip, placed), edge, state.kit.theme.field
            )
