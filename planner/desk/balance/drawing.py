"""Paints the chart of the balance: bars of demand in the look of their band, supply and stock as steps.

Where low and high are known, supply has its span and demand its whiskers. Knows the chart only as measures.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from datetime import timedelta
from typing import TYPE_CHECKING, Final

from PySide6.QtCore import QLineF, QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QPainter, QPen, QPolygonF

from planner.desk.balance.weeks import ElementCourse, LoopWeeks
from planner.desk.lanes.fish_lane import nice_top
from planner.desk.lanes.kit import Face, Kit
from planner.desk.lanes.scene import BandMark
from planner.desk.lanes.words import band_letter, element_full, element_symbol, month_short
from planner.desk.say import tr
from planner.desk.theme import mixed
from planner.desk.words import gram_words
from planner.farm.farm import DAYS_PER_WEEK
from planner.forecast.values import AreaRule

if TYPE_CHECKING:
    from planner.desk.balance.chart import BalanceChart

_PAD: Final = 10.0
_GAP: Final = 4.0
_SPAN: Final = 0.25
_HEADROOM: Final = 1.5


class Painting:
    """One painting of a chart."""

    def __init__(self, painter: QPainter, kit: Kit, weeks: LoopWeeks, chart: BalanceChart) -> None:
        self._painter, self._kit, self._weeks, self._chart = painter, kit, weeks, chart
        self._px = chart.week_px
        seen = range(chart.week_at(chart.names_px), chart.week_at(chart.viewport().width()) + 1)
        self._seen: Sequence[int] = seen
        self._left, self._right = chart.names_px, float(chart.viewport().width())

    def paint(self) -> None:
        line, plot, ratio = self._chart.rows_px()
        tops = self._chart.tops_px()
        whole = QRectF(self._left, 0, self._right - self._left, tops[-1] + ratio)
        self._months(line, whole)
        self._limiting(line * 1.1, line * 1.15)
        for at, course in enumerate(self._weeks.elements):
            self._element(at, course, tops[at], plot)
        self._ratio(tops[-1], ratio)
        self._marks(whole)

    def _clipped(self, top: float, height: float) -> QRectF:
        self._painter.save()
        box = QRectF(self._left, top, self._right - self._left, height)
        self._painter.setClipRect(box)
        return box

    def _name(self, top: float, height: float, name: str, more: str, *, strong: bool) -> None:
        kit, theme = self._kit, self._kit.theme
        self._painter.fillRect(QRectF(0, top, self._left - 1, height), theme.panel)
        self._painter.setPen(theme.text)
        box = QRectF(_PAD, top + 2, self._left - 2 * _PAD, kit.text_px)
        kit.write(self._painter, box, name, face=Face.BOLD if strong else Face.PLAIN)
        self._painter.setPen(theme.muted)
        kit.write(self._painter, box.translated(0, kit.text_px), more, face=Face.SMALL)
        self._painter.setPen(QPen(theme.faint_line, 1))
        self._painter.drawLine(QLineF(0, top, self._right, top))

    def _months(self, line: float, whole: QRectF) -> None:
        theme, room = self._kit.theme, self._left
        self._painter.fillRect(QRectF(0, 0, self._right, line), theme.panel)
        self._clipped(0, whole.bottom())
        before = None
        for week in self._seen:
            on = self._chart.start_on + timedelta(days=week * DAYS_PER_WEEK + DAYS_PER_WEEK // 2)
            if (on.year, on.month) == before:
                continue
            x = self._chart.x_of(week)
            self._painter.setPen(QPen(theme.faint_line, 1))
            self._painter.drawLine(QLineF(x, 0, x, whole.bottom()))
            first = before is None or on.month == 1
            words = f"{month_short(on.toordinal())} {on.year}" if first else month_short(on.toordinal())
            before = (on.year, on.month)
            if x >= room:
                self._painter.setPen(theme.muted)
                box = QRectF(x + 2, 0, self._right - x, line)
                room = x + self._kit.write(self._painter, box, words, face=Face.SMALL) + _PAD
        self._painter.restore()

    def _cell(self, week: int, top: float, height: float) -> QRectF:
        return QRectF(self._chart.x_of(week), top, self._px - 1, height)

    def _band(self, box: QRectF, band: BandMark) -> QColor:
        look = self._kit.band_look(band)
        self._painter.fillRect(box, look.ink.fill)
        if look.hatch is not None:
            self._painter.fillRect(box, look.hatch)
        return look.ink.text

    def _limiting(self, top: float, height: float) -> None:
        self._name(top, height, tr("Limiting element"), "", strong=True)
        self._clipped(top, height)
        for week in self._seen:
            verdict = self._weeks.verdicts[week]
            if verdict.limiting is None:
                continue
            box = self._cell(week, top, height)
            band = BandMark(verdict.band[verdict.limiting].value)
            ink = self._band(box, band)
            words = element_symbol(self._weeks.elements[verdict.limiting].element)
            longer = f"{words} {band_letter(band)}"
            words = longer if self._kit.width(longer, Face.SMALL_BOLD) + 4 < self._px else words
            self._written(box, words, ink, self._kit.band_look(band).ink.fill)
        self._painter.restore()

    def _written(self, box: QRectF, words: str, ink: QColor, ground: QColor) -> None:
        width = self._kit.width(words, Face.SMALL_BOLD)
        if width + 2 > box.width():
            return
        plate = QRectF(box.center().x() - width / 2 - 1, box.y() + 2, width + 2, box.height() - 4)
        self._painter.fillRect(plate, ground)
        self._painter.setPen(ink)
        self._kit.write(self._painter, box, words, face=Face.SMALL_BOLD, centred=True)

    def _element(self, at: int, course: ElementCourse, top: float, height: float) -> None:
        high = nice_top(max(course.supply.highest, course.demand.highest, 1e-3))
        level = nice_top(max(course.stock.highest, 1e-3))
        more = tr("to {top} g a week", top=gram_words(high))
        self._name(top, height, element_full(course.element), more, strong=at == self._chart.element)
        note = tr("stock to {top} mg/L", top=gram_words(level))
        line = QRectF(_PAD, top + 2 + 2 * self._kit.text_px, self._left - 2 * _PAD, self._kit.text_px)
        self._painter.setPen(self._kit.theme.muted)
        if line.bottom() < top + height + 2:
            self._kit.write(self._painter, line, note, face=Face.SMALL)
        box = self._clipped(top, height).adjusted(0, _GAP, 0, 0)
        for week in self._seen:
            self._demand(box, week, at, course, high)
        colour = self._kit.theme.text
        self._span(box, course, high)
        self._steps(box, course.supply.likely, high, QPen(colour, 2))
        self._steps(box, course.stock.likely, level, QPen(self._kit.theme.muted, 1.4, Qt.PenStyle.DotLine))
        self._painter.restore()

    def _demand(self, box: QRectF, week: int, at: int, course: ElementCourse, high: float) -> None:
        tall = box.height() * min(course.demand.likely[week] / high, 1)
        cell = QRectF(self._chart.x_of(week), box.bottom() - tall, self._px - 1, tall)
        band = BandMark(self._weeks.verdicts[week].band[at].value)
        ink = self._band(cell, band)
        if cell.height() > self._kit.small_px:
            low = QRectF(
                cell.x(), cell.bottom() - self._kit.small_px - 2, cell.width(), self._kit.small_px + 2
            )
            self._written(low, band_letter(band), ink, self._kit.band_look(band).ink.fill)
        if course.demand.low and not math.isnan(course.demand.low[week]):
            x = cell.center().x()
            self._painter.setPen(QPen(self._kit.theme.text, 1))
            ends = (self._y(box, course.demand.low[week], high), self._y(box, course.demand.high[week], high))
            self._painter.drawLine(QLineF(x, ends[0], x, ends[1]))
            for y in ends:
                self._painter.drawLine(QLineF(x - 2, y, x + 2, y))

    @staticmethod
    def _y(box: QRectF, value: float, high: float) -> float:
        return box.bottom() - box.height() * min(max(value / high, 0), 1)

    def _span(self, box: QRectF, course: ElementCourse, high: float) -> None:
        if not course.supply.low:
            return
        colour = QColor(self._kit.theme.accent)
        colour.setAlphaF(_SPAN)
        for week in self._seen:
            low, top = course.supply.low[week], course.supply.high[week]
            if math.isnan(low) or math.isnan(top):
                continue
            y0, y1 = self._y(box, top, high), self._y(box, low, high)
            self._painter.fillRect(QRectF(self._chart.x_of(week), y0, self._px, y1 - y0), colour)

    def _steps(self, box: QRectF, values: Sequence[float], high: float, pen: QPen) -> None:
        points: list[QPointF] = []
        self._painter.setPen(pen)
        for week in self._seen:
            if math.isnan(values[week]):
                self._painter.drawPolyline(QPolygonF(points))
                points = []
                continue
            y = self._y(box, values[week], high)
            points += [QPointF(self._chart.x_of(week), y), QPointF(self._chart.x_of(week + 1), y)]
        self._painter.drawPolyline(QPolygonF(points))

    def _ratio(self, top: float, height: float) -> None:
        theme = self._kit.theme
        verdicts = self._weeks.verdicts
        ratios = [math.nan if v.feed_ratio_g_per_m2_d is None else v.feed_ratio_g_per_m2_d for v in verdicts]
        bands = [max(v.uvi_band[1], v.fao_band[1] if v.fao_band else 0) for v in verdicts]
        # A week with hardly any plants has a ratio beyond all measure; it runs along the upper edge.
        high = nice_top(max(bands, default=1.0) * _HEADROOM or 1.0)
        words = tr("to {top} g/m²/d", top=gram_words(high))
        self._name(top, height, tr("Feed-rate ratio"), words, strong=True)
        box = self._clipped(top, height).adjusted(0, _GAP, 0, -2)
        self._stripe(
            box,
            high,
            [v.uvi_band for v in verdicts],
            ("p", "spacing", self._ruled(tr("UVI band"), AreaRule.UVI)),
        )
        self._stripe(
            box,
            high,
            [v.fao_band for v in verdicts],
            ("mg", "germination", self._ruled(tr("FAO band"), AreaRule.FAO)),
        )
        self._steps(box, ratios, high, QPen(theme.text, 2))
        self._painter.restore()

    def _ruled(self, words: str, rule: AreaRule) -> str:
        """Return the name of a band, marked when it is the one that was picked."""
        return f"✓ {words}" if self._chart.rule is rule else words

    def _stripe(
        self,
        box: QRectF,
        high: float,
        bands: Sequence[tuple[float, float] | None],
        look: tuple[str, str, str],
    ) -> None:
        element, pattern, words = look
        theme = self._kit.theme
        fill = mixed(theme.element_colour(element), theme.field, _SPAN)
        hatch = self._kit.hatch(pattern, mixed(theme.text, fill, 0.14))
        first: QRectF | None = None
        for week in self._seen:
            band = bands[week]
            if band is None:
                continue
            y0, y1 = self._y(box, band[1], high), self._y(box, band[0], high)
            cell = QRectF(self._chart.x_of(week), y0, self._px, y1 - y0)
            first = first or cell
            self._painter.fillRect(cell, fill)
            self._painter.fillRect(cell, hatch)
        if first is not None:
            self._painter.setPen(theme.text)
            room = QRectF(max(first.x(), self._left) + 4, first.y(), self._right, max(first.height(), 10))
            self._kit.write(self._painter, room, words, face=Face.SMALL)

    def _marks(self, whole: QRectF) -> None:
        self._clipped(0, whole.bottom())
        theme = self._kit.theme
        if 0 <= self._chart.today_week < len(self._weeks.verdicts):
            x = self._chart.x_of(self._chart.today_week + 0.5)
            self._painter.setPen(QPen(theme.today, 1.6))
            self._painter.drawLine(QLineF(x, 0, x, whole.bottom()))
        box = QRectF(self._chart.x_of(self._chart.week), 1, self._px, whole.bottom() - 3)
        self._painter.setBrush(Qt.BrushStyle.NoBrush)
        self._painter.setPen(QPen(theme.accent, 2.4 if self._chart.hasFocus() else 1.6))
        self._painter.drawRect(box)
        self._painter.restore()
