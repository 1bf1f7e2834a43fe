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


def test_that_holds_are_the_very_same_value_until_a_place_or_a_date_is_other(forecaster):
    batches = weekly_batches(3)
    farm, keeper = farm_of(batches=batches, placements=tuple(map(places_of, batches))), HoldKeeper()
    before = keeper.holds(farm, forecaster.days(farm))
    noted = dataclasses.replace(farm, batches=(dataclasses.replace(batches[0], notes="slow"), *batches[1:]))
    assert keeper.holds(noted, forecaster.days(noted)) is before
    late = dataclasses.replace(batches[1], sow_on=batches[1].sow_on + timedelta(days=1))
    moved = dataclasses.replace(farm, batches=(batches[0], late, batches[2]))
    assert keeper.holds(moved, forecaster.days(moved)) == holds(moved, forecaster.days(moved))
    assert keeper.holds(farm, forecaster.days(farm)) == before
    swapped = dataclasses.replace(farm, batches=(batches[1], batches[0], batches[2]))
    assert keeper.holds(swapped, forecaster.days(swapped)) == holds(swapped, forecaster.days(swapped))
