"""What is due in a week in words, as ready rows.

The tasks come from the forecast; here they only get their words. Must know nothing of widgets.
"""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date, timedelta
from typing import Final

from planner.desk.late import brief_words, cost_words, late_words
from planner.desk.outlook import Outlook
from planner.desk.pages import Ask, Entered, Shifted
from planner.desk.rations import feed_words
from planner.desk.rows import Row
from planner.desk.say import tr
from planner.desk.why.late import late_asked
from planner.desk.words import day_words, number_words, short_day_words
from planner.farm.farm import DAYS_PER_WEEK
from planner.farm.log import Happening
from planner.forecast.week import OF_SOLIDS, DueKind, DueTask, DueUnit, DueWhere, due_in_week
from planner.forecast.why.values import Subject, SubjectKind
from planner.planning.late import CarriedOver

VERBS: Final = {
    DueKind.SOW: "Sow",
    DueKind.SPACE: "Space",
    DueKind.MOVE: "Move",
    DueKind.PICK: "Pick",
    DueKind.CLEAR: "Clear",
    DueKind.STOCK_FISH: "Stock",
    DueKind.HARVEST_FISH: "Catch",
    DueKind.FEED: "Feed",
    DueKind.DOSE: "Dose",
    DueKind.SIPHON: "Siphon",
    DueKind.FILL_MINERALISER: "Fill",
    DueKind.RETURN_LIQUOR: "Return",
}
_COUNTED: Final = {
    DueUnit.SEEDS: "{many} seeds",
    DueUnit.PLANTS: "{many} plants",
    DueUnit.FISH: "{many} fish",
    DueUnit.G_PER_DAY: "{many} g a day",
    DueUnit.G: "{many} g",
    DueUnit.DAYS: "{many} days",
}
_TINT: Final = {
    DueKind.SOW: 0,
    DueKind.SPACE: 1,
    DueKind.MOVE: 1,
    DueKind.PICK: 2,
    DueKind.CLEAR: 4,
    DueKind.STOCK_FISH: 5,
    DueKind.HARVEST_FISH: 5,
    DueKind.FEED: 5,
    DueKind.DOSE: 3,
    DueKind.SIPHON: 3,
    DueKind.FILL_MINERALISER: 3,
    DueKind.RETURN_LIQUOR: 3,
}
_LATE_KINDS: Final = {
    Happening.SOWN: DueKind.SOW,
    Happening.MOVED: DueKind.MOVE,
    Happening.PICKED: DueKind.PICK,
}


@dataclass(frozen=True, slots=True, kw_only=True)
class DueLine:
    """The words of one task; `day` stands over the first task of a day only."""

    day: str
    verb: str
    tint: int
    main: str
    where: str


def due_rows(outlook: Outlook, monday: date) -> tuple[Row, ...]:
    """Return what is due in the week that begins on `monday`, in order; empty outside the plan."""
    if not outlook.covers(monday):
        return ()
    tasks = due_in_week(outlook.farm, outlook.forecast, outlook.week_of(monday))
    rows = []
    before: date | None = None
    for at, task in enumerate(tasks):
        line = _line(task, outlook, new_day=task.on != before)
        before = task.on
        rows.append(_row(task, line, at, due_ask(task, outlook)))
    return tuple(rows)


def late_rows(outlook: Outlook, late: tuple[CarriedOver, ...]) -> tuple[Row, ...]:
    """Return the tasks that were not done in time, under a heading of their own, with what they cost."""
    rows = []
    for at, one in enumerate(late):
        main, cost = brief_words(one, outlook)
        kind = _LATE_KINDS[one.what]
        head = tr("Carried over") if at == 0 else ""
        line = DueLine(day=head, verb=tr(VERBS[kind]), tint=_TINT[kind], main=main, where=cost)
        spoken = f"{late_words(one, outlook)}, {cost_words(one, outlook)}"
        row = Row(
            id=one.batch,
            texts=(main,),
            sort=(at,),
            spoken=spoken,
            payload=line,
            asks=(late_asked(one, outlook),),
        )
        rows.append(row)
    return tuple(rows)


def _row(task: DueTask, line: DueLine, at: int, ask: Ask) -> Row:
    spoken = ", ".join(part for part in (day_words(task.on), line.verb, line.main, line.where) if part)
    return Row(
        id=task.about,
        texts=(f"{line.verb}: {line.main}",),
        sort=(at,),
        spoken=spoken,
        payload=line,
        asks=(ask,),
    )


def due_ask(task: DueTask, outlook: Outlook) -> Ask:
    """Return what the number of a task is asked: how it is worked out, or the field it was typed into."""
    field = _TYPED.get(task.kind)
    if field is not None:
        return Entered(about=task.about, field=field)
    kind = _WORKED_OUT.get(task.kind)
    if kind is None:
        siphoned = Entered(about=task.about, field="siphoned_on")
        began = task.on - timedelta(days=int(task.many))
        return Shifted(title="days of rotting", ask=siphoned, old_on=began, new_on=task.on)
    day = outlook.forecast.ruler.day_of(task.on)
    return Subject(kind=kind, about=task.about, day=day, week=day // DAYS_PER_WEEK)


_TYPED: Final = {
    DueKind.SPACE: "plants",
    DueKind.MOVE: "plants",
    DueKind.CLEAR: "plants",
    DueKind.STOCK_FISH: "count",
    DueKind.DOSE: "grams",
    DueKind.SIPHON: "solids_settled_siphoned_every_days",
    DueKind.FILL_MINERALISER: "days",
}
_WORKED_OUT: Final = {
    DueKind.SOW: SubjectKind.SEEDS,
    DueKind.PICK: SubjectKind.PICKED,
    DueKind.HARVEST_FISH: SubjectKind.FISH_HARVEST_COUNT,
    DueKind.FEED: SubjectKind.GROUP_FEED,
}


def _line(task: DueTask, outlook: Outlook, *, new_day: bool) -> DueLine:
    return DueLine(
        day=short_day_words(task.on) if new_day else "",
        verb=tr(VERBS[task.kind]),
        tint=_TINT[task.kind],
        main=f"{_counted(task)} · {_what(task, outlook)}",
        where=_where_or_care(task),
    )


def _where_or_care(task: DueTask) -> str:
    """Return where to do a task; of solids, which have no place, how to handle them."""
    if task.kind in OF_SOLIDS:
        return tr("as manure: below the leaf, not on a harvest day, own tools")
    return " · ".join(part for part in (where_words(task.where), task.what if task.crop else "") if part)


def _counted(task: DueTask) -> str:
    many = float(task.many)
    if task.unit is DueUnit.G_PER_DAY:
        return tr(_COUNTED[task.unit], many=feed_words(many))
    digits = 1 if task.unit is DueUnit.G and many % 1 else 0
    return tr(_COUNTED[task.unit], many=number_words(many, digits=digits))


def _what(task: DueTask, outlook: Outlook) -> str:
    if task.kind is DueKind.DOSE:
        found = outlook.catalogue.supplements.get(task.what)
        return found.name if found else task.what
    return outlook.crop_name(task.crop) if task.crop else task.what


def where_words(where: tuple[DueWhere, ...]) -> str:
    """Return where something stands, such as "North raft 3: 1–12" for places 1 to 12 of its third raft."""
    return "; ".join(_where(each) for each in where)


def _where(where: DueWhere) -> str:
    if not where.unit:
        return where.bed
    if where.first == where.last:
        return tr("{bed} {unit}: {first}", bed=where.bed, unit=where.unit, first=where.first)
    return tr(
        "{bed} {unit}: {first}–{last}",
        bed=where.bed,
        unit=where.unit,
        first=where.first,
        last=where.last,
    )
