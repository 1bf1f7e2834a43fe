"""Why so much of a thing is on the order list: sowings, fish and doses that use it, and what is in stock."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from functools import partial
from typing import Final

from planner.farm.farm import Farm, by_id
from planner.farm.fields import NO_ID, Id
from planner.forecast.engine import Forecaster
from planner.forecast.pieces import PieceKind, Pieces, pieces_of
from planner.forecast.supply import dose_days
from planner.forecast.values import Forecast
from planner.forecast.why.arithmetic import figured
from planner.forecast.why.batches import why_seeds
from planner.forecast.why.formulas import Formula
from planner.forecast.why.ground import Ground, entered, worked
from planner.forecast.why.values import Explanation
from planner.planning.answering import Maker, stated, summed
from planner.planning.orders import OrderKind, OrderLine

_TITLES: Final = {
    OrderKind.SEED: "seeds to order",
    OrderKind.PLUG: "plugs to order",
    OrderKind.NET_POT: "net pots to order",
    OrderKind.FEED: "feed to order",
}


def order_whys(
    farm: Farm,
    forecast: Forecast,
    forecaster: Forecaster,
    lines: Sequence[OrderLine],
    *,
    first_day: int = 0,
    last_day: int | None = None,
) -> dict[str, Maker]:
    """Return why each amount of an order list is what it is, and what is to buy of it.

    `forecast` is what `forecaster` made of `farm` last; the days are those the list was made for.
    """
    ground = Ground(farm=farm, forecast=forecast, forecaster=forecaster)
    span = slice(first_day, forecast.ruler.days if last_day is None else last_day)
    why = _Orders(ground, span, tuple(lines))
    found: dict[str, Maker] = {}
    for line in lines:
        found[order_name(line)] = partial(why.amount, line)
        if line.to_buy is not None:
            found[f"{order_name(line)} to-buy"] = partial(why.to_buy, line)
        if line.in_stock is not None:
            found[f"{order_name(line)} in-stock"] = partial(why.in_stock, line)
    return found


def order_name(line: OrderLine) -> str:
    """Return what an amount of the list is called, such as "2027-03 seed basil LOT-1"."""
    return " ".join(part for part in (line.month, line.kind.value, line.key, line.detail) if part)


@dataclass(frozen=True)
class _Orders:
    """The lines of one list and the farm they were counted on."""

    ground: Ground
    span: slice
    lines: tuple[OrderLine, ...]

    def amount(self, line: OrderLine) -> Explanation:
        """Return why so much is used."""
        parts = {
            OrderKind.SEED: self._seeds,
            OrderKind.PLUG: self._plugs,
            OrderKind.NET_POT: self._pots,
            OrderKind.FEED: self._feed,
        }.get(line.kind, self._doses)
        about = " ".join(part for part in (line.name, line.detail) if part)
        title = _TITLES.get(line.kind, "grams to order")
        return summed(title, about, line.amount, line.unit.value, parts(line))

    def _holds(self, day: int, month: str) -> bool:
        inside = self.span.start <= day < self.span.stop
        return inside and self.ground.forecast.ruler.date_of(day).strftime("%Y-%m") == month

    def _rows(self, line: OrderLine) -> Iterator[int]:
        """Yield the batches that are sown in the month of a line."""
        sow_day = self.ground.forecast.batches.sow_day
        yield from (row for row in range(sow_day.size) if self._holds(int(sow_day[row]), line.month))

    def _lot(self, line: OrderLine) -> Id:
        codes = {lot.code: lot.id for lot in self.ground.farm.seed_lots if lot.crop == line.key}
        return codes.get(line.detail, NO_ID)

    def _seeds(self, line: OrderLine) -> Iterator[Explanation]:
        lot, known = self._lot(line), set(self.ground.lots)
        for row in self._rows(line):
            batch = self.ground.farm.batches[row]
            if batch.crop == line.key and (batch.seed_lot if batch.seed_lot in known else NO_ID) == lot:
                yield why_seeds(self.ground, row)

    def _pieces(self, kind: PieceKind, line: OrderLine) -> Iterator[Pieces]:
        """Yield what batches use of a kind in the month of a line."""
        for used in pieces_of(self.ground.farm, self.ground.forecast):
            if used.kind is kind and self._holds(used.day, line.month):
                yield used

    def _plugs(self, line: OrderLine) -> Iterator[Explanation]:
        for used in self._pieces(PieceKind.PLUG, line):
            yield why_seeds(self.ground, used.row)

    def _pots(self, line: OrderLine) -> Iterator[Explanation]:
        for used in self._pieces(PieceKind.NET_POT, line):
            batch = self.ground.farm.batches[used.row]
            given = entered("plants", used.count, line.unit.value, batch.code)
            yield stated("plants that are moved to a raft", batch.code, given)

    def _feed(self, line: OrderLine) -> Iterator[Explanation]:
        ruler = self.ground.forecast.ruler
        days = [day for day in range(self.span.start, self.span.stop) if self._holds(day, line.month)]
        for loop in self.ground.forecast.loops:
            for group in loop.groups:
                entry = self.ground.groups[group.group]
                grams = float(group.feed_g[days].sum())
                if entry.feed != line.key or grams <= 0.0:
                    continue
                bare = Explanation(
                    title="feed of a group in the month",
                    about=entry.name,
                    value=0.0,
                    unit="kg",
                    formula=Formula.FEED_OF_DAYS,
                    inputs=(worked("days", len(days), "d"), worked("g_per_day", grams / len(days), "g/d")),
                    on=ruler.date_of(days[0]),
                )
                yield figured(bare)

    def _doses(self, line: OrderLine) -> Iterator[Explanation]:
        for dose in self.ground.farm.doses:
            if dose.supplement != line.key:
                continue
            ruler = self.ground.forecast.ruler
            times = [day for day in dose_days(dose, ruler) if self._holds(day, line.month)]
            if not times:
                continue
            about = f"{line.name} {dose.on.isoformat()}"
            bare = Explanation(
                title="dose",
                about=about,
                value=0.0,
                unit="g",
                formula=Formula.GIVEN,
                inputs=(entered("grams", dose.grams, "g", about), worked("times", len(times), "1")),
                on=dose.on,
            )
            yield figured(bare)

    def to_buy(self, line: OrderLine) -> Explanation:
        """Return why so much is to be bought: what is used beyond the stock."""
        stock = line.in_stock or 0.0
        return Explanation(
            title="to buy",
            about=" ".join(part for part in (line.name, line.detail) if part),
            value=line.to_buy,
            unit=line.unit.value,
            formula=Formula.TO_BUY,
            inputs=(
                worked("amount", line.amount, line.unit.value),
                worked("in_stock", stock, line.unit.value),
            ),
            children=(self.amount(line), *((self.in_stock(line),) if line.in_stock is not None else ())),
        )

    def in_stock(self, line: OrderLine) -> Explanation:
        """Return what is left of a lot when the month begins."""
        lot = by_id(self.ground.farm.seed_lots)[self._lot(line)]
        before = [
            one
            for one in self.lines
            if (one.kind, one.key, one.detail) == (line.kind, line.key, line.detail)
            and one.month < line.month
        ]
        return Explanation(
            title="left of the lot",
            about=lot.code,
            value=line.in_stock,
            unit=line.unit.value,
            formula=Formula.LEFT,
            inputs=(
                entered("counted", float(lot.seeds_left), line.unit.value, lot.code),
                worked("used_before", sum(one.amount for one in before), line.unit.value),
            ),
            children=tuple(self.amount(one) for one in before),
        )
