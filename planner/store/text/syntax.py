"""Turns bytes into text and text into tables, with every error of the TOML form in a plain sentence."""

from __future__ import annotations

import re
import tomllib
from dataclasses import dataclass
from typing import Any, Final

from planner.farm.faults import FarmFaultError, Fault, FaultKind
from planner.store.text import limits
from planner.store.text.lines import Lines, masked

_OTHER_MARKS: Final = (
    (b"\xff\xfe\x00\x00", "UTF-32"),
    (b"\x00\x00\xfe\xff", "UTF-32"),
    (b"\xff\xfe", "UTF-16"),
    (b"\xfe\xff", "UTF-16"),
)
_SPOT: Final = re.compile(r" \(at (?:line (\d+), column (\d+)|end of document)\)$")
_LINE_NAME: Final = re.compile(r"[ \t\[]*([\w\-.]{1,60})[ \t]*[=\]]")
_SINGLE_BRACKETS: Final = re.compile(r"[ \t]*\[[^\[]")
_LONG_NUMBER: Final = re.compile(rf"[0-9][0-9_]{{{limits.MOST_DIGITS},}}")
_LONG_KEY: Final = re.compile(rf"(?:[\w\-]++[ \t]*+\.[ \t]*+){{{limits.MOST_KEY_PARTS},}}")
_LONE_SURROGATE: Final = re.compile("[\ud800-\udfff]")

_PLAIN_WORDS: Final[tuple[tuple[str, str, str], ...]] = (
    ("Invalid value", "no value can be read here.",
     "Texts need quotes, dates look like 2026-03-02, yes and no are true and false."),
    ("Expected newline", "something follows a value that is complete.",
     "Write one key a line, numbers with a point and no commas (2.5), dates year first (2026-03-02)."),
    ("Expected '='", "a key must be followed by = and a value.", "Write for example: name = \"North\"."),
    ("Invalid statement", "this is neither a key with a value nor a table header.", ""),
    ("Unclosed array", "a list that begins with [ is not closed.", "Close it with ]."),
    ("Unclosed inline table", "a table that begins with { is not closed.", "Close it with }."),
    ("Unterminated string", "a text is not closed.", "Close it with a quote."),
    ("Illegal character", "a character is not allowed here, or a text is not closed on its line.",
     "Close the text with a quote; write line breaks in it as \\n."),
    ("Unescaped '\\'", "a text holds a \\ that stands for nothing.", "Write \\\\ for the sign itself."),
    ("Found invalid character", "a character is not allowed here.", ""),
    ("Invalid hex value", "a text holds a \\u that is not followed by the digits of a character.", ""),
    ("Escaped character is not", "a text holds a \\u that stands for no character.", ""),
    ("Invalid initial character", "a key or table name is expected here.", ""),
    ("Invalid date", "this is not a date of the calendar.", "Write year-month-day: 2026-03-02."),
    ("Expected ']]'", "a table header that begins with [[ is not closed.", "Close it with ]]."),
    ("Expected ']'", "a table header that begins with [ is not closed.", "Close it with ]."),
)  # fmt: skip
_MANY_DIGITS: Final = "a number has too many digits."
_TWICE: Final = ("Cannot overwrite", "Cannot declare", "Duplicate inline", "Cannot mutate", "Cannot redefine")


@dataclass(frozen=True, slots=True, kw_only=True)
class Document:
    """The tables of a farm text, and where they stand."""

    tables: dict[str, Any]
    lines: Lines


def text_of(raw: bytes, *, file: str = "") -> str:
    """Return the text of a file that is UTF-8, with or without a byte-order mark.

    Raises `FarmFaultError` when it is too large or in another encoding.
    """
    if len(raw) > limits.MOST_BYTES:
        raise FarmFaultError((too_large(len(raw), file),))
    other = next((name for mark, name in _OTHER_MARKS if raw.startswith(mark)), "")
    if other:
        raise _syntax(f"the file is {other}, but must be UTF-8.", file=file, remedy="Save it as UTF-8.")
    if b"\x00" in raw:
        message = "the file holds bytes of value zero, as UTF-16 without a mark does and UTF-8 text never."
        line = raw.count(b"\n", 0, raw.index(b"\x00")) + 1
        raise _syntax(message, file=file, line=line, remedy="Save it as UTF-8.")
    try:
        return raw.decode("utf-8-sig")
    except UnicodeDecodeError as error:
        byte = f"0x{raw[error.start]:02x}"
        raise _syntax(
            f"the byte {byte} is no UTF-8.",
            file=file,
            line=raw.count(b"\n", 0, error.start) + 1,
            remedy="Save the file as UTF-8.",
        ) from None


def too_large(size: int, file: str) -> Fault:
    """Return the fault of a file with too many bytes."""
    return Fault(
        kind=FaultKind.TOO_LARGE,
        where="text",
        value=f"{size} bytes",
        limit=f"{limits.MOST_BYTES} bytes",
        message=f"the text has {size} bytes, but at most {limits.MOST_BYTES} are read.",
        file=file,
    )


def document_of(text: str, *, file: str = "") -> Document:
    """Return the tables of a farm text.

    Raises `FarmFaultError` when it is not TOML, or larger or deeper than is read.
    """
    if len(text) > limits.MOST_BYTES:
        raise FarmFaultError((too_large(len(text), file),))
    text = text.removeprefix("\ufeff").replace("\r\n", "\n")
    _refuse_odd_shapes(text, file)
    try:
        return Document(tables=tomllib.loads(text), lines=Lines(text))
    except tomllib.TOMLDecodeError as error:
        raise FarmFaultError((_plain_fault(str(error), text, file),)) from None
    except RecursionError:
        raise _syntax("brackets are nested too deeply.", file=file, kind=FaultKind.TOO_LARGE) from None
    except (ValueError, OverflowError):
        raise _syntax(_MANY_DIGITS, file=file, kind=FaultKind.TOO_LARGE) from None


def _refuse_odd_shapes(text: str, file: str) -> None:
    """Refuse what would keep the TOML reader busy for hours, or break it."""
    if (found := _LONE_SURROGATE.search(text)) is not None:
        raise _syntax("the text holds half a character.", file=file, line=_line_at(text, found.start()))
    if "\r" in text:
        raise _syntax(
            "a line ends in a carriage return alone.",
            file=file,
            line=_line_at(text, text.index("\r")),
            remedy="Save the file with line ends of Windows or Unix.",
        )
    depth = 0
    for number, line in enumerate(masked(text).split("\n"), start=1):
        if len(line) > limits.MOST_LINE_CHARACTERS:
            message = (
                f"the line has {len(line)} characters, but at most {limits.MOST_LINE_CHARACTERS} are read."
            )
            raise _syntax(message, file=file, line=number, kind=FaultKind.TOO_LARGE)
        if _LONG_NUMBER.search(line):
            raise _syntax(_MANY_DIGITS, file=file, line=number, kind=FaultKind.TOO_LARGE)
        if "." in line and _LONG_KEY.search(line):
            message = f"a key has more than {limits.MOST_KEY_PARTS} parts."
            raise _syntax(message, file=file, line=number, kind=FaultKind.TOO_LARGE)
        for mark in re.findall(r"[\[\]{}]", line):
            depth = depth + 1 if mark in "[{" else max(0, depth - 1)
            if depth > limits.MOST_NESTING:
                message = f"brackets are nested more than {limits.MOST_NESTING} deep."
                raise _syntax(message, file=file, line=number, kind=FaultKind.TOO_LARGE)


def _plain_fault(message: str, text: str, file: str) -> Fault:
    spot = _SPOT.search(message)
    line, column = _spot(spot, text)
    body = message[: spot.start()] if spot else message
    at = f"line {line}, column {column}: "
    if body.startswith(_TWICE):
        named = _LINE_NAME.match(text.split("\n")[line - 1])
        field = named.group(1) if named else ""
        what = f"{field} is" if field else "a table or key is"
        return Fault(
            kind=FaultKind.DUPLICATE,
            where="text",
            field=field,
            message=f"{at}{what} given twice.",
            remedy=_remedy_for_twice(field, text.split("\n")[line - 1]),
            file=file,
            line=line,
        )
    said, remedy = next(
        ((said, remedy) for start, said, remedy in _PLAIN_WORDS if body.startswith(start)),
        (f"the text is not TOML: {body[:1].lower()}{body[1:]}.", ""),
    )
    return Fault(
        kind=FaultKind.SYNTAX, where="text", message=f"{at}{said}", remedy=remedy, file=file, line=line
    )


def _remedy_for_twice(field: str, line: str) -> str:
    if field in {"", "farm"} or not _SINGLE_BRACKETS.match(line):
        return "Keep one of the two."
    return f"Keep one of the two, or, where there may be several, begin each with the line [[{field}]]."


def _spot(found: re.Match[str] | None, text: str) -> tuple[int, int]:
    """Return line and column, which are the end of the text when the message says so."""
    if found is not None and found.group(1):
        return int(found.group(1)), int(found.group(2))
    whole = text.rstrip("\n")
    last = whole.split("\n")[-1]
    return whole.count("\n") + 1, len(last) + 1


def _line_at(text: str, position: int) -> int:
    return text.count("\n", 0, position) + 1


def _syntax(
    message: str, *, file: str, line: int = 0, remedy: str = "", kind: FaultKind = FaultKind.SYNTAX
) -> FarmFaultError:
    fault = Fault(kind=kind, where="text", message=message, remedy=remedy, file=file, line=line)
    return FarmFaultError((fault,))
