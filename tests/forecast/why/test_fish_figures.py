"""Number, weight, growth, deaths and harvests of fish: the forecast's figures, worked again."""

from __future__ import annotations

import dataclasses

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from planner.farm.fish import FishEventKind
from planner.forecast.why.ask import why
from planner.forecast.why.formulas import Formula
from planner.forecast.why.ground import NoSuchFigureError
from planner.forecast.why.values import NoteKind, Origin, Subject, SubjectKind
from tests.farms import farm_of, group_of
from tests.forecast.sample_farms import NAMES, events, known
from tests.forecast.why.working import asked, walk, works_out

ON_A_DAY = {
    SubjectKind.GROUP_COUNT: lambda group, day: group.count[day],
    SubjectKind.GROUP_WEIGHT: lambda group, day: group.weight_g[day],
    SubjectKind.GROUP_GAIN: lambda group, day: group.gain_g[day],
    SubjectKind.GROUP_MASS: lambda group, day: group.biomass_g[day] / 1000,
}


def groups_of(name):
    return [group for loop in known(name)[1].loops for group in loop.groups]


@st.composite
def group_days(draw):
    name = draw(st.sampled_from(NAMES))
    group = draw(st.sampled_from(groups_of(name)))
    return name, group, draw(st.integers(0, group.count.size - 1)), draw(st.sampled_from(list(ON_A_DAY)))


@given(group_days())
@settings(max_examples=120, deadline=None)
def test_that_number_weight_gain_and_mass_are_the_forecasts_and_work_out(case):
    name, group, day, kind = case
    found = asked(name, kind=kind, about=group.group, day=day)
    assert found.value == pytest.approx(float(ON_A_DAY[kind](group, day)), rel=1e-9, abs=1e-9)
    works_out(found)


@pytest.mark.parametrize("name", NAMES)
def test_that_a_life_from_stocking_is_the_same_as_the_plan_shows(name):
    farm, forecast, forecaster = known(name)
    entries = {entry.id: entry for entry in farm.fish_groups}
    for group in groups_of(name):
        life = forecaster.life_of(farm, entries[group.group])
        first = forecast.ruler.day_of(entries[group.group].stocked_on)
        days = slice(max(first, 0), group.count.size)
        ages = slice(days.start - first, days.stop - first)
        np.testing.assert_allclose(life.count[ages], group.count[days], rtol=1e-12)
        np.testing.assert_allclose(life.weight_g[ages], group.weight_g[days], rtol=1e-12)


def test_that_the_count_names_what_was_stocked_died_and_was_harvested():
    group = groups_of("by-hand")[0]
    found = asked("by-hand", kind=SubjectKind.GROUP_COUNT, about=group.group, day=70)
    told = {one.name: one.value for one in found.inputs}
    assert (told["stocked"], told["added"], told["counted_dead"]) == (group_of().count, 10, 8)
    assert told["harvested"] == 40
    assert found.input("stocked").origin is Origin.ENTERED
    assert {child.title for child in found.children} == {"deaths expected", "fish harvested"}


def test_that_expected_deaths_are_what_the_number_falls_by_where_nothing_else_happens():
    farm, forecast, _ = known("by-hand")
    own = next(group for group in groups_of("by-hand") if group.name == "Own growth")
    found = asked("by-hand", kind=SubjectKind.GROUP_DEATHS, about=own.group, week=2, weeks=3)
    days = slice(14, 35)
    assert found.value == pytest.approx(float(own.count[days.start] - own.count[days.stop]), rel=1e-9)
    assert found.input("daily_death_share").value == 0.001
    assert found.input("daily_death_share").origin is Origin.ENTERED
    whole = asked("by-hand", kind=SubjectKind.GROUP_DEATHS, about=own.group)
    assert whole.input("days").value == forecast.ruler.days
    works_out(whole)
    assert farm.fish_groups[-1].name == "Own growth"


def test_that_more_dead_than_fish_is_said():
    group = group_of("Few", count=5)
    lost = dataclasses.replace(next(iter(events(group.id))), count=9)
    farm = farm_of(fish_groups=(group,), fish_events=(lost,))
    from planner.bootstrap import Means

    forecaster = Means().forecaster
    forecast = forecaster.forecast(farm)
    found = why(Subject(kind=SubjectKind.GROUP_COUNT, about=group.id, day=10), farm, forecast, forecaster)
    assert found.value == 0.0
    assert {note.kind for note in found.notes} == {NoteKind.MORE_THAN_LEFT}
    works_out(found)


@pytest.mark.parametrize("name", NAMES)
def test_that_every_harvest_in_the_plan_can_be_asked_about(name):
    asked_about = 0
    for group in groups_of(name):
        for day in (int(one) for one in group.harvest_count.nonzero()[0]):
            kg = asked(name, kind=SubjectKind.FISH_HARVEST, about=group.group, day=day)
            many = asked(name, kind=SubjectKind.FISH_HARVEST_COUNT, about=group.group, day=day)
            assert kg.value == pytest.approx(group.harvest_g[day] / 1000, rel=1e-9)
            assert many.value == pytest.approx(group.harvest_count[day], rel=1e-9)
            assert kg.children[1].value == pytest.approx(group.harvest_g[day] / group.harvest_count[day])
            works_out(kg)
            asked_about += 1
    assert asked_about or name == "backyard"


def test_that_a_part_is_as_entered_and_a_whole_is_all_that_are_left():
    group = groups_of("by-hand")[0]
    part = asked("by-hand", kind=SubjectKind.FISH_HARVEST_COUNT, about=group.group, day=60)
    whole = asked("by-hand", kind=SubjectKind.FISH_HARVEST_COUNT, about=group.group, day=100)
    assert (part.formula, part.value) == (Formula.AS_ENTERED, 40.0)
    assert whole.formula is Formula.ALL_LEFT
    assert NoteKind.ALL_HARVESTED in {note.kind for note in whole.notes}
    assert whole.children[0].title == "fish of a group"


def test_that_a_day_without_a_harvest_names_the_days_that_have_one():
    group = groups_of("by-hand")[0]
    with pytest.raises(NoSuchFigureError, match=r"no fish of .* its harvests are on \d{4}-"):
        asked("by-hand", kind=SubjectKind.FISH_HARVEST, about=group.group, day=61)


@pytest.mark.parametrize("name", NAMES)
def test_that_the_day_of_readiness_is_the_first_heavy_one(name):
    farm, forecast, forecaster = known(name)
    for group in groups_of(name):
        entry = next(one for one in farm.fish_groups if one.id == group.group)
        heavy = forecaster.catalogue.fish[entry.species].harvest_weight_g
        found = asked(name, kind=SubjectKind.FISH_READY, about=group.group)
        assert found.input("harvest_weight_g").value == heavy
        works_out(found)
        if found.on is None:
            assert not ((group.weight_g >= heavy) & (group.count > 0.5)).any()
            assert NoteKind.NOT_IN_PLAN in {note.kind for note in found.notes}
            continue
        day = forecast.ruler.day_of(found.on)
        assert found.value == (found.on - entry.stocked_on).days
        assert group.weight_g[day] >= heavy
        assert day == 0 or group.weight_g[day - 1] < heavy


def test_that_growth_goes_down_to_warmth_and_the_growth_coefficient():
    group = groups_of("by-hand")[0]
    found = asked("by-hand", kind=SubjectKind.GROUP_WEIGHT, about=group.group, day=90)
    names = {one.name for each in walk(found) for one in each.inputs}
    assert {"tgc", "water_c", "optimum_c", "growth_a_day_g"} <= names
    assert found.input("weight_then_g").value == 160.0
    assert abs(found.input("by_fish_added_g").value) > 1.0


@pytest.mark.parametrize("name", NAMES)
def test_that_nothing_of_a_weight_is_put_down_to_fish_that_were_not_added(name):
    farm, _, _ = known(name)
    mixed = {event.group for event in farm.fish_events if event.kind is FishEventKind.ADDED}
    alone = [group for group in groups_of(name) if group.group not in mixed]
    assert alone
    for group in alone:
        for day in range(0, group.count.size, 9):
            found = asked(name, kind=SubjectKind.GROUP_WEIGHT, about=group.group, day=day)
            if found.formula is Formula.WEIGHT and group.count[day] > 0:
                assert found.input("by_fish_added_g").value == 0.0, (group.name, day)


def test_that_feed_and_gain_of_a_day_tell_what_is_behind_number_and_weight():
    group = groups_of("school-kitchen")[1]
    for kind in (SubjectKind.FEED, SubjectKind.GROUP_GAIN):
        found = asked("school-kitchen", kind=kind, about=group.group, day=119)
        titles = {one.title for one in walk(found)}
        assert {"fish of a group", "weight of a fish", "deaths expected"} <= titles
        works_out(found)
    fixed = next(one for one in groups_of("by-hand") if one.name == "Fixed")
    assert not asked("by-hand", kind=SubjectKind.FEED, about=fixed.group, day=9).children
