"""Bars that share a unit on the same days lie above each other, never over each other."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from planner.desk.lanes.packing import LEAST_LINES, MOST_LINES, Held, packed, slot_in
from planner.farm.crops import Phase
from tests.desk.lanes.demo import START, make_bar


def held(code: str, day: int, share: float, crop: int = 0, first: int = 1) -> Held:
    bar = make_bar(code=code, crop=crop, sow=START + day, phase=Phase.BED, bed="b", unit=1, plants=4)
    return Held(bar=bar, first=first, share=share)


MANY = st.lists(
    st.tuples(st.integers(0, 300), st.floats(0.01, 1.0), st.integers(0, 7)), min_size=1, max_size=40
).map(lambda rows: [held(str(at), *row) for at, row in enumerate(rows)])


@given(many=MANY)
def test_that_bars_sharing_days_share_no_height(many):
    _, bars = packed(many)
    for at, one in enumerate(bars):
        for other in bars[at + 1 :]:
            if one.start < other.end and other.start < one.end:
                apart = one.top + one.lines <= other.top + 1e-6 or other.top + other.lines <= one.top + 1e-6
                assert apart


@given(many=MANY)
def test_that_every_bar_lies_within_its_row(many):
    lines, bars = packed(many)
    assert len(bars) == len(many)
    assert 1.0 <= lines <= MOST_LINES
    assert all(bar.top >= 0 and bar.top + bar.lines <= lines + 1e-6 for bar in bars)
    assert [bar.start for bar in bars] == sorted(bar.start for bar in bars)


def test_that_an_empty_unit_has_a_row_of_one_line():
    assert packed([]) == (1.0, ())


def test_that_a_batch_on_all_holes_fills_its_row_and_a_part_does_not():
    lines, (whole,) = packed([held("a", 0, 1.0)])
    _, (part,) = packed([held("b", 0, 0.8)])
    assert whole.lines == lines
    assert part.lines == pytest.approx(0.8)


def test_that_the_batch_with_more_holes_is_drawn_higher_and_none_too_low_to_read():
    lines, bars = packed([held("a", 0, 0.75), held("b", 0, 0.25, first=19)])
    by_code = {bar.code: bar for bar in bars}
    assert by_code["a"].lines > by_code["b"].lines >= LEAST_LINES
    assert by_code["a"].top < by_code["b"].top
    assert lines == pytest.approx(by_code["a"].lines + by_code["b"].lines)


def test_that_a_dragged_bar_is_shown_in_the_free_part_of_a_row():
    lines, bars = packed([held("a", 0, 0.75), held("b", 0, 0.25)])
    upper = [bar for bar in bars if bar.top == 0]
    top, height = slot_in(upper, lines=lines, wanted=1.0, start=START + 40, end=START + 50)
    assert top == pytest.approx(upper[0].lines)
    assert height > 0


def test_that_a_dragged_bar_takes_the_whole_row_where_nothing_is_free():
    lines, bars = packed([held("a", 0, 1.0)])
    days = {"start": bars[0].start, "end": bars[0].end}
    assert slot_in(bars, lines=lines, wanted=1.0, **days) == (0.0, lines)
