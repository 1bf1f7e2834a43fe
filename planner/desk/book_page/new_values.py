"""An entry of the grower's own beside the book: its fields, what they would be, and what is wrong with them.

Pure: must know nothing of widgets.
"""

from __future__ import annotations

import re
import unicodedata
from collections.abc import Mapping
from dataclasses import dataclass, replace
from typing import Any, Final

from planner.catalogue.catalogue import Catalogue
from planner.catalogue.own import fields_of, laid_over
from planner.desk.book_page.rows import entries_of, field_label
from planner.desk.forms.editors import Choice
from planner.desk.say import tr
from planner.desk.words import choice_words, number_words, unit_words
from planner.farm.farm import Farm, OwnEntry, Shelf
from planner.farm.faults import FarmFaultError, Fault, FaultKind
from planner.farm.fields import FieldKind, FieldSpec
from planner.farm.ids import new_id
from planner.farm.species import BedKind, CropGroup, HarvestKind

NOTHING: Final = ""
"""Stands for an entry that is like none of the book: then every figure has to be given."""
_LONGEST_KEY: Final = 56
_BEDS: Final = ("raft", "media", "raft, media")
_CHOICES: Final = {"group": CropGroup, "harvest": HarvestKind}

Value = float | str | bool


@dataclass(frozen=True, slots=True, kw_only=True)
class NewField:
    """One field: its words, limits, choices, and what it is in the entry the new one is like."""

    name: str
    label: str
    spec: FieldSpec
    choices: tuple[Choice, ...]
    like: str


def key_of_name(name: str, taken: Mapping[str, Any]) -> str:
    """Return a key for a name that no entry has yet.

    >>> key_of_name("Kangkóng, dwarf", {"kangkong-dwarf": 1})
    'kangkong-dwarf-2'
    """
    plain = unicodedata.normalize("NFKD", name).encode("ascii", "ignore").decode().lower()
    key = re.sub(r"[^a-z0-9]+", "-", plain).strip("-")[:_LONGEST_KEY] or "own"
    number, found = 1, key
    while found in taken:
        number += 1
        found = f"{key}-{number}"
    return found


def new_fields(catalogue: Catalogue, shelf: Shelf, like: str) -> tuple[NewField, ...]:
    """Return the fields of an entry like one of the book; for `NOTHING` without anything to go by."""
    entries = entries_of(catalogue, shelf)
    model = entries[like or next(iter(entries))]
    return tuple(
        NewField(
            name=name,
            label=_label(name, spec),
            spec=replace(spec, may_be_none=True),
            choices=_choices(name, spec),
            like="" if like == NOTHING else _like_words(model, name),
        )
        for name, spec in fields_of(model).items()
    )


def _label(name: str, spec: FieldSpec) -> str:
    label, unit = field_label(name), unit_words(spec.unit)
    label = label[:1].upper() + label[1:]
    return f"{label} [{unit}]" if unit else label


def _choices(name: str, spec: FieldSpec) -> tuple[Choice, ...]:
    none = Choice(value=None, words=tr("as what it is like"))
    if name in _CHOICES:
        return (none, *(Choice(value=each.value, words=choice_words(each)) for each in _CHOICES[name]))
    if name == "beds":
        return (none, *(Choice(value=each, words=_bed_words(each)) for each in _BEDS))
    if spec.kind is FieldKind.YES_NO:
        return (none, Choice(value=True, words=tr("Yes")), Choice(value=False, words=tr("No")))
    return ()


def _bed_words(kinds: str) -> str:
    return ", ".join(choice_words(BedKind(kind)) for kind in kinds.split(", "))


def _like_words(model: Any, name: str) -> str:
    if name.startswith("stage_"):
        _, number, field = name.split("_", 2)
        value = getattr(model.stages[int(number) - 1], field)
    else:
        value = getattr(model, name)
    if isinstance(value, bool):
        return tr("Yes") if value else tr("No")
    if isinstance(value, tuple):
        return ", ".join(choice_words(each) for each in value)
    if isinstance(value, (int, float)):
        return number_words(value)
    return value if isinstance(value, str) else choice_words(value)


def new_own_entry(
    catalogue: Catalogue,
    shelf: Shelf,
    *,
    name: str,
    like: str,
    values: Mapping[str, Value | None],
    notes: str,
) -> OwnEntry:
    """Return the entry that was filled in; what was left empty is as in the entry it is like."""
    entries = entries_of(catalogue, shelf)
    given = {field: value for field, value in values.items() if value is not None and value != ""}
    return OwnEntry(
        id=new_id(),
        shelf=shelf,
        key=key_of_name(name, entries),
        like=like or next(iter(entries)),
        name=name,
        values=tuple(sorted(given.items())),
        notes=notes,
    )


def missing_faults(
    fields: tuple[NewField, ...], values: Mapping[str, Value | None], *, like: str
) -> tuple[Fault, ...]:
    """Return a fault for each figure left empty in an entry that is like nothing."""
    if like != NOTHING:
        return ()
    return tuple(
        Fault(
            kind=FaultKind.MISSING,
            where="",
            field=field.name,
            message=tr("{label} is empty; it must be given.", label=field.label),
        )
        for field in fields
        if values.get(field.name) in (None, "") and field.spec.kind is not FieldKind.TEXT
    )


def entry_faults(book: Catalogue, farm: Farm, entry: OwnEntry) -> tuple[Fault, ...]:
    """Return what is wrong with an entry when it is laid over the book with those of the farm."""
    try:
        laid_over(book, (*farm.own_entries, entry))
    except FarmFaultError as refused:
        return refused.faults
    return ()
