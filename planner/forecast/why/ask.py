"""Answers "why?" for any figure of a forecast: one table of kinds, and who answers each."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from typing import Final

from planner.farm.farm import Farm
from planner.farm.species import ELEMENTS
from planner.forecast.engine import Forecaster
from planner.forecast.values import Forecast, GroupForecast, LoopForecast
from planner.forecast.why import balance, batches, fish, plants, supply, water, water_day, water_tests
from planner.forecast.why.ground import Ground, NoSuchFigureError
from planner.forecast.why.values import Explanation, Subject, SubjectKind

_Answer = Callable[[Ground, Subject], Explanation]


def why(subject: Subject, farm: Farm, forecast: Forecast, forecaster: Forecaster) -> Explanation:
    """Return why a figure of a forecast is what it is, as deep as there are reasons.

    `forecast` is what `forecaster` made of `farm`. Raises `NoSuchFigureError` for a subject that the
    forecast does not have.
    """
    ground = Ground(farm=farm, forecast=forecast, forecaster=forecaster)
    return ANSWERS[subject.kind](ground, subject)


def _batch(answer: Callable[[Ground, int], Explanation]) -> _Answer:
    """Return who answers for a batch."""

    def asked(ground: Ground, subject: Subject) -> Explanation:
        return answer(ground, ground.row(subject.about))

    return asked


def _stage(ground: Ground, subject: Subject) -> Explanation:
    if subject.stage is None:
        raise NoSuchFigureError("a question for days must name a stage.")
    return batches.why_stage(ground, ground.row(subject.about), subject.stage)


def _group_on(answer: Callable[[Ground, GroupForecast, int], Explanation]) -> _Answer:
    """Return who answers for a fish group on a day."""

    def asked(ground: Ground, subject: Subject) -> Explanation:
        ground.check_day(subject.day)
        return answer(ground, fish.group_named(ground, subject.about), subject.day)

    return asked


def _group_in(answer: Callable[[Ground, GroupForecast, int], Explanation]) -> _Answer:
    """Return who answers for a fish group in a week."""

    def asked(ground: Ground, subject: Subject) -> Explanation:
        ground.check_week(subject.week)
        return answer(ground, fish.group_named(ground, subject.about), subject.week)

    return asked


def _density(ground: Ground, subject: Subject) -> Explanation:
    ground.check_day(subject.day)
    return fish.why_density(ground, subject.about, subject.day)


def _crop(*, grams: bool) -> _Answer:
    """Return who answers for the harvest of a crop in a week."""

    def asked(ground: Ground, subject: Subject) -> Explanation:
        ground.check_week(subject.week)
        return plants.why_harvest(ground, subject.crop, subject.week, grams=grams)

    return asked


def _loop_in(answer: Callable[[Ground, LoopForecast, int], Explanation]) -> _Answer:
    """Return who answers for a loop in a week."""

    def asked(ground: Ground, subject: Subject) -> Explanation:
        ground.check_week(subject.week)
        return answer(ground, ground.loop_forecast(subject.about)[1], subject.week)

    return asked


def _number_in(answer: Callable[[Ground, int, int], Explanation]) -> _Answer:
    """Return who answers for a loop, by its number, in a week."""

    def asked(ground: Ground, subject: Subject) -> Explanation:
        ground.check_week(subject.week)
        return answer(ground, ground.loop_forecast(subject.about)[0], subject.week)

    return asked


def _element_in(answer: Callable[[Ground, int, int, int], Explanation]) -> _Answer:
    """Return who answers for an element in a loop, by its number, in a week."""

    def asked(ground: Ground, subject: Subject) -> Explanation:
        ground.check_week(subject.week)
        check_element(subject.element)
        return answer(ground, ground.loop_forecast(subject.about)[0], subject.week, subject.element)

    return asked


def check_element(element: int) -> None:
    """Raise `NoSuchFigureError` for a number that is no element's."""
    if not 0 <= element < len(ELEMENTS):
        raise NoSuchFigureError(f"element is {element}, but must lie within 0 to {len(ELEMENTS) - 1}.")


def _supply(ground: Ground, number: int, week: int, element: int) -> Explanation:
    return supply.why_supply(ground, ground.forecast.loops[number], week, element)


def _area_fed(ground: Ground, subject: Subject) -> Explanation:
    ground.check_week(subject.week)
    _, loop = ground.loop_forecast(subject.about)
    return balance.why_area_fed(ground, loop, subject.week, subject.part)


def _water_on(answer: Callable[..., Explanation], *, with_part: bool = False) -> _Answer:
    """Return who answers for the water of a loop on a day."""

    def asked(ground: Ground, subject: Subject) -> Explanation:
        ground.check_week(subject.week)
        _, loop = ground.loop_forecast(subject.about)
        on = subject.on or ground.forecast.ruler.week_start(subject.week)
        return answer(ground, loop, on, subject.part) if with_part else answer(ground, loop, on)

    return asked


ANSWERS: Final[Mapping[SubjectKind, _Answer]] = {
    SubjectKind.SEEDS: _batch(batches.why_seeds),
    SubjectKind.STAGE_DAYS: _stage,
    SubjectKind.FIRST_PICK: _batch(batches.why_first_pick),
    SubjectKind.BATCH_HARVEST: _batch(plants.why_batch_harvest),
    SubjectKind.HARVEST_PLANTS: _crop(grams=False),
    SubjectKind.HARVEST_G: _crop(grams=True),
    SubjectKind.DEMAND: _element_in(plants.why_demand),
    SubjectKind.SUPPLY: _element_in(_supply),
    SubjectKind.RATIO: _element_in(balance.why_ratio),
    SubjectKind.LIMITING: _number_in(balance.why_limiting),
    SubjectKind.FEED: _group_on(fish.why_feed),
    SubjectKind.GROUP_FEED: _group_in(fish.why_group_mean),
    SubjectKind.GROUP_MASS: _group_on(fish.why_mass),
    SubjectKind.FEED_MEAN: _loop_in(fish.why_feed_mean),
    SubjectKind.FEED_RATIO: _loop_in(balance.why_feed_ratio),
    SubjectKind.PLANTED: _loop_in(balance.why_planted),
    SubjectKind.AREA_FED: _area_fed,
    SubjectKind.DENSITY: _density,
    SubjectKind.AMMONIA: _loop_in(water.why_ammonia),
    SubjectKind.FILTER_NEED: _loop_in(water.why_filter_need),
    SubjectKind.OXYGEN: _loop_in(water.why_oxygen),
    SubjectKind.ACID: _loop_in(water_day.why_acid),
    SubjectKind.BASE: _loop_in(water_day.why_base),
    SubjectKind.BASE_GRAMS: _water_on(water_day.why_base_grams, with_part=True),
    SubjectKind.SALT_GRAMS: _water_on(water_day.why_salt_grams, with_part=True),
    SubjectKind.IRON_DUE: _water_on(water_day.why_iron_due),
    SubjectKind.IRON_GRAMS: _water_on(water_day.why_iron_grams, with_part=True),
    SubjectKind.SALTS: _water_on(water_tests.why_salts),
    SubjectKind.FREE_AMMONIA: _water_on(water_tests.why_free_ammonia),
    SubjectKind.LIMIT: _water_on(water_tests.why_limit, with_part=True),
}
"""Who answers for each kind of figure; one that is not here cannot be asked."""
