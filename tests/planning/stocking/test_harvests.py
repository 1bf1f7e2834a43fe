"""One harvest, all at once or in parts, on the forecast of each."""

from __future__ import annotations

import pytest

from planner.farm.changes import applied
from planner.farm.faults import FarmFaultError
from planner.farm.ids import id_from
from planner.forecast.checks import all_faults
from planner.forecast.engine import Forecaster
from planner.planning.stocking.harvests import harvest_options, whole_harvest_of
from tests.planning.stocking.farms import school_farm

SHARES = (1.0, 0.5, 0.3)


@pytest.fixture(scope="module")
def school(means):
    return school_farm(means)


@pytest.fixture(scope="module")
def found(means, school):
    event = whole_harvest_of(school, "Autumn fish")
    return harvest_options(school, means.forecaster, event.id, shares=SHARES)


def test_that_smaller_parts_leave_a_shallower_hole_and_a_fuller_tank(found):
    depths = [option.hole.depth_share for option in found]
    assert depths[0] > max(depths[1:])
    assert found[0].peak_kg_per_m3 < found[1].peak_kg_per_m3
    assert [len(option.takes) for option in found] == [1, 2, 4]
    assert all(option.takes[-1][1] is None for option in found)


def test_that_each_is_what_a_fresh_forecast_of_the_changed_farm_says(means, school, found):
    for option in found:
        changed = applied(school, option.change_set)
        assert all_faults(changed, means.forecaster) == ()
        assert applied(changed, option.change_set.turned()) == school
        forecast = Forecaster(means.catalogue).forecast(changed)
        feed, first = forecast.loops[0].feed_g, forecast.ruler.day_of(option.takes[0][0])
        weeks = [feed[day : day + 7].mean() for day in range(first, first + 56)]
        assert option.lowest_feed_g_per_day == pytest.approx(min(weeks))
        assert forecast.ruler.day_of(option.lowest_on) == first + weeks.index(min(weeks))


def test_that_taking_all_at_once_is_the_plan_as_it_is(found):
    assert found[0].change_set.changes == ()


def test_that_what_is_no_whole_harvest_is_refused(means, school):
    with pytest.raises(FarmFaultError, match="no group"):
        whole_harvest_of(school, "Ghosts")
    with pytest.raises(FarmFaultError, match="no harvest of all"):
        whole_harvest_of(school, "Spring fish")
    with pytest.raises(FarmFaultError, match="no planned harvest"):
        harvest_options(school, means.forecaster, id_from("none"), shares=SHARES)
    event = whole_harvest_of(school, "Autumn fish")
    with pytest.raises(FarmFaultError, match="share 2"):
        harvest_options(school, means.forecaster, event.id, shares=(2.0,))
