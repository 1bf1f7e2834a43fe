"""Finds the few spans of days in which room has to be looked at, and which of them a sowing lasts through.

Between the first coming and the first leaving after it nothing leaves, so all that comes in such a span
stands there at once: one look at the span is as good as one at each of its days.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from planner.planning.season_plan.values import Ints


@dataclass(frozen=True, slots=True, kw_only=True, eq=False)
class Spans:
    """First day of each span and what is free there; first and last span (before it) of each sowing."""

    start: Ints
    free: Ints
    first: Ints
    last: Ints


def spans_of(come: Ints, leave: Ints, *, held: Ints, places: int) -> Spans:
    """Return the spans of sowings that come on days and leave on others, beside what is held by day.

    `held` has a number for each day from day 0 on, and at least until the last sowing leaves.
    """
    days = held.size
    change = np.diff(held, prepend=0)
    comes, leaves = change > 0, change < 0
    comes[come] = True
    leaves[np.minimum(leave, days - 1)] = True
    start = _starts(comes, leaves)
    first = np.searchsorted(start, come, side="right") - 1
    last = np.maximum(np.searchsorted(start, leave, side="left"), first + 1)
    most = np.maximum.reduceat(held, start) if days else np.zeros(0, dtype=np.int64)
    return Spans(start=start, free=np.maximum(places - most, 0), first=first, last=last)


def _starts(comes: np.ndarray, leaves: np.ndarray) -> Ints:
    """Return the days on which something comes after something has left, and day 0."""
    found, left = [0], False
    for day in np.flatnonzero(comes | leaves).tolist():
        left = left or (bool(leaves[day]) and day > 0)
        if comes[day] and left:
            found.append(day)
            left = False
    return np.asarray(found, dtype=np.int64)
