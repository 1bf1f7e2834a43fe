"""Two desks on one farm: what each does goes together, and where it cannot, the later one is told both."""

import dataclasses

import pytest

from planner.actions import plan
from planner.actions.sharing import ELSEWHERE
from planner.farm.changes import Change
from planner.farm.faults import FaultKind
from planner.farm.ids import id_from
from planner.farm.merging import ClashError, differences, rebased
from planner.store.store import FarmStore
from tests.actions.desk_of import in_file, session_over
from tests.store.sample import FIRST, NOON, SECOND, SITE, altered, batch, change_set, sample_farm


@pytest.fixture
def desks(tmp_path):
    """Two sessions on one file, each with a connection of its own."""
    path = tmp_path / "both.raftweek"
    one = in_file(path)
    with FarmStore.open(path) as store:
        yield one, session_over(store)
    one._store.close()


class Ear:
    def __init__(self, session):
        self.notices = []
        session.subscribe(self.hear)

    def hear(self, notice):
        self.notices.append(notice)


def test_that_a_desk_hears_what_the_other_did(desks):
    one, other = desks
    ear = Ear(other)
    assert other.catch_up() is None
    one.act(plan.rename_farm(one.farm, "Ours"))
    notice = other.catch_up()
    assert (notice.initiator, notice.change_set.title) == (ELSEWHERE, "Rename the farm to Ours")
    assert ear.notices == [notice]
    assert other.farm == one.farm
    assert other.history == one.history
    assert other.catch_up() is None


def test_that_acts_on_different_things_go_together(desks):
    one, other = desks
    one.act(change_set(altered(FIRST, notes="from one")))
    other.act(change_set(altered(SECOND, notes="from other")))
    one.catch_up()
    assert one.farm == other.farm
    assert [each.notes for each in one.farm.batches[:2]] == ["from one", "from other"]


def test_that_acts_on_different_fields_of_one_thing_go_together(desks):
    one, other = desks
    one.act(change_set(altered(FIRST, notes="from one")))
    other.act(change_set(altered(FIRST, locked=True)))
    first = other.farm.batches[0]
    assert (first.notes, first.locked) == ("from one", True)


def test_that_the_later_of_two_is_told_both_values_and_may_put_hers_in(desks):
    one, other = desks
    one.act(change_set(altered(FIRST, notes="from one")))
    with pytest.raises(ClashError) as caught:
        other.act(change_set(altered(FIRST, notes="from other")))
    (fault,) = caught.value.faults
    assert fault.kind is FaultKind.CHANGED_MEANWHILE
    assert (fault.field, fault.value, fault.limit) == ("notes", '"from other"', '"from one"')
    assert other.farm.batches[0].notes == "from one"
    other.act(caught.value.mine)
    assert other.farm.batches[0].notes == "from other"
    other.undo()
    assert other.farm.batches[0].notes == "from one"


def test_that_the_same_change_twice_is_no_clash(desks):
    one, other = desks
    one.act(change_set(altered(FIRST, notes="same")))
    assert other.act(change_set(altered(FIRST, notes="same"))).change_set.changes == ()


def test_that_what_was_altered_is_not_removed_unseen(desks):
    one, other = desks
    extra = batch("extra")
    one.act(change_set(Change(after=extra)))
    other.catch_up()
    one.act(change_set(Change(before=extra, after=dataclasses.replace(extra, notes="keep me"))))
    with pytest.raises(ClashError, match="keep me"):
        other.act(change_set(Change(before=extra)))
    assert extra.id in {each.id for each in other.farm.batches}


def test_that_altering_what_was_removed_is_told_and_can_be_put_back(desks):
    one, other = desks
    extra = batch("extra")
    one.act(change_set(Change(after=extra)))
    other.catch_up()
    one.act(change_set(Change(before=extra)))
    wanted = dataclasses.replace(extra, notes="still wanted")
    with pytest.raises(ClashError, match="removed it meanwhile") as caught:
        other.act(change_set(Change(before=extra, after=wanted)))
    other.act(caught.value.mine)
    assert wanted in other.farm.batches


def test_that_removing_what_is_gone_already_changes_nothing(desks):
    one, other = desks
    extra = batch("extra")
    one.act(change_set(Change(after=extra)))
    other.catch_up()
    one.act(change_set(Change(before=extra)))
    assert other.act(change_set(Change(before=extra))).change_set.changes == ()


def test_that_differences_lead_from_one_farm_to_the_other():
    before = sample_farm()
    after = dataclasses.replace(
        before,
        settings=dataclasses.replace(before.settings, name="Other"),
        sites=(dataclasses.replace(SITE, name="Far yard"),),
        batches=before.batches[1:],
    )
    found = differences(before, after, "news")
    assert found.words == {"settings", "site", "batch"}
    assert differences(after, after, "none").changes == ()


def test_that_an_act_needs_no_bringing_up_where_nobody_acted():
    farm = sample_farm()
    wanted = change_set(
        altered(FIRST, notes="x"), Change(after=dataclasses.replace(FIRST, id=id_from("n"), code="N"))
    )
    assert rebased(farm, wanted) == wanted


def test_that_who_did_an_act_is_kept(tmp_path):
    path = tmp_path / "named.raftweek"
    in_file(path)._store.close()
    with FarmStore.open(path) as store:
        session = session_over(store, who="Ana")
        session.act(change_set(altered(FIRST, notes="x")))
        assert [line.who for line in session.history] == ["Ana"]
        assert [entry.who for entry in store.acts()] == ["Ana"]
        assert store.acts()[0].at > NOON
