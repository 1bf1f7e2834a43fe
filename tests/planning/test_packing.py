"""One bed filled day after day, against the plainest books there are."""

from __future__ import annotations

import itertools
from datetime import date

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from planner.farm.fields import Id
from planner.farm.holds import Hold
from planner.forecast.occupancy import clashes
from planner.planning.many import peak_places
from planner.planning.packing import FOREVER, BedFilling, FixedHold, Spread

PLACES = 6
LOTS = st.lists(
    st.tuples(st.integers(0, 30), st.integers(1, 15), st.integers(1, 14)), min_size=1, max_size=25
)
FIXED = st.lists(
    st.tuples(st.integers(-5, 40), st.integers(1, 20), st.integers(1, 3), st.integers(1, PLACES)), max_size=5
)


def filled(lots, *, units, spread, fixed=()):
    """Pack lots (start, days, count) by their start; return the filling and (lot, pieces) in that order."""
    bed = BedFilling(units=units, places_per_unit=PLACES, fixed=fixed, spread=spread)
    found = []
    for lot in sorted(lots):
        start, days, count = lot
        bed.advance(start)
        found.append((lot, bed.free(start + days), bed.take(count, start + days)))
    return bed, found


def book_of(found, fixed=()):
    """Return every (unit, place, day) held, each once for each who holds it."""
    for hold in fixed:
        for place, day in itertools.product(range(hold.first, hold.last + 1), range(hold.start, hold.end)):
            yield hold.unit, place, day
    for (start, days, _), _, pieces in found:
        for piece in pieces:
            places = range(piece.first, piece.first + piece.size)
            for place, day in itertools.product(places, range(start, start + days)):
                yield piece.unit, place, day


def peak_of(lots):
    start, days, count = np.asarray(lots, dtype=np.int64).T
    return peak_places(start, start + days, count)


def fixed_holds(drawn):
    """Return fixed holds that share no place on a day."""
    kept: list[FixedHold] = []
    for start, days, unit, first in drawn:
        hold = FixedHold(start, start + days, unit, first, min(first + 2, PLACES))
        apart = all(
            other.unit != unit
            or other.last < hold.first
            or hold.last < other.first
            or other.end <= hold.start
            or hold.end <= other.start
            for other in kept
        )
        if apart:
            kept.append(hold)
    return kept


@given(lots=LOTS)
def test_that_the_peak_is_what_a_count_by_day_gives(lots):
    by_day = [sum(count for start, days, count in lots if start <= day < start + days) for day in range(50)]
    assert peak_of(lots) == max(by_day)


@given(lots=LOTS)
def test_that_with_splitting_no_more_units_are_used_than_the_peak_needs(lots):
    enough = -(-peak_of(lots) // PLACES)
    bed, found = filled(lots, units=enough, spread=Spread.FEWEST_UNITS)
    assert all(pieces for _, _, pieces in found)
    assert len(bed.used) == enough


@given(lots=LOTS)
def test_that_spare_units_stay_empty_while_those_in_use_are_enough(lots):
    enough = -(-peak_of(lots) // PLACES)
    bed, _ = filled(lots, units=enough + 7, spread=Spread.FEWEST_UNITS)
    assert len(bed.used) == enough


def fits_by_search(lots, places):
    """Tell by trying every choice of places whether lots fit into a row of places; for tiny cases."""
    if not lots:
        return True
    (start, days, count), *rest = lots

    def tried(held, left):
        if not left:
            return True
        (begin, stay, many), *others = left
        free = [p for p in range(places) if all((p, d) not in held for d in range(begin, begin + stay))]
        return any(
            tried(held | {(p, d) for p in chosen for d in range(begin, begin + stay)}, others)
            for chosen in itertools.combinations(free, many)
        )

    return tried(frozenset(), [(start, days, count), *rest])


@given(
    lots=st.lists(st.tuples(st.integers(0, 4), st.integers(1, 3), st.integers(1, 2)), min_size=1, max_size=4),
    units=st.integers(1, 2),
)
def test_that_lots_fit_just_when_trying_everything_finds_a_way(lots, units):
    bed = BedFilling(units=units, places_per_unit=2, fixed=(), spread=Spread.FEWEST_UNITS)
    fit = True
    for start, days, count in sorted(lots):
        bed.advance(start)
        fit = bool(bed.take(count, start + days)) and fit
    assert fit == fits_by_search(lots, units * 2)


@given(lots=LOTS, drawn=FIXED, spread=st.sampled_from(Spread))
def test_that_no_place_is_ever_held_twice_and_each_lot_gets_all_or_nothing(lots, drawn, spread):
    fixed = fixed_holds(drawn)
    _, found = filled(lots, units=3, spread=spread, fixed=fixed)
    booked = list(book_of(found, fixed))
    assert len(booked) == len(set(booked))
    for (_, _, count), free, pieces in found:
        assert sum(piece.size for piece in pieces) in (0, count)
        assert all(1 <= p.unit <= 3 and p.first >= 1 and p.first + p.size - 1 <= PLACES for p in pieces)
        if spread is not Spread.NEVER_SPLIT:
            assert bool(pieces) == (free >= count)


@given(lots=LOTS, drawn=FIXED)
def test_that_what_counts_as_free_is_what_nobody_holds_for_as_long(lots, drawn):
    fixed = fixed_holds(drawn)
    bed = BedFilling(units=3, places_per_unit=PLACES, fixed=fixed, spread=Spread.TOGETHER)
    found = []
    for lot in sorted(lots):
        start, days, count = lot
        booked = set(book_of(found, fixed))
        free = sum(
            not any((unit, place, day) in booked for day in range(start, start + days))
            for unit, place in itertools.product(range(1, 4), range(1, PLACES + 1))
        )
        bed.advance(start)
        assert bed.free(start + days) == free
        found.append((lot, free, bed.take(count, start + days)))


@given(lots=LOTS, drawn=FIXED)
def test_that_a_lot_that_may_not_be_split_lies_on_no_more_units_than_it_needs(lots, drawn):
    _, found = filled(lots, units=3, spread=Spread.NEVER_SPLIT, fixed=fixed_holds(drawn))
    for (_, _, count), _, pieces in found:
        assert len({piece.unit for piece in pieces}) <= -(-count // PLACES)


def test_that_a_lot_that_may_not_be_split_waits_for_one_unit_with_room():
    lots = [(0, 9, 4), (0, 9, 4), (1, 9, 3)]
    for spread, fits in ((Spread.NEVER_SPLIT, False), (Spread.TOGETHER, True), (Spread.FEWEST_UNITS, True)):
        _, found = filled(lots, units=2, spread=spread)
        assert bool(found[-1][2]) is fits


def test_that_keeping_together_opens_a_unit_rather_than_fill_gaps():
    lots = [(0, 9, 4), (0, 9, 4), (1, 9, 4)]
    together, found = filled(lots, units=4, spread=Spread.TOGETHER)
    assert len({piece.unit for piece in found[-1][2]}) == 1
    assert len(together.used) == 3
    fewest, found = filled(lots, units=4, spread=Spread.FEWEST_UNITS)
    assert len({piece.unit for piece in found[-1][2]}) == 2
    assert len(fewest.used) == 2


def test_that_a_gap_before_a_fixed_hold_is_used_first():
    fixed = [FixedHold(10, 20, 1, 1, PLACES)]
    _, found = filled([(0, 5, 3)], units=2, spread=Spread.TOGETHER, fixed=fixed)
    assert [piece.unit for piece in found[0][2]] == [1]
    _, found = filled([(0, 11, 3)], units=2, spread=Spread.TOGETHER, fixed=fixed)
    assert [piece.unit for piece in found[0][2]] == [2]


@pytest.mark.parametrize("seed", range(3))
def test_that_thousands_of_lots_reach_the_lower_bound_by_an_independent_check(seed):
    draw = np.random.default_rng(seed)
    lots = np.stack(
        [draw.integers(0, 700, 3000), draw.integers(20, 60, 3000), draw.integers(5, 60, 3000)], axis=1
    )
    enough = -(-peak_of(lots) // PLACES)
    bed, found = filled(map(tuple, lots.tolist()), units=enough, spread=Spread.FEWEST_UNITS)
    assert len(bed.used) == enough
    held = [
        Hold(
            placement=Id("p"),
            batch=Id("b"),
            bed=Id("bed"),
            unit=piece.unit,
            first=piece.first,
            last=piece.first + piece.size - 1,
            from_on=date.fromordinal(start + 1),
            until_on=date.fromordinal(start + days + 1),
        )
        for (start, days, _), _, pieces in found
        for piece in pieces
    ]
    assert sum(hold.last - hold.first + 1 for hold in held) == int(lots[:, 2].sum())
    assert list(clashes(held)) == []


def test_that_a_gap_that_holds_a_lot_whole_is_taken_before_one_in_pieces():
    """Unit 1 has its free places in pieces, unit 2 as many side by side: both are just as full."""
    fixed = [FixedHold(0, FOREVER, 1, place, place) for place in (2, 4)]
    broken = PLACES - len(fixed)
    fixed += [FixedHold(0, FOREVER, 2, 1, 2)]
    for spread in (Spread.TOGETHER, Spread.NEVER_SPLIT):
        _, found = filled([(0, 9, broken)], units=2, spread=spread, fixed=fixed)
        assert [(piece.unit, piece.size) for piece in found[0][2]] == [(2, broken)]
