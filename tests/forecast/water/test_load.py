"""Ammonia, filter and oxygen: what is asked for, and how what is there stands to it."""

from __future__ import annotations

from dataclasses import replace

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from planner.farm.ids import id_from
from planner.farm.site import Filter, FilterKind
from planner.farm.species import BedKind
from planner.forecast.water.filters import (
    FilterVerdict,
    filter_area,
    filter_figures,
    filter_verdict,
)
from planner.forecast.water.load import (
    biofilm_rate_by_day,
    load_figures,
    load_forecast,
    needed_area,
    week_loads,
)
from planner.forecast.water.spans import DaySpan
from tests.farms import LOOP, RAFT
from tests.forecast.water.loops import RULER, loop_of, water_of

WARM = (26.0,) * 12


def filter_of(name="F", *, kind=FilterKind.MOVING_BED, area=None):
    return Filter(id=id_from("filter", name), name=name, loop=LOOP.id, kind=kind, media_area_m2=area)


def load_of(catalogue, found=None, *, loop=LOOP, filters=(), beds=(), altitude=0.0):
    return load_forecast(
        replace(found or loop_of(), water_c=water_of(loop)),
        loop=loop,
        altitude_m=altitude,
        filters=filters,
        beds=beds,
        ruler=RULER,
        catalogue=catalogue,
    )


def spans_of(load):
    return [value for name in load.__slots__ if isinstance(value := getattr(load, name), DaySpan)]


@pytest.mark.parametrize("months", [(), WARM, (4.0,) * 12])
def test_that_every_range_is_in_order(catalogue, months):
    load = load_of(catalogue, loop=replace(LOOP, water_c=months))
    found = spans_of(load)
    assert len(found) == 8
    for span in found:
        assert np.all(span.low <= span.likely)
        assert np.all(span.likely <= span.high)


@given(feed=st.floats(1, 50_000), more=st.floats(1.01, 5))
def test_that_more_feed_asks_for_more_filter_and_more_oxygen(catalogue, feed, more):
    less, fed = load_of(catalogue, loop_of(feed)), load_of(catalogue, loop_of(feed * more))
    for smaller, larger in zip(spans_of(less), spans_of(fed), strict=True):
        assert np.all(larger.high >= smaller.high)
    assert np.all(fed.need_m2.likely > less.need_m2.likely)


def test_that_cold_water_asks_for_more_filter(catalogue):
    cold = load_of(catalogue, loop=replace(LOOP, water_c=(15.0,) * 12))
    warm = load_of(catalogue, loop=replace(LOOP, water_c=WARM))
    assert np.all(cold.need_m2.likely > warm.need_m2.likely)


def test_that_without_temperatures_the_printed_rate_holds_and_saturation_is_not_said(catalogue):
    load = load_of(catalogue)
    printed = catalogue.figure("coefficient/nitrification/biofilm_rate_n_g_per_m2_day")
    assert load.saturation_mg_per_l is None
    assert load.rate_g_per_m2_day.likely == pytest.approx(printed.value)
    assert load.rate_g_per_m2_day.low == pytest.approx(printed.low)


def test_that_the_rate_at_its_own_temperature_is_the_printed_one(catalogue):
    figures = load_figures(catalogue)
    warmth = np.full(3, figures.rate_holds_at_c.value)
    rate = biofilm_rate_by_day(warmth, days=3, figures=figures)
    assert rate.likely == pytest.approx(figures.rate_g_per_m2_day.value)


def test_that_oxygen_in_the_water_falls_with_altitude(catalogue):
    loop = replace(LOOP, water_c=(20.0,) * 12)
    sea, hill = (load_of(catalogue, loop=loop, altitude=metres) for metres in (0.0, 1000.0))
    assert np.all(hill.saturation_mg_per_l < sea.saturation_mg_per_l)


def test_that_oxygen_of_a_day_is_that_of_its_hours(catalogue):
    load = load_of(catalogue)
    day = load.fish_oxygen_g.likely + load.nitrification_oxygen_g.likely
    assert 24.0 * load.hourly_oxygen_g.likely == pytest.approx(day)
    assert load.hourly_mg_per_l.likely * LOOP.water_l / 1000.0 == pytest.approx(load.hourly_oxygen_g.likely)


def test_that_only_biological_filters_of_the_loop_count(catalogue):
    elsewhere = replace(filter_of("other", area=50.0), loop=id_from("other loop"))
    filters = (
        filter_of("a", area=10.0),
        filter_of("b", kind=FilterKind.TRICKLING, area=5.0),
        filter_of("c", kind=FilterKind.SETTLER, area=100.0),
        filter_of("d", kind=FilterKind.STATIC),
        elsewhere,
    )
    area = filter_area(LOOP.id, filters=filters, beds=(), figures=filter_figures(catalogue))
    assert area.known_m2 == 15.0
    assert area.without_area == (id_from("filter", "d"),)


def test_that_no_surface_entered_is_unknown_and_gravel_is_a_bonus_said_apart(catalogue):
    gravel = replace(RAFT, kind=BedKind.MEDIA, depth_cm=30.0, area_m2=10.0)
    load = load_of(catalogue, filters=(filter_of(),), beds=(gravel,))
    week = week_loads(load, ruler=RULER, figures=filter_figures(catalogue))[0]
    assert week.verdict is FilterVerdict.UNKNOWN
    assert week.with_gravel is FilterVerdict.ENOUGH
    # 10 m² of 30 cm is 3 m³; half of 135 m²/m³ counts
    assert load.area.gravel_m2.likely == pytest.approx(3.0 * 135.0 / 2.0)
    assert not load.area.assumed_depth


def test_that_gravel_without_a_depth_says_that_one_was_assumed(catalogue):
    gravel = replace(RAFT, kind=BedKind.MEDIA, depth_cm=None)
    area = filter_area(LOOP.id, filters=(), beds=(gravel,), figures=filter_figures(catalogue))
    assert area.assumed_depth
    assert area.gravel_m2.low < area.gravel_m2.likely < area.gravel_m2.high


def test_that_a_loop_without_filter_and_gravel_is_unknown_twice(catalogue):
    week = week_loads(load_of(catalogue), ruler=RULER, figures=filter_figures(catalogue))[0]
    assert (week.verdict, week.with_gravel) == (FilterVerdict.UNKNOWN, FilterVerdict.UNKNOWN)
    assert week.ratio is None


@pytest.mark.parametrize(
    ("area", "verdict"),
    [
        (None, FilterVerdict.UNKNOWN),
        (9.9, FilterVerdict.SHORT),
        (10.0, FilterVerdict.TIGHT),
        (14.9, FilterVerdict.TIGHT),
        (15.0, FilterVerdict.ENOUGH),
    ],
)
def test_that_a_verdict_goes_by_the_surface_over_the_need(catalogue, area, verdict):
    assert filter_verdict(area, need_m2=10.0, figures=filter_figures(catalogue)) is verdict


def test_that_a_loop_without_fish_has_no_load(catalogue):
    load = load_of(catalogue, loop_of(0.0), filters=(filter_of(area=5.0),))
    week = week_loads(load, ruler=RULER, figures=filter_figures(catalogue))[0]
    assert week.verdict is FilterVerdict.NO_LOAD


@given(small=st.floats(0.1, 1000), more=st.floats(0.0, 1000), need=st.floats(0.1, 1000))
def test_that_more_surface_is_never_a_worse_verdict(catalogue, small, more, need):
    order = [FilterVerdict.SHORT, FilterVerdict.TIGHT, FilterVerdict.ENOUGH]
    figures = filter_figures(catalogue)
    less, larger = (filter_verdict(area, need_m2=need, figures=figures) for area in (small, small + more))
    assert order.index(larger) >= order.index(less)


def test_that_need_times_rate_is_the_load(catalogue):
    load = load_of(catalogue, loop=replace(LOOP, water_c=WARM))
    again = needed_area(load.tan_g, load.rate_g_per_m2_day)
    assert again.high * load.rate_g_per_m2_day.low == pytest.approx(load.tan_g.high)
