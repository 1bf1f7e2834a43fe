"""Reads a table of comma-separated values as somebody else wrote it: any common letters and separators.

What is too large, or no table at all, ends in a sentence. Must not know what the columns mean.
"""

from __future__ import annotations

import codecs
import csv
import io
from collections.abc import Iterator
from dataclasses import dataclass
from typing import Final, TypeVar

from planner.farm.cells import unguarded

Read = TypeVar("Read")

MOST_BYTES: Final = 20_000_000
MOST_ROWS: Final = 100_000
MOST_COLUMNS: Final = 200
MOST_CELL: Final = 5_000
ROWS_A_STEP: Final = 500
"""After so many rows whoever looks at a table is told how far it is, and may break it off."""
_SEPARATORS: Final = (",", ";", "\t")
_SNIFFED_LINES: Final = 20
_MARKS: Final = (
    (codecs.BOM_UTF8, "utf-8-sig"),
    (codecs.BOM_UTF16_LE, "utf-16"),
    (codecs.BOM_UTF16_BE, "utf-16"),
)
_WORKBOOKS: Final = (b"PK\x03\x04", b"\xd0\xcf\x11\xe0")


class SheetError(ValueError):
    """A file that is no table to be read; the text is a sentence that says why and what to do."""


@dataclass(frozen=True, slots=True, kw_only=True)
class SheetRow:
    """One row and the line of the file on which it ends; cells are as many as there are headings."""

    line: int
    cells: tuple[str, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class Sheet:
    """A table: its headings, its rows, and how it was written. `too_wide` are lines with too many cells."""

    headings: tuple[str, ...]
    rows: tuple[SheetRow, ...]
    separator: str
    encoding: str
    too_wide: tuple[int, ...] = ()


def read_sheet(content: bytes) -> Sheet:
    """Return the table in a file; raises `SheetError` when there is none or it is too large."""
    if len(content) > MOST_BYTES:
        raise SheetError(f"the file has {len(content)} bytes, but at most {MOST_BYTES} are read. Split it.")
    if content.startswith(_WORKBOOKS):
        raise SheetError("this is a workbook. Save its sheet as CSV in the spreadsheet, then bring that in.")
    text, encoding = _decoded(content)
    if "\x00" in text:
        raise SheetError("this is no text.")
    lines = text.splitlines()
    first = next((line for line in lines if line.strip()), "")
    if not first:
        raise SheetError("the file is empty.")
    separator = _separator(lines)
    try:
        return _sheet(text, separator, encoding)
    except csv.Error as error:
        raise SheetError(f"the file is not written as a table: {error}.") from None


def last_of(steps: Iterator[int | Read]) -> Read:
    """Return what steps lead to in the end; the numbers before it only tell how far they are."""
    found = [each for each in steps if not isinstance(each, int)]
    return found[-1]


def _decoded(content: bytes) -> tuple[str, str]:
    encoding = next((name for mark, name in _MARKS if content.startswith(mark)), "utf-8")
    try:
        return content.decode(encoding), encoding
    except UnicodeDecodeError:
        if encoding != "utf-8":
            raise SheetError(f"the file says it is {encoding}, but it is not.") from None
    try:
        return content.decode("cp1252"), "cp1252"
    except UnicodeDecodeError:
        return content.decode("latin-1"), "latin-1"


def _separator(lines: list[str]) -> str:
    """Return the separator that parts the first lines into most cells, equally many on each."""

    def merit(separator: str) -> tuple[int, int]:
        counts = [len(row) for row in csv.reader(lines[:_SNIFFED_LINES], delimiter=separator) if row]
        heading = counts[0] if counts else 1
        return sum(count == heading for count in counts) if heading > 1 else 0, heading

    try:
        return max(_SEPARATORS, key=merit)
    except csv.Error:
        return _SEPARATORS[0]


def _sheet(text: str, separator: str, encoding: str) -> Sheet:
    reader = csv.reader(io.StringIO(text, newline=""), delimiter=separator)
    headings: tuple[str, ...] = ()
    rows: list[SheetRow] = []
    too_wide: list[int] = []
    for found in reader:
        cells = tuple(_cell(cell, reader.line_num) for cell in found)
        if not any(cells):
            continue
        if not headings:
            headings = _headings(cells)
            continue
        if len(rows) >= MOST_ROWS:
            raise SheetError(f"the table has more than {MOST_ROWS} rows. Split it.")
        if any(cells[len(headings) :]):
            too_wide.append(reader.line_num)
        padded = (*cells, *("",) * (len(headings) - len(cells)))[: len(headings)]
        rows.append(SheetRow(line=reader.line_num, cells=padded))
    return Sheet(
        headings=headings,
        rows=tuple(rows),
        separator=separator,
        encoding=encoding,
        too_wide=tuple(too_wide),
    )


def _cell(text: str, line: int) -> str:
    if len(text) > MOST_CELL:
        raise SheetError(f"line {line}: a cell has {len(text)} characters, but at most {MOST_CELL} are read.")
    return unguarded(text.strip())


def _headings(cells: tuple[str, ...]) -> tuple[str, ...]:
    """Return headings that are all different; one without words is called by its place."""
    if len(cells) > MOST_COLUMNS:
        raise SheetError(f"the table has {len(cells)} columns, but at most {MOST_COLUMNS} are read.")
    named: list[str] = []
    for place, cell in enumerate(cells, start=1):
        name = cell or f"column {place}"
        named.append(f"{name} ({place})" if name in named else name)
    return tuple(named)
