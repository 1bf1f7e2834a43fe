"""How supply stands to demand, week by week and element by element, and the feed-rate ratio."""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import Any, Final

import numpy as np

from planner.farm.farm import DAYS_PER_WEEK
from planner.farm.site import AreaRule
from planner.farm.species import ELEMENTS
from planner.forecast.figures import BandFigures
from planner.forecast.values import Band, Floats, Ints, LoopForecast, Ruler, WeekVerdict
from planner.science.schedule import ratio_for_protein

_LEAFY = 0
_NOTHING_G = 1e-9
_NOTHING_M2 = 1e-6


@dataclass(frozen=True, slots=True, kw_only=True, eq=False)
class WeekColumns:
    """How supply stands to demand as arrays by week, elements in the order of `ELEMENTS`.

    Arrays named by element have a row each. `band` indexes `BANDS`; `limiting` is the element with the
    least supply for its demand, -1 without demand. `per_m2` [g/m²/d] is not a number where nothing is
    planted; the band of the FAO, `fao_low` to `fao_high` [g/m²/d], means nothing there.
    """

    supply_g: Floats
    demand_g: Floats
    ratio: Floats
    band: Ints
    limiting: Ints
    feed_g_per_day: Floats
    planted_m2: Floats
    per_m2: Floats
    fao_low: Floats
    fao_high: Floats


BANDS: Final = tuple(Band)
"""Bands by their numbers in `WeekColumns.band`."""


def week_columns(loop: LoopForecast, ruler: Ruler, figures: BandFigures) -> WeekColumns:
    """Return the balance of every week of a loop as arrays; quick enough for each move of a drag."""
    supply, demand = ruler.weekly_sum(loop.supply_g), ruler.weekly_sum(loop.demand_g)
    feed, planted = ruler.weekly_mean(loop.feed_g), ruler.weekly_mean(loop.planted_m2)
    area = planted.sum(axis=0)
    low, high = _mixed_bands(planted, ruler.weekly_mean(loop.protein_share), figures)
    ratio = supply_ratios(supply, demand)
    wanted = ~np.isnan(ratio)
    return WeekColumns(
        supply_g=supply,
        demand_g=demand,
        ratio=ratio,
        band=_bands(ratio, figures),
        limiting=np.where(wanted.any(axis=0), np.where(wanted, ratio, np.inf).argmin(axis=0), -1),
        feed_g_per_day=feed,
        planted_m2=area,
        per_m2=np.divide(feed, area, out=np.full_like(feed, np.nan), where=area > _NOTHING_M2),
        fao_low=low,
        fao_high=high,
    )


def _bands(ratio: Floats, figures: BandFigures) -> Ints:
    """Return the number of the band that each ratio of supply to demand falls in."""
    cases = (np.isnan(ratio), ratio < figures.short_below, ratio < figures.thin_below)
    bands = (Band.NO_DEMAND, Band.SHORT, Band.THIN)
    rest = np.where(ratio > figures.ample_above, BANDS.index(Band.AMPLE), BANDS.index(Band.MET))
    found: Ints = np.select(cases, tuple(BANDS.index(band) for band in bands), rest)
    return found


def week_verdicts(loop: LoopForecast, ruler: Ruler, figures: BandFigures) -> tuple[WeekVerdict, ...]:
    """Return the verdict of every week of a loop."""
    found = week_columns(loop, ruler, figures)
    supply, demand, feed = found.supply_g, found.demand_g, found.feed_g_per_day
    low, high = found.fao_low, found.fao_high
    columns = (
        *(supply.T, demand.T, found.ratio.T, found.band.T, found.limiting),
        *(feed, found.planted_m2, found.per_m2, low, high, feed / high, feed / low),
    )
    rows = zip(*(column.tolist() for column in columns), strict=True)
    stocks = zip(*(column.tolist() for column in _stocks(loop, ruler, supply, demand)), strict=True)
    both = enumerate(zip(rows, stocks, strict=True))
    return tuple(_verdict(week, row, stock, figures, loop.area_rule) for week, (row, stock) in both)


def supply_ratios(supply: Floats, demand: Floats) -> Floats:
    """Return supply over demand, not a number where nothing is wanted."""
    found: Floats = np.divide(supply, demand, out=np.full_like(supply, np.nan), where=demand > _NOTHING_G)
    return found


def _stocks(loop: LoopForecast, ruler: Ruler, supply: Floats, demand: Floats) -> tuple[np.ndarray, ...]:
    """Return by (week, element) what is dissolved when a week begins, and what of the demand it covers."""
    begins = slice(None, None, DAYS_PER_WEEK)
    stock = loop.pool_g[:, begins]
    covered = np.divide(supply + stock, demand, out=np.full_like(supply, np.nan), where=demand > _NOTHING_G)
    assumed, unmet = loop.pool_assumed[:, begins], ruler.weekly_sum(loop.unmet_g)
    return stock.T, loop.pool_mg_per_l[:, begins].T, assumed.T, covered.T, unmet.T


def _verdict(
    week: int, row: tuple[Any, ...], stock: tuple[Any, ...], figures: BandFigures, rule: AreaRule
) -> WeekVerdict:
    supply, demand, ratios, bands, limiting, feed, area, per_area, low, high, least_m2, most_m2 = row
    stock_g, stock_mg_per_l, stock_assumed, covered, unmet = stock
    ratio = tuple(_or_none(value) for value in ratios)
    return WeekVerdict(
        week=week,
        supply_g=tuple(supply),
        demand_g=tuple(demand),
        ratio=ratio,
        band=tuple(BANDS[band] for band in bands),
        limiting=None if limiting < 0 else limiting,
        feed_g_per_day=feed,
        planted_m2=area,
        feed_ratio_g_per_m2_d=_or_none(per_area),
        fao_band=(low, high) if area > _NOTHING_M2 else None,
        uvi_band=figures.uvi_raft,
        area_fed_m2=(least_m2, most_m2),
        stock_g=tuple(stock_g),
        stock_mg_per_l=tuple(stock_mg_per_l),
        stock_assumed=tuple(stock_assumed),
        covered_ratio=tuple(_or_none(value) for value in covered),
        unmet_g=tuple(unmet),
        rule=rule,
    )


def _or_none(value: float) -> float | None:
    return None if math.isnan(value) else value


def _mixed_bands(planted: Floats, protein_share: Floats, figures: BandFigures) -> tuple[Floats, Floats]:
    """Return the leafy and fruiting bands mixed by planted area, for the protein that is fed, by week."""
    area = planted.sum(axis=0)
    leafy = np.divide(planted[_LEAFY], area, out=np.ones_like(area), where=area > _NOTHING_M2)
    low, high = (
        ratio_for_protein(
            leafy * of_leafy + (1.0 - leafy) * of_fruiting,
            protein_share=protein_share,
            reference_protein_share=figures.reference_protein_share,
        )
        for of_leafy, of_fruiting in zip(figures.fao_leafy, figures.fao_fruiting, strict=True)
    )
    return low, high


def symbol_of(element: int) -> str:
    """Return the chemical symbol of an element by its index, such as "Ca"."""
    return ELEMENTS[element].capitalize()
