"""Rows and bars are those of the forecast, and what has not changed stays the same object."""

import dataclasses

import pytest

from planner.desk.bars_of import RowKeeper
from planner.desk.outlook import look_out
from planner.farm.crops import Phase


@pytest.fixture(scope="session")
def outlook(means, farm):
    return look_out(farm, means.forecaster)


def rows_of(groups):
    return {row.key: row for group in groups for row in group.rows}


def test_that_every_run_has_one_bar_on_its_unit_over_its_days(outlook, farm):
    bars = {
        bar.run: bar for row in rows_of(RowKeeper().groups(outlook)).values() for bar in row.bars if bar.run
    }
    assert set(bars) == {run.id for run in farm.placements}
    table, start = outlook.forecast.batches, outlook.forecast.ruler.start_on.toordinal()
    for run in farm.placements:
        first, end = table.phase_days(table.row_of[run.batch], run.phase)
        bar = bars[run.id]
        assert (bar.start - start, bar.end - start) == (first, end)
        assert (bar.bed, bar.unit, bar.plants) == (run.bed, run.unit, run.count)
        assert bar.segments[0].start == bar.start
        assert bar.segments[-1].end == bar.end


def test_that_the_same_farm_again_gives_the_same_objects(means, farm, outlook):
    keeper = RowKeeper()
    first = rows_of(keeper.groups(outlook))
    again = rows_of(keeper.groups(look_out(farm, means.forecaster)))
    assert all(again[key] is first[key] for key in first)


def test_that_only_the_rows_of_a_moved_batch_are_made_anew(means, farm, outlook):
    keeper = RowKeeper()
    first = rows_of(keeper.groups(outlook))
    batch = dataclasses.replace(farm.batches[-1], notes="new")
    moved = dataclasses.replace(farm, batches=(*farm.batches[:-1], dataclasses.replace(batch, locked=True)))
    again = rows_of(keeper.groups(look_out(moved, means.forecaster)))
    changed = {key for key in first if again[key] is not first[key]}
    own = {(run.bed, run.unit) for run in farm.placements if run.batch == batch.id}
    assert {(key.bed, key.unit) for key in changed} == own
    assert all(bar.locked for key in changed for bar in again[key].bars if bar.batch == batch.id)


def test_that_a_batch_without_places_waits_in_a_row_of_its_own(means, farm):
    batch = farm.batches[0]
    runs = tuple(run for run in farm.placements if run.batch != batch.id or run.phase is not Phase.BED)
    unplaced = dataclasses.replace(farm, placements=runs)
    (waiting, *_) = RowKeeper().groups(look_out(unplaced, means.forecaster))
    assert waiting.urgent
    (row,) = waiting.rows
    assert [(bar.batch, bar.plants, bar.placed) for bar in row.bars] == [(batch.id, batch.plants, False)]


def test_that_the_share_held_never_exceeds_the_bed_and_counts_every_day(outlook, farm):
    for group in RowKeeper().groups(outlook):
        assert max(group.held.values) <= 1 + 1e-9
    bed = farm.beds[-1]
    group = next(group for group in RowKeeper().groups(outlook) if group.bed == bed.id)
    plant_days = sum(bar.plants * (bar.end - bar.start) for row in group.rows for bar in row.bars)
    inside = sum(group.held.values) * bed.places * 7
    assert 0 < inside <= plant_days + 1e-6
