"""Two logs of one farm come together: common entries once, new ones with their effects, clashes told."""

import dataclasses
from datetime import timedelta
from functools import partial

import pytest

from planner.actions import records
from planner.actions.log_merging import LeftOut, merge_log
from planner.bootstrap import Means
from planner.farm.changes import applied
from planner.farm.fish import FishEventKind
from planner.farm.log import Happening, Unit, standing
from planner.planning.dating import Dater


@pytest.fixture(scope="module")
def means():
    return Means()


@pytest.fixture
def dating(means):
    return partial(Dater, means.forecaster)


@pytest.fixture
def bare(means, root):
    return means.read(root / "sample_data" / "backyard.toml").farm


def logged(farm, dating, numbers, grams=100.0):
    """The farm with feed logged on some days, the codes by day."""
    group = farm.fish_groups[0]
    for number in numbers:
        on = group.stocked_on + timedelta(days=number)
        given = {"group": group.id, "amount": grams, "unit": Unit.G, "code": f"F-{number}"}
        entry = records.new_entry(what=Happening.FEED_GIVEN, on=on, **given)
        farm = applied(farm, records.log(farm, entry, dating(farm)))
    return farm


def test_that_ten_common_and_five_new_entries_make_fifteen(bare, dating):
    mine = logged(bare, dating, range(10))
    theirs = logged(bare, dating, range(15))
    found = merge_log(mine, theirs, dating)
    assert (found.common, len(found.taken), found.left_out) == (10, 5, ())
    after = applied(mine, found.act)
    assert [entry.code for entry in after.log_entries] == [f"F-{number}" for number in range(15)]
    fed = [event for event in after.fish_events if event.kind is FishEventKind.FEED_GIVEN]
    assert len(fed) == 15
    again = merge_log(after, theirs, dating)
    assert (again.common, again.taken, again.act.changes) == (15, (), ())


def test_that_five_differing_entries_are_told_and_ours_stand(bare, dating):
    mine = logged(logged(bare, dating, range(10)), dating, range(10, 15), grams=80.0)
    theirs = logged(logged(bare, dating, range(10)), dating, range(10, 15), grams=120.0)
    found = merge_log(mine, theirs, dating)
    assert (found.common, found.taken) == (10, ())
    assert [(one.why, one.entry.amount, one.ours.amount) for one in found.left_out] == [
        (LeftOut.DIFFERS, 120.0, 80.0)
    ] * 5
    taken = merge_log(mine, theirs, dating, theirs_stand=True)
    after = applied(mine, taken.act)
    assert len(after.log_entries) == 20
    assert [entry.amount for entry in standing(after.log_entries)] == [100.0] * 10 + [120.0] * 5


def test_that_a_correction_comes_in_as_one_and_two_corrections_are_told(bare, dating):
    mine = logged(bare, dating, range(2))
    wrong = mine.log_entries[0]
    right = dataclasses.replace(
        records.new_entry(what=wrong.what, on=wrong.on, code="R", group=wrong.group), amount=90.0, unit=Unit.G
    )
    theirs = applied(mine, records.correct(mine, wrong.id, right, dating(mine)))
    after = applied(mine, merge_log(mine, theirs, dating).act)
    assert [entry.amount for entry in standing(after.log_entries)] == [100.0, 90.0]
    other = dataclasses.replace(right, code="S", id=records.new_entry(what=right.what, on=right.on).id)
    ours = applied(mine, records.correct(mine, wrong.id, other, dating(mine)))
    (left,) = merge_log(ours, theirs, dating).left_out
    assert left.why is LeftOut.CORRECTED_TWICE


def test_that_an_entry_about_what_is_not_here_is_left_out_by_name(bare, dating):
    theirs = logged(bare, dating, range(1))
    (group,) = bare.fish_groups
    renamed = dataclasses.replace(bare, fish_groups=(dataclasses.replace(group, name="Others"),))
    (left,) = merge_log(renamed, theirs, dating).left_out
    assert left.why is LeftOut.UNKNOWN
