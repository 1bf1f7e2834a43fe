"""Holds after an act are those of a fresh start, and the very same where nothing changed."""

import dataclasses
from datetime import timedelta

from planner.forecast.occupancy import HoldKeeper, holds
from tests.farms import farm_of, places_of, weekly_batches


def test_that_kept_holds_are_those_of_a_fresh_start_and_the_same_where_nothing_changed(forecaster):
    batches = weekly_batches(6)
    places = tuple(places_of(batch, unit=1 + number % 4) for number, batch in enumerate(batches))
    farm, keeper = farm_of(batches=batches, placements=places), HoldKeeper()
    before = keeper.holds(farm, forecaster.days(farm))
    late = dataclasses.replace(batches[2], sow_on=batches[2].sow_on + timedelta(days=3))
    moved = dataclasses.replace(places[4], unit=4, count=10)
    changed = farm_of(
        batches=(*batches[:2], late, *batches[3:]), placements=(*places[:4], moved, *places[5:])
    )
    after = keeper.holds(changed, forecaster.days(changed))
    assert after == holds(changed, forecaster.days(changed))
    same = [one is other for one, other in zip(before, after, strict=True)]
    assert same == [True, True, False, True, False, True]


def test_that_a_plan_that_begins_another_week_has_holds_of_its_own(forecaster):
    batches = weekly_batches(2)
    farm, keeper = farm_of(batches=batches, placements=tuple(map(places_of, batches))), HoldKeeper()
    keeper.holds(farm, forecaster.days(farm))
    settings = dataclasses.replace(farm.settings, plan_from=farm.settings.plan_from - timedelta(days=7))
    earlier = dataclasses.replace(farm, settings=settings)
    assert keeper.holds(earlier, forecaster.days(earlier)) == holds(earlier, forecaster.days(earlier))
