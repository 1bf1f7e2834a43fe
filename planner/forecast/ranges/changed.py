"""Lays other values of figures over a catalogue, as if the book had them."""

from __future__ import annotations

import dataclasses
from collections.abc import Mapping
from types import MappingProxyType
from typing import Any, Final

from planner.catalogue.catalogue import Catalogue, ElementSplit
from planner.catalogue.schema import out_of_order
from planner.farm.species import FishSpecies

_PLACES: Final = {"crop": "crops", "fish": "fish", "feed": "feeds", "supplement": "supplements"}
_STAGE: Final = "stage"
_ELEMENT: Final = "element"


def with_values(catalogue: Catalogue, values: Mapping[str, float]) -> Catalogue:
    """Return a catalogue in which some figures have other values; the first one is unchanged.

    A value that would put an entry's temperatures out of order is left out. Raises
    `UnknownFigureError` for a path that is none.
    """
    shelves: dict[str, dict[str, Any]] = {}
    figures = dict(catalogue.figures)
    for path, value in values.items():
        figure = catalogue.figure(path)
        shelf, key, *name = path.split("/")
        place = _PLACES.get(shelf, "elements" if shelf == _ELEMENT else "")
        if place:
            entries = shelves.setdefault(place, dict(getattr(catalogue, place)))
            made = _with_value(entries[key], name, value)
            if _is_out_of_order(shelf, made):
                continue
            entries[key] = made
        figures[path] = dataclasses.replace(figure, value=value)
    laid: dict[str, Any] = {place: MappingProxyType(entries) for place, entries in shelves.items()}
    return dataclasses.replace(catalogue, figures=MappingProxyType(figures), **laid)


def _with_value(entry: Any, name: list[str], value: float) -> Any:
    if name[0] != _STAGE:
        return dataclasses.replace(entry, **{name[0]: value})
    assert isinstance(entry, FishSpecies)
    number, field = int(name[1]) - 1, name[2]
    stages = list(entry.stages)
    changed: dict[str, Any] = {field: value}
    stages[number] = dataclasses.replace(stages[number], **changed)
    return dataclasses.replace(entry, stages=tuple(stages))


def _is_out_of_order(shelf: str, entry: Any) -> bool:
    if isinstance(entry, ElementSplit) or shelf not in ("crop", "fish"):
        return False
    names = (field.name for field in dataclasses.fields(entry))
    return out_of_order(shelf, {name: getattr(entry, name) for name in names}) is not None
