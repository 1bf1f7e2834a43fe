"""Answers "why?" for any figure of a forecast: one table of kinds, and who answers each."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from datetime import date
from typing import Final

from planner.farm.crops import Stage
from planner.farm.farm import Farm
from planner.farm.species import ELEMENTS
from planner.forecast.engine import Forecaster
from planner.forecast.values import Forecast, GroupForecast, LoopForecast
from planner.forecast.why import (
    air,
    alkalinity,
    balance,
    batches,
    crowding,
    dissolved,
    doses,
    feed_holes,
    fish,
    fish_count,
    growth,
    lots,
    milestones,
    plants,
    solids_batches,
    supply,
    trends,
    water,
    water_day,
    water_tests,
)
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


def _in_stage(answer: Callable[[Ground, int, Stage], Explanation]) -> _Answer:
    """Return who answers for a stage of a batch."""

    def asked(ground: Ground, subject: Subject) -> Explanation:
        return answer(ground, ground.row(subject.about), _named_stage(subject))

    return asked


def _stage_day(ground: Ground, subject: Subject) -> Explanation:
    return milestones.why_stage_day(ground, ground.row(subject.about), _named_stage(subject), subject.day)


def _picked(ground: Ground, subject: Subject) -> Explanation:
    return milestones.why_picked(ground, ground.row(subject.about), subject.day)


def _named_stage(subject: Subject) -> Stage:
    if subject.stage is None:
        raise NoSuchFigureError("a question for days must name a stage.")
    return subject.stage


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


def _group_span(answer: Callable[[Ground, GroupForecast, slice], Explanation]) -> _Answer:
    """Return who answers for a fish group over some weeks."""

    def asked(ground: Ground, subject: Subject) -> Explanation:
        days = ground.span(subject.week, subject.weeks)
        return answer(ground, fish.group_named(ground, subject.about), days)

    return asked


def _feed_amount(ground: Ground, subject: Subject) -> Explanation:
    days = ground.span(subject.week, subject.weeks)
    return feed_holes.why_feed_amount(ground, subject.about, subject.part, days)


def _ready(ground: Ground, subject: Subject) -> Explanation:
    return growth.why_ready(ground, fish.group_named(ground, subject.about))


def _density(ground: Ground, subject: Subject) -> Explanation:
    ground.check_day(subject.day)
    return crowding.why_density(ground, subject.about, subject.day)


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


def _stock(ground: Ground, subject: Subject) -> Explanation:
    ground.check_day(subject.day)
    check_element(subject.element)
    _, loop = ground.loop_forecast(subject.about)
    return dissolved.why_stock(ground, loop, subject.day, subject.element)


def _loop_element_in(answer: Callable[[Ground, LoopForecast, int, int], Explanation]) -> _Answer:
    """Return who answers for an element in a loop in a week."""

    def of_number(ground: Ground, number: int, week: int, element: int) -> Explanation:
        return answer(ground, ground.forecast.loops[number], week, element)

    return _element_in(of_number)


def _wanting(ground: Ground, subject: Subject) -> Explanation:
    check_element(subject.element)
    _, loop = ground.loop_forecast(subject.about)
    return doses.why_wanting(ground, loop, _on(ground, subject), subject.element)


def _on(ground: Ground, subject: Subject) -> date:
    """Return the day that is asked about, else the first of the plan."""
    return subject.on or ground.forecast.ruler.start_on


def _alkalinity(ground: Ground, subject: Subject) -> Explanation:
    _, loop = ground.loop_forecast(subject.about)
    return alkalinity.why_alkalinity(ground, loop, _on(ground, subject), subject.day)


def _solids(ground: Ground, subject: Subject) -> Explanation:
    return solids_batches.why_solids_batch(ground, subject.about, subject.part)


def _gravel(ground: Ground, subject: Subject) -> Explanation:
    return air.why_gravel(ground, ground.loop_forecast(subject.about)[1])


def _dose(ground: Ground, subject: Subject) -> Explanation:
    return doses.why_dose_brings(ground, subject.about)


def _lot(ground: Ground, subject: Subject) -> Explanation:
    return lots.why_lot(ground, subject.about, _on(ground, subject))


def _meter(ground: Ground, subject: Subject) -> Explanation:
    return trends.why_meter_late(ground, subject.about, _on(ground, subject))


ANSWERS: Final[Mapping[SubjectKind, _Answer]] = {
    SubjectKind.SEEDS: _batch(batches.why_seeds),
    SubjectKind.STAGE_DAYS: _in_stage(batches.why_stage),
    SubjectKind.FIRST_PICK: _batch(batches.why_first_pick),
    SubjectKind.STAGE_FIRST: _in_stage(milestones.why_stage_first),
    SubjectKind.STAGE_LAST: _in_stage(milestones.why_stage_last),
    SubjectKind.STAGE_DAY: _stage_day,
    SubjectKind.FREED: _batch(milestones.why_freed),
    SubjectKind.PICKED: _picked,
    SubjectKind.BATCH_HARVEST: _batch(plants.why_batch_harvest),
    SubjectKind.HARVEST_PLANTS: _crop(grams=False),
    SubjectKind.HARVEST_G: _crop(grams=True),
    SubjectKind.DEMAND: _element_in(plants.why_demand),
    SubjectKind.SUPPLY: _element_in(_supply),
    SubjectKind.RATIO: _element_in(balance.why_ratio),
    SubjectKind.LIMITING: _number_in(balance.why_limiting),
    SubjectKind.FEED: _group_on(fish.why_feed),
    SubjectKind.GROUP_FEED: _group_in(fish.why_group_mean),
    SubjectKind.GROUP_MASS: _group_on(crowding.why_mass),
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
    SubjectKind.STOCK: _stock,
    SubjectKind.COVERED: _loop_element_in(dissolved.why_covered),
    SubjectKind.LACKING: _loop_element_in(dissolved.why_lacking),
    SubjectKind.SOLIDS_BATCH: _solids,
    SubjectKind.ALKALINITY: _alkalinity,
    SubjectKind.ALKALINITY_FALL: _loop_in(alkalinity.why_fall),
    SubjectKind.OBSERVED_ACID: _water_on(alkalinity.why_observed_acid),
    SubjectKind.TREND: _water_on(trends.why_trend, with_part=True),
    SubjectKind.TEST_LATE: _water_on(trends.why_test_late, with_part=True),
    SubjectKind.METER_LATE: _meter,
    SubjectKind.SURFACE: _loop_in(air.why_surface),
    SubjectKind.GRAVEL: _gravel,
    SubjectKind.PEAK_OXYGEN: _loop_in(air.why_peak_oxygen),
    SubjectKind.SATURATION: _loop_in(air.why_saturation),
    SubjectKind.DOSE_BRINGS: _dose,
    SubjectKind.ADVISED_BRINGS: _water_on(doses.why_advised_brings, with_part=True),
    SubjectKind.BASE_LEFT: _water_on(doses.why_base_left),
    SubjectKind.WANTING: _wanting,
    SubjectKind.LOT_SHARE: _lot,
    SubjectKind.GROUP_COUNT: _group_on(fish_count.why_count),
    SubjectKind.GROUP_WEIGHT: _group_on(growth.why_weight),
    SubjectKind.GROUP_GAIN: _group_on(growth.why_gain),
    SubjectKind.GROUP_DEATHS: _group_span(fish_count.why_deaths),
    SubjectKind.FISH_HARVEST: _group_on(fish_count.why_harvested),
    SubjectKind.FISH_HARVEST_COUNT: _group_on(fish_count.why_harvested_fish),
    SubjectKind.FEED_FALL: _group_on(feed_holes.why_fall),
    SubjectKind.FEED_HOLE: _loop_in(feed_holes.why_hole),
    SubjectKind.FEED_AMOUNT: _feed_amount,
    SubjectKind.FISH_READY: _ready,
}
"""Who answers for each kind of figure; one that is not here cannot be asked."""
