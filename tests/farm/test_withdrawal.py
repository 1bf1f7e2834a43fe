"""Treated fish are not harvested until they are cleared; what really happened is never refused."""

import dataclasses
from datetime import timedelta

import pytest

from planner.farm.checks import farm_faults
from planner.farm.fish import FishEvent, FishEventKind
from planner.farm.ids import id_from
from planner.farm.withdrawal import barred_harvests, treatment_barring
from tests.farms import MONDAY, farm_of, group_of

GROUP = group_of()


def on_day(days):
    return MONDAY + timedelta(days=days)


def event(kind, days, **given):
    return FishEvent(
        id=id_from("event", kind.value, str(days)), group=GROUP.id, on=on_day(days), kind=kind, **given
    )


TREATED = event(FishEventKind.TREATED, 10)
CLEARED = dataclasses.replace(TREATED, cleared_on=on_day(30))


@pytest.mark.parametrize(("treatment", "first_free"), [(TREATED, None), (CLEARED, 30)])
def test_that_no_day_from_the_treatment_until_it_is_cleared_is_free(treatment, first_free):
    free = [day for day in range(60) if treatment_barring(GROUP.id, on_day(day), (treatment,)) is None]
    assert free == [*range(10), *(range(first_free, 60) if first_free else ())]
    assert treatment_barring(id_from("other"), on_day(20), (treatment,)) is None


def test_that_harvests_within_are_barred():
    harvests = [event(FishEventKind.HARVEST, day, count=1) for day in (5, 15, 29, 30)]
    barred = [harvest.on for harvest, _ in barred_harvests((*harvests, CLEARED))]
    assert barred == [on_day(15), on_day(29)]


def test_that_a_farm_may_hold_a_harvest_planned_before_the_treatment():
    farm = farm_of(fish_groups=(GROUP,), fish_events=(event(FishEventKind.HARVEST, 40), TREATED))
    assert farm_faults(farm) == ()


def test_that_fish_are_not_cleared_before_they_were_treated():
    early = dataclasses.replace(TREATED, cleared_on=on_day(9))
    (fault,) = farm_faults(farm_of(fish_groups=(GROUP,), fish_events=(early,)))
    assert fault.field == "cleared_on"
