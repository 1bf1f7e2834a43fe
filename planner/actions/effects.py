"""What an entry of the log writes beside itself: fish, doses, top-up and solids, from its day on.

The thing written has an id that follows from the first entry of a chain, so that a correction finds
it again. Knows nothing of batches, whose days are worked out from all their entries at once.
"""

from __future__ import annotations

import dataclasses
from collections.abc import Callable, Iterator
from typing import Any, Final

from planner.farm.changes import Change
from planner.farm.crops import SeedLot
from planner.farm.farm import Farm, Thing, things
from planner.farm.fields import NO_ID, Id
from planner.farm.fish import FishEvent, FishEventKind
from planner.farm.ids import id_from
from planner.farm.log import Happening, LogEntry, first_of, standing
from planner.farm.meters import FACTORED
from planner.farm.water import Dose, Quantity, Reading, SolidsBatch

_WORDS: Final = ("fish event", "dose", "reading", "solids batch")
_LONGEST_DAYS: Final = 400
"""As many days as a solids batch may gather."""


def effect_id(farm: Farm, entry: LogEntry) -> Id:
    """Return the id of what an entry, and every correction of it, writes."""
    return id_from("log effect", first_of(farm.log_entries, entry))


def effect_of(farm: Farm, entry: LogEntry) -> Iterator[Change]:
    """Yield the changes that an entry makes to fish and water; `farm` has the entry already."""
    own = effect_id(farm, entry)
    before = next((t for word in _WORDS for t in things(farm, word) if t.id == own), None)
    after = _made(farm, entry, own)
    if before is not None and after is not None and type(before) is type(after):
        if before != after:
            yield Change(before=before, after=after)
    else:
        if before is not None:
            yield Change(before=before)
        if after is not None:
            yield Change(after=after)
    yield from _returned(farm, entry)
    yield from _fed(farm, entry)
    yield from _cleared(farm, entry)
    yield from _seeds_used(farm, entry)


def _made(farm: Farm, entry: LogEntry, own: Id) -> Thing | None:
    make = _MAKERS.get(entry.what)
    return None if make is None else make(farm, entry, own)


def _fish(_farm: Farm, entry: LogEntry, own: Id) -> Thing | None:
    kind = _FISH[entry.what]
    if not entry.amount:
        return None
    amount = entry.amount
    if kind is FishEventKind.SAMPLE:
        return FishEvent(id=own, group=entry.group, on=entry.on, kind=kind, mean_weight_g=amount)
    return FishEvent(id=own, group=entry.group, on=entry.on, kind=kind, count=int(amount))


def _fed(farm: Farm, entry: LogEntry) -> Iterator[Change]:
    """Yield the feed of the days that an entry, or the one it corrects, speaks of: all meals together."""
    known = {each.id: each for each in farm.log_entries}
    told = [entry, *([known[entry.corrects]] if entry.corrects in known else [])]
    days = {(each.group, each.on) for each in told if each.what is Happening.FEED_GIVEN}
    meals = [each for each in standing(farm.log_entries) if each.what is Happening.FEED_GIVEN]
    for group, on in sorted(days):
        own = id_from("log feed", group, on.isoformat())
        before = next((event for event in farm.fish_events if event.id == own), None)
        grams = [each.amount or 0.0 for each in meals if (each.group, each.on) == (group, on)]
        given: dict[str, Any] = {"kind": FishEventKind.FEED_GIVEN, "days": 1, "feed_g_per_day": sum(grams)}
        after = FishEvent(id=own, group=group, on=on, **given) if grams and group != NO_ID else None
        if before != after:
            yield Change(before=before, after=after)


def _dose(_farm: Farm, entry: LogEntry, own: Id) -> Thing | None:
    if not entry.amount:
        return None
    return Dose(id=own, loop=entry.loop, supplement=entry.supplement, grams=entry.amount, on=entry.on)


def _top_up(_farm: Farm, entry: LogEntry, own: Id) -> Thing | None:
    value = entry.amount or 0.0
    return Reading(id=own, loop=entry.loop, on=entry.on, quantity=Quantity.TOP_UP_L, value=value)


def _reading(farm: Farm, entry: LogEntry, own: Id) -> Thing | None:
    """Return the reading; its factor is the meter's, or the one that the corrected reading had."""
    if entry.quantity is None or entry.amount is None or entry.loop == NO_ID:
        return None
    meter = next((one for one in farm.meters if one.id == entry.meter), None)
    earlier = next((one for one in farm.readings if one.id == own), None)
    factor = None if earlier is None else earlier.meter_factor
    if meter is not None and meter.factor is not None and entry.quantity in FACTORED:
        factor = meter.factor
    return Reading(
        id=own,
        loop=entry.loop,
        on=entry.on,
        at=entry.at,
        quantity=entry.quantity,
        value=entry.amount,
        meter=entry.meter,
        meter_factor=factor,
        notes=entry.notes,
    )


def _treated(farm: Farm, entry: LogEntry, own: Id) -> Thing | None:
    if entry.group == NO_ID:
        return None
    earlier = next((one for one in farm.fish_events if one.id == own), None)
    cleared = None if earlier is None else earlier.cleared_on
    return FishEvent(
        id=own,
        group=entry.group,
        on=entry.on,
        kind=FishEventKind.TREATED,
        cleared_on=None if cleared is None or cleared < entry.on else cleared,
        notes=entry.notes,
    )


def _cleared(farm: Farm, entry: LogEntry) -> Iterator[Change]:
    """Yield the day from which treated fish may be eaten, as the entries that stand have it.

    A treatment is cleared by the first entry of its group that says so, on its day or later.
    """
    known = {each.id: each for each in farm.log_entries}
    told = [entry, *([known[entry.corrects]] if entry.corrects in known else [])]
    groups = {each.group for each in told if each.what is Happening.RELEASED}
    for event in farm.fish_events if groups else ():
        if event.kind is not FishEventKind.TREATED or event.group not in groups:
            continue
        days = [
            each.on
            for each in standing(farm.log_entries)
            if each.what is Happening.RELEASED and each.group == event.group and each.on >= event.on
        ]
        after = dataclasses.replace(event, cleared_on=min(days, default=None))
        if after != event:
            yield Change(before=event, after=after)


def _seeds_used(farm: Farm, entry: LogEntry) -> Iterator[Change]:
    """Yield what a lot has left after sowing from it or testing it; a correction gives back first."""
    known = {each.id: each for each in farm.log_entries}
    used: dict[Id, int] = {}
    for each, sign in ((entry, 1), (known.get(entry.corrects), -1)):
        taken, seeds = (NO_ID, 0) if each is None else _taken(farm, each)
        used[taken] = used.get(taken, 0) + sign * seeds
    for lot in farm.seed_lots:
        if used.get(lot.id) and lot.seeds_left is not None:
            yield Change(before=lot, after=dataclasses.replace(lot, seeds_left=_left(lot, used[lot.id])))


def _taken(farm: Farm, entry: LogEntry) -> tuple[Id, int]:
    """Return the lot that an entry takes seeds from, and how many."""
    if entry.what is Happening.SEED_TESTED:
        return entry.seed_lot, entry.out_of or 0
    if entry.what is Happening.SOWN and entry.batch != NO_ID:
        lots = [batch.seed_lot for batch in farm.batches if batch.id == entry.batch]
        return (lots[0] if lots else NO_ID), int(entry.amount or 0)
    return NO_ID, 0


def _left(lot: SeedLot, used: int) -> int:
    """Return the seeds left, never fewer than none: counts of packets are rough."""
    return max((lot.seeds_left or 0) - used, 0)


def _solids(farm: Farm, entry: LogEntry, own: Id) -> Thing | None:
    """Return a batch of the solids since the siphoning before, or since the plan began."""
    earlier = [
        one.siphoned_on
        for one in farm.solids_batches
        if one.loop == entry.loop and one.siphoned_on < entry.on and one.id != own
    ]
    since = max(earlier, default=farm.settings.plan_from)
    days = min(max((entry.on - since).days, 1), _LONGEST_DAYS)
    return SolidsBatch(id=own, code=entry.code, loop=entry.loop, siphoned_on=entry.on, days=days)


def _returned(farm: Farm, entry: LogEntry) -> Iterator[Change]:
    """Yield the return of the oldest liquor of a loop that has not gone back yet."""
    if entry.what is not Happening.RETURNED or entry.corrects != NO_ID:
        return
    waiting = [
        one
        for one in farm.solids_batches
        if one.loop == entry.loop and one.returned_on is None and one.siphoned_on <= entry.on
    ]
    if waiting:
        oldest = min(waiting, key=_siphoned)
        yield Change(before=oldest, after=dataclasses.replace(oldest, returned_on=entry.on))


def _siphoned(one: SolidsBatch) -> int:
    return one.siphoned_on.toordinal()


_FISH: Final = {
    Happening.DEATHS: FishEventKind.DEATHS,
    Happening.WEIGHED: FishEventKind.SAMPLE,
    Happening.FISH_TAKEN: FishEventKind.HARVEST,
}
_MAKERS: Final[dict[Happening, Callable[[Farm, LogEntry, Id], Thing | None]]] = {
    **dict.fromkeys(_FISH, _fish),
    Happening.TREATED: _treated,
    Happening.MEASURED: _reading,
    Happening.DOSED: _dose,
    Happening.TOPPED_UP: _top_up,
    Happening.SIPHONED: _solids,
}
