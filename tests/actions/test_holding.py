"""Clashes of holds are found step by step just as they are found from the beginning."""

import dataclasses
import itertools
from datetime import timedelta

from hypothesis import given
from hypothesis import strategies as st

from planner.actions.holding import book_of, difference, new_clashes, next_book
from planner.farm.fields import Id
from planner.farm.holds import Hold
from tests.store.sample import START


@st.composite
def holds(draw):
    """Draw up to eight holds on two units of one bed."""
    found = {}
    for number in draw(st.sets(st.integers(0, 7))):
        first, day = draw(st.integers(1, 8)), draw(st.integers(0, 20))
        found[number] = Hold(
            placement=Id(f"p{number}"),
            batch=Id("b"),
            bed=Id("bed"),
            unit=draw(st.integers(1, 2)),
            first=first,
            last=first + draw(st.integers(0, 3)),
            from_on=START + timedelta(days=day),
            until_on=START + timedelta(days=day + draw(st.integers(1, 10))),
        )
    return tuple(found.values())


def clashing(many):
    """Return the pairs that share a place on a day, by looking at every place and day."""

    def spots(hold):
        days = range((hold.until_on - hold.from_on).days)
        places = range(hold.first, hold.last + 1)
        return {(hold.unit, place, hold.from_on + timedelta(days=day)) for place in places for day in days}

    return {
        frozenset((one.placement, other.placement))
        for one, other in itertools.combinations(many, 2)
        if spots(one) & spots(other)
    }


def pairs(found):
    return {frozenset((one.placement, other.placement)) for one, other in found}


@given(holds())
def test_that_every_clash_is_found_and_no_other(many):
    assert pairs(book_of(many).clashes) == clashing(many)


@given(holds(), holds())
def test_that_a_step_finds_what_a_new_look_finds(before, after):
    book = next_book(book_of(before), after)
    assert pairs(book.clashes) == clashing(after)
    assert pairs(new_clashes(book_of(before), book)) == clashing(after) - clashing(before)


def test_that_a_clash_ends_when_one_of_the_two_goes_to_another_unit():
    one = Hold(
        placement=Id("p1"),
        batch=Id("b"),
        bed=Id("bed"),
        unit=1,
        first=1,
        last=4,
        from_on=START,
        until_on=START + timedelta(days=5),
    )
    other = dataclasses.replace(one, placement=Id("p2"))
    book = book_of((one, other))
    assert len(book.clashes) == 1
    assert next_book(book, (one, dataclasses.replace(other, unit=2))).clashes == ()
    assert next_book(book, (one,)).clashes == ()


@given(holds())
def test_that_guarded_holds_never_clash(many):
    kept = tuple(book_of(many).guarded().values())
    assert clashing(kept) == set()


@given(holds(), holds())
def test_that_a_difference_leads_from_one_to_the_other(before, after):
    known = {hold.placement: hold for hold in before}
    changed, gone = difference(known, {hold.placement: hold for hold in after})
    known.update({hold.placement: hold for hold in changed})
    for placement in gone:
        del known[placement]
    assert set(known.values()) == set(after)


@given(holds())
def test_that_the_book_of_the_very_same_holds_is_the_same_again(many):
    book = book_of(many)
    assert next_book(book, many) is book
    again = next_book(book, tuple(dataclasses.replace(one) for one in many))
    assert (again.by_placement, again.clashes) == (book.by_placement, book.clashes)
