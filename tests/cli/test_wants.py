"""What is wanted, said on the command line: weekly by a weekday, in rhythms, by orders; and wrong words."""

from __future__ import annotations

import json
from datetime import date
from pathlib import Path

import pytest

from planner.catalogue.loading import shipped_catalogue

WANTED = {"lettuce-butterhead": 40.0, "pak-choi": 25.0, "basil": 1.5, "okra": 1.2}
"""What the targets of the yard ask for a week: heads, heads, kg, kg; all from the weeks below on."""
FROM = {
    "lettuce-butterhead": "2027-03-15",
    "pak-choi": "2027-03-15",
    "basil": "2027-04-05",
    "okra": "2027-04-26",
}
UNTIL = "2028-03-27"
EVEN_SHARE, WEEKS_EVEN = 0.2, 0.9
STEADY_WEEKS = 50


@pytest.fixture
def monsoon() -> Path:
    return Path(__file__).with_name("monsoon.toml")


def shown(run, *words):
    said = run("successions", *words, "--json")
    assert said.code == 0, said.err
    return json.loads(said.out)


def even_shares(seen):
    """Return the share of wanted weeks, by crop, whose harvest fit for sale is within a fifth of it."""
    crops = shipped_catalogue().crops
    found = {}
    for key, amount in WANTED.items():
        unit = "plants" if amount > 10 else "kg"
        by_week = []
        for week in seen["harvest"]:
            if FROM[key] <= week["start"] <= UNTIL:
                picked = sum(one[unit] for one in week["crops"] if one["crop"] == key)
                by_week.append(abs(picked * crops[key].marketable_share / amount - 1) <= EVEN_SHARE)
        assert len(by_week) >= STEADY_WEEKS - 2
        found[key] = sum(by_week) / len(by_week)
    return found


def test_that_forty_heads_by_every_thursday_are_picked_by_every_thursday(run, monsoon):
    word = "lettuce-butterhead=40@thu,2027-03-01,2027-11-30"
    data = shown(run, monsoon, "--weekly", word)
    mine = [sowing for sowing in data["sowings"] if sowing["crop"] == "lettuce-butterhead"]
    weeks = [week for week in data["weeks"] if week["crop"] == "lettuce-butterhead"]
    assert len(weeks) == 39
    assert {week["wanted"] for week in weeks} == {40.0}
    assert [sowing["harvest_week"] for sowing in mine] == [week["week"] for week in weeks]
    for sowing in mine:
        picked = date.fromisoformat(sowing["first_pick_on"])
        assert picked.weekday() <= 3
        assert picked <= date(2027, 11, 25)


def test_that_a_weekly_amount_takes_the_place_of_the_targets_of_its_crop_alone(run, monsoon):
    data = shown(run, monsoon, "--weekly", "pak-choi=10@mon")
    wanted = {week["crop"]: week["wanted"] for week in data["weeks"]}
    assert wanted["pak-choi"] == 10.0
    assert wanted["basil"] == 1.5


def test_that_a_rhythm_is_ready_on_its_days_and_a_rhythm_of_sowings_sown_on_them(run, monsoon):
    rule = "FREQ=WEEKLY;INTERVAL=2;BYDAY=FR"
    data = shown(run, monsoon, "--rhythm", f"coriander=30@{rule}", "--sow", f"rocket=24@{rule}")
    coriander = [week for week in data["weeks"] if week["crop"] == "coriander"]
    assert {week["wanted"] for week in coriander} == {30.0}
    rocket = [sowing for sowing in data["sowings"] if sowing["crop"] == "rocket"]
    assert {date.fromisoformat(sowing["sow_on"]).weekday() for sowing in rocket} == {4}
    # a bench that is full takes fewer, and says so
    less = [note for note in data["notes"] if note["what"] == "less" and note["crop"] == "rocket"]
    assert len(less) <= 1
    plants = sorted(sowing["plants"] for sowing in rocket)
    assert plants == [*(note["values"]["sown"] for note in less), *[24] * (len(rocket) - len(less))]


def test_that_an_event_order_is_ready_on_its_day(run, monsoon):
    data = shown(run, monsoon, "--order", "lettuce-leaf=80@2027-12-24")
    mine = [sowing for sowing in data["sowings"] if sowing["crop"] == "lettuce-leaf"]
    assert mine
    assert max(sowing["first_pick_on"] for sowing in mine) <= "2027-12-24"
    (week,) = [week for week in data["weeks"] if week["crop"] == "lettuce-leaf"]
    assert week["foreseen"] >= week["wanted"] == 80.0


@pytest.mark.parametrize(("spread", "rafts"), [("never", 2), ("together", 6)])
def test_that_a_sowing_lies_on_as_many_rafts_as_its_spread_allows(run, monsoon, spread, rafts):
    """Forty-six heads need two rafts of thirty-six."""
    data = shown(run, monsoon, "--spread", spread)
    for sowing in data["sowings"]:
        if sowing["crop"] == "lettuce-butterhead":
            units = {where["unit"] for where in sowing["where"] if where["phase"] == "bed"}
            assert -(-sowing["plants"] // 36) <= len(units) <= rafts


def test_that_steady_targets_are_met_through_a_dark_wet_season(run, monsoon, tmp_path):
    """The farm is a text; what is adopted is forecast anew by the command that everybody uses."""
    out = tmp_path / "adopted.toml"
    assert run("successions", monsoon, "--adopt", out).code == 0
    seen = json.loads(run("forecast", out, "--json").out)
    shares = even_shares(seen)
    assert min(shares.values()) >= WEEKS_EVEN, shares


def test_that_a_season_plan_meets_steady_targets_through_a_dark_wet_season(run, monsoon, tmp_path):
    out = tmp_path / "adopted.toml"
    assert run("plan", monsoon, "--adopt", out, "--seconds", "2").code == 0
    seen = json.loads(run("forecast", out, "--json").out)
    shares = even_shares(seen)
    assert min(shares.values()) >= WEEKS_EVEN, shares


@pytest.mark.parametrize(
    ("option", "word", "told"),
    [
        ("--weekly", "pak-choi=10", "cannot be read"),
        ("--weekly", "pak-choi=10@someday", "no day of the week"),
        ("--weekly", "pak-choi=0@thu", "above 0"),
        ("--weekly", "pak-choi=nan@thu", "above 0"),
        ("--weekly", "pak-choi=9@thu,2027-05-01,2027-04-01", "before the first"),
        ("--weekly", "pak-choi=9@thu,2030-05-01", "outside the plan"),
        ("--weekly", "pak-choi=9@thu,soon", "cannot be read"),
        ("--weekly", "pak-choy=9@thu", "a crop of the catalogue"),
        ("--rhythm", "pak-choi=9@FREQ=HOURLY", "DAILY, WEEKLY, MONTHLY or YEARLY"),
        ("--rhythm", "pak-choi=9@every friday", "FREQ=WEEKLY;BYDAY=TH"),
        ("--sow", "pak-choi=2kg@FREQ=WEEKLY", "whole number of plants"),
        ("--sow", "pak-choi=2.5@FREQ=WEEKLY", "whole number of plants"),
        ("--order", "pak-choi=80@2040-12-24", "outside the plan"),
        ("--order", "pak-choi=-3@2027-12-24", "above 0"),
        ("--no-work", "someday", "no day of the week"),
    ],
)
def test_that_a_wrong_word_is_named_with_what_would_be_right(run, monsoon, option, word, told):
    said = run("successions", monsoon, option, word)
    assert said.code in (1, 2)
    assert told in said.err
    assert word.split("=", maxsplit=1)[0 if option != "--rhythm" else 1].split("@")[-1] in said.err
    assert said.out == ""


def test_that_seven_closed_days_are_refused_by_every_planning_command(run, monsoon):
    closed = ("mon", "tue", "wed", "thu", "fri", "sat", "sun")
    for command in ("successions", "plan"):
        said = run(command, monsoon, "--no-work", *closed)
        assert said.code in (1, 2)
        assert "at least one day of work a week" in said.err
