"""Batches sown again, moved together and parted are one set of changes, or one refusal."""

from datetime import timedelta

import pytest

from planner.actions.batches import split_batch
from planner.bootstrap import Means
from planner.farm.changes import Change, ChangeSet, applied
from planner.farm.farm import by_id
from planner.planning.gathered import folded, moved_together, parted, sown_again, weeks_spanned
from planner.planning.placement import Refusal
from planner.shipped import shipped_path


@pytest.fixture(scope="module")
def means():
    return Means()


@pytest.fixture(scope="module")
def farm(means):
    return means.read(shipped_path("sample_data", "backyard.toml")).farm


def after(farm, changes):
    return applied(farm, ChangeSet(title="", changes=tuple(changes)))


def test_that_a_succession_sown_again_keeps_its_rhythm_and_takes_free_codes(means, farm):
    few = farm.batches[:3]
    settled = sown_again(farm, few, 70, means.forecaster)
    new = after(farm, settled.changes).batches[len(farm.batches) :]
    assert [each.sow_on for each in new] == [each.sow_on + timedelta(days=70) for each in few]
    assert [each.plants for each in new] == [each.plants for each in few]
    assert len({each.code for each in (*farm.batches, *new)}) == len(farm.batches) + 3


def test_that_moving_together_moves_all_by_the_same_days(means, farm):
    few = [batch for batch in farm.batches if not batch.locked][-3:]
    found = moved_together(farm, few, 7, means.forecaster)
    assert not isinstance(found, Refusal)
    moved = by_id(after(farm, found).batches)
    assert all(moved[each.id].sow_on == each.sow_on + timedelta(days=7) for each in few)


def test_that_a_split_later_leaves_plants_together_the_same(means, farm):
    batch = next(each for each in reversed(farm.batches) if each.plants > 3)
    split = split_batch(farm, batch.id, plants=2, code="PART")
    part = next(change.after for change in split.changes if getattr(change.after, "code", "") == "PART")
    found = parted(farm, split, part.id, 7, means.forecaster)
    assert not isinstance(found, Refusal)
    now = by_id(after(farm, found).batches)
    assert now[part.id].sow_on == batch.sow_on + timedelta(days=7)
    assert now[part.id].plants + now[batch.id].plants == batch.plants
    assert len({change.id for change in found}) == len(found)


def test_that_folding_keeps_the_first_before_and_the_last_after(farm):
    one, two = farm.batches[:2]
    assert folded((Change(after=one), Change(before=one))) == ()
    assert folded((Change(before=one, after=one), Change(after=two))) == (
        Change(before=one, after=one),
        Change(after=two),
    )


def test_that_a_succession_begins_anew_the_week_after_its_last_sowing(farm):
    first, *_ = farm.batches
    assert weeks_spanned(farm, [first.id]) == 1
    assert weeks_spanned(farm, []) == 1
