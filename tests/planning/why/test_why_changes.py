"""Repairs and scenarios say why each figure changes: both farms' answers, and the difference."""

from __future__ import annotations

import dataclasses

import pytest

from planner.farm.changes import Change, ChangeSet
from planner.forecast.engine import Forecaster
from planner.forecast.values import FlagKind
from planner.planning.remedies.ask import remedies
from planner.planning.scenarios.compare import BASE, Prices, compare
from planner.planning.scenarios.sets import Scenario
from planner.planning.why_remedies import remedy_name, remedy_whys
from planner.planning.why_scenarios import scenario_name, scenario_whys
from tests.farms import group_of
from tests.planning.remedies.cases import falling_farm, flag_of, full_farm, hungry_farm
from tests.planning.why.helpers import all_made

CASES = {
    FlagKind.SHORT_SUPPLY: hungry_farm,
    FlagKind.FEED_FALLS: falling_farm,
    FlagKind.DENSITY: full_farm,
}


@pytest.mark.parametrize("kind", list(CASES))
def test_that_every_figure_of_a_repair_is_the_difference_of_two_answers(means, kind):
    farm, forecaster = CASES[kind](), Forecaster(means.catalogue)
    flag = flag_of(farm, forecaster, kind)
    offered = remedies(farm, forecaster, flag)
    assert offered
    found = all_made(remedy_whys(farm, forecaster, flag, offered))
    for remedy in offered:
        before, after = remedy.before, remedy.after

        def ends(what, remedy=remedy):
            return [one.value for one in found[remedy_name(flag, remedy, what)].children]

        lowest = [None if one.limiting is None else one.lowest_ratio[one.limiting] for one in (before, after)]
        assert ends("least") == pytest.approx(lowest)
        assert ends("weeks-short") == [before.weeks_short, after.weeks_short]
        assert ends("plan-weeks-short") == [before.plan_weeks_short, after.plan_weeks_short]
        assert ends("feed-ratio") == pytest.approx(
            [before.feed_ratio_g_per_m2_d, after.feed_ratio_g_per_m2_d]
        )
        assert ends("fall") == pytest.approx([before.fall_share, after.fall_share])
        assert ends("fullest") == pytest.approx([before.peak_kg_per_m3, after.peak_kg_per_m3])
        assert ends("unplaced") == [before.unplaced_plants, after.unplaced_plants]
        harvest = found[remedy_name(flag, remedy, "harvest")]
        assert harvest.value == pytest.approx(remedy.harvest_change_g / 1000)
        for key, grams in remedy.details:
            if key.startswith("grams of "):
                assert found[remedy_name(flag, remedy, key)].value == grams


@pytest.fixture(scope="module")
def compared(means):
    base = hungry_farm()
    more = Change(after=group_of("More", count=40, mean_weight_g=80.0))
    less = Change(before=base.batches[0], after=dataclasses.replace(base.batches[0], plants=5))
    scenarios = (
        Scenario(name="More fish", change_sets=(ChangeSet(title="Stock more", changes=(more,)),)),
        Scenario(name="Thin", change_sets=(ChangeSet(title="Thin", changes=(less,)),)),
    )
    crop, group = base.batches[0].crop, base.fish_groups[0]
    prices = Prices(crop_per_kg={crop: 9.0}, feed_per_kg={group.feed: 1.8}, seed_per_thousand={crop: 3.0})
    forecaster = Forecaster(means.catalogue)
    found = compare(base, scenarios, forecaster, prices=prices)
    return found, all_made(scenario_whys(base, scenarios, forecaster, prices=prices))


def test_that_the_base_is_told_by_its_own_figures(compared):
    found, answers = compared
    base = found.columns[0]

    def told(what):
        return answers[scenario_name(BASE, what)].value

    assert told("least") == pytest.approx(base.worst.ratio)
    assert told("weeks-short") == base.weeks_short
    assert (told("planted"), told("planted-most")) == pytest.approx(base.occupancy_share)
    assert told("feed") == pytest.approx(base.feed_kg)
    assert told("fish") == pytest.approx(base.fish_kg)
    assert told("fullest") == pytest.approx(base.peak_kg_per_m3)
    assert told("unplaced") == base.unplaced_batches
    assert told("cost") == pytest.approx(base.cost.total)
    for key, grams in base.harvest_g:
        assert told(f"harvest {key}") == pytest.approx(grams / 1000)


def test_that_a_scenario_is_told_against_the_base(compared):
    found, answers = compared
    base = found.columns[0]
    for column in found.columns[1:]:
        assert answers[scenario_name(column.name, "feed")].value == pytest.approx(
            column.feed_kg - base.feed_kg
        )
        shorts = [one.value for one in answers[scenario_name(column.name, "weeks-short")].children]
        assert shorts == [base.weeks_short, column.weeks_short]
        cost = answers[scenario_name(column.name, "cost")]
        assert cost.value == pytest.approx(column.cost.total - base.cost.total)


def test_that_a_missing_price_leaves_a_sum_unknown(means):
    base = hungry_farm()
    answers = all_made(scenario_whys(base, (), Forecaster(means.catalogue)))
    cost = answers[scenario_name(BASE, "cost")]
    assert cost.value is None
    assert "no price" in str(cost.notes)
