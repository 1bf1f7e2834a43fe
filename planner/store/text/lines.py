"""Finds the lines of tables and keys in a farm text, which the TOML reader itself does not tell.

Strings and comments are blanked first, so that nothing inside a note is taken for a table. Where
the place cannot be told for certain (tables written inline, dotted keys) the answer is the nearest
line that can, or 0.
"""

from __future__ import annotations

import re
from dataclasses import dataclass, field
from typing import Final

Path = tuple[tuple[str, int], ...]
"""Tables from the outside in, each with its number among its like, counted from 0."""

_OPENING: Final = re.compile(r"\"\"\"|'''|[\"'#]")
# What ends a string or comment of each kind, or is a backslash with the mark it protects, to be passed
# over. A search from one to the next needs neither recursion nor possessive groups, which Python before
# 3.11.5 gets wrong.
_ENDING: Final = {
    '"""': re.compile(r'\\.|"{3,5}', re.DOTALL),
    "'''": re.compile(r"'{3,5}"),
    '"': re.compile(r'\\[^\n]|"|(?=\n)'),
    "'": re.compile(r"'|(?=\n)"),
    "#": re.compile(r"(?=\n)"),
}
_NOT_NEWLINE: Final = re.compile(r"[^\n]")
_HEADER: Final = re.compile(r"[ \t]*(\[\[?)[ \t]*([\w\-]+(?:[ \t]*\.[ \t]*[\w\-]+)*)[ \t]*\]\]?[ \t\r]*$")
_KEY: Final = re.compile(r"[ \t]*([\w\-]+)[ \t]*[.=]")
_PART: Final = re.compile(r"[\w\-]+")


def masked(text: str) -> str:
    """Return the text, just as long, with strings turned to underscores and comments to blanks.

    >>> masked('name = "a [b]" # c')
    'name = _______    '
    """
    parts, done = [], 0
    while (opening := _OPENING.search(text, done)) is not None:
        end = _end_of(opening, text)
        filler = " " if opening.group() == "#" else "_"
        parts += [text[done : opening.start()], _NOT_NEWLINE.sub(filler, text[opening.start() : end])]
        done = end
    return "".join([*parts, text[done:]])


def _end_of(opening: re.Match[str], text: str) -> int:
    """Return where a string or comment ends that begins here: at the end of the text if nothing ends it."""
    ending, at = _ENDING[opening.group()], opening.end()
    while (found := ending.search(text, at)) is not None and found.group().startswith("\\"):
        at = found.end()
    return len(text) if found is None else found.end()


@dataclass(slots=True)
class _Section:
    line: int
    keys: dict[str, int] = field(default_factory=dict)


class Lines:
    """Lines of every table header and key of one text, counted from 1."""

    def __init__(self, text: str) -> None:
        """Scan a text once."""
        self._sections: dict[Path, _Section] = {(): _Section(line=0)}
        self._counts: dict[tuple[Path, str], int] = {}
        self._scan(text, masked(text))

    def of(self, path: Path, key: str = "") -> int:
        """Return the line of a key of a table, else of the table, else of what it stands in, else 0."""
        section = self._sections.get(path)
        if section is not None:
            return section.keys.get(key, section.line)
        return self.of(path[:-1], path[-1][0]) if path else 0

    def _scan(self, text: str, mask: str) -> None:
        depth, start, path = 0, 0, ()
        now: Path = path
        for number, line in enumerate(mask.split("\n"), start=1):
            raw = text[start : start + len(line)]
            start += len(line) + 1
            header = _HEADER.match(line) if depth == 0 else None
            if header is not None:
                now = self._opened(header, raw, number)
                continue
            key = _KEY.match(line) if depth == 0 else None
            if key is not None:
                self._sections[now].keys.setdefault(_plain(raw, key.start(1), key.end(1)), number)
            depth = max(0, depth + _opening(line) - _closing(line))

    def _opened(self, header: re.Match[str], raw: str, number: int) -> Path:
        words = [
            _plain(raw, header.start(2) + part.start(), header.start(2) + part.end())
            for part in _PART.finditer(header.group(2))
        ]
        parent: Path = ()
        for word in words[:-1]:
            parent = (*parent, (word, max(0, self._counts.get((parent, word), 1) - 1)))
        last = words[-1]
        count = self._counts.get((parent, last), 0)
        self._counts[parent, last] = count + 1
        path = (*parent, (last, count))
        self._sections.setdefault(path, _Section(line=number))
        return path


def _plain(raw: str, start: int, end: int) -> str:
    return raw[start:end].strip("\"'")


def _opening(line: str) -> int:
    return line.count("[") + line.count("{")


def _closing(line: str) -> int:
    return line.count("]") + line.count("}")
