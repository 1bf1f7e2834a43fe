"""Sums over batches: work, seeds, pieces, harvests, ground and places are the forecast's, worked again."""

from __future__ import annotations

import dataclasses

import pytest

from planner.farm.crops import Phase, Placement
from planner.farm.ids import id_from
from planner.farm.species import BedKind
from planner.forecast.occupancy import holds
from planner.forecast.pieces import PieceKind
from planner.forecast.verdicts import week_verdicts
from planner.forecast.week import DueKind, due_in_week
from planner.forecast.why.ask import why
from planner.forecast.why.ground import NoSuchFigureError
from planner.forecast.why.values import NoteKind, Origin, Subject, SubjectKind
from planner.planning.orders import OrderKind, order_list
from tests.farms import RAFT
from tests.forecast.sample_farms import NAMES, known
from tests.forecast.why.working import asked, walk, works_out

WORK = (DueKind.SOW, DueKind.SPACE, DueKind.MOVE, DueKind.PICK, DueKind.CLEAR)


@pytest.mark.parametrize("name", NAMES)
@pytest.mark.parametrize("kind", WORK)
def test_that_the_work_of_a_week_is_that_of_the_due_list(name, kind):
    farm, forecast, _ = known(name)
    seen = 0.0
    for week in range(forecast.ruler.weeks):
        due = [task for task in due_in_week(farm, forecast, week) if task.kind is kind]
        found = asked(name, kind=SubjectKind.WORK, part=kind.value, week=week, weeks=1)
        assert found.value == pytest.approx(sum(task.many for task in due))
        works_out(found)
        seen += found.value
    whole = asked(name, kind=SubjectKind.WORK, part=kind.value)
    assert whole.value == pytest.approx(seen)
    works_out(whole)


def test_that_work_of_one_crop_and_plants_of_what_is_sown_are_told():
    farm, _, _ = known("by-hand")
    basil = asked("by-hand", kind=SubjectKind.WORK, part="sown plants", crop="basil")
    assert basil.value == 10
    whole = asked("by-hand", kind=SubjectKind.WORK, part="sown plants")
    assert whole.value == sum(batch.plants for batch in farm.batches)
    assert whole.children[0].inputs[0].origin is Origin.ENTERED


@pytest.mark.parametrize("name", NAMES)
def test_that_seeds_plugs_and_net_pots_are_those_of_the_order_list(name):
    farm, forecast, forecaster = known(name)
    lines = order_list(farm, forecast, forecaster.catalogue_for(farm))
    for crop in forecast.crops:
        found = asked(name, kind=SubjectKind.SEEDS_USED, crop=crop)
        wanted = sum(line.amount for line in lines if line.kind is OrderKind.SEED and line.key == crop)
        assert found.value == wanted
        works_out(found)
    for kind in PieceKind:
        found = asked(name, kind=SubjectKind.PIECES, part=kind.value)
        assert found.value == sum(line.amount for line in lines if line.kind.value == kind.value)
        works_out(found)


def test_that_seeds_of_one_lot_are_told():
    farm, forecast, _ = known("by-hand")
    lot = farm.seed_lots[0]
    found = asked("by-hand", kind=SubjectKind.SEEDS_USED, about=lot.id)
    rows = [row for row, batch in enumerate(farm.batches) if batch.seed_lot == lot.id]
    assert found.about == lot.code
    assert found.value == forecast.batches.seeds[rows].sum() > 0


@pytest.mark.parametrize("name", NAMES)
@pytest.mark.parametrize("part", ["plants", "kg"])
def test_that_harvest_of_all_crops_is_summed_by_crop_and_week(name, part):
    _, forecast, _ = known(name)
    per, by_day = (1000, forecast.harvest_g) if part == "kg" else (1, forecast.harvest_plants)
    whole = asked(name, kind=SubjectKind.HARVEST_TOTAL, part=part)
    assert whole.value == pytest.approx(by_day.sum() / per, rel=1e-9)
    works_out(whole)
    week = asked(name, kind=SubjectKind.HARVEST_TOTAL, part=part, week=10, weeks=1)
    assert week.value == pytest.approx(by_day[:, 70:77].sum() / per, rel=1e-9)
    crop = forecast.crops[0]
    of_crop = asked(name, kind=SubjectKind.HARVEST_TOTAL, part=part, crop=crop)
    assert of_crop.value == pytest.approx(by_day[0].sum() / per, rel=1e-9)


@pytest.mark.parametrize("name", NAMES)
def test_that_planted_area_goes_down_to_batches_and_crops(name):
    _, forecast, forecaster = known(name)
    for loop in forecast.loops:
        verdicts = week_verdicts(loop, forecast.ruler, forecaster.bands)
        for week in range(0, forecast.ruler.weeks, 3):
            found = asked(name, kind=SubjectKind.PLANTED, about=loop.loop, week=week)
            assert found.value == pytest.approx(verdicts[week].planted_m2, abs=1e-9)
            assert sum(child.value for child in found.children) == pytest.approx(found.value, abs=1e-9)
            works_out(found)
            by_crop = [
                asked(name, kind=SubjectKind.PLANTED_CROP, about=loop.loop, week=week, crop=crop)
                for crop in forecast.crops
            ]
            assert sum(one.value for one in by_crop) == pytest.approx(found.value, abs=1e-9)


@pytest.mark.parametrize("name", NAMES)
def test_that_the_area_of_every_batch_works_out(name):
    farm, forecast, _ = known(name)
    for row, batch in enumerate(farm.batches):
        found = asked(name, kind=SubjectKind.BATCH_AREA, about=batch.id)
        assert found.value == pytest.approx(float(forecast.batches.area_m2[row]))
        works_out(found)


@pytest.mark.parametrize("name", ["school-kitchen", "backyard"])
def test_that_places_held_and_free_are_those_of_the_bed(name):
    farm, forecast, _ = known(name)
    held = holds(farm, forecast)
    most = 0
    for day in range(0, forecast.ruler.days, 10):
        on = forecast.ruler.date_of(day)
        now = [hold for hold in held if hold.from_on <= on < hold.until_on]
        for bed in farm.beds:
            places = sum(hold.last - hold.first + 1 for hold in now if hold.bed == bed.id)
            used = asked(name, kind=SubjectKind.PLACES_USED, about=bed.id, day=day)
            free = asked(name, kind=SubjectKind.PLACES_FREE, about=bed.id, day=day)
            assert (used.value, free.value) == (places, bed.places - places)
            works_out(free)
            most = max(most, places)
        nursery = asked(name, kind=SubjectKind.NURSERY_USED, day=day)
        kinds = {bed.id: bed.kind for bed in farm.beds}
        assert nursery.value == sum(
            hold.last - hold.first + 1 for hold in now if kinds[hold.bed] is BedKind.NURSERY
        )
    assert most > 0


def test_that_an_empty_bed_and_a_place_held_twice_are_said():
    farm, _, forecaster = known("by-hand")
    runs = tuple(
        Placement(
            id=id_from("run", batch.code),
            batch=batch.id,
            phase=Phase.BED,
            bed=RAFT.id,
            unit=1,
            first=1,
            count=4,
        )
        for batch in farm.batches[:2]
    )
    both = dataclasses.replace(farm, placements=runs)
    forecast = forecaster.forecast(both)
    row = forecast.batches.row_of[farm.batches[1].id]
    day = int(forecast.batches.ends[row, 2])
    subject = Subject(kind=SubjectKind.PLACES_USED, about=RAFT.id, day=day)
    found = why(subject, both, forecast, forecaster)
    assert found.value == 4
    assert NoteKind.HELD_TWICE in {note.kind for note in found.notes}
    works_out(found)
    empty = why(dataclasses.replace(subject, day=0), both, forecast, forecaster)
    assert (empty.value, empty.notes[0].kind) == (0, NoteKind.BED_EMPTY)
    forecaster.forecast(farm)


@pytest.mark.parametrize(
    "words",
    [
        {"kind": SubjectKind.WORK, "part": "dance"},
        {"kind": SubjectKind.WORK, "part": "sow", "crop": "pineapple"},
        {"kind": SubjectKind.SEEDS_USED, "about": "nobody"},
        {"kind": SubjectKind.PIECES, "part": "bucket"},
        {"kind": SubjectKind.HARVEST_TOTAL, "part": "boxes"},
        {"kind": SubjectKind.PLANTED_CROP, "crop": "pineapple"},
        {"kind": SubjectKind.PLACES_USED, "about": "nowhere"},
        {"kind": SubjectKind.NURSERY_USED, "day": -1},
        {"kind": SubjectKind.HARVEST_TOTAL, "part": "kg", "week": 99},
    ],
)
def test_that_a_sum_that_is_not_there_is_refused_in_a_sentence(words):
    farm, forecast, _ = known("by-hand")
    if words["kind"] is SubjectKind.PLANTED_CROP:
        words = words | {"about": forecast.loops[0].loop}
    with pytest.raises(NoSuchFigureError, match=r"\w+.*\.$"):
        asked("by-hand", **words)
    assert farm.batches


def test_that_a_long_sum_is_told_by_crop_and_explains_its_largest_parts_only():
    for words in ({"kind": SubjectKind.WORK, "part": "sow"}, {"kind": SubjectKind.SEEDS_USED}):
        found = asked("school-kitchen", **words)
        assert {child.about for child in found.children} > {"Butterhead lettuce", "Leaf lettuce"}
        assert sum(child.value for child in found.children) == found.value
        lettuce = max(found.children, key=lambda child: len(child.children))
        assert len(lettuce.children) == 12
        assert NoteKind.OTHERS in {note.kind for note in lettuce.notes}
        works_out(found)
    assert sum(1 for _ in walk(found)) < 200
