"""What the fish ask of the filter and of the air: ammonia, biofilm surface and oxygen by day.

Must not know readings, crops or what is on the shelf. Stocking density is looked at elsewhere.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from typing import Any, Final

import numpy as np

from planner.catalogue.catalogue import Catalogue
from planner.catalogue.figure import Figure
from planner.farm.fields import Id
from planner.farm.site import Bed, Filter, Loop
from planner.forecast.values import Floats, LoopForecast, Ruler
from planner.forecast.water.chemistry import Chemistry, chemistry_of
from planner.forecast.water.filters import (
    FilterArea,
    FilterFigures,
    FilterVerdict,
    filter_area,
    filter_figures,
    filter_verdict,
)
from planner.forecast.water.spans import DaySpan, Span, basis_of, by_day, figures_from, span_of
from planner.science.elements import total_ammonia_nitrogen
from planner.science.nitrification import (
    biofilter_area_m2,
    oxygen_for_nitrification,
    rate_at_temperature,
)

RATE_C: Final = (5.0, 35.0)
_OXYGEN_C: Final = (0.0, 40.0)
_ALTITUDE_M: Final = (0.0, 5000.0)
"""Ranges the formulas hold for (planner.science); beyond them the edge is taken."""
_HOURS_PER_DAY: Final = 24.0
_MG_PER_G: Final = 1000.0
_NOTHING_M2: Final = 1e-9


_PATHS: Final = {
    "ammonia_per_protein": "coefficient/feed_split/tan_share_of_feed_protein",
    "rate_g_per_m2_day": "coefficient/nitrification/biofilm_rate_n_g_per_m2_day",
    "rate_holds_at_c": "coefficient/water_care/biofilter_design_c",
    "change_ammonia_limits": "coefficient/nitrification/biofilm_change_per_c_ammonia_limited",
    "change_oxygen_limits": "coefficient/nitrification/biofilm_change_per_c_oxygen_limited",
    "change_reference_c": "coefficient/nitrification/biofilm_reference_c",
    "oxygen_per_nitrogen": "coefficient/nitrification/oxygen_per_nitrogen_nitrified",
    "oxygen_per_feed": "coefficient/water/oxygen_per_feed",
    "oxygen_peak_factor": "coefficient/water_care/oxygen_peak_factor",
}


@dataclass(frozen=True, slots=True, kw_only=True)
class LoadFigures:
    """The rows that filter and oxygen go by."""

    ammonia_per_protein: Figure
    rate_g_per_m2_day: Figure
    rate_holds_at_c: Figure
    change_ammonia_limits: Figure
    change_oxygen_limits: Figure
    change_reference_c: Figure
    oxygen_per_nitrogen: Figure
    oxygen_per_feed: Figure
    oxygen_peak_factor: Figure


def load_figures(catalogue: Catalogue) -> LoadFigures:
    """Return the rows as the catalogue has them."""
    return figures_from(catalogue, LoadFigures, _PATHS)


@dataclass(frozen=True, slots=True, kw_only=True, eq=False)
class LoadForecast:
    """Ammonia, filter and oxygen of a loop by day.

    `tan_g` [g N/d]; `rate_g_per_m2_day` of biofilm at the water temperature; `need_m2`; oxygen [g/d] for
    fish and for nitrification, [g/h] as the mean hour and the hour after feeding, `hourly_mg_per_l` the
    mean hour spread over the loop's water; `saturation_mg_per_l` None when water temperatures are not
    known (`water_c` None: rates are then taken as printed).
    """

    loop: Id
    tan_g: DaySpan
    rate_g_per_m2_day: DaySpan
    need_m2: DaySpan
    area: FilterArea
    fish_oxygen_g: DaySpan
    nitrification_oxygen_g: DaySpan
    hourly_oxygen_g: DaySpan
    peak_oxygen_g: DaySpan
    hourly_mg_per_l: DaySpan
    water_c: Floats | None
    saturation_mg_per_l: Floats | None
    basis: tuple[Figure, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class WeekLoad:
    """One week of a `LoadForecast`, means by day.

    `ratio` is filter surface over likely need, None when either is missing; `with_gravel` is the verdict
    when the gravel's likely surface counts too; `covers_high_need` holds for the most that may be needed.
    """

    week: int
    tan_g_per_day: Span
    need_m2: Span
    area_m2: float | None
    ratio: float | None
    verdict: FilterVerdict
    with_gravel: FilterVerdict
    covers_high_need: bool
    fish_oxygen_g_per_day: Span
    nitrification_oxygen_g_per_day: Span
    hourly_oxygen_g: Span
    peak_oxygen_g_per_h: Span
    hourly_mg_per_l: Span
    water_c: float | None
    saturation_mg_per_l: float | None


def ammonia_load(loop: LoopForecast, figures: LoadFigures) -> DaySpan:
    """Return total ammonia nitrogen given off by fish [g N/d] (source: ksu2021)."""
    low, likely, high = (
        total_ammonia_nitrogen(loop.feed_g, protein_share=loop.protein_share, nitrogen_factor=factor)
        for factor in _three(figures.ammonia_per_protein)
    )
    return DaySpan(low=low, likely=likely, high=high)


def biofilm_rate_by_day(water_c: Floats | None, *, days: int, figures: LoadFigures) -> DaySpan:
    """Return what a square metre of biofilm removes [g N/m²/d] at the water temperature.

    The likely rate changes as where ammonia limits; the range takes in both ways and the range of
    temperatures the printed rate may be meant for (source: zhuchen2002, shnel2002).
    """
    printed = span_of(figures.rate_g_per_m2_day)
    if water_c is None:
        return by_day(np.ones(days), printed)
    warmth = np.clip(water_c, *RATE_C)
    changes = (figures.change_ammonia_limits.value, figures.change_oxygen_limits.value)
    holds_at = _three(figures.rate_holds_at_c)
    ways = np.stack([_change(warmth, figures, per_c, at) for per_c in changes for at in holds_at])
    likely = _change(warmth, figures, changes[0], figures.rate_holds_at_c.value)
    return DaySpan(
        low=printed.low * ways.min(axis=0),
        likely=printed.likely * likely,
        high=printed.high * ways.max(axis=0),
    )


def _change(warmth: Floats, figures: LoadFigures, per_c: float, holds_at_c: float) -> Floats:
    """Return the rate at a temperature over the rate at the temperature the printed one holds for."""
    line = {"reference_c": figures.change_reference_c.value, "change_per_c": per_c}
    printed = rate_at_temperature(1.0, temperature_c=holds_at_c, **line)
    return rate_at_temperature(np.ones_like(warmth), temperature_c=warmth, **line) / printed


def needed_area(tan_g: DaySpan, rate: DaySpan) -> DaySpan:
    """Return the biofilm surface an ammonia load needs [m²]; most load with least rate for the high."""
    return DaySpan(
        low=biofilter_area_m2(tan_g.low, areal_rate_g_per_m2_day=rate.high),
        likely=biofilter_area_m2(tan_g.likely, areal_rate_g_per_m2_day=rate.likely),
        high=biofilter_area_m2(tan_g.high, areal_rate_g_per_m2_day=rate.low),
    )


def load_forecast(
    found: LoopForecast,
    *,
    loop: Loop,
    altitude_m: float,
    filters: Sequence[Filter],
    beds: Sequence[Bed],
    ruler: Ruler,
    catalogue: Catalogue,
) -> LoadForecast:
    """Return ammonia, filter and oxygen of a loop by day."""
    figures, surfaces = load_figures(catalogue), filter_figures(catalogue)
    chemistry = chemistry_of(catalogue)
    water_c = found.water_c
    tan_g = ammonia_load(found, figures)
    rate = biofilm_rate_by_day(water_c, days=ruler.days, figures=figures)
    fish = by_day(found.feed_g, span_of(figures.oxygen_per_feed))
    nitrifiers = _nitrification_oxygen(tan_g, figures)
    hourly = fish.plus(nitrifiers).times(1.0 / _HOURS_PER_DAY)
    return LoadForecast(
        loop=loop.id,
        tan_g=tan_g,
        rate_g_per_m2_day=rate,
        need_m2=needed_area(tan_g, rate),
        area=filter_area(loop.id, filters=filters, beds=beds, figures=surfaces),
        fish_oxygen_g=fish,
        nitrification_oxygen_g=nitrifiers,
        hourly_oxygen_g=hourly,
        peak_oxygen_g=_peak(hourly, figures),
        hourly_mg_per_l=hourly.times(_MG_PER_G / loop.water_l),
        water_c=water_c,
        saturation_mg_per_l=_saturation(water_c, altitude_m, chemistry),
        basis=(
            *basis_of(figures),
            *basis_of(surfaces),
            *chemistry.of("oxygen_temperature_", "oxygen_salinity_", "vapour_", "pressure_", "sea_level_"),
        ),
    )


def _three(figure: Figure) -> tuple[float, float, float]:
    return figure.low, figure.value, figure.high


def _nitrification_oxygen(tan_g: DaySpan, figures: LoadFigures) -> DaySpan:
    """Return oxygen that nitrifiers take [g/d] (source: ebeling2006)."""
    low, likely, high = (
        oxygen_for_nitrification(nitrogen, oxygen_per_nitrogen=per)
        for nitrogen, per in zip(
            (tan_g.low, tan_g.likely, tan_g.high), _three(figures.oxygen_per_nitrogen), strict=True
        )
    )
    return DaySpan(low=low, likely=likely, high=high)


def _peak(hourly: DaySpan, figures: LoadFigures) -> DaySpan:
    low, likely, high = _three(figures.oxygen_peak_factor)
    return DaySpan(low=hourly.low * low, likely=hourly.likely * likely, high=hourly.high * high)


def _saturation(water_c: Floats | None, altitude_m: float, chemistry: Chemistry) -> Floats | None:
    if water_c is None:
        return None
    altitude = min(max(altitude_m, _ALTITUDE_M[0]), _ALTITUDE_M[1])
    return chemistry.oxygen_saturation(np.clip(water_c, *_OXYGEN_C), altitude_m=altitude)


def week_loads(load: LoadForecast, *, ruler: Ruler, figures: FilterFigures) -> tuple[WeekLoad, ...]:
    """Return the load of every week against the filter."""
    names = {
        "tan_g_per_day": load.tan_g,
        "need_m2": load.need_m2,
        "fish_oxygen_g_per_day": load.fish_oxygen_g,
        "nitrification_oxygen_g_per_day": load.nitrification_oxygen_g,
        "hourly_oxygen_g": load.hourly_oxygen_g,
        "peak_oxygen_g_per_h": load.peak_oxygen_g,
        "hourly_mg_per_l": load.hourly_mg_per_l,
    }
    means = {name: values.weekly_mean(ruler) for name, values in names.items()}
    warmth, saturation = (_week_means(values, ruler) for values in (load.water_c, load.saturation_mg_per_l))
    return tuple(
        WeekLoad(
            week=week,
            **_one_week(means, week),
            **_standing(load.area, means["need_m2"][week], figures),
            water_c=warmth[week],
            saturation_mg_per_l=saturation[week],
        )
        for week in range(ruler.weeks)
    )


def _one_week(means: Mapping[str, tuple[Span, ...]], week: int) -> dict[str, Any]:
    return {name: spans[week] for name, spans in means.items()}


def _week_means(values: Floats | None, ruler: Ruler) -> list[float | None]:
    if values is None:
        return [None] * ruler.weeks
    return [float(value) for value in ruler.weekly_mean(values)]


def _standing(area: FilterArea, need: Span, figures: FilterFigures) -> dict[str, Any]:
    """Return the fields of a `WeekLoad` that hold the surface against the need."""
    known = area.known_m2
    all_m2 = (known or 0.0) + area.gravel_m2.likely
    has_any = known is not None or area.gravel_m2.likely > 0.0
    return {
        "area_m2": known,
        "ratio": known / need.likely if known is not None and need.likely > _NOTHING_M2 else None,
        "verdict": filter_verdict(known, need_m2=need.likely, figures=figures),
        "with_gravel": filter_verdict(all_m2 if has_any else None, need_m2=need.likely, figures=figures),
        "covers_high_need": known is not None and known >= need.high,
    }
