"""Turns parsed tables into crops, fish, feeds and supplements, with the figures behind them."""

from __future__ import annotations

from collections.abc import Collection
from dataclasses import dataclass
from enum import Enum
from typing import Any, Final, Generic, TypeVar

from planner.catalogue import schema
from planner.catalogue.checking import (
    Spot,
    number_taken,
    numbers_taken,
    refuse_others,
    tables_taken,
    taken,
    texts_taken,
)
from planner.catalogue.figure import Figure
from planner.catalogue.reading import Table
from planner.catalogue.rows import figures_taken
from planner.farm.checks import value_faults
from planner.farm.fields import FieldKind, specs_of
from planner.farm.species import (
    BedKind,
    Crop,
    CropGroup,
    Feed,
    FishSpecies,
    FishStage,
    HarvestKind,
    Supplement,
)

Entry = Crop | FishSpecies | Feed | Supplement
E = TypeVar("E", bound=Entry)
C = TypeVar("C", bound=Enum)

FIGURES: Final = "figures"
_STAGE: Final = "stage"
_FOR_FISH: Final = "for_fish_g"


@dataclass(frozen=True, slots=True, kw_only=True)
class Read(Generic[E]):
    """An entry and the figures it was made from."""

    entry: E
    figures: tuple[Figure, ...]


def crop_taken(table: Table, spot: Spot, *, sources: Collection[str]) -> Read[Crop]:
    """Return the crop written in a table."""
    refuse_others(table, {*schema.WORD_SPECS[Crop], FIGURES}, spot)
    figures = _own_figures(table, "crop", spot, owner=Crop, sources=sources)
    crop = Crop(
        **_texts(table, Crop, spot),
        **_values(figures),
        group=choice_taken(table, "group", CropGroup, spot),
        harvest=choice_taken(table, "harvest", HarvestKind, spot),
        beds=tuple(choice_of(word, "beds", BedKind, spot) for word in texts_taken(table, "beds", spot)),
        tall=taken(table, "tall", bool, spot),
    )
    return _checked(crop, figures, "crop", spot)


def fish_taken(
    table: Table, spot: Spot, *, sources: Collection[str], cautions: Collection[str]
) -> Read[FishSpecies]:
    """Return the fish written in a table."""
    allowed = {*schema.WORD_SPECS[FishSpecies], FIGURES, _STAGE} - {"stages"}
    refuse_others(table, allowed, spot)
    figures = _own_figures(table, "fish", spot, owner=FishSpecies, sources=sources)
    stages, stage_figures = _stages_taken(table, spot, sources=sources)
    fish = FishSpecies(
        **_texts(table, FishSpecies, spot),
        **_values(figures),
        ornamental=taken(table, "ornamental", bool, spot),
        cautions=cautions_taken(table, spot, cautions),
        stages=stages,
    )
    checked = _checked(fish, figures, "fish", spot)
    return Read(entry=checked.entry, figures=(*checked.figures, *stage_figures))


def feed_taken(table: Table, spot: Spot, *, sources: Collection[str]) -> Read[Feed]:
    """Return the feed written in a table."""
    refuse_others(table, {*schema.WORD_SPECS[Feed], FIGURES, _FOR_FISH}, spot)
    figures = _own_figures(table, "feed", spot, owner=Feed, sources=sources)
    span = numbers_taken(table, _FOR_FISH, spot)
    if len(span) != 2:
        raise spot.wrong(_FOR_FISH, f"has {len(span)} numbers, but must have two: from and to")
    feed = Feed(
        **_texts(table, Feed, spot), **_values(figures), for_fish_from_g=span[0], for_fish_to_g=span[1]
    )
    return _checked(feed, figures, "feed", spot)


def supplement_taken(
    table: Table, spot: Spot, *, sources: Collection[str], cautions: Collection[str]
) -> Read[Supplement]:
    """Return the supplement written in a table."""
    refuse_others(table, {*schema.WORD_SPECS[Supplement], FIGURES}, spot)
    figures = _own_figures(table, "supplement", spot, owner=Supplement, sources=sources)
    supplement = Supplement(
        **_texts(table, Supplement, spot), **_values(figures), cautions=cautions_taken(table, spot, cautions)
    )
    return _checked(supplement, figures, "supplement", spot)


def choice_taken(table: Table, field: str, kind: type[C], spot: Spot) -> C:
    """Return the member of an enum that a text names."""
    return choice_of(taken(table, field, str, spot), field, kind, spot)


def choice_of(word: str, field: str, kind: type[C], spot: Spot) -> C:
    """Return the member of an enum called `word`."""
    for member in kind:
        if member.value == word:
            return member
    raise spot.wrong(
        field, f"is {word!r}, but must be one of {', '.join(str(member.value) for member in kind)}"
    )


def cautions_taken(table: Table, spot: Spot, cautions: Collection[str]) -> tuple[str, ...]:
    """Return the keys of cautions, each of which must exist."""
    keys = texts_taken(table, "cautions", spot)
    for key in keys:
        if key not in cautions:
            raise spot.wrong("cautions", f"{key!r} is no caution of cautions.toml")
    return keys


def _own_figures(
    table: Table, shelf: str, spot: Spot, *, owner: type[Entry], sources: Collection[str]
) -> dict[str, Figure]:
    rows = taken(table, FIGURES, dict, spot)
    specs = schema.FIGURE_SPECS[owner]
    return figures_taken(rows, f"{shelf}/{spot.key}", spot, specs=specs, sources=sources)


def _stages_taken(
    table: Table, spot: Spot, *, sources: Collection[str]
) -> tuple[tuple[FishStage, ...], tuple[Figure, ...]]:
    stages: list[FishStage] = []
    figures: list[Figure] = []
    for number, row in enumerate(tables_taken(table, _STAGE, spot), start=1):
        stage_spot = spot.at(f"{spot.key}: stage {number}")
        up_to_g = number_taken(row, "up_to_g", stage_spot)
        if stages and up_to_g <= stages[-1].up_to_g:
            raise stage_spot.wrong("up_to_g", f"is {up_to_g:g}, but must be above {stages[-1].up_to_g:g}")
        rest = {name: value for name, value in row.items() if name != "up_to_g"}
        shelf = f"fish/{spot.key}/stage/{number}"
        found = figures_taken(rest, shelf, stage_spot, specs=schema.FIGURE_SPECS[FishStage], sources=sources)
        stages.append(FishStage(up_to_g=up_to_g, **_values(found)))
        figures.extend(found.values())
    return tuple(stages), tuple(figures)


def _values(figures: dict[str, Figure]) -> dict[str, Any]:
    return {name: figure.value for name, figure in figures.items()}


def _texts(table: Table, owner: type[Entry], spot: Spot) -> dict[str, Any]:
    kinds = (FieldKind.NAME, FieldKind.TEXT)
    specs = schema.WORD_SPECS[owner]
    return {name: taken(table, name, str, spot) for name, spec in specs.items() if spec.kind in kinds}


def _checked(entry: E, figures: dict[str, Figure], shelf: str, spot: Spot) -> Read[E]:
    for name, spec in specs_of(type(entry)).items():
        for fault in value_faults(where=spot.key, field=name, value=getattr(entry, name), spec=spec):
            raise spot.wrong(name, fault.message)
    values = {name: getattr(entry, name) for name in specs_of(type(entry))}
    wrong = schema.out_of_order(shelf, values)
    if wrong is not None:
        lower, upper = wrong
        raise spot.wrong(lower, f"is {values[lower]:g}, but must be below {upper} {values[upper]:g}")
    return Read(entry=entry, figures=tuple(figures.values()))
