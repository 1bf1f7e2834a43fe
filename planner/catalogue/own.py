"""Lays the grower's own entries over the book.

An own entry is like one of the book but for the values given. It may stand beside the book under a
key of its own, or take the place of the very entry it is like. Every value given becomes a figure
with the confidence "grower's value". Must know nothing of how entries are stored or asked for.
"""

from __future__ import annotations

import dataclasses
from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass
from enum import Enum
from types import MappingProxyType
from typing import Any, Final

from planner.catalogue import schema
from planner.catalogue.catalogue import Catalogue, Emergence
from planner.catalogue.entries import Entry
from planner.catalogue.errors import known_words
from planner.catalogue.figure import Confidence, Figure
from planner.farm.checks import value_faults, where_of
from planner.farm.farm import OwnEntry, Shelf
from planner.farm.faults import FarmFaultError, Fault, FaultKind
from planner.farm.fields import FieldKind, FieldSpec, specs_of
from planner.farm.species import BedKind, CropGroup, FishSpecies, FishStage, HarvestKind

_PLACES: Final = {
    Shelf.CROP: "crops",
    Shelf.FISH: "fish",
    Shelf.FEED: "feeds",
    Shelf.SUPPLEMENT: "supplements",
}
_CHOICES: Final[Mapping[str, type[Enum]]] = {"group": CropGroup, "harvest": HarvestKind, "beds": BedKind}
_NOT_BY_VALUE: Final = frozenset({"key", "name", "notes", "cautions", "stages"})
_CONDITIONS: Final = "entered by the grower"

Value = float | str | bool


@dataclass(slots=True, kw_only=True)
class _Shelves:
    """The shelves while own entries are laid on them."""

    entries: dict[Shelf, dict[str, Any]]
    figures: dict[str, Figure]


def fields_of(entry: Entry) -> dict[str, FieldSpec]:
    """Return the fields a grower may give for an entry like this one, stages of fish by number."""
    fields = {name: spec for name, spec in specs_of(type(entry)).items() if name not in _NOT_BY_VALUE}
    for number, _ in enumerate(getattr(entry, "stages", ()), start=1):
        for name, spec in schema.FIGURE_SPECS[FishStage].items():
            fields[f"stage_{number}_{name}"] = spec
    return fields


def laid_over(catalogue: Catalogue, own_entries: Iterable[OwnEntry]) -> Catalogue:
    """Return the catalogue with a farm's own entries laid over it; the first catalogue is unchanged.

    An entry may be like one that stands before it in the list.

    Raises:
        FarmFaultError: an entry is like nothing known, takes the key of another, or gives a value
            that is unknown, of the wrong type, out of limits or out of order; all faults are in it.
    """
    entries = tuple(own_entries)
    if not entries:
        return catalogue
    shelves = _Shelves(
        entries={shelf: dict(getattr(catalogue, place)) for shelf, place in _PLACES.items()},
        figures=dict(catalogue.figures),
    )
    faults = [fault for own in entries for fault in _laid(own, entries, shelves)]
    if faults:
        raise FarmFaultError(tuple(faults))
    laid = {place: MappingProxyType(shelves.entries[shelf]) for shelf, place in _PLACES.items()}
    return dataclasses.replace(
        catalogue,
        figures=MappingProxyType(shelves.figures),
        emergence=MappingProxyType(_emergence(catalogue, entries)),
        **laid,
    )


def _emergence(catalogue: Catalogue, entries: tuple[OwnEntry, ...]) -> dict[str, Emergence]:
    """Return the emergence tables; a crop of the grower's own comes up as the one it is like."""
    tables = dict(catalogue.emergence)
    for own in entries:
        if own.shelf is Shelf.CROP and own.like in tables:
            tables.setdefault(own.key, tables[own.like])
    return tables


def _laid(own: OwnEntry, entries: tuple[OwnEntry, ...], shelves: _Shelves) -> list[Fault]:
    shelf = shelves.entries[own.shelf]
    like = shelf.get(own.like)
    if like is None:
        return [_no_such_entry(own, shelf)]
    faults = [*_key_faults(own, entries, shelf), *_values_faults(own, like)]
    if faults:
        return faults
    made = _made(own, like)
    faults = list(_order_faults(own, made))
    if not faults:
        _put_figures(own, like, shelves.figures)
        shelf[own.key] = made
    return faults


def _no_such_entry(own: OwnEntry, shelf: Mapping[str, Any]) -> Fault:
    return Fault(
        kind=FaultKind.UNKNOWN_NAME,
        where=where_of(own),
        field="like",
        value=own.like,
        limit=f"a {own.shelf.value} of the catalogue",
        message=f'like is "{own.like}", but there is no such {own.shelf.value}.',
        remedy=known_words(own.like, shelf),
    )


def _key_faults(own: OwnEntry, entries: tuple[OwnEntry, ...], shelf: Mapping[str, Any]) -> Iterator[Fault]:
    rivals = [other for other in entries if other.shelf is own.shelf and other.key == own.key]
    taken = rivals[0] is not own or (own.key in shelf and own.key != own.like)
    if taken or "/" in own.key:
        yield Fault(
            kind=FaultKind.DUPLICATE if taken else FaultKind.WRONG_TYPE,
            where=where_of(own),
            field="key",
            value=own.key,
            limit="a key of its own without /, or the key it is like",
            message=f'key is "{own.key}", but '
            + (f"another {own.shelf.value} has that key." if taken else "must not hold a /."),
            remedy=f'Choose another key, or "{own.like}" to take the place of the entry it is like.',
        )


def _values_faults(own: OwnEntry, like: Entry) -> Iterator[Fault]:
    known = fields_of(like)
    for field, value in own.values:
        spec = known.get(field)
        if spec is None:
            yield _unknown_field(own, field, value, known)
        elif _right_type(value, field, spec):
            yield from _limit_faults(own, field, value, spec)
        else:
            yield _wrong_type(own, field, value, _wanted(field, spec))


def _unknown_field(own: OwnEntry, field: str, value: Value, known: Mapping[str, FieldSpec]) -> Fault:
    return Fault(
        kind=FaultKind.UNKNOWN_KEY,
        where=where_of(own),
        field=field,
        value=str(value),
        limit=f"a figure of a {own.shelf.value}",
        message=f"{field} = {value} is no figure of a {own.shelf.value}.",
        remedy=known_words(field, known),
    )


def _wrong_type(own: OwnEntry, field: str, value: Value, wanted: str) -> Fault:
    return Fault(
        kind=FaultKind.WRONG_TYPE,
        where=where_of(own),
        field=field,
        value=str(value),
        limit=wanted,
        message=f"{field} is {value!r}, but must be {wanted}.",
    )


def _right_type(value: Value, field: str, spec: FieldSpec) -> bool:
    if spec.kind is FieldKind.NUMBER:
        return isinstance(value, (int, float)) and not isinstance(value, bool)
    if spec.kind is FieldKind.YES_NO:
        return isinstance(value, bool)
    if field not in _CHOICES:
        return isinstance(value, str)
    members = {member.value for member in _CHOICES[field]}
    words = _words(value) if isinstance(value, str) else ()
    return bool(words) and members.issuperset(words) and (field == "beds" or len(words) == 1)


def _wanted(field: str, spec: FieldSpec) -> str:
    if field in _CHOICES:
        words = ", ".join(str(member.value) for member in _CHOICES[field])
        return f"{'one or more' if field == 'beds' else 'one'} of {words}"
    return {FieldKind.NUMBER: "a number", FieldKind.YES_NO: "true or false"}.get(spec.kind, "text")


def _limit_faults(own: OwnEntry, field: str, value: Value, spec: FieldSpec) -> Iterator[Fault]:
    if field in _CHOICES:
        return
    number = float(value) if spec.kind is FieldKind.NUMBER else value
    yield from value_faults(where=where_of(own), field=field, value=number, spec=spec)


def _words(text: str) -> tuple[str, ...]:
    return tuple(dict.fromkeys(word.strip() for word in text.split(",")))


def _made(own: OwnEntry, like: Entry) -> Entry:
    given = {field: _as_field(field, value) for field, value in own.values}
    stages = _stages(like, given)
    fields = {field: value for field, value in given.items() if not field.startswith("stage_")}
    notes = own.notes or like.notes
    return dataclasses.replace(like, key=own.key, name=own.name, notes=notes, **fields, **stages)


def _as_field(field: str, value: Value) -> Any:
    if field in _CHOICES:
        members = tuple(_CHOICES[field](word) for word in _words(str(value)))
        return members if field == "beds" else members[0]
    return value if isinstance(value, (str, bool)) else float(value)


def _stages(like: Entry, given: Mapping[str, Any]) -> dict[str, Any]:
    if not isinstance(like, FishSpecies):
        return {}
    return {"stages": tuple(_stage(stage, n, given) for n, stage in enumerate(like.stages, start=1))}


def _stage(stage: FishStage, number: int, given: Mapping[str, Any]) -> FishStage:
    start = f"stage_{number}_"
    changed = {name.removeprefix(start): value for name, value in given.items() if name.startswith(start)}
    return dataclasses.replace(stage, **changed)


def _order_faults(own: OwnEntry, made: Entry) -> Iterator[Fault]:
    values = {field: getattr(made, field) for field in specs_of(type(made))}
    wrong = schema.out_of_order(own.shelf.value, values)
    if wrong is None:
        return
    lower, upper = wrong
    given = dict(own.values)
    field = lower if lower in given else upper
    side, other = ("below", upper) if field == lower else ("above", lower)
    yield Fault(
        kind=FaultKind.WRONG_ORDER,
        where=where_of(own),
        field=field,
        value=f"{values[field]:g}",
        limit=f"{side} {values[other]:g}",
        message=f"{field} is {values[field]:g}, but must be {side} {other}, which is {values[other]:g}.",
    )


def _put_figures(own: OwnEntry, like: Entry, figures: dict[str, Figure]) -> None:
    given = dict(own.values)
    for field, spec in fields_of(like).items():
        if spec.kind is not FieldKind.NUMBER:
            continue
        name = field.replace("_", "/", 2) if field.startswith("stage_") else field
        book = figures.get(f"{own.shelf.value}/{like.key}/{name}")
        path = f"{own.shelf.value}/{own.key}/{name}"
        if field in given:
            figures[path] = _own_figure(path, float(given[field]), spec, book)
        elif book is not None:
            figures[path] = dataclasses.replace(book, path=path)


def _own_figure(path: str, value: float, spec: FieldSpec, book: Figure | None) -> Figure:
    return Figure(
        path=path,
        value=value,
        low=value,
        high=value,
        unit=spec.unit,
        conditions=_CONDITIONS,
        source="",
        confidence=Confidence.GROWERS_VALUE,
        note="" if book is None else f"in place of {book.value:g} ({book.low:g} to {book.high:g})",
    )
