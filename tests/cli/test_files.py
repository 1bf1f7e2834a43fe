"""Commands that make, check and carry farms: new, check, import, export."""

from __future__ import annotations

import dataclasses
import sys

import pytest

from planner.bootstrap import Means

FAULTY = """\
format = "raftweek.farm/1"
[farm]
name = "Faulty"
plan_from = 2027-01-04
[[site]]
name = "Site"
[[loop]]
name = "Loop"
water_l = {water}
[[raft_bed]]
name = "Raft"
rows = 2
columns = 5
area_m2 = 1
[[batch]]
crop = "{crop}"
sow_on = 2027-01-04
plants = {plants}
bed = "Raft"
"""


def written(path, *, water=500, crop="basil", plants=8):
    path.write_text(FAULTY.format(water=water, crop=crop, plants=plants), encoding="utf-8")
    return path


@pytest.mark.parametrize("name", ["new.toml", "new.raftweek"])
def test_that_a_new_farm_can_be_checked_at_once(run, tmp_path, name):
    path = tmp_path / name
    made = run("new", path, "--name", "Roof", "--from", "2027-01-04")
    assert (made.code, made.err) == (0, "")
    assert "Roof, planned from 2027-01-04" in made.out
    checked = run("check", path)
    assert checked.code == 0
    assert "no faults. 0 beds, 0 batches, 0 fish groups, 52 weeks from 2027-01-04." in checked.out


@pytest.mark.parametrize("name", ["there.toml", "there.raftweek"])
def test_that_new_never_writes_over_a_file(run, tmp_path, name):
    path = tmp_path / name
    path.write_bytes(b"mine")
    said = run("new", path)
    assert (said.code, said.out) == (2, "")
    assert f"{path} is there already" in said.err
    assert path.read_bytes() == b"mine"


def test_that_a_farm_is_not_written_under_a_name_that_hides_what_it_is(run, tmp_path, yard):
    for words in (
        ("new", tmp_path / "a.txt"),
        ("import", yard, tmp_path / "a.toml"),
        ("export", yard, tmp_path / "a.raftweek"),
    ):
        said = run(*words)
        assert said.code == 2
        assert "the name must end in" in said.err
    assert list(tmp_path.iterdir()) == []


def test_that_a_folder_that_is_not_there_is_told(run, tmp_path):
    for name in ("a.toml", "a.raftweek"):
        said = run("new", tmp_path / "none" / name)
        assert said.code == 1
        assert "not there" in said.err or "could not be opened" in said.err


def test_that_a_good_farm_is_summed_up(run, yard):
    said = run("check", yard)
    assert (said.code, said.err) == (0, "")
    assert said.out == f"{yard}: no faults. 3 beds, 22 batches, 1 fish group, 26 weeks from 2027-03-01.\n"


def test_that_a_fault_is_told_with_file_line_field_value_and_limit(run, tmp_path):
    path = written(tmp_path / "farm.toml", water=5)
    said = run("check", path)
    assert (said.code, said.out) == (1, "")
    assert said.err == (
        f'{path}:9: loop "Loop": water_l is 5, but must lie within 10 to 100000000 L.\n1 fault found.\n'
    )


def test_that_every_fault_is_told(run, tmp_path):
    said = run("check", written(tmp_path / "farm.toml", water=5, plants=0))
    assert said.code == 1
    assert "water_l is 5" in said.err
    assert "plants is 0" in said.err
    assert said.err.endswith("2 faults found.\n")


def test_that_a_crop_nobody_knows_is_told_with_its_line_and_the_nearest(run, tmp_path):
    path = written(tmp_path / "farm.toml", crop="bassil")
    said = run("check", path)
    assert said.code == 1
    assert said.err.startswith(f"{path}:16: batch ")
    assert 'crop "bassil" is not in the catalogue. Did you mean basil' in said.err


def test_that_a_batch_without_a_place_is_noted_and_the_farm_still_good(run, tmp_path):
    said = run("check", written(tmp_path / "farm.toml", plants=11))
    assert said.code == 0
    assert "note: " in said.out
    assert '"Raft" has 10 free places' in said.out
    assert "11 are needed" in said.out


@pytest.mark.parametrize("suffix", [".toml", ".raftweek"])
@pytest.mark.parametrize("command", ["check", "forecast", "week"])
def test_that_what_is_no_farm_is_refused_in_a_sentence(run, tmp_path, command, suffix):
    missing, folder, empty, noise = (
        tmp_path / f"{n}{suffix}" for n in ("missing", "folder", "empty", "noise")
    )
    folder.mkdir()
    empty.touch()
    noise.write_bytes(bytes(range(256)) * 20)
    for path in (missing, folder, empty, noise):
        said = run(command, path)
        assert (said.code, said.out) == (1, "")
        assert path.name in said.err


@pytest.mark.parametrize("name", ["yard", "kitchen"])
def test_that_import_export_import_gives_the_same_farm(run, tmp_path, request, name):
    text = request.getfixturevalue(name)
    first, again, second = tmp_path / "1.raftweek", tmp_path / "2.toml", tmp_path / "3.raftweek"
    for words in (("import", text, first), ("export", first, again), ("import", again, second)):
        said = run(*words)
        assert (said.code, said.err) == (0, "")
    means = Means()
    assert plain(means.read(second).farm) == plain(means.read(first).farm)


def plain(farm):
    """A farm by what it says: every field of every thing, with names in place of ids."""
    kinds = [v for field in dataclasses.fields(farm) if isinstance(v := getattr(farm, field.name), tuple)]
    names = {thing.id: getattr(thing, "code", getattr(thing, "name", "")) for many in kinds for thing in many}
    return [
        {field.name: names.get(value := getattr(thing, field.name), value) for field in fields_of(thing)}
        for many in ((farm.settings,), *kinds)
        for thing in many
    ]


def fields_of(thing):
    return [field for field in dataclasses.fields(thing) if field.name != "id"]


def test_that_import_and_export_never_write_over_a_file(run, tmp_path, yard):
    farm, text = tmp_path / "a.raftweek", tmp_path / "a.toml"
    farm.write_bytes(b"mine")
    text.write_bytes(b"mine")
    assert run("import", yard, farm).code == 2
    assert run("export", yard, text).code == 2
    assert {farm.read_bytes(), text.read_bytes()} == {b"mine"}


def test_that_a_faulty_text_is_not_imported(run, tmp_path):
    target = tmp_path / "a.raftweek"
    assert run("import", written(tmp_path / "farm.toml", water=5), target).code == 1
    assert not target.exists()


def test_that_a_server_without_its_library_says_what_to_add(run, monkeypatch):
    monkeypatch.setitem(sys.modules, "psycopg", None)
    said = run("check", "postgresql://ana@farm-host/lettuce")
    assert (said.code, said.out) == (1, "")
    assert 'need psycopg, which is not installed here. Add it by pip install "psycopg[binary]".' in said.err
