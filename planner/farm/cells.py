"""How text stands in a cell so that no spreadsheet takes it for a formula, and how it is read back."""

from __future__ import annotations

from typing import Final

_FORMULA_STARTS: Final = ("=", "+", "-", "@", "\t", "\r", "\n", "＝", "＋", "－", "＠")
_GUARD: Final = "'"


def harmless(text: str) -> str:
    """Return a text that no spreadsheet takes for a formula: an apostrophe is put before it.

    >>> harmless("=1+1"), harmless("Basil"), harmless("-3"), harmless("'=x")
    ("'=1+1", 'Basil', '-3', "''=x")
    """
    return f"{_GUARD}{text}" if _is_guarded_at_heart(text) else text


def unguarded(text: str) -> str:
    """Return the text that `harmless` was given.

    >>> [unguarded(harmless(text)) for text in ("=1+1", "Basil", "-3", "'=x", "'tis")]
    ['=1+1', 'Basil', '-3', "'=x", "'tis"]
    """
    return text[1:] if text.startswith(_GUARD) and _is_guarded_at_heart(text[1:]) else text


def _is_guarded_at_heart(text: str) -> bool:
    """Tell whether a text would be taken for a formula, whatever apostrophes stand before it."""
    bare = text.lstrip(_GUARD).lstrip(" ")
    return bare.startswith(_FORMULA_STARTS) and not (_is_number(text) and not text.startswith(_GUARD))


def _is_number(text: str) -> bool:
    digits = text.strip().lstrip("+-").replace(".", "", 1)
    return digits.isascii() and digits.isdigit()
