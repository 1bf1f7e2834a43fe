"""The commands that say what to sow and what to buy."""

from __future__ import annotations

import csv
import io
import json
import re
from datetime import date

import pytest

from planner.bootstrap import Means
from planner.planning.proposal import NoteKind


def test_that_sowings_are_shown_as_a_table_with_the_rule_for_seeds(run, kitchen):
    said = run("successions", kitchen, "--from", "2027-03-01", "--weeks", "20")
    assert said.code == 0
    lines = said.out.splitlines()
    assert lines[1].split()[:5] == ["sow", "on", "crop", "seeds", "plants"]
    assert "2027-W" in lines[2]
    assert "plants ÷ (germination × survival)" in said.out
    assert "within 20\u00a0% of what is wanted" in said.out


def test_that_no_sowing_or_move_falls_on_a_day_without_work(run, kitchen):
    said = run(
        "successions",
        kitchen,
        "--from",
        "2027-03-01",
        "--no-work",
        "sat",
        "Sunday",
        "--holiday",
        "2027-04-01",
        "--json",
    )
    data = json.loads(said.out)
    assert data["format"] == "raftweek.successions/1"
    assert data["sowings"]
    days = [date.fromisoformat(sowing[name]) for sowing in data["sowings"] for name in ("sow_on", "move_on")]
    assert not {day for day in days if day.weekday() > 4 or day == date(2027, 4, 1)}
    assert any(sowing["sown_early_days"] for sowing in data["sowings"])


@pytest.mark.parametrize("name", ["new.toml", "new.raftweek"])
def test_that_an_adopted_proposal_is_written_to_a_new_file_and_never_over_one(run, kitchen, tmp_path, name):
    out = tmp_path / name
    before = kitchen.read_bytes()
    assert run("successions", kitchen, "--from", "2027-03-01", "--adopt", out).code == 0
    assert kitchen.read_bytes() == before
    shown = json.loads(run("successions", kitchen, "--from", "2027-03-01", "--json").out)
    codes = {batch.code for batch in Means().read(out).farm.batches}
    assert {sowing["code"] for sowing in shown["sowings"]} <= codes
    assert run("check", out).code == 0
    said = run("successions", kitchen, "--adopt", out)
    assert said.code == 2
    assert "is there already" in said.err


def test_that_an_order_is_ready_by_its_day(run, kitchen):
    said = run("successions", kitchen, "--from", "2027-03-01", "--order", "kale=0.4kg@2027-11-24", "--json")
    kale = [sowing for sowing in json.loads(said.out)["sowings"] if sowing["crop"] == "kale"]
    assert kale
    assert all(sowing["first_pick_on"] <= "2027-11-24" for sowing in kale)


@pytest.mark.parametrize(
    ("words", "told"),
    [
        (("--order", "kale"), "cannot be read"),
        (("--order", "kale=nan@2027-05-05"), "cannot be read"),
        (("--order", "kale=-3@2027-05-05"), "cannot be read"),
        (("--order", "kale=3@2037-05-05"), "outside the plan"),
        (("--no-work", "someday"), "no day of the week"),
        (("--from", "2040-01-01"), "outside the plan"),
        (("--weeks", "400"), "outside the plan"),
        (("--adopt", "farm.txt"), "must end in"),
    ],
)
def test_that_wrong_words_are_told_in_a_sentence(run, kitchen, words, told):
    said = run("successions", kitchen, *words)
    assert (said.code, said.out) == (2, "")
    assert told in said.err


@pytest.mark.parametrize(
    ("words", "told"),
    [
        (("--order", "cabbage=3@2027-05-05"), 'crop is "cabbage"'),
        (("--order", "basil=3@2027-05-05"), "one unit for all of basil"),
        (("--no-work", "mon", "tue", "wed", "thu", "fri", "sat", "sun"), "at least one day of work"),
    ],
)
def test_that_wants_that_make_no_sense_are_faults(run, kitchen, words, told):
    said = run("successions", kitchen, *words)
    assert (said.code, said.out) == (1, "")
    assert told in said.err


def test_that_a_farm_that_wants_nothing_is_told_so(run, yard):
    said = run("successions", yard)
    assert said.code == 2
    assert "no targets" in said.err


def test_that_the_order_list_is_told_by_month_and_as_rows(run, kitchen):
    text = run("orders", kitchen, "--from", "2027-03-01", "--weeks", "8")
    assert text.code == 0
    assert text.out.splitlines()[0] == "2027-03"
    rows = list(csv.DictReader(io.StringIO(run("orders", kitchen, "--csv").out)))
    data = json.loads(run("orders", kitchen, "--json").out)
    assert data["format"] == "raftweek.orders/1"
    assert [row["key"] for row in rows] == [line["key"] for line in data["lines"]]
    assert {row["kind"] for row in rows} >= {"seed", "media plug", "net pot", "feed", "base", "iron"}
    assert {row["unit"] for row in rows} == {"seeds", "pieces", "kg", "g"}


def fields_of(data):
    if isinstance(data, dict):
        for key, value in data.items():
            yield key
            yield from fields_of(value)
    elif isinstance(data, list):
        for value in data:
            yield from fields_of(value)


@pytest.mark.parametrize(
    "words",
    [("successions", "--order", "lettuce-leaf=4000@2027-08-06"), ("orders",)],
    ids=["successions", "orders"],
)
def test_that_the_page_tells_every_field(run, kitchen, root, words):
    command, *options = words
    said = run(command, kitchen, *options, "--json")
    page = (root / "docs" / "planning.md").read_text(encoding="utf-8")
    told = set(re.findall(r"`([a-z_]+)(?:\[\])?`", page))
    data = json.loads(said.out)
    assert set(fields_of(data)) - {"format"} - told == set()
    if command == "successions":
        assert data["refused"]
        assert data["notes"]


def test_that_the_page_tells_every_kind_of_note(root):
    page = (root / "docs" / "planning.md").read_text(encoding="utf-8")
    assert {f"`{kind.value}`" for kind in NoteKind} <= set(re.findall(r"`[a-z ]+`", page))
