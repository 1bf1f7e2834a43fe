"""Every number that ships stands in a row that tells unit, conditions, source and how sure it is."""

from __future__ import annotations

import tomllib
from collections.abc import Iterator
from typing import Any

ROW = {"value", "unit", "conditions", "source", "confidence"}
TABLES = {"emergence.toml", "feeding_tables.toml"}
"""Printed tables: the source, conditions and confidence of the whole stand at their head."""
BOUNDS = {"up_to_g", "for_fish_g", "every_weeks", "year"}
"""What parts a list, not what is reckoned with: weights of stages, weeks of a task, the year of a paper."""


def loose_numbers(value: Any, path: tuple[str, ...] = ()) -> Iterator[tuple[str, ...]]:
    """Yield where a number stands outside a row."""
    if isinstance(value, dict):
        if set(value) < ROW and "value" in value:
            yield (*path, "row without " + ", ".join(sorted(ROW - set(value))))
        elif not set(value) >= ROW:
            for key, child in value.items():
                yield from loose_numbers(child, (*path, key))
    elif isinstance(value, list):
        for child in value:
            yield from loose_numbers(child, path)
    elif isinstance(value, int | float) and not isinstance(value, bool):
        yield path


def test_that_every_number_of_the_figures_stands_in_a_row(root):
    found = []
    for folder in ("coefficients", "catalogue", "sheets", "help"):
        for path in sorted((root / "resources" / folder).rglob("*.toml")):
            if path.name in TABLES:
                continue
            parsed = tomllib.loads(path.read_text(encoding="utf-8"))
            found += [(path.name, where) for where in loose_numbers(parsed) if where[-1] not in BOUNDS]
    assert found == []


def test_that_every_printed_table_says_where_it_is_from(root):
    for name in sorted(TABLES):
        parsed = tomllib.loads((root / "resources" / "catalogue" / name).read_text(encoding="utf-8"))
        entries = [entry for listed in parsed.values() if isinstance(listed, list) for entry in listed]
        assert entries
        for entry in entries:
            assert {"source", "confidence", "conditions"} <= set(entry), name


def test_that_a_loose_number_and_a_bare_row_are_seen():
    assert list(loose_numbers({"a": {"b": 3.5}})) == [("a", "b")]
    assert list(loose_numbers({"a": {"value": 3.5, "unit": "g"}})) == [
        ("a", "row without conditions, confidence, source")
    ]
    assert list(loose_numbers({"a": dict.fromkeys(ROW, 1)})) == []
