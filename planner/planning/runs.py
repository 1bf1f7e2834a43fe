"""Arithmetic of runs of places: what is left free between runs, and which free runs to use.

A run is (first place, count); places count from 1. Must know nothing of beds, batches or days.
"""

from __future__ import annotations

from bisect import bisect_left
from collections.abc import Iterable, Sequence

Run = tuple[int, int]
"""First place and count."""
Runs = tuple[Run, ...]


def runs_between(taken: Iterable[Run], places: int) -> Runs:
    """Return the runs that `taken` (first, last) leaves free of places 1 to `places`.

    >>> runs_between([(4, 6)], 10)
    ((1, 3), (7, 4))
    """
    runs, next_free = [], 1
    for first, last in sorted(taken):
        if first > next_free:
            runs.append((next_free, first - next_free))
        if last >= next_free:
            next_free = last + 1
    if next_free <= places:
        runs.append((next_free, places - next_free + 1))
    return tuple(runs)


def smallest_runs(runs: Sequence[Run], count: int) -> list[Run]:
    """Return runs to use on one unit: a single one that is just enough, else in order of place.

    >>> smallest_runs(((1, 3), (7, 4)), 4), smallest_runs(((1, 3), (7, 4)), 5)
    ([(7, 4)], [(1, 3), (7, 2)])
    """
    if count <= 0:
        return []
    enough = [run for run in runs if run[1] >= count]
    if enough:
        first, _ = enough[0] if len(enough) == 1 else min(enough, key=_by_size)
        return [(first, count)]
    used: list[Run] = []
    for first, size in runs:
        take = min(size, count)
        if take <= 0:
            break
        used.append((first, take))
        count -= take
    return used


def _by_size(run: Run) -> tuple[int, int]:
    first, size = run
    return size, first


def put_back(runs: list[Run], run: Run) -> None:
    """Put a run among free ones in order of place, joined with its neighbours.

    >>> free = [(1, 3), (7, 4)]
    >>> put_back(free, (4, 3)); free
    [(1, 10)]
    """
    first, count = run
    at = bisect_left(runs, run)
    if at < len(runs) and first + count == runs[at][0]:
        count += runs[at][1]
        del runs[at]
    if at > 0 and runs[at - 1][0] + runs[at - 1][1] == first:
        at -= 1
        first, count = runs[at][0], runs[at][1] + count
        del runs[at]
    runs.insert(at, (first, count))


def take_out(runs: list[Run], run: Run) -> None:
    """Take a run that lies at the start of, the end of or within a free one out of the free ones.

    >>> free = [(1, 10)]
    >>> take_out(free, (4, 3)); free
    [(1, 3), (7, 4)]
    """
    first, count = run
    at = bisect_left(runs, (first + 1,)) - 1
    start, size = runs[at]
    left, right = first - start, start + size - first - count
    kept = [(start, left)] if left else []
    if right:
        kept.append((first + count, right))
    runs[at : at + 1] = kept
