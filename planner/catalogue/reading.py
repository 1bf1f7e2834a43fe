"""Reads one file of the catalogue into plain tables, quickly.

Nearly every line of these files is a figure in its usual one-line form. Such lines are lifted out
by one pattern and put back after the rest is parsed as TOML; any other spelling takes the slow road
and gives the same tables. Must know nothing of what the tables mean.
"""

from __future__ import annotations

import re
import tomllib
from pathlib import Path
from typing import Any, Final

from planner.catalogue.errors import CatalogueError

Table = dict[str, Any]

_NUMBER: Final = r"(-?(?:0|[1-9]\d*)(?:\.\d+)?(?:e-?\d+)?)"
_TEXT: Final = r'"([^"\\\x00-\x1f\x7f]*)"'
_USUAL_ROW: Final = re.compile(
    rf"^(\w+) = \{{ value = {_NUMBER}, low = {_NUMBER}, high = {_NUMBER}, unit = {_TEXT}, "
    rf"conditions = {_TEXT}, source = {_TEXT}, confidence = {_TEXT}(?:, note = {_TEXT})? \}}$",
    re.MULTILINE,
)
_NUMBER_KEYS: Final = ("value", "low", "high")
_TEXT_KEYS: Final = ("unit", "conditions", "source", "confidence")
# A letter no keyboard has stands for a lifted row, so that nothing written by hand is mistaken for one.
_MARK: Final = "\ue000"
_LONG_TEXTS: Final = ('"""', "'''")


def read_tables(path: Path, *, file: str) -> Table:
    """Return the tables of a TOML file; `file` is what errors call it.

    Raises:
        CatalogueError: the file is missing, not text, or not TOML.
    """
    try:
        return tables_of(path.read_text(encoding="utf-8"))
    except OSError as error:
        raise CatalogueError(f"cannot be read ({error.strerror})", file=file) from error
    except UnicodeDecodeError as error:
        raise CatalogueError("is not UTF-8 text", file=file) from error
    except tomllib.TOMLDecodeError as error:
        raise CatalogueError(f"is not TOML: {error}", file=file) from error


def tables_of(text: str) -> Table:
    """Return what `tomllib.loads` returns, sooner.

    >>> tables_of("[figures]\\nheight = { value = 2 }")
    {'figures': {'height': {'value': 2}}}
    """
    if any(mark in text for mark in (*_LONG_TEXTS, _MARK)):
        return tomllib.loads(text)
    rows: list[Table] = []

    def lift(match: re.Match[str]) -> str:
        rows.append(_row_of(match))
        return f'{match[1]} = "{_MARK}{len(rows) - 1}"'

    tables = tomllib.loads(_USUAL_ROW.sub(lift, text))
    _put_back(tables, rows)
    return tables


def _row_of(match: re.Match[str]) -> Table:
    _, *numbers_and_texts, note = match.groups()
    split = len(_NUMBER_KEYS)
    row: Table = dict(zip(_NUMBER_KEYS, map(_number_of, numbers_and_texts[:split]), strict=True))
    row.update(zip(_TEXT_KEYS, numbers_and_texts[split:], strict=True))
    if note is not None:
        row["note"] = note
    return row


def _number_of(text: str) -> int | float:
    return int(text) if text.lstrip("-").isdigit() else float(text)


def _put_back(node: Table | list[Any], rows: list[Table]) -> None:
    items = node.items() if isinstance(node, dict) else enumerate(node)
    for key, value in list(items):
        if isinstance(value, (dict, list)):
            _put_back(value, rows)
        elif isinstance(value, str) and value.startswith(_MARK):
            node[key] = rows[int(value.removeprefix(_MARK))]
