"""Reads the whole catalogue from the `resources` folder.

A file that is wrong stops the reading with an error that names file, key and field. Must not know
what the figures are for.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass
from pathlib import Path
from types import MappingProxyType
from typing import Final, Protocol, TypeVar

from planner.catalogue import entries, shelves
from planner.catalogue.catalogue import Catalogue, Caution, Emergence, FeedingTable, Publication
from planner.catalogue.checking import Spot, refuse_others, tables_taken, taken
from planner.catalogue.entries import E, Read
from planner.catalogue.errors import CatalogueError
from planner.catalogue.figure import Figure
from planner.catalogue.reading import Table, read_tables
from planner.farm.species import Crop, Feed, FishSpecies, Supplement
from planner.shipped import shipped_path

_SUFFIX: Final = ".toml"

_Publications = Mapping[str, Publication]


class _Keyed(Protocol):
    @property
    def key(self) -> str: ...


K = TypeVar("K", bound=_Keyed)


def shipped_catalogue() -> Catalogue:
    """Return the catalogue that ships with the program."""
    return load_catalogue(shipped_path("resources"))


def load_catalogue(folder: Path) -> Catalogue:
    """Return the catalogue of a resources folder, which holds `catalogue/` and `coefficients/`.

    Raises:
        CatalogueError: a file is missing or wrong; the message names file, key and field.
    """
    book = folder / "catalogue"
    publications = shelves.publications_taken(*_file(book, "publications.toml"))
    cautions = shelves.cautions_taken(*_file(book, "cautions.toml"))
    kept = _kept(book, publications, cautions)
    splits, loop_figures = shelves.elements_taken(*_file(book, "elements.toml"), sources=publications)
    coefficients = _coefficients(folder / "coefficients", publications)
    return Catalogue(
        crops=_shelf_of(kept.crops, "crops"),
        fish=_shelf_of(kept.fish, "fish"),
        feeds=_shelf_of(kept.feeds, "feeds.toml"),
        supplements=_shelf_of(kept.supplements, "supplements.toml"),
        feeding_tables=_feeding_tables(book, publications, _keys(kept.fish)),
        emergence=_emergence(book, publications, _keys(kept.crops)),
        elements=MappingProxyType(splits),
        cautions=MappingProxyType(cautions),
        publications=MappingProxyType(publications),
        figures=MappingProxyType(
            {each.path: each for each in (*kept.figures(), *loop_figures, *coefficients)}
        ),
    )


@dataclass(frozen=True, slots=True, kw_only=True)
class _Kept:
    """All that can be kept on a farm, with the figures behind it."""

    crops: list[Read[Crop]]
    fish: list[Read[FishSpecies]]
    feeds: list[Read[Feed]]
    supplements: list[Read[Supplement]]

    def figures(self) -> Iterator[Figure]:
        """Yield every figure of every entry."""
        for shelf in (self.crops, self.fish, self.feeds, self.supplements):
            for read in shelf:
                yield from read.figures


def _kept(book: Path, publications: _Publications, cautions: Mapping[str, Caution]) -> _Kept:
    return _Kept(
        crops=_crops(book, publications),
        fish=[
            entries.fish_taken(table, spot, sources=publications, cautions=cautions)
            for spot, table in _file_each(book, "fish")
        ],
        feeds=[
            entries.feed_taken(table, spot, sources=publications) for spot, table in _listed(book, "feed")
        ],
        supplements=[
            entries.supplement_taken(table, spot, sources=publications, cautions=cautions)
            for spot, table in _listed(book, "supplement")
        ],
    )


def _feeding_tables(
    book: Path, publications: _Publications, fish: frozenset[str]
) -> Mapping[str, FeedingTable]:
    file = "feeding_tables.toml"
    tables = [
        shelves.feeding_table_taken(table, spot, sources=publications, fish=fish)
        for spot, table in _listed(book, "table", file=file)
    ]
    return _by_key(tables, file)


def _file(folder: Path, name: str) -> tuple[Table, str]:
    return read_tables(folder / name, file=name), name


def _file_each(book: Path, shelf: str) -> Iterator[tuple[Spot, Table]]:
    """Yield the table of each file of a folder; the file is named after the entry's key."""
    paths = sorted((book / shelf).glob(f"*{_SUFFIX}"))
    if not paths:
        raise CatalogueError("has no entries", file=shelf)
    for path in paths:
        file = f"{shelf}/{path.name}"
        table = read_tables(path, file=file)
        spot = Spot(file=file, key=taken(table, "key", str, Spot(file=file)))
        if spot.key != path.stem:
            raise spot.wrong("key", f"is {spot.key!r}, but must be the name of the file, {path.stem!r}")
        yield spot, table


def _listed(book: Path, word: str, *, file: str = "") -> Iterator[tuple[Spot, Table]]:
    """Yield the tables `[[word]]` of the file that holds all of their kind."""
    name = file or f"{word}s{_SUFFIX}"
    tables = read_tables(book / name, file=name)
    refuse_others(tables, (word,), Spot(file=name))
    for table in tables_taken(tables, word, Spot(file=name)):
        yield Spot(file=name, key=taken(table, "key", str, Spot(file=name))), table


def _crops(book: Path, publications: _Publications) -> list[Read[Crop]]:
    crops = [
        entries.crop_taken(table, spot, sources=publications) for spot, table in _file_each(book, "crops")
    ]
    holders: dict[str, str] = {}
    for read in crops:
        crop = read.entry
        spot = Spot(file=f"crops/{crop.key}{_SUFFIX}", key=crop.key)
        if not (len(crop.code) == 3 and crop.code.isascii() and crop.code.isupper()):
            raise spot.wrong("code", f"is {crop.code!r}, but must be three capital letters")
        holder = holders.setdefault(crop.code, crop.key)
        if holder != crop.key:
            raise spot.wrong("code", f"{crop.code} is already the code of {holder}")
    return crops


def _emergence(book: Path, publications: _Publications, crops: frozenset[str]) -> Mapping[str, Emergence]:
    by_crop: dict[str, Emergence] = {}
    for spot, table in _listed(book, "emergence", file="emergence.toml"):
        found = shelves.emergence_taken(table, spot, sources=publications, crops=crops)
        for crop in found.crops:
            if crop in by_crop:
                raise spot.wrong("crops", f"{crop} already has the table {by_crop[crop].key}")
            by_crop[crop] = found
    return MappingProxyType(by_crop)


def _coefficients(folder: Path, publications: _Publications) -> list[Figure]:
    figures: list[Figure] = []
    for path in sorted(folder.glob(f"*{_SUFFIX}")):
        file = f"{folder.name}/{path.name}"
        tables = read_tables(path, file=file)
        figures.extend(shelves.coefficients_taken(tables, path.stem, file, sources=publications))
    return figures


def _keys(reads: Iterable[Read[E]]) -> frozenset[str]:
    return frozenset(read.entry.key for read in reads)


def _shelf_of(reads: Iterable[Read[E]], file: str) -> Mapping[str, E]:
    return _by_key([read.entry for read in reads], file)


def _by_key(found: Iterable[K], file: str) -> Mapping[str, K]:
    shelf: dict[str, K] = {}
    for entry in found:
        if entry.key in shelf:
            raise CatalogueError("stands there twice", file=file, key=entry.key, field="key")
        shelf[entry.key] = entry
    return MappingProxyType(shelf)
