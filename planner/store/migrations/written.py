"""Reads the statements of a step that stand in an SQL file beside it, with a blank line between them."""

from __future__ import annotations

from importlib import resources


def statements_in(name: str) -> tuple[str, ...]:
    """Return the statements of one file of this package, in order."""
    text = resources.files(__package__).joinpath(name).read_text(encoding="utf-8")
    return tuple(text.strip().split("\n\n"))
