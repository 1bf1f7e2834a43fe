"""What comes out when ways of stocking are compared: one row for each, with its holes and its changes."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from datetime import date

from planner.farm.changes import ChangeSet
from planner.farm.fields import Id
from planner.planning.stocking.cohorts import Take


def always() -> bool:
    """Return true: nobody is in a hurry."""
    return True


@dataclass(frozen=True, slots=True, kw_only=True)
class Search:
    """How long a better stocking is looked for: rounds for each way, and whether to go on at all.

    The same seed and rounds give the same stocking; `keep_going` is asked before every round.
    """

    rounds: int = 200
    seed: int = 1
    keep_going: Callable[[], bool] = always


@dataclass(frozen=True, slots=True, kw_only=True)
class Stocked:
    """So many fish put into a tank on a day, and when they are taken out."""

    slot: int
    tank: Id
    on: date
    count: int
    takes: tuple[Take, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class HarvestHole:
    """How feed falls around a day of harvest; `weeks` None when it is not back within the judged weeks.

    It falls from what was usual before to the lowest week [g/d].
    """

    on: date
    depth_share: float
    weeks: float | None
    usual_g_per_day: float = 0.0
    lowest_g_per_day: float = 0.0


@dataclass(frozen=True, slots=True, kw_only=True)
class Judged:
    """What a way is judged by: feed of each judged week with the band it should keep [g/d], the fullest tank
    with its live mass [g] and when that is.
    """

    feed_g: tuple[float, ...]
    low_g: tuple[float, ...]
    high_g: tuple[float, ...]
    fullest_tank: Id
    fullest_on: date
    fullest_mass_g: float


@dataclass(frozen=True, slots=True, kw_only=True)
class StockingOption:
    """One way of stocking, judged on a forecast of the changed farm.

    `apart_weeks` lie between two groups, `take_apart_weeks` between two harvests of one; a group grows for
    `grow_weeks` until its first. `inside_share` is of the judged weeks that ask for feed. `score` is the
    share of weeks outside the band plus the mean distance from it as a share of the band's middle: the lower
    the better. `whole` also stocks what is judged beyond the plan and makes the plan long enough;
    `change_set` is what the plan itself takes.
    """

    groups: int
    share: float
    apart_weeks: float
    take_apart_weeks: int
    grow_weeks: int
    stocked: tuple[Stocked, ...]
    holes: tuple[HarvestHole, ...]
    variation: float
    inside_share: float
    mean_feed_g_per_day: float
    peak_density_kg_per_m3: float
    density_limit_kg_per_m3: float
    score: float
    judged: Judged
    change_set: ChangeSet
    whole: ChangeSet

    @property
    def deepest_share(self) -> float:
        """The largest fall of the feed at any harvest."""
        return max((hole.depth_share for hole in self.holes), default=0.0)

    @property
    def longest_weeks(self) -> float | None:
        """The longest hole; None when one does not end within the judged weeks."""
        lengths = [hole.weeks for hole in self.holes]
        return None if None in lengths else max((one for one in lengths if one is not None), default=0.0)


class NoStocking(Exception):  # noqa: N818 - said of a way of stocking, not of a mistake
    """A way of stocking that cannot be: the tanks hold no fish of it, or fish never get heavy enough."""


@dataclass(frozen=True, slots=True, kw_only=True)
class StockingTable:
    """Every way that was asked for, in that order, judged over the same weeks.

    `impossible` are (groups, share) for which the tanks have no room. `best` is the way with the lowest
    score, None when none is possible.
    """

    options: tuple[StockingOption, ...]
    impossible: tuple[tuple[int, float], ...]
    judged_from_on: date
    judged_until_on: date

    @property
    def best(self) -> StockingOption | None:
        """The way with the lowest score; of equals the one with fewer groups."""
        return min(self.options, key=_rank, default=None)


def _rank(option: StockingOption) -> tuple[float, int, float]:
    return option.score, option.groups, -option.share
