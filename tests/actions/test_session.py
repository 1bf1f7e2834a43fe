"""Acts are checked, kept and told in that order; what is refused has changed nothing."""

import dataclasses
import gc

import pytest

from planner.actions import batches, plan
from planner.actions.memory import MemoryKeeper
from planner.farm.changes import Change
from planner.farm.crops import Phase
from planner.farm.faults import FarmFaultError, FaultKind
from planner.farm.fish import FishEventKind
from planner.farm.ids import id_from
from planner.farm.merging import ClashError
from planner.farm.meters import MeterKind
from planner.store.acts import ActKind
from planner.store.errors import ChangedElsewhereError, StoreError
from planner.store.store import FarmStore
from tests.actions.desk_of import Book, Clock, in_file, in_memory, session_over
from tests.store.sample import (
    DOSE,
    EVENT,
    FIRST,
    FIRST_PLACES,
    GROUP,
    IN_TRAYS,
    LOT,
    METER,
    NOON,
    NURSERY,
    OWN,
    RAFTS,
    SECOND,
    SECOND_PLACES,
    SITE,
    START,
    TESTED,
    THIRD,
    altered,
    batch,
    change_set,
    holds_of,
    placement,
    sample_farm,
)


class Listener:
    def __init__(self):
        self.notices = []

    def hear(self, notice):
        self.notices.append(notice)


class BrokenKeeper(MemoryKeeper):
    def apply(self, *args, **kwargs):
        raise StoreError("The disk is gone.")


@pytest.fixture(params=["file", "memory"])
def session(request, tmp_path):
    if request.param == "memory":
        yield in_memory()
        return
    made = in_file(tmp_path / "sample.raftweek")
    yield made
    made._store.close()


def only_fault(session, *changes):
    """Return the one fault an act is refused for, having seen that nothing changed."""
    before, kept, listener = session.farm, session._store.load(), Listener()
    session.subscribe(listener.hear)
    with pytest.raises(FarmFaultError) as caught:
        session.act(change_set(*changes))
    assert session.farm is before
    assert session._store.load() == kept
    assert session.undo_title is None
    assert listener.notices == []
    (fault,) = caught.value.faults
    return fault


def test_that_an_act_is_kept_shown_and_told_once(session):
    listener = Listener()
    session.subscribe(listener.hear)
    notice = session.act(plan.rename_farm(session.farm, "New name"), initiator="form")
    assert session.farm.settings.name == "New name"
    assert session._store.load() == session.farm
    assert listener.notices == [notice]
    assert (notice.initiator, notice.kind) == ("form", ActKind.DO)


def test_that_undo_and_redo_go_through_all_acts(session):
    start = session.farm
    session.act(plan.rename_farm(session.farm, "One"))
    session.act(batches.lock_batch(session.farm, FIRST.id, locked=True))
    end = session.farm
    assert session.undo_title == f"Lock {FIRST.code}"
    assert session.undo().kind is ActKind.UNDO
    assert session.redo_title == f"Lock {FIRST.code}"
    session.undo()
    assert session.farm == start
    assert session._store.load() == start
    assert session.undo_title is None
    assert session.undo() is None
    session.redo()
    session.redo()
    assert session.farm == end
    assert session.redo() is None


def test_that_a_new_act_after_undo_drops_what_was_undone(session):
    session.act(plan.rename_farm(session.farm, "One"))
    session.undo()
    session.act(plan.rename_farm(session.farm, "Two"))
    assert session.redo_title is None
    assert [line.title for line in session.history] == ["Rename the farm to Two"]
    assert [line.title for line in session.history] == [e.title for e in session._store.acts()]


def test_that_history_lists_the_newest_act_first_with_its_moment(session):
    session.act(plan.rename_farm(session.farm, "One"))
    session.act(plan.rename_farm(session.farm, "Two"))
    session.undo()
    newest, older = session.history
    assert (newest.title, newest.done) == ("Rename the farm to Two", False)
    assert (older.title, older.done) == ("Rename the farm to One", True)
    assert NOON < older.at < newest.at


def test_that_undo_works_after_the_farm_was_closed_and_opened(tmp_path):
    path = tmp_path / "sample.raftweek"
    first = in_file(path)
    start = first.farm
    first.act(batches.remove_batch(first.farm, FIRST.id))
    first.act(plan.rename_farm(first.farm, "Two"))
    first._store.close()
    with FarmStore.open(path) as store:
        again = session_over(store)
        assert again.path == path
        assert again.undo_title == "Rename the farm to Two"
        again.undo()
        again.undo()
        assert again.farm == start
        again.redo()
        assert FIRST.id not in {one.id for one in again.farm.batches}


def test_that_neither_an_act_nor_undo_overwrites_what_somebody_else_did(tmp_path):
    path = tmp_path / "shared.raftweek"
    one = in_file(path)
    one.act(plan.rename_farm(one.farm, "Ours"))
    with FarmStore.open(path) as store:
        other = session_over(store)
        other.undo()
        other.act(batches.remove_batch(other.farm, FIRST.id))
        before = one.farm
        with pytest.raises(ChangedElsewhereError, match="somebody else"):
            one.undo()
        assert one.farm is before
        with pytest.raises(ClashError) as caught:
            one.act(plan.rename_farm(before, "Mine"))
        (fault,) = caught.value.faults
        assert (fault.value, fault.limit) == ('"Mine"', f'"{sample_farm().settings.name}"')
        assert one.farm == other.farm == store.load()
        assert one.undo_title == other.undo_title
    one._store.close()


def test_that_an_act_that_changes_nothing_is_not_kept(session):
    notice = session.act(batches.change_batch(session.farm, FIRST))
    assert notice.change_set.changes == ()
    assert session.undo_title is None


def test_that_a_thing_that_is_there_already_is_not_put_in_twice(session):
    assert session.act(change_set(Change(after=FIRST))).change_set.changes == ()
    assert session.farm == sample_farm()


def test_that_whole_numbers_become_the_numbers_they_are_kept_as(session):
    session.act(change_set(altered(SITE, altitude_m=12, latitude_deg=-0.0)))
    assert repr(session._store.load()) == repr(session.farm)
    assert repr(session.farm.sites[0].altitude_m) == "12.0"


def test_that_nothing_changes_when_the_store_fails():
    session = session_over(BrokenKeeper(sample_farm()))
    listener = Listener()
    session.subscribe(listener.hear)
    before = session.farm
    with pytest.raises(StoreError, match="disk is gone"):
        session.act(plan.rename_farm(session.farm, "New"))
    assert session.farm is before
    assert session.undo_title is None
    assert listener.notices == []


def test_that_a_preview_is_neither_checked_nor_kept(session):
    before = session.farm
    shown = session.preview(change_set(altered(SECOND_PLACES, first=1)))
    assert shown.placements[1].first == 1
    assert session.farm is before


def test_that_a_double_booking_is_told_with_both_batches_and_where_and_when(session):
    fault = only_fault(session, altered(SECOND_PLACES, first=11))
    assert fault.kind is FaultKind.HELD_PLACE
    sentence = fault.sentence()
    for part in (
        SECOND.code,
        FIRST.code,
        "Rafts",
        "raft 1",
        "places 11 to 12",
        "2026-03-23",
        "2026-04-22",
    ):
        assert part in sentence


def test_that_the_batch_that_is_moved_is_the_one_that_is_told(session):
    fault = only_fault(session, altered(FIRST_PLACES, first=5))
    assert fault.where == f'batch "{FIRST.code}"'
    assert f'held by "{SECOND.code}"' in fault.message


def test_that_moving_in_time_onto_another_batch_is_refused(session):
    move = batches.move_batch(session.farm, None, THIRD.id, by_days=-50)
    fault = only_fault(session, *move.changes)
    assert fault.kind is FaultKind.HELD_PLACE


@pytest.mark.parametrize(
    ("change", "kind", "words"),
    [
        (altered(FIRST, plants=0), FaultKind.OUT_OF_LIMITS, "plants is 0"),
        (altered(FIRST, code=SECOND.code), FaultKind.DUPLICATE, "used by another batch"),
        (altered(FIRST, crop="moonflower"), FaultKind.UNKNOWN_NAME, "no crop of the catalogue"),
        (altered(FIRST, bed=id_from("nowhere")), FaultKind.UNKNOWN_NAME, "bed that does not exist"),
        (altered(FIRST, plants=11), FaultKind.OUT_OF_LIMITS, "12 places are held in beds for 11"),
        (altered(FIRST_PLACES, unit=4), FaultKind.NO_SUCH_PLACE, "has 3 rafts"),
        (altered(IN_TRAYS, bed=RAFTS.id, unit=3), FaultKind.NOT_SUITED, "nursery phase"),
        (altered(RAFTS, units=1, rows=5), FaultKind.NO_SUCH_PLACE, "places 1 to 20"),
        (altered(OWN, like="moonflower"), FaultKind.UNKNOWN_NAME, "no crop"),
        (altered(OWN, like=OWN.key), FaultKind.UNKNOWN_NAME, "no crop"),
        (altered(OWN, values=(("x", float("nan")),)), FaultKind.WRONG_TYPE, "must be a number"),
        (altered(FIRST, notes="\ud800"), FaultKind.WRONG_TYPE, "cannot be written"),
        (altered(EVENT, on=START.replace(year=2025)), FaultKind.WRONG_ORDER, "before the group was stocked"),
        (altered(GROUP, stocked_on=START.replace(year=2027)), FaultKind.WRONG_ORDER, "before the group"),
        (
            altered(EVENT, kind=FishEventKind.DEATHS, count=GROUP.count + 1),
            FaultKind.OUT_OF_LIMITS,
            f"the group then has {GROUP.count} at most",
        ),
        (altered(LOT, crop="okra"), FaultKind.NOT_SUITED, 'is seed of crop "okra"'),
        (altered(SITE, time_zone="Asia/Manilla"), FaultKind.UNKNOWN_NAME, 'Did you mean "Asia/Manila"?'),
        (altered(SITE, name="Yard\u202e"), FaultKind.WRONG_TYPE, "holds U+202E"),
        (altered(GROUP, feed="gravel"), FaultKind.UNKNOWN_NAME, "no feed of the catalogue"),
        (altered(DOSE, supplement="salt"), FaultKind.UNKNOWN_NAME, "no supplement"),
        (
            Change(before=dataclasses.replace(FIRST, notes="old")),
            FaultKind.CHANGED_MEANWHILE,
            "you want removed",
        ),
    ],
)
def test_that_what_would_not_be_sound_is_refused_in_words(change, kind, words):
    fault = only_fault(in_memory(), change)
    assert fault.kind is kind
    assert words in fault.sentence()


def test_that_nothing_goes_that_others_still_name():
    with pytest.raises(FarmFaultError) as caught:
        in_memory().act(change_set(Change(before=LOT)))
    assert [fault.where for fault in caught.value.faults] == [
        f'batch "{SECOND.code}"',
        f'log entry "{TESTED.code}"',
    ]
    assert all("seed lot that does not exist" in fault.message for fault in caught.value.faults)


def test_that_a_reading_is_made_with_a_meter_of_its_kind():
    fault = only_fault(in_memory(), altered(METER, kind=MeterKind.OXYGEN))
    assert fault.message == 'meter "Pen" measures oxygen, not ph.'
    assert only_fault(in_memory(), altered(METER, kind=MeterKind.TDS, factor=None)).field == "factor"


def test_that_an_own_entry_makes_its_key_known(session):
    session.act(change_set(altered(FIRST, crop=OWN.key)))
    fault = only_fault_after(session, Change(before=OWN))
    assert "no crop of the catalogue" in fault.message


def only_fault_after(session, *changes):
    before = session.farm
    with pytest.raises(FarmFaultError) as caught:
        session.act(change_set(*changes))
    assert session.farm is before
    return caught.value.faults[0]


def test_that_two_batches_can_swap_places_in_one_act(session):
    session.act(
        change_set(
            altered(FIRST_PLACES, first=SECOND_PLACES.first),
            altered(SECOND_PLACES, first=FIRST_PLACES.first),
        )
    )
    assert session._store.load() == session.farm
    assert set(session._store.held()) >= {
        hold for hold in holds_of(session.farm) if hold.placement in (FIRST_PLACES.id, SECOND_PLACES.id)
    }


def test_that_days_are_kept_for_batches_that_an_act_moves_without_touching_their_places(session):
    session.act(batches.move_batch(session.farm, None, FIRST.id, by_days=2))
    assert set(session._store.held()) >= {hold for hold in holds_of(session.farm) if hold.batch == FIRST.id}


def test_that_days_stay_kept_when_a_changed_run_holds_the_same_as_before(tmp_path):
    def same_days(farm):
        return tuple(
            dataclasses.replace(hold, from_on=START, until_on=START.replace(year=2027))
            for hold in holds_of(farm)
            if hold.batch != THIRD.id
        )

    farm = sample_farm()
    with FarmStore.create(tmp_path / "same.raftweek", farm, same_days(farm)) as store:
        session = session_over(store, holds=same_days)
        session.act(change_set(altered(FIRST_PLACES, phase=Phase.SPACING)))
        assert set(store.held()) == set(same_days(session.farm))


def test_that_what_clashed_before_can_be_mended_one_by_one(tmp_path):
    farm = sample_farm()
    other, another = batch("BAS-26W10-C", plants=1), batch("BAS-26W10-D", plants=1)
    farm = dataclasses.replace(
        farm,
        batches=(*farm.batches, other, another),
        placements=(*farm.placements, placement(other, count=1), placement(another, first=13, count=1)),
    )
    with FarmStore.create(tmp_path / "clashing.raftweek", farm) as store:
        session = session_over(store)
        session.act(plan.rename_farm(session.farm, "Still usable"))
        assert (
            only_fault_after(session, altered(placement(other, count=1), first=14)).kind
            is FaultKind.HELD_PLACE
        )
        for owner, first in ((other, 1), (another, 13)):
            run = next(p for p in session.farm.placements if p.batch == owner.id)
            session.act(change_set(altered(run, unit=2, first=first)))
        assert set(store.held()) == set(holds_of(session.farm))


def test_that_faults_of_the_whole_farm_are_asked_for_once_for_each_farm():
    asked = []

    def faults_of(farm):
        asked.append(farm)
        return ()

    from planner.actions.session import Session

    session = Session(
        MemoryKeeper(sample_farm()), Book(), holds_of=holds_of, faults_of=faults_of, now=Clock()
    )
    assert asked == []
    assert session.faults == session.faults == ()
    session.act(plan.rename_farm(session.farm, "New"))
    assert session.faults == ()
    assert [farm.settings.name for farm in asked] == ["Sample", "New"]


def test_that_the_catalogue_has_own_entries_laid_over_it_anew_only_when_they_change():
    laid = []

    def laid_over(book, own):
        laid.append(own)
        return (book, own)

    from planner.actions.session import Session

    session = Session(
        MemoryKeeper(sample_farm()),
        Book(),
        holds_of=holds_of,
        faults_of=lambda farm: (),
        now=Clock(),
        laid_over=laid_over,
    )
    assert session.catalogue is session.catalogue
    session.act(plan.rename_farm(session.farm, "New"))
    assert session.catalogue[1] == (OWN,)
    session.act(plan.remove_own_entry(session.farm, OWN.id))
    assert session.catalogue[1] == ()
    assert laid == [(OWN,), ()]


def test_that_a_listener_is_not_kept_alive(session):
    listener = Listener()
    heard = listener.notices
    session.subscribe(listener.hear)
    del listener
    gc.collect()
    session.act(plan.rename_farm(session.farm, "New"))
    assert heard == []


def test_that_a_listener_that_leaves_hears_no_more(session):
    listener = Listener()
    session.subscribe(listener.hear)
    session.unsubscribe(listener.hear)
    session.act(plan.rename_farm(session.farm, "New"))
    assert listener.notices == []


def test_that_all_hear_although_one_fails(session):
    def broken(notice):
        raise ZeroDivisionError

    listener = Listener()
    session.subscribe(broken)
    session.subscribe(listener.hear)
    with pytest.raises(ZeroDivisionError):
        session.act(plan.rename_farm(session.farm, "New"))
    assert len(listener.notices) == 1
    assert session.farm.settings.name == "New"


def test_that_an_act_from_within_a_notice_is_an_error_of_the_program(session):
    caught = []

    def eager(notice):
        with pytest.raises(RuntimeError, match="still being told"):
            session.act(plan.rename_farm(session.farm, "Again"))
        caught.append(notice)

    session.subscribe(eager)
    session.act(plan.rename_farm(session.farm, "New"))
    assert len(caught) == 1
    assert session.farm.settings.name == "New"


def test_that_a_phase_of_trays_and_one_of_rafts_do_not_clash(session):
    extra = placement(SECOND, phase=Phase.NURSERY, bed=NURSERY.id, first=16, count=15)
    session.act(change_set(Change(after=extra)))
    assert session._store.load() == session.farm


def test_that_events_which_cannot_be_are_put_right_one_by_one():
    farm = sample_farm()
    both = [
        dataclasses.replace(EVENT, id=id_from(f"e{n}"), kind=FishEventKind.DEATHS, count=GROUP.count + n)
        for n in (1, 2)
    ]
    session = in_memory(dataclasses.replace(farm, fish_events=(*farm.fish_events, *both)))
    session.act(change_set(Change(before=both[0])))
    session.act(change_set(altered(both[1], count=3)))
    assert both[0].id not in {event.id for event in session.farm.fish_events}
    with pytest.raises(FarmFaultError, match="the group then has 2 at most"):
        session.act(change_set(altered(GROUP, count=2)))
