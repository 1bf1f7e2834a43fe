"""Sun and day length against a public library that follows FAO Irrigation and Drainage Paper 56."""

from __future__ import annotations

import math

import fao56.chap3 as chapter
import pytest
from hypothesis import given
from hypothesis import strategies as st

from planner.science import daylight
from tests.science.figures import figure


def sun() -> dict[str, float]:
    return {
        "amplitude_rad": figure("sun_declination_amplitude_rad"),
        "phase_rad": figure("sun_declination_phase_rad"),
    }


@given(day=st.integers(1, 365), latitude_deg=st.floats(-65, 65))
def test_that_radiation_above_the_air_is_that_of_the_chapter(day: int, latitude_deg: float) -> None:
    """Allen, Pereira, Raes, Smith 1998, equations 21, 23, 24, 25: the same formulas, so to rounding."""
    latitude, declination = math.radians(latitude_deg), chapter.eq24(day)
    theirs = chapter.eq21(chapter.eq23(day), chapter.eq25(latitude, declination), latitude, declination)
    ours = daylight.extraterrestrial_radiation(
        float(day),
        latitude_deg=latitude_deg,
        distance_swing=figure("sun_distance_swing"),
        solar_constant_mj_per_m2_min=figure("solar_constant_mj_per_m2_min"),
        **sun(),
    )
    assert ours == pytest.approx(theirs, rel=1e-9, abs=1e-9)


@given(day=st.integers(1, 365), latitude_deg=st.floats(-65, 65))
def test_that_the_day_is_as_long_as_in_the_chapter(day: int, latitude_deg: float) -> None:
    """Allen, Pereira, Raes, Smith 1998, equation 34: the same formula, so to rounding."""
    theirs = chapter.eq34(chapter.eq25(math.radians(latitude_deg), chapter.eq24(day)))
    ours = daylight.daylength_h(float(day), latitude_deg=latitude_deg, **sun())
    assert ours == pytest.approx(theirs, rel=1e-9)
