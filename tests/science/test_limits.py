"""Refusals say the quantity, its value, the limit and the unit."""

import math

import numpy as np
import pytest

from planner.science import limits, water
from tests.science.figures import ammonia


@pytest.mark.parametrize("bad", [-1.0, math.nan])
def test_that_a_value_below_its_limit_or_not_a_number_is_refused(bad: float) -> None:
    with pytest.raises(ValueError, match=r"feed is .* g/d; it must be at least 0 g/d"):
        limits.require_at_least("feed", bad, low=0.0, unit="g/d")


def test_that_one_bad_element_of_an_array_is_enough_to_refuse_it() -> None:
    with pytest.raises(ValueError, match=r"pH is 15; it must be at most 14"):
        limits.require_between("pH", np.array([7.0, 15.0]), low=0.0, high=14.0)


def test_that_both_limits_themselves_are_allowed() -> None:
    limits.require_between("share", np.array([0.0, 1.0]), low=0.0, high=1.0)
    with pytest.raises(ValueError, match=r"above 0"):
        limits.require_above("share", 0.0, low=0.0)


def test_that_nothing_to_check_is_no_fault() -> None:
    empty = np.array([])
    limits.require_between("share", empty, low=0.0, high=1.0)
    limits.require_above("share", empty, low=0.0)


def test_that_a_node_list_that_does_not_rise_is_refused() -> None:
    with pytest.raises(ValueError, match=r"weights must rise.*2 g is followed by 1 g"):
        limits.require_rising("weights", np.array([1.0, 2.0, 1.0]), unit="g")


def test_that_a_number_comes_back_as_a_number_and_an_array_as_an_array() -> None:
    single = water.unionised_ammonia_share(7.0, temperature_c=20.0, **ammonia())
    several = water.unionised_ammonia_share(np.array([7.0, 8.0]), temperature_c=20.0, **ammonia())
    assert type(single) is float
    assert several.shape == (2,)
    assert several[0] == single


def test_that_water_outside_the_formula_is_refused_by_name() -> None:
    with pytest.raises(ValueError, match=r"water temperature is 60 degC; it must be at most 50 degC"):
        water.unionised_ammonia_share(7.0, temperature_c=60.0, **ammonia())
