"""Commands that look ahead: forecast, week, calendar."""

from __future__ import annotations

import csv
import json
from datetime import date, timedelta

import pytest

HEAD = ["week", "from", "feed", "g/d"]


def test_that_the_forecast_is_a_line_a_week(run, yard):
    said = run("forecast", yard, "--weeks", 3)
    assert (said.code, said.err) == (0, "")
    lines = [line.split() for line in said.out.splitlines()]
    assert [line[:2] for line in lines if line and line[0].startswith("2027-W")] == [
        ["2027-W09", "2027-03-01"],
        ["2027-W10", "2027-03-08"],
        ["2027-W11", "2027-03-15"],
    ]
    assert HEAD in [line[:4] for line in lines]


def test_that_the_span_of_a_forecast_can_be_chosen(run, yard):
    data = json.loads(run("forecast", yard, "--json", "--from", "2027-04-08", "--weeks", 2).out)
    assert (data["from"], data["weeks"]) == ("2027-04-05", 2)
    assert [week["start"] for week in data["loops"][0]["weeks"]] == ["2027-04-05", "2027-04-12"]


def test_that_without_a_span_the_whole_plan_is_forecast(run, yard):
    data = json.loads(run("forecast", yard, "--json").out)
    assert (data["from"], data["weeks"]) == ("2027-03-01", 26)


@pytest.mark.parametrize(
    "words",
    [
        ("--from", "2020-01-01"),
        ("--from", "2031-01-01"),
        ("--weeks", "27"),
        ("--from", "2027-08-29", "--weeks", "2"),
    ],
)
def test_that_a_span_outside_the_plan_is_refused_with_the_plans_own(run, yard, words):
    said = run("forecast", yard, *words)
    assert (said.code, said.out) == (2, "")
    assert "26 weeks from 2027-03-01 to 2027-08-29" in said.err


def test_that_the_table_of_values_has_the_figures_of_the_data(run, kitchen):
    data = json.loads(run("forecast", kitchen, "--json", "--weeks", 6).out)
    rows = list(csv.DictReader(run("forecast", kitchen, "--csv", "--weeks", 6).out.splitlines()))
    assert [row["week"] for row in rows] == [week["week"] for week in data["loops"][0]["weeks"]]
    for row, week in zip(rows, data["loops"][0]["weeks"], strict=True):
        assert float(row["feed_g_per_day"]) == week["feed_g_per_day"]
        assert [float(row["fao_low_g_per_m2_d"]), float(row["fao_high_g_per_m2_d"])] == week[
            "fao_band_g_per_m2_d"
        ]
        assert float(row["K_demand_g"]) == week["elements"]["K"]["demand_g"]


def test_that_weeks_without_plants_leave_their_cells_empty(run, yard):
    rows = list(csv.DictReader(run("forecast", yard, "--csv").out.splitlines()))
    assert len(rows) == 26
    assert rows[0]["fao_low_g_per_m2_d"] == rows[0]["feed_ratio_g_per_m2_d"] == ""
    assert rows[-1]["fao_low_g_per_m2_d"] != ""


def test_that_text_and_file_give_the_same_forecast(run, yard, tmp_path):
    farm = tmp_path / "yard.raftweek"
    run("import", yard, farm)
    of_text, of_file = (json.loads(run("forecast", path, "--json").out) for path in (yard, farm))
    assert of_file["loops"] == of_text["loops"]
    assert of_file["totals"] == of_text["totals"]


def test_that_what_is_due_in_a_week_is_told_day_by_day(run, yard):
    said = run("week", yard, "--date", "2027-04-08")
    assert (said.code, said.err) == (0, "")
    lines = said.out.splitlines()
    assert lines[0] == "2027-W14"
    assert any("move to the bed BAS-27W11-A (Sweet basil): 4 plants, Gravel 1" in line for line in lines)


def test_that_what_is_due_can_be_read_by_a_script(run, yard):
    data = json.loads(run("week", yard, "--date", "2027-04-08", "--json").out)
    assert (data["format"], data["week"], data["start"]) == ("raftweek.week/1", "2027-W14", "2027-04-05")
    days = [date.fromisoformat(task["on"]) for task in data["tasks"]]
    assert days == sorted(days)
    assert all(date(2027, 4, 5) <= day < date(2027, 4, 5) + timedelta(days=7) for day in days)
    assert {"sow", "move", "feed"} <= {task["do"] for task in data["tasks"]}


def test_that_a_week_outside_the_plan_is_refused(run, yard):
    said = run("week", yard, "--date", "2028-01-01")
    assert said.code == 2
    assert "--date 2028-01-01 reaches outside the plan" in said.err


@pytest.mark.parametrize("command", ["week", "water"])
def test_that_today_is_named_when_no_day_was_asked_for(run, yard, monkeypatch, command):
    monkeypatch.setattr("planner.cli_shared.local_today", lambda: date(2026, 1, 1))
    said = run(command, yard)
    assert said.code == 2
    assert "today, 2026-01-01, reaches outside the plan" in said.err
    assert "begin earlier (plan_from)" in said.err


@pytest.mark.parametrize("paper", ["A4", "Letter", "A3"])
def test_that_the_calendar_is_written_as_a_document(qapp, run, yard, tmp_path, paper):
    path = tmp_path / "out.pdf"
    said = run("calendar", yard, "--pdf", path, "--paper", paper, "--weeks", 4)
    assert (said.code, said.err) == (0, "")
    assert said.out.startswith(f"{path}: ")
    assert "page" in said.out
    assert path.read_bytes().startswith(b"%PDF-")


def test_that_a_calendar_that_cannot_be_written_is_told(qapp, run, yard, tmp_path):
    for path in (tmp_path, tmp_path / "none" / "out.pdf"):
        said = run("calendar", yard, "--pdf", path, "--weeks", 4)
        assert (said.code, said.out) == (1, "")
        assert str(path) in said.err


def test_that_a_week_is_one_message_of_plain_letters(run, yard):
    said = run("week", yard, "--date", "2027-04-12", "--message")
    line = said.out.rstrip("\n")
    assert (said.code, said.err) == (0, "")
    assert "\n" not in line
    assert line.isascii()
    assert len(line) <= 160
