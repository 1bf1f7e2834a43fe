"""Turns a row of a file into a figure, checked against unit, limits and publications."""

from __future__ import annotations

from collections.abc import Collection, Mapping
from typing import Final

from planner.catalogue.checking import Spot, as_number, number_taken, refuse_others, taken
from planner.catalogue.errors import known_words
from planner.catalogue.figure import Confidence, Figure
from planner.catalogue.reading import Table
from planner.farm.checks import limit_text
from planner.farm.fields import FieldSpec

_ROW_KEYS: Final = frozenset({"value", "low", "high", "unit", "conditions", "source", "confidence", "note"})
_WRITTEN: Final = {entry.value: entry for entry in Confidence if entry is not Confidence.GROWERS_VALUE}


def confidence_taken(table: Table, spot: Spot) -> Confidence:
    """Return the confidence written in a table; a grower's value is never written in a file."""
    word = taken(table, "confidence", str, spot)
    if word not in _WRITTEN:
        raise spot.wrong("confidence", f"is {word!r}, but must be one of {', '.join(_WRITTEN)}")
    return _WRITTEN[word]


def source_taken(table: Table, spot: Spot, *, confidence: Confidence, sources: Collection[str]) -> str:
    """Return the source written in a table; only a figure that was not read may have none."""
    source = taken(table, "source", str, spot)
    if source and source not in sources:
        raise spot.wrong("source", f"{source!r} is no publication. {known_words(source, sources)}")
    if not source and confidence is Confidence.READ:
        raise spot.wrong("source", 'is empty, but a figure with confidence "read" needs one')
    return source


def figure_taken(
    table: Table, path: str, spot: Spot, *, sources: Collection[str], narrow: bool = False
) -> Figure:
    """Return the figure written in a row.

    `narrow` allows a row without `low` and `high`: a constant that has no spread.
    """
    refuse_others(table, _ROW_KEYS, spot)
    value = number_taken(table, "value", spot)
    low = as_number(table["low"], "low", spot) if "low" in table or not narrow else value
    high = as_number(table["high"], "high", spot) if "high" in table or not narrow else value
    if not low <= value <= high:
        raise spot.wrong("value", f"is {value:g}, but must lie within {low:g} to {high:g}")
    confidence = confidence_taken(table, spot)
    return Figure(
        path=path,
        value=value,
        low=low,
        high=high,
        unit=taken(table, "unit", str, spot),
        conditions=taken(table, "conditions", str, spot),
        source=source_taken(table, spot, confidence=confidence, sources=sources),
        confidence=confidence,
        note=taken(table, "note", str, spot) if "note" in table else "",
    )


def figures_taken(
    table: Table, shelf: str, spot: Spot, *, specs: Mapping[str, FieldSpec], sources: Collection[str]
) -> dict[str, Figure]:
    """Return field name -> figure for all rows in `specs`; none may be missing, none added."""
    refuse_others(table, specs, spot)
    found: dict[str, Figure] = {}
    for name, spec in specs.items():
        row_spot = spot.at(f"{spot.key}: {name}")
        row = taken(table, name, dict, spot)
        found[name] = figure_taken(row, f"{shelf}/{name}", row_spot, sources=sources)
        _check_limits(found[name], spec, row_spot)
    return found


def _check_limits(figure: Figure, spec: FieldSpec, spot: Spot) -> None:
    if figure.unit != spec.unit:
        raise spot.wrong("unit", f"is {figure.unit!r}, but must be {spec.unit!r}")
    assert isinstance(spec.low, (int, float))
    assert isinstance(spec.high, (int, float))
    for field, value in (("low", figure.low), ("high", figure.high)):
        if not spec.low <= value <= spec.high:
            raise spot.wrong(field, f"is {value:g}, but must lie within {limit_text(spec)}")
