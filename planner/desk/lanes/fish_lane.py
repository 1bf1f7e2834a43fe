"""Paints the lane of fish and feed: per loop the feed as steps and the biomass as a line, then its groups.

A plain function of its values; must know nothing of storage.
"""

from __future__ import annotations

import math
from itertools import pairwise
from typing import Final

from PySide6.QtCore import QLineF, QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QPainter, QPen, QPolygonF

from planner.desk.lanes import words
from planner.desk.lanes.grid import Calendar, paint_grid, paint_today
from planner.desk.lanes.kit import Face, Kit
from planner.desk.lanes.scene import Curve, FeedScene, FishMark, FishMarkKind, FishRow
from planner.desk.lanes.time_scale import TimeScale
from planner.desk.theme import mixed

PLOT_LINES: Final = 2.6
ROW_LINES: Final = 0.95
_PAD: Final = 10.0
_INDENT: Final = 26.0
_TOP_FREE: Final = 6.0
_FILL: Final = 0.3
_LINE: Final = 0.7
_GROUP_FILL: Final = 0.22
_FEED_COLOUR: Final = "n"
_DAILY_PX: Final = 7.0
_NICE: Final = (1.0, 1.5, 2.0, 3.0, 4.0, 5.0, 6.0, 8.0, 10.0)
_MARK_EMS: Final = 0.56


def nice_top(highest: float) -> float:
    """Return a round number that is not below the highest value.

    >>> nice_top(730.0)
    800.0
    """
    if highest <= 0:
        return 1.0
    power = 10.0 ** math.floor(math.log10(highest))
    return next(step * power for step in _NICE if step * power >= highest - power * 1e-9)


def fish_height(feeds: tuple[FeedScene, ...], kit: Kit) -> float:
    """Return how high everything in the lane is [px]."""
    rows = sum(len(feed.groups) for feed in feeds)
    return (len(feeds) * PLOT_LINES + rows * ROW_LINES) * kit.line_px


def paint_fish(
    painter: QPainter,
    rect: QRectF,
    feeds: tuple[FeedScene, ...],
    scale: TimeScale,
    kit: Kit,
    calendar: Calendar,
    *,
    scroll: float = 0.0,
) -> None:
    """Paint the lane of fish and feed into `rect`."""
    painter.save()
    painter.setClipRect(rect, Qt.ClipOperation.IntersectClip)
    painter.fillRect(rect, kit.theme.field)
    times = QRectF(rect.x() + kit.names_px, rect.y(), rect.width() - kit.names_px, rect.height())
    painter.fillRect(QRectF(rect.x(), rect.y(), kit.names_px, rect.height()), kit.theme.panel)
    paint_grid(painter, times, scale, kit.theme, calendar)
    at = rect.y() - scroll
    for feed in feeds:
        at = _paint_loop(painter, QRectF(rect.x(), at, rect.width(), rect.bottom() - at), feed, scale, kit)
    painter.setClipRect(rect, Qt.ClipOperation.IntersectClip)
    paint_today(painter, times, scale, kit.theme, calendar)
    painter.setPen(QPen(kit.theme.line, 1))
    painter.drawLine(QLineF(times.x() - 0.5, rect.top(), times.x() - 0.5, rect.bottom()))
    painter.restore()


def _paint_loop(painter: QPainter, rect: QRectF, feed: FeedScene, scale: TimeScale, kit: Kit) -> float:
    plot = QRectF(rect.x(), rect.y(), rect.width(), PLOT_LINES * kit.line_px)
    _paint_plot_names(painter, QRectF(plot.x(), plot.y(), kit.names_px, plot.height()), feed, kit)
    times = QRectF(plot.x() + kit.names_px, plot.y(), plot.width() - kit.names_px, plot.height())
    painter.save()
    painter.setClipRect(times, Qt.ClipOperation.IntersectClip)
    _paint_plot(painter, times.adjusted(0, _TOP_FREE, 0, -1), feed, scale, kit)
    painter.restore()
    at = plot.bottom()
    for group in feed.groups:
        row = QRectF(rect.x(), at, rect.width(), ROW_LINES * kit.line_px)
        if painter.clipBoundingRect().intersects(row):
            _paint_group(painter, row, group, scale, kit)
        at = row.bottom()
    painter.setPen(QPen(kit.theme.line, 1))
    painter.drawLine(QLineF(rect.x(), round(at) - 0.5, rect.right(), round(at) - 0.5))
    return at


def feed_colour(kit: Kit) -> QColor:
    """Return the colour of feed."""
    return kit.theme.element_colour(_FEED_COLOUR)


def _paint_plot_names(painter: QPainter, box: QRectF, feed: FeedScene, kit: Kit) -> None:
    line = QRectF(box.x() + _PAD, box.y() + 2, box.width() - 2 * _PAD, kit.text_px * 1.15)
    painter.setPen(kit.theme.text)
    kit.write(painter, line, feed.name, face=Face.BOLD)
    line.translate(0, line.height())
    _paint_key(painter, line, kit, filled=True)
    painter.setPen(kit.theme.muted)
    texts = (
        words.feed_scale(nice_top(feed.feed_by_week.highest)),
        words.biomass_scale(nice_top(feed.biomass_by_week.highest)),
    )
    kit.write(painter, line.adjusted(_INDENT - _PAD, 0, 0, 0), texts[0], face=Face.SMALL)
    line.translate(0, kit.small_px * 1.1)
    _paint_key(painter, line, kit, filled=False)
    painter.setPen(kit.theme.muted)
    kit.write(painter, line.adjusted(_INDENT - _PAD, 0, 0, 0), texts[1], face=Face.SMALL)


def _paint_key(painter: QPainter, line: QRectF, kit: Kit, *, filled: bool) -> None:
    y = line.center().y()
    if filled:
        box = QRectF(line.x(), y - 4, 10, 8)
        painter.fillRect(box, mixed(feed_colour(kit), kit.theme.panel, _FILL))
        painter.fillRect(QRectF(box.x(), box.y(), 10, 2), feed_colour(kit))
    else:
        painter.setPen(QPen(kit.theme.text, 1.4, Qt.PenStyle.DashLine))
        painter.drawLine(QLineF(line.x(), y, line.x() + 11, y))


def _paint_plot(painter: QPainter, box: QRectF, feed: FeedScene, scale: TimeScale, kit: Kit) -> None:
    colour = feed_colour(kit)
    curve = feed.feed_by_day if scale.px_per_day >= _DAILY_PX else feed.feed_by_week
    fill_steps(
        painter, box, curve, scale, nice_top(feed.feed_by_week.highest), mixed(colour, kit.theme.field, _FILL)
    )
    line = mixed(colour, kit.theme.text, _LINE)
    draw_steps(painter, box, curve, scale, nice_top(feed.feed_by_week.highest), QPen(line, 1.6))
    pen = QPen(kit.theme.text, 1.2, Qt.PenStyle.DashLine)
    draw_line(painter, box, feed.biomass_by_week, scale, nice_top(feed.biomass_by_week.highest), pen)


def _seen(box: QRectF, curve: Curve, scale: TimeScale) -> range:
    return curve.seen(scale.whole_day_at(box.left()), scale.whole_day_at(box.right()) + 1)


def fill_steps(
    painter: QPainter, box: QRectF, curve: Curve, scale: TimeScale, top: float, colour: QColor
) -> None:
    """Fill from the bottom of a box up to each value, `top` being the value at the upper edge."""
    seen, edges = _steps_in(box, curve, scale)
    bottom, tall = box.bottom(), box.height()
    steps = []
    for value, (x0, x1) in zip(curve.values[seen.start : seen.stop], pairwise(edges), strict=True):
        high = value / top * tall
        steps.append(QRectF(x0, bottom - high, x1 - x0, high))
    painter.setPen(Qt.PenStyle.NoPen)
    painter.setBrush(colour)
    painter.drawRects(steps)


def _steps_in(box: QRectF, curve: Curve, scale: TimeScale) -> tuple[range, list[int]]:
    """Return the positions seen, and where each begins and the last ends.

    In whole pixels [px], so that neighbours leave no seam.
    """
    seen = _seen(box, curve, scale)
    start, step, x_of = curve.start, curve.step, scale.x_of
    return seen, [round(x_of(start + position * step)) for position in range(seen.start, seen.stop + 1)]


def draw_steps(painter: QPainter, box: QRectF, curve: Curve, scale: TimeScale, top: float, pen: QPen) -> None:
    """Draw the values of a curve as steps; nan leaves a gap."""
    seen, edges = _steps_in(box, curve, scale)
    bottom, tall = box.bottom(), box.height()
    lines = []
    before: float | None = None
    for value, (x0, x1) in zip(curve.values[seen.start : seen.stop], pairwise(edges), strict=True):
        if math.isnan(value):
            before = None
            continue
        y = bottom - value / top * tall
        if before is not None and before != y:
            lines.append(QLineF(x0, before, x0, y))
        lines.append(QLineF(x0, y, x1, y))
        before = y
    painter.setPen(pen)
    painter.drawLines(lines)


def draw_line(painter: QPainter, box: QRectF, curve: Curve, scale: TimeScale, top: float, pen: QPen) -> None:
    """Draw the values of a curve as one line through the middle of each step."""
    points = []
    for position in _seen(box, curve, scale):
        x = scale.x_of(curve.start + (position + 0.5) * curve.step)
        points.append(QPointF(x, box.bottom() - curve.values[position] / top * box.height()))
    painter.save()
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    painter.setPen(pen)
    painter.drawPolyline(QPolygonF(points))
    painter.restore()


def _paint_group(painter: QPainter, row: QRectF, group: FishRow, scale: TimeScale, kit: Kit) -> None:
    names = QRectF(row.x(), row.y(), kit.names_px, row.height())
    painter.setPen(kit.theme.text)
    kit.write(painter, names.adjusted(_INDENT, 0, -_PAD, 0), group.name, face=Face.SMALL)
    times = QRectF(row.x() + kit.names_px, row.y(), row.width() - kit.names_px, row.height())
    painter.save()
    painter.setClipRect(times, Qt.ClipOperation.IntersectClip)
    left, right = scale.x_of(group.start), scale.x_of(group.end)
    bar = QRectF(left, row.y() + 3, right - left, row.height() - 6) & times.adjusted(-2, 0, 2, 0)
    if not bar.isEmpty():
        painter.fillRect(bar, mixed(feed_colour(kit), kit.theme.field, _GROUP_FILL))
        painter.setPen(QPen(mixed(feed_colour(kit), kit.theme.text, 0.6), 1))
        painter.setBrush(Qt.BrushStyle.NoBrush)
        painter.drawRect(bar.adjusted(0.5, 0.5, -0.5, -0.5))
        _paint_marks(painter, bar & times, times, group, scale, kit)
    painter.restore()


def _paint_marks(
    painter: QPainter, bar: QRectF, times: QRectF, group: FishRow, scale: TimeScale, kit: Kit
) -> None:
    half = _half(kit)
    shown = [
        mark for mark in group.marks if times.left() - half <= scale.x_of(mark.day) <= times.right() + half
    ]
    places = [scale.x_of(mark.day + 0.5) for mark in shown]
    before = -math.inf
    for mark, x, following in zip(shown, places, [*places, math.inf][1:], strict=True):
        if x - before < half:
            continue
        before = x
        paint_mark(painter, QPointF(x, bar.center().y()), mark, kit)
        _write_mark(painter, QRectF(x, bar.y(), min(following, times.right()) - x, bar.height()), mark, kit)


def _write_mark(painter: QPainter, room: QRectF, mark: FishMark, kit: Kit) -> None:
    """Write what a mark stands for beside it, if it fits before the next one."""
    if mark.kind is FishMarkKind.OFF_FEED:
        return
    free = room.adjusted(_half(kit) + 4, 0, -_half(kit) - 4, 0)
    text = words.mark_text(mark)
    if kit.width(text, Face.SMALL) <= free.width():
        painter.setPen(kit.theme.text)
        kit.write(painter, free, text, face=Face.SMALL)


def paint_mark(painter: QPainter, at: QPointF, mark: FishMark, kit: Kit) -> None:
    """Paint the sign of an event: a shape of its own with its letter in it."""
    half = _half(kit)
    shape = _shape(mark.kind, half)
    fill = kit.theme.text if mark.kind is FishMarkKind.HARVEST else kit.theme.field
    painter.save()
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    painter.setPen(QPen(kit.theme.text, 1.2))
    painter.setBrush(fill)
    painter.drawPolygon(QPolygonF([at + each for each in shape]))
    painter.restore()
    painter.setPen(kit.theme.field if mark.kind is FishMarkKind.HARVEST else kit.theme.text)
    box = QRectF(at.x() - half, at.y() - half, 2 * half, 2 * half)
    kit.write(painter, box, words.mark_letter(mark.kind), face=Face.SMALL_BOLD, centred=True)


def _half(kit: Kit) -> float:
    """Return half the width of a mark, which holds a small letter."""
    return kit.small_px * _MARK_EMS


def _shape(kind: FishMarkKind, half: float) -> list[QPointF]:
    if kind is FishMarkKind.HARVEST:
        return [QPointF(0, -half - 1), QPointF(half + 1, 0), QPointF(0, half + 1), QPointF(-half - 1, 0)]
    if kind is FishMarkKind.OFF_FEED:
        return [QPointF(-half, half - 1), QPointF(half, half - 1), QPointF(0, -half - 1)]
    return [QPointF(-half, -half), QPointF(half, -half), QPointF(half, half), QPointF(-half, half)]
