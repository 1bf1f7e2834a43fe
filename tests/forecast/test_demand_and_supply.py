"""What plants want, what fish bring, and how the two stand to each other."""

from __future__ import annotations

import dataclasses
from datetime import timedelta

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from planner.catalogue.loading import shipped_catalogue
from planner.farm.farm import Settings
from planner.farm.fish import Feeding, FishEvent, FishEventKind
from planner.farm.ids import id_from
from planner.farm.species import ELEMENTS
from planner.farm.water import Dose
from planner.forecast.engine import Forecaster
from planner.forecast.profiles import contents, profile_key, profile_of
from planner.forecast.values import Band
from planner.forecast.verdicts import week_verdicts
from tests.farms import LOOP, MONDAY, batch_of, farm_of, group_of, places_of, weekly_batches

CATALOGUE = shipped_catalogue()


def event_of(kind, day, **fields):
    return FishEvent(
        id=id_from("event", kind.value, str(day)),
        group=group_of().id,
        on=MONDAY + timedelta(days=day),
        kind=kind,
        **fields,
    )


def group_forecast(forecaster, *events, **fields):
    farm = farm_of(fish_groups=(group_of(**fields),), fish_events=events)
    return forecaster.forecast(farm).loops[0].groups[0]


@pytest.mark.parametrize("key", sorted(CATALOGUE.crops))
def test_that_demand_over_a_life_is_the_mass_formed_times_its_content(forecaster, key):
    crop = CATALOGUE.crops[key]
    batch = batch_of(crop=key, plants=10, germination_days=None, nursery_days=None, bed_days=None)
    settings_ = Settings(id=id_from("s"), name="Long", plan_from=MONDAY, plan_weeks=80)
    demand = forecaster.forecast(farm_of(batches=(batch,), settings=settings_)).loops[0].demand_g
    profile = profile_of(profile_key(batch), crop)
    assert demand.sum(axis=1) == pytest.approx(10 * profile.dry_mass_g * contents(crop), rel=1e-9)
    assert demand.min() >= 0


def test_that_a_batch_sown_before_the_plan_still_wants_its_share(forecaster):
    early = batch_of(sow_on=MONDAY - timedelta(days=30))
    demand = forecaster.forecast(farm_of(batches=(early,))).loops[0].demand_g
    later = forecaster.forecast(farm_of(batches=(batch_of(),))).loops[0].demand_g
    assert demand[:, : 49 - 30] == pytest.approx(later[:, 30:49])


def test_that_a_batch_harvested_long_before_the_plan_wants_nothing(forecaster):
    old = batch_of(sow_on=MONDAY - timedelta(days=400))
    forecast = forecaster.forecast(farm_of(batches=(old,)))
    assert not forecast.loops[0].demand_g.any()
    assert not forecast.harvest_g.any()


def test_that_twice_the_plants_want_twice_as_much(forecaster):
    one = forecaster.forecast(farm_of(batches=weekly_batches(3))).loops[0].demand_g
    two = forecaster.forecast(farm_of(batches=weekly_batches(3, plants=50))).loops[0].demand_g
    assert two == pytest.approx(2 * one)


def test_that_planted_area_counts_from_move_to_harvest(forecaster):
    batch = batch_of()
    planted = (
        forecaster.forecast(farm_of(batches=(batch,), placements=(places_of(batch),))).loops[0].planted_m2
    )
    assert planted[0, 20] == 0
    assert planted[0, 21:49] == pytest.approx(np.ones(28))
    assert planted[0, 49] == 0


def test_that_okra_yields_over_weeks_not_on_one_day(forecaster):
    settings_ = Settings(id=id_from("s"), name="Long", plan_from=MONDAY, plan_weeks=40)
    batch = batch_of(crop="okra", germination_days=None, nursery_days=None, bed_days=None)
    forecast = forecaster.forecast(farm_of(batches=(batch,), settings=settings_))
    assert np.count_nonzero(forecast.ruler.weekly_sum(forecast.harvest_g[0])) >= 4


@pytest.mark.parametrize("feeding", list(Feeding))
def test_that_gain_and_feed_are_tied_by_the_feed_conversion(forecaster, feeding):
    group = group_forecast(
        forecaster,
        feeding=feeding,
        fcr=1.5,
        feed_percent=2.0,
        feed_g_per_day=150.0,
        feeding_table="tilapia-weekly-chart",
    )
    assert group.feed_g.min() > 0
    assert group.feed_g == pytest.approx(1.5 * group.gain_g)


def test_that_fixed_feeding_gives_just_that_feed(forecaster):
    group = group_forecast(forecaster, feeding=Feeding.FIXED, feed_g_per_day=240.0)
    assert group.feed_g == pytest.approx(np.full(140, 240.0))


def test_that_biomass_grows_by_the_gain_less_the_dead(forecaster):
    group = group_forecast(forecaster, daily_death_share=0.001)
    mass = group.biomass_g
    assert mass[1:] == pytest.approx((mass[:-1] + group.gain_g[:-1]) * 0.999)


def test_that_a_harvest_takes_its_fish_and_feed_falls(forecaster):
    group = group_forecast(forecaster, event_of(FishEventKind.HARVEST, 70, count=40), daily_death_share=0.0)
    assert group.count[69] == pytest.approx(100)
    assert group.count[70] == pytest.approx(60)
    assert group.harvest_count.sum() == pytest.approx(40)
    assert group.feed_g[70] < group.feed_g[69]


def test_that_fish_are_off_feed_while_purged_and_gone_after_harvest(forecaster):
    group = group_forecast(forecaster, event_of(FishEventKind.HARVEST, 70))
    days = round(CATALOGUE.fish["nile-tilapia"].purge_days)
    assert group.feed_g[70 - days - 1] > 0
    assert not group.feed_g[70 - days :].any()
    assert not group.count[70:].any()
    assert group.harvest_g[70] > 0


def test_that_no_more_fish_are_harvested_than_there_are(forecaster):
    group = group_forecast(forecaster, event_of(FishEventKind.HARVEST, 10, count=500), daily_death_share=0.0)
    assert group.harvest_count.sum() == pytest.approx(100)


def test_that_the_curve_goes_through_a_weighed_sample(forecaster):
    group = group_forecast(forecaster, event_of(FishEventKind.SAMPLE, 28, mean_weight_g=333.0))
    assert group.weight_g[28] == pytest.approx(333.0)
    assert group.weight_g[29] > 333.0


def test_that_deaths_fasting_and_feed_really_given_are_counted(forecaster):
    group = group_forecast(
        forecaster,
        event_of(FishEventKind.DEATHS, 5, count=8),
        event_of(FishEventKind.OFF_FEED, 10, days=3),
        event_of(FishEventKind.FEED_GIVEN, 20, days=7, feed_g_per_day=111.0),
        event_of(FishEventKind.ADDED, 40, count=10, mean_weight_g=20.0),
        daily_death_share=0.0,
    )
    assert group.count[5] == pytest.approx(92)
    assert not group.feed_g[10:13].any()
    assert group.feed_g[13] > 0
    assert group.feed_g[20:27] == pytest.approx(np.full(7, 111.0))
    assert group.count[40] == pytest.approx(102)
    assert group.weight_g[40] < group.weight_g[39]


def test_that_cold_water_slows_the_fish(forecaster):
    cold, warm = (
        forecaster.forecast(
            farm_of(loops=(dataclasses.replace(LOOP, water_c=(celsius,) * 12),), fish_groups=(group_of(),))
        ).loops[0]
        for celsius in (21.0, 28.0)
    )
    assert cold.feed_g.sum() < warm.feed_g.sum()


@given(
    count=st.integers(1, 5000),
    weight=st.floats(1, 900),
    percent=st.floats(0.1, 8),
    feed=st.sampled_from(sorted(CATALOGUE.feeds)),
    species=st.sampled_from(sorted(CATALOGUE.fish)),
    fcr=st.floats(0.5, 4),
)
@settings(max_examples=40)
def test_that_every_element_of_the_feed_goes_somewhere(count, weight, percent, feed, species, fcr):
    group = group_of(
        count=count,
        mean_weight_g=weight,
        feeding=Feeding.PERCENT,
        feed_percent=percent,
        feed=feed,
        species=species,
        fcr=fcr,
    )
    loop = Forecaster(CATALOGUE).preview(farm_of(fish_groups=(group,))).loops[0]
    parts = loop.fish_g + loop.solids_g + loop.gas_g + loop.dissolved_g
    assert parts == pytest.approx(loop.content_g, rel=1e-9, abs=1e-9)
    assert min(part.min() for part in (loop.fish_g, loop.solids_g, loop.gas_g, loop.dissolved_g)) >= 0


def test_that_feed_nitrogen_is_protein_over_six_and_a_quarter(forecaster):
    farm = farm_of(fish_groups=(group_of(feeding=Feeding.FIXED, feed_g_per_day=1000.0),))
    loop = forecaster.forecast(farm).loops[0]
    assert loop.content_g[0, 0] == pytest.approx(51.2)


def test_that_top_up_water_brings_its_analysis(forecaster):
    loop = dataclasses.replace(LOOP, top_up_l_per_day=100.0, top_up_ca_mg_per_l=60.0)
    found = forecaster.forecast(farm_of(loops=(loop,))).loops[0]
    assert found.top_up_g[ELEMENTS.index("ca")] == pytest.approx(np.full(140, 6.0))


def test_that_a_repeated_dose_counts_evenly_and_a_single_one_on_its_day(forecaster):
    once = Dose(id=id_from("d1"), loop=LOOP.id, supplement="iron-dtpa-11", grams=100.0, on=MONDAY)
    often = dataclasses.replace(once, id=id_from("d2"), every_days=20, on=MONDAY - timedelta(days=10))
    share = CATALOGUE.supplements["iron-dtpa-11"].fe_share
    iron = ELEMENTS.index("fe")
    single = forecaster.forecast(farm_of(doses=(once,))).loops[0].dose_g[iron]
    evenly = forecaster.forecast(farm_of(doses=(often,))).loops[0].dose_g[iron]
    assert single[0] == pytest.approx(100 * share)
    assert not single[1:].any()
    assert evenly == pytest.approx(np.full(140, 100 * share / 20))


def test_that_the_element_with_least_supply_is_named(forecaster):
    farm = farm_of(batches=weekly_batches(8), fish_groups=(group_of(),))
    forecast = forecaster.forecast(farm)
    for verdict in week_verdicts(forecast.loops[0], forecast.ruler, forecaster.bands):
        ratios = [ratio for ratio in verdict.ratio if ratio is not None]
        if ratios:
            assert verdict.limiting is not None
            assert verdict.ratio[verdict.limiting] == min(ratios)


def test_that_nothing_planted_means_no_demand_and_no_ratio(forecaster):
    forecast = forecaster.forecast(farm_of(fish_groups=(group_of(),)))
    verdict = week_verdicts(forecast.loops[0], forecast.ruler, forecaster.bands)[0]
    assert verdict.limiting is None
    assert verdict.feed_ratio_g_per_m2_d is None
    assert set(verdict.band) == {Band.NO_DEMAND}


def test_that_a_richer_feed_carries_more_area(forecaster):
    def area(feed):
        group = group_of(feeding=Feeding.FIXED, feed_g_per_day=500.0, feed=feed)
        forecast = forecaster.forecast(farm_of(fish_groups=(group,)))
        return week_verdicts(forecast.loops[0], forecast.ruler, forecaster.bands)[0].area_fed_m2

    lean, rich = area("general-28"), area("carnivore-45")
    assert lean[0] < rich[0]
    assert lean[0] < lean[1]


def test_that_fish_that_keep_much_nitrogen_still_leave_some_to_plants(forecaster):
    group = group_of(feeding=Feeding.FIXED, feed_g_per_day=300.0, feed="general-28", fcr=1.0)
    loop = forecaster.forecast(farm_of(fish_groups=(group,))).loops[0]
    nitrogen = ELEMENTS.index("n")
    assert loop.fish_g[nitrogen, 0] > loop.content_g[nitrogen, 0] / 2
    assert loop.dissolved_g[nitrogen, 0] > 0
    assert loop.gas_g[nitrogen, 0] > 0
