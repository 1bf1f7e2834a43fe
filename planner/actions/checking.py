"""Whether a farm may become what an act would make of it: only what the act touches is looked at.

A large plan is not checked whole at every step; what an act does not touch was checked before.
"""

from __future__ import annotations

import math
from collections.abc import Callable, Collection, Iterator, Mapping
from typing import Any, Protocol

from planner.actions.changing import users_of
from planner.actions.holding import Pair
from planner.farm.changes import Change, ChangeSet, applied
from planner.farm.checks import placement_faults, thing_faults, where_of
from planner.farm.crops import Batch, Phase, Placement
from planner.farm.farm import KINDS, Farm, OwnEntry, Shelf, Thing, by_id, kind_named, kind_of, things
from planner.farm.faults import Fault, FaultKind
from planner.farm.fields import NO_ID, FieldKind, Id, specs_of
from planner.farm.fish import FishEvent
from planner.farm.fish_counts import count_faults
from planner.farm.meter_checks import read_with_faults
from planner.farm.seed_lots import seed_lot_faults
from planner.farm.site import Site
from planner.farm.species import UNIT_WORDS
from planner.farm.withdrawal import barred_fault, barred_harvests
from planner.farm.zones import zone_faults


class Shelves(Protocol):
    """What is asked of a catalogue here: which keys it has."""

    @property
    def crops(self) -> Mapping[str, Any]:
        """Crops by key."""

    @property
    def fish(self) -> Mapping[str, Any]:
        """Fish by key."""

    @property
    def feeds(self) -> Mapping[str, Any]:
        """Feeds by key."""

    @property
    def supplements(self) -> Mapping[str, Any]:
        """Supplements by key."""

    @property
    def feeding_tables(self) -> Mapping[str, Any]:
        """Feeding tables by key."""


ZonesOf = Callable[[], Collection[str]]
"""Tells the time zones that are known; asked only when a site is touched."""


def change_faults(
    farm: Farm, change_set: ChangeSet, shelves: Shelves, *, zones_of: ZonesOf = frozenset
) -> tuple[Fault, ...]:
    """Return what is wrong with `farm`, the farm after an act, in all that the act touched."""
    found = [
        *_values(change_set),
        *_labels(farm, change_set),
        *_references(farm, change_set),
        *_keys(farm, change_set, shelves),
        *_zones(change_set, zones_of),
    ]
    if not found:
        # These rely on references that hold.
        looks = (_placements, _events, _seed_lots, _readings)
        found = [fault for look in looks for fault in look(farm, change_set)]
    return tuple(dict.fromkeys(found))


def _values(change_set: ChangeSet) -> Iterator[Fault]:
    for thing in _put_in(change_set):
        yield from thing_faults(thing)
        yield from _unkept(thing)


def _put_in(change_set: ChangeSet) -> Iterator[Thing]:
    return (change.after for change in change_set.changes if change.after is not None)


def _unkept(thing: Thing) -> Iterator[Fault]:
    """Yield faults of values that no file can hold: broken characters, numbers that are none."""
    for field in specs_of(type(thing)):
        value = getattr(thing, field)
        if isinstance(value, str) and not _is_writable(value):
            yield _bad(thing, field, f"{field} holds a character that cannot be written.")
    for name, value in thing.values if isinstance(thing, OwnEntry) else ():
        if isinstance(value, float) and not math.isfinite(value):
            yield _bad(thing, name, f"{name} is {value}, but must be a number.")
        elif isinstance(value, str) and not _is_writable(value):
            yield _bad(thing, name, f"{name} holds a character that cannot be written.")


def _is_writable(text: str) -> bool:
    try:
        text.encode()
    except UnicodeEncodeError:
        return False
    return "\x00" not in text


def _bad(thing: Thing, field: str, message: str) -> Fault:
    return Fault(kind=FaultKind.WRONG_TYPE, where=where_of(thing), field=field, message=message)


def _labels(farm: Farm, change_set: ChangeSet) -> Iterator[Fault]:
    """Yield a fault for every name an act gives that another thing of the kind has."""
    for word in change_set.words:
        label = kind_named(word).label
        touched = {change.id for change in change_set.changes if label and _gives_name(change, label)}
        if touched:
            yield from _doubles(things(farm, word), label, touched)


def _gives_name(change: Change, label: str) -> bool:
    """Tell whether a change gives a thing a name it did not have."""
    before, after = (getattr(thing, label, None) for thing in (change.before, change.after))
    return change.after is not None and before != after


def _doubles(many: tuple[Any, ...], label: str, touched: set[Id]) -> Iterator[Fault]:
    owners: dict[str, list[Thing]] = {}
    for thing in many:
        owners.setdefault(getattr(thing, label), []).append(thing)
    for name, sharing in owners.items():
        if len(sharing) > 1 and any(thing.id in touched for thing in sharing):
            yield Fault(
                kind=FaultKind.DUPLICATE,
                where=where_of(sharing[0]),
                field=label,
                value=name,
                message=f'{label} "{name}" is used by another {kind_of(sharing[0]).word}.',
                remedy="Choose another.",
            )


def _references(farm: Farm, change_set: ChangeSet) -> Iterator[Fault]:
    """Yield a fault for every new reference to nothing, and for every old one that an act leaves hanging."""
    known: dict[str, set[Id]] = {}
    for thing in _put_in(change_set):
        for field, spec in specs_of(type(thing)).items():
            if spec.kind is not FieldKind.REFERENCE:
                continue
            ids = known.setdefault(spec.refers_to, {other.id for other in things(farm, spec.refers_to)})
            target = getattr(thing, field)
            if (target != NO_ID or spec.needed) and target not in ids:
                yield _dangling(thing, field, spec.refers_to)
    for word in {change.word for change in change_set.changes if change.after is None}:
        still = {thing.id for thing in things(farm, word)}
        for user, field in users_of(farm, word, change_set.ids(word) - still):
            yield _dangling(user, field, word)


def _dangling(thing: Thing, field: str, word: str) -> Fault:
    return Fault(
        kind=FaultKind.UNKNOWN_NAME,
        where=where_of(thing),
        field=field,
        value=str(getattr(thing, field)),
        message=f"{field} points at a {word} that does not exist.",
    )


def _keys(farm: Farm, change_set: ChangeSet, shelves: Shelves) -> Iterator[Fault]:
    """Yield a fault for every key that no shelf of the catalogue has."""
    book = _book_keys(shelves)
    known = _known_keys(farm, book)
    own_changed = kind_named("own entry").word in change_set.words
    looked_at = _everything(farm) if own_changed else _put_in(change_set)
    for thing in looked_at:
        for field, spec in specs_of(type(thing)).items():
            shelf = thing.shelf.value if isinstance(thing, OwnEntry) else spec.catalogue
            if spec.kind is not FieldKind.KEY or spec.catalogue == "own":
                continue
            key = getattr(thing, field)
            # What takes the place of an entry of the book is like that very entry, so the book must have it.
            like_itself = isinstance(thing, OwnEntry) and key == thing.key
            if key not in (book if like_itself else known)[shelf] and (key or spec.needed):
                yield Fault(
                    kind=FaultKind.UNKNOWN_NAME,
                    where=where_of(thing),
                    field=field,
                    value=key,
                    message=f'{field} is "{key}", which is no {shelf} of the catalogue.',
                    remedy="Choose one from the catalogue, or add your own entry first.",
                )


def _everything(farm: Farm) -> Iterator[Thing]:
    for kind in KINDS:
        if any(spec.kind is FieldKind.KEY for spec in specs_of(kind.owner).values()):
            yield from things(farm, kind.word)


def _book_keys(shelves: Shelves) -> dict[str, frozenset[str]]:
    """Return for every shelf the keys of the book."""
    return {
        Shelf.CROP.value: frozenset(shelves.crops),
        Shelf.FISH.value: frozenset(shelves.fish),
        Shelf.FEED.value: frozenset(shelves.feeds),
        Shelf.SUPPLEMENT.value: frozenset(shelves.supplements),
        "feeding table": frozenset(shelves.feeding_tables),
    }


def _known_keys(farm: Farm, book: dict[str, frozenset[str]]) -> dict[str, frozenset[str]]:
    """Return for every shelf the keys of the book and the grower together."""
    own: dict[str, set[str]] = {shelf: set() for shelf in book}
    for entry in farm.own_entries:
        own[entry.shelf.value].add(entry.key)
    return {shelf: keys | own[shelf] for shelf, keys in book.items()}


def _placements(farm: Farm, change_set: ChangeSet) -> Iterator[Fault]:
    """Yield the faults of placements that an act touches, or whose bed or batch it touches."""
    touched = tuple(change_set.ids(word) for word in ("placement", "bed", "batch"))
    if not any(touched):
        return
    own, beds, batches = touched
    looked_at = [
        placement
        for placement in farm.placements
        if placement.id in own or placement.bed in beds or placement.batch in batches
    ]
    bed_of, batch_of = by_id(farm.beds), by_id(farm.batches)
    for placement in looked_at:
        yield from placement_faults(placement, batch=batch_of[placement.batch], bed=bed_of[placement.bed])
    yield from _too_many(farm, {placement.batch for placement in looked_at}, batch_of)


def _too_many(farm: Farm, batches: set[Id], batch_of: dict[Id, Batch]) -> Iterator[Fault]:
    held: dict[Id, int] = {}
    for placement in farm.placements:
        if placement.batch in batches and placement.phase is Phase.BED:
            held[placement.batch] = held.get(placement.batch, 0) + placement.count
    for batch_id, count in held.items():
        batch = batch_of[batch_id]
        if count > batch.plants:
            yield Fault(
                kind=FaultKind.OUT_OF_LIMITS,
                where=where_of(batch),
                field="places",
                value=str(count),
                limit=f"{batch.plants} plants",
                message=f"{count} places are held in beds for {batch.plants} plants.",
                remedy="Take places out, or raise plants.",
            )


def _events(farm: Farm, change_set: ChangeSet) -> Iterator[Fault]:
    """Yield a fault for every event before stocking, for treated fish, and for fish no longer there."""
    events, groups = change_set.ids("fish event"), change_set.ids("fish group")
    if not events and not groups:
        return
    group_of = by_id(farm.fish_groups)
    for event in farm.fish_events:
        if event.id in events or event.group in groups:
            yield from _too_early(event, group_of[event.group].stocked_on, group_of[event.group].name)
    for harvest, treatment in barred_harvests(farm.fish_events):
        if harvest.id in events:
            yield barred_fault(group_of[harvest.group], harvest, treatment)
    yield from _overdrawn(farm, change_set)


def _overdrawn(farm: Farm, change_set: ChangeSet) -> Iterator[Fault]:
    """Yield faults of counts in what the act put in, and those elsewhere that were not there before it."""
    found = list(count_faults(farm.fish_groups, farm.fish_events))
    if not found:
        return
    before = applied(farm, change_set.turned())
    known = {event for event, _fault in count_faults(before.fish_groups, before.fish_events)}
    own = change_set.ids("fish event")
    yield from (fault for event, fault in found if event in own or event not in known)


def _seed_lots(farm: Farm, change_set: ChangeSet) -> Iterator[Fault]:
    """Yield a fault for every batch sown from seed of another crop, where the act touches one of both."""
    batches, lots = change_set.ids("batch"), change_set.ids("seed lot")
    looked_at = [one for one in farm.batches if one.id in batches or one.seed_lot in lots]
    if looked_at:
        yield from seed_lot_faults(looked_at, by_id(farm.seed_lots), farm.own_entries)


def _readings(farm: Farm, change_set: ChangeSet) -> Iterator[Fault]:
    """Yield a fault for every reading with a meter that cannot read it, where the act touches one of both."""
    readings, meters = change_set.ids("reading"), change_set.ids("meter")
    looked_at = [one for one in farm.readings if one.id in readings or one.meter in meters]
    if looked_at:
        yield from read_with_faults(looked_at, by_id(farm.meters))


def _zones(change_set: ChangeSet, zones_of: ZonesOf) -> Iterator[Fault]:
    sites = [thing for thing in _put_in(change_set) if isinstance(thing, Site)]
    if sites:
        yield from zone_faults(sites, zones_of())


def _too_early(event: FishEvent, stocked_on: Any, name: str) -> Iterator[Fault]:
    if event.on < stocked_on:
        yield Fault(
            kind=FaultKind.WRONG_ORDER,
            where=f'fish event of "{name}"',
            field="on",
            value=event.on.isoformat(),
            limit=f"not before {stocked_on.isoformat()}",
            message=(
                f"on is {event.on.isoformat()}, before the group was stocked on {stocked_on.isoformat()}."
            ),
        )


def clash_fault(farm: Farm, pair: Pair, touched: frozenset[Id]) -> Fault:
    """Return the fault that tells which batches would share which places, where and when.

    The batch of a placement or batch that the act touched is told as the one that cannot come.
    """
    first, second = pair
    if {first.placement, first.batch} & touched and not {second.placement, second.batch} & touched:
        first, second = second, first
    batches, beds = by_id(farm.batches), by_id(farm.beds)
    coming, standing, bed = batches[second.batch], batches[first.batch], beds[second.bed]
    low, high = max(first.first, second.first), min(first.last, second.last)
    from_on, until_on = max(first.from_on, second.from_on), min(first.until_on, second.until_on)
    places = f"place {low}" if low == high else f"places {low} to {high}"
    unit = f"{UNIT_WORDS[bed.kind]} {second.unit}"
    return Fault(
        kind=FaultKind.HELD_PLACE,
        where=where_of(coming),
        field="bed",
        value=f"{bed.name}, {unit}, {places}",
        message=(
            f'{places} of {unit} in "{bed.name}" are held by "{standing.code}" '
            f"from {from_on.isoformat()} until {until_on.isoformat()}, when they are free again."
        ),
        remedy=f'Choose other places or other days, or move "{standing.code}" first.',
    )


def stale_fault(change: Change) -> Fault:
    """Return the fault that a thing is no longer as the act expects it."""
    return Fault(
        kind=FaultKind.UNKNOWN_NAME,
        where=where_of(change.thing),
        message="it is not on the farm as it was when this was begun.",
        remedy="Look at it again, then repeat the change.",
    )


def stranded_faults(farm: Farm, bed_id: Id) -> tuple[Fault, ...]:
    """Return a fault for every batch whose places are not on a bed of `farm` as it is now."""
    bed = by_id(farm.beds)[bed_id]
    batches = by_id(farm.batches)
    standing: tuple[Placement, ...] = tuple(p for p in farm.placements if p.bed == bed_id)
    found = [f for p in standing for f in placement_faults(p, batch=batches[p.batch], bed=bed)]
    return tuple(dict.fromkeys(found))
