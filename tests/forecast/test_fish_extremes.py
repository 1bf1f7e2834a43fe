"""Fish at the edges: too cold or warm to feed, of full size, kept for years, the last one gone."""

from __future__ import annotations

import dataclasses
import itertools
from datetime import timedelta

import numpy as np
import pytest

from planner.catalogue.loading import shipped_catalogue
from planner.farm.fish import Feeding, FishEvent, FishEventKind
from planner.farm.ids import id_from
from planner.forecast.engine import Forecaster
from planner.forecast.values import FlagKind
from planner.forecast.why.ask import why
from planner.forecast.why.values import NoteKind, Subject, SubjectKind
from planner.science.fish import effective_temperature, weight_after_day
from tests.farms import LOOP, MONDAY, farm_of, group_of, weekly_batches

CATALOGUE = shipped_catalogue()
SPECIES = sorted(CATALOGUE.fish)


def water(celsius):
    return (dataclasses.replace(LOOP, water_c=(float(celsius),) * 12),)


def fed(forecaster, celsius, **fields):
    group = group_of("Fish", **fields)
    farm = farm_of(loops=water(celsius), fish_groups=(group,))
    return farm, forecaster.forecast(farm)


@pytest.mark.parametrize("feeding", [Feeding.GROWTH, Feeding.PERCENT, Feeding.TABLE])
@pytest.mark.parametrize("celsius", [12.0, 39.0])
def test_that_no_ration_is_foreseen_where_fish_do_not_feed(forecaster, feeding, celsius):
    own = {"feeding": feeding, "feed_percent": 2.0, "feeding_table": "tilapia-weekly-chart"}
    _, forecast = fed(forecaster, celsius, **own)
    group = forecast.loops[0].groups[0]
    assert group.feed_g.sum() == 0.0
    assert np.ptp(group.weight_g) == 0.0


@pytest.mark.parametrize("key", SPECIES)
def test_that_fry_eat_no_more_of_their_weight_than_lists_print(forecaster, key):
    """Feeding lists for fry end at 30 % of body weight a day; nobody prints more for however light a fish."""
    _, forecast = fed(forecaster, CATALOGUE.fish[key].optimum_c, species=key, mean_weight_g=0.01)
    group = forecast.loops[0].groups[0]
    share = group.feed_g / group.biomass_g
    assert 0.0 < share.max() <= 0.30
    assert np.all(np.diff(group.weight_g) >= 0.0)


def test_that_the_walk_grows_fish_by_the_law_of_the_science(forecaster):
    species = CATALOGUE.fish["nile-tilapia"]
    _, forecast = fed(forecaster, 24.0, mean_weight_g=0.1, daily_death_share=0.0)
    weight_g = forecast.loops[0].groups[0].weight_g
    warmth = effective_temperature(
        24.0, base_c=species.base_c, optimum_c=species.optimum_c, ceiling_c=species.ceiling_c
    )
    tgc = [next(s.tgc for s in species.stages if weight <= s.up_to_g) for weight in weight_g[:-1]]
    after = weight_after_day(
        weight_g[:-1],
        tgc=np.asarray(tgc),
        effective_temperature_c=warmth,
        fry_weight_g=CATALOGUE.figure("coefficient/fish/fry_weight_g").value,
    )
    assert weight_g[1:] == pytest.approx(after)


@pytest.mark.parametrize(
    "own",
    [
        {"feeding": Feeding.FIXED, "feed_g_per_day": 50_000.0},
        {"feeding": Feeding.PERCENT, "feed_percent": 50.0},
    ],
)
def test_that_fish_do_not_grow_on_more_than_they_can_eat(forecaster, own):
    """What is left over is lost: mass closes, and a slip of the pen grows no giants."""
    _, free = fed(forecaster, 28.0, mean_weight_g=20.0)
    _, stuffed = fed(forecaster, 28.0, mean_weight_g=20.0, **own)
    loop, group, plain = stuffed.loops[0], stuffed.loops[0].groups[0], free.loops[0].groups[0]
    most = CATALOGUE.figure("coefficient/fish/most_eaten_share").value
    assert plain.gain_g[0] < group.gain_g[0] <= most * plain.gain_g[0] * (1 + 1e-9)
    assert np.allclose(loop.content_g, loop.fish_g + loop.solids_g + loop.gas_g + loop.dissolved_g, rtol=1e-9)
    assert loop.feed_g[0] > most * free.loops[0].feed_g[0]
    flags = [flag for flag in stuffed.flags if flag.kind is FlagKind.OVERFED]
    assert flags[0].on == MONDAY
    assert 0.0 < dict(flags[0].values)["eaten_share"] < 1.0
    assert not [flag for flag in free.flags if flag.kind is FlagKind.OVERFED]


def test_that_a_table_for_one_warmth_is_not_fed_in_full_to_fish_in_cold_water(forecaster):
    """Appetite rises with warmth from nothing: no jump from no ration to a whole one above the base."""
    base = CATALOGUE.fish["nile-tilapia"].base_c
    own = {"feeding": Feeding.TABLE, "feeding_table": "tilapia-tanks", "mean_weight_g": 100.0}
    first = [
        fed(forecaster, celsius, **own)[1].loops[0].feed_g[0]
        for celsius in (base, base + 0.1, base + 5.0, 28.0, 29.0, 35.0)
    ]
    none, hardly, some, printed, best, hot = first
    assert none == 0.0
    assert 0.0 < hardly < 0.05 * printed
    assert hardly < some < printed
    assert printed == pytest.approx(100 * 100.0 * 3.5 / 100.0)
    assert best == pytest.approx(printed)
    assert hot < printed


def test_that_feed_given_to_fish_that_do_not_feed_grows_none_of_them_and_is_all_in_the_water(forecaster):
    _, forecast = fed(forecaster, 12.0, feeding=Feeding.FIXED, feed_g_per_day=100.0)
    loop = forecast.loops[0]
    assert loop.feed_g.sum() > 0.0
    assert loop.fish_g.sum() == 0.0
    assert np.allclose(loop.content_g, loop.solids_g + loop.gas_g + loop.dissolved_g, rtol=1e-9)


def test_that_weeks_without_feeding_are_flagged_and_single_days_are_not(forecaster):
    _, cold = fed(forecaster, 12.0)
    _, warm = fed(forecaster, 26.0)
    flags = [flag for flag in cold.flags if flag.kind is FlagKind.NO_APPETITE]
    assert len(flags) == 1
    assert (flags[0].on, flags[0].until_on) == (MONDAY, MONDAY + timedelta(days=cold.ruler.days - 1))
    assert dict(flags[0].values)["base_c"] == CATALOGUE.fish["nile-tilapia"].base_c
    assert not [flag for flag in warm.flags if flag.kind is FlagKind.NO_APPETITE]


def test_that_why_tells_that_a_ration_stopped_for_the_water(forecaster):
    farm, forecast = fed(forecaster, 12.0, feeding=Feeding.PERCENT, feed_percent=2.0)
    subject = Subject(kind=SubjectKind.FEED, about=farm.fish_groups[0].id, day=3)
    answer = why(subject, farm, forecast, forecaster)
    assert answer.value == 0.0
    assert answer.notes[0].kind is NoteKind.NO_APPETITE
    assert dict(answer.notes[0].values)["water_c"] == pytest.approx(12.0)


@pytest.mark.parametrize("key", SPECIES)
def test_that_fish_kept_for_eight_years_at_their_best_stay_fish(key):
    """No fish here is ever told of beyond 60 kg, and none that lives is fed nothing."""
    species = CATALOGUE.fish[key]
    group = group_of("Old", species=key, mean_weight_g=50.0, stocked_on=MONDAY - timedelta(days=8 * 365))
    farm = farm_of(loops=water(species.optimum_c), fish_groups=(group,))
    found = Forecaster(CATALOGUE).forecast(farm).loops[0].groups[0]
    assert species.harvest_weight_g < found.weight_g[-1] < 60_000.0
    ration = found.feed_g[-1] / found.biomass_g[-1]
    assert 0.001 < ration < 0.01


@pytest.mark.parametrize("key", SPECIES)
def test_that_heavier_fish_never_grow_quicker_or_turn_feed_to_flesh_better(key):
    beyond = [stage for stage in CATALOGUE.fish[key].stages if stage.up_to_g > 500]
    assert all(one.tgc >= other.tgc for one, other in itertools.pairwise(beyond))
    assert all(one.fcr <= other.fcr for one, other in itertools.pairwise(beyond))


def test_that_a_tank_that_is_emptied_feeds_nothing_more(forecaster):
    group = group_of("Fish")
    gone = FishEvent(
        id=id_from("gone"), group=group.id, on=MONDAY + timedelta(days=30), kind=FishEventKind.HARVEST
    )
    farm = farm_of(fish_groups=(group,), fish_events=(gone,), batches=weekly_batches(3))
    loop = forecaster.forecast(farm).loops[0]
    assert loop.feed_g[30:].sum() == loop.groups[0].count[30:].sum() == 0.0
    assert loop.groups[0].weight_g[-1] > 0.0
