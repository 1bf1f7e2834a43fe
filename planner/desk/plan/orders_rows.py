"""The order list as rows, and as text for a spreadsheet. Must know nothing of widgets."""

from __future__ import annotations

import csv
import io
from collections.abc import Iterable, Iterator, Sequence
from typing import Final

from planner.desk.plan.expansion_words import month_words
from planner.desk.plan.remedy_words import percent_words
from planner.desk.rows import Column, Row
from planner.desk.say import tr
from planner.desk.words import NONE, number_words
from planner.farm.cells import harmless
from planner.planning.orders import OrderKind, OrderLine, OrderUnit

_DAYS_PER_YEAR: Final = 365

KIND_WORDS: Final = {
    OrderKind.SEED: "Seed",
    OrderKind.PLUG: "Media plugs",
    OrderKind.NET_POT: "Net pots",
    OrderKind.FEED: "Feed",
    OrderKind.BASE: "Base",
    OrderKind.IRON: "Iron",
    OrderKind.SALT: "Salt",
}
UNIT_WORDS: Final = {
    OrderUnit.SEEDS: "seeds",
    OrderUnit.PIECES: "pieces",
    OrderUnit.KG: "kg",
    OrderUnit.G: "g",
}


def order_columns() -> tuple[Column, ...]:
    """Return the columns of the order list."""
    return (
        Column(title=tr("Month")),
        Column(title=tr("What")),
        Column(title=tr("Which")),
        Column(title=tr("Amount"), numeric=True),
        Column(title=tr("In stock"), numeric=True, tip=tr("What is left when the month begins")),
        Column(title=tr("To buy"), numeric=True),
        Column(title=tr("To know")),
    )


def order_rows(lines: Iterable[OrderLine]) -> tuple[Row, ...]:
    """Return a row for each thing used in a month."""
    return tuple(_row(line) for line in lines)


def _row(line: OrderLine) -> Row:
    year, month = (int(part) for part in line.month.split("-"))
    what, which = tr(KIND_WORDS[line.kind]), _which(line)
    buy = line.amount if line.to_buy is None else line.to_buy
    note = "; ".join(_notes(line))
    return Row(
        id=f"{line.month} {line.kind.value} {line.key} {line.detail}",
        texts=(
            month_words(year, month),
            what,
            which,
            amount_words(line.amount, line.unit),
            NONE if line.in_stock is None else number_words(line.in_stock, digits=0),
            amount_words(buy, line.unit),
            note or NONE,
        ),
        sort=(
            line.month,
            list(OrderKind).index(line.kind),
            which.casefold(),
            line.amount,
            -1.0 if line.in_stock is None else line.in_stock,
            buy,
            note,
        ),
        payload=line,
    )


def _which(line: OrderLine) -> str:
    if line.kind in (OrderKind.PLUG, OrderKind.NET_POT) or line.name == line.kind.value:
        return line.detail or NONE
    if line.kind is OrderKind.FEED and line.detail:
        return tr("{name}, pellets of {size} mm", name=line.name, size=line.detail)
    return f"{line.name}, {line.detail}" if line.detail else line.name


def amount_words(amount: float, unit: OrderUnit) -> str:
    """Return an amount of something to buy."""
    if amount <= 0:
        return NONE
    digits = 1 if unit is OrderUnit.KG else 0
    return f"{number_words(amount, digits=digits)} {tr(UNIT_WORDS[unit])}"


def _notes(line: OrderLine) -> Iterator[str]:
    if line.germination_share is not None:
        yield tr("{share} come up", share=percent_words(line.germination_share))
    if line.lot_age_days is not None:
        yield age_words(line.lot_age_days)
    if line.fish_g is not None and line.made_for_g is not None:
        (low, high), (from_g, to_g) = line.fish_g, line.made_for_g
        if low < from_g or high > to_g:
            yield tr(
                "made for fish of {a} to {b} g, eaten by fish of {c} to {d} g",
                a=number_words(from_g, digits=0),
                b=number_words(to_g, digits=0),
                c=number_words(low, digits=0),
                d=number_words(high, digits=0),
            )


def age_words(days: int) -> str:
    """Return how old a lot is when it is sown."""
    if days >= _DAYS_PER_YEAR:
        return tr("lot {years} years old", years=number_words(days / _DAYS_PER_YEAR, digits=1))
    return tr("lot 1 day old") if days == 1 else tr("lot {days} days old", days=days)


def months_of(lines: Iterable[OrderLine]) -> tuple[str, ...]:
    """Return the months of a list, in order."""
    return tuple(sorted({line.month for line in lines}))


def rows_text(columns: Sequence[Column], rows: Iterable[Row]) -> str:
    """Return rows as comma-separated values for a spreadsheet, harmless to open."""
    out = io.StringIO()
    writer = csv.writer(out, lineterminator="\r\n")
    writer.writerow([harmless(column.title) for column in columns])
    for row in rows:
        writer.writerow([harmless("" if text == NONE else text) for text in row.texts])
    return out.getvalue()
