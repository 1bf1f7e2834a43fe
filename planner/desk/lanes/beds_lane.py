"""Paints the beds lane: a row per raft, block or tray, a bar per batch, headings that fold.

A plain function of its values, so that screen, picture and paper show the same. Must know nothing of
storage or moves.
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import Final

from PySide6.QtCore import QLineF, QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QPainter, QPen, QPolygonF

from planner.desk.lanes.bars import ROUND, Shapes, gather, paint_shapes, view_of
from planner.desk.lanes.grid import Calendar, anchor_hatches, paint_grid, paint_today
from planner.desk.lanes.kit import Face, Kit
from planner.desk.lanes.rows_layout import ROW_PAD, RowsLayout, Strip
from planner.desk.lanes.scene import Bar, Curve
from planner.desk.lanes.time_scale import TimeScale
from planner.desk.theme import Theme, mixed
from planner.farm.fields import Id

INDENT: Final = 26.0
_PAD: Final = 10.0
_FOLD: Final = 4.0
_HELD: Final = 0.3
_PROFILE_PAD: Final = 5.0
_GHOST: Final = 0.72
_OUTLINE: Final = 2.0
_PERCENT: Final = 100


@dataclass(frozen=True, slots=True, kw_only=True)
class BedsLook:
    """What is seen of the rows: their layout, how far they are scrolled, which beds are folded."""

    layout: RowsLayout
    scroll: float = 0.0
    folded: frozenset[Id] = frozenset()


def time_rect(rect: QRectF, kit: Kit) -> QRectF:
    """Return the part of a lane right of the row names."""
    return QRectF(rect.x() + kit.names_px, rect.y(), max(rect.width() - kit.names_px, 0), rect.height())


def paint_beds(
    painter: QPainter,
    rect: QRectF,
    look: BedsLook,
    scale: TimeScale,
    kit: Kit,
    calendar: Calendar,
    *,
    part: QRectF | None = None,
) -> int:
    """Paint the beds lane into `rect`, only what lies in `part` if given; return the bars painted."""
    part = rect if part is None else part & rect
    if part.isEmpty():
        return 0
    painter.save()
    painter.setClipRect(part, Qt.ClipOperation.IntersectClip)
    anchor_hatches(painter, scale, rect.top() - look.scroll)
    painter.fillRect(part, kit.theme.field)
    strips = tuple(
        look.layout.between(part.top() - rect.top() + look.scroll, part.bottom() - rect.top() + look.scroll)
    )
    times = time_rect(rect, kit) & part
    painted = (
        _paint_times(painter, (rect, times), look, strips, (scale, kit, calendar))
        if not times.isEmpty()
        else 0
    )
    for strip in strips:
        _paint_name(painter, rect, look, strip, kit)
    _paint_names_edge(painter, rect, kit)
    painter.restore()
    return painted


def _strip_rect(rect: QRectF, look: BedsLook, strip: Strip) -> QRectF:
    return QRectF(rect.x(), rect.y() + strip.top - look.scroll, rect.width(), strip.height)


def paint_beds_shifted(
    painter: QPainter,
    rect: QRectF,
    look: BedsLook,
    scale: TimeScale,
    kit: Kit,
    calendar: Calendar,
    *,
    strip: QRectF,
) -> None:
    """Make a picture of the lane whole after its days have been moved along to where they are now.

    Paints the `strip` that has come into sight, the headings, whose words keep to the left edge, and every
    bar that is cut by an edge of the lane or reaches into the strip, since names move along the edges.
    """
    times = time_rect(rect, kit)
    painter.save()
    painter.setClipRect(times)
    anchor_hatches(painter, scale, rect.top() - look.scroll)
    strips = tuple(look.layout.between(look.scroll, rect.height() + look.scroll))
    painter.fillRect(strip, kit.theme.field)
    paint_grid(painter, strip & times, scale, kit.theme, calendar)
    _paint_between(painter, (rect, strip & times), look, strips, (scale, kit, calendar))
    for each in strips:
        if each.row is None:
            box = _strip_rect(rect, look, each) & times
            _paint_heading(painter, box, each, scale, kit)
            painter.setPen(QPen(kit.theme.faint_line, 1))
            painter.drawLine(_under(times, _strip_rect(rect, look, each)))
            paint_today(painter, box, scale, kit.theme, calendar)
    shapes, view = Shapes(), view_of(scale, times)
    spans = _days_touched(times, strip, scale)
    for each in strips:
        if each.row is not None:
            bars = {id(bar): bar for start, end in spans for bar in each.row.seen(start, end)}
            top = _strip_rect(rect, look, each).y() + ROW_PAD
            gather(shapes, bars.values(), top=top, line_px=look.layout.line_px, view=view)
    paint_shapes(painter, shapes, kit)
    painter.restore()


def _days_touched(times: QRectF, strip: QRectF, scale: TimeScale) -> tuple[tuple[int, int], ...]:
    """Return the days of a strip, and the day at the edge of the lane across from it."""
    edge = times.left() if strip.left() > times.left() else times.right()
    return tuple(
        (scale.whole_day_at(left) - 1, scale.whole_day_at(right) + 2)
        for left, right in ((strip.left(), strip.right()), (edge, edge))
    )


def _paint_times(
    painter: QPainter,
    rects: tuple[QRectF, QRectF],
    look: BedsLook,
    strips: tuple[Strip, ...],
    how: tuple[TimeScale, Kit, Calendar],
) -> int:
    rect, times = rects
    scale, kit, calendar = how
    painter.save()
    painter.setClipRect(times, Qt.ClipOperation.IntersectClip)
    paint_grid(painter, times, scale, kit.theme, calendar)
    start, end = scale.whole_day_at(times.left()), scale.whole_day_at(times.right()) + 1
    shapes, view = Shapes(), view_of(scale, times)
    for strip in strips:
        box = _strip_rect(rect, look, strip)
        if strip.row is None:
            _paint_heading(
                painter, QRectF(times.x(), box.y(), times.width(), box.height()), strip, scale, kit
            )
            continue
        gather(
            shapes,
            strip.row.seen(start, end),
            top=box.y() + ROW_PAD,
            line_px=look.layout.line_px,
            view=view,
        )
    _paint_between(painter, (rect, times), look, strips, how)
    paint_shapes(painter, shapes, kit)
    painter.restore()
    return shapes.bars


def _paint_between(
    painter: QPainter,
    rects: tuple[QRectF, QRectF],
    look: BedsLook,
    strips: tuple[Strip, ...],
    how: tuple[TimeScale, Kit, Calendar],
) -> None:
    """Paint the lines between rows and that of today, on which bars lie."""
    rect, times = rects
    scale, kit, calendar = how
    painter.setPen(QPen(kit.theme.faint_line, 1))
    painter.drawLines([_under(times, _strip_rect(rect, look, strip)) for strip in strips])
    paint_today(painter, times, scale, kit.theme, calendar)


def _under(times: QRectF, box: QRectF) -> QLineF:
    y = round(box.bottom()) - 0.5
    return QLineF(times.left(), y, times.right(), y)


def _paint_heading(painter: QPainter, box: QRectF, strip: Strip, scale: TimeScale, kit: Kit) -> None:
    painter.fillRect(box, kit.theme.ground)
    if strip.group.held is not None:
        paint_profile(painter, box, strip.group.held, scale, mixed(kit.theme.muted, kit.theme.ground, _HELD))
    painter.setPen(kit.theme.muted)
    kit.write(painter, box.adjusted(_PAD, 0, -_PAD, 0), strip.group.detail, face=Face.SMALL)


def paint_profile(painter: QPainter, box: QRectF, held: Curve, scale: TimeScale, colour: QColor) -> None:
    """Paint the share of places taken, by week, as steps from the bottom of a box."""
    full = box.height() - 2 * _PROFILE_PAD
    start, end = scale.whole_day_at(box.left()), scale.whole_day_at(box.right()) + 1
    steps = []
    for position in held.seen(start, end):
        share = min(held.values[position], 1.0)
        if share > 0:
            x0 = scale.x_of(held.start + position * held.step)
            x1 = scale.x_of(held.start + (position + 1) * held.step)
            steps.append(QRectF(x0, box.bottom() - 1 - share * full, x1 - x0, share * full))
    painter.setPen(Qt.PenStyle.NoPen)
    painter.setBrush(colour)
    painter.drawRects(steps)


def _paint_name(painter: QPainter, rect: QRectF, look: BedsLook, strip: Strip, kit: Kit) -> None:
    """Paint heading or name of a row; of a high row the name stays in the middle of what is seen."""
    theme = kit.theme
    box = _strip_rect(rect, look, strip)
    names = QRectF(box.x(), box.y(), kit.names_px, box.height())
    if strip.row is None:
        painter.fillRect(names, theme.ground)
        ink = theme.wrong if strip.group.urgent else theme.text
        _paint_fold(painter, names, ink, folded=strip.group.bed in look.folded)
        painter.setPen(ink)
        kit.write(painter, names.adjusted(INDENT, 0, -_PAD, 0), strip.group.name, face=Face.BOLD)
        return
    painter.fillRect(names, theme.panel)
    painter.setPen(theme.text)
    seen = names & rect
    if seen.height() < kit.text_px:
        seen = names
    kit.write(painter, seen.adjusted(INDENT, 0, -_PAD, 0), strip.row.name)
    painter.setPen(QPen(theme.faint_line, 1))
    painter.drawLine(_under(names, box))


def _paint_fold(painter: QPainter, names: QRectF, ink: QColor, *, folded: bool) -> None:
    at = QPointF(names.x() + INDENT / 2 + 1, names.center().y())
    tip = (
        [QPointF(-_FOLD / 2, -_FOLD), QPointF(_FOLD / 2 + 1, 0), QPointF(-_FOLD / 2, _FOLD)]
        if folded
        else [QPointF(-_FOLD, -_FOLD / 2), QPointF(_FOLD, -_FOLD / 2), QPointF(0, _FOLD / 2 + 1)]
    )
    painter.save()
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    painter.setPen(Qt.PenStyle.NoPen)
    painter.setBrush(ink)
    painter.drawPolygon(QPolygonF([at + each for each in tip]))
    painter.restore()


def _paint_names_edge(painter: QPainter, rect: QRectF, kit: Kit) -> None:
    x = rect.x() + kit.names_px - 0.5
    painter.setPen(QPen(kit.theme.line, 1))
    painter.drawLine(QLineF(x, rect.top(), x, rect.bottom()))


def bar_rect(rect: QRectF, look: BedsLook, scale: TimeScale, strip: Strip, bar: Bar) -> QRectF:
    """Return where a bar lies; it may reach out of the lane."""
    top, height = look.layout.bar_y(strip, bar)
    left, right = (math.floor(scale.x_of(day) + ROUND) for day in (bar.start, bar.end))
    return QRectF(left, rect.y() + top - look.scroll, right - left, height - 1)


def paint_outline(painter: QPainter, box: QRectF, colour: QColor, ground: QColor) -> None:
    """Paint the mark of a selected bar: a strong line with a rim of ground, seen on any fill."""
    painter.setBrush(Qt.BrushStyle.NoBrush)
    painter.setPen(QPen(ground, 1))
    painter.drawRect(box.adjusted(1.5, 1.5, -1.5, -1.5))
    painter.setPen(QPen(colour, _OUTLINE))
    painter.drawRect(box.adjusted(0, 0, 0, 0))


def paint_cursor(painter: QPainter, box: QRectF, theme: Theme) -> None:
    """Paint the frame round the bar that the keys act on."""
    painter.setBrush(Qt.BrushStyle.NoBrush)
    painter.setPen(QPen(theme.field, 3))
    painter.drawRect(box.adjusted(-3, -3, 3, 3))
    pen = QPen(theme.text, 1.6)
    pen.setDashPattern([2.5, 2])
    painter.setPen(pen)
    painter.drawRect(box.adjusted(-3, -3, 3, 3))


def paint_ghost(painter: QPainter, box: QRectF, theme: Theme) -> None:
    """Paint over the old place of a bar that is being dragged: pale, with a dashed line round it."""
    veil = QColor(theme.field)
    veil.setAlphaF(_GHOST)
    painter.fillRect(box, veil)
    painter.setBrush(Qt.BrushStyle.NoBrush)
    pen = QPen(theme.muted, 1)
    pen.setStyle(Qt.PenStyle.DashLine)
    painter.setPen(pen)
    painter.drawRect(box.adjusted(0.5, 0.5, -0.5, -0.5))
