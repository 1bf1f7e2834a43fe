"""What can be asked why of the first figures: the facts behind each card. Must know nothing of widgets."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import timedelta

from planner.desk.behind import Behind
from planner.desk.doors.figures import AHEAD_WEEKS
from planner.desk.outlook import Outlook
from planner.desk.pages import Fact, Summed
from planner.desk.say import tr
from planner.desk.week_facts import carried_words, feed_fact, rule_part
from planner.desk.words import number_words
from planner.farm.crops import Batch
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
    found[FEED] = _feeds(tuple((name, loop, verdicts[week]) for loop, (name, verdicts) in loops.items()))
    for loop, (name, verdicts) in loops.items():
        found[loop] = tuple(_area(name, loop, verdicts[at]) for at in dict.fromkeys((week, then)))
    return found


def _sowings(behind: Behind, week: int) -> tuple[Fact, ...]:
    outlook = behind.outlook
    start = outlook.forecast.ruler.week_start(week)
    end = start + timedelta(days=DAYS_PER_WEEK)
    crops: dict[str, list[Batch]] = {}
    for batch in outlook.farm.batches:
        if start <= batch.sow_on < end:
            crops.setdefault(batch.crop, []).append(batch)
    return tuple(fact for crop, sown in crops.items() for fact in _of_crop(outlook, crop, sown))


def _of_crop(outlook: Outlook, crop: str, sown: list[Batch]) -> Iterator[Fact]:
    """Yield the seeds of a crop as they stand on the card, then those of each batch if there are several."""
    parts = tuple(
        (Subject(kind=SubjectKind.SEEDS, about=batch.id), float(outlook.seeds(batch))) for batch in sown
    )
    if len(sown) > 1:
        name = outlook.crop_name(crop)
        ask = Summed(title="seeds", unit="seeds", parts=parts, about=name)
        yield Fact(label=name, value=_seeds(sum(many for _, many in parts)), ask=ask)
    for batch, (ask_one, many) in zip(sown, parts, strict=True):
        yield Fact(label=batch.code, value=_seeds(many), ask=ask_one)


def _seeds(many: float) -> str:
    return tr("{count} seeds", count=number_words(many, digits=0))


def _feeds(loops: tuple[tuple[str, Id, WeekVerdict], ...]) -> tuple[Fact, ...]:
    """Return the feed of all loops as it stands on the card where there are several, and of each."""
    facts = tuple(feed_fact(name, loop, verdict) for name, loop, verdict in loops)
    if len(facts) < 2:
        return facts
    parts = tuple(
        (Subject(kind=SubjectKind.FEED_MEAN, about=loop, week=verdict.week), verdict.feed_g_per_day)
        for _, loop, verdict in loops
    )
    total = tr("{grams} g a day", grams=number_words(sum(grams for _, grams in parts), digits=0))
    ask = Summed(title="feed a day in the week", unit="g/d", parts=parts)
    return (Fact(label=tr("Feed this week"), value=total, ask=ask), *facts)


def _area(name: str, loop: Id, verdict: WeekVerdict) -> Fact:
    part = rule_part(verdict.rule)
    return Fact(
        label=name,
        value=carried_words(verdict, verdict.rule),
        ask=Subject(kind=SubjectKind.AREA_FED, about=loop, week=verdict.week, part=part),
    )
