"""Published cases as values, taken strictly from parsed tables.

A `[[case]]` is one published figure. A `[[table]]` is a printed table: each row makes one case. A
`[[system]]` is a figure of a whole farm, or of one farm over another. A `[[not_computed]]` is a
published result that the program has no means to work out; it is shown with what is lacking. Must not
know how anything is computed.
"""

from __future__ import annotations

from collections.abc import Collection, Iterator, Mapping
from dataclasses import dataclass, replace
from enum import StrEnum
from typing import Any, Final, TypeVar

from planner.catalogue.checking import Spot, as_number, number_taken, refuse_others, taken, texts_taken
from planner.catalogue.errors import known_words
from planner.catalogue.reading import Table

Input = float | str | tuple[float, ...]
Word = TypeVar("Word", bound=StrEnum)

_AREA_KEYS: Final = ("title", "case", "table", "system", "not_computed")
_SHARED_KEYS: Final = (
    "key",
    "title",
    "note",
    "formula",
    "inputs",
    "unit",
    "reason",
    "source",
    "confidence",
    "tolerance",
    "tolerance_percent",
    "fitted",
    "assumed",
)
_FIGURE_KEYS: Final = (*_SHARED_KEYS, "published")
_CASE_KEYS: Final = (*_FIGURE_KEYS, "assumed_ranges")
_SYSTEM_KEYS: Final = (*_FIGURE_KEYS, "farm", "against")
_TABLE_KEYS: Final = (*_SHARED_KEYS, "assumed_ranges", "columns", "rows")
_LACKING_KEYS: Final = ("key", "title", "published", "lacks", "source", "confidence", "note")
_FIGURE_COLUMNS: Final = ("published", "tolerance", "tolerance_percent")
_ENDS: Final = ("low", "high")
_PERCENT: Final = 100.0


class Reason(StrEnum):
    """Where the tolerance of a case comes from."""

    ROUNDING = "rounding of the print"
    ARITHMETIC = "exact arithmetic"
    STATED = "stated by the source"
    SPREAD = "spread the source gives"
    PHYSICS = "physics"
    FIELD = "field conditions"
    AIM = "aim of the check"
    ORDER = "order only"


class Held(StrEnum):
    """How the published figure of a case is held; one from memory judges nothing."""

    READ = "read"
    DERIVED = "derived"
    MEMORY = "from memory"


@dataclass(frozen=True, slots=True, kw_only=True)
class Assumed:
    """What a case takes for granted where its publication is silent.

    `ranges` are the inputs that are assumed, each with the low and the high end of what it may be. Where
    there are none, how far the figure may be off is not known, and nothing is judged.
    """

    words: str
    ranges: tuple[tuple[str, float, float], ...] = ()


@dataclass(frozen=True, slots=True, kw_only=True)
class Case:
    """One published figure with all it takes to work it out again.

    `tolerance` is in `unit`. `farm` names the farm text of a whole-system case, and is empty for any
    other; with `against` the figure is that of `farm` over that of `against`. `source` is a key of the
    publications. `fitted` says which shipped figure was drawn from that publication where its row names
    another one. A case whose reason is `ORDER` holds a ratio and judges on which side of 1 it lies.
    """

    key: str
    area: str
    title: str
    note: str
    formula: str
    inputs: tuple[tuple[str, Input], ...]
    unit: str
    published: float
    tolerance: float
    reason: Reason
    source: str
    confidence: Held
    farm: str = ""
    against: str = ""
    fitted: str = ""
    assumed: Assumed | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class Lacking:
    """A published result that the program cannot work out: what was printed, and what is lacking."""

    key: str
    area: str
    title: str
    published: str
    lacks: str
    source: str
    confidence: Held
    note: str


@dataclass(frozen=True, slots=True, kw_only=True)
class Area:
    """The cases of one field, such as water, and what of it the program cannot work out."""

    key: str
    title: str
    cases: tuple[Case, ...]
    lacking: tuple[Lacking, ...] = ()


def areas_taken(tables: Mapping[str, Table], *, sources: Collection[str]) -> tuple[Area, ...]:
    """Return the areas of parsed files, in the order given.

    Raises:
        CatalogueError: something is missing, unknown, of the wrong kind or there twice; the message
            names file, key and field.
    """
    areas = tuple(_area_taken(key, table, sources) for key, table in tables.items())
    seen: dict[str, str] = {}
    for area in areas:
        for key in (*(case.key for case in area.cases), *(each.key for each in area.lacking)):
            if key in seen:
                raise _spot(area.key, key).wrong("key", f"stands in {seen[key]} already")
            seen[key] = area.key
    return areas


def _spot(area: str, key: str = "") -> Spot:
    return Spot(file=f"verify/{area}.toml", key=key)


def _area_taken(key: str, table: Table, sources: Collection[str]) -> Area:
    spot = _spot(key)
    refuse_others(table, _AREA_KEYS, spot)
    cases = (
        *(_case_taken(row, key, _CASE_KEYS, sources) for row in _listed(table, "case", spot)),
        *(_case_taken(row, key, _SYSTEM_KEYS, sources) for row in _listed(table, "system", spot)),
        *(case for row in _listed(table, "table", spot) for case in _rows_taken(row, key, sources)),
    )
    lacking = tuple(_lacking_taken(row, key, sources) for row in _listed(table, "not_computed", spot))
    return Area(key=key, title=taken(table, "title", str, spot), cases=cases, lacking=lacking)


def _listed(table: Table, field: str, spot: Spot) -> list[Table]:
    rows = table.get(field, [])
    if not isinstance(rows, list) or not all(isinstance(row, dict) for row in rows):
        raise spot.wrong(field, f"must be tables [[{field}]]")
    return rows


def _case_taken(table: Table, area: str, allowed: Collection[str], sources: Collection[str]) -> Case:
    spot = _spot(area, taken(table, "key", str, _spot(area)))
    refuse_others(table, allowed, spot)
    published = number_taken(table, "published", spot)
    case = replace(
        _frame(table, area, spot, sources),
        published=published,
        farm=taken(table, "farm", str, spot) if "farm" in allowed else "",
        against=_text(table, "against", spot),
    )
    return replace(case, tolerance=_case_tolerance(table, case, spot))


def _case_tolerance(table: Table, case: Case, spot: Spot) -> float:
    """Return the tolerance; a case that judges on order only carries none but its distance from 1."""
    if case.reason is not Reason.ORDER:
        return _tolerance(table, case.published, spot)
    if "tolerance" in table or "tolerance_percent" in table:
        raise spot.wrong("tolerance", "must be left out where only the order is judged")
    if case.published == 1.0:
        raise spot.wrong("published", "is 1, which is no order; give a tolerance instead")
    return abs(case.published - 1.0)


def _assumed(table: Table, spot: Spot) -> Assumed | None:
    """Return what is taken for granted, with the inputs it is about and their ranges where given."""
    if "assumed" not in table:
        if "assumed_ranges" in table:
            raise spot.wrong("assumed", "is missing, but ranges of what is assumed are given")
        return None
    ranges = taken(table, "assumed_ranges", dict, spot) if "assumed_ranges" in table else {}
    given = taken(table, "inputs", dict, spot) if ranges else {}
    return Assumed(
        words=taken(table, "assumed", str, spot),
        ranges=tuple(_range_taken(name, ends, given, spot) for name, ends in ranges.items()),
    )


def _range_taken(name: str, ends: Any, given: Table, spot: Spot) -> tuple[str, float, float]:
    field = f"assumed_ranges.{name}"
    if name not in given:
        raise spot.wrong(field, "is no input of the case")
    if not isinstance(ends, list) or len(ends) != len(_ENDS):
        raise spot.wrong(field, f"is {ends!r}, but must be the low and the high end")
    low, high = (as_number(end, field, spot) for end in ends)
    if not low <= as_number(given[name], field, spot) <= high:
        raise spot.wrong(field, f"is {low:g} to {high:g}, which leaves out the input {given[name]:g}")
    return name, low, high


def _text(table: Table, field: str, spot: Spot) -> str:
    """Return a text that may be left out."""
    return taken(table, field, str, spot) if field in table else ""


def _lacking_taken(table: Table, area: str, sources: Collection[str]) -> Lacking:
    spot = _spot(area, taken(table, "key", str, _spot(area)))
    refuse_others(table, _LACKING_KEYS, spot)
    return Lacking(
        key=spot.key,
        area=area,
        title=taken(table, "title", str, spot),
        published=taken(table, "published", str, spot),
        lacks=taken(table, "lacks", str, spot),
        source=_source(table, sources, spot),
        confidence=_word_taken(table, "confidence", Held, spot),
        note=_text(table, "note", spot),
    )


def _source(table: Table, sources: Collection[str], spot: Spot) -> str:
    source = taken(table, "source", str, spot)
    if source not in sources:
        raise spot.wrong("source", f"{source!r} is no publication. {known_words(source, sources)}")
    return source


def _frame(table: Table, area: str, spot: Spot, sources: Collection[str]) -> Case:
    """Return what a case and a printed table have in common, as a case without its figure."""
    return Case(
        key=spot.key,
        area=area,
        title=taken(table, "title", str, spot),
        note=_text(table, "note", spot),
        formula=taken(table, "formula", str, spot),
        inputs=_inputs_taken(table, spot),
        unit=taken(table, "unit", str, spot),
        published=0.0,
        tolerance=0.0,
        reason=_word_taken(table, "reason", Reason, spot),
        source=_source(table, sources, spot),
        confidence=_word_taken(table, "confidence", Held, spot),
        fitted=_text(table, "fitted", spot),
        assumed=_assumed(table, spot),
    )


def _word_taken(table: Table, field: str, kind: type[Word], spot: Spot) -> Word:
    word = taken(table, field, str, spot)
    try:
        return kind(word)
    except ValueError:
        raise spot.wrong(field, f"is {word!r}, but must be one of {', '.join(kind)}") from None


def _inputs_taken(table: Table, spot: Spot) -> tuple[tuple[str, Input], ...]:
    if "inputs" not in table:
        return ()
    inputs = taken(table, "inputs", dict, spot)
    return tuple((name, _input(value, f"inputs.{name}", spot)) for name, value in inputs.items())


def _input(value: Any, field: str, spot: Spot) -> Input:
    if isinstance(value, str):
        return value
    if isinstance(value, list):
        return tuple(as_number(entry, field, spot) for entry in value)
    return as_number(value, field, spot)


def _tolerance(table: Mapping[str, Any], published: float, spot: Spot) -> float:
    """Return the tolerance in the unit of the figure; it is written in that unit or in percent."""
    given = [field for field in ("tolerance", "tolerance_percent") if field in table]
    if len(given) != 1:
        raise spot.wrong("tolerance", "must be given once, as tolerance or as tolerance_percent")
    (field,) = given
    number = as_number(table[field], field, spot)
    if number < 0.0:
        raise spot.wrong(field, f"is {number:g}, but must be at least 0")
    return number if field == "tolerance" else abs(published) * number / _PERCENT


def _rows_taken(table: Table, area: str, sources: Collection[str]) -> Iterator[Case]:
    """Yield a case for each row of a printed table; the columns fill the inputs and the title."""
    spot = _spot(area, taken(table, "key", str, _spot(area)))
    refuse_others(table, _TABLE_KEYS, spot)
    columns = texts_taken(table, "columns", spot)
    if "published" not in columns:
        raise spot.wrong("columns", "has no column published")
    frame = _frame(table, area, spot, sources)
    for row in taken(table, "rows", list, spot):
        if not isinstance(row, list) or len(row) != len(columns):
            raise spot.wrong("rows", f"holds {row!r}, but must be rows of {len(columns)} entries")
        yield _row_case(frame, table, dict(zip(columns, row, strict=True)), spot)


def _row_case(frame: Case, table: Table, row: dict[str, Any], spot: Spot) -> Case:
    published = number_taken(row, "published", spot)
    figures: dict[str, Any] = {name: row[name] for name in _FIGURE_COLUMNS if name in row}
    own = tuple((name, _input(row[name], name, spot)) for name in row if name not in _FIGURE_COLUMNS)
    inputs = (*frame.inputs, *own)
    shared: dict[str, Any] = {name: table[name] for name in _FIGURE_COLUMNS if name in table}
    case = replace(
        frame,
        key="-".join([frame.key, *(_said(value) for _, value in own)]),
        title=_titled(frame.title, dict(inputs), spot),
        inputs=inputs,
        published=published,
    )
    return replace(case, tolerance=_case_tolerance({**shared, **figures}, case, spot))


def _said(value: Input) -> str:
    if isinstance(value, tuple):
        return "-".join(f"{number:g}" for number in value)
    return value if isinstance(value, str) else f"{value:g}"


def _titled(pattern: str, inputs: Mapping[str, Input], spot: Spot) -> str:
    try:
        return pattern.format_map({name: _said(value) for name, value in inputs.items()})
    except (KeyError, ValueError, IndexError) as error:
        raise spot.wrong("title", f"names {error}, which is no input") from None
