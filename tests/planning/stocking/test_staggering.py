"""Hole depth by number of groups, on a model plain enough to be worked by hand.

Fish grow from 50 to 900 g in 24 weeks with one thermal growth coefficient in water of one temperature, and
are fed their gain times one ratio, so the cube root of their weight rises evenly and feed goes with its
square. Equal groups are stocked evenly apart; one that is harvested is replaced at once. On the day after a
harvest feed is then lower than on the day before by 85, 58, 43 and 34 % with one to four groups.
"""

from __future__ import annotations

import dataclasses
from datetime import timedelta

import numpy as np
import pytest

from planner.bootstrap import Means
from planner.farm.farm import OwnEntry, Settings, Shelf
from planner.farm.fish import FishEvent, FishEventKind
from planner.farm.ids import id_from
from planner.planning.stocking.steady import staggered_feed, steadiness
from planner.science.fish import effective_temperature, thermal_growth_coefficient
from tests.farms import LOOP, MONDAY, TANK, farm_of, group_of

START_G, END_G, TURN_DAYS, WATER_C = 50.0, 900.0, 168, 28.0
DROPS_PERCENT = {1: 85.0, 2: 58.0, 3: 43.0, 4: 34.0}
"""By hand, below, to whole percent."""
WHOLE_PERCENT = 0.75
"""Half of the last digit, and a day of growth between the day before and the day after."""


def by_hand_percent(groups):
    roots = [
        START_G ** (1 / 3) + (END_G ** (1 / 3) - START_G ** (1 / 3)) * k / groups for k in range(groups + 1)
    ]
    before = sum(root**2 for root in roots[1:])
    after = sum(root**2 for root in roots[:-1])
    return 100.0 * (1.0 - after / before)


@pytest.fixture(scope="module")
def means():
    return Means()


def farm_in_turn(means, groups):
    """Return four turns of groups, one harvested and stocked again every turn over the groups."""
    own = OwnEntry(
        id=id_from("plain fish"),
        shelf=Shelf.FISH,
        key="plain-tilapia",
        like="nile-tilapia",
        name="Plain tilapia",
        values=(("purge_days", 0.0), ("daily_death_share", 0.0)),
    )
    fish = means.catalogue.fish["nile-tilapia"]
    warmth = effective_temperature(
        WATER_C, base_c=fish.base_c, optimum_c=fish.optimum_c, ceiling_c=fish.ceiling_c
    )
    tgc = float(thermal_growth_coefficient(START_G, end_g=END_G, degree_days=TURN_DAYS * warmth))
    stocked, events = [], []
    for number in range(4 * groups):
        on = MONDAY + timedelta(days=number * TURN_DAYS // groups)
        group = group_of(
            f"Group {number}",
            species="plain-tilapia",
            stocked_on=on,
            mean_weight_g=START_G,
            tgc=tgc,
            fcr=1.5,
        )
        stocked.append(group)
        events.append(
            FishEvent(
                id=id_from("end", str(number)),
                group=group.id,
                on=on + timedelta(days=TURN_DAYS),
                kind=FishEventKind.HARVEST,
            )
        )
    return farm_of(
        own_entries=(own,),
        loops=(dataclasses.replace(LOOP, water_c=(WATER_C,) * 12),),
        tanks=(dataclasses.replace(TANK, volume_l=100_000.0),),
        fish_groups=tuple(stocked),
        fish_events=tuple(events),
        settings=Settings(id=id_from("settings"), name="In turn", plan_from=MONDAY, plan_weeks=80),
    )


@pytest.mark.parametrize(("groups", "percent"), DROPS_PERCENT.items())
def test_that_the_forecast_falls_at_a_harvest_as_it_does_by_hand(means, groups, percent):
    assert by_hand_percent(groups) == pytest.approx(percent, abs=0.5)
    feed = means.forecaster.preview(farm_in_turn(means, groups)).loops[0].feed_g
    apart = TURN_DAYS // groups
    for turn in range(2 * groups, 3 * groups):
        day = turn * apart
        near = feed[day - 2 : day + 3]
        assert 100.0 * (1.0 - near.min() / near.max()) == pytest.approx(percent, abs=WHOLE_PERCENT)


@pytest.mark.parametrize(("groups", "percent"), DROPS_PERCENT.items())
def test_that_the_wheel_of_weeks_falls_as_it_does_by_hand(groups, percent):
    """In days here; a day of growth is 0.36 % of the cube root."""
    roots = np.linspace(START_G ** (1 / 3), END_G ** (1 / 3), TURN_DAYS)
    found = steadiness(staggered_feed(roots**2, groups=groups))
    assert 100.0 * found.drop_share == pytest.approx(percent, abs=WHOLE_PERCENT)
