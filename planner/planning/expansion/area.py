"""The largest extra area that the fish of a loop can feed, month by month.

An area x of leafy or fruiting crops is carried as long as feed is not below the low end (or, to be careful,
the high end) of the band that the loop goes by, for everything planted: feed · protein / reference ≥ Σ area ·
ratio, so x follows without search. UVI's band is one for all crops on rafts and names no protein.
"""

from __future__ import annotations

from itertools import groupby
from typing import Final

import numpy as np

from planner.farm.species import CropGroup
from planner.forecast.figures import BandFigures
from planner.forecast.values import Floats, LoopForecast, Ruler
from planner.planning.expansion.verdicts import MonthArea

_LEAFY: Final = 0
_FRUITING: Final = 1
_MIDDLE_DAY: Final = 3


def extra_area_by_week(
    found: LoopForecast, ruler: Ruler, bands: BandFigures, *, group: CropGroup, high_end: bool
) -> Floats:
    """Return the largest extra area of a group of crops [m²] by week; 0 where the feed carries none.

    At the high end of the band each m² takes most feed, so least area is carried (source: fao589).
    """
    ratios = _ratios(found, bands, high_end=high_end)
    extra: Floats = np.maximum(_spare_g(found, ruler, bands, ratios) / ratios[_row(group)], 0.0)
    return extra


def feed_lacking_by_week(
    area_m2: float, found: LoopForecast, ruler: Ruler, bands: BandFigures, *, group: CropGroup
) -> Floats:
    """Return the feed [g/d] by week that is missing to carry an extra area at the low end of its band."""
    ratios = _ratios(found, bands, high_end=False)
    missing = area_m2 * ratios[_row(group)] - _spare_g(found, ruler, bands, ratios)
    protein = bands.protein_ratio(found.area_rule, ruler.weekly_mean(found.protein_share))
    lacking: Floats = np.maximum(missing, 0.0) / protein
    return lacking


def feed_of_area_g(area_m2: float, found: LoopForecast, bands: BandFigures, group: CropGroup) -> float:
    """Return the feed that an area takes at the low end of its band, at the mean protein given [g/d]."""
    protein = float(bands.protein_ratio(found.area_rule, found.protein_share.mean()))
    return area_m2 * _ratios(found, bands, high_end=False)[_row(group)] / protein


def _row(group: CropGroup) -> int:
    return _LEAFY if group is CropGroup.LEAFY else _FRUITING


def _ratios(found: LoopForecast, bands: BandFigures, *, high_end: bool) -> tuple[float, float]:
    leafy, fruiting = bands.of_rule(found.area_rule)
    end = 1 if high_end else 0
    return leafy[end], fruiting[end]


def _spare_g(found: LoopForecast, ruler: Ruler, bands: BandFigures, ratios: tuple[float, float]) -> Floats:
    """Return the feed beyond what is planted [g/d] by week, at the bands' own protein; may be negative."""
    planted = ruler.weekly_mean(found.planted_m2)
    protein = bands.protein_ratio(found.area_rule, ruler.weekly_mean(found.protein_share))
    asked = planted[_LEAFY] * ratios[_LEAFY] + planted[_FRUITING] * ratios[_FRUITING]
    spare: Floats = ruler.weekly_mean(found.feed_g) * protein - asked
    return spare


def extra_area_by_month(
    found: LoopForecast, ruler: Ruler, bands: BandFigures, *, group: CropGroup
) -> tuple[MonthArea, ...]:
    """Return the largest extra area that every week of a month carries; a week belongs to its middle day."""
    careful, most = (
        extra_area_by_week(found, ruler, bands, group=group, high_end=end) for end in (True, False)
    )
    months = []
    for (year, month), weeks in groupby(range(ruler.weeks), key=lambda week: month_of_week(ruler, week)):
        inside = list(weeks)
        months.append(
            MonthArea(
                year=year,
                month=month,
                cautious_m2=float(careful[inside].min()),
                most_m2=float(most[inside].min()),
            )
        )
    return tuple(months)


def month_of_week(ruler: Ruler, week: int) -> tuple[int, int]:
    """Return year and month of the middle day of a week."""
    middle = ruler.date_of(ruler.day_of(ruler.week_start(week)) + _MIDDLE_DAY)
    return middle.year, middle.month
