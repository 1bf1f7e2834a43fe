"""The days that places are held, compared from one moment of a farm to the next."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator
from dataclasses import dataclass, replace

from planner.farm.farm import Farm
from planner.farm.fields import Id
from planner.farm.holds import Hold

HoldsOf = Callable[[Farm], tuple[Hold, ...]]
Pair = tuple[Hold, Hold]
_Unit = tuple[Id, int]


@dataclass(frozen=True, slots=True, kw_only=True)
class HoldBook:
    """All holds of a farm by placement, and the pairs of them that clash; `read_from` is what they came in.

    Clashes can only stand in a farm that was not made by acts here: when figures were mended after
    it was saved, or when it was written by hand.
    """

    by_placement: dict[Id, Hold]
    clashes: tuple[Pair, ...]
    read_from: tuple[Hold, ...] = ()

    def guarded(self) -> dict[Id, Hold]:
        """Return the holds that can all stand together: of two that clash, the first one only."""
        giving_way = {second.placement for _, second in self.clashes}
        if not giving_way:
            return self.by_placement
        return {key: hold for key, hold in self.by_placement.items() if key not in giving_way}


def book_of(holds: tuple[Hold, ...]) -> HoldBook:
    """Return the book of a farm, every unit looked through for clashes."""
    by_placement = {hold.placement: hold for hold in holds}
    clashes = tuple(_clashes(by_placement.values()))
    return HoldBook(by_placement=by_placement, clashes=clashes, read_from=holds)


def next_book(book: HoldBook, holds: tuple[Hold, ...]) -> HoldBook:
    """Return the book after a change; only units on which something changed are looked through."""
    if holds is book.read_from:
        return book  # as after an act that no date hangs on
    by_placement = {hold.placement: hold for hold in holds}
    changed, gone = difference(book.by_placement, by_placement)
    if not changed and not gone:
        return replace(book, read_from=holds)
    left = [key for key in (*gone, *(hold.placement for hold in changed)) if key in book.by_placement]
    units = {_unit(hold) for hold in changed} | {_unit(book.by_placement[key]) for key in left}
    standing = [pair for pair in book.clashes if _unit(pair[0]) not in units]
    looked_at = [hold for hold in by_placement.values() if _unit(hold) in units]
    clashes = (*standing, *_clashes(looked_at))
    return HoldBook(by_placement=by_placement, clashes=clashes, read_from=holds)


def new_clashes(before: HoldBook, after: HoldBook) -> tuple[Pair, ...]:
    """Return the pairs that clash after a change and did not before."""
    known = {_names(pair) for pair in before.clashes}
    return tuple(pair for pair in after.clashes if _names(pair) not in known)


def difference(before: dict[Id, Hold], after: dict[Id, Hold]) -> tuple[list[Hold], list[Id]]:
    """Return the holds that are new or other than before, and the placements that hold nothing any more."""
    if before is after:
        return [], []
    known = before.get
    # An unchanged hold is mostly the very same object, which is quick to see.
    changed = [hold for key, hold in after.items() if known(key) is not hold and known(key) != hold]
    return changed, [key for key in before if key not in after]


def _unit(hold: Hold) -> _Unit:
    return hold.bed, hold.unit


def _names(pair: Pair) -> frozenset[Id]:
    return frozenset((pair[0].placement, pair[1].placement))


def _clashes(holds: Iterable[Hold]) -> Iterator[Pair]:
    by_unit: dict[_Unit, list[Hold]] = {}
    for hold in holds:
        by_unit.setdefault(_unit(hold), []).append(hold)
    for many in by_unit.values():
        yield from _clashes_on_unit(sorted(many, key=lambda hold: (hold.from_on, hold.placement)))


def _clashes_on_unit(many: list[Hold]) -> Iterator[Pair]:
    """Yield pairs that share a place on a day; `many` begin one after the other."""
    standing: list[Hold] = []
    for hold in many:
        standing = [other for other in standing if other.until_on > hold.from_on]
        for other in standing:
            if other.first <= hold.last and hold.first <= other.last:
                yield other, hold
        standing.append(hold)
