"""What is learned lies between the book and what was seen, and one slip of the pen moves nothing."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from planner.planning.learning import LearningRule, shrunk

RULE = LearningRule(book_weight=3.0, least_spread_share=0.1, spreads_until_ignored=4.685)


def test_that_nothing_seen_leaves_the_book():
    found = shrunk(30.0, [], RULE)
    assert (found.value, found.n) == (30.0, 0)


def test_that_twenty_alike_are_nearly_believed():
    assert shrunk(30.0, [36.0] * 20, RULE).value == pytest.approx((3 * 30 + 20 * 36) / 23)


def test_that_three_batches_weigh_as_much_as_the_book():
    assert shrunk(30.0, [32.0] * 3, RULE).value == pytest.approx(31.0, abs=0.1)


@pytest.mark.parametrize("others", [[], [31.0], [29.0, 33.0], [35.0] * 6])
def test_that_one_typed_ninety_moves_less_than_a_day(others):
    without, wild = shrunk(30.0, others, RULE), shrunk(30.0, [*others, 90.0], RULE)
    assert abs(wild.value - without.value) < 1
    assert wild.n == len(others) + 1


def test_that_an_unfinished_batch_only_says_longer():
    plain = shrunk(30.0, [32.0] * 4, RULE).value
    assert shrunk(30.0, [32.0] * 4, RULE, at_least=[10.0]).value == pytest.approx(plain)
    longer = shrunk(30.0, [32.0] * 4, RULE, at_least=[37.0])
    assert longer.value > plain
    assert longer.unfinished == 1


@given(st.floats(1, 200), st.lists(st.floats(1, 200), max_size=12))
def test_that_a_learned_value_lies_between_book_and_seen(book, seen):
    found = shrunk(book, seen, RULE)
    slack = 1e-9 * book
    assert min([book, *seen]) - slack <= found.value <= max([book, *seen]) + slack
    assert found.spread > 0
