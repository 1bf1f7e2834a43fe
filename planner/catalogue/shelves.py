"""Reads the shelves that hold neither crops nor fish: publications, cautions, tables, elements."""

from __future__ import annotations

from collections.abc import Collection, Iterable, Mapping
from itertools import pairwise
from typing import Any, Final

from planner.catalogue import schema
from planner.catalogue.catalogue import Caution, ElementSplit, Emergence, FeedingTable, Publication
from planner.catalogue.checking import Spot, numbers_taken, refuse_others, rows_taken, taken, texts_taken
from planner.catalogue.entries import FIGURES
from planner.catalogue.figure import Figure
from planner.catalogue.reading import Table
from planner.catalogue.rows import confidence_taken, figure_taken, figures_taken, source_taken
from planner.farm.fields import FieldSpec
from planner.farm.species import ELEMENTS

_PUBLICATION_TEXTS: Final = ("authors", "title", "where", "note")
_CAUTION_TEXTS: Final = ("topic", "text", "basis")
_HELD: Final = ("source", "confidence", "conditions")
_TABLE_KEYS: Final = (*_HELD, "key", "name", "species", "weights_g", "temperatures_c", "percent_per_day")
_EMERGENCE_KEYS: Final = (*_HELD, "key", "crops", "days", "none_c", "normal_percent")
_LOOP_SHELVES: Final = {"loop": schema.LOOP_SPECS, "feed_rate": schema.FEED_RATE_SPECS}


def publications_taken(tables: Table, file: str) -> dict[str, Publication]:
    """Return all publications by key."""
    return {key: _publication(_sub(tables, key, file), Spot(file=file, key=key)) for key in tables}


def _publication(table: Table, spot: Spot) -> Publication:
    refuse_others(table, (*_PUBLICATION_TEXTS, "year"), spot)
    texts = {name: taken(table, name, str, spot) for name in _PUBLICATION_TEXTS}
    return Publication(key=spot.key, year=taken(table, "year", int, spot), **texts)


def cautions_taken(tables: Table, file: str) -> dict[str, Caution]:
    """Return all cautions by key."""
    return {key: _caution(_sub(tables, key, file), Spot(file=file, key=key)) for key in tables}


def _caution(table: Table, spot: Spot) -> Caution:
    refuse_others(table, (*_CAUTION_TEXTS, "where"), spot)
    texts = {name: taken(table, name, str, spot) for name in _CAUTION_TEXTS}
    return Caution(key=spot.key, where=texts_taken(table, "where", spot), **texts)


def feeding_table_taken(
    table: Table, spot: Spot, *, sources: Collection[str], fish: Collection[str]
) -> FeedingTable:
    """Return a feeding table whose nodes rise and whose rows and columns match them."""
    refuse_others(table, _TABLE_KEYS, spot)
    species = taken(table, "species", str, spot)
    if species not in fish:
        raise spot.wrong("species", f"{species!r} is no fish of the catalogue")
    weights, temperatures = (_rising(table, name, spot) for name in ("weights_g", "temperatures_c"))
    rows = rows_taken(table, "percent_per_day", spot)
    if len(rows) != len(temperatures) or any(len(row) != len(weights) for row in rows):
        size = f"{len(temperatures)} rows of {len(weights)} numbers"
        raise spot.wrong("percent_per_day", f"must have {size}, one row per temperature")
    if any(not 0 <= percent <= 100 for row in rows for percent in row):
        raise spot.wrong("percent_per_day", "holds a number that is not within 0 to 100")
    return FeedingTable(
        key=spot.key,
        name=taken(table, "name", str, spot),
        species=species,
        weights_g=weights,
        temperatures_c=temperatures,
        percent_per_day=rows,
        **_held(table, spot, sources),
    )


def emergence_taken(
    table: Table, spot: Spot, *, sources: Collection[str], crops: Collection[str]
) -> Emergence:
    """Return the emergence of one seed by temperature."""
    refuse_others(table, _EMERGENCE_KEYS, spot)
    keys = texts_taken(table, "crops", spot)
    for key in keys:
        if key not in crops:
            raise spot.wrong("crops", f"{key!r} is no crop of the catalogue")
    days, normal = (_pairs(table, name, spot) for name in ("days", "normal_percent"))
    if any(not 0 <= percent <= 100 for _, percent in normal):
        raise spot.wrong("normal_percent", "holds a number that is not within 0 to 100")
    return Emergence(
        key=spot.key,
        crops=keys,
        days=days,
        none_c=numbers_taken(table, "none_c", spot),
        normal_percent=normal,
        **_held(table, spot, sources),
    )


def elements_taken(
    tables: Table, file: str, *, sources: Collection[str]
) -> tuple[dict[str, ElementSplit], list[Figure]]:
    """Return how each element splits, and the figures of elements, loop, bands and waters."""
    refuse_others(tables, ("element", *_LOOP_SHELVES, *schema.WATERS), Spot(file=file))
    splits: dict[str, ElementSplit] = {}
    figures: list[Figure] = []
    elements = _sub(tables, "element", file)
    refuse_others(elements, ELEMENTS, Spot(file=file, key="element"))
    for element in ELEMENTS:
        spot = Spot(file=file, key=f"element.{element}")
        table = taken(elements, element, dict, spot)
        refuse_others(table, ("name", FIGURES), spot)
        found = _shelf(table, f"element/{element}", spot, schema.ELEMENT_SPECS, sources)
        values = {name: figure.value for name, figure in found.items()}
        splits[element] = ElementSplit(key=element, name=taken(table, "name", str, spot), **values)
        figures.extend(found.values())
    figures.extend(_loop_figures(tables, file, sources))
    return splits, figures


def coefficients_taken(tables: Table, shelf: str, file: str, *, sources: Collection[str]) -> list[Figure]:
    """Return the coefficients of one file, `coefficient/<file>/<name>`."""
    return [
        figure_taken(
            _sub(tables, key, file),
            f"coefficient/{shelf}/{key}",
            Spot(file=file, key=key),
            sources=sources,
            narrow=True,
        )
        for key in tables
    ]


def _loop_figures(tables: Table, file: str, sources: Collection[str]) -> Iterable[Figure]:
    for shelf, specs in _LOOP_SHELVES.items():
        spot = Spot(file=file, key=shelf)
        yield from _shelf(_sub(tables, shelf, file), shelf, spot, specs, sources).values()
    for shelf, names in schema.WATERS.items():
        waters = _sub(tables, shelf, file)
        refuse_others(waters, names, Spot(file=file, key=shelf))
        for name in names:
            spot = Spot(file=file, key=f"{shelf}.{name}")
            table = taken(waters, name, dict, spot)
            yield from _shelf(table, f"{shelf}/{name}", spot, schema.WATER_SPECS, sources).values()


def _shelf(
    table: Table, shelf: str, spot: Spot, specs: Mapping[str, FieldSpec], sources: Collection[str]
) -> dict[str, Figure]:
    return figures_taken(taken(table, FIGURES, dict, spot), shelf, spot, specs=specs, sources=sources)


def _held(table: Table, spot: Spot, sources: Collection[str]) -> dict[str, Any]:
    confidence = confidence_taken(table, spot)
    return {
        "confidence": confidence,
        "source": source_taken(table, spot, confidence=confidence, sources=sources),
        "conditions": taken(table, "conditions", str, spot),
    }


def _rising(table: Table, field: str, spot: Spot) -> tuple[float, ...]:
    nodes = numbers_taken(table, field, spot)
    if not nodes or any(later <= earlier for earlier, later in pairwise(nodes)):
        raise spot.wrong(field, "must be one or more numbers, each above the one before")
    return nodes


def _pairs(table: Table, field: str, spot: Spot) -> tuple[tuple[float, float], ...]:
    found: list[tuple[float, float]] = []
    for row in rows_taken(table, field, spot):
        if len(row) != 2:
            raise spot.wrong(field, f"holds {list(row)}, but must be pairs of temperature and value")
        found.append((row[0], row[1]))
    return tuple(found)


def _sub(tables: Table, key: str, file: str) -> Table:
    return taken(tables, key, dict, Spot(file=file, key=key))
