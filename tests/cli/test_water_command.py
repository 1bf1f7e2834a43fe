"""The command that says what the water needs."""

from __future__ import annotations

import json

import pytest

from planner.cli import main
from planner.shipped import shipped_path

SCHOOL = str(shipped_path("sample_data", "school-kitchen.toml"))
BACKYARD = str(shipped_path("sample_data", "backyard.toml"))


def test_that_the_sheet_says_load_acid_tests_and_doses(capsys):
    assert main(["water", SCHOOL, "--date", "2027-05-05"]) == 0
    out = capsys.readouterr().out
    assert out.startswith("Kitchen loop, 2027-05-05 (week 2027-W18)\n")
    for words in ("ammonia nitrogen:", "m² of surface needed", "oxygen asked for:", "tests due:", "iron:"):
        assert words in out
    assert "e+" not in out


def test_that_what_is_not_known_is_said_to_be_so(capsys):
    main(["water", BACKYARD, "--date", "2027-05-05"])
    out = capsys.readouterr().out
    assert "not known, no alkalinity reading" in out
    assert "un-ionised ammonia: no ammonia reading" in out


def test_that_ranges_are_ordered_in_the_data(capsys):
    assert main(["water", SCHOOL, "--date", "2027-05-05", "--json"]) == 0
    data = json.loads(capsys.readouterr().out)
    assert data["format"] == "raftweek.water/1"
    week = data["loops"][0]["weeks"][0]
    for name in ("tan_g_per_day", "filter_need_m2", "oxygen_g_per_h", "acid_planned_eq"):
        assert week[name] == sorted(week[name]), name


def test_that_caustic_products_come_with_their_caution(capsys, tmp_path):
    text = shipped_path("sample_data", "school-kitchen.toml").read_text(encoding="utf-8")
    farm = tmp_path / "lye.toml"
    farm.write_text(text.replace("potassium-bicarbonate", "potassium-hydroxide"), encoding="utf-8")
    assert main(["water", str(farm), "--date", "2027-01-06"]) == 0
    out = capsys.readouterr().out
    assert "g of potassium-hydroxide a week" in out
    assert "\n  ! " in out
    assert "oggles" in out


@pytest.mark.parametrize("on", ["2020-01-01", "2040-01-01"])
def test_that_a_day_outside_the_plan_is_wrong_usage(capsys, on):
    assert main(["water", SCHOOL, "--date", on]) == 2
    assert on in capsys.readouterr().err
