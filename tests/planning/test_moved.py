"""Outcomes, lessons and what moved, on a farm with a log."""

import dataclasses
from datetime import timedelta

import pytest

from planner.bootstrap import Means
from planner.farm.changes import Change, ChangeSet, applied
from planner.farm.crops import Stage
from planner.farm.farm import OwnEntry, Shelf
from planner.farm.ids import id_from
from planner.farm.log import Happening, LogEntry, Reason, Unit
from planner.planning.dating import Dater
from planner.planning.late import carried_over
from planner.planning.learning import adopted, learned, outcomes
from planner.planning.moved import Cause, difference, moved_because


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


def test_that_a_stage_that_is_over_but_was_not_logged_does_not_count_as_lasting(means, farm):
    batch = farm.batches[0]
    lengths = Dater(means.forecaster, farm).lengths(batch)
    moved = entry(batch, Happening.MOVED, lengths[2] + 1, amount=3.0, unit=Unit.PLANTS)
    picked = entry(batch, Happening.PICKED, lengths[3] + 4, amount=3.0, unit=Unit.HEADS)
    logged = dataclasses.replace(farm, log_entries=(moved, picked))
    today = picked.on + timedelta(days=2)
    bed, picking = outcomes(logged, Dater(means.forecaster, farm).lengths, today)
    assert (bed.stage, bed.actual_days) == (Stage.BED, (picked.on - moved.on).days)
    assert (picking.stage, picking.actual_days, picking.so_far_days) == (Stage.PICKING, None, 2)


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


def done(batch, *kinds):
    amounts = {Happening.SOWN: Unit.SEEDS, Happening.MOVED: Unit.PLANTS, Happening.PICKED: Unit.HEADS}
    return tuple(entry(batch, what, 0, amount=float(batch.plants), unit=amounts[what]) for what in kinds)


@pytest.mark.parametrize(("what", "stage"), [(Happening.MOVED, 2), (Happening.PICKED, 3)])
def test_that_moves_and_picks_are_carried_over_with_what_they_cost(means, farm, what, stage):
    batch = next(b for b in farm.batches if means.catalogue.crops[b.crop].harvest.value == "single")
    before = {Happening.MOVED: (Happening.SOWN,), Happening.PICKED: (Happening.SOWN, Happening.MOVED)}[what]
    lengths = Dater(means.forecaster, farm).lengths(batch)
    due = batch.sow_on + timedelta(days=lengths[stage])
    today = due + timedelta(days=9)
    steps = tuple(
        dataclasses.replace(one, on=batch.sow_on + timedelta(days=days))
        for one, days in zip(done(batch, *before), (0, lengths[2]), strict=False)
    )
    logged = dataclasses.replace(farm, batches=(batch,), placements=(), log_entries=steps)
    (mine,) = carried_over(logged, means.forecaster, today)
    assert (mine.what, mine.due_on, mine.late_days) == (what, due, 9)
    (moved,) = mine.effect.batches
    assert (moved.new_on - moved.old_on).days == 9
    assert sum(shift.plants for shift in mine.short) < 0
    finished = dataclasses.replace(logged, log_entries=(*steps, *done(batch, what)))
    assert all(one.what is not what for one in carried_over(finished, means.forecaster, today))


def test_that_an_entry_that_says_not_done_leaves_the_task_late(means, farm):
    batch = farm.batches[0]
    said = entry(batch, Happening.NOT_DONE, 0, reason=Reason.LABOUR)
    logged = dataclasses.replace(farm, batches=(batch,), placements=(), log_entries=(said,))
    (mine,) = carried_over(logged, means.forecaster, batch.sow_on + timedelta(days=6))
    assert (mine.what, mine.late_days) == (Happening.SOWN, 6)


def changed(means, farm, **fields):
    batch = farm.batches[0]
    after = dataclasses.replace(batch, **fields)
    act = ChangeSet(title="", changes=(Change(before=batch, after=after),))
    return act, means.forecaster.preview(farm), means.forecaster.preview(applied(farm, act))


def test_that_a_changed_duration_names_every_moved_batch_with_both_days(means, farm):
    act, before, after = changed(means, farm, bed_days=60.0)
    (told,) = moved_because(before, after, act)
    assert (told.cause, told.by) == (Cause.ALTERED, ("bed_days",))
    assert told.moved.batch == farm.batches[0].id
    assert told.moved.new_on != told.moved.old_on


def test_that_an_own_figure_moves_all_its_batches_and_is_named(means, farm):
    crop = farm.batches[0].crop
    own = OwnEntry(
        id=id_from("own"), shelf=Shelf.CROP, key=crop, like=crop, name="Mine", values=(("bed_days", 55.0),)
    )
    act = ChangeSet(title="", changes=(Change(after=own),))
    before = means.forecaster.preview(farm)
    told = moved_because(before, means.forecaster.preview(applied(farm, act)), act)
    open_ended = {b.id for b in farm.batches if b.crop == crop and b.bed_days is None}
    assert {one.moved.batch for one in told} == open_ended
    assert {one.cause for one in told} == {Cause.FIGURES}
    means.forecaster.preview(farm)


def test_that_a_logged_entry_is_named_as_the_cause(means, farm):
    batch = farm.batches[0]
    said = entry(batch, Happening.SOWN, 3)
    after = dataclasses.replace(batch, sow_on=said.on)
    act = ChangeSet(title="", changes=(Change(after=said), Change(before=batch, after=after)))
    before = means.forecaster.preview(farm)
    (told,) = moved_because(before, means.forecaster.preview(applied(farm, act)), act)
    assert (told.cause, told.by) == (Cause.LOGGED, (said.code,))
    gone = ChangeSet(title="", changes=(Change(before=batch),))
    bare = dataclasses.replace(farm, placements=())
    (told,) = moved_because(
        means.forecaster.preview(bare), means.forecaster.preview(applied(bare, gone)), gone
    )
    assert (told.cause, told.moved.new_on) == (Cause.REMOVED, None)


def test_that_another_order_and_an_earlier_begin_of_the_plan_move_no_batch(means, farm):
    """Days are held against days of the calendar, and batches against themselves, wherever they stand."""
    begin = dataclasses.replace(farm.settings, plan_from=farm.settings.plan_from - timedelta(days=14))
    gone = farm.batches[0]
    other = dataclasses.replace(farm, settings=begin, batches=farm.batches[:0:-1], placements=())
    before = means.forecaster.preview(dataclasses.replace(farm, placements=()))
    after = means.forecaster.preview(other)
    (told,) = moved_because(before, after, ChangeSet(title="", changes=(Change(before=gone),)))
    assert (told.moved.batch, told.moved.new_on) == (gone.id, None)
    (back,) = moved_because(after, before, ChangeSet(title="", changes=(Change(after=gone),)))
    assert (back.cause, back.moved.old_on, back.moved.new_on) == (Cause.ADDED, None, told.moved.old_on)


def test_that_nothing_moves_between_a_forecast_and_itself(means, farm):
    found = means.forecaster.preview(farm)
    assert difference(found, found).batches == ()
    assert difference(found, found).weeks == ()
