"""Answers "why?" for any figure of a forecast: one table of kinds, and who answers each."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

from planner.farm.farm import Farm
from planner.forecast.engine import Forecaster
from planner.forecast.values import Forecast
from planner.forecast.why import (
    air,
    alkalinity,
    area,
    balance,
    batch_figures,
    batches,
    crowding,
    dissolved,
    doses,
    feed_holes,
    fish,
    fish_count,
    fish_totals,
    flagged,
    growth,
    lots,
    milestones,
    places,
    plants,
    solids_batches,
    sums,
    supply,
    trends,
    water,
    water_day,
    water_tests,
)
from planner.forecast.why.asked import (
    Answer,
    batch_on,
    bed_on,
    check_element,
    day_asked,
    element_in,
    group_amount,
    group_in,
    group_on,
    group_span,
    in_stage,
    loop_element_in,
    loop_in,
    number_in,
    of_batch,
    of_crop,
    stage_asked,
    water_on,
)
from planner.forecast.why.ground import Ground
from planner.forecast.why.values import Explanation, Subject, SubjectKind


def why(subject: Subject, farm: Farm, forecast: Forecast, forecaster: Forecaster) -> Explanation:
    """Return why a figure of a forecast is what it is, as deep as there are reasons.

    `forecast` is what `forecaster` made of `farm`. Raises `NoSuchFigureError` for a subject that the
    forecast does not have.
    """
    ground = Ground(farm=farm, forecast=forecast, forecaster=forecaster)
    return ANSWERS[subject.kind](ground, subject)


def _stage_day(ground: Ground, subject: Subject) -> Explanation:
    return milestones.why_stage_day(ground, ground.row(subject.about), stage_asked(subject), subject.day)


def _picked(ground: Ground, subject: Subject) -> Explanation:
    return milestones.why_picked(ground, ground.row(subject.about), subject.day)


def _feed_amount(ground: Ground, subject: Subject) -> Explanation:
    days = ground.span(subject.week, subject.weeks)
    return feed_holes.why_feed_amount(ground, subject.about, subject.part, days)


def _work(ground: Ground, subject: Subject) -> Explanation:
    days = ground.span(subject.week, subject.weeks)
    return sums.why_work(ground, subject.part, subject.crop, days)


def _seeds_used(ground: Ground, subject: Subject) -> Explanation:
    days = ground.span(subject.week, subject.weeks)
    return sums.why_seeds_used(ground, subject.crop, subject.about, days)


def _pieces(ground: Ground, subject: Subject) -> Explanation:
    return sums.why_pieces(ground, subject.part, ground.span(subject.week, subject.weeks))


def _harvest_total(ground: Ground, subject: Subject) -> Explanation:
    days = ground.span(subject.week, subject.weeks)
    return sums.why_total(ground, subject.part, subject.crop, days)


def _crop_area(ground: Ground, subject: Subject) -> Explanation:
    ground.check_week(subject.week)
    number, _ = ground.loop_forecast(subject.about)
    return area.why_crop_area(ground, number, subject.week, subject.crop)


def _nursery(ground: Ground, subject: Subject) -> Explanation:
    ground.check_day(subject.day)
    return places.why_nursery(ground, subject.day)


def _batch_demand(ground: Ground, subject: Subject) -> Explanation:
    ground.check_week(subject.week)
    check_element(subject.element)
    row = ground.row(subject.about)
    batch_figures.check_alive(ground, row, subject.week)
    return batch_figures.why_batch_demand(ground, row, subject.week, subject.element)


def _flag(ground: Ground, subject: Subject) -> Explanation:
    return flagged.why_flag(ground, subject.part, subject.about, subject.on)


def _ready(ground: Ground, subject: Subject) -> Explanation:
    return growth.why_ready(ground, fish.group_named(ground, subject.about))


def _density(ground: Ground, subject: Subject) -> Explanation:
    ground.check_day(subject.day)
    return crowding.why_density(ground, subject.about, subject.day)


def _supply(ground: Ground, number: int, week: int, element: int) -> Explanation:
    return supply.why_supply(ground, ground.forecast.loops[number], week, element)


def _area_fed(ground: Ground, subject: Subject) -> Explanation:
    ground.check_week(subject.week)
    _, loop = ground.loop_forecast(subject.about)
    return balance.why_area_fed(ground, loop, subject.week, subject.part)


def _stock(ground: Ground, subject: Subject) -> Explanation:
    ground.check_day(subject.day)
    check_element(subject.element)
    _, loop = ground.loop_forecast(subject.about)
    return dissolved.why_stock(ground, loop, subject.day, subject.element)


def _wanting(ground: Ground, subject: Subject) -> Explanation:
    check_element(subject.element)
    _, loop = ground.loop_forecast(subject.about)
    return doses.why_wanting(ground, loop, day_asked(ground, subject), subject.element)


def _alkalinity(ground: Ground, subject: Subject) -> Explanation:
    _, loop = ground.loop_forecast(subject.about)
    return alkalinity.why_alkalinity(ground, loop, day_asked(ground, subject), subject.day)


def _solids(ground: Ground, subject: Subject) -> Explanation:
    return solids_batches.why_solids_batch(ground, subject.about, subject.part)


def _gravel(ground: Ground, subject: Subject) -> Explanation:
    return air.why_gravel(ground, ground.loop_forecast(subject.about)[1])


def _dose(ground: Ground, subject: Subject) -> Explanation:
    return doses.why_dose_brings(ground, subject.about)


def _lot(ground: Ground, subject: Subject) -> Explanation:
    return lots.why_lot(ground, subject.about, day_asked(ground, subject))


def _meter(ground: Ground, subject: Subject) -> Explanation:
    return trends.why_meter_late(ground, subject.about, day_asked(ground, subject))


ANSWERS: Final[Mapping[SubjectKind, Answer]] = {
    SubjectKind.SEEDS: of_batch(batches.why_seeds),
    SubjectKind.STAGE_DAYS: in_stage(batches.why_stage),
    SubjectKind.FIRST_PICK: of_batch(batches.why_first_pick),
    SubjectKind.STAGE_FIRST: in_stage(milestones.why_stage_first),
    SubjectKind.STAGE_LAST: in_stage(milestones.why_stage_last),
    SubjectKind.STAGE_DAY: _stage_day,
    SubjectKind.FREED: of_batch(milestones.why_freed),
    SubjectKind.PICKED: _picked,
    SubjectKind.BATCH_HARVEST: of_batch(plants.why_batch_harvest),
    SubjectKind.HARVEST_PLANTS: of_crop(grams=False),
    SubjectKind.HARVEST_G: of_crop(grams=True),
    SubjectKind.DEMAND: element_in(plants.why_demand),
    SubjectKind.SUPPLY: element_in(_supply),
    SubjectKind.RATIO: element_in(balance.why_ratio),
    SubjectKind.LIMITING: number_in(balance.why_limiting),
    SubjectKind.FEED: group_on(crowding.why_fed),
    SubjectKind.GROUP_FEED: group_in(fish.why_group_mean),
    SubjectKind.GROUP_MASS: group_on(crowding.why_mass),
    SubjectKind.FEED_MEAN: loop_in(fish.why_feed_mean),
    SubjectKind.FEED_RATIO: loop_in(balance.why_feed_ratio),
    SubjectKind.PLANTED: loop_in(balance.why_planted),
    SubjectKind.AREA_FED: _area_fed,
    SubjectKind.DENSITY: _density,
    SubjectKind.AMMONIA: loop_in(water.why_ammonia),
    SubjectKind.FILTER_NEED: loop_in(water.why_filter_need),
    SubjectKind.OXYGEN: loop_in(water.why_oxygen),
    SubjectKind.ACID: loop_in(water_day.why_acid),
    SubjectKind.BASE: loop_in(water_day.why_base),
    SubjectKind.BASE_GRAMS: water_on(water_day.why_base_grams, with_part=True),
    SubjectKind.SALT_GRAMS: water_on(water_day.why_salt_grams, with_part=True),
    SubjectKind.IRON_DUE: water_on(water_day.why_iron_due),
    SubjectKind.IRON_GRAMS: water_on(water_day.why_iron_grams, with_part=True),
    SubjectKind.SALTS: water_on(water_tests.why_salts),
    SubjectKind.FREE_AMMONIA: water_on(water_tests.why_free_ammonia),
    SubjectKind.LIMIT: water_on(water_tests.why_limit, with_part=True),
    SubjectKind.STOCK: _stock,
    SubjectKind.COVERED: loop_element_in(dissolved.why_covered),
    SubjectKind.LACKING: loop_element_in(dissolved.why_lacking),
    SubjectKind.SOLIDS_BATCH: _solids,
    SubjectKind.ALKALINITY: _alkalinity,
    SubjectKind.ALKALINITY_FALL: loop_in(alkalinity.why_fall),
    SubjectKind.OBSERVED_ACID: water_on(alkalinity.why_observed_acid),
    SubjectKind.TREND: water_on(trends.why_trend, with_part=True),
    SubjectKind.TEST_LATE: water_on(trends.why_test_late, with_part=True),
    SubjectKind.METER_LATE: _meter,
    SubjectKind.SURFACE: loop_in(air.why_surface),
    SubjectKind.GRAVEL: _gravel,
    SubjectKind.PEAK_OXYGEN: loop_in(air.why_peak_oxygen),
    SubjectKind.SATURATION: loop_in(air.why_saturation),
    SubjectKind.DOSE_BRINGS: _dose,
    SubjectKind.ADVISED_BRINGS: water_on(doses.why_advised_brings, with_part=True),
    SubjectKind.BASE_LEFT: water_on(doses.why_base_left),
    SubjectKind.WANTING: _wanting,
    SubjectKind.LOT_SHARE: _lot,
    SubjectKind.GROUP_COUNT: group_on(fish_count.why_count),
    SubjectKind.GROUP_WEIGHT: group_on(growth.why_weight),
    SubjectKind.GROUP_GAIN: group_on(crowding.why_gained),
    SubjectKind.GROUP_DEATHS: group_span(fish_count.why_deaths),
    SubjectKind.FISH_HARVEST: group_on(fish_count.why_harvested),
    SubjectKind.FISH_HARVEST_COUNT: group_on(fish_count.why_harvested_fish),
    SubjectKind.FEED_FALL: group_on(feed_holes.why_fall),
    SubjectKind.FEED_HOLE: loop_in(feed_holes.why_hole),
    SubjectKind.FEED_AMOUNT: _feed_amount,
    SubjectKind.FISH_GAINED: group_amount(fish_totals.why_gained),
    SubjectKind.FISH_HARVESTED: group_amount(fish_totals.why_fish_harvests),
    SubjectKind.WORK: _work,
    SubjectKind.SEEDS_USED: _seeds_used,
    SubjectKind.PIECES: _pieces,
    SubjectKind.HARVEST_TOTAL: _harvest_total,
    SubjectKind.PLANTED_CROP: _crop_area,
    SubjectKind.BATCH_AREA: of_batch(area.why_batch_area),
    SubjectKind.PLACES_USED: bed_on(places.why_used),
    SubjectKind.PLACES_FREE: bed_on(places.why_free),
    SubjectKind.NURSERY_USED: _nursery,
    SubjectKind.BATCH_PLACES: batch_on(places.why_batch_places),
    SubjectKind.BATCH_YIELD: of_batch(batch_figures.why_yield),
    SubjectKind.BATCH_HEADS: of_batch(batch_figures.why_heads),
    SubjectKind.BATCH_DEMAND: _batch_demand,
    SubjectKind.BATCH_LATE: of_batch(batch_figures.why_late),
    SubjectKind.BAND: element_in(balance.why_band),
    SubjectKind.FLAG: _flag,
    SubjectKind.FISH_READY: _ready,
}
"""Who answers for each kind of figure; one that is not here cannot be asked."""
