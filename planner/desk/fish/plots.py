"""Growth, feed and density of a group as plots. Pure: must know nothing of widgets."""

from __future__ import annotations

from collections.abc import Iterator
from typing import Final

from planner.desk.fish.course import GroupCourse
from planner.desk.fish.rows import event_amounts, event_ask
from planner.desk.plotted import Level, Mark, MarkForm, Plot, Strand
from planner.desk.say import tr
from planner.desk.words import choice_words, day_words, number_words, with_unit
from planner.farm.fields import Id
from planner.farm.fish import FishEvent, FishEventKind
from planner.forecast.values import Floats, GroupForecast
from planner.forecast.why.values import Subject, SubjectKind

_FORMS: Final = {
    FishEventKind.SAMPLE: MarkForm.DOT,
    FishEventKind.HARVEST: MarkForm.DOWN,
    FishEventKind.ADDED: MarkForm.UP,
    FishEventKind.DEATHS: MarkForm.CROSS,
}
_GROWTH_COLOUR, _FEED_COLOUR, _DENSITY_COLOUR = 0, 5, 6
_MOST_POINTS: Final = 400


def growth_plot(course: GroupCourse) -> Plot:
    """Return mean weight over time, slow to quick, with what was weighed, taken, added and lost."""
    marks = tuple(_marks(course))
    target = course.species.harvest_weight_g
    level = Level(value=target, words=tr("weight at harvest, {weight}", weight=with_unit(target, "g")))
    return Plot(
        title=tr("Weight of one fish"),
        unit="g",
        spoken=_growth_words(course, marks),
        empty=tr("no fish within the plan"),
        strands=_strands(course, "weight_g", _GROWTH_COLOUR, SubjectKind.GROUP_WEIGHT),
        levels=() if course.species.ornamental else (level,),
        marks=marks,
        today=course.today.toordinal(),
    )


def feed_plot(course: GroupCourse) -> Plot:
    """Return feed over time, slow to quick."""
    first, end = course.days
    most = float(course.likely.feed_g[first:end].max()) if end > first else 0.0
    return Plot(
        title=tr("Feed"),
        unit="g/d",
        spoken=tr("Feed, at most {grams} g a day", grams=number_words(most, digits=0)),
        empty=tr("no fish within the plan"),
        strands=_strands(course, "feed_g", _FEED_COLOUR, SubjectKind.FEED),
        today=course.today.toordinal(),
    )


def density_plot(course: GroupCourse) -> Plot:
    """Return fish in the tank over time against its limit."""
    most = float(course.density.max())
    limit = course.density_limit
    words = with_unit(limit, "kg/m³")
    days = _days(course)
    line = tuple((_ordinal(course, day), float(course.density[day])) for day in days)
    asks = _asks(SubjectKind.DENSITY, course.tank.id, days)
    return Plot(
        title=tr("Fish in {tank}", tank=course.tank.name),
        unit="kg/m³",
        spoken=tr(
            "Fish in {tank}, at most {most} kg/m³, limit {limit}",
            tank=course.tank.name,
            most=number_words(most, digits=1),
            limit=words,
        ),
        empty=tr("no fish within the plan"),
        strands=(Strand(points=line, colour=_DENSITY_COLOUR, asks=asks),) if line else (),
        levels=(Level(value=limit, words=tr("limit {limit}", limit=words)),),
        today=course.today.toordinal(),
    )


def _asks(kind: SubjectKind, about: Id, days: tuple[int, ...]) -> tuple[Subject, ...]:
    return tuple(Subject(kind=kind, about=about, day=day) for day in days)


def _strands(course: GroupCourse, name: str, colour: int, kind: SubjectKind) -> tuple[Strand, ...]:
    days = _days(course)
    if not days:
        return ()
    likely: Floats = getattr(course.likely, name)
    points = tuple((_ordinal(course, day), float(likely[day])) for day in days)
    span: tuple[tuple[int, float, float], ...] = ()
    if course.slow is not None and course.quick is not None:
        ends = (_series(course.slow, name), _series(course.quick, name))
        pairs = [(day, float(ends[0][day]), float(ends[1][day])) for day in days]
        span = tuple((_ordinal(course, day), min(one, other), max(one, other)) for day, one, other in pairs)
    return (Strand(points=points, span=span, colour=colour, asks=_asks(kind, course.group.id, days)),)


def _series(forecast: GroupForecast, name: str) -> Floats:
    found: Floats = getattr(forecast, name)
    return found


def _days(course: GroupCourse) -> tuple[int, ...]:
    """Return the days drawn: each, or as many as a line can show, and always the last."""
    first, end = course.days
    step = max((end - first) // _MOST_POINTS, 1)
    days = tuple(range(first, end, step))
    return (*days, end - 1) if days and days[-1] != end - 1 else days


def _ordinal(course: GroupCourse, day: int) -> int:
    return course.ruler.date_of(day).toordinal()


def _marks(course: GroupCourse) -> Iterator[Mark]:
    for event in course.events:
        form = _FORMS.get(event.kind)
        day = course.ruler.day_of(event.on)
        if form is None or not 0 <= day < course.ruler.days:
            continue
        sampled = event.kind is FishEventKind.SAMPLE and event.mean_weight_g is not None
        value = event.mean_weight_g if sampled else float(course.likely.weight_g[day])
        yield Mark(
            day=event.on.toordinal(),
            value=float(value or 0.0),
            words=_event_words(event),
            form=form,
            ask=event_ask(event, course.ruler),
        )


def _event_words(event: FishEvent) -> str:
    amounts = ", ".join(event_amounts(event)) or tr("all fish")
    return f"{day_words(event.on)}: {choice_words(event.kind)}, {amounts}"


def _growth_words(course: GroupCourse, marks: tuple[Mark, ...]) -> str:
    first, end = course.days
    if end <= first:
        return tr("No fish of {group} within the plan", group=course.group.name)
    words = tr(
        "One fish of {group} weighs {start} g on {first} and {last} g on {end}",
        group=course.group.name,
        start=number_words(float(course.likely.weight_g[first]), digits=0),
        first=day_words(course.ruler.date_of(first)),
        last=number_words(float(course.likely.weight_g[end - 1]), digits=0),
        end=day_words(course.ruler.date_of(end - 1)),
    )
    return "\n".join((words, *(mark.words for mark in marks)))
