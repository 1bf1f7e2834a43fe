"""Which places are held on which days, and where two plants would share one."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from planner.farm.crops import Batch
from planner.farm.farm import Farm, by_id
from planner.farm.faults import Fault, FaultKind
from planner.farm.fields import Id
from planner.farm.holds import Hold
from planner.farm.site import Bed
from planner.farm.species import UNIT_WORDS
from planner.forecast.values import Forecast


def holds(farm: Farm, forecast: Forecast) -> tuple[Hold, ...]:
    """Return how long every placement of a farm is held, in their order.

    A phase that lasts no day at all holds its places for one.
    """
    table, ruler = forecast.batches, forecast.ruler
    found = []
    for placement in farm.placements:
        start, end = table.phase_days(table.row_of[placement.batch], placement.phase)
        found.append(
            Hold(
                placement=placement.id,
                batch=placement.batch,
                bed=placement.bed,
                unit=placement.unit,
                first=placement.first,
                last=placement.last,
                from_on=ruler.date_of(start),
                until_on=ruler.date_of(max(end, start + 1)),
            )
        )
    return tuple(found)


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


def clash_faults(farm: Farm, forecast: Forecast) -> tuple[Fault, ...]:
    """Return a fault for every two plants that would stand in one place."""
    batches: dict[Id, Batch] = by_id(farm.batches)
    beds: dict[Id, Bed] = by_id(farm.beds)
    return tuple(clash_fault(clash, batches=batches, beds=beds) for clash in clashes(holds(farm, forecast)))
