"""Makes things of the tables of a text, writing out what one table says for several."""

from __future__ import annotations

import dataclasses
from collections.abc import Iterator
from typing import Any, Final

from planner.farm.checks import placement_faults
from planner.farm.crops import Batch, Phase, Placement
from planner.farm.farm import OwnEntry, Thing, kind_named
from planner.farm.faults import FaultKind
from planner.farm.fields import NO_ID, Id
from planner.farm.fish import FishEvent, FishEventKind, FishGroup
from planner.farm.site import Bed
from planner.farm.species import UNIT_WORDS
from planner.store.text.beds import BedError, grid_of
from planner.store.text.derived import Numbering
from planner.store.text.draft import Draft
from planner.store.text.entries import Entry
from planner.store.text.fill import Filled, Filler
from planner.store.text.findings import Findings
from planner.store.text.forms import ORDER
from planner.store.text.repeats import BatchCodes, later, repeat_of
from planner.store.text.values import Runs

_HEADERS_OF_PHASE: Final = {
    Phase.NURSERY: frozenset({"nursery"}),
    Phase.SPACING: frozenset({"nursery", "raft_bed", "media_bed"}),
    Phase.BED: frozenset({"raft_bed", "media_bed"}),
}
_ANY_UNIT: Final = "unit"
_UNIT_KEYS: Final = (*UNIT_WORDS.values(), _ANY_UNIT)


class Builder:
    """Makes things of tables, one table after the other, and puts them into the draft."""

    def __init__(self, *, filler: Filler, findings: Findings, draft: Draft, codes: BatchCodes) -> None:
        """Keep what reads keys, where faults and things go, and what makes batch codes."""
        self._filler = filler
        self._findings = findings
        self._draft = draft
        self._codes = codes
        self._numbering = Numbering()

    def build(self, entry: Entry) -> None:
        """Make what a top table and the tables in it stand for."""
        filled = self._filler.filled(entry)
        owner = entry.form.kind.owner
        if owner is FishGroup:
            self._groups(entry, filled)
        elif owner is Batch:
            self._batches(entry, filled)
        elif owner is Bed:
            self._bed(entry, filled)
        elif filled.sound:
            if owner is OwnEntry:
                filled.values["values"] = tuple(sorted(filled.figures.items()))
            self._put(entry, filled.values, order=filled.aids.get(ORDER))

    def _put(self, entry: Entry, values: dict[str, Any], *, order: int | None = None) -> Thing:
        """Make one thing with the id that is given or derived, and take it up."""
        values = {key: value for key, value in values.items() if key != "id"}
        owner = entry.form.kind.owner
        thing: Any = owner(id=NO_ID, **values)
        derived = self._numbering.id_of(thing)
        typed = entry.raw.get("id")
        thing = dataclasses.replace(thing, id=Id(typed) if isinstance(typed, str) else derived)
        self._draft.add(thing, kind=entry.form.kind, source=entry.source, order=order)
        made: Thing = thing
        return made

    def _bed(self, entry: Entry, filled: Filled) -> None:
        if not filled.sound:
            return
        try:
            grid = grid_of(filled.values, filled.aids)
        except BedError as error:
            self._findings.unfit(entry.source, error.field, error.fault)
            return
        values = {**filled.values, "rows": grid.rows, "columns": grid.columns, "area_m2": grid.area_m2}
        self._put(entry, values, order=filled.aids.get(ORDER))

    def _groups(self, entry: Entry, filled: Filled) -> None:
        events = [(inner, self._filler.filled(inner)) for inner in entry.inner]
        tanks = self._tanks(entry, filled)
        if not self._repeats_sound(entry) or not filled.sound or not tanks:
            return
        repeat = repeat_of(filled.aids)
        for number, days in enumerate(repeat.days()):
            values = dict(filled.values)
            values["stocked_on"] = later(values["stocked_on"], days)
            values["tank"] = tanks[number % len(tanks)]
            if repeat.times > 1:
                values["name"] = f"{values['name']} {number + 1}"
            group = self._put(entry, values)
            assert isinstance(group, FishGroup)
            for inner, event in events:
                if event.sound:
                    on = later(event.values["on"], days)
                    self._put(
                        inner, {**event.values, "group": group.id, "on": on}, order=event.aids.get(ORDER)
                    )
            self._harvest(entry, group, filled.aids.get("harvest_after_days"))

    def _harvest(self, entry: Entry, group: FishGroup, after_days: int | None) -> None:
        if after_days is None:
            return
        event = FishEvent(
            id=NO_ID,
            group=group.id,
            on=later(group.stocked_on, after_days),
            kind=FishEventKind.HARVEST,
        )
        event = dataclasses.replace(event, id=self._numbering.id_of(event))
        self._draft.add(event, kind=kind_named("fish event"), source=entry.source)

    def _tanks(self, entry: Entry, filled: Filled) -> tuple[Id, ...]:
        """Return the tanks a group is stocked into in turn; none when that is at fault."""
        many: tuple[Id, ...] = filled.aids.get("tanks", ())
        if "tanks" in entry.raw and "tank" in entry.raw:
            self._say(entry, "tanks", FaultKind.DUPLICATE, "tank and tanks are both given.", "Keep one.")
            return ()
        if len(many) > 1 and "repeat_times" not in entry.raw:
            message = f"tanks has {len(many)} names, but one group swims in one tank."
            remedy = "Add repeat_times and repeat_every_days, or write a [[fish_group]] for each tank."
            self._say(entry, "tanks", FaultKind.NOT_SUITED, message, remedy)
            return ()
        if "tanks" in entry.raw:
            return many
        if "tank" in entry.raw:
            return (filled.values["tank"],) if "tank" in filled.values else ()
        only = self._filler.only_one(entry, field="tank", word="tank", headers=frozenset())
        return (only,) if only is not None else ()

    def _repeats_sound(self, entry: Entry) -> bool:
        """Tell whether repeats are said in full, and do not clash with an id."""
        pair = ("repeat_every_days", "repeat_times")
        given = [name for name in pair if name in entry.raw]
        if len(given) == 1:
            other = pair[1 - pair.index(given[0])]
            self._say(
                entry, other, FaultKind.MISSING, f"{other} is missing: {given[0]} needs it.", "Give both."
            )
        elif given and "id" in entry.raw:
            message = "id is given, but repeats make several things, each with its own."
            self._say(entry, "id", FaultKind.NOT_SUITED, message, "Leave id out.")
            return False
        return len(given) != 1

    def _batches(self, entry: Entry, filled: Filled) -> None:
        places = [(inner, self._placed(inner)) for inner in entry.inner]
        if not self._repeats_sound(entry) or not filled.sound:
            return
        repeat = repeat_of(filled.aids)
        for number, days in enumerate(repeat.days()):
            values = dict(filled.values)
            values["sow_on"] = later(values["sow_on"], days)
            if "code" not in values:
                values["code"] = self._codes.make(values["crop"], values["sow_on"])
            elif repeat.times > 1:
                values["code"] = f"{values['code']}-{number + 1}"
            batch = self._put(entry, values)
            assert isinstance(batch, Batch)
            for inner, place in places:
                if place is not None:
                    self._hold(inner, place, batch)

    def _placed(self, entry: Entry) -> Filled | None:
        """Return what a table of places says, with its bed told; None when it is at fault."""
        filled = self._filler.filled(entry)
        if not filled.sound:
            return None
        if "bed" not in filled.values:
            headers = _HEADERS_OF_PHASE[filled.values["phase"]]
            bed = self._filler.only_one(entry, field="bed", word="bed", headers=headers)
            if bed is None:
                return None
            filled.values["bed"] = bed
        if "places" not in entry.raw:
            message = "places is missing, but must be given."
            self._say(entry, "places", FaultKind.MISSING, message, 'Write a run such as "1-18", or "all".')
            return None
        return filled

    def _hold(self, entry: Entry, place: Filled, batch: Batch) -> None:
        """Make the runs of places that one table gives to one batch."""
        bed = self._draft.thing("bed", place.values["bed"])
        if bed is None:
            return
        units = self._units(entry, place, bed)
        several = False
        for unit in units:
            for first, count in _counted(place.aids["places"], bed):
                if several and "id" in entry.raw:
                    message = "id is given, but this makes several runs of places, each with its own."
                    self._say(entry, "id", FaultKind.NOT_SUITED, message, "Leave id out.")
                    return
                values = {
                    "batch": batch.id,
                    "phase": place.values["phase"],
                    "bed": bed.id,
                    "unit": unit,
                    "first": first,
                    "count": count,
                }
                held = self._put(entry, values, order=place.aids.get(ORDER))
                assert isinstance(held, Placement)
                self._check_place(entry, held, batch, bed)
                several = True

    def _check_place(self, entry: Entry, held: Placement, batch: Batch, bed: Bed) -> None:
        for fault in placement_faults(held, batch=batch, bed=bed):
            keys = {"unit": _unit_key(entry) or "places", "first": "places"}
            field = keys.get(fault.field, fault.field)
            self._say(entry, field, fault.kind, fault.message, fault.remedy)

    def _units(self, entry: Entry, place: Filled, bed: Bed) -> Iterator[int]:
        """Yield the numbers of the rafts, blocks or trays meant."""
        word = UNIT_WORDS[bed.kind]
        given = [name for name in _UNIT_KEYS if name in entry.raw]
        wrong = [name for name in given if name not in (word, _ANY_UNIT)]
        if len(given) > 1:
            message = f"{' and '.join(given)} are both given."
            self._say(entry, given[1], FaultKind.DUPLICATE, message, f"Keep {word}.")
        elif wrong:
            message = f'"{bed.name}" has no {wrong[0]}s: it is a {bed.kind.value} bed.'
            self._say(entry, wrong[0], FaultKind.NOT_SUITED, message, f"Write {word} instead.")
        elif not given and bed.units > 1:
            message = f'{word} is missing: "{bed.name}" has {bed.units} of them.'
            self._say(entry, word, FaultKind.MISSING, message, f"Write {word} = 1 to {bed.units}.")
        elif not given:
            yield 1
        else:
            runs: Runs = place.aids[given[0]] or ((1, bed.units),)
            for first, last in runs:
                # One number too high tells the fault; thousands would only repeat it.
                yield from range(first, min(last, max(first, bed.units + 1)) + 1)

    def _say(self, entry: Entry, field: str, kind: FaultKind, message: str, remedy: str) -> None:
        self._findings.say(entry.source, kind, message, field=field, remedy=remedy)


def _unit_key(entry: Entry) -> str:
    return next((name for name in _UNIT_KEYS if name in entry.raw), "")


def _counted(runs: Runs, bed: Bed) -> Iterator[tuple[int, int]]:
    """Yield (first, count) of each run of places; no runs stand for all places of the unit."""
    for first, last in runs or ((1, bed.places_per_unit),):
        yield first, last - first + 1
