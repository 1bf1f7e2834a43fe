"""What can be asked why of a week of the ration table: its feed, the fish's mass, and how full the tank is.

Must know nothing of widgets. Each answer is of the very day or week that the table tells of.
"""

from __future__ import annotations

from planner.desk.facts import week_label
from planner.desk.fish.course import GroupCourse
from planner.desk.fish.ration import WeekRation
from planner.desk.pages import Fact
from planner.desk.say import tr
from planner.desk.words import day_words, number_words, with_unit
from planner.farm.farm import DAYS_PER_WEEK
from planner.forecast.why.values import Subject, SubjectKind

_G_PER_KG = 1000.0


def week_facts(course: GroupCourse, ration: WeekRation) -> tuple[Fact, ...]:
    """Return what can be asked of a week: feed, mass on its first day, density on its last."""
    first = ration.week * DAYS_PER_WEEK
    day = max(first, course.days[0])
    mass_kg = float(course.likely.count[day] * course.likely.weight_g[day]) / _G_PER_KG
    last = first + DAYS_PER_WEEK - 1
    return (
        _feed(course, ration, day),
        Fact(
            label=tr("Live weight"),
            value=with_unit(mass_kg, "kg", digits=1),
            ask=Subject(kind=SubjectKind.GROUP_MASS, about=course.group.id, day=day),
        ),
        Fact(
            label=course.tank.name,
            value=with_unit(ration.density, "kg/m³", digits=1),
            ask=Subject(kind=SubjectKind.DENSITY, about=course.tank.id, day=last),
        ),
    )


def _feed(course: GroupCourse, ration: WeekRation, day: int) -> Fact:
    """Return the week's feed where every day of it is fed, else that of a day: the table tells fed days."""
    fed = course.likely.feed_g[ration.week * DAYS_PER_WEEK : (ration.week + 1) * DAYS_PER_WEEK]
    if fed.size == DAYS_PER_WEEK and bool((fed > 0).all()):
        return Fact(
            label=week_label(course.ruler.week_start(ration.week)),
            value=_a_day(ration.feed_g),
            ask=Subject(kind=SubjectKind.GROUP_FEED, about=course.group.id, week=ration.week),
        )
    return Fact(
        label=day_words(course.ruler.date_of(day)),
        value=_a_day(float(course.likely.feed_g[day])),
        ask=Subject(kind=SubjectKind.FEED, about=course.group.id, day=day),
    )


def _a_day(grams: float) -> str:
    return tr("{grams} g/d", grams=number_words(grams, digits=0))
