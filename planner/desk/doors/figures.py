"""What a new plan comes to at once: sow and feed this week, and the area its fish can carry."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import timedelta
from typing import Final

from planner.desk.behind import Behind
from planner.farm.farm import DAYS_PER_WEEK
from planner.farm.fields import Id

AHEAD_WEEKS: Final = 9


@dataclass(frozen=True, slots=True, kw_only=True)
class Sowing:
    """Seeds of a crop to sow this week."""

    crop: str
    seeds: int


@dataclass(frozen=True, slots=True, kw_only=True)
class Carried:
    """What the feed of a loop can carry now and some weeks on [m²], low to high, and the most planted."""

    loop: Id
    name: str
    now_m2: tuple[float, float]
    then_m2: tuple[float, float]
    planted_now_m2: float
    planted_then_m2: float

    @property
    def fits(self) -> bool:
        """Tell whether no more is planted than the feed can carry, now and then."""
        return self.planted_now_m2 <= self.now_m2[1] and self.planted_then_m2 <= self.then_m2[1]


@dataclass(frozen=True, slots=True, kw_only=True)
class FirstFigures:
    """The three numbers of the first minutes."""

    sowings: tuple[Sowing, ...]
    feed_g_per_day: float
    carried: tuple[Carried, ...]


def first_figures(behind: Behind) -> FirstFigures:
    """Return the first figures of a farm, in the week of today."""
    outlook = behind.outlook
    week = outlook.week_of(behind.today)
    then = min(week + AHEAD_WEEKS, outlook.forecast.ruler.weeks - 1)
    start = outlook.forecast.ruler.week_start(week)
    end = start + timedelta(days=DAYS_PER_WEEK)
    seeds: dict[str, int] = {}
    for batch in outlook.farm.batches:
        if start <= batch.sow_on < end:
            seeds[batch.crop] = seeds.get(batch.crop, 0) + outlook.seeds(batch)
    weeks = [(loop, outlook.verdicts[loop.loop]) for loop in outlook.forecast.loops]
    return FirstFigures(
        sowings=tuple(Sowing(crop=outlook.crop_name(key), seeds=count) for key, count in seeds.items()),
        feed_g_per_day=sum(verdicts[week].feed_g_per_day for _, verdicts in weeks),
        carried=tuple(
            Carried(
                loop=loop.loop,
                name=loop.name,
                now_m2=verdicts[week].area_carried_m2,
                then_m2=verdicts[then].area_carried_m2,
                planted_now_m2=verdicts[week].planted_m2,
                planted_then_m2=verdicts[then].planted_m2,
            )
            for loop, verdicts in weeks
        ),
    )
