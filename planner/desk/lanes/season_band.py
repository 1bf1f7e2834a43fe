"""Paints on the ruler which months are hot or cool, bright or dull, wet or dry: by word, colour and pattern.

Lies above the lanes, never over them, so that no stage is harder to read. Must know nothing of farms.
"""

from __future__ import annotations

from collections.abc import Iterator
from datetime import date
from typing import Final

from PySide6.QtCore import QLineF, QRectF, Qt
from PySide6.QtGui import QColor, QPainter, QPen

from planner.desk.lanes.grid import Calendar, anchor_hatches
from planner.desk.lanes.kit import Face, Kit
from planner.desk.lanes.time_scale import Span, TimeScale, Unit, units_in
from planner.desk.lanes.words import month_short
from planner.desk.say import tr
from planner.desk.theme import OKABE_ITO, mixed
from planner.forecast.months import Light, Month, Rain, Warmth

_ANY_YEAR: Final = 2001
_LINES: Final = 1.15
_FILL: Final = 0.34
_HATCH: Final = 0.3
_EDGE_PX: Final = 3.0
_PAD: Final = 3.0
_STROKES: Final = (1.5, 1.5)
_PATTERNS: Final = {Warmth.HOT: "bed", Warmth.COOL: "clearing"}
_LIGHT_PATTERNS: Final = {Light.BRIGHT: "spacing", Light.DULL: "nursery"}


def season_height(kit: Kit, calendar: Calendar) -> float:
    """Return how high the band is [px]; nothing where no month is called anything."""
    return float(round(kit.small_px * _LINES)) if calendar.months else 0.0


def month_words(month: Month) -> str:
    """Return what a month is called, such as "hot, dull"."""
    warmth = {Warmth.HOT: tr("hot"), Warmth.COOL: tr("cool")}
    light = {Light.BRIGHT: tr("bright"), Light.DULL: tr("dull")}
    rain = {Rain.WET: tr("wet"), Rain.DRY: tr("dry")}
    parts = []
    if month.warmth is not None:
        parts.append(warmth[month.warmth])
    if month.light is not None:
        parts.append(light[month.light])
    if month.rain is not None:
        parts.append(rain[month.rain])
    return ", ".join(parts)


def seasons_words(months: tuple[Month, ...]) -> str:
    """Return which months are called what, in a sentence for reading aloud; empty when none is."""
    by_word: dict[str, list[str]] = {}
    for number, month in enumerate(months, start=1):
        if not month.plain:
            by_word.setdefault(month_words(month), []).append(
                month_short(date(_ANY_YEAR, number, 1).toordinal())
            )
    lines = (f"{called}: {', '.join(names)}" for called, names in by_word.items())
    return tr("Against the rest of the year: {months}", months="; ".join(lines)) if by_word else ""


def paint_seasons(painter: QPainter, rect: QRectF, scale: TimeScale, kit: Kit, calendar: Calendar) -> None:
    """Paint the months that are called something into a band; the others stay plain."""
    painter.save()
    painter.setClipRect(rect, Qt.ClipOperation.IntersectClip)
    anchor_hatches(painter, scale, rect.top())
    shown = Span(start=scale.whole_day_at(rect.left()), end=scale.whole_day_at(rect.right()) + 1)
    for month, span in _runs(shown, calendar):
        if not month.plain:
            left, right = round(scale.x_of(span.start)), round(scale.x_of(span.end))
            _paint_run(painter, QRectF(left, rect.y(), right - left, rect.height()), rect, month, kit)
    painter.setPen(QPen(kit.theme.line, 1))
    painter.drawLine(QLineF(rect.left(), rect.top() + 0.5, rect.right(), rect.top() + 0.5))
    painter.restore()


def _runs(shown: Span, calendar: Calendar) -> Iterator[tuple[Month, Span]]:
    """Yield the months that are seen; neighbours that are called the same are one."""
    start, called = 0, None
    end = 0
    for span in units_in(Unit.MONTH, shown):
        month = calendar.months[date.fromordinal(span.start).month - 1]
        if month != called:
            if called is not None:
                yield called, Span(start=start, end=end)
            start, called = span.start, month
        end = span.end
    if called is not None:
        yield called, Span(start=start, end=end)


def _paint_run(painter: QPainter, box: QRectF, rect: QRectF, month: Month, kit: Kit) -> None:
    theme = kit.theme
    fill = theme.panel
    if month.warmth is not None:
        fill = mixed(_colour(month.warmth), theme.panel, _FILL)
        painter.fillRect(box, fill)
        painter.fillRect(box, kit.hatch(_PATTERNS[month.warmth], mixed(theme.text, fill, _HATCH)))
    if month.light is not None:
        edge = QRectF(box.x(), box.bottom() - 2 * _EDGE_PX, box.width(), 2 * _EDGE_PX)
        painter.fillRect(edge, kit.hatch(_LIGHT_PATTERNS[month.light], mixed(theme.text, fill, 2 * _HATCH)))
    if month.rain is not None:
        _rain_line(painter, box, month.rain, fill, kit)
    painter.setPen(QPen(theme.line, 1))
    for x in (box.left(), box.right()):
        painter.drawLine(QLineF(x + 0.5, box.top(), x + 0.5, box.bottom()))
    _write(painter, box & rect, month_words(month), fill, kit)


def _rain_line(painter: QPainter, box: QRectF, rain: Rain, fill: QColor, kit: Kit) -> None:
    """Draw a line along the top: whole and blue where it is wet, of short strokes where it is dry."""
    wet = rain is Rain.WET
    blue = QColor(OKABE_ITO["sky blue" if kit.theme.dark else "blue"])
    pen = QPen(blue if wet else mixed(kit.theme.text, fill, 2 * _HATCH), _EDGE_PX)
    pen.setCapStyle(Qt.PenCapStyle.FlatCap)
    if not wet:
        pen.setDashPattern(_STROKES)
    painter.setPen(pen)
    y = box.top() + _EDGE_PX / 2
    painter.drawLine(QLineF(box.left(), y, box.right(), y))


def _colour(warmth: Warmth) -> QColor:
    return QColor(OKABE_ITO["vermilion" if warmth is Warmth.HOT else "sky blue"])


def _write(painter: QPainter, seen: QRectF, text: str, fill: QColor, kit: Kit) -> None:
    width = kit.width(text, Face.SMALL)
    if width + 2 * _PAD > seen.width():
        return
    box = QRectF(seen.center().x() - width / 2, seen.y(), width + 1, seen.height())
    kit.plate(painter, box, fill, width, kit.height(Face.SMALL))
    painter.setPen(kit.theme.text)
    kit.write(painter, box, text, face=Face.SMALL)
