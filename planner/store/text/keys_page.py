"""Writes the tables of keys in docs/farm-text.md from what the farm's values declare.

A test holds the page against this, so that the two cannot drift apart. To renew the page after a
field has changed: `python -m planner.store.text.keys_page docs/farm-text.md`.
"""

from __future__ import annotations

import re
import sys
from collections.abc import Callable
from dataclasses import MISSING
from pathlib import Path
from typing import Final

from planner.farm.checks import limit_text
from planner.farm.farm import kind_named
from planner.farm.fields import NO_ID, FieldKind
from planner.store.text.forms import Form, Key, form_of_header
from planner.store.text.near import listed
from planner.store.text.toml_out import toml_value

_BLOCK: Final = re.compile(r"(<!-- keys of (\[+[\w.]+\]+) -->\n).*?(<!-- end of keys -->)", re.DOTALL)
_HEAD: Final = ("| key | holds | when left out | meaning |", "| --- | --- | --- | --- |")


def with_key_tables(page: str) -> str:
    """Return the page with the table between each pair of markers made anew."""
    return _BLOCK.sub(_filled, page)


def headers_on(page: str) -> tuple[str, ...]:
    """Return the headers that the page has a table of keys for."""
    return tuple(found.group(2) for found in _BLOCK.finditer(page))


def key_table(form: Form) -> str:
    """Return the keys of one table as a Markdown table."""
    rows = [_row(key) for key in form.keys.values()]
    return "\n".join((*_HEAD, *rows))


def _filled(found: re.Match[str]) -> str:
    return f"{found.group(1)}\n{key_table(form_of_header(found.group(2)))}\n\n{found.group(3)}"


def _row(key: Key) -> str:
    return f"| `{key.name}` | {_holds(key)} | {_left_out(key)} | {key.spec.meaning} |"


def _holds(key: Key) -> str:
    if key.runs:
        return "number, or text with runs of numbers"
    if key.many:
        return f"list of {key.spec.refers_to} names"
    return _HOLDS[key.spec.kind](key)


def _number(key: Key) -> str:
    return f"number, {limit_text(key.spec)}"


def _whole(key: Key) -> str:
    return f"whole number, {limit_text(key.spec)}"


def _series(key: Key) -> str:
    many = key.spec.length
    return f"{many} numbers, January first, or one for all months; each {limit_text(key.spec)}"


def _choice(key: Key) -> str:
    return "one of " + listed(f'`"{choice}"`' for choice in key.choices)


def _reference(key: Key) -> str:
    word = key.spec.refers_to
    return f"{'code' if kind_named(word).label == 'code' else 'name'} of a {word}"


def _day(key: Key) -> str:
    return f"date, {limit_text(key.spec)}"


def _key(key: Key) -> str:
    shelf = key.spec.catalogue
    return (
        f"key, up to {key.spec.length} characters" if shelf in _OWN else f"key of a {shelf} in the catalogue"
    )


def _name(key: Key) -> str:
    return f"one line of text, up to {key.spec.length} characters"


def _text(key: Key) -> str:
    return f"text, up to {key.spec.length} characters"


def _id(_key: Key) -> str:
    return "UUID"


def _yes_no(_key: Key) -> str:
    return "`true` or `false`"


_OWN: Final = frozenset({"own", "shelf"})
_HOLDS: Final[dict[FieldKind, Callable[[Key], str]]] = {
    FieldKind.ID: _id,
    FieldKind.REFERENCE: _reference,
    FieldKind.NAME: _name,
    FieldKind.TEXT: _text,
    FieldKind.KEY: _key,
    FieldKind.WHOLE: _whole,
    FieldKind.NUMBER: _number,
    FieldKind.YES_NO: _yes_no,
    FieldKind.DAY: _day,
    FieldKind.CHOICE: _choice,
    FieldKind.SERIES: _series,
}


def _left_out(key: Key) -> str:
    spec = key.spec
    rules = (
        (spec.kind is FieldKind.ID, "made from the name, or from what it is"),
        (spec.kind is FieldKind.REFERENCE and spec.needed, "the only one there is"),
        (key.needed, "**must be given**"),
        (key.figure, "as in the entry it is like"),
        (key.default is MISSING, "worked out, see below"),
        (key.default in (None, "", (), NO_ID), "not said"),
    )
    return next((said for holds, said in rules if holds), f"`{toml_value(key.default)}`")


if __name__ == "__main__":
    for _given in sys.argv[1:]:
        _path = Path(_given)
        _path.write_text(with_key_tables(_path.read_text(encoding="utf-8")), encoding="utf-8")
