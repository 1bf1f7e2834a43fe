"""The feed that beds need week by week: by planted area and feed-rate ratio, or by what crops take up.

Must know nothing of tanks or fish groups.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Final

import numpy as np

from planner.farm.species import ELEMENTS
from planner.forecast.figures import BandFigures
from planner.forecast.values import Floats, LoopForecast, Ruler
from planner.forecast.verdicts import week_verdicts

_YEAR_WEEKS: Final = 52
_NOTHING: Final = 1e-9


@dataclass(frozen=True, slots=True, kw_only=True)
class FeedNeed:
    """Band of feed [g/d] by week of the plan; both ends 0 in weeks that ask for none."""

    low: Floats
    high: Floats

    @property
    def middle(self) -> Floats:
        """Middle of the band [g/d] by week."""
        return (self.low + self.high) / 2.0

    def over(self, weeks: int) -> FeedNeed:
        """Return the need over so many weeks.

        Beyond the plan each week is taken like the one a year before; where the plan is shorter than a
        year, like the mean of the weeks that ask for feed.
        """
        return FeedNeed(low=_over(self.low, weeks), high=_over(self.high, weeks))


def _over(values: Floats, weeks: int) -> Floats:
    if weeks <= values.size:
        return values[:weeks]
    if values.size >= _YEAR_WEEKS:
        back = np.arange(values.size, weeks)
        turns = (back - values.size) // _YEAR_WEEKS + 1
        return np.concatenate([values, values[back - turns * _YEAR_WEEKS]])
    asking = values[values > 0.0]
    mean = float(asking.mean()) if asking.size else 0.0
    return np.concatenate([values, np.full(weeks - values.size, mean)])


def need_by_area(found: LoopForecast, ruler: Ruler, bands: BandFigures) -> FeedNeed:
    """Return the feed that keeps planted area inside the band its loop goes by (source: fao589).

    FAO's leafy and fruiting bands are mixed by planted area and turned to the protein of the feed given.
    """
    verdicts = week_verdicts(found, ruler, bands)
    ends = [
        (band[0] * one.planted_m2, band[1] * one.planted_m2) if (band := one.rule_band) else (0.0, 0.0)
        for one in verdicts
    ]
    low, high = np.asarray(ends, dtype=np.float64).T
    return FeedNeed(low=low, high=high)


def need_by_ratio(area_m2: float, *, band: tuple[float, float], weeks: int) -> FeedNeed:
    """Return the same band in every week, for an area [m²] that is always planted and a band [g/m²/d]."""
    low, high = band
    return FeedNeed(low=np.full(weeks, area_m2 * low), high=np.full(weeks, area_m2 * high))


def need_by_demand(
    found: LoopForecast,
    ruler: Ruler,
    bands: BandFigures,
    *,
    brought_g_per_g: Floats,
    elements: Sequence[str] = ("n",),
) -> FeedNeed:
    """Return the feed that meets the demand of crops for some elements, up to what counts as ample.

    brought_g_per_g of shape (element,) is what a gram of feed brings to the water, as the forecast of the
    fish to be stocked has it. What make-up water and doses bring is taken off first.
    """
    rows = [ELEMENTS.index(element) for element in elements]
    demand = ruler.weekly_mean(found.demand_g)[rows]
    other = ruler.weekly_mean(found.top_up_g + found.dose_g)[rows]
    brought = np.maximum(brought_g_per_g[rows], _NOTHING)[:, None]
    least = np.maximum(demand * bands.thin_below - other, 0.0) / brought
    most = np.maximum(demand * bands.ample_above - other, 0.0) / brought
    low = least.max(axis=0)
    return FeedNeed(low=low, high=np.maximum(most.min(axis=0), low))


def brought_per_feed(found: LoopForecast) -> Floats:
    """Return what a gram of the loop's feed brings to the water [g/g], shape (element,).

    Raises `ValueError` when nothing is fed: there is nothing to tell it by.
    """
    fed = float(found.feed_g.sum())
    if fed <= 0.0:
        raise ValueError("nothing is fed in this loop, so what feed brings to the water is not known")
    brought: Floats = (found.dissolved_g + found.mineralised_g).sum(axis=1) / fed
    return brought
