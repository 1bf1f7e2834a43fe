"""What runs down through all lanes: lines of days, weeks, months, the current week and today.

Must know nothing of what the lanes show.
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from functools import lru_cache
from typing import Final

from PySide6.QtCore import QLineF, QPointF, QRectF
from PySide6.QtGui import QColor, QPainter, QPen

from planner.desk.lanes.time_scale import DAYS_PER_WEEK, TimeScale, Unit, rows_for, units_in, week_start_of
from planner.desk.theme import Theme, mixed
from planner.forecast.months import Month

_WEEK_TINT: Final = 0.1
_TODAY_WIDTH: Final = 1.6
HATCH_TILE: Final = 8
"""Every hatch repeats after so many pixels, or a part of them."""

_KEPT_PLACES: Final = 16
_COARSER: Final = {Unit.DAY: Unit.WEEK, Unit.WEEK: Unit.MONTH, Unit.MONTH: Unit.YEAR}


@dataclass(frozen=True, slots=True, kw_only=True)
class Calendar:
    """What the lanes must know of the calendar: today, if it shall be marked, and how weeks begin.

    `months` are the twelve months of the site as they are called, January first; empty when none is.
    """

    today: int | None = None
    from_sunday: bool = False
    months: tuple[Month, ...] = ()


def week_tint(theme: Theme, ground: QColor) -> QColor:
    """Return the ground of the current week."""
    return mixed(theme.today, ground, _WEEK_TINT)


def current_week(rect: QRectF, scale: TimeScale, calendar: Calendar) -> QRectF | None:
    """Return where the current week lies, None when it is not in sight."""
    if calendar.today is None:
        return None
    start = week_start_of(calendar.today, from_sunday=calendar.from_sunday)
    left, right = scale.x_of(start), scale.x_of(start + DAYS_PER_WEEK)
    found = QRectF(left, rect.y(), right - left, rect.height()) & rect
    return None if found.isEmpty() else found


def paint_grid(painter: QPainter, rect: QRectF, scale: TimeScale, theme: Theme, calendar: Calendar) -> None:
    """Paint the current week's ground and the lines of the calendar into `rect`."""
    week = current_week(rect, scale, calendar)
    if week is not None:
        painter.fillRect(week, week_tint(theme, theme.field))
    fine = rows_for(scale.px_per_day).grid
    for unit, colour in ((fine, theme.faint_line), (_COARSER[fine], theme.line)):
        painter.setPen(QPen(colour, 1))
        painter.drawLines(_lines(rect, scale, unit, from_sunday=calendar.from_sunday))


def _lines(rect: QRectF, scale: TimeScale, unit: Unit, *, from_sunday: bool) -> list[QLineF]:
    left, right, top, bottom = rect.left(), rect.right(), rect.top(), rect.bottom()
    places = _places(scale, unit, right, from_sunday)
    return [QLineF(x, top, x, bottom) for x in places if left <= x < right]


@lru_cache(maxsize=_KEPT_PLACES)
def _places(scale: TimeScale, unit: Unit, right: float, from_sunday: bool) -> tuple[float, ...]:
    """Return where units begin that are seen up to an x; kept, for all lanes of a frame ask for the same."""
    shown = scale.span(right - scale.left)
    return tuple(
        round(scale.x_of(each.start)) + 0.5 for each in units_in(unit, shown, from_sunday=from_sunday)
    )


def paint_today(painter: QPainter, rect: QRectF, scale: TimeScale, theme: Theme, calendar: Calendar) -> None:
    """Paint the line of today over everything else in `rect`."""
    if calendar.today is None:
        return
    x = scale.x_of(calendar.today + 0.5)
    if rect.left() <= x < rect.right():
        painter.setPen(QPen(theme.today, _TODAY_WIDTH))
        painter.drawLine(QLineF(x, rect.top(), x, rect.bottom()))


def anchor_hatches(painter: QPainter, scale: TimeScale, top: float) -> None:
    """Let hatches begin at a day and a height of the content, so that they move along with it."""
    painter.setBrushOrigin(QPointF(math.fmod(scale.x_of(0), HATCH_TILE), math.fmod(top, HATCH_TILE)))
