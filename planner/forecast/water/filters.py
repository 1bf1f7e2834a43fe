"""Biofilm surface: what filters and gravel offer, how it stands to what is needed, the manual's own sum.

Must not know feed by day, readings or what is on the shelf.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from enum import Enum
from typing import Final

from planner.catalogue.catalogue import Catalogue
from planner.catalogue.figure import Figure
from planner.farm.fields import Id
from planner.farm.site import Bed, Filter, FilterKind
from planner.farm.species import BedKind
from planner.forecast.water.spans import Span, basis_of, exactly, figures_from, span_of
from planner.science.elements import ammonia_nitrogen_by_shares, ammonia_share_of_feed_nitrogen
from planner.science.nitrification import biofilter_area_m2, media_volume_l

_CM_PER_M: Final = 100.0
_NOTHING_M2: Final = 1e-9
BIOLOGICAL: Final = (FilterKind.STATIC, FilterKind.MOVING_BED, FilterKind.TRICKLING)
"""Kinds of filters whose surface nitrifies."""

_PATHS: Final = {
    "short_below": "coefficient/water_care/filter_short_below",
    "ample_above": "coefficient/water_care/filter_ample_above",
    "gravel_m2_per_m3": "coefficient/nitrification/surface_gravel_20_mm",
    "gravel_depth_cm": "coefficient/water_care/gravel_depth_cm",
    "gravel_active_share": "coefficient/water_care/gravel_active_share",
}
_MANUAL_PATHS: Final = {
    "protein_per_nitrogen": "coefficient/feed_split/protein_per_nitrogen",
    "excreted_share": "coefficient/feed_split/feed_nitrogen_excreted_share",
    "solids_share": "element/n/solids_share",
    "captured_share": "loop/solids_captured_share",
    "ammonia_per_nitrogen": "coefficient/feed_split/ammonia_per_nitrogen",
    "rate_nh3_g_per_m2_day": "coefficient/nitrification/biofilm_rate_nh3_g_per_m2_day",
    "tuff_m2_per_m3": "coefficient/nitrification/surface_volcanic_gravel",
}


@dataclass(frozen=True, slots=True, kw_only=True)
class FilterFigures:
    """The rows that filter surfaces go by."""

    short_below: Figure
    ample_above: Figure
    gravel_m2_per_m3: Figure
    gravel_depth_cm: Figure
    gravel_active_share: Figure


def filter_figures(catalogue: Catalogue) -> FilterFigures:
    """Return the rows as the catalogue has them."""
    return figures_from(catalogue, FilterFigures, _PATHS)


class FilterVerdict(Enum):
    """How a filter surface stands to the surface that is needed."""

    UNKNOWN = "unknown"
    NO_LOAD = "no load"
    SHORT = "short"
    TIGHT = "tight"
    ENOUGH = "enough"


@dataclass(frozen=True, slots=True, kw_only=True)
class FilterArea:
    """Biofilm surface of a loop [m²].

    `known_m2` is None when no biological filter has a surface entered; `without_area` names those that
    have none. `gravel_m2` is the bonus of media beds; `assumed_depth` says that a depth was assumed.
    """

    known_m2: float | None
    without_area: tuple[Id, ...]
    gravel_m2: Span
    assumed_depth: bool


def filter_area(
    loop: Id, *, filters: Sequence[Filter], beds: Sequence[Bed], figures: FilterFigures
) -> FilterArea:
    """Return the biofilm surface of a loop's filters, and of its gravel as a bonus."""
    biological = [each for each in filters if each.loop == loop and each.kind in BIOLOGICAL]
    known = [each.media_area_m2 for each in biological if each.media_area_m2 is not None]
    media = [bed for bed in beds if bed.loop == loop and bed.kind is BedKind.MEDIA]
    gravel = exactly(0.0)
    for bed in media:
        gravel = gravel.plus(_gravel_area(bed, figures))
    return FilterArea(
        known_m2=sum(known) if known else None,
        without_area=tuple(each.id for each in biological if each.media_area_m2 is None),
        gravel_m2=gravel,
        assumed_depth=any(bed.depth_cm is None for bed in media),
    )


def _gravel_area(bed: Bed, figures: FilterFigures) -> Span:
    """Return the working surface of a media bed's gravel [m²]."""
    depth = exactly(bed.depth_cm) if bed.depth_cm is not None else span_of(figures.gravel_depth_cm)
    surface, active = span_of(figures.gravel_m2_per_m3), span_of(figures.gravel_active_share)
    square = bed.area_m2 / _CM_PER_M
    return Span(
        low=square * depth.low * surface.low * active.low,
        likely=square * depth.likely * surface.likely * active.likely,
        high=square * depth.high * surface.high * active.high,
    )


def filter_verdict(area_m2: float | None, *, need_m2: float, figures: FilterFigures) -> FilterVerdict:
    """Return how a surface stands to a need."""
    if area_m2 is None:
        return FilterVerdict.UNKNOWN
    if need_m2 <= _NOTHING_M2:
        return FilterVerdict.NO_LOAD
    if area_m2 < need_m2 * figures.short_below.value:
        return FilterVerdict.SHORT
    return FilterVerdict.TIGHT if area_m2 < need_m2 * figures.ample_above.value else FilterVerdict.ENOUGH


@dataclass(frozen=True, slots=True, kw_only=True)
class ManualFilter:
    """The manual's own sum for a day's feed, to hold against: nitrogen, ammonia, surface, litres of tuff."""

    nitrogen_g: float
    ammonia_g: float
    area_m2: float
    tuff_l: float
    basis: tuple[Figure, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class _ManualFigures:
    protein_per_nitrogen: Figure
    excreted_share: Figure
    solids_share: Figure
    captured_share: Figure
    ammonia_per_nitrogen: Figure
    rate_nh3_g_per_m2_day: Figure
    tuff_m2_per_m3: Figure


def manual_filter(feed_g_per_day: float, *, protein_share: float, catalogue: Catalogue) -> ManualFilter:
    """Return the sum of the manual for small units: excreted plus solids left behind (source: fao589)."""
    rows = figures_from(catalogue, _ManualFigures, _MANUAL_PATHS)
    share = ammonia_share_of_feed_nitrogen(
        excreted_share=rows.excreted_share.value,
        solids_share=rows.solids_share.value,
        solids_removed_share=rows.captured_share.value,
    )
    nitrogen = ammonia_nitrogen_by_shares(
        feed_g_per_day,
        protein_share=protein_share,
        protein_per_nitrogen=rows.protein_per_nitrogen.value,
        ammonia_share=share,
    )
    ammonia = nitrogen * rows.ammonia_per_nitrogen.value
    area = biofilter_area_m2(ammonia, areal_rate_g_per_m2_day=rows.rate_nh3_g_per_m2_day.value)
    return ManualFilter(
        nitrogen_g=nitrogen,
        ammonia_g=ammonia,
        area_m2=area,
        tuff_l=media_volume_l(area, surface_m2_per_m3=rows.tuff_m2_per_m3.value),
        basis=basis_of(rows),
    )
