"""Sets the days and shares of a batch by what the log says of it, so that the forecast goes on from there.

The forecast may stretch a stage by the season; the days that are set are those that make the stage end
on the day it really ended. Pure: how long stages last comes in as a function.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable
from dataclasses import dataclass, replace
from datetime import date
from typing import Any, Final

from planner.farm.checks import checked
from planner.farm.crops import Batch, Stage
from planner.farm.farm import Farm
from planner.farm.faults import FarmFaultError, Fault, FaultKind
from planner.farm.fields import Id, specs_of
from planner.farm.log import Happening, LogEntry, standing

Lengths = tuple[int, ...]
"""Days from sowing to the end of each stage, in the order of `Stage`."""

LengthsOf = Callable[[Batch], Lengths]

_STAGES: Final = tuple(Stage)
_BISECTIONS: Final = 14
"""Halvings of the longest stage there is: to within an hour."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Moments:
    """When a batch really did what it did, as far as it is known, and how many there were."""

    sown_on: date | None = None
    came_up_on: date | None = None
    moved_on: date | None = None
    picked_on: date | None = None
    cleared_on: date | None = None
    seeds: int | None = None
    seedlings: int | None = None
    moved: int | None = None
    culled: int = 0

    def end_of(self, stage: Stage) -> date | None:
        """Return the day on which a stage really ended; None when it is not known."""
        return {
            Stage.GERMINATION: self.came_up_on,
            Stage.NURSERY: self.moved_on,
            Stage.BED: self.picked_on,
            Stage.PICKING: self.cleared_on,
        }.get(stage)


def moments_of(batch: Id, entries: Iterable[LogEntry]) -> Moments:
    """Return what the entries that stand say of a batch; the first day of a kind counts."""
    mine = sorted((e for e in standing(entries) if e.batch == batch), key=_on)
    by: dict[Happening, list[LogEntry]] = {}
    for entry in mine:
        by.setdefault(entry.what, []).append(entry)

    return Moments(
        sown_on=_first(by, Happening.SOWN),
        came_up_on=_first(by, Happening.GERMINATED),
        moved_on=_first(by, Happening.MOVED),
        picked_on=_first(by, Happening.PICKED),
        cleared_on=_first(by, Happening.CLEARED),
        seeds=_sum(by, Happening.SOWN),
        seedlings=max((int(e.amount or 0) for e in by.get(Happening.GERMINATED, ())), default=None),
        moved=_sum(by, Happening.MOVED),
        culled=_sum(by, Happening.CULLED) or 0,
    )


def _on(entry: LogEntry) -> tuple[date, str]:
    return entry.on, entry.at


def _first(by: dict[Happening, list[LogEntry]], what: Happening) -> date | None:
    return by[what][0].on if what in by else None


def _sum(by: dict[Happening, list[LogEntry]], what: Happening) -> int | None:
    amounts = [int(entry.amount) for entry in by.get(what, ()) if entry.amount is not None]
    return sum(amounts) if amounts else None


def anchored(batch: Batch, entries: Iterable[LogEntry], lengths_of: LengthsOf) -> Batch:
    """Return the batch with days and shares as the log says them.

    What an entry once set and no entry says any more goes back to the book. Raises `FarmFaultError`
    when the log says what cannot be: stages in the wrong order, more seedlings than seeds.
    """
    every = tuple(entries)
    moments = moments_of(batch.id, every)
    once = {entry.what for entry in every if entry.batch == batch.id}
    batch = checked(batch, **_shares(batch, moments, once))
    batch = _cleared(batch, moments, once)
    for stage in _STAGES:
        end = moments.end_of(stage)
        if end is not None:
            batch = _ending(batch, stage, end, lengths_of)
    return batch


_SET_BY: Final = {
    Stage.GERMINATION: Happening.GERMINATED,
    Stage.NURSERY: Happening.MOVED,
    Stage.BED: Happening.PICKED,
    Stage.PICKING: Happening.CLEARED,
}


def _cleared(batch: Batch, moments: Moments, once: set[Happening]) -> Batch:
    """Return the batch without days that were set by an entry which no longer stands."""
    gone = {
        f"{stage.value}_days": None
        for stage, what in _SET_BY.items()
        if what in once and moments.end_of(stage) is None
    }
    cleared: Batch = checked(batch, **gone)
    return cleared


def _shares(batch: Batch, moments: Moments, once: set[Happening]) -> dict[str, Any]:
    found: dict[str, Any] = {}
    if moments.sown_on is not None:
        found["sow_on"] = moments.sown_on
    if moments.seeds and moments.seedlings is not None:
        if moments.seedlings > moments.seeds:
            raise _more(batch, "germinated", moments.seedlings, "seeds sown", moments.seeds)
        found["germination_share"] = _at_least(moments.seedlings / moments.seeds, "germination_share")
    elif Happening.GERMINATED in once and Happening.SOWN in once:
        found["germination_share"] = None
    if moments.moved:
        found["plants"] = moments.moved
    plants = found.get("plants", batch.plants)
    if moments.culled > plants:
        raise _more(batch, "culled", moments.culled, "plants", plants)
    if Happening.CULLED in once:
        left = 1 - moments.culled / plants
        found["bed_survival_share"] = _at_least(left, "bed_survival_share") if moments.culled else None
    return found


def _at_least(share: float, field: str) -> float:
    """Return a share no smaller than a batch can be given."""
    low = specs_of(Batch)[field].low
    assert isinstance(low, float)
    return max(share, low)


def _more(batch: Batch, what: str, many: int, of: str, limit: int) -> FarmFaultError:
    fault = Fault(
        kind=FaultKind.OUT_OF_LIMITS,
        where=f'batch "{batch.code}"',
        field="amount",
        value=str(many),
        limit=f"{limit} {of}",
        message=f"{many} {what}, but there are only {limit} {of}.",
        remedy="Correct this entry, or the one before it.",
    )
    return FarmFaultError((fault,))


def _ending(batch: Batch, stage: Stage, end: date, lengths_of: LengthsOf) -> Batch:
    """Return the batch with the days of a stage such that it ends on a day."""
    at = _STAGES.index(stage)
    wanted = (end - batch.sow_on).days
    lengths = lengths_of(batch)
    if stage is Stage.NURSERY:  # moved to the bed: what stands at a distance meanwhile ends then
        at += 1
    start = lengths[_STAGES.index(stage) - 1] if stage is not Stage.GERMINATION else 0
    kept = lengths[at] - lengths[_STAGES.index(stage)]
    field = f"{stage.value}_days"
    if wanted < start:
        raise _too_early(batch, stage, wanted, start)
    days = float(max(wanted - start - kept, 0))
    tried: Batch = checked(batch, **{field: _within(days, field)})
    if lengths_of(tried)[at] == wanted:
        return tried
    return _bisected(batch, field, at, wanted, lengths_of)


def _within(days: float, field: str) -> float:
    low = specs_of(Batch)[field].low
    assert isinstance(low, int | float)
    return max(days, float(low))


def _bisected(batch: Batch, field: str, at: int, wanted: int, lengths_of: LengthsOf) -> Batch:
    """Return the batch with the fewest days for which a stage ends no earlier than wanted."""
    spec = specs_of(Batch)[field]
    assert isinstance(spec.low, int | float)
    assert isinstance(spec.high, int | float)
    low, high = float(spec.low), float(spec.high)
    for _ in range(_BISECTIONS):
        middle = (low + high) / 2
        if lengths_of(checked(batch, **{field: middle}))[at] < wanted:
            low = middle
        else:
            high = middle
    found: Batch = checked(batch, **{field: round(high, 2)})
    return found


def _too_early(batch: Batch, stage: Stage, wanted: int, start: int) -> FarmFaultError:
    fault = Fault(
        kind=FaultKind.WRONG_ORDER,
        where=f'batch "{batch.code}"',
        field="on",
        value=f"day {wanted} after sowing",
        limit=f"not before day {start}",
        message=f"the end of {stage.value} is on day {wanted} after sowing, but the stage before it "
        f"ends on day {start}.",
        remedy="Log what came before it first (germinated, moved to bed), or correct the date.",
    )
    return FarmFaultError((fault,))


def alone(farm: Farm, batch: Batch) -> Farm:
    """Return the farm with this one batch, no fish and no log: enough to date it."""
    return replace(
        farm,
        batches=(batch,),
        placements=tuple(one for one in farm.placements if one.batch == batch.id),
        fish_groups=(),
        fish_events=(),
        doses=(),
        solids_batches=(),
        targets=(),
        log_entries=(),
    )
