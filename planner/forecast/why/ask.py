"""Answers "why?" for any figure of a forecast."""

from __future__ import annotations

from planner.farm.farm import Farm
from planner.farm.species import ELEMENTS
from planner.forecast.engine import Forecaster
from planner.forecast.values import Forecast
from planner.forecast.why.balance import why_area_fed, why_feed_ratio, why_limiting, why_planted, why_ratio
from planner.forecast.why.batches import why_first_pick, why_seeds, why_stage
from planner.forecast.why.fish import (
    group_named,
    why_density,
    why_feed,
    why_feed_mean,
    why_group_mean,
    why_mass,
)
from planner.forecast.why.ground import Ground, NoSuchFigureError
from planner.forecast.why.plants import why_batch_harvest, why_demand, why_harvest
from planner.forecast.why.supply import why_supply
from planner.forecast.why.values import Explanation, Subject, SubjectKind
from planner.forecast.why.water import why_ammonia, why_filter_need, why_oxygen
from planner.forecast.why.water_day import (
    why_acid,
    why_base,
    why_base_grams,
    why_iron_due,
    why_iron_grams,
    why_salt_grams,
)
from planner.forecast.why.water_tests import why_free_ammonia, why_limit, why_salts

_OF_BATCH = frozenset(
    {SubjectKind.SEEDS, SubjectKind.STAGE_DAYS, SubjectKind.FIRST_PICK, SubjectKind.BATCH_HARVEST}
)
_OF_CROP = frozenset({SubjectKind.HARVEST_PLANTS, SubjectKind.HARVEST_G})
_OF_WATER = frozenset(
    {
        SubjectKind.BASE_GRAMS,
        SubjectKind.SALT_GRAMS,
        SubjectKind.IRON_DUE,
        SubjectKind.IRON_GRAMS,
        SubjectKind.SALTS,
        SubjectKind.FREE_AMMONIA,
        SubjectKind.LIMIT,
    }
)
_OF_FISH = frozenset({SubjectKind.FEED, SubjectKind.DENSITY, SubjectKind.GROUP_MASS})


def why(subject: Subject, farm: Farm, forecast: Forecast, forecaster: Forecaster) -> Explanation:
    """Return why a figure of a forecast is what it is, as deep as there are reasons.

    `forecast` is what `forecaster` made of `farm`. Raises `NoSuchFigureError` for a subject that the
    forecast does not have.
    """
    ground = Ground(farm=farm, forecast=forecast, forecaster=forecaster)
    if subject.kind in _OF_BATCH:
        return _of_batch(ground, subject)
    if subject.kind in _OF_FISH:
        return _of_fish(ground, subject)
    ground.check_week(subject.week)
    if subject.kind is SubjectKind.GROUP_FEED:
        return why_group_mean(ground, group_named(ground, subject.about), subject.week)
    if subject.kind in _OF_WATER:
        return _of_water(ground, subject)
    if subject.kind in _OF_CROP:
        grams = subject.kind is SubjectKind.HARVEST_G
        return why_harvest(ground, subject.crop, subject.week, grams=grams)
    if not 0 <= subject.element < len(ELEMENTS):
        raise NoSuchFigureError(
            f"element is {subject.element}, but must lie within 0 to {len(ELEMENTS) - 1}."
        )
    return _of_loop(ground, subject)


def _of_batch(ground: Ground, subject: Subject) -> Explanation:
    row = ground.row(subject.about)
    if subject.kind is SubjectKind.SEEDS:
        return why_seeds(ground, row)
    if subject.kind is SubjectKind.FIRST_PICK:
        return why_first_pick(ground, row)
    if subject.kind is SubjectKind.BATCH_HARVEST:
        return why_batch_harvest(ground, row)
    if subject.stage is None:
        raise NoSuchFigureError("a question for days must name a stage.")
    return why_stage(ground, row, subject.stage)


def _of_fish(ground: Ground, subject: Subject) -> Explanation:
    ground.check_day(subject.day)
    if subject.kind is SubjectKind.DENSITY:
        return why_density(ground, subject.about, subject.day)
    group = group_named(ground, subject.about)
    if subject.kind is SubjectKind.GROUP_MASS:
        return why_mass(ground, group, subject.day)
    return why_feed(ground, group, subject.day)


def _of_loop(ground: Ground, subject: Subject) -> Explanation:
    number, loop = ground.loop_forecast(subject.about)
    week, element = subject.week, subject.element
    answers = {
        SubjectKind.DEMAND: lambda: why_demand(ground, number, week, element),
        SubjectKind.SUPPLY: lambda: why_supply(ground, loop, week, element),
        SubjectKind.RATIO: lambda: why_ratio(ground, number, week, element),
        SubjectKind.LIMITING: lambda: why_limiting(ground, number, week),
        SubjectKind.FEED_MEAN: lambda: why_feed_mean(ground, loop, week),
        SubjectKind.FEED_RATIO: lambda: why_feed_ratio(ground, loop, week),
        SubjectKind.PLANTED: lambda: why_planted(ground, loop, week),
        SubjectKind.AREA_FED: lambda: why_area_fed(ground, loop, week, subject.part),
        SubjectKind.AMMONIA: lambda: why_ammonia(ground, loop, week),
        SubjectKind.FILTER_NEED: lambda: why_filter_need(ground, loop, week),
        SubjectKind.OXYGEN: lambda: why_oxygen(ground, loop, week),
        SubjectKind.ACID: lambda: why_acid(ground, loop, week),
        SubjectKind.BASE: lambda: why_base(ground, loop, week),
    }
    return answers[subject.kind]()


def _of_water(ground: Ground, subject: Subject) -> Explanation:
    _, loop = ground.loop_forecast(subject.about)
    on = subject.on or ground.forecast.ruler.week_start(subject.week)
    answers = {
        SubjectKind.BASE_GRAMS: lambda: why_base_grams(ground, loop, on, subject.part),
        SubjectKind.SALT_GRAMS: lambda: why_salt_grams(ground, loop, on, subject.part),
        SubjectKind.IRON_DUE: lambda: why_iron_due(ground, loop, on),
        SubjectKind.IRON_GRAMS: lambda: why_iron_grams(ground, loop, on, subject.part),
        SubjectKind.SALTS: lambda: why_salts(ground, loop, on),
        SubjectKind.FREE_AMMONIA: lambda: why_free_ammonia(ground, loop, on),
        SubjectKind.LIMIT: lambda: why_limit(ground, loop, on, subject.part),
    }
    return answers[subject.kind]()
