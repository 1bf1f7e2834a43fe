"""Places in words: touching runs joined, whole rafts drawn together."""

from planner.farm.crops import Phase, Placement
from planner.farm.ids import id_from
from planner.paper.places import bed_words
from tests.paper.helpers import bare_farm

NURSERY, RAFTS, GRAVEL = bare_farm().beds


def held(*runs, bed=RAFTS):
    return [
        Placement(id=id_from("p", str(run)), batch=id_from("b"), phase=Phase.BED, bed=bed.id, unit=run[0],
                  first=run[1], count=run[2])
        for run in runs
    ]  # fmt: skip


def words(*runs, bed=RAFTS):
    return bed_words(bed, held(*runs, bed=bed)).replace("\u00a0", " ")


def test_that_one_hole_is_one_hole():
    assert words((3, 9, 1)) == "Bed A: raft 3 hole 9"


def test_that_touching_runs_are_joined():
    assert words((1, 8, 7), (1, 1, 7)) == "Bed A: raft 1 holes 1–14"


def test_that_runs_with_a_gap_stay_apart():
    assert words((1, 1, 7), (1, 15, 7)) == "Bed A: raft 1 holes 1–7, raft 1 holes 15–21"


def test_that_whole_rafts_side_by_side_are_drawn_together():
    assert words((4, 1, 28), (2, 1, 28), (3, 1, 28), (6, 1, 28)) == "Bed A: rafts 2–4 (all), raft 6 (all)"


def test_that_gravel_has_blocks_and_a_nursery_trays_and_cells():
    assert words((1, 1, 8), bed=GRAVEL) == "Gravel 1: block 1 places 1–8"
    assert words((1, 1, 8), bed=NURSERY) == "Nursery: tray 1 cells 1–8"
