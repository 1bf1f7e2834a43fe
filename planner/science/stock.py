"""A stock of fish: deaths, density, harvests, and what a weighed sample says of it.

Must not know tanks or dates. Quantiles of distributions come in as arguments.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np

from planner.science.limits import (
    FloatArray,
    T,
    Values,
    require_above,
    require_at_least,
    require_between,
    shaped_like,
)
from planner.science.schedule import whole_up

_G_PER_KG = 1000.0
_KG_PER_POUND = 0.453_592_37
_L_PER_GALLON = 3.785_411_784
_L_PER_M3 = 1000.0


def daily_death_share(*, survival: float, days: float) -> float:
    """Share of the fish alive that dies each day, so that survival comes out over a time [1/d].

    survival [0..1] above 0 over ``days`` [d] above 0.

    >>> round(daily_death_share(survival=0.983, days=168.0) * 100, 5)
    0.01021
    """
    require_above("survival", survival, low=0.0)
    require_between("survival", survival, low=0.0, high=1.0)
    require_above("days", days, low=0.0, unit="d")
    return float(1.0 - survival ** (1.0 / days))


def survivors(number: float, *, death_share_per_day: float, days: T) -> T:
    """Fish alive after days of a steady death share [1]. days [d] >= 0, any shape.

    >>> share = daily_death_share(survival=0.983, days=168.0)
    >>> round(survivors(600.6, death_share_per_day=share, days=168.0), 1)
    590.4
    """
    require_at_least("number of fish", number, low=0.0)
    require_between("death share", death_share_per_day, low=0.0, high=1.0, unit="1/d")
    require_at_least("days", days, low=0.0, unit="d")
    return shaped_like(days, number * np.power(1.0 - death_share_per_day, days))


def biomass_kg(number: T, *, weight_g: Values) -> T:
    """Live mass of a number of fish at a mean weight [kg].

    >>> round(biomass_kg(590.4, weight_g=813.8), 1)
    480.5
    """
    require_at_least("number of fish", number, low=0.0)
    require_at_least("weight", weight_g, low=0.0, unit="g")
    return shaped_like(number, np.asarray(number) * weight_g / _G_PER_KG)


def stocking_density(mass_kg: T, *, volume_m3: float) -> T:
    """Live mass per tank volume [kg/m3]. volume_m3 [m3] above 0.

    >>> round(stocking_density(480.5, volume_m3=7.8), 1)
    61.6
    """
    require_at_least("fish mass", mass_kg, low=0.0, unit="kg")
    require_above("tank volume", volume_m3, low=0.0, unit="m3")
    return shaped_like(mass_kg, np.asarray(mass_kg) / volume_m3)


def density_from_pounds_per_gallon(pounds_per_gallon: float) -> float:
    """Stocking density from pounds per US gallon [kg/m3].

    >>> round(density_from_pounds_per_gallon(0.25), 2)
    29.96
    """
    require_at_least("density", pounds_per_gallon, low=0.0, unit="lb/gal")
    return pounds_per_gallon * _KG_PER_POUND / _L_PER_GALLON * _L_PER_M3


def loading_at_temperature(loading: float, *, warmer_by_f: float, change_per_f: float) -> float:
    """Fish that may be hauled when the water is warmer than the loading was rated for [unit of loading].

    warmer_by_f [degF], negative when cooler; change_per_f [1/degF]. Source: piper1982.

    >>> round(loading_at_temperature(1000.0, warmer_by_f=5.0, change_per_f=1 / 18))
    722
    """
    require_at_least("loading", loading, low=0.0)
    return max(loading * (1.0 - change_per_f * warmer_by_f), 0.0)


def index_at_oxygen(
    index: float, *, rated_mg_per_l: float, oxygen_mg_per_l: float, least_mg_per_l: float
) -> float:
    """A flow index carried from the oxygen it was rated at to another [unit of index].

    rated and actual inflow oxygen [mg/L] above the least the fish may have. Source: piper1982.

    >>> index_at_oxygen(1.5, rated_mg_per_l=11.0, oxygen_mg_per_l=8.0, least_mg_per_l=5.0)
    0.75
    """
    require_above("rated oxygen", rated_mg_per_l, low=least_mg_per_l, unit="mg/L")
    require_at_least("oxygen", oxygen_mg_per_l, low=least_mg_per_l, unit="mg/L")
    return index * (oxygen_mg_per_l - least_mg_per_l) / (rated_mg_per_l - least_mg_per_l)


def ammonia_in_series(feed_lb_per_day: FloatArray, *, flow_gpm: float, ammonia_factor: float) -> FloatArray:
    """Ammonia after each of a row of rearing units the same water runs through [mg/L].

    feed_lb_per_day [lb/d], shape (unit,), in the order of flow; flow_gpm [US gal/min] above 0;
    ammonia_factor [mg/L x gpm per lb feed/d]. Source: piper1982.

    >>> ammonia_in_series(np.array([10.0, 5.0, 20.0]), flow_gpm=200.0, ammonia_factor=3.0).round(3).tolist()
    [0.15, 0.225, 0.525]
    """
    require_at_least("feed", feed_lb_per_day, low=0.0, unit="lb/d")
    require_above("flow", flow_gpm, low=0.0, unit="gal/min")
    return np.cumsum(ammonia_factor * feed_lb_per_day / flow_gpm)


@dataclass(frozen=True, slots=True, kw_only=True)
class SampleStatistics:
    """What a weighed sample says."""

    count: int
    mean: float
    standard_deviation: float
    """With one less than the count below the line; 0 for a single fish."""
    variation: float
    """Standard deviation over mean [1]."""


def sample_statistics(weights: Sequence[float]) -> SampleStatistics:
    """Mean, standard deviation and coefficient of variation of a sample.

    weights [g], each above 0, at least one.

    >>> found = sample_statistics([52.0, 61.0, 48.0])
    >>> found.count, round(found.mean, 2), round(found.standard_deviation, 2)
    (3, 53.67, 6.66)
    """
    if len(weights) == 0:
        raise ValueError("a sample has 0 fish; it must have at least 1")
    values = np.asarray(weights, dtype=np.float64)
    require_above("sampled weight", values, low=0.0, unit="g")
    spread = float(np.std(values, ddof=1)) if values.size > 1 else 0.0
    mean = float(np.mean(values))
    return SampleStatistics(
        count=int(values.size), mean=mean, standard_deviation=spread, variation=spread / mean
    )


def half_width_of_mean(statistics: SampleStatistics, *, t_quantile: float) -> float:
    """Half the width of the interval around a sample mean [unit of the mean].

    t_quantile [1] > 0: Student's t for the wanted certainty, its degrees of freedom one below the count.

    >>> round(half_width_of_mean(sample_statistics([52.0, 61.0, 48.0]), t_quantile=4.303), 1)
    16.5
    """
    require_at_least("fish in the sample", statistics.count, low=2)
    require_above("t quantile", t_quantile, low=0.0)
    return t_quantile * statistics.standard_deviation / math.sqrt(statistics.count)


def sample_size(
    *, variation: float, relative_error: float, z_quantile: float, stock: float = math.inf
) -> int:
    """Fish to weigh so that the mean is within a relative error, for a stock of a size.

    variation and relative_error [1] above 0; z_quantile [1] above 0; stock [1] at least 1, or infinite.
    The infinite count is rounded up only at the end, after the correction for a finite stock.

    >>> sample_size(variation=0.20, relative_error=0.10, z_quantile=1.96)
    16
    >>> sample_size(variation=0.20, relative_error=0.05, z_quantile=1.96, stock=200)
    48
    """
    require_above("variation", variation, low=0.0)
    require_above("relative error", relative_error, low=0.0)
    require_above("z quantile", z_quantile, low=0.0)
    require_at_least("stock", stock, low=1.0)
    wanted = (z_quantile * variation / relative_error) ** 2
    if math.isinf(stock):
        return whole_up(wanted)
    return min(whole_up(wanted / (1.0 + (wanted - 1.0) / stock)), whole_up(stock))
