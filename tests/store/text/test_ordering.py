"""The order things were entered in survives a text that puts them under their tables."""

from hypothesis import given
from hypothesis import strategies as st

from planner.store.text.ordering import in_order, orders

ranks = st.integers(0, 12).flatmap(lambda many: st.permutations(range(many)))


@given(ranks)
def test_that_any_order_can_be_said(ranks: list[int]) -> None:
    assert in_order(zip(orders(ranks), ranks, strict=True)) == tuple(range(len(ranks)))


@given(st.integers(0, 20))
def test_that_the_order_of_the_text_needs_no_numbers(many: int) -> None:
    assert orders(range(many)) == [None] * many


@given(ranks)
def test_that_one_thing_moved_needs_at_most_one_number(ranks: list[int]) -> None:
    moved = sorted(ranks)
    if moved:
        moved.insert(ranks[0], moved.pop())
    assert sum(order is not None for order in orders(moved)) <= 1


@given(st.lists(st.tuples(st.none() | st.integers(1, 30), st.integers()), max_size=20))
def test_that_nothing_is_lost_whatever_numbers_are_given(entries: list[tuple[int | None, int]]) -> None:
    assert sorted(in_order(entries)) == sorted(thing for _order, thing in entries)
