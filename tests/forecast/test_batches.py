"""Dates, seeds and area of batches."""

from __future__ import annotations

import dataclasses
import itertools
from datetime import date, timedelta

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from planner.catalogue.loading import shipped_catalogue
from planner.farm.crops import Phase, Stage
from planner.forecast.engine import Forecaster
from planner.forecast.profiles import (
    after_first_pick,
    growth_by_day,
    picks_by_day,
    profile_key,
    profile_of,
)
from planner.forecast.why.arithmetic import recomputed
from planner.forecast.why.ask import why
from planner.forecast.why.values import Subject, SubjectKind
from tests.farms import MONDAY, RAFT, batch_of, farm_of, places_of, weekly_batches

CROPS = shipped_catalogue().crops


def test_that_stages_follow_one_another_from_sowing(forecaster):
    batch = batch_of(clearing_days=1.0)
    forecast = forecaster.forecast(farm_of(batches=(batch,)))
    spans = forecast.batches.spans(0, forecast.ruler)
    assert [span.stage for span in spans] == [Stage.GERMINATION, Stage.NURSERY, Stage.BED, Stage.CLEARING]
    assert [span.days for span in spans] == [3, 18, 28, 1]
    assert spans[0].start_on == MONDAY
    assert all(one.end_on == other.start_on for one, other in itertools.pairwise(spans))


def test_that_a_crop_harvested_once_frees_its_place_on_harvest_day(forecaster):
    batch = batch_of()
    forecast = forecaster.forecast(farm_of(batches=(batch,)))
    start, end = forecast.batches.phase_days(0, Phase.BED)
    first_pick, last_pick = forecast.batches.pick_days(0)
    assert (start, end) == (21, 49)
    assert (first_pick, last_pick) == (49, 50)


def test_that_seeds_make_up_for_losses_before_the_bed(forecaster, catalogue):
    crop = catalogue.crops["lettuce-butterhead"]
    forecast = forecaster.forecast(farm_of(batches=(batch_of(plants=100),)))
    seeds = int(forecast.batches.seeds[0])
    share = crop.germination_share * crop.nursery_survival_share
    assert (seeds - 1) * share < 100 <= seeds * share + 1e-9


def test_that_the_growers_germination_overrules_the_book(forecaster, catalogue):
    batch = batch_of(plants=30, germination_share=0.85)
    forecast = forecaster.forecast(farm_of(batches=(batch,)))
    survival = catalogue.crops["lettuce-butterhead"].nursery_survival_share
    assert int(forecast.batches.seeds[0]) == int(np.ceil(30 / (0.85 * survival)))


def test_that_placed_plants_take_the_area_of_their_places(forecaster):
    batch = batch_of()
    forecast = forecaster.forecast(farm_of(batches=(batch,), placements=(places_of(batch),)))
    assert forecast.batches.area_m2[0] == pytest.approx(25 * RAFT.place_area_m2)


def test_that_plants_without_a_place_take_the_area_of_the_books_spacing(forecaster, catalogue):
    forecast = forecaster.forecast(farm_of(batches=(batch_of(plants=50),)))
    density = catalogue.crops["lettuce-butterhead"].bed_density_per_m2
    assert forecast.batches.area_m2[0] == pytest.approx(50 / density)


def test_that_a_changed_batch_gives_the_same_table_as_a_fresh_start(forecaster, catalogue):
    batches = weekly_batches(6)
    places = tuple(places_of(batch, unit=1 + number % 4) for number, batch in enumerate(batches[:4]))
    forecaster.forecast(farm_of(batches=batches, placements=places))
    moved = dataclasses.replace(batches[2], sow_on=batches[2].sow_on + timedelta(days=3), plants=20)
    shifted = dataclasses.replace(places[1], unit=3, count=10)
    changed = farm_of(
        batches=(*batches[:2], moved, *batches[3:]), placements=(places[0], shifted, *places[2:])
    )
    patched, fresh = forecaster.forecast(changed), Forecaster(catalogue).forecast(changed)
    for name in ("sow_day", "ends", "plants", "seeds", "area_m2", "loop"):
        assert np.array_equal(getattr(patched.batches, name), getattr(fresh.batches, name)), name
    assert np.allclose(patched.loops[0].demand_g, fresh.loops[0].demand_g)
    assert np.allclose(patched.loops[0].planted_m2, fresh.loops[0].planted_m2)


@pytest.mark.parametrize("swapped", [False, True])
def test_that_a_drag_over_many_rafts_ends_with_the_same_table_as_a_fresh_start(
    forecaster, catalogue, swapped
):
    batches = weekly_batches(6)
    places = [places_of(batch, unit=1 + number % 4) for number, batch in enumerate(batches)]
    farm = farm_of(batches=batches, placements=tuple(places))
    forecaster.forecast(farm)
    for step in range(1, 5):
        places[1] = dataclasses.replace(places[1], unit=1 + step % 4, count=20 - step)
        if swapped:
            places[2], places[4] = places[4], places[2]
        farm = farm_of(batches=batches, placements=tuple(places))
        patched = forecaster.preview(farm)
    fresh = Forecaster(catalogue).preview(farm)
    for name in ("sow_day", "ends", "plants", "seeds", "area_m2", "loop"):
        assert np.array_equal(getattr(patched.batches, name), getattr(fresh.batches, name)), name


def test_that_a_batch_dated_alone_is_dated_as_among_the_others(forecaster):
    batches = weekly_batches(5)
    farm = farm_of(batches=batches, placements=tuple(places_of(batch) for batch in batches[:2]))
    whole = forecaster.days(farm)
    for row, batch in enumerate(batches):
        runs = tuple(run for run in farm.placements if run.batch == batch.id)
        alone = forecaster.days_alone(dataclasses.replace(farm, batches=(batch,), placements=runs))
        assert alone.ruler == whole.ruler
        assert alone.batches.ends[0].tolist() == whole.batches.ends[row].tolist()
        assert alone.batches.seeds[0] == whole.batches.seeds[row]


def test_that_a_batch_swapped_for_another_is_not_mistaken_for_it(forecaster, catalogue):
    one, other = batch_of("A-1"), batch_of("B-1", plants=10)
    forecaster.forecast(farm_of(batches=(one,)))
    forecast = forecaster.forecast(farm_of(batches=(other,)))
    assert forecast.batches.ids == (other.id,)
    assert int(forecast.batches.plants[0]) == 10


def heads_of(forecaster, *, rows, columns, crop="lettuce-butterhead", **fields):
    """Forecast a batch on one raft of 1 m² with a grid of holes, all of them planted."""
    bed = dataclasses.replace(RAFT, units=1, rows=rows, columns=columns, area_m2=1.0)
    batch = batch_of(crop=crop, plants=rows * columns, bed=bed.id, **fields)
    return forecaster.forecast(farm_of(batches=(batch,), beds=(bed,)))


def test_that_heads_grow_heavier_apart_and_lighter_close_together(forecaster):
    """Light is shared by the ground: twice as close gives more to the square metre, less to the head."""
    wide, own, close = (heads_of(forecaster, rows=5, columns=many) for many in (3, 5, 10))
    per_m2 = [float(one.harvest_g.sum()) for one in (wide, own, close)]
    heads = [float(one.harvest_plants.sum()) for one in (wide, own, close)]
    assert per_m2[0] < per_m2[1] < per_m2[2]
    assert per_m2[0] / heads[0] > per_m2[1] / heads[1] > per_m2[2] / heads[2]
    wanted = [float(one.loops[0].demand_g.sum()) for one in (wide, own, close)]
    assert wanted == pytest.approx([grams * wanted[1] / per_m2[1] for grams in per_m2])


def test_that_wider_than_a_plant_grows_wide_nothing_is_won(forecaster, catalogue):
    across = catalogue.crops["lettuce-butterhead"].width_cm
    assert 10_000 / across**2 > 9
    far, farther = (heads_of(forecaster, rows=3, columns=many) for many in (2, 3))
    sizes = [float(one.harvest_g.sum() / one.harvest_plants.sum()) for one in (far, farther)]
    assert sizes[0] == pytest.approx(sizes[1])


def test_that_a_tall_crop_in_a_raft_for_salad_is_taken_to_stand_at_its_own_distance(forecaster, catalogue):
    grams = catalogue.crops["tomato"].yield_g_per_plant
    forecast = heads_of(forecaster, rows=5, columns=5, crop="tomato")
    assert forecast.harvest_g.sum() / forecast.harvest_plants.sum() == pytest.approx(grams)


def test_that_a_growers_own_yield_holds_at_any_distance(forecaster):
    forecast = heads_of(forecaster, rows=5, columns=10, yield_g_per_plant=90.0)
    assert forecast.harvest_g.sum() / forecast.harvest_plants.sum() == pytest.approx(90.0)


@given(
    key=st.sampled_from(sorted(CROPS)),
    bed_days=st.one_of(st.none(), st.floats(1, 200)),
    picking_days=st.one_of(st.none(), st.floats(0, 120)),
    yield_g=st.one_of(st.none(), st.floats(5, 5000)),
)
def test_that_growth_and_picks_close_over_a_life(key, bed_days, picking_days, yield_g):
    batch = batch_of(crop=key, bed_days=bed_days, picking_days=picking_days, yield_g_per_plant=yield_g)
    profile = profile_of(profile_key(batch), CROPS[key])
    formed, picked = growth_by_day(profile), picks_by_day(profile)
    assert formed.size == profile.life_days
    assert formed.min() >= 0
    assert formed.sum() == pytest.approx(profile.dry_mass_g, rel=1e-9)
    assert picked.sum() == pytest.approx(1.0)
    assert picked.size == profile.picking_window


@pytest.mark.parametrize("key", ["basil", "okra", "tomato", "mint"])
def test_that_picking_for_longer_gives_more_and_never_less(key):
    short, long = (
        profile_of(profile_key(batch_of(crop=key, picking_days=days)), CROPS[key]) for days in (0.0, 90.0)
    )
    assert short.yield_g_per_plant < long.yield_g_per_plant
    assert short.dry_mass_g < long.dry_mass_g
    assert short.dry_mass_g * short.first_pick_share == pytest.approx(long.dry_mass_g * long.first_pick_share)


def test_that_the_books_own_picking_days_give_the_books_own_yield():
    for key, crop in CROPS.items():
        profile = profile_of(profile_key(batch_of(crop=key)), crop)
        assert profile.yield_g_per_plant == pytest.approx(crop.yield_g_per_plant), key
        assert profile.dry_mass_g == pytest.approx(
            crop.yield_g_per_plant * crop.dry_matter_share / crop.harvest_share
        )


def test_that_a_plan_that_starts_on_a_sunday_week_begins_on_that_sunday(forecaster):
    farm = farm_of()
    site = dataclasses.replace(farm.sites[0], week_start=type(farm.sites[0].week_start).SUNDAY)
    forecast = forecaster.forecast(dataclasses.replace(farm, sites=(site,)))
    assert forecast.ruler.start_on == date(2027, 1, 3)
    assert forecast.ruler.week_name(0) == "2027-W01"
    assert forecast.ruler.weeks == 21


def test_that_a_cut_crop_grows_anew_from_each_cut_and_a_picked_one_evenly():
    basil, okra = (profile_of(profile_key(batch_of(crop=key)), CROPS[key]) for key in ("basil", "okra"))
    interval = round(CROPS["basil"].pick_interval_days)
    regrowth = growth_by_day(basil)[basil.first_pick_day :][:interval]
    assert regrowth[0] < regrowth[interval // 2]
    picking = growth_by_day(okra)[okra.first_pick_day :]
    assert picking == pytest.approx(np.full(okra.picking_window, picking[0]))


def test_that_what_regrows_between_two_cuts_is_what_the_next_one_takes():
    basil = profile_of(profile_key(batch_of(crop="basil")), CROPS["basil"])
    share = after_first_pick(basil)
    cuts = picks_by_day(basil).nonzero()[0]
    later = picks_by_day(basil)[cuts[1:]]
    assert np.diff(share[cuts]) == pytest.approx(later / later.sum())


def test_that_the_room_of_plants_is_told_where_their_harvest_is_explained(forecaster, catalogue):
    bed = dataclasses.replace(RAFT, units=1, rows=5, columns=10, area_m2=1.0)
    farm = farm_of(batches=(batch_of(plants=50, bed=bed.id),), beds=(bed,))
    forecast = forecaster.forecast(farm)
    week = int(np.flatnonzero(forecast.ruler.weekly_sum(forecast.harvest_g)[0])[0])
    subject = Subject(kind=SubjectKind.HARVEST_G, crop="lettuce-butterhead", week=week)
    told = why(subject, farm, forecast, forecaster).children[0].children[0]
    assert told.title == "yield"
    assert told.input("density_per_m2").value == 50.0
    assert told.input("own_density_per_m2").value == catalogue.crops["lettuce-butterhead"].bed_density_per_m2
    assert recomputed(told) == pytest.approx(told.value)
    assert told.input("room_share").value < 1.0
