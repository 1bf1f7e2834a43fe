"""A shortage has its reasons, and the largest change comes first."""

from __future__ import annotations

import dataclasses
from datetime import date, timedelta

import pytest

from planner.farm.ids import id_from
from planner.farm.water import Dose
from planner.forecast.why.ground import NoSuchFigureError
from planner.forecast.why.reasons import CHANGES, ReasonKind, reasons
from planner.paper.reasons import reason_sentence
from planner.paper.words import NO_BREAK
from tests.farms import LOOP, MONDAY, farm_of, group_of, weekly_batches
from tests.forecast.sample_farms import known

WARM = (29.0,) * 12


def asked(farm, forecaster, week, **words):
    forecast = forecaster.forecast(farm)
    return reasons(forecast, farm, loop=farm.loops[0].id, week=week, forecaster=forecaster, **words)


def kinds(found):
    return [reason.kind for reason in found]


def in_sample(week_name):
    farm, forecast, forecaster = known("school-kitchen")
    names = [forecast.ruler.week_name(week) for week in range(forecast.ruler.weeks)]
    week = names.index(week_name)
    return reasons(forecast, farm, loop=farm.loops[0].id, week=week, forecaster=forecaster)


def test_that_after_a_harvest_of_fish_the_harvest_is_the_first_reason():
    first = in_sample("2027-W18")[0]
    assert first.kind is ReasonKind.FISH_HARVESTED
    assert (first.about, first.on) == ("Autumn fish", date(2027, 5, 3))
    sentence = reason_sentence(first, beside=date(2027, 1, 4)).replace(NO_BREAK, " ")
    assert sentence == "74 fish harvested on Mon 3 May: feed falls 62 % until Sun 4 Jul"


def test_that_a_week_with_enough_has_no_reasons():
    farm, forecast, forecaster = known("school-kitchen")
    assert reasons(forecast, farm, loop=farm.loops[0].id, week=12, forecaster=forecaster) == ()


@pytest.mark.parametrize("name", ["school-kitchen", "backyard"])
def test_that_reasons_are_sorted_changes_first_and_each_is_worth_telling(name):
    farm, forecast, forecaster = known(name)
    least = forecaster.catalogue.figure("coefficient/why/least_ratio_lost").value
    told = 0
    for week in range(forecast.ruler.weeks):
        found = reasons(forecast, farm, loop=farm.loops[0].id, week=week, forecaster=forecaster)
        told += len(found)
        order = [(reason.kind not in CHANGES, -reason.ratio_lost) for reason in found]
        assert order == sorted(order)
        assert all(reason.ratio_lost >= least for reason in found)
        assert all(reason_sentence(reason) for reason in found)
    assert told > 0


def test_that_a_farm_without_fish_is_told_so(forecaster):
    found = asked(farm_of(batches=weekly_batches(4)), forecaster, 6)
    assert reason_sentence(found[kinds(found).index(ReasonKind.NO_FISH)]) == "no fish are fed in Loop"


def test_that_cold_water_is_told_with_its_share_and_warm_water_is_not(forecaster):
    cold, best = (
        asked(
            farm_of(
                loops=(dataclasses.replace(LOOP, water_c=(celsius,) * 12),),
                fish_groups=(group_of(count=20),),
                batches=weekly_batches(12),
            ),
            forecaster,
            10,
        )
        for celsius in (20.0, 29.0)
    )
    (reason,) = (one for one in cold if one.kind is ReasonKind.COLD_WATER)
    assert 0 < dict(reason.values)["growth_share"] < 0.5
    assert "cold water: at 20 °C" in reason_sentence(reason)
    assert ReasonKind.COLD_WATER not in kinds(best)
    assert ReasonKind.YOUNG_FISH in kinds(best)


def test_that_a_dose_that_runs_out_is_named(forecaster):
    dose = Dose(
        id=id_from("dose"),
        loop=LOOP.id,
        supplement="potassium-hydroxide",
        grams=60.0,
        on=MONDAY,
        every_days=7,
        until_on=MONDAY + timedelta(days=62),
    )
    farm = farm_of(
        loops=(dataclasses.replace(LOOP, water_c=WARM),),
        fish_groups=(group_of(count=5, mean_weight_g=30.0),),
        batches=weekly_batches(14),
        doses=(dose,),
    )
    found = asked(farm, forecaster, 10, element=2)
    (reason,) = (one for one in found if one.kind is ReasonKind.DOSE_ENDED)
    assert reason.on == MONDAY + timedelta(days=62)
    assert "runs out" in reason_sentence(reason)


def test_that_growing_plants_are_told_with_how_much_more_they_want(forecaster):
    farm = farm_of(fish_groups=(group_of(count=20),), batches=weekly_batches(1, plants=200))
    found = asked(farm, forecaster, 5)
    (reason,) = (one for one in found if one.kind is ReasonKind.NEAR_HARVEST)
    values = dict(reason.values)
    assert values["plants"] == 200
    assert values["rise_share"] > 1


def test_that_a_week_outside_the_plan_is_refused(forecaster):
    with pytest.raises(NoSuchFigureError, match="week is 99, but must lie within 0 to 19"):
        asked(farm_of(), forecaster, 99)
