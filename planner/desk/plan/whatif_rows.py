"""Scenarios beside the farm as rows, differences and a chart. Must know nothing of widgets."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from typing import Final

from planner.catalogue.catalogue import Catalogue
from planner.desk.plan.chart import Chart, Form, Strand
from planner.desk.plan.remedy_words import percent_words
from planner.desk.plan.stocking_charts import week_names
from planner.desk.plan.whatif_work import Compared
from planner.desk.rows import Column as TableColumn
from planner.desk.rows import Row
from planner.desk.say import tr
from planner.desk.words import NONE, field_words, kind_words, middle_of_week, number_words, week_words
from planner.forecast.values import Ruler
from planner.planning.scenarios.compare import Column, Comparison, Money
from planner.planning.scenarios.sets import Difference

_G_PER_KG: Final = 1000.0
_MOST_RATIO: Final = 3.0
_PERCENT: Final = 100.0
_MOST_NAMED: Final = 5
_PLACEMENT: Final = "placement"
_FORMS: Final = (Form.BARS, Form.LINE, Form.DASHED, Form.DOTTED)
_COLOURS: Final = (0, 5, 6, 3)
_WHAT: Final = {"added": "new", "taken out": "goes", "altered": "changes"}


def compare_columns(found: Comparison) -> tuple[TableColumn, ...]:
    """Return a column for what is measured, for the farm, and for each scenario."""
    named = (tr("Today's plan"), *(column.name for column in found.columns[1:]))
    return (TableColumn(title=tr("What")), *(TableColumn(title=name, numeric=True) for name in named))


def compare_rows(found: Comparison, catalogue: Catalogue, ruler: Ruler) -> tuple[Row, ...]:
    """Return a row for each measure; scenarios say by how much they differ from the farm."""
    rows = [
        _said(0, tr("Least supply of an element"), found, _worst_of(ruler)),
        _counted(1, tr("Weeks short"), found, _weeks_short, digits=0),
        _said(2, tr("Beds planted, on average and at most"), found, _planted),
        _counted(3, tr("Batches without places"), found, _unplaced, digits=0),
        _counted(4, tr("Feed [kg]"), found, _feed, digits=1),
        _counted(5, tr("Fish harvested [kg]"), found, _fish, digits=1),
        _said(6, tr("Fullest tank [kg/m³]"), found, _fullest),
        _said(7, tr("Cost"), found, _cost),
        _said(8, tr("Income"), found, _income),
    ]
    keys = dict.fromkeys(key for column in found.columns for key, _ in column.harvest_g)
    for number, key in enumerate(keys):
        name = catalogue.crops[key].name if key in catalogue.crops else key
        rows.append(
            _counted(10 + number, tr("Harvest of {crop} [kg]", crop=name), found, _harvest_of(key), digits=1)
        )
    return tuple(rows)


def _said(number: int, what: str, found: Comparison, say: Callable[[Column], str]) -> Row:
    texts = tuple(say(column) for column in found.columns)
    return Row(id=what, texts=(what, *texts), sort=(number, *texts))


def _counted(
    number: int, what: str, found: Comparison, value: Callable[[Column], float], *, digits: int
) -> Row:
    base, *others = [value(column) for column in found.columns]
    texts = [number_words(base, digits=digits)]
    for one in others:
        more = round(one - base, digits)
        shown = number_words(one, digits=digits)
        sign = "+" if more > 0 else "−"
        by = number_words(abs(more), digits=digits)
        texts.append(f"{shown} ({sign}{by})" if more else shown)
    return Row(id=what, texts=(what, *texts), sort=(number, base, *others))


def _worst_of(ruler: Ruler) -> Callable[[Column], str]:
    def say(column: Column) -> str:
        worst = column.worst
        if worst is None or worst.ratio is None:
            return NONE
        week = week_words(middle_of_week(ruler.week_start(worst.week)))
        return tr(
            "{share} of {element}, {week}", share=percent_words(worst.ratio), element=worst.element, week=week
        )

    return say


def _weeks_short(column: Column) -> float:
    return float(column.weeks_short)


def _planted(column: Column) -> str:
    mean, peak = column.occupancy_share
    return f"{percent_words(mean)} · {percent_words(peak)}"


def _unplaced(column: Column) -> float:
    return float(column.unplaced_batches)


def _feed(column: Column) -> float:
    return column.feed_kg


def _fish(column: Column) -> float:
    return column.fish_kg


def _fullest(column: Column) -> str:
    if column.peak_kg_per_m3 is None or column.density_limit_kg_per_m3 is None:
        return NONE
    peak, limit = column.peak_kg_per_m3, column.density_limit_kg_per_m3
    return tr("{peak} of {limit}", peak=number_words(peak, digits=1), limit=number_words(limit, digits=0))


def _cost(column: Column) -> str:
    return money_words(column.cost)


def _income(column: Column) -> str:
    return money_words(column.income)


def money_words(money: Money) -> str:
    """Return a sum; without a price it is unknown, never nothing."""
    if money.total is not None:
        return number_words(money.total, digits=2)
    if len(money.blank) == 1:
        return tr("unknown: 1 price missing")
    return tr("unknown: {count} prices missing", count=len(money.blank))


def _harvest_of(key: str) -> Callable[[Column], float]:
    def value(column: Column) -> float:
        return dict(column.harvest_g).get(key, 0.0) / _G_PER_KG

    return value


# --- differences ---------------------------------------------------------------------------------------


def difference_columns() -> tuple[TableColumn, ...]:
    """Return the columns of the table of differences."""
    return (
        TableColumn(title=tr("What")),
        TableColumn(title=tr("Kind")),
        TableColumn(title=tr("Which")),
        TableColumn(title=tr("How")),
    )


def difference_rows(differences: tuple[Difference, ...]) -> tuple[Row, ...]:
    """Return a row for each thing that differs; places that move along are left out."""
    told = [one for one in differences if one.kind != _PLACEMENT]
    return tuple(_difference_row(number, one) for number, one in enumerate(told))


def _difference_row(number: int, one: Difference) -> Row:
    name = one.where.removeprefix(one.kind).strip().strip('"') or kind_words(one.kind)
    how = "; ".join(
        tr(
            "{field}: {before} → {after}",
            field=field_words(field),
            before=before or NONE,
            after=after or NONE,
        )
        for field, before, after in one.fields
    )
    texts = (tr(_WHAT.get(one.what, one.what)), kind_words(one.kind), name, how or NONE)
    return Row(id=str(number), texts=texts, sort=texts)


def difference_words(differences: tuple[Difference, ...]) -> str:
    """Return how many things differ."""
    told = sum(one.kind != _PLACEMENT for one in differences)
    moved = len(differences) - told
    if not differences:
        return tr("Nothing differs from today's plan.")
    words = tr("1 thing differs") if told == 1 else tr("{count} things differ", count=told)
    return tr("{words}, and {moved} runs of places.", words=words, moved=moved) if moved else f"{words}."


# --- chart ---------------------------------------------------------------------------------------------


def balance_chart(found: Comparison, ruler: Ruler) -> Chart:
    """Return the least supply of any element by week, over all loops, for the farm and each scenario."""
    names = (tr("today"), *(column.name for column in found.columns[1:]))
    return Chart(
        title=tr("Least supply against demand; weeks without demand stand at the top"),
        unit=tr("%"),
        weeks=week_names(ruler),
        strands=tuple(
            Strand(
                label=name,
                values=tuple(_least_by_week(column, ruler)),
                form=_FORMS[number],
                colour=_COLOURS[number],
            )
            for number, (name, column) in enumerate(zip(names, found.columns, strict=True))
        ),
    )


def _least_by_week(column: Column, ruler: Ruler) -> Iterator[float]:
    least = [_MOST_RATIO] * ruler.weeks
    for one in column.balance:
        if one.ratio is not None and one.week < ruler.weeks:
            least[one.week] = min(least[one.week], one.ratio)
    for value in least:
        yield value * _PERCENT


def _named(codes: tuple[str, ...]) -> str:
    if len(codes) <= _MOST_NAMED:
        return ", ".join(codes)
    named = ", ".join(codes[: _MOST_NAMED - 1])
    return tr("{named} and {rest} more", named=named, rest=len(codes) - _MOST_NAMED + 1)


def hold_words(found: Compared) -> str:
    """Return which plantings should be held back in scenarios that make weeks short."""
    lines = [
        tr(
            "{scenario}: hold back {codes}, for weeks become short there.",
            scenario=column.name,
            codes=_named(codes),
        )
        for column, codes in zip(found.comparison.columns[1:], found.to_hold, strict=True)
        if codes
    ]
    return "\n".join(lines)
