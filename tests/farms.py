"""Small farms for tests, built by hand from plain values."""

from __future__ import annotations

import dataclasses
from datetime import date, timedelta
from typing import Any

from planner.farm.crops import Batch, Phase, Placement
from planner.farm.farm import Farm, Settings
from planner.farm.fish import FishGroup
from planner.farm.ids import id_from
from planner.farm.site import Bed, Loop, Site, Tank
from planner.farm.species import BedKind

MONDAY = date(2027, 1, 4)
SITE = Site(id=id_from("site"), name="Site")
LOOP = Loop(id=id_from("loop"), name="Loop", site=SITE.id, water_l=4000.0)
TANK = Tank(id=id_from("tank"), name="Tank", loop=LOOP.id, volume_l=3000.0)
RAFT = Bed(
    id=id_from("raft"),
    name="Raft",
    loop=LOOP.id,
    kind=BedKind.RAFT,
    units=4,
    rows=5,
    columns=5,
    area_m2=4.0,
)
NURSERY = Bed(
    id=id_from("nursery"),
    name="Bench",
    loop=LOOP.id,
    kind=BedKind.NURSERY,
    units=2,
    rows=6,
    columns=12,
    area_m2=0.3,
)


def farm_of(**parts: Any) -> Farm:
    """Return a farm with one loop, a tank, a raft bed of four 1 m² rafts and a nursery."""
    start = Farm(
        settings=Settings(id=id_from("settings"), name="Test farm", plan_from=MONDAY, plan_weeks=20),
        sites=(SITE,),
        loops=(LOOP,),
        tanks=(TANK,),
        beds=(RAFT, NURSERY),
    )
    return dataclasses.replace(start, **parts)


def batch_of(code: str = "LTB-1", **fields: Any) -> Batch:
    """Return a batch of 25 butterhead lettuces that needs no cleaning and loses no plant."""
    given: dict[str, Any] = {
        "id": id_from("batch", code),
        "code": code,
        "crop": "lettuce-butterhead",
        "sow_on": MONDAY,
        "plants": 25,
        "germination_days": 3.0,
        "nursery_days": 18.0,
        "bed_days": 28.0,
        "clearing_days": 0.0,
        "bed_survival_share": 1.0,
    }
    return Batch(**(given | fields))


def places_of(batch: Batch, *, unit: int = 1, first: int = 1, count: int | None = None) -> Placement:
    """Return a run of raft places for a batch."""
    return Placement(
        id=id_from("placement", batch.code, str(unit), str(first)),
        batch=batch.id,
        phase=Phase.BED,
        bed=RAFT.id,
        unit=unit,
        first=first,
        count=batch.plants if count is None else count,
    )


def weekly_batches(count: int, *, first_on: date = MONDAY, **fields: Any) -> tuple[Batch, ...]:
    """Return batches sown a week apart."""
    return tuple(
        batch_of(f"LTB-{number}", sow_on=first_on + timedelta(days=7 * number), **fields)
        for number in range(count)
    )


def group_of(name: str = "Tilapia", **fields: Any) -> FishGroup:
    """Return a group of a hundred tilapia of 100 g."""
    given: dict[str, Any] = {
        "id": id_from("group", name),
        "name": name,
        "tank": TANK.id,
        "species": "nile-tilapia",
        "feed": "tilapia-grow-out-32",
        "stocked_on": MONDAY,
        "count": 100,
        "mean_weight_g": 100.0,
    }
    return FishGroup(**(given | fields))
