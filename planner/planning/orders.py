"""The order list of a plan by month: seed, pots, plugs, feed, base, iron and salts, from the forecast.

Everything is counted in the month in which it is used. Must know nothing of prices, shops or words.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from datetime import date
from enum import Enum
from typing import Final

import numpy as np

from planner.catalogue.catalogue import Catalogue
from planner.farm.crops import SeedLot
from planner.farm.farm import Farm, by_id
from planner.farm.fields import Id
from planner.farm.species import Supplement
from planner.forecast.pieces import pieces_of
from planner.forecast.seed_lots import lot_shares
from planner.forecast.supply import dose_days
from planner.forecast.values import Forecast, GroupForecast

_G_PER_KG: Final = 1000.0


class OrderKind(Enum):
    """What sort of thing is ordered, in the order of the list."""

    SEED = "seed"
    PLUG = "media plug"
    NET_POT = "net pot"
    FEED = "feed"
    BASE = "base"
    IRON = "iron"
    SALT = "salt"


class OrderUnit(Enum):
    """What an amount counts."""

    SEEDS = "seeds"
    PIECES = "pieces"
    KG = "kg"
    G = "g"


@dataclass(frozen=True, slots=True, kw_only=True)
class OrderLine:
    """One thing used in one month such as "2027-03".

    `key` is a crop, feed or supplement, `detail` a seed lot's code or the pellet size. `in_stock` is what is
    left of the lot when the month begins and `to_buy` what goes beyond it; both None where no stock is kept.
    `lot_age_days` is the age of the lot when it is first sown in the month. `fish_g` is from the least to the
    greatest weight of the fish that eat a feed, `made_for_g` the weights it is made for.
    """

    month: str
    kind: OrderKind
    key: str
    name: str
    detail: str = ""
    amount: float
    unit: OrderUnit
    in_stock: float | None = None
    to_buy: float | None = None
    lot_age_days: int | None = None
    germination_share: float | None = None
    fish_g: tuple[float, float] | None = None
    made_for_g: tuple[float, float] | None = None


def order_list(
    farm: Farm, forecast: Forecast, catalogue: Catalogue, *, first_day: int = 0, last_day: int | None = None
) -> tuple[OrderLine, ...]:
    """Return what is used from `first_day` up to the day before `last_day`, by month and kind.

    The days are those of the forecast's ruler; the whole plan when not said. The catalogue must have the
    farm's own entries laid over it.
    """
    behind = forecast.ruler.days if last_day is None else last_day
    span = _Span(farm=farm, forecast=forecast, catalogue=catalogue, first=first_day, behind=behind)
    kinds = {kind: number for number, kind in enumerate(OrderKind)}
    lines = [*_seed_lines(span), *_pot_lines(span), *_feed_lines(span), *_dose_lines(span)]
    return tuple(sorted(lines, key=lambda line: (line.month, kinds[line.kind], line.name, line.detail)))


@dataclass(frozen=True, slots=True, kw_only=True)
class _Span:
    """What is counted, and over which days."""

    farm: Farm
    forecast: Forecast
    catalogue: Catalogue
    first: int
    behind: int

    def holds(self, day: int) -> bool:
        return self.first <= day < self.behind

    def date_of(self, day: int) -> date:
        return self.forecast.ruler.date_of(day)

    def month_of(self, day: int) -> str:
        return self.date_of(day).strftime("%Y-%m")


def _seed_lines(span: _Span) -> Iterator[OrderLine]:
    """Yield seeds by month, crop and lot; what a lot has left goes down month by month."""
    table = span.forecast.batches
    lots: dict[Id, SeedLot] = by_id(span.farm.seed_lots)
    sown: dict[tuple[str, str, Id], int] = {}
    first_on: dict[tuple[str, str, Id], date] = {}
    for row in np.argsort(table.sow_day, kind="stable").tolist():
        day, batch = int(table.sow_day[row]), span.farm.batches[row]
        if not span.holds(day):
            continue
        key = span.month_of(day), batch.crop, batch.seed_lot
        sown[key] = sown.get(key, 0) + int(table.seeds[row])
        first_on.setdefault(key, batch.sow_on)
    left = {lot.id: lot.seeds_left for lot in lots.values()}
    shares = lot_shares(span.farm, span.catalogue)
    for (month, crop, lot_id), seeds in sown.items():
        lot, stock = lots.get(lot_id), left.get(lot_id)
        if stock is not None:
            left[lot_id] = max(stock - seeds, 0)
        on = first_on[month, crop, lot_id]
        share = shares[lot_id].share(on) if lot_id in shares else None
        yield _seed_line(span, month, crop, lot, seeds=seeds, stock=stock, on=on, share=share)


def _seed_line(
    span: _Span,
    month: str,
    crop: str,
    lot: SeedLot | None,
    *,
    seeds: int,
    stock: int | None,
    on: date,
    share: float | None,
) -> OrderLine:
    entry = span.catalogue.crops[crop]
    bought = None if lot is None else lot.packed_on or lot.bought_on
    return OrderLine(
        month=month,
        kind=OrderKind.SEED,
        key=crop,
        name=entry.name,
        detail="" if lot is None else lot.code,
        amount=float(seeds),
        unit=OrderUnit.SEEDS,
        in_stock=None if stock is None else float(stock),
        to_buy=None if stock is None and lot is not None else float(max(seeds - (stock or 0), 0)),
        lot_age_days=None if bought is None else (on - bought).days,
        germination_share=entry.germination_share if share is None else share,
    )


def _pot_lines(span: _Span) -> Iterator[OrderLine]:
    """Yield plugs, one a seed raised in a nursery, and net pots, one a plant that is moved to a raft."""
    counts: dict[tuple[str, OrderKind], int] = {}
    for used in pieces_of(span.farm, span.forecast):
        if span.holds(used.day):
            key = span.month_of(used.day), OrderKind(used.kind.value)
            counts[key] = counts.get(key, 0) + used.count
    for (month, kind), count in counts.items():
        yield OrderLine(
            month=month,
            kind=kind,
            key=kind.value,
            name=kind.value,
            amount=float(count),
            unit=OrderUnit.PIECES,
        )


def _feed_lines(span: _Span) -> Iterator[OrderLine]:
    """Yield feed by month and feed, with the weights of the fish that eat it."""
    feed_of = {group.id: group.feed for group in span.farm.fish_groups}
    eaten: dict[tuple[str, str], float] = {}
    weights: dict[tuple[str, str], list[float]] = {}
    for group in (group for loop in span.forecast.loops for group in loop.groups):
        for month, days in _months(span):
            grams = float(group.feed_g[days].sum())
            if grams > 0:
                key = month, feed_of[group.group]
                eaten[key] = eaten.get(key, 0.0) + grams
                weights.setdefault(key, []).extend(_weights(group, days))
    for (month, feed_key), grams in eaten.items():
        feed = span.catalogue.feeds[feed_key]
        seen = weights[month, feed_key]
        yield OrderLine(
            month=month,
            kind=OrderKind.FEED,
            key=feed_key,
            name=feed.name,
            detail=feed.pellet_mm,
            amount=grams / _G_PER_KG,
            unit=OrderUnit.KG,
            fish_g=(min(seen), max(seen)),
            made_for_g=(feed.for_fish_from_g, feed.for_fish_to_g),
        )


def _weights(group: GroupForecast, days: slice) -> tuple[float, float]:
    fed = group.weight_g[days][group.feed_g[days] > 0]
    return float(fed.min()), float(fed.max())


def _months(span: _Span) -> Iterator[tuple[str, slice]]:
    """Yield the months of a span with their days."""
    start = span.first
    for day in range(span.first + 1, span.behind + 1):
        if day == span.behind or span.month_of(day) != span.month_of(start):
            yield span.month_of(start), slice(start, day)
            start = day


def _dose_lines(span: _Span) -> Iterator[OrderLine]:
    """Yield base, iron and salts that are given, by month."""
    grams: dict[tuple[str, str], float] = {}
    for dose in span.farm.doses:
        for day in dose_days(dose, span.forecast.ruler):
            if span.holds(day):
                key = span.month_of(day), dose.supplement
                grams[key] = grams.get(key, 0.0) + dose.grams
    for (month, key_of), amount in grams.items():
        supplement = span.catalogue.supplements[key_of]
        yield OrderLine(
            month=month,
            kind=_kind_of(supplement),
            key=key_of,
            name=supplement.name,
            detail=supplement.formula,
            amount=amount,
            unit=OrderUnit.G,
        )


def _kind_of(supplement: Supplement) -> OrderKind:
    if supplement.fe_share > 0:
        return OrderKind.IRON
    return OrderKind.BASE if supplement.base_eq_per_kg > 0 else OrderKind.SALT
