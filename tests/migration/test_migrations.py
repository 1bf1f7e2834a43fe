"""A file of any version opens; models and migrations agree; a step that fails changes nothing."""

import shutil
import sqlite3
from contextlib import closing

import pytest

from planner.store.acts import ActKind, ActState
from planner.store.errors import DamagedFarmError, FarmInUseError, NewerFarmError
from planner.store.guard import schema_of_records
from planner.store.migrations.runner import (
    CURRENT_VERSION,
    MIGRATIONS,
    Migration,
    bring_up_to_date,
    version_of,
)
from planner.store.schema import CURRENT_MARK, make_file_tables, mark_of, schema_of, schema_of_steps
from planner.store.store import FarmStore
from tests.migration.make_sample import HERE, sample_path
from tests.store.sample import FIRST, NOON, altered, change_set, sample_farm


def add_colour(connection):
    connection.execute("ALTER TABLE bed ADD COLUMN colour TEXT NOT NULL DEFAULT ''")


def fail(connection):
    connection.execute("DROP TABLE reading")
    raise RuntimeError("half way")


def lose_sites(connection):
    connection.execute("DELETE FROM site")


NEXT = Migration(version=CURRENT_VERSION + 1, title="Colours", migrate=add_colour)


@pytest.fixture
def old(tmp_path):
    """A copy of the newest kept sample."""
    return shutil.copy(sample_path(CURRENT_VERSION), tmp_path / "old.raftweek")


def version_in(path):
    with closing(sqlite3.connect(path)) as raw:
        return version_of(raw, path.name)


def content(path):
    with closing(sqlite3.connect(path)) as raw:
        return list(raw.iterdump())


def test_that_mappings_and_migrations_lead_to_the_same_tables():
    assert schema_of_steps() == schema_of_records()


def test_that_steps_are_numbered_without_a_gap():
    assert [step.version for step in MIGRATIONS] == list(range(1, CURRENT_VERSION + 1))


@pytest.mark.parametrize("version", range(1, CURRENT_VERSION + 1))
def test_that_a_kept_file_of_every_version_opens(tmp_path, version):
    path = shutil.copy(sample_path(version), tmp_path / "kept.raftweek")
    with FarmStore.open(path) as store:
        assert store.load() == sample_farm(version)
        (entry,) = store.acts()
        assert entry.state is ActState.UNDONE
        assert store.change_set(entry.seq).title == "Note"
    with closing(sqlite3.connect(path)) as raw:
        assert schema_of(raw) == schema_of_records()


def test_that_acts_kept_before_a_thing_had_all_its_fields_can_still_be_undone(tmp_path):
    """The file was made with version 3, whose seed lots, readings, fish events and entries had fewer."""
    path = shutil.copy(HERE / "sample-version-3-acts.raftweek", tmp_path / "kept.raftweek")
    with FarmStore.open(path) as store:
        acts = store.acts()
        assert [store.change_set(act.seq).changes[0].word for act in acts] == [
            "seed lot",
            "reading",
            "fish event",
            "log entry",
        ]
        for act in reversed(acts):
            taken_back = store.change_set(act.seq).turned()
            store.apply(taken_back, [], kind=ActKind.UNDO, at=NOON)
        assert store.load() == sample_farm(3)


def test_that_a_file_up_to_date_is_not_copied(old):
    assert bring_up_to_date(old) is None
    assert [each.name for each in old.parent.iterdir()] == [old.name]


def test_that_an_older_file_is_copied_beside_before_it_is_changed(old):
    before = content(old)
    kept = bring_up_to_date(old, steps=(*MIGRATIONS, NEXT))
    assert kept.name == f"old.version-{CURRENT_VERSION}.raftweek"
    assert content(kept) == before
    assert version_in(kept) == CURRENT_VERSION
    assert version_in(old) == NEXT.version
    with closing(sqlite3.connect(old)) as raw:
        assert raw.execute("SELECT schema_version FROM meta").fetchone() == (NEXT.version,)
        assert "colour" in {row[1] for row in raw.execute("PRAGMA table_info(bed)")}


def test_that_a_file_open_elsewhere_is_not_changed_under_the_other_program(old):
    with FarmStore.open(old) as store:
        with pytest.raises(FarmInUseError, match="is open in a program"):
            bring_up_to_date(old, steps=(*MIGRATIONS, NEXT))
        assert store.load() == sample_farm()
    assert version_in(old) == CURRENT_VERSION


def test_that_what_another_program_had_not_folded_in_yet_is_in_the_copy(old):
    with FarmStore.open(old) as store:
        noted = change_set(altered(FIRST, notes="late"))
        store.apply(noted, [], kind=ActKind.DO, at=NOON)
        left = old.with_name("left.raftweek")
        shutil.copy(old, left)
        shutil.copy(old.with_name(f"{old.name}-wal"), left.with_name(f"{left.name}-wal"))
    kept = bring_up_to_date(left, steps=(*MIGRATIONS, NEXT))
    with FarmStore.open(kept) as store:
        assert store.load().batches[0].notes == "late"


def test_that_a_copy_never_overwrites_an_earlier_one(old):
    taken = old.with_name(f"old.version-{CURRENT_VERSION}.raftweek")
    taken.write_bytes(b"mine")
    kept = bring_up_to_date(old, steps=(*MIGRATIONS, NEXT))
    assert kept.name == f"old.version-{CURRENT_VERSION}-2.raftweek"
    assert taken.read_bytes() == b"mine"


@pytest.mark.parametrize(("step", "error"), [(fail, RuntimeError), (lose_sites, DamagedFarmError)])
def test_that_a_step_that_fails_changes_nothing(old, step, error):
    broken = Migration(version=NEXT.version + 1, title="Broken", migrate=step)
    with pytest.raises(error):
        bring_up_to_date(old, steps=(*MIGRATIONS, NEXT, broken))
    assert version_in(old) == CURRENT_VERSION
    with FarmStore.open(old) as store:
        assert store.load() == sample_farm()


def test_that_a_newer_file_is_refused_and_left_alone(old):
    bring_up_to_date(old, steps=(*MIGRATIONS, NEXT))
    before = old.read_bytes()
    with pytest.raises(NewerFarmError, match="newer version of this program"):
        FarmStore.open(old)
    assert old.read_bytes() == before


def test_that_the_fingerprint_by_which_files_are_opened_is_that_of_the_migrations():
    """After a new step, put what this finds into CURRENT_MARK."""
    assert mark_of(schema_of_steps()) == CURRENT_MARK


@pytest.mark.parametrize("statement", ["CREATE TABLE more (id)", "DROP INDEX ix_batch_position"])
def test_that_another_schema_has_another_fingerprint(statement):
    with closing(sqlite3.connect(":memory:", isolation_level=None)) as connection:
        make_file_tables(connection, "")
        before = mark_of(schema_of(connection))
        connection.execute(statement)
        assert mark_of(schema_of(connection)) != before == CURRENT_MARK
