"""Text is wrapped, then set smaller, then given more lines; never cut."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from planner.paper.measure import Face, clusters, fit, width_mm, wrapped
from planner.paper.report import Size
from tests.paper.rulers import PlainMetrics

METRICS = PlainMetrics()
SIZE = Size(best_pt=20.0, least_pt=14.0)


def set_in(text, room_mm, *, wrap=2):
    return fit(METRICS, text, face=Face.REGULAR, size=SIZE, room_mm=room_mm, wrap=wrap, step_pt=0.5)


def test_that_a_short_name_keeps_the_best_size_and_one_line():
    fitted = set_in("Basil", 60.0)
    assert (fitted.lines, fitted.pt) == (("Basil",), 20.0)


def test_that_a_longer_name_wraps_before_it_is_set_smaller():
    fitted = set_in("Romaine lettuce", 36.0)
    assert (fitted.lines, fitted.pt) == (("Romaine", "lettuce"), 20.0)


def test_that_a_name_is_set_smaller_before_it_takes_a_third_line():
    fitted = set_in("Late red butterhead", 30.0)
    assert len(fitted.lines) == 2
    assert SIZE.least_pt <= fitted.pt < SIZE.best_pt


def test_that_the_least_size_is_never_gone_below_and_the_rest_takes_more_lines():
    fitted = set_in("name " * 30, 30.0)
    assert fitted.pt == SIZE.least_pt
    assert len(fitted.lines) > 2


def test_that_a_word_too_long_for_its_cell_is_broken_after_its_hyphen():
    assert set_in("LET-27W14-ABCDEFGH", 26.0).lines == ("LET-27W14-", "ABCDEFGH")


def test_that_no_break_spaces_hold_words_together():
    assert wrapped(METRICS, "cells 1\u00a09", face=Face.REGULAR, pt=10.0, room_mm=9.0) == (
        "cells",
        "1\u00a09",
    )


def test_that_words_held_together_are_parted_at_their_space_when_they_must_be():
    assert wrapped(METRICS, "cells\u00a01–60", face=Face.REGULAR, pt=10.0, room_mm=12.0) == ("cells", "1–60")


def test_that_marks_and_joined_pictures_are_never_torn_apart():
    farmer, accented = "\U0001f468\u200d\U0001f33e", "e\u0301"
    assert clusters(farmer + accented + "x") == [farmer, accented, "x"]


def test_that_a_size_whose_least_is_above_its_best_is_refused():
    with pytest.raises(ValueError, match="least_pt: 15"):
        Size(best_pt=12.0, least_pt=15.0)


@given(text=st.text(max_size=200), room_mm=st.floats(10.0, 120.0))
def test_that_no_letter_is_lost_and_no_line_is_wider_than_its_room(text, room_mm):
    fitted = set_in(text, room_mm)
    assert "".join("".join(fitted.lines).split()) == "".join(text.split())
    for line in fitted.lines:
        alone = len(clusters(line)) == 1
        assert alone or width_mm(METRICS, line, face=fitted.face, pt=fitted.pt) <= room_mm
