"""What a remedy is, as values: its kind, its changes, what it does, and what to look out for."""

from __future__ import annotations

from dataclasses import dataclass
from enum import Enum
from typing import Final

from planner.farm.changes import ChangeSet
from planner.farm.species import ELEMENTS
from planner.forecast.verdicts import symbol_of

Details = tuple[tuple[str, float | str], ...]


class RemedyKind(Enum):
    """What a remedy does, the cheapest first: plantings, then feed, liquor, supplements, fish."""

    SHIFT_SOWINGS = "shift sowings"
    HOLD_TRANSPLANTS = "hold transplants"
    THIN_SOWINGS = "thin sowings"
    OTHER_BED = "other bed"
    LEAVE_OUT = "leave out"
    FEED_APPETITE = "feed what fish eat"
    RETURN_LIQUOR = "return liquor"
    DOSE_SUPPLEMENT = "dose supplement"
    DOSE_BASE = "dose base"
    HARVEST_PART = "harvest part"
    HARVEST_EARLIER = "harvest earlier"
    STOCK_EARLIER = "stock earlier"
    STOCK_LATER = "stock later"
    STOCK_FEWER = "stock fewer"
    STOCK_MORE = "stock more"


ORDER: Final = tuple(RemedyKind)
"""The stated order of cost."""


class SideEffect(Enum):
    """What else a remedy does; words are made from this by whoever shows it."""

    LATER_HARVEST = "later harvest"
    SMALLER_HARVEST = "smaller harvest"
    OLDER_SEEDLINGS = "older seedlings"
    NURSERY_HELD_LONGER = "nursery held longer"
    MORE_FEED = "more feed"
    NOT_ON_SHELF = "not on the shelf"
    RAISES_PH = "raises pH"
    TEST_FIRST = "test first"
    SALT_BUILDS_UP = "salt builds up"
    NOT_ON_HARVEST_DAY = "not on harvest day"
    YIELD_OF_SOLIDS_UNSURE = "yield of solids unsure"
    NO_REST_OF_PURGE = "part harvest without purge"
    MORE_FISH_LATER = "fuller tanks later"
    LIGHTER_FISH = "lighter fish"
    FINGERLINGS_NEEDED = "fingerlings needed"
    LESS_FEED = "less feed"
    MORE_WEEKS_SHORT_ELSEWHERE = "more weeks short elsewhere"


@dataclass(frozen=True, slots=True, kw_only=True)
class Effect:
    """How a farm stands in the flagged weeks, and its harvest over the whole plan.

    `lowest_ratio` is by element in the order of `ELEMENTS`, over the flagged weeks, None without demand;
    so is `feed_ratio_g_per_m2_d`, the lowest. `weeks_short` are flagged weeks in which an element is short,
    `plan_weeks_short` all of the loop. `fall_share` is the lowest week of feed against the weeks before.
    `peak_kg_per_m3` is of the fullest tank of the loop in the flagged weeks.
    """

    lowest_ratio: tuple[float | None, ...]
    weeks_short: int
    plan_weeks_short: int
    feed_ratio_g_per_m2_d: float | None
    fall_share: float
    peak_kg_per_m3: float
    unplaced_plants: int
    slow_batches: int
    harvest_g: tuple[tuple[str, float], ...]
    fish_g: float
    feed_g: float

    @property
    def limiting(self) -> int | None:
        """Index of the element with the lowest ratio, None without demand."""
        known = [(value, n) for n, value in enumerate(self.lowest_ratio) if value is not None]
        return min(known)[1] if known else None

    @property
    def limiting_symbol(self) -> str:
        """Symbol of the element with the lowest ratio, empty without demand."""
        found = self.limiting
        return "" if found is None else symbol_of(found)

    def ratio_of(self, element: str) -> float | None:
        """Return the lowest ratio of one of `ELEMENTS`."""
        return self.lowest_ratio[ELEMENTS.index(element)]

    @property
    def crops_g(self) -> float:
        """Harvest of all crops over the plan [g]."""
        return sum(grams for _, grams in self.harvest_g)


@dataclass(frozen=True, slots=True, kw_only=True)
class Remedy:
    """One repair: apply `change_set` to take it, its turned one to let it go again.

    `details` are what a sentence needs: batch codes, weeks, grams, products. `severity` says how bad the
    flagged matter is before and after, in its own unit, 0 when it is repaired. `cautions` are keys of the
    catalogue.
    """

    kind: RemedyKind
    change_set: ChangeSet
    details: Details
    before: Effect
    after: Effect
    severity_before: float
    severity_after: float
    side_effects: tuple[SideEffect, ...]
    cautions: tuple[str, ...]

    @property
    def repairs(self) -> bool:
        """Whether nothing is left of what was flagged."""
        return self.severity_after <= 0.0

    @property
    def harvest_change_g(self) -> float:
        """Crops gained over the plan [g], negative when lost."""
        return self.after.crops_g - self.before.crops_g


@dataclass(frozen=True, slots=True, kw_only=True)
class Candidate:
    """A repair that may be worth offering, before its effect is known."""

    kind: RemedyKind
    change_set: ChangeSet
    details: Details = ()
    side_effects: tuple[SideEffect, ...] = ()
    cautions: tuple[str, ...] = ()
