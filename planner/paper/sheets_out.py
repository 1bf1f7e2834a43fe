"""Every table of the program as plain rows for a spreadsheet: what was entered, and what is foreseen.

Columns have the names of docs/glossary.md; cells are texts, numbers, dates or nothing. Must not know files.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass
from datetime import date
from enum import Enum
from typing import Any, Final

from planner.catalogue.catalogue import Catalogue
from planner.farm.crops import Phase
from planner.farm.farm import DAYS_PER_WEEK, KINDS, Farm, kind_named, label_of, things
from planner.farm.fields import FieldKind, Id, specs_of
from planner.forecast.figures import BandFigures
from planner.forecast.occupancy import holds
from planner.forecast.plain import WeekSpan, forecast_data, forecast_rows
from planner.forecast.values import Forecast
from planner.forecast.week import due_between
from planner.paper.sentences import wheres_words
from planner.planning.orders import order_list

Value = str | float | int | bool | date | None
Row = tuple[Value, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class PlainTable:
    """A table: its name, its column names, its rows."""

    name: str
    columns: tuple[str, ...]
    rows: tuple[Row, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class TableGround:
    """What tables are made from; `catalogue` has the farm's own entries laid over it."""

    farm: Farm
    forecast: Forecast
    catalogue: Catalogue
    bands: BandFigures

    @property
    def span(self) -> WeekSpan:
        """All weeks of the plan."""
        return WeekSpan(first=0, last=self.forecast.ruler.weeks)


_KINDS: Final = {
    "beds": "bed",
    "lots": "seed lot",
    "targets": "target",
    "places": "placement",
    "fish groups": "fish group",
    "fish events": "fish event",
    "meters": "meter",
    "readings": "reading",
    "doses": "dose",
    "solids": "solids batch",
    "sites": "site",
    "loops": "loop",
    "tanks": "tank",
    "filters": "filter",
    "log": "log entry",
}
"""Tables that are things of the farm as they were entered."""


def table_of(name: str, ground: TableGround) -> PlainTable:
    """Return one table; raises `ValueError` when there is none of that name."""
    if name in _KINDS:
        return _entered(name, _KINDS[name], ground)
    if name not in _MADE:
        raise ValueError(f'table: "{name}" is none of {", ".join(TABLES)}')
    return _MADE[name](name, ground)


# --- what was entered --------------------------------------------------------------------------------


def _entered(name: str, word: str, ground: TableGround) -> PlainTable:
    fields = _fields_of(word)
    labels = _labels(ground.farm)
    rows = tuple(
        tuple(_cell(thing, field, labels) for field in fields) for thing in things(ground.farm, word)
    )
    return PlainTable(name=name, columns=fields, rows=rows)


def _fields_of(word: str) -> tuple[str, ...]:
    specs = specs_of(kind_named(word).owner)
    return tuple(name for name, spec in specs.items() if spec.kind is not FieldKind.ID)


def _labels(farm: Farm) -> dict[Id, str]:
    """Return id -> what a person calls it, for everything that can be referred to."""
    return {thing.id: label_of(thing) for kind in KINDS for thing in things(farm, kind.word)}


def _cell(thing: Any, field: str, labels: dict[Id, str]) -> Value:
    value = getattr(thing, field)
    if isinstance(value, Enum):
        return str(value.value)
    if specs_of(type(thing))[field].kind is FieldKind.REFERENCE:
        return labels.get(value, "")  # what a log entry was about may be gone
    if isinstance(value, tuple):
        return "; ".join(f"{each:g}" if isinstance(each, int | float) else str(each) for each in value)
    found: Value = value
    return found


def _batches(name: str, ground: TableGround) -> PlainTable:
    """Return the batches as entered, and beside them what is foreseen for each."""
    entered = _entered(name, "batch", ground)
    table, ruler = ground.forecast.batches, ground.forecast.ruler
    more = ("seeds", "in_bed_from", "harvest_from", "harvest_until", "cleared_on", "area_m2")
    rows = []
    for row, cells in enumerate(entered.rows):
        first, behind = table.pick_days(row)
        in_bed, cleared = table.phase_days(row, Phase.BED)
        days = (ruler.date_of(day) for day in (in_bed, first, behind - 1, cleared))
        rows.append((*cells, int(table.seeds[row]), *days, _rounded(table.area_m2[row])))
    return PlainTable(name=name, columns=(*entered.columns, *more), rows=tuple(rows))


# --- what is foreseen --------------------------------------------------------------------------------


def _of_dicts(name: str, rows: Sequence[dict[str, Any]], columns: Sequence[str]) -> PlainTable:
    return PlainTable(
        name=name,
        columns=tuple(columns),
        rows=tuple(tuple(row.get(column) for column in columns) for row in rows),
    )


def _weeks(name: str, ground: TableGround) -> PlainTable:
    data = forecast_data(ground.farm, ground.forecast, ground.bands, span=ground.span)
    rows = list(forecast_rows(data))
    return _of_dicts(name, rows, list(rows[0]) if rows else ["loop", "week"])


def _elements(name: str, ground: TableGround) -> PlainTable:
    data = forecast_data(ground.farm, ground.forecast, ground.bands, span=ground.span)
    rows = [
        {
            "loop": loop["loop"],
            "week": week["week"],
            "start": date.fromisoformat(week["start"]),
            "element": symbol,
        }
        | figures
        for loop in data["loops"]
        for week in loop["weeks"]
        for symbol, figures in week["elements"].items()
    ]
    return _of_dicts(name, rows, list(rows[0]) if rows else ["loop", "week", "element"])


def _fish(name: str, ground: TableGround) -> PlainTable:
    data = forecast_data(ground.farm, ground.forecast, ground.bands, span=ground.span)
    rows = [
        {"loop": loop["loop"], "week": week["week"], "start": date.fromisoformat(week["start"])} | group
        for loop in data["loops"]
        for week in loop["weeks"]
        for group in week["fish"]
    ]
    return _of_dicts(name, rows, list(rows[0]) if rows else ["loop", "week", "group"])


def _harvest(name: str, ground: TableGround) -> PlainTable:
    forecast = ground.forecast
    data = forecast_data(ground.farm, forecast, ground.bands, span=ground.span)
    rows = [
        {"week": week["week"], "start": date.fromisoformat(week["start"])} | crop
        for week in data["harvest"]
        for crop in week["crops"]
    ]
    return _of_dicts(name, rows, ("week", "start", "crop", "plants", "kg"))


def _tasks(name: str, ground: TableGround) -> PlainTable:
    days = ground.forecast.ruler.days
    rows = tuple(
        (
            task.on,
            task.kind.value,
            task.what,
            task.crop,
            _rounded(task.many),
            task.unit.value,
            "; ".join(wheres_words(task.where)),
        )
        for task in due_between(ground.farm, ground.forecast, first_day=0, last_day=days)
    )
    return PlainTable(name=name, columns=("on", "do", "what", "crop", "many", "unit", "where"), rows=rows)


def _occupancy(name: str, ground: TableGround) -> PlainTable:
    """Return, for each bed and week, the most places held on any day of it."""
    ruler = ground.forecast.ruler
    by_day = {bed.id: [0] * ruler.days for bed in ground.farm.beds}
    for hold in holds(ground.farm, ground.forecast):
        first, behind = max(ruler.day_of(hold.from_on), 0), min(ruler.day_of(hold.until_on), ruler.days)
        for day in range(first, behind):
            by_day[hold.bed][day] += hold.last - hold.first + 1
    rows = []
    for bed in ground.farm.beds:
        for week in range(ruler.weeks):
            most = max(by_day[bed.id][week * DAYS_PER_WEEK : (week + 1) * DAYS_PER_WEEK])
            rows.append(
                (bed.name, ruler.week_name(week), ruler.week_start(week), bed.places, most, bed.places - most)
            )
    return PlainTable(name=name, columns=("bed", "week", "start", "places", "held", "free"), rows=tuple(rows))


def _orders(name: str, ground: TableGround) -> PlainTable:
    columns = ("month", "kind", "key", "name", "detail", "amount", "unit", "in_stock", "to_buy")
    rows = tuple(
        tuple(_plain(getattr(line, column)) for column in columns)
        for line in order_list(ground.farm, ground.forecast, ground.catalogue)
    )
    return PlainTable(name=name, columns=columns, rows=rows)


def _plain(value: Any) -> Value:
    if isinstance(value, Enum):
        return str(value.value)
    return _rounded(value) if isinstance(value, float) else value


_DIGITS: Final = 6


def _rounded(value: Any) -> float:
    return round(float(value), _DIGITS)


_MADE: Final[dict[str, Callable[[str, TableGround], PlainTable]]] = {
    "batches": _batches,
    "weeks": _weeks,
    "elements": _elements,
    "harvest": _harvest,
    "tasks": _tasks,
    "fish": _fish,
    "occupancy": _occupancy,
    "orders": _orders,
}
TABLES: Final = (*_MADE, *_KINDS)
"""Every table there is, by name."""


def all_tables(ground: TableGround) -> Iterator[PlainTable]:
    """Yield every table."""
    for name in TABLES:
        yield table_of(name, ground)
