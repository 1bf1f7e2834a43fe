"""The generator of big farms, at sizes that are quick to make."""

from __future__ import annotations

import dataclasses

import pytest

from planner.bootstrap import Means
from planner.catalogue.loading import shipped_catalogue
from planner.farm.crops import Phase
from planner.farm.fish import FishEventKind
from planner.farm.species import HarvestKind
from planner.forecast.occupancy import clashes
from planner.forecast.values import FlagKind
from sample_data.make_big_farm import big_farm, main

SIZES = [(200, 8, 1), (400, 5, 1), (150, 40, 2), (1, 1, 1)]


@pytest.mark.parametrize(("batches", "rafts", "years"), SIZES)
def test_that_a_big_farm_has_its_size_no_fault_and_no_clash(batches, rafts, years):
    farm = big_farm(batches=batches, rafts=rafts, years=years)
    means = Means()
    assert means.faults(farm) == ()
    assert list(clashes(means.holds(farm))) == []
    assert len(farm.batches) == batches
    assert sum(bed.units for bed in farm.beds[:-1]) == rafts
    assert farm.settings.plan_weeks == 52 * years


def test_that_every_batch_has_its_places_in_nursery_and_bed():
    farm = big_farm(batches=200, rafts=8, years=1)
    flags = Means().forecaster.forecast(farm).flags
    assert not [flag for flag in flags if flag.kind in (FlagKind.UNPLACED, FlagKind.NOT_SUITED)]
    held = {(placement.batch, placement.phase) for placement in farm.placements}
    assert held == {(batch.id, phase) for batch in farm.batches for phase in (Phase.NURSERY, Phase.BED)}


def test_that_crops_of_every_kind_of_harvest_are_grown():
    crops = shipped_catalogue().crops
    farm = big_farm(batches=200, rafts=8, years=1)
    assert {crops[batch.crop].harvest for batch in farm.batches} == set(HarvestKind)


def test_that_eight_groups_of_fish_a_year_are_stocked_and_harvested():
    farm = big_farm(batches=10, rafts=8, years=2)
    begun = [group for group in farm.fish_groups if group.stocked_on >= farm.settings.plan_from]
    assert len(begun) == 16
    assert {event.group for event in farm.fish_events} == {group.id for group in farm.fish_groups}
    assert {event.kind for event in farm.fish_events} == {FishEventKind.HARVEST}


def test_that_the_same_seed_gives_the_same_farm_and_another_one_another():
    sizes = {"batches": 60, "rafts": 4, "years": 1}
    assert big_farm(**sizes, seed=5) == big_farm(**sizes, seed=5)
    assert big_farm(**sizes, seed=5).batches != big_farm(**sizes, seed=6).batches


@pytest.mark.parametrize("size", ["batches", "rafts", "years"])
def test_that_a_size_of_nothing_is_refused(size):
    sizes = {"batches": 10, "rafts": 2, "years": 1, size: 0}
    with pytest.raises(ValueError, match=f"{size} 0"):
        big_farm(**sizes)


def test_that_more_batches_than_places_are_refused():
    with pytest.raises(ValueError, match="give more rafts"):
        big_farm(batches=5000, rafts=1, years=1)


@pytest.mark.parametrize("name", ["big.toml", "big.raftweek"])
def test_that_it_is_written_as_text_or_file(tmp_path, name):
    path = tmp_path / name
    assert main([str(path), "--batches", "40", "--rafts", "3", "--years", "1"]) == 0
    read = Means().read(path)
    made = big_farm(batches=40, rafts=3, years=1)
    assert read.refusals == ()
    assert [plain(batch) for batch in read.farm.batches] == [plain(batch) for batch in made.batches]
    assert len(read.farm.placements) == len(made.placements)


def plain(batch):
    return dataclasses.replace(batch, id="", bed="")


def test_that_a_file_is_not_written_over(tmp_path, capsys):
    path = tmp_path / "big.toml"
    path.touch()
    with pytest.raises(SystemExit):
        main([str(path)])
    assert "is there already" in capsys.readouterr().err
