"""Where a thing stands among its kind: positions with room between them, so that few rows move.

A thing put back in the middle gets a number between its neighbours; only when none is left are all
numbered anew.
"""

from __future__ import annotations

from typing import Final

from planner.farm.fields import Id

STEP: Final = 1024
"""Room between two things that were added one after the other."""


class Order:
    """The things of one kind in order, with their positions, while an act is carried out."""

    def __init__(self, places: list[tuple[Id, int]]) -> None:
        """Begin with ids and positions as they are in the table, first thing first."""
        self._places = places
        self._crowded = False

    def take_out(self, index: int) -> None:
        """Note that the thing at `index` is gone."""
        del self._places[index]

    def put_in(self, thing: Id, index: int | None) -> int:
        """Return the position of a thing put in at `index`, or last."""
        at = len(self._places) if index is None else min(index, len(self._places))
        before = self._places[at - 1][1] if at else None
        after = self._places[at][1] if at < len(self._places) else None
        position = _between(before, after)
        self._crowded = self._crowded or position in (before, after)
        self._places.insert(at, (thing, position))
        return position

    def anew(self) -> list[tuple[Id, int]]:
        """Return new positions for all things when one found no room between its neighbours."""
        if not self._crowded:
            return []
        return [(thing, at * STEP) for at, (thing, _) in enumerate(self._places)]


def _between(before: int | None, after: int | None) -> int:
    if before is None:
        return 0 if after is None else after - STEP
    return before + STEP if after is None else (before + after) // 2
