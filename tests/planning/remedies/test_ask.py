"""Remedies: each does what it says it does, can be taken back, and does no harm."""

from __future__ import annotations

import dataclasses
from datetime import timedelta

import numpy as np
import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from planner.farm.changes import applied
from planner.farm.crops import Phase
from planner.farm.farm import by_id
from planner.farm.fish import Feeding, FishEventKind
from planner.farm.ids import new_id
from planner.forecast.checks import all_faults
from planner.forecast.engine import Forecaster
from planner.forecast.values import Flag, FlagKind
from planner.forecast.verdicts import week_verdicts
from planner.planning.remedies.ask import REPAIRABLE, Soundness, remedies
from planner.planning.remedies.values import ORDER, RemedyKind, SideEffect
from tests.farms import LOOP, batch_of, group_of
from tests.planning.remedies.cases import (
    crowded_farm,
    falling_farm,
    flag_of,
    full_farm,
    harvest_of,
    hungry_farm,
    underfed_farm,
    wave_farm,
    week,
    winter_farm,
)
from tests.planning.stocking.farms import school_farm

CASES = {
    "hungry": (hungry_farm, FlagKind.SHORT_SUPPLY),
    "underfed": (underfed_farm, FlagKind.SHORT_SUPPLY),
    "falling": (falling_farm, FlagKind.FEED_FALLS),
    "full": (full_farm, FlagKind.DENSITY),
    "crowded": (crowded_farm, FlagKind.UNPLACED),
    "wave": (wave_farm, FlagKind.SHORT_SUPPLY),
    "winter": (winter_farm, FlagKind.GIVEN_UP),
}


@pytest.fixture(scope="module")
def asked(means):
    """Farm, flag and remedies of every case."""
    found = {}
    for name, (make, kind) in CASES.items():
        farm = make()
        flag = flag_of(farm, means.forecaster, kind)
        found[name] = (farm, flag, remedies(farm, means.forecaster, flag))
    return found


def kinds(found):
    return {remedy.kind: remedy for remedy in found}


@pytest.mark.parametrize("name", CASES)
def test_that_there_are_two_to_five_of_different_kinds_the_cheapest_first(asked, name):
    _, _, found = asked[name]
    assert 2 <= len(found) <= 5
    places = [ORDER.index(remedy.kind) for remedy in found]
    assert places == sorted(set(places))


@pytest.mark.parametrize("name", CASES)
def test_that_the_effect_is_that_of_a_fresh_forecast_of_the_changed_farm(means, asked, name):
    farm, flag, found = asked[name]
    for remedy in found:
        forecaster = Forecaster(means.catalogue)
        for now, effect in ((farm, remedy.before), (applied(farm, remedy.change_set), remedy.after)):
            forecast = forecaster.forecast(now)
            ruler, loop = forecast.ruler, forecast.loops[0]
            short = [
                verdict.week
                for verdict in week_verdicts(loop, ruler, forecaster.bands)
                if any(value is not None and value < forecaster.bands.short_below for value in verdict.ratio)
            ]
            assert effect.plan_weeks_short == len(short)
            assert effect.crops_g == pytest.approx(forecast.harvest_g.sum())
            assert effect.feed_g == pytest.approx(loop.feed_g.sum())
            if flag.kind is FlagKind.SHORT_SUPPLY:
                first, last = ruler.week_of(flag.on), ruler.week_of(flag.until_on)
                assert effect.weeks_short == len([one for one in short if first <= one <= last])
                flagged = [v for v in week_verdicts(loop, ruler, forecaster.bands) if first <= v.week <= last]
                lowest = min(r for v in flagged for r in v.ratio if r is not None)
                assert effect.lowest_ratio[effect.limiting] == pytest.approx(lowest)


@pytest.mark.parametrize("name", CASES)
def test_that_every_remedy_betters_what_is_flagged_and_makes_no_faults(means, asked, name):
    farm, _, found = asked[name]
    for remedy in found:
        assert remedy.severity_after < remedy.severity_before
        assert all_faults(applied(farm, remedy.change_set), means.forecaster) == ()


@pytest.mark.parametrize("name", CASES)
def test_that_a_remedy_can_be_taken_back(asked, name):
    farm, _, found = asked[name]
    for remedy in found:
        changed = applied(farm, remedy.change_set)
        assert changed != farm
        assert applied(changed, remedy.change_set.turned()) == farm


@pytest.mark.parametrize("name", CASES)
def test_that_asking_again_gives_the_same_in_the_same_order(means, asked, name):
    farm, flag, found = asked[name]
    again = remedies(farm, Forecaster(means.catalogue), flag)
    assert [(one.kind, one.change_set.title, one.after) for one in again] == [
        (one.kind, one.change_set.title, one.after) for one in found
    ]


@pytest.mark.parametrize("name", CASES)
def test_that_cautions_are_in_the_catalogue(means, asked, name):
    for remedy in asked[name][2]:
        assert set(remedy.cautions) <= set(means.catalogue.cautions)


def eaten_g(means, farm, after, group):
    """What a group would eat by growth, from its weight of each day: worked out day by day."""
    entered = by_id(after.fish_groups)[group.group]
    fish = means.catalogue.fish[entered.species]
    warmth = fish.optimum_c
    eaten = np.zeros(group.feed_g.size)
    for day, (count, weight) in enumerate(zip(group.count, group.weight_g, strict=True)):
        stage = next((one for one in fish.stages if weight <= one.up_to_g), fish.stages[-1])
        root = weight ** (1 / 3) + stage.tgc / 1000.0 * warmth
        eaten[day] = count * max(root**3 - weight, 0.0) * stage.fcr
    return eaten


@pytest.mark.parametrize("name", CASES)
def test_that_no_remedy_feeds_fish_above_what_they_eat(means, asked, name):
    farm, _, found = asked[name]
    for remedy in found:
        changed = applied(farm, remedy.change_set)
        for group in Forecaster(means.catalogue).forecast(changed).loops[0].groups:
            most = eaten_g(means, farm, changed, group)
            assert np.all(group.feed_g <= most * 1.05 + 1e-6), remedy.kind


def test_that_fish_fed_less_than_they_eat_may_be_fed_what_they_eat_and_no_more(asked):
    farm, _, found = asked["underfed"]
    remedy = kinds(found)[RemedyKind.FEED_APPETITE]
    assert remedy.after.feed_g > remedy.before.feed_g
    assert applied(farm, remedy.change_set).fish_groups[0].feeding is Feeding.GROWTH
    assert SideEffect.MORE_FEED in remedy.side_effects


def test_that_fish_fed_all_they_eat_are_never_to_be_fed_more(means):
    farm = hungry_farm(
        fish_groups=(group_of(count=25, mean_weight_g=80.0, feeding=Feeding.PERCENT, feed_percent=12.0),)
    )
    flag = Flag(kind=FlagKind.SHORT_SUPPLY, about=LOOP.id, name="Loop", on=week(6), until_on=week(9))
    assert RemedyKind.FEED_APPETITE not in kinds(remedies(farm, means.forecaster, flag))


def test_that_a_fall_of_the_feed_is_met_by_harvesting_a_part_first(means, asked):
    farm, flag, found = asked["falling"]
    remedy = kinds(found)[RemedyKind.HARVEST_PART]
    assert remedy.after.fall_share < remedy.before.fall_share
    events = applied(farm, remedy.change_set).fish_events
    assert [event.kind for event in events] == [FishEventKind.HARVEST] * 2
    assert events[0].count is not None
    assert events[1].on == flag.on + timedelta(weeks=6)
    assert "fish-as-food" in remedy.cautions


def test_that_a_tank_too_full_is_thinned_by_what_is_too_much(asked):
    _, flag, found = asked["full"]
    limit = dict(flag.values)["limit"]
    for remedy in found:
        assert remedy.after.peak_kg_per_m3 < remedy.before.peak_kg_per_m3
        assert remedy.repairs == (remedy.after.peak_kg_per_m3 <= limit)
    assert kinds(found)[RemedyKind.HARVEST_PART].repairs


def test_that_ornamental_fish_are_never_harvested(means):
    farm = full_farm(species="goldfish-koi", feed="tilapia-grow-out-32")
    flag = flag_of(farm, means.forecaster, FlagKind.DENSITY)
    found = kinds(remedies(farm, means.forecaster, flag))
    assert found
    assert not {RemedyKind.HARVEST_PART, RemedyKind.HARVEST_EARLIER} & set(found)


def test_that_a_wave_of_sowings_is_spread_or_held_before_anything_is_bought(asked):
    _, _, found = asked["wave"]
    assert [remedy.kind for remedy in found[:2]] == [RemedyKind.SHIFT_SOWINGS, RemedyKind.HOLD_TRANSPLANTS]
    assert all(remedy.repairs for remedy in found)
    assert SideEffect.OLDER_SEEDLINGS in kinds(found)[RemedyKind.HOLD_TRANSPLANTS].side_effects


def test_that_a_batch_too_slow_for_winter_is_sown_when_it_ripens(asked):
    farm, _, found = asked["winter"]
    remedy = kinds(found)[RemedyKind.SHIFT_SOWINGS]
    assert remedy.repairs
    assert remedy.harvest_change_g > 0.0
    assert applied(farm, remedy.change_set).batches[0].sow_on > farm.batches[0].sow_on


def test_that_a_batch_without_places_is_moved_or_thinned_until_it_fits(means, asked):
    _, _, found = asked["crowded"]
    for remedy in found:
        assert remedy.after.unplaced_plants < remedy.before.unplaced_plants
    assert RemedyKind.LEAVE_OUT in kinds(found)


def test_that_waiting_liquor_is_returned_with_the_caution_it_needs(means):
    farm = school_farm(means)
    flag = flag_of(farm, means.forecaster, FlagKind.SHORT_SUPPLY)
    remedy = kinds(remedies(farm, means.forecaster, flag))[RemedyKind.RETURN_LIQUOR]
    assert "solids-as-manure" in remedy.cautions
    assert SideEffect.NOT_ON_HARVEST_DAY in remedy.side_effects
    returned = applied(farm, remedy.change_set).solids_batches
    assert flag.on in {solids.returned_on for solids in returned}


def test_that_a_dose_is_in_grams_and_ends_with_the_flagged_weeks(means, asked):
    farm, flag, found = asked["hungry"]
    remedy = kinds(found)[RemedyKind.DOSE_SUPPLEMENT]
    doses = applied(farm, remedy.change_set).doses
    assert {dose.until_on for dose in doses} == {flag.until_on}
    for dose in doses:
        assert dict(remedy.details)[f"g of {dose.supplement}"] == pytest.approx(dose.grams)
    for element in ("k", "ca", "mg"):
        before, after = remedy.before.ratio_of(element), remedy.after.ratio_of(element)
        assert before is None or after >= before


def test_that_nothing_before_today_is_changed(means):
    farm = hungry_farm()
    flag = flag_of(farm, means.forecaster, FlagKind.SHORT_SUPPLY)
    today = week(4)
    for remedy in remedies(farm, means.forecaster, flag, today=today):
        for change in remedy.change_set.changes:
            for thing in (change.before, change.after):
                on = getattr(thing, "sow_on", None) or getattr(thing, "on", None)
                if remedy.kind is not RemedyKind.HOLD_TRANSPLANTS:
                    assert on is None or on >= today, remedy.change_set.title


def test_that_weeks_gone_by_have_no_remedies(means):
    farm = hungry_farm()
    flag = flag_of(farm, means.forecaster, FlagKind.SHORT_SUPPLY)
    assert remedies(farm, means.forecaster, flag, today=flag.until_on + timedelta(days=1)) == ()


def test_that_locked_batches_are_left_alone(means):
    free = hungry_farm()
    farm = dataclasses.replace(
        free, batches=tuple(dataclasses.replace(batch, locked=True) for batch in free.batches)
    )
    flag = flag_of(farm, means.forecaster, FlagKind.SHORT_SUPPLY)
    for remedy in remedies(farm, means.forecaster, flag):
        assert not remedy.change_set.ids("batch")


def test_that_there_is_no_remedy_for_what_cannot_be_planned_away(means):
    farm = hungry_farm()
    flag = flag_of(farm, means.forecaster, FlagKind.NO_CLIMATE)
    assert flag.kind not in REPAIRABLE
    assert remedies(farm, means.forecaster, flag) == ()


def test_that_every_short_week_of_the_large_sample_has_at_least_two_remedies(means):
    farm = school_farm(means)
    flags = [f for f in means.forecaster.forecast(farm).flags if f.kind is FlagKind.SHORT_SUPPLY]
    assert flags
    soundness = Soundness(farm, means.forecaster)
    for flag in flags:
        found = remedies(farm, means.forecaster, flag)
        assert len(found) >= 2, flag
        assert remedies(farm, means.forecaster, flag, soundness=soundness) == found


@settings(max_examples=4, deadline=None, suppress_health_check=[HealthCheck.function_scoped_fixture])
@given(st.integers(5, 120), st.floats(20, 400), st.integers(2, 7), st.integers(6, 14))
def test_that_on_any_farm_remedies_help_can_be_undone_and_do_no_harm(means, fish, weight_g, many, harvest):
    group = group_of(count=fish, mean_weight_g=weight_g)
    batches = tuple(batch_of(f"LTB-{n}", sow_on=week(n)) for n in range(many))
    farm = hungry_farm(
        batches=batches, placements=(), fish_groups=(group,), fish_events=(harvest_of(group, week(harvest)),)
    )
    full = {f.about for f in means.forecaster.forecast(farm).flags if f.kind is FlagKind.DENSITY}
    for flag in means.forecaster.forecast(farm).flags:
        for remedy in remedies(farm, means.forecaster, flag):
            changed = applied(farm, remedy.change_set)
            assert applied(changed, remedy.change_set.turned()) == farm
            assert remedy.severity_after < remedy.severity_before
            forecast = means.forecaster.forecast(changed)
            assert {f.about for f in forecast.flags if f.kind is FlagKind.DENSITY} <= full


@pytest.mark.parametrize("spoil", ["a batch without its bed", "two in one place"])
def test_that_what_is_known_to_be_sound_does_not_hide_what_a_change_spoils(means, spoil):
    farm = school_farm(means)
    soundness = Soundness(farm, means.forecaster)
    assert soundness.faults(farm) == ()
    run = next(each for each in farm.placements if each.phase is Phase.BED)
    if spoil == "two in one place":
        changed = dataclasses.replace(
            farm, placements=(*farm.placements, dataclasses.replace(run, id=new_id(), count=1))
        )
    else:
        changed = dataclasses.replace(farm, beds=tuple(bed for bed in farm.beds if bed.id != run.bed))
    found = all_faults(changed, means.forecaster)
    assert found
    assert soundness.faults(changed) == found
    assert soundness.faults(farm) == ()
