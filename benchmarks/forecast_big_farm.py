"""Times the whole forecast of a big farm: cold, warm, and after one thing and another was changed.

    python benchmarks/forecast_big_farm.py [--batches N] [--rafts N] [--years N] [--runs N] [--by-the-book]

The farm has a year of its own, so that durations change with the season; `--by-the-book` leaves it out.
Besides batches, fish, water and climate are changed, each of which costs more: what hangs on them is
worked out again.

Beside each stands the floor: the least that numpy itself needs for sums of this size, counted and folded
in the same run on the same machine, so that a slow machine or a busy moment weighs on both.
"""

from __future__ import annotations

import argparse
import gc
import statistics
import sys
import time
from collections.abc import Callable
from dataclasses import replace
from datetime import timedelta
from pathlib import Path
from typing import Final

sys.path.insert(0, str(Path(__file__).resolve().parent.parent))

import numpy as np

from planner.catalogue.loading import shipped_catalogue
from planner.farm.farm import Farm
from planner.farm.ids import id_from
from planner.farm.species import ELEMENTS
from planner.forecast.engine import Forecaster
from planner.forecast.values import Forecast
from sample_data.make_big_farm import DEFAULT_BATCHES, DEFAULT_RAFTS, DEFAULT_YEARS, big_farm

WANTED_WARM_MS: Final = 16.0
_AIR_C: Final = (19.0, 20.0, 21.0, 23.0, 25.5, 27.5, 28.5, 28.5, 27.0, 25.0, 22.0, 20.0)
_RADIATION_MJ: Final = (8.0, 11.0, 14.0, 18.0, 21.0, 20.0, 15.0, 14.0, 14.0, 12.0, 9.0, 7.5)
"""An invented year with a cool dull winter and a wet summer."""
_MS: Final = 1000.0


def floor(forecast: Forecast) -> float:
    """Count sowings by (profile, day), fold each row with a curve, sum by element; return a sum."""
    table, days = forecast.batches, forecast.ruler.days
    curves = [np.ones(profile.life_days) for profile in forecast.profiles]
    lead = max(curve.size for curve in curves)
    width = lead + days
    cell = table.profile * width + np.clip(table.sow_day + lead, 0, width - 1)
    counts = np.bincount(cell, weights=table.plants, minlength=width * len(curves)).reshape(-1, width)
    wanted = np.zeros((len(ELEMENTS), days))
    content = np.ones((len(ELEMENTS), 1))
    for row, curve in zip(counts, curves, strict=True):
        wanted += content * np.convolve(row, curve)[lead : lead + days]
    return float(wanted.sum())


def timed(run: Callable[[], object]) -> float:
    """Return milliseconds that one run takes."""
    start = time.perf_counter()
    run()
    return (time.perf_counter() - start) * _MS


def moved(farm: Farm, number: int) -> Farm:
    """Return the farm with one batch sown a day later."""
    row = (number * 7919) % len(farm.batches)
    batch = farm.batches[row]
    late = replace(batch, sow_on=batch.sow_on + timedelta(days=1))
    return replace(farm, batches=(*farm.batches[:row], late, *farm.batches[row + 1 :]))


def in_season(farm: Farm) -> Farm:
    """Return the farm with a year of warmth and light at its site."""
    year = {"air_c": _AIR_C, "radiation_mj_per_m2_d": _RADIATION_MJ, "roof_transmission": 0.7}
    return replace(farm, sites=tuple(replace(site, **year) for site in farm.sites))


def one_sown(farm: Farm, number: int) -> Farm:
    """Return the farm with one more batch, without a place."""
    like = farm.batches[(number * 7919) % len(farm.batches)]
    new = replace(like, id=id_from("sown", str(number)), code=f"NEW-{number}")
    return replace(farm, batches=(*farm.batches, new))


def all_moved(farm: Farm, number: int) -> Farm:
    """Return the farm with every batch sown some days later."""
    late = timedelta(days=1 + number)
    return replace(farm, batches=tuple(replace(one, sow_on=one.sow_on + late) for one in farm.batches))


def fish_added(farm: Farm, number: int) -> Farm:
    """Return the farm with a few more fish in one group."""
    row = number % len(farm.fish_groups)
    group = farm.fish_groups[row]
    more = replace(group, count=group.count + 5)
    return replace(farm, fish_groups=(*farm.fish_groups[:row], more, *farm.fish_groups[row + 1 :]))


def warmer_water(farm: Farm, number: int) -> Farm:
    """Return the farm with warmer water."""
    loops = (
        replace(loop, water_c=tuple(c + 0.05 * (1 + number) for c in loop.water_c)) for loop in farm.loops
    )
    return replace(farm, loops=tuple(loops))


def warmer_air(farm: Farm, number: int) -> Farm:
    """Return the farm under another climate, so that every stage of every batch is dated anew."""
    sites = (replace(site, air_c=tuple(c + 0.05 * (1 + number) for c in site.air_c)) for site in farm.sites)
    return replace(farm, sites=tuple(sites))


CHANGES: Final[dict[str, Callable[[Farm, int], Farm]]] = {
    "forecast, one batch moved": moved,
    "forecast, one batch sown": one_sown,
    "forecast, fish added": fish_added,
    "forecast, all batches moved": all_moved,
    "forecast, warmer water": warmer_water,
    "forecast, warmer air": warmer_air,
}


def measure(farm: Farm, *, runs: int) -> dict[str, list[float]]:
    """Return milliseconds of every kind of run, the kinds taken in turn."""
    catalogue = shipped_catalogue()
    warm = Forecaster(catalogue)
    first = warm.forecast(farm)
    found: dict[str, list[float]] = {}

    def note(name: str, run: Callable[[], object]) -> None:
        gc.collect()
        found.setdefault(name, []).append(timed(run))

    for number in range(runs):
        cold, shifted = Forecaster(catalogue), moved(farm, 2 * number + 1)
        note("numpy floor", lambda: floor(first))
        note("forecast, cold", lambda one=cold: one.forecast(farm))
        note("preview, warm", lambda: warm.preview(farm))
        note("forecast, warm", lambda: warm.forecast(farm))
        note("preview, one batch moved", lambda one=shifted: warm.preview(one))
        for name, change in CHANGES.items():
            warm.forecast(farm)
            other = change(farm, 2 * number)
            note(name, lambda one=other: warm.forecast(one))
        warm.forecast(farm)
    return found


def table_lines(found: dict[str, list[float]]) -> list[str]:
    """Return a table of medians, 90th percentiles and times the floor."""
    least = statistics.median(found["numpy floor"])
    lines = [f"{'':28}{'median ms':>11}{'p90 ms':>11}{'× floor':>10}"]
    for name, values in found.items():
        median, p90 = statistics.median(values), float(np.percentile(values, 90))
        lines.append(f"{name:28}{median:11.2f}{p90:11.2f}{median / least:10.1f}")
    return lines


def main() -> int:
    """Measure and print."""
    parser = argparse.ArgumentParser(description="Times the whole forecast of a big farm.")
    parser.add_argument("--batches", type=int, default=DEFAULT_BATCHES)
    parser.add_argument("--rafts", type=int, default=DEFAULT_RAFTS)
    parser.add_argument("--years", type=int, default=DEFAULT_YEARS)
    parser.add_argument("--runs", type=int, default=21)
    parser.add_argument("--by-the-book", action="store_true", help="without a climate: the same all year")
    asked = parser.parse_args()
    farm = big_farm(batches=asked.batches, rafts=asked.rafts, years=asked.years)
    farm = farm if asked.by_the_book else in_season(farm)
    print(f"{asked.batches} batches, {asked.rafts} rafts, {asked.years} years; {asked.runs} runs")
    found = measure(farm, runs=asked.runs)
    print("\n".join(table_lines(found)))
    warm = statistics.median(found["forecast, warm"])
    print(f"whole forecast, warm: {warm:.1f} ms; wanted: {WANTED_WARM_MS:.0f} ms or less")
    return 0


if __name__ == "__main__":
    sys.exit(main())
