"""Months are called hot or cool, bright or dull against their own year, and only where it swings enough."""

import dataclasses

import pytest

from planner.catalogue.loading import shipped_catalogue
from planner.farm.ids import id_from
from planner.farm.site import Site
from planner.forecast.months import Light, Month, Rain, Warmth, months_of

CATALOGUE = shipped_catalogue()
WARM_SUMMER = (8.0, 9.0, 12.0, 15.0, 19.0, 23.0, 26.0, 26.0, 22.0, 17.0, 12.0, 9.0)
WET_SUMMER = (20.0, 21.0, 22.0, 20.0, 16.0, 12.0, 10.0, 10.0, 11.0, 14.0, 17.0, 19.0)


def site(**fields):
    return Site(id=id_from("site"), name="Here", **fields)


def test_that_the_warmest_months_are_hot_and_the_coldest_cool():
    found = months_of(site(air_c=WARM_SUMMER), CATALOGUE)
    assert [month.warmth for month in found] == [
        *(Warmth.COOL, Warmth.COOL, Warmth.COOL, None, None),
        *(Warmth.HOT, Warmth.HOT, Warmth.HOT, Warmth.HOT, None, Warmth.COOL, Warmth.COOL),
    ]
    assert all(month.light is None for month in found)


def test_that_a_wet_summer_is_hot_and_dull():
    found = months_of(site(air_c=WARM_SUMMER, radiation_mj_per_m2_d=WET_SUMMER), CATALOGUE)
    assert found[6] == Month(warmth=Warmth.HOT, light=Light.DULL)
    assert found[2] == Month(warmth=Warmth.COOL, light=Light.BRIGHT)


@pytest.mark.parametrize("air_c", [(), (25.0,) * 12, (26.0, *(28.9,) * 11)])
def test_that_a_year_that_hardly_swings_has_nothing_to_call(air_c):
    assert months_of(site(air_c=air_c), CATALOGUE) == ()


def test_that_the_same_year_on_warmer_ground_is_called_the_same():
    warmer = tuple(value + 10 for value in WARM_SUMMER)
    here = site(air_c=WARM_SUMMER)
    assert months_of(here, CATALOGUE) == months_of(dataclasses.replace(here, air_c=warmer), CATALOGUE)


MONSOON = (15.0, 10.0, 20.0, 40.0, 140.0, 250.0, 400.0, 430.0, 350.0, 220.0, 120.0, 60.0)


def test_that_months_are_wet_or_dry_only_where_rain_was_entered_and_swings():
    found = months_of(site(rain_mm=MONSOON), CATALOGUE)
    assert [month.rain for month in found] == [
        *(Rain.DRY, Rain.DRY, Rain.DRY, Rain.DRY, None, None),
        *(Rain.WET, Rain.WET, Rain.WET, None, None, Rain.DRY),
    ]
    assert all(month.warmth is None and month.light is None for month in found)
    assert months_of(site(rain_mm=(70.0, *(100.0,) * 11)), CATALOGUE) == ()
    assert all(month.rain is None for month in months_of(site(air_c=WARM_SUMMER), CATALOGUE))
