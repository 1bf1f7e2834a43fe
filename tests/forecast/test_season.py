"""How warmth and light stretch the stages of a batch, and what that does to growth and seeds."""

from __future__ import annotations

import dataclasses
from datetime import date, timedelta

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from planner.catalogue.loading import shipped_catalogue
from planner.farm.crops import SeedLot, Stage
from planner.farm.farm import Settings
from planner.farm.ids import id_from
from planner.farm.species import HarvestKind
from planner.forecast.climate import daily_series
from planner.forecast.delays import DelayCause, stage_delays
from planner.forecast.engine import Forecaster
from planner.forecast.profiles import contents, picks_by_day, profile_key, profile_of
from planner.forecast.values import FlagKind
from planner.science.response import light_needed
from tests.farms import MONDAY, SITE, batch_of, farm_of, weekly_batches

CATALOGUE = shipped_catalogue()
BRIGHT = (20.0,) * 12
PLANTS = {"germination_days": None, "nursery_days": None, "bed_days": None}


def site_of(**fields):
    return dataclasses.replace(SITE, **fields)


def forecast_of(forecaster, *batches, weeks=30, **site):
    plan = Settings(id=id_from("s"), name="Plan", plan_from=MONDAY, plan_weeks=weeks)
    return forecaster.forecast(farm_of(batches=batches, sites=(site_of(**site),), settings=plan))


def first_pick(forecast, row=0):
    return int(forecast.batches.ends[row, 3] - forecast.batches.sow_day[row])


def test_that_book_durations_hold_where_nothing_is_known_of_the_climate(forecaster):
    forecast = forecast_of(forecaster, batch_of(**PLANTS))
    crop = CATALOGUE.crops["lettuce-butterhead"]
    assert first_pick(forecast) == round(crop.germination_days) + round(crop.nursery_days) + round(
        crop.bed_days
    )


def test_that_reference_conditions_give_the_books_days_in_nursery_and_bed(forecaster):
    crop = CATALOGUE.crops["lettuce-butterhead"]
    forecast = forecast_of(
        forecaster, batch_of(**PLANTS), air_c=(crop.optimum_c,) * 12, radiation_mj_per_m2_d=BRIGHT
    )
    ends = forecast.batches.ends[0]
    assert ends[1] - ends[0] == round(crop.nursery_days)
    assert ends[3] - ends[2] == round(crop.bed_days)


def test_that_little_light_makes_a_batch_later_and_is_named(forecaster):
    batch = batch_of(**PLANTS)
    forecast = forecast_of(forecaster, batch, air_c=(24.0,) * 12, radiation_mj_per_m2_d=(3.0,) * 12)
    delay = forecaster.delay_of(forecast, 0)
    assert delay is not None
    assert delay.cause is DelayCause.LITTLE_LIGHT
    assert delay.days >= delay.by_light > delay.by_warmth


@pytest.mark.parametrize(("celsius", "cause"), [(10.0, DelayCause.COLD), (32.0, DelayCause.HEAT)])
def test_that_cold_and_heat_are_told_apart(forecaster, celsius, cause):
    forecast = forecast_of(
        forecaster, batch_of(**PLANTS), air_c=(celsius,) * 12, radiation_mj_per_m2_d=BRIGHT
    )
    delay = forecaster.delay_of(forecast, 0)
    assert delay is not None
    assert delay.cause is cause


def test_that_a_shady_roof_slows_and_a_clear_one_does_not(forecaster):
    clear, shady = (
        first_pick(
            forecast_of(
                forecaster, batch_of(**PLANTS), radiation_mj_per_m2_d=(12.0,) * 12, roof_transmission=share
            )
        )
        for share in (0.9, 0.3)
    )
    assert clear < shady


def test_that_latitude_alone_tells_summer_from_winter(forecaster):
    winter = batch_of("A-1", sow_on=date(2027, 11, 22), **PLANTS)
    summer = batch_of("B-1", sow_on=date(2027, 5, 24), **PLANTS)
    forecast = forecast_of(forecaster, winter, summer, weeks=60, latitude_deg=52.0)
    assert first_pick(forecast, 0) > first_pick(forecast, 1) + 10


def test_that_the_same_sowing_every_week_ripens_unevenly_through_a_dark_season(forecaster):
    radiation = (16, 16, 16, 14, 6, 4, 6, 14, 16, 16, 16, 16)
    batches = weekly_batches(40, **PLANTS)
    forecast = forecast_of(
        forecaster, *batches, weeks=60, air_c=(23.0,) * 12, radiation_mj_per_m2_d=radiation
    )
    picks = forecast.batches.ends[:, 3]
    gaps = np.diff(picks)
    assert gaps.min() < 7 < gaps.max()
    assert gaps.min() >= 0


def test_that_heat_asks_for_more_lettuce_seed(forecaster):
    cool, hot = (
        int(
            forecast_of(forecaster, batch_of(plants=100, **PLANTS), nursery_c=(celsius,) * 12).batches.seeds[
                0
            ]
        )
        for celsius in (20.0, 30.0)
    )
    assert hot > 5 * cool


def test_that_a_seed_lots_test_stands_in_for_the_book(forecaster):
    lot = SeedLot(id=id_from("lot"), code="L-1", crop="lettuce-butterhead", germination_share=0.5)
    batch = batch_of(plants=100, seed_lot=lot.id)
    forecast = forecaster.forecast(farm_of(batches=(batch,), seed_lots=(lot,)))
    survival = CATALOGUE.crops["lettuce-butterhead"].nursery_survival_share
    assert int(forecast.batches.seeds[0]) == int(np.ceil(100 / (0.5 * survival)))


@pytest.mark.parametrize(("key", "celsius", "days"), [("tomato", 10.0, 43), ("lettuce-butterhead", 5.0, 15)])
def test_that_seed_in_the_cold_is_waited_for_as_long_as_is_printed(forecaster, key, celsius, days):
    """Harrington and Minges 1954: tomato at 10 °C is up in 43 days, lettuce at 5 °C in 15."""
    batch = batch_of(crop=key, plants=10, **PLANTS)
    forecast = forecast_of(forecaster, batch, weeks=60, air_c=(22.0,) * 12, nursery_c=(celsius,) * 12)
    assert int(forecast.batches.ends[0, 0] - forecast.batches.sow_day[0]) == pytest.approx(days, abs=1)


def test_that_seed_below_its_base_gives_no_plants_and_asks_for_nothing(forecaster):
    """Tomato does not germinate at 5 °C; however warm the bed is, nothing is planted there."""
    batch = batch_of(crop="tomato", plants=10, **PLANTS)
    forecast = forecast_of(forecaster, batch, weeks=60, air_c=(24.0,) * 12, nursery_c=(5.0,) * 12)
    assert float(forecast.batches.ripe[0]) == 0.0
    assert forecast.harvest_g.sum() == 0.0
    assert forecast.harvest_plants.sum() == 0.0
    assert forecast.loops[0].demand_g.sum() == 0.0
    assert [flag.kind for flag in forecast.flags].count(FlagKind.GIVEN_UP) == 1


def test_that_a_crop_too_slow_to_end_is_given_up_at_a_stated_length(forecaster):
    forecast = forecast_of(forecaster, batch_of(**PLANTS), air_c=(2.0,) * 12)
    crop = CATALOGUE.crops["lettuce-butterhead"]
    stretch = CATALOGUE.figure("coefficient/season/longest_stretch").value
    ends = forecast.batches.ends[0]
    assert ends[1] - ends[0] == int(np.ceil(round(crop.nursery_days) * stretch))


@given(
    key=st.sampled_from(sorted(CATALOGUE.crops)),
    months=st.lists(st.floats(4, 35), min_size=12, max_size=12),
    radiation=st.lists(st.floats(1, 25), min_size=12, max_size=12),
    sown=st.integers(0, 60),
)
@settings(max_examples=15)
def test_that_growth_closes_over_a_life_in_any_season(key, months, radiation, sown):
    batch = batch_of(crop=key, plants=10, clearing_days=None, sow_on=MONDAY + timedelta(days=sown), **PLANTS)
    forecast = forecast_of(
        Forecaster(CATALOGUE), batch, weeks=160, air_c=tuple(months), radiation_mj_per_m2_d=tuple(radiation)
    )
    profile = profile_of(profile_key(batch), CATALOGUE.crops[key])
    demand, ripe = forecast.loops[0].demand_g.sum(axis=1), float(forecast.batches.ripe[0])
    assert 0 <= ripe <= 1
    whole = 10 * ripe * profile.dry_mass_g * contents(profile.crop)
    full_g = 10 * ripe * profile.bed_survival_share * profile.yield_g_per_plant
    first, first_pick = profile.first_pick_share, float(picks_by_day(profile)[0])
    assert np.all(np.diff(forecast.batches.ends[0]) >= 0)
    if profile.crop.harvest is HarvestKind.SINGLE:
        assert demand == pytest.approx(whole, rel=1e-5)
        assert forecast.harvest_g.sum() == pytest.approx(full_g, rel=1e-9)
    else:  # what grows after the first pick hangs on the weather of those days
        assert np.all(demand >= whole * first * (1 - 1e-5))
        assert np.all(demand <= whole * (1 + 1e-5))
        assert full_g * first_pick * (1 - 1e-9) <= forecast.harvest_g.sum() <= full_g * (1 + 1e-9)


@pytest.mark.parametrize("key", ["tomato", "basil", "kale"])
def test_that_what_is_picked_again_follows_the_light_of_those_days(forecaster, key):
    """Growth goes by light caught: at half the pace what is picked after the first pick is half of it."""
    crop = CATALOGUE.crops[key]
    batch = batch_of(crop=key, plants=10, clearing_days=None, **PLANTS)
    half = CATALOGUE.figure("coefficient/season/light_half_rate_mol").value
    dim = light_needed(0.5, half_light_mol=half, reference_light_mol=crop.light_target_mol_per_m2_d)
    mol_per_mj = CATALOGUE.figure("coefficient/season/light_mol_per_mj").value
    bright_mj, dim_mj = crop.light_target_mol_per_m2_d / mol_per_mj, dim / mol_per_mj
    bright, dark = (
        forecast_of(
            forecaster,
            batch,
            weeks=70,
            air_c=(crop.optimum_c,) * 12,
            radiation_mj_per_m2_d=(mj,) * 12,
            roof_transmission=1.0,
        )
        for mj in (bright_mj, dim_mj)
    )
    profile = bright.profiles[int(bright.batches.profile[0])]
    first = float(picks_by_day(profile)[0])
    assert dark.harvest_g.sum() == pytest.approx(bright.harvest_g.sum() * (first + (1 - first) / 2), rel=1e-6)
    of_first = profile.first_pick_share
    demand, less = (one.loops[0].demand_g.sum(axis=1) for one in (bright, dark))
    assert less == pytest.approx(demand * (of_first + (1 - of_first) / 2), rel=1e-5)


def test_that_nothing_ripens_in_the_dark(forecaster):
    """Without light nothing grows: a crop kept on from summer into a night of months bears nothing then."""
    light = (0.0, 0.0, 5.0, 15.0, 20.0, 22.0, 20.0, 15.0, 5.0, 0.0, 0.0, 0.0)
    batch = batch_of(crop="tomato", plants=10, picking_days=300.0, clearing_days=None, **PLANTS)
    forecast = forecast_of(
        forecaster,
        dataclasses.replace(batch, sow_on=date(2027, 4, 1)),
        weeks=60,
        air_c=(25.0,) * 12,
        radiation_mj_per_m2_d=light,
    )
    ruler = forecast.ruler
    summer = slice(ruler.day_of(date(2027, 8, 1)), ruler.day_of(date(2027, 9, 15)))
    night = slice(ruler.day_of(date(2027, 11, 20)), ruler.day_of(date(2028, 1, 5)))
    assert forecast.harvest_g[:, summer].sum() > 0
    assert forecast.harvest_g[:, night].sum() < 0.02 * forecast.harvest_g[:, summer].sum()
    assert forecast.loops[0].demand_g[:, night].sum() < 0.02 * forecast.loops[0].demand_g[:, summer].sum()


def test_that_another_climate_gives_the_same_as_a_fresh_start(forecaster, catalogue):
    """Dates are worked out again where the climate changed, and only where batches stand is kept."""
    batches = weekly_batches(6, **PLANTS)
    for air_c in (18.0, 12.0, None, 21.0):
        year = {} if air_c is None else {"air_c": (air_c,) * 12, "radiation_mj_per_m2_d": (9.0,) * 12}
        farm = farm_of(batches=batches, sites=(site_of(**year),))
        again, fresh = forecaster.forecast(farm), Forecaster(catalogue).forecast(farm)
        for name in ("ends", "seeds", "ripe", "area_m2", "plants", "loop"):
            assert np.array_equal(getattr(again.batches, name), getattr(fresh.batches, name)), name
        assert np.array_equal(again.harvest_g, fresh.harvest_g)
        assert np.array_equal(again.loops[0].demand_g, fresh.loops[0].demand_g)
        batches = batches[1:]


def test_that_a_moved_batch_in_a_season_gives_the_same_as_a_fresh_start(forecaster, catalogue):
    sites = (site_of(air_c=(18.0,) * 12, radiation_mj_per_m2_d=(9.0,) * 12),)
    batches = weekly_batches(5, **PLANTS)
    forecaster.forecast(farm_of(batches=batches, sites=sites))
    moved = dataclasses.replace(batches[2], sow_on=batches[2].sow_on + timedelta(days=4))
    changed = farm_of(batches=(*batches[:2], moved, *batches[3:]), sites=sites)
    patched, fresh = forecaster.forecast(changed), Forecaster(catalogue).forecast(changed)
    assert np.array_equal(patched.batches.ends, fresh.batches.ends)
    assert patched.loops[0].demand_g == pytest.approx(fresh.loops[0].demand_g)


def test_that_daily_climate_keeps_the_means_of_the_months():
    months = (5.0, 6.0, 9.0, 12.0, 16.0, 20.0, 23.0, 23.0, 19.0, 14.0, 9.0, 6.0)
    daily = daily_series(months, start_on=date(2027, 1, 1), days=365)
    assert daily is not None
    ends = np.cumsum([31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31])
    means = [part.mean() for part in np.split(daily, ends[:-1])]
    assert means == pytest.approx(list(months))


def test_that_a_leap_day_is_like_the_day_before_it():
    months = tuple(float(month) for month in range(12))
    daily = daily_series(months, start_on=date(2028, 2, 28), days=2)
    assert daily is not None
    assert daily[0] == daily[1]


def test_that_each_stage_says_by_how_much_and_why_it_differs_from_the_book(forecaster):
    forecast = forecast_of(
        forecaster, batch_of(**PLANTS), air_c=(24.0,) * 12, radiation_mj_per_m2_d=(3.0,) * 12
    )
    delays = {each.stage: each for each in stage_delays(forecast.batches, forecaster.paces, 0)}
    assert delays[Stage.BED].days > 0
    assert delays[Stage.BED].cause is DelayCause.LITTLE_LIGHT
    crop = CATALOGUE.crops["lettuce-butterhead"]
    ends = forecast.batches.ends[0]
    assert delays[Stage.BED].days == ends[3] - ends[2] - round(crop.bed_days)


def test_that_the_delays_of_the_stages_make_up_the_delay_of_the_batch(forecaster):
    forecast = forecast_of(
        forecaster, batch_of(**PLANTS), air_c=(14.0,) * 12, radiation_mj_per_m2_d=(6.0,) * 12
    )
    stages = stage_delays(forecast.batches, forecaster.paces, 0)
    assert sum(each.days for each in stages) == forecaster.delay_of(forecast, 0).days


def test_that_a_cold_stage_is_told_from_a_hot_one(forecaster):
    for air_c, cause in ((10.0, DelayCause.COLD), (29.0, DelayCause.HEAT)):
        forecast = forecast_of(
            forecaster, batch_of(**PLANTS), air_c=(air_c,) * 12, radiation_mj_per_m2_d=BRIGHT
        )
        causes = {each.cause for each in stage_delays(forecast.batches, forecaster.paces, 0) if each.days > 0}
        assert causes == {cause}


def test_that_no_stage_differs_where_nothing_is_known_of_the_climate(forecaster):
    forecast = forecast_of(forecaster, batch_of(**PLANTS))
    assert stage_delays(forecast.batches, forecaster.paces, 0) == ()
