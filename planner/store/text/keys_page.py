"""Writes the tables of keys in docs/farm-text.md from what the farm's values declare.

A test holds the page against this, so that the two cannot drift apart. To renew the page after a
field has changed: `python -m planner.store.text.keys_page docs/farm-text.md`.
"""

from __future__ import annotations

import re
import sys
from dataclasses import MISSING
from pathlib import Path
from typing import Final

from planner.farm.checks import limit_text
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
    spec = key.spec
    if key.runs:
        return "number, or text with runs of numbers"
    if key.many:
        return f"list of {spec.refers_to} names"
    if spec.kind in (FieldKind.NUMBER, FieldKind.WHOLE):
        whole = "whole number, " if spec.kind is FieldKind.WHOLE else "number, "
        return whole + limit_text(spec)
    if spec.kind is FieldKind.SERIES:
        return f"{spec.length} numbers, January first, or one for all months; each {limit_text(spec)}"
    if spec.kind is FieldKind.CHOICE:
        return "one of " + listed((f'`"{choice}"`' for choice in key.choices))
    if spec.kind is FieldKind.REFERENCE:
        return (
            f"name of a {spec.refers_to}" if spec.refers_to not in _CODED else f"code of a {spec.refers_to}"
        )
    if spec.kind is FieldKind.DAY:
        return f"date, {limit_text(spec)}"
    return _words(key)


_CODED: Final = frozenset({"seed lot", "batch"})


def _words(key: Key) -> str:
    spec = key.spec
    if spec.kind is FieldKind.KEY:
        shelf = spec.catalogue if spec.catalogue not in ("own", "shelf") else ""
        return f"key of a {shelf} in the catalogue" if shelf else f"key, up to {spec.length} characters"
    if spec.kind is FieldKind.NAME:
        return f"one line of text, up to {spec.length} characters"
    if spec.kind is FieldKind.TEXT:
        return f"text, up to {spec.length} characters"
    return {FieldKind.ID: "UUID", FieldKind.YES_NO: "`true` or `false`"}[spec.kind]


def _left_out(key: Key) -> str:
    spec = key.spec
    if spec.kind is FieldKind.ID:
        return "made from the name, or from what it is"
    if spec.kind is FieldKind.REFERENCE and spec.needed:
        return "the only one there is"
    if key.needed:
        return "**must be given**"
    if key.figure:
        return "as in the entry it is like"
    if key.default is MISSING:
        return "worked out, see below"
    if key.default in (None, "", (), NO_ID):
        return "not said"
    return f"`{toml_value(key.default)}`"


if __name__ == "__main__":
    for _name in sys.argv[1:]:
        _path = Path(_name)
        _path.write_text(with_key_tables(_path.read_text(encoding="utf-8")), encoding="utf-8")
