"""How even the feed of staggered groups is: equal groups on a turning wheel of weeks, and real plans.

Must know nothing of farms, tanks or dates.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from planner.forecast.values import Floats


@dataclass(frozen=True, slots=True, kw_only=True)
class Steadiness:
    """How even a feed is: lowest over highest, standard deviation over mean, fall at a harvest."""

    lowest_over_highest: float
    variation: float
    drop_share: float


def staggered_feed(feed_by_week: Floats, *, groups: int) -> Floats:
    """Return the feed of equal groups, evenly staggered, in each week of a full turn [as given].

    feed_by_week is what one group eats in each week from stocking to harvest; whoever is harvested is
    replaced at once. In week 0 a group begins. `groups` must divide the weeks.

    >>> staggered_feed(np.array([1.0, 2.0, 3.0, 4.0]), groups=2)
    array([4., 6., 4., 6.])
    """
    weeks = feed_by_week.size
    if groups < 1 or weeks % groups:
        raise ValueError(f"groups is {groups}; it must divide the {weeks} weeks of a turn")
    apart = weeks // groups
    together: Floats = np.sum([np.roll(feed_by_week, turn * apart) for turn in range(groups)], axis=0)
    return together


def steadiness(feed_by_week: Floats) -> Steadiness:
    """Return how even a turn of weeks is whose first week follows a harvest and whose last precedes it.

    >>> found = steadiness(np.array([1.0, 2.0, 3.0, 4.0]))
    >>> (found.lowest_over_highest, found.drop_share, round(found.variation, 3))
    (0.25, 0.75, 0.447)
    """
    return Steadiness(
        lowest_over_highest=float(feed_by_week.min() / feed_by_week.max()),
        variation=variation(feed_by_week),
        drop_share=1.0 - float(feed_by_week[0] / feed_by_week[-1]),
    )


def variation(feed: Floats) -> float:
    """Return standard deviation over mean, 0 for no feed at all.

    >>> variation(np.array([2.0, 2.0]))
    0.0
    """
    mean = float(feed.mean()) if feed.size else 0.0
    return float(feed.std()) / mean if mean > 0.0 else 0.0


@dataclass(frozen=True, slots=True, kw_only=True)
class Hole:
    """How feed falls around one day of harvest.

    `depth_share` is one less the lowest week until the next harvest over the mean of the weeks before;
    `weeks` until feed is back at that mean, None when it is not within the days looked at. `usual_g` is that
    mean, `lowest_g` the lowest week [as given].
    """

    day: int
    depth_share: float
    weeks: float | None
    usual_g: float = 0.0
    lowest_g: float = 0.0


def holes(
    feed_by_day: Floats, harvests: tuple[tuple[int, int], ...], *, days_before: int
) -> tuple[Hole, ...]:
    """Return the hole at each harvest.

    A harvest is the day on which feeding stops for it, and its own day; they come in order of the first.
    The weeks before count from the stop, the lowest week is looked for until the next stop.

    >>> feed = np.array([4.0] * 28 + [1.0] * 7 + [4.0] * 14)
    >>> found = holes(feed, ((28, 28),), days_before=28)[0]
    >>> found.day, found.depth_share, found.weeks, found.usual_g, found.lowest_g
    (28, 0.75, 1.0, 4.0, 1.0)
    """
    ends = [*(stop for stop, _ in harvests[1:]), feed_by_day.size]
    return tuple(
        _hole(feed_by_day, day, start=stop, end=max(end, stop + _WEEK), days_before=days_before)
        for (stop, day), end in zip(harvests, ends, strict=True)
    )


_WEEK = 7


def _hole(feed: Floats, day: int, *, start: int, end: int, days_before: int) -> Hole:
    before = feed[max(start - days_before, 0) : start]
    usual = float(before.mean()) if before.size else 0.0
    after = _week_means(feed[start:])
    if usual <= 0.0 or not after.size:
        return Hole(day=day, depth_share=0.0, weeks=0.0)
    lowest = float(after[: max(end - start - _WEEK + 1, 1)].min())
    fallen = (after < usual).nonzero()[0]
    first = int(fallen[0]) if fallen.size else 0
    back = (feed[start + first :] >= usual).nonzero()[0] if fallen.size else fallen
    weeks = 0.0 if not fallen.size else (float(first + back[0]) / _WEEK if back.size else None)
    depth = max(1.0 - lowest / usual, 0.0)
    return Hole(day=day, depth_share=depth, weeks=weeks, usual_g=usual, lowest_g=lowest)


def _week_means(feed: Floats) -> Floats:
    """Return the mean of the week that begins on each day."""
    if feed.size < _WEEK:
        return feed.mean(keepdims=True) if feed.size else feed
    sums = np.concatenate([[0.0], np.cumsum(feed)])
    means: Floats = (sums[_WEEK:] - sums[:-_WEEK]) / _WEEK
    return means
