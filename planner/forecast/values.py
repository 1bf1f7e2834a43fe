"""What the forecast says, as values: arrays by day from the first day of the first week.

Day 0 is the first day of the week that holds the first day of the plan. Arrays named `..._g` are
grams per day. Element arrays have one row per element in the order of `ELEMENTS`.
"""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date, timedelta
from enum import Enum
from typing import Final

import numpy as np
from numpy.typing import NDArray

from planner.farm.crops import Phase, Stage
from planner.farm.farm import DAYS_PER_WEEK
from planner.farm.fields import Id
from planner.farm.site import AreaRule as AreaRule  # noqa: PLC0414 - handed on beside the verdicts
from planner.forecast.profiles import Profile

Floats = NDArray[np.float64]
Ints = NDArray[np.int64]
Bools = NDArray[np.bool_]

MG_PER_G: Final = 1000.0

STAGES: Final = tuple(Stage)
"""Order of the columns of `BatchTable.ends`."""

_MIDDLE_DAY: Final = 3


@dataclass(frozen=True, slots=True, kw_only=True)
class Ruler:
    """The days and weeks that the forecast covers."""

    start_on: date
    weeks: int

    @property
    def days(self) -> int:
        """Number of days covered."""
        return self.weeks * DAYS_PER_WEEK

    def day_of(self, on: date) -> int:
        """Return the day number of a date; negative before the start."""
        return (on - self.start_on).days

    def date_of(self, day: int) -> date:
        """Return the date of a day number."""
        return self.start_on + timedelta(days=int(day))

    def week_start(self, week: int) -> date:
        """Return the first date of week number `week`, counted from 0."""
        return self.date_of(week * DAYS_PER_WEEK)

    def week_of(self, on: date) -> int:
        """Return the number of the week that holds a date; negative before the start."""
        return self.day_of(on) // DAYS_PER_WEEK

    def week_name(self, week: int) -> str:
        """Return the ISO 8601 name such as "2027-W01" of the week most of whose days are in it."""
        year, number, _ = self.date_of(week * DAYS_PER_WEEK + _MIDDLE_DAY).isocalendar()
        return f"{year}-W{number:02d}"

    def weekly_sum(self, by_day: Floats) -> Floats:
        """Return sums by week of an array whose last axis is days."""
        by_week: Floats = by_day.reshape(*by_day.shape[:-1], self.weeks, DAYS_PER_WEEK).sum(axis=-1)
        return by_week

    def weekly_mean(self, by_day: Floats) -> Floats:
        """Return means by week of an array whose last axis is days."""
        return self.weekly_sum(by_day) / DAYS_PER_WEEK


@dataclass(frozen=True, slots=True, kw_only=True)
class StageSpan:
    """One stage of a batch from its first date to the date after its last."""

    stage: Stage
    start_on: date
    end_on: date

    @property
    def days(self) -> int:
        """Length in days."""
        return (self.end_on - self.start_on).days


@dataclass(frozen=True, slots=True, kw_only=True)
class BatchTable:
    """Dates and numbers of every batch, one row each in the order of `Farm.batches`.

    `ends[row, stage]` is the day after the stage's last one; a stage begins where the one before it
    ends, germination on `sow_day`. `profile` indexes `Forecast.profiles`, `crop` indexes
    `Forecast.crops`, `loop` indexes `Forecast.loops`, `pace` the paces of the forecaster. `ripe` is 1,
    less for a batch that is given up as too slow; `area_m2` is what stands in the final places.
    """

    ids: tuple[Id, ...]
    row_of: dict[Id, int]
    profile: Ints
    pace: Ints
    crop: Ints
    loop: Ints
    sow_day: Ints
    ends: Ints
    plants: Ints
    ripe: Floats
    seeds: Ints
    area_m2: Floats

    def spans(self, row: int, ruler: Ruler) -> tuple[StageSpan, ...]:
        """Return the stages of one batch that last at least a day."""
        days = [int(self.sow_day[row]), *(int(day) for day in self.ends[row])]
        return tuple(
            StageSpan(stage=stage, start_on=ruler.date_of(start), end_on=ruler.date_of(end))
            for stage, start, end in zip(STAGES, days, days[1:], strict=False)
            if end > start
        )

    def phase_days(self, row: int, phase: Phase) -> tuple[int, int]:
        """Return first day and day after the last that a batch holds places in a phase."""
        germination_start = int(self.sow_day[row])
        nursery_end, spacing_end, clearing_end = (int(self.ends[row, column]) for column in (1, 2, 5))
        return {
            Phase.NURSERY: (germination_start, nursery_end),
            Phase.SPACING: (nursery_end, spacing_end),
            Phase.BED: (spacing_end, clearing_end),
        }[phase]

    def pick_days(self, row: int) -> tuple[int, int]:
        """Return the first day of picking and the day after the last."""
        return int(self.ends[row, 3]), max(int(self.ends[row, 4]), int(self.ends[row, 3]) + 1)


@dataclass(frozen=True, slots=True, kw_only=True)
class Days:
    """When each batch is in which stage, and which days the plan has: what a forecast begins with."""

    ruler: Ruler
    batches: BatchTable


@dataclass(frozen=True, slots=True, kw_only=True)
class GroupForecast:
    """One fish group by day: number, mean weight, feed, gain of the whole group."""

    group: Id
    name: str
    tank: Id
    count: Floats
    weight_g: Floats
    feed_g: Floats
    gain_g: Floats
    harvest_count: Floats
    harvest_g: Floats

    @property
    def biomass_g(self) -> Floats:
        """Live mass of the group [g] by day."""
        return self.count * self.weight_g


class Band(Enum):
    """How supply stands to demand in a week; bounds are rows of the catalogue."""

    NO_DEMAND = "no demand"
    SHORT = "short"
    THIN = "thin"
    MET = "met"
    AMPLE = "ample"


@dataclass(frozen=True, slots=True, kw_only=True)
class SolidsBatchForecast:
    """What went into a solids batch and what comes back of it [g], by element.

    `before_g` is the part of it from days before the plan, taken to be like the plan's first week. `lost_g`
    left as gas, `discarded_g` is thrown out on the day the liquor goes back; these and the liquor are zero
    as long as nothing goes back within the plan.
    """

    batch: Id
    gathered_g: tuple[float, ...]
    before_g: tuple[float, ...]
    liquor_g: tuple[float, ...]
    lost_g: tuple[float, ...]
    discarded_g: tuple[float, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class SolidsFate:
    """Where the solids of a loop go [g], each of shape (element, day).

    Every day's solids are caught, settle under rafts, or are kept in gravel; `before` is what batches hold
    from days before the plan, on its first day. Summed over days, `caught + settled + in_gravel + before =
    gone + lost + liquor + mineralised` plus what is at the end of the day still `in batches` or `lying` in
    beds. The last two are stocks, the others flows of the day. Of `batches` those that went back before the
    plan are left out.
    """

    caught_g: Floats
    settled_g: Floats
    in_gravel_g: Floats
    before_g: Floats
    gone_g: Floats
    lost_g: Floats
    liquor_g: Floats
    mineralised_g: Floats
    in_batches_g: Floats
    lying_g: Floats
    batches: tuple[SolidsBatchForecast, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class PoolMiss:
    """A test of the water against what was expected on that day [mg/L]; the pool goes on from the test.

    `assumed` says that the expectation had begun with an assumed level.
    """

    element: int
    day: int
    expected_mg_per_l: float
    read_mg_per_l: float
    assumed: bool


@dataclass(frozen=True, slots=True, kw_only=True)
class LoopForecast:
    """One loop of water by day: feed, where each element goes, and what the plants want.

    Shapes: `(element, day)` for element arrays, `(day,)` else. `feed_n...` = `fish_g + solids_g +
    gas_g + dissolved_g` for every element and day. `planted_m2` has rows leafy, fruiting.

    `water_c` is the water's temperature, drawn to what was read; None where no year of it is known.

    `pool_g` is what is dissolved at the start of the day, after a test of that day; `pool_assumed` holds
    until the first test. Pool + supply = demand - `unmet_g` + `leaving_g` + the next day's pool, but on
    days of a test, which are in `pool_misses`. `leaving_g` went with water, or fell out of it as iron and
    phosphorus do.
    """

    loop: Id
    name: str
    groups: tuple[GroupForecast, ...]
    feed_g: Floats
    content_g: Floats
    fish_g: Floats
    solids_g: Floats
    gas_g: Floats
    dissolved_g: Floats
    top_up_g: Floats
    dose_g: Floats
    demand_g: Floats
    planted_m2: Floats
    bed_m2: float
    protein_share: Floats
    water_c: Floats | None
    solids: SolidsFate
    water_l: float
    pool_g: Floats
    unmet_g: Floats
    leaving_g: Floats
    pool_assumed: Bools
    pool_misses: tuple[PoolMiss, ...]
    area_rule: AreaRule = AreaRule.FAO

    @property
    def mineralised_g(self) -> Floats:
        """What solids give back where they lie [g] by (element, day)."""
        return self.solids.mineralised_g

    @property
    def liquor_g(self) -> Floats:
        """What comes back from solids batches [g] by (element, day)."""
        return self.solids.liquor_g

    @property
    def supply_g(self) -> Floats:
        """What reaches the water for plants [g] by (element, day)."""
        return self.dissolved_g + self.top_up_g + self.dose_g + self.mineralised_g + self.liquor_g

    @property
    def pool_mg_per_l(self) -> Floats:
        """What is dissolved at the start of the day [mg/L] by (element, day)."""
        return self.pool_g * (MG_PER_G / self.water_l)


@dataclass(frozen=True, slots=True, kw_only=True)
class WeekVerdict:
    """One loop in one week, all elements.

    `limiting` indexes `ELEMENTS`, None when nothing is wanted. `feed_ratio_g_per_m2_d` is feed over
    planted area, None when nothing is planted; the bands are mixed by planted area.

    `stock_g` is what is dissolved when the week begins, `stock_mg_per_l` the same as a level, assumed where
    no test tells it; `covered_ratio` is supply and stock over demand. `unmet_g` is what plants cannot take
    because it is not there.

    `area_fed_m2` is by FAO; `rule` is whose ratio the loop goes by.
    """

    week: int
    supply_g: tuple[float, ...]
    demand_g: tuple[float, ...]
    ratio: tuple[float | None, ...]
    band: tuple[Band, ...]
    limiting: int | None
    feed_g_per_day: float
    planted_m2: float
    feed_ratio_g_per_m2_d: float | None
    fao_band: tuple[float, float] | None
    uvi_band: tuple[float, float]
    area_fed_m2: tuple[float, float]
    stock_g: tuple[float, ...]
    stock_mg_per_l: tuple[float, ...]
    stock_assumed: tuple[bool, ...]
    covered_ratio: tuple[float | None, ...]
    unmet_g: tuple[float, ...]
    rule: AreaRule = AreaRule.FAO

    @property
    def rule_band(self) -> tuple[float, float] | None:
        """Band of the feed-rate ratio by the rule of the loop; None when nothing is planted."""
        return self.fao_band if self.rule is AreaRule.FAO or self.fao_band is None else self.uvi_band

    @property
    def area_carried_m2(self) -> tuple[float, float]:
        """The area that the feed carries by the rule of the loop, least and most [m²]."""
        return self.area_fed_by(self.rule)

    def area_fed_by(self, rule: AreaRule) -> tuple[float, float]:
        """Return the area that the feed carries by a rule, least and most [m²]."""
        if rule is AreaRule.FAO:
            return self.area_fed_m2
        low, high = self.uvi_band
        return self.feed_g_per_day / high, self.feed_g_per_day / low


class FlagKind(Enum):
    """What the forecast wants the grower to know."""

    NO_CLIMATE = "no climate"
    UNPLACED = "unplaced"
    SHORT_PLACES = "short of places"
    NOT_SUITED = "not suited"
    DENSITY = "density"
    FEED_FALLS = "feed falls"
    SHORT_SUPPLY = "short supply"
    WATER_TEMPERATURE = "water temperature"
    LETHAL_TEMPERATURE = "lethal temperature"
    NO_APPETITE = "no appetite"
    OVERFED = "overfed"
    GIVEN_UP = "too slow"
    TREATED = "treated fish"
    HARVEST_BARRED = "harvest barred"


@dataclass(frozen=True, slots=True, kw_only=True)
class Flag:
    """Something the grower should see, with where and when; words are made from it elsewhere."""

    kind: FlagKind
    about: Id
    name: str
    on: date | None = None
    until_on: date | None = None
    values: tuple[tuple[str, float | str], ...] = ()


@dataclass(frozen=True, slots=True, kw_only=True)
class Forecast:
    """Everything that is foreseen for a farm.

    `harvest_plants` and `harvest_g` are by (crop, day): plants that are harvested or picked from
    (a plant picked ten times counts a tenth each time) and fresh grams.
    """

    ruler: Ruler
    crops: tuple[str, ...]
    profiles: tuple[Profile, ...]
    batches: BatchTable
    loops: tuple[LoopForecast, ...]
    harvest_plants: Floats
    harvest_g: Floats
    flags: tuple[Flag, ...]
    source_keys: tuple[str, ...]
