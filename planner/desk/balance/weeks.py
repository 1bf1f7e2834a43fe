"""Supply, demand, stock and band of every week, with low and high where they are known, ready to be drawn.

Must know nothing of Qt.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass
from typing import TYPE_CHECKING

from planner.desk.outlook import Outlook
from planner.desk.pages import Ask
from planner.desk.rows import Column, Row
from planner.desk.say import tr
from planner.desk.words import (
    NONE,
    choice_words,
    gram_words,
    middle_of_week,
    number_words,
    short_day_words,
    week_words,
)
from planner.farm.farm import DAYS_PER_WEEK
from planner.farm.fields import Id
from planner.farm.species import ELEMENTS
from planner.forecast.values import Floats, WeekVerdict
from planner.forecast.why.values import Subject, SubjectKind

if TYPE_CHECKING:
    from planner.desk.sureness import Sureness
    from planner.forecast.ranges.values import LoopRanges, Range

_PERCENT = 100.0
_MOST_TIMES = 20.0


@dataclass(frozen=True, slots=True, kw_only=True)
class Course:
    """One value by week, with low and high where they are known."""

    likely: tuple[float, ...]
    low: tuple[float, ...] = ()
    high: tuple[float, ...] = ()

    @property
    def highest(self) -> float:
        """The highest value of all, 0 when there is none."""
        return max((each for each in (*self.likely, *self.high) if not math.isnan(each)), default=0.0)


@dataclass(frozen=True, slots=True, kw_only=True)
class ElementCourse:
    """One element by week: supply and demand [g], what is dissolved when the week begins [mg/L]."""

    element: str
    supply: Course
    demand: Course
    stock: Course


@dataclass(frozen=True, slots=True, kw_only=True)
class LoopWeeks:
    """One loop by week."""

    loop: Id
    verdicts: tuple[WeekVerdict, ...]
    elements: tuple[ElementCourse, ...]


def loop_weeks(outlook: Outlook, loop: Id, sure: Sureness | None) -> LoopWeeks:
    """Return the weeks of a loop."""
    verdicts = outlook.verdicts[loop]
    ranges = loop_ranges(sure, loop)
    elements = tuple(
        ElementCourse(
            element=element,
            supply=_course([week.supply_g[at] for week in verdicts], ranges.supply_g if ranges else None, at),
            demand=_course([week.demand_g[at] for week in verdicts], ranges.demand_g if ranges else None, at),
            stock=Course(likely=tuple(week.stock_mg_per_l[at] for week in verdicts)),
        )
        for at, element in enumerate(ELEMENTS)
    )
    return LoopWeeks(loop=loop, verdicts=verdicts, elements=elements)


def loop_ranges(sure: Sureness | None, loop: Id) -> LoopRanges | None:
    """Return low and high of a loop, None as long as they are not known."""
    if sure is None or sure.ranges is None:
        return None
    return next((each for each in sure.ranges.loops if each.loop == loop), None)


def _course(likely: Sequence[float], band: Range | None, at: int) -> Course:
    if band is None:
        return Course(likely=tuple(likely))
    return Course(likely=tuple(likely), low=_floats(band.low[at]), high=_floats(band.high[at]))


def _floats(row: Floats) -> tuple[float, ...]:
    return tuple(float(each) for each in row)


def week_columns() -> tuple[Column, ...]:
    """Return the columns of the table of weeks."""
    return (
        Column(title=tr("Week")),
        Column(title=tr("From")),
        Column(title=tr("Supplied [g]"), numeric=True),
        Column(title=tr("Wanted [g]"), numeric=True),
        Column(title=tr("Share [%]"), numeric=True),
        Column(title=tr("Band")),
        Column(title=tr("Stock [mg/L]"), numeric=True),
        Column(title=tr("Limiting")),
        Column(title=tr("Feed-rate ratio [g/m²/d]"), numeric=True),
    )


def week_rows(weeks: LoopWeeks, at: int, outlook: Outlook) -> tuple[Row, ...]:
    """Return a row for each week, about one element by its number."""
    return tuple(_row(weeks, at, week, outlook) for week in range(len(weeks.verdicts)))


def _row(weeks: LoopWeeks, at: int, week: int, outlook: Outlook) -> Row:
    verdict, course = weeks.verdicts[week], weeks.elements[at]
    monday = outlook.forecast.ruler.week_start(week)
    ratio, feed = verdict.ratio[at], verdict.feed_ratio_g_per_m2_d
    limiting = NONE if verdict.limiting is None else ELEMENTS[verdict.limiting].capitalize()
    texts = (
        week_words(middle_of_week(monday)),
        short_day_words(monday),
        ranged_words(course.supply, week),
        ranged_words(course.demand, week),
        share_words(ratio),
        choice_words(verdict.band[at]),
        gram_words(course.stock.likely[week]),
        limiting,
        NONE if feed is None else number_words(feed, digits=0),
    )
    sort = (
        week,
        week,
        course.supply.likely[week],
        course.demand.likely[week],
        -1.0 if ratio is None else ratio,
        texts[5],
        course.stock.likely[week],
        limiting,
        -1.0 if feed is None else feed,
    )
    return Row(id=str(week), texts=texts, sort=sort, payload=week, asks=_asks(weeks.loop, at, verdict))


def _asks(loop: Id, at: int, verdict: WeekVerdict) -> tuple[Ask | None, ...]:
    """Return what each column can be asked, in their order; week and day are told by the calendar."""

    def of(kind: SubjectKind) -> Subject:
        return Subject(kind=kind, about=loop, week=verdict.week, element=at)

    ratio = of(SubjectKind.RATIO)
    stock = Subject(kind=SubjectKind.STOCK, about=loop, day=verdict.week * DAYS_PER_WEEK, element=at)
    return (
        None,
        None,
        of(SubjectKind.SUPPLY),
        of(SubjectKind.DEMAND),
        ratio,
        ratio,
        stock,
        None if verdict.limiting is None else of(SubjectKind.LIMITING),
        None if verdict.feed_ratio_g_per_m2_d is None else of(SubjectKind.FEED_RATIO),
    )


def share_words(ratio: float | None) -> str:
    """Return supply over demand in percent."""
    if ratio is None:
        return NONE
    if ratio > _MOST_TIMES:
        return tr("over {percent}", percent=number_words(_MOST_TIMES * _PERCENT, digits=0))
    return number_words(ratio * _PERCENT, digits=0)


def ranged_words(course: Course, week: int) -> str:
    """Return the value of a week, with low and high where they are known."""
    likely = gram_words(course.likely[week])
    if not course.low or math.isnan(course.low[week]):
        return likely
    return tr(
        "{likely} ({low} to {high})",
        likely=likely,
        low=gram_words(course.low[week]),
        high=gram_words(course.high[week]),
    )
