"""Outcomes, lessons and what moved, on a farm with a log."""

import dataclasses
from datetime import timedelta

import pytest

from planner.bootstrap import Means
from planner.farm.ids import id_from
from planner.farm.log import Happening, LogEntry, Reason, Unit
from planner.planning.dating import Dater
from planner.planning.learning import adopted, learned, outcomes
from planner.planning.moved import carried_over, difference


@pytest.fixture(scope="module")
def means():
    return Means()


@pytest.fixture
def farm(means, root):
    return means.read(root / "sample_data" / "backyard.toml").farm


def entry(batch, what, day, **given):
    on = batch.sow_on + timedelta(days=day)
    code = f"{batch.code} {what.value}"
    return LogEntry(id=id_from("log entry", code), code=code, what=what, on=on, batch=batch.id, **given)


def test_that_planned_and_actual_days_stand_side_by_side(means, farm):
    batch = farm.batches[0]
    lengths = Dater(means.forecaster, farm).lengths(batch)
    up = entry(batch, Happening.GERMINATED, lengths[0] + 2, amount=3.0, unit=Unit.PLANTS, reason=Reason.COLD)
    logged = dataclasses.replace(farm, log_entries=(up,))
    today = up.on + timedelta(days=5)
    first, second = outcomes(logged, Dater(means.forecaster, farm).lengths, today)
    assert (first.difference_days, first.reason) == (2, Reason.COLD)
    assert (second.actual_days, second.so_far_days) == (None, 5)


def test_that_a_lesson_is_offered_and_taken_up_by_batches_still_to_be_sown(means, farm):
    batch = farm.batches[0]
    lengths = Dater(means.forecaster, farm).lengths(batch)
    up = entry(batch, Happening.GERMINATED, lengths[0] + 1, amount=3.0, unit=Unit.PLANTS)
    twin = dataclasses.replace(
        batch, id=id_from("twin"), code="TWIN", sow_on=batch.sow_on + timedelta(days=1)
    )
    logged = dataclasses.replace(farm, log_entries=(up,), batches=(*farm.batches, twin))
    found = outcomes(logged, Dater(means.forecaster, farm).lengths, up.on)
    (lesson,) = [one for one in learned(logged, found, means.catalogue) if one.field == "germination_days"]
    assert lesson.estimate.n == 1
    assert lesson.estimate.value > lesson.estimate.book
    pairs = adopted(logged, lesson, batch.sow_on)
    assert twin in [before for before, _after in pairs]
    assert all(before.sow_on > batch.sow_on for before, _after in pairs)
    locked = dataclasses.replace(logged, batches=(dataclasses.replace(twin, locked=True),))
    assert adopted(locked, lesson, batch.sow_on) == ()


def test_that_an_overdue_sowing_names_the_weeks_that_fall_short(means, farm):
    batch, note = farm.batches[0], farm.batches[0]
    seen = LogEntry(id=id_from("n"), code="n", what=Happening.NOTE, on=note.sow_on)
    logged = dataclasses.replace(farm, log_entries=(seen,))
    late = carried_over(logged, means.forecaster, batch.sow_on + timedelta(days=14))
    (mine,) = [one for one in late if one.batch == batch.id]
    assert mine.late_days == 14
    (moved,) = mine.effect.batches
    assert moved.new_on > moved.old_on
    weeks = mine.effect.weeks
    assert any(week.plants < 0 for week in weeks)
    assert all(week.crop == batch.crop for week in weeks)
    assert carried_over(farm, means.forecaster, batch.sow_on + timedelta(days=14)) == ()


def test_that_nothing_moves_between_a_forecast_and_itself(means, farm):
    found = means.forecaster.preview(farm)
    assert difference(found, found).batches == ()
    assert difference(found, found).weeks == ()
