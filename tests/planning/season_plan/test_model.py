"""The season that a plan is made from is the forecast's own."""

from __future__ import annotations

import numpy as np
import pytest

from planner.farm.changes import applied
from planner.farm.crops import Phase, TargetUnit
from planner.planning.season_plan.proposal import proposal
from planner.planning.season_plan.spans import spans_of

G_PER_KG = 1000.0


@pytest.fixture(scope="module")
def adopted(plan, season, means):
    return applied(season, proposal(plan, season, means.forecaster).change_set)


@pytest.fixture(scope="module")
def foreseen(adopted, means):
    return means.forecaster.forecast(adopted)


def test_that_the_forecast_of_an_adopted_plan_harvests_what_the_plan_says(plan, foreseen, means):
    for number, line in enumerate(plan.model.lines):
        key = plan.model.crops[line.crop]
        row = foreseen.crops.index(key)
        by_day = foreseen.harvest_plants[row]
        if line.unit is TargetUnit.KG:
            by_day = foreseen.harvest_g[row] / G_PER_KG
        weekly = foreseen.ruler.weekly_sum(by_day) * means.catalogue.crops[key].marketable_share
        planned = [week.lines[number].harvest for week in plan.weeks]
        assert sum(planned) > 0
        assert weekly == pytest.approx(planned, abs=1e-9)


def test_that_the_forecast_of_an_adopted_plan_takes_up_what_the_plan_says(plan, foreseen):
    weekly = foreseen.ruler.weekly_sum(foreseen.loops[0].demand_g)
    planned = np.asarray([week.loops[0].demand_g for week in plan.weeks]).T
    assert planned.max() > 0
    # Growth is kept in single precision by the forecast.
    assert weekly == pytest.approx(planned, rel=1e-5, abs=1e-6)


def test_that_no_day_has_more_plants_than_places(plan, adopted, foreseen):
    """Counted batch by batch and day by day from the forecast, without the plan's own rows."""
    table, days = foreseen.batches, foreseen.ruler.days
    for ground in plan.model.grounds:
        held = np.zeros(days + 400, dtype=int)
        for row, batch in enumerate(adopted.batches):
            if batch.bed in ground.beds:
                start, end = table.phase_days(row, Phase.BED)
                held[max(start, 0) : max(end, 0)] += batch.plants
        assert 0 < held.max() <= ground.places


def test_that_no_day_has_more_seedlings_than_cells(plan, adopted, foreseen):
    table = foreseen.batches
    held = np.zeros(foreseen.ruler.days + 400, dtype=int)
    for row in range(len(adopted.batches)):
        start, end = table.phase_days(row, Phase.NURSERY)
        held[max(start, 0) : max(end, 0)] += table.seeds[row]
    assert 0 < held.max() <= plan.model.nurseries[0].cells


def test_that_every_batch_of_the_plan_finds_its_places(plan, season, adopted, means):
    assert proposal(plan, season, means.forecaster).refusals == ()
    assert means.faults(adopted) == ()


def test_that_what_is_locked_or_sown_before_stays_and_is_counted(plan, season, adopted):
    kept = {batch.code: batch for batch in adopted.batches}
    for batch in season.batches:
        if batch.code != "LTB-OPEN":
            assert kept[batch.code] == batch
    butterhead = plan.model.lines[0]
    assert butterhead.fixed.sum() > 0


def test_that_the_fullest_day_of_a_span_is_what_the_days_say():
    """Random stays, counted by day: the most in any span is the most on any of its days."""
    random = np.random.default_rng(5)
    for _ in range(30):
        come = random.integers(0, 60, size=12)
        leave = come + random.integers(1, 25, size=12)
        fixed_come, fixed_leave = 10, 30
        held = np.zeros(100, dtype=np.int64)
        held[fixed_come:fixed_leave] = 3
        spans = spans_of(come, leave, held=held, places=50)
        amount = random.integers(1, 9, size=12)
        by_day = held.copy()
        for start, end, count in zip(come, leave, amount, strict=True):
            by_day[start:end] += count
        left = spans.free.copy()
        for first, last, count in zip(spans.first, spans.last, amount, strict=True):
            left[first:last] -= count
        assert left.min() == 50 - by_day.max()
