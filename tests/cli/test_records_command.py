"""The command `records` lists the log with what it leads to, as text and as JSON."""

import json
from datetime import timedelta

from planner.bootstrap import Means
from planner.cli import main
from planner.store.text.writer import write_farm_text

LOG = """
[[log]]
code = "x-1"
what = "germinated"
on = {on}
batch = "{batch}"
amount = 3
unit = "plants"
"""


def logged(root, tmp_path):
    farm = Means().read(root / "sample_data" / "backyard.toml").farm
    batch = farm.batches[0]
    path = tmp_path / "logged.toml"
    path.write_text(write_farm_text(farm) + LOG.format(on=batch.sow_on, batch=batch.code), encoding="utf-8")
    return path, batch


def test_that_the_log_is_told_with_what_it_leads_to(root, tmp_path, capsys):
    path, batch = logged(root, tmp_path)
    assert main(["records", str(path), "--date", batch.sow_on.isoformat()]) == 0
    said = capsys.readouterr().out
    assert "germinated  3.0 plants  x-1" in said
    assert f"{batch.code}  germination: planned" in said


def test_that_the_week_begins_with_what_is_carried_over(root, tmp_path, capsys):
    path, batch = logged(root, tmp_path)
    on = batch.sow_on + timedelta(days=25)
    assert main(["week", str(path), "--date", on.isoformat()]) == 0
    lines = capsys.readouterr().out.splitlines()
    carried = [line for line in lines if line.startswith("carried over: ")]
    assert lines[: len(carried)] == carried
    (mine,) = (line for line in carried if batch.code in line)
    assert mine.startswith(f"carried over: move to the bed {batch.code}: due ")
    assert "days late; if done today, 2027-W" in mine
    assert mine.endswith("short")


def test_that_the_same_comes_as_data(root, tmp_path, capsys):
    path, batch = logged(root, tmp_path)
    assert main(["records", str(path), "--date", batch.sow_on.isoformat(), "--json"]) == 0
    found = json.loads(capsys.readouterr().out)
    assert found["format"] == "raftweek.records/1"
    assert found["entries"][0]["code"] == "x-1"
    assert found["outcomes"][0]["batch"] == batch.code
