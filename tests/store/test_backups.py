"""Dated backups: made when something is new, thinned with age, restored without losing what was there."""

from datetime import datetime, timedelta
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from planner.store.acts import ActKind
from planner.store.backups import SPANS, Backup, back_up, backups_of, folder_of, kept_of, restore
from planner.store.errors import FarmInUseError, NoSuchFarmError
from planner.store.store import FarmStore
from tests.store.sample import FIRST, NOON, altered, change_set, holds_of, sample_farm

NOW = datetime(2027, 3, 10, 12, 0, 0)  # noqa: DTZ001 - the clock on the wall


@pytest.fixture
def path(tmp_path):
    path = tmp_path / "My farm.raftweek"
    FarmStore.create(path, sample_farm(), holds_of(sample_farm())).close()
    return path


def noted(path, notes):
    with FarmStore.open(path) as store:
        before = next(each for each in store.load().batches if each.id == FIRST.id)
        store.apply(change_set(altered(before, notes=notes)), [], kind=ActKind.DO, at=NOON)


def backed_up(path, now=NOW):
    with FarmStore.open(path) as store:
        return back_up(path, store.copy_to, now)


def notes_in(path):
    with FarmStore.open(path) as store:
        return store.load().batches[0].notes


def test_that_a_backup_opens_as_the_same_farm_and_carries_its_moment(path):
    made = backed_up(path)
    assert made.parent == folder_of(path)
    assert made.name == "My farm 2027-03-10 120000.raftweek"
    assert [each.at for each in backups_of(path)] == [NOW]
    with FarmStore.open(made) as store:
        assert store.load() == sample_farm()


def test_that_no_second_backup_is_made_of_the_same_farm(path):
    assert backed_up(path) is not None
    assert backed_up(path, NOW + timedelta(hours=3)) is None
    noted(path, "new")
    assert backed_up(path, NOW + timedelta(hours=4)) is not None
    assert len(backups_of(path)) == 2


def test_that_two_backups_in_one_second_get_two_names(path):
    backed_up(path)
    noted(path, "new")
    backed_up(path)
    assert len(backups_of(path)) == 2


def test_that_a_backup_is_restored_and_what_was_there_is_kept(path):
    noted(path, "before")
    backup = backed_up(path)
    noted(path, "after")
    aside = restore(backup, path, NOW + timedelta(hours=1))
    assert notes_in(path) == "before"
    assert notes_in(aside) == "after"


def test_that_a_damaged_farm_is_kept_aside_when_a_backup_takes_its_place(path):
    noted(path, "whole")
    backup = backed_up(path)
    content = path.read_bytes()
    path.write_bytes(content[: len(content) // 2])
    aside = restore(backup, path, NOW + timedelta(hours=1))
    assert notes_in(path) == "whole"
    assert aside.is_file()


def test_that_a_farm_that_is_gone_comes_back_from_a_backup(path):
    backup = backed_up(path)
    path.unlink()
    assert restore(backup, path, NOW) is None
    with FarmStore.open(path) as store:
        assert store.load() == sample_farm()


def test_that_nothing_is_restored_over_a_farm_that_is_open(path):
    backup = backed_up(path)
    with FarmStore.open(path) as store:
        store.load()
        with pytest.raises(FarmInUseError):
            restore(backup, path, NOW)


def test_that_a_backup_that_is_gone_is_told(path):
    with pytest.raises(NoSuchFarmError, match="not there any more"):
        restore(folder_of(path) / "none.raftweek", path, NOW)


def test_that_files_of_other_names_are_left_alone(path):
    made = backed_up(path)
    for name in ("notes.txt", "My farm.raftweek", "My farm 2027-99-99 999999.raftweek"):
        (made.parent / name).write_bytes(b"mine")
    assert [each.path for each in backups_of(path)] == [made]


def hourly(count):
    return [Backup(path=folder / f"{at}", at=NOW - timedelta(hours=at)) for at in range(count)]


folder = folder_of(Path("/farms/farm.raftweek"))


def test_that_a_year_of_hourly_backups_is_thinned_to_a_handful():
    kept = kept_of(hourly(24 * 365), NOW)
    ages = sorted((NOW - each.at).days for each in kept)
    assert len(kept) <= 24 + 2 + 14 + 2 + 12 + 2 + 10 + 2
    assert ages[0] == 0
    assert ages[-1] >= 330


@given(st.lists(st.integers(-48, 40_000), unique=True, max_size=60))
def test_that_the_latest_stays_and_thinning_again_takes_nothing(hours):
    backups = [Backup(path=folder / str(each), at=NOW - timedelta(hours=each)) for each in hours]
    kept = kept_of(backups, NOW)
    assert kept <= set(backups)
    assert kept_of(kept, NOW) == kept
    if backups:
        assert max(backups, key=lambda each: each.at) in kept
    for each in kept:
        assert each.at > NOW - SPANS[-1].until or each == max(backups, key=lambda one: one.at)


def test_that_every_stretch_of_a_day_keeps_its_own():
    backups = [Backup(path=folder / str(day), at=NOW - timedelta(days=day)) for day in range(2, 14)]
    assert kept_of(backups, NOW) == set(backups)
