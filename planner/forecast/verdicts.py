"""How supply stands to demand, week by week and element by element, and the feed-rate ratio."""

from __future__ import annotations

from planner.farm.species import ELEMENTS
from planner.forecast.figures import BandFigures
from planner.forecast.values import Band, LoopForecast, Ruler, WeekVerdict
from planner.science.schedule import area_for_feed_m2, feed_rate_ratio, ratio_for_protein

_LEAFY, _FRUITING = 0, 1
_NOTHING_G = 1e-9
_NOTHING_M2 = 1e-6


def week_verdicts(loop: LoopForecast, ruler: Ruler, figures: BandFigures) -> tuple[WeekVerdict, ...]:
    """Return the verdict of every week of a loop."""
    supply = ruler.weekly_sum(loop.supply_g)
    demand = ruler.weekly_sum(loop.demand_g)
    feed = ruler.weekly_mean(loop.feed_g)
    planted = ruler.weekly_mean(loop.planted_m2)
    protein = ruler.weekly_mean(loop.protein_share)
    return tuple(
        _verdict(
            week,
            supply=tuple(float(value) for value in supply[:, week]),
            demand=tuple(float(value) for value in demand[:, week]),
            feed_g_per_day=float(feed[week]),
            planted=(float(planted[_LEAFY, week]), float(planted[_FRUITING, week])),
            protein_share=float(protein[week]),
            figures=figures,
        )
        for week in range(ruler.weeks)
    )


def _verdict(
    week: int,
    *,
    supply: tuple[float, ...],
    demand: tuple[float, ...],
    feed_g_per_day: float,
    planted: tuple[float, float],
    protein_share: float,
    figures: BandFigures,
) -> WeekVerdict:
    ratio = tuple(
        given / wanted if wanted > _NOTHING_G else None for given, wanted in zip(supply, demand, strict=True)
    )
    area = sum(planted)
    fao = _mixed_band(planted, protein_share, figures)
    return WeekVerdict(
        week=week,
        supply_g=supply,
        demand_g=demand,
        ratio=ratio,
        band=tuple(band_of(value, figures) for value in ratio),
        limiting=limiting_element(ratio),
        feed_g_per_day=feed_g_per_day,
        planted_m2=area,
        feed_ratio_g_per_m2_d=feed_rate_ratio(feed_g_per_day, area_m2=area) if area > _NOTHING_M2 else None,
        fao_band=fao if area > _NOTHING_M2 else None,
        uvi_band=figures.uvi_raft,
        area_fed_m2=_area_fed(feed_g_per_day, fao),
    )


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


def _mixed_band(
    planted: tuple[float, float], protein_share: float, figures: BandFigures
) -> tuple[float, float]:
    """Return the leafy and fruiting bands mixed by planted area, for the protein that is fed."""
    area = sum(planted)
    leafy = planted[_LEAFY] / area if area > _NOTHING_M2 else 1.0
    low, high = (
        ratio_for_protein(
            leafy * of_leafy + (1.0 - leafy) * of_fruiting,
            protein_share=protein_share,
            reference_protein_share=figures.reference_protein_share,
        )
        for of_leafy, of_fruiting in zip(figures.fao_leafy, figures.fao_fruiting, strict=True)
    )
    return low, high


def _area_fed(feed_g_per_day: float, band: tuple[float, float]) -> tuple[float, float]:
    """Return the least and the most area [m²] that a feed carries within a band."""
    low, high = band
    return (
        area_for_feed_m2(feed_g_per_day, ratio_g_per_m2_day=high),
        area_for_feed_m2(feed_g_per_day, ratio_g_per_m2_day=low),
    )


def symbol_of(element: int) -> str:
    """Return the chemical symbol of an element by its index, such as "Ca"."""
    return ELEMENTS[element].capitalize()
