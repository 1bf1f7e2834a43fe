"""The maintenance calendar: what is looked after every how many weeks, with a box where it is due.

Must not know layout or toolkits.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from datetime import date
from typing import Any, Final

from planner.farm.farm import DAYS_PER_WEEK
from planner.paper.documents.ask import Ask
from planner.paper.documents.columns import LOG_SIZE, TICK, TICK_MM, WALL_SIZE, WRITE, says, told, written
from planner.paper.report import Column, Report, RowGroup, Section, Size, Table, Tone
from planner.paper.sheet_files import sheet_file
from planner.paper.words import NO_BREAK, short_day_words, week_name, week_start

TITLE: Final = "Maintenance calendar"
_WEEKS_ACROSS: Final = {False: 8, True: 12}
_BENCH_TASK: Final = Size(best_pt=14.0, least_pt=12.0)
_WALL_DETAIL: Final = Size(best_pt=14.0, least_pt=14.0)
_NOT_DUE: Final = "–"
_CAUTIONS: Final = ("electricity-near-water", "animals", "slips-and-drowning")
_HOW_TO: Final = (
    "A box is drawn in the week in which a task is due: tick it and write your initials beside the box."
)


def maintenance(ask: Ask) -> Report:
    """Return the calendar, some weeks across; more weeks go on below."""
    across = _WEEKS_ACROSS[ask.large]
    starts = list(ask.week_starts())
    parts = [starts[at : at + across] for at in range(0, len(starts), across)]
    tables = tuple(
        Section(parts=(_table(ask, part),), new_page=number > 0) for number, part in enumerate(parts)
    )
    care = Section(parts=ask.cautions(*_CAUTIONS), columns=3)
    return ask.report(
        TITLE, (*tables, care), subtitle=ask.span_words, header_lines=(_HOW_TO,), landscape=True
    )


def _table(ask: Ask, starts: Sequence[date]) -> Table:
    rows = tuple(
        (
            says(task["name"], tone=Tone.MAIN),
            says(_every_words(task["every_weeks"])),
            *(TICK if _is_due(ask, task["every_weeks"], start) else says(_NOT_DUE) for start in starts),
            WRITE,
        )
        for task in _tasks(ask)
    )
    name = f"{week_name(starts[0], ask.starts)} to {week_name(starts[-1], ask.starts)}"
    return Table(name=name, columns=tuple(_columns(ask, starts)), groups=(RowGroup(rows=rows),))


def _columns(ask: Ask, starts: Sequence[date]) -> Iterator[Column]:
    yield told(
        "task",
        "Task",
        mm=100.0 if ask.large else 62.0,
        share=6.0,
        main=WALL_SIZE if ask.large else _BENCH_TASK,
    )
    yield told("every", "How often", mm=24.0, share=0.2, detail=_WALL_DETAIL if ask.large else LOG_SIZE)
    for start in starts:
        name, _ = ask.week_head(start)
        yield written(name, name, unit=short_day_words(start), mm=TICK_MM, share=0.2)
    yield written("last", "Last done", unit="date", mm=20.0, share=0.3)


def _tasks(ask: Ask) -> Iterator[Mapping[str, Any]]:
    """Yield the tasks that make sense on the farm."""
    there = {bed.kind.value for bed in ask.farm.beds} | ({"filter"} if ask.farm.filters else set())
    for task in sheet_file("maintenance")["task"]:
        if not task["where"] or task["where"] in there:
            yield task


def _every_words(weeks: int) -> str:
    return "every week" if weeks == 1 else f"every {weeks}{NO_BREAK}weeks"


def _is_due(ask: Ask, every: int, start: date) -> bool:
    """Tell whether a task is due in a week; weeks count from the first of the plan, so no print moves "
    "them.
    """
    first = week_start(ask.farm.settings.plan_from, ask.starts)
    return (start - first).days // DAYS_PER_WEEK % every == 0
