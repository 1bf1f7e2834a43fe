"""Compares scenarios with the base by their forecasts: balance, harvest, occupancy, feed, density, cost.

A price that is not given makes what it goes into unknown, never zero.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass, field
from typing import Final

import numpy as np

from planner.farm.changes import Change
from planner.farm.crops import Phase
from planner.farm.farm import DAYS_PER_WEEK, Farm
from planner.farm.fields import Id
from planner.forecast.engine import Forecaster
from planner.forecast.flags import tank_density
from planner.forecast.supply import dose_days
from planner.forecast.values import FlagKind, Floats, Forecast, LoopForecast, Ruler
from planner.forecast.verdicts import supply_ratios, symbol_of
from planner.planning.scenarios.sets import Difference, Scenario, changes_between, differences

_G_PER_KG: Final = 1000.0
_THOUSAND: Final = 1000.0
BASE: Final = "base"


@dataclass(frozen=True, slots=True, kw_only=True)
class Prices:
    """Money per kg of crops, fish, feeds and supplements by their keys, and per thousand seeds of a crop."""

    crop_per_kg: Mapping[str, float] = field(default_factory=dict)
    fish_per_kg: Mapping[str, float] = field(default_factory=dict)
    feed_per_kg: Mapping[str, float] = field(default_factory=dict)
    supplement_per_kg: Mapping[str, float] = field(default_factory=dict)
    seed_per_thousand: Mapping[str, float] = field(default_factory=dict)


@dataclass(frozen=True, slots=True, kw_only=True)
class Money:
    """A sum of money; `total` is None when a price is blank, `known` is the part with prices.

    `blank` names what has no price.
    """

    total: float | None
    known: float
    blank: tuple[str, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class WeekBalance:
    """The lowest ratio of supply to demand of a loop in a week, None without demand."""

    loop: str
    week: int
    ratio: float | None
    element: str
    short: bool


@dataclass(frozen=True, slots=True, kw_only=True)
class Column:
    """How one farm does over the plan.

    `occupancy_share` is the mean and the highest week of planted area over all beds. `peak_kg_per_m3` is
    of the tank nearest its limit, and `density_limit_kg_per_m3` its limit, both None without fish.
    """

    name: str
    balance: tuple[WeekBalance, ...]
    harvest_g: tuple[tuple[str, float], ...]
    harvest_plants: tuple[tuple[str, float], ...]
    occupancy_share: tuple[float, float]
    feed_kg: float
    fish_kg: float
    peak_kg_per_m3: float | None
    density_limit_kg_per_m3: float | None
    unplaced_batches: int
    cost: Money
    income: Money

    @property
    def worst(self) -> WeekBalance | None:
        """The week with the lowest ratio, None without demand."""
        asked = [one for one in self.balance if one.ratio is not None]
        return min(asked, key=_ratio, default=None)

    @property
    def weeks_short(self) -> int:
        """Weeks of loops in which an element is short."""
        return sum(one.short for one in self.balance)


def _ratio(one: WeekBalance) -> float:
    assert one.ratio is not None
    return one.ratio


@dataclass(frozen=True, slots=True, kw_only=True)
class Comparison:
    """The base and every scenario, one column each, and what each changes against the base."""

    columns: tuple[Column, ...]
    changes: tuple[tuple[Change, ...], ...]

    def differences(self, number: int) -> tuple[Difference, ...]:
        """Return what a column changes against the base; column 0 is the base itself."""
        return differences(self.changes[number])


def compare(
    base: Farm, scenarios: Iterable[Scenario], forecaster: Forecaster, *, prices: Prices | None = None
) -> Comparison:
    """Return the base beside its scenarios; the base is left as it is.

    Raises `KeyError` when the base is no longer as a scenario's changes expect it.
    """
    farms = [(BASE, base), *((one.name, one.farm(base)) for one in scenarios)]
    columns = tuple(
        column_of(name, farm, forecaster.forecast(farm), forecaster, prices=prices or Prices())
        for name, farm in farms
    )
    forecaster.preview(base)  # so that questions about the last forecast are about the base again
    return Comparison(
        columns=columns,
        changes=tuple(changes_between(base, farm) if farm is not base else () for _, farm in farms),
    )


def column_of(name: str, farm: Farm, forecast: Forecast, forecaster: Forecaster, *, prices: Prices) -> Column:
    """Return how one farm does; `forecast` is its own."""
    grown = {batch.crop for batch in farm.batches}
    rows = [(number, key) for number, key in enumerate(forecast.crops) if key in grown]
    peak, limit = _fullest(farm, forecast, forecaster)
    unplaced = {flag.about for flag in forecast.flags if flag.kind is FlagKind.UNPLACED}
    return Column(
        name=name,
        balance=tuple(
            week
            for loop in forecast.loops
            for week in _balance(loop, forecast.ruler, forecaster.bands.short_below)
        ),
        harvest_g=tuple((key, float(forecast.harvest_g[number].sum())) for number, key in rows),
        harvest_plants=tuple((key, float(forecast.harvest_plants[number].sum())) for number, key in rows),
        occupancy_share=_occupancy(forecast),
        feed_kg=sum(float(loop.feed_g.sum()) for loop in forecast.loops) / _G_PER_KG,
        fish_kg=sum(_fish_kg(farm, forecast).values()),
        peak_kg_per_m3=peak,
        density_limit_kg_per_m3=limit,
        unplaced_batches=len(unplaced),
        cost=_money(cost_parts(farm, forecast, prices)),
        income=_money(income_parts(farm, forecast, prices)),
    )


def _balance(loop: LoopForecast, ruler: Ruler, short_below: float) -> list[WeekBalance]:
    ratios = supply_ratios(ruler.weekly_sum(loop.supply_g), ruler.weekly_sum(loop.demand_g))
    found = []
    for week, column in enumerate(ratios.T):
        known = column[~np.isnan(column)]
        lowest = float(known.min()) if known.size else None
        element = symbol_of(int(np.nanargmin(column))) if known.size else ""
        short = lowest is not None and lowest < short_below
        found.append(WeekBalance(loop=loop.name, week=week, ratio=lowest, element=element, short=short))
    return found


def _occupancy(forecast: Forecast) -> tuple[float, float]:
    beds = sum(loop.bed_m2 for loop in forecast.loops)
    planted: Floats = sum(
        (forecast.ruler.weekly_mean(loop.planted_m2).sum(axis=0) for loop in forecast.loops),
        start=np.zeros(forecast.ruler.weeks),
    )
    return (float(planted.mean() / beds), float(planted.max() / beds)) if beds > 0.0 else (0.0, 0.0)


def _fullest(farm: Farm, forecast: Forecast, forecaster: Forecaster) -> tuple[float | None, float | None]:
    groups = [group for loop in forecast.loops for group in loop.groups]
    catalogue, fullest = forecaster.catalogue_for(farm), []
    for tank in farm.tanks:
        found = tank_density(farm, catalogue, groups, tank, forecast.ruler)
        if found is not None:
            density, limit = float(found[0].max()), found[1]
            fullest.append((density / limit, density, limit))
    if not fullest:
        return None, None
    _, density, limit = max(fullest)
    return density, limit


def _fish_kg(farm: Farm, forecast: Forecast) -> dict[str, float]:
    """Return harvested fish [kg] by species."""
    species = {group.id: group.species for group in farm.fish_groups}
    found: dict[str, float] = {}
    for loop in forecast.loops:
        for group in loop.groups:
            key = species[group.group]
            found[key] = found.get(key, 0.0) + float(group.harvest_g.sum()) / _G_PER_KG
    return found


def _feed_kg(farm: Farm, forecast: Forecast) -> dict[str, float]:
    feeds = {group.id: group.feed for group in farm.fish_groups}
    found: dict[str, float] = {}
    for loop in forecast.loops:
        for group in loop.groups:
            key = feeds[group.group]
            found[key] = found.get(key, 0.0) + float(group.feed_g.sum()) / _G_PER_KG
    return found


@dataclass(frozen=True, slots=True, kw_only=True)
class Priced:
    """So much of a thing, and its price where one was given; `unit` is that of the amount."""

    what: str
    key: str
    amount: float
    unit: str
    price: float | None


def cost_parts(farm: Farm, forecast: Forecast, prices: Prices) -> tuple[Priced, ...]:
    """Return what is paid for: feed, supplements and seeds."""
    seeds: dict[str, float] = {}
    for row, batch in enumerate(farm.batches):
        if 0 <= int(forecast.batches.sow_day[row]) < forecast.ruler.days:
            seeds[batch.crop] = seeds.get(batch.crop, 0.0) + float(forecast.batches.seeds[row]) / _THOUSAND
    doses: dict[str, float] = {}
    for dose in farm.doses:
        grams = dose.grams * len(dose_days(dose, forecast.ruler))
        doses[dose.supplement] = doses.get(dose.supplement, 0.0) + grams / _G_PER_KG
    return (
        *_priced("feed", _feed_kg(farm, forecast), prices.feed_per_kg, "kg"),
        *_priced("supplement", doses, prices.supplement_per_kg, "kg"),
        *_priced("seed", seeds, prices.seed_per_thousand, "thousand"),
    )


def income_parts(farm: Farm, forecast: Forecast, prices: Prices) -> tuple[Priced, ...]:
    """Return what is sold: crops and fish."""
    grown = {batch.crop for batch in farm.batches}
    crops = {
        key: float(forecast.harvest_g[number].sum()) / _G_PER_KG
        for number, key in enumerate(forecast.crops)
        if key in grown
    }
    return (
        *_priced("crop", crops, prices.crop_per_kg, "kg"),
        *_priced("fish", _fish_kg(farm, forecast), prices.fish_per_kg, "kg"),
    )


def _priced(
    what: str, amounts: Mapping[str, float], prices: Mapping[str, float], unit: str
) -> tuple[Priced, ...]:
    return tuple(
        Priced(what=what, key=key, amount=amount, unit=unit, price=prices.get(key))
        for key, amount in sorted(amounts.items())
        if amount > 0.0
    )


def _money(parts: tuple[Priced, ...]) -> Money:
    known = sum(one.amount * one.price for one in parts if one.price is not None)
    blank = tuple(f"{one.what} {one.key}" for one in parts if one.price is None)
    return Money(total=None if blank else known, known=known, blank=blank)


def plantings_to_hold(base: Farm, scenario: Scenario, forecaster: Forecaster, *, loop: Id) -> tuple[str, ...]:
    """Return codes of batches to hold back: those that move in weeks which only a scenario makes short."""
    short_before = _short_weeks(forecaster.preview(base), loop, forecaster)
    farm = scenario.farm(base)
    forecast = forecaster.preview(farm)
    short = _short_weeks(forecast, loop, forecaster) - short_before
    number = [one.loop for one in forecast.loops].index(loop)
    codes = [
        batch.code
        for row, batch in enumerate(farm.batches)
        if forecast.batches.loop[row] == number
        and forecast.batches.phase_days(row, Phase.BED)[0] // DAYS_PER_WEEK in short
    ]
    forecaster.preview(base)
    return tuple(codes)


def _short_weeks(forecast: Forecast, loop: Id, forecaster: Forecaster) -> frozenset[int]:
    found = next(one for one in forecast.loops if one.loop == loop)
    balance = _balance(found, forecast.ruler, forecaster.bands.short_below)
    return frozenset(one.week for one in balance if one.short)
