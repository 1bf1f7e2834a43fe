"""Gathers the things of a text until the farm can be made of them."""

from __future__ import annotations

from collections.abc import Iterator
from typing import Any

from planner.farm.checks import thing_faults, where_of
from planner.farm.farm import KINDS, SETTINGS_KIND, Farm, Kind, Settings, Thing
from planner.farm.faults import Fault, FaultKind
from planner.farm.fields import FieldKind, Id, specs_of
from planner.farm.fish import FishEvent, FishGroup
from planner.farm.fish_counts import where_of_event
from planner.store.text import limits
from planner.store.text.findings import Findings, Source
from planner.store.text.ordering import in_order


class Draft:
    """The things read so far, and where each stands in the text."""

    def __init__(self, findings: Findings) -> None:
        """Begin with an empty farm."""
        self._findings = findings
        self._things: dict[str, list[tuple[int | None, Any]]] = {
            kind.word: [] for kind in (SETTINGS_KIND, *KINDS)
        }
        self._by_id: dict[tuple[str, Id], Any] = {}
        self._sources: dict[tuple[str, Id], Source] = {}
        self._count = 0

    def add(self, thing: Thing, *, kind: Kind, source: Source, order: int | None = None) -> None:
        """Take up a thing, with the faults it has by itself."""
        self._count += 1
        if self._count > limits.MOST_THINGS:
            self._findings.say(
                source,
                FaultKind.TOO_LARGE,
                f"the farm has more than {limits.MOST_THINGS} things, repeats written out.",
                limit=str(limits.MOST_THINGS),
            )
            self._findings.stop()
        for fault in thing_faults(thing):
            self._findings.add(_called(fault, source), source)
        self._things[kind.word].append((order, thing))
        self._by_id[kind.word, thing.id] = thing
        self._sources[kind.word, thing.id] = source

    def found(self, word: str) -> tuple[Any, ...]:
        """Return the things of one kind, as far as they are read."""
        return tuple(thing for _order, thing in self._things[word])

    def thing(self, word: str, of: Id) -> Any | None:
        """Return one thing, or None when it is not read (yet, or because of a fault)."""
        return self._by_id.get((word, of))

    def source_of(self, word: str, of: Id) -> Source:
        """Return where a thing stands in the text."""
        return self._sources[word, of]

    def farm(self) -> Farm:
        """Return the farm; to be called when the settings are there."""
        settings = self._things[SETTINGS_KIND.word][0][1]
        assert isinstance(settings, Settings)
        places: dict[str, Any] = {kind.place: in_order(self._things[kind.word]) for kind in KINDS}
        return Farm(settings=settings, **places)

    def take_up(self, faults: tuple[Fault, ...], farm: Farm) -> None:
        """Take up faults of the whole farm, each with the place in the text it speaks of."""
        spots = self._spots(farm)
        lettered = {(fault.where, fault.kind) for fault in faults if fault.field != "id"}
        for fault in faults:
            if fault.field == "id" and (fault.where, fault.kind) in lettered:
                continue
            source = spots.get((fault.where, fault.value)) or spots.get((fault.where, ""))
            self._findings.add(fault, source or Source(path=(), where=fault.where))

    def _spots(self, farm: Farm) -> dict[tuple[str, str], Source]:
        """Return (what a fault calls it, the value it tells) -> source; the value may be empty."""
        spots: dict[tuple[str, str], Source] = {}
        groups: dict[Id, FishGroup] = {group.id: group for group in farm.fish_groups}
        for kind in (SETTINGS_KIND, *KINDS):
            for _order, thing in self._things[kind.word]:
                source = self._sources[kind.word, thing.id]
                spots[where_of(thing), ""] = source
                for key in _keys_of(thing):
                    spots.setdefault((where_of(thing), key), source)
                if isinstance(thing, FishEvent) and thing.group in groups:
                    where = f'fish event of "{groups[thing.group].name}"'
                    spots.setdefault((where, thing.on.isoformat()), source)
                    spots.setdefault((where_of_event(groups[thing.group], thing), str(thing.count)), source)
        return spots


def _keys_of(thing: Thing) -> Iterator[str]:
    """Yield the keys of the catalogue that a thing names; they tell things without a name apart."""
    for name, spec in specs_of(type(thing)).items():
        if spec.kind is FieldKind.KEY:
            yield getattr(thing, name) or ""


def _called(fault: Fault, source: Source) -> Fault:
    """Return a fault under the name that the text's faults have for its place."""
    return Fault(
        kind=fault.kind,
        where=source.where,
        field=fault.field,
        value=fault.value,
        limit=fault.limit,
        message=fault.message,
        remedy=fault.remedy,
    )
