"""Solids that are due: siphoned, put by to rot, given back; each on the day the forecast reckons with."""

from __future__ import annotations

import dataclasses
from datetime import timedelta

from planner.catalogue.loading import shipped_catalogue
from planner.forecast.week import OF_SOLIDS, SOLIDS_CAUTION, DueKind, due_in_week
from tests.farms import LOOP, MONDAY, farm_of, group_of
from tests.forecast.sample_farms import solids_of


def solid_tasks(forecaster, farm):
    forecast = forecaster.forecast(farm)
    weeks = range(forecast.ruler.weeks)
    found = [task for week in weeks for task in due_in_week(farm, forecast, week)]
    return [task for task in found if task.kind in OF_SOLIDS], forecast


def test_that_siphonings_are_due_on_the_days_the_forecast_clears_what_lies(forecaster):
    loop = dataclasses.replace(LOOP, solids_settled_siphoned_every_days=10)
    farm = farm_of(loops=(loop,), fish_groups=(group_of("Fish"),))
    tasks, forecast = solid_tasks(forecaster, farm)
    assert {task.kind for task in tasks} == {DueKind.SIPHON}
    assert [task.on for task in tasks] == [MONDAY + timedelta(days=day) for day in range(10, 140, 10)]
    lying = forecast.loops[0].solids.lying_g[0]
    assert all(lying[day] < lying[day - 1] for day in range(10, 140, 10))


def test_that_a_solids_batch_is_due_on_the_day_it_is_filled_and_the_day_its_liquor_goes_back(forecaster):
    batch = solids_of("SB-1", siphoned=20, returned=45)
    tasks, forecast = solid_tasks(
        forecaster, farm_of(fish_groups=(group_of("Fish"),), solids_batches=(batch,))
    )
    assert [(task.kind, task.on, task.many) for task in tasks] == [
        (DueKind.FILL_MINERALISER, MONDAY + timedelta(days=20), 10.0),
        (DueKind.RETURN_LIQUOR, MONDAY + timedelta(days=45), 25.0),
    ]
    assert forecast.loops[0].liquor_g[0].nonzero()[0].tolist() == [45]


def test_that_a_batch_without_a_day_of_return_is_only_filled(forecaster):
    batch = dataclasses.replace(solids_of("SB-1", siphoned=20, returned=45), returned_on=None)
    tasks, _ = solid_tasks(forecaster, farm_of(solids_batches=(batch,)))
    assert [task.kind for task in tasks] == [DueKind.FILL_MINERALISER]


def test_that_the_caution_beside_them_is_in_the_catalogue():
    assert "below the leaf" in shipped_catalogue().cautions[SOLIDS_CAUTION].text
