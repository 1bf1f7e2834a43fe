"""Paints the balance lane: which element limits in which week, supply against demand, the feed-rate ratio.

A plain function of its values; must know nothing of storage or of how a band is reckoned.
"""

from __future__ import annotations

import math
from collections.abc import Iterator
from dataclasses import dataclass
from typing import Final

from PySide6.QtCore import QLineF, QRectF, Qt
from PySide6.QtGui import QColor, QPainter, QPen

from planner.desk.lanes import words
from planner.desk.lanes.fish_lane import draw_steps, nice_top
from planner.desk.lanes.grid import Calendar, anchor_hatches, paint_grid, paint_today
from planner.desk.lanes.kit import Face, Kit
from planner.desk.lanes.scene import BalanceScene, BandMark, Curve, ElementWeeks, RatioBand
from planner.desk.lanes.time_scale import DAYS_PER_WEEK, TimeScale
from planner.desk.theme import mixed

_PAD: Final = 10.0
_INDENT: Final = 26.0
_LIMITING_LINES: Final = 1.15
_ELEMENT_LINES: Final = 0.72
_PLOT_LINES: Final = 3.4
_RATIO_LINES: Final = 2.3
_CELL_GAP: Final = 1.0
_LETTER_PAD: Final = 3.0
_CELL_PAD: Final = 1.5
_LEAST_LETTER_PX: Final = 9.0
_APART_PX: Final = 26.0
_FREE: Final = 6.0
_KEY_PX: Final = 9.0
_DEMAND: Final = 0.38
_GAP_PATTERN: Final = "clearing"
_RATIO_FILL: Final = (0.2, 0.2)
_RATIO_COLOURS: Final = ("mg", "p")
_RATIO_HATCH: Final = ("germination", "spacing")
_HATCH: Final = 0.14


@dataclass(frozen=True, slots=True, kw_only=True)
class BalanceLook:
    """What of the balance is shown: every element's bands, or one element (by its symbol) in full."""

    element: str = ""
    scroll: float = 0.0


def balance_height(kit: Kit, look: BalanceLook, elements: int) -> float:
    """Return how high the lane would like to be [px]."""
    middle = _PLOT_LINES if look.element else elements * _ELEMENT_LINES
    return (_LIMITING_LINES + middle + _RATIO_LINES) * kit.line_px + _FREE


def paint_balance(
    painter: QPainter,
    rect: QRectF,
    scene: BalanceScene | None,
    scale: TimeScale,
    kit: Kit,
    calendar: Calendar,
    *,
    look: BalanceLook,
) -> None:
    """Paint the balance lane into `rect`."""
    painter.save()
    painter.setClipRect(rect, Qt.ClipOperation.IntersectClip)
    anchor_hatches(painter, scale, rect.top() - look.scroll)
    painter.fillRect(rect, kit.theme.field)
    painter.fillRect(QRectF(rect.x(), rect.y(), kit.names_px, rect.height()), kit.theme.panel)
    times = QRectF(rect.x() + kit.names_px, rect.y(), rect.width() - kit.names_px, rect.height())
    paint_grid(painter, times, scale, kit.theme, calendar)
    paint_today(painter, times, scale, kit.theme, calendar)
    if scene is not None:
        _lane(painter, scene, scale, kit, times).paint(rect, look)
    painter.setPen(QPen(kit.theme.line, 1))
    painter.drawLine(QLineF(times.x() - 0.5, rect.top(), times.x() - 0.5, rect.bottom()))
    painter.restore()


def _lane(painter: QPainter, scene: BalanceScene, scale: TimeScale, kit: Kit, times: QRectF) -> _Lane:
    """Return what paints the lane, with the weeks that are seen laid ready."""
    shown = Curve(start=scene.start, step=DAYS_PER_WEEK, values=scene.feed_ratio.values)
    weeks = shown.seen(scale.whole_day_at(times.left()), scale.whole_day_at(times.right()) + 1)
    edges = [
        round(scale.x_of(scene.start + week * DAYS_PER_WEEK)) for week in range(weeks.start, weeks.stop + 1)
    ]
    return _Lane(painter=painter, scene=scene, scale=scale, kit=kit, weeks=weeks, edges=edges)


@dataclass(frozen=True, slots=True, kw_only=True)
class _Lane:
    """One painting of the lane; holds what all its parts need.

    `edges` are the x at which the `weeks` that are seen begin, and the last of them ends.
    """

    painter: QPainter
    scene: BalanceScene
    scale: TimeScale
    kit: Kit
    weeks: range
    edges: list[int]

    def paint(self, rect: QRectF, look: BalanceLook) -> None:
        kit = self.kit
        extra = max(rect.height() - balance_height(kit, look, len(self.scene.elements)), 0)
        at = rect.y() - look.scroll
        row = QRectF(rect.x(), at, rect.width(), _LIMITING_LINES * kit.line_px)
        self._limiting(row)
        chosen = next((each for each in self.scene.elements if each.element == look.element), None)
        if chosen is None:
            for each in self.scene.elements:
                row = QRectF(rect.x(), row.bottom(), rect.width(), _ELEMENT_LINES * kit.line_px)
                self._bands(row, each)
        else:
            row = QRectF(rect.x(), row.bottom(), rect.width(), _PLOT_LINES * kit.line_px + extra * 0.6)
            self._element(row, chosen)
            extra *= 0.4
        row = QRectF(rect.x(), row.bottom(), rect.width(), _RATIO_LINES * kit.line_px + _FREE + extra)
        self._ratio(row)

    def _times(self, row: QRectF) -> QRectF:
        return QRectF(row.x() + self.kit.names_px, row.y(), row.width() - self.kit.names_px, row.height())

    def _names(self, row: QRectF) -> QRectF:
        return QRectF(row.x() + _PAD, row.y(), self.kit.names_px - 2 * _PAD, row.height())

    def _rule(self, row: QRectF) -> None:
        y = round(row.bottom()) - 0.5
        self.painter.setPen(QPen(self.kit.theme.line, 1))
        self.painter.drawLine(QLineF(row.left(), y, row.right(), y))

    def _cell(self, first: int, last: int, row: QRectF) -> QRectF:
        """Return where the weeks from `first` to `last` lie in a row."""
        at = first - self.weeks.start
        left, right = self.edges[at], self.edges[last - self.weeks.start + 1]
        gap = _CELL_GAP if self.edges[at + 1] - left > 2 * DAYS_PER_WEEK else 0
        return QRectF(left + gap, row.y() + 2, right - left - gap, row.height() - 3)

    def _limiting(self, row: QRectF) -> None:
        self.painter.setPen(self.kit.theme.text)
        self.kit.write(self.painter, self._names(row), words.limiting_element(), face=Face.BOLD)
        weeks = self.weeks
        marks: list[tuple[BandMark, str] | None] = []
        for week in weeks:
            limiting = self.scene.limiting[week]
            if limiting is None:
                marks.append(None)
            else:
                element = self.scene.elements[limiting]
                marks.append((element.band[week], words.element_symbol(element.element)))
        self._marks(row, weeks, marks)

    def _bands(self, row: QRectF, element: ElementWeeks) -> None:
        names = self._names(row).adjusted(_INDENT - _PAD, 0, 0, 0)
        self.painter.setPen(self.kit.theme.text)
        self.kit.write(self.painter, names, words.element_full(element.element), face=Face.SMALL)
        weeks = self.weeks
        bands = (element.band[week] for week in weeks)
        self._marks(row, weeks, [None if band is BandMark.NO_DEMAND else (band, "") for band in bands])

    def _marks(self, row: QRectF, weeks: range, marks: list[tuple[BandMark, str] | None]) -> None:
        """Paint the marks of the weeks; where weeks are narrow, equal neighbours share one."""
        times = self._times(row)
        apart = self.scale.px_per_day * DAYS_PER_WEEK >= _APART_PX
        self.painter.save()
        self.painter.setClipRect(times, Qt.ClipOperation.IntersectClip)
        at = 0
        while at < len(marks):
            mark, end = marks[at], at + 1
            while not apart and end < len(marks) and marks[end] == mark:
                end += 1
            if mark is not None:
                cell = self._cell(weeks[at], weeks[end - 1], row)
                cell.setWidth(cell.width() - (0 if apart else _CELL_GAP))
                self._mark(cell, times, *mark)
            at = end
        self.painter.restore()

    def _mark(self, cell: QRectF, times: QRectF, band: BandMark, symbol: str) -> None:
        """Paint one week of a band: shade, hatch, and its letter where there is room."""
        kit, painter = self.kit, self.painter
        look = kit.band_look(band)
        ink, y, high = look.ink, cell.y(), cell.height()
        painter.fillRect(cell, ink.fill)
        if look.hatch is not None and cell.width() >= 2 * _LETTER_PAD:
            painter.fillRect(cell, look.hatch)
        left, right = max(cell.left(), times.left()), min(cell.right(), times.right())
        if right - left < _LEAST_LETTER_PX:
            return
        for text, face, pad in _ways(symbol, look.letter, band):
            width = kit.width(text, face)
            if width + 2 * pad <= right - left:
                x = (left + right) / 2 - width / 2
                kit.plate(painter, QRectF(x, y, width, high), ink.fill, width, min(kit.height(face), high))
                painter.setPen(ink.text)
                kit.write(painter, QRectF(x, y, width + 1, high), text, face=face)
                return

    def _element(self, row: QRectF, element: ElementWeeks) -> None:
        top = nice_top(max(element.supply.highest, element.demand.highest))
        self._plot_names(row, words.element_full(element.element), words.mass_per_week(top))
        self._element_key(row, element.element)
        times = self._times(row)
        self.painter.save()
        self.painter.setClipRect(times, Qt.ClipOperation.IntersectClip)
        box = times.adjusted(0, _FREE, 0, -1)
        colour = self.kit.theme.element_colour(element.element)
        self._demand_bars(box, element, top, colour)
        draw_steps(self.painter, box, element.supply, self.scale, top, QPen(self.kit.theme.text, 2))
        self.painter.restore()
        self._rule(row)

    def _element_key(self, row: QRectF, element: str) -> None:
        """Explain line, bars and hatch under the name of the element, as far as there is room."""
        kit, names = self.kit, self._names(row)
        step = kit.small_px * 1.05
        at = QRectF(names.x(), names.y() + kit.text_px * 1.1 + kit.small_px * 1.3, names.width(), step)
        fill = mixed(kit.theme.element_colour(element), kit.theme.field, _DEMAND)
        keys = (
            (words.supply(), None, None),
            (words.demand(), fill, None),
            (words.gap(), kit.theme.wrong_ground, kit.hatch(_GAP_PATTERN, kit.theme.wrong)),
        )
        for text, ground, hatch in keys:
            if at.bottom() > row.bottom() - 1:
                return
            box = QRectF(at.x(), at.center().y() - _KEY_PX / 2 + 0.5, _KEY_PX * 1.5, _KEY_PX - 1)
            if ground is None:
                self.painter.fillRect(QRectF(box.x(), box.center().y() - 1, box.width(), 2), kit.theme.text)
            else:
                self.painter.fillRect(box, ground)
            if hatch is not None:
                self.painter.fillRect(box, hatch)
            self.painter.setPen(kit.theme.muted)
            kit.write(self.painter, at.adjusted(_INDENT - _PAD + 2, 0, 0, 0), text, face=Face.SMALL)
            at.translate(0, step)

    def _demand_bars(self, box: QRectF, element: ElementWeeks, top: float, colour: QColor) -> None:
        """Paint a bar of demand a week; what the supply leaves open of it is hatched and darker."""
        kit = self.kit
        met, gaps = [], []
        for week in self.weeks:
            demand, supply = element.demand.values[week], element.supply.values[week]
            cell = self._cell(week, week, box)
            inset = cell.width() * 0.12
            high = demand / top * box.height()
            covered = min(demand, supply) / top * box.height()
            met.append(QRectF(cell.x() + inset, box.bottom() - covered, cell.width() - 2 * inset, covered))
            if demand > supply:
                rest = QRectF(cell.x() + inset, box.bottom() - high, cell.width() - 2 * inset, high - covered)
                gaps.append(rest)
        painter = self.painter
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(mixed(colour, kit.theme.field, _DEMAND))
        painter.drawRects(met)
        painter.setBrush(kit.theme.wrong_ground)
        painter.drawRects(gaps)
        painter.setBrush(kit.hatch(_GAP_PATTERN, kit.theme.wrong))
        painter.drawRects(gaps)
        painter.setBrush(Qt.BrushStyle.NoBrush)
        painter.setPen(QPen(kit.theme.wrong, 1))
        painter.drawRects([gap.adjusted(0.5, 0.5, -0.5, 0) for gap in gaps])

    def _plot_names(self, row: QRectF, title: str, top_text: str) -> None:
        names = self._names(row)
        line = QRectF(names.x(), names.y() + 3, names.width(), self.kit.text_px * 1.1)
        self.painter.setPen(self.kit.theme.text)
        self.kit.write(self.painter, line, title, face=Face.BOLD)
        self.painter.setPen(self.kit.theme.muted)
        line.translate(0, line.height())
        self.kit.write(self.painter, line, top_text, face=Face.SMALL)

    def _ratio(self, row: QRectF) -> None:
        scene = self.scene
        top = nice_top(scene.highest_ratio)
        self._plot_names(row, words.feed_rate_ratio(), words.ratio_scale(top))
        times = self._times(row)
        self.painter.save()
        self.painter.setClipRect(times, Qt.ClipOperation.IntersectClip)
        box = times.adjusted(0, _FREE, 0, -2)
        labels = [self._ratio_band(box, position, top) for position in range(len(scene.ratio_bands))]
        draw_steps(self.painter, box, scene.feed_ratio, self.scale, top, QPen(self.kit.theme.text, 2))
        taken: list[QRectF] = []
        for label in labels:
            self._band_label(label, taken)
        self.painter.restore()

    def _ratio_band(self, box: QRectF, position: int, top: float) -> tuple[QRectF, str, QColor]:
        band: RatioBand = self.scene.ratio_bands[position]
        colour = self.kit.theme.element_colour(_RATIO_COLOURS[position % len(_RATIO_COLOURS)])
        fill = mixed(colour, self.kit.theme.field, _RATIO_FILL[position % len(_RATIO_FILL)])
        hatch = self.kit.hatch(
            _RATIO_HATCH[position % len(_RATIO_HATCH)], mixed(self.kit.theme.text, fill, _HATCH)
        )
        rects = [
            QRectF(x0, box.bottom() - high / top * box.height(), x1 - x0, (high - low) / top * box.height())
            for x0, x1, low, high in self._steps_of(band)
        ]
        self.painter.setPen(Qt.PenStyle.NoPen)
        for brush in (fill, hatch):
            self.painter.setBrush(brush)
            self.painter.drawRects(rects)
        first = rects[0] if rects else QRectF()
        return QRectF(max(first.x(), box.x()), first.y(), first.width(), first.height()), band.name, fill

    def _steps_of(self, band: RatioBand) -> list[tuple[int, int, float, float]]:
        """Return left, right, low and high of a band; weeks alike are one step, and none where it is not."""
        steps: list[tuple[int, int, float, float]] = []
        for at, week in enumerate(self.weeks):
            low, high = band.low.values[week], band.high.values[week]
            if math.isnan(low) or math.isnan(high):
                continue
            left, right = self.edges[at], self.edges[at + 1]
            if steps and steps[-1][1:] == (left, low, high):
                left = steps.pop()[0]
            steps.append((left, right, low, high))
        return steps

    def _band_label(self, label: tuple[QRectF, str, QColor], taken: list[QRectF]) -> None:
        """Write the name of a band at its left, beside the names that are there already."""
        box, text, fill = label
        if box.isNull() or not text:
            return
        height = self.kit.height(Face.SMALL)
        middle = box.center().y()
        room = QRectF(
            box.x() + 2 * _LETTER_PAD, middle - height / 2, self.kit.width(text, Face.SMALL), height
        )
        for other in taken:
            if other.intersects(room):
                room.moveLeft(other.right() + 4 * _LETTER_PAD)
        taken.append(room)
        self.kit.plate(self.painter, room, fill, room.width(), height)
        self.painter.setPen(self.kit.theme.on(fill))
        self.kit.write(self.painter, room.adjusted(0, 0, 1, 0), text, face=Face.SMALL)


def _ways(symbol: str, letter: str, band: BandMark) -> Iterator[tuple[str, int, float]]:
    """Yield what may be written on a mark, the longest first, with its face and the room beside it."""
    if not symbol:
        yield letter, Face.SMALL, _CELL_PAD
        return
    yield f"{symbol} {words.band_name(band)}", Face.SMALL_BOLD, 2 * _LETTER_PAD
    yield f"{symbol} {letter}", Face.SMALL_BOLD, _LETTER_PAD
    yield symbol, Face.SMALL_BOLD, _CELL_PAD
