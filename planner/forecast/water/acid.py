"""How much acid the loop makes, what gives it back, and how fast alkalinity falls.

Nitrifying ammonia makes acid; the ammonia itself, plants that take nitrate and denitrification give
base back. What is left is a small difference of large amounts, so it is a range, held against what was
published for whole loops. Must not know readings or what is on the shelf.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from enum import Enum
from typing import Final

import numpy as np

from planner.catalogue.catalogue import Catalogue
from planner.catalogue.figure import Figure
from planner.farm.farm import DAYS_PER_WEEK
from planner.farm.fields import Id
from planner.farm.site import Loop
from planner.farm.species import Supplement
from planner.farm.water import Dose
from planner.forecast.supply import dose_days, nitrogen_row
from planner.forecast.values import Floats, LoopForecast, Ruler
from planner.forecast.water.chemistry import chemistry_of
from planner.forecast.water.load import ammonia_load, load_figures
from planner.forecast.water.spans import DaySpan, Span, basis_of, by_day, figures_from, span_of
from planner.science.nitrification import net_acid_eq

_G_PER_KG: Final = 1000.0
_MG_PER_G: Final = 1000.0

_PATHS: Final = {
    "acid_eq_per_mol": "coefficient/water_care/acid_eq_per_mol_nitrified",
    "excretion_eq_per_mol": "coefficient/water_care/excretion_base_eq_per_mol",
    "plant_eq_per_mol": "coefficient/water_care/plant_base_eq_per_mol",
    "gas_eq_per_mol": "coefficient/water_care/gas_base_eq_per_mol",
    "gas_share": "element/n/gas_loss_share",
    "published_eq_per_kg": "coefficient/nitrification/net_acid_eq_per_kg_feed",
    "without_plants_eq_per_kg": "coefficient/nitrification/acid_eq_per_kg_feed_without_plants",
}


@dataclass(frozen=True, slots=True, kw_only=True)
class AcidFigures:
    """The rows that acid goes by."""

    acid_eq_per_mol: Figure
    excretion_eq_per_mol: Figure
    plant_eq_per_mol: Figure
    gas_eq_per_mol: Figure
    gas_share: Figure
    published_eq_per_kg: Figure
    without_plants_eq_per_kg: Figure


def acid_figures(catalogue: Catalogue) -> AcidFigures:
    """Return the rows as the catalogue has them."""
    return figures_from(catalogue, AcidFigures, _PATHS)


class Agreement(Enum):
    """How the balance of acid stands to what was published."""

    WITHIN = "within"
    BELOW = "below"
    ABOVE = "above"


@dataclass(frozen=True, slots=True, kw_only=True, eq=False)
class AcidForecast:
    """Acid and base of a loop by day [eq/d].

    `nitrification_eq` is made; `excretion_eq`, `plants_eq` and `gas_eq` give back; `net_eq` is what is
    left of them, never below 0. `published_eq` is feed times the published net figure. `planned_eq` is
    what base is planned for: likely as published (or as the loop's own log says), its low and high
    wide enough to hold both. `own` says that the loop's own figure was used.
    """

    loop: Id
    water_l: float
    feed_g: Floats
    nitrification_eq: DaySpan
    excretion_eq: DaySpan
    plants_eq: DaySpan
    gas_eq: DaySpan
    net_eq: DaySpan
    published_eq: DaySpan
    planned_eq: DaySpan
    own: bool
    caco3_g_per_eq: float
    basis: tuple[Figure, ...]

    @property
    def fall_mg_per_l_per_day(self) -> DaySpan:
        """Alkalinity that the planned acid takes a day [mg CaCO3/L], with no base given."""
        return self.planned_eq.times(self.caco3_g_per_eq * _MG_PER_G / self.water_l)


@dataclass(frozen=True, slots=True, kw_only=True)
class WeekAcid:
    """One week of an `AcidForecast` [eq/week]; `drift_mg_per_l` of alkalinity is negative or 0."""

    week: int
    net_eq: Span
    published_eq: Span
    planned_eq: Span
    drift_mg_per_l: Span
    agreement: Agreement


def acid_forecast(
    found: LoopForecast,
    *,
    water_l: float,
    catalogue: Catalogue,
    plant_n_g: Floats | None = None,
    own_eq_per_kg_feed: Span | None = None,
) -> AcidForecast:
    """Return the acid of a loop by day (source: ebeling2006, srac454).

    plant_n_g [g/d] is nitrogen that plants really take; without it demand as far as supply goes.
    own_eq_per_kg_feed [eq/kg] is the loop's own net acid from its log; it replaces the published figure.
    """
    figures, chemistry = acid_figures(catalogue), chemistry_of(catalogue)
    loads = load_figures(catalogue)
    per_g = 1.0 / chemistry.nitrogen_g_per_mol
    tan_g = ammonia_load(found, loads)
    taken = _taken(found) if plant_n_g is None else plant_n_g
    plants = by_day(taken * per_g, span_of(figures.plant_eq_per_mol))
    gas = _gas_eq(found, figures, per_g)
    published = _per_feed(found.feed_g, own_eq_per_kg_feed or span_of(figures.published_eq_per_kg))
    net = _net(tan_g.times(per_g), figures, plants, gas)
    return AcidForecast(
        loop=found.loop,
        water_l=water_l,
        feed_g=found.feed_g,
        nitrification_eq=_product(tan_g.times(per_g), figures.acid_eq_per_mol),
        excretion_eq=_product(tan_g.times(per_g), figures.excretion_eq_per_mol),
        plants_eq=plants,
        gas_eq=gas,
        net_eq=net,
        published_eq=published,
        planned_eq=_planned(net, published, own=own_eq_per_kg_feed is not None),
        own=own_eq_per_kg_feed is not None,
        caco3_g_per_eq=chemistry.caco3_g_per_eq,
        basis=(*basis_of(figures), loads.ammonia_per_protein),
    )


def _taken(found: LoopForecast) -> Floats:
    """Return nitrogen that plants take [g/d] when only what comes in that day is there."""
    return np.minimum(nitrogen_row(found.demand_g), nitrogen_row(found.supply_g))


def _product(values: DaySpan, figure: Figure) -> DaySpan:
    return DaySpan(
        low=values.low * figure.low, likely=values.likely * figure.value, high=values.high * figure.high
    )


def _per_feed(feed_g: Floats, per_kg: Span) -> DaySpan:
    low, likely, high = (
        net_acid_eq(feed_g / _G_PER_KG, acid_eq_per_kg_feed=max(each, 0.0))
        for each in (per_kg.low, per_kg.likely, per_kg.high)
    )
    return DaySpan(low=low, likely=likely, high=high)


def _against(share: float, figures: AcidFigures) -> float:
    """Return a bound of the share lost as gas over its likely value."""
    return share / figures.gas_share.value


def _gas_eq(found: LoopForecast, figures: AcidFigures, per_g: float) -> DaySpan:
    """Return base that denitrification gives back; its range never passes the dissolved nitrogen."""
    gas = nitrogen_row(found.gas_g)
    there = gas + nitrogen_row(found.dissolved_g)
    low, high = (
        gas * _against(figures.gas_share.low, figures),
        gas * _against(figures.gas_share.high, figures),
    )
    high = np.maximum(np.minimum(high, there), gas)
    return _product(DaySpan(low=low, likely=gas, high=high).times(per_g), figures.gas_eq_per_mol)


def _net(ammonia_mol: DaySpan, figures: AcidFigures, plants: DaySpan, gas: DaySpan) -> DaySpan:
    """Return acid that nothing gives back: least made with most given back for the low."""
    made = span_of(figures.acid_eq_per_mol).minus(span_of(figures.excretion_eq_per_mol)).at_least(0.0)
    return DaySpan(
        low=np.maximum(ammonia_mol.low * made.low - plants.high - gas.high, 0.0),
        likely=np.maximum(ammonia_mol.likely * made.likely - plants.likely - gas.likely, 0.0),
        high=np.maximum(ammonia_mol.high * made.high - plants.low - gas.low, 0.0),
    )


def _planned(net: DaySpan, published: DaySpan, *, own: bool) -> DaySpan:
    """Return what base is planned for; the loop's own log needs no second opinion."""
    if own:
        return published
    return DaySpan(
        low=np.minimum(net.low, published.low),
        likely=published.likely,
        high=np.maximum(net.high, published.high),
    )


def week_acids(acid: AcidForecast, ruler: Ruler) -> tuple[WeekAcid, ...]:
    """Return acid and the fall of alkalinity week by week."""
    net, published, planned, fall = (
        values.weekly_mean(ruler)
        for values in (acid.net_eq, acid.published_eq, acid.planned_eq, acid.fall_mg_per_l_per_day)
    )
    return tuple(
        WeekAcid(
            week=week,
            net_eq=net[week].times(DAYS_PER_WEEK),
            published_eq=published[week].times(DAYS_PER_WEEK),
            planned_eq=planned[week].times(DAYS_PER_WEEK),
            drift_mg_per_l=fall[week].times(-DAYS_PER_WEEK),
            agreement=_agreement(net[week].likely, published[week]),
        )
        for week in range(ruler.weeks)
    )


def _agreement(net: float, published: Span) -> Agreement:
    if net < published.low:
        return Agreement.BELOW
    return Agreement.ABOVE if net > published.high else Agreement.WITHIN


def base_eq_by_day(
    doses: Iterable[Dose], *, loop: Id, supplements: Mapping[str, Supplement], ruler: Ruler
) -> Floats:
    """Return the base that the doses of a loop bring on their days [eq/d], shape (day,)."""
    given = np.zeros(ruler.days)
    for dose in doses:
        if dose.loop == loop:
            equivalents = supplements[dose.supplement].base_eq_per_kg * dose.grams / _G_PER_KG
            for day in dose_days(dose, ruler):
                given[day] += equivalents
    return given


def top_up_eq_per_day(loop: Loop, *, caco3_g_per_eq: float, catalogue: Catalogue) -> float:
    """Return the base that make-up water brings [eq/d]; nothing where its alkalinity is not known.

    Without a volume of its own a loop is topped up by the usual share of its water.
    """
    if loop.top_up_alkalinity_mg_per_l is None:
        return 0.0
    litres = loop.top_up_l_per_day
    if litres is None:
        litres = loop.water_l * catalogue.figure("loop/top_up_share_per_day").value
    return litres * loop.top_up_alkalinity_mg_per_l / _MG_PER_G / caco3_g_per_eq


@dataclass(frozen=True, slots=True, kw_only=True)
class WithoutPlants:
    """What a loop without plants would need for a day's feed: bicarbonate rule and full nitrification."""

    rule_eq: float
    nitrification_caco3_g: Span
    basis: tuple[Figure, ...]


def without_plants(feed_g: float, *, tan_g: float, catalogue: Catalogue) -> WithoutPlants:
    """Return the upper ends to hold a planted loop against (source: tellbuscher2024, ebeling2006)."""
    figures = acid_figures(catalogue)
    per_nitrogen = catalogue.figure("coefficient/nitrification/alkalinity_per_nitrogen_nitrified")
    return WithoutPlants(
        rule_eq=net_acid_eq(feed_g / _G_PER_KG, acid_eq_per_kg_feed=figures.without_plants_eq_per_kg.value),
        nitrification_caco3_g=span_of(per_nitrogen).times(tan_g),
        basis=(figures.without_plants_eq_per_kg, per_nitrogen),
    )
