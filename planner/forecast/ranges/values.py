"""Low, likely and high of what is foreseen, and what each figure has to do with it."""

from __future__ import annotations

from dataclasses import dataclass

from planner.farm.fields import Id
from planner.forecast.values import Floats, Ruler


@dataclass(frozen=True, slots=True, kw_only=True, eq=False)
class Range:
    """Arrays of one shape; low <= likely <= high, all not-a-number where there is no figure."""

    low: Floats
    likely: Floats
    high: Floats


@dataclass(frozen=True, slots=True, kw_only=True, eq=False)
class LoopRanges:
    """One loop by week: supply, demand [g] and ratio by (element, week), feed by week [g/d]."""

    loop: Id
    name: str
    supply_g: Range
    demand_g: Range
    ratio: Range
    feed_g_per_day: Range


@dataclass(frozen=True, slots=True, kw_only=True, eq=False)
class Outcome:
    """What is foreseen by week: supply, demand [g] by (loop, element, week), feed [g/d] by (loop, week),
    harvest in plants and grams by (crop, week); or by how much that changes.
    """

    supply_g: Floats
    demand_g: Floats
    feed_g_per_day: Floats
    harvest_plants: Floats
    harvest_g: Floats


@dataclass(frozen=True, slots=True, kw_only=True, eq=False)
class Swing:
    """One figure moved from its likely value to its low and its high one, and what that changes.

    Several `paths` are figures that are moved together because they go together, such as the growth of
    a fish at every size; then `low`, `likely` and `high` are those of the first.
    """

    paths: tuple[str, ...]
    unit: str
    low: float
    likely: float
    high: float
    at_low: Outcome
    at_high: Outcome


@dataclass(frozen=True, slots=True, kw_only=True, eq=False)
class Ranges:
    """Ranges of everything foreseen, and the swings they come from."""

    ruler: Ruler
    crops: tuple[str, ...]
    loops: tuple[LoopRanges, ...]
    harvest_plants: Range
    harvest_g: Range
    likely: Outcome
    swings: tuple[Swing, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class Sensitivity:
    """What the ratio of supply to demand would be with one figure at its low and at its high value."""

    paths: tuple[str, ...]
    unit: str
    low: float
    likely: float
    high: float
    ratio_at_low: float
    ratio_likely: float
    ratio_at_high: float

    @property
    def width(self) -> float:
        """How far the ratio is moved from one end to the other."""
        ends = (self.ratio_at_low, self.ratio_likely, self.ratio_at_high)
        return max(ends) - min(ends)
