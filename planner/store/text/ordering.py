"""Keeps the order things were entered in, though the text puts them under their tables."""

from __future__ import annotations

from bisect import bisect_left
from collections.abc import Iterable, Sequence
from typing import TypeVar

T = TypeVar("T")


def in_order(entries: Iterable[tuple[int | None, T]]) -> tuple[T, ...]:
    """Return things as they stand in the text, those with a number put at that place, from 1.

    >>> in_order([(None, "a"), (1, "b"), (None, "c")])
    ('b', 'a', 'c')
    """
    every = list(entries)
    free = [thing for order, thing in every if order is None]
    if len(free) == len(every):
        return tuple(free)
    numbered = [(order, thing) for order, thing in every if order is not None]
    result: list[T] = []
    taken = 0
    for order, thing in sorted(numbered, key=_first):
        fill = min(max(0, order - 1 - len(result)), len(free) - taken)
        result.extend(free[taken : taken + fill])
        taken += fill
        result.append(thing)
    return (*result, *free[taken:])


def _first(pair: tuple[int, T]) -> int:
    return pair[0]


def orders(ranks: Sequence[int]) -> list[int | None]:
    """Return which numbers have to be written so that `in_order` gives the ranks (from 0) back.

    As few as possible: a longest rising run of the ranks needs none.

    >>> orders([0, 1, 2]), orders([1, 2, 0])
    ([None, None, None], [None, None, 1])
    """
    rising = _longest_rising(ranks)
    return [None if position in rising else rank + 1 for position, rank in enumerate(ranks)]


def _longest_rising(ranks: Sequence[int]) -> set[int]:
    """Return the positions of a longest rising run, found by patience sorting."""
    lowest: list[int] = []
    ends: list[int] = []
    before: list[int] = []
    for position, rank in enumerate(ranks):
        length = bisect_left(lowest, rank)
        before.append(ends[length - 1] if length else -1)
        lowest[length : length + 1] = [rank]
        ends[length : length + 1] = [position]
    found: set[int] = set()
    position = ends[-1] if ends else -1
    while position >= 0:
        found.add(position)
        position = before[position]
    return found
