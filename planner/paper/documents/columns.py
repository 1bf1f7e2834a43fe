"""Columns and cells that many documents share, each with room for wet hands.

Must not know any single document.
"""

from __future__ import annotations

from dataclasses import replace
from typing import Final

from planner.paper.report import Align, Box, Cell, Column, Drawing, Line, Size, Tone

LOG_SIZE: Final = Size(best_pt=11.0, least_pt=11.0)
"""Logs, read with the pen in the hand."""
BENCH_SIZE: Final = Size(best_pt=14.0, least_pt=14.0)
"""Sheets on a bench, read at arm's length."""
WALL_SIZE: Final = Size(best_pt=23.0, least_pt=20.0)
"""Sheets on a wall, read at a step and a half."""

_WRAP: Final = 5

BOX_MM: Final = 15.4
"""Least width of a cell to write in: 15 mm and its rules."""
TICK_MM: Final = 17.8

WRITE: Final = Cell(box=Box.WRITE)
TICK: Final = Cell(box=Box.TICK)
EMPTY: Final = Cell()


def written(
    key: str, heading: str, *, unit: str = "", band: str = "", mm: float = BOX_MM, share: float = 1.0
) -> Column:
    """Return a column that a hand writes in; `band` is what the values should keep to."""
    return Column(
        key=key,
        heading=heading,
        unit=unit,
        band=band,
        share=share,
        least_mm=mm,
        main=LOG_SIZE,
        detail=LOG_SIZE,
        wrap=_WRAP,
        firm=True,
    )


def ticked(key: str = "done", heading: str = "Done") -> Column:
    """Return a column of boxes to tick."""
    return written(key, heading, mm=TICK_MM, share=0.05)


def told(
    key: str,
    heading: str,
    *,
    mm: float,
    unit: str = "",
    share: float = 1.0,
    main: Size = LOG_SIZE,
    detail: Size = LOG_SIZE,
    right: bool = False,
) -> Column:
    """Return a column of printed words or, at the right, of numbers, which are never broken."""
    return Column(
        key=key,
        heading=heading,
        unit=unit,
        share=share,
        least_mm=mm,
        main=main,
        detail=detail,
        align=Align.RIGHT if right else Align.LEFT,
        wrap=_WRAP,
        firm=right,
    )


def dated(*, mm: float) -> Column:
    """Return a column of dates, none of which is broken."""
    return replace(told("date", "Date", mm=mm, share=0.1), firm=True)


def says(*texts: str, tone: Tone = Tone.DETAIL, value: str = "", picture: Drawing | None = None) -> Cell:
    """Return a cell whose first line has a tone and whose others are details; empty texts are left out."""
    first, *rest = [text for text in texts if text] or [""]
    lines = (Line(text=first, tone=tone), *(Line(text=text) for text in rest)) if first else ()
    return Cell(lines=lines, value=value, picture=picture)
