"""Reads one file of the catalogue into plain tables, quickly.

Nearly every line of these files is a figure in its usual one-line form, or one short text or number.
Such lines are lifted out by one pattern and put back after the rest is parsed as TOML; any other
spelling takes the slow road and gives the same tables. Must not know what the tables mean.
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
_USUAL_LINE: Final = re.compile(
    rf"^(\w+) = (?:\{{ value = {_NUMBER}, low = {_NUMBER}, high = {_NUMBER}, unit = {_TEXT}, "
    rf"conditions = {_TEXT}, source = {_TEXT}, confidence = {_TEXT}(?:, note = {_TEXT})? \}}"
    rf"|{_TEXT}|{_NUMBER})$",
    re.MULTILINE | re.ASCII,
)
_NUMBER_KEYS: Final = ("value", "low", "high")
_TEXT_KEYS: Final = ("unit", "conditions", "source", "confidence")
# A letter no keyboard has stands for lifted lines, so that nothing written by hand is mistaken for them.
_MARK: Final = "\ue000"
_LONG_TEXTS: Final = ('"""', "'''")


class _WrittenTwiceError(ValueError):
    """A table has two lines of one name; the slow road says where."""


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

    >>> tables_of('[figures]')
    {'figures': {}}
    """
    if any(mark in text for mark in (*_LONG_TEXTS, _MARK)):
        return tomllib.loads(text)
    rest, blocks = _lifted(text)
    try:
        return _put_back(tomllib.loads(rest), blocks)
    except _WrittenTwiceError:
        return tomllib.loads(text)


def _lifted(text: str) -> tuple[str, list[Table]]:
    """Return the text with one mark for each run of usual lines, lines still counted, and the runs."""
    rest: list[str] = []
    blocks: list[Table] = []
    end = -1
    for match in _USUAL_LINE.finditer(text):
        if match.start() != end + 1 or not blocks:
            rest.append(text[max(end, 0) : match.start()])
            rest.append(f'"{_MARK}{len(blocks)}" = 0')
            blocks.append({})
        else:
            rest.append("\n")
        if match[1] in blocks[-1]:
            return text, []
        blocks[-1][match[1]] = _value_of(match)
        end = match.end()
    rest.append(text[max(end, 0) :])
    return "".join(rest), blocks


def _value_of(match: re.Match[str]) -> Table | str | int | float:
    _, value, low, high, *texts, note, text, number = match.groups()
    if text is not None:
        return text
    if number is not None:
        return _number_of(number)
    row: Table = dict(zip(_NUMBER_KEYS, map(_number_of, (value, low, high)), strict=True))
    row.update(zip(_TEXT_KEYS, texts, strict=True))
    if note is not None:
        row["note"] = note
    return row


def _number_of(text: str) -> int | float:
    return int(text) if text.lstrip("-").isdigit() else float(text)


def _put_back(node: Table, blocks: list[Table]) -> Table:
    """Return the table with its marks replaced by the lines they stand for."""
    whole: Table = {}
    for key, value in node.items():
        if key.startswith(_MARK):
            found = blocks[int(key.removeprefix(_MARK))]
        elif isinstance(value, dict):
            found = {key: _put_back(value, blocks)}
        elif isinstance(value, list):
            entries = [_put_back(entry, blocks) if isinstance(entry, dict) else entry for entry in value]
            found = {key: entries}
        else:
            found = {key: value}
        if not whole.keys().isdisjoint(found):
            raise _WrittenTwiceError(key)
        whole.update(found)
    return whole
