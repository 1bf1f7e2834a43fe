"""Makes a big invented farm: thousands of batches with places of their own, to measure and to test with.

    python sample_data/make_big_farm.py OUT.raftweek
    python sample_data/make_big_farm.py OUT.toml --batches 2000 --rafts 60 --years 2

The same sizes and seed give the same farm on every machine. Every raft is a shelf: a batch takes a run
of its places when the batch before it is out and its place clean, so nothing clashes.
"""

from __future__ import annotations

import argparse
import heapq
import random
import sys
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from datetime import date, timedelta
from pathlib import Path
from typing import Final

if __name__ == "__main__":
    # Run from anywhere: the planner lies in the folder above this one.
    sys.path.insert(0, str(Path(__file__).resolve().parent.parent))

from planner.bootstrap import Means, is_text
from planner.catalogue.catalogue import Catalogue
from planner.catalogue.loading import shipped_catalogue
from planner.farm.crops import Batch, Phase, Placement
from planner.farm.farm import DAYS_PER_WEEK, Farm, Settings
from planner.farm.fields import Id
from planner.farm.fish import FishEvent, FishEventKind, FishGroup
from planner.farm.ids import id_from
from planner.farm.site import Bed, Loop, Site, Tank
from planner.farm.species import BedKind
from planner.farm.water import Dose
from planner.forecast.profiles import Profile, profile_key, profile_of
from planner.science.schedule import seeds_to_sow
from planner.store.text import write_farm_text

DEFAULT_BATCHES: Final = 20_000
DEFAULT_RAFTS: Final = 500
DEFAULT_YEARS: Final = 5
DEFAULT_SEED: Final = 20_270_104

_PLAN_FROM: Final = date(2027, 1, 4)
_WEEKS_PER_YEAR: Final = 52
_RAFT_ROWS, _RAFT_COLUMNS, _RAFT_M2 = 6, 8, 1.92
_TRAY_ROWS, _TRAY_COLUMNS, _TRAY_M2 = 8, 16, 0.3
_RAFTS_A_BED: Final = 100
_LEAST_SHARE_OF_A_SHELF: Final = 0.6
_GROUPS_PER_YEAR: Final = 8
_FISH_WEEKS: Final = 24
_TANKS: Final = 4
_TANK_L_PER_M2: Final = 450.0
_WATER_L_PER_M2: Final = 800.0
_FISH_PER_M2: Final = 2.2
_FINGERLING_G: Final = 60.0
_IRON_EVERY_DAYS: Final = 21
_IRON_G_PER_M2: Final = 7.0
_WATER_C: Final = (22.0, 22.5, 23.5, 25.0, 26.5, 28.0, 28.5, 28.5, 27.5, 26.0, 24.0, 22.5)

_CROPS: Final = {
    "lettuce-butterhead": 8,
    "lettuce-leaf": 8,
    "lettuce-romaine": 5,
    "pak-choi": 6,
    "mustard-greens": 3,
    "spinach": 3,
    "coriander": 2,
    "rocket": 3,
    "water-spinach": 2,
    "basil": 3,
    "chard": 2,
    "kale": 2,
    "parsley": 1,
    "okra": 1,
    "cucumber": 1,
    "mint": 1,
}
"""What is grown, and how often against the others: heads cut once, herbs cut again, fruit picked."""


@dataclass(frozen=True, slots=True, kw_only=True, order=True)
class _Shelf:
    """A run of places on one raft and the first day on which nothing stands there."""

    free_day: int
    bed: int
    unit: int
    first: int
    count: int


def big_farm(
    *,
    batches: int = DEFAULT_BATCHES,
    rafts: int = DEFAULT_RAFTS,
    years: int = DEFAULT_YEARS,
    seed: int = DEFAULT_SEED,
) -> Farm:
    """Return a farm of so many batches on so many rafts over so many years of 52 weeks.

    A raft holds one batch at a time or, where there are too many batches for that, two or more.
    Raises `ValueError` for sizes that no farm can have.
    """
    if min(batches, rafts, years) < 1:
        raise ValueError(f"batches {batches}, rafts {rafts} and years {years} must each be 1 or more")
    chance = random.Random(seed)
    weeks = years * _WEEKS_PER_YEAR
    site = Site(id=id_from("big", "site"), name="Big site")
    area = rafts * _RAFT_M2
    loop = Loop(
        id=id_from("big", "loop"),
        name="Big loop",
        site=site.id,
        water_l=area * _WATER_L_PER_M2,
        water_c=_WATER_C,
    )
    beds = _raft_beds(loop.id, rafts)
    grown = tuple(_grown(chance, shipped_catalogue(), beds=beds, batches=batches, days=weeks * DAYS_PER_WEEK))
    nursery, cells = _nursery(loop.id, grown)
    tanks, groups, harvests = _fish(loop.id, area_m2=area, weeks=weeks)
    return Farm(
        settings=Settings(
            id=id_from("big", "settings"), name="Big farm", plan_from=_PLAN_FROM, plan_weeks=weeks
        ),
        sites=(site,),
        loops=(loop,),
        tanks=tanks,
        beds=(*beds, nursery),
        fish_groups=groups,
        fish_events=harvests,
        batches=tuple(one.batch for one in grown),
        placements=(*cells, *(one.placement for one in grown)),
        doses=(_iron(loop.id, area),),
    )


def _raft_beds(loop: Id, rafts: int) -> tuple[Bed, ...]:
    sizes = [min(_RAFTS_A_BED, rafts - start) for start in range(0, rafts, _RAFTS_A_BED)]
    return tuple(
        Bed(
            id=id_from("big", "bed", str(number)),
            name=f"Channel {number}",
            loop=loop,
            kind=BedKind.RAFT,
            units=units,
            rows=_RAFT_ROWS,
            columns=_RAFT_COLUMNS,
            area_m2=units * _RAFT_M2,
        )
        for number, units in enumerate(sizes, start=1)
    )


# --- batches -----------------------------------------------------------------------------------------


@dataclass(frozen=True, slots=True, kw_only=True)
class _Grown:
    """A batch, its places in the bed, and what the nursery must know of it."""

    batch: Batch
    placement: Placement
    sow_day: int
    nursery_days: int
    seeds: int


def _grown(
    chance: random.Random, catalogue: Catalogue, *, beds: Sequence[Bed], batches: int, days: int
) -> Iterator[_Grown]:
    """Yield batches, each on the shelf that is free first, spread evenly over the days."""
    profiles = {key: _profile(catalogue, key) for key in _CROPS}
    weight = sum(_CROPS.values())
    mean_days = sum(many * _bed_days(profiles[key]) for key, many in _CROPS.items()) / weight
    units = sum(bed.units for bed in beds)
    shelves_a_raft = max(1, -(-int(batches * mean_days) // (units * days)))
    idle_days = max(units * shelves_a_raft * days / batches - mean_days, 0.0)
    free = list(_shelves(chance, beds, shelves_a_raft, within_days=round(mean_days + idle_days)))
    heapq.heapify(free)
    for number in range(batches):
        shelf = heapq.heappop(free)
        key = chance.choices(list(_CROPS), weights=list(_CROPS.values()))[0]
        one = _batch(chance, number, key, profiles[key], shelf=shelf, bed=beds[shelf.bed].id)
        yield one
        next_day = shelf.free_day + _bed_days(profiles[key]) + round(chance.uniform(0.0, 2.0 * idle_days))
        heapq.heappush(
            free,
            _Shelf(free_day=next_day, bed=shelf.bed, unit=shelf.unit, first=shelf.first, count=shelf.count),
        )


def _profile(catalogue: Catalogue, key: str) -> Profile:
    plain = Batch(id=id_from("big", key), code=key, crop=key, sow_on=_PLAN_FROM, plants=1)
    return profile_of(profile_key(plain), catalogue.crops[key])


def _bed_days(profile: Profile) -> int:
    """Return days in the final place: growing, picking and clearing."""
    return max(sum(profile.stage_days[3:]), 1)


def _shelves(
    chance: random.Random, beds: Sequence[Bed], shelves_a_raft: int, *, within_days: int
) -> Iterator[_Shelf]:
    """Yield every raft's shelves; the first batches do not all stand in on one day."""
    count = _RAFT_ROWS * _RAFT_COLUMNS // shelves_a_raft
    if count < 1:
        raise ValueError(f"{shelves_a_raft} batches at a time do not fit on one raft; give more rafts")
    for number, bed in enumerate(beds):
        for unit in range(1, bed.units + 1):
            for shelf in range(shelves_a_raft):
                day = chance.randrange(within_days)
                yield _Shelf(free_day=day, bed=number, unit=unit, first=1 + shelf * count, count=count)


def _batch(
    chance: random.Random, number: int, key: str, profile: Profile, *, shelf: _Shelf, bed: Id
) -> _Grown:
    plants = max(1, round(shelf.count * chance.uniform(_LEAST_SHARE_OF_A_SHELF, 1.0)))
    sow_day = shelf.free_day - sum(profile.stage_days[:3])
    batch = Batch(
        id=id_from("big", "batch", str(number)),
        code=f"{profile.crop.code}-{number:05d}",
        crop=key,
        sow_on=_PLAN_FROM + timedelta(days=sow_day),
        plants=plants,
        bed=bed,
    )
    placement = Placement(
        id=id_from("big", "place", str(number)),
        batch=batch.id,
        phase=Phase.BED,
        bed=bed,
        unit=shelf.unit,
        first=shelf.first,
        count=plants,
    )
    seeds = seeds_to_sow(plants, germination=profile.germination_share, survival=profile.survival_share)
    return _Grown(
        batch=batch,
        placement=placement,
        sow_day=sow_day,
        nursery_days=max(sum(profile.stage_days[:2]), 1),
        seeds=seeds,
    )


def _nursery(loop: Id, grown: Sequence[_Grown]) -> tuple[Bed, tuple[Placement, ...]]:
    """Return a nursery with as many trays as are needed at once, and each batch's cells in one tray."""
    nursery_id = id_from("big", "nursery")
    busy: list[tuple[int, int]] = []
    idle: list[int] = []
    trays = 0
    cells = []
    for one in sorted(grown, key=_sow_day):
        while busy and busy[0][0] <= one.sow_day:
            heapq.heappush(idle, heapq.heappop(busy)[1])
        if not idle:
            trays += 1
            idle.append(trays)
        tray = heapq.heappop(idle)
        heapq.heappush(busy, (one.sow_day + one.nursery_days, tray))
        cells.append(
            Placement(
                id=id_from("big", "cells", one.batch.code),
                batch=one.batch.id,
                phase=Phase.NURSERY,
                bed=nursery_id,
                unit=tray,
                first=1,
                count=one.seeds,
            )
        )
    bed = Bed(
        id=nursery_id,
        name="Nursery",
        loop=loop,
        kind=BedKind.NURSERY,
        units=trays,
        rows=_TRAY_ROWS,
        columns=_TRAY_COLUMNS,
        area_m2=trays * _TRAY_M2,
    )
    return bed, tuple(cells)


def _sow_day(one: _Grown) -> int:
    return one.sow_day


# --- fish --------------------------------------------------------------------------------------------


def _fish(
    loop: Id, *, area_m2: float, weeks: int
) -> tuple[tuple[Tank, ...], tuple[FishGroup, ...], tuple[FishEvent, ...]]:
    """Return tanks, and groups stocked evenly through the years, those before the plan's start too."""
    tanks = tuple(
        Tank(
            id=id_from("big", "tank", str(number)),
            name=f"Tank {number}",
            loop=loop,
            volume_l=max(area_m2 * _TANK_L_PER_M2 / _TANKS, 1000.0),
        )
        for number in range(1, _TANKS + 1)
    )
    gap = _WEEKS_PER_YEAR / _GROUPS_PER_YEAR
    earlier = int(_FISH_WEEKS / gap)
    groups, harvests = [], []
    for number in range(-earlier, int(weeks / gap)):
        stocked_on = _PLAN_FROM + timedelta(days=round(number * gap * DAYS_PER_WEEK))
        group = FishGroup(
            id=id_from("big", "group", str(number)),
            name=f"Group {number + earlier + 1}",
            tank=tanks[number % _TANKS].id,
            species="nile-tilapia",
            feed="tilapia-grow-out-32",
            stocked_on=stocked_on,
            count=max(1, round(area_m2 * _FISH_PER_M2)),
            mean_weight_g=_FINGERLING_G,
        )
        groups.append(group)
        harvests.append(
            FishEvent(
                id=id_from("big", "harvest", str(number)),
                group=group.id,
                on=stocked_on + timedelta(weeks=_FISH_WEEKS),
                kind=FishEventKind.HARVEST,
            )
        )
    return tanks, tuple(groups), tuple(harvests)


def _iron(loop: Id, area_m2: float) -> Dose:
    return Dose(
        id=id_from("big", "iron"),
        loop=loop,
        supplement="iron-dtpa-11",
        grams=area_m2 * _IRON_G_PER_M2,
        on=_PLAN_FROM,
        every_days=_IRON_EVERY_DAYS,
    )


# --- command line ------------------------------------------------------------------------------------


def main(words: Sequence[str] | None = None) -> int:
    """Write a big farm as text or file, by the suffix of its name; return the exit code."""
    parser = argparse.ArgumentParser(description="Makes a big invented farm.")
    parser.add_argument("out", type=Path, metavar="OUT", help="the .raftweek or .toml file to write")
    parser.add_argument("--batches", type=int, default=DEFAULT_BATCHES)
    parser.add_argument("--rafts", type=int, default=DEFAULT_RAFTS)
    parser.add_argument("--years", type=int, default=DEFAULT_YEARS)
    parser.add_argument("--seed", type=int, default=DEFAULT_SEED)
    asked = parser.parse_args(words)
    if asked.out.exists():
        parser.error(f"{asked.out} is there already")
    farm = big_farm(batches=asked.batches, rafts=asked.rafts, years=asked.years, seed=asked.seed)
    if is_text(asked.out):
        asked.out.write_text(write_farm_text(farm), encoding="utf-8")
    else:
        Means().create_store(asked.out, farm).close()
    return 0


if __name__ == "__main__":
    sys.exit(main())
