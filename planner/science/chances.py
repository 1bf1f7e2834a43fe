"""Chances: seeded draws and the spread they give.

The same seed gives the same draws on every machine. Must not know what is drawn.
"""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np

from planner.science.limits import (
    FloatArray,
    IntArray,
    require_at_least,
    require_between,
)


def draws_between(
    *, seed: int, count: int, low: float, likely: float, high: float, unit: str = ""
) -> FloatArray:
    """Draws from a triangle over low, likely and high, shape (count,) [their unit].

    low <= likely <= high; all equal gives that value. The triangle claims no more than the three figures.

    >>> draws_between(seed=1, count=3, low=2.0, likely=2.0, high=2.0).tolist()
    [2.0, 2.0, 2.0]
    """
    require_at_least("seed", seed, low=0)
    require_at_least("number of draws", count, low=0)
    require_between("likely value", likely, low=low, high=high, unit=unit)
    if low == high:
        return np.full(count, low)
    return np.random.default_rng(seed).triangular(low, likely, high, size=count)


def draws_around(*, seed: int, count: int, mean: float, standard_deviation: float, low: float) -> FloatArray:
    """Draws from a bell around a mean, none below ``low``, shape (count,) [unit of the mean].

    standard_deviation >= 0. Draws below ``low`` are set to it: the mean moves a little when that is common.

    >>> draws_around(seed=1, count=2, mean=5.0, standard_deviation=0.0, low=0.0).tolist()
    [5.0, 5.0]
    """
    require_at_least("seed", seed, low=0)
    require_at_least("number of draws", count, low=0)
    require_at_least("standard deviation", standard_deviation, low=0.0)
    return np.maximum(np.random.default_rng(seed).normal(mean, standard_deviation, size=count), low)


def draws_of_stand(*, seed: int, count: int, seeds: int, germination: float) -> IntArray:
    """Draws of how many of a number of seeds come up, shape (count,) [1].

    seeds >= 0; germination 0..1; seeds come up independently of each other.

    >>> draws_of_stand(seed=1, count=3, seeds=10, germination=1.0).tolist()
    [10, 10, 10]
    """
    require_at_least("seed", seed, low=0)
    require_at_least("number of draws", count, low=0)
    require_at_least("seeds", seeds, low=0)
    require_between("germination", germination, low=0.0, high=1.0)
    return np.random.default_rng(seed).binomial(seeds, germination, size=count)


def seeds_for_chance(
    plants: int, *, germination: float, chance: float, seed: int, count: int, most_seeds: int
) -> int:
    """Fewest seeds that give at least the plants wanted in a share of draws.

    plants >= 0; germination above 0; chance 0..1; at most ``most_seeds`` are tried, more is refused.

    >>> seeds_for_chance(10, germination=1.0, chance=0.9, seed=1, count=100, most_seeds=50)
    10
    """
    require_between("chance", chance, low=0.0, high=1.0)
    require_at_least("draws", count, low=1)
    low, high = plants, most_seeds
    if high < low or _chance_of(plants, high, germination, seed, count) < chance:
        raise ValueError(f"{plants} plants with chance {chance:g} need more than {most_seeds} seeds")
    while low < high:
        middle = (low + high) // 2
        if _chance_of(plants, middle, germination, seed, count) >= chance:
            high = middle
        else:
            low = middle + 1
    return low


def chance_of_reaching(samples: FloatArray, *, target: float) -> FloatArray:
    """Share of draws at or above a target, shape (...) for samples of shape (draw, ...) [0..1].

    >>> float(chance_of_reaching(np.array([1.0, 2.0, 3.0, 4.0]), target=3.0))
    0.5
    """
    require_at_least("draws", samples.shape[0], low=1)
    return np.asarray(np.mean(samples >= target, axis=0), dtype=np.float64)


def percentiles(samples: FloatArray, *, levels_percent: Sequence[float]) -> FloatArray:
    """Percentiles over draws, shape (level, ...) for samples of shape (draw, ...) [unit of the samples].

    levels_percent 0..100.

    >>> percentiles(np.array([1.0, 2.0, 3.0]), levels_percent=(0, 50, 100)).tolist()
    [1.0, 2.0, 3.0]
    """
    require_at_least("draws", samples.shape[0], low=1)
    levels = np.asarray(levels_percent, dtype=np.float64)
    require_between("percentile", levels, low=0.0, high=100.0, unit="%")
    return np.asarray(np.percentile(samples, levels, axis=0), dtype=np.float64)


def _chance_of(plants: int, seeds: int, germination: float, seed: int, count: int) -> float:
    came_up = draws_of_stand(seed=seed, count=count, seeds=seeds, germination=germination)
    return float(np.mean(came_up >= plants))
