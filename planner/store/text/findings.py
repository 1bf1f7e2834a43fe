"""Gathers the faults of one text, each with its file and line."""

from __future__ import annotations

import dataclasses
import json
from dataclasses import dataclass
from typing import Any

from planner.farm.faults import FarmFaultError, Fault, FaultKind
from planner.store.text import limits
from planner.store.text.lines import Lines, Path


def shown(value: Any) -> str:
    """Return a wrong value as it is shown in a message: short, on one line.

    >>> shown("3 kg"), shown(True), shown([1, 2])
    ('"3 kg"', 'true', 'a list')
    """
    if isinstance(value, bool):
        return "true" if value else "false"
    if isinstance(value, dict):
        return "a table"
    if isinstance(value, list):
        return "a list"
    if isinstance(value, str):
        return json.dumps(_cut(value), ensure_ascii=False)
    if isinstance(value, int) and abs(value) >= 10**limits.SHOWN_CHARACTERS:
        return "a number with very many digits"
    return _cut(str(value))


def _cut(text: str) -> str:
    most = limits.SHOWN_CHARACTERS
    return text if len(text) <= most else f"{text[: most - 1]}…"


class UnfitError(Exception):
    """Raised while one value is read; `message` goes on from the name of its field: "is 3, but ..."."""

    def __init__(
        self, kind: FaultKind, message: str, *, value: str = "", limit: str = "", remedy: str = ""
    ) -> None:
        """Keep what a fault will say."""
        super().__init__(message)
        self.kind = kind
        self.message = message
        self.value = value
        self.limit = limit
        self.remedy = remedy


@dataclass(frozen=True, slots=True)
class Source:
    """Where in the text something stands, and how a fault calls it."""

    path: Path
    where: str


class Findings:
    """The faults found so far."""

    def __init__(self, *, file: str, lines: Lines) -> None:
        """Begin with none."""
        self._file = file
        self._lines = lines
        self._faults: list[Fault] = []
        self._seen: set[tuple[Path | str, str, str]] = set()

    def __bool__(self) -> bool:
        """Whether anything was found."""
        return bool(self._faults)

    def line_of(self, source: Source, key: str = "") -> int:
        """Return the line of a key, or of the table it is missing from."""
        return self._lines.of(source.path, key)

    def add(self, fault: Fault, source: Source, *, key: str = "") -> None:
        """Take up a fault, with the line of `key` (the fault's own field when not given).

        The same words of one place in the text are said once, however many batches repeat it.
        """
        marks = {(place, fault.field, fault.message) for place in (fault.where, source.path)}
        if marks & self._seen:
            return
        self._seen |= marks
        line = self.line_of(source, key or fault.field.partition("[")[0])
        self._faults.append(dataclasses.replace(fault, file=self._file, line=line))
        if len(self._faults) >= limits.MOST_FAULTS:
            self.stop()

    def say(
        self,
        source: Source,
        kind: FaultKind,
        message: str,
        *,
        field: str = "",
        value: str = "",
        limit: str = "",
        remedy: str = "",
    ) -> None:
        """Take up a fault by its words."""
        fault = Fault(
            kind=kind,
            where=source.where,
            field=field,
            value=value,
            limit=limit,
            message=message,
            remedy=remedy,
        )
        self.add(fault, source)

    def unfit(self, source: Source, field: str, error: UnfitError) -> None:
        """Take up what was wrong with one value."""
        self.say(
            source,
            error.kind,
            f"{field} {error.message}",
            field=field,
            value=error.value,
            limit=error.limit,
            remedy=error.remedy,
        )

    def stop(self) -> None:
        """Raise `FarmFaultError` with every fault, in the order of lines, if there is any."""
        if self._faults:
            raise FarmFaultError(tuple(sorted(self._faults, key=_line_last_if_unknown)))


def _line_last_if_unknown(fault: Fault) -> tuple[bool, int]:
    return (fault.line == 0, fault.line)
