"""The sums of water go down to figures and entries: protein, biofilm by day, what leaves the pools."""

from __future__ import annotations

import pytest

from planner.farm.species import ELEMENTS
from planner.forecast.pools import FALLING_OUT, pool_figures, pool_setup
from planner.forecast.why.values import Origin, SubjectKind
from tests.forecast.sample_farms import NAMES, known
from tests.forecast.why.working import asked, walk, works_out


def names(found):
    return {one.name for each in walk(found) for one in each.inputs if one.origin is not Origin.WORKED_OUT}


@pytest.mark.parametrize("name", NAMES)
def test_that_ammonia_oxygen_and_filter_go_down_to_feed_protein_growth_and_warmth(name):
    loop = known(name)[1].loops[0].loop
    for kind, wanted in (
        (SubjectKind.AMMONIA, {"protein_share", "ammonia_per_protein", "fcr", "tgc"}),
        (SubjectKind.OXYGEN, {"protein_share", "oxygen_per_feed", "oxygen_per_nitrogen"}),
        (SubjectKind.FILTER_NEED, {"protein_share", "printed_rate"}),
        (SubjectKind.ACID, {"acid_eq_per_kg_feed", "fcr"}),
        (SubjectKind.BASE, {"acid_eq_per_kg_feed", "fcr"}),
    ):
        found = asked(name, kind=kind, about=loop, week=9)
        assert names(found) >= wanted, kind
        works_out(found)


@pytest.mark.parametrize("name", NAMES)
def test_that_the_protein_told_is_what_the_forecast_fed(name):
    loop = known(name)[1].loops[0]
    found = asked(name, kind=SubjectKind.AMMONIA, about=loop.loop, week=9)
    (protein,) = (child for child in found.children if child.title == "protein in what is fed")
    assert protein.value == pytest.approx(found.input("protein_share").value, rel=1e-9)


@pytest.mark.parametrize("name", NAMES)
def test_that_the_filter_of_a_week_is_the_mean_of_its_days(name):
    loop = known(name)[1].loops[0].loop
    found = asked(name, kind=SubjectKind.FILTER_NEED, about=loop, week=9)
    days = [child for child in found.children if child.title == "biofilm surface needed on a day"]
    assert len(days) == 7
    assert sum(day.value for day in days) / 7 == pytest.approx(found.value, rel=1e-9)


@pytest.mark.parametrize("name", NAMES)
@pytest.mark.parametrize("element", range(len(ELEMENTS)))
def test_that_what_left_the_pool_goes_by_make_up_water_and_the_half_lives(name, element):
    farm, forecast, forecaster = known(name)
    loop, day = forecast.loops[0], 80
    found = asked(name, kind=SubjectKind.STOCK, about=loop.loop, day=day, element=element)
    assert found.value == pytest.approx(float(loop.pool_mg_per_l[element, day]), rel=1e-6, abs=1e-9)
    works_out(found)
    (left,) = (child for child in found.children if child.title == "left with water since then")
    setup = pool_setup(farm.loops[0], (), pool_figures(forecaster.catalogue), forecast.ruler)
    assert left.input("leaving_share").value == pytest.approx(float(setup.leaving_share[element]), rel=1e-9)
    assert ("half_life_days" in names(found)) == (ELEMENTS[element] in FALLING_OUT)
    assert {"make_up_leaving_share", "water_l"} <= names(found)


def test_that_what_fish_keep_goes_down_to_their_growth_day_by_day():
    loop = known("by-hand")[1].loops[0].loop
    found = asked("by-hand", kind=SubjectKind.SUPPLY, about=loop, week=6, element=1)
    kept = [one for one in walk(found) if one.title == "element kept in fish"]
    assert kept
    for one in kept:
        (gain,) = one.children
        assert gain.value == pytest.approx(one.input("gain_g").value, rel=1e-9)
        assert len(gain.children) == 7
    works_out(found)


@pytest.mark.parametrize("name", NAMES)
@pytest.mark.parametrize("element", range(len(ELEMENTS)))
def test_that_what_is_wanting_goes_down_to_demand_and_supply_of_the_weeks_ahead(name, element):
    farm, forecast, forecaster = known(name)
    loop, on = forecast.loops[0], forecast.ruler.date_of(70)
    found = asked(name, kind=SubjectKind.WANTING, about=loop.loop, on=on, element=element)
    beyond = found.children[0]
    weeks = int(forecaster.catalogue.figure("coefficient/water_care/gap_weeks").value)
    wanted, supplied = (
        forecast.ruler.weekly_sum(one)[element, 10 : 10 + weeks].mean()
        for one in (loop.demand_g, loop.supply_g)
    )
    assert beyond.value == pytest.approx(max(wanted - supplied, 0.0), rel=1e-9, abs=1e-12)
    assert len(beyond.children[0].children) == weeks
    works_out(found)
    assert farm.loops


@pytest.mark.parametrize("name", NAMES)
def test_that_solids_that_pass_the_filters_go_down_to_the_feed_of_each_group(name):
    loop = known(name)[1].loops[0]
    found = asked(name, kind=SubjectKind.SUPPLY, about=loop.loop, week=9, element=1)
    (passing,) = (one for one in walk(found) if one.title == "solids that pass the filters")
    (fish,) = passing.children
    assert fish.value == pytest.approx(passing.input("solids_g").value, rel=1e-9)
    assert {part.about for part in fish.children} == {group.name for group in loop.groups}
    works_out(passing)
