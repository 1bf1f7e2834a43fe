"""Plans the seasons of invented farms: seconds, gap to the proven bound, and the rhythm by hand beside it.

    python benchmarks/season_plan.py [--seeds N] [--exact]

Beside the seconds by the clock stand those of the processor, for other work on the machine weighs on the
first only.
"""

from __future__ import annotations

import argparse
import random
import statistics
import sys
import time
from dataclasses import dataclass
from datetime import date, timedelta
from pathlib import Path
from typing import Final

sys.path.insert(0, str(Path(__file__).resolve().parent.parent))

from planner.bootstrap import Means
from planner.catalogue.catalogue import Catalogue
from planner.farm.crops import Target, TargetUnit
from planner.farm.farm import Farm, OwnEntry, Settings, Shelf
from planner.farm.fish import FishGroup
from planner.farm.ids import id_from
from planner.farm.site import Bed, Loop, Site, Tank
from planner.farm.species import BedKind, Crop, HarvestKind
from planner.planning.season_plan.job import PlanJob
from planner.planning.season_plan.options import PlanOptions
from planner.planning.season_plan.plan import SeasonPlan

START: Final = date(2027, 1, 4)
CROPS: Final = [
    "lettuce-butterhead",
    "lettuce-leaf",
    "pak-choi",
    "rocket",
    "coriander",
    "spinach",
    "lettuce-romaine",
    "mustard-greens",
    "basil",
    "chard",
    "kale",
    "parsley",
    "bush-bean",
    "cucumber",
    "water-spinach",
    "okra",
    "celery",
    "tomato",
    "mint",
    "chives",
    "chilli",
    "aubergine",
    "sweet-pepper",
    "strawberry",
]
MONTHS: Final = (17.5, 18.2, 20.4, 23.4, 26.0, 28.0, 29.2, 29.0, 27.6, 25.0, 21.8, 18.6)
SUNSHINE: Final = (9.8, 11.4, 13.6, 15.8, 16.2, 15.0, 19.8, 18.4, 15.6, 13.4, 11.2, 9.6)


@dataclass(frozen=True, slots=True, kw_only=True)
class Case:
    """One size of farm, with what is wanted of it."""

    crops: int
    weeks: int
    seconds: float
    wanted_gap: float | None = None


CASES: Final = (
    Case(crops=5, weeks=26, seconds=2.0),
    Case(crops=12, weeks=52, seconds=3.0, wanted_gap=0.01),
    Case(crops=25, weeks=104, seconds=10.0, wanted_gap=0.015),
)


def farm_of(case: Case, *, seed: int, catalogue: Catalogue) -> Farm:
    """Return a farm with beds for about nine tenths of what it wants, and a dark wet season."""
    chance = random.Random(seed)
    keys = [CROPS[number] if number < len(CROPS) else f"own-{number}" for number in range(case.crops)]
    own = tuple(
        OwnEntry(
            id=id_from("own", key),
            shelf=Shelf.CROP,
            key=key,
            like=CROPS[0],
            name=f"Slow lettuce {number}",
            values=(("bed_days", 34.0),),
        )
        for number, key in enumerate(keys)
        if key not in CROPS
    )
    targets, standing = [], 0.0
    for key in keys:
        crop = catalogue.crops[key if key in CROPS else CROPS[0]]
        target, plants = wanted(key, crop, chance)
        targets.append(target)
        standing += plants
    site = Site(
        id=id_from("site"),
        name="Site",
        air_c=MONTHS,
        radiation_mj_per_m2_d=SUNSHINE,
        roof_transmission=0.75,
    )
    loop = Loop(id=id_from("loop"), name="Loop", site=site.id, water_l=60_000.0, water_c=(24.0,) * 12)
    tank = Tank(id=id_from("tank"), name="Tank", loop=loop.id, volume_l=20_000.0)
    return Farm(
        settings=Settings(id=id_from("farm"), name="Invented", plan_from=START, plan_weeks=case.weeks),
        sites=(site,),
        loops=(loop,),
        tanks=(tank,),
        beds=beds_for(standing, loop),
        own_entries=own,
        fish_groups=fish_for(standing, tank),
        targets=tuple(targets),
    )


def wanted(key: str, crop: Crop, chance: random.Random) -> tuple[Target, float]:
    """Return a target and how many plants of it stand in beds at a time."""
    heads = chance.randint(20, 90)
    single = crop.harvest is HarvestKind.SINGLE
    weekly = heads if single else max(heads // 10, 2)
    amount = weekly * crop.marketable_share
    if not single:
        amount *= crop.yield_g_per_plant / 1000.0
    days = crop.bed_days + crop.clearing_days + (0.0 if single else crop.picking_days)
    target = Target(
        id=id_from("target", key),
        crop=key,
        amount_per_week=round(amount, 2),
        unit=TargetUnit.HEADS if single else TargetUnit.KG,
        from_on=START + timedelta(weeks=chance.randint(4, 10)),
    )
    return target, weekly * days / 7.0 / crop.bed_survival_share


def beds_for(standing: float, loop: Loop) -> tuple[Bed, ...]:
    """Return rafts for two thirds and gravel for one, and a nursery."""

    def bed(name: str, kind: BedKind, units: int, places: int) -> Bed:
        return Bed(
            id=id_from(name),
            name=name,
            loop=loop.id,
            kind=kind,
            units=units,
            rows=5,
            columns=places // 5,
            area_m2=units * 4.0,
        )

    return (
        bed("Rafts", BedKind.RAFT, round(standing * 0.6 / 100) + 1, 100),
        bed("Gravel", BedKind.MEDIA, round(standing * 0.3 / 50) + 1, 50),
        bed("Nursery", BedKind.NURSERY, round(standing * 1.2 / 50) + 1, 50),
    )


def fish_for(standing: float, tank: Tank) -> tuple[FishGroup, ...]:
    """Return three groups of fish two months apart."""
    return tuple(
        FishGroup(
            id=id_from("group", str(number)),
            name=f"Group {number}",
            tank=tank.id,
            species="nile-tilapia",
            feed="tilapia-grow-out-32",
            stocked_on=START - timedelta(days=60 * number),
            count=max(round(standing * 0.02), 20),
            mean_weight_g=60.0,
        )
        for number in range(3)
    )


def planned(farm: Farm, case: Case, *, exact: bool) -> tuple[SeasonPlan, float, float]:
    """Return the plan, and the seconds it took by the clock and by the processor."""
    options = PlanOptions(seconds=case.seconds, exact=exact, exact_seconds=60.0)
    # A new forecaster each time, so that nothing is known of the farm before.
    forecaster = Means().forecaster
    clock, processor = time.perf_counter(), time.process_time()
    job = PlanJob(farm, forecaster, options, clock=time.perf_counter)
    for _ in job.steps():
        pass
    plan = job.plan
    assert plan is not None
    return plan, time.perf_counter() - clock, time.process_time() - processor


def main() -> int:
    """Plan and print."""
    parser = argparse.ArgumentParser(description="Plans the seasons of invented farms.")
    parser.add_argument("--seeds", type=int, default=3)
    parser.add_argument("--exact", action="store_true", help="let the exact solver go on for 60 s")
    asked = parser.parse_args()
    catalogue = Means().catalogue
    print(
        "| crops × weeks | sowings possible | s | s of the processor | gap | worst gap | wanted | by hand |"
    )
    print("|---|--:|--:|--:|--:|--:|--:|--:|")
    for case in CASES:
        found = [
            planned(farm_of(case, seed=seed, catalogue=catalogue), case, exact=asked.exact)
            for seed in range(asked.seeds)
        ]
        gaps = [plan.gap for plan, _, _ in found]
        hand = statistics.median(plan.by_hand / plan.bound for plan, _, _ in found)
        goal = "" if case.wanted_gap is None else f"{case.wanted_gap:.1%} in {case.seconds:g} s"
        print(
            f"| {case.crops} × {case.weeks} | {found[0][0].model.columns.count} "
            f"| {statistics.median(clock for _, clock, _ in found):.1f} "
            f"| {statistics.median(processor for _, _, processor in found):.1f} "
            f"| {statistics.median(gaps):.2%} | {max(gaps):.2%} | {goal} | {1 - hand:.0%} |",
            flush=True,
        )
    return 0


if __name__ == "__main__":
    sys.exit(main())
