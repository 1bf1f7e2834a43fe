"""A week of the ration table, and how a day's feed is handed out, as values. Must know nothing of words."""

from __future__ import annotations

from dataclasses import dataclass

from planner.farm.species import Feed


@dataclass(frozen=True, slots=True, kw_only=True)
class Scoop:
    """How a day's feed is handed out: meals a day, and grams in a level scoop, 0 when not weighed."""

    meals: int
    grams: float


@dataclass(frozen=True, slots=True, kw_only=True)
class WeekRation:
    """What a group is fed in a week; `feed_g` is a day on which it is fed, `span_g` slow to quick growth."""

    week: int
    feed_g: float
    span_g: tuple[float, float] | None
    days_off: int
    count: float
    weight_g: float
    density: float


def suits(feed: Feed, weight_g: float) -> bool:
    """Tell whether a feed is made for fish of a weight."""
    return feed.for_fish_from_g <= weight_g <= feed.for_fish_to_g
