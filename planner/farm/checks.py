"""Checks a farm against itself: limits of single values, references, names, order of dates.

What needs figures or dates of stages (crops that do not exist, two plants in one place) is checked
where those are known, in the forecast.
"""

from __future__ import annotations

import dataclasses
import math
from collections.abc import Iterator
from datetime import date
from typing import Any

from planner.farm.crops import Batch, Phase, Placement, Target
from planner.farm.farm import KINDS, Farm, Kind, Thing, by_id, kind_of, label_of, things
from planner.farm.faults import FarmFaultError, Fault, FaultKind
from planner.farm.fields import NO_ID, FieldKind, FieldSpec, Id, specs_of
from planner.farm.fish import Feeding, FishEvent, FishEventKind, FishGroup
from planner.farm.fish_counts import count_faults
from planner.farm.log import LogEntry
from planner.farm.log_checks import entry_faults, log_faults, time_faults
from planner.farm.meter_checks import meter_faults, read_with_faults
from planner.farm.meters import Meter
from planner.farm.plain_text import Mark, first_mark
from planner.farm.seed_lots import seed_lot_faults
from planner.farm.site import Bed
from planner.farm.species import UNIT_WORDS, BedKind
from planner.farm.water import READING_LIMITS, Dose, Quantity, Reading, SolidsBatch

_NEEDED_OF_EVENT: dict[FishEventKind, tuple[str, ...]] = {
    FishEventKind.HARVEST: (),
    FishEventKind.DEATHS: ("count",),
    FishEventKind.ADDED: ("count", "mean_weight_g"),
    FishEventKind.SAMPLE: ("mean_weight_g",),
    FishEventKind.OFF_FEED: ("days",),
    FishEventKind.FEED_GIVEN: ("days", "feed_g_per_day"),
}

_LONGEST_IN_FULL = 1e15
"""Larger whole numbers are told in powers of ten: nobody counts so many noughts."""


def where_of(thing: Thing) -> str:
    """Return how a fault calls a thing: its kind and name."""
    kind = kind_of(thing)
    return f'{kind.word} "{label_of(thing)}"' if kind.label else kind.word


def limit_text(spec: FieldSpec) -> str:
    """Return the limits of a field in words."""
    unit = f" {spec.unit}" if spec.unit and spec.unit != "1" else ""
    return f"{_plain(spec.low)} to {_plain(spec.high)}{unit}"


def _plain(value: Any) -> str:
    """Return a date or number as people write it: whole numbers without a point."""
    if isinstance(value, date):
        return value.isoformat()
    if isinstance(value, int) or (value.is_integer() and abs(value) < _LONGEST_IN_FULL):
        return str(int(value))
    return f"{value:.12g}"


def value_faults(*, where: str, field: str, value: Any, spec: FieldSpec) -> Iterator[Fault]:
    """Yield the faults of one value of the right type against its declared limits."""
    if value is None:
        return
    if spec.kind is FieldKind.SERIES:
        yield from _series_faults(where=where, field=field, value=value, spec=spec)
    elif spec.kind in (FieldKind.NUMBER, FieldKind.WHOLE, FieldKind.DAY):
        if _outside(value, spec):
            yield _out_of_limits(where, field, value, spec)
    elif spec.kind in (FieldKind.NAME, FieldKind.TEXT, FieldKind.KEY):
        yield from _text_faults(where=where, field=field, value=value, spec=spec)


def _outside(value: Any, spec: FieldSpec) -> bool:
    if isinstance(value, float) and not math.isfinite(value):
        return True
    return (spec.low is not None and value < spec.low) or (spec.high is not None and value > spec.high)


def _out_of_limits(where: str, field: str, value: Any, spec: FieldSpec) -> Fault:
    limit = limit_text(spec)
    return Fault(
        kind=FaultKind.OUT_OF_LIMITS,
        where=where,
        field=field,
        value=_plain(value),
        limit=limit,
        message=f"{field} is {_plain(value)}, but must lie within {limit}.",
    )


def _series_faults(*, where: str, field: str, value: Any, spec: FieldSpec) -> Iterator[Fault]:
    if value and len(value) != spec.length:
        yield Fault(
            kind=FaultKind.WRONG_TYPE,
            where=where,
            field=field,
            value=f"{len(value)} numbers",
            limit=f"{spec.length} numbers",
            message=f"{field} has {len(value)} numbers, but needs {spec.length}, one a month from January.",
        )
    for position, entry in enumerate(value, start=1):
        if _outside(entry, spec):
            yield _out_of_limits(where, f"{field}[{position}]", entry, spec)


def _text_faults(*, where: str, field: str, value: str, spec: FieldSpec) -> Iterator[Fault]:
    if spec.kind is FieldKind.NAME and not value.strip():
        yield Fault(
            kind=FaultKind.MISSING, where=where, field=field, message=f"{field} is empty, but must be given."
        )
    if spec.length is not None and len(value) > spec.length:
        yield Fault(
            kind=FaultKind.TOO_LARGE,
            where=where,
            field=field,
            value=f"{len(value)} characters",
            limit=f"{spec.length} characters",
            message=f"{field} has {len(value)} characters, but at most {spec.length} are allowed.",
        )
    mark = None if spec.many_lines else first_mark(value)
    if mark is not None:
        yield _marked(where, field, mark)


def _marked(where: str, field: str, mark: Mark) -> Fault:
    wanted = "one plain line"
    return Fault(
        kind=FaultKind.WRONG_TYPE,
        where=where,
        field=field,
        value=mark.code,
        limit=wanted,
        message=f"{field} holds {mark.code}, {mark.words}, as character {mark.place}, but must be {wanted}.",
        remedy="Type it anew by hand; such marks come along with what is copied.",
    )


def thing_faults(thing: Thing) -> Iterator[Fault]:
    """Yield the faults of one thing taken by itself."""
    where = where_of(thing)
    for field, spec in specs_of(type(thing)).items():
        yield from value_faults(where=where, field=field, value=getattr(thing, field), spec=spec)
    if isinstance(thing, FishGroup):
        yield from _feeding_faults(thing, where)
    elif isinstance(thing, FishEvent):
        yield from _event_faults(thing, where)
    elif isinstance(thing, Reading):
        yield from _reading_faults(thing, where)
    elif isinstance(thing, Dose):
        yield from _order_faults(where, "until_on", thing.on, thing.until_on)
    elif isinstance(thing, Target):
        yield from _order_faults(where, "until_on", thing.from_on, thing.until_on)
    elif isinstance(thing, SolidsBatch):
        yield from _order_faults(where, "returned_on", thing.siphoned_on, thing.returned_on)
    elif isinstance(thing, Meter):
        yield from meter_faults(thing, where)
    elif isinstance(thing, LogEntry):
        yield from entry_faults(thing, where)


def _missing(where: str, field: str, why: str) -> Fault:
    return Fault(kind=FaultKind.MISSING, where=where, field=field, message=f"{field} is missing: {why}.")


def _feeding_faults(group: FishGroup, where: str) -> Iterator[Fault]:
    needed = {
        Feeding.TABLE: ("feeding_table", group.feeding_table),
        Feeding.PERCENT: ("feed_percent", group.feed_percent),
        Feeding.FIXED: ("feed_g_per_day", group.feed_g_per_day),
    }
    if group.feeding in needed:
        field, value = needed[group.feeding]
        if value is None or value == "":
            yield _missing(where, field, f'feeding = "{group.feeding.value}" needs it')


def _event_faults(event: FishEvent, where: str) -> Iterator[Fault]:
    for field in _NEEDED_OF_EVENT.get(event.kind, ()):
        if getattr(event, field) is None:
            yield _missing(where, field, f'kind = "{event.kind.value}" needs it')
    yield from _order_faults(where, "cleared_on", event.on, event.cleared_on)


def _reading_faults(reading: Reading, where: str) -> Iterator[Fault]:
    yield from time_faults(reading.at, where)
    low, high = READING_LIMITS[reading.quantity]
    spec = FieldSpec(kind=FieldKind.NUMBER, low=low, high=high, unit=f"({reading.quantity.value})")
    yield from value_faults(where=where, field="value", value=reading.value, spec=spec)
    if reading.quantity is Quantity.TDS_MG_PER_L and reading.meter_factor is None:
        limit = limit_text(specs_of(Reading)["meter_factor"])
        yield Fault(
            kind=FaultKind.MISSING,
            where=where,
            field="meter_factor",
            limit=limit,
            message=f"meter_factor is missing: ppm of dissolved solids mean nothing without it ({limit}).",
            remedy="Write what the leaflet of the meter says, or enter the conductivity instead.",
        )


def _order_faults(where: str, field: str, start: date, end: date | None) -> Iterator[Fault]:
    if end is not None and end < start:
        yield Fault(
            kind=FaultKind.WRONG_ORDER,
            where=where,
            field=field,
            value=end.isoformat(),
            limit=f"not before {start.isoformat()}",
            message=f"{field} is {end.isoformat()}, before it starts on {start.isoformat()}.",
        )


def farm_faults(farm: Farm, *, sound: Farm | None = None) -> tuple[Fault, ...]:
    """Return every fault of a farm that can be told without figures or stage dates.

    `sound` is a farm without faults that this one comes from: its things are not looked at again by
    themselves, nor is anything that hangs only on kinds of things that are still the very same.
    """
    same = same_kinds(farm, sound)
    found: list[Fault] = list(thing_faults(farm.settings))
    for kind in KINDS:
        if kind.word in same:
            continue
        known = {id(thing) for thing in things(sound, kind.word)} if sound else set()
        for thing in things(farm, kind.word):
            if id(thing) not in known:
                found.extend(thing_faults(thing))
        found.extend(_duplicates(kind, things(farm, kind.word)))
    found.extend(reference_faults(farm, same=same))
    if not found:
        if not {"bed", "batch", "placement"} <= same:
            found.extend(_placement_faults(farm))
        found.extend(_group_faults(farm))
        found.extend(fault for _id, fault in count_faults(farm.fish_groups, farm.fish_events))
        found.extend(seed_lot_faults(farm.batches, by_id(farm.seed_lots), farm.own_entries))
        found.extend(read_with_faults(farm.readings, by_id(farm.meters)))
        found.extend(log_faults(farm))
    return tuple(found)


def _duplicates(kind: Kind, many: tuple[Thing, ...]) -> Iterator[Fault]:
    for field in ("id", kind.label):
        seen: set[str] = set()
        for thing in many if field else ():
            value = str(getattr(thing, field))
            if value in seen:
                yield Fault(
                    kind=FaultKind.DUPLICATE,
                    where=where_of(thing),
                    field=field,
                    value=value,
                    message=f'{field} "{value}" is used by more than one {kind.word}.',
                    remedy="Give each its own.",
                )
            seen.add(value)


def same_kinds(farm: Farm, other: Farm | None) -> frozenset[str]:
    """Return the words of the kinds whose things are the very same in both farms, none of them other."""
    if other is None:
        return frozenset()
    return frozenset(kind.word for kind in KINDS if getattr(farm, kind.place) is getattr(other, kind.place))


def reference_faults(farm: Farm, *, same: frozenset[str] = frozenset()) -> Iterator[Fault]:
    """Yield a fault for every reference that points at nothing.

    References from and to kinds that are the `same` as in a farm without faults are not looked at.
    """
    known = {kind.word: {thing.id for thing in things(farm, kind.word)} for kind in KINDS}
    for kind in KINDS:
        refers = [
            (field, spec)
            for field, spec in specs_of(kind.owner).items()
            if spec.kind is FieldKind.REFERENCE and not {kind.word, spec.refers_to} <= same
        ]
        for thing in things(farm, kind.word) if refers else ():
            yield from _dangling(thing, refers, known)


def _dangling(
    thing: Thing, refers: list[tuple[str, FieldSpec]], known: dict[str, set[Id]]
) -> Iterator[Fault]:
    for field, spec in refers:
        target = getattr(thing, field)
        if (target != NO_ID or spec.needed) and target not in known[spec.refers_to]:
            yield Fault(
                kind=FaultKind.UNKNOWN_NAME,
                where=where_of(thing),
                field=field,
                value=str(target),
                message=f"{field} points at a {spec.refers_to} that does not exist.",
            )


def _placement_faults(farm: Farm) -> Iterator[Fault]:
    beds: dict[Id, Bed] = by_id(farm.beds)
    batches: dict[Id, Batch] = by_id(farm.batches)
    held: dict[tuple[Id, Phase], int] = {}
    for placement in farm.placements:
        batch, bed = batches[placement.batch], beds[placement.bed]
        yield from placement_faults(placement, batch=batch, bed=bed)
        held[batch.id, placement.phase] = held.get((batch.id, placement.phase), 0) + placement.count
    for (batch_id, phase), count in held.items():
        batch = batches[batch_id]
        if phase is Phase.BED and count > batch.plants:
            yield Fault(
                kind=FaultKind.OUT_OF_LIMITS,
                where=where_of(batch),
                field="places",
                value=str(count),
                limit=f"{batch.plants} plants",
                message=f"{count} places are held in beds for {batch.plants} plants.",
                remedy="Take places out, or raise plants.",
            )


def placement_faults(placement: Placement, *, batch: Batch, bed: Bed) -> Iterator[Fault]:
    """Yield a fault where a run of places is not on its bed, or not on that kind of bed."""
    where = where_of(batch)
    if placement.unit > bed.units:
        yield _no_place(where, f'"{bed.name}" has {_counted_units(bed)}, not {placement.unit}', "unit")
    elif placement.last > bed.places_per_unit:
        yield _no_place(
            where,
            f'"{bed.name}" has places 1 to {bed.places_per_unit} on each {UNIT_WORDS[bed.kind]}, '
            f"not {placement.first} to {placement.last}",
            "first",
        )
    if (placement.phase is Phase.NURSERY) != (
        bed.kind is BedKind.NURSERY
    ) and placement.phase is not Phase.SPACING:
        yield Fault(
            kind=FaultKind.NOT_SUITED,
            where=where,
            field="bed",
            value=bed.name,
            message=f"the {placement.phase.value} phase cannot stand in "
            f'"{bed.name}", a {bed.kind.value} bed.',
        )


def _counted_units(bed: Bed) -> str:
    word = UNIT_WORDS[bed.kind]
    return f"1 {word}" if bed.units == 1 else f"{bed.units} {word}s"


def _no_place(where: str, message: str, field: str) -> Fault:
    return Fault(kind=FaultKind.NO_SUCH_PLACE, where=where, field=field, message=f"{message}.")


def _group_faults(farm: Farm) -> Iterator[Fault]:
    groups: dict[Id, FishGroup] = by_id(farm.fish_groups)
    for event in farm.fish_events:
        group = groups[event.group]
        if event.on < group.stocked_on:
            yield Fault(
                kind=FaultKind.WRONG_ORDER,
                where=f'fish event of "{group.name}"',
                field="on",
                value=event.on.isoformat(),
                limit=f"not before {group.stocked_on.isoformat()}",
                message=f"on is {event.on.isoformat()}, before the group was stocked "
                f"on {group.stocked_on.isoformat()}.",
            )


def checked(thing: Any, **changes: Any) -> Any:
    """Return a copy of a thing with some fields changed, once it is found free of faults.

    Raises `FarmFaultError` with every fault of the changed thing.
    """
    changed = dataclasses.replace(thing, **changes)
    found = tuple(thing_faults(changed))
    if found:
        raise FarmFaultError(found)
    return changed
