"""The commands that advise, stock, compare and expand: what they print, and what they refuse."""

from __future__ import annotations

import json
import re

import pytest

FORMATS = {
    "advise": "raftweek.advise/1",
    "stock": "raftweek.stock/1",
    "compare": "raftweek.compare/1",
    "expand": "raftweek.expand/1",
}


@pytest.fixture
def other(kitchen, tmp_path):
    """The large sample farm with more spring fish."""
    path = tmp_path / "other.toml"
    path.write_text(
        kitchen.read_text(encoding="utf-8").replace("count = 60\n", "count = 90\n"), encoding="utf-8"
    )
    return path


def quick(kitchen):
    words = ("--fingerling", 35, "--harvest", 300, "--groups", 4, "--shares", 1, 0.5, "--rounds", 3)
    return ("stock", kitchen, *words)


def test_that_advice_names_repairs_effects_side_effects_and_cautions(run, kitchen):
    said = run("advise", kitchen, "--week", "2027-W18")
    assert (said.code, said.err) == (0, "")
    assert said.out.startswith("Kitchen loop: short supply, 2027-05-03 to 2027-05-09\n  - ")
    assert "Harvest 37 of Autumn fish on 2027-05-03" in said.out
    assert re.search(r"supply of N 0\.\d\d to \w+ \d\.\d\d of demand", said.out)
    assert "look out: " in said.out
    assert "\n! Handle fish solids as manure" in said.out


def test_that_a_week_without_a_flag_needs_no_advice(run, kitchen):
    said = run("advise", kitchen, "--week", "2027-W28")
    assert said.out == "Nothing is flagged that a change of the plan would repair.\n"


def test_that_a_week_outside_the_plan_is_refused(run, kitchen):
    said = run("advise", kitchen, "--week", "2031-W01")
    assert said.code == 2
    assert "outside the plan" in said.err


def test_that_the_table_of_stockings_has_a_row_a_way_and_one_best(run, kitchen):
    said = run(*quick(kitchen))
    assert (said.code, said.err) == (0, "")
    rows = [line for line in said.out.splitlines() if re.match(r" +\d+ +\d+%", line)]
    assert [row.split()[:2] for row in rows] == [["4", "100%"], ["4", "50%"]]
    assert said.out.count("<- best") == 1
    assert "fish into Big tank, harvest 2027-" in said.out


def test_that_the_best_can_be_written_to_a_new_farm_that_checks(run, kitchen, tmp_path):
    out = tmp_path / "stocked.toml"
    assert run(*quick(kitchen), "--adopt", out).code == 0
    assert run("check", out).code == 0
    assert "fish_group" in out.read_text(encoding="utf-8")
    again = run(*quick(kitchen), "--adopt", out)
    assert again.code == 2
    assert "is there already" in again.err


def test_that_the_same_seed_gives_the_same_table(run, kitchen):
    assert run(*quick(kitchen), "--json").out == run(*quick(kitchen), "--json").out


def test_that_stocking_may_go_by_an_area_or_by_what_crops_take_up(run, kitchen):
    means = []
    for words in (("--area", "3"), ("--area", "14"), ("--by-demand",)):
        said = run(*quick(kitchen), *words, "--json")
        assert (said.code, said.err) == (0, "")
        option = json.loads(said.out)["stocking"]["options"][0]
        means.append(option["mean_feed_g_per_day"])
    assert means[0] < means[1]


def test_that_a_start_up_tells_a_date_for_every_crop(run, yard):
    said = run("stock", yard, "--start-up")
    assert (said.code, said.err) == (0, "")
    assert said.out.startswith("first fish: 2027-02-01\n")
    for crop in ("lettuce-leaf", "basil", "mint"):
        assert f"  {crop}: to its bed from 2027-" in said.out


def test_that_a_harvest_is_compared_all_at_once_and_in_parts(run, root, kitchen):
    said = run("stock", kitchen, "--harvest-of", "Autumn fish")
    assert (said.code, said.err) == (0, "")
    falls = [int(fall) for fall in re.findall(r"feed falls (\d+)%", said.out)]
    assert len(falls) == 3
    assert falls[0] > max(falls[1:])
    data = json.loads(run("stock", kitchen, "--harvest-of", "Autumn fish", "--json").out)
    page = (root / "docs" / "advice.md").read_text(encoding="utf-8")
    assert all(f'"{name}"' in page for name in names_in(data))
    strange = run("stock", kitchen, "--harvest-of", "Ghosts")
    assert strange.code == 1
    assert "Ghosts" in strange.err


def test_that_farms_are_held_against_each_other_with_what_differs(run, kitchen, other):
    said = run("compare", kitchen, other, "--price", "feed:tilapia-grow-out-32=2")
    assert (said.code, said.err) == (0, "")
    assert 'fish group "Spring fish": altered (count 60 to 90)' in said.out
    assert "cost: unknown, " in said.out
    assert "cost: 0" not in said.out


def test_that_the_comparison_as_data_holds_the_forecasts_feed(run, kitchen, other):
    columns = json.loads(run("compare", kitchen, other, "--json").out)["columns"]
    assert columns[0]["name"] == "base"
    for column, path in zip(columns, (kitchen, other), strict=True):
        forecast = json.loads(run("forecast", path, "--json").out)
        fed = sum(week["feed_g_per_day"] * 7 for loop in forecast["loops"] for week in loop["weeks"])
        assert column["feed_kg"] == pytest.approx(fed / 1000.0, rel=1e-6)
        assert column["cost"]["total"] is None


def test_that_more_than_three_farms_beside_one_are_refused(run, kitchen):
    said = run("compare", kitchen, *[kitchen] * 4)
    assert said.code == 2
    assert "at most 3" in said.err


def test_that_four_verdicts_are_given_and_what_was_not_entered_is_unknown(run, kitchen):
    said = run("expand", kitchen, "--area", "2.9", "--head", "1.2", "--pump", "0:6000,1:5200,2:3500,3:0")
    assert (said.code, said.err) == (0, "")
    assert "nutrients: yes with (feed in some months)" in said.out
    assert "flow: no (flow at that head)" in said.out
    assert "filter and oxygen: unknown (oxygen supply not entered" in said.out
    assert "light, power and structure: unknown" in said.out
    assert "residual-current device" in said.out
    assert "local codes" in said.out


def test_that_no_time_of_survival_is_ever_said(run, kitchen):
    said = run("expand", kitchen, "--area", "2.9")
    assert "Nobody can say to the minute" in said.out
    assert not re.search(r"\d+ (minutes|hours)", said.out)


@pytest.mark.parametrize("command", FORMATS)
def test_that_data_say_their_format_which_the_page_tells(run, root, kitchen, other, command):
    words = {
        "advise": ("advise", kitchen, "--week", "2027-W05"),
        "stock": quick(kitchen),
        "compare": ("compare", kitchen, other),
        "expand": ("expand", kitchen, "--area", "1"),
    }[command]
    data = json.loads(run(*words, "--json").out)
    assert data["format"] == FORMATS[command]
    page = (root / "docs" / "advice.md").read_text(encoding="utf-8")
    assert FORMATS[command] in page
    for name in names_in(data):
        assert f'"{name}"' in page, name


NAMED_BY_THINGS = {
    "flag",
    "details",
    "lowest_ratio",
    "harvest_g",
    "harvest_plants",
    "numbers",
    "first_by_crop",
}


def names_in(data):
    """Every field's name, but those that are crops, elements or what the forecast's page tells."""
    if isinstance(data, dict):
        for name, value in data.items():
            yield name
            if name not in NAMED_BY_THINGS:
                yield from names_in(value)
    elif isinstance(data, list):
        for value in data:
            yield from names_in(value)


@pytest.mark.parametrize(
    ("words", "code", "sentence"),
    [
        (("expand", "--area", "0"), 1, "area_m2 is 0"),
        (("expand", "--area", "x"), 2, '"x" is not a number'),
        (("expand", "--area", "1", "--pump", "0-3000"), 2, "is not a point"),
        (("expand", "--area", "1", "--pump", "0:3000"), 1, "2 points or more"),
        (("expand", "--area", "1", "--loop", "Lake"), 2, 'no loop is called "Lake"'),
        (("expand", "--area", "1", "--crop", "moss"), 2, 'no crop is called "moss"'),
        (("stock", "--species", "pike"), 1, "pike"),
        (("stock", "--tank", "Pond"), 2, 'no tank of the loop is called "Pond"'),
        (("stock", "--area", "-1"), 2, "--area is -1"),
        (("stock", "--shares", "0"), 1, "shares"),
        (("stock", "--adopt", "out.txt"), 2, "must end in"),
        (("compare", "missing.toml"), 1, "missing.toml"),
        (("compare", "missing.toml", "--price", "gold=1"), 2, "WHAT:KEY=MONEY"),
    ],
)
def test_that_what_makes_no_sense_is_refused_in_a_sentence(run, kitchen, words, code, sentence):
    command, *rest = words
    said = run(command, kitchen, *rest)
    assert said.code == code
    assert sentence in said.err


@pytest.mark.parametrize("word", ["nan", "inf", "-inf", "much"])
def test_that_a_number_that_is_none_is_refused(run, kitchen, word):
    said = run("stock", kitchen, f"--area={word}")
    assert said.code == 2
    assert f'"{word}" is not a number such as 2.5' in said.err


def test_that_a_lost_group_takes_its_feed_away_and_names_what_to_hold_back(run, kitchen):
    data = json.loads(run("compare", kitchen, "--lose", "Spring fish@2027-06-01", "--json").out)
    base, lost = data["columns"]
    assert lost["feed_kg"] < base["feed_kg"]
    assert lost["weeks_short"] >= base["weeks_short"]
    assert base["hold_back"] == []
    assert lost["hold_back"]
    text = run("compare", kitchen, "--lose", "Spring fish@2027-06-01").out
    assert f"hold back {', '.join(lost['hold_back'])}" in text


@pytest.mark.parametrize(
    ("word", "told"),
    [
        ("Spring fish", "cannot be read"),
        ("Spring fish@soon", "cannot be read"),
        ("Sharks@2027-06-01", "Groups are"),
        ("Spring fish@2040-01-01", "within the plan"),
    ],
)
def test_that_a_loss_that_makes_no_sense_is_refused(run, kitchen, word, told):
    said = run("compare", kitchen, "--lose", word)
    assert said.code == 2
    assert told in said.err


def test_that_a_comparison_with_nothing_is_refused(run, kitchen):
    said = run("compare", kitchen)
    assert said.code == 2
    assert "but 0 were named" in said.err
