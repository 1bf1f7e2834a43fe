"""What really happened, one entry after the other: the grower's log.

An entry is never erased: one that was wrong is corrected by a later one, and both stay in the list.
What an entry moves in the plan (a batch, fish, a dose) is written beside it by the actions.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from datetime import date
from enum import Enum
from typing import Final

from planner.farm import fields
from planner.farm.fields import NO_ID, FieldKind, Id, specs_of
from planner.farm.water import Quantity


class Happening(Enum):
    """What happened; `WITHDRAWN` corrects an entry of something that did not happen at all."""

    SOWN = "sown"
    GERMINATED = "germinated"
    MOVED = "moved to bed"
    PICKED = "picked"
    CULLED = "culled"
    CLEARED = "cleared"
    FEED_GIVEN = "feed given"
    LEFT_OVER = "feed left over"
    DEATHS = "fish dead"
    WEIGHED = "fish weighed"
    FISH_TAKEN = "fish taken"
    DOSED = "dose given"
    SIPHONED = "solids siphoned"
    RETURNED = "liquor returned"
    TOPPED_UP = "topped up"
    PEST = "pest seen"
    MAINTAINED = "maintenance"
    NOT_DONE = "not done"
    NOTE = "note"
    MEASURED = "reading"
    CALIBRATED = "meter calibrated"
    SEED_TESTED = "seed tested"
    TREATED = "fish treated"
    RELEASED = "fish cleared to eat"
    WITHDRAWN = "withdrawn"


class Unit(Enum):
    """What the amount of an entry counts."""

    NONE = ""
    SEEDS = "seeds"
    PLANTS = "plants"
    HEADS = "heads"
    KG = "kg"
    G = "g"
    FISH = "fish"
    LITRES = "L"
    SCORE = "score 0-3"


class Reason(Enum):
    """Why something went otherwise than planned."""

    NONE = ""
    HEAT = "heat"
    COLD = "cold"
    LIGHT = "too little light"
    SEED = "poor seed"
    PEST = "pest"
    DISEASE = "disease"
    WATER = "water"
    NUTRIENT = "nutrient short"
    NO_PLACE = "no free place"
    LABOUR = "no time"
    POWER = "power cut"
    DEMAND = "not wanted"
    OTHER = "other"


@dataclass(frozen=True, slots=True, kw_only=True)
class LogEntry:
    """One thing that happened on a day, about at most one batch, fish group, bed, loop, seed lot and meter.

    `amount` counts what `unit` says; for fish weighed it is the mean weight of one fish [g], for
    feed the grams of the day, for a reading the value in the unit of its `quantity`, for a test of seed
    the seeds that came up `out_of` those laid out. `corrects` is the entry this one takes the place of.
    """

    id: Id = fields.own_id()
    code: str = fields.name(meaning="under which the entry is found, and corrected")
    what: Happening = fields.choice()
    on: date = fields.day()
    at: str = fields.text(length=5, meaning="time of day, as 07:30")
    batch: Id = fields.reference("batch", default=NO_ID)
    group: Id = fields.reference("fish group", default=NO_ID)
    bed: Id = fields.reference("bed", default=NO_ID)
    loop: Id = fields.reference("loop", default=NO_ID)
    seed_lot: Id = fields.reference("seed lot", default=NO_ID)
    meter: Id = fields.reference("meter", default=NO_ID)
    supplement: str = fields.key("supplement", default="")
    quantity: Quantity | None = fields.choice(default=None, meaning="what was read")
    amount: float | None = fields.number(-50, 10_000_000, "as the unit says", default=None)
    out_of: int | None = fields.whole(1, 1_000_000, unit="seeds", default=None, meaning="seeds laid out")
    unit: Unit = fields.choice(default=Unit.NONE)
    reason: Reason = fields.choice(default=Reason.NONE)
    who: str = fields.text(length=120, meaning="who did it or saw it")
    noted_at: str = fields.text(length=17, meaning="when it was noted, in UTC, as 2026-04-06T07:30Z")
    corrects: Id = fields.reference("log entry", default=NO_ID, meaning="the entry that this one replaces")
    notes: str = fields.text()


POINTS_AT: Final = {
    field: spec.refers_to for field, spec in specs_of(LogEntry).items() if spec.kind is FieldKind.REFERENCE
}
"""What each field of an entry points at, by the word of its kind; an entry it corrects among them."""

ABOUT: Final = {field: word for field, word in POINTS_AT.items() if field != "corrects"}
"""The things of the farm that an entry may be about."""


def standing(entries: Iterable[LogEntry]) -> tuple[LogEntry, ...]:
    """Return the entries that hold: neither corrected by another nor withdrawals, in order."""
    every = tuple(entries)
    replaced = {entry.corrects for entry in every if entry.corrects != NO_ID}
    return tuple(
        entry for entry in every if entry.id not in replaced and entry.what is not Happening.WITHDRAWN
    )


def first_of(entries: Iterable[LogEntry], entry: LogEntry) -> Id:
    """Return the id of the entry at the beginning of a chain of corrections."""
    known = {each.id: each for each in entries}
    seen = {entry.id}
    while entry.corrects != NO_ID and entry.corrects in known and entry.corrects not in seen:
        entry = known[entry.corrects]
        seen.add(entry.id)
    return entry.id
