"""The command that plans a season."""

from __future__ import annotations

import json
import re

import pytest

from planner.planning.season_plan.job import PlanJob

QUICK = ("--weeks", "20", "--seconds", "0.2")


@pytest.fixture(scope="module")
def page(request):
    return (request.config.rootpath / "docs" / "season-plan.md").read_text(encoding="utf-8")


def test_that_the_plan_says_what_to_sow_and_how_good_that_is(run, kitchen):
    said = run("plan", kitchen, *QUICK)
    assert said.code == 0
    assert re.search(r"Within \d+\.\d\d % of the best possible\.", said.out)
    assert "Butterhead lettuce" in said.out
    assert re.search(r"Against today's plan: .*changed", said.out)
    assert "100 % done" in said.err


def test_that_json_alone_comes_out_even_from_below_python(capfd, kitchen):
    """The solver prints its name by itself, past Python, unless it is kept from it."""
    from planner.cli import main

    assert main(["plan", str(kitchen), *QUICK, "--json"]) == 0
    data = json.loads(capfd.readouterr().out)
    assert data["format"] == "raftweek.plan/1"
    assert 0 <= data["gap"] < 0.5
    assert data["by_hand"] <= data["objective"] <= data["bound"] <= data["worth_of_all_targets"]
    assert len(data["weeks"]) == 20
    assert data["sowings"]
    assert {each["kind"] for each in data["differences"]} <= {"added", "removed", "changed"}


def fields_of(data):
    if isinstance(data, dict):
        for key, value in data.items():
            yield key
            yield from fields_of(value)
    elif isinstance(data, list):
        for value in data:
            yield from fields_of(value)


def test_that_the_page_tells_every_field(run, kitchen, page):
    data = json.loads(run("plan", kitchen, *QUICK, "--json").out)
    elements = {"N", "P", "K", "Ca", "Mg", "Fe"}
    told = set(re.findall(r"`([a-z_]+)(?:\[\])?`", page))
    assert set(fields_of(data)) - elements - told == set()


def test_that_an_adopted_plan_is_a_farm_that_holds_it(run, kitchen, tmp_path):
    out = tmp_path / "planned.toml"
    said = run("plan", kitchen, *QUICK, "--json", "--adopt", out)
    plants = sum(sowing["plants"] for sowing in json.loads(said.out)["sowings"])
    assert plants > 0
    assert run("check", out).code == 0
    assert run("plan", kitchen, *QUICK, "--adopt", out).code == 2
    assert run("plan", kitchen, *QUICK, "--adopt", tmp_path / "planned.txt").code == 2


def test_that_ctrl_c_keeps_the_best_so_far(run, kitchen, monkeypatch):
    whole = PlanJob.steps

    def interrupted(job):
        for number, step in enumerate(whole(job)):
            if number == 4:
                raise KeyboardInterrupt
            yield step

    monkeypatch.setattr(PlanJob, "steps", interrupted)
    said = run("plan", kitchen, "--weeks", "20", "--seconds", "600", "--json")
    assert said.code == 0
    assert "best so far" in said.err
    data = json.loads(said.out)
    assert data["status"] == "stopped"
    assert data["sowings"]


@pytest.mark.parametrize(
    "words",
    [
        ("--from", "2020-01-01"),
        ("--weeks", "900"),
        ("--seconds", "-1"),
        ("--seconds", "nan"),
        ("--lot", "0"),
        ("--sow-on", "someday"),
        ("--labour", "much"),
    ],
)
def test_that_wrong_words_are_refused(run, kitchen, words):
    said = run("plan", kitchen, *words)
    assert said.code == 2
    assert said.out == ""
    assert said.err


def test_that_a_farm_without_targets_is_told_so(run, tmp_path):
    farm = tmp_path / "bare.raftweek"
    assert run("new", farm, "--from", "2027-01-04").code == 0
    said = run("plan", farm)
    assert said.code == 0
    assert "nothing to plan" in said.out
