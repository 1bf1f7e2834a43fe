"""Times the placing of thousands of batches on hundreds of rafts, and counts the rafts it needs.

    python benchmarks/placement.py [--batches N] [--rafts N] [--runs N]

Beside it stands the floor: the least numpy needs to sort the same lots and find their peak. Rafts used
are held against the peak, below which no packing can go, and every place is checked by the same
search for double bookings that the forecast uses.
"""

from __future__ import annotations

import argparse
import gc
import statistics
import sys
import time
from dataclasses import dataclass, replace
from datetime import date, timedelta
from pathlib import Path
from typing import Final

sys.path.insert(0, str(Path(__file__).resolve().parent.parent))

import numpy as np

from planner.catalogue.loading import shipped_catalogue
from planner.farm.crops import Batch, Phase
from planner.farm.farm import Farm, Settings
from planner.farm.ids import id_from
from planner.farm.site import Bed, Loop, Site
from planner.farm.species import BedKind
from planner.forecast.engine import Forecaster
from planner.forecast.occupancy import clashes, holds
from planner.forecast.values import Forecast
from planner.planning.many import Rules, place_many
from planner.planning.many import peak_places as peak

WANTED_S: Final = 1.0
HOLES: Final = 30
YEARS: Final = 5
WEEKS_A_YEAR: Final = 52
FULL_SHARE: Final = 0.97
FIRST: Final = date(2027, 1, 4)
_MS: Final = 1000.0


@dataclass(frozen=True, slots=True, kw_only=True)
class Instance:
    """A farm with batches that have no places yet, its forecast, and the rafts its peak needs."""

    farm: Farm
    forecast: Forecast
    least: int


def instance(*, batches: int, rafts: int, seed: int, forecaster: Forecaster) -> Instance:
    """Return random sowings whose peak fills nearly all rafts."""
    draw = np.random.default_rng(seed)
    site = Site(id=id_from("site"), name="Site")
    loop = Loop(id=id_from("loop"), name="Loop", site=site.id, water_l=1_000_000.0)
    bed = Bed(
        id=id_from("bed"),
        name="Bed",
        loop=loop.id,
        kind=BedKind.RAFT,
        units=rafts,
        rows=5,
        columns=6,
        area_m2=rafts,
    )
    settings = Settings(id=id_from("settings"), name="Farm", plan_from=FIRST, plan_weeks=YEARS * WEEKS_A_YEAR)
    days = draw.integers(0, YEARS * WEEKS_A_YEAR * 7 - 90, batches)
    plants, stay = draw.integers(4, 60, batches), draw.integers(18, 60, batches)
    for _ in range(3):
        sizes = np.maximum(plants, 1)
        scale = FULL_SHARE * rafts * HOLES / peak(days, days + stay, sizes)
        plants = np.maximum((plants * scale).astype(np.int64), 1)
    many = tuple(
        Batch(
            id=id_from("batch", str(number)),
            code=f"B-{number}",
            crop="lettuce-butterhead",
            sow_on=FIRST + timedelta(days=int(day)),
            plants=int(count),
            bed=bed.id,
            bed_days=float(length),
            clearing_days=1.0,
        )
        for number, (day, count, length) in enumerate(zip(days, plants, stay, strict=True))
    )
    farm = Farm(settings=settings, sites=(site,), loops=(loop,), beds=(bed,), batches=many)
    forecast = forecaster.preview(farm)
    table = forecast.batches
    least = -(-peak(table.ends[:, 2], table.ends[:, 5], table.plants) // HOLES)
    return Instance(farm=farm, forecast=forecast, least=least)


def floor(forecast: Forecast) -> int:
    """Sort the lots by day and find their peak, as bare numpy does it."""
    table = forecast.batches
    order = np.lexsort((table.plants, table.ends[:, 2]))
    return peak(table.ends[order, 2], table.ends[order, 5], table.plants[order])


@dataclass(frozen=True, slots=True, kw_only=True)
class Measured:
    """Milliseconds of runs by the clock and of the processor, and what came of the last run."""

    clock_ms: list[float]
    processor_ms: list[float]
    floor_ms: list[float]
    used: int
    refused: int
    double: int


def measure(one: Instance, rules: Rules, runs: int) -> Measured:
    """Place the batches of an instance so many times."""
    times, works, floors = [], [], []
    found = place_many(one.farm.batches, one.farm, one.forecast, rules=rules)
    for _ in range(runs):
        gc.collect()
        start = time.perf_counter()
        floor(one.forecast)
        middle, work = time.perf_counter(), time.process_time()
        found = place_many(one.farm.batches, one.farm, one.forecast, rules=rules)
        end = time.perf_counter()
        works.append((time.process_time() - work) * _MS)
        floors.append((middle - start) * _MS)
        times.append((end - middle) * _MS)
    used = len({(run.bed, run.unit) for run in found.placements})
    after = replace(one.farm, placements=found.placements)
    double = sum(1 for _ in clashes(holds(after, one.forecast)))
    return Measured(
        clock_ms=times,
        processor_ms=works,
        floor_ms=floors,
        used=used,
        refused=len(found.refusals),
        double=double,
    )


def main() -> None:
    """Print the table."""
    options = argparse.ArgumentParser(description=__doc__.splitlines()[0])
    options.add_argument("--batches", type=int, default=20_000)
    options.add_argument("--rafts", type=int, default=500)
    options.add_argument("--runs", type=int, default=5)
    chosen = options.parse_args()
    forecaster = Forecaster(shipped_catalogue())
    ways = {
        "fewest rafts": Rules(phases=(Phase.BED,)),
        "together": Rules(phases=(Phase.BED,), keep_together=True),
        "not split": Rules(phases=(Phase.BED,), split_allowed=False),
    }
    print(
        f"{chosen.batches} batches on {chosen.rafts} rafts of {HOLES}, {YEARS} years; wanted: {WANTED_S:g} s"
    )
    print("instance  way           clock ms   processor ms   floor ms  rafts  peak needs  refused  double")
    for seed in range(3):
        one = instance(batches=chosen.batches, rafts=chosen.rafts, seed=seed, forecaster=forecaster)
        for name, rules in ways.items():
            found = measure(one, rules, chosen.runs)
            clock, work, floor_ms = map(
                statistics.median, (found.clock_ms, found.processor_ms, found.floor_ms)
            )
            print(
                f"{seed:8d}  {name:12s} {clock:9.0f} {work:14.0f} {floor_ms:10.2f} {found.used:6d} "
                f"{one.least:11d} {found.refused:8d} {found.double:7d}"
            )


if __name__ == "__main__":
    main()
