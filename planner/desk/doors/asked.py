"""What can be asked why of the first figures: the facts behind each card. Must know nothing of widgets."""

from __future__ import annotations

from datetime import timedelta

from planner.desk.behind import Behind
from planner.desk.doors.figures import AHEAD_WEEKS
from planner.desk.pages import Fact
from planner.desk.say import tr
from planner.desk.week_facts import carried_words, rule_part
from planner.desk.words import number_words
from planner.farm.farm import DAYS_PER_WEEK
from planner.farm.fields import Id
from planner.forecast.values import WeekVerdict
from planner.forecast.why.values import Subject, SubjectKind

SOW, FEED = "sow", "feed"


def first_facts(behind: Behind) -> dict[str, tuple[Fact, ...]]:
    """Return the facts behind each card: sowings of the week, feed and area by loop, now and then."""
    outlook = behind.outlook
    week = outlook.week_of(behind.today)
    then = min(week + AHEAD_WEEKS, outlook.forecast.ruler.weeks - 1)
    loops = {loop.loop: (loop.name, outlook.verdicts[loop.loop]) for loop in outlook.forecast.loops}
    found = {SOW: _sowings(behind, week)}
    found[FEED] = tuple(_feed(name, loop, verdicts[week]) for loop, (name, verdicts) in loops.items())
    for loop, (name, verdicts) in loops.items():
        found[loop] = tuple(_area(name, loop, verdicts[at]) for at in dict.fromkeys((week, then)))
    return found


def _sowings(behind: Behind, week: int) -> tuple[Fact, ...]:
    outlook = behind.outlook
    start = outlook.forecast.ruler.week_start(week)
    end = start + timedelta(days=DAYS_PER_WEEK)
    return tuple(
        Fact(
            label=batch.code,
            value=tr("{count} seeds", count=number_words(outlook.seeds(batch), digits=0)),
            ask=Subject(kind=SubjectKind.SEEDS, about=batch.id),
        )
        for batch in outlook.farm.batches
        if start <= batch.sow_on < end
    )


def _feed(name: str, loop: Id, verdict: WeekVerdict) -> Fact:
    return Fact(
        label=name,
        value=tr("{grams} g a day", grams=number_words(verdict.feed_g_per_day, digits=0)),
        ask=Subject(kind=SubjectKind.FEED_MEAN, about=loop, week=verdict.week),
    )


def _area(name: str, loop: Id, verdict: WeekVerdict) -> Fact:
    part = rule_part(verdict.rule)
    return Fact(
        label=name,
        value=carried_words(verdict, verdict.rule),
        ask=Subject(kind=SubjectKind.AREA_FED, about=loop, week=verdict.week, part=part),
    )
