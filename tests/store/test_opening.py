"""Opening anything that is not a sound farm says so in a plain sentence and touches nothing."""

import shutil
import sqlite3
from contextlib import closing

import pytest

from planner.store.acts import ActKind
from planner.store.errors import (
    DamagedFarmError,
    DiskFullError,
    FarmInUseError,
    NewerFarmError,
    NoSuchFarmError,
    NotAFarmError,
    ReadOnlyFarmError,
    StoreError,
    told,
)
from planner.store.late import LateStore
from planner.store.migrations.runner import CURRENT_VERSION
from planner.store.store import FarmStore
from tests.store.sample import FIRST, NOON, altered, change_set, holds_of, sample_farm


@pytest.fixture
def path(tmp_path):
    path = tmp_path / "sample.raftweek"
    farm = sample_farm()
    FarmStore.create(path, farm, holds_of(farm)).close()
    return path


def changed(path, *statements):
    with closing(sqlite3.connect(path)) as raw, raw:
        for statement in statements:
            raw.execute(statement)


def refused(path, kind, words):
    before = path.read_bytes() if path.is_file() else None
    for kind_of_store in (FarmStore, LateStore):
        with pytest.raises(kind, match=words) as caught:
            kind_of_store.open(path)
        assert str(caught.value).endswith(".")
        assert (path.read_bytes() if path.is_file() else None) == before


def test_that_a_missing_file_is_told(tmp_path):
    refused(tmp_path / "none.raftweek", NoSuchFarmError, "is not there")


def test_that_a_missing_folder_is_told_on_creating(tmp_path):
    with pytest.raises(NoSuchFarmError, match="folder"):
        FarmStore.create(tmp_path / "none" / "farm.raftweek", sample_farm())


@pytest.mark.parametrize("content", [b"", b"a text", b"SQLite format 3\x00", b"\x00" * 5000])
def test_that_another_file_is_no_farm(tmp_path, content):
    path = tmp_path / "other.raftweek"
    path.write_bytes(content)
    refused(path, (NotAFarmError, DamagedFarmError), "other.raftweek")


@pytest.mark.parametrize("url", ["nonsense://x", "://", "postgresql+nothing://somewhere/farm"])
@pytest.mark.parametrize("reach", [FarmStore.open, lambda url: FarmStore.create(url, sample_farm())])
def test_that_an_address_that_leads_nowhere_is_told(url, reach):
    with pytest.raises(NoSuchFarmError):
        reach(url)


def test_that_a_folder_is_no_farm(tmp_path):
    refused(tmp_path, NotAFarmError, "not a farm file")


def test_that_another_database_is_no_farm(tmp_path):
    path = tmp_path / "other.db"
    changed(path, "CREATE TABLE batch (id)")
    refused(path, NotAFarmError, "not a farm file")


def test_that_a_newer_farm_is_refused_with_both_versions(path):
    changed(path, f"PRAGMA user_version = {CURRENT_VERSION + 1}")
    refused(path, NewerFarmError, f"file version {CURRENT_VERSION + 1}.*up to {CURRENT_VERSION}")


@pytest.mark.parametrize(
    "statement",
    [
        "DROP TRIGGER placement_guard_insert",
        "DROP TABLE reading",
        "DROP INDEX ix_placement_held",
        "ALTER TABLE bed ADD COLUMN colour TEXT",
        "CREATE VIEW spy AS SELECT * FROM batch",
        "CREATE TRIGGER spy AFTER INSERT ON act BEGIN DELETE FROM batch; END",
    ],
)
def test_that_a_file_with_other_tables_or_with_anything_that_runs_is_refused(path, statement):
    changed(path, statement)
    refused(path, DamagedFarmError, "does not have the tables")


def test_that_dangling_references_are_found(path):
    changed(path, "DELETE FROM site")
    refused(path, DamagedFarmError, "damaged")


def test_that_broken_pages_are_found(path):
    whole = path.read_bytes()
    path.write_bytes(whole[:8192] + b"\xff" * 8192 + whole[16384:])
    refused(path, DamagedFarmError, "damaged")


def test_that_a_file_cut_short_is_found(path):
    whole = path.read_bytes()
    path.write_bytes(whole[: len(whole) // 2])
    refused(path, DamagedFarmError, "damaged")


def test_that_a_farm_without_settings_is_damaged(path):
    changed(path, "DELETE FROM settings")
    with FarmStore.open(path) as store, pytest.raises(DamagedFarmError, match="0 times"):
        store.load()


def test_that_an_act_that_is_no_act_is_damage(path):
    changed(path, "INSERT INTO act VALUES (1, 'x', '2026-01-01 00:00:00', 'done', '[{\"kind\": \"x\"}]', '')")
    with FarmStore.open(path) as store, pytest.raises(DamagedFarmError, match="damaged"):
        store.change_set(1)


def again_and_again(store, changes):
    for _ in range(20):
        store.apply(change_set(*changes), [], kind=ActKind.DO, at=NOON)


def test_that_a_full_disk_is_told_and_nothing_is_lost(path):
    with FarmStore.open(path) as store:
        with store._engine.connect() as connection:
            pages = connection.exec_driver_sql("PRAGMA page_count").scalar()
            connection.exec_driver_sql(f"PRAGMA max_page_count = {pages}")
        long = "x" * 4000
        changes = [altered(one, notes=long) for one in sample_farm().batches]
        with pytest.raises(DiskFullError, match="no room left"):
            again_and_again(store, changes)
        assert store.load().settings == sample_farm().settings
    with FarmStore.open(path) as again:
        assert len(again.acts()) < 20


def test_that_a_farm_that_cannot_be_written_is_told(path):
    with FarmStore.open(path) as store:
        with store._engine.connect() as connection:
            connection.exec_driver_sql("PRAGMA query_only = ON")
        with pytest.raises(ReadOnlyFarmError, match="cannot be written"):
            store.apply(change_set(altered(FIRST, plants=20)), [], kind=ActKind.DO, at=NOON)
        assert store.load() == sample_farm()


@pytest.mark.parametrize(
    ("error", "kind"),
    [
        (PermissionError(13, "no"), ReadOnlyFarmError),
        (OSError(28, "full"), DiskFullError),
        (FileNotFoundError(2, "none"), NoSuchFarmError),
        (OSError(5, "broken disk"), StoreError),
        (sqlite3.OperationalError("odd"), StoreError),
    ],
)
def test_that_troubles_of_the_disk_become_sentences(error, kind):
    with pytest.raises(kind) as caught, told("farm.raftweek"):
        raise error
    assert str(caught.value).startswith(("farm.raftweek", "There is no room"))


def test_that_a_copy_is_whole_and_has_the_history(path, tmp_path):
    with FarmStore.open(path) as store:
        store.apply(change_set(altered(FIRST, notes="new")), [], kind=ActKind.DO, at=NOON)
        store.copy_to(tmp_path / "copy.raftweek")
        now, acts = store.load(), store.acts()
    with FarmStore.open(tmp_path / "copy.raftweek") as copy:
        assert copy.load() == now
        assert copy.acts() == acts
        assert set(copy.held()) == set(holds_of(now))
    assert sorted(each.name for each in tmp_path.iterdir()) == ["copy.raftweek", "sample.raftweek"]


def test_that_what_a_killed_program_left_beside_does_no_harm(path, tmp_path):
    for ending in ("", "-wal", "-shm", "-journal"):
        (tmp_path / f".copy.raftweek.part{ending}").write_bytes(b"left over")
    with FarmStore.open(path) as store:
        store.copy_to(tmp_path / "copy.raftweek")
    with FarmStore.open(tmp_path / "copy.raftweek") as copy:
        assert copy.load() == sample_farm()
    assert sorted(each.name for each in tmp_path.iterdir()) == ["copy.raftweek", "sample.raftweek"]


def test_that_a_copy_never_replaces_an_open_farm(path, tmp_path):
    shutil.copy(path, tmp_path / "other.raftweek")
    with FarmStore.open(path) as store, FarmStore.open(tmp_path / "other.raftweek") as other:
        with pytest.raises(FarmInUseError, match="the open farm itself"):
            store.copy_to(path)
        with pytest.raises(FarmInUseError, match="is open"):
            store.copy_to(tmp_path / "other.raftweek")
        assert other.load() == sample_farm()
    with FarmStore.open(path) as store:
        store.apply(change_set(altered(FIRST, notes="new")), [], kind=ActKind.DO, at=NOON)
        store.copy_to(tmp_path / "other.raftweek")
    with FarmStore.open(tmp_path / "other.raftweek") as other:
        assert other.load().batches[0].notes == "new"


def test_that_a_copy_never_replaces_another_file(path, tmp_path):
    (tmp_path / "letter.txt").write_text("dear all", encoding="utf-8")
    with FarmStore.open(path) as store, pytest.raises(NotAFarmError, match="not a farm file"):
        store.copy_to(tmp_path / "letter.txt")
    assert (tmp_path / "letter.txt").read_text(encoding="utf-8") == "dear all"


def test_that_a_copy_that_fails_leaves_what_was_there(path, tmp_path, monkeypatch):
    old = tmp_path / "old.raftweek"
    shutil.copy(path, old)
    with FarmStore.open(path) as store:
        store.apply(change_set(altered(FIRST, notes="new")), [], kind=ActKind.DO, at=NOON)
        monkeypatch.setattr("planner.store.copying.os.fsync", _full_disk)
        with pytest.raises(DiskFullError, match="no room left"):
            store.copy_to(old)
    monkeypatch.undo()
    with FarmStore.open(old) as unharmed:
        assert unharmed.load() == sample_farm()
    assert sorted(each.name for each in tmp_path.iterdir()) == ["old.raftweek", "sample.raftweek"]


def _full_disk(_handle):
    raise OSError(28, "No space left on device")
