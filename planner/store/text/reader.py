"""Reads a farm from its text: all of it, or none of it and every fault found.

How single values, beds, places and repeats are read stands in the modules beside this one.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from pathlib import Path as FilePath
from types import MappingProxyType
from typing import Any, Final

from planner.farm.checks import farm_faults
from planner.farm.crops import Batch
from planner.farm.farm import Farm, Shelf
from planner.farm.faults import FarmFaultError, Fault, FaultKind
from planner.store.text import limits
from planner.store.text.build import Builder
from planner.store.text.draft import Draft
from planner.store.text.entries import FORMAT_KEY, Entry, Names, entries_of
from planner.store.text.fill import Filler
from planner.store.text.findings import Findings, Source, shown
from planner.store.text.overlap import refuse_overlaps
from planner.store.text.repeats import BatchCodes
from planner.store.text.syntax import document_of, text_of, too_large

NO_CODES: Final[Mapping[str, str]] = MappingProxyType({})
MoreFaults = Callable[[Farm], tuple[Fault, ...]]


def read_farm_file(
    path: FilePath, *, crop_codes: Mapping[str, str] = NO_CODES, more_faults: MoreFaults | None = None
) -> Farm:
    """Return the farm that a text file holds; all as in `read_farm_text`.

    Raises `FarmFaultError` with every fault of the text, `OSError` when the file cannot be read.
    """
    size = path.stat().st_size
    if size > limits.MOST_BYTES:
        raise FarmFaultError((too_large(size, str(path)),))
    text = text_of(path.read_bytes(), file=str(path))
    return read_farm_text(text, file=str(path), crop_codes=crop_codes, more_faults=more_faults)


def read_farm_text(
    text: str,
    *,
    file: str = "",
    crop_codes: Mapping[str, str] = NO_CODES,
    more_faults: MoreFaults | None = None,
) -> Farm:
    """Return the farm that a text holds.

    `file` is what faults call it; `crop_codes` gives crop key -> letters for the codes of batches
    that have none, else the first letters of the key serve. `more_faults` finds what takes more than
    the text to see, in a farm that is sound by itself; its faults get their lines here as well.
    Raises `FarmFaultError` with every fault found, in the order of lines.
    """
    document = document_of(text, file=file)
    findings = Findings(file=file, lines=document.lines)
    check_format(document.tables, findings)
    return farm_of(document.tables, findings, crop_codes=crop_codes, more_faults=more_faults)


def farm_of(
    tables: dict[str, Any],
    findings: Findings,
    *,
    crop_codes: Mapping[str, str] = NO_CODES,
    more_faults: MoreFaults | None = None,
) -> Farm:
    """Return the farm that the tables of a text hold; all as in `read_farm_text`."""
    entries = entries_of(tables, findings)
    draft = Draft(findings)
    names = Names(entries)
    builder = Builder(
        filler=Filler(names=names, findings=findings),
        findings=findings,
        draft=draft,
        codes=BatchCodes(taken=_codes_given(entries), crop_codes={**crop_codes, **_own_codes(entries)}),
    )
    for entry in entries:
        builder.build(entry)
    refuse_overlaps(draft, findings)
    findings.stop()
    farm = draft.farm()
    draft.take_up(farm_faults(farm), farm)
    findings.stop()
    if more_faults is not None:
        draft.take_up(more_faults(farm), farm)
        findings.stop()
    return farm


def check_format(tables: dict[str, Any], findings: Findings, form: str = limits.FORMAT) -> None:
    """Take up a missing format; stop at once at another one, which cannot be read."""
    source = Source(path=(), where="farm")
    wanted = f'{FORMAT_KEY} = "{form}"'
    if FORMAT_KEY not in tables:
        findings.say(
            source,
            FaultKind.MISSING,
            f"{FORMAT_KEY} is missing.",
            field=FORMAT_KEY,
            limit=form,
            remedy=f"Write {wanted} in the first line.",
        )
    elif tables[FORMAT_KEY] != form:
        findings.say(
            source,
            FaultKind.WRONG_TYPE,
            f"{FORMAT_KEY} is {shown(tables[FORMAT_KEY])}, but this program reads {shown(form)}.",
            field=FORMAT_KEY,
            value=shown(tables[FORMAT_KEY]),
            limit=form,
            remedy=f"Write {wanted}; a newer form needs a newer program.",
        )
        findings.stop()


def _codes_given(entries: tuple[Entry, ...]) -> set[str]:
    """Return the codes that batches have in the text, those of repeats left to the duplicate check."""
    return {entry.label for entry in entries if entry.form.kind.owner is Batch and entry.label}


def _own_codes(entries: tuple[Entry, ...]) -> dict[str, str]:
    """Return crop key -> code for the grower's own crops that give one."""
    return {
        entry.label: entry.raw["code"]
        for entry in entries
        if entry.form.fixed.get("shelf") is Shelf.CROP and isinstance(entry.raw.get("code"), str)
    }
