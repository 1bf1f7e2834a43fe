"""docs/forecast-json.md tells every field that `--json` prints, and no other."""

from __future__ import annotations

import json
import re
from datetime import date, timedelta

import pytest

from planner.farm.species import ELEMENTS
from planner.forecast.values import Band, FlagKind
from planner.forecast.week import DueKind, DueUnit

SYMBOLS = {element.capitalize() for element in ELEMENTS}
NO_FURTHER = "–"

TROUBLED = """\
format = "raftweek.farm/1"
[farm]
name = "Troubled"
plan_from = 2027-01-04
plan_weeks = 30
[[site]]
name = "Site"
[[loop]]
name = "Cold loop"
water_l = 500
water_c = [5, 5, 5, 5, 5, 5, 5, 5, 5, 5, 5, 5]
[[loop]]
name = "Warm loop"
water_l = 500
[[tank]]
name = "Cold tank"
loop = "Cold loop"
volume_l = 100
[[tank]]
name = "Warm tank"
loop = "Warm loop"
volume_l = 100
[[raft_bed]]
name = "Raft"
loop = "Warm loop"
rows = 2
columns = 5
area_m2 = 1
[[fish_group]]
name = "Cold fish"
tank = "Cold tank"
species = "nile-tilapia"
feed = "tilapia-grow-out-32"
stocked_on = 2027-01-04
count = 100
mean_weight_g = 300
[[fish_group]]
name = "Warm fish"
tank = "Warm tank"
species = "nile-tilapia"
feed = "tilapia-grow-out-32"
stocked_on = 2027-01-04
count = 20
mean_weight_g = 50
harvest_after_days = 100
[[batch]]
crop = "tomato"
sow_on = 2027-01-11
plants = 12
bed = "Raft"
"""


@pytest.fixture(scope="module")
def page(request):
    return (request.config.rootpath / "docs" / "forecast-json.md").read_text(encoding="utf-8")


def rows(page, table):
    part = page.split(f"<!-- fields of {table} -->")[1].split("<!-- end of fields -->")[0]
    lines = [line.strip("| ").split(" | ") for line in part.splitlines() if line.startswith("| ")]
    return [[cell.strip().strip("`") for cell in line] for line in lines[1:]]


def paths(value, path=""):
    """Yield the path of every field, as the page writes it."""
    if isinstance(value, dict):
        for name, inner in value.items():
            part = "*" if name in SYMBOLS else name
            here = f"{path}.{part}" if path else part
            if part != "*":
                yield here
            yield from paths(inner, here)
    elif isinstance(value, list):
        for inner in value:
            yield from paths(inner, f"{path}[]")


@pytest.fixture
def troubled(tmp_path):
    path = tmp_path / "troubled.toml"
    path.write_text(TROUBLED, encoding="utf-8")
    return path


def test_that_every_field_of_the_forecast_is_on_the_page_and_no_other(run, page, kitchen, yard, troubled):
    printed = set()
    for farm in (kitchen, yard, troubled):
        data = json.loads(run("forecast", farm, "--json").out)
        data["flags"] = [dict(list(flag.items())[:4]) for flag in data["flags"]]
        printed |= set(paths(data))
    assert printed == {row[0] for row in rows(page, "forecast")}


def test_that_every_field_of_a_flag_is_on_the_page(run, page, kitchen, yard, troubled):
    told = {(row[0], row[1]) for row in rows(page, "flags")}
    printed = set()
    for farm in (kitchen, yard, troubled):
        for flag in json.loads(run("forecast", farm, "--json").out)["flags"]:
            further = list(flag)[4:] or [NO_FURTHER]
            printed |= {(flag["kind"], name) for name in further}
    assert printed <= told
    assert {kind for kind, _ in printed} >= {
        "no climate", "unplaced", "density", "feed falls", "water temperature", "lethal temperature"
    }  # fmt: skip


def test_that_the_page_tells_only_flags_there_are(page):
    assert {row[0] for row in rows(page, "flags")} <= {kind.value for kind in FlagKind}


def test_that_every_field_of_a_week_is_on_the_page_and_no_other(run, page, kitchen, tmp_path):
    printed = set()
    neglected = tmp_path / "neglected.toml"
    note = '\n[[log]]\ncode = "n"\nwhat = "note"\non = 2027-01-04\n'
    neglected.write_text(kitchen.read_text(encoding="utf-8") + note, encoding="utf-8")
    printed |= set(paths(json.loads(run("week", neglected, "--date", "2027-04-08", "--json").out)))
    for weeks in range(6):
        on = date(2027, 4, 8) + timedelta(weeks=weeks)
        printed |= set(paths(json.loads(run("week", kitchen, "--date", on, "--json").out)))
    assert printed == {row[0] for row in rows(page, "week")}


@pytest.mark.parametrize("words", [Band, DueKind, DueUnit])
def test_that_every_word_a_field_may_hold_is_on_the_page(page, words):
    for word in words:
        assert f'`"{word.value}"`' in page


def test_that_every_field_says_its_unit_and_meaning(page):
    for table, cells in (("forecast", 3), ("week", 3), ("flags", 4)):
        for row in rows(page, table):
            assert len(row) == cells, row
            assert all(row), row


def test_that_the_example_has_fields_of_the_page(page):
    example = json.loads(re.search(r"```json\n(.*?)```", page, re.DOTALL)[1])
    assert set(paths(example)) <= {row[0] for row in rows(page, "forecast")}
    assert example["format"] == "raftweek.forecast/1"
