"""The year on one sheet for the wall: what is sown and what is picked in each week, by the codes of crops.

Read at a step and a half, so codes are never smaller than 20 pt. Must not know layout or toolkits.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from datetime import date
from typing import Final

from planner.forecast.week import DueKind
from planner.paper.documents.ask import Ask
from planner.paper.documents.columns import says
from planner.paper.report import Cell, Column, Line, Paragraph, Report, RowGroup, Section, Size, Table, Tone
from planner.paper.words import NO_BREAK, short_day_words, week_name

TITLE: Final = "Year poster"
_HALVES: Final = 2
_CODES: Final = Size(best_pt=20.0, least_pt=20.0)
_DATES: Final = Size(best_pt=12.0, least_pt=12.0)
_WEEK_MM: Final = 17.0
_MANY_MM: Final = 60.0
_SOW, _PICK = "▼", "●"
_HOW_TO: Final = (
    f"{_SOW} sow in this week. {_PICK} pick in this week. Each code is a crop; "
    "its name stands after the last week."
)
_MOST_LINES: Final = 6


def year_poster(ask: Ask) -> Report:
    """Return the weeks in two columns, and the names of the codes below."""
    starts = list(ask.week_starts())
    rows = -(-len(starts) // _HALVES)
    columns = tuple(column for half in range(_HALVES) for column in _columns(half))
    work = _work(ask)
    lines = tuple(
        tuple(
            cell
            for half in range(_HALVES)
            for cell in _cells(ask, starts[half * rows + row : half * rows + row + 1], work)
        )
        for row in range(rows)
    )
    table = Table(name="Year", columns=columns, groups=(RowGroup(rows=lines),))
    return ask.report(
        TITLE,
        (Section(parts=(table,)), Section(parts=(Paragraph(text=_names(ask), tone=Tone.MAIN),))),
        subtitle=ask.span_words,
        header_lines=(_HOW_TO,),
    )


def _columns(half: int) -> Iterator[Column]:
    yield Column(
        key=f"week{half}",
        heading="Week",
        share=0.01,
        least_mm=_WEEK_MM,
        main=_DATES,
        detail=_DATES,
        firm=True,
    )
    yield Column(
        key=f"work{half}",
        heading="Sow and pick",
        share=1.0,
        least_mm=_MANY_MM,
        main=_CODES,
        detail=_CODES,
        wrap=_MOST_LINES,
    )


def _work(ask: Ask) -> dict[tuple[date, DueKind], list[str]]:
    """Return the codes of crops that are sown or picked, by the first day of the week, each once."""
    found: dict[tuple[date, DueKind], dict[str, None]] = {}
    for start, tasks in ask.due_by_week().items():
        for task in tasks:
            if task.kind in (DueKind.SOW, DueKind.PICK) and task.crop in ask.catalogue.crops:
                found.setdefault((start, task.kind), {})[ask.catalogue.crops[task.crop].code] = None
    return {key: sorted(codes) for key, codes in found.items()}


def _cells(ask: Ask, start: Iterable[date], work: dict[tuple[date, DueKind], list[str]]) -> tuple[Cell, Cell]:
    for monday in start:
        marks = ((DueKind.SOW, _SOW), (DueKind.PICK, _PICK))
        done = [(mark, work[monday, kind]) for kind, mark in marks if (monday, kind) in work]
        texts = [f"{mark}{NO_BREAK}{' '.join(codes)}" for mark, codes in done]
        lines = (Line(text="  ".join(texts), tone=Tone.STRONG),) if texts else ()
        on = short_day_words(monday).replace(" ", NO_BREAK)
        week = says(week_name(monday, ask.starts), on, tone=Tone.MAIN)
        return week, Cell(lines=lines)
    return Cell(), Cell()


def _names(ask: Ask) -> str:
    """Return every code with its name, of the crops that have sowings on the farm."""
    crops = {
        ask.catalogue.crops[batch.crop] for batch in ask.farm.batches if batch.crop in ask.catalogue.crops
    }
    named = sorted((crop.code, crop.name) for crop in crops)
    return "  ·  ".join(f"{code} {name}" for code, name in named) or "Nothing is sown."
