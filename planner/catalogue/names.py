"""What crops, fish and products are called in other languages, and the catalogue under those names.

Names lie in `resources/words/names_*.toml`, those of crops and fish with the botanical name they stand for,
those of feeds, supplements and feeding tables with the English one. Keys,
figures and sources stay as they are: a farm never holds a name of the catalogue. Must know nothing of windows
or paper.
"""

from __future__ import annotations

import dataclasses
import tomllib
from collections.abc import Mapping
from types import MappingProxyType
from typing import Any, Final, TypeVar

from planner.catalogue.catalogue import Catalogue, FeedingTable
from planner.catalogue.errors import CatalogueError
from planner.farm.species import Crop, Feed, FishSpecies, Supplement
from planner.shipped import shipped_path

SPECIES: Final = ("crops", "fish")
PRODUCTS: Final = ("feeds", "supplements", "feeding_tables")
SHELVES: Final = (*SPECIES, *PRODUCTS)
CODE_OF_LANGUAGE: Final = {"filipino": "fil", "spanish": "es"}
"""The code in ISO 639 by the word that a second language on paper is asked for with."""
_BESIDE: Final = "{name} ({other})"

E = TypeVar("E", Crop, FishSpecies, Feed, Supplement, FeedingTable)


def names_in(language: str) -> Mapping[str, Mapping[str, str]]:
    """Return the names in a language (a code such as "fil") by shelf and key; empty when there are none.

    Raises:
        CatalogueError: the file of the language is no TOML, or holds something else than names.
    """
    path = shipped_path("resources", "words", f"names_{language}.toml")
    if not language.isalpha() or not path.is_file():
        return {}
    try:
        read = tomllib.loads(path.read_text(encoding="utf-8"))
        return {shelf: _names(read.get(shelf, {})) for shelf in SHELVES}
    except (tomllib.TOMLDecodeError, KeyError, TypeError, AttributeError) as fault:
        raise CatalogueError(f"cannot be read ({fault})", file=path.name) from fault


def _names(table: Mapping[str, Mapping[str, Any]]) -> dict[str, str]:
    return {key: str(row["name"]) for key, row in table.items()}


def named_in(catalogue: Catalogue, language: str) -> Catalogue:
    """Return the catalogue with its entries under their names in a language; others keep theirs."""
    return _renamed(catalogue, language, "{other}")


def named_beside(catalogue: Catalogue, language: str) -> Catalogue:
    """Return the catalogue with the names in a second language in brackets behind those it has."""
    return _renamed(catalogue, language, _BESIDE)


def _renamed(catalogue: Catalogue, language: str, form: str) -> Catalogue:
    names = names_in(language)
    if not names:
        return catalogue
    return dataclasses.replace(
        catalogue,
        crops=_shelf(catalogue.crops, names["crops"], form),
        fish=_shelf(catalogue.fish, names["fish"], form),
        feeds=_shelf(catalogue.feeds, names["feeds"], form),
        supplements=_shelf(catalogue.supplements, names["supplements"], form),
        feeding_tables=_shelf(catalogue.feeding_tables, names["feeding_tables"], form),
    )


def _shelf(entries: Mapping[str, E], names: Mapping[str, str], form: str) -> Mapping[str, E]:
    return MappingProxyType({key: _entry(entry, names.get(key), form) for key, entry in entries.items()})


def _entry(entry: E, other: str | None, form: str) -> E:
    if other is None or other == entry.name:
        return entry
    return dataclasses.replace(entry, name=form.format(name=entry.name, other=other))
