"""What goes into a phone's calendar: one all-day event for each thing that is due, by who does it.

An event keeps its key when what it is about moves to another day. Must not know the calendar format.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass, replace
from datetime import date, timedelta
from enum import Enum
from typing import Final

from planner.catalogue.catalogue import Catalogue
from planner.farm.farm import DAYS_PER_WEEK, Farm, by_id
from planner.farm.fields import Id
from planner.farm.fish import FishEventKind
from planner.farm.ids import id_from
from planner.farm.water import Dose, Quantity
from planner.forecast.values import Forecast
from planner.forecast.water.readings import due_tests, reading_figures
from planner.forecast.week import DueKind, DueTask, due_between, solids_due
from planner.paper.plain_names import one_line
from planner.paper.sentences import amount_words, wheres_words
from planner.paper.words import list_words, whole_words


class Role(Enum):
    """Whose calendar it is: everything, the plants, the daily round, or what comes of it."""

    ALL = "all"
    GROWER = "grower"
    CARETAKER = "caretaker"
    OWNER = "owner"


class EventKind(Enum):
    """What sort of work an event is; the first nine are those of what is due."""

    SOW = "sow"
    SPACE = "space"
    MOVE = "move"
    PICK = "pick"
    CLEAR = "clear"
    STOCK_FISH = "stock fish"
    HARVEST_FISH = "harvest fish"
    FEED = "feed"
    DOSE = "dose"
    TEST = "test"
    SOLIDS = "solids"
    LIQUOR = "liquor"
    SIPHON = "siphon"


_DONE_BY: Final = {
    Role.ALL: frozenset(EventKind),
    Role.GROWER: frozenset({EventKind.SOW, EventKind.SPACE, EventKind.MOVE, EventKind.PICK, EventKind.CLEAR}),
    Role.CARETAKER: frozenset(
        {
            EventKind.FEED,
            EventKind.DOSE,
            EventKind.TEST,
            EventKind.SOLIDS,
            EventKind.LIQUOR,
            EventKind.SIPHON,
            EventKind.PICK,
        }
    ),
    Role.OWNER: frozenset({EventKind.PICK, EventKind.STOCK_FISH, EventKind.HARVEST_FISH}),
}
_VERBS: Final = {
    EventKind.SOW: "Sow",
    EventKind.SPACE: "Space out",
    EventKind.MOVE: "Move to bed",
    EventKind.PICK: "Pick",
    EventKind.CLEAR: "Clear and clean",
    EventKind.STOCK_FISH: "Stock fish",
    EventKind.HARVEST_FISH: "Harvest fish",
    EventKind.FEED: "Feed",
    EventKind.DOSE: "Dose",
    EventKind.SOLIDS: "Siphon solids into",
    EventKind.LIQUOR: "Return the liquor of",
    EventKind.SIPHON: "Siphon the solids of",
}
_KINDS_OF_SOLIDS: Final = {"fill mineraliser": EventKind.SOLIDS, "return liquor": EventKind.LIQUOR}
"""Tasks of solids batches, by what is due, as the events they are here."""

_CAUTIONS: Final = {
    EventKind.PICK: ("water-on-leaves",),
    EventKind.STOCK_FISH: ("species-law", "fish-welfare"),
    EventKind.HARVEST_FISH: ("fish-welfare", "fish-as-food"),
    EventKind.SOLIDS: ("solids-as-manure",),
    EventKind.LIQUOR: ("solids-as-manure",),
    EventKind.SIPHON: ("solids-as-manure",),
}
_FEED_ADVICE: Final = "Weigh it. Give no more than they eat, and take out what is left."
_TEST_WORDS: Final = {
    Quantity.PH: "pH",
    Quantity.TAN_MG_PER_L: "ammonia",
    Quantity.NITRITE_N_MG_PER_L: "nitrite",
    Quantity.NITRATE_N_MG_PER_L: "nitrate",
    Quantity.WATER_C: "water temperature",
    Quantity.EC_MS_PER_CM: "conductivity",
    Quantity.OXYGEN_MG_PER_L: "oxygen",
    Quantity.ALKALINITY_MG_PER_L: "alkalinity",
}
_SPOKEN: Final = "calendar event"


@dataclass(frozen=True, slots=True, kw_only=True)
class CalendarEvent:
    """One thing to do, from a day up to the day before `until_on`."""

    uid: Id
    kind: EventKind
    on: date
    until_on: date
    title: str
    text: str
    where: str = ""


def calendar_events(
    farm: Farm, forecast: Forecast, catalogue: Catalogue, *, first_day: int, last_day: int, role: Role
) -> tuple[CalendarEvent, ...]:
    """Return the events of a role from `first_day` up to the day before `last_day`, by date.

    `catalogue` has the farm's own entries laid over it.
    """
    wanted = _DONE_BY[role]
    writer = _Writer(farm, forecast, catalogue)
    tasks = due_between(farm, forecast, first_day=first_day, last_day=last_day)
    events = [event for event in writer.of_tasks(tasks) if event.kind in wanted]
    span = _Span(forecast.ruler.date_of(first_day), forecast.ruler.date_of(last_day))
    if EventKind.TEST in wanted:
        events += writer.of_tests(span)
    if EventKind.SOLIDS in wanted:
        solids = solids_due(farm, forecast, first_day=first_day, last_day=last_day)
        events += writer.of_solids(solids)
    by_key = {event.uid: event for event in events}
    return tuple(sorted(by_key.values(), key=_order))


def _order(event: CalendarEvent) -> tuple[date, str, str]:
    return event.on, event.kind.value, event.title


@dataclass(frozen=True, slots=True)
class _Span:
    """Days from the first up to the one before `behind`."""

    first: date
    behind: date

    def __contains__(self, on: date) -> bool:
        return self.first <= on < self.behind


class _Writer:
    """Puts what is due on one farm into events."""

    def __init__(self, farm: Farm, forecast: Forecast, catalogue: Catalogue) -> None:
        self._farm, self._forecast, self._catalogue = farm, forecast, catalogue
        self._doses: dict[Id, Dose] = by_id(farm.doses)
        self._harvest_of = {
            (event.group, event.on): event.id
            for event in farm.fish_events
            if event.kind is FishEventKind.HARVEST
        }

    def of_tasks(self, tasks: Iterable[DueTask]) -> Iterator[CalendarEvent]:
        """Yield an event for each task; the picks of a batch in one week of its harvest are one."""
        picks: dict[Id, CalendarEvent] = {}
        for task in tasks:
            event = self._event(task)
            if event.kind is not EventKind.PICK:
                yield event
            elif event.uid in picks:
                picks[event.uid] = replace(picks[event.uid], until_on=event.until_on)
            else:
                picks[event.uid] = event
        yield from picks.values()

    def _event(self, task: DueTask) -> CalendarEvent:
        kind = _kind_of(task)
        name = self._name(task)
        where = one_line(list_words(wheres_words(task.where)))
        days = DAYS_PER_WEEK if kind is EventKind.FEED else 1
        return CalendarEvent(
            uid=id_from(_SPOKEN, task.about, kind.value, self._number(task)),
            kind=kind,
            on=task.on,
            until_on=task.on + timedelta(days=days),
            title=f"{_VERBS[kind]} {name}: {amount_words(task)}",
            text="\n\n".join(self._paragraphs(task, kind)),
            where=where,
        )

    def _name(self, task: DueTask) -> str:
        if task.kind is DueKind.DOSE:
            known = self._catalogue.supplements.get(task.what)
            return one_line(known.name if known else task.what)
        crop = self._catalogue.crops.get(task.crop)
        return one_line(f"{task.what} {crop.name}" if crop else task.what)

    def _number(self, task: DueTask) -> str:
        """Return which one of its kind a task is, counted so that it stays when all move together."""
        match task.kind:
            case DueKind.PICK:
                row = self._forecast.batches.row_of[task.about]
                first, _ = self._forecast.batches.pick_days(row)
                return str((self._forecast.ruler.day_of(task.on) - first) // DAYS_PER_WEEK)
            case DueKind.DOSE:
                dose = self._doses[task.about]
                return str((task.on - dose.on).days // max(dose.every_days, 1))
            case DueKind.HARVEST_FISH:
                return self._harvest_of.get((task.about, task.on), task.on.isoformat())
            case DueKind.FEED | DueKind.SIPHON:
                return task.on.isoformat()
            case _:
                return "0"

    def _paragraphs(self, task: DueTask, kind: EventKind) -> Iterator[str]:
        yield f"{_VERBS[kind]} {self._name(task)}: {amount_words(task)}."
        if kind is EventKind.FEED:
            yield _FEED_ADVICE
        keys: Sequence[str] = _CAUTIONS.get(kind, ())
        if task.kind is DueKind.DOSE and task.what in self._catalogue.supplements:
            keys = self._catalogue.supplements[task.what].cautions
        yield from self._warnings(keys)

    def _warnings(self, keys: Iterable[str]) -> Iterator[str]:
        for key in keys:
            caution = self._catalogue.cautions[key]
            yield f"! {caution.topic}: {caution.text}"

    def of_tests(self, span: _Span) -> Iterator[CalendarEvent]:
        """Yield the tests of the water that fall due in each week, on its first day."""
        figures = reading_figures(self._catalogue)
        for loop in self._farm.loops:
            due = due_tests(self._farm.readings, loop=loop.id, today=span.first, figures=figures)
            by_week: dict[date, list[str]] = {}
            for test in due:
                every = timedelta(days=int(figures.every_days[test.quantity].value))
                on = max(test.due_on, span.first)
                while on in span:
                    week = max(self._forecast.ruler.week_start(self._forecast.ruler.week_of(on)), span.first)
                    by_week.setdefault(week, []).append(_TEST_WORDS.get(test.quantity, test.quantity.value))
                    on += every
            for week, words in sorted(by_week.items()):
                yield self._test(loop.id, one_line(loop.name), week, tuple(dict.fromkeys(words)))

    def _test(self, loop: Id, name: str, on: date, words: tuple[str, ...]) -> CalendarEvent:
        week = self._forecast.ruler.week_of(on)
        text = f"Test {list_words(words)}, before feeding. Write down the time and note it in the program."
        return CalendarEvent(
            uid=id_from(
                _SPOKEN, loop, EventKind.TEST.value, self._forecast.ruler.week_start(week).isoformat()
            ),
            kind=EventKind.TEST,
            on=on,
            until_on=on + timedelta(days=1),
            title=f"Test the water of {name}: {', '.join(words)}",
            text=text,
            where=name,
        )

    def of_solids(self, tasks: Iterable[DueTask]) -> Iterator[CalendarEvent]:
        """Yield siphonings, and the days on which solids are set apart and their liquor goes back."""
        for task in tasks:
            kind, name = _kind_of(task), one_line(task.what)
            title = f"{_VERBS[kind]} {name}"
            yield CalendarEvent(
                uid=id_from(_SPOKEN, task.about, kind.value, self._number(task)),
                kind=kind,
                on=task.on,
                until_on=task.on + timedelta(days=1),
                title=title,
                text="\n\n".join((f"{title}.", *self._warnings(_CAUTIONS[kind]))),
            )


def _kind_of(task: DueTask) -> EventKind:
    return _KINDS_OF_SOLIDS.get(task.kind.value) or EventKind(task.kind.value)


def count_line(events: Sequence[CalendarEvent], cancelled: int) -> str:
    """Return how many events there are, for whoever made the file."""
    gone = f", {whole_words(cancelled)} cancelled" if cancelled else ""
    return f"{whole_words(len(events))} event{'' if len(events) == 1 else 's'}{gone}"
