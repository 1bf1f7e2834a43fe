"""Checks an entry of the log: what its kind needs, its unit, its time of day, what it corrects."""

from __future__ import annotations

import re
from collections.abc import Iterator
from typing import Final

from planner.farm.farm import Farm
from planner.farm.faults import Fault, FaultKind
from planner.farm.fields import NO_ID, Id
from planner.farm.log import Happening, LogEntry, Unit
from planner.farm.water import READING_LIMITS

_TIME: Final = re.compile(r"([01][0-9]|2[0-3]):[0-5][0-9]")
_MOMENT: Final = re.compile(r"\d{4}-[01]\d-[0-3]\dT[0-2]\d:[0-5]\dZ", re.ASCII)
_MOST_SCORE: Final = 3

UNITS_OF: Final[dict[Happening, tuple[Unit, ...]]] = {
    Happening.SOWN: (Unit.SEEDS,),
    Happening.GERMINATED: (Unit.PLANTS,),
    Happening.MOVED: (Unit.PLANTS,),
    Happening.PICKED: (Unit.HEADS, Unit.KG),
    Happening.CULLED: (Unit.PLANTS,),
    Happening.FEED_GIVEN: (Unit.G,),
    Happening.LEFT_OVER: (Unit.G,),
    Happening.DEATHS: (Unit.FISH,),
    Happening.WEIGHED: (Unit.G,),
    Happening.FISH_TAKEN: (Unit.FISH,),
    Happening.DOSED: (Unit.G,),
    Happening.SIPHONED: (Unit.LITRES,),
    Happening.TOPPED_UP: (Unit.LITRES,),
    Happening.PEST: (Unit.SCORE,),
    Happening.MEASURED: (Unit.NONE,),
    Happening.SEED_TESTED: (Unit.PLANTS,),
}
"""Units that an amount of each kind of entry may have, the usual one first; others take any."""

NEEDED_OF: Final[dict[Happening, tuple[str, ...]]] = {
    Happening.SOWN: ("batch",),
    Happening.GERMINATED: ("batch", "amount"),
    Happening.MOVED: ("batch",),
    Happening.PICKED: ("batch", "amount"),
    Happening.CULLED: ("batch", "amount"),
    Happening.CLEARED: ("batch",),
    Happening.FEED_GIVEN: ("group", "amount"),
    Happening.LEFT_OVER: ("group",),
    Happening.DEATHS: ("group", "amount"),
    Happening.WEIGHED: ("group", "amount"),
    Happening.FISH_TAKEN: ("group", "amount"),
    Happening.DOSED: ("loop", "supplement", "amount"),
    Happening.SIPHONED: ("loop",),
    Happening.RETURNED: ("loop",),
    Happening.TOPPED_UP: ("loop", "amount"),
    Happening.PEST: ("amount",),
    Happening.MEASURED: ("loop", "quantity", "amount"),
    Happening.CALIBRATED: ("meter",),
    Happening.SEED_TESTED: ("seed_lot", "amount", "out_of"),
    Happening.TREATED: ("group",),
    Happening.RELEASED: ("group",),
    Happening.WITHDRAWN: ("corrects",),
}
"""Fields without which an entry says nothing; a thing it was about may have been removed since."""

_COUNTS: Final = (Unit.SEEDS, Unit.PLANTS, Unit.FISH, Unit.SCORE)
_SAID: Final = ("amount", "quantity", "out_of")
"""Needed fields that point at nothing: they never go, so an entry without them is wrong for good."""


def entry_faults(entry: LogEntry, where: str) -> Iterator[Fault]:
    """Yield the faults of one entry taken by itself."""
    yield from time_faults(entry.at, where)
    if entry.noted_at and _MOMENT.fullmatch(entry.noted_at) is None:
        yield _wrong(
            where, "noted_at", entry.noted_at, "a moment in UTC", "is none such as 2026-04-06T07:30Z"
        )
    for field in _SAID:
        if field in NEEDED_OF.get(entry.what, ()) and getattr(entry, field) is None:
            said = f'{field} is missing: what = "{entry.what.value}" needs it.'
            yield Fault(kind=FaultKind.MISSING, where=where, field=field, message=said)
    yield from _amount_faults(entry, where)
    if entry.corrects == entry.id:
        yield _wrong(where, "corrects", entry.code, "another entry", "is the entry itself")


def time_faults(at: str, where: str) -> Iterator[Fault]:
    """Yield a fault for what is no time of day; no time at all is none."""
    if at and _TIME.fullmatch(at) is None:
        yield _wrong(where, "at", at, "00:00 to 23:59", "is no time of day such as 07:30")


def missing_of(entry: LogEntry) -> tuple[str, ...]:
    """Return the fields that a new entry of its kind must still be given."""
    return tuple(name for name in NEEDED_OF.get(entry.what, ()) if getattr(entry, name) in (None, NO_ID, ""))


def _amount_faults(entry: LogEntry, where: str) -> Iterator[Fault]:
    units = UNITS_OF.get(entry.what)
    if entry.amount is None:
        return
    if units is not None and entry.unit not in units:
        limit = " or ".join(f'"{unit.value}"' for unit in units)
        yield _wrong(where, "unit", entry.unit.value, limit, f'does not go with "{entry.what.value}"')
    if entry.unit in _COUNTS and entry.amount != int(entry.amount):
        yield _wrong(
            where, "amount", f"{entry.amount:g}", "a whole number", f"are no whole {entry.unit.value}"
        )
    if entry.unit is Unit.SCORE and entry.amount > _MOST_SCORE:
        yield _wrong(where, "amount", f"{entry.amount:g}", f"0 to {_MOST_SCORE}", "is no score of pests")
    if entry.what is Happening.MEASURED:
        yield from _read_faults(entry, where)
    elif entry.amount < 0:
        yield _wrong(where, "amount", f"{entry.amount:g}", "0 or more", "is less than nothing")
    if entry.out_of is not None and entry.what is Happening.SEED_TESTED and entry.amount > entry.out_of:
        laid = f"at most the {entry.out_of} laid out"
        yield _wrong(where, "amount", f"{entry.amount:g}", laid, "came up of fewer seeds")


def _read_faults(entry: LogEntry, where: str) -> Iterator[Fault]:
    """Yield a fault for a value that what was read cannot have."""
    if entry.quantity is not None and entry.amount is not None:
        low, high = READING_LIMITS[entry.quantity]
        if not low <= entry.amount <= high:
            limit = f"{low:g} to {high:g} ({entry.quantity.value})"
            yield _wrong(where, "amount", f"{entry.amount:g}", limit, f"is no {entry.quantity.value}")


def log_faults(farm: Farm) -> Iterator[Fault]:
    """Yield a fault where two entries correct the same one, or entries correct each other in a ring."""
    corrected: dict[Id, LogEntry] = {}
    known = {entry.id: entry for entry in farm.log_entries}
    for entry in farm.log_entries:
        if entry.corrects == NO_ID:
            continue
        where = f'log entry "{entry.code}"'
        other = corrected.setdefault(entry.corrects, entry)
        if other is not entry:
            found = known[entry.corrects].code
            yield _wrong(
                where, "corrects", found, "one correction each", f"is corrected by {other.code} already"
            )
    if _has_ring(known):
        yield _wrong("log", "corrects", "a ring", "an earlier entry", "leads back to the entry itself")


def _has_ring(known: dict[Id, LogEntry]) -> bool:
    """Tell whether following corrections ever comes back; each entry is passed once."""
    done: set[Id] = set()
    for start in known:
        path: set[Id] = set()
        now = start
        while now != NO_ID and now not in done:
            if now in path:
                return True
            path.add(now)
            now = known[now].corrects
        done |= path
    return False


def _wrong(where: str, field: str, value: str, limit: str, why: str) -> Fault:
    return Fault(
        kind=FaultKind.NOT_SUITED,
        where=where,
        field=field,
        value=value,
        limit=limit,
        message=f'{field} "{value}" {why}; it must be {limit}.',
    )
