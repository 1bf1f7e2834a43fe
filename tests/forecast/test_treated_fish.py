"""A treatment bars harvests: the due list leaves them out, and a flag says why."""

import dataclasses
from datetime import timedelta

from planner.farm.fish import FishEvent, FishEventKind
from planner.farm.ids import id_from
from planner.forecast.values import FlagKind
from planner.forecast.week import DueKind, due_between
from tests.farms import MONDAY, farm_of, group_of

GROUP = group_of()
HARVEST = FishEvent(
    id=id_from("h"), group=GROUP.id, on=MONDAY + timedelta(days=40), kind=FishEventKind.HARVEST, count=20
)
TREATED = FishEvent(
    id=id_from("t"), group=GROUP.id, on=MONDAY + timedelta(days=20), kind=FishEventKind.TREATED
)


def told(forecaster, *events):
    farm = farm_of(fish_groups=(GROUP,), fish_events=events)
    forecast = forecaster.forecast(farm)
    tasks = due_between(farm, forecast, first_day=0, last_day=forecast.ruler.days)
    due = [task.on for task in tasks if task.kind is DueKind.HARVEST_FISH]
    kinds = (FlagKind.TREATED, FlagKind.HARVEST_BARRED)
    return due, [(flag.kind, flag.on) for flag in forecast.flags if flag.kind in kinds]


def test_that_nothing_bars_fish_that_were_never_treated(forecaster):
    assert told(forecaster, HARVEST) == ([HARVEST.on], [])


def test_that_fish_not_cleared_are_not_due_and_are_flagged(forecaster):
    assert told(forecaster, HARVEST, TREATED) == (
        [],
        [(FlagKind.TREATED, TREATED.on), (FlagKind.HARVEST_BARRED, HARVEST.on)],
    )


def test_that_fish_cleared_in_time_are_due_again(forecaster):
    assert told(forecaster, HARVEST, dataclasses.replace(TREATED, cleared_on=HARVEST.on)) == (
        [HARVEST.on],
        [],
    )
