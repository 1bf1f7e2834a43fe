"""How supply stands to demand, week by week and element by element, and the feed-rate ratio."""

from __future__ import annotations

import math
from typing import Any

import numpy as np

from planner.farm.farm import DAYS_PER_WEEK
from planner.farm.species import ELEMENTS
from planner.forecast.figures import BandFigures
from planner.forecast.values import Band, Floats, LoopForecast, Ruler, WeekVerdict
from planner.science.schedule import ratio_for_protein

_LEAFY = 0
_NOTHING_G = 1e-9
_NOTHING_M2 = 1e-6


def week_verdicts(loop: LoopForecast, ruler: Ruler, figures: BandFigures) -> tuple[WeekVerdict, ...]:
    """Return the verdict of every week of a loop."""
    supply, demand = ruler.weekly_sum(loop.supply_g), ruler.weekly_sum(loop.demand_g)
    feed, planted = ruler.weekly_mean(loop.feed_g), ruler.weekly_mean(loop.planted_m2)
    area = planted.sum(axis=0)
    low, high = _mixed_bands(planted, ruler.weekly_mean(loop.protein_share), figures)
    ratios = supply_ratios(supply, demand)
    per_area = np.divide(feed, area, out=np.full_like(feed, np.nan), where=area > _NOTHING_M2)
    columns = (supply.T, demand.T, ratios.T, feed, area, per_area, low, high, feed / high, feed / low)
    rows = zip(*(column.tolist() for column in columns), strict=True)
    stocks = zip(*(column.tolist() for column in _stocks(loop, ruler, supply, demand)), strict=True)
    both = enumerate(zip(rows, stocks, strict=True))
    return tuple(_verdict(week, row, stock, figures) for week, (row, stock) in both)


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


def _verdict(week: int, row: tuple[Any, ...], stock: tuple[Any, ...], figures: BandFigures) -> WeekVerdict:
    supply, demand, ratios, feed, area, per_area, low, high, least_m2, most_m2 = row
    stock_g, stock_mg_per_l, stock_assumed, covered, unmet = stock
    ratio = tuple(_or_none(value) for value in ratios)
    return WeekVerdict(
        week=week,
        supply_g=tuple(supply),
        demand_g=tuple(demand),
        ratio=ratio,
        band=tuple(band_of(value, figures) for value in ratio),
        limiting=limiting_element(ratio),
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


def band_of(ratio: float | None, figures: BandFigures) -> Band:
    """Return the band a ratio of supply to demand falls in."""
    if ratio is None:
        return Band.NO_DEMAND
    if ratio < figures.short_below:
        return Band.SHORT
    if ratio < figures.thin_below:
        return Band.THIN
    return Band.AMPLE if ratio > figures.ample_above else Band.MET


def limiting_element(ratio: tuple[float | None, ...]) -> int | None:
    """Return the index of the element with the least supply for its demand, None without demand."""
    wanted = [(value, index) for index, value in enumerate(ratio) if value is not None]
    return min(wanted)[1] if wanted else None


def symbol_of(element: int) -> str:
    """Return the chemical symbol of an element by its index, such as "Ca"."""
    return ELEMENTS[element].capitalize()
