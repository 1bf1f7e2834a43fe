"""What can be asked of a week of the balance chart, by the row pointed at. Must know nothing of Qt."""

from __future__ import annotations

from enum import Enum

from planner.desk.balance.weeks import LoopWeeks, ranged_words, share_words
from planner.desk.lanes.words import element_full
from planner.desk.pages import Fact
from planner.desk.say import tr
from planner.desk.words import gram_words, number_words
from planner.farm.farm import DAYS_PER_WEEK
from planner.farm.species import ELEMENTS
from planner.forecast.why.values import Subject, SubjectKind


class Row(Enum):
    """The rows of the chart: the limiting element, the plots of the elements, the feed-rate ratio."""

    LIMITING = "limiting"
    PLOT = "plot"
    FEED_RATIO = "feed-rate ratio"


def week_answers(weeks: LoopWeeks, week: int, element: int, row: Row) -> tuple[Fact, ...]:
    """Return what can be asked of a week: what is pointed at first, then the rest of the week."""
    of_element = _of_element(weeks, week, element)
    limiting, feed = _limiting(weeks, week), _feed(weeks, week)
    match row:
        case Row.LIMITING:
            return (*limiting, *of_element, *feed)
        case Row.FEED_RATIO:
            return (*feed, *of_element, *limiting)
        case Row.PLOT:
            return (*of_element, *limiting, *feed)


def _of_element(weeks: LoopWeeks, week: int, element: int) -> tuple[Fact, ...]:
    course, verdict = weeks.elements[element], weeks.verdicts[week]
    name = element_full(course.element)
    told = (
        (tr("Share [%]"), SubjectKind.RATIO, share_words(verdict.ratio[element])),
        (tr("Supplied [g]"), SubjectKind.SUPPLY, ranged_words(course.supply, week)),
        (tr("Wanted [g]"), SubjectKind.DEMAND, ranged_words(course.demand, week)),
    )
    asked = tuple(
        Fact(
            label=f"{name}, {label}",
            value=value,
            ask=Subject(kind=kind, about=weeks.loop, week=week, element=element),
        )
        for label, kind, value in told
    )
    day = week * DAYS_PER_WEEK
    stock = Fact(
        label=f"{name}, {tr('Stock [mg/L]')}",
        value=gram_words(course.stock.likely[week]),
        ask=Subject(kind=SubjectKind.STOCK, about=weeks.loop, day=day, element=element),
    )
    return (*asked, stock)


def _limiting(weeks: LoopWeeks, week: int) -> tuple[Fact, ...]:
    limiting = weeks.verdicts[week].limiting
    if limiting is None:
        return ()
    ask = Subject(kind=SubjectKind.LIMITING, about=weeks.loop, week=week)
    return (Fact(label=tr("Limiting element"), value=element_full(ELEMENTS[limiting]), ask=ask),)


def _feed(weeks: LoopWeeks, week: int) -> tuple[Fact, ...]:
    ratio = weeks.verdicts[week].feed_ratio_g_per_m2_d
    if ratio is None:
        return ()
    ask = Subject(kind=SubjectKind.FEED_RATIO, about=weeks.loop, week=week)
    return (Fact(label=tr("Feed-rate ratio"), value=f"{number_words(ratio, digits=0)} g/m²/d", ask=ask),)
