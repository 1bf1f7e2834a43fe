"""The weekly task sheet: what is due day by day, with a box to tick, initials and time.

Must not know layout or toolkits.
"""

from __future__ import annotations

from collections.abc import Iterator
from datetime import date, timedelta
from itertools import groupby
from typing import Final

from planner.farm.crops import Batch, Phase
from planner.farm.farm import DAYS_PER_WEEK, by_id
from planner.farm.fields import Id
from planner.farm.log import Happening
from planner.forecast.values import GroupForecast
from planner.forecast.water.readings import reading_figures
from planner.forecast.week import SOLIDS_CAUTION, DueKind, DueTask, DueUnit, due_between, solids_due
from planner.paper.documents.amounts import ration_words
from planner.paper.documents.ask import Ask
from planner.paper.documents.columns import BENCH_SIZE, TICK, WRITE, says, ticked, told, written
from planner.paper.documents.quantities import QUANTITY_NAMES
from planner.paper.places import PlaceBook, tray_words
from planner.paper.report import Cell, Column, Report, RowGroup, Section, Table, Tone
from planner.paper.words import NO_BREAK, count_words, day_words, list_words, whole_words
from planner.planning.late import LateTask, late_tasks

TITLE: Final = "Week's tasks"
_TABLE: Final = "Tasks"
_VERBS: Final = {
    DueKind.SOW: "Sow",
    DueKind.SPACE: "Space out",
    DueKind.MOVE: "Move to bed",
    DueKind.PICK: "Pick",
    DueKind.CLEAR: "Clear and clean",
    DueKind.STOCK_FISH: "Stock fish",
    DueKind.HARVEST_FISH: "Harvest fish",
    DueKind.DOSE: "Give to the water",
}
_LATE_KINDS: Final = {
    Happening.SOWN: DueKind.SOW,
    Happening.MOVED: DueKind.MOVE,
    Happening.PICKED: DueKind.PICK,
}
_SOLIDS_VERBS: Final = {
    DueKind.SIPHON: "Siphon solids",
    DueKind.FILL_MINERALISER: "Take out solids",
    DueKind.RETURN_LIQUOR: "Give liquor back",
}
_PHASES: Final = {
    DueKind.SPACE: Phase.SPACING,
    DueKind.MOVE: Phase.BED,
    DueKind.PICK: Phase.BED,
    DueKind.CLEAR: Phase.BED,
}
_UNIT_WORDS: Final = {
    DueUnit.SEEDS: "seeds",
    DueUnit.PLANTS: "plants",
    DueUnit.FISH: "fish",
    DueUnit.G: "g",
    DueUnit.G_PER_DAY: "g a day",
}
_LOOK: Final = "pumps, air, flow, water level, leaks, fish, dead or odd fish, water temperature"
_LEAVINGS: Final = "feed is the most to give: stop when they stop eating, take out what is left"
_BLANK_ROWS: Final = 3
_RISKS: Final = {
    DueKind.STOCK_FISH: ("species-law", "fish-welfare"),
    DueKind.HARVEST_FISH: ("fish-welfare", "fish-as-food"),
}
_CAUTIONS: Final = ("ill-workers", "slips-and-drowning", "water-on-leaves")


def week_tasks(ask: Ask) -> Report:
    """Return the task sheet, one page or more for each week."""
    sheet = _Sheet(ask)
    sections = tuple(
        section for number, start in enumerate(ask.week_starts()) for section in sheet.week(start, number)
    )
    return ask.report(TITLE, sections, subtitle=ask.span_words, header_lines=(_HOW_TO,))


_HOW_TO: Final = (
    "Tick when done and write your initials and the time. What was not done goes on to next week."
)


class _Sheet:
    """Gathers what the sheets of one farm say."""

    def __init__(self, ask: Ask) -> None:
        self._ask = ask
        self._batches: dict[Id, Batch] = by_id(ask.farm.batches)
        self._places = PlaceBook(ask.farm)

    def week(self, start: date, number: int) -> Iterator[Section]:
        """Yield a week's tasks, and on the first page the cautions that belong to the work."""
        name, days = self._ask.week_head(start)
        table = Table(name=f"{_TABLE} {name}", columns=_columns(), groups=tuple(self._groups(start)))
        heading = f"{name}, {days}" if self._ask.weeks > 1 else ""
        yield Section(heading=heading, parts=(table,), new_page=number > 0)
        first = self._ask.forecast.ruler.day_of(start)
        found = solids_due(
            self._ask.farm, self._ask.forecast, first_day=first, last_day=first + DAYS_PER_WEEK
        )
        solids = (SOLIDS_CAUTION,) if any(True for _ in found) else ()
        keys = dict.fromkeys((*_CAUTIONS, *solids, *self._risks(start)))
        yield Section(parts=self._ask.cautions(*keys), columns=2)

    def _risks(self, start: date) -> Iterator[str]:
        """Yield the cautions that belong to what is due in a week: bases, fish that come or go."""
        for many in self._due(start).values():
            for task in many:
                yield from _RISKS.get(task.kind, ())
                if task.kind is DueKind.DOSE:
                    yield from self._ask.catalogue.supplements[task.what].cautions

    def _groups(self, start: date) -> Iterator[RowGroup]:
        late = tuple(self._late(start)) if start == self._ask.first else ()
        if late:
            yield RowGroup(heading="Carried over, not noted as done", rows=late)
        yield RowGroup(heading="Every day", detail=_LEAVINGS, rows=tuple(self._daily(start)))
        tasks = self._tasks(start)
        for offset in range(DAYS_PER_WEEK):
            on = start + timedelta(days=offset)
            rows = [*(self._tests() if offset == 0 else ()), *tasks.get(on, ()), *self._solids(on)]
            yield RowGroup(heading=day_words(on), rows=tuple(rows), empty="" if rows else "nothing is due")
        blank = (TICK, WRITE, WRITE, WRITE, WRITE, WRITE)
        yield RowGroup(heading="Left from last week, and what else came up", rows=(blank,) * _BLANK_ROWS)

    def _late(self, start: date) -> Iterator[tuple[Cell, ...]]:
        """Yield what was due before a week, and was not noted as done by the day of printing."""
        today = min(self._ask.printed_on.date(), self._ask.last)
        ruler = self._ask.forecast.ruler
        for late in late_tasks(self._ask.farm, self._ask.forecast, today):
            if late.due_on >= start:
                continue
            day, kind = ruler.day_of(late.due_on), _LATE_KINDS[late.what]
            due = due_between(self._ask.farm, self._ask.forecast, first_day=max(day, 0), last_day=day + 1)
            task = next((one for one in due if one.about == late.batch and one.kind is kind), None)
            when = f"due {day_words(late.due_on)}, {count_words(late.late_days, 'day', 'days')} late"
            yield self._row(task, when) if task is not None else self._bare_row(late, when)

    def _bare_row(self, late: LateTask, when: str) -> tuple[Cell, ...]:
        code = self._batches[late.batch].code
        return (TICK, says(_VERBS[_LATE_KINDS[late.what]], code, when, tone=Tone.MAIN), *(WRITE,) * 4)

    def _tasks(self, start: date) -> dict[date, list[tuple[Cell, ...]]]:
        return {on: [self._row(task) for task in many] for on, many in self._due(start).items()}

    def _due(self, start: date) -> dict[date, list[DueTask]]:
        first = self._ask.forecast.ruler.day_of(start)
        tasks = due_between(
            self._ask.farm,
            self._ask.forecast,
            first_day=max(first, 0),
            last_day=max(first + DAYS_PER_WEEK, 0),
        )
        listed = [task for task in tasks if task.kind is not DueKind.FEED]
        return {on: list(many) for on, many in groupby(listed, key=_on)}

    def _row(self, task: DueTask, when: str = "") -> tuple[Cell, ...]:
        many = whole_words(round(task.many)) if task.unit is not DueUnit.G else f"{task.many:,.0f}"
        return (
            TICK,
            says(_VERBS[task.kind], *self._what(task), when, tone=Tone.MAIN),
            says(many, _UNIT_WORDS[task.unit], tone=Tone.MAIN, value=many),
            says(*self._where(task)),
            WRITE,
            WRITE,
        )

    def _what(self, task: DueTask) -> tuple[str, ...]:
        if task.kind is DueKind.DOSE:
            return (self._ask.catalogue.supplements[task.what].name,)
        batch = self._batches.get(task.about)
        if batch is None:
            return (task.what,)
        crop = self._ask.catalogue.crops[batch.crop].name
        return (f"{crop}, {batch.variety}" if batch.variety else crop, batch.code)

    def _where(self, task: DueTask) -> tuple[str, ...]:
        batch = self._batches.get(task.about)
        if batch is None:
            return ()
        if task.kind is DueKind.SOW:
            return tray_words(self._places, batch, round(task.many))
        return self._places.where(batch, _PHASES[task.kind])

    def _daily(self, start: date) -> Iterator[tuple[Cell, ...]]:
        week = self._ask.forecast.ruler.week_of(start)
        tanks = {tank.id: tank.name for tank in self._ask.farm.tanks}
        for loop in self._ask.forecast.loops:
            for group in loop.groups:
                fed, before = (_fed_g(group, at) for at in (week, week - 1))
                if fed:
                    yield self._feed_row(group.name, tanks[group.tank], fed, before)
        yield (TICK, says("Look", _LOOK, tone=Tone.MAIN), WRITE, WRITE, WRITE, WRITE)

    def _feed_row(self, name: str, tank: str, fed_g: float, before_g: float | None) -> tuple[Cell, ...]:
        change = "" if before_g is None else f"week before: {ration_words(before_g)}"
        return (
            TICK,
            says("Feed", name, tone=Tone.MAIN),
            says(ration_words(fed_g), "a day", tone=Tone.MAIN, value=f"{fed_g:.0f}"),
            says(tank, change),
            WRITE,
            WRITE,
        )

    def _tests(self) -> Iterator[tuple[Cell, ...]]:
        every = reading_figures(self._ask.catalogue).every_days
        weekly = [QUANTITY_NAMES[q] for q, figure in every.items() if figure.value <= DAYS_PER_WEEK]
        rarer = [
            f"{QUANTITY_NAMES[q]} every {figure.value:.0f}{NO_BREAK}days"
            for q, figure in every.items()
            if figure.value > DAYS_PER_WEEK
        ]
        what = f"{list_words(weekly)}; {list_words(rarer)}" if rarer else list_words(weekly)
        for loop in self._ask.farm.loops:
            yield (
                TICK,
                says("Test the water", what, tone=Tone.MAIN),
                says("before", "feeding"),
                says(loop.name),
                WRITE,
                WRITE,
            )

    def _solids(self, on: date) -> Iterator[tuple[Cell, ...]]:
        day = self._ask.forecast.ruler.day_of(on)
        for task in solids_due(self._ask.farm, self._ask.forecast, first_day=day, last_day=day + 1):
            yield (
                TICK,
                says(_SOLIDS_VERBS[task.kind], task.what, tone=Tone.MAIN),
                WRITE,
                says("not on leaves"),
                WRITE,
                WRITE,
            )


def _on(task: DueTask) -> date:
    return task.on


def _fed_g(group: GroupForecast, week: int) -> float | None:
    """Return a day's feed in a week of the forecast, None outside of it."""
    days = group.feed_g[week * DAYS_PER_WEEK : (week + 1) * DAYS_PER_WEEK] if week >= 0 else group.feed_g[:0]
    return float(days.mean()) if days.size else None


def _columns() -> tuple[Column, ...]:
    return (
        ticked(),
        told("what", "What", mm=45.0, share=4.0, main=BENCH_SIZE),
        told("many", "How many", mm=22.0, share=0.5, main=BENCH_SIZE, right=True),
        told("where", "Where", mm=36.0, share=3.0),
        written("initials", "Initials", share=0.2),
        written("time", "Time", share=0.2),
    )
