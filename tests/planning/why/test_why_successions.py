"""A sowing says why that day, that many plants and seeds; a week what is wanted and what comes of what."""

from __future__ import annotations

from datetime import timedelta

import pytest

from planner.farm.crops import TargetUnit
from planner.forecast.engine import Forecaster
from planner.planning.proposal import steady_share
from planner.planning.seeding import LossRule, SeedWish
from planner.planning.succession_wish import SuccessionWish
from planner.planning.successions import propose
from planner.planning.wanted import Order, Rhythm, RhythmOf, Steady, wants_of
from planner.planning.why_successions import sowing_name, succession_whys
from tests.farms import MONDAY, farm_of
from tests.forecast.sample_farms import known
from tests.forecast.why.working import walk
from tests.planning.why.helpers import all_made


def asked(farm, means, wants=None, **wish):
    forecaster = Forecaster(means.catalogue)
    wanted = wants_of(farm.targets) if wants is None else wants
    found = propose(farm, forecaster, wanted, wish=SuccessionWish(**wish))
    return found, all_made(succession_whys(farm, forecaster, wanted, found))


def check(found, answers):
    assert found.sowings
    for one in found.sowings:
        plants = answers[sowing_name(one, "plants")]
        assert plants.value == one.batch.plants
        assert answers[sowing_name(one, "seeds")].value == one.seeding.seeds
        first = answers[sowing_name(one, "first-pick")]
        assert first.value == (one.first_pick_on - one.sow_on).days
        assert first.on == one.first_pick_on
        ahead = answers[sowing_name(one, "sow-on")]
        assert ahead.on == one.sow_on
        if one.wanted_on is not None:
            assert ahead.value == (one.wanted_on - one.sow_on).days
        if one.move_on is not None:
            assert answers[sowing_name(one, "move-on")].on == one.move_on
    assert answers["proposal seeds"].value == sum(one.seeding.seeds for one in found.sowings)
    assert answers["proposal plants"].value == sum(one.batch.plants for one in found.sowings)
    for crop in {week.crop for week in found.weeks}:
        weeks = tuple(week for week in found.weeks if week.crop == crop)
        assert answers[f"proposal even {crop}"].value == steady_share(weeks, within=found.even_share)
    if found.nursery:
        assert answers["proposal nursery free"].value == min(week.free for week in found.nursery)
    told = [answers[name].value for name in answers if name.startswith("week ") and name.endswith("foreseen")]
    assert told == pytest.approx([week.foreseen for week in found.weeks])
    wanted = [answers[name].value for name in answers if name.startswith("week ") and name.endswith("wanted")]
    assert wanted == pytest.approx([week.wanted for week in found.weeks])


def test_that_every_sowing_of_the_sample_farm_can_be_asked(means):
    found, answers = asked(known("school-kitchen")[0], means)
    check(found, answers)


@pytest.mark.parametrize("crop", ["lettuce-butterhead", "basil"])
@pytest.mark.parametrize("unit", list(TargetUnit))
def test_that_steady_wants_in_either_unit_can_be_asked(means, crop, unit):
    start = MONDAY + timedelta(weeks=12)
    wants = (
        Steady(crop=crop, amount_per_week=4.0, unit=unit, from_on=start, until_on=start + timedelta(weeks=9)),
    )
    found, answers = asked(farm_of(), means, wants)
    check(found, answers)
    gives = [
        one
        for name in answers
        if name.endswith("plants")
        for one in walk(answers[name])
        if one.title == "what one plant gives"
    ]
    assert gives
    for one in found.sowings:
        if one.per_plant:
            answer = answers[sowing_name(one, "plants")]
            told = next(each for each in walk(answer) if each.title == "what one plant gives")
            assert told.value == pytest.approx(one.per_plant)


def test_that_seeds_in_pots_and_trays_and_by_allowance_can_be_asked(means):
    wants = (Order(crop="lettuce-leaf", amount=30.0, on=MONDAY + timedelta(weeks=15)),)
    for rule in LossRule:
        seeds = SeedWish(rule=rule, allowance=1.25, per_pot=4)
        found, answers = asked(farm_of(), means, wants, seeds=seeds)
        check(found, answers)
        (one,) = found.sowings
        assert one.seeding.seeds % 4 == 0


def test_that_a_given_sowing_day_is_told_as_given(means):
    rhythm = Rhythm(
        crop="lettuce-leaf",
        amount=12.0,
        rule="FREQ=WEEKLY;INTERVAL=3;BYDAY=TU",
        of=RhythmOf.SOWING,
        from_on=MONDAY,
        until_on=MONDAY + timedelta(weeks=9),
    )
    found, answers = asked(farm_of(), means, (rhythm,))
    check(found, answers)
    assert all(answers[sowing_name(one, "sow-on")].value == 0 for one in found.sowings)
