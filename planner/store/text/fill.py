"""Reads all keys of one table: right sort, within limits, names turned into ids."""

from __future__ import annotations

from dataclasses import dataclass, field
from typing import Any

from planner.farm.checks import limit_text, value_faults
from planner.farm.faults import FaultKind
from planner.farm.fields import NO_ID, FieldKind, Id
from planner.store.text.entries import Entry, Names, not_given, not_known
from planner.store.text.findings import Findings, UnfitError
from planner.store.text.forms import Key
from planner.store.text.near import unit_in_words
from planner.store.text.values import value_of


@dataclass(slots=True, kw_only=True)
class Filled:
    """What a table holds: fields of the thing, conveniences, figures laid over a book entry."""

    values: dict[str, Any] = field(default_factory=dict)
    aids: dict[str, Any] = field(default_factory=dict)
    figures: dict[str, Any] = field(default_factory=dict)
    sound: bool = True


class Filler:
    """Reads tables one after the other."""

    def __init__(self, *, names: Names, findings: Findings) -> None:
        """Keep where names are looked up and faults are told."""
        self._names = names
        self._findings = findings

    def filled(self, entry: Entry) -> Filled:
        """Return what a table holds; `sound` is false when any of it had a fault."""
        result = Filled(values=dict(entry.form.fixed))
        for key in entry.form.keys.values():
            if key.name in entry.raw:
                self._read(entry, key, result)
            elif key.needed:
                self._left_out(entry, key, result)
        return result

    def only_one(self, entry: Entry, *, field: str, word: str, headers: frozenset[str]) -> Id | None:
        """Return the id of the only thing a reference can mean, or take up the fault that it is open."""
        candidates = self._names.known(word, headers)
        if len(candidates) == 1:
            return self._names.id_of(word, candidates[0])
        message, remedy = not_given(field, candidates)
        self._findings.say(entry.source, FaultKind.MISSING, message, field=field, remedy=remedy)
        return None

    def _read(self, entry: Entry, key: Key, result: Filled) -> None:
        try:
            value = value_of(entry.raw[key.name], key)
        except UnfitError as error:
            self._findings.unfit(entry.source, key.name, error)
            result.sound = False
            return
        if key.spec.kind is FieldKind.REFERENCE:
            value = self._resolved(entry, key, value, result)
        elif not key.runs:
            self._check_limits(entry, key, value, result)
        target = result.aids if key.aid else result.figures if key.figure else result.values
        target[key.field] = value

    def _check_limits(self, entry: Entry, key: Key, value: Any, result: Filled) -> None:
        where = entry.source.where
        for fault in value_faults(where=where, field=key.name, value=value, spec=key.spec):
            self._findings.add(fault, entry.source)
            result.sound = False

    def _resolved(self, entry: Entry, key: Key, value: Any, result: Filled) -> Any:
        if key.many:
            return tuple(self._id(entry, key, name, result) for name in value)
        if value == "" and not key.spec.needed:
            return NO_ID
        return self._id(entry, key, value, result)

    def _id(self, entry: Entry, key: Key, name: str, result: Filled) -> Id:
        word = key.spec.refers_to
        found = self._names.id_of(word, name)
        if found is not None:
            return found
        message, remedy = not_known(key.name, name, word, self._names.known(word))
        self._findings.say(
            entry.source, FaultKind.UNKNOWN_NAME, message, field=key.name, value=name, remedy=remedy
        )
        result.sound = False
        return NO_ID

    def _left_out(self, entry: Entry, key: Key, result: Filled) -> None:
        if key.spec.kind is FieldKind.REFERENCE:
            found = self.only_one(entry, field=key.name, word=key.spec.refers_to, headers=frozenset())
            result.sound = result.sound and found is not None
            result.values[key.field] = found
            return
        limit = _wanted(key)
        self._findings.say(
            entry.source,
            FaultKind.MISSING,
            f"{key.name} is missing, but must be given.",
            field=key.name,
            limit=limit,
            remedy=f"Write {key.name} = {limit}." if limit else "",
        )
        result.sound = False


def _wanted(key: Key) -> str:
    """Return how a missing key is written."""
    kind = key.spec.kind
    if kind in (FieldKind.NAME, FieldKind.TEXT, FieldKind.KEY):
        return '"..."'
    if kind is FieldKind.CHOICE:
        return " or ".join(f'"{choice}"' for choice in key.choices)
    if kind is FieldKind.DAY:
        return "a date such as 2026-03-02"
    unit = unit_in_words(key.spec.unit)
    return f"a number in {unit}, {limit_text(key.spec)}" if unit else f"a number, {limit_text(key.spec)}"
