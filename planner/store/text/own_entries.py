"""Reads own crops, fish, feeds and supplements from a text that holds nothing else.

The tables are those of a farm text; whoever keeps the library of several farms mails this one.
"""

from __future__ import annotations

from pathlib import Path
from typing import Any, Final

from planner.farm.farm import OwnEntry, Settings
from planner.farm.faults import FarmFaultError, FaultKind
from planner.farm.fields import specs_of
from planner.store.text import limits
from planner.store.text.entries import FORMAT_KEY
from planner.store.text.findings import Findings, Source
from planner.store.text.forms import TOP_FORMS
from planner.store.text.near import listed
from planner.store.text.reader import check_format, farm_of
from planner.store.text.syntax import document_of, text_of, too_large

_FARM_TABLE: Final = {"farm": {"name": "-", "plan_from": specs_of(Settings)["plan_from"].low}}
"""Stands in for what a farm needs besides its entries."""
_WORDS: Final = tuple(word for word, form in TOP_FORMS.items() if form.kind.owner is OwnEntry)


def read_own_entries_file(path: Path) -> tuple[OwnEntry, ...]:
    """Return the entries of a file; all as in `read_own_entries`. Raises `OSError` too."""
    size = path.stat().st_size
    if size > limits.MOST_BYTES:
        raise FarmFaultError((too_large(size, str(path)),))
    return read_own_entries(text_of(path.read_bytes(), file=str(path)), file=str(path))


def read_own_entries(text: str, *, file: str = "") -> tuple[OwnEntry, ...]:
    """Return the entries a text holds, in its order by shelf.

    Whether the catalogue knows what they are like, and takes their figures, is left to whoever lays them
    over it. Raises `FarmFaultError` with every fault found, in the order of lines.
    """
    document = document_of(text, file=file)
    findings = Findings(file=file, lines=document.lines)
    check_format(document.tables, findings, limits.ENTRIES_FORMAT)
    kept = {name: table for name, table in document.tables.items() if name in _WORDS}
    _refuse_others(document.tables, findings)
    return farm_of({**_FARM_TABLE, **kept}, findings).own_entries


def _refuse_others(tables: dict[str, Any], findings: Findings) -> None:
    for name in tables:
        if name not in (FORMAT_KEY, *_WORDS):
            findings.say(
                Source(path=((name, 0),), where="entries"),
                FaultKind.UNKNOWN_KEY,
                f"{name} does not belong here: a text of own entries holds {listed(_WORDS)}.",
                field=name,
                remedy="Take it out, or read the whole text as a farm.",
            )
