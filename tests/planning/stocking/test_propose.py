"""Proposed stockings: they are what a fresh forecast of the changed farm says, and keep to what was asked."""

from __future__ import annotations

import dataclasses
import itertools
from datetime import date, timedelta

import numpy as np
import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from planner.farm.changes import applied
from planner.farm.checks import farm_faults
from planner.farm.faults import FarmFaultError
from planner.forecast.engine import Forecaster
from planner.planning.stocking.model import score_of
from planner.planning.stocking.need import FeedNeed, need_by_ratio
from planner.planning.stocking.options import Search
from planner.planning.stocking.propose import stocking_table
from planner.planning.stocking.wish import dates_every
from tests.farms import MONDAY
from tests.planning.stocking.farms import HARVEST_G, raft_farm, raft_need, raft_wish, school_farm

PLAIN = Search(rounds=0)


@pytest.fixture(scope="module")
def tilapia(means):
    return means.catalogue.fish["nile-tilapia"]


@pytest.fixture(scope="module")
def table(means, tilapia):
    wish = raft_wish(tilapia, groups=(1, 2, 4, 6), shares=(1.0, 0.5, 0.3))
    return stocking_table(raft_farm(), means.forecaster, wish, need=raft_need(), search=PLAIN)


def by_way(table):
    return {(option.groups, option.share): option for option in table.options}


def test_that_every_way_asked_for_is_in_the_table_in_order(table):
    assert list(by_way(table)) == [(n, share) for n in (1, 2, 4, 6) for share in (1.0, 0.5, 0.3)]


def test_that_more_groups_hold_the_feed_steadier(table):
    found = by_way(table)
    for share in (1.0, 0.5):
        spread = [found[n, share].variation for n in (1, 2, 4, 6)]
        assert spread == sorted(spread, reverse=True)
        depths = [found[n, share].deepest_share for n in (1, 2, 4, 6)]
        assert depths == sorted(depths, reverse=True)


def test_that_harvesting_half_leaves_a_shallower_hole_than_harvesting_all(table):
    found = by_way(table)
    for groups in (2, 4, 6):
        assert found[groups, 0.5].deepest_share < found[groups, 1.0].deepest_share


def test_that_the_best_has_the_lowest_score(table):
    assert table.best is not None
    assert table.best.score == min(option.score for option in table.options)


def test_that_what_is_said_of_a_way_is_what_a_fresh_forecast_of_the_changed_farm_says(means, table):
    farm, need = raft_farm(), raft_need()
    for option in table.options:
        found = Forecaster(means.catalogue).forecast(applied(farm, option.whole))
        loop, ruler = found.loops[0], found.ruler
        first, last = ruler.week_of(table.judged_from_on), ruler.week_of(table.judged_until_on) + 1
        feed = ruler.weekly_mean(loop.feed_g)
        score, inside = score_of(feed, need.over(ruler.weeks), slice(first, last))
        assert (option.score, option.inside_share) == pytest.approx((score, inside))
        assert option.mean_feed_g_per_day == pytest.approx(feed[first:last].mean())
        tanks = {tank.id: np.zeros(ruler.days) for tank in farm.tanks}
        for group in loop.groups:
            tanks[group.tank] += group.biomass_g
        peak = max(mass.max() for mass in tanks.values()) / 7800.0
        assert option.peak_density_kg_per_m3 == pytest.approx(peak)


def test_that_no_tank_is_ever_fuller_than_its_limit(table):
    for option in table.options:
        assert option.peak_density_kg_per_m3 <= option.density_limit_kg_per_m3 * 1.002


def test_that_fish_are_harvested_at_their_weight_and_a_tank_is_stocked_again_when_it_is_empty(means, table):
    option = by_way(table)[4, 1.0]
    changed = applied(raft_farm(), option.whole)
    for group in Forecaster(means.catalogue).forecast(changed).loops[0].groups:
        for day in group.harvest_count.nonzero()[0]:
            assert group.harvest_g[day] / group.harvest_count[day] >= HARVEST_G - 0.1
    for tank in raft_farm().tanks:
        lives = [(one.on, one.takes[-1].on) for one in option.stocked if one.tank == tank.id and one.takes]
        for (_, ends_on), (next_on, _) in itertools.pairwise(lives):
            assert ends_on <= next_on < ends_on + timedelta(weeks=1)


def test_that_the_plan_takes_a_stocking_and_lets_it_go_again(table):
    farm = raft_farm()
    for option in table.options:
        changed = applied(farm, option.change_set)
        assert farm_faults(changed) == ()
        assert applied(changed, option.change_set.turned()) == farm
        assert {group.stocked_on for group in changed.fish_groups} == {
            one.on for one in option.stocked if one.on < farm.plan_until
        }


def test_that_fish_are_stocked_only_on_days_when_they_can_be_had(means, tilapia):
    dates = dates_every(5, first_on=MONDAY, until_on=date(2030, 1, 1))
    wish = raft_wish(tilapia, dates=dates)
    found = stocking_table(raft_farm(), means.forecaster, wish, need=raft_need(), search=Search(rounds=40))
    assert {one.on for one in found.options[0].stocked} <= set(dates)


def test_that_days_of_one_year_come_again_in_the_next(means, tilapia):
    wish = raft_wish(tilapia, dates=(MONDAY, MONDAY + timedelta(weeks=6), MONDAY + timedelta(weeks=12)))
    found = stocking_table(raft_farm(), means.forecaster, wish, need=raft_need(), search=PLAIN)
    stocked = {one.on for one in found.options[0].stocked}
    year = timedelta(weeks=52)
    assert stocked <= {day + turns * year for day in wish.dates for turns in range(4)}
    assert max(stocked) >= MONDAY + year


def test_that_looking_longer_never_makes_a_way_worse_and_a_seed_gives_the_same_again(means, tilapia):
    wish = raft_wish(tilapia, groups=(2,), shares=(0.5,))

    def score(rounds):
        found = stocking_table(
            raft_farm(), means.forecaster, wish, need=raft_need(), search=Search(rounds=rounds)
        )
        return found.options[0]

    plain, bettered, again = score(0), score(120), score(120)
    assert bettered.score <= plain.score
    assert bettered == again


def test_that_the_search_stops_when_it_is_told_to(means, tilapia):
    asked = []

    def stop():
        asked.append(True)
        return False

    wish = raft_wish(tilapia, groups=(2,))
    stopped = stocking_table(
        raft_farm(), means.forecaster, wish, need=raft_need(), search=Search(rounds=500, keep_going=stop)
    )
    plain = stocking_table(raft_farm(), means.forecaster, wish, need=raft_need(), search=PLAIN)
    assert len(asked) == 1
    assert stopped.options == plain.options


def test_that_a_way_for_which_there_is_no_room_is_said_to_be_impossible(means, tilapia):
    wish = raft_wish(tilapia, density_limit_kg_per_m3=0.05)
    found = stocking_table(raft_farm(), means.forecaster, wish, need=raft_need(), search=PLAIN)
    assert found.options == ()
    assert found.impossible == ((4, 1.0),)
    assert found.best is None


def test_that_fish_already_there_count_for_feed_and_room(means, tilapia):
    farm = school_farm(means)
    group = farm.fish_groups[2]
    wish = dataclasses.replace(
        raft_wish(tilapia),
        loop=farm.loops[0].id,
        fingerling_g=35.0,
        harvest_g=400.0,
        tgc=None,
        fcr=None,
        density_limit_kg_per_m3=None,
        groups=(2,),
    )
    with_all = stocking_table(farm, means.forecaster, wish, search=PLAIN).options[0]
    bare = dataclasses.replace(
        farm,
        fish_groups=tuple(g for g in farm.fish_groups if g.id != group.id),
        fish_events=tuple(e for e in farm.fish_events if e.group != group.id),
    )
    without = stocking_table(bare, means.forecaster, wish, search=PLAIN).options[0]
    assert sum(one.count for one in with_all.stocked) < sum(one.count for one in without.stocked)


@pytest.mark.parametrize(
    ("fields", "word"),
    [
        ({"species": "pike"}, "pike"),
        ({"species": "goldfish-koi"}, "ornamental"),
        ({"fingerling_g": 900.0}, "fingerling_g"),
        ({"dates": ()}, "dates"),
        ({"groups": (0,)}, "groups"),
        ({"shares": (1.5,)}, "shares"),
    ],
)
def test_that_a_wish_that_makes_no_sense_is_refused_by_its_field(means, tilapia, fields, word):
    with pytest.raises(FarmFaultError, match=word):
        stocking_table(
            raft_farm(), means.forecaster, dataclasses.replace(raft_wish(tilapia), **fields), need=raft_need()
        )


def test_that_a_loop_without_plants_asks_for_an_area(means, tilapia):
    with pytest.raises(FarmFaultError, match="nothing is planted"):
        stocking_table(raft_farm(), means.forecaster, raft_wish(tilapia))


@settings(max_examples=6, deadline=None, suppress_health_check=[HealthCheck.function_scoped_fixture])
@given(
    st.integers(1, 7),
    st.sampled_from([1.0, 0.7, 0.5, 0.3]),
    st.floats(2.0, 80.0),
    st.integers(1, 4),
    st.floats(20.0, 400.0),
)
def test_that_any_way_keeps_to_the_tanks_and_can_be_undone(means, tilapia, groups, share, limit, tanks, area):
    farm = raft_farm(tanks=tanks)
    wish = raft_wish(tilapia, groups=(groups,), shares=(share,), density_limit_kg_per_m3=limit)
    need = need_by_ratio(area, band=(60.0, 100.0), weeks=52)
    for option in stocking_table(farm, means.forecaster, wish, need=need, search=Search(rounds=10)).options:
        # A fish more in each tank than its exact share is all that rounding may add.
        assert option.peak_density_kg_per_m3 <= limit + groups * HARVEST_G / 7800.0
        assert 0.0 <= option.inside_share <= 1.0
        assert applied(applied(farm, option.change_set), option.change_set.turned()) == farm


@settings(max_examples=60, suppress_health_check=[HealthCheck.function_scoped_fixture])
@given(st.lists(st.floats(0, 1000), min_size=4, max_size=30), st.floats(1, 500), st.floats(1, 500))
def test_that_the_score_is_nothing_just_when_every_week_is_inside_the_band(feed, low, width):
    need = FeedNeed(low=np.full(len(feed), low), high=np.full(len(feed), low + width))
    score, inside = score_of(np.asarray(feed), need, slice(None))
    all_inside = all(low <= value <= low + width for value in feed)
    assert (score == 0.0) == all_inside == (inside == 1.0)
    assert score >= 1.0 - inside


def test_that_a_need_is_carried_on_by_last_years_weeks():
    need = FeedNeed(low=np.arange(60.0), high=np.arange(60.0) + 1.0)
    longer = need.over(120)
    assert longer.low[60:112].tolist() == list(np.arange(8.0, 60.0))
    assert longer.low[112:].tolist() == list(np.arange(8.0, 16.0))
