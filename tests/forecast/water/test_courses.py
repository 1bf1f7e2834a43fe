"""Alkalinity and what is dissolved, foreseen week by week."""

import numpy as np
import pytest

from planner.catalogue.loading import shipped_catalogue
from planner.farm.species import ELEMENTS
from planner.farm.water import Quantity
from planner.forecast.ranges.values import LoopRanges, Range
from planner.forecast.water.acid import acid_forecast
from planner.forecast.water.courses import alkalinity_ahead, dissolved_ahead
from planner.forecast.water.limits import LimitWay, limit_days
from tests.farms import LOOP
from tests.forecast.water.loops import RULER, loop_of, on_day, read

WATER_L = 2000.0
CATALOGUE = shipped_catalogue()
IRON = ELEMENTS.index("fe")


def ahead(*readings, base_eq=None, today=14, weeks=4, feed_g=200.0):
    acid = acid_forecast(loop_of(feed_g), water_l=WATER_L, catalogue=CATALOGUE)
    return alkalinity_ahead(
        acid,
        readings=readings,
        base_eq=np.zeros(RULER.days) if base_eq is None else base_eq,
        today=on_day(today),
        ruler=RULER,
        catalogue=CATALOGUE,
        weeks=weeks,
    )


def test_that_alkalinity_starts_at_its_last_reading_and_ends_some_weeks_after_today():
    found = ahead(read(Quantity.ALKALINITY_MG_PER_L, 90.0, 7), read(Quantity.ALKALINITY_MG_PER_L, 80.0, 12))
    assert (found[0].on, found[0].span.likely) == (on_day(12), 80.0)
    assert found[-1].on == on_day(40)  # the last whole week before day 42


def test_that_the_likely_fall_is_feed_times_the_published_acid():
    # 0.2 kg feed a day at the published eq per kg, 50.04 g CaCO3 per eq, in 2000 L, over a week.
    per_kg = CATALOGUE.figure("coefficient/nitrification/net_acid_eq_per_kg_feed").value
    found = ahead(read(Quantity.ALKALINITY_MG_PER_L, 200.0, 14))
    fall = 7 * 0.2 * per_kg * 50.04 * 1000 / WATER_L
    assert found[0].span.likely - found[1].span.likely == pytest.approx(fall, rel=1e-3)


def test_that_it_reaches_the_limit_between_the_days_the_limit_names():
    reading = read(Quantity.ALKALINITY_MG_PER_L, 90.0, 14)
    found = ahead(reading, weeks=17)
    acid = acid_forecast(loop_of(), water_l=WATER_L, catalogue=CATALOGUE)
    days = limit_days(acid, readings=[reading], today=on_day(14), ruler=RULER, catalogue=CATALOGUE)
    limit = next(each for each in days if each.way is LimitWay.ALKALINITY_BALANCE)
    before = [each for each in found if each.on < limit.earliest_on]
    after = [each for each in found if each.on >= limit.earliest_on]
    assert all(each.span.low > limit.limit for each in before)
    assert all(each.span.low <= limit.limit for each in after)


def test_that_base_lifts_it_on_its_day_and_it_never_goes_below_nothing():
    base = np.zeros(RULER.days)
    base[20] = 4.0
    plain, lifted = (
        ahead(read(Quantity.ALKALINITY_MG_PER_L, 200.0, 14)),
        ahead(read(Quantity.ALKALINITY_MG_PER_L, 200.0, 14), base_eq=base),
    )
    rise = 4.0 * 50.04 * 1000 / WATER_L
    assert lifted[1].span.likely - plain[1].span.likely == pytest.approx(rise, rel=1e-3)
    empty = ahead(read(Quantity.ALKALINITY_MG_PER_L, 5.0, 14), weeks=17, feed_g=2000.0)
    assert empty[-1].span.likely == 0.0


def test_that_nothing_is_foretold_without_a_reading_or_from_an_old_one():
    assert ahead() == ()
    assert ahead(read(Quantity.ALKALINITY_MG_PER_L, 90.0, 0), today=120) == ()


def test_that_what_is_dissolved_has_no_range_until_one_is_known_and_then_never_less_than_none():
    loop = loop_of()
    given = {"row": IRON, "today": on_day(0), "ruler": RULER, "weeks": 4}
    plain = dissolved_ahead(loop, ranges=None, **given)
    assert all(each.span.low == each.span.likely == each.span.high for each in plain)
    shape = (len(ELEMENTS), RULER.weeks)
    band = Range(low=np.zeros(shape), likely=np.full(shape, 1.0), high=np.full(shape, 3.0))
    none = Range(low=np.zeros(shape), likely=np.zeros(shape), high=np.zeros(shape))
    ranges = LoopRanges(loop=LOOP.id, name="", supply_g=band, demand_g=none, ratio=none, feed_g_per_day=none)
    ranged = dissolved_ahead(loop, ranges=ranges, **given)
    assert [each.span.likely for each in ranged] == [each.span.likely for each in plain]
    widths = [(each.span.high - each.span.likely) * loop.water_l / 1000 for each in ranged]
    assert widths == pytest.approx([0.0, 2.0, 4.0, 6.0, 8.0])
    assert all(each.span.low >= 0.0 for each in ranged)
