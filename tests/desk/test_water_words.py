"""Every code of the water side has words, and ranges carry no false decimals."""

import pytest

from planner.desk.water_words import quantity_unit, quantity_words, rough_words, span_words, water_words
from planner.farm.water import Quantity
from planner.forecast.water.acid import Agreement
from planner.forecast.water.bases import BaseKind, Before
from planner.forecast.water.filters import FilterVerdict
from planner.forecast.water.iron import ChelateFit
from planner.forecast.water.limits import LimitWay
from planner.forecast.water.readings import Direction
from planner.forecast.water.spans import Span, exactly
from planner.forecast.water.targets import Level, NotKnown

CODES = (
    Agreement,
    BaseKind,
    Before,
    FilterVerdict,
    ChelateFit,
    LimitWay,
    Direction,
    Level,
    NotKnown,
)


@pytest.mark.parametrize("codes", CODES)
def test_that_every_code_of_the_water_side_has_its_own_words(codes):
    words = [water_words(code) for code in codes]
    assert all(words)
    assert len(set(words)) == len(words)


@pytest.mark.parametrize(
    ("span", "words"),
    [
        (Span(low=16.2636, likely=23.75, high=23.7500), "24 (16 to 24) g"),
        (Span(low=0.0, likely=0.0379, high=0.1575), "0.04 (0.00 to 0.16) g"),
        (Span(low=-80.51, likely=-39.2, high=0.0), "-39 (-81 to 0) g"),
        (Span(low=7.52, likely=9.04, high=11.02), "9 (8 to 11) g"),
        (exactly(2.0), "2.0 g"),
        (exactly(0.0), "0 g"),
    ],
)
def test_that_a_range_has_two_telling_figures_at_its_large_end(span, words):
    assert span_words(span, "g") == words


def test_that_large_estimates_are_rounded_to_tens():
    assert rough_words(1159.6, "g") in {"1200 g", "1,200 g"}
    assert rough_words(0.00312) == "0.0031"


@pytest.mark.parametrize("quantity", list(Quantity))
def test_that_a_quantity_has_a_name_without_its_unit(quantity):
    assert "[" not in quantity_words(quantity)
    assert "]" not in quantity_unit(quantity)
