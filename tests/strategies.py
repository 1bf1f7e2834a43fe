"""Farms for property tests: any farm that the checks of `planner.farm` let pass.

Values come from the declared limits of each field, so a new field is drawn without a change here.
"""

import dataclasses
from collections.abc import Mapping
from datetime import date
from functools import cache
from types import NoneType
from typing import Any, get_args, get_type_hints

from hypothesis import strategies as st

from planner.farm import species
from planner.farm.crops import Batch, Phase, Placement, SeedLot, Target
from planner.farm.farm import KINDS, Farm, OwnEntry, Settings, Shelf, Thing, kind_of
from planner.farm.fields import NO_ID, FieldKind, FieldSpec, Id, specs_of
from planner.farm.fish import Feeding, FishEvent, FishEventKind, FishGroup
from planner.farm.fish_counts import count_faults
from planner.farm.ids import id_from
from planner.farm.log import Happening, LogEntry, Unit
from planner.farm.log_checks import NEEDED_OF, UNITS_OF
from planner.farm.meters import READ_BY, Meter, MeterKind
from planner.farm.site import Bed, Filter, Loop, Site, Tank
from planner.farm.species import BedKind
from planner.farm.water import READING_LIMITS, Dose, Quantity, Reading, SolidsBatch

LAST_DAY = date(2199, 12, 31)
FIGURES = {
    Shelf.CROP: species.Crop,
    Shelf.FISH: species.FishSpecies,
    Shelf.FEED: species.Feed,
    Shelf.SUPPLEMENT: species.Supplement,
}
NEEDED_OF_EVENT = {
    FishEventKind.DEATHS: ("count",),
    FishEventKind.ADDED: ("count", "mean_weight_g"),
    FishEventKind.SAMPLE: ("mean_weight_g",),
    FishEventKind.OFF_FEED: ("days",),
    FishEventKind.FEED_GIVEN: ("days", "feed_g_per_day"),
}
# For one line every mark that is not seen is left out; notes may hold any.
IN_SIGHT = st.characters(exclude_categories=("Cs", "Cc", "Cf", "Zl", "Zp", "Cn"))
ANY_LETTER = st.characters(exclude_categories=("Cs",))

keys = st.sampled_from(("basil", "lettuce-leaf", "okra", "tilapia", "feed-32", "KOH", 'odd "key"', "ñandú"))
ids = st.uuids().map(str).map(Id)
names = st.text(IN_SIGHT, min_size=1, max_size=12).filter(lambda text: bool(text.strip()))


hints_of = cache(get_type_hints)
declared = cache(specs_of)


@cache
def values(spec: FieldSpec, hint: Any) -> st.SearchStrategy[Any]:
    """Return a strategy for the values one field may hold, None left out."""
    if spec.kind is FieldKind.SERIES:
        entry = st.floats(spec.low, spec.high)
        return st.one_of(st.just(()), st.lists(entry, min_size=12, max_size=12).map(tuple))
    if spec.kind is FieldKind.CHOICE:
        return st.sampled_from(next((one for one in get_args(hint) if one is not NoneType), hint))
    return {
        FieldKind.NAME: names,
        FieldKind.TEXT: st.text(
            ANY_LETTER if spec.many_lines else IN_SIGHT, max_size=min(spec.length or 40, 40)
        ),
        FieldKind.KEY: keys,
        FieldKind.YES_NO: st.booleans(),
        FieldKind.WHOLE: st.integers(spec.low, spec.high) if spec.kind is FieldKind.WHOLE else st.nothing(),
        FieldKind.NUMBER: st.floats(spec.low, spec.high) if spec.kind is FieldKind.NUMBER else st.nothing(),
        FieldKind.DAY: st.dates(spec.low, spec.high) if spec.kind is FieldKind.DAY else st.nothing(),
    }[spec.kind]


@st.composite
def made(draw: st.DrawFn, owner: type[Any], **given: Any) -> Any:
    """Draw a thing of one class; `given` fields are taken as they are, defaults more often than not."""
    hints = hints_of(owner)
    chosen = dict(given)
    optional = [
        field.name
        for field in dataclasses.fields(owner)
        if field.default is not dataclasses.MISSING and field.name not in given
    ]
    said = draw(st.sets(st.sampled_from(optional), max_size=3)) if optional else set()
    for field in dataclasses.fields(owner):
        spec = declared(owner)[field.name]
        left_out = field.name in optional and field.name not in said
        if field.name in given or left_out or spec.kind in (FieldKind.REFERENCE, FieldKind.PAIRS):
            continue
        if spec.kind is FieldKind.ID:
            chosen["id"] = draw(ids)
            continue
        hint = hints[field.name]
        chosen[field.name] = draw(values(spec, hint))
    kind = next((kind for kind in KINDS if kind.owner is owner), None)
    if kind is not None and kind.label and draw(st.booleans()):
        chosen["id"] = id_from(kind.word, chosen[kind.label])
    return owner(**chosen)


@st.composite
def some(
    draw: st.DrawFn, owner: type[Any], *, least: int = 0, most: int = 3, **refers: Any
) -> tuple[Any, ...]:
    """Draw a few things of one class with names of their own; `refers` gives ids to choose from."""
    found: list[Thing] = []
    for _ in range(draw(st.integers(least, most))):
        chosen = {field: draw(st.sampled_from(many)) for field, many in refers.items()}
        found.append(draw(made(owner, **chosen)))
    return unique(found)


def unique(found: list[Any]) -> tuple[Any, ...]:
    """Return the things without those whose id or name another has already."""
    taken: set[str] = set()
    left = []
    for thing in found:
        label = kind_of(thing).label
        marks = {thing.id, f"label {getattr(thing, label)}"} if label else {thing.id}
        if not marks & taken:
            taken |= marks
            left.append(thing)
    return tuple(left)


def ids_of(things: tuple[Any, ...]) -> list[Id]:
    """Return the ids of things."""
    return [thing.id for thing in things]


@st.composite
def _own_entry(draw: st.DrawFn) -> OwnEntry:
    shelf = draw(st.sampled_from(Shelf))
    owner = FIGURES[shelf]
    hints = hints_of(owner)
    plain = [
        name
        for name, spec in declared(owner).items()
        if name not in ("key", "name", "notes") and hints[name] in (float, str, bool)
    ]
    figures = draw(st.sets(st.sampled_from(plain), max_size=4))
    drawn = {name: draw(values(declared(owner)[name], hints[name])) for name in sorted(figures)}
    pairs: Mapping[str, Any] = drawn
    return draw(made(OwnEntry, shelf=shelf, values=tuple(sorted(pairs.items()))))


@st.composite
def _fish_group(draw: st.DrawFn, tanks: list[Id]) -> FishGroup:
    group = draw(made(FishGroup, tank=draw(st.sampled_from(tanks))))
    wanted = {
        Feeding.TABLE: "feeding_table",
        Feeding.PERCENT: "feed_percent",
        Feeding.FIXED: "feed_g_per_day",
    }.get(group.feeding)
    if wanted and getattr(group, wanted) in (None, ""):
        group = dataclasses.replace(group, **{wanted: draw(values(declared(FishGroup)[wanted], None))})
    return group


@st.composite
def _fish_event(draw: st.DrawFn, groups: tuple[FishGroup, ...]) -> FishEvent:
    group = draw(st.sampled_from(groups))
    on = draw(st.dates(group.stocked_on, LAST_DAY))
    event = draw(_until(draw(made(FishEvent, group=group.id, on=on)), "on", end="cleared_on"))
    missing = {
        name: draw(values(declared(FishEvent)[name], None))
        for name in NEEDED_OF_EVENT.get(event.kind, ())
        if getattr(event, name) is None
    }
    return dataclasses.replace(event, **missing)


@st.composite
def _bed(draw: st.DrawFn, loops: list[Id]) -> Bed:
    units, rows, columns = (draw(st.integers(1, 12)) for _ in range(3))
    return draw(made(Bed, loop=draw(st.sampled_from(loops)), units=units, rows=rows, columns=columns))


@st.composite
def _placement(draw: st.DrawFn, batches: tuple[Batch, ...], beds: tuple[Bed, ...]) -> Placement:
    bed = draw(st.sampled_from(beds))
    suited = Phase.NURSERY if bed.kind is BedKind.NURSERY else Phase.BED
    first = draw(st.integers(1, bed.places_per_unit))
    return Placement(
        id=draw(ids),
        batch=draw(st.sampled_from(batches)).id,
        phase=draw(st.sampled_from((suited, Phase.SPACING))),
        bed=bed.id,
        unit=draw(st.integers(1, bed.units)),
        first=first,
        count=draw(st.integers(1, bed.places_per_unit - first + 1)),
    )


def _apart(placements: list[Placement]) -> tuple[Placement, ...]:
    left: list[Placement] = []
    for one in placements:
        clash = any(
            (one.batch, one.phase, one.bed, one.unit) == (other.batch, other.phase, other.bed, other.unit)
            and one.first <= other.last
            and other.first <= one.last
            for other in left
        )
        if not clash:
            left.append(one)
    return unique(left)


def _with_room(batch: Batch, placements: tuple[Placement, ...]) -> Batch:
    held = sum(one.count for one in placements if one.batch == batch.id and one.phase is Phase.BED)
    return dataclasses.replace(batch, plants=max(batch.plants, held))


@st.composite
def _meter(draw: st.DrawFn) -> Meter:
    meter = draw(made(Meter))
    if meter.kind is MeterKind.TDS and meter.factor is None:
        return dataclasses.replace(meter, factor=0.5)
    return meter


@st.composite
def _reading(draw: st.DrawFn, loops: list[Id], meters: tuple[Meter, ...]) -> Reading:
    at = draw(st.sampled_from(("", "07:30")))
    reading = draw(made(Reading, loop=draw(st.sampled_from(loops)), at=at, value=0.0))
    suited = [meter.id for meter in meters if reading.quantity in READ_BY[meter.kind]]
    reading = dataclasses.replace(reading, meter=draw(st.sampled_from((NO_ID, *suited))))
    low, high = READING_LIMITS[reading.quantity]
    factor = reading.meter_factor
    if reading.quantity is Quantity.TDS_MG_PER_L and factor is None:
        factor = draw(values(declared(Reading)["meter_factor"], None))
    return dataclasses.replace(reading, value=draw(st.floats(low, high)), meter_factor=factor)


@st.composite
def _until(draw: st.DrawFn, thing: Any, start: str, *, end: str = "until_on") -> Any:
    if getattr(thing, end) is None:
        return thing
    return dataclasses.replace(thing, **{end: draw(st.dates(getattr(thing, start), LAST_DAY))})


@st.composite
def _log_entry(draw: st.DrawFn, **about: list[Id]) -> LogEntry:
    references = {field: draw(st.sampled_from(many)) for field, many in about.items()}
    fixed: dict[str, Any] = {"at": draw(st.sampled_from(("", "07:30"))), "corrects": NO_ID, **references}
    fixed["noted_at"] = draw(st.sampled_from(("", "2026-04-06T07:30Z")))
    entry = draw(made(LogEntry, **fixed))
    units = UNITS_OF.get(entry.what, (Unit.NONE, Unit.KG))
    amount = None if entry.amount is None else abs(entry.amount)
    if entry.what in (Happening.MEASURED, Happening.SEED_TESTED) or (
        amount is None and "amount" in NEEDED_OF.get(entry.what, ())
    ):
        amount = 2.0
    said = {"quantity": Quantity.PH, "out_of": 3}
    missing = {
        name: value
        for name, value in said.items()
        if name in NEEDED_OF.get(entry.what, ()) and getattr(entry, name) is None
    }
    if entry.what is Happening.SEED_TESTED:
        missing["out_of"] = 3
    entry = dataclasses.replace(entry, **missing)
    unit = draw(st.sampled_from(units))
    if amount is not None and unit not in (Unit.KG, Unit.G, Unit.LITRES, Unit.NONE, Unit.HEADS):
        amount = float(int(amount) % 4)
    return dataclasses.replace(entry, amount=amount, unit=unit)


@st.composite
def _log(draw: st.DrawFn, **many_of: Any) -> tuple[LogEntry, ...]:
    about = {name: [NO_ID, *ids_of(many)] for name, many in many_of.items()}
    entries = list(unique([draw(_log_entry(**about)) for _ in range(draw(st.integers(0, 3)))]))
    for number, entry in enumerate(entries[1:], start=1):
        if draw(st.booleans()):
            entries[number] = dataclasses.replace(entry, corrects=entries[number - 1].id)
    return tuple(draw(st.permutations(entries)))


def _of_its_seed(batch: Batch, lots: tuple[SeedLot, ...]) -> Batch:
    for lot in lots:
        if lot.id == batch.seed_lot:
            return dataclasses.replace(batch, crop=lot.crop, variety="")
    return batch


def _with_fish_enough(events: list[FishEvent], groups: tuple[FishGroup, ...]) -> list[FishEvent]:
    """Leave out the events that take too many fish, until what is left can be."""
    while too_many := {event for event, _fault in count_faults(groups, events)}:
        events = [event for event in events if event.id not in too_many]
    return events


@st.composite
def farms(draw: st.DrawFn) -> Farm:
    """Draw a farm without faults: a few of every kind, in any order, wherever they refer to."""
    few = st.integers(0, 3)
    sites = draw(some(Site, least=1, most=2))
    loops = draw(some(Loop, least=1, most=2, site=ids_of(sites)))
    tanks = draw(some(Tank, loop=ids_of(loops)))
    beds = unique([draw(_bed(ids_of(loops))) for _ in range(draw(few))])
    lots = draw(some(SeedLot, most=2))
    groups = unique([draw(_fish_group(ids_of(tanks))) for _ in range(draw(few))]) if tanks else ()
    events = [draw(_fish_event(groups)) for _ in range(draw(st.integers(0, 4)))] if groups else []
    events = _with_fish_enough(events, groups)
    batches = draw(some(Batch, bed=[NO_ID, *ids_of(beds)], seed_lot=[NO_ID, *ids_of(lots)]))
    batches = tuple(_of_its_seed(batch, lots) for batch in batches)
    several = range(draw(st.integers(0, 5))) if beds and batches else ()
    placements = _apart([draw(_placement(batches, beds)) for _ in several])
    targets = [draw(_until(one, "from_on")) for one in draw(some(Target, most=2))]
    doses = [draw(_until(one, "on")) for one in draw(some(Dose, most=2, loop=ids_of(loops)))]
    meters = unique([draw(_meter()) for _ in range(draw(st.integers(0, 2)))])
    drawn = draw(some(SolidsBatch, most=2, loop=ids_of(loops)))
    solids = [draw(_until(one, "siphoned_on", end="returned_on")) for one in drawn]
    return Farm(
        settings=draw(made(Settings)),
        sites=sites,
        loops=loops,
        tanks=tanks,
        filters=draw(some(Filter, most=2, loop=ids_of(loops))),
        beds=beds,
        own_entries=unique([draw(_own_entry()) for _ in range(draw(few))]),
        seed_lots=lots,
        fish_groups=groups,
        fish_events=unique(events),
        batches=tuple(_with_room(batch, placements) for batch in batches),
        placements=placements,
        targets=unique(targets),
        doses=unique(doses),
        meters=meters,
        readings=unique([draw(_reading(ids_of(loops), meters)) for _ in range(draw(few))]),
        solids_batches=unique(solids),
        log_entries=draw(
            _log(batch=batches, group=groups, bed=beds, loop=loops, seed_lot=lots, meter=meters)
        ),
    )
