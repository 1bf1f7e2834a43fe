"""What can be asked why of a week of the ration table: its feed, the fish's mass, and how full the tank is.

Must know nothing of widgets. Each answer is of the very day or week that the table tells of.
"""

from __future__ import annotations

from collections.abc import Mapping
from datetime import date

from planner.desk.facts import week_label
from planner.desk.fish.course import GroupCourse
from planner.desk.fish.weeks import Scoop, WeekRation, suits
from planner.desk.pages import Ask, Fact
from planner.desk.say import tr
from planner.desk.words import day_words, number_words, with_unit
from planner.farm.farm import DAYS_PER_WEEK
from planner.farm.species import Feed
from planner.forecast.why.formulas import Formula
from planner.forecast.why.ground import entered, worked
from planner.forecast.why.values import Explanation, Input, Origin, Subject, SubjectKind

_G_PER_KG = 1000.0


def ration_asks(
    course: GroupCourse, ration: WeekRation, scoop: Scoop, feeds: Mapping[str, Feed]
) -> tuple[Ask | None, ...]:
    """Return what each column of the ration table can be asked, in their order."""
    first, group = ration.week * DAYS_PER_WEEK, course.group.id
    meal = _meal(course, ration, scoop)
    return (
        None,
        _feed(course, ration, max(first, course.days[0])).ask,
        meal,
        _scoops(course, meal, scoop),
        Subject(kind=SubjectKind.GROUP_COUNT, about=group, day=first),
        Subject(kind=SubjectKind.GROUP_WEIGHT, about=group, day=first),
        pellet_answer(course, ration.weight_g, feeds, on=course.ruler.week_start(ration.week)),
        Subject(kind=SubjectKind.DENSITY, about=course.tank.id, day=first + DAYS_PER_WEEK - 1),
    )


def _meal(course: GroupCourse, ration: WeekRation, scoop: Scoop) -> Explanation | None:
    if ration.feed_g <= 0:
        return None
    return Explanation(
        title="feed of a meal",
        about=course.group.name,
        value=ration.feed_g / scoop.meals,
        unit="g",
        formula=Formula.MEAL,
        inputs=(
            worked("feed_g_per_day", ration.feed_g, "g/d"),
            entered("meals", scoop.meals, "1/d", course.group.name),
        ),
        on=course.ruler.week_start(ration.week),
    )


def _scoops(course: GroupCourse, meal: Explanation | None, scoop: Scoop) -> Explanation | None:
    if meal is None or meal.value is None or scoop.grams <= 0:
        return None
    return Explanation(
        title="scoops of a meal",
        about=course.group.name,
        value=meal.value / scoop.grams,
        unit="",
        formula=Formula.SCOOPS,
        inputs=(
            worked("meal_g", meal.value, "g"),
            entered("scoop_g", scoop.grams, "g", course.feed.name),
        ),
        children=(meal,),
        on=meal.on,
    )


def pellet_answer(
    course: GroupCourse, weight_g: float, feeds: Mapping[str, Feed], *, on: date | None = None
) -> Explanation:
    """Return why a pellet fits or not: the weights of fish that each feed is made for."""
    others = [each for each in feeds.values() if each is not course.feed and suits(each, weight_g)]
    limits = tuple(
        Input(name=f"{each.name}, {end}", value=value, unit="g", origin=Origin.FIGURE, about=each.name)
        for each in (course.feed, *others)
        for end, value in (("from", each.for_fish_from_g), ("to", each.for_fish_to_g))
    )
    return Explanation(
        title="weight of a fish that the feed is for",
        about=course.feed.name,
        value=weight_g,
        unit="g",
        formula=Formula.PELLET,
        inputs=limits,
        on=on,
    )


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
