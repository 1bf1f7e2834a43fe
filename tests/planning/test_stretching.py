"""A window of picking is stretched as far as the places allow, and no further."""

import dataclasses

import pytest

from planner.farm.changes import ChangeSet, applied
from planner.farm.crops import Phase
from planner.farm.species import HarvestKind
from planner.forecast.checks import all_faults
from planner.planning.placement import Refusal, RefusalKind
from planner.planning.stretching import Stretcher
from planner.shipped import shipped_path


@pytest.fixture(scope="module")
def kitchen(means):
    """A farm with a climate, in whose beds one batch follows the other."""
    return means.read(shipped_path("sample_data", "school-kitchen.toml")).farm


def of_kind(farm, means, *kinds):
    return [batch for batch in farm.batches if means.catalogue.crops[batch.crop].harvest in kinds]


def bed_days(farm, means, batch):
    table = means.forecaster.days(farm).batches
    return table.phase_days(table.row_of[batch.id], Phase.BED)


def stretches(farm, means, batch):
    """Return the days by which a batch can be picked longer, one after the other, and the first refusal."""
    stretcher = Stretcher(farm, means.forecaster, batch.id)
    for days in range(1, 400):
        found = stretcher.stretch(days)
        if isinstance(found, Refusal):
            return days - 1, found
    return 399, None


def test_that_a_longer_window_moves_the_end_of_the_batch_by_as_many_days(farm, means):
    batch = next(
        each
        for each in of_kind(farm, means, HarvestKind.CUT, HarvestKind.PICKING)
        if stretches(farm, means, each)[0] >= 3
    )
    changes = Stretcher(farm, means.forecaster, batch.id).stretch(3)
    after = applied(farm, ChangeSet(title="try", changes=changes))
    start, end = bed_days(farm, means, batch)
    assert bed_days(after, means, batch) == (start, end + 3)
    assert all_faults(after, means.forecaster) == ()


def test_that_a_window_ends_where_another_batch_is_due_and_the_refusal_names_it(kitchen, means):
    found = [stretches(kitchen, means, each) for each in kitchen.batches if not each.locked]
    needed = [(days, no) for days, no in found if no is not None and no.kind is RefusalKind.NEEDED_NEXT]
    assert needed
    codes = {batch.code for batch in kitchen.batches}
    for _, refusal in needed:
        assert refusal.blocking
        assert set(refusal.blocking) <= codes
        assert refusal.from_on is not None


def test_that_no_stretch_that_is_allowed_holds_a_place_twice(kitchen, means):
    batches = of_kind(kitchen, means, HarvestKind.CUT, HarvestKind.PICKING)
    longer_by = {batch: stretches(kitchen, means, batch) for batch in batches if not batch.locked}
    assert any(days for days, _ in longer_by.values())
    for batch, (days, refusal) in longer_by.items():
        if not days:
            continue
        changes = Stretcher(kitchen, means.forecaster, batch.id).stretch(days)
        after = applied(kitchen, ChangeSet(title="try", changes=changes))
        assert all_faults(after, means.forecaster) == ()
        longer = dataclasses.replace(changes[0].after, picking_days=changes[0].after.picking_days + 1)
        too_long = applied(
            kitchen, ChangeSet(title="try", changes=(dataclasses.replace(changes[0], after=longer),))
        )
        if refusal is not None and refusal.kind is RefusalKind.NEEDED_NEXT:
            assert all_faults(too_long, means.forecaster)


def test_that_a_crop_that_is_cut_once_has_no_window(farm, means):
    batch = of_kind(farm, means, HarvestKind.SINGLE)[0]
    refusal = Stretcher(farm, means.forecaster, batch.id).stretch(7)
    assert isinstance(refusal, Refusal)
    assert refusal.kind is RefusalKind.PICKED_ONCE


def test_that_a_locked_batch_keeps_its_window(farm, means):
    batch = of_kind(farm, means, HarvestKind.CUT, HarvestKind.PICKING)[0]
    locked = dataclasses.replace(batch, locked=True)
    farm = dataclasses.replace(
        farm, batches=tuple(locked if each.id == batch.id else each for each in farm.batches)
    )
    refusal = Stretcher(farm, means.forecaster, batch.id).stretch(1)
    assert isinstance(refusal, Refusal)
    assert refusal.kind is RefusalKind.LOCKED


@pytest.mark.parametrize("longest", [True, False])
def test_that_a_window_outside_its_limits_is_refused_with_both(farm, means, longest):
    batch = of_kind(farm, means, HarvestKind.CUT, HarvestKind.PICKING)[0]
    stretcher = Stretcher(farm, means.forecaster, batch.id)
    days = (401 if longest else -1) - stretcher.window_days
    refusal = stretcher.stretch(days)
    assert isinstance(refusal, Refusal)
    assert refusal.kind is RefusalKind.NO_SUCH_WINDOW
    assert (refusal.needed, refusal.free) == (stretcher.window_days + days, 400)
