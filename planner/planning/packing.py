"""Fills one bed day after day with lots that come and go, without looking at every raft for each lot.

Places of a bed are alike, so a lot always fits while enough of them are free for as long as it stays.
Units are kept sorted by how many places they have free: the unit that is just enough is found by
bisection. Days are whole numbers. Must know nothing of crops, batches, words or the forecast.
"""

from __future__ import annotations

from bisect import bisect_left, insort
from collections.abc import Iterable, Iterator
from enum import Enum
from heapq import heappop, heappush
from itertools import pairwise
from typing import Final, NamedTuple

from planner.planning.runs import Run, put_back, smallest_runs, take_out

FOREVER: Final = 1 << 40
"""Day that never comes: no later hold waits for these places."""
_LOOKED_AT: Final = 32
"""Units that are looked through for places side by side."""


class Spread(Enum):
    """How a lot may lie on the units of a bed."""

    FEWEST_UNITS = "fewest units in use"
    TOGETHER = "together while there is room"
    NEVER_SPLIT = "never on more units than it needs"


class FixedHold(NamedTuple):
    """Places that are held whatever is packed: from `start` to the day before `end`."""

    start: int
    end: int
    unit: int
    first: int
    last: int


class Piece(NamedTuple):
    """A run of places on a unit that is free until a day."""

    unit: int
    first: int
    size: int
    until: int


class _Shelf:
    """Free places of one unit that stay free until the same day."""

    __slots__ = ("free", "runs")

    def __init__(self) -> None:
        self.runs: list[Run] = []
        self.free = 0

    def take(self, count: int) -> list[Run]:
        used = smallest_runs(self.runs, count)
        for run in used:
            take_out(self.runs, run)
        self.free -= count
        return used


class BedFilling:
    """Free places of one bed while days go by; `advance` first, then `take`.

    Units that nothing stands on count as not yet in use, so that `Spread.FEWEST_UNITS` opens one only
    when those in use are not enough. Units are numbered from 1.
    """

    def __init__(self, *, units: int, places_per_unit: int, fixed: Iterable[FixedHold], spread: Spread):
        self._places = places_per_unit
        self._spread = spread
        self._shelves: dict[tuple[int, int], _Shelf] = {}
        # Sorted (free places, unit) of shelves that nothing waits for, and (until, unit) of the others.
        self._by_size: list[tuple[int, int]] = []
        self._waited: list[tuple[int, int]] = []
        # What comes free on a day, and a heap of those days.
        self._coming: dict[int, list[Piece]] = {}
        self._days: list[int] = []
        self._lasting = 0
        self._day = -FOREVER - 1
        self.used: set[int] = set()
        held = _by_unit(fixed)
        self._closed = [unit for unit in range(units, 0, -1) if unit not in held]
        for unit, holds in held.items():
            for day, piece in _gaps(unit, holds, places_per_unit):
                self._expect(day, (piece,))
        if spread is not Spread.FEWEST_UNITS:
            self._open(len(self._closed))

    def advance(self, day: int) -> None:
        """Take back what is free again on a day, and forget what a fixed hold has begun to take."""
        if day <= self._day:
            return
        self._day = day
        while self._days and self._days[0] <= day:
            self._put([piece for piece in self._coming.pop(heappop(self._days)) if piece.until > day])
        while self._waited and self._waited[0][0] <= day:
            del self._shelves[self._waited.pop(0)]

    def _expect(self, day: int, pieces: Iterable[Piece]) -> None:
        known = self._coming.get(day)
        if known is None:
            known = self._coming[day] = []
            heappush(self._days, day)
        known.extend(pieces)

    def free(self, until: int) -> int:
        """Return how many places are free now and stay so up to the day before `until`."""
        lasting = self._lasting + len(self._closed) * self._places
        if not self._waited:
            return lasting
        return lasting + sum([self._shelves[key].free for key in self._waited_from(until)])

    def _waited_from(self, until: int) -> list[tuple[int, int]]:
        return self._waited[bisect_left(self._waited, (until,)) :] if self._waited else []

    def take(self, count: int, until: int) -> tuple[Piece, ...]:
        """Take `count` places up to the day before `until`; take and return none if that cannot be."""
        if count < 1 or self.free(until) < count:
            return ()
        chosen = self._chosen(count, until)
        pieces = tuple([piece for key, part in chosen for piece in self._taken(key, part)])
        self._expect(until, pieces)
        self.used.update([piece.unit for piece in pieces])
        return pieces

    def _chosen(self, count: int, until: int) -> list[tuple[tuple[int, int], int]]:
        """Return (shelf, places) that make up a lot; places that a fixed hold waits for come first."""
        waited = self._waited_from(until)
        fitting = [key for key in waited if self._shelves[key].free >= count]
        if fitting:
            unbroken = (key for key in fitting if any(size >= count for _, size in self._shelves[key].runs))
            return [(next(unbroken, fitting[0]), count)]
        if self._spread is not Spread.FEWEST_UNITS:
            whole = self._whole(count)
            if whole:
                return whole
        if self._spread is Spread.NEVER_SPLIT:
            return self._unsplit(count, until)
        if self._lasting < count:
            self._open(-(-(count - self._lasting) // self._places))
        if not waited:
            return list(self._from_lasting(count))
        chosen = list(self._from_lasting(min(count, self._lasting)))
        count -= sum(part for _, part in chosen)
        for key in sorted(waited, key=self._fullest):
            if count <= 0:
                break
            part = min(count, self._shelves[key].free)
            chosen.append((key, part))
            count -= part
        return chosen

    def _whole(self, count: int) -> list[tuple[tuple[int, int], int]]:
        """Return a unit with a run of places side by side that holds a lot whole, the fullest such, or none.

        Only the units that are next in line are looked at, for most have one run.
        """
        at = bisect_left(self._by_size, (count,))
        for _, unit in self._by_size[at : at + _LOOKED_AT]:
            if any(size >= count for _, size in self._shelves[FOREVER, unit].runs):
                return [((FOREVER, unit), count)]
        return []

    def _fullest(self, key: tuple[int, int]) -> tuple[int, tuple[int, int]]:
        return -self._shelves[key].free, key

    def _open(self, units: int) -> None:
        opened = [self._closed.pop() for _ in range(min(units, len(self._closed)))]
        self._put([Piece(unit, 1, self._places, FOREVER) for unit in opened])

    def _from_lasting(self, count: int) -> Iterator[tuple[tuple[int, int], int]]:
        """Yield the unit that is just enough, else the emptiest ones and then one for the rest."""
        left = len(self._by_size)
        while count > 0:
            at = bisect_left(self._by_size, (count,), 0, left)
            if at < left:
                yield (FOREVER, self._by_size[at][1]), count
                return
            left -= 1
            free, unit = self._by_size[left]
            yield (FOREVER, unit), free
            count -= free

    def _unsplit(self, count: int, until: int) -> list[tuple[tuple[int, int], int]]:
        """Return shelves on no more units than a lot of this size needs, or none."""
        most = -(-count // self._places)
        chosen = list(self._from_lasting(count)) if self._lasting >= count else []
        if chosen and len(chosen) <= most:
            return chosen
        by_unit: dict[int, list[tuple[int, int]]] = {}
        for key in (*self._waited_from(until), *((FOREVER, unit) for _, unit in self._by_size)):
            by_unit.setdefault(key[1], []).append(key)
        room = {unit: sum(self._shelves[key].free for key in keys) for unit, keys in by_unit.items()}
        units = sorted(room, key=lambda unit: (-room[unit], unit))[:most]
        if sum(room[unit] for unit in units) < count:
            return []
        chosen = []
        for key in (key for unit in units for key in by_unit[unit]):
            part = min(count, self._shelves[key].free)
            if part:
                chosen.append((key, part))
            count -= part
        return chosen

    def _put(self, pieces: Iterable[Piece]) -> None:
        """Lay free places on their shelves; the order by size is set right once for each shelf."""
        before: dict[int, int] = {}
        for unit, first, size, until in pieces:
            key = until, unit
            shelf = self._shelves.get(key)
            if shelf is None:
                shelf = self._shelves[key] = _Shelf()
                if until != FOREVER:
                    insort(self._waited, key)
            if until == FOREVER:
                before.setdefault(unit, shelf.free)
            put_back(shelf.runs, (first, size))
            shelf.free += size
        for unit, free in before.items():
            self._resize(unit, free, self._shelves[FOREVER, unit].free)

    def _taken(self, key: tuple[int, int], count: int) -> list[Piece]:
        until, unit = key
        shelf = self._shelves[key]
        before = shelf.free
        runs = shelf.take(count)
        if until == FOREVER:
            self._resize(unit, before, shelf.free)
        return [Piece(unit, first, size, until) for first, size in runs]

    def _resize(self, unit: int, before: int, after: int) -> None:
        """Keep the order of units by free places; a full unit is not in it."""
        if before:
            del self._by_size[bisect_left(self._by_size, (before, unit))]
        if after:
            insort(self._by_size, (after, unit))
        self._lasting += after - before


def _by_unit(fixed: Iterable[FixedHold]) -> dict[int, list[FixedHold]]:
    found: dict[int, list[FixedHold]] = {}
    for hold in fixed:
        found.setdefault(hold.unit, []).append(hold)
    return found


def _gaps(unit: int, holds: list[FixedHold], places: int) -> Iterator[tuple[int, Piece]]:
    """Yield when runs of one unit become free, each with the day on which a fixed hold takes it again."""
    edges = sorted({1, places + 1, *(hold.first for hold in holds), *(hold.last + 1 for hold in holds)})
    for first, behind in pairwise(edges):
        over = sorted(hold for hold in holds if hold.first <= first and behind <= hold.last + 1)
        free_from = -FOREVER
        for hold in over:
            if hold.start > free_from:
                yield free_from, Piece(unit, first, behind - first, hold.start)
            free_from = max(free_from, hold.end)
        yield free_from, Piece(unit, first, behind - first, FOREVER)
