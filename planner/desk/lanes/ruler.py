"""Paints the ruler of years, months, weeks and days above the lanes.

Must know nothing of what the lanes show.
"""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date
from functools import lru_cache
from typing import Final

from PySide6.QtCore import QLineF, QLocale, QPointF, QRectF, Qt
from PySide6.QtGui import QPainter, QPen, QPolygonF

from planner.desk.lanes import words
from planner.desk.lanes.grid import Calendar, current_week, week_tint
from planner.desk.lanes.kit import Face, Kit
from planner.desk.lanes.season_band import paint_seasons, season_height
from planner.desk.lanes.time_scale import Span, TimeScale, Unit, rows_for, units_in, week_number

_PAD: Final = 5.0
_ROW: Final = 1.25
_FLAG: Final = 5.0
_LOWEST: Final = 2
_KEPT_TEXTS: Final = 4096
_KEPT_ROWS: Final = 64
_WEEKS_SHARED: Final = (1, 2, 4)


def ruler_height(kit: Kit, calendar: Calendar) -> float:
    """Return how high the ruler is [px]; lower where no month is called hot or cool, bright or dull."""
    return float(round(3 * kit.text_px * _ROW + _FLAG)) + season_height(kit, calendar)


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
    seasons = season_height(kit, calendar)
    step = (rect.height() - _FLAG - seasons) / 3
    for position, unit in enumerate((rows.upper, rows.middle, rows.lower)):
        band = QRectF(rect.x(), rect.y() + position * step, rect.width(), step)
        row = _Row(
            unit=unit,
            position=position,
            dates=position == _LOWEST and rows.middle is rows.lower,
            from_sunday=calendar.from_sunday,
            long=rows.lower is Unit.DAY,
            locale=QLocale().name(),
        )
        _paint_row(painter, band, scale, kit, row)
    if calendar.months:
        band = QRectF(rect.x(), rect.y() + 3 * step, rect.width(), seasons)
        paint_seasons(painter, band, scale, kit, calendar)
    _paint_flag(painter, rect, scale, kit, calendar)
    painter.setPen(QPen(theme.line, 1))
    painter.drawLine(QLineF(rect.left(), rect.bottom() - 0.5, rect.right(), rect.bottom() - 0.5))
    painter.restore()


@dataclass(frozen=True, slots=True, kw_only=True)
class _Row:
    """One row of the ruler: what it counts and how it is set, and the locale its names are in."""

    unit: Unit
    position: int
    dates: bool
    from_sunday: bool
    long: bool
    locale: str

    @property
    def even(self) -> bool:
        """Tell whether all cells are named in the same form, because they are about equally wide."""
        return self.unit in (Unit.DAY, Unit.WEEK) or self.position == _LOWEST

    @property
    def centred(self) -> bool:
        """Tell whether names stand in the middle of their cells."""
        return self.position == _LOWEST and self.unit in (Unit.DAY, Unit.MONTH)


def _paint_row(painter: QPainter, band: QRectF, scale: TimeScale, kit: Kit, row: _Row) -> None:
    face = (Face.BOLD, Face.PLAIN, Face.SMALL)[row.position]
    cells = _cells_of(band, scale, row)
    _paint_edges(painter, band, cells, kit, row)
    painter.setPen((kit.theme.text, kit.theme.text, kit.theme.muted)[row.position])
    every = _every(row, cells, kit, face)
    texts_of = _texts_by_start(row)
    kept = [
        (texts_of.get(each.start) or _texts(texts_of, row, each), cell)
        for each, cell in cells
        if _kept(row, each, every)
    ]
    form = _common_form(row, kept, every, kit) if row.even else None
    for texts, cell in kept:
        seen = QRectF(cell.x(), cell.y(), cell.width() * every, cell.height()) & band
        if form is not None:
            texts = texts[form : form + 1]  # noqa: PLW2901
        _write_cell(painter, seen, texts, kit, face, centred=row.centred)


def _cells_of(band: QRectF, scale: TimeScale, row: _Row) -> list[tuple[Span, QRectF]]:
    shown = Span(start=scale.whole_day_at(band.left()), end=scale.whole_day_at(band.right()) + 1)
    cells = []
    for each in units_in(row.unit, shown, from_sunday=row.from_sunday):
        left, right = scale.x_of(each.start), scale.x_of(each.end)
        cells.append((each, QRectF(left, band.y(), right - left, band.height())))
    return cells


def _paint_edges(
    painter: QPainter, band: QRectF, cells: list[tuple[Span, QRectF]], kit: Kit, row: _Row
) -> None:
    if row.dates:
        return
    painter.setPen(QPen(kit.theme.line, 1))
    edges = (round(cell.left()) + 0.5 for _, cell in cells)
    painter.drawLines(
        [QLineF(edge, band.top() + (3 if row.position else 0), edge, band.bottom()) for edge in edges]
    )


def _common_form(row: _Row, kept: list[tuple[tuple[str, ...], QRectF]], every: int, kit: Kit) -> int:
    """Return which form of name fits all cells of a row."""
    face = (Face.BOLD, Face.PLAIN, Face.SMALL)[row.position]
    pad = 2.0 if row.centred else _PAD + 1
    room = min((cell.width() * every for _, cell in kept), default=0.0) - pad
    forms = list(zip(*(texts for texts, _ in kept), strict=True))
    fitting = (
        form for form, texts in enumerate(forms) if max(kit.width(text, face) for text in texts) <= room
    )
    return next(fitting, max(len(forms) - 1, 0))


def _write_cell(
    painter: QPainter, seen: QRectF, texts: tuple[str, ...], kit: Kit, face: int, *, centred: bool
) -> None:
    room = seen if centred else seen.adjusted(_PAD, 0, -1, 0)
    text = next((text for text in texts if kit.width(text, face) <= room.width()), "")
    if text:
        kit.write(painter, room, text, face=face, centred=centred)


@lru_cache(maxsize=_KEPT_ROWS)
def _texts_by_start(_row: _Row) -> dict[int, tuple[str, ...]]:
    """Return what is known by now of the names of a row's cells, by the day they start on."""
    return {}


def _texts(known: dict[int, tuple[str, ...]], row: _Row, each: Span) -> tuple[str, ...]:
    """Find the names of a cell, and keep them with what is known."""
    if len(known) >= _KEPT_TEXTS:
        known.clear()
    return known.setdefault(each.start, _names(row, each))


def _names(row: _Row, each: Span) -> tuple[str, ...]:
    """Return the ways to name a cell, longest first."""
    start = each.start
    on = date.fromordinal(start)
    if row.unit is Unit.DAY:
        return (f"{words.weekday_short(start)} {on.day}", str(on.day))
    if row.unit is Unit.WEEK:
        return _week_texts(row, each)
    if row.unit is Unit.MONTH:
        if row.position == 0:
            return (words.month_year(start), words.month_year_short(start), words.month_short(start))
        return (words.month_short(start), words.month_short(start)[:1])
    return (words.quarter_label(start),) if row.unit is Unit.QUARTER else (str(on.year),)


def _week_texts(row: _Row, each: Span) -> tuple[str, ...]:
    if row.dates:
        return (words.day_month(each.start), str(date.fromordinal(each.start).day))
    number = week_number(each.start, from_sunday=row.from_sunday)
    label = words.week_label(number)
    dates = f"{label}   {words.day_month(each.start)} – {words.day_month(each.end - 1)}"
    return (dates, label, f"{number}") if row.long else (label, label, f"{number}")


def _every(row: _Row, cells: list[tuple[Span, QRectF]], kit: Kit, face: int) -> int:
    """Return how many weeks share one label where single weeks are too narrow for theirs."""
    if row.unit is not Unit.WEEK or not cells:
        return 1
    need = kit.width("00", face) + 2 * _PAD
    return next((many for many in _WEEKS_SHARED if many * cells[0][1].width() >= need), _WEEKS_SHARED[-1])


def _kept(row: _Row, each: Span, every: int) -> bool:
    return every == 1 or week_number(each.start, from_sunday=row.from_sunday) % every == 0


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
