"""Helps with keys and words that are not known: another unit, another name, a slip of the pen."""

from __future__ import annotations

import difflib
from collections.abc import Iterable, Mapping
from typing import Final

from planner.farm.faults import FaultKind
from planner.farm.fields import FieldKind
from planner.store.text import limits
from planner.store.text.findings import UnfitError, shown
from planner.store.text.forms import Form, Key

UNIT_WORDS: Final = {
    "L": "litres",
    "L/d": "litres a day",
    "g": "grams",
    "g/d": "grams a day",
    "m": "metres",
    "cm": "centimetres",
    "m²": "square metres",
    "°C": "degrees Celsius",
    "°": "degrees",
    "d": "days",
    "mg/L": "milligrams per litre",
    "MJ/m²/d": "megajoules per square metre and day",
    "1": "parts of one (0.25 is a quarter)",
    "1/d": "parts of one a day",
    "g/g": "parts of one (0.25 is a quarter)",
}
"""Units in words; others are shown as they are."""

_SUFFIXES: Final[Mapping[str, tuple[str, ...]]] = {
    "volume": ("l", "m3", "ml", "dl", "hl", "litre", "litres", "liter", "liters", "gal", "gallons", "ft3"),
    "mass": ("g", "kg", "mg", "t", "lb", "lbs", "oz", "grams", "gram"),
    "area": ("m2", "cm2", "ft2", "sqft", "sqm", "sq_m", "sq_ft", "ha", "acres"),
    "length": ("m", "cm", "mm", "in", "ft", "inch", "inches", "metres", "meters"),
    "temperature": ("c", "f", "k", "deg_c", "deg_f", "celsius", "fahrenheit"),
    "time": ("days", "d", "weeks", "months", "hours", "h", "years"),
    "share": ("share", "percent", "pct", "fraction", "ratio", "per_cent"),
    "strength": ("mg_per_l", "ppm", "g_per_l", "ug_per_l", "mg_l", "mmol_per_l"),
    "flow": ("l_per_day", "l_per_h", "l_per_hour", "l_per_week", "gal_per_day", "m3_per_day", "l_day"),
    "feed": ("g_per_day", "kg_per_day", "g_per_week", "kg_per_week", "g_day", "lb_per_day", "oz_per_day"),
    "density": ("per_m2", "per_ft2", "per_sqm", "per_sqft"),
    "content": ("g_per_kg", "mg_per_kg", "g_per_100g"),
    "light": ("mj_per_m2_d", "kwh_per_m2_d", "w_per_m2", "mol_per_m2_d", "mj_per_m2", "kwh_per_m2"),
    "yield": ("g_per_plant", "kg_per_plant"),
}
_DIMENSION_OF: Final = {suffix: name for name, suffixes in _SUFFIXES.items() for suffix in suffixes}

_MEANT: Final[Mapping[str, tuple[str, ...]]] = {
    "number": ("count", "plants"),
    "quantity": ("count", "plants"),
    "amount": ("amount_per_week", "grams", "count", "plants"),
    "date": ("on", "sow_on", "stocked_on", "from_on", "plan_from"),
    "day": ("on", "sow_on", "stocked_on", "from_on"),
    "sown_on": ("sow_on",),
    "sow": ("sow_on",),
    "start": ("sow_on", "from_on", "stocked_on", "plan_from"),
    "end": ("until_on",),
    "weight": ("mean_weight_g",),
    "size": ("volume_l", "area_m2", "water_l"),
    "capacity": ("volume_l", "water_l"),
    "holes": ("places",),
    "cells": ("places",),
    "fish": ("species",),
    "plant": ("crop",),
    "title": ("name", "code"),
    "label": ("name", "code"),
    "type": ("kind", "like"),
    "units": ("rafts", "blocks", "trays"),
    "protein": ("protein_share",),
    "comment": ("notes",),
    "note": ("notes",),
    "temperature": ("water_c", "air_c"),
    "temp": ("water_c", "air_c"),
}  # fmt: skip
_TABLES_MEANT: Final[Mapping[str, tuple[str, ...]]] = {
    "settings": ("farm",),
    "plan": ("farm",),
    "bed": ("raft_bed", "media_bed", "nursery"),
    "beds": ("raft_bed", "media_bed", "nursery"),
    "raft": ("raft_bed",),
    "media": ("media_bed",),
    "pond": ("tank",),
    "sowing": ("batch",),
    "place": ("batch.place",),
    "event": ("fish_group.event",),
    "fish_event": ("fish_group.event",),
    "species": ("fish",),
    "sensor": ("reading",),
    "solids": ("solids_batch",),
    "sludge": ("solids_batch",),
    "mineraliser": ("solids_batch", "filter"),
    "water": ("loop",),
    "system": ("loop",),
}


def unit_in_words(unit: str) -> str:
    """Return a unit as it is read aloud, or as it is when there are no words for it."""
    return UNIT_WORDS.get(unit, unit)


def nearest(word: str, known: Iterable[str]) -> str:
    """Return the known word that is most like `word`, or nothing.

    >>> nearest("lettuce", ["letuce", "basil"])
    'letuce'
    """
    close = difflib.get_close_matches(word[: limits.SHOWN_CHARACTERS].lower(), list(known), n=1)
    return close[0] if close else ""


def listed(words: Iterable[str], *, quoted: bool = False) -> str:
    """Return words as a list in a sentence."""
    return ", ".join(f'"{word}"' if quoted else word for word in words)


def unknown_key(form: Form, name: str) -> tuple[str, str]:
    """Return (what is wrong, what to do) about a key that a table does not know."""
    said = f"{form.word} has no key {_bare(name)}"
    other_unit = _same_in_other_unit(form, name)
    if other_unit:
        units = "; ".join(_unit_sentence(key) for key in other_unit)
        return f"{said}; {units}.", f"Write {listed(key.name for key in other_unit)} instead."
    meant = [one for one in _MEANT.get(name.lower(), ()) if one in form.keys] or [nearest(name, form.keys)]
    guess = f"Did you mean {' or '.join(meant)}? " if meant[0] else ""
    return f"{said}.", f"{guess}It knows: {listed(form.keys)}."


def unknown_table(name: str, known: Iterable[str]) -> tuple[str, str]:
    """Return (what is wrong, what to do) about a table that a farm text does not know."""
    words = list(known)
    meant = list(_TABLES_MEANT.get(name.lower(), ())) or [nearest(name, words)]
    guess = f"Did you mean {' or '.join(meant)}? " if meant[0] else ""
    return f"a farm has no table or key {_bare(name)}.", f"{guess}It knows: {listed(words)}."


def unknown_choice(value: str, choices: Iterable[str]) -> UnfitError:
    """Return what is wrong with a word that is none of the choices."""
    words = list(choices)
    close = nearest(value, words)
    return UnfitError(
        FaultKind.UNKNOWN_NAME,
        f"is {shown(value)}, but must be one of {listed(words, quoted=True)}.",
        value=shown(value),
        limit=listed(words),
        remedy=f'Did you mean "{close}"?' if close else "",
    )


def _bare(name: str) -> str:
    return shown(name)[1:-1]


def _unit_sentence(key: Key) -> str:
    unit = unit_in_words(key.spec.unit)
    return f"{key.name} is in {unit}" if unit else f"{key.name} is the key"


def _split(name: str) -> tuple[str, str]:
    """Return (stem, dimension of the unit it ends with) of a key.

    >>> _split("volume_m3"), _split("mean_weight_g"), _split("name")
    (('volume', 'volume'), ('mean_weight', 'mass'), ('name', ''))
    """
    parts = name.lower().split("_")
    for start in range(len(parts)):
        dimension = _DIMENSION_OF.get("_".join(parts[start:]), "")
        if dimension:
            return "_".join(parts[:start]), dimension
    return name.lower(), ""


def _same_in_other_unit(form: Form, name: str) -> list[Key]:
    if len(name) > limits.SHOWN_CHARACTERS:
        return []
    stem, dimension = _split(name)
    measured = [
        (key, *_split(key.name))
        for key in form.keys.values()
        if key.spec.kind in (FieldKind.NUMBER, FieldKind.WHOLE, FieldKind.SERIES)
    ]
    if not dimension:
        return [key for key, known, known_dimension in measured if known == stem and known_dimension]
    same = [(key, known) for key, known, known_dimension in measured if known_dimension == dimension]
    alike = [key for key, known in same if stem and known and _ends_alike(stem, known)]
    if alike:
        return alike
    return [key for key, _known in same] if 0 < len(same) <= 2 else []


def _ends_alike(one: str, other: str) -> bool:
    return one == other or one.endswith(f"_{other}") or other.endswith(f"_{one}")
