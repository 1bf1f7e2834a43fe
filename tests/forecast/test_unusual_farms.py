"""Farms at the edges of the map and of what may be entered: nothing breaks, nothing is absurd."""

from __future__ import annotations

import numpy as np
import pytest

from planner.bootstrap import Means
from planner.store.text import read_farm_text

HEAD = """\
format = "raftweek.farm/1"
[farm]
name = "Unusual"
plan_from = {start}
plan_weeks = {weeks}
[[site]]
name = "Site"
{site}
[[loop]]
name = "Loop"
water_l = 1000
{loop}
"""
TANK = '[[tank]]\nname = "Tank"\nvolume_l = 1000\n'
BED = '[[raft_bed]]\nname = "Rafts"\nrafts = 4\nrows = 5\ncolumns = 5\narea_m2 = 4\n'
NURSERY = '[[nursery]]\nname = "Bench"\ntrays = 2\nrows = 6\ncolumns = 12\narea_m2 = 0.3\n'
FISH = """\
[[fish_group]]
name = "Fish"
species = "{species}"
feed = "{feed}"
stocked_on = {on}
count = {count}
mean_weight_g = {grams}
"""
CROP = """\
[[batch]]
crop = "{crop}"
sow_on = {on}
plants = 20
bed = "Rafts"
repeat_every_days = 7
repeat_times = 8
{more}
"""
MONDAY = "2027-01-04"
ONE_DAY = "germination_days = 0\nnursery_days = 0\nbed_days = 1\npicking_days = 0\nclearing_days = 0"


def fish(*, species="nile-tilapia", feed="tilapia-grow-out-32", on=MONDAY, count=50, grams=60):
    return TANK + FISH.format(species=species, feed=feed, on=on, count=count, grams=grams)


def crop(*, key="lettuce-butterhead", on=MONDAY, more=""):
    return BED + CROP.format(crop=key, on=on, more=more)


def months(*values):
    return f"[{', '.join(str(value) for value in values * (12 // len(values)))}]"


FARMS = {
    "nothing": ("", {}),
    "fish without beds": (fish(), {}),
    "beds without fish": (crop(), {}),
    "only a nursery": (NURSERY, {}),
    "lives of one day": (fish() + crop(more=ONE_DAY), {}),
    "three fish of full size": (fish(count=3, grams=5000), {}),
    "fish to come after the plan": (fish(on="2030-01-01") + crop(), {}),
    "fish of long ago": (fish(on="2010-01-01") + crop(), {}),
    "batches of long ago": (fish() + crop(on="2010-01-01"), {"site": f"air_c = {months(20)}"}),
    "batches far ahead": (fish() + crop(on="2050-01-01"), {"site": f"air_c = {months(20)}"}),
    "a week 53": (fish() + crop(on="2026-12-20"), {"start": "2026-12-28", "weeks": 3}),
    "a leap day": (fish(on="2028-02-25") + crop(on="2028-02-29"), {"start": "2028-02-28", "weeks": 60}),
    "the south pole": (
        fish(species="rainbow-trout", feed="carnivore-45") + crop(),
        {
            "weeks": 52,
            "site": f"air_c = {months(-40, -10)}\nlatitude_deg = -90",
            "loop": f"water_c = {months(1)}",
        },
    ),
    "a hot height": (
        fish() + crop(),
        {
            "weeks": 52,
            "site": f"air_c = {months(50)}\nlatitude_deg = 90\naltitude_m = 5000",
            "loop": f"water_c = {months(45)}",
        },
    ),
    "no make-up water": (fish(count=500) + crop(), {"loop": "top_up_l_per_day = 0"}),
    "more make-up than water": (
        fish() + crop(),
        {"loop": "top_up_l_per_day = 5000\ntop_up_ca_mg_per_l = 60"},
    ),
    "catfish and tomato": (
        fish(species="african-catfish", feed="general-28") + crop(key="tomato"),
        {"weeks": 52, "site": f"air_c = {months(27)}\nlatitude_deg = 5", "loop": f"water_c = {months(27)}"},
    ),
    "carp and lettuce in the south": (
        fish(species="common-carp", feed="general-28") + crop(),
        {
            "weeks": 52,
            "site": "air_c = [24, 24, 22, 18, 15, 12, 11, 12, 15, 18, 20, 23]\nlatitude_deg = -36",
            "loop": "water_c = [24, 24, 22, 18, 15, 12, 11, 12, 15, 18, 20, 23]",
        },
    ),
    "barramundi in heat": (
        fish(species="barramundi", feed="carnivore-45") + crop(key="water-spinach"),
        {
            "weeks": 52,
            "site": f"air_c = {months(32, 40)}\nlatitude_deg = 24",
            "loop": f"water_c = {months(26, 33)}",
        },
    ),
}


@pytest.fixture(scope="module")
def means():
    return Means()


@pytest.mark.parametrize("name", FARMS)
def test_that_mass_closes_nothing_is_below_nothing_and_no_ration_is_beyond_what_fish_eat(means, name):
    text, given = FARMS[name]
    head = HEAD.format(**({"start": MONDAY, "weeks": 20, "site": "", "loop": ""} | given))
    farm = means.checked(read_farm_text(head + text, crop_codes=means.crop_codes))
    forecast = means.forecaster.forecast(farm)
    for loop in forecast.loops:
        parts = loop.fish_g + loop.solids_g + loop.gas_g + loop.dissolved_g
        assert np.allclose(parts, loop.content_g, rtol=1e-9, atol=1e-12)
        for array in (
            loop.supply_g,
            loop.demand_g,
            loop.pool_g,
            loop.unmet_g,
            loop.leaving_g,
            loop.planted_m2,
        ):
            assert np.isfinite(array).all()
            assert array.min(initial=0.0) >= 0.0
        for group in loop.groups:
            assert (group.feed_g <= 0.2 * group.biomass_g + 1e-9).all()
            assert (np.diff(group.weight_g[group.count > 0]) >= -1e-9).all()
    assert np.isfinite(forecast.harvest_g).all()
    ripe = forecast.batches.ripe
    assert ((ripe >= 0.0) & (ripe <= 1.0)).all()
