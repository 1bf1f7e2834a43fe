"""Lets two programs edit one farm on a database server at random, and looks whether anything was lost.

    python benchmarks/shared_farm.py [--edits 2000] [--url postgresql+psycopg://…/EMPTY_DATABASE]

Each of two processes makes that many edits of its own, none waiting for the other; an edit that clashes is
put in after both values were told. At the end both must see the same farm, and the history must hold every
edit of both. Without an address a server of its own is started on the loopback. Prints counts and times.
"""

from __future__ import annotations

import argparse
import dataclasses
import json
import random
import statistics
import subprocess
import sys
import time
from pathlib import Path
from typing import Any, Final

sys.path.insert(0, str(Path(__file__).resolve().parent.parent))

from planner.actions.batches import change_batch
from planner.actions.session import Session
from planner.bootstrap import Means, utc_now
from planner.farm.merging import ClashError
from planner.store.acts import KEPT_ACTS
from planner.store.store import FarmStore
from tests.postgres.server import a_database, a_server

ROOT: Final = Path(__file__).resolve().parent.parent
SAMPLE: Final = ROOT / "sample_data" / "backyard.toml"
_MS: Final = 1000.0
_BATCHES: Final = 12


def opened(url: str, who: str, means: Means) -> Session:
    """Return a session of one person."""
    store = FarmStore.open(url)
    return Session(store, means.catalogue, holds_of=means.holds, faults_of=means.faults, now=utc_now, who=who)


def edit(url: str, who: str, edits: int) -> dict[str, Any]:
    """Make the edits of one desk; return counts, times, and the last value this desk put in each batch."""
    chance, session = random.Random(who), opened(url, who, Means())
    times, clashes, mine = [], 0, 0
    for number in range(edits):
        batch = session.farm.batches[chance.randrange(_BATCHES)]
        began = time.perf_counter()
        wanted = change_batch(session.farm, dataclasses.replace(batch, notes=f"{who} {number}"))
        while True:
            try:
                session.act(wanted)
                break
            except ClashError as clash:
                clashes += 1
                wanted = clash.mine
        times.append((time.perf_counter() - began) * _MS)
        mine += 1
    return {"who": who, "edits": mine, "clashes": clashes, "median_ms": statistics.median(times)}


def run_both(url: str, edits: int) -> list[dict[str, Any]]:
    """Run two desks in processes of their own and return what each says."""
    command = [sys.executable, __file__, "--url", url, "--edits", str(edits), "--who"]
    desks = [subprocess.Popen([*command, who], stdout=subprocess.PIPE, text=True) for who in ("Ana", "Ben")]
    return [json.loads(desk.communicate()[0]) for desk in desks]


def judged(url: str, told: list[dict[str, Any]], edits: int) -> int:
    """Compare what both say with what is kept; print, and return 1 when anything is missing."""
    means = Means()
    one, other = opened(url, "Ana", means), opened(url, "Ben", means)
    for each in told:
        told_of = f"{each['clashes']} clashes told, median {each['median_ms']:.1f} ms an edit"
        print(f"{each['who']}: {each['edits']} edits, {told_of}")
    with FarmStore.open(url) as store:
        acts = store.acts()
        revision = acts[-1].seq
    # The history keeps its latest acts; the number of the last one tells how many there were.
    whole = revision == 2 * edits and len(acts) == min(2 * edits, KEPT_ACTS)
    same = one.farm == other.farm
    print(f"{revision} acts of {2 * edits} kept in order; both desks see the same farm: {same}")
    return 0 if whole and same else 1


def main() -> int:
    """Run the two desks, or one of them when `--who` says so."""
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawTextHelpFormatter)
    parser.add_argument("--edits", type=int, default=2000)
    parser.add_argument("--url")
    parser.add_argument("--who", help=argparse.SUPPRESS)
    parsed = parser.parse_args()
    if parsed.who:
        print(json.dumps(edit(parsed.url, parsed.who, parsed.edits)))
        return 0
    if parsed.url is None:
        with a_server() as server, a_database(server, "farm_of_two") as url:
            return _measured(url, parsed.edits)
    return _measured(parsed.url, parsed.edits)


def _measured(url: str, edits: int) -> int:
    means = Means()
    farm = means.read(SAMPLE).farm
    FarmStore.create(url, farm, means.holds(farm)).close()
    return judged(url, run_both(url, edits), edits)


if __name__ == "__main__":
    sys.exit(main())
