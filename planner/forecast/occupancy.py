"""Which places are held on which days, and where two plants would share one."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from datetime import date
from typing import Protocol

import numpy as np

from planner.farm.crops import Batch, Phase, Placement
from planner.farm.farm import Farm, by_id
from planner.farm.faults import Fault, FaultKind
from planner.farm.fields import Id
from planner.farm.holds import Hold
from planner.farm.site import Bed
from planner.farm.species import UNIT_WORDS
from planner.forecast.values import BatchTable, Ruler


class Dated(Protocol):
    """What tells when batches are in which stage: a forecast, or the first part of one."""

    @property
    def ruler(self) -> Ruler:
        """The days of the plan."""

    @property
    def batches(self) -> BatchTable:
        """The stages of every batch."""


def holds(farm: Farm, forecast: Dated) -> tuple[Hold, ...]:
    """Return how long every placement of a farm is held, in their order.

    A phase that lasts no day at all holds its places for one.
    """
    return HoldKeeper().holds(farm, forecast)


class HoldKeeper:
    """Works holds out, and gives the very same ones again for what has not changed since the last time.

    After an act few of many thousands are other than before; whoever compares them sees that at once.
    """

    def __init__(self) -> None:
        self._start_on: date | None = None
        self._kept: dict[Id, tuple[Placement, int, int, Hold]] = {}
        self._last: tuple[tuple[Placement, ...], BatchTable] | None = None
        self._found: tuple[Hold, ...] = ()

    def holds(self, farm: Farm, forecast: Dated) -> tuple[Hold, ...]:
        """Return how long every placement of a farm is held, in their order.

        It is the very same value again where neither a placement nor a date is other than the last time.
        """
        table, ruler = forecast.batches, forecast.ruler
        if ruler.start_on != self._start_on:
            self._start_on, self._kept, self._last = ruler.start_on, {}, None
        if self._last is not None and self._last[0] is farm.placements and _same_days(self._last[1], table):
            return self._found
        self._last = farm.placements, table
        self._found = self._worked_out(farm, table, ruler)
        return self._found

    def _worked_out(self, farm: Farm, table: BatchTable, ruler: Ruler) -> tuple[Hold, ...]:
        spans, row_of, before = _spans(table), table.row_of, self._kept
        kept: dict[Id, tuple[Placement, int, int, Hold]] = {}
        for placement in farm.placements:
            row = row_of[placement.batch]
            starts, ends = spans[placement.phase]
            start, end = starts[row], ends[row]
            known = before.get(placement.id)
            if known is None or known[0] is not placement or known[1] != start or known[2] != end:
                known = placement, start, end, _hold(placement, start, end, ruler)
            kept[placement.id] = known
        self._kept = kept
        return tuple(hold for _, _, _, hold in kept.values())


def _same_days(one: BatchTable, other: BatchTable) -> bool:
    """Tell whether two tables have the same batches in the same rows on the same days."""
    return one is other or (
        np.array_equal(one.sow_day, other.sow_day)
        and np.array_equal(one.ends, other.ends)
        and one.row_of == other.row_of
    )


def _spans(table: BatchTable) -> dict[Phase, tuple[list[int], list[int]]]:
    """Return first days and days after the last of each phase, by row; read once for all rows."""
    sow, nursery, spacing, clear = (
        days.tolist() for days in (table.sow_day, table.ends[:, 1], table.ends[:, 2], table.ends[:, 5])
    )
    return {Phase.NURSERY: (sow, nursery), Phase.SPACING: (nursery, spacing), Phase.BED: (spacing, clear)}


def _hold(placement: Placement, start: int, end: int, ruler: Ruler) -> Hold:
    return Hold(
        placement=placement.id,
        batch=placement.batch,
        bed=placement.bed,
        unit=placement.unit,
        first=placement.first,
        last=placement.last,
        from_on=ruler.date_of(start),
        until_on=ruler.date_of(max(end, start + 1)),
    )


@dataclass(frozen=True, slots=True, kw_only=True)
class Clash:
    """Two holds that share a place on a day."""

    one: Hold
    other: Hold


def clashes(held: Sequence[Hold]) -> Iterator[Clash]:
    """Yield every pair of holds that share a place on a day, the earlier one first."""
    by_unit: dict[tuple[Id, int], list[Hold]] = {}
    for hold in held:
        by_unit.setdefault((hold.bed, hold.unit), []).append(hold)
    for many in by_unit.values():
        many.sort(key=_start)
        yield from _clashes_on_unit(many)


def _start(hold: Hold) -> tuple[int, int]:
    return hold.from_on.toordinal(), hold.first


def _clashes_on_unit(many: list[Hold]) -> Iterator[Clash]:
    """Sweep through the days of one unit, keeping what still stands there."""
    standing: list[Hold] = []
    for hold in many:
        standing = [other for other in standing if other.until_on > hold.from_on]
        for other in standing:
            if other.first <= hold.last and hold.first <= other.last:
                yield Clash(one=other, other=hold)
        standing.append(hold)


def clash_fault(clash: Clash, *, batches: dict[Id, Batch], beds: dict[Id, Bed]) -> Fault:
    """Return the fault that says in words who shares which places when."""
    one, other, bed = batches[clash.one.batch], batches[clash.other.batch], beds[clash.one.bed]
    first, last = max(clash.one.first, clash.other.first), min(clash.one.last, clash.other.last)
    from_on, until_on = (
        max(clash.one.from_on, clash.other.from_on),
        min(clash.one.until_on, clash.other.until_on),
    )
    unit = f"{UNIT_WORDS[bed.kind]} {clash.one.unit}"
    places = f"place {first}" if first == last else f"places {first} to {last}"
    return Fault(
        kind=FaultKind.HELD_PLACE,
        where=f'batch "{other.code}"',
        field="places",
        value=f"{first}-{last}",
        limit="one plant in a place",
        message=f'{places} of {unit} in "{bed.name}" are held by "{one.code}" '
        f"from {from_on.isoformat()} until {until_on.isoformat()}, so they cannot hold "
        f'"{other.code}" as well.',
        remedy="Choose other places or another date.",
    )


def clash_faults(farm: Farm, forecast: Dated, *, keeper: HoldKeeper | None = None) -> tuple[Fault, ...]:
    """Return a fault for every two plants that would stand in one place.

    A `keeper` that worked out the holds of a farm much like this one before makes it quicker.
    """
    batches: dict[Id, Batch] = by_id(farm.batches)
    beds: dict[Id, Bed] = by_id(farm.beds)
    held = (keeper or HoldKeeper()).holds(farm, forecast)
    return tuple(clash_fault(clash, batches=batches, beds=beds) for clash in clashes(held))
