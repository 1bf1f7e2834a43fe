"""Ranges of what is foreseen come from the ranges of the figures, and say which matter most."""

from __future__ import annotations

import dataclasses
from functools import lru_cache
from types import MappingProxyType

import numpy as np
import pytest

from planner.catalogue.errors import UnknownFigureError
from planner.catalogue.loading import shipped_catalogue
from planner.forecast.engine import Forecaster
from planner.forecast.ranges.bands import ranges_of, sensitivities
from planner.forecast.ranges.changed import with_values
from planner.forecast.verdicts import week_verdicts
from tests.farms import farm_of, group_of, weekly_batches
from tests.forecast.sample_farms import known

N = 0


def small_farm(**parts):
    return farm_of(**({"fish_groups": (group_of(),), "batches": weekly_batches(6, bed_days=None)} | parts))


@lru_cache(maxsize=4)
def small():
    farm, forecaster = small_farm(), Forecaster(shipped_catalogue())
    forecast = forecaster.forecast(farm)
    return farm, forecast, ranges_of(farm, forecast, forecaster)


@lru_cache(maxsize=4)
def sample(name):
    farm, forecast, forecaster = known(name)
    return forecast, forecaster, ranges_of(farm, forecast, forecaster)


def bands(ranges):
    for loop in ranges.loops:
        yield from (loop.supply_g, loop.demand_g, loop.ratio, loop.feed_g_per_day)
    yield from (ranges.harvest_plants, ranges.harvest_g)


@pytest.mark.parametrize(
    "name", ["backyard", "by-hand", pytest.param("school-kitchen", marks=pytest.mark.slow)]
)
def test_that_every_range_is_in_order_and_holds_the_forecast(name):
    forecast, forecaster, ranges = sample(name)
    for band in bands(ranges):
        known_ = ~np.isnan(band.likely)
        assert (np.isnan(band.low) == ~known_).all()
        assert (band.low[known_] >= 0).all()
        assert (band.low[known_] <= band.likely[known_]).all()
        assert (band.likely[known_] <= band.high[known_]).all()
    verdicts = week_verdicts(forecast.loops[0], forecast.ruler, forecaster.bands)
    for verdict in verdicts:
        likely = ranges.loops[0].ratio.likely[:, verdict.week]
        wanted = [np.nan if one is None else one for one in verdict.ratio]
        assert likely == pytest.approx(wanted, nan_ok=True)
    assert ranges.harvest_g.likely == pytest.approx(forecast.ruler.weekly_sum(forecast.harvest_g))


def test_that_supply_hangs_on_no_crop_and_demand_on_no_fish():
    """The two sides are moved each without the other: this must not change what is foreseen of it."""
    farm, forecast, _ = known("school-kitchen")
    without_crops = dataclasses.replace(farm, batches=(), placements=())
    without_fish = dataclasses.replace(farm, fish_groups=(), fish_events=(), doses=())
    alone = Forecaster(shipped_catalogue())
    assert alone.preview(without_crops).loops[0].supply_g == pytest.approx(forecast.loops[0].supply_g)
    assert alone.preview(without_fish).loops[0].demand_g == pytest.approx(forecast.loops[0].demand_g)


def test_that_most_weeks_have_a_real_range():
    _, _, ranges = sample("backyard")
    loop = ranges.loops[0]
    assert (loop.demand_g.high > loop.demand_g.low)[:, 3:20].all()
    assert (loop.feed_g_per_day.high > loop.feed_g_per_day.low).all()


def test_that_a_swing_is_what_a_forecast_with_that_figure_says():
    farm, forecast, ranges = small()
    path = "crop/lettuce-butterhead/yield_g_per_plant"
    swing = next(one for one in ranges.swings if one.paths == (path,))
    changed = Forecaster(with_values(shipped_catalogue(), {path: swing.low})).forecast(farm)
    ruler = forecast.ruler
    wanted = ruler.weekly_sum(changed.loops[0].demand_g) - ruler.weekly_sum(forecast.loops[0].demand_g)
    assert swing.at_low.demand_g[0] == pytest.approx(wanted, abs=1e-9)
    grams = ruler.weekly_sum(changed.harvest_g) - ruler.weekly_sum(forecast.harvest_g)
    assert swing.at_low.harvest_g == pytest.approx(grams, abs=1e-9)
    assert not swing.at_low.supply_g.any()


def test_that_contents_moved_in_one_run_swing_their_own_element_of_their_own_crop():
    _, forecast, ranges = small()
    path = "crop/lettuce-butterhead/n_g_per_kg"
    swing = next(one for one in ranges.swings if one.paths == (path,))
    demand = forecast.ruler.weekly_sum(forecast.loops[0].demand_g)
    assert swing.at_high.demand_g[0, N] == pytest.approx(demand[N] * (swing.high / swing.likely - 1.0))
    assert not swing.at_high.demand_g[0, 1:].any()


def test_that_swings_add_in_quadrature_upward():
    _, _, ranges = small()
    up = sum(
        np.maximum(np.maximum(one.at_low.demand_g, one.at_high.demand_g), 0.0) ** 2 for one in ranges.swings
    )
    demand = ranges.loops[0].demand_g
    assert (demand.high - demand.likely) ** 2 == pytest.approx(up[0])


def test_that_swings_add_as_factors_downward():
    _, _, ranges = small()
    feed = ranges.loops[0].feed_g_per_day
    factors = [
        1.0
        + np.minimum(np.minimum(one.at_low.feed_g_per_day, one.at_high.feed_g_per_day), 0.0)[0] / feed.likely
        for one in ranges.swings
    ]
    together = np.sqrt(sum(np.log(factor) ** 2 for factor in factors))
    assert np.log(feed.likely / feed.low) == pytest.approx(together)
    assert (feed.low > 0).all()


def test_that_a_ratio_lies_within_the_ends_of_supply_and_demand():
    for name in ("backyard", "by-hand"):
        loop = sample(name)[2].loops[0]
        known_ = ~np.isnan(loop.ratio.likely) & (loop.demand_g.low > 1e-6)
        most = loop.supply_g.high[known_] / loop.demand_g.low[known_]
        least = loop.supply_g.low[known_] / loop.demand_g.high[known_]
        assert (loop.ratio.high[known_] <= most * (1 + 1e-9)).all()
        assert (loop.ratio.low[known_] >= least * (1 - 1e-9)).all()


def test_that_figures_without_a_range_leave_no_range():
    book = shipped_catalogue()
    narrow = {
        path: dataclasses.replace(one, low=one.value, high=one.value) for path, one in book.figures.items()
    }
    forecaster = Forecaster(dataclasses.replace(book, figures=MappingProxyType(narrow)))
    farm = small_farm()
    ranges = ranges_of(farm, forecaster.forecast(farm), forecaster)
    assert ranges.swings == ()
    for band in bands(ranges):
        assert band.low == pytest.approx(band.likely, nan_ok=True)
        assert band.high == pytest.approx(band.likely, nan_ok=True)


def test_that_what_matters_most_comes_first_and_is_the_same_each_time():
    farm, forecast, ranges = small()
    loop = farm.loops[0].id
    found = sensitivities(ranges, loop=loop, element=N, week=10)
    assert len(found) >= 8
    widths = [one.width for one in found]
    assert widths == sorted(widths, reverse=True)
    assert widths[0] > 0
    forecaster = Forecaster(shipped_catalogue())
    again = ranges_of(farm, forecaster.forecast(farm), forecaster)
    assert sensitivities(again, loop=loop, element=N, week=10) == found
    ratio = week_verdicts(forecast.loops[0], forecast.ruler, forecaster.bands)[10].ratio[N]
    assert [one.ratio_likely for one in found] == pytest.approx([ratio] * len(found))


def test_that_the_ends_of_a_sensitivity_are_those_of_a_forecast_with_the_figure():
    farm, _, ranges = small()
    for week in (10, None):
        found = sensitivities(ranges, loop=farm.loops[0].id, element=N, week=week)
        for one in found[:4]:
            changed = with_values(shipped_catalogue(), dict.fromkeys(one.paths, one.low))
            if len(one.paths) > 1:
                continue
            loop = Forecaster(changed).forecast(farm).loops[0]
            days = slice(None) if week is None else slice(week * 7, week * 7 + 7)
            ratio = loop.supply_g[N, days].sum() / loop.demand_g[N, days].sum()
            assert one.ratio_at_low == pytest.approx(ratio, rel=1e-6)


def test_that_the_growth_of_a_fish_at_all_sizes_is_one_swing():
    _, _, ranges = small()
    growth = [one.paths for one in ranges.swings if one.paths[0].endswith("/tgc")]
    assert len(growth) == 1
    species = small()[0].fish_groups[0].species
    assert len(growth[0]) == len(shipped_catalogue().fish[species].stages) > 1


def test_that_a_week_without_demand_has_no_sensitivities():
    farm, _, ranges = small()
    assert sensitivities(ranges, loop=farm.loops[0].id, element=N, week=19) == ()


def test_that_values_can_be_laid_over_a_catalogue_without_changing_it():
    book = shipped_catalogue()
    changed = with_values(
        book,
        {
            "crop/basil/bed_days": 30.0,
            "fish/nile-tilapia/stage/2/tgc": 0.9,
            "element/n/solids_share": 0.2,
            "coefficient/season/light_half_rate_mol": 9.0,
        },
    )
    assert changed.crops["basil"].bed_days == 30.0
    assert changed.fish["nile-tilapia"].stages[1].tgc == 0.9
    assert changed.elements["n"].solids_share == 0.2
    assert changed.figure("coefficient/season/light_half_rate_mol").value == 9.0
    assert changed.figure("fish/nile-tilapia/stage/2/tgc").value == 0.9
    assert book.crops["basil"].bed_days != 30.0
    assert book.figure("element/n/solids_share").value == 0.15


def test_that_temperatures_out_of_order_are_left_as_they_were():
    book = shipped_catalogue()
    changed = with_values(book, {"crop/basil/optimum_c": 1.0})
    assert changed.crops["basil"] == book.crops["basil"]


def test_that_an_unknown_figure_is_refused():
    with pytest.raises(UnknownFigureError, match="bed_dais"):
        with_values(shipped_catalogue(), {"crop/basil/bed_dais": 1.0})
