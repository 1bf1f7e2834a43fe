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
    assert f"germinated  3 plants  {batch.code}  x-1" in said
    assert f"{batch.code}  germination: planned" in said


def test_that_the_reason_of_an_entry_is_told(root, tmp_path, capsys):
    path, batch = logged(root, tmp_path)
    path.write_text(path.read_text(encoding="utf-8") + 'reason = "cold"\n', encoding="utf-8")
    assert main(["records", str(path), "--date", batch.sow_on.isoformat()]) == 0
    assert f"{batch.code}  x-1  reason cold" in capsys.readouterr().out


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


AUDIT = """
[[meter]]
name = "Pen"
kind = "pH"
calibrate_every_days = 30
used_from = {on}

[[seed_lot]]
code = "LOT-1"
crop = "lettuce-leaf"
primed = true

[[log]]
code = "t-1"
what = "seed tested"
on = {on}
seed_lot = "LOT-1"
amount = 18
out_of = 20
unit = "plants"

[[log]]
code = "r-1"
what = "reading"
on = {on}
at = "06:45"
meter = "Pen"
loop = "Loop"
quantity = "ph"
amount = 6.4
who = "AN"
noted_at = "2027-03-01T07:00Z"

[[log]]
code = "r-2"
what = "reading"
on = {on}
at = "06:45"
meter = "Pen"
loop = "Loop"
quantity = "ph"
amount = 6.6
who = "BE"
noted_at = "2027-03-02T18:00Z"
corrects = "r-1"

[[log]]
code = "r-3"
what = "reading"
on = {on}
at = "06:50"
meter = "Pen"
loop = "Loop"
quantity = "ph"
amount = 6.7
who = "CA"
noted_at = "2027-03-09T06:00Z"
corrects = "r-2"
"""


def test_that_a_ph_corrected_twice_is_listed_three_times_with_times_and_initials(root, tmp_path, capsys):
    path, batch = logged(root, tmp_path)
    path.write_text(path.read_text(encoding="utf-8") + AUDIT.format(on=batch.sow_on), encoding="utf-8")
    on = (batch.sow_on + timedelta(days=40)).isoformat()
    assert main(["records", str(path), "--date", on]) == 0
    lines = capsys.readouterr().out.splitlines()
    told = [line for line in lines if "  reading  ph 6." in line]
    assert [line.split("  reading  ")[1] for line in told] == [
        "ph 6.4  Loop, Pen  r-1  by AN  noted 2027-03-01T07:00Z  replaced by r-2",
        "ph 6.6  Loop, Pen  r-2  by BE  noted 2027-03-02T18:00Z  corrects r-1  replaced by r-3",
        "ph 6.7  Loop, Pen  r-3  by CA  noted 2027-03-09T06:00Z  corrects r-2",
    ]
    assert any(line.startswith("lot LOT-1: ") and "18 of 20 came up, 1 tests" in line for line in lines)
    assert any(line.startswith(f"meter Pen: calibrated {batch.sow_on}, due ") for line in lines)


def test_that_the_same_comes_as_data(root, tmp_path, capsys):
    path, batch = logged(root, tmp_path)
    assert main(["records", str(path), "--date", batch.sow_on.isoformat(), "--json"]) == 0
    found = json.loads(capsys.readouterr().out)
    assert found["format"] == "raftweek.records/1"
    assert found["entries"][0]["code"] == "x-1"
    assert found["outcomes"][0]["batch"] == batch.code
