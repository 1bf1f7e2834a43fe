"""How a subject is turned into what an answer takes: it is checked, and its thing and days are looked up."""

from __future__ import annotations

from collections.abc import Callable
from datetime import date

from planner.farm.crops import Stage
from planner.farm.fields import Id
from planner.farm.species import ELEMENTS
from planner.forecast.values import GroupForecast, LoopForecast
from planner.forecast.why import fish, plants
from planner.forecast.why.ground import Ground, NoSuchFigureError
from planner.forecast.why.values import Explanation, Subject

Answer = Callable[[Ground, Subject], Explanation]


def of_batch(answer: Callable[[Ground, int], Explanation]) -> Answer:
    """Return who answers for a batch."""

    def asked(ground: Ground, subject: Subject) -> Explanation:
        return answer(ground, ground.row(subject.about))

    return asked


def in_stage(answer: Callable[[Ground, int, Stage], Explanation]) -> Answer:
    """Return who answers for a stage of a batch."""

    def asked(ground: Ground, subject: Subject) -> Explanation:
        return answer(ground, ground.row(subject.about), stage_asked(subject))

    return asked


def stage_asked(subject: Subject) -> Stage:
    """Return the stage that is asked about; raises `NoSuchFigureError` where none is named."""
    if subject.stage is None:
        raise NoSuchFigureError("a question for days must name a stage.")
    return subject.stage


def group_on(answer: Callable[[Ground, GroupForecast, int], Explanation]) -> Answer:
    """Return who answers for a fish group on a day."""

    def asked(ground: Ground, subject: Subject) -> Explanation:
        ground.check_day(subject.day)
        return answer(ground, fish.group_named(ground, subject.about), subject.day)

    return asked


def group_in(answer: Callable[[Ground, GroupForecast, int], Explanation]) -> Answer:
    """Return who answers for a fish group in a week."""

    def asked(ground: Ground, subject: Subject) -> Explanation:
        ground.check_week(subject.week)
        return answer(ground, fish.group_named(ground, subject.about), subject.week)

    return asked


def group_span(answer: Callable[[Ground, GroupForecast, slice], Explanation]) -> Answer:
    """Return who answers for a fish group over some weeks."""

    def asked(ground: Ground, subject: Subject) -> Explanation:
        days = ground.span(subject.week, subject.weeks)
        return answer(ground, fish.group_named(ground, subject.about), days)

    return asked


def of_crop(*, grams: bool) -> Answer:
    """Return who answers for the harvest of a crop in a week."""

    def asked(ground: Ground, subject: Subject) -> Explanation:
        ground.check_week(subject.week)
        return plants.why_harvest(ground, subject.crop, subject.week, grams=grams)

    return asked


def loop_in(answer: Callable[[Ground, LoopForecast, int], Explanation]) -> Answer:
    """Return who answers for a loop in a week."""

    def asked(ground: Ground, subject: Subject) -> Explanation:
        ground.check_week(subject.week)
        return answer(ground, ground.loop_forecast(subject.about)[1], subject.week)

    return asked


def number_in(answer: Callable[[Ground, int, int], Explanation]) -> Answer:
    """Return who answers for a loop, by its number, in a week."""

    def asked(ground: Ground, subject: Subject) -> Explanation:
        ground.check_week(subject.week)
        return answer(ground, ground.loop_forecast(subject.about)[0], subject.week)

    return asked


def element_in(answer: Callable[[Ground, int, int, int], Explanation]) -> Answer:
    """Return who answers for an element in a loop, by its number, in a week."""

    def asked(ground: Ground, subject: Subject) -> Explanation:
        ground.check_week(subject.week)
        check_element(subject.element)
        return answer(ground, ground.loop_forecast(subject.about)[0], subject.week, subject.element)

    return asked


def loop_element_in(answer: Callable[[Ground, LoopForecast, int, int], Explanation]) -> Answer:
    """Return who answers for an element in a loop in a week."""

    def of_number(ground: Ground, number: int, week: int, element: int) -> Explanation:
        return answer(ground, ground.forecast.loops[number], week, element)

    return element_in(of_number)


def check_element(element: int) -> None:
    """Raise `NoSuchFigureError` for a number that is no element's."""
    if not 0 <= element < len(ELEMENTS):
        raise NoSuchFigureError(f"element is {element}, but must lie within 0 to {len(ELEMENTS) - 1}.")


def water_on(answer: Callable[..., Explanation], *, with_part: bool = False) -> Answer:
    """Return who answers for the water of a loop on a day."""

    def asked(ground: Ground, subject: Subject) -> Explanation:
        ground.check_week(subject.week)
        _, loop = ground.loop_forecast(subject.about)
        on = subject.on or ground.forecast.ruler.week_start(subject.week)
        return answer(ground, loop, on, subject.part) if with_part else answer(ground, loop, on)

    return asked


def group_amount(answer: Callable[[Ground, Id, slice], Explanation]) -> Answer:
    """Return who answers for a fish group, a loop or all fish over some weeks."""

    def asked(ground: Ground, subject: Subject) -> Explanation:
        return answer(ground, subject.about, ground.span(subject.week, subject.weeks))

    return asked


def bed_on(answer: Callable[[Ground, Id, int], Explanation]) -> Answer:
    """Return who answers for a bed on a day."""

    def asked(ground: Ground, subject: Subject) -> Explanation:
        ground.check_day(subject.day)
        return answer(ground, subject.about, subject.day)

    return asked


def batch_on(answer: Callable[[Ground, int, int], Explanation]) -> Answer:
    """Return who answers for a batch on a day."""

    def asked(ground: Ground, subject: Subject) -> Explanation:
        ground.check_day(subject.day)
        return answer(ground, ground.row(subject.about), subject.day)

    return asked


def day_asked(ground: Ground, subject: Subject) -> date:
    """Return the day that is asked about, else the first of the plan."""
    return subject.on or ground.forecast.ruler.start_on
