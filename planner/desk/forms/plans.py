"""Which fields each form shows, in which order, and what a new thing begins with.

Tables and plain functions; the figures of the catalogue come in as ready choices. Must know nothing of
widgets.
"""

from __future__ import annotations

import dataclasses
import typing
from collections.abc import Callable, Mapping
from datetime import date
from enum import Enum
from typing import Any, Final

from planner.desk.forms.editors import Choice, enum_choices, thing_choices
from planner.desk.forms.form import FormPlan, FormStart
from planner.desk.say import tr
from planner.desk.words import kind_words
from planner.farm.farm import Farm, Thing, by_id, kind_named, kind_of, things
from planner.farm.fields import NO_ID, FieldKind, FieldSpec, specs_of
from planner.farm.ids import new_id

Shelf = Callable[[str], tuple[Choice, ...]]
"""Gives the entries of a shelf of the catalogue, by the shelf's word."""

_MAIN: Final[dict[str, tuple[str, ...]]] = {
    "settings": ("name", "plan_from", "plan_weeks", "notes"),
    "batch": ("code", "crop", "variety", "sow_on", "plants", "bed", "seed_lot", "locked", "notes"),
    "fish group": (
        "name",
        "tank",
        "species",
        "feed",
        "stocked_on",
        "count",
        "mean_weight_g",
        "feeding",
        "notes",
    ),
    "fish event": (
        *("group", "kind", "on", "count", "mean_weight_g", "days", "feed_g_per_day", "cleared_on"),
        "notes",
    ),
    "target": ("crop", "amount_per_week", "unit", "from_on", "until_on", "notes"),
    "dose": ("loop", "supplement", "grams", "on", "every_days", "until_on", "notes"),
    "meter": ("name", "kind", "factor", "calibrate_every_days", "used_from", "notes"),
    "reading": ("loop", "on", "at", "quantity", "value", "meter", "meter_factor", "notes"),
    "solids batch": (
        "code",
        "loop",
        "siphoned_on",
        "days",
        "aerated",
        "returned_on",
        "returned_share",
        "notes",
    ),
    "bed": ("name", "loop", "kind", "units", "rows", "columns", "area_m2", "layer", "depth_cm", "notes"),
    "tank": ("name", "loop", "volume_l", "notes"),
    "filter": ("name", "loop", "kind", "volume_l", "media_area_m2", "solids_captured_share", "notes"),
    "loop": ("name", "site", "water_l", "top_up_l_per_day", "water_c", "notes"),
    "site": ("name", "place", "latitude_deg", "longitude_deg", "altitude_m", "time_zone", "notes"),
    "seed lot": (
        "code",
        "crop",
        "variety",
        "supplier",
        "pelleted",
        "primed",
        "packed_on",
        "bought_on",
        "germination_share",
        "seeds_left",
        "notes",
    ),
}

_FIRST_DAYS: Final = ("sow_on", "stocked_on", "on", "from_on", "plan_from", "siphoned_on")
PLANNED: Final = frozenset({"batch", "fish group", "fish event", "target", "dose"})
"""Kinds of things that are planned ahead, so that they are in no week when they lie outside the plan."""

FORM_WORDS: Final = tuple(_MAIN)
"""Kinds of things that have a form."""


def form_plan(word: str, *, new: bool, cautions: tuple[str, ...] = ()) -> FormPlan:
    """Return the form of a kind of thing, with the cautions it has to carry."""
    owner = kind_named(word).owner
    main = _MAIN[word]
    more = tuple(field for field in specs_of(owner) if field != "id" and field not in main)
    said = kind_words(word)
    return FormPlan(
        title=tr("New: {kind}", kind=said) if new else said,
        button=tr("Add") if new else tr("Save"),
        owner=owner,
        main=main,
        more=more,
        more_title=_more_title(word) if more else "",
        cautions=cautions,
    )


def _more_title(word: str) -> str:
    if word in {"batch", "fish group"}:
        return tr("Your own figures. Leave a field empty to go by the catalogue.")
    return tr("More, where it is known")


def start_of(thing: Thing, farm: Farm, shelf: Shelf, today: date) -> FormStart:
    """Return what a form begins with when a thing is to be altered."""
    values = {field.name: getattr(thing, field.name) for field in dataclasses.fields(thing)}
    return FormStart(values=values, choices=choices_for(kind_of(thing).word, farm, shelf), today=today)


def start_new(
    word: str, farm: Farm, shelf: Shelf, today: date, given: dict[str, Any] | None = None
) -> FormStart:
    """Return what a form begins with when a new thing is made; `given` overrules the defaults."""
    owner = kind_named(word).owner
    choices = choices_for(word, farm, shelf)
    values: dict[str, Any] = {}
    for field in dataclasses.fields(owner):
        if field.default is not dataclasses.MISSING:
            values[field.name] = field.default
        elif choices.get(field.name):
            values[field.name] = choices[field.name][0].value
    day = first_day_for(word, farm, today, given or {})
    for field_name in _FIRST_DAYS:
        if field_name in specs_of(owner):
            values[field_name] = day
    return FormStart(values={**values, **(given or {}), "id": new_id()}, choices=choices, today=today)


def first_day_for(word: str, farm: Farm, today: date, given: Mapping[str, Any]) -> date:
    """Return the day that a form for a new thing proposes.

    What is planned begins with the plan where that is still to begin, and what happens to fish not before
    they are there; what is read or done is of today.
    """
    if word not in PLANNED:
        return today
    day = max(today, farm.settings.plan_from)
    group = by_id(farm.fish_groups).get(given.get("group", NO_ID))
    return day if group is None else max(day, group.stocked_on)


def choices_for(word: str, farm: Farm, shelf: Shelf) -> dict[str, tuple[Choice, ...]]:
    """Return the choices of every field of a kind that has any."""
    owner = kind_named(word).owner
    types = typing.get_type_hints(owner)
    found = {field: _choices(spec, types[field], farm, shelf) for field, spec in specs_of(owner).items()}
    return {field: choices for field, choices in found.items() if choices}


def _choices(spec: FieldSpec, kind: Any, farm: Farm, shelf: Shelf) -> tuple[Choice, ...]:
    if spec.kind is FieldKind.CHOICE and isinstance(kind, type) and issubclass(kind, Enum):
        return enum_choices(kind)
    if spec.kind is FieldKind.REFERENCE:
        target = kind_named(spec.refers_to)
        return thing_choices(things(farm, spec.refers_to), target.label, none=not spec.needed)
    if spec.kind is FieldKind.KEY:
        none = () if spec.needed else (Choice(value="", words=tr("none")),)
        return none + shelf(spec.catalogue)
    return ()
