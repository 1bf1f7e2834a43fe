"""The shopping list: what the plan uses, by the month in which it must be in the house.

Must not know prices, shops, layout or toolkits.
"""

from __future__ import annotations

from collections.abc import Iterator
from datetime import date
from itertools import groupby
from typing import Final

from planner.paper.documents.amounts import number_words
from planner.paper.documents.ask import Ask
from planner.paper.documents.columns import BENCH_SIZE, TICK, WRITE, says, ticked, told, written
from planner.paper.report import Cell, Report, RowGroup, Section, Table, Tone
from planner.paper.words import NO_BREAK, count_words, day_words, month_words, percent_words, whole_words
from planner.planning.orders import OrderKind, OrderLine, OrderUnit, order_list

TITLE: Final = "Shopping list"
_KIND_WORDS: Final = {
    OrderKind.SEED: "Seed",
    OrderKind.PLUG: "Starter plugs",
    OrderKind.NET_POT: "Net pots",
    OrderKind.FEED: "Fish feed",
    OrderKind.BASE: "Base",
    OrderKind.IRON: "Iron",
    OrderKind.SALT: "Salt",
}
_UNIT_WORDS: Final = {
    OrderUnit.SEEDS: "seeds",
    OrderUnit.PIECES: "pieces",
    OrderUnit.KG: "kg",
    OrderUnit.G: "g",
}
_NAMELESS: Final = (OrderKind.PLUG, OrderKind.NET_POT)
_HOW_TO: Final = (
    "What the plan uses, by the month it is used in; it counts no losses beyond germination. Buy feed "
    "fresh, and no "
    "more than keeps: old feed loses vitamins. Keep bases locked and away from acids and children."
)


def shopping(ask: Ask) -> Report:
    """Return the list of what is used in the weeks asked for."""
    days = ask.days_within
    lines = order_list(ask.farm, ask.forecast, ask.catalogue, first_day=days.start, last_day=days.stop)
    groups = tuple(_month(ask, month, tuple(many)) for month, many in groupby(lines, key=_month_of))
    if not groups:
        groups = (RowGroup(heading=ask.span_words, empty="nothing is used in these weeks"),)
    columns = (
        ticked("bought", "Bought"),
        told("what", "What", mm=48.0, share=3.0, main=BENCH_SIZE),
        told("use", "To use", mm=24.0, share=0.3, main=BENCH_SIZE, right=True),
        told("stock", "In stock", mm=20.0, share=0.3, right=True),
        told("buy", "To buy", mm=22.0, share=0.3, main=BENCH_SIZE, right=True),
        written("note", "Where, lot, date", mm=28.0, share=1.5),
    )
    table = Table(name="Shopping", columns=columns, groups=groups)
    care = Section(parts=ask.cautions("caustic-bases", "materials"), columns=2)
    return ask.report(
        TITLE, (Section(parts=(table,)), care), subtitle=ask.span_words, header_lines=(_HOW_TO,)
    )


def _month_of(line: OrderLine) -> str:
    return line.month


def _month(ask: Ask, month: str, lines: tuple[OrderLine, ...]) -> RowGroup:
    first = max(date.fromisoformat(f"{month}-01"), ask.first)
    return RowGroup(
        heading=month_words(first),
        detail=f"in the house by {day_words(first)}",
        rows=tuple(_row(line) for line in lines),
    )


def _row(line: OrderLine) -> tuple[Cell, ...]:
    unit = _UNIT_WORDS[line.unit]
    return (
        TICK,
        says(*_what(line), tone=Tone.MAIN),
        says(_amount(line, line.amount), unit, tone=Tone.MAIN, value=f"{line.amount:g}"),
        says("not counted" if line.in_stock is None else _amount(line, line.in_stock)),
        says(_amount(line, line.amount if line.to_buy is None else line.to_buy), unit, tone=Tone.MAIN),
        WRITE,
    )


def _amount(line: OrderLine, value: float) -> str:
    whole = line.unit in (OrderUnit.SEEDS, OrderUnit.PIECES)
    return whole_words(round(value)) if whole else number_words(value)


def _what(line: OrderLine) -> Iterator[str]:
    kind = _KIND_WORDS[line.kind]
    yield kind if line.kind in _NAMELESS else f"{kind}: {line.name}"
    if line.kind is OrderKind.SEED:
        yield f"lot {line.detail}" if line.detail else "no lot chosen"
        if line.lot_age_days is not None:
            yield f"lot is {count_words(line.lot_age_days, 'day', 'days')} old then; test it when in doubt"
        if line.germination_share is not None:
            yield f"{percent_words(line.germination_share)} come up"
    elif line.kind is OrderKind.FEED and line.detail:
        yield f"pellets {line.detail}{NO_BREAK}mm"
    elif line.detail:
        yield line.detail
    if line.fish_g is not None:
        low, high = line.fish_g
        yield f"for fish of {low:,.0f} to {high:,.0f}{NO_BREAK}g"
    if line.made_for_g is not None and line.fish_g is not None:
        low, high = line.made_for_g
        if line.fish_g[0] < low or line.fish_g[1] > high:
            yield f"made for fish of {low:,.0f} to {high:,.0f}{NO_BREAK}g: choose another pellet"
