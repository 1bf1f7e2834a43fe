"""Times the whole forecast of a big farm: cold, warm, and with one batch moved.

    python benchmarks/forecast_big_farm.py [--batches N] [--rafts N] [--years N] [--runs N]

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
from planner.farm.species import ELEMENTS
from planner.forecast.engine import Forecaster
from planner.forecast.values import Forecast
from sample_data.make_big_farm import DEFAULT_BATCHES, DEFAULT_RAFTS, DEFAULT_YEARS, big_farm

WANTED_WARM_MS: Final = 60.0
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


def measure(farm: Farm, *, runs: int) -> dict[str, list[float]]:
    """Return milliseconds of every kind of run, the kinds taken in turn."""
    catalogue = shipped_catalogue()
    warm = Forecaster(catalogue)
    first = warm.forecast(farm)
    found: dict[str, list[float]] = {}
    for number in range(runs):
        cold_one, cold_other = Forecaster(catalogue), Forecaster(catalogue)
        shifted, shifted_more = moved(farm, 2 * number), moved(farm, 2 * number + 1)
        todo: dict[str, Callable[[], object]] = {
            "numpy floor": lambda: floor(first),
            "preview, cold": lambda one=cold_one: one.preview(farm),
            "forecast, cold": lambda other=cold_other: other.forecast(farm),
            "preview, warm": lambda: warm.preview(farm),
            "forecast, warm": lambda: warm.forecast(farm),
            "preview, one batch moved": lambda one=shifted: warm.preview(one),
            "forecast, one batch moved": lambda other=shifted_more: warm.forecast(other),
            "forecast, moved back": lambda: warm.forecast(farm),
        }
        gc.collect()
        for name, run in todo.items():
            found.setdefault(name, []).append(timed(run))
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
    asked = parser.parse_args()
    farm = big_farm(batches=asked.batches, rafts=asked.rafts, years=asked.years)
    print(f"{asked.batches} batches, {asked.rafts} rafts, {asked.years} years; {asked.runs} runs")
    found = measure(farm, runs=asked.runs)
    print("\n".join(table_lines(found)))
    warm = statistics.median(found["forecast, warm"])
    print(f"whole forecast, warm: {warm:.1f} ms; wanted: {WANTED_WARM_MS:.0f} ms or less")
    return 0


if __name__ == "__main__":
    sys.exit(main())
