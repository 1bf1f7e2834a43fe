"""Coarse classes of climate come to twelve months that behave as a year does."""

import pytest

from planner.catalogue.loading import shipped_catalogue
from planner.planning.climates import ClimateClass, monthly_air

CATALOGUE = shipped_catalogue()
KNOWN = [kind for kind in ClimateClass if kind is not ClimateClass.UNKNOWN]


def air(kind, latitude=40.0, altitude=0.0):
    return monthly_air(kind, latitude_deg=latitude, altitude_m=altitude, catalogue=CATALOGUE)


def test_that_an_unknown_climate_has_no_months():
    assert air(ClimateClass.UNKNOWN) == ()


@pytest.mark.parametrize("kind", KNOWN)
def test_that_a_year_has_the_mean_and_the_swing_of_its_class(kind):
    months = air(kind)
    mean = CATALOGUE.figure(f"coefficient/climates/{kind.value}_mean_c").value
    swing = CATALOGUE.figure(f"coefficient/climates/{kind.value}_swing_c").value
    assert len(months) == 12
    assert sum(months) / 12 == pytest.approx(mean, abs=0.05)
    assert (max(months) - min(months)) / 2 == pytest.approx(swing, abs=0.1)


@pytest.mark.parametrize("kind", KNOWN)
def test_that_seasons_are_turned_by_half_a_year_south_of_the_equator(kind):
    north, south = air(kind), air(kind, latitude=-40.0)
    assert south == north[6:] + north[:6]
    assert north.index(min(north)) == 0
    assert south.index(min(south)) == 6


def test_that_it_is_colder_with_height_but_not_in_a_heated_house():
    lapse = CATALOGUE.figure("coefficient/climates/lapse_c_per_km").value
    low, high = air(ClimateClass.TROPICAL), air(ClimateClass.TROPICAL, altitude=1000.0)
    assert low[0] - high[0] == pytest.approx(lapse, abs=0.11)
    assert air(ClimateClass.HEATED, altitude=1000.0) == air(ClimateClass.HEATED)
