"""Scenarios: the base stays, columns are fresh forecasts, adopting is one act, blanks stay unknown."""

from __future__ import annotations

import dataclasses

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from planner.actions.batches import remove_batch
from planner.farm.changes import Change, ChangeSet, applied
from planner.farm.faults import FarmFaultError
from planner.forecast.engine import Forecaster
from planner.forecast.verdicts import week_verdicts
from planner.planning.scenarios.compare import BASE, Prices, compare, plantings_to_hold
from planner.planning.scenarios.sets import (
    MOST,
    Scenario,
    Scenarios,
    adopted,
    changes_between,
    differences,
    group_lost,
    scenario_of,
)
from tests.farms import LOOP, batch_of, group_of
from tests.planning.remedies.cases import falling_farm, hungry_farm, week
from tests.planning.stocking.farms import school_farm


def more_fish(farm):
    group = group_of("More", count=40, mean_weight_g=80.0)
    return ChangeSet(title="Stock more", changes=(Change(after=group),))


def fewer_plants(farm):
    batch = farm.batches[0]
    after = dataclasses.replace(batch, plants=5)
    return ChangeSet(title="Thin", changes=(Change(before=batch, after=after),))


@pytest.fixture
def base():
    return hungry_farm()


@pytest.fixture
def scenarios(base):
    return (
        Scenario(name="more fish", change_sets=(more_fish(base),)),
        Scenario(name="both", change_sets=(more_fish(base), fewer_plants(base))),
    )


def test_that_the_base_is_left_as_it_is_until_a_scenario_is_adopted(means, base, scenarios):
    kept = dataclasses.replace(base)
    compare(base, scenarios, means.forecaster)
    assert base == kept
    act = adopted(base, scenarios[1])
    assert applied(base, act) == scenarios[1].farm(base)
    assert applied(applied(base, act), act.turned()) == base


def test_that_a_column_is_what_a_fresh_forecast_of_its_farm_says(means, base, scenarios):
    found = compare(base, scenarios, means.forecaster)
    assert [column.name for column in found.columns] == [BASE, "more fish", "both"]
    for column, farm in zip(found.columns, (base, *(s.farm(base) for s in scenarios)), strict=True):
        forecaster = Forecaster(means.catalogue)
        forecast = forecaster.forecast(farm)
        loop = forecast.loops[0]
        assert column.feed_kg == pytest.approx(loop.feed_g.sum() / 1000.0)
        assert sum(grams for _, grams in column.harvest_g) == pytest.approx(forecast.harvest_g.sum())
        verdicts = week_verdicts(loop, forecast.ruler, forecaster.bands)
        ratios = [min((r for r in v.ratio if r is not None), default=None) for v in verdicts]
        assert [one.ratio for one in column.balance] == pytest.approx(ratios)
        assert column.worst.ratio == pytest.approx(min(r for r in ratios if r is not None))
        mass = sum(group.biomass_g for group in loop.groups)
        assert column.peak_kg_per_m3 == pytest.approx(mass.max() / 3000.0)
        area = forecast.ruler.weekly_mean(loop.planted_m2).sum(axis=0)
        assert column.occupancy_share == pytest.approx((area.mean() / 4.0, area.max() / 4.0))


def test_that_more_fish_better_the_balance_and_are_listed_as_the_difference(means, base, scenarios):
    found = compare(base, scenarios, means.forecaster)
    plain, more, _ = found.columns
    assert more.worst.ratio > plain.worst.ratio
    assert more.feed_kg > plain.feed_kg
    assert found.differences(0) == ()
    assert [(one.where, one.what) for one in found.differences(1)] == [('fish group "More"', "added")]


def test_that_a_difference_names_field_old_and_new_value(base):
    (difference,) = differences(fewer_plants(base).changes)
    assert difference.what == "altered"
    assert difference.fields == (("plants", "25", "5"),)


def test_that_a_blank_price_is_unknown_and_never_zero(means, base, scenarios):
    (blank,) = compare(base, (), means.forecaster).columns
    assert blank.cost.total is None
    assert blank.income.total is None
    assert "feed tilapia-grow-out-32" in blank.cost.blank
    prices = Prices(feed_per_kg={"tilapia-grow-out-32": 2.0}, crop_per_kg={"lettuce-butterhead": 5.0})
    (part,) = compare(base, (), means.forecaster, prices=prices).columns
    assert part.cost.known == pytest.approx(2.0 * part.feed_kg)
    assert part.cost.total is None
    assert part.income.total == pytest.approx(5.0 * sum(g for _, g in part.harvest_g) / 1000.0)
    whole = dataclasses.replace(prices, seed_per_thousand={"lettuce-butterhead": 10.0})
    (all_known,) = compare(base, (), means.forecaster, prices=whole).columns
    assert all_known.cost.blank == ()
    assert all_known.cost.total > part.cost.known


def test_that_three_scenarios_are_kept_and_no_more():
    kept = Scenarios()
    for number in range(MOST):
        kept = kept.with_scenario(Scenario(name=f"S{number}"))
    with pytest.raises(FarmFaultError, match="3 scenarios are kept"):
        kept.with_scenario(Scenario(name="one too many"))
    assert len(kept.with_scenario(Scenario(name="S1")).kept) == MOST
    dropped = kept.without("S1")
    assert [one.name for one in dropped.kept] == ["S0", "S2"]
    assert dropped.without("S1") == dropped
    assert kept.named("S2").name == "S2"
    with pytest.raises(FarmFaultError, match="needs a name"):
        kept.with_scenario(Scenario(name=" "))


def test_that_a_scenario_can_be_told_by_another_farm(base):
    other = applied(applied(base, more_fish(base)), remove_batch(base, base.batches[3].id))
    found = scenario_of("other", base, other)
    assert found.farm(base) == other
    assert scenario_of("same", base, base).change_sets == ()


def test_that_losing_a_group_takes_its_feed_away_and_names_what_to_hold_back(means):
    farm = falling_farm()
    old = farm.fish_groups[0]
    scenario = Scenario(name="lost", change_sets=(group_lost(farm, old.id, on=week(2)),))
    plain, lost = compare(farm, (scenario,), means.forecaster).columns
    assert lost.feed_kg < plain.feed_kg
    gone = means.forecaster.preview(scenario.farm(farm)).loops[0].groups[0]
    assert gone.count[15:].max() == 0.0
    held = plantings_to_hold(farm, scenario, means.forecaster, loop=LOOP.id)
    assert held
    assert set(held) <= {batch.code for batch in farm.batches}
    assert applied(scenario.farm(farm), scenario.change_sets[0].turned()) == farm


def test_that_the_large_sample_compares_with_itself_without_a_difference(means):
    farm = school_farm(means)
    same, other = compare(farm, (scenario_of("same", farm, farm),), means.forecaster).columns
    assert dataclasses.replace(other, name=BASE) == same


@settings(max_examples=60, suppress_health_check=[HealthCheck.function_scoped_fixture])
@given(st.lists(st.tuples(st.integers(0, 9), st.integers(1, 40)), max_size=8, unique_by=lambda one: one[0]))
def test_that_the_changes_between_two_farms_lead_from_one_to_the_other_and_back(wanted):
    base = hungry_farm(placements=())
    known = {batch.code: batch for batch in base.batches}
    other = dataclasses.replace(
        base,
        batches=tuple(
            dataclasses.replace(known.get(f"LTB-{n}", batch_of(f"LTB-{n}", sow_on=week(n))), plants=plants)
            for n, plants in sorted(wanted)
        ),
    )
    changes = ChangeSet(title="", changes=changes_between(base, other))
    there = applied(base, changes)
    assert sorted(there.batches, key=lambda b: b.code) == sorted(other.batches, key=lambda b: b.code)
    assert applied(there, changes.turned()) == base
