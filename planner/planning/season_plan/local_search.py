"""Betters a plan of whole lots step by step: a lot more, a lot fewer, a lot here instead of there.

Yields after each step so that whoever asks can look at the clock, show the best so far, or stop.
"""

from __future__ import annotations

from collections.abc import Iterator
from typing import Final

import numpy as np

from planner.planning.season_plan.tally import Near, Tally, near
from planner.planning.season_plan.values import Floats, Ints

_WORTH_IT: Final = 1e-9
_LOOKED_AT: Final = 3
"""How many of the most hopeful columns are reckoned exactly before the search looks elsewhere."""
_REACH_WEEKS: Final = 6
"""How far from a sowing a lot of it is tried, before or after."""
_SINGLE_STEPS: Final = 10
_TEARS: Final = 90
"""How many steps of each sort are taken by turns."""
_MOST_TORN_OUT: Final = 6
"""How many lots are taken out at once when single steps help no more."""


def improve(tally: Tally, *, seed: int) -> Iterator[float]:
    """Better a plan in place without end, yielding after each step what it has changed the cost by.

    By turns a lot that is sown is taken out and put where it does most good near by, and some lots are torn
    out of one stretch of weeks and the room is filled anew; what is no better is put back.
    """
    search = _Search(tally, seed)
    yield search.fill()
    while True:
        for column in search.sown()[:_SINGLE_STEPS]:
            yield search.moved(column)
        for _ in range(_TEARS):
            yield search.torn_out()


class _Search:
    """One search with its own chance."""

    def __init__(self, tally: Tally, seed: int) -> None:
        self._tally = tally
        self._random = np.random.default_rng(seed)
        self._near: dict[int, Near] = {}
        self._everywhere = np.arange(tally.lots.size)

    def sown(self) -> list[int]:
        """Return the columns that are sown, in an order of chance."""
        found: list[int] = self._random.permutation(np.flatnonzero(self._tally.lots > 0)).tolist()
        return found

    def fill(self, most: int | None = None) -> float:
        """Sow a lot wherever one more does good, the best first; return the change in cost."""
        change, done = 0.0, 0
        while most is None or done < most:
            step = self._best_anywhere()
            if step is None:
                break
            self._tally.change(step[0], 1)
            change += step[1]
            done += 1
        return change

    def moved(self, column: int) -> float:
        """Take a lot out and put lots in near by while that does good; put all back unless it is better."""
        tally = self._tally
        if not tally.lots[column]:
            return 0.0
        total = tally.change_of(column, -1)
        tally.change(column, -1)
        added: list[int] = []
        while len(added) < _LOOKED_AT:
            step = self._best_near(column)
            if step is None or (not added and step[0] == column):
                break
            tally.change(step[0], 1)
            added.append(step[0])
            total += step[1]
        if total < -_WORTH_IT:
            return total
        for each in added:
            tally.change(each, -1)
        tally.change(column, 1)
        return 0.0

    def torn_out(self) -> float:
        """Take some lots of a stretch of weeks out, fill up anew, and put all back unless it is better."""
        tally = self._tally
        before = tally.lots.copy()
        total = 0.0
        for column in self._stretch():
            total += tally.change_of(column, -1)
            tally.change(column, -1)
        total += self.fill(2 * _MOST_TORN_OUT)
        if total < -_WORTH_IT:
            return total
        tally.put(before)
        return 0.0

    def _stretch(self) -> list[int]:
        columns, sown = self._tally.model.columns, np.flatnonzero(self._tally.lots > 0)
        if not sown.size:
            return []
        middle = int(columns.week[self._random.choice(sown)])
        close = sown[np.abs(columns.week[sown] - middle) <= _REACH_WEEKS // 2]
        count = min(int(self._random.integers(2, _MOST_TORN_OUT + 1)), close.size)
        found: list[int] = self._random.choice(close, size=count, replace=False).tolist()
        return found

    def _best_anywhere(self) -> tuple[int, float] | None:
        return self._best(self._everywhere, self._tally.gain_of_each())

    def _best_near(self, column: int) -> tuple[int, float] | None:
        found = self._near_of(column)
        return self._best(found.columns, self._tally.gain_among(found))

    def _near_of(self, column: int) -> Near:
        found = self._near.get(column)
        if found is None:
            columns = self._tally.model.columns
            close = np.abs(columns.week - columns.week[column]) <= _REACH_WEEKS
            chosen = np.flatnonzero(close & (columns.crop == columns.crop[column]))
            found = self._near[column] = near(self._tally.model, chosen)
        return found

    def _best(self, columns: Ints, hopes: Floats) -> tuple[int, float] | None:
        """Return the column where one lot more saves most, and the change; None when none saves any."""
        hopeful = np.flatnonzero(hopes < -_WORTH_IT)
        hopeful = hopeful[self._tally.fits(columns[hopeful])]
        best: tuple[int, float] | None = None
        for place in hopeful[_lowest(hopes[hopeful], _LOOKED_AT)].tolist():
            if hopes[place] >= (-_WORTH_IT if best is None else best[1]):
                break
            column = int(columns[place])
            change = self._tally.change_of(column, 1)
            if change < (-_WORTH_IT if best is None else best[1]):
                best = (column, change)
        return best


def _lowest(hopes: Floats, count: int) -> Ints:
    """Return where the lowest few stand, lowest first."""
    if hopes.size <= count:
        return np.argsort(hopes, kind="stable")
    lowest = np.argpartition(hopes, count)[:count]
    found: Ints = lowest[np.argsort(hopes[lowest], kind="stable")]
    return found
