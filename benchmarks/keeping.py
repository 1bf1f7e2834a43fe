"""Times how long a large farm file takes to open, and how long until an act is safe on disk.

    python benchmarks/keeping.py [--acts 200]

The file holds ten sites over five years. *open* is until the farm is there as a value, with its history and
the days its places are held; *act* is one change of a batch by the store alone, until the database has it.
The floor beside them is a plain write of the same size that waits for the disk.
"""

from __future__ import annotations

import argparse
import dataclasses
import os
import statistics
import sys
import tempfile
import time
from pathlib import Path
from typing import Final

sys.path.insert(0, str(Path(__file__).resolve().parent.parent))

from planner.bootstrap import Means, utc_now
from planner.farm.changes import Change, ChangeSet
from planner.farm.farm import Farm
from planner.farm.ids import id_from
from planner.store.acts import ActKind
from planner.store.store import FarmStore
from sample_data.make_big_farm import big_farm

SITES: Final = 10
BATCHES: Final = 4000
RAFTS: Final = 200
OPENINGS: Final = 7
_MS: Final = 1000.0
_PAGE: Final = 4096


def ten_sites(farm: Farm) -> Farm:
    """Return the farm with nine sites more, so that the file holds ten."""
    more = tuple(
        dataclasses.replace(farm.sites[0], id=id_from(f"site {number}"), name=f"Site {number}")
        for number in range(2, SITES + 1)
    )
    return dataclasses.replace(farm, sites=(*farm.sites, *more))


def opened(path: Path) -> float:
    """Return how long the file takes to be there as a value [ms]."""
    began = time.perf_counter()
    with FarmStore.open(path) as store:
        store.load()
        store.held()
        store.acts()
        return (time.perf_counter() - began) * _MS


def acts(path: Path, count: int) -> list[float]:
    """Return how long each act takes until it is kept [ms]."""
    times = []
    with FarmStore.open(path) as store:
        batches = list(store.load().batches)
        for number in range(count):
            at = number % len(batches)
            after = dataclasses.replace(batches[at], notes=f"act {number}")
            change_set = ChangeSet(title="Note", changes=(Change(before=batches[at], after=after),))
            began = time.perf_counter()
            store.apply(change_set, [], kind=ActKind.DO, at=utc_now())
            times.append((time.perf_counter() - began) * _MS)
            batches[at] = after
    return times


def floor(folder: Path, count: int) -> list[float]:
    """Return how long it takes to write a page and wait for the disk [ms]."""
    times = []
    with (folder / "floor").open("wb") as file:
        for _ in range(count):
            began = time.perf_counter()
            file.write(b"x" * _PAGE)
            file.flush()
            os.fsync(file.fileno())
            times.append((time.perf_counter() - began) * _MS)
    return times


def main() -> None:
    """Measure and print."""
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawTextHelpFormatter)
    parser.add_argument("--acts", type=int, default=200)
    parsed = parser.parse_args()
    means = Means()
    farm = ten_sites(big_farm(batches=BATCHES, rafts=RAFTS))
    with tempfile.TemporaryDirectory() as name:
        path = Path(name) / "large.raftweek"
        FarmStore.create(path, farm, means.holds(farm)).close()
        waits = floor(Path(name), parsed.acts)
        times = acts(path, parsed.acts)
        opens = [opened(path) for _ in range(OPENINGS)]
        size = path.stat().st_size / 1e6
    print(f"{len(farm.sites)} sites, {len(farm.batches)} batches, {size:.1f} MB")
    print(f"open    median {statistics.median(opens):8.1f} ms")
    print(f"act     median {statistics.median(times):8.2f} ms, worst {max(times):.1f} ms")
    print(f"floor   median {statistics.median(waits):8.2f} ms")


if __name__ == "__main__":
    main()
