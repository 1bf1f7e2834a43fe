"""Paints the ruler of years, months, weeks and days above the lanes.

Must know nothing of what the lanes show.
"""

from __future__ import annotations

from datetime import date
from typing import Final

from PySide6.QtCore import QLineF, QPointF, QRectF, Qt
from PySide6.QtGui import QPainter, QPen, QPolygonF

from planner.desk.lanes import words
from planner.desk.lanes.grid import Calendar, current_week, week_tint
from planner.desk.lanes.kit import Face, Kit
from planner.desk.lanes.time_scale import Rows, Span, TimeScale, Unit, rows_for, units_in, week_number

_PAD: Final = 5.0
_ROW: Final = 1.25
_FLAG: Final = 5.0
_MIDDLE: Final = Qt.AlignmentFlag.AlignHCenter


def ruler_height(kit: Kit) -> float:
    """Return how high the ruler is [px]."""
    return float(round(3 * kit.text_px * _ROW + _FLAG))


def paint_ruler(painter: QPainter, rect: QRectF, scale: TimeScale, kit: Kit, calendar: Calendar) -> None:
    """Paint the three rows of the ruler into `rect`, which begins right of the row names."""
    theme = kit.theme
    painter.save()
    painter.setClipRect(rect, Qt.ClipOperation.IntersectClip)
    painter.fillRect(rect, theme.panel)
    week = current_week(rect, scale, calendar)
    if week is not None:
        painter.fillRect(week, week_tint(theme, theme.panel))
    rows = rows_for(scale.px_per_day)
    step = (rect.height() - _FLAG) / 3
    for position, unit in enumerate((rows.upper, rows.middle, rows.lower)):
        band = QRectF(rect.x(), rect.y() + position * step, rect.width(), step)
        dates = position == 2 and rows.middle is rows.lower
        _paint_row(
            painter, band, scale, kit, _Row(unit=unit, position=position, dates=dates, calendar=calendar)
        )
    _paint_flag(painter, rect, scale, kit, calendar)
    painter.setPen(QPen(theme.line, 1))
    painter.drawLine(QLineF(rect.left(), rect.bottom() - 0.5, rect.right(), rect.bottom() - 0.5))
    painter.restore()


class _Row:
    """One row of the ruler: what it counts and how it is set."""

    __slots__ = ("calendar", "dates", "position", "unit")

    def __init__(self, *, unit: Unit, position: int, dates: bool, calendar: Calendar) -> None:
        self.unit = unit
        self.position = position
        self.dates = dates
        self.calendar = calendar


def _paint_row(painter: QPainter, band: QRectF, scale: TimeScale, kit: Kit, row: _Row) -> None:
    face = (Face.BOLD, Face.PLAIN, Face.SMALL)[row.position]
    ink = (kit.theme.text, kit.theme.text, kit.theme.muted)[row.position]
    shown = Span(start=scale.whole_day_at(band.left()), end=scale.whole_day_at(band.right()) + 1)
    lines = []
    cells = []
    for each in units_in(row.unit, shown, from_sunday=row.calendar.from_sunday):
        left, right = scale.x_of(each.start), scale.x_of(each.end)
        edge = round(left) + 0.5
        if not row.dates:
            lines.append(QLineF(edge, band.top() + (2 if row.position else 0), edge, band.bottom()))
        cells.append((each, QRectF(left, band.y(), right - left, band.height())))
    painter.setPen(QPen(kit.theme.line if row.position < 2 else kit.theme.faint_line, 1))
    painter.drawLines(lines)
    painter.setPen(ink)
    every = _every(row, cells, kit, face)
    for each, cell in cells:
        if _kept(row, each, every):
            _write_cell(painter, band, _widened(cell, every), (kit, face, row, each))


def _widened(cell: QRectF, every: int) -> QRectF:
    return QRectF(cell.x(), cell.y(), cell.width() * every, cell.height())


def _write_cell(painter: QPainter, band: QRectF, cell: QRectF, what: tuple[Kit, Face, _Row, Span]) -> None:
    kit, face, row, each = what
    seen = cell & band
    room = seen.adjusted(_PAD, 0, -_PAD, 0)
    text = next((text for text in _texts(row, each) if kit.width(text, face) <= room.width()), "")
    if not text:
        return
    if row.unit in (Unit.DAY,) or (row.unit is Unit.MONTH and row.position == 2):
        kit.write(painter, seen, text, face=face, align=_MIDDLE)
    else:
        kit.write(painter, room, text, face=face)


def _texts(row: _Row, each: Span) -> tuple[str, ...]:
    """Return the ways to name a cell, longest first; the first that fits is written."""
    start = each.start
    if row.unit is Unit.DAY:
        day = str(date.fromordinal(start).day)
        return (f"{words.weekday_short(start)} {day}", day)
    if row.unit is Unit.WEEK:
        return _week_texts(row, start)
    if row.unit is Unit.MONTH:
        if row.position == 0:
            return (words.month_year(start), words.month_year_short(start), words.month_short(start))
        return (words.month_short(start), words.month_short(start)[:1])
    if row.unit is Unit.QUARTER:
        return (words.quarter_label(start),)
    return (str(date.fromordinal(start).year),)


def _week_texts(row: _Row, start: int) -> tuple[str, ...]:
    if row.dates:
        return (words.day_month(start), str(date.fromordinal(start).day))
    number = week_number(start, from_sunday=row.calendar.from_sunday)
    if row.position == 1 and rows_span_days(row):
        return (words.week_label(number),)
    return (words.week_label(number), f"{number}")


def rows_span_days(row: _Row) -> bool:
    """Tell whether a row of weeks stands above a row of days."""
    return row.position == 1 and not row.dates


def _every(row: _Row, cells: list[tuple[Span, QRectF]], kit: Kit, face: Face) -> int:
    """Return how many weeks share one label where single weeks are too narrow for theirs."""
    if row.unit is not Unit.WEEK or not cells:
        return 1
    room = cells[0][1].width()
    need = kit.width("00", face) + 2 * _PAD
    return 1 if room >= need else 2 if 2 * room >= need else 4


def _kept(row: _Row, each: Span, every: int) -> bool:
    if every == 1:
        return True
    return week_number(each.start, from_sunday=row.calendar.from_sunday) % every == 0


def _paint_flag(painter: QPainter, rect: QRectF, scale: TimeScale, kit: Kit, calendar: Calendar) -> None:
    if calendar.today is None:
        return
    x = scale.x_of(calendar.today + 0.5)
    bottom = rect.bottom()
    painter.setPen(Qt.PenStyle.NoPen)
    painter.setBrush(kit.theme.today)
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    painter.drawPolygon(
        QPolygonF(
            [
                QPointF(x - _FLAG, bottom - 2 * _FLAG),
                QPointF(x + _FLAG, bottom - 2 * _FLAG),
                QPointF(x, bottom),
            ]
        )
    )
    painter.setRenderHint(QPainter.RenderHint.Antialiasing, on=False)


__all__ = ["Rows", "paint_ruler", "ruler_height"]
