"""What only the catalogue or the forecast can see is told with its line, as any other fault of a text."""

from __future__ import annotations

import pytest

from planner.bootstrap import Means
from planner.farm.faults import FarmFaultError
from planner.store.store import FarmStore
from planner.store.text import read_farm_text

TEXT = """format = "raftweek.farm/1"
[farm]
name = "Terrace"
plan_from = 2026-03-02
[[site]]
name = "Roof"
[[loop]]
name = "Loop"
water_l = 3000
[[tank]]
name = "Tank"
volume_l = 1000
[[raft_bed]]
name = "Raft"
rafts = 2
length_m = 2.4
width_m = 1.2
spacing_cm = 20
"""
FISH = """[[fish_group]]
name = "Fish"
species = "Nile tilapia"
feed = "tilapia-grow-out-32"
stocked_on = 2026-03-02
count = 100
mean_weight_g = 50
"""
ONE_HOLE = """[[batch]]
code = "A"
crop = "basil"
sow_on = 2026-03-02
plants = 20
[[batch.place]]
phase = "bed"
raft = 1
places = "1-20"
[[batch]]
code = "B"
crop = "basil"
sow_on = 2026-03-16
plants = 20
[[batch.place]]
phase = "bed"
raft = 1
places = "10-29"
"""
DOSES = """[[dose]]
supplement = "dolomite"
grams = 3
on = 2026-05-01
[[dose]]
supplement = "table salt"
grams = 3
on = 2026-05-01
[[dose]]
supplement = "dolomite"
grams = 3
on = 2026-05-02
"""
OWN = """[[fish]]
key = "x"
like = "nile-tilapia"
name = "X"
stage_6_tgc = 1
"""


@pytest.mark.parametrize(
    ("part", "line", "words"),
    [
        (FISH, 3, 'species "Nile tilapia" is not in the catalogue. Did you mean nile-tilapia?'),
        (ONE_HOLE, 10, 'places 10 to 20 of raft 1 in "Raft" are held by "A"'),
        (DOSES, 6, 'supplement "table salt" is not in the catalogue'),
        (OWN, 5, "stage_6_tgc = 1.0 is no figure of a fish"),
        ('[[target]]\ncrop = "weed"\namount_per_week = 3\nfrom_on = 2026-05-01\n', 2, 'crop "weed" is not'),
    ],
)
def test_that_it_is_told_with_its_line(run, tmp_path, part, line, words):
    path = tmp_path / "farm.toml"
    path.write_text(TEXT + part, encoding="utf-8")
    said = run("check", path)
    assert (said.code, said.out) == (1, "")
    assert f"{path}:{TEXT.count(chr(10)) + line}: " in said.err
    assert words in said.err
    assert said.err.endswith("1 fault found.\n")


@pytest.fixture
def strange_farm(tmp_path):
    """A farm file whose batch is of a crop that is in no catalogue, as one of a newer program may be."""
    path = tmp_path / "strange.raftweek"
    batch = '[[batch]]\ncode = "A"\ncrop = "weed"\nsow_on = 2026-03-02\nplants = 20\n'
    FarmStore.create(path, read_farm_text(TEXT + batch), ()).close()
    return path


def test_that_a_file_with_a_crop_that_is_nowhere_is_refused_in_a_sentence_and_stays(strange_farm, run):
    store, before = FarmStore.open(strange_farm), strange_farm.read_bytes()
    try:
        with pytest.raises(FarmFaultError) as caught:
            Means().session(store)
    finally:
        store.close()
    (fault,) = caught.value.faults
    assert (fault.where, fault.field, fault.value) == ('batch "A"', "crop", "weed")
    assert strange_farm.read_bytes() == before
    said = run("check", strange_farm)
    assert (said.code, said.out) == (1, "")
    assert 'batch "A": crop "weed" is not in the catalogue.' in said.err
