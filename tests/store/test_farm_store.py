"""A farm is kept whole, comes back as it was, and is never damaged on the way."""

import dataclasses
import sqlite3
import sys
from contextlib import closing

import pytest
from hypothesis import HealthCheck, given, settings

from planner.farm.changes import Change, with_places
from planner.farm.farm import KINDS, things
from planner.farm.ids import id_from
from planner.store.acts import KEPT_ACTS, ActKind, ActState
from planner.store.errors import (
    ChangedElsewhereError,
    DamagedFarmError,
    FarmInUseError,
    FarmThereAlreadyError,
    HeldPlaceError,
    NoSuchFarmError,
    RefusedError,
)
from planner.store.late import LateStore
from planner.store.migrations.runner import CURRENT_VERSION
from planner.store.ordering import STEP
from planner.store.sqlite_file import APPLICATION_ID
from planner.store.store import FarmStore
from tests.store.sample import (
    FIRST,
    FIRST_PLACES,
    IN_TRAYS,
    NOON,
    OWN,
    RAFTS,
    SECOND,
    SECOND_PLACES,
    THIRD,
    altered,
    batch,
    change_set,
    holds_of,
    sample_farm,
)
from tests.strategies import farms


@pytest.fixture
def path(tmp_path):
    return tmp_path / "sample.raftweek"


@pytest.fixture(params=["at once", "late", "late, and there"])
def store(path, request):
    """A store of the sample farm, of either kind; a late one also once the store behind it is there."""
    farm = sample_farm()
    made = FarmStore.create(path, farm, holds_of(farm))
    if request.param != "at once":
        made.close()
        made = LateStore.open(path)
    if request.param.endswith("there"):
        assert made.store is made.store
    yield made
    made.close()


def engine_of(store):
    return getattr(store, "store", store)._engine


def done(store, farm, *changes, title="Change"):
    """Carry an act out in the store and return the farm and the set as the session would have them."""
    from planner.farm.changes import applied

    whole = change_set(*with_places(farm, changes), title=title)
    after = applied(farm, whole)
    kept = {hold.placement: hold for hold in store.held()}
    holds = [hold for hold in holds_of(after) if kept.get(hold.placement) != hold]
    store.apply(whole, holds, kind=ActKind.DO, at=NOON)
    return after, whole


def test_that_a_farm_comes_back_as_it_was(store):
    assert store.load() == sample_farm()
    assert repr(store.load()) == repr(sample_farm())


@settings(suppress_health_check=[HealthCheck.function_scoped_fixture], max_examples=20)
@given(farms())
def test_that_any_farm_comes_back_as_it_was(tmp_path, farm):
    with FarmStore.create(tmp_path / "any.raftweek", farm, replace=True) as made:
        assert made.load() == farm


def test_that_holds_come_back_as_they_were(store):
    assert set(store.held()) == set(holds_of(sample_farm()))


def test_that_a_file_says_what_it_is_and_how_it_is_kept_safe(store, path):
    with closing(sqlite3.connect(path)) as raw:
        assert raw.execute("PRAGMA application_id").fetchone() == (APPLICATION_ID,)
        assert raw.execute("PRAGMA user_version").fetchone() == (CURRENT_VERSION,)
        assert raw.execute("PRAGMA journal_mode").fetchone() == ("wal",)
        assert raw.execute("PRAGMA integrity_check").fetchone() == ("ok",)
        assert raw.execute("PRAGMA foreign_key_check").fetchall() == []


def test_that_our_own_connection_checks_references(store):
    with engine_of(store).connect() as connection:
        assert connection.exec_driver_sql("PRAGMA foreign_keys").scalar() == 1
        assert connection.exec_driver_sql("PRAGMA synchronous").scalar() == 1
        assert connection.exec_driver_sql("PRAGMA busy_timeout").scalar() > 0


@pytest.mark.parametrize("kind", KINDS, ids=lambda kind: kind.word)
def test_that_a_thing_of_every_kind_can_be_changed_removed_and_put_back(store, kind):
    farm = sample_farm()
    (first, *_) = things(farm, kind.word)
    now, _ = done(
        store, farm, altered(first, **({"notes": "new"} if hasattr(first, "notes") else {"count": 9}))
    )
    assert store.load() == now
    lonely = {"own entry", "target", "dose", "reading", "solids batch", "placement", "filter", "fish event"}
    if kind.word in lonely:
        changed = things(now, kind.word)[0]
        without, _ = done(store, now, Change(before=changed))
        assert store.load() == without
        back, _ = done(store, without, Change(after=changed, index=0))
        assert store.load() == back


def test_that_order_is_kept_when_things_are_put_in_between_again_and_again(store):
    farm = sample_farm()
    for number in range(STEP.bit_length() + 3):
        new = batch(f"NEW-{number}")
        farm, _ = done(store, farm, Change(after=new, index=1))
        assert store.load().batches == farm.batches
    for number in range(3):
        farm, _ = done(store, farm, Change(after=batch(f"FIRST-{number}"), index=0))
    assert store.load().batches == farm.batches


def test_that_names_can_be_swapped_in_one_act(store):
    farm = sample_farm()
    after, _ = done(store, farm, altered(FIRST, code=SECOND.code), altered(SECOND, code=FIRST.code))
    assert [one.code for one in store.load().batches] == [one.code for one in after.batches]


def test_that_a_thing_can_be_taken_out_and_put_elsewhere_in_one_act(store):
    farm = sample_farm()
    after, _ = done(store, farm, Change(before=OWN), Change(after=dataclasses.replace(OWN, values=())))
    assert store.load() == after
    after, _ = done(store, after, Change(before=THIRD), Change(after=THIRD, index=0))
    assert store.load().batches == (THIRD, FIRST, SECOND)


def test_that_two_batches_can_swap_their_places_in_one_act(store):
    farm = sample_farm()
    after, _ = done(
        store,
        farm,
        altered(FIRST_PLACES, first=SECOND_PLACES.first),
        altered(SECOND_PLACES, first=FIRST_PLACES.first),
    )
    assert store.load() == after
    assert set(store.held()) == set(holds_of(after))


def test_that_an_act_that_books_a_place_twice_is_refused_whole(store):
    farm = sample_farm()
    with pytest.raises(HeldPlaceError, match="held by two batches"):
        done(store, farm, altered(FIRST, notes="kept?"), altered(SECOND_PLACES, first=12))
    assert store.load() == farm
    assert set(store.held()) == set(holds_of(farm))
    assert store.acts() == ()


def test_that_a_reference_to_nothing_is_refused_whole(store):
    with pytest.raises(RefusedError, match="not changed"):
        done(store, sample_farm(), altered(FIRST, bed=id_from("no bed")))
    assert store.load() == sample_farm()


def test_that_a_value_beyond_its_limits_is_refused_by_the_file_too(store):
    with pytest.raises(RefusedError, match="ck_bed_units_limits"):
        done(store, sample_farm(), altered(RAFTS, units=0))
    assert store.load() == sample_farm()


def test_that_acts_are_kept_with_their_changes(store, path):
    _, whole = done(store, sample_farm(), altered(FIRST, plants=20), title="More basil")
    store.close()
    with FarmStore.open(path) as again:
        (entry,) = again.acts()
        assert (entry.title, entry.at, entry.state) == ("More basil", NOON, ActState.DONE)
        assert again.change_set(entry.seq) == whole


def test_that_undo_and_redo_move_one_act_and_a_new_act_drops_what_was_undone(store):
    farm = sample_farm()
    one, first = done(store, farm, altered(FIRST, plants=20), title="one")
    _, second = done(store, one, altered(SECOND, plants=20), title="two")
    store.apply(second.turned(), [], kind=ActKind.UNDO, at=NOON)
    store.apply(first.turned(), [], kind=ActKind.UNDO, at=NOON)
    assert store.load() == farm
    store.apply(first, [], kind=ActKind.REDO, at=NOON)
    assert [entry.state for entry in store.acts()] == [ActState.DONE, ActState.UNDONE]
    done(store, one, altered(THIRD, plants=20), title="three")
    assert [entry.title for entry in store.acts()] == ["one", "three"]


def test_that_the_oldest_acts_are_forgotten(store):
    with engine_of(store).begin() as connection:
        connection.exec_driver_sql(
            "WITH RECURSIVE n(i) AS (SELECT 1 UNION ALL SELECT i + 1 FROM n WHERE i < ?) "
            "INSERT INTO act SELECT i, 'old', '2026-01-01 00:00:00', 'done', '[]', '' FROM n",
            (KEPT_ACTS,),
        )
    done(store, sample_farm(), altered(FIRST, plants=20), title="new")
    acts = store.acts()
    assert len(acts) == KEPT_ACTS
    assert (acts[0].seq, acts[-1].title) == (2, "new")


def test_that_undo_without_an_act_is_an_error_of_ours(store):
    with pytest.raises(LookupError):
        store.apply(change_set(), [], kind=ActKind.UNDO, at=NOON)


def test_that_a_moment_without_a_zone_is_refused(store):
    with pytest.raises(Exception, match="time zone"):
        store.apply(change_set(altered(FIRST, plants=20)), [], kind=ActKind.DO, at=NOON.replace(tzinfo=None))
    assert store.load() == sample_farm()


@pytest.mark.skipif(sys.platform == "win32", reason="Windows lets nobody delete a file that is open")
@pytest.mark.parametrize("replaced", [False, True])
def test_that_a_file_deleted_while_open_is_told_and_the_farm_can_still_be_copied(store, path, replaced):
    path.unlink()
    if replaced:
        path.write_bytes(b"something else")
    with pytest.raises(NoSuchFarmError, match="while it was open here"):
        done(store, sample_farm(), altered(FIRST, plants=20))
    assert store.load() == sample_farm()
    rescued = path.with_name("rescued.raftweek") if replaced else path
    store.copy_to(rescued)
    with FarmStore.open(rescued) as again:
        assert again.load() == sample_farm()


def test_that_the_later_of_two_clashing_acts_is_told_and_overwrites_nothing(store, path):
    with FarmStore.open(path) as other:
        farm = other.load()
        done(store, sample_farm(), altered(FIRST, plants=20))
        with pytest.raises(ChangedElsewhereError, match="somebody else"):
            done(other, farm, altered(FIRST, plants=30))
        assert store.load().batches[0].plants == 20
        now = other.load()
        after, _ = done(other, now, altered(now.batches[0], plants=30))
    assert after.batches[0].plants == 30


def test_that_a_farm_locked_by_another_program_is_told(store, path):
    with closing(sqlite3.connect(path, isolation_level=None)) as other:
        other.execute("BEGIN IMMEDIATE")
        with engine_of(store).connect() as connection:
            connection.exec_driver_sql("PRAGMA busy_timeout = 0")
        with pytest.raises(FarmInUseError, match="locked by another program"):
            done(store, sample_farm(), altered(FIRST, plants=20))
        other.execute("ROLLBACK")
    after, _ = done(store, sample_farm(), altered(FIRST, plants=20))
    assert store.load() == after


def test_that_closing_leaves_one_file(store, path):
    done(store, sample_farm(), altered(FIRST, plants=20))
    store.close()
    assert [each.name for each in path.parent.iterdir()] == [path.name]


def test_that_creating_does_not_overwrite_unless_told(store, path):
    store.close()
    with pytest.raises(FarmThereAlreadyError, match="there already"):
        FarmStore.create(path, sample_farm())
    empty = dataclasses.replace(sample_farm(), batches=(), placements=(), log_entries=())
    with FarmStore.create(path, empty, replace=True) as made:
        assert made.load() == empty
        assert made.acts() == ()


def test_that_an_open_farm_is_never_replaced(store, path):
    with pytest.raises(FarmInUseError, match="is open"):
        FarmStore.create(path, sample_farm(), replace=True)
    assert store.load() == sample_farm()


def test_that_rows_that_are_no_values_are_told_as_damage(store, path):
    with closing(sqlite3.connect(path)) as raw, raw:
        raw.execute("PRAGMA ignore_check_constraints = ON")
        raw.execute("UPDATE bed SET kind = 'cloud'")
    with pytest.raises(DamagedFarmError, match="damaged"):
        store.load()


@pytest.mark.parametrize("text", ["", "nonsense", "[true]", '["1"]', "{}", "[NaN]"])
def test_that_months_that_are_no_numbers_are_told_as_damage(store, path, text):
    with closing(sqlite3.connect(path)) as raw, raw:
        raw.execute("UPDATE site SET air_c = ?", (text,))
    with pytest.raises(DamagedFarmError, match="damaged"):
        store.load()


def test_that_loading_asks_once_for_each_table(store):
    from sqlalchemy import event

    asked = []

    def note(connection, cursor, statement, parameters, context, many):
        asked.append(statement)

    event.listen(engine_of(store), "before_cursor_execute", note)
    store.load()
    reads = [statement for statement in asked if statement.startswith("SELECT")]
    # One for each kind, and the settings, the figures of own entries and the revision.
    assert len(reads) == len(KINDS) + 3


def test_that_a_placement_that_holds_nothing_has_no_days(store):
    store.apply(change_set(altered(FIRST, plants=20)), [], kind=ActKind.DO, at=NOON, freed=[IN_TRAYS.id])
    assert IN_TRAYS.id not in {hold.placement for hold in store.held()}
