"""The feed that beds need: by area, by a fixed ratio, by what crops take up."""

from __future__ import annotations

import dataclasses

import numpy as np
import pytest

from planner.planning.stocking.need import brought_per_feed, need_by_area, need_by_demand, need_by_ratio
from tests.farms import farm_of
from tests.planning.remedies.cases import hungry_farm


@pytest.fixture(scope="module")
def hungry(means):
    forecast = means.forecaster.preview(hungry_farm())
    return forecast.loops[0], forecast.ruler, means.forecaster.bands


def test_that_area_asks_for_the_published_leafy_band(hungry):
    """FAO 589: 40 to 50 g/m2/d for leafy crops at 32 % protein, which the feed here has."""
    loop, ruler, bands = hungry
    need = need_by_area(loop, ruler, bands)
    area = ruler.weekly_mean(loop.planted_m2).sum(axis=0)
    fed = area > 1e-6
    assert need.low[fed] / area[fed] == pytest.approx(40.0, rel=0.05)
    assert need.high[fed] / need.low[fed] == pytest.approx(50.0 / 40.0)
    assert not need.high[~fed].any()


def test_that_a_fixed_ratio_gives_the_worked_example_of_the_guideline():
    """Rakocy 2007: 1000 g a day at 60 g/m2/d feed 16.7 m2."""
    need = need_by_ratio(1000.0 / 60.0, band=(60.0, 100.0), weeks=3)
    assert need.low.tolist() == pytest.approx([1000.0] * 3)


def test_that_feed_by_demand_brings_just_what_crops_take_up(hungry):
    loop, ruler, bands = hungry
    brought = brought_per_feed(loop)
    need = need_by_demand(loop, ruler, bands, brought_g_per_g=brought)
    demand = ruler.weekly_mean(loop.demand_g)[0]
    other = ruler.weekly_mean(loop.top_up_g + loop.dose_g)[0]
    asked = need.low > 0.0
    assert asked.any()
    assert (need.low * brought[0] + other)[asked] == pytest.approx(demand[asked] * bands.thin_below)
    assert np.all(need.high >= need.low)


def test_that_more_elements_never_ask_for_less_feed(hungry):
    loop, ruler, bands = hungry
    brought = brought_per_feed(loop)
    one = need_by_demand(loop, ruler, bands, brought_g_per_g=brought)
    many = need_by_demand(loop, ruler, bands, brought_g_per_g=brought, elements=("n", "p", "k"))
    assert np.all(many.low >= one.low - 1e-9)


def test_that_without_feed_nobody_knows_what_feed_brings(means):
    bare = dataclasses.replace(farm_of(), fish_groups=())
    with pytest.raises(ValueError, match="nothing is fed"):
        brought_per_feed(means.forecaster.preview(bare).loops[0])
