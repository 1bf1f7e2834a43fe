"""The table of what a group is fed, week by week: a day, a meal, scoops, and the pellet that fits the fish.

Pure: must know nothing of widgets.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from typing import Final

import numpy as np

from planner.desk.facts import week_label
from planner.desk.fish.asked import ration_asks
from planner.desk.fish.course import GroupCourse
from planner.desk.fish.weeks import Scoop, WeekRation, suits
from planner.desk.rations import feed_words
from planner.desk.rows import Column, Row
from planner.desk.say import tr
from planner.desk.words import NONE, number_words
from planner.farm.farm import DAYS_PER_WEEK
from planner.farm.species import Feed

LEAST_SCOOP_G, MOST_SCOOP_G = 0.0, 5000.0
"""What a scoop may hold; 0 says that it has not been weighed."""
MOST_MEALS: Final = 24
SCOOPS_COLUMN: Final = 3
"""Hidden for as long as no scoop has been weighed."""
_TEN: Final = 10.0


def ration_columns() -> tuple[Column, ...]:
    """Return the columns of the table."""
    return (
        Column(title=tr("Week")),
        Column(title=tr("Feed [g/d]"), numeric=True, tip=tr("The most to give; never more than is eaten")),
        Column(title=tr("A meal [g]"), numeric=True),
        Column(title=tr("Scoops"), numeric=True, tip=tr("Level scoops for one meal")),
        Column(title=tr("Fish"), numeric=True),
        Column(title=tr("Each [g]"), numeric=True),
        Column(title=tr("Pellet [mm]")),
        Column(
            title=tr("Tank [kg/m³]"),
            numeric=True,
            tip=tr("All fish of the tank when the week ends, groups together"),
        ),
    )


def week_rations(course: GroupCourse) -> Iterator[WeekRation]:
    """Yield what the group is fed in each week from today on."""
    for week in course.weeks():
        days = slice(week * DAYS_PER_WEEK, (week + 1) * DAYS_PER_WEEK)
        there = course.likely.count[days] > 0
        fed = course.likely.feed_g[days]
        first = week * DAYS_PER_WEEK
        span = None
        if course.slow is not None and course.quick is not None:
            span = (_on_fed_days(course.slow.feed_g[days]), _on_fed_days(course.quick.feed_g[days]))
            span = (min(span), max(span))
        yield WeekRation(
            week=week,
            feed_g=_on_fed_days(fed),
            span_g=span,
            days_off=int(np.count_nonzero(there & (fed <= 0))),
            count=float(course.likely.count[first]),
            weight_g=float(course.likely.weight_g[first]),
            density=float(course.density[days][-1]),
        )


def _on_fed_days(feed_g: np.ndarray) -> float:
    fed = feed_g[feed_g > 0]
    return float(fed.mean()) if fed.size else 0.0


def ration_rows(course: GroupCourse, scoop: Scoop, feeds: Mapping[str, Feed]) -> tuple[Row, ...]:
    """Return one row for each week from today on."""
    return tuple(_row(course, each, scoop, feeds) for each in week_rations(course))


def _row(course: GroupCourse, each: WeekRation, scoop: Scoop, feeds: Mapping[str, Feed]) -> Row:
    monday = course.ruler.week_start(each.week)
    meal = each.feed_g / scoop.meals
    over = each.density > course.density_limit
    density = number_words(each.density, digits=1)
    texts = (
        week_label(monday),
        _feed_words(each),
        _grams(meal),
        number_words(meal / scoop.grams, digits=1) if scoop.grams > 0 and meal > 0 else NONE,
        number_words(each.count, digits=0),
        number_words(each.weight_g, digits=0 if each.weight_g >= _TEN else 1),
        pellet_words(course.feed, each.weight_g, feeds),
        tr("{density} ■ over", density=density) if over else density,
    )
    titles = [column.title for column in ration_columns()]
    return Row(
        id=str(each.week),
        texts=texts,
        sort=(each.week, each.feed_g, meal, meal, each.count, each.weight_g, texts[6], each.density),
        spoken=", ".join(f"{title} {text}" for title, text in zip(titles, texts, strict=True)),
        payload=each,
        asks=ration_asks(course, each, scoop, feeds),
    )


def _feed_words(each: WeekRation) -> str:
    words = _grams(each.feed_g)
    if each.span_g is not None and each.span_g[0] < each.span_g[1]:
        low, high = _grams(each.span_g[0]), _grams(each.span_g[1])
        words = words if low == high else tr("{likely} ({low}–{high})", likely=words, low=low, high=high)
    return tr("{words}, {days} d off", words=words, days=each.days_off) if each.days_off else words


def _grams(grams: float) -> str:
    return feed_words(grams) if grams > 0 else NONE


def pellet_words(feed: Feed, weight_g: float, feeds: Mapping[str, Feed]) -> str:
    """Return the pellet of the feed, or that another suits fish of this weight."""
    if suits(feed, weight_g):
        return feed.pellet_mm or NONE
    others = dict.fromkeys(each.pellet_mm for each in feeds.values() if suits(each, weight_g))
    if not others:
        return tr("{now} ▲ none suits", now=feed.pellet_mm or NONE)
    return tr("{now} ▲ better {other}", now=feed.pellet_mm or NONE, other=tr(" or ").join(others))
