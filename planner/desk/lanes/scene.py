"""What the lanes draw, as plain frozen values: rows, bars, curves and weeks of balance.

Made once after every forecast, then only looked up. Must know nothing of Qt, numpy, storage or how the
values came about. Days are counted as in `datetime.date.toordinal`; a span ends on the day before `end`.
"""

from __future__ import annotations

from array import array
from bisect import bisect_left, bisect_right
from dataclasses import dataclass, field, replace
from enum import Enum
from itertools import accumulate
from math import isnan

from planner.farm.crops import Phase, Stage
from planner.farm.fields import NO_ID, Id
from planner.forecast.months import Month

NO_UNIT = 0
"""Unit of a bar that stands nowhere yet."""


ORDER_OF_STAGE = {stage: order for order, stage in enumerate(Stage)}
"""Position of each stage in the life of a batch."""


class BandMark(Enum):
    """How supply stands to demand in a week, as the forecast words it."""

    NO_DEMAND = "no demand"
    SHORT = "short"
    THIN = "thin"
    MET = "met"
    AMPLE = "ample"


@dataclass(frozen=True, slots=True, kw_only=True)
class Segment:
    """One stage of a batch from its first day to the day after its last.

    `order` is the position of the stage in a batch's life; painters look things up by it.
    """

    stage: Stage
    start: int
    end: int
    order: int = field(init=False, repr=False, compare=False)

    def __post_init__(self) -> None:
        """Lay the position ready."""
        object.__setattr__(self, "order", ORDER_OF_STAGE[self.stage])


@dataclass(frozen=True, slots=True, kw_only=True)
class Bar:
    """One run of places that a batch holds in one phase, or what is still to be placed.

    `run` is the id of the placement, empty when there is none. `top` and `lines` say where in its row
    the bar lies, in lines of text from the top of the row.
    """

    batch: Id
    run: Id
    phase: Phase
    bed: Id
    unit: int
    code: str
    crop: str
    crop_name: str
    colour: int
    plants: int
    start: int
    end: int
    segments: tuple[Segment, ...]
    locked: bool = False
    top: float = 0.0
    lines: float = 1.0

    @property
    def placed(self) -> bool:
        """Tell whether the bar stands in a bed."""
        return self.unit != NO_UNIT

    @property
    def key(self) -> tuple[Id, Id, Phase]:
        """What tells this bar from every other one of the scene."""
        return (self.batch, self.run, self.phase)

    @property
    def row_key(self) -> RowKey:
        """The row that the bar belongs in."""
        return RowKey(bed=self.bed, unit=self.unit, phase=None if self.placed else self.phase)

    def shifted(self, days: int) -> Bar:
        """Return the bar so many days later."""
        segments = tuple(
            replace(each, start=each.start + days, end=each.end + days) for each in self.segments
        )
        return replace(self, start=self.start + days, end=self.end + days, segments=segments)

    def over(self, row: RowKey) -> Bar:
        """Return the bar held over another row."""
        return replace(self, bed=row.bed, unit=row.unit)


@dataclass(frozen=True, slots=True, kw_only=True)
class Row:
    """One raft, block or tray with its bars, sorted by their first day.

    `lines` is the height in lines of text. Unit 0 of no bed holds what is unplaced in one phase.
    """

    bed: Id
    unit: int
    name: str
    lines: float
    bars: tuple[Bar, ...]
    phase: Phase | None = None
    starts: array[int] = field(init=False, repr=False, compare=False)
    reach: array[int] = field(init=False, repr=False, compare=False)

    def __post_init__(self) -> None:
        """Lay ready what finds the bars of a span by bisection: first days, and the furthest end so far."""
        object.__setattr__(self, "starts", array("q", (bar.start for bar in self.bars)))
        object.__setattr__(self, "reach", array("q", accumulate((bar.end for bar in self.bars), max)))

    @property
    def key(self) -> RowKey:
        """What tells this row from every other one of the scene."""
        return RowKey(bed=self.bed, unit=self.unit, phase=self.phase)

    def seen(self, start: int, end: int) -> tuple[Bar, ...]:
        """Return the bars that lie at least partly in the days from `start` until before `end`."""
        first = bisect_right(self.reach, start)
        return self.bars[first : bisect_left(self.starts, end)]


@dataclass(frozen=True, slots=True, kw_only=True)
class RowKey:
    """Names a row: a unit of a bed, or the phase that unplaced batches wait for."""

    bed: Id
    unit: int
    phase: Phase | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class RowGroup:
    """A bed with its rows, or everything that is unplaced (`urgent`).

    `detail` says in words how large the bed is; `held` is the share of its places that is taken, by week.
    """

    bed: Id
    name: str
    detail: str
    rows: tuple[Row, ...]
    held: Curve | None = None
    urgent: bool = False


@dataclass(frozen=True, slots=True, kw_only=True)
class Curve:
    """Values one after the other, each holding for `step` days from `start` on."""

    start: int
    step: int
    values: array[float]

    @property
    def end(self) -> int:
        """The day after the last value."""
        return self.start + self.step * len(self.values)

    @property
    def highest(self) -> float:
        """Return the highest value, 0 when there is none."""
        return max(self.values, default=0.0)

    def seen(self, start: int, end: int) -> range:
        """Return the positions whose days touch the span."""
        first = max((start - self.start) // self.step, 0)
        last = min(-((self.start - end) // self.step), len(self.values))
        return range(first, max(first, last))

    def at(self, day: int) -> float | None:
        """Return the value that holds on a day, None outside."""
        position = (day - self.start) // self.step
        return self.values[position] if 0 <= position < len(self.values) else None


class FishMarkKind(Enum):
    """What is marked on the line of a fish group."""

    STOCKED = "stocked"
    HARVEST = "harvest"
    ADDED = "added"
    OFF_FEED = "off feed"


@dataclass(frozen=True, slots=True, kw_only=True)
class FishMark:
    """Something that happens to a fish group on a day."""

    kind: FishMarkKind
    day: int
    count: int | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class FishRow:
    """One fish group from the day it is stocked to the day after the last fish leaves."""

    group: Id
    name: str
    tank: str
    start: int
    end: int
    marks: tuple[FishMark, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class FeedScene:
    """Feed and fish of one loop; feed in g/day by day and as means by week, biomass in g by week."""

    loop: Id
    name: str
    feed_by_day: Curve
    feed_by_week: Curve
    biomass_by_week: Curve
    groups: tuple[FishRow, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class ElementWeeks:
    """Supply and demand of one element [g per week], by week, with the band of each week."""

    element: str
    supply: Curve
    demand: Curve
    band: tuple[BandMark, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class RatioBand:
    """A published band of the feed-rate ratio [g/m²/day], by week; nan where it does not apply."""

    name: str
    low: Curve
    high: Curve


@dataclass(frozen=True, slots=True, kw_only=True)
class BalanceScene:
    """Supply against demand of one loop by week.

    `limiting` indexes `elements`, None when nothing is wanted. `feed_ratio` is nan where nothing is
    planted.
    """

    loop: Id
    name: str
    start: int
    weeks: int
    elements: tuple[ElementWeeks, ...]
    limiting: tuple[int | None, ...]
    feed_ratio: Curve
    ratio_bands: tuple[RatioBand, ...]
    highest_ratio: float = field(init=False, repr=False, compare=False)

    def __post_init__(self) -> None:
        """Lay the highest ratio ready, of the weeks and of their bands; 1 when there is none."""
        curves = (self.feed_ratio, *(band.high for band in self.ratio_bands))
        values = (value for curve in curves for value in curve.values if not isnan(value))
        object.__setattr__(self, "highest_ratio", max(values, default=1.0))


@dataclass(frozen=True, slots=True, kw_only=True)
class Scene:
    """Everything the three lanes show."""

    start: int
    end: int
    groups: tuple[RowGroup, ...] = ()
    feeds: tuple[FeedScene, ...] = ()
    balances: tuple[BalanceScene, ...] = ()
    from_sunday: bool = False
    months: tuple[Month, ...] = ()

    def bars(self) -> tuple[Bar, ...]:
        """Return all bars, row by row."""
        return tuple(bar for group in self.groups for row in group.rows for bar in row.bars)

    def balance_of(self, loop: Id) -> BalanceScene | None:
        """Return the balance of a loop; the first one when there is none of that id."""
        found = next((each for each in self.balances if each.loop == loop), None)
        return found or next(iter(self.balances), None)


UNPLACED = NO_ID
"""Bed of a row that holds what is not placed."""
