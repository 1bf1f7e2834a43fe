"""Checks an entry of the log: what its kind needs, its unit, its time of day, what it corrects."""

from __future__ import annotations

import re
from collections.abc import Iterator
from typing import Final

from planner.farm.farm import Farm
from planner.farm.faults import Fault, FaultKind
from planner.farm.fields import NO_ID, Id
from planner.farm.log import Happening, LogEntry, Unit

_TIME: Final = re.compile(r"([01][0-9]|2[0-3]):[0-5][0-9]")
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
    Happening.WITHDRAWN: ("corrects",),
}
"""Fields without which an entry says nothing; a thing it was about may have been removed since."""

_COUNTS: Final = (Unit.SEEDS, Unit.PLANTS, Unit.FISH, Unit.SCORE)
_REFERENCES: Final = ("batch", "group", "bed", "loop")


def entry_faults(entry: LogEntry, where: str) -> Iterator[Fault]:
    """Yield the faults of one entry taken by itself."""
    if entry.at and _TIME.fullmatch(entry.at) is None:
        yield _wrong(where, "at", entry.at, "00:00 to 23:59", "is no time of day such as 07:30")
    if entry.what in NEEDED_OF and "amount" in NEEDED_OF[entry.what] and entry.amount is None:
        said = f'amount is missing: what = "{entry.what.value}" needs it.'
        yield Fault(kind=FaultKind.MISSING, where=where, field="amount", message=said)
    yield from _amount_faults(entry, where)
    if entry.corrects == entry.id:
        yield _wrong(where, "corrects", entry.code, "another entry", "is the entry itself")


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
