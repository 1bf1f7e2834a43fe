"""A small farm with something of every kind, and a plain rule for how long its places are held."""

import dataclasses
from datetime import UTC, date, datetime, timedelta

from planner.farm.changes import Change, ChangeSet
from planner.farm.crops import Batch, Phase, Placement, SeedLot, Target
from planner.farm.farm import Farm, OwnEntry, Settings, Shelf
from planner.farm.fish import FishEvent, FishEventKind, FishGroup
from planner.farm.holds import Hold
from planner.farm.ids import id_from
from planner.farm.log import Happening, LogEntry, Reason, Unit
from planner.farm.meters import Meter, MeterKind
from planner.farm.site import AreaRule, Bed, Filter, FilterKind, Loop, Site, Tank
from planner.farm.species import BedKind
from planner.farm.water import Dose, Quantity, Reading, SolidsBatch

START = date(2026, 3, 2)
NOON = datetime(2026, 3, 2, 12, 0, tzinfo=UTC)
DAYS = {Phase.NURSERY: (0, 14), Phase.SPACING: (14, 21), Phase.BED: (21, 51)}

EARLIER_SITE = Site(
    id=id_from("site"), name="Yard", latitude_deg=12.5, air_c=tuple(20.5 + m for m in range(12))
)
SITE = dataclasses.replace(
    EARLIER_SITE, rain_mm=(110.0, 80.5, 60.0, 40.0, 30.0, 20.0, 15.0, 15.0, 30.0, 60.0, 90.0, 120.0)
)
EARLIER_LOOP = Loop(id=id_from("loop"), name="Loop one", site=SITE.id, water_l=9000.0)
LOOP = dataclasses.replace(EARLIER_LOOP, area_rule=AreaRule.UVI)
TANK = Tank(id=id_from("tank"), name="Tank one", loop=LOOP.id, volume_l=3000.0)
FILTER = Filter(id=id_from("filter"), name="Settler", loop=LOOP.id, kind=FilterKind.SETTLER)
NURSERY = Bed(
    id=id_from("nursery"),
    name="Trays",
    loop=LOOP.id,
    kind=BedKind.NURSERY,
    units=2,
    rows=10,
    columns=10,
    area_m2=1.5,
)
RAFTS = Bed(
    id=id_from("rafts"),
    name="Rafts",
    loop=LOOP.id,
    kind=BedKind.RAFT,
    units=3,
    rows=6,
    columns=4,
    area_m2=9.0,
)
OWN = OwnEntry(
    id=id_from("own"),
    shelf=Shelf.CROP,
    key="red-basil",
    like="basil",
    name="Red basil",
    values=(("bed_days", 33.5), ("botanical", "sort of"), ("tall", True)),
)
EARLIER_LOT = SeedLot(id=id_from("lot"), code="LOT-1", crop="basil", bought_on=START, germination_share=0.9)
LOT = dataclasses.replace(EARLIER_LOT, supplier="Seed shop", primed=True, packed_on=START)
GROUP = FishGroup(
    id=id_from("group"),
    name="Tilapia one",
    tank=TANK.id,
    species="tilapia",
    feed="feed-32",
    stocked_on=START,
    count=120,
    mean_weight_g=50.0,
)
EVENT = FishEvent(
    id=id_from("event"), group=GROUP.id, on=START, kind=FishEventKind.SAMPLE, mean_weight_g=51.25
)


def batch(code: str, *, week: int = 0, plants: int = 12, **given: object) -> Batch:
    """Return a batch sown so many weeks after the start."""
    fields: dict[str, object] = {"crop": "basil", "bed": RAFTS.id, **given}
    return Batch(
        id=id_from("batch", code), code=code, sow_on=START + timedelta(weeks=week), plants=plants, **fields
    )


def placement(owner: Batch, *, unit: int = 1, first: int = 1, count: int = 12, **given: object) -> Placement:
    """Return a run of places on the rafts for a batch."""
    fields: dict[str, object] = {"phase": Phase.BED, "bed": RAFTS.id, **given}
    return Placement(
        id=id_from("placement", owner.code, str(fields["phase"]), str(unit), str(first)),
        batch=owner.id,
        unit=unit,
        first=first,
        count=count,
        **fields,
    )


FIRST, SECOND, THIRD = (
    batch("BAS-26W10-A"),
    batch("BAS-26W10-B", seed_lot=LOT.id),
    batch("BAS-26W18-A", week=8),
)
FIRST_PLACES, SECOND_PLACES = placement(FIRST), placement(SECOND, first=13)
THIRD_PLACES = placement(THIRD)
IN_TRAYS = placement(FIRST, phase=Phase.NURSERY, bed=NURSERY.id, count=15)
TARGET = Target(id=id_from("target"), crop="basil", amount_per_week=10.5, from_on=START)
DOSE = Dose(id=id_from("dose"), loop=LOOP.id, supplement="KOH", grams=12.25, on=START)
METER = Meter(
    id=id_from("meter"),
    name="Pen",
    kind=MeterKind.PH_EC,
    factor=0.5,
    calibrate_every_days=30,
    used_from=START,
)
EARLIER_READING = Reading(id=id_from("reading"), loop=LOOP.id, on=START, quantity=Quantity.PH, value=6.8)
READING = dataclasses.replace(EARLIER_READING, at="06:45", meter=METER.id)
SOLIDS = SolidsBatch(id=id_from("solids"), code="SOL-1", loop=LOOP.id, siphoned_on=START, days=14)

PICKED = LogEntry(
    id=id_from("picked"),
    code="L-1",
    what=Happening.PICKED,
    on=START,
    at="07:30",
    batch=FIRST.id,
    amount=10.0,
    unit=Unit.HEADS,
    reason=Reason.HEAT,
    who="Ana",
)
RIGHT = dataclasses.replace(PICKED, id=id_from("right"), code="L-2", amount=11.0, corrects=PICKED.id)
LOG_SINCE = 3
"""Version of the tables that has the log first."""
METERS_SINCE = 4
"""Version of the tables that has meters, and more of seed lots, readings and fish, first."""
RAIN_SINCE = 5
"""Version of the tables that has rain by month and whose feed-rate ratio a loop goes by first."""
TESTED = LogEntry(
    id=id_from("tested"),
    code="L-3",
    what=Happening.SEED_TESTED,
    on=START,
    seed_lot=LOT.id,
    amount=17.0,
    out_of=20,
    unit=Unit.PLANTS,
)
READ = LogEntry(
    id=id_from("read"),
    code="L-4",
    what=Happening.MEASURED,
    on=START,
    at="06:45",
    loop=LOOP.id,
    meter=METER.id,
    quantity=Quantity.PH,
    amount=6.8,
    noted_at="2026-03-02T18:00Z",
)
TREATED = FishEvent(
    id=id_from("treated"),
    group=GROUP.id,
    on=START,
    kind=FishEventKind.TREATED,
    cleared_on=START + timedelta(days=21),
)


def sample_farm(version: int = RAIN_SINCE) -> Farm:
    """Return the farm as tables of a version can hold it."""
    farm = _farm_with_meters(version)
    if version < RAIN_SINCE:
        return farm
    return dataclasses.replace(farm, sites=(SITE,), loops=(LOOP,))


def _farm_with_meters(version: int) -> Farm:
    earlier = _earlier_farm(version)
    if version < METERS_SINCE:
        return earlier
    return dataclasses.replace(
        earlier,
        seed_lots=(LOT,),
        fish_events=(EVENT, TREATED),
        meters=(METER,),
        readings=(READING,),
        log_entries=(*earlier.log_entries, TESTED, READ),
    )


def _earlier_farm(version: int) -> Farm:
    return Farm(
        settings=Settings(id=id_from("settings"), name="Sample", plan_from=START, notes="any\nnote"),
        sites=(EARLIER_SITE,),
        loops=(EARLIER_LOOP,),
        tanks=(TANK,),
        filters=(FILTER,),
        beds=(NURSERY, RAFTS),
        own_entries=(OWN,),
        seed_lots=(EARLIER_LOT,),
        fish_groups=(GROUP,),
        fish_events=(EVENT,),
        batches=(FIRST, SECOND, THIRD),
        placements=(FIRST_PLACES, SECOND_PLACES, IN_TRAYS, THIRD_PLACES),
        targets=(TARGET,),
        doses=(DOSE,),
        readings=(EARLIER_READING,),
        solids_batches=(SOLIDS,),
        log_entries=(PICKED, RIGHT) if version >= LOG_SINCE else (),
    )


def holds_of(farm: Farm) -> tuple[Hold, ...]:
    """Return how long places are held: so many days after sowing, by phase."""
    batches = {one.id: one for one in farm.batches}
    return tuple(_hold(one, batches[one.batch].sow_on) for one in farm.placements)


def _hold(one: Placement, sow_on: date) -> Hold:
    start, end = DAYS[one.phase]
    return Hold(
        placement=one.id,
        batch=one.batch,
        bed=one.bed,
        unit=one.unit,
        first=one.first,
        last=one.last,
        from_on=sow_on + timedelta(days=start),
        until_on=sow_on + timedelta(days=end),
    )


def altered(before: object, **fields: object) -> Change:
    """Return the change of some fields of a thing."""
    return Change(before=before, after=dataclasses.replace(before, **fields))


def change_set(*changes: Change, title: str = "Change") -> ChangeSet:
    """Return a change set."""
    return ChangeSet(title=title, changes=changes)
