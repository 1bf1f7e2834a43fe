"""Draws around a forecast: the same each time, wider with more spread, the forecast itself without."""

from __future__ import annotations

import dataclasses
from datetime import date, timedelta
from functools import lru_cache

import numpy as np
import pytest
from scipy import stats

from planner.farm.crops import Target, TargetUnit
from planner.farm.ids import id_from
from planner.forecast.chances.draw import DRAWS, chances_of
from planner.forecast.chances.plain import chances_data, target_chances
from planner.forecast.chances.spreads import no_spreads, spreads_of
from planner.forecast.plain import WeekSpan
from planner.forecast.verdicts import week_verdicts
from tests.farms import MONDAY, farm_of, weekly_batches
from tests.forecast.sample_farms import NAMES, known

HEADS = TargetUnit.HEADS


@lru_cache(maxsize=8)
def drawn(name, seed=1):
    farm, forecast, forecaster = known(name)
    return chances_of(farm, forecast, forecaster, seed=seed)


def with_spread(name, *, draws=DRAWS, **parts):
    """Return draws in which only some things vary."""
    farm, forecast, forecaster = known(name)
    spreads = dataclasses.replace(no_spreads(len(farm.batches)), **parts)
    return forecast, chances_of(farm, forecast, forecaster, spreads=spreads, draws=draws)


def ratios(forecast, forecaster):
    verdicts = week_verdicts(forecast.loops[0], forecast.ruler, forecaster.bands)
    return np.asarray([[np.nan if one is None else one for one in v.ratio] for v in verdicts]).T


def sampling_error(draws):
    """Return five standard errors of the mean over draws, the first axis."""
    return 5 * draws.std(axis=0) / np.sqrt(draws.shape[0]) + 1e-9


@pytest.mark.parametrize("name", NAMES)
def test_that_without_spread_every_draw_is_the_forecast_to_the_last_digit(name):
    farm, forecast, forecaster = known(name)
    found = chances_of(farm, forecast, forecaster, spreads=no_spreads(len(farm.batches)), draws=3)
    ruler = forecast.ruler
    assert (found.harvest_plants == ruler.weekly_sum(forecast.harvest_plants)[:, None]).all()
    assert (found.harvest_g == ruler.weekly_sum(forecast.harvest_g)[:, None]).all()
    assert (found.loops[0].feed_g_per_day == ruler.weekly_mean(forecast.loops[0].feed_g)).all()
    assert np.array_equal(
        found.loops[0].ratio,
        np.broadcast_to(ratios(forecast, forecaster), (3, 6, ruler.weeks)),
        equal_nan=True,
    )


def test_that_the_same_seed_gives_the_same_draws_and_another_seed_others():
    farm, forecast, forecaster = known("backyard")
    again = chances_of(farm, forecast, forecaster, seed=1)
    assert np.array_equal(again.harvest_g, drawn("backyard").harvest_g)
    assert np.array_equal(again.loops[0].ratio, drawn("backyard").loops[0].ratio, equal_nan=True)
    assert not np.array_equal(drawn("backyard", 2).harvest_g, again.harvest_g)


def test_that_draws_do_not_hang_on_the_order_of_hashes(under_two_hash_seeds):
    first, second = under_two_hash_seeds(
        "from tests.forecast.sample_farms import known\n"
        "from planner.forecast.chances.draw import chances_of\n"
        "found = chances_of(*known('backyard'), draws=20)\n"
        "print(found.harvest_g.sum(), found.loops[0].feed_g_per_day.sum())"
    )
    assert first == second


@pytest.mark.parametrize("name", NAMES)
def test_that_percentiles_are_in_order_and_nothing_is_below_nothing(name):
    found = drawn(name)
    for crop in found.crops:
        for unit in TargetUnit:
            levels = found.harvest_percentiles(crop, unit)
            assert (np.diff(levels, axis=0) >= 0).all()
            assert levels.min() >= 0
    assert found.loops[0].feed_g_per_day.min() >= 0
    assert np.nanmin(found.loops[0].ratio) >= 0


def test_that_the_mean_of_yields_is_the_forecast_within_sampling_error():
    forecast, found = with_spread(
        "school-kitchen", yield_cv=np.full(len(known("school-kitchen")[0].batches), 0.1)
    )
    likely = forecast.ruler.weekly_sum(forecast.harvest_g)
    for number, _ in enumerate(found.crops):
        draws = found.harvest_g[number]
        assert (abs(draws.mean(axis=0) - likely[number]) <= sampling_error(draws)).all()
        assert (found.harvest_plants[number] == found.harvest_plants[number][0]).all()


def test_that_the_mean_of_survival_in_the_bed_is_the_forecast_within_sampling_error():
    forecast, found = with_spread(
        "school-kitchen", bed_sd=np.full(len(known("school-kitchen")[0].batches), 0.05)
    )
    likely = forecast.ruler.weekly_sum(forecast.harvest_plants)
    assert found.harvest_plants.std(axis=1).max() > 0
    for number, _ in enumerate(found.crops):
        draws = found.harvest_plants[number]
        assert (abs(draws.mean(axis=0) - likely[number]) <= sampling_error(draws)).all()


def test_that_the_mean_feed_is_near_the_forecast_where_only_deaths_vary():
    forecast, found = with_spread("school-kitchen", fish_death_cv=0.5)
    likely = forecast.ruler.weekly_mean(forecast.loops[0].feed_g)
    draws = found.loops[0].feed_g_per_day
    assert draws.std(axis=0).max() > 0
    # Deaths compound, so the mean is a hair above; a thousandth covers it.
    assert (abs(draws.mean(axis=0) - likely) <= sampling_error(draws) + likely / 1000).all()


def test_that_plants_that_live_are_binomial(forecaster):
    farm = farm_of(batches=weekly_batches(1, plants=500, bed_survival_share=0.9))
    forecast = forecaster.forecast(farm)
    seeds = 26
    few = dataclasses.replace(
        forecast, batches=dataclasses.replace(forecast.batches, seeds=np.asarray([seeds]))
    )
    spreads = dataclasses.replace(no_spreads(1), counted=True)
    found = chances_of(farm, few, forecaster, spreads=spreads)
    crop = forecaster.catalogue.crops["lettuce-butterhead"]
    share = crop.germination_share * crop.nursery_survival_share * 0.9
    # The forecast counts on 500 plants; told around it, what lives is 500 x 0.9 less than they are.
    living = found.harvest_plants[0, :, 7]
    for amount in (18, 20, 22, 24):
        exact = stats.binom.sf(amount - 1, seeds, share)
        drawn_share = np.mean(living >= amount - 1e-6)
        assert drawn_share == pytest.approx(exact, abs=5 * np.sqrt(exact * (1 - exact) / DRAWS))


def test_that_one_batch_in_ten_is_lighter_than_the_bell_says(forecaster):
    farm = farm_of(batches=weekly_batches(1))
    forecast = forecaster.forecast(farm)
    spreads = dataclasses.replace(no_spreads(1), yield_cv=np.asarray([0.1]))
    found = chances_of(farm, forecast, forecaster, spreads=spreads)
    low, middle, high = found.harvest_percentiles("lettuce-butterhead", TargetUnit.KG)[:, 7]
    likely = forecast.ruler.weekly_sum(forecast.harvest_g)[0, 7] / 1000
    wide = 0.1 * stats.norm.ppf(0.9)
    # A tenth of a thousand draws is found within 3 of a hundred: 0.02 of the yield on this slope.
    assert [low, middle, high] == pytest.approx([likely * (1 - wide), likely, likely * (1 + wide)], rel=0.02)


def test_that_every_loop_has_its_own_chances(forecaster):
    from tests.farms import LOOP, TANK, group_of

    second = dataclasses.replace(LOOP, id=id_from("loop 2"), name="Second")
    tank = dataclasses.replace(TANK, id=id_from("tank 2"), name="Second", loop=second.id)
    groups = (group_of(), dataclasses.replace(group_of("Second", count=5), tank=tank.id))
    farm = farm_of(loops=(LOOP, second), tanks=(TANK, tank), fish_groups=groups, batches=weekly_batches(4))
    forecast = forecaster.forecast(farm)
    found = chances_of(farm, forecast, forecaster)
    for one, likely in zip(found.loops, forecast.loops, strict=True):
        middle = np.median(one.feed_g_per_day, axis=0)
        assert middle == pytest.approx(forecast.ruler.weekly_mean(likely.feed_g), rel=0.05)
    assert np.isnan(found.loops[1].ratio).all()


def test_that_moved_days_only_move_the_harvest():
    count = len(known("backyard")[0].batches)
    forecast, found = with_spread("backyard", days_sd=np.full(count, 3.0))
    leaf = found.crops.index("lettuce-leaf")
    assert found.harvest_plants[leaf].std(axis=0).max() > 0
    # From week 9 to week 20 a batch a week is picked: what leaves one week comes into another.
    likely = forecast.ruler.weekly_sum(forecast.harvest_plants)[leaf, 10:20].sum()
    assert found.harvest_plants[leaf][:, 10:20].sum(axis=1).mean() == pytest.approx(likely, rel=0.03)


def test_that_more_spread_gives_a_wider_harvest():
    count = len(known("backyard")[0].batches)
    _, narrow = with_spread("backyard", yield_cv=np.full(count, 0.05))
    _, wide = with_spread("backyard", yield_cv=np.full(count, 0.2))
    narrow_sd, wide_sd = narrow.harvest_g.std(axis=1), wide.harvest_g.std(axis=1)
    picked = narrow_sd > 0
    assert picked.any()
    assert (wide_sd[picked] > narrow_sd[picked]).all()


def test_that_what_batches_have_in_common_widens_their_sum():
    count = len(known("backyard")[0].batches)
    spread = {"yield_cv": np.full(count, 0.1)}
    _, alone = with_spread("backyard", shared_variance_share=0.0, **spread)
    _, common = with_spread("backyard", shared_variance_share=1.0, **spread)
    leaf = alone.crops.index("lettuce-leaf")
    sums = [one.harvest_g[leaf].sum(axis=1).std() for one in (alone, common)]
    assert sums[1] > 2 * sums[0]


@pytest.mark.parametrize("name", ["school-kitchen", "backyard"])
def test_that_the_chance_rises_when_less_is_wanted_from_certain_to_none(name):
    found = drawn(name)
    for crop in found.crops:
        for week in range(0, found.ruler.weeks, 7):
            chances = [found.chance_at_least(crop, week, amount=amount) for amount in range(0, 80, 5)]
            assert chances == sorted(chances, reverse=True)
            assert chances[0] == 1.0
    assert found.chance_at_least(found.crops[0], 10, amount=10_000) == 0.0


def test_that_a_crop_that_is_not_grown_gives_nothing():
    found = drawn("backyard")
    assert found.chance_at_least("strawberry", 3, amount=1, unit=HEADS) == 0.0


def test_that_too_few_seeds_lower_the_chance(forecaster):
    def chance(germination):
        farm = farm_of(batches=weekly_batches(2, germination_share=germination))
        forecast = forecaster.forecast(farm)
        table = dataclasses.replace(forecast.batches, seeds=np.asarray([26, 26]))
        few = dataclasses.replace(forecast, batches=table)
        return chances_of(farm, few, forecaster).chance_at_least("lettuce-butterhead", 7, amount=22)

    assert chance(0.99) > chance(0.6)


def test_that_fish_of_a_fixed_ration_are_fed_what_was_said():
    farm, _, forecaster = known("by-hand")
    fixed = tuple(group for group in farm.fish_groups if group.name == "Fixed")
    alone = dataclasses.replace(farm, fish_groups=fixed, fish_events=())
    found = chances_of(alone, forecaster.forecast(alone), forecaster)
    assert found.loops[0].feed_g_per_day == pytest.approx(np.full((DRAWS, 20), 150.0))
    forecaster.forecast(farm)


def test_that_a_weighed_sample_brings_the_draws_together(forecaster):
    from planner.farm.fish import FishEvent, FishEventKind
    from tests.farms import group_of

    def spread_after(*events):
        farm = farm_of(fish_groups=(group_of(daily_death_share=0.0),), fish_events=events)
        found = chances_of(farm, forecaster.forecast(farm), forecaster)
        return found.loops[0].feed_g_per_day[:, 11].std()

    sample = FishEvent(
        id=id_from("sample"),
        group=group_of().id,
        on=MONDAY + timedelta(days=70),
        kind=FishEventKind.SAMPLE,
        mean_weight_g=400.0,
    )
    assert spread_after(sample) < spread_after()


def test_that_growers_own_figures_have_a_usual_spread(forecaster):
    farm = farm_of(batches=weekly_batches(1, yield_g_per_plant=180.0))
    forecast = forecaster.forecast(farm)
    spreads = spreads_of(farm, forecast, forecaster.catalogue)
    own = forecaster.catalogue.figure("coefficient/chances/own_yield_cv").value
    assert spreads.yield_cv.tolist() == [own]
    own_days = forecaster.catalogue.figure("coefficient/chances/own_days_cv").value
    assert spreads.days_sd[0] == pytest.approx(own_days * np.sqrt(3**2 + 18**2 + 28**2))


def test_that_a_target_is_told_for_the_weeks_it_covers_wholly(forecaster):
    target = Target(
        id=id_from("target"),
        crop="lettuce-butterhead",
        amount_per_week=20.0,
        from_on=date(2027, 2, 24),
        until_on=date(2027, 3, 21),
    )
    farm = farm_of(batches=weekly_batches(12), targets=(target,))
    found = chances_of(farm, forecaster.forecast(farm), forecaster)
    told = dict(target_chances(found, target))
    assert list(told) == [8, 9, 10]
    assert all(0 < chance <= 1 for chance in told.values())
    data = chances_data(farm, found, span=WeekSpan(first=9, last=12))
    assert [week["week"] for week in data["targets"][0]["weeks"]] == ["2027-W10", "2027-W11"]


def test_that_a_farm_without_batches_or_fish_has_chances_too(forecaster):
    farm = farm_of()
    found = chances_of(farm, forecaster.forecast(farm), forecaster, draws=5)
    assert not found.loops[0].feed_g_per_day.any()
    assert np.isnan(found.loops[0].ratio).all()
