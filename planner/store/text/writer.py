"""Writes a farm as its text: in a fixed order, without what a reader would fill in the same way."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from datetime import date
from typing import Any, Final

from planner.farm.checks import farm_faults, thing_faults
from planner.farm.crops import Placement
from planner.farm.farm import Farm, OwnEntry, Settings, Thing, by_id, label_of, things
from planner.farm.faults import FarmFaultError
from planner.farm.fields import NO_ID, FieldKind, Id
from planner.farm.fish import FishGroup
from planner.farm.site import Bed
from planner.farm.species import UNIT_WORDS
from planner.store.text import limits
from planner.store.text.derived import Numbering
from planner.store.text.forms import FORMS, ORDER, TOP_FORMS, Form, Key, nested_in
from planner.store.text.ordering import orders
from planner.store.text.toml_out import toml_value

_HEAD: Final = (
    "# A farm for Raftweek, as text. The form is described in docs/farm-text.md.",
    "# What is not said here has its usual value; see the tables of keys there.",
)

_ENTRIES_HEAD: Final = (
    "# Own crops, fish, feeds and supplements for Raftweek, as text, to be taken into a farm.",
    "# The keys are those of the tables of the same name in docs/farm-text.md.",
)


def write_farm_text(farm: Farm) -> str:
    """Return the text of a farm; reading it gives the same farm again.

    Raises `FarmFaultError` when the farm is at fault and so could not be read back.
    """
    faults = farm_faults(farm)
    if faults:
        raise FarmFaultError(faults)
    blocks = ["\n".join((*_HEAD, f"format = {toml_value(limits.FORMAT)}"))]
    blocks.extend(_Writer(farm).blocks())
    return "\n\n".join(blocks) + "\n"


def write_own_entries(own_entries: Sequence[OwnEntry]) -> str:
    """Return own entries alone as text, without ids: those are another farm's. Reading it gives them again.

    Raises `FarmFaultError` when one of them is at fault.
    """
    farm = Farm(settings=Settings(id=NO_ID, name="-", plan_from=date.min), own_entries=tuple(own_entries))
    faults = tuple(fault for own in own_entries for fault in thing_faults(own))
    if faults:
        raise FarmFaultError(faults)
    head = "\n".join((*_ENTRIES_HEAD, f"format = {toml_value(limits.ENTRIES_FORMAT)}"))
    return "\n\n".join((head, *_Writer(farm, ids=False).blocks_of(OwnEntry))) + "\n"


@dataclass(frozen=True, slots=True, kw_only=True)
class _Item:
    """One thing in the place it has in the text."""

    form: Form
    thing: Any
    order: int | None = None


class _Writer:
    def __init__(self, farm: Farm, *, ids: bool = True) -> None:
        self._farm, self._ids = farm, ids
        self._numbering = Numbering()
        self._labels: dict[Id, str] = {}
        self._counts: dict[str, int] = {}
        for form in FORMS:
            many = things(farm, form.kind.word)
            self._counts[form.kind.word] = len(many)
            self._labels.update((thing.id, label_of(thing)) for thing in many)
        self._beds: dict[Id, Bed] = by_id(farm.beds)

    def blocks(self) -> Iterator[str]:
        """Yield each table as it stands in the text."""
        return self.blocks_of(object)

    def blocks_of(self, owner: type[Any]) -> Iterator[str]:
        """Yield the tables of things of one class."""
        for item in _with_orders(self._farm, list(_in_text_order(self._farm))):
            if isinstance(item.thing, owner):
                yield "\n".join((item.form.header, *_aligned(self._lines(item))))

    def _lines(self, item: _Item) -> list[tuple[str, str]]:
        """Return (key, value as written) of everything that has to be said."""
        thing = item.thing
        lines = []
        if self._ids and thing.id != self._numbering.id_of(thing):
            lines.append(("id", toml_value(str(thing.id))))
        for key in item.form.keys.values():
            if key.aid or key.figure or key.spec.kind is FieldKind.ID:
                continue
            value = getattr(thing, key.field)
            if key.spec.kind is FieldKind.REFERENCE:
                lines.extend(self._reference(key, value, always=isinstance(thing, Placement)))
            elif toml_value(value) != toml_value(key.default):
                # By the text, because -0.0 is 0.0 to everything but the mark of a plan.
                lines.append((key.name, toml_value(value)))
        lines.extend(self._more(thing))
        if item.order is not None:
            lines.append((ORDER, str(item.order)))
        return lines

    def _reference(self, key: Key, value: Id, *, always: bool) -> Iterator[tuple[str, str]]:
        """Yield a reference by name, unless it is open or there is only one thing it can mean."""
        only_one = key.spec.needed and self._counts[key.spec.refers_to] == 1 and not always
        if value != NO_ID and not only_one:
            yield key.name, toml_value(self._labels[value])

    def _more(self, thing: Thing) -> Iterator[tuple[str, str]]:
        if isinstance(thing, OwnEntry):
            for name, value in thing.values:
                yield name, toml_value(value)
        elif isinstance(thing, Placement):
            bed = self._beds[thing.bed]
            if bed.units > 1:
                yield UNIT_WORDS[bed.kind], str(thing.unit)
            run = str(thing.first) if thing.count == 1 else f'"{thing.first}-{thing.last}"'
            yield "places", run


def _aligned(lines: list[tuple[str, str]]) -> Iterator[str]:
    widest = max((len(name) for name, _value in lines), default=0)
    for name, value in lines:
        yield f"{name:<{widest}} = {value}"


def _in_text_order(farm: Farm) -> Iterator[_Item]:
    events = _by_parent(farm.fish_events, "group")
    placements = _by_parent(farm.placements, "batch")
    for form in TOP_FORMS.values():
        for thing in _of_form(farm, form):
            yield _Item(form=form, thing=thing)
            for inner in nested_in(form):
                mine = events if isinstance(thing, FishGroup) else placements
                for one in mine.get(thing.id, ()):
                    yield _Item(form=inner, thing=one)


def _by_parent(many: tuple[Any, ...], field: str) -> dict[Id, list[Any]]:
    found: dict[Id, list[Any]] = {}
    for thing in many:
        found.setdefault(getattr(thing, field), []).append(thing)
    return found


def _of_form(farm: Farm, form: Form) -> tuple[Any, ...]:
    """Return the things written under one header: some headers hold part of a kind."""
    many = things(farm, form.kind.word)
    for field, value in form.fixed.items():
        many = tuple(thing for thing in many if getattr(thing, field) is value)
    return many


def _with_orders(farm: Farm, items: list[_Item]) -> Iterator[_Item]:
    """Yield the items, those of kinds whose order the text changes with the number they stand at."""
    numbers: dict[int, int | None] = {}
    for word in {item.form.kind.word for item in items if item.form.aid and ORDER in item.form.keys}:
        rank = {thing.id: number for number, thing in enumerate(things(farm, word))}
        mine = [position for position, item in enumerate(items) if item.form.kind.word == word]
        ranks = [rank[items[position].thing.id] for position in mine]
        numbers.update(zip(mine, orders(ranks), strict=True))
    for position, item in enumerate(items):
        yield _Item(form=item.form, thing=item.thing, order=numbers.get(position))
