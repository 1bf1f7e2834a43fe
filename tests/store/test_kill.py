"""What was confirmed is there after the program is killed, and what was not is not half there."""

import signal
import sqlite3
import subprocess
import sys
from contextlib import closing

from planner.store.store import FarmStore
from tests.store.sample import FIRST, holds_of, sample_farm

ACT_THEN_WAIT = """
import sys
from planner.store.acts import ActKind
from planner.store.store import FarmStore
from tests.store.sample import FIRST, NOON, altered, change_set

store = FarmStore.open(sys.argv[1])
store.apply(change_set(altered(FIRST, notes="confirmed"), title="Note"), [], kind=ActKind.DO, at=NOON)
print("confirmed", flush=True)
sys.stdin.read()
"""

HALF_AN_ACT = """
import sys
from planner.store.store import FarmStore
from planner.store.writing import write_changes
from tests.store.sample import FIRST, altered, change_set

store = FarmStore.open(sys.argv[1])
with store._engine.begin() as connection:
    write_changes(connection, change_set(altered(FIRST, notes="half")), [], [])
    print("written", flush=True)
    sys.stdin.read()
"""


def killed_after(code, path, root):
    """Run a piece of the program until it says a word, then kill it."""
    with subprocess.Popen(
        [sys.executable, "-c", code, str(path)],
        cwd=root,
        stdin=subprocess.PIPE,
        stdout=subprocess.PIPE,
        text=True,
    ) as process:
        said = process.stdout.readline().strip()
        process.send_signal(signal.SIGKILL)
        process.wait()
    return said


def sound(path):
    with closing(sqlite3.connect(path)) as raw:
        whole = raw.execute("PRAGMA integrity_check").fetchone() == ("ok",)
        return whole and raw.execute("PRAGMA foreign_key_check").fetchall() == []


def test_that_a_confirmed_act_outlives_the_program(tmp_path, root):
    path = tmp_path / "killed.raftweek"
    FarmStore.create(path, sample_farm(), holds_of(sample_farm())).close()
    assert killed_after(ACT_THEN_WAIT, path, root) == "confirmed"
    with FarmStore.open(path) as store:
        assert store.load().batches[0].notes == "confirmed"
        assert [entry.title for entry in store.acts()] == ["Note"]
    assert sound(path)


def test_that_half_an_act_is_gone_with_the_program(tmp_path, root):
    path = tmp_path / "killed.raftweek"
    FarmStore.create(path, sample_farm(), holds_of(sample_farm())).close()
    assert killed_after(HALF_AN_ACT, path, root) == "written"
    with FarmStore.open(path) as store:
        assert store.load() == sample_farm()
        assert store.load().batches[0] == FIRST
        assert store.acts() == ()
    assert sound(path)
