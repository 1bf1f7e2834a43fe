"""Finds places for batches: which runs of holes are free when, and why something does not fit."""

from __future__ import annotations

from bisect import insort
from collections.abc import Callable, Iterable
from dataclasses import dataclass
from datetime import date
from enum import Enum
from typing import Final

from planner.farm.crops import Batch, Phase, Placement
from planner.farm.farm import Farm, by_id
from planner.farm.fields import Id
from planner.farm.ids import new_id
from planner.farm.site import Bed
from planner.farm.species import BedKind
from planner.forecast.values import Forecast

IdMaker = Callable[[], Id]


class RefusalKind(Enum):
    """Why a batch cannot stand somewhere."""

    NO_FREE_PLACES = "no free places"
    WRONG_BED = "wrong bed"
    NO_SUCH_UNIT = "no such unit"
    LOCKED = "locked"
    NOTHING_TO_PLACE = "nothing to place"


@dataclass(frozen=True, slots=True, kw_only=True)
class Refusal:
    """Why it does not fit: places needed and free, where, when, and which batches stand there.

    `unit` 0 means the whole bed. Words are made from this by whoever shows it.
    """

    kind: RefusalKind
    batch: Id
    bed: str
    unit: int = 0
    needed: int = 0
    free: int = 0
    from_on: date | None = None
    until_on: date | None = None
    blocking: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True, order=True)
class _Held:
    """A run of places held from `start` to the day before `end`."""

    start: int
    end: int
    first: int
    last: int
    batch: Id


_ALL_STAGES_OF: Final = {
    Phase.NURSERY: (BedKind.NURSERY,),
    Phase.SPACING: (BedKind.RAFT, BedKind.MEDIA, BedKind.NURSERY),
    Phase.BED: (BedKind.RAFT, BedKind.MEDIA),
}


class Places:
    """Which places of a farm are held on which days; can be asked, and filled further."""

    def __init__(self, farm: Farm, forecast: Forecast, *, make_id: IdMaker = new_id) -> None:
        """Take up every placement of the farm with its days."""
        self._forecast = forecast
        self._beds: dict[Id, Bed] = by_id(farm.beds)
        self._batches: dict[Id, Batch] = by_id(farm.batches)
        self._held: dict[tuple[Id, int], list[_Held]] = {}
        self._make_id = make_id
        for placement in farm.placements:
            self.hold(placement)

    def hold(self, placement: Placement, *, by_days: int = 0) -> None:
        """Take up one more placement."""
        start, end = self._days(placement.batch, placement.phase, by_days)
        held = _Held(start, end, placement.first, placement.last, placement.batch)
        insort(self._held.setdefault((placement.bed, placement.unit), []), held)

    def _days(self, batch: Id, phase: Phase, by_days: int) -> tuple[int, int]:
        table = self._forecast.batches
        start, end = table.phase_days(table.row_of[batch], phase)
        return start + by_days, max(end, start + 1) + by_days

    def lasts(self, batch: Id, phase: Phase) -> bool:
        """Tell whether a batch spends any day in a phase."""
        table = self._forecast.batches
        start, end = table.phase_days(table.row_of[batch], phase)
        return end > start

    def free_runs(
        self, bed: Id, unit: int, *, start_day: int, end_day: int, ignoring: Id | None = None
    ) -> tuple[tuple[int, int], ...]:
        """Return runs (first place, count) that are free on every day from start to before end."""
        places = self._beds[bed].places_per_unit
        taken = sorted(
            (held.first, held.last) for held in self._standing(bed, unit, start_day, end_day, ignoring)
        )
        runs, next_free = [], 1
        for first, last in taken:
            if first > next_free:
                runs.append((next_free, first - next_free))
            next_free = max(next_free, last + 1)
        if next_free <= places:
            runs.append((next_free, places - next_free + 1))
        return tuple(runs)

    def _standing(
        self, bed: Id, unit: int, start_day: int, end_day: int, ignoring: Id | None
    ) -> Iterable[_Held]:
        for held in self._held.get((bed, unit), ()):
            if held.start >= end_day:
                break
            if held.end > start_day and held.batch != ignoring:
                yield held

    def free_count(
        self, bed: Id, unit: int, *, start_day: int, end_day: int, ignoring: Id | None = None
    ) -> int:
        """Return how many places of a unit are free on every day of a span."""
        runs = self.free_runs(bed, unit, start_day=start_day, end_day=end_day, ignoring=ignoring)
        return sum(count for _, count in runs)

    def fit(
        self,
        batch: Id,
        phase: Phase,
        bed: Id,
        *,
        count: int,
        unit: int | None = None,
        by_days: int = 0,
    ) -> tuple[Placement, ...] | Refusal:
        """Return places for `count` plants of a batch, or why there are none.

        With a `unit` only that raft, block or tray is used, else any of the bed: one unit that can
        hold the whole lot, the fullest such first, else as few units as go. The batch's own places
        count as free.
        """
        where = self._beds[bed]
        refusal = self._unsuited(batch, phase, where, unit=unit, count=count)
        if refusal is not None:
            return refusal
        start, end = self._days(batch, phase, by_days)
        units = range(1, where.units + 1) if unit is None else (unit,)
        runs = {
            number: self.free_runs(bed, number, start_day=start, end_day=end, ignoring=batch)
            for number in units
        }
        free = {number: sum(size for _, size in found) for number, found in runs.items()}
        if sum(free.values()) < count:
            return self._full(
                batch, where, unit=unit, needed=count, free=sum(free.values()), days=(start, end)
            )
        chosen = _units_for(free, count)
        return self._placements(batch, phase, bed, runs={n: runs[n] for n in chosen}, count=count)

    def _unsuited(self, batch: Id, phase: Phase, bed: Bed, *, unit: int | None, count: int) -> Refusal | None:
        kind = None
        if count < 1:
            kind = RefusalKind.NOTHING_TO_PLACE
        elif bed.kind not in _ALL_STAGES_OF[phase]:
            kind = RefusalKind.WRONG_BED
        elif unit is not None and not 1 <= unit <= bed.units:
            kind = RefusalKind.NO_SUCH_UNIT
        if kind is None:
            return None
        return Refusal(kind=kind, batch=batch, bed=bed.name, unit=unit or 0, needed=count)

    def _full(
        self, batch: Id, bed: Bed, *, unit: int | None, needed: int, free: int, days: tuple[int, int]
    ) -> Refusal:
        start, end = days
        units = range(1, bed.units + 1) if unit is None else (unit,)
        standing = {
            self._batches[held.batch].code
            for number in units
            for held in self._standing(bed.id, number, start, end, batch)
        }
        ruler = self._forecast.ruler
        return Refusal(
            kind=RefusalKind.NO_FREE_PLACES,
            batch=batch,
            bed=bed.name,
            unit=unit or 0,
            needed=needed,
            free=free,
            from_on=ruler.date_of(start),
            until_on=ruler.date_of(end - 1),
            blocking=tuple(sorted(standing)),
        )

    def _placements(
        self,
        batch: Id,
        phase: Phase,
        bed: Id,
        *,
        runs: dict[int, tuple[tuple[int, int], ...]],
        count: int,
    ) -> tuple[Placement, ...]:
        found: list[Placement] = []
        for unit, free in runs.items():
            for first, size in _smallest_runs(free, count):
                found.append(
                    Placement(
                        id=self._make_id(),
                        batch=batch,
                        phase=phase,
                        bed=bed,
                        unit=unit,
                        first=first,
                        count=size,
                    )
                )
                count -= size
        return tuple(found)


def _units_for(free: dict[int, int], count: int) -> list[int]:
    """Return the units to use: one that is just enough, else the emptiest until it is enough."""
    enough = [number for number, size in free.items() if size >= count]
    if enough:
        return [min(enough, key=lambda number: (free[number], number))]
    chosen: list[int] = []
    for number in sorted(free, key=lambda number: (-free[number], number)):
        chosen.append(number)
        count -= free[number]
        if count <= 0:
            break
    return chosen


def _smallest_runs(runs: tuple[tuple[int, int], ...], count: int) -> list[tuple[int, int]]:
    """Return runs to use on one unit: a single one that is just enough, else in order of place."""
    if count <= 0:
        return []
    enough = [run for run in runs if run[1] >= count]
    if enough:
        first, _ = min(enough, key=lambda run: (run[1], run[0]))
        return [(first, count)]
    used: list[tuple[int, int]] = []
    for first, size in runs:
        take = min(size, count)
        if take <= 0:
            break
        used.append((first, take))
        count -= take
    return used
