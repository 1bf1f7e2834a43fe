"""The season as columns and rows: what one plant of each possible sowing takes and gives.

Weeks count from 0 at the first week that may be sown in. A column is one possible sowing: a crop, a
ground and a week. Must know no farm beyond names and ids, and no solver.
"""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date
from typing import Final

import numpy as np
from numpy.typing import NDArray

from planner.farm.crops import TargetUnit
from planner.farm.fields import Id
from planner.farm.species import BedKind
from planner.forecast.values import Ruler
from planner.planning.season_plan.options import Weights

Floats = NDArray[np.float64]
Ints = NDArray[np.int64]
Bools = NDArray[np.bool_]


def summed_at(index: Ints, values: Floats, *, size: int) -> Floats:
    """Return sums of values by index, shape (size,)."""
    found = np.zeros(size)
    found += np.bincount(index, weights=values, minlength=size)
    return found


@dataclass(frozen=True, slots=True, kw_only=True, eq=False)
class Sparse:
    """Numbers of a matrix by column: those of column j stand from `start[j]` to before `start[j + 1]`."""

    start: Ints
    week: Ints
    value: Floats

    def of(self, column: int) -> tuple[Ints, Floats]:
        """Return weeks and numbers of one column."""
        span = slice(int(self.start[column]), int(self.start[column + 1]))
        return self.week[span], self.value[span]

    def taken(self, columns: Ints) -> Sparse:
        """Return the matrix of some of the columns."""
        sizes = np.diff(self.start)[columns]
        start = np.zeros(columns.size + 1, dtype=np.int64)
        start[1:] = np.cumsum(sizes)
        inside = np.repeat(self.start[columns] - start[:-1], sizes) + np.arange(int(start[-1]))
        return Sparse(start=start, week=self.week[inside], value=self.value[inside])

    @property
    def column(self) -> Ints:
        """The column each number belongs to."""
        return np.repeat(np.arange(self.start.size - 1), np.diff(self.start))


@dataclass(frozen=True, slots=True, kw_only=True)
class OwnDays:
    """Days of stages that a sowing goes by instead of the book's, for its moves to fall on days of work."""

    nursery: float | None = None
    spacing: float | None = None
    bed: float | None = None


BOOK_DAYS: Final = OwnDays()


@dataclass(frozen=True, slots=True, kw_only=True)
class Ground:
    """Beds of one loop, one kind and one light, among which a plant may stand anywhere."""

    loop: int
    kind: BedKind
    beds: tuple[Id, ...]
    places: int
    light_share: float
    lamp_mol_per_m2_d: float


@dataclass(frozen=True, slots=True, kw_only=True)
class Nursery:
    """The nursery beds of one loop."""

    loop: int
    beds: tuple[Id, ...]
    cells: int


@dataclass(frozen=True, slots=True, kw_only=True)
class Pool:
    """The beds of one loop in which plants stand at an intermediate distance."""

    loop: int
    beds: tuple[Id, ...]
    places: int


@dataclass(frozen=True, slots=True, kw_only=True, eq=False)
class Line:
    """What is wanted of one crop in one unit, by week [heads or kg].

    `per_plant` turns a plant harvested into the unit; `fixed` is what stands already; `usual` is the middle
    of the weeks in which any is wanted.
    """

    crop: int
    unit: TargetUnit
    per_plant: float
    wanted: Floats
    fixed: Floats
    usual: float


@dataclass(frozen=True, slots=True, kw_only=True, eq=False)
class Columns:
    """Every possible sowing.

    `picks` are shares of a plant harvested, `formed` dry mass formed [g], `work` minutes, all of one
    plant by week. `bed_first` to before `bed_last` are rows of `Rows.bed_free`, likewise the nursery's
    and those of the intermediate distance. `seeds` are those sown for one plant, not rounded.
    """

    crop: Ints
    ground: Ints
    week: Ints
    loop: Ints
    sow_day: Ints
    lot: Ints
    seeds: Floats
    bed_first: Ints
    bed_last: Ints
    nursery_first: Ints
    nursery_last: Ints
    spacing_first: Ints
    spacing_last: Ints
    picks: Sparse
    formed: Sparse
    work: Sparse
    own_days: tuple[OwnDays, ...]

    @property
    def count(self) -> int:
        """Number of columns."""
        return int(self.crop.size)


@dataclass(frozen=True, slots=True, kw_only=True, eq=False)
class Rows:
    """What is free: places and cells in each span of days that matters, and minutes by week.

    A row of places or cells stands for days among which nothing leaves before the last has come, so that
    what stands in the row stands there at once. `..._start` is the first day of each row on the ruler.
    """

    bed_free: Ints
    bed_start: Ints
    bed_ground: Ints
    nursery_free: Ints
    nursery_start: Ints
    nursery_pool: Ints
    spacing_free: Ints
    spacing_start: Ints
    spacing_pool: Ints
    work_free: Floats | None


@dataclass(frozen=True, slots=True, kw_only=True, eq=False)
class Elements:
    """Demand and supply by (loop, element, week) [g]: what stands already, and the band for all demand.

    `usual` is the mean supply by (loop, element), 0 where nothing comes: such an element is left out.
    """

    content: Floats
    fixed: Floats
    supply: Floats
    low: Floats
    high: Floats
    usual: Floats


@dataclass(frozen=True, slots=True, kw_only=True)
class TooSlow:
    """A crop that is not sown for some weeks, for it would be given up as too slow there."""

    crop: str
    ground: int
    weeks: tuple[int, ...]


@dataclass(frozen=True, slots=True, kw_only=True, eq=False)
class SeasonModel:
    """Everything a plan is made from.

    Nothing is sown before `from_on`; week 0 is week `first_week` of the ruler.
    """

    ruler: Ruler
    from_on: date
    first_week: int
    weeks: int
    crops: tuple[str, ...]
    grounds: tuple[Ground, ...]
    nurseries: tuple[Nursery, ...]
    pools: tuple[Pool, ...]
    lines: tuple[Line, ...]
    columns: Columns
    rows: Rows
    elements: Elements
    weights: Weights
    too_slow: tuple[TooSlow, ...]

    @property
    def worth(self) -> float:
        """What it would be worth to meet every target, in crop-weeks."""
        return sum(float(line.wanted.sum()) / line.usual for line in self.lines) * self.weights.missed
