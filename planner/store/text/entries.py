"""Goes through the tables of a text: which thing each stands for, what it is called, its id.

Names are gathered before any value is read, so that one faulty tank does not make every fish
group that swims in it faulty too.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from typing import Any, Final

from planner.farm.farm import SETTINGS_KIND
from planner.farm.faults import FaultKind
from planner.farm.fields import NO_ID, Id
from planner.farm.ids import is_id
from planner.store.text.derived import id_of_named
from planner.store.text.findings import Findings, Source, shown
from planner.store.text.forms import FORMS, TOP_FORMS, Form, nested_in
from planner.store.text.lines import Path
from planner.store.text.near import listed, nearest, unknown_key, unknown_table

FORMAT_KEY: Final = "format"
_SHOWN: Final = 12


@dataclass(frozen=True, slots=True, kw_only=True)
class Entry:
    """One table of the text. `label` is empty when it has none; `id` when one must be worked out."""

    form: Form
    raw: dict[str, Any]
    source: Source
    label: str = ""
    id: Id = NO_ID
    inner: tuple[Entry, ...] = ()


def entries_of(tables: dict[str, Any], findings: Findings) -> tuple[Entry, ...]:
    """Return every table in the order of `FORMS`, and take up what is no table of a farm."""
    known = (FORMAT_KEY, *TOP_FORMS)
    for name in tables:
        if name not in known:
            message, remedy = unknown_table(name, known)
            source = Source(path=((name, 0),), where="farm")
            findings.say(source, FaultKind.UNKNOWN_KEY, message, field=name, remedy=remedy)
    found: list[Entry] = []
    for form in TOP_FORMS.values():
        if form.word in tables:
            found.extend(_entries(form, tables[form.word], (), "", findings))
        elif form.kind is SETTINGS_KIND:
            message, remedy = "the table [farm] is missing.", "Give at least name and plan_from in it."
            findings.say(
                Source(path=(), where="farm"), FaultKind.MISSING, message, field="farm", remedy=remedy
            )
    _refuse_duplicates(found, findings)
    return tuple(found)


def _entries(form: Form, raw: Any, path: Path, owner: str, findings: Findings) -> Iterator[Entry]:
    many = [raw] if form.kind is SETTINGS_KIND and isinstance(raw, dict) else raw
    if not isinstance(many, list) or not all(isinstance(one, dict) for one in many):
        _say_no_table(form, raw, path, owner, findings)
        return
    if form.kind is SETTINGS_KIND and len(many) > 1:
        source = Source(path=((form.word, 1),), where="farm")
        findings.say(source, FaultKind.DUPLICATE, "a text holds one farm.", field=form.word)
    for number, one in enumerate(many):
        yield _entry(form, one, (*path, (form.word, number)), owner, findings)


def _entry(form: Form, raw: dict[str, Any], path: Path, owner: str, findings: Findings) -> Entry:
    label = _label(form, raw)
    number = path[-1][1] + 1
    if label:
        where = f"{form.kind.word} {shown(label)}"
    else:
        where = f"{form.word} {number} of {owner}" if owner else f"{form.word} {number}"
    if form.kind is SETTINGS_KIND and not label:
        where = form.word
    source = Source(path=path, where=where)
    inner_forms = nested_in(form)
    inner_words = {inner.word for inner in inner_forms}
    for name in raw:
        if name not in form.keys and name not in inner_words:
            message, remedy = unknown_key(form, name)
            findings.say(source, FaultKind.UNKNOWN_KEY, message, field=name, remedy=remedy)
    inner = tuple(
        one
        for inner_form in inner_forms
        if inner_form.word in raw
        for one in _entries(inner_form, raw[inner_form.word], path, where, findings)
    )
    return Entry(form=form, raw=raw, source=source, label=label, id=_id(form, raw, label), inner=inner)


def _say_no_table(form: Form, raw: Any, path: Path, owner: str, findings: Findings) -> None:
    """Take up what stands where tables of a form should: a value, single brackets, orphans of it."""
    here = (*path, (form.word, 0))
    remedy = f"Begin each with the line {form.header}."
    message = f"{form.word} is {shown(raw)}, but must be a table of its own."
    if isinstance(raw, dict):
        message = f"{form.word} is in single brackets, but must be in double ones."
        orphans = [inner for inner in nested_in(form) if list(raw) == [inner.word]]
        for inner in orphans:
            here = (*here, (inner.word, 0))
            message = f"{inner.header} stands where no {form.header} is above it."
            remedy = f"Put it below the {form.header} it belongs to."
    source = Source(path=here, where=owner or "farm")
    findings.say(source, FaultKind.WRONG_TYPE, message, field=form.word, remedy=remedy)


def _label(form: Form, raw: dict[str, Any]) -> str:
    label = raw.get(form.kind.label) if form.kind.label else ""
    return label if isinstance(label, str) else ""


def _id(form: Form, raw: dict[str, Any], label: str) -> Id:
    typed = raw.get("id")
    if isinstance(typed, str) and is_id(typed):
        return Id(typed)
    return id_of_named(form.kind.word, label) if label else NO_ID


def _refuse_duplicates(entries: list[Entry], findings: Findings) -> None:
    first: dict[tuple[str, str, str], Entry] = {}
    for entry in entries:
        for field, value in ((entry.form.kind.label, entry.label), ("id", entry.raw.get("id"))):
            if not value or not isinstance(value, str):
                continue
            other = first.setdefault((entry.form.kind.word, field, value), entry)
            if other is not entry:
                line = findings.line_of(other.source, field)
                before = f", on line {line} already" if line else ""
                findings.say(
                    entry.source,
                    FaultKind.DUPLICATE,
                    f"{field} {shown(value)} is used by more than one {entry.form.kind.word}{before}.",
                    field=field,
                    value=value,
                    remedy="Give each its own.",
                )


class Names:
    """Which names stand for which things."""

    def __init__(self, entries: tuple[Entry, ...]) -> None:
        """Take up everything that has a name."""
        self._ids: dict[str, dict[str, Id]] = {form.kind.word: {} for form in FORMS}
        self._forms: dict[str, dict[str, Form]] = {form.kind.word: {} for form in FORMS}
        for entry in entries:
            if entry.label:
                self._ids[entry.form.kind.word].setdefault(entry.label, entry.id)
                self._forms[entry.form.kind.word].setdefault(entry.label, entry.form)

    def id_of(self, word: str, name: str) -> Id | None:
        """Return the id of what is called so, or None."""
        return self._ids[word].get(name)

    def known(self, word: str, headers: frozenset[str] = frozenset()) -> tuple[str, ...]:
        """Return the names of one kind, if need be only those under some table headers."""
        forms = self._forms[word]
        return tuple(name for name in forms if not headers or forms[name].word in headers)


def not_given(word: str, candidates: tuple[str, ...]) -> tuple[str, str]:
    """Return (what is wrong, what to do) when a reference is left out and cannot be told."""
    if not candidates:
        return f"{word} is missing, and the farm has none that could be meant.", f"Add a {word} first."
    many = f"there are {len(candidates)}: {listed(candidates[:_SHOWN], quoted=True)}"
    more = " and more" if len(candidates) > _SHOWN else ""
    return f"{word} is missing, and {many}{more}.", f'Write {word} = "..." with one of these names.'


def not_known(field: str, name: str, word: str, candidates: tuple[str, ...]) -> tuple[str, str]:
    """Return (what is wrong, what to do) when a name stands for nothing."""
    close = nearest(name, candidates)
    guess = f'Did you mean "{close}"? ' if close else ""
    there = f"There are: {listed(candidates[:_SHOWN], quoted=True)}." if candidates else "There is none."
    return f"{field} is {shown(name)}, but no {word} has that name.", f"{guess}{there}"
