"""The arithmetic of sowing, spacing and sizing: counts, places, areas, cohorts.

Days are whole numbers from any chosen zero. Must not know calendars, farms or who asks.
"""

from __future__ import annotations

import math
from collections.abc import Sequence

import numpy as np

from planner.science.limits import (
    FLOAT_NOISE,
    FloatArray,
    IntArray,
    T,
    Values,
    require_above,
    require_at_least,
    require_between,
    shaped_like,
)

DAYS_PER_WEEK = 7
_CM2_PER_M2 = 10_000.0
_G_PER_KG = 1000.0
_HEX_GAIN = 2.0 / math.sqrt(3.0)
"""Plants on a triangular grid against a square one of the same spacing, edges left out."""


def whole_up(amount: float) -> int:
    """Round up to a whole count, without a spare one for float noise.

    >>> whole_up(99.9999999999999), whole_up(100.00000000000001), whole_up(100.2)
    (100, 100, 101)
    """
    require_at_least("count", amount, low=0.0)
    return max(math.ceil(amount - FLOAT_NOISE * max(1.0, amount)), 0)


def seeds_to_sow(plants: float, *, germination: float, survival: float = 1.0) -> int:
    """Seeds needed for the plants wanted: plants / (germination x survival), rounded up.

    plants [1] >= 0; germination and survival [0..1] above 0, survival over all later stages together.

    >>> seeds_to_sow(200, germination=0.95, survival=0.97)
    218
    """
    require_at_least("plants wanted", plants, low=0.0)
    for name, share in (("germination", germination), ("survival", survival)):
        require_above(name, share, low=0.0)
        require_between(name, share, low=0.0, high=1.0)
    return whole_up(plants / (germination * survival))


def seeds_for_many(plants: FloatArray, *, germination: FloatArray, survival: FloatArray) -> IntArray:
    """``seeds_to_sow`` for many batches at once; the arrays broadcast together.

    plants [1] >= 0; germination and survival [0..1] above 0.

    >>> shares = dict(germination=np.array([0.95, 0.85]), survival=np.array([0.97, 1.0]))
    >>> seeds_for_many(np.array([200.0, 30.0]), **shares).tolist()
    [218, 36]
    """
    require_at_least("plants wanted", plants, low=0.0)
    for name, share in (("germination", germination), ("survival", survival)):
        require_above(name, share, low=0.0)
        require_between(name, share, low=0.0, high=1.0)
    seeds = plants / (germination * survival)
    return np.maximum(np.ceil(seeds - FLOAT_NOISE * np.maximum(1.0, seeds)), 0.0).astype(np.int64)


def seeds_by_allowance(plants: float, *, allowance_factor: float, germination: float = 1.0) -> int:
    """Seeds by the market growers' rule: plants x allowance / germination, rounded up.

    Gives fewer seeds than dividing by survival when losses are large: say which rule was used.
    allowance_factor [1] >= 1. Common practice.

    >>> seeds_by_allowance(100, allowance_factor=1.2, germination=0.8)
    150
    """
    require_at_least("allowance factor", allowance_factor, low=1.0)
    return seeds_to_sow(plants * allowance_factor, germination=germination)


def stand(seeds: float, *, germination: float, survival: float = 1.0) -> float:
    """Plants to expect from seeds sown: seeds x germination x survival [1].

    >>> round(stand(218, germination=0.95, survival=0.97), 2)
    200.89
    """
    require_at_least("seeds", seeds, low=0.0)
    require_between("germination", germination, low=0.0, high=1.0)
    require_between("survival", survival, low=0.0, high=1.0)
    return seeds * germination * survival


def whole_units(count: float, *, per_unit: int) -> int:
    """Pots, trays or rafts that hold a count, the last one perhaps part full.

    >>> whole_units(218, per_unit=72)
    4
    """
    require_at_least("held by one unit", per_unit, low=1)
    return whole_up(count / per_unit)


def filled_up(count: float, *, per_unit: int) -> int:
    """A count rounded up so that every pot or tray is full.

    >>> filled_up(218, per_unit=72)
    288
    """
    return whole_units(count, per_unit=per_unit) * per_unit


def places_in_use(arrivals_per_day: float, *, days_in_place: float) -> float:
    """Places in use at a steady pace: arrivals x stay (Little's law) [1].

    arrivals_per_day [1/d] >= 0; days_in_place [d] >= 0, cleaning included.

    >>> round(places_in_use(25 / 7, days_in_place=28), 6)
    100.0
    """
    require_at_least("arrivals", arrivals_per_day, low=0.0, unit="1/d")
    require_at_least("days in place", days_in_place, low=0.0, unit="d")
    return arrivals_per_day * days_in_place


def area_over_stages_m2(
    plants_per_week: float, *, stage_days: Sequence[float], densities_per_m2: Sequence[float]
) -> float:
    """Area held at a steady weekly pace by all spacing stages together [m2].

    stage_days [d] and densities_per_m2 [1/m2] of equal length, densities above 0.

    >>> round(area_over_stages_m2(70.0, stage_days=(10, 14), densities_per_m2=(97.0, 38.0)), 3)
    4.715
    """
    total = 0.0
    for days, density in zip(stage_days, densities_per_m2, strict=True):
        require_above("plant density", density, low=0.0, unit="1/m2")
        total += places_in_use(plants_per_week / DAYS_PER_WEEK, days_in_place=days) / density
    return total


def square_density_per_m2(spacing_cm: float) -> float:
    """Plants per m2 on a square grid, edges left out [1/m2]. spacing_cm [cm] above 0.

    >>> square_density_per_m2(20.0)
    25.0
    """
    require_above("spacing", spacing_cm, low=0.0, unit="cm")
    return _CM2_PER_M2 / spacing_cm**2


def hexagonal_density_per_m2(spacing_cm: float) -> float:
    """Plants per m2 on a triangular grid, edges left out [1/m2]. spacing_cm [cm] above 0.

    Bed edges take part of the gain: growers count on about 13 %, not 15 %.

    >>> round(hexagonal_density_per_m2(20.0), 1)
    28.9
    """
    return square_density_per_m2(spacing_cm) * _HEX_GAIN


def square_spacing_cm(density_per_m2: float) -> float:
    """Spacing of a square grid with a density [cm]. density_per_m2 [1/m2] above 0.

    >>> square_spacing_cm(25.0)
    20.0
    """
    require_above("plant density", density_per_m2, low=0.0, unit="1/m2")
    return math.sqrt(_CM2_PER_M2 / density_per_m2)


def area_for_feed_m2(feed_g_per_day: float, *, ratio_g_per_m2_day: float) -> float:
    """Growing area that a daily feed carries at a feed rate ratio [m2].

    feed_g_per_day [g/d] >= 0; ratio_g_per_m2_day [g/m2/d] above 0. Source: fao589, rakocy2007.

    >>> round(area_for_feed_m2(1000.0, ratio_g_per_m2_day=60.0), 1)
    16.7
    """
    require_at_least("feed", feed_g_per_day, low=0.0, unit="g/d")
    require_above("feed rate ratio", ratio_g_per_m2_day, low=0.0, unit="g/m2/d")
    return feed_g_per_day / ratio_g_per_m2_day


def feed_for_area_g_per_day(area_m2: float, *, ratio_g_per_m2_day: float) -> float:
    """Daily feed that a growing area asks for at a feed rate ratio [g/d].

    area_m2 [m2] >= 0; ratio_g_per_m2_day [g/m2/d] above 0. Source: fao589, rakocy2007.

    >>> feed_for_area_g_per_day(200.0, ratio_g_per_m2_day=100.0)
    20000.0
    """
    require_at_least("growing area", area_m2, low=0.0, unit="m2")
    require_above("feed rate ratio", ratio_g_per_m2_day, low=0.0, unit="g/m2/d")
    return area_m2 * ratio_g_per_m2_day


def feed_rate_ratio(feed_g_per_day: float, *, area_m2: float) -> float:
    """Daily feed per growing area [g/m2/d]. area_m2 [m2] above 0. Source: rakocy2004basil.

    >>> round(feed_rate_ratio(17_500.0, area_m2=214.0), 1)
    81.8
    """
    require_at_least("feed", feed_g_per_day, low=0.0, unit="g/d")
    require_above("growing area", area_m2, low=0.0, unit="m2")
    return feed_g_per_day / area_m2


def ratio_for_protein(ratio_g_per_m2_day: T, *, protein_share: Values, reference_protein_share: float) -> T:
    """A feed rate ratio carried over to a feed of another protein share [g/m2/d].

    protein_share [0..1] above 0; arrays broadcast together. The direction is from fao589, the
    proportion is ours.

    >>> ratio_for_protein(50.0, protein_share=0.40, reference_protein_share=0.32)
    40.0
    """
    require_above("protein share", protein_share, low=0.0)
    require_between("protein share", protein_share, low=0.0, high=1.0)
    carried = np.asarray(ratio_g_per_m2_day) * reference_protein_share / protein_share
    return shaped_like(ratio_g_per_m2_day, carried)


def fish_for_feed_kg(feed_g_per_day: float, *, ration_share_per_day: float) -> float:
    """Fish mass that eats a daily feed at a ration [kg].

    ration_share_per_day [g feed per g fish per day] above 0. Source: fao589.

    >>> fish_for_feed_kg(200.0, ration_share_per_day=0.01), fish_for_feed_kg(200.0, ration_share_per_day=0.02)
    (20.0, 10.0)
    """
    require_at_least("feed", feed_g_per_day, low=0.0, unit="g/d")
    require_above("ration", ration_share_per_day, low=0.0, unit="1/d")
    return feed_g_per_day / ration_share_per_day / _G_PER_KG


def tank_volume_m3(fish_kg: float, *, density_kg_per_m3: float) -> float:
    """Tank volume that holds a fish mass at a stocking density [m3].

    >>> tank_volume_m3(20.0, density_kg_per_m3=20.0)
    1.0
    """
    require_at_least("fish mass", fish_kg, low=0.0, unit="kg")
    require_above("stocking density", density_kg_per_m3, low=0.0, unit="kg/m3")
    return fish_kg / density_kg_per_m3


def cohort_start_days(*, first_day: int, interval_days: int, count: int) -> IntArray:
    """Days on which equal cohorts begin, shape (count,).

    >>> cohort_start_days(first_day=0, interval_days=42, count=4).tolist()
    [0, 42, 84, 126]
    """
    require_at_least("interval between cohorts", interval_days, low=1, unit="d")
    require_at_least("number of cohorts", count, low=0)
    return first_day + interval_days * np.arange(count, dtype=np.int64)


def cohort_ages_days(day: int, *, start_days: IntArray, life_days: int) -> IntArray:
    """Ages of the cohorts present on a day, oldest first, shape (present,) [d].

    A cohort leaves on the day it reaches ``life_days``.

    >>> starts = cohort_start_days(first_day=0, interval_days=42, count=9)
    >>> cohort_ages_days(170, start_days=starts, life_days=168).tolist()
    [128, 86, 44, 2]
    """
    ages = day - start_days
    return ages[(ages >= 0) & (ages < life_days)]


def steady_harvests_per_year(*, interval_days: float, days_per_year: float) -> float:
    """Harvests a year once cohorts follow each other at an interval [1/year].

    >>> round(steady_harvests_per_year(interval_days=42.0, days_per_year=364.0), 2)
    8.67
    """
    require_above("interval between harvests", interval_days, low=0.0, unit="d")
    return days_per_year / interval_days


def yearly_yield_kg(
    yield_kg_per_m2: float, *, area_m2: float, interval_days: float, days_per_year: float
) -> float:
    """Mass a year from an area cropped again and again [kg/year].

    yield_kg_per_m2 [kg/m2 per crop] >= 0; interval_days [d] above 0 from one crop to the next.
    Source: rakocy2004update.

    >>> round(yearly_yield_kg(2.0, area_m2=100.0, interval_days=28.0, days_per_year=364.0))
    2600
    """
    require_at_least("yield", yield_kg_per_m2, low=0.0, unit="kg/m2")
    require_at_least("growing area", area_m2, low=0.0, unit="m2")
    crops = steady_harvests_per_year(interval_days=interval_days, days_per_year=days_per_year)
    return yield_kg_per_m2 * area_m2 * crops


def crop_interval_days(yearly_kg_per_m2: float, *, yield_kg_per_m2: float, days_per_year: float) -> float:
    """Days from one crop to the next behind a yearly yield [d].

    Both yields [kg/m2], above 0. Source: rakocy2004update.

    >>> round(crop_interval_days(25.0, yield_kg_per_m2=2.0, days_per_year=365.0), 1)
    29.2
    """
    require_above("yearly yield", yearly_kg_per_m2, low=0.0, unit="kg/m2")
    require_above("yield of a crop", yield_kg_per_m2, low=0.0, unit="kg/m2")
    return days_per_year * yield_kg_per_m2 / yearly_kg_per_m2


def sowings_for_window(supply_days: float, *, harvest_window_days: float) -> int:
    """Sowings needed so that harvest windows cover a supply period.

    >>> sowings_for_window(60.0, harvest_window_days=7.0)
    9
    """
    require_above("harvest window", harvest_window_days, low=0.0, unit="d")
    return whole_up(supply_days / harvest_window_days)


def stage_start_days(harvest_day: int, *, stage_days: Sequence[int]) -> IntArray:
    """Start days of the stages that end in a harvest, counted back, shape (stage,).

    >>> stage_start_days(35, stage_days=(11, 10, 14)).tolist()
    [0, 11, 21]
    """
    require_at_least("stage length", float(min(stage_days, default=0)), low=0.0, unit="d")
    lengths = np.asarray(stage_days, dtype=np.int64)
    return harvest_day - np.cumsum(lengths[::-1])[::-1]


def plants_present(planted: FloatArray, *, periods_in_place: int) -> FloatArray:
    """Plants standing at the end of each period when every planting stays a fixed number of periods.

    planted [1], shape (period,). Returns shape (period,).

    >>> plants_present(np.full(6, 25.0), periods_in_place=4).tolist()
    [25.0, 50.0, 75.0, 100.0, 100.0, 100.0]
    """
    require_at_least("periods in place", periods_in_place, low=1)
    total = np.concatenate((np.zeros(periods_in_place), np.cumsum(planted)))
    return total[periods_in_place:] - total[: planted.size]
