"""Works out which places a batch takes when it is sown, moved or altered, as one set of changes.

Tries to leave every run where it is, then elsewhere on the same raft. Seedlings may also go to another
tray of their nursery, unless it is they that are held. Returns a refusal when there is no room. Must know
nothing of widgets or words.
"""

from __future__ import annotations

import dataclasses
from dataclasses import dataclass
from datetime import timedelta
from typing import Final

from planner.farm.changes import Change, ChangeSet, applied
from planner.farm.crops import Batch, Phase, Placement
from planner.farm.farm import Farm, by_id
from planner.farm.fields import NO_ID, Id
from planner.farm.ids import new_id
from planner.farm.site import Bed
from planner.farm.species import BedKind
from planner.forecast.engine import Forecaster
from planner.forecast.values import Days
from planner.planning.placement import Places, Refusal, RefusalKind
from planner.planning.wishes import nurseries_of

_WRONG: Final = RefusalKind.WRONG_BED
_SHAPING: Final = (
    "crop",
    "sow_on",
    "plants",
    "bed",
    "germination_days",
    "nursery_days",
    "spacing_days",
    "bed_days",
    "picking_days",
    "clearing_days",
    "germination_share",
)
"""Fields of a batch that decide how many places it needs, where, and when."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Step:
    """One wish to move: the batch, the run that is held (none: all), by how many days, where to.

    `first` is the place of the unit where the held run is to begin; it begins as near to it as it can.
    """

    batch: Id
    run: Id = NO_ID
    days: int = 0
    bed: Id = NO_ID
    unit: int = 0
    first: int | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class Settled:
    """The changes that put a batch in, and why it found no places where it found none."""

    changes: tuple[Change, ...]
    refusals: tuple[Refusal, ...] = ()


class Settler:
    """Finds places for one batch among those of a farm; asked many times while a bar is dragged."""

    def __init__(self, farm: Farm, forecaster: Forecaster, batch: Id) -> None:
        self._forecaster = forecaster
        self._farm = farm
        self._standing: Days = forecaster.days(farm)
        self._tried = self._standing
        self._places = Places(farm, self._standing)
        self._beds: dict[Id, Bed] = by_id(farm.beds)
        self._crops = forecaster.catalogue.crops
        self.batch: Batch = next(each for each in farm.batches if each.id == batch)
        self.runs = tuple(run for run in farm.placements if run.batch == batch)
        self._later: dict[int, Days] = {}

    def move(self, step: Step) -> tuple[Change, ...] | Refusal:
        """Return the changes that a step makes, or why it cannot be taken."""
        if self.batch.locked:
            return self._refusal(RefusalKind.LOCKED, step.bed)
        unsuited = self._unsuited(step)
        if unsuited is not None:
            return unsuited
        sown = self._sown_later(step.days)
        changes: list[Change] = []
        kept: list[Placement] = []
        for run in self.runs:
            held = bool(step.bed) and run.id == step.run
            bed, unit = (step.bed, step.unit) if held else (run.bed, run.unit)
            found = self._settled(run, bed, unit, kept, step.first if held else None)
            if isinstance(found, Refusal) and run.phase is Phase.NURSERY and run.id != step.run:
                found = self._other_tray(run, kept)
            if isinstance(found, Refusal):
                return found
            kept.extend(found)
            changes.extend(_changes(run, found))
        if step.bed and not step.run:
            placed = self._place_rest(step, kept)
            if isinstance(placed, Refusal):
                return placed
            changes.extend(Change(after=run) for run in placed)
        return (*sown, *changes)

    def resettle(
        self, phase: Phase, beds: tuple[Id, ...], wanted: int, *, elsewhere: bool = False
    ) -> Settled:
        """Return the changes that give `wanted` plants places in a phase.

        Runs stay where they can, the last ones are cut when there are too many, and what is missing is
        looked for in `beds`. What finds no place stays without one, and the refusal says why.
        """
        standing = tuple(run for run in self.runs if run.phase is phase)
        if not self._places.lasts(self.batch.id, phase):
            return Settled(changes=tuple(Change(before=run) for run in reversed(standing)))
        kept: list[Placement] = []
        changes: list[Change] = []
        refusals: list[Refusal] = []
        for run, count in _cut(standing, 0 if elsewhere else wanted):
            cut = dataclasses.replace(run, count=max(count, 1))
            found = self._settled(cut, run.bed, run.unit, kept) if count else ()
            if isinstance(found, Refusal):
                refusals.append(found)
                found = ()
            kept.extend(found)
            changes.extend(_changes(run, found) if found else (Change(before=run),))
        missing = wanted - sum(run.count for run in kept)
        if missing > 0 and beds:
            more = self._anywhere(phase, beds, missing, kept)
            if isinstance(more, Refusal):
                refusals.append(more)
            else:
                changes.extend(Change(after=run) for run in more)
        return Settled(changes=tuple(changes), refusals=tuple(refusals))

    def _other_tray(self, run: Placement, kept: list[Placement]) -> tuple[Placement, ...] | Refusal:
        """Return runs anywhere in the nursery in place of one; the first keeps its id."""
        found = self._anywhere(run.phase, (run.bed,), run.count, kept)
        if isinstance(found, Refusal):
            return found
        return (dataclasses.replace(found[0], id=run.id), *found[1:])

    def _anywhere(
        self, phase: Phase, beds: tuple[Id, ...], count: int, kept: list[Placement]
    ) -> tuple[Placement, ...] | Refusal:
        """Return places in the first bed with room: on one unit when one is enough, else on several."""
        refusal: Refusal | None = None
        for bed in beds:
            units = range(1, self._beds[bed].units + 1)
            free = {unit: self._free(bed, unit, phase, kept) for unit in units}
            room = {unit: sum(size for _, size in spans) for unit, spans in free.items()}
            suited = self._suits(phase, bed)
            if suited and sum(room.values()) >= count:
                return self._on_units(phase, bed, count, free, room)
            refusal = self._full(phase, bed, None, count) if suited else self._refusal(_WRONG, bed)
        assert refusal is not None
        return refusal

    def _on_units(
        self,
        phase: Phase,
        bed: Id,
        count: int,
        free: dict[int, tuple[tuple[int, int], ...]],
        room: dict[int, int],
    ) -> tuple[Placement, ...]:
        enough = [unit for unit, size in room.items() if size >= count]
        order = [min(enough, key=room.__getitem__)] if enough else sorted(room, key=lambda unit: -room[unit])
        found: list[Placement] = []
        for unit in order:
            take = min(count, room[unit])
            if take > 0:
                blank = Placement(
                    id=new_id(), batch=self.batch.id, phase=phase, bed=bed, unit=unit, first=1, count=take
                )
                found.extend(_runs_in(free[unit], blank).on(bed, unit))
                count -= take
        return tuple(found)

    def _suits(self, phase: Phase, bed: Id) -> bool:
        kind = self._beds[bed].kind
        if kind is BedKind.NURSERY:
            return phase is not Phase.BED
        return phase is not Phase.NURSERY and kind in self._crops[self.batch.crop].beds

    def _sown_later(self, days: int) -> tuple[Change, ...]:
        """Return the change of the sowing date, and go by the stages as they then are.

        A batch sown on another day may take longer or shorter in each stage.
        """
        self._tried = self._standing
        if not days:
            return ()
        later = dataclasses.replace(self.batch, sow_on=self.batch.sow_on + timedelta(days=days))
        if days not in self._later:
            alone = dataclasses.replace(self._farm, batches=(later,), placements=self.runs)
            self._later[days] = self._forecaster.days_alone(alone)
        self._tried = self._later[days]
        return (Change(before=self.batch, after=later),)

    def _unsuited(self, step: Step) -> Refusal | None:
        if not step.bed:
            return None
        bed = self._beds[step.bed]
        phase = next((run.phase for run in self.runs if run.id == step.run), None)
        nursery = bed.kind is BedKind.NURSERY
        crop = self._crops[self.batch.crop]
        wrong_phase = phase is not None and phase is not Phase.SPACING and nursery != (phase is Phase.NURSERY)
        if wrong_phase or (not nursery and bed.kind not in crop.beds):
            return self._refusal(RefusalKind.WRONG_BED, step.bed)
        return None

    def _settled(
        self, run: Placement, bed: Id, unit: int, kept: list[Placement], wanted: int | None = None
    ) -> tuple[Placement, ...] | Refusal:
        """Return one run or several in place of `run`: where it is if it can, else on the same unit.

        With a place that is `wanted` it begins as near to that as there is room for all of it.
        """
        free = self._free(bed, unit, run.phase, kept)
        if wanted is not None:
            near = _near(free, run.count, wanted)
            if near is not None:
                return (dataclasses.replace(run, bed=bed, unit=unit, first=near),)
        elif (bed, unit) == (run.bed, run.unit) and _fits(free, run.first, run.count):
            return (run,)
        if sum(size for _, size in free) < run.count:
            return self._full(run.phase, bed, unit, run.count)
        return _runs_in(free, run).on(bed, unit)

    def _free(self, bed: Id, unit: int, phase: Phase, kept: list[Placement]) -> tuple[tuple[int, int], ...]:
        start, end = self._days(phase)
        free = self._places.free_runs(bed, unit, start_day=start, end_day=end, ignoring=self.batch.id)
        for other in kept:
            if (other.bed, other.unit) == (bed, unit):
                free = _without(free, other.first, other.last)
        return free

    def _days(self, phase: Phase) -> tuple[int, int]:
        table = self._tried.batches
        start, end = table.phase_days(table.row_of[self.batch.id], phase)
        return start, max(end, start + 1)

    def _place_rest(self, step: Step, kept: list[Placement]) -> tuple[Placement, ...] | Refusal:
        """Return places on a unit for what of the batch has none yet."""
        nursery = self._beds[step.bed].kind is BedKind.NURSERY
        phase = Phase.NURSERY if nursery else Phase.BED
        held = sum(run.count for run in kept if run.phase is phase)
        table = self._tried.batches
        wanted = int(table.seeds[table.row_of[self.batch.id]]) if nursery else self.batch.plants
        missing = wanted - held
        if missing <= 0:
            return self._refusal(RefusalKind.NOTHING_TO_PLACE, step.bed)
        free = self._free(step.bed, step.unit, phase, kept)
        room = sum(size for _, size in free)
        if room == 0 or (nursery and room < missing):
            return self._full(phase, step.bed, step.unit, missing)
        blank = Placement(
            id=new_id(),
            batch=self.batch.id,
            phase=phase,
            bed=step.bed,
            unit=step.unit,
            first=1,
            count=missing,
        )
        return _runs_in(free, dataclasses.replace(blank, count=min(missing, room))).on(step.bed, step.unit)

    def _full(self, phase: Phase, bed: Id, unit: int | None, count: int) -> Refusal:
        days = self._days(phase)
        found = self._places.fit(self.batch.id, phase, bed, count=count, unit=unit, days=days)
        if isinstance(found, Refusal):
            return found
        return self._refusal(RefusalKind.NO_FREE_PLACES, bed, needed=count)

    def _refusal(self, kind: RefusalKind, bed: Id, *, needed: int = 0) -> Refusal:
        name = self._beds[bed].name if bed in self._beds else ""
        return Refusal(kind=kind, batch=self.batch.id, bed=name, needed=needed)


@dataclass(frozen=True, slots=True)
class _Spread:
    """Runs that take the place of one."""

    run: Placement
    spans: tuple[tuple[int, int], ...]

    def on(self, bed: Id, unit: int) -> tuple[Placement, ...]:
        """Return the runs on one raft, block or tray; the first keeps the id of the old one."""
        first, *rest = self.spans
        moved = dataclasses.replace(self.run, bed=bed, unit=unit, first=first[0], count=first[1])
        more = (dataclasses.replace(moved, id=new_id(), first=start, count=count) for start, count in rest)
        return (moved, *more)


def _runs_in(free: tuple[tuple[int, int], ...], run: Placement) -> _Spread:
    """Return spans for a run: a single one that is just enough, else in order of place."""
    enough = [span for span in free if span[1] >= run.count]
    if enough:
        start, _ = min(enough, key=lambda span: (span[1], span[0]))
        return _Spread(run, ((start, run.count),))
    spans, wanted = [], run.count
    for start, size in free:
        take = min(size, wanted)
        if take > 0:
            spans.append((start, take))
            wanted -= take
    return _Spread(run, tuple(spans))


def _cut(runs: tuple[Placement, ...], wanted: int) -> tuple[tuple[Placement, int], ...]:
    """Return each run with how many of its places are still wanted, the first runs first."""
    cut = []
    for run in runs:
        take = min(run.count, wanted)
        cut.append((run, take))
        wanted -= take
    return tuple(cut)


def _near(free: tuple[tuple[int, int], ...], count: int, wanted: int) -> int | None:
    """Return the first place nearest to a wanted one that has `count` free places from it on."""
    starts = [min(max(wanted, start), start + size - count) for start, size in free if size >= count]
    return min(starts, key=lambda start: (abs(start - wanted), start)) if starts else None


def _fits(free: tuple[tuple[int, int], ...], first: int, count: int) -> bool:
    return any(start <= first and first + count <= start + size for start, size in free)


def _without(free: tuple[tuple[int, int], ...], first: int, last: int) -> tuple[tuple[int, int], ...]:
    """Return the free spans without the places `first` to `last`."""
    left = []
    for start, size in free:
        end = start + size - 1
        if last < start or first > end:
            left.append((start, size))
            continue
        if first > start:
            left.append((start, first - start))
        if last < end:
            left.append((last + 1, end - last))
    return tuple(left)


def _changes(before: Placement, after: tuple[Placement, ...]) -> tuple[Change, ...]:
    first, *rest = after
    changed = () if first == before else (Change(before=before, after=first),)
    return (*changed, *(Change(after=run) for run in rest))


def settle_new(farm: Farm, batch: Batch, forecaster: Forecaster) -> Settled:
    """Return the changes that add a batch, with places in the nursery and in the bed it is meant for."""
    added = Change(after=batch)
    after = applied(farm, ChangeSet(title="", changes=(added,)))
    settled = _resettled(after, batch, forecaster)
    return dataclasses.replace(settled, changes=(added, *settled.changes))


def settle_altered(farm: Farm, after: Batch, forecaster: Forecaster) -> Settled:
    """Return the changes that alter a batch; it is given other places where it needs them."""
    before: Batch = by_id(farm.batches)[after.id]
    altered = Change(before=before, after=after)
    if all(getattr(before, field) == getattr(after, field) for field in _SHAPING):
        return Settled(changes=(altered,))
    tried = applied(farm, ChangeSet(title="", changes=(altered,)))
    settled = _resettled(tried, after, forecaster, elsewhere=before.bed != after.bed)
    return dataclasses.replace(settled, changes=(altered, *settled.changes))


def _resettled(farm: Farm, batch: Batch, forecaster: Forecaster, *, elsewhere: bool = False) -> Settled:
    """Return the changes to the places of a batch that is in the farm already.

    With `elsewhere` its places in beds are given up for the bed it is now meant for.
    """
    days = forecaster.days(farm)
    settler = Settler(farm, forecaster, batch.id)
    nurseries = nurseries_of(farm, batch) if batch.bed else ()
    seeds = int(days.batches.seeds[days.batches.row_of[batch.id]])
    beds = (batch.bed,) if batch.bed else ()
    found = (
        settler.resettle(Phase.NURSERY, nurseries, seeds),
        settler.resettle(Phase.SPACING, (), batch.plants),
        settler.resettle(Phase.BED, beds, batch.plants, elsewhere=elsewhere and bool(batch.bed)),
    )
    return Settled(
        changes=tuple(change for each in found for change in each.changes),
        refusals=tuple(refusal for each in found for refusal in each.refusals),
    )
