"""A farm file is read without the library of the mappings, exactly as with it, and acts go on from there."""

import subprocess
import sys

import pytest
from hypothesis import HealthCheck, given, settings

from planner.store.acts import ActKind
from planner.store.errors import ChangedElsewhereError, DamagedFarmError, NoSuchFarmError
from planner.store.late import LateStore
from planner.store.store import FarmStore
from tests.store.sample import FIRST, NOON, altered, change_set, holds_of, sample_farm
from tests.strategies import farms


@pytest.fixture
def path(tmp_path):
    path = tmp_path / "sample.raftweek"
    farm = sample_farm()
    FarmStore.create(path, farm, holds_of(farm)).close()
    return path


@pytest.fixture
def late(path):
    store = LateStore.open(path)
    yield store
    store.close()


@settings(max_examples=15, suppress_health_check=[HealthCheck.function_scoped_fixture, HealthCheck.too_slow])
@given(farm=farms())
def test_that_any_farm_is_read_as_the_mappings_read_it(tmp_path, farm):
    path = tmp_path / "any.raftweek"
    with FarmStore.create(path, farm, replace=True) as store:
        late = LateStore.open(path)
        try:
            assert late.load() == farm
            assert repr(late.load()) == repr(store.load())
        finally:
            late.close()


def test_that_holds_and_acts_are_read_as_the_mappings_read_them(path, late):
    late.load()
    late.apply(change_set(altered(FIRST, plants=20)), [], kind=ActKind.DO, at=NOON, who="Ana")
    again = LateStore.open(path)
    with FarmStore.open(path) as store:
        assert (again.held(), again.acts()) == (store.held(), store.acts())
        assert again.acts()[0].at == NOON
        assert again.load() == store.load()
    again.close()


def test_that_an_act_does_not_overwrite_what_others_did_since_the_farm_was_loaded(path, late):
    late.load()
    with FarmStore.open(path) as other:
        other.load()
        other.apply(change_set(altered(FIRST, plants=30)), [], kind=ActKind.DO, at=NOON)
    assert late.is_stale()
    with pytest.raises(ChangedElsewhereError):
        late.apply(change_set(altered(FIRST, plants=20)), [], kind=ActKind.DO, at=NOON)
    assert late.load().batches[0].plants == 30
    assert not late.is_stale()


def test_that_a_file_that_went_before_the_first_act_is_not_made_anew(path, late):
    late.load()
    path.unlink()
    with pytest.raises(NoSuchFarmError, match="while it was open here"):
        late.apply(change_set(altered(FIRST, plants=20)), [], kind=ActKind.DO, at=NOON)
    assert not path.exists()


def test_that_acts_that_are_none_are_told_as_damage(path, late):
    late.apply(change_set(altered(FIRST, plants=20)), [], kind=ActKind.DO, at=NOON)
    late.store._engine.raw_connection().cursor().execute("UPDATE act SET at = 'noon'")
    with pytest.raises(DamagedFarmError, match="damaged"):
        late.acts()


READING = """
import sys
from pathlib import Path
from planner.store.late import LateStore
store = LateStore.open(Path(sys.argv[1]))
store.load(), store.held(), store.acts(), store.is_stale()
store.copy_to(sys.argv[1] + ".copy")
store.close()
print("sqlalchemy" in sys.modules)
"""


def test_that_reading_and_copying_need_no_library(root, path):
    done = subprocess.run(
        [sys.executable, "-c", READING, str(path)], cwd=root, capture_output=True, text=True, check=False
    )
    assert done.stdout.strip() == "False", done.stderr
