"""Finds places for batches: which runs of holes are free when, and why something does not fit."""

from __future__ import annotations

from bisect import bisect_left, insort
from collections.abc import Callable, Iterable
from dataclasses import dataclass
from datetime import date
from enum import Enum
from itertools import chain
from typing import Final, NamedTuple

from planner.farm.crops import Batch, Phase, Placement
from planner.farm.farm import Farm, by_id
from planner.farm.fields import Id
from planner.farm.ids import new_id
from planner.farm.site import Bed
from planner.farm.species import BedKind
from planner.forecast.occupancy import Dated
from planner.planning.runs import Runs, runs_between, smallest_runs

IdMaker = Callable[[], Id]

_ALL_UNITS: Final = 0


class RefusalKind(Enum):
    """Why a batch cannot stand somewhere."""

    NO_FREE_PLACES = "no free places"
    WRONG_BED = "wrong bed"
    NO_SUCH_UNIT = "no such unit"
    LOCKED = "locked"
    NOTHING_TO_PLACE = "nothing to place"
    NEEDED_NEXT = "needed next"
    PICKED_ONCE = "picked once"
    NO_SUCH_WINDOW = "no such window"


@dataclass(frozen=True, slots=True, kw_only=True)
class Freeing:
    """Places that a batch would give back if it were not there, and the day it leaves them anyway."""

    code: str
    places: int
    until_on: date
    locked: bool = False


@dataclass(frozen=True, slots=True, kw_only=True)
class Refusal:
    """Why it does not fit: places needed and free, where, when, and which batches stand there.

    `unit` 0 means the whole bed; `bed_kind` tells what its units are called. Where many were placed at once,
    `tight_on` is the day on which most places are held and `freeing` what would make room, soonest first.
    Words are made from this by whoever shows it.
    """

    kind: RefusalKind
    batch: Id
    bed: str
    unit: int = 0
    bed_kind: BedKind | None = None
    needed: int = 0
    free: int = 0
    from_on: date | None = None
    until_on: date | None = None
    blocking: tuple[str, ...] = ()
    tight_on: date | None = None
    freeing: tuple[Freeing, ...] = ()

    @property
    def short(self) -> int:
        """Return how many places are missing."""
        return max(self.needed - self.free, 0)


class _Held(NamedTuple):
    """A run of places held from `start` to the day before `end`."""

    start: int
    end: int
    unit: int
    first: int
    last: int
    batch: Id


class _Holds:
    """What is held on one raft, or on a whole bed, in the order of first days.

    Nothing is held for longer than `longest` days, so a question about a span of days looks only at
    what begins at most that long before it.
    """

    __slots__ = ("_held", "_longest")

    def __init__(self) -> None:
        self._held: list[_Held] = []
        self._longest = 0

    def add(self, held: _Held) -> None:
        insort(self._held, held)
        self._longest = max(self._longest, held.end - held.start)

    def append(self, held: _Held) -> None:
        """Add out of order; `sort` comes after the last."""
        self._held.append(held)
        self._longest = max(self._longest, held.end - held.start)

    def sort(self) -> None:
        self._held.sort()

    def standing(self, start_day: int, end_day: int, *, ignoring: Id | None) -> list[_Held]:
        """Return what batches other than one hold on any day from start to before end."""
        held = self._held
        near = held[bisect_left(held, (start_day - self._longest,)) : bisect_left(held, (end_day,))]
        return [one for one in near if one.end > start_day and one.batch != ignoring]


KINDS_OF_PHASE: Final = {
    Phase.NURSERY: (BedKind.NURSERY,),
    Phase.SPACING: (BedKind.RAFT, BedKind.MEDIA, BedKind.NURSERY),
    Phase.BED: (BedKind.RAFT, BedKind.MEDIA),
}


class Places:
    """Which places of a farm are held on which days; can be asked, and filled further."""

    def __init__(self, farm: Farm, forecast: Dated, *, make_id: IdMaker = new_id) -> None:
        """Sort every placement of the farm to its raft; its days are read when that raft is asked about."""
        self._forecast = forecast
        self._beds: dict[Id, Bed] = by_id(farm.beds)
        self._farm = farm
        self._batches: dict[Id, Batch] | None = None
        self._runs: dict[tuple[Id, int], list[Placement]] = {}
        self._held: dict[tuple[Id, int], _Holds] = {}
        self._make_id = make_id
        for run in farm.placements:
            self._runs.setdefault((run.bed, run.unit), []).append(run)

    def hold(self, placement: Placement, *, by_days: int = 0) -> None:
        """Take up one more placement."""
        start, end = self._days(placement.batch, placement.phase, by_days)
        held = _Held(start, end, placement.unit, placement.first, placement.last, placement.batch)
        for unit in (placement.unit, _ALL_UNITS):
            self._holds(placement.bed, unit).add(held)

    def _holds(self, bed: Id, unit: int) -> _Holds:
        """Return what is held on a raft, or on all of a bed; made when it is first asked for."""
        found = self._held.get((bed, unit))
        if found is None:
            found = self._held[bed, unit] = _Holds()
            for run in self._runs_on(bed, unit):
                start, end = self._days(run.batch, run.phase, 0)
                found.append(_Held(start, end, run.unit, run.first, run.last, run.batch))
            found.sort()
        return found

    def _runs_on(self, bed: Id, unit: int) -> Iterable[Placement]:
        if unit != _ALL_UNITS:
            return self._runs.get((bed, unit), ())
        units = range(1, self._beds[bed].units + 1) if bed in self._beds else ()
        return chain.from_iterable(self._runs.get((bed, each), ()) for each in units)

    def _code(self, batch: Id) -> str:
        if self._batches is None:
            self._batches = by_id(self._farm.batches)
        return self._batches[batch].code

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
    ) -> Runs:
        """Return runs (first place, count) that are free on every day from start to before end."""
        standing = self._standing(bed, unit, start_day=start_day, end_day=end_day, ignoring=ignoring)
        taken = [(held.first, held.last) for held in standing]
        return runs_between(taken, self._beds[bed].places_per_unit)

    def _free_runs_by_unit(
        self, bed: Bed, units: Iterable[int], *, start_day: int, end_day: int, ignoring: Id
    ) -> dict[int, Runs]:
        """Return the free runs of several units; asks the bed once, for it may have hundreds."""
        taken: dict[int, list[tuple[int, int]]] = {}
        for held in self._standing(
            bed.id, _ALL_UNITS, start_day=start_day, end_day=end_day, ignoring=ignoring
        ):
            taken.setdefault(held.unit, []).append((held.first, held.last))
        places = bed.places_per_unit
        return {unit: runs_between(taken.get(unit, ()), places) for unit in units}

    def _standing(
        self, bed: Id, unit: int, *, start_day: int, end_day: int, ignoring: Id | None
    ) -> list[_Held]:
        return self._holds(bed, unit).standing(start_day, end_day, ignoring=ignoring)

    def others_in(self, run: Placement, *, start_day: int, end_day: int) -> tuple[tuple[int, str], ...]:
        """Return the first day and the code of every other batch that holds one of a run's places then."""
        found = self._standing(run.bed, run.unit, start_day=start_day, end_day=end_day, ignoring=run.batch)
        return tuple(
            (max(held.start, start_day), self._code(held.batch))
            for held in found
            if held.first <= run.last and held.last >= run.first
        )

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
        days: tuple[int, int] | None = None,
    ) -> tuple[Placement, ...] | Refusal:
        """Return places for `count` plants of a batch, or why there are none.

        `days` are first day and day after the last, for a batch that is tried out on days of its own.

        With a `unit` only that raft, block or tray is used, else any of the bed: one unit that can
        hold the whole lot, the fullest such first, else as few units as go. The batch's own places
        count as free.
        """
        where = self._beds[bed]
        refusal = self._unsuited(batch, phase, where, unit=unit, count=count)
        if refusal is not None:
            return refusal
        start, end = self._days(batch, phase, by_days) if days is None else days
        if unit is None:
            runs = self._free_runs_by_unit(
                where, range(1, where.units + 1), start_day=start, end_day=end, ignoring=batch
            )
        else:
            runs = {unit: self.free_runs(bed, unit, start_day=start, end_day=end, ignoring=batch)}
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
        elif bed.kind not in KINDS_OF_PHASE[phase]:
            kind = RefusalKind.WRONG_BED
        elif unit is not None and not 1 <= unit <= bed.units:
            kind = RefusalKind.NO_SUCH_UNIT
        if kind is None:
            return None
        return Refusal(kind=kind, batch=batch, bed=bed.name, unit=unit or 0, bed_kind=bed.kind, needed=count)

    def _full(
        self, batch: Id, bed: Bed, *, unit: int | None, needed: int, free: int, days: tuple[int, int]
    ) -> Refusal:
        start, end = days
        held = self._standing(bed.id, unit or _ALL_UNITS, start_day=start, end_day=end, ignoring=batch)
        standing = {self._code(one.batch) for one in held}
        ruler = self._forecast.ruler
        return Refusal(
            kind=RefusalKind.NO_FREE_PLACES,
            batch=batch,
            bed=bed.name,
            unit=unit or 0,
            bed_kind=bed.kind,
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
        runs: dict[int, Runs],
        count: int,
    ) -> tuple[Placement, ...]:
        found: list[Placement] = []
        for unit, free in runs.items():
            for first, size in smallest_runs(free, count):
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
