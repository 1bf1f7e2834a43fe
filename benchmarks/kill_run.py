"""Kills a program in the middle of editing a farm file, again and again, and looks at what is left.

    python benchmarks/kill_run.py [--kills 1000] [--seed 1]

Each time a process of its own opens the same farm file and alters it as fast as it can, saying the number of
each act once it is confirmed. At a random moment it is killed without a warning. Then the file must open,
be whole, and hold every act that was confirmed; at most the one on its way may be there besides.
Needs fork, so Linux or macOS. Prints counts, and exits with 1 at the first loss.
"""

from __future__ import annotations

import argparse
import dataclasses
import os
import random
import signal
import sqlite3
import sys
import tempfile
import time
from contextlib import closing
from pathlib import Path
from typing import Final, NoReturn

sys.path.insert(0, str(Path(__file__).resolve().parent.parent))

from planner.bootstrap import Means, utc_now
from planner.farm.changes import Change, ChangeSet
from planner.store.acts import ActKind
from planner.store.store import FarmStore

ROOT: Final = Path(__file__).resolve().parent.parent
SAMPLE: Final = ROOT / "sample_data" / "backyard.toml"
LONGEST_S: Final = 0.25
WORD: Final = 8


def edit_until_killed(path: Path, said: int, start: int) -> NoReturn:
    """Alter the notes of one batch after another, and write the number of each act once it is confirmed."""
    store = FarmStore.open(path)
    farm = store.load()
    number = start
    batches = {batch.id: batch for batch in farm.batches}
    ids = list(batches)
    while True:
        number += 1
        before = batches[ids[number % len(ids)]]
        after = dataclasses.replace(before, notes=f"act {number}")
        change_set = ChangeSet(title=f"act {number}", changes=(Change(before=before, after=after),))
        store.apply(change_set, [], kind=ActKind.DO, at=utc_now())
        batches[after.id] = after
        os.write(said, number.to_bytes(WORD, "big"))


def killed_once(path: Path, after_s: float, start: int) -> int:
    """Let a process edit for a moment, kill it, and return the last act it said was confirmed."""
    heard, said = os.pipe()
    child = os.fork()
    if child == 0:
        os.close(heard)
        edit_until_killed(path, said, start)
    os.close(said)
    time.sleep(after_s)
    os.kill(child, signal.SIGKILL)
    os.waitpid(child, 0)
    words = b""
    while part := os.read(heard, 1 << 16):
        words += part
    os.close(heard)
    whole = len(words) // WORD
    return int.from_bytes(words[(whole - 1) * WORD : whole * WORD], "big") if whole else start


def what_is_lost(path: Path, confirmed: int) -> str:
    """Return what is wrong with the file after a kill; empty when nothing is."""
    with closing(sqlite3.connect(path)) as raw:
        if raw.execute("PRAGMA integrity_check").fetchone() != ("ok",):
            return "the file is damaged"
        if raw.execute("PRAGMA foreign_key_check").fetchall():
            return "things in the file are missing"
    with FarmStore.open(path) as store:
        notes = [batch.notes for batch in store.load().batches]
        acts = store.acts()
    last = max((int(each.split()[1]) for each in notes if each.startswith("act ")), default=0)
    kept = int(acts[-1].title.split()[1]) if acts else 0
    if last != kept:
        return f"the farm says act {last}, the history act {kept}"
    return "" if confirmed <= kept <= confirmed + 1 else f"act {confirmed} was confirmed, act {kept} is kept"


def main() -> int:
    """Run, print the counts, and return 1 when anything was lost."""
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawTextHelpFormatter)
    parser.add_argument("--kills", type=int, default=1000)
    parser.add_argument("--seed", type=int, default=1)
    parsed = parser.parse_args()
    chance, means = random.Random(parsed.seed), Means()
    farm = means.read(SAMPLE).farm
    with tempfile.TemporaryDirectory() as folder:
        path = Path(folder) / "killed.raftweek"
        FarmStore.create(path, farm, means.holds(farm)).close()
        confirmed = before_any = 0
        for number in range(1, parsed.kills + 1):
            start = confirmed
            confirmed = killed_once(path, chance.uniform(0.0, LONGEST_S), start)
            before_any += confirmed == start
            lost = what_is_lost(path, confirmed)
            if lost:
                print(f"kill {number}: {lost}")
                return 1
            with FarmStore.open(path) as store:
                acts = store.acts()
            confirmed = int(acts[-1].title.split()[1]) if acts else 0
    print(f"{parsed.kills} kills, {before_any} of them before the first act, {confirmed} acts: nothing lost")
    return 0


if __name__ == "__main__":
    sys.exit(main())
