"""Room and size: what neighbours leave of the light."""

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from planner.science.spacing import gain_by_room, size_by_room

DENSITIES = st.floats(0.5, 400)
MASSES = st.floats(1e-6, 0.5)
CLOSURES = st.floats(1, 60)


@given(one=DENSITIES, other=DENSITIES, own=DENSITIES, mass=MASSES, closure=CLOSURES)
def test_that_closer_plants_are_smaller_but_the_ground_bears_no_less(one, other, own, mass, closure):
    """Light is shared: a plant never gains by neighbours, and ground never loses by more plants."""
    near, far = max(one, other), min(one, other)
    of = {"own_density": own, "own_mass_kg": mass, "closure_m2_per_kg": closure}
    for law in (size_by_room, gain_by_room):
        close, wide = law(near, **of), law(far, **of)
        assert close <= wide * (1 + 1e-9)
        assert near * close >= far * wide * (1 - 1e-9)


@given(own=DENSITIES, mass=MASSES, closure=CLOSURES)
def test_that_a_plant_at_its_own_distance_has_its_own_size(own, mass, closure):
    of = {"own_density": own, "own_mass_kg": mass, "closure_m2_per_kg": closure}
    assert size_by_room(own, **of) == pytest.approx(1.0)
    assert gain_by_room(own, **of) == pytest.approx(1.0)


def test_that_gain_follows_the_reciprocal_law_of_yield_and_density():
    """1/w = a + b d: against density the reciprocal of the gain of a plant is a straight line."""
    densities = np.array([2.0, 5.0, 9.0, 30.0])
    gain = gain_by_room(densities, own_density=9.0, own_mass_kg=0.02, closure_m2_per_kg=10.0)
    steps = np.diff(1.0 / gain) / np.diff(densities)
    assert steps == pytest.approx(np.full(3, steps[0]))


def test_that_open_canopies_do_not_know_of_neighbours():
    of = {"own_density": 25.0, "own_mass_kg": 1e-7, "closure_m2_per_kg": 18.0}
    assert size_by_room(50.0, **of) == pytest.approx(1.0, abs=1e-4)
    assert gain_by_room(50.0, **of) == pytest.approx(1.0, abs=1e-4)


@pytest.mark.parametrize("field", ["density", "own_density"])
def test_that_no_plants_at_all_are_refused(field):
    given_of = {"own_density": 25.0, "own_mass_kg": 0.01, "closure_m2_per_kg": 18.0}
    density = 0.0 if field == "density" else 25.0
    if field == "own_density":
        given_of["own_density"] = 0.0
    with pytest.raises(ValueError, match="density"):
        size_by_room(density, **given_of)
