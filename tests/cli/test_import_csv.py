"""Bringing tables in from the command line: all or nothing, one step, undone at once."""

import pytest

from planner.bootstrap import Means
from planner.store.store import FarmStore

ROWS = "Date;pH;Temp (°C)\n05.04.2027;6,8;24,5\n06.04.2027;19;24,1\n07.04.2027;6,9;\n"


@pytest.fixture
def farm(run, tmp_path, yard):
    path = tmp_path / "f.raftweek"
    run("import", yard, path)
    return path


def table(tmp_path, text, name="t.csv"):
    path = tmp_path / name
    path.write_text(text, encoding="utf-8")
    return path


def loaded(path):
    with FarmStore.open(path) as store:
        return store.load()


def test_that_one_bad_row_keeps_all_out_unless_the_good_ones_are_asked_for(run, tmp_path, farm):
    before = loaded(farm)
    said = run("import-csv", "readings", table(tmp_path, ROWS), farm)
    assert said.code == 1
    assert "line 3, pH: ph is 19, but must lie within 2 to 12." in said.err
    assert "1 row cannot be taken; nothing was brought in." in said.err
    assert loaded(farm) == before
    said = run("import-csv", "readings", table(tmp_path, ROWS), farm, "--only-good")
    assert said.code == 0
    assert "3 readings brought in" in said.out
    assert len(loaded(farm).readings) == len(before.readings) + 3
    assert (
        "0 readings brought in; 3 were there already"
        in run("import-csv", "readings", table(tmp_path, ROWS), farm, "--only-good").out
    )


def test_that_bringing_in_is_one_step_that_can_be_undone(run, tmp_path, farm):
    before = loaded(farm)
    run("import-csv", "readings", table(tmp_path, ROWS), farm, "--only-good")
    with FarmStore.open(farm) as store:
        session = Means().session(store)
        assert session.undo_title == "Add 3 readings"
        session.undo()
        assert session.farm == before


def test_that_a_dry_run_changes_nothing(run, tmp_path, farm):
    before = loaded(farm)
    said = run("import-csv", "readings", table(tmp_path, "Date,pH\n2027-04-05,7.0\n"), farm, "--dry-run")
    assert "1 reading would be brought in" in said.out
    assert loaded(farm) == before


def test_that_batches_come_in_with_codes_and_places(run, tmp_path, farm):
    before = loaded(farm)
    bed = next(bed.name for bed in before.beds if bed.kind.value == "raft")
    text = (
        f"Crop,Sow on,Plants,Bed,Variety\nSweet basil,2027-05-03,2,{bed},=evil\nbasil,2027-05-03,2,{bed},\n"
    )
    said = run("import-csv", "batches", table(tmp_path, text), farm)
    assert (said.code, said.err) == (0, "")
    after = loaded(farm)
    new = [batch for batch in after.batches if batch not in before.batches]
    assert [batch.code for batch in new] == ["BAS-27W18-A", "BAS-27W18-B"]
    assert [batch.variety for batch in new] == ["=evil", ""]
    held = {run.batch for run in after.placements}
    noted = said.out.count("note: ")
    assert sum(batch.id in held for batch in new) + noted >= 2


def test_that_bad_batches_are_listed(run, tmp_path, farm):
    rows = ("triffid,2027-05-03,2,", "basil,soon,2,", "basil,2027-05-03,0,", "basil,2027-05-03,2,Nowhere")
    text = "\n".join(("Crop,Sow on,Plants,Bed", *rows))
    before = loaded(farm)
    said = run("import-csv", "batches", table(tmp_path, text), farm)
    assert said.code == 1
    for line, words in (
        (2, "no crop is called"),
        (3, "is no date"),
        (4, "plants is 0"),
        (5, "no bed is called"),
    ):
        assert any(f"line {line}," in one and words in one for one in said.err.splitlines()), said.err
    assert loaded(farm) == before


@pytest.mark.parametrize(
    ("words", "wanted"),
    [
        (("--map", "pH"), "is not written as HEADING=WORD"),
        (("--map", "X=ph"), "there is no column"),
        (("--units", "Temp (°C)=K"), "must be in one of"),
        (("--meter-factor", "5"), "must lie within 0.3 to 1"),
        (("--loop", "Nowhere"), "say which loop"),
    ],
)
def test_that_wrong_wishes_are_told(run, tmp_path, farm, words, wanted):
    said = run("import-csv", "readings", table(tmp_path, ROWS), farm, *words)
    assert said.code == 2
    assert wanted in said.err


def test_that_what_is_no_table_is_told(run, tmp_path, farm):
    said = run("import-csv", "readings", farm, farm)
    assert said.code == 2
    said = run("import-csv", "readings", tmp_path / "none.csv", farm)
    assert said.code == 1
    assert "is not there" in said.err
