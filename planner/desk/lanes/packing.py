"""Lays the bars of one row above each other, so that batches that share a raft never hide each other.

Works on shares of the places of a unit; must know nothing of pixels, Qt or how places are chosen.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from heapq import heappop, heappush
from typing import Final

from planner.desk.lanes.scene import Bar

LEAST_LINES: Final = 0.72
"""Height that still holds a small letter, in lines."""

MOST_LINES: Final = 14.0
"""A row grows no higher than this; more bars on the same days get thinner."""

SHARED_LINES: Final = 1.6
"""Lines that all places of a unit together are worth where batches share it."""

_TINY: Final = 1e-6


@dataclass(frozen=True, slots=True, kw_only=True)
class Held:
    """A bar with the place it begins on and its share of the places of the unit."""

    bar: Bar
    first: int
    share: float


def packed(held: Sequence[Held], *, most_lines: float = MOST_LINES) -> tuple[float, tuple[Bar, ...]]:
    """Return the lines a row needs and its bars with their heights, sorted by first day.

    Bars that touch through common days form a knot; within it each keeps one track. A track is as high
    as the share of its widest bar, but never too low to read, and the row grows for the fullest knot.
    """
    ordered = sorted(held, key=lambda each: (each.bar.start, each.first, each.bar.code))
    knots = [_tracked(knot) for knot in _knots(ordered)]
    needed = max((sum(heights) for _, heights in knots), default=1.0)
    lines = min(max(needed, 1.0), most_lines)
    bars: list[Bar] = []
    for knot, heights in knots:
        squeeze = min(1.0, lines / sum(heights))
        tops = [sum(heights[:track]) * squeeze for track in range(len(heights))]
        bars.extend(
            replace(each.bar, top=tops[track], lines=heights[track] * squeeze) for each, track in knot
        )
    return lines, tuple(bars)


def _knots(ordered: Sequence[Held]) -> list[list[Held]]:
    knots: list[list[Held]] = []
    reach = 0
    for each in ordered:
        if not knots or each.bar.start >= reach:
            knots.append([])
            reach = each.bar.end
        knots[-1].append(each)
        reach = max(reach, each.bar.end)
    return knots


def _tracked(knot: list[Held]) -> tuple[list[tuple[Held, int]], list[float]]:
    """Give every bar of a knot the topmost track that is free on all its days."""
    if len(knot) == 1:
        return [(knot[0], 0)], [max(knot[0].share, LEAST_LINES)]
    free: list[int] = []
    busy: list[tuple[int, int]] = []
    heights: list[float] = []
    placed: list[tuple[Held, int]] = []
    for each in knot:
        while busy and busy[0][0] <= each.bar.start:
            heappush(free, heappop(busy)[1])
        if free:
            track = heappop(free)
            heights[track] = max(heights[track], _shared(each))
        else:
            track = len(heights)
            heights.append(_shared(each))
        heappush(busy, (each.bar.end, track))
        placed.append((each, track))
    return placed, heights


def _shared(held: Held) -> float:
    return max(held.share * SHARED_LINES, LEAST_LINES)


def slot_in(bars: Sequence[Bar], *, lines: float, wanted: float, start: int, end: int) -> tuple[float, float]:
    """Return top and height of the first gap, `wanted` lines high, that no bar takes on these days.

    When nothing is free the whole row is given.
    """
    taken = sorted((bar.top, bar.top + bar.lines) for bar in bars if bar.start < end and bar.end > start)
    at = 0.0
    best = (0.0, 0.0)
    for top, bottom in [*taken, (lines, lines)]:
        if top - at > best[1] + _TINY:
            best = (at, top - at)
        if top - at >= min(wanted, LEAST_LINES) - _TINY:
            return at, min(wanted, top - at)
        at = max(at, bottom)
    return best if best[1] > _TINY else (0.0, lines)
